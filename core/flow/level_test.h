#pragma once

#include <vector>

#include "core/base/estimate.h"
#include "core/base/result.h"
#include "core/flow/measurement.h"
#include "core/track/relief_track.h"

namespace flowkin {

struct LevelTestOptions {
  /// The decay time must span at least this many pictures, 3 to 20. Below,
  /// most of the decay happens between two pictures.
  double least_fall_frames = 5.0;
  /// Pictures must go on for this many decay times after the laying, 1 to 4.
  double least_falls_seen = 2.8;
  /// Relief that stays for good, as a share of its start, 0.05 to 0.5. Above,
  /// the paint is stiff (yield stress) and its decay is no viscosity.
  double most_remaining_share = 0.2;

  Result<void> Validate() const;
};

/// Turns what the camera saw of a levelling ribbon into a measurement.
///
/// On success `laid_s`, the proxy "decay_time" and the curve "relief" are set.
/// Times of the curve count from `laid_s`; its values are 1 at the start.
///
/// "decay_time": ReliefDecayTime of the contrast; its window scales with the
/// decay. Linear levelling of a given ribbon on a given pool depends on time
/// over kinematic viscosity (wide ribbons, gravity) or over
/// mu / sqrt(rho sigma) (narrow ones), hence the exponent 1 (S. E. Orchard
/// 1962, Appl. Sci. Res. A 11, 451-464; from memory). It stands alone; two cups
/// are better compared by AlignDecays.
///
/// Refused, with the reason, when the track does not hold a levelling ribbon
/// from its laying until most of it is gone.
FlowMeasurement MeasureLevel(const ReliefTrack& track,
                             const LevelTestOptions& options = {});

/// The decays of several clips laid over one common shape.
struct DecayAlignment {
  /// ln of the clock (seconds) of each curve, in the order given. The clocks
  /// share an unknown factor, so only differences mean something:
  /// exp(a - b) = how much slower curve a decays than curve b. `sd` is such
  /// that the differences of two add in quadrature. A curve that could not be
  /// laid over the others has an infinite sd.
  std::vector<Estimate> ln_clock;
  /// Root-mean-square distance of the curves from the common shape, in ln of
  /// relief.
  double misfit = 0.0;
  /// The same in units of what the curves' own noise explains; 1 = agree.
  double misfit_ratio = 0.0;
  /// Common shape: ln of relief against time over clock.
  std::vector<double> shape_x;
  std::vector<double> shape_ln_relief;
};

struct DecayAlignmentOptions {
  /// Window in units of each curve's own clock (ReliefDecayTime). It begins
  /// where highlights no longer saturate and the contrast is linear.
  double from = 0.4;
  double to = 1.6;
  /// Spread of ln(contrast at the start) between clips that does not come from
  /// the decay: highlights saturate on steep relief.
  double start_sd = 0.15;
  /// How far ln(relief) may bend between neighbouring knots of the shape.
  double bend_sd = 0.10;
  /// Shape differences that remain between clips of one test, in ln(relief),
  /// least value.
  double least_misfit = 0.02;
  /// Slow errors of the contrast that averaging does not remove (compression,
  /// lamp), as a share of its start, least value.
  double least_floor = 0.012;

  Result<void> Validate() const;
};

/// Lays decay curves (the "relief" curves of MeasureLevel) over one common,
/// falling shape by stretching their clocks:
///     relief_i(t) = a_i (S((t - d_i) / clock_i) - S(T_i / clock_i)).
///
/// T_i, when the flat picture was taken that the others are compared with, is
/// the curve's last time: what relief was left then is missing everywhere.
/// S is a free curve held only by its smoothness, because relief is a mix of
/// wavelengths and no single exponential; the window of every curve scales
/// with its own clock, because a fixed window is biased. ln a_i (contrast) and
/// d_i (laying time, half a picture) are free within their stated spread.
///
/// Uncertainty: from the scatter round the common shape, pooled over the
/// curves, with the degrees of freedom it has, and from how far the falls to
/// 1/e tell another ratio than the clocks, and the curves' own stretch_sd. How
/// evenly a hand lays ribbons is not in it.
///
/// @param curves  times rising from the laying, values positive where relief
///                is seen; at least two curves for a ratio.
/// Pure function.
DecayAlignment AlignDecays(const std::vector<FlowCurve>& curves,
                           const DecayAlignmentOptions& options = {});

}  // namespace flowkin
