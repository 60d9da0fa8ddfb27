#include "core/base/random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace flowkin {
namespace {

TEST(Random, SameSeedSameNumbers) {
  Random a(42), b(42), c(43);
  const double first = a.Normal();
  EXPECT_EQ(first, b.Normal());
  EXPECT_NE(first, c.Normal());
}

TEST(Random, MomentsOfNormal) {
  Random random(7);
  const int n = 200000;
  double sum = 0.0, squares = 0.0, beyond = 0.0;
  for (int i = 0; i < n; ++i) {
    const double z = random.Normal();
    sum += z;
    squares += z * z;
    if (std::abs(z) > 1.959964) beyond += 1.0;
  }
  // Four standard errors of each moment.
  EXPECT_NEAR(sum / n, 0.0, 4.0 / std::sqrt(n));
  EXPECT_NEAR(squares / n, 1.0, 4.0 * std::sqrt(2.0 / n));
  EXPECT_NEAR(beyond / n, 0.05, 4.0 * std::sqrt(0.05 * 0.95 / n));
}

TEST(Random, RangesHold) {
  Random random(1);
  for (int i = 0; i < 10000; ++i) {
    const double u = random.Uniform(-2.0, 3.0);
    EXPECT_GE(u, -2.0);
    EXPECT_LT(u, 3.0);
    EXPECT_LT(random.Below(7), 7u);
  }
}

}  // namespace
}  // namespace flowkin
