#pragma once

#include <limits>

namespace flowkin {

/// A measured or computed number with its standard uncertainty (JCGM 100:2008).
struct Estimate {
  double value = 0.0;
  /// Standard uncertainty, same unit as `value`, >= 0. Of a logarithm it is
  /// the relative standard uncertainty of the number itself.
  double sd = 0.0;
  /// Degrees of freedom behind `sd`; infinite where it is known beforehand.
  double degrees_of_freedom = std::numeric_limits<double>::infinity();
};

/// A coverage interval: holds the true value with probability `level`.
struct Interval {
  double low = 0.0;
  double high = 0.0;
  double level = 0.95;
};

}  // namespace flowkin
