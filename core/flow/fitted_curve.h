#pragma once

#include "core/flow/measurement.h"

namespace flowkin {

/// The law a measured test was read by, laid through its first curve where it
/// was read: the exponential fading of a ribbon, the growth of a puddle's
/// radius as t^(1/8) (physics.h), the moment a stream broke as an upright line.
/// In the curve's own units; rates are those of the measurement's first proxy,
/// only where the law stands is taken from the curve. Empty where there is no
/// curve or too little of it.
FlowCurve FittedCurve(const FlowMeasurement& measurement);

}  // namespace flowkin
