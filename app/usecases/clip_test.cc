#include "app/usecases/clip_test.h"

#include <algorithm>
#include <cmath>
#include <ostream>
#include <utility>
#include <vector>

#include "app/usecases/draw_found.h"
#include "core/base/check.h"
#include "core/flow/level_test.h"
#include "core/flow/puddle_test.h"
#include "core/flow/stream_test.h"
#include "core/vision/level_tracker.h"
#include "core/vision/puddle_tracker.h"
#include "core/vision/stream_tracker.h"

namespace flowkin {
namespace {

// As PuddleTestOptions.
constexpr double kMinVolumeMl = 0.1;
constexpr double kMaxVolumeMl = 100.0;
constexpr double kMaxMmPerPx = 100.0;

std::vector<FoundLine> LinesOf(const StreamPlace& at) {
  const double left = at.stick_center_x_px - 0.5 * at.stick_width_px;
  const double right = at.stick_center_x_px + 0.5 * at.stick_width_px;
  return {{{{left, at.stick_bottom_y_px}, {right, at.stick_bottom_y_px}}},
          {{{at.stream_x_px, at.stick_bottom_y_px},
            {at.stream_x_px +
                 at.stream_lean * (at.pool_y_px - at.stick_bottom_y_px),
             at.pool_y_px}}},
          {{{left, at.pool_y_px}, {right, at.pool_y_px}}}};
}

std::vector<FoundLine> LinesOf(const FrontSample& s) {
  FoundLine outline;
  outline.closed = true;
  constexpr int kCorners = 48;
  for (int i = 0; i < kCorners; ++i) {
    const double a = 2.0 * CV_PI * i / kCorners;
    const double r = s.radius_px + s.c2_px * std::cos(2.0 * a) +
                     s.s2_px * std::sin(2.0 * a) + s.c3_px * std::cos(3.0 * a) +
                     s.s3_px * std::sin(3.0 * a);
    outline.points.emplace_back(s.x_px + r * std::cos(a),
                                s.y_px + r * std::sin(a));
  }
  return {outline};
}

std::vector<FoundLine> LinesOf(const std::vector<ReliefPoint>& outline_px) {
  if (outline_px.empty()) return {};
  FoundLine outline;
  outline.closed = true;
  for (const ReliefPoint& p : outline_px) {
    outline.points.emplace_back(p.x_px, p.y_px);
  }
  return {outline};
}

class StreamClipTest : public ClipTest {
 public:
  explicit StreamClipTest(const ClipTestOptions& options) {
    options_.lift_s = options.by_hand.lift_s;
    options_.break_s = options.by_hand.break_s;
  }

  void Add(const Frame& frame) override { tracker_.Add(frame); }

  std::vector<FoundLine> LinesNow() const override {
    const std::optional<StreamPlace> place = tracker_.Place();
    return place ? LinesOf(*place) : std::vector<FoundLine>();
  }

  void Follow(const ClipTest&) override {}  // it knows by itself

  FlowMeasurement Finish() override {
    track_ = tracker_.Finish();
    measurement_ = MeasureStream(track_, options_);
    return measurement_;
  }

  std::unique_ptr<ClipTest> Copy() const override {
    return std::make_unique<StreamClipTest>(*this);
  }

  bool Begun() const override { return !track_.episodes.empty(); }

  std::vector<FoundLine> Lines() const override {
    if (track_.episodes.empty()) return {};
    const StreamEpisode& e = track_.episodes.back();
    return LinesOf(StreamPlace{e.stick_center_x_px,
                               e.stick_width_px,
                               e.stick_bottom_y_px,
                               e.stream_x_px,
                               e.stream_lean,
                               e.pool_y_px});
  }

  void DrawFound(cv::Mat& bgr, double t_s) const override {
    DrawStream(bgr, t_s, track_, measurement_);
  }

  void WriteTrace(std::ostream& out) const override {
    // One row for every piece of the fall, uppermost first, of every moment.
    out << "episode,t_s,piece,presence,presence_sd,strength,width_px\n";
    for (std::size_t e = 0; e < track_.episodes.size(); ++e) {
      const StreamEpisode& episode = track_.episodes[e];
      const auto pieces =
          static_cast<std::size_t>(std::max(0, episode.num_pieces));
      for (std::size_t i = 0; i < episode.t_s.size() * pieces; ++i) {
        out << e << ',' << episode.t_s[i / pieces] << ',' << i % pieces << ','
            << episode.presence[i] << ',' << episode.presence_sd[i] << ','
            << episode.strength[i] << ',' << episode.width_px[i] << '\n';
      }
    }
    // And one for every outline on the stick, where it is seen.
    out << "\nepisode,t_s,band,side,edge_px\n";
    for (std::size_t e = 0; e < track_.episodes.size(); ++e) {
      const StreamEpisode& episode = track_.episodes[e];
      for (const CoatEdge& edge : episode.coat_edges)
        for (std::size_t i = 0; i < edge.x_px.size(); ++i)
          if (std::isfinite(edge.x_px[i]))
            out << e << ',' << episode.coat_t_s[i] << ',' << edge.band << ','
                << edge.side << ',' << edge.x_px[i] << '\n';
    }
  }

 private:
  StreamTestOptions options_;
  StreamTracker tracker_;
  StreamTrack track_;
  FlowMeasurement measurement_;
};

class LevelClipTest : public ClipTest {
 public:
  explicit LevelClipTest(const ClipTestOptions& options)
      : tracker_(TrackerOptions(options)) {}

  void Add(const Frame& frame) override { tracker_.Add(frame); }

  std::vector<FoundLine> LinesNow() const override {
    return LinesOf(tracker_.OutlineNow());
  }

  /// What levels is known only once it has begun to.
  void Follow(const ClipTest& seen) override {
    const auto* level = dynamic_cast<const LevelClipTest*>(&seen);
    FLOWKIN_CHECK(level != nullptr);
    tracker_.Follow(level->Begun() ? level->track_.outline_px
                                   : std::vector<ReliefPoint>());
  }

  FlowMeasurement Finish() override {
    track_ = tracker_.Finish();
    measurement_ = MeasureLevel(track_);
    return measurement_;
  }

  std::unique_ptr<ClipTest> Copy() const override {
    return std::make_unique<LevelClipTest>(*this);
  }

  bool Begun() const override { return track_.laid_s.has_value(); }

  std::vector<FoundLine> Lines() const override {
    return LinesOf(track_.outline_px);
  }

  void DrawFound(cv::Mat& bgr, double t_s) const override {
    DrawRelief(bgr, t_s, track_, measurement_);
  }

  void WriteTrace(std::ostream& out) const override {
    out << "t_s,motion_luma,contrast_luma,contrast_sd_luma,share,brightness,"
           "shift_px\n";
    for (const ReliefSample& sample : track_.samples) {
      out << sample.t_s << ',' << sample.motion << ',' << sample.contrast << ','
          << sample.contrast_sd << ',' << sample.share << ','
          << sample.brightness << ',' << sample.shift_px << '\n';
    }
  }

 private:
  static LevelTrackerOptions TrackerOptions(const ClipTestOptions& options) {
    LevelTrackerOptions result;
    result.laid_s = options.by_hand.laid_s;
    return result;
  }

  LevelTracker tracker_;
  ReliefTrack track_;
  FlowMeasurement measurement_;
};

class PuddleClipTest : public ClipTest {
 public:
  explicit PuddleClipTest(const ClipTestOptions& options)
      : tracker_(TrackerOptions(options)) {
    options_.volume_ml = options.volume_ml;
    options_.start_s = options.by_hand.start_s;
  }

  void Add(const Frame& frame) override { tracker_.Add(frame); }

  std::vector<FoundLine> LinesNow() const override {
    const std::optional<FrontSample> newest = tracker_.Newest();
    return newest ? LinesOf(*newest) : std::vector<FoundLine>();
  }

  void Follow(const ClipTest&) override {}  // it knows by itself

  FlowMeasurement Finish() override {
    track_ = tracker_.Finish();
    measurement_ = MeasurePuddle(track_, options_);
    return measurement_;
  }

  std::unique_ptr<ClipTest> Copy() const override {
    return std::make_unique<PuddleClipTest>(*this);
  }

  bool Begun() const override {
    return track_.samples.size() > 1 && !track_.there_from_start;
  }

  std::vector<FoundLine> Lines() const override {
    if (track_.samples.empty()) return {};
    return LinesOf(track_.samples.back());
  }

  void DrawFound(cv::Mat& bgr, double t_s) const override {
    DrawFront(bgr, t_s, track_);
  }

  void WriteTrace(std::ostream& out) const override {
    WriteFrontTrace(out, track_);
  }

 private:
  static PuddleTrackerOptions TrackerOptions(const ClipTestOptions& options) {
    PuddleTrackerOptions result;
    result.mm_per_px = options.mm_per_px;
    return result;
  }

  PuddleTestOptions options_;
  PuddleTracker tracker_;
  FrontTrack track_;
  FlowMeasurement measurement_;
};

}  // namespace

Result<void> ClipTestOptions::Validate() const {
  if (volume_ml &&
      !(*volume_ml >= kMinVolumeMl && *volume_ml <= kMaxVolumeMl)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The volume must lie between 0.1 and 100 mL; give the volume "
                 "that was laid on the tile."};
  }
  if (mm_per_px && !(*mm_per_px > 0.0 && *mm_per_px <= kMaxMmPerPx)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The scale must lie above 0 and not above 100 mm per pixel; "
                 "give the millimetres that one pixel spans."};
  }
  return {};
}

std::unique_ptr<ClipTest> MakeClipTest(const ClipTestOptions& options) {
  FLOWKIN_CHECK(options.Validate().has_value());
  switch (options.kind) {
    case TestKind::kStream:
      return std::make_unique<StreamClipTest>(options);
    case TestKind::kLevel:
      return std::make_unique<LevelClipTest>(options);
    case TestKind::kPuddle:
      return std::make_unique<PuddleClipTest>(options);
  }
  FLOWKIN_CHECK(false);
}

}  // namespace flowkin
