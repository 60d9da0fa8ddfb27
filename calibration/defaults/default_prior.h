#pragma once

#include <optional>

#include "calibration/curve/dilution_curve.h"
#include "core/base/estimate.h"

namespace flowkin {

/// What is held likely of water in a paint nobody has tested yet.
///
/// Slope g at the base coat's flow: log-normal on either side of its median of
/// 6 per unit of ln volume,
/// 95 % from 2.7 to 16. Where it comes from:
/// - Suspension laws at solids of 30 to 45 % with a thickened water phase give
///   3 to 10 (Krieger and Dougherty 1959; Quemada 1977; thickener exponent 2 to
///   3 from memory).
/// - Readings of one waterborne paint in a flow cup before and after 10 % water
///   gave 4.4 to 5.9, rising with the viscosity (posted readings, not
///   reviewed).
/// - Aqueous glycerol of 95 to 99 % has 14 to 17 (Segur and Oberstar 1951),
///   sucrose of 66 to 74 % 8 to 16 (handbook table): steeper than paint, and
///   the prior must not be surprised by such a liquid.
/// Steepening c: log-normal, median 0.35, 95 % from 0.12 to 1.05, and one part
/// in twenty nearly straight. The same readings give c = 0.5; 1/n of the
/// suspension laws is 0.5 to 0.7 without thickener and less with it.
CurvePrior WaterPrior();

/// Flow additive or medium. `ratio` is its own ratio to the base coat with its
/// relative sd; without it the liquid may be anything from 1/50 of the base
/// coat to its double. Interaction e: normal, sd 0.3, cut at 0.8
/// (assumed, no source).
CurvePrior BlendPrior(const std::optional<Estimate>& ln_ratio);

}  // namespace flowkin
