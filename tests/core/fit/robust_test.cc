#include "core/fit/robust.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "core/base/random.h"

namespace flowkin {
namespace {

constexpr double kRounding = 1e-12;  // plain arithmetic on values near 1

TEST(Robust, MedianOfOddAndEven) {
  EXPECT_EQ(Median(std::vector{3.0, 1.0, 2.0}), 2.0);
  EXPECT_EQ(Median(std::vector{4.0, 1.0, 3.0, 2.0}), 2.5);
  EXPECT_EQ(Median(std::vector{5.0}), 5.0);
}

// Determinations of copper in wholemeal flour, ug/g: Analytical Methods
// Committee 1989, Robust statistics: how not to reject outliers, Analyst 114,
// 1693-1697. The data, their median 3.385, MAD/0.6745 = 0.526 and Huber
// location 3.21 (k = 1.5) are from memory of that worked example.
TEST(Robust, CopperInFlour) {
  const std::vector<double> copper = {
      2.20, 2.20, 2.40, 2.40, 2.50, 2.70, 2.80, 2.90, 3.03, 3.03, 3.10, 3.37,
      3.40, 3.40, 3.40, 3.50, 3.60, 3.70, 3.70, 3.70, 3.70, 3.77, 5.28, 28.95};
  EXPECT_NEAR(Median(copper), 3.385, kRounding);
  EXPECT_NEAR(RobustSd(copper), 0.526, 5e-4);  // printed decimals
  EXPECT_NEAR(HuberMean(copper, 1.5).value, 3.21, 5e-3);
}

TEST(Robust, HuberSdMatchesScatterOfRepeats) {
  Random random(11);
  const int repeats = 3000, n = 20;
  double squares = 0.0, claimed = 0.0;
  for (int k = 0; k < repeats; ++k) {
    std::vector<double> values;
    for (int i = 0; i < n; ++i) {
      const bool wild = random.Uniform() < 0.05;
      values.push_back(random.Normal(0.0, wild ? 10.0 : 1.0));
    }
    const Estimate mean = HuberMean(values);
    squares += mean.value * mean.value;
    claimed += mean.sd * mean.sd;
  }
  // Variance of 3000 repeats is known to 1/sqrt(1500) = 2.6 %; the asymptotic
  // formula at n = 20 may be off by another tenth.
  EXPECT_NEAR(claimed / squares, 1.0, 0.2);
}

TEST(Robust, ShiftsAndScalesWithTheData) {
  const std::vector<double> a = {1.0, 2.0, 2.5, 4.0, 40.0};
  std::vector<double> b;
  for (double v : a) b.push_back(7.0 - 3.0 * v);
  EXPECT_NEAR(HuberMean(b).value, 7.0 - 3.0 * HuberMean(a).value, 1e-9);
  EXPECT_NEAR(HuberMean(b).sd, 3.0 * HuberMean(a).sd, 1e-9);
}

}  // namespace
}  // namespace flowkin
