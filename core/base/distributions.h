#pragma once

#include "core/base/estimate.h"

namespace flowkin {

// Cumulative distributions and quantiles, good to about 1e-14 relative
// (Boost.Math). `degrees_of_freedom` > 0, fractions and infinity allowed;
// probabilities strictly between 0 and 1. Anything else is a bug and ends the
// program.

/// P(Z <= z) of the standard normal distribution.
double NormalCdf(double z);
/// z with P(Z <= z) = probability.
double NormalQuantile(double probability);

/// P(T <= t) of Student's t distribution; the normal one at infinite degrees.
double StudentTCdf(double t, double degrees_of_freedom);
/// t with P(T <= t) = probability.
double StudentTQuantile(double probability, double degrees_of_freedom);

/// P(X > x), x >= 0, of the chi-square distribution.
double ChiSquareUpperTail(double x, double degrees_of_freedom);
/// x with P(X <= x) = probability.
double ChiSquareQuantile(double probability, double degrees_of_freedom);

/// P(F > f), f >= 0, of Fisher's distribution.
double FisherUpperTail(double f,
                       double numerator_degrees,
                       double denominator_degrees);

/// value -+ t * sd with Student's t at the estimate's degrees of freedom.
Interval CoverageInterval(const Estimate& estimate, double level = 0.95);

}  // namespace flowkin
