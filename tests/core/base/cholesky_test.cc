#include "core/base/cholesky.h"

#include <gsl/gsl_linalg.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

#include "core/base/random.h"

namespace flowkin {
namespace {

TEST(SolvePositive, AgreesWithGsl) {
  // Reference: gsl_linalg_LU_solve of the GNU Scientific Library, another
  // method on the same system.
  Random random(5);
  for (std::size_t n = 1; n <= 7; ++n) {
    std::vector<double> half(n * n), a(n * n, 0.0), b(n);
    for (double& v : half) v = random.Normal(0.0, 1.0);
    for (double& v : b) v = random.Normal(0.0, 10.0);
    for (std::size_t i = 0; i < n; ++i) {
      a[i * n + i] = 0.5;  // keeps the condition below a few hundred
      for (std::size_t j = 0; j < n; ++j) {
        for (std::size_t k = 0; k < n; ++k) {
          a[i * n + j] += half[i * n + k] * half[j * n + k];
        }
      }
    }
    std::vector<double> lu = a, expected(n), right = b;
    gsl_matrix_view matrix = gsl_matrix_view_array(lu.data(), n, n);
    const gsl_vector_view given = gsl_vector_view_array(right.data(), n);
    gsl_vector_view found = gsl_vector_view_array(expected.data(), n);
    gsl_permutation* order = gsl_permutation_alloc(n);
    int sign = 0;
    gsl_linalg_LU_decomp(&matrix.matrix, order, &sign);
    gsl_linalg_LU_solve(&matrix.matrix, order, &given.vector, &found.vector);
    gsl_permutation_free(order);

    // The upper triangle is not read.
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t j = i + 1; j < n; ++j) {
        a[i * n + j] = std::numeric_limits<double>::quiet_NaN();
      }
    }
    ASSERT_TRUE(SolvePositive(a, b)) << n;
    for (std::size_t i = 0; i < n; ++i) {
      // Rounding times the condition.
      EXPECT_NEAR(b[i], expected[i], 1e-11 * (1.0 + std::abs(expected[i])));
    }
  }
}

TEST(SolvePositive, SaysWhatIsNotPositive) {
  std::vector<double> b = {1.0, 1.0};
  std::vector<double> singular = {1.0, 1.0, 1.0, 1.0};
  EXPECT_FALSE(SolvePositive(singular, b));
  std::vector<double> indefinite = {1.0, 2.0, 2.0, 1.0};
  b = {1.0, 1.0};
  EXPECT_FALSE(SolvePositive(indefinite, b));
  std::vector<double> bad = {
      std::numeric_limits<double>::quiet_NaN(), 0.0, 0.0, 1.0};
  b = {1.0, 1.0};
  EXPECT_FALSE(SolvePositive(bad, b));
  std::vector<double> weak = {1.0, 0.0, 0.0, 1e-10};
  b = {1.0, 1.0};
  EXPECT_FALSE(SolvePositive(weak, b, 1e-9));
}

}  // namespace
}  // namespace flowkin
