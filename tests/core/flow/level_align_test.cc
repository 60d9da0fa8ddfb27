// Decay curves with known clocks, made from the levelling law of each
// wavenumber, laid over each other.

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>
#include <vector>

#include "core/base/distributions.h"
#include "core/base/random.h"
#include "core/flow/level_test.h"
#include "core/flow/physics.h"

namespace flowkin {
namespace {

struct Scene {
  double ridge_m = 0.0022;  ///< standard deviation of the ribbon's profile
  double depth_m = 0.006;
  double rho_kg_m3 = 1200.0;
  double sigma_n_m = 0.0325;
  /// Power of k in the contrast of one wavenumber: 1 = slope, which is what
  /// shading and small shifts of a highlight show; 2 = curvature.
  double observable = 1.0;
  /// Waves longer than the cup allows do not exist: the lowest mode of a round
  /// cup has k R = 1.84 (first zero of the derivative of the Bessel function
  /// J1, any handbook).
  double cup_radius_m = 0.04;
};

/// Root-mean-square relief of a Gaussian ridge at t / mu, 1 at the start.
/// Each wavenumber by itself:
///   E(t) = int k^(2 observable) exp(-k^2 w^2 - 2 s(k) t) dk.
class RidgeDecay {
 public:
  explicit RidgeDecay(const Scene& scene) {
    const double top = 4.0 / scene.ridge_m;
    const double bottom = 1.84 / scene.cup_radius_m;
    const int n = 160;
    for (int i = 0; i < n; ++i) {
      const double k = bottom + (top - bottom) * (i + 0.5) / n;
      const double weight = std::pow(k, 2.0 * scene.observable) *
                            std::exp(-std::pow(k * scene.ridge_m, 2));
      weights_.push_back(weight);
      rates_.push_back(LevellingRatePerS(
          k, scene.depth_m, 1.0, scene.rho_kg_m3, scene.sigma_n_m));
      total_ += weight;
    }
  }
  /// Against the level surface, or against that of the time `flat`.
  double At(double t_s_per_mu, double flat = 1e9) const {
    double e = 0.0;
    for (std::size_t i = 0; i < rates_.size(); ++i) {
      const double left =
          std::exp(-rates_[i] * t_s_per_mu) - std::exp(-rates_[i] * flat);
      e += weights_[i] * left * left;
    }
    return std::sqrt(e / total_);
  }

 private:
  std::vector<double> weights_, rates_;
  double total_ = 0.0;
};

struct Nuisance {
  double fps = 60.0;
  double white = 0.0;     ///< sd per picture, share of the start
  double slow = 0.0;      ///< sd of a slow error, share of the start
  double outliers = 0.0;  ///< share of pictures
  double contrast_sd = 0.0;
  double plateau = 0.0;  ///< sd of an offset, share of the start
  double seen = 4.5;     ///< decay times filmed
};

FlowCurve MakeCurve(const RidgeDecay& decay,
                    double mu,
                    double clock_s,
                    const Nuisance& with,
                    Random& random) {
  FlowCurve curve;
  curve.name = "relief";
  const double contrast = std::exp(with.contrast_sd * random.Normal());
  const double late = random.Uniform(0.0, 1.0) / with.fps;
  const double offset = with.plateau * random.Normal();
  double slow = with.slow * random.Normal();
  // Slow errors live about as long as a group of coded pictures.
  const double keep = std::exp(-1.0 / (0.15 * clock_s * with.fps));
  const int pictures = static_cast<int>(with.seen * clock_s * with.fps);
  // The last picture counts as flat.
  const double flat = pictures / with.fps / mu;
  for (int i = 0; i < pictures; ++i) {
    const double t = (i + 0.5) / with.fps;
    double v = decay.At((t + late - 0.5 / with.fps) / mu, flat) + offset +
               slow + with.white * random.Normal();
    if (random.Uniform() < with.outliers) v *= random.Uniform(0.5, 2.0);
    slow = keep * slow +
           std::sqrt(1.0 - keep * keep) * with.slow * random.Normal();
    curve.t_s.push_back(t);
    curve.value.push_back(contrast * v);
    curve.sd.push_back(contrast * std::max(with.white, 1e-4));
  }
  return curve;
}

double ClockOf(const RidgeDecay& decay) {
  double t = 1e-3;
  while (decay.At(t) > std::exp(-1.0)) t *= 1.02;
  return t;
}

TEST(AlignDecays, FindsTheRatioWithoutNoise) {
  Random random(1);
  for (double depth_m : {0.003, 0.006, 0.03}) {
    Scene scene;
    scene.depth_m = depth_m;
    const RidgeDecay decay(scene);
    const double unit = ClockOf(decay);
    for (double ratio : {0.5, 0.8, 1.25, 2.0}) {
      Nuisance none;
      none.fps = 240.0;
      const double mu = 1.0 / unit;  // the base coat's clock is near 1 s
      const auto fit =
          AlignDecays({MakeCurve(decay, mu, 1.0, none, random),
                       MakeCurve(decay, mu * ratio, ratio, none, random)});
      const double found = fit.ln_clock[1].value - fit.ln_clock[0].value;
      // The first picture shows less of a fast decay's start, and the contrast
      // is held to it by start_sd: pulls by under 1 %.
      EXPECT_NEAR(found, std::log(ratio), 0.01) << depth_m << ' ' << ratio;
      EXPECT_LT(fit.misfit, 0.01);
    }
  }
}

TEST(AlignDecays, IsBlindToContrastAndOrder) {
  Random random(2);
  const RidgeDecay decay(Scene{});
  const double unit = ClockOf(decay);
  Nuisance noisy;
  noisy.white = 0.005;
  FlowCurve a = MakeCurve(decay, 1.0 / unit, 1.0, noisy, random);
  FlowCurve b = MakeCurve(decay, 1.4 / unit, 1.4, noisy, random);
  const auto fit = AlignDecays({a, b});
  const auto swapped = AlignDecays({b, a});
  for (std::size_t i = 0; i < a.value.size(); ++i) {
    a.value[i] *= 37.0;
    a.sd[i] *= 37.0;
  }
  const auto scaled = AlignDecays({a, b});
  const double d = fit.ln_clock[1].value - fit.ln_clock[0].value;
  // Both are the same sums in another order, iterated to 1e-4.
  EXPECT_NEAR(d, swapped.ln_clock[0].value - swapped.ln_clock[1].value, 3e-4);
  EXPECT_NEAR(d, scaled.ln_clock[1].value - scaled.ln_clock[0].value, 3e-4);
}

TEST(AlignDecays, SaysWhenACurveCannotBeUsed) {
  Random random(3);
  const RidgeDecay decay(Scene{});
  const double unit = ClockOf(decay);
  Nuisance noisy;
  noisy.white = 0.005;
  const FlowCurve good = MakeCurve(decay, 1.0 / unit, 1.0, noisy, random);
  FlowCurve flat = good;
  for (double& v : flat.value) v = 1.0;
  FlowCurve empty;
  const auto fit = AlignDecays({good, flat, empty, good});
  EXPECT_TRUE(std::isfinite(fit.ln_clock[0].sd));
  EXPECT_TRUE(std::isinf(fit.ln_clock[1].sd));
  EXPECT_TRUE(std::isinf(fit.ln_clock[2].sd));
  EXPECT_DOUBLE_EQ(fit.ln_clock[0].value, fit.ln_clock[3].value);
  EXPECT_TRUE(AlignDecays({}).ln_clock.empty());
}

TEST(AlignDecays, CountsWhatACurvesScatterDoesNotShow) {
  Random random(4);
  const RidgeDecay decay(Scene{});
  const double unit = ClockOf(decay);
  Nuisance noisy;
  noisy.white = 0.005;
  const FlowCurve plain = MakeCurve(decay, 1.0 / unit, 1.0, noisy, random);
  FlowCurve doubtful = MakeCurve(decay, 1.4 / unit, 1.4, noisy, random);
  const auto before = AlignDecays({plain, doubtful});
  doubtful.stretch_sd = 0.15;
  const auto after = AlignDecays({plain, doubtful});
  EXPECT_DOUBLE_EQ(after.ln_clock[0].sd, before.ln_clock[0].sd);
  EXPECT_DOUBLE_EQ(after.ln_clock[1].value, before.ln_clock[1].value);
  // Independent errors add in quadrature (JCGM 100:2008, 5.1.2).
  EXPECT_NEAR(
      after.ln_clock[1].sd, std::hypot(before.ln_clock[1].sd, 0.15), 1e-12);
}

// A pale paint's shade goes with the slope, a dark one's mirror image more with
// the curvature: two observables of one decay, which no stretch lays over each
// other, so the interval must say so.
TEST(AlignDecays, DoubtsARatioOfUnlikeDecays) {
  FlowCurve pale, dark;
  pale.name = dark.name = "relief";
  // The dark one stands still at first: its fall to 1/e takes 1.57 times as
  // long, its later slope tells a shorter clock.
  for (int i = 0; i < 240; ++i) {
    const double t = (i + 0.5) / 60.0;
    pale.t_s.push_back(t);
    pale.value.push_back(std::exp(-t));
    pale.sd.push_back(0.005);
    dark.t_s.push_back(t);
    dark.value.push_back(t < 0.9 ? 1.0 : std::exp(-1.5 * (t - 0.9)));
    dark.sd.push_back(0.005);
  }
  const auto same = AlignDecays({pale, pale, pale, pale});
  const auto other = AlignDecays({pale, pale, pale, dark});
  ASSERT_TRUE(std::isfinite(other.ln_clock[3].sd));
  const double by_clock = other.ln_clock[3].value - other.ln_clock[0].value;
  const double by_fall = std::log(0.9 + 1.0 / 1.5);
  ASSERT_GT(by_fall - by_clock, 0.2);
  const double sd =
      std::hypot(other.ln_clock[3].sd, other.ln_clock[0].sd / std::sqrt(3.0));
  EXPECT_LT(by_fall - by_clock, 2.0 * sd);
  EXPECT_LT(same.ln_clock[3].sd, 0.1);
}

// The stated 95 % interval of a ratio must hold the truth 95 % of the time,
// whatever ribbon, pool, paint, camera and noise.
TEST(AlignDecays, IntervalHoldsTheTruth) {
  constexpr int kTrials = 1200;
  Random random(20240611);
  int inside = 0;
  double square = 0.0;
  for (int trial = 0; trial < kTrials; ++trial) {
    Scene scene;
    scene.ridge_m = random.Uniform(0.0015, 0.0035);
    scene.depth_m = std::exp(random.Uniform(std::log(0.004), std::log(0.03)));
    scene.rho_kg_m3 = random.Uniform(1050.0, 1350.0);
    scene.sigma_n_m = random.Uniform(0.025, 0.045);
    scene.observable = random.Uniform(1.0, 2.0);
    scene.cup_radius_m = random.Uniform(0.025, 0.06);
    const RidgeDecay decay(scene);
    const double unit = ClockOf(decay);
    const double clock_s = random.Uniform(0.25, 1.5);
    const double ratio = std::exp(random.Uniform(-0.7, 0.7));
    Nuisance with;
    with.fps = random.Below(2) == 0 ? 30.0 : 60.0;
    with.white = random.Uniform(0.002, 0.02);
    with.slow = random.Uniform(0.002, 0.012);
    with.outliers = 0.01;
    with.contrast_sd = 0.1;
    with.plateau = 0.003;
    // Every film ends when it ends; less is refused.
    const auto film = [&](double times) {
      with.seen = random.Uniform(3.0, 5.5);
      return MakeCurve(
          decay, clock_s * times / unit, clock_s * times, with, random);
    };
    std::vector<FlowCurve> curves;
    const std::size_t bases = 1 + random.Below(3);
    for (std::size_t i = 0; i < bases; ++i) {
      curves.push_back(film(1.0));
    }
    curves.push_back(film(ratio));
    const auto fit = AlignDecays(curves);
    double base = 0.0;
    double var = fit.ln_clock.back().sd * fit.ln_clock.back().sd;
    const double n = static_cast<double>(bases);
    for (std::size_t i = 0; i < bases; ++i) {
      base += fit.ln_clock[i].value / n;
      var += fit.ln_clock[i].sd * fit.ln_clock[i].sd / (n * n);
    }
    const double dof = fit.ln_clock.back().degrees_of_freedom;
    const double half = StudentTQuantile(0.975, dof) * std::sqrt(var);
    const double error = fit.ln_clock.back().value - base - std::log(ratio);
    if (std::abs(error) <= half) ++inside;
    square += error * error / var;
  }
  const double coverage = static_cast<double>(inside) / kTrials;
  RecordProperty("coverage", std::to_string(coverage));
  std::cout << "coverage " << coverage << ", rms error over sd "
            << std::sqrt(square / kTrials) << '\n';
  EXPECT_GE(coverage, 0.93);
  EXPECT_LE(coverage, 0.975);
}

}  // namespace
}  // namespace flowkin
