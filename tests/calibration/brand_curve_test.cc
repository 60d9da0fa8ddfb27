#include "calibration/curve/brand_curve.h"

#include <gtest/gtest.h>

#include <cmath>

#include "calibration/defaults/default_prior.h"
#include "core/base/random.h"

namespace flowkin {
namespace {

CupEvidence Cup(const std::string& colour,
                double slope,
                const CurvePrior& grid,
                double noise = 0.0,
                Random* random = nullptr) {
  const DilutionLaw law{DilutionLaw::Kind::kWater, slope, 0.35};
  std::vector<DilutionTest> tests;
  for (const double u : {0.0, 0.03, 0.07, 0.1}) {
    const double off = random != nullptr ? noise * random->Normal() : 0.0;
    tests.push_back({u, LevelAfter(law, 0.9, u) + off, 0.04});
  }
  return {colour, LogLikelihood(tests, grid, {})};
}

double Sd(const CurveMoments& m) { return std::sqrt(m.variance_first); }

TEST(BrandCurve, NoCupsLeavesThePrior) {
  const CurvePrior grid = BrandGrid(WaterPrior());
  const CurveMoments before = MomentsOf(grid);
  const CurveMoments after = FitBrandCurve({}, "", grid).next_cup_moments;
  // The next cup scatters about its brand, so it is a little less known; at
  // most by the widest spreads together.
  EXPECT_GE(Sd(after), Sd(before) - 1e-6);
  EXPECT_LT(Sd(after), Sd(before) + 0.1);
  EXPECT_NEAR(after.first, before.first, 0.05);
}

TEST(BrandCurve, FinerGridIsTheSamePrior) {
  const CurveMoments coarse = MomentsOf(WaterPrior());
  const CurveMoments fine = MomentsOf(BrandGrid(WaterPrior()));
  // Linear interpolation of a smooth log weight.
  EXPECT_NEAR(coarse.first, fine.first, 0.01);
  EXPECT_NEAR(Sd(coarse), Sd(fine), 0.01);
}

TEST(BrandCurve, ThreeCupsFixASlope) {
  const CurvePrior grid = BrandGrid(WaterPrior());
  const std::vector<CupEvidence> cups = {
      Cup("", 9.0, grid), Cup("", 9.0, grid), Cup("", 9.0, grid)};
  const CurveMoments m = FitBrandCurve(cups, "", grid).next_cup_moments;
  EXPECT_LT(Sd(m), 0.25);
  EXPECT_NEAR(m.first, std::log(9.0), Sd(m));
}

TEST(BrandCurve, AColourStartsFromItsBrandAndKnowsLess) {
  const CurvePrior grid = BrandGrid(WaterPrior());
  std::vector<CupEvidence> cups;
  for (const char* colour : {"red", "red", "blue", "blue", "white"}) {
    cups.push_back(Cup(colour, 10.0, grid));
  }
  const CurveMoments red = FitBrandCurve(cups, "red", grid).next_cup_moments;
  const CurveMoments green =
      FitBrandCurve(cups, "green", grid).next_cup_moments;
  EXPECT_LT(Sd(red), Sd(green));
  EXPECT_LT(Sd(green), Sd(MomentsOf(grid)));
  EXPECT_NEAR(green.first, std::log(10.0), Sd(green));
}

TEST(BrandCurve, ColoursThatDifferWidenTheNextOne) {
  const CurvePrior grid = BrandGrid(WaterPrior());
  const auto spread = [&](double a, double b, double c) {
    std::vector<CupEvidence> cups;
    for (int k = 0; k < 3; ++k) {
      cups.push_back(Cup("red", a, grid));
      cups.push_back(Cup("blue", b, grid));
      cups.push_back(Cup("white", c, grid));
    }
    return Sd(FitBrandCurve(cups, "green", grid).next_cup_moments);
  };
  EXPECT_GT(spread(5.0, 8.0, 12.0), 1.3 * spread(8.0, 8.0, 8.0));
}

TEST(BrandCurve, NextCupIntervalsHold) {
  // Cups of a colour that differ by 6 % in slope: the 95 % interval of the
  // next one's ln slope must hold it about that often; never less than 92 %,
  // and it may be wide because three cups cannot fix a spread.
  const CurvePrior grid = BrandGrid(WaterPrior());
  Random random(5);
  int held = 0;
  constexpr int kBrands = 200;
  for (int k = 0; k < kBrands; ++k) {
    const double brand = std::log(6.0) + 0.4 * random.Normal();
    const auto slope = [&] { return std::exp(brand + 0.06 * random.Normal()); };
    std::vector<CupEvidence> cups;
    for (int c = 0; c < 3; ++c) {
      cups.push_back(Cup("", slope(), grid, 0.04, &random));
    }
    const CurveMoments m = FitBrandCurve(cups, "", grid).next_cup_moments;
    if (std::abs(std::log(slope()) - m.first) < 1.96 * Sd(m)) ++held;
  }
  EXPECT_GE(held, 0.92 * kBrands);
}

TEST(PopulationPrior, LearnsFromBrandsAndKeepsADoubt) {
  const CurvePrior fallback = WaterPrior();
  EXPECT_EQ(PopulationPrior({}, fallback).log_weight, fallback.log_weight);
  const std::vector<Estimate> brands(12, Estimate{std::log(10.0), 0.1});
  const CurvePrior learned = PopulationPrior(brands, fallback);
  const CurveMoments m = MomentsOf(learned);
  EXPECT_GT(m.first, MomentsOf(fallback).first + 0.2);
  EXPECT_LT(Sd(m), Sd(MomentsOf(fallback)));
  EXPECT_GE(Sd(m), 0.2);
}

}  // namespace
}  // namespace flowkin
