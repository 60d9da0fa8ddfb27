#pragma once

#include <optional>

#include "calibration/curve/dilution_curve.h"
#include "core/base/estimate.h"

namespace flowkin {

/// What is held likely of water in a paint nobody has tested yet.
///
/// Slope g at the base coat's flow: log-normal, median 6.5 per unit of ln
/// volume, 95 % from 3.0 to 14. Where it comes from:
/// - Suspension laws at solids of 28 to 45 % with a thickened water phase give
///   2.7 to 11 (Krieger and Dougherty 1959; Mooney 1951; thickener exponent 1
///   to 3 from memory).
/// - Readings of one waterborne paint in a flow cup before and after 10 % water
///   gave 4.4 to 5.9, rising with the viscosity (posted readings, not
///   reviewed).
/// - Aqueous glycerol of 88 to 99.5 %, thinned to a third, has 6 to 13 (Segur
///   and Oberstar 1951; Cheng 2008): steeper than paint, and the prior must not
///   be surprised by such a liquid.
/// Bend c: log-normal about 0.34 (g / 6.5)^-0.35, sd of its logarithm 0.33, and
/// 3 in 100 nearly straight. The same laws and tables give c from 0.18 to 0.60,
/// falling as g rises (correlation with ln g -0.6), because what a thickener
/// adds to the slope does not bend; the spread here is half as wide again.
CurvePrior WaterPrior();

/// Flow additive or medium. `ratio` is its own ratio to the base coat with its
/// relative sd; without it the liquid may be anything from 1/50 of the base
/// coat to its double. Interaction e: normal, sd 0.3, cut at 0.8
/// (assumed, no source).
CurvePrior BlendPrior(const std::optional<Estimate>& ln_ratio);

/// The same for an untested liquid on a grid wide and fine enough to learn one
/// on: levels from 1/200 of the base coat to its triple.
CurvePrior BlendGrid();

}  // namespace flowkin
