#include "core/fit/robust.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/base/check.h"

namespace flowkin {

double Median(std::span<const double> values) {
  FLOWKIN_CHECK(!values.empty());
  std::vector<double> sorted(values.begin(), values.end());
  const auto middle =
      sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
  std::nth_element(sorted.begin(), middle, sorted.end());
  if (sorted.size() % 2 == 1) return *middle;
  return 0.5 * (*std::max_element(sorted.begin(), middle) + *middle);
}

double RobustSd(std::span<const double> values) {
  const double median = Median(values);
  std::vector<double> deviation;
  deviation.reserve(values.size());
  for (double v : values) deviation.push_back(std::abs(v - median));
  return 1.482602218505602 * Median(deviation);
}

Estimate HuberMean(std::span<const double> values, double threshold) {
  FLOWKIN_CHECK(threshold > 0.0);
  const double n = static_cast<double>(values.size());
  double location = Median(values);
  if (values.size() == 1) {
    return {location, std::numeric_limits<double>::infinity(), 1.0};
  }
  const double scale = RobustSd(values);
  if (!(scale > 0.0)) return {location, 0.0, n - 1.0};
  double inside = n, squares = 0.0;
  for (int i = 0; i < 200; ++i) {
    double shift = 0.0;
    inside = squares = 0.0;
    for (double v : values) {
      const double u = (v - location) / scale;
      const double psi = std::clamp(u, -threshold, threshold);
      shift += psi;
      squares += psi * psi;
      if (std::abs(u) <= threshold) inside += 1.0;
    }
    const double step = scale * shift / std::max(inside, 1.0);
    location += step;
    if (std::abs(step) <= 1e-12 * scale) break;
  }
  const double share = std::max(inside, 1.0) / n;
  const double variance =
      scale * scale * squares / (n - 1.0) / (share * share * n);
  return {location, std::sqrt(variance), n - 1.0};
}

}  // namespace flowkin
