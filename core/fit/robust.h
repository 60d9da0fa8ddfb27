#pragma once

#include <span>

#include "core/base/estimate.h"

namespace flowkin {

/// Median (mean of the middle two when even). Not empty.
double Median(std::span<const double> values);

/// 1.4826 times the median absolute deviation from the median: the standard
/// deviation of normal data, deaf to up to half of outliers. Not empty.
double RobustSd(std::span<const double> values);

/// Huber's location [Huber1964] with its standard uncertainty; scale by
/// RobustSd, dof = n - 1. `threshold` in those sd, > 0. Not empty; one value
/// alone has infinite sd and no more than a formal dof of 1.
Estimate HuberMean(std::span<const double> values, double threshold = 1.345);

}  // namespace flowkin
