#include "core/flow/level_test.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/check.h"
#include "core/fit/least_squares.h"

namespace flowkin {
namespace {

/// The thread that is laid changes the picture at least as much as what it
/// leaves behind; weaker motion is noise.
constexpr double kLeastBurst = 0.7;
/// A drip is over sooner.
constexpr double kLongBurst_s = 0.25;
/// Longest laying, in decay times.
constexpr double kMostLayingClocks = 10.0;
/// A decay that is no clean one after a laying this long is more likely thin
/// paint, gone where it was laid first, than a disturbance.
constexpr double kUnevenLayingClocks = 5.0;
/// A step of the camera by this share of the picture's width is no shake.
constexpr double kLargestJump = 0.04;
/// A surface that comes back differs from before by far less than half of what
/// the ribbon made; a stick that stood in the paint and left differs by more.
constexpr double kMostUnlike = 0.5;
/// Edges as soft as a fifteenth of the picture's range per reduced pixel.
constexpr double kLeastSharpness = 0.07;
/// A contrast that climbs again by this share of its start was disturbed.
constexpr double kMostRise = 0.3;
/// How alike a wandering mirror image and the relief may look (correlation);
/// the nearer to 1, the more the one passes for the other. Two soft patterns of
/// a few patches each are alike by about that much by chance.
constexpr double kDriftAlike = 0.5;
/// How unlike, in ln of relief, ribbons are laid and meet the light (a hand's
/// amounts, another colour's highlights; common practice, no source).
constexpr double kLaidUnlike = 0.2;
/// A clock more doubtful than this is none.
constexpr double kMostClockSd = 0.2;
constexpr double kRoughClockSd = 0.1;
/// Pictures per decay time below which its eight bins hold one or two each.
constexpr double kFewPictures = 16.0;
constexpr const char* kHardlySeen =
    "The ribbon can hardly be seen: let a lamp or window mirror in the paint, "
    "or come closer, and film it again.";

FlowMeasurement Refused(std::string reason) {
  FlowMeasurement m;
  m.kind = TestKind::kLevel;
  m.outcome = Outcome::kRefused;
  m.reason = std::move(reason);
  return m;
}

struct Swing {
  double rise = 0.0;  ///< largest climb of the contrast after a low
  double low = 0.0;   ///< least contrast; both as shares of its start
};

Swing LargestSwing(const std::vector<double>& value) {
  Swing s;
  double low = 1e300;
  for (std::size_t i = 2; i < value.size(); ++i) {
    // Middle of three, so that one odd picture is no climb.
    const double v =
        std::max(std::min(value[i - 2], value[i - 1]),
                 std::min(std::max(value[i - 2], value[i - 1]), value[i]));
    low = std::min(low, v);
    s.rise = std::max(s.rise, v - low);
  }
  s.low = low;
  return s;
}

/// Scatter of the slope of ln(relief) in the window of the decay time, from
/// eight bins, so that errors shared by neighbouring pictures count in full.
double SlopeRelativeSd(const FlowCurve& curve, double clock_s) {
  constexpr int kBins = 8;
  const double from = kDecayFrom * clock_s;
  const double width = (kDecayTo - kDecayFrom) * clock_s / kBins;
  std::vector<double> x;
  std::vector<double> y;
  for (int b = 0; b < kBins; ++b) {
    double sum = 0.0;
    double sum_t = 0.0;
    int n = 0;
    for (std::size_t i = 0; i < curve.t_s.size(); ++i) {
      const double t = curve.t_s[i] - from - b * width;
      if (t < 0.0 || t >= width || !(curve.value[i] > 0.0)) continue;
      sum += std::log(curve.value[i]);
      sum_t += curve.t_s[i];
      ++n;
    }
    if (n == 0) continue;
    x.push_back(sum_t / n / clock_s);
    y.push_back(sum / n);
  }
  const FitResult line = FitLine(x, y);
  // Too few pictures to tell: say so.
  if (x.size() < 4 || !line.IsUsable()) return 0.15;
  const Estimate slope = line.Parameter(1);
  return slope.sd / std::max(std::abs(slope.value), 0.1);
}

/// Standard uncertainty of ln(clock) from a look of the surface that drifts by
/// `share` of its start in one clock: how far the clock moves where that much,
/// nearer the flat picture less, is in the contrast or missing in it. Without a
/// clock, `share` is that of the whole film: it may be why nothing fell to 1/e.
double DriftSd(const FlowCurve& curve,
               double clock_s,
               double flat_s,
               double share) {
  if (!(clock_s > 0.0)) return share > std::exp(-1.0) ? 1.0 : 0.0;
  std::array<double, 2> clocks{};
  for (const int side : {0, 1}) {
    std::vector<double> relief = curve.value;
    for (std::size_t i = 0; i < relief.size(); ++i) {
      relief[i] += (side == 0 ? -1.0 : 1.0) * kDriftAlike * share *
                   (flat_s - curve.t_s[i]) / clock_s;
    }
    clocks[side == 0 ? 0 : 1] = ReliefDecayTime(curve.t_s, relief, flat_s);
  }
  if (!(clocks[0] > 0.0 && clocks[1] > 0.0)) return 1.0;
  return 0.5 * std::abs(std::log(clocks[1] / clocks[0]));
}

/// Standard uncertainty of ln(clock) from a contrast that stands before it
/// falls. Where it is proportional to the relief, a higher ribbon changes
/// nothing of its fall. Where only steep relief catches a light, the fall comes
/// when the relief has sunk so far, and a higher ribbon's later: by as much of
/// what it is higher as the contrast stood longer than an exponential does.
double StandingSd(const FlowCurve& curve, double clock_s) {
  constexpr double kLevel = -0.4;
  std::size_t i = 0;
  while (i < curve.value.size() && curve.value[i] > std::exp(kLevel)) ++i;
  if (i == curve.value.size()) return 0.0;
  const double stands = curve.t_s[i] / clock_s + kLevel;
  return kLaidUnlike * std::clamp(stands, 0.0, 1.0);
}

}  // namespace

Result<void> LevelTestOptions::Validate() const {
  if (!(least_fall_frames >= 3.0 && least_fall_frames <= 20.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "least_fall_frames must lie between 3 and 20"};
  }
  if (!(least_falls_seen >= 1.0 && least_falls_seen <= 4.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "least_falls_seen must lie between 1 and 4"};
  }
  if (!(most_remaining_share >= 0.05 && most_remaining_share <= 0.5)) {
    return Error{ErrorCode::kInvalidArgument,
                 "most_remaining_share must lie between 0.05 and 0.5"};
  }
  return {};
}

FlowMeasurement MeasureLevel(const ReliefTrack& track,
                             const LevelTestOptions& options) {
  FLOWKIN_CHECK(options.Validate().has_value());
  if (track.num_frames < 12 || track.samples.size() < 12) {
    return Refused(
        "The clip is too short: film from before the ribbon is laid until the "
        "surface is smooth again.");
  }
  if (track.luma_spread < 2.0) {
    return Refused(
        "The picture shows nothing (black, white or covered lens): check the "
        "light and the camera, then film it again.");
  }
  if (track.sharpness < kLeastSharpness) {
    return Refused(
        "The picture is blurred: bring the paint's surface into focus, wipe "
        "the lens, and film it again.");
  }
  // Compression and noise alone move pictures a little.
  if (track.picture_motion < std::max(1.5, 1.6 * track.calm_motion)) {
    return Refused(
        "Nothing moves in this clip: film the ribbon being laid on the paint "
        "and keep filming until it is gone.");
  }
  if (track.end_motion_share > 0.4) {
    return Refused(
        "The clip ends while something still moves: keep filming after the "
        "ribbon is laid until the surface is smooth again.");
  }
  if (track.outline_px.empty() || !track.laid_s) {
    return Refused(
        "No ribbon of paint was seen to fade: lay one on the paint's own "
        "surface, with a lamp or window mirrored in it, and film until it is "
        "gone.");
  }
  if (track.change_before > std::max(2.0 * track.change_after, 1.5)) {
    return Refused(
        "The surface changes before the ribbon is laid and rests after it: the "
        "clip seems to run backwards, or the paint had not come to rest.");
  }
  if (track.camera_jump_px > kLargestJump * track.width_px) {
    return Refused(
        "The camera or the cup was moved while the ribbon levelled: fix the "
        "camera, leave the cup alone and film it again.");
  }
  const double laid_s = *track.laid_s;
  const double span_s = track.last_t_s - laid_s;
  FlowMeasurement m;
  m.kind = TestKind::kLevel;
  FlowCurve curve;
  curve.name = "relief";
  curve.unit = "";
  for (const ReliefSample& s : track.samples) {
    if (s.t_s <= laid_s || s.contrast_sd <= 0.0) continue;
    if (s.t_s > track.flat_s) break;
    curve.t_s.push_back(s.t_s - laid_s);
    curve.value.push_back(s.contrast);
    curve.sd.push_back(s.contrast_sd);
  }
  if (curve.t_s.size() < 12) {
    return Refused(
        "The clip ends right after the laying: keep filming until the surface "
        "is smooth again.");
  }
  const double start = track.start_contrast;
  if (!(start > 0.0) || start < 4.0 * curve.sd.front() || start < 0.4) {
    return Refused(kHardlySeen);
  }
  for (std::size_t i = 0; i < curve.t_s.size(); ++i) {
    curve.value[i] /= start;
    curve.sd[i] /= start;
  }
  double hidden_s = 0.0;
  // A second laying follows a rest of the whole picture.
  double strongest = 0.0;
  for (const ReliefBurst& b : track.bursts) {
    strongest = std::max(strongest, b.peak);
  }
  if (strongest < kLeastBurst * start) {
    return Refused(
        "The laying of the ribbon is not in the clip: start filming before it "
        "and keep on until the surface is smooth again.");
  }
  // What is over as soon as a drip is the stick coming in or a drop, no ribbon.
  const auto layings = std::count_if(
      track.bursts.begin(), track.bursts.end(), [&](const ReliefBurst& b) {
        return b.end_s - b.start_s > kLongBurst_s && b.peak > 0.35 * strongest;
      });
  if (layings > 1) {
    return Refused(
        "More than one ribbon was laid, or something stirred or crossed the "
        "paint after it: film one ribbon per clip and leave it alone.");
  }
  if (track.bursts.size() > 1) {
    // Too short for a laying: the ribbon may have been down when it began, and
    // what that did meanwhile is not seen.
    const ReliefBurst& last = track.bursts.back();
    const double lasted_s = last.end_s - last.start_s;
    if (lasted_s <= kLongBurst_s) hidden_s = lasted_s;
    m.warnings.push_back(
        "Something fell or moved on the paint after a pause; the levelling is "
        "counted from the last of it.");
  }
  const double clock_s = track.decay_time_s;
  // What was laid first must still stand when the last of it comes down, or
  // thin paint and thick start from different shapes.
  double laying_from_s = laid_s;
  for (const ReliefBurst& b : track.bursts) {
    if (b.start_s < laid_s) laying_from_s = b.start_s;
  }
  const auto laid_over = [&](double clocks) {
    return clock_s > 0.0 && laid_s - laying_from_s > clocks * clock_s;
  };
  const auto too_thin = [] {
    return Refused(
        "The paint was moved for far longer than its surface takes to settle: "
        "lay one short ribbon, without stirring, or use the puddle test for "
        "paint this thin.");
  };
  const Swing swing = LargestSwing(curve.value);
  if (swing.rise > kMostRise && -swing.low > kMostRise / 3.0) {
    // No relief is below zero: what climbs is the error, not the surface.
    return Refused(kHardlySeen);
  }
  if (swing.rise > kMostRise) {
    if (laid_over(kUnevenLayingClocks)) return too_thin();
    return Refused(
        "The surface was disturbed while it levelled (a hand, a second "
        "ribbon, a moved cup or camera): lay one ribbon, take everything out "
        "of the picture and wait.");
  }
  const bool stays = track.remaining_share &&
                     *track.remaining_share > options.most_remaining_share;
  double drift_sd = 0.0;
  if (track.drift_share && !stays) {
    drift_sd =
        DriftSd(curve, clock_s, track.flat_s - laid_s, *track.drift_share);
  }
  if (drift_sd > kMostClockSd) {
    return Refused(
        "What mirrors in the paint moved or the light changed while the ribbon "
        "levelled: keep lamps, curtains and yourself still and film it again.");
  }
  if (!(clock_s > 0.0) || span_s < options.least_falls_seen * clock_s) {
    return Refused(
        "The clip ends before enough of the ribbon is gone: film on until the "
        "surface is smooth again.");
  }
  if (clock_s < options.least_fall_frames * track.frame_interval_s) {
    return Refused(
        "The ribbon is gone within a few pictures: this paint is too thin for "
        "the level test at this frame rate, use the puddle test or slow "
        "motion.");
  }
  const double hidden_sd = hidden_s / std::sqrt(12.0) / clock_s;
  if (hidden_sd > kMostClockSd) {
    return Refused(
        "Something moved over the ribbon, once it was laid, for as long as it "
        "takes to level: take stick and hand away at once, or lay it with less "
        "in the way.");
  }
  if (laid_over(kMostLayingClocks)) return too_thin();
  if (stays) {
    return Refused(
        "Part of the ribbon stays for good: this paint is too stiff to level, "
        "loosen it first.");
  }
  if ((track.remaining_share &&
       *track.remaining_share < -options.most_remaining_share) ||
      (track.unlike_before && *track.unlike_before > kMostUnlike)) {
    return Refused(
        "The surface does not come back to its look from before the ribbon: "
        "something in the picture or the light changed meanwhile.");
  }
  if (!track.surroundings) {
    m.warnings.push_back(
        "The paint fills the picture, so shaking and lamp flicker could not "
        "be taken out: leave a rim around it.");
  }
  if (!track.part_decay_times_s.empty()) {
    const auto [low, high] = std::minmax_element(
        track.part_decay_times_s.begin(), track.part_decay_times_s.end());
    if (*high > 5.0 * *low) {
      m.warnings.push_back(
          "Parts of the surface level at very different speeds: look for a "
          "hand's shadow, a crooked ribbon or a skin.");
    }
  }
  const double slope_sd = SlopeRelativeSd(curve, clock_s);
  if (slope_sd > kMostClockSd) {
    if (laid_over(kUnevenLayingClocks)) return too_thin();
    if (clock_s < kFewPictures * track.frame_interval_s) {
      return Refused(
          "The ribbon fades within a few pictures and too unevenly for them: "
          "film at 60 pictures a second or more, or in slow motion.");
    }
    return Refused(
        "The ribbon does not fade steadily: keep hands and shadows out of the "
        "picture, use more light, and film it again.");
  }
  if (!track.drift_share) {
    m.warnings.push_back(
        "The quiet surface before the ribbon is not in the clip, so it cannot "
        "be told whether what mirrors in it stood still: start filming a "
        "second earlier.");
  }
  if (drift_sd > kRoughClockSd) {
    m.warnings.push_back(
        "What mirrors in the paint moved while the ribbon levelled, so the "
        "result is rough: keep lamps, curtains and yourself still.");
  }
  if (slope_sd > kRoughClockSd) {
    m.warnings.push_back(
        "The ribbon's fading is ragged, so the result is rough: more light or "
        "a steadier camera helps.");
  }
  m.outcome = Outcome::kMeasured;
  m.laid_s = laid_s;
  FlowProxy proxy;
  proxy.name = "decay_time";
  proxy.value = clock_s;
  proxy.unit = "s";
  // Besides the scatter: where the ribbon lies under the highlight, and what
  // is left of it when the flat surface is taken; both a few per cent on
  // rendered ribbons of one paint.
  constexpr double kPlaceRelSd = 0.03;
  const double stretch_sd =
      std::hypot(drift_sd, hidden_sd, StandingSd(curve, clock_s));
  proxy.ln_value = {
      std::log(clock_s), std::hypot(slope_sd, kPlaceRelSd, stretch_sd), 6.0};
  // Of nu: 1 for wide ribbons; narrow ones follow mu / sqrt(rho sigma), and a
  // density 8 % apart then shifts the result by up to 4 %.
  proxy.exponent = {1.0, 0.03};
  m.proxies.push_back(std::move(proxy));
  curve.stretch_sd = stretch_sd;
  m.curves.push_back(std::move(curve));
  return m;
}

}  // namespace flowkin
