#include "core/dosing/dilution_law.h"

#include <gtest/gtest.h>

#include <cmath>

namespace flowkin {
namespace {

// Rounding of a handful of double operations on numbers near 1.
constexpr double kRounding = 1e-12;

DilutionLaw Water(double g, double c) {
  return {DilutionLaw::Kind::kWater, g, c};
}

TEST(DilutionLaw, ThickenerPowerLawIsTheStraightCase) {
  // eta ~ concentration^alpha, so ln eta falls by alpha u.
  EXPECT_NEAR(LevelAfter(Water(2.5, 0.0), 0.8, 0.2), 0.3, kRounding);
  EXPECT_NEAR(LevelAfter(Water(2.5, 1e-6), 0.8, 0.2), 0.3, 1e-6);
}

TEST(DilutionLaw, FollowsAKriegerDoughertyPaintFromItsTangent) {
  // I. M. Krieger, T. J. Dougherty 1959: eta ~ (1 - phi/phim)^-n,
  // n = [eta] phim, in a water phase ~ concentration^alpha. With r = phi/phim,
  // g = n r / (1 - r) + alpha and d ln g/dx = n r / ((1 - r) g)^2.
  constexpr double kLimit = 0.58;
  constexpr double kSolids = 0.45;
  constexpr double kThickener = 2.5;
  constexpr double kN = 2.5 * kLimit;
  constexpr double kR = kSolids / kLimit;
  const auto ln_eta = [&](double w) {
    return -kN * std::log(1.0 - kR / (1.0 + w)) - kThickener * std::log1p(w);
  };
  const double g = kN * kR / (1.0 - kR) + kThickener;
  const DilutionLaw law = Water(g, kN * kR / ((1.0 - kR) * (1.0 - kR) * g * g));
  for (const double w : {0.01, 0.02, 0.05, 0.1}) {
    // Same slope and bend at the start: what is left is of third order, 1 %
    // after 10 % of water, a quarter of the best test's scatter.
    EXPECT_NEAR(
        LevelAfter(law, 0.0, std::log1p(w)), ln_eta(w) - ln_eta(0.0), 0.01)
        << w;
  }
}

TEST(DilutionLaw, OnePairServesEveryStart) {
  const DilutionLaw law = Water(6.0, 0.4);
  const double halfway = LevelAfter(law, 1.2, 0.07);
  EXPECT_NEAR(
      LevelAfter(law, halfway, 0.05), LevelAfter(law, 1.2, 0.12), kRounding);
}

TEST(DilutionLaw, StartLevelForUndoesLevelAfter) {
  for (const DilutionLaw& law :
       {Water(6.0, 0.4),
        Water(17.0, 1.1),
        Water(3.0, 0.0),
        DilutionLaw{DilutionLaw::Kind::kBlend, -1.0, 0.5}}) {
    for (const double start : {-0.2, 0.3, 1.2}) {
      for (const double u : {0.0, 0.01, 0.1, 0.3}) {
        EXPECT_NEAR(StartLevelFor(law, LevelAfter(law, start, u), u),
                    start,
                    1e-9);  // the inverse loses digits where the law flattens
      }
    }
  }
}

TEST(DilutionLaw, NoStartReachesBelowTheThickestPaint) {
  // However thick, the paint is below this level after u = 0.2.
  EXPECT_EQ(StartLevelFor(Water(10.0, 1.0), 0.0, 0.2),
            std::numeric_limits<double>::infinity());
  EXPECT_LT(LevelAfter(Water(10.0, 1.0), 30.0, 0.2), 0.0);
}

TEST(DilutionLaw, SensitivityIsTheDerivative) {
  constexpr double kStep = 1e-5;
  for (const DilutionLaw& law :
       {Water(6.0, 0.4), DilutionLaw{DilutionLaw::Kind::kBlend, -1.0, 0.5}}) {
    const double slope = (LevelAfter(law, 0.7 + kStep, 0.1) -
                          LevelAfter(law, 0.7 - kStep, 0.1)) /
                         (2.0 * kStep);
    // Central difference: error of the order of the step squared.
    EXPECT_NEAR(LevelSensitivity(law, 0.7, 0.1), slope, 1e-8);
  }
}

TEST(DilutionLaw, NeverRisesWithMoreLiquid) {
  for (const double second : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
    const DilutionLaw blend{DilutionLaw::Kind::kBlend, -1.0, second};
    const DilutionLaw water = Water(5.0, 0.5 * (second + 1.0));
    double before_blend = 1.0;
    double before_water = 1.0;
    for (double u = 0.01; u < 1.0; u += 0.01) {
      EXPECT_LE(LevelAfter(blend, 1.0, u), before_blend + kRounding);
      EXPECT_LT(LevelAfter(water, 1.0, u), before_water);
      before_blend = LevelAfter(blend, 1.0, u);
      before_water = LevelAfter(water, 1.0, u);
    }
  }
}

TEST(DilutionLaw, BlendWithoutInteractionIsTheLogarithmicRule) {
  // S. Arrhenius 1887; half of 2000 and half of 500 mm2/s is 1000 mm2/s.
  const DilutionLaw law{DilutionLaw::Kind::kBlend, std::log(500.0), 0.0};
  EXPECT_NEAR(std::exp(LevelAfter(law, std::log(2000.0), std::log(2.0))),
              1000.0,
              1e-9);  // rounding at this size
}

}  // namespace
}  // namespace flowkin
