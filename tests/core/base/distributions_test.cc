#include "core/base/distributions.h"

#include <gsl/gsl_cdf.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace flowkin {
namespace {

// Tables print this many decimals; half a unit of the last one.
constexpr double kThreeDecimals = 5e-4;
// Two independent double-precision libraries; GSL's documentation promises
// no figure, its quantiles stop their Newton steps near 1e-11.
constexpr double kLibrariesRelative = 1e-9;

// Two-sided 95 % points of Student's t as printed in JCGM 100:2008 (GUM),
// table G.2.
TEST(Distributions, StudentQuantilesOfGuide) {
  EXPECT_NEAR(StudentTQuantile(0.97725, 1), 13.97, 0.005);
  EXPECT_NEAR(StudentTQuantile(0.975, 1), 12.706, kThreeDecimals);
  EXPECT_NEAR(StudentTQuantile(0.975, 2), 4.303, kThreeDecimals);
  EXPECT_NEAR(StudentTQuantile(0.975, 4), 2.776, kThreeDecimals);
  EXPECT_NEAR(StudentTQuantile(0.975, 20), 2.086, kThreeDecimals);
  EXPECT_NEAR(NormalQuantile(0.975), 1.960, kThreeDecimals);
}

TEST(Distributions, AgreesWithGsl) {
  for (double dof : {1.0, 1.7, 2.0, 3.4, 8.0, 31.5, 400.0}) {
    for (double p : {1e-6, 0.0025, 0.025, 0.2, 0.5, 0.77, 0.975, 0.9999}) {
      const double t = gsl_cdf_tdist_Pinv(p, dof);
      EXPECT_NEAR(
          StudentTQuantile(p, dof), t, kLibrariesRelative * (1.0 + std::abs(t)))
          << p << " " << dof;
      EXPECT_NEAR(
          StudentTCdf(t, dof), gsl_cdf_tdist_P(t, dof), kLibrariesRelative * p);
      const double x = gsl_cdf_chisq_Pinv(p, dof);
      EXPECT_NEAR(ChiSquareQuantile(p, dof), x, kLibrariesRelative * x);
      EXPECT_NEAR(ChiSquareUpperTail(x, dof),
                  gsl_cdf_chisq_Q(x, dof),
                  kLibrariesRelative);
    }
  }
  for (double f : {0.0, 0.3, 1.0, 4.0, 30.0}) {
    for (double d2 : {2.0, 4.5, 60.0}) {
      EXPECT_NEAR(FisherUpperTail(f, 2.0, d2),
                  gsl_cdf_fdist_Q(f, 2.0, d2),
                  kLibrariesRelative);
    }
  }
  for (double z : {-12.0, -6.0, -1.0, 0.0, 0.3, 2.5}) {
    EXPECT_NEAR(NormalCdf(z),
                gsl_cdf_ugaussian_P(z),
                kLibrariesRelative * gsl_cdf_ugaussian_P(z));
  }
}

TEST(Distributions, InfiniteDegreesAreNormal) {
  const double infinity = std::numeric_limits<double>::infinity();
  EXPECT_EQ(StudentTQuantile(0.9, infinity), NormalQuantile(0.9));
  EXPECT_EQ(StudentTCdf(1.2, infinity), NormalCdf(1.2));
}

TEST(Distributions, CoverageIntervalUsesStudent) {
  const Interval i = CoverageInterval({10.0, 2.0, 4.0}, 0.95);
  EXPECT_NEAR(i.low, 10.0 - 2.0 * 2.776, 2.0 * kThreeDecimals);
  EXPECT_NEAR(i.high, 10.0 + 2.0 * 2.776, 2.0 * kThreeDecimals);
  EXPECT_EQ(i.level, 0.95);
}

}  // namespace
}  // namespace flowkin
