#include "core/vision/puddle_tracker.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <limits>
#include <utility>
#include <vector>

#include "core/vision/image_scale.h"
#include "core/vision/puddle_circles.h"
#include "core/vision/puddle_outline.h"
#include "core/vision/puddle_picture.h"
#include "core/vision/puddle_start.h"

namespace flowkin {
namespace {

// Small pictures are not needed more often than this, s.
constexpr double kWorkSpacing = 1.0 / 65.0;
// How often round outlines are looked for, before and after one is followed.
constexpr double kSearchSpacing = 0.08;
constexpr double kLateSearchSpacing = 0.5;
// Small pictures kept for looking back to the start.
constexpr std::size_t kRingSize = 240;
// Following slows down with age: a puddle's radius changes with ln t.
constexpr double kSampleShare = 0.008;
constexpr double kRetrySpacing = 0.05;
// An outline must be found this often in a row to be followed.
constexpr int kHitsToFollow = 3;
constexpr std::size_t kMostCandidates = 6;
constexpr double kLeastVisible = 0.5;
constexpr double kLostAfter = 1.5;
constexpr std::size_t kLeastSamples = 8;
// A puddle grows by more than this.
constexpr double kGrows = 0.03;
// Every so many samples a plain ground is asked whether it still is one.
constexpr std::size_t kAskGround = 8;
// A zoom of the lens beyond this is asked whether it explains the picture.
constexpr double kZoomSeen = 0.003;
// Smaller pictures hold no puddle worth following.
constexpr int kLeastSide_px = 64;
// Frames averaged for the ruler.
constexpr int kCleanFrames = 12;

struct Pending {
  Circle circle;
  int hits = 0;
  double last_t = 0.0;
  bool around = false;  // something that is followed
};

struct Candidate {
  OutlineTrace trace;
  std::vector<FrontSample> samples;
  PuddleStart start;
  bool start_final = false;
  cv::Point2f shift;  // of the background at the last sample, work px
  double born_t = 0.0;
  double next_t = 0.0;
  double last_seen = 0.0;
  bool alive = true;
  bool missed = false;  // at the last look
  bool left_picture = false;
  std::vector<double> contrast, edge_width;

  // Growth from the first to the last samples, in radii.
  double Growth() const {
    if (samples.size() < kLeastSamples) return 0.0;
    const std::size_t n = std::max<std::size_t>(2, samples.size() / 8);
    double a = 0.0, b = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
      a += samples[i].radius_px;
      b += samples[samples.size() - 1 - i].radius_px;
    }
    return b / a - 1.0;
  }
  // Of the last sample not after `t_s`, px.
  double RadiusAt(double t_s) const {
    const auto after = std::upper_bound(
        samples.begin(), samples.end(), t_s, [](double t, const auto& s) {
          return t < s.t_s;
        });
    return after == samples.begin() ? 0.0 : std::prev(after)->radius_px;
  }
  double Duration() const {
    return samples.empty() ? 0.0 : samples.back().t_s - samples.front().t_s;
  }
  // Time over which it was found whenever it was looked for.
  double Followed() const {
    double sum = 0.0;
    for (std::size_t i = 1; i < samples.size(); ++i) {
      const double due = kSampleShare * (samples[i - 1].t_s - born_t);
      const double gap = samples[i].t_s - samples[i - 1].t_s;
      if (gap < 2.0 * due + 2.0 * kRetrySpacing) sum += gap;
    }
    return sum;
  }
  // How much it is like a puddle: one grows and lasts; a barrel or a cup does
  // neither. At least kLeastSamples.
  double Score() const {
    const double growth = std::clamp(Growth(), -0.2, 0.6);
    const FrontSample& middle = samples[samples.size() / 2];
    return Followed() * (0.05 + std::max(0.0, growth)) * middle.visible /
           middle.in_picture;
  }
};

double MedianOf(std::vector<double> v) {
  if (v.empty()) return 0.0;
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

// A lens that zooms ends up far from where it began; what passes through the
// picture feigns a zoom for a while. So the later half of the time decides.
bool ZoomHolds(const std::vector<FrontSample>& samples) {
  const double middle_s = 0.5 * (samples.front().t_s + samples.back().t_s);
  int seen = 0, held = 0;
  for (const FrontSample& s : samples) {
    if (s.t_s < middle_s || std::abs(s.zoom - 1.0) < kZoomSeen) continue;
    ++seen;
    if (s.zoom_holds) ++held;
  }
  return 2 * held > seen;
}

}  // namespace

Result<void> PuddleTrackerOptions::Validate() const {
  if (mm_per_px && !(*mm_per_px > 0.0 && std::isfinite(*mm_per_px))) {
    return Error{ErrorCode::kInvalidArgument,
                 "The scale must be a number of millimetres per pixel above "
                 "zero."};
  }
  if (!(mm_per_px_rel_sd >= 0.0 && mm_per_px_rel_sd <= 0.2)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The uncertainty of the scale must lie between 0 and 0.2."};
  }
  return {};
}

struct PuddleTracker::State {
  PuddleTrackerOptions options;
  FrontTrack track;
  int factor = 1;
  std::optional<ShiftFinder> shifts;
  EdgeMap reference_edges;
  WorkPicture reference;
  Frame bare;  // the first picture, at full size
  std::deque<WorkPicture> ring;
  bool ring_covers_clip = true;
  std::vector<Pending> pending;
  std::vector<Candidate> candidates;
  double last_work_t = -1.0;
  double last_search_t = -1.0;
  cv::Mat last_y;
  double equal_since = 0.0;
  std::vector<double> brightness, detail;
  // Mean of some late frames with the whole puddle, for the scale.
  cv::Mat clean_sum;
  int clean_count = 0;
  cv::Point2f clean_shift;
  float clean_zoom = 1.0F;
  // The ruler in that mean, looked for once while the film still runs.
  std::optional<ScaleSearch> ruler;
  PixelCircle ruler_at;

  bool Seeking() const;
  BareGround Under(cv::Point2f shift) const;
  Candidate* Best();
  void Work(const Frame& frame, double t);
  void Search(const Frame& frame, const WorkPicture& work);
  void Follow(const Frame& frame, double t, cv::Point2f shift);
  void Facts(const WorkPicture& work);
  void AddClean(const Frame& frame, cv::Point2f shift, const OutlineShape& at);
  void FindRuler(const OutlineShape& at);
};

PuddleTracker::PuddleTracker(const PuddleTrackerOptions& options)
    : state_(std::make_unique<State>()) {
  FLOWKIN_CHECK(options.Validate().has_value());
  state_->options = options;
}
PuddleTracker::~PuddleTracker() = default;
PuddleTracker::PuddleTracker(const PuddleTracker& other)
    : state_(std::make_unique<State>(*other.state_)) {}
PuddleTracker::PuddleTracker(PuddleTracker&&) noexcept = default;
PuddleTracker& PuddleTracker::operator=(PuddleTracker&&) noexcept = default;

void PuddleTracker::Add(const Frame& frame) {
  State& s = *state_;
  if (frame.luma.empty()) return;
  const double t = frame.TimeS();
  PictureFacts& facts = s.track.picture;
  if (facts.frames == 0) {
    s.track.width_px = frame.luma.cols;
    s.track.height_px = frame.luma.rows;
    s.factor = WorkFactor(frame.luma.cols, frame.luma.rows);
    facts.first_t_s = t;
  } else if (frame.luma.cols != s.track.width_px ||
             frame.luma.rows != s.track.height_px) {
    facts.size_changed = true;
    return;
  }
  ++facts.frames;
  facts.last_t_s = t;
  if (std::min(frame.luma.cols, frame.luma.rows) < kLeastSide_px) return;

  bool due = s.Seeking() ? t - s.last_work_t >= kWorkSpacing
                         : t - s.last_search_t >= kLateSearchSpacing;
  for (const Candidate& c : s.candidates) {
    if (c.alive && t >= c.next_t) due = true;
  }
  // Until an outline has been followed for a while the past is still needed.
  if (!s.candidates.empty() && t - s.candidates.back().born_t < 3.0 &&
      t - s.last_work_t >= 2.0 * kWorkSpacing) {
    due = true;
  }
  if (facts.frames == 1) due = true;
  if (due) s.Work(frame, t);
}

void PuddleTracker::State::Facts(const WorkPicture& work) {
  if (!last_y.empty()) {
    cv::Mat difference;
    cv::absdiff(work.y, last_y, difference);
    if (cv::countNonZero(difference) != 0) equal_since = work.t_s;
  } else {
    equal_since = work.t_s;
  }
  track.picture.frozen_s =
      std::max(track.picture.frozen_s, work.t_s - equal_since);
  last_y = work.y;
  // Brightest percent, on a thinned grid.
  std::vector<unsigned char> values;
  for (int r = 0; r < work.y.rows; r += 4) {
    const unsigned char* row = work.y.ptr<unsigned char>(r);
    for (int c = 0; c < work.y.cols; c += 4) values.push_back(row[c]);
  }
  if (!values.empty()) {
    const auto at =
        values.begin() + static_cast<std::ptrdiff_t>(values.size() * 99 / 100);
    std::nth_element(values.begin(), at, values.end());
    if (brightness.size() < 512) brightness.push_back(*at / 255.0);
  }
}

// True while nothing that grows and lasts is followed: the lip of a cup may
// have been followed and lost.
bool PuddleTracker::State::Seeking() const {
  return std::none_of(
      candidates.begin(), candidates.end(), [](const Candidate& c) {
        return c.alive && c.samples.size() >= 20 && c.Growth() > kGrows;
      });
}

// The first picture as it lies under the present one.
BareGround PuddleTracker::State::Under(cv::Point2f shift) const {
  return {&bare,
          static_cast<double>(shift.x) * factor,
          static_cast<double>(shift.y) * factor,
          shifts->zoom_holds() ? static_cast<double>(shifts->zoom()) : 1.0};
}

void PuddleTracker::State::Work(const Frame& frame, double t) {
  WorkPicture work = ReducePicture(frame, factor);
  work.t_s = t;
  last_work_t = t;
  Facts(work);
  if (!shifts) {
    shifts.emplace(work.y);
    reference_edges = FindEdges(work);
    reference = work;
    bare = frame;
    bare.luma = frame.luma.clone();
    bare.cb = frame.cb.clone();
    bare.cr = frame.cr.clone();
  } else {
    work.shift = shifts->Find(work.y);
  }
  ring.push_back(work);
  if (ring.size() > kRingSize) {
    ring.pop_front();
    ring_covers_clip = false;
  }
  Follow(frame, t, work.shift);
  const double spacing = Seeking() ? kSearchSpacing : kLateSearchSpacing;
  if (t - last_search_t >= spacing) {
    last_search_t = t;
    Search(frame, work);
  }
}

void PuddleTracker::State::Search(const Frame& frame, const WorkPicture& work) {
  const EdgeMap edges = FindEdges(work);
  {
    double strongest = 0.0;
    cv::minMaxLoc(edges.magnitude, nullptr, &strongest);
    if (detail.size() < 512) detail.push_back(strongest / 4.0);
    cv::Mat difference;
    cv::absdiff(work.y, reference.y, difference);
    const double changed =
        static_cast<double>(cv::countNonZero(difference > 25)) /
        static_cast<double>(difference.total());
    track.picture.changed_share =
        std::max(track.picture.changed_share, changed);
  }
  const double t = work.t_s;
  for (const Circle& circle : FindCircles(edges, reference_edges, work.shift)) {
    // Already followed?
    const double full = factor;
    bool followed = false, around = false;
    for (Candidate& c : candidates) {
      const double x = (c.trace.shape.x + 0.5) / full - 0.5;
      const double y = (c.trace.shape.y + 0.5) / full - 0.5;
      const double r = c.trace.shape.r / full;
      if (!c.alive || std::hypot(x - circle.x, y - circle.y) > 0.35 * r) {
        continue;
      }
      const bool same = std::abs(circle.r - r) < 0.15 * r + 1.0;
      const double unseen_s = t - c.last_seen;
      if (!same && circle.r > r && unseen_s < kLostAfter) {
        // What is followed may be a lamp's reflection, which grows as well.
        around = true;
      } else if (same || unseen_s < 3.0 * kSearchSpacing) {
        followed = true;
      } else {
        c.alive = false;  // lost; the outline found now is another one
      }
    }
    if (followed) continue;
    Pending* known = nullptr;
    for (Pending& p : pending) {
      if (std::hypot(p.circle.x - circle.x, p.circle.y - circle.y) <
              std::max(2.5, 0.12 * p.circle.r) &&
          circle.r > 0.9 * p.circle.r - 1.0 &&
          circle.r < 1.25 * p.circle.r + 2.0) {
        known = &p;
      }
    }
    if (known == nullptr) {
      pending.push_back({circle, 1, t, around});
      continue;
    }
    known->circle = circle;
    known->last_t = t;
    if (++known->hits < kHitsToFollow) continue;
    known->hits = kHitsToFollow - 1;  // try again next time if it fails now
    OutlineShape guess;
    guess.x = (circle.x + 0.5) * full - 0.5;
    guess.y = (circle.y + 0.5) * full - 0.5;
    guess.r = circle.r * full;
    const double window =
        std::min(std::max(0.25 * guess.r, 2.5 * full + 5.0), 0.8 * guess.r);
    const BareGround under = Under(work.shift);
    const auto trace = TraceOutline(frame, guess, window, &under);
    if (!trace || trace->visible < kLeastVisible) continue;
    Candidate candidate;
    candidate.trace = *trace;
    candidate.shift = work.shift;
    candidate.born_t = t;
    candidate.last_seen = t;
    candidate.next_t = t;
    candidate.start =
        FindPuddleStart(ring, reference, *trace, factor, ring_covers_clip);
    if (candidates.size() >= kMostCandidates) {
      // Make room: the dead one with the fewest samples, else the youngest.
      auto worst =
          std::min_element(candidates.begin(),
                           candidates.end(),
                           [](const Candidate& a, const Candidate& b) {
                             if (a.alive != b.alive) return !a.alive;
                             return a.samples.size() < b.samples.size();
                           });
      candidates.erase(worst);
    }
    candidates.push_back(std::move(candidate));
    known->last_t = -1e9;  // done
    Follow(frame, t, work.shift);
  }
  pending.erase(std::remove_if(pending.begin(),
                               pending.end(),
                               [&](const Pending& p) {
                                 return t - p.last_t >
                                        (p.around ? 2.5 * kLateSearchSpacing
                                                  : 4.5 * kSearchSpacing);
                               }),
                pending.end());
}

void PuddleTracker::State::Follow(const Frame& frame,
                                  double t,
                                  cv::Point2f shift) {
  std::optional<OutlineShape> whole;
  for (Candidate& c : candidates) {
    if (!c.alive || t < c.next_t) continue;
    const double window = std::clamp(0.12 * c.trace.shape.r, 8.0, 48.0);
    OutlineShape guess = c.trace.shape;
    guess.x += static_cast<double>(shift.x - c.shift.x) * factor;
    guess.y += static_cast<double>(shift.y - c.shift.y) * factor;
    if (c.samples.size() >= 2) {
      // Where it will have got to, at the last pace.
      const FrontSample& a = c.samples[c.samples.size() - 2];
      const FrontSample& b = c.samples.back();
      const double pace = (b.radius_px - a.radius_px) / (b.t_s - a.t_s);
      guess.r += std::clamp(pace * (t - b.t_s), 0.0, 0.08 * guess.r);
    }
    const BareGround under = Under(shift);
    // Reading it costs as much as the outline: a plain ground mostly stays one.
    const bool ask =
        c.trace.patterned || c.missed || c.samples.size() % kAskGround == 0;
    const auto trace = TraceOutline(
        frame, guess, std::min(window, 0.8 * guess.r), ask ? &under : nullptr);
    c.missed = !trace || trace->visible < kLeastVisible;
    if (c.missed) {
      if (trace && trace->off_picture > 0.1) c.left_picture = true;
      if (!trace) {
        // Rays beyond the border alone can be the reason.
        const OutlineShape& o = c.trace.shape;
        if (o.x - o.r < 2 || o.y - o.r < 2 || o.x + o.r > track.width_px - 3 ||
            o.y + o.r > track.height_px - 3) {
          c.left_picture = true;
        }
      }
      c.next_t = t + kRetrySpacing;
      if (t - c.last_seen > kLostAfter) c.alive = false;
      continue;
    }
    c.trace = *trace;
    c.shift = shift;
    c.last_seen = t;
    c.next_t = t + kSampleShare * (t - c.born_t);
    if (trace->off_picture > 0.02) c.left_picture = true;
    FrontSample sample;
    sample.t_s = t;
    sample.radius_px = trace->shape.r;
    sample.radius_sd_px = trace->radius_sd_px;
    sample.x_px = trace->shape.x;
    sample.y_px = trace->shape.y;
    sample.shift_x_px = static_cast<double>(shift.x) * factor;
    sample.shift_y_px = static_cast<double>(shift.y) * factor;
    sample.zoom = static_cast<double>(shifts->zoom());
    sample.zoom_holds = shifts->zoom_holds();
    sample.c2_px = trace->shape.c2;
    sample.s2_px = trace->shape.s2;
    sample.c3_px = trace->shape.c3;
    sample.s3_px = trace->shape.s3;
    sample.visible = trace->visible;
    sample.in_picture = 1.0 - trace->off_picture;
    sample.roughness_px = trace->roughness_px;
    sample.sector_px = trace->sector_px;
    c.samples.push_back(sample);
    if (c.contrast.size() < 256) {
      c.contrast.push_back(trace->contrast_to_noise);
      c.edge_width.push_back(trace->edge_width_px);
    }
    if (trace->visible > 0.9) {
      whole = trace->shape;
      if (!c.start_final) {
        // Seen whole for the first time: centre and colour are now sure.
        c.start =
            FindPuddleStart(ring, reference, *trace, factor, ring_covers_clip);
        c.start_final = true;
      }
    }
  }
  if (whole && !options.mm_per_px) AddClean(frame, shift, *whole);
}

void PuddleTracker::State::AddClean(const Frame& frame,
                                    cv::Point2f shift,
                                    const OutlineShape& at) {
  if (clean_count == kCleanFrames) return;
  // Only frames that lie on each other are added; a moved camera starts anew.
  const cv::Point2f moved = (shift - clean_shift) * factor;
  const bool steady = std::hypot(moved.x, moved.y) <= 0.3F;
  if (!steady && clean_count < kCleanFrames / 2) clean_count = 0;
  if (clean_count == 0) {
    frame.luma.convertTo(clean_sum, CV_16U);
    clean_shift = shift;
    clean_zoom = shifts->zoom();
    clean_count = 1;
  } else if (steady) {
    cv::add(clean_sum, frame.luma, clean_sum, cv::noArray(), CV_16U);
    ++clean_count;
  }
  if (clean_count == kCleanFrames) FindRuler(at);
}

void PuddleTracker::State::FindRuler(const OutlineShape& at) {
  cv::Mat clean;
  clean_sum.convertTo(clean, CV_8U, 1.0 / clean_count);
  ruler_at = PixelCircle{at.x, at.y, at.r};
  ruler = FindRulerScale(clean, ruler_at);
}

// The one most like a puddle, if any was followed long enough.
Candidate* PuddleTracker::State::Best() {
  Candidate* best = nullptr;
  for (Candidate& c : candidates) {
    if (c.samples.size() < kLeastSamples) continue;
    if (best == nullptr || c.Score() > best->Score()) best = &c;
  }
  if (best == nullptr) return best;
  // A reflection on the paint grows as the puddle does: the outline round it is
  // the puddle's, also if it was found later.
  for (Candidate& c : candidates) {
    if (c.samples.size() < kLeastSamples || c.Growth() < kGrows) continue;
    const FrontSample& out = c.samples.back();
    const FrontSample& in = best->samples.back();
    if (std::abs(out.t_s - in.t_s) < kLostAfter &&
        out.radius_px > 1.1 * in.radius_px &&
        std::hypot(out.x_px - in.x_px, out.y_px - in.y_px) + in.radius_px <
            1.05 * out.radius_px &&
        c.Score() > 0.3 * best->Score()) {
      best = &c;
    }
  }
  return best;
}

std::optional<FrontSample> PuddleTracker::Newest() const {
  const Candidate* best = state_->Best();
  if (best == nullptr || !best->alive || best->Growth() < kGrows) {
    return std::nullopt;
  }
  return best->samples.back();
}

FrontTrack PuddleTracker::Finish() {
  State& s = *state_;
  FrontTrack track = std::move(s.track);
  PictureFacts& facts = track.picture;
  facts.brightness = MedianOf(s.brightness);
  facts.detail = MedianOf(s.detail);

  Candidate* best = s.Best();
  if (best == nullptr) return track;
  // The same puddle, lost behind a hand and found again, goes on in another
  // candidate; one that begins small in the same place is a second pour.
  std::vector<Candidate*> others;
  for (Candidate& c : s.candidates) {
    if (&c != best && c.samples.size() >= 2 * kLeastSamples) {
      others.push_back(&c);
    }
  }
  std::sort(others.begin(), others.end(), [](const auto* a, const auto* b) {
    return a->born_t < b->born_t;
  });
  for (Candidate* c : others) {
    const double apart = std::hypot(c->trace.shape.x - best->trace.shape.x,
                                    c->trace.shape.y - best->trace.shape.y);
    const double joint = c->trace.shape.r + best->trace.shape.r;
    const bool later = c->samples.front().t_s > best->samples.back().t_s;
    const bool earlier = c->samples.back().t_s < best->samples.front().t_s;
    Candidate* first = later ? best : c;
    Candidate* second = later ? c : best;
    if (!later && !earlier) {
      // Two puddles lie side by side; the round end of a syringe lies over one.
      const double reach =
          c->samples.back().radius_px + best->RadiusAt(c->samples.back().t_s);
      if (apart > 0.9 * reach &&
          c->Growth() > std::max(kGrows, 0.25 * best->Growth()) &&
          c->Duration() > 0.4 * best->Duration()) {
        ++track.other_puddles;
      }
      continue;
    }
    const double step =
        second->samples.front().radius_px / first->samples.back().radius_px;
    if (step > 0.99 && step < 1.15) {
      std::vector<FrontSample> joined = first->samples;
      joined.insert(
          joined.end(), second->samples.begin(), second->samples.end());
      best->samples = std::move(joined);
      best->start = first->start;
      if (apart > 0.1 * joint) track.moved = true;
      best->left_picture = first->left_picture || second->left_picture;
      best->last_seen = second->last_seen;
    } else if (step <= 0.9 && c->Growth() > kGrows &&
               c->Duration() > 0.2 * best->Duration()) {
      ++track.later_puddles;  // here or elsewhere
    }
  }
  const bool zoomed = ZoomHolds(best->samples);
  if (!zoomed) {
    for (FrontSample& sample : best->samples) sample.zoom = 1.0;
  }
  track.samples = std::move(best->samples);
  track.start_s = best->start.start_s;
  track.start_sd_s = best->start.sd_s;
  track.there_from_start = best->start.there_from_start;
  track.left_picture = best->left_picture;
  track.last_seen_s = best->last_seen;
  track.contrast_to_noise = MedianOf(best->contrast);
  track.edge_width_px = MedianOf(best->edge_width);
  track.rim_only = best->trace.rim_only;
  if (s.options.mm_per_px) {
    ImageScale given;
    given.mm_per_px = *s.options.mm_per_px;
    given.rel_sd = s.options.mm_per_px_rel_sd;
    given.method = "given";
    track.scale = given;
  } else if (s.clean_count > 0) {
    const OutlineShape& shape = best->trace.shape;
    if (!s.ruler || std::hypot(shape.x - s.ruler_at.x, shape.y - s.ruler_at.y) >
                        0.1 * shape.r) {
      s.FindRuler(shape);
    }
    track.scale = s.ruler->scale;
    if (zoomed) track.scale_zoom = static_cast<double>(s.clean_zoom);
    track.scale_note = s.ruler->note;
  } else {
    track.scale_note = "The puddle was never seen free of hand and syringe.";
  }
  return track;
}

}  // namespace flowkin
