#pragma once

#include <iosfwd>
#include <optional>
#include <vector>

namespace flowkin {

/// A corner of the outline round the paint, in pixels of the upright picture.
struct ReliefPoint {
  double x_px = 0.0;
  double y_px = 0.0;
};

/// One picture of a level test.
struct ReliefSample {
  /// Seconds since the clip's first frame; between the two pictures that were
  /// compared.
  double t_s = 0.0;
  /// Strongest local change from one picture to the next inside the outline
  /// that a steady decay does not explain, luma codes.
  double motion = 0.0;
  /// Root-mean-square difference from the flat surface over the outline, luma
  /// codes, noise removed. Signed: below zero where only noise is left. Only
  /// after the ribbon was laid, 0 before.
  double contrast = 0.0;
  /// Standard uncertainty of `contrast` from picture noise.
  double contrast_sd = 0.0;
  /// The same decay seen as the share of its own mid-decay picture that is
  /// left; no unit. A second observable with other weights.
  double share = 0.0;
  /// Brightness of the picture against the last one, background only.
  double brightness = 1.0;
  /// How far the picture lies from the last one, px.
  double shift_px = 0.0;
};

/// A stretch of time in which something moved in the paint; between two of
/// them the whole picture came to rest.
struct ReliefBurst {
  double start_s = 0.0;
  double end_s = 0.0;
  double peak = 0.0;  ///< luma codes, as ReliefSample::motion
};

/// What a clip showed to LevelTracker, before any physics.
struct ReliefTrack {
  std::vector<ReliefSample> samples;
  int num_frames = 0;
  double last_t_s = 0.0;
  /// Typical distance of two pictures, s.
  double frame_interval_s = 0.0;
  int width_px = 0;
  int height_px = 0;

  /// Outline of the paint that levelled, convex, in order; empty if no place
  /// in the picture faded the way relief does.
  std::vector<ReliefPoint> outline_px;
  /// Share of the picture inside the outline.
  double outline_share = 0.0;
  std::vector<ReliefBurst> bursts;
  /// The last bit of the ribbon is down; sd in `laid_sd_s`.
  std::optional<double> laid_s;
  double laid_sd_s = 0.0;

  /// Mean luma (0 black .. about 220 white) and its spread over the picture.
  double mean_luma = 0.0;
  double luma_spread = 0.0;
  /// Noise of one pixel of the reduced pictures, luma codes.
  double noise = 0.0;
  /// Steepest edges per reduced pixel against the picture's range; 0.12 and
  /// more in focus.
  double sharpness = 0.0;
  /// Strongest change anywhere in the picture between neighbouring frames,
  /// luma codes (upper 2 % of the pixels, third largest in time).
  double picture_motion = 0.0;
  /// The same where least happens (10th percentile of time): noise.
  double calm_motion = 0.0;
  /// Farthest the picture lay from the last one, px.
  double camera_shift_px = 0.0;
  /// Largest step between neighbouring pictures since the laying began,
  /// px.
  double camera_jump_px = 0.0;
  /// False if the paint fills the picture: shake and lamp cannot be told.
  bool surroundings = true;
  /// When the picture was taken that counts as flat.
  double flat_s = 0.0;
  /// Contrast just after the laying, luma codes.
  double start_contrast = 0.0;
  /// ReliefDecayTime of the contrast; 0 if it never fell to 1/e.
  double decay_time_s = 0.0;
  /// The same in up to four parts of the outline, where they have a signal.
  std::vector<double> part_decay_times_s;
  /// What still differs from the picture before the laying, as a share of the
  /// start; only if the clip begins with the quiet surface.
  std::optional<double> remaining_share;
  /// All that differs from the picture before the laying, root mean square
  /// against the start's; only if the clip begins with the quiet surface.
  std::optional<double> unlike_before;
  /// How far the surface's look drifts in one decay time (0: while it was
  /// filmed) without the ribbon, as where mirror images wander; root mean
  /// square against the start's. Only if the clip begins with the quiet
  /// surface.
  std::optional<double> drift_share;
  /// Motion in the last pictures against the strongest (both of the whole
  /// picture): near 1 if the clip ends in the middle of the action.
  double end_motion_share = 0.0;
  /// Largest slow change of the surface before the first motion and after the
  /// last one, luma codes: a clip played backwards has the first only.
  double change_before = 0.0;
  double change_after = 0.0;
};

/// Writes one line per sample as comma-separated values under a header line.
void WriteReliefTrace(std::ostream& out, const ReliefTrack& track);

/// The window of ReliefDecayTime, in units of the fall to 1/e.
inline constexpr double kDecayFrom = 0.4;
inline constexpr double kDecayTo = 1.3;

/// Time constant of a decay, s: minus one over the slope of ln(relief) between
/// kDecayFrom and kDecayTo times its fall to 1/e, so that the window scales
/// with the decay. 0 if the relief never falls to 1/e of its start.
///
/// `t_s` since the laying, rising, as many as `relief`, which counts from the
/// picture at `flat_s`: what relief was left then is added back, as the same
/// exponential would leave it.
double ReliefDecayTime(const std::vector<double>& t_s,
                       const std::vector<double>& relief,
                       double flat_s);

}  // namespace flowkin
