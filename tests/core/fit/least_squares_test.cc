#include "core/fit/least_squares.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/distributions.h"
#include "core/base/random.h"

namespace flowkin {
namespace {

constexpr double kAlgebra = 1e-9;  // two roads to the same algebra

std::vector<double> Times(int n, double end_s) {
  std::vector<double> t_s;
  for (int i = 0; i < n; ++i) t_s.push_back(end_s * i / (n - 1));
  return t_s;
}

CurveModel Decay(const std::vector<double>& t_s) {
  CurveModel model;
  model.values = [t_s](std::span<const double> b, std::span<double> values) {
    for (std::size_t i = 0; i < t_s.size(); ++i) {
      values[i] = b[0] * std::exp(-t_s[i] / b[1]) + b[2];
    }
  };
  return model;
}

// Textbook straight line: slope, intercept and their covariance by the closed
// formulas of weighted regression.
TEST(LinearFit, ClosedFormOfWeightedLine) {
  const std::vector<double> x = {0.0, 1.0, 2.0, 4.0, 7.0};
  const std::vector<double> y = {1.1, 2.9, 5.2, 9.1, 14.8};
  const std::vector<double> sd = {0.1, 0.2, 0.1, 0.3, 0.2};
  double s = 0.0, sx = 0.0, sy = 0.0, sxx = 0.0, sxy = 0.0;
  std::vector<double> design(2 * x.size());
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double w = 1.0 / (sd[i] * sd[i]);
    s += w;
    sx += w * x[i];
    sy += w * y[i];
    sxx += w * x[i] * x[i];
    sxy += w * x[i] * y[i];
    design[i] = 1.0;
    design[x.size() + i] = x[i];
  }
  const double determinant = s * sxx - sx * sx;
  FitOptions options;
  options.covariance_scale = CovarianceScale::kGivenSd;
  const FitResult fit = FitLinear(design, y, sd, options);
  ASSERT_TRUE(fit.IsUsable());
  EXPECT_NEAR(fit.parameters[0], (sxx * sy - sx * sxy) / determinant, kAlgebra);
  EXPECT_NEAR(fit.parameters[1], (s * sxy - sx * sy) / determinant, kAlgebra);
  EXPECT_NEAR(fit.Covariance(0, 0), sxx / determinant, kAlgebra);
  EXPECT_NEAR(fit.Covariance(1, 1), s / determinant, kAlgebra);
  EXPECT_NEAR(fit.Covariance(0, 1), -sx / determinant, kAlgebra);

  options.covariance_scale = CovarianceScale::kFromResiduals;
  const FitResult scaled = FitLinear(design, y, sd, options);
  EXPECT_NEAR(scaled.Covariance(1, 1),
              s / determinant * scaled.residual_rms * scaled.residual_rms,
              kAlgebra);
}

TEST(NonlinearFit, LinearModelAgreesWithLinearFit) {
  Random random(3);
  const std::vector<double> x = Times(30, 2.0);
  std::vector<double> y, design(60);
  for (std::size_t i = 0; i < 30; ++i) {
    y.push_back(2.0 - 3.0 * x[i] + random.Normal(0.0, 0.1));
    design[i] = 1.0;
    design[30 + i] = x[i];
  }
  CurveModel line;
  line.values = [&](std::span<const double> b, std::span<double> values) {
    for (std::size_t i = 0; i < 30; ++i) values[i] = b[0] + b[1] * x[i];
  };
  for (const double threshold : {1.345, 1e300}) {
    FitOptions options;
    options.huber_threshold = threshold;
    const FitResult linear = FitLinear(design, y, {}, options);
    const FitResult nonlinear =
        FitNonlinear(line, y, {}, std::vector{0.0, 0.0}, options);
    ASSERT_TRUE(nonlinear.IsUsable());
    // The scale of the robust fit settles to 1e-6 only.
    const double tolerance = threshold < 10.0 ? 1e-6 : kAlgebra;
    for (int j = 0; j < 2; ++j) {
      EXPECT_NEAR(
          linear.Parameter(j).value, nonlinear.Parameter(j).value, tolerance);
      EXPECT_NEAR(linear.Parameter(j).sd, nonlinear.Parameter(j).sd, tolerance);
    }
  }
}

TEST(NonlinearFit, AnalyticAndNumericJacobianAgree) {
  Random random(5);
  const std::vector<double> t_s = Times(80, 5.0);
  std::vector<double> y(t_s.size());
  CurveModel numeric = Decay(t_s);
  numeric.values(std::vector{3.0, 1.2, 0.4}, y);
  for (double& v : y) v += random.Normal(0.0, 0.05);
  CurveModel analytic = numeric;
  analytic.jacobian = [&](std::span<const double> b,
                          std::span<double> jacobian) {
    const std::size_t n = t_s.size();
    for (std::size_t i = 0; i < n; ++i) {
      const double e = std::exp(-t_s[i] / b[1]);
      jacobian[i] = e;
      jacobian[n + i] = b[0] * e * t_s[i] / (b[1] * b[1]);
      jacobian[2 * n + i] = 1.0;
    }
  };
  const std::vector<double> start = {1.0, 0.3, 0.0};
  const FitResult a = FitNonlinear(analytic, y, {}, start);
  const FitResult b = FitNonlinear(numeric, y, {}, start);
  ASSERT_TRUE(a.IsUsable());
  ASSERT_TRUE(b.IsUsable());
  for (int j = 0; j < 3; ++j) {
    EXPECT_NEAR(a.Parameter(j).value, b.Parameter(j).value, 1e-8);
    EXPECT_NEAR(a.Parameter(j).sd, b.Parameter(j).sd, 1e-8);
  }
}

TEST(NonlinearFit, BoundHoldsAndIsReported) {
  const std::vector<double> t_s = Times(40, 5.0);
  std::vector<double> y(t_s.size());
  CurveModel model = Decay(t_s);
  model.values(std::vector{3.0, 1.2, -0.4}, y);
  for (std::size_t i = 0; i < y.size(); ++i) y[i] += i % 2 ? 0.01 : -0.01;
  FitOptions options;
  options.lower = {0.0, 1e-3, 0.0};
  options.upper = {100.0, 100.0, 10.0};
  const FitResult fit =
      FitNonlinear(model, y, {}, std::vector{1.0, 1.0, 1.0}, options);
  ASSERT_TRUE(fit.IsUsable()) << fit.message;
  EXPECT_EQ(fit.parameters[2], 0.0);
  EXPECT_TRUE(fit.at_bound[2]);
  EXPECT_FALSE(fit.at_bound[1]);
  EXPECT_EQ(fit.Covariance(2, 2), 0.0);
  EXPECT_GT(fit.Covariance(1, 1), 0.0);
  EXPECT_EQ(fit.degrees_of_freedom, 38);
}

TEST(NonlinearFit, HuberShrugsOffOutliers) {
  Random random(9);
  const std::vector<double> t_s = Times(120, 5.0);
  const std::vector<double> truth = {3.0, 1.2, 0.4};
  std::vector<double> y(t_s.size());
  CurveModel model = Decay(t_s);
  model.values(truth, y);
  for (double& v : y) v += random.Normal(0.0, 0.03);
  for (std::size_t i = 5; i < y.size(); i += 12) y[i] += 1.0;
  FitOptions options;
  options.huber_threshold = 1.345;
  const FitResult robust =
      FitNonlinear(model, y, {}, std::vector{1.0, 1.0, 0.0}, options);
  const FitResult plain =
      FitNonlinear(model, y, {}, std::vector{1.0, 1.0, 0.0});
  ASSERT_TRUE(robust.IsUsable()) << robust.message;
  // A tenth of the points lie 1.0 high: plain least squares lifts the offset
  // by about 0.1, Huber's by no more than a tenth times 1.345 sd or so.
  EXPECT_GT(std::abs(plain.parameters[2] - truth[2]), 0.05);
  EXPECT_LT(std::abs(robust.parameters[2] - truth[2]), 0.02);
}

// Over many seeded data sets the 95 % interval of every parameter must hold
// the truth 95 % of the time, within four binomial standard errors.
TEST(NonlinearFit, CoversTruth) {
  const int runs = 2000;
  const double band = 4.0 * std::sqrt(0.95 * 0.05 / runs);
  const std::vector<double> t_s = Times(25, 4.0);
  const std::vector<double> truth = {3.0, 1.2, 0.4};
  const std::vector<double> sd(t_s.size(), 0.02);
  CurveModel model = Decay(t_s);
  for (const auto scale :
       {CovarianceScale::kGivenSd, CovarianceScale::kFromResiduals}) {
    Random random(2024);
    FitOptions options;
    options.covariance_scale = scale;
    int covered[3] = {0, 0, 0};
    for (int k = 0; k < runs; ++k) {
      std::vector<double> y(t_s.size());
      model.values(truth, y);
      for (double& v : y) v += random.Normal(0.0, 0.02);
      const FitResult fit =
          FitNonlinear(model, y, sd, std::vector{2.0, 1.0, 0.0}, options);
      ASSERT_TRUE(fit.IsUsable());
      for (int j = 0; j < 3; ++j) {
        const Interval i = CoverageInterval(fit.Parameter(j));
        const double t = truth[static_cast<std::size_t>(j)];
        covered[j] += i.low <= t && t <= i.high;
      }
    }
    for (int j = 0; j < 3; ++j) {
      EXPECT_NEAR(static_cast<double>(covered[j]) / runs, 0.95, band) << j;
    }
  }
}

// The same with Huber's loss, on clean data and with one value in twenty wild.
// The asymptotic covariance at 60 values may cost a percent or two.
TEST(NonlinearFit, HuberIntervalsCoverTruth) {
  const int runs = 1000;
  const std::vector<double> t_s = Times(60, 4.0);
  const std::vector<double> truth = {3.0, 1.2, 0.4};
  CurveModel model = Decay(t_s);
  FitOptions options;
  options.huber_threshold = 1.345;
  for (double wild : {0.0, 0.05}) {
    Random random(2025);
    int covered = 0;
    for (int k = 0; k < runs; ++k) {
      std::vector<double> y(t_s.size());
      model.values(truth, y);
      for (double& v : y) {
        v += random.Normal(0.0, random.Uniform() < wild ? 0.5 : 0.02);
      }
      const FitResult fit =
          FitNonlinear(model, y, {}, std::vector{2.0, 1.0, 0.0}, options);
      ASSERT_TRUE(fit.IsUsable()) << fit.message;
      const Interval i = CoverageInterval(fit.Parameter(1));
      covered += i.low <= truth[1] && truth[1] <= i.high;
    }
    EXPECT_GE(covered, 0.92 * runs) << wild;
    EXPECT_LE(covered, 0.98 * runs) << wild;
  }
}

TEST(NonlinearFit, RefusesWhatItCannotFit) {
  const std::vector<double> t_s = Times(10, 4.0);
  CurveModel model = Decay(t_s);
  std::vector<double> y(10, 1.0);
  const std::vector<double> start = {1.0, 1.0, 0.0};

  y[3] = std::nan("");
  EXPECT_EQ(FitNonlinear(model, y, {}, start).termination,
            Termination::kBadInput);
  y[3] = 1.0;
  const std::vector<double> zero_sd(10, 0.0);
  EXPECT_EQ(FitNonlinear(model, y, zero_sd, start).termination,
            Termination::kBadInput);
  EXPECT_EQ(FitNonlinear(Decay({0.0, 1.0}), std::vector{1.0, 2.0}, {}, start)
                .termination,
            Termination::kTooFewData);

  // Two parameters that enter as a product only.
  CurveModel product;
  product.values = [&](std::span<const double> b, std::span<double> values) {
    for (std::size_t i = 0; i < values.size(); ++i) {
      values[i] = b[0] * b[1] * t_s[i];
    }
  };
  for (std::size_t i = 0; i < 10; ++i) y[i] = 2.0 * t_s[i] + (i % 2 ? 0.1 : 0);
  const FitResult fit = FitNonlinear(product, y, {}, std::vector{1.0, 1.0});
  EXPECT_FALSE(fit.IsUsable());
  EXPECT_EQ(fit.termination, Termination::kSingular);
  EXPECT_FALSE(fit.message.empty());
}

TEST(NonlinearFit, ExactDataConverge) {
  const std::vector<double> t_s = Times(30, 5.0);
  const std::vector<double> truth = {3.0, 1.2, 0.4};
  std::vector<double> y(t_s.size());
  CurveModel model = Decay(t_s);
  model.values(truth, y);
  const FitResult fit = FitNonlinear(model, y, {}, std::vector{1.0, 0.2, 0.0});
  ASSERT_TRUE(fit.IsUsable()) << fit.message;
  for (std::size_t j = 0; j < 3; ++j) {
    EXPECT_NEAR(fit.parameters[j], truth[j], 1e-9);
  }
}

TEST(SeparableFit, AgreesWithFullFit) {
  Random random(21);
  const std::vector<double> t_s = Times(60, 5.0);
  std::vector<double> y(t_s.size());
  CurveModel full = Decay(t_s);  // amplitude, tau, offset
  full.values(std::vector{3.0, 1.2, 0.4}, y);
  for (double& v : y) v += random.Normal(0.0, 0.05);
  SeparableModel separable;
  separable.num_amplitudes = 2;
  separable.basis = [&](std::span<const double> shape,
                        std::span<double> basis) {
    for (std::size_t i = 0; i < t_s.size(); ++i) {
      basis[i] = std::exp(-t_s[i] / shape[0]);
      basis[t_s.size() + i] = 1.0;
    }
  };
  const FitResult a = FitSeparable(separable, y, {}, std::vector{5.0});
  const FitResult b = FitNonlinear(full, y, {}, std::vector{1.0, 1.0, 0.0});
  ASSERT_TRUE(a.IsUsable()) << a.message;
  EXPECT_NEAR(a.Parameter(0).value, b.Parameter(1).value, 1e-7);
  EXPECT_NEAR(a.Parameter(1).value, b.Parameter(0).value, 1e-7);
  EXPECT_NEAR(a.Parameter(2).value, b.Parameter(2).value, 1e-7);
  EXPECT_NEAR(a.Parameter(0).sd, b.Parameter(1).sd, 1e-7);
  EXPECT_NEAR(a.Covariance(0, 1), b.Covariance(1, 0), 1e-7);
}

TEST(FitOptions, ValidateNamesTheFault) {
  FitOptions options;
  EXPECT_TRUE(options.Validate());
  options.lower = {0.0};
  EXPECT_FALSE(options.Validate());
  options.upper = {0.0};
  EXPECT_FALSE(options.Validate());
  options = {};
  options.huber_threshold = 0.0;
  EXPECT_FALSE(options.Validate());
  options = {};
  options.step_tolerance = 0.1;
  EXPECT_FALSE(options.Validate());
}

}  // namespace
}  // namespace flowkin
