#include "core/base/distributions.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "core/base/check.h"

namespace flowkin {
namespace {

// Arguments are checked here, so Boost need not throw; underflow in a far
// tail is a zero, not an error.
using Policy = boost::math::policies::policy<
    boost::math::policies::promote_double<false>,
    boost::math::policies::overflow_error<boost::math::policies::ignore_error>,
    boost::math::policies::underflow_error<boost::math::policies::ignore_error>,
    boost::math::policies::domain_error<boost::math::policies::ignore_error>,
    boost::math::policies::evaluation_error<
        boost::math::policies::ignore_error>>;
using Normal = boost::math::normal_distribution<double, Policy>;
using StudentT = boost::math::students_t_distribution<double, Policy>;
using Fisher = boost::math::fisher_f_distribution<double, Policy>;
using ChiSquare = boost::math::chi_squared_distribution<double, Policy>;

// Above this many degrees of freedom Student's t and the normal distribution
// agree to 1e-10, and the incomplete beta function gets slow.
constexpr double kNormalDegrees = 1e10;

bool IsProbability(double p) { return p > 0.0 && p < 1.0; }

}  // namespace

double NormalCdf(double z) {
  FLOWKIN_CHECK(!std::isnan(z));
  return boost::math::cdf(Normal(), z);
}

double NormalQuantile(double probability) {
  FLOWKIN_CHECK(IsProbability(probability));
  return boost::math::quantile(Normal(), probability);
}

double StudentTCdf(double t, double degrees_of_freedom) {
  FLOWKIN_CHECK(!std::isnan(t) && degrees_of_freedom > 0.0);
  if (degrees_of_freedom > kNormalDegrees) return NormalCdf(t);
  return boost::math::cdf(StudentT(degrees_of_freedom), t);
}

double StudentTQuantile(double probability, double degrees_of_freedom) {
  FLOWKIN_CHECK(IsProbability(probability) && degrees_of_freedom > 0.0);
  if (degrees_of_freedom > kNormalDegrees) return NormalQuantile(probability);
  return boost::math::quantile(StudentT(degrees_of_freedom), probability);
}

double ChiSquareUpperTail(double x, double degrees_of_freedom) {
  FLOWKIN_CHECK(x >= 0.0 && degrees_of_freedom > 0.0);
  if (std::isinf(x)) return 0.0;
  return boost::math::cdf(
      boost::math::complement(ChiSquare(degrees_of_freedom), x));
}

double ChiSquareQuantile(double probability, double degrees_of_freedom) {
  FLOWKIN_CHECK(IsProbability(probability) && degrees_of_freedom > 0.0);
  return boost::math::quantile(ChiSquare(degrees_of_freedom), probability);
}

double FisherUpperTail(double f,
                       double numerator_degrees,
                       double denominator_degrees) {
  FLOWKIN_CHECK(f >= 0.0 && numerator_degrees > 0.0 &&
                denominator_degrees > 0.0);
  if (std::isinf(f)) return 0.0;
  if (denominator_degrees > kNormalDegrees) {
    return ChiSquareUpperTail(f * numerator_degrees, numerator_degrees);
  }
  return boost::math::cdf(boost::math::complement(
      Fisher(numerator_degrees, denominator_degrees), f));
}

Interval CoverageInterval(const Estimate& estimate, double level) {
  FLOWKIN_CHECK(IsProbability(level));
  const double half_width =
      estimate.sd == 0.0
          ? 0.0
          : estimate.sd * StudentTQuantile(0.5 + 0.5 * level,
                                           estimate.degrees_of_freedom);
  return {estimate.value - half_width, estimate.value + half_width, level};
}

}  // namespace flowkin
