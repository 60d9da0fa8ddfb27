#include "calibration/curve/dilution_curve.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "calibration/defaults/default_prior.h"
#include "tests/support/virtual_cup.h"

namespace flowkin {
namespace {

constexpr double kNoise = 0.02;

std::vector<DilutionTest> Exact(const DilutionLaw& law,
                                double start,
                                const std::vector<double>& us) {
  std::vector<DilutionTest> tests;
  for (const double u : us) {
    tests.push_back({u, LevelAfter(law, start, u), kNoise});
  }
  return tests;
}

TEST(DilutionCurve, RecoversALawOfItsOwnFamily) {
  const DilutionLaw law{DilutionLaw::Kind::kWater, 7.0, 0.4};
  const DilutionCurve curve = FitDilutionCurve(
      Exact(law, 1.1, {0.0, 0.03, 0.06, 0.1, 0.14, 0.18, 0.22}),
      WaterPrior(),
      {});
  const double sd = std::sqrt(curve.moments.variance_first);
  EXPECT_LT(sd, 0.2);
  // Noise-free tests: the rest is the prior's pull, within one sd.
  EXPECT_NEAR(curve.moments.first, std::log(7.0), sd);
  EXPECT_NEAR(
      curve.moments.second, 0.4, std::sqrt(curve.moments.variance_second));
}

TEST(DilutionCurve, OneBadTestIsFoundAndHardlyMoves) {
  const DilutionLaw law{DilutionLaw::Kind::kWater, 7.0, 0.4};
  std::vector<DilutionTest> tests =
      Exact(law, 1.1, {0.0, 0.04, 0.08, 0.12, 0.12});
  tests[2].ln_ratio += std::log(1.3);
  const DilutionCurve curve = FitDilutionCurve(tests, WaterPrior(), {});
  EXPECT_GT(curve.outlier_chance[2], 0.9);
  for (const std::size_t i : {0U, 1U, 3U, 4U}) {
    EXPECT_LT(curve.outlier_chance[i], 0.1) << i;
  }
  const Estimate now = LevelMoments(curve.belief, curve.belief.u_now);
  EXPECT_NEAR(now.value, LevelAfter(law, 1.1, 0.12), 2.0 * now.sd);
}

TEST(DilutionCurve, WeightsSumToOneAndOrderDoesNotMatter) {
  const DilutionLaw law{DilutionLaw::Kind::kWater, 5.0, 0.3};
  std::vector<DilutionTest> tests = Exact(law, 0.8, {0.0, 0.0, 0.05, 0.05});
  tests[0].ln_ratio += 0.02;
  tests[2].ln_ratio -= 0.01;
  const DilutionCurve one = FitDilutionCurve(tests, WaterPrior(), {});
  double sum = 0.0;
  for (const DilutionBelief::Part& part : one.belief.parts) sum += part.weight;
  EXPECT_NEAR(sum, 1.0, 1e-9);
  std::swap(tests[0], tests[1]);
  std::swap(tests[2], tests[3]);
  const DilutionCurve other = FitDilutionCurve(tests, WaterPrior(), {});
  EXPECT_NEAR(LevelQuantile(one.belief, 0.01, 0.1),
              LevelQuantile(other.belief, 0.01, 0.1),
              1e-4);
}

TEST(DilutionCurve, SharedErrorDoesNotShrinkWithRepeats) {
  std::vector<DilutionTest> tests(20, DilutionTest{0.0, 0.4, 0.05});
  CurveOptions options;
  const double alone =
      LevelMoments(FitDilutionCurve(tests, WaterPrior(), options).belief, 0.0)
          .sd;
  options.common_rel_sd = 0.04;
  const double shared =
      LevelMoments(FitDilutionCurve(tests, WaterPrior(), options).belief, 0.0)
          .sd;
  // 0.05 / sqrt(20), and never below the shared 0.04.
  EXPECT_NEAR(alone, 0.05 / std::sqrt(20.0), 0.002);
  EXPECT_GT(shared, 0.04);
}

TEST(DilutionCurve, LearnsTheProductWhereOnlyTimesAreKnown) {
  // Times go as viscosity^0.6, which the user does not know well; what the
  // next addition does to the time is known all the same.
  const DilutionLaw law{DilutionLaw::Kind::kWater, 7.0, 0.3};
  std::vector<DilutionTest> tests =
      Exact(law, 1.0, {0.0, 0.03, 0.06, 0.09, 0.12});
  for (DilutionTest& test : tests) test.ln_ratio *= 0.6;
  CurveOptions options;
  options.time_exponent = {0.8, 0.25};
  const DilutionCurve curve = FitDilutionCurve(tests, WaterPrior(), options);
  const Estimate later = LevelMoments(curve.belief, 0.15);
  EXPECT_NEAR(later.value, LevelAfter(law, 1.0, 0.15), 2.5 * later.sd);
}

TEST(DilutionCurve, IntervalsHoldTheTruth) {
  // 1,500 cups drawn from the prior: the 95 % interval of the level after one
  // more addition must hold it in 93 to 97.5 %.
  Random random(7);
  const CurvePrior prior = WaterPrior();
  int held = 0;
  constexpr int kCups = 1500;
  for (int k = 0; k < kCups; ++k) {
    const DilutionLaw law{DilutionLaw::Kind::kWater,
                          std::exp(std::log(6.0) + 0.5 * random.Normal()),
                          0.35 * std::exp(0.5 * random.Normal())};
    const double start = random.Uniform(0.2, 1.2);
    std::vector<DilutionTest> tests;
    for (const double u : {0.0, 0.02, 0.05}) {
      tests.push_back(
          {u, LevelAfter(law, start, u) + 0.04 * random.Normal(), 0.04});
    }
    const DilutionCurve curve = FitDilutionCurve(tests, prior, {});
    const double truth = LevelAfter(law, start, 0.09);
    const double below = ChanceBelow(curve.belief, truth, 0.09);
    if (below > 0.025 && below < 0.975) ++held;
  }
  EXPECT_GE(held, 0.93 * kCups);
  EXPECT_LE(held, 0.975 * kCups);
}

TEST(DefaultPrior, HoldsWhatIsPublished) {
  const CurvePrior prior = WaterPrior();
  std::vector<double> marginal(prior.first_count, 0.0);
  double total = 0.0;
  for (std::size_t i = 0; i < prior.first_count; ++i) {
    for (std::size_t j = 0; j < prior.second.size(); ++j) {
      marginal[i] += std::exp(prior.log_weight[i * prior.second.size() + j]);
    }
    total += marginal[i];
  }
  const auto above = [&](double slope) {
    double sum = 0.0;
    for (std::size_t i = 0; i < prior.first_count; ++i) {
      if (prior.first_low + prior.first_step * static_cast<double>(i) >
          std::log(slope)) {
        sum += marginal[i];
      }
    }
    return sum / total;
  };
  // Waterborne paint by the suspension laws: 3 to 10 per unit of water.
  EXPECT_GT(above(3.0) - above(10.0), 0.7);
  // Glycerol of 95 to 99 % and sucrose of 66 to 74 %: 8 to 17.
  EXPECT_GT(above(14.0), 0.02);
  EXPECT_GT(above(17.0), 0.005);
}

/// The law's form against each published law over 40 mL of water per 100 mL.
class PublishedLaw : public testing::TestWithParam<test::LawFamily> {};

TEST_P(PublishedLaw, IsHeldByTheFamily) {
  Random random(11);
  for (int k = 0; k < 12; ++k) {
    const test::VirtualPaint paint = test::DrawPaint(GetParam(), random);
    const test::VirtualCup cup(paint, 3.0, 100.0);
    std::vector<DilutionTest> tests;
    // As far as the job goes: to a third of the base coat's viscosity.
    for (double added_ml = 0.0; added_ml <= 40.0; added_ml += 2.0) {
      const double level = std::log(cup.Ratio(added_ml));
      if (level < -1.1) break;
      tests.push_back({std::log1p(added_ml / 100.0), level, 0.01});
    }
    CurveOptions options;
    options.outlier_chance = 1e-9;
    const DilutionCurve curve = FitDilutionCurve(tests, WaterPrior(), options);
    for (const DilutionTest& test : tests) {
      // 4 %: what a good test of a cup can tell, and a quarter of the band.
      EXPECT_NEAR(LevelMoments(curve.belief, test.u).value, test.ln_ratio, 0.04)
          << test.u;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(All,
                         PublishedLaw,
                         testing::ValuesIn(test::kAllFamilies));

}  // namespace
}  // namespace flowkin
