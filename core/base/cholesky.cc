#include "core/base/cholesky.h"

#include <cmath>

#include "core/base/check.h"

namespace flowkin {

bool SolvePositive(std::span<double> a,
                   std::span<double> b,
                   double least_pivot) {
  const std::size_t n = b.size();
  FLOWKIN_CHECK(a.size() == n * n);
  for (std::size_t j = 0; j < n; ++j) {
    double pivot = a[j * n + j];
    for (std::size_t k = 0; k < j; ++k) pivot -= a[j * n + k] * a[j * n + k];
    if (!(pivot > least_pivot)) return false;
    pivot = std::sqrt(pivot);
    a[j * n + j] = pivot;
    for (std::size_t i = j + 1; i < n; ++i) {
      for (std::size_t k = 0; k < j; ++k) {
        a[i * n + j] -= a[i * n + k] * a[j * n + k];
      }
      a[i * n + j] /= pivot;
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) b[i] -= a[i * n + k] * b[k];
    b[i] /= a[i * n + i];
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) b[i] -= a[k * n + i] * b[k];
    b[i] /= a[i * n + i];
  }
  return true;
}

}  // namespace flowkin
