#include "core/flow/stream_test.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/fit/least_squares.h"
#include "core/fit/robust.h"

namespace flowkin {
namespace {

// How the break time grows with viscosity. Theory bounds the exponent by 1/3 (a
// fixed critical flow) and 5/3 (breakup length equal to the fall)
// [Javadi2013]. In between it depends on stick, height and paint. The
// slender-thread equations (tests/support/stream_sim), solved for random
// benches (stick 6-20 mm wide, thread hanging from a patch of 1.7-3 mm radius,
// dip 20-55 mm, fall 35-105 mm, 250-4500 mm2/s, surface tension 27-36 mN/m)
// and pairs of paints 1.6 to 3 apart, give 0.78 on average, 0.10 (1 sd) from
// bench to bench once the chance in each break is taken off.
constexpr Estimate kBreakTimeExponent{0.78, 0.1};

// When a thread this thin parts is partly chance, and a paint with a lower
// surface tension holds longer: in the slender thread another seed of the
// disturbance moves the break by 2 %, a change of surface tension by 1 % moves
// it by 1.3 % the other way. Paints mixed with the same medium are taken to lie
// within 2 % of each other there.
constexpr double kBreakChanceRelSd = 0.033;

// Film left on the stick [Jeffreys1930]: flow ~ nu^(1/2) t^(-3/2), so the time
// one drop takes, brought to a common time, goes with nu^(-1/2).
constexpr Estimate kDripExponent{-0.5, 0.02};
// Drops off a flat stick are not all of one size; common practice, no source.
constexpr double kDropVolumeRelSd = 0.1;

// Speed of the neck ~ sigma / mu [Papageorgiou1995]. Density and surface
// tension differ a little from paint to paint.
constexpr Estimate kThinningExponent{-1.0, 0.1};

// Standard uncertainty of an event read off the pictures, as a share of their
// distance.
constexpr double kFrameShare = 0.6;

struct Break {
  double t_s = 0.0;
  double sd_s = 0.0;
};

/// Looks at one episode's pieces.
class Pieces {
 public:
  explicit Pieces(const StreamEpisode& e) : e_(e), presence_(e.presence) {
    Smooth();
  }

  /// A stream that runs: seen in most pieces for a while.
  bool HasStream() const {
    std::size_t seen = 0;
    for (std::size_t i = 0; i < Samples(); ++i) {
      int n = 0;
      for (int p = kFirst; p < Count(); ++p) n += Reliable(i, p) ? 1 : 0;
      if (n * 2 >= Count() - kFirst) ++seen;
    }
    return seen >= 6;
  }

  std::optional<Break> FindBreak() const {
    for (std::size_t i = 1; i < Samples(); ++i) {
      const int p = Gap(i);
      if (p < 0 || !LastsFrom(i) || !AllGoSoon(i) || !WasThere(i)) continue;
      // Back to where the gap began: the crossing of one half in whichever of
      // the two pieces went first.
      const double a = Crossing(i, p);
      const double b = Crossing(i, p + 1);
      return Break{std::min(a, b), kFrameShare * (e_.t_s[i] - e_.t_s[i - 1])};
    }
    return std::nullopt;
  }

 private:
  // The two uppermost pieces hold what hangs from the stick.
  static constexpr int kFirst = 2;
  static constexpr float kGone = 0.4F;
  static constexpr float kReliableSd = 0.15F;

  std::size_t Samples() const { return e_.t_s.size(); }
  int Count() const { return e_.num_pieces; }
  std::size_t At(std::size_t i, int p) const {
    return i * static_cast<std::size_t>(e_.num_pieces) +
           static_cast<std::size_t>(p);
  }
  float Presence(std::size_t i, int p) const { return presence_[At(i, p)]; }
  bool Reliable(std::size_t i, int p) const {
    return e_.presence_sd[At(i, p)] < 3.0F * kReliableSd;
  }
  bool Gone(std::size_t i, int p) const {
    return Reliable(i, p) && Presence(i, p) < kGone;
  }

  // Where the picture is noisy, a running mean long enough to bring a piece's
  // presence within kReliableSd, at most seven pictures.
  void Smooth() {
    for (int p = 0; p < Count(); ++p)
      for (std::size_t i = 0; i < Samples(); ++i) {
        const float sd = e_.presence_sd[At(i, p)];
        const float need = (sd / kReliableSd) * (sd / kReliableSd);
        const auto half = static_cast<std::size_t>(
            std::clamp(std::ceil((need - 1.0F) / 2.0F), 0.0F, 3.0F));
        if (half == 0 || !Reliable(i, p)) continue;
        float sum = 0.0F;
        int n = 0;
        for (std::size_t k = i - std::min(i, half);
             k <= std::min(i + half, Samples() - 1);
             ++k) {
          sum += e_.presence[At(k, p)];
          ++n;
        }
        presence_[At(i, p)] = sum / static_cast<float>(n);
      }
  }

  // Uppermost of two neighbouring pieces that are gone, or -1.
  int Gap(std::size_t i) const {
    for (int p = 0; p + 1 < Count(); ++p)
      if (Gone(i, p) && Gone(i, p + 1)) return p;
    return -1;
  }

  // One bad picture is not a gap, unless pictures are rare.
  bool LastsFrom(std::size_t i) const {
    for (std::size_t k = i; k < Samples() && e_.t_s[k] < e_.t_s[i] + 0.03; ++k)
      if (Gap(k) < 0) return false;
    return true;
  }

  double Crossing(std::size_t i, int p) const {
    std::size_t k = i;
    while (k > 1 && Presence(k - 1, p) < 0.5F &&
           e_.t_s[i] - e_.t_s[k - 1] < 0.05)
      --k;
    const double before = Presence(k - 1, p), after = Presence(k, p);
    if (before <= 0.5 || after >= 0.5) return e_.t_s[k];
    return e_.t_s[k - 1] +
           (e_.t_s[k] - e_.t_s[k - 1]) * (before - 0.5) / (before - after);
  }

  // A piece parts at once: it is there, and a moment later it is not. (What
  // fades slowly is the light, or a stream that merely thins.)
  bool Parts(std::size_t from, int p, double limit_s) const {
    for (std::size_t k = from; k < Samples() && e_.t_s[k] <= limit_s; ++k) {
      if (!Gone(k, p)) continue;
      for (std::size_t j = k; j-- > 0 && e_.t_s[k] - e_.t_s[j] < 0.075;)
        if (Presence(j, p) > 0.65F) return true;
      if (k > 0 && e_.t_s[k] - e_.t_s[k - 1] >= 0.075 &&
          Presence(k - 1, p) > 0.65F)
        return true;
    }
    return false;
  }

  // Once a stream has broken for good the rest of it runs off within a short
  // time: most pieces part, and then most are gone together.
  bool AllGoSoon(std::size_t i) const {
    const double limit =
        e_.t_s[i] + std::max(0.5, 0.1 * (e_.t_s[i] - e_.rest_s));
    int pieces = 0, parted = 0;
    std::vector<int> judged;
    for (int p = kFirst; p < Count(); ++p) {
      if (!Reliable(i > 3 ? i - 3 : 0, p)) continue;
      ++pieces;
      judged.push_back(p);
      if (Parts(i > 3 ? i - 3 : 0, p, limit)) ++parted;
    }
    // Seen over most of the fall, or what parts first may be what is not seen.
    if (pieces * 3 < (Count() - kFirst) * 2) return false;
    if (parted * 10 < pieces * 6) return false;
    for (std::size_t k = i; k < Samples() && e_.t_s[k] <= limit; ++k) {
      int gone = 0;
      for (const int p : judged) gone += Presence(k, p) < 0.5F ? 1 : 0;
      if (gone * 10 >= pieces * 7) return true;
    }
    return false;
  }

  // What went was most of what stood there: else the stream is still there at
  // the end of the clip and only its small changes were seen.
  bool WasThere(std::size_t i) const {
    std::vector<double> share;
    for (std::size_t k = i; k-- > 0 && e_.t_s[i] - e_.t_s[k] < 0.25;)
      for (int p = kFirst; p < Count(); ++p)
        if (Reliable(k, p)) share.push_back(e_.share[At(k, p)]);
    return !share.empty() && Median(share) > 0.75 && e_.like_end[i] < 0.4F;
  }

  const StreamEpisode& e_;
  std::vector<float> presence_;
};

/// Moments at which the paint between stick and pool parts after `from_s`:
/// the stream's own upper part first, then one per drop.
std::vector<double> FindDrips(const StreamEpisode& e, double from_s) {
  // Just below what hangs from the stick.
  const int first = 3, last = 5;
  std::vector<double> level(e.t_s.size());
  for (std::size_t i = 0; i < level.size(); ++i)
    for (int p = first; p <= last; ++p)
      level[i] =
          std::max(level[i],
                   static_cast<double>(
                       e.strength[i * static_cast<std::size_t>(e.num_pieces) +
                                  static_cast<std::size_t>(p)]));
  std::vector<double> before;
  for (std::size_t i = 0; i < level.size() && e.t_s[i] < from_s; ++i)
    if (e.t_s[i] > from_s - 0.4) before.push_back(level[i]);
  std::vector<double> drips;
  if (before.empty()) return drips;
  const double high = std::max(4.0, 0.5 * Median(before));
  bool there = true;
  for (std::size_t i = 1; i < level.size(); ++i) {
    if (e.t_s[i] < from_s) continue;
    if (there && level[i] < 0.6 * high) {
      drips.push_back(e.t_s[i]);
      there = false;
    } else if (!there && level[i] > high && e.t_s[i] - drips.back() > 0.05) {
      there = true;
    }
  }
  return drips;
}

std::optional<FlowProxy> DripInterval(double lift_s,
                                      const std::vector<double>& drips_s) {
  if (drips_s.size() < 3) return std::nullopt;
  std::vector<double> ln;
  for (std::size_t k = 1; k < drips_s.size(); ++k) {
    const double a = drips_s[k - 1] - lift_s;
    const double b = drips_s[k] - lift_s;
    ln.push_back(std::log(2.0 * (1.0 / std::sqrt(a) - 1.0 / std::sqrt(b))));
  }
  const double n = static_cast<double>(ln.size());
  double mean = 0.0, square = 0.0;
  for (const double v : ln) mean += v / n;
  for (const double v : ln) square += (v - mean) * (v - mean);
  const double sd =
      std::max(kDropVolumeRelSd, std::sqrt(square / (n - 1.0))) / std::sqrt(n);
  return FlowProxy{
      "drip_interval", std::exp(mean), "s", {mean, sd}, kDripExponent};
}

/// The straight last part of a neck's way to a pinch, in the piece where it
/// is longest in view.
std::optional<FlowProxy> ThinningRate(const StreamEpisode& e, double end_s) {
  std::optional<FlowProxy> best;
  for (int p = 1; p < e.num_pieces; ++p) {
    std::vector<double> t, w;
    for (std::size_t i = 0; i < e.t_s.size() && e.t_s[i] < end_s; ++i) {
      const double width =
          e.width_px[i * static_cast<std::size_t>(e.num_pieces) +
                     static_cast<std::size_t>(p)];
      if (e.t_s[i] < end_s - 1.5 || width < 2.5) continue;
      t.push_back(e.t_s[i] - end_s);
      w.push_back(width);
    }
    // From 8 px or more to less than half, in at least 8 pictures.
    if (t.size() < 8 || w.front() < 8.0 || w.back() > 0.45 * w.front())
      continue;
    std::vector<double> design(3 * t.size(), 1.0);
    for (std::size_t i = 0; i < t.size(); ++i) {
      design[t.size() + i] = t[i];
      design[2 * t.size() + i] = t[i] * t[i];
    }
    const std::span<const double> all(design);
    const FitResult line = FitLinear(all.first(2 * t.size()), w, {});
    const FitResult bend = FitLinear(all, w, {});
    if (!line.IsUsable() || !bend.IsUsable()) continue;
    // A curved way means shear thinning or a stream that is still fed: no
    // single rate.
    const Estimate curve = bend.Parameter(2);
    const double span_s = t.back() - t.front();
    const double bow_px = std::abs(curve.value) * span_s * span_s / 8.0;
    if (bow_px > 0.06 * (w.front() - w.back())) continue;
    const Estimate rate = line.Parameter(1);
    if (rate.value > -3.0 * rate.sd) continue;
    const double rel = std::hypot(rate.sd / -rate.value, 0.03);
    if (!best || rel < best->ln_value.sd)
      best = FlowProxy{"thinning_rate",
                       -rate.value,
                       "px/s",
                       {std::log(-rate.value), rel},
                       kThinningExponent};
  }
  return best;
}

/// A break changes a few pixels; a knock, a stuck camera that comes back or a
/// hand changes them all.
bool PictureJumps(const StreamEpisode& e, double break_s) {
  std::vector<double> usual;
  double here = 0.0;
  for (std::size_t i = 0; i < e.t_s.size(); ++i) {
    usual.push_back(e.change[i]);
    if (e.t_s[i] > break_s - 0.15 && e.t_s[i] < break_s + 0.15)
      here = std::max(here, static_cast<double>(e.change[i]));
  }
  return here > 1.0 && here > 5.0 * Median(usual);
}

FlowMeasurement Refuse(std::string reason) {
  FlowMeasurement m;
  m.kind = TestKind::kStream;
  m.outcome = Outcome::kRefused;
  m.reason = std::move(reason);
  return m;
}

std::string ReasonForNoEpisode(const StreamTrack& track) {
  if (track.num_frames < 10)
    return "The clip is too short to hold a stream test; film from before the "
           "lift until the drips.";
  if (track.mean_luma < 12.0 && track.luma_spread < 8.0)
    return "The picture is black; take the cap off the lens or add light.";
  if (track.rests_without_lift > 0)
    return "The moment the stick leaves the paint could not be seen; start "
           "filming with the stick standing in the paint and lift it straight "
           "up.";
  if (track.luma_spread < 4.0 || track.sharpness < 0.02)
    return "The picture is too blurred or too plain to see a stick; focus on "
           "the stick and film again.";
  if (track.most_motion < 0.002)
    return "Nothing moves in this clip; film the stick being lifted out of "
           "the paint.";
  return "No stick was seen to be lifted out of the paint and held still; "
         "start filming with the stick standing in the cup, lift it straight "
         "up and hold it.";
}

}  // namespace

FlowMeasurement MeasureStream(const StreamTrack& track,
                              const StreamTestOptions& options) {
  const bool by_hand = options.lift_s || options.break_s;
  for (const auto& event : {options.lift_s, options.break_s}) {
    if (event && !(*event >= 0.0 && *event <= track.duration_s)) {
      return Refuse(
          "The moment that was set by hand lies outside the film; choose one "
          "within it.");
    }
  }
  std::vector<const StreamEpisode*> lifts;
  for (const StreamEpisode& e : track.episodes)
    if (Pieces(e).HasStream()) lifts.push_back(&e);
  // A person who names an event says by it which lift is meant.
  const StreamEpisode* meant = lifts.empty() ? nullptr : lifts.front();
  for (const StreamEpisode* e : lifts) {
    if (options.break_s && e->rest_s < *options.break_s) meant = e;
    if (options.lift_s && std::abs(e->rest_s - *options.lift_s) <
                              std::abs(meant->rest_s - *options.lift_s))
      meant = e;
  }
  if (meant == nullptr && !(options.lift_s && options.break_s)) {
    if (track.episodes.empty()) return Refuse(ReasonForNoEpisode(track));
    return Refuse(
        "A stick was lifted but no stream could be seen under it; use a "
        "background that differs from the paint, or more light.");
  }
  if (lifts.size() > 1 && !by_hand)
    return Refuse(
        "The stick was lifted more than once in this clip; keep one test to a "
        "clip.");

  FlowMeasurement m;
  m.kind = TestKind::kStream;
  // What is set by hand is good to about a picture, like what is found.
  const double by_hand_sd_s =
      kFrameShare * track.duration_s /
      static_cast<double>(std::max<std::int64_t>(1, track.num_frames - 1));
  Break lift{0.0, by_hand_sd_s};
  if (options.lift_s) {
    lift.t_s = *options.lift_s;
  } else {
    lift = {meant->lift_s, meant->lift_sd_s};
  }
  Break broke{0.0, by_hand_sd_s};
  if (options.break_s) {
    broke.t_s = *options.break_s;
    if (meant != nullptr && meant->second_stream > 0.5)
      m.warnings.push_back(
          "Two streams seem to run off the stick; dip it straighter or use a "
          "narrower stick.");
  } else {
    if (meant->edge_width_px > 0.35 * meant->stick_width_px)
      return Refuse(
          "The picture is too blurred to see the stream; focus on the stick "
          "and film again.");
    if (meant->second_stream > 0.5)
      return Refuse(
          "Two streams run off the stick; dip it straighter or use a narrower "
          "stick, and film again.");
    const auto found = Pieces(*meant).FindBreak();
    if (!found)
      return Refuse(
          "The stream had not broken by the end of the clip, or it is too "
          "faint to tell; film on until it drips, against a background that "
          "differs from the paint.");
    if (PictureJumps(*meant, found->t_s))
      return Refuse(
          "The camera, the light or something in front of it moved just when "
          "the stream seemed to break; keep all of it still and film again.");
    broke = *found;
  }
  const double time_s = broke.t_s - lift.t_s;
  if (by_hand && !(time_s > by_hand_sd_s)) {
    return Refuse(
        "The stream cannot break before the stick is lifted; set the two "
        "moments in order.");
  }

  m.outcome = Outcome::kMeasured;
  m.lift_s = lift.t_s;
  m.break_s = broke.t_s;
  if (meant != nullptr) m.drips_s = FindDrips(*meant, broke.t_s);
  m.proxies.push_back(
      {"break_time",
       time_s,
       "s",
       {std::log(time_s),
        std::hypot(broke.sd_s / time_s, lift.sd_s / time_s, kBreakChanceRelSd)},
       options.break_time_exponent.value_or(kBreakTimeExponent)});
  if (meant == nullptr) return m;
  if (auto drip = DripInterval(lift.t_s, m.drips_s)) m.proxies.push_back(*drip);
  if (auto rate = ThinningRate(*meant, broke.t_s)) m.proxies.push_back(*rate);
  return m;
}

}  // namespace flowkin
