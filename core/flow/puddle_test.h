#pragma once

#include <optional>

#include "core/base/result.h"
#include "core/flow/measurement.h"
#include "core/track/front_track.h"

namespace flowkin {

struct PuddleTestOptions {
  /// What was put down, mL, 0.1..100. Without it there is no viscosity.
  std::optional<double> volume_ml;
  /// Relative standard uncertainty of the volume, 0..0.5. 1.5 % is what a
  /// syringe read by eye holds (common practice, no source).
  double volume_rel_sd = 0.015;
  /// First paint on the tile, set by hand, seconds since the clip's first
  /// frame; what was seen before it does not count.
  std::optional<double> start_s;

  Result<void> Validate() const;
};

/// The fit behind a measurement, for drawing: R^8 = exp(ln_rate) (t - t0).
struct PuddleLaw {
  double ln_rate = 0.0;  ///< ln of px^8/s, radius along the scale's direction
  double origin_s = 0.0;
  double window_begin_s = 0.0;
  double window_end_s = 0.0;
};

/// Measures how a puddle of fixed volume spreads.
///
/// Model: after the pour a Newtonian puddle on a level tile follows
///     R^8 = C (t - t0),   C = xi^8 g V^3 / (3 nu),   xi = 0.8939 [Huppert1982]
/// with a virtual origin t0 that stands for the pour. C and t0 are fitted to
/// ln R over the longest window, counted from the end of the clip, in which
/// the law leaves no trend. Proxy "spreading_rate" = C (mm^8/s, or px^8/s
/// without a scale), exponent -1.
///
/// The sd of ln C holds: the fit with the correlation of its residuals; where
/// the window begins; the edge (a constant error of the radius and a drift of
/// it); uneven growth of the eight sectors; the volume, three times. The
/// scale, eight times, enters the viscosity only: clips compared by the proxy
/// must share the set-up.
///
/// Valid for R > 5 capillary lengths (9 mm for paint) and a puddle thicker than
/// the height at which it would stop; a puddle that slows down more than the
/// law is refused as stopping. Refusals are in `reason`.
FlowMeasurement MeasurePuddle(const FrontTrack& track,
                              const PuddleTestOptions& options = {});

/// The same, with the fit.
FlowMeasurement MeasurePuddle(const FrontTrack& track,
                              const PuddleTestOptions& options,
                              std::optional<PuddleLaw>* law);

}  // namespace flowkin
