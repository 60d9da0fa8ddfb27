// Cups thinned with another liquid than water: the mixing law, what is learned
// of it, and a change of liquid within one cup.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "app/usecases/advise_dose.h"
#include "calibration/curve/brand_curve.h"
#include "calibration/defaults/default_prior.h"
#include "core/base/random.h"

namespace flowkin {
namespace {

/// Blends by viscosity blending numbers, the way of ASTM D7152, with the
/// constants of the Refutas equation (nu in mm2/s): VBN = 14.534 ln ln(nu +
/// 0.8) + 10.975, averaged by share.
double BlendingNumber(double nu) {
  return 14.534 * std::log(std::log(nu + 0.8)) + 10.975;
}
double BlendViscosity(double thick, double thin, double thin_share) {
  const double number = (1.0 - thin_share) * BlendingNumber(thick) +
                        thin_share * BlendingNumber(thin);
  return std::exp(std::exp((number - 10.975) / 14.534)) - 0.8;
}

TEST(BlendReference, IsWhatIsPublished) {
  // 2.234 mm2/s has the number 12.490; half 2000 and half 500 mm2/s give
  // 965.97 mm2/s (worked examples).
  EXPECT_NEAR(BlendingNumber(2.234), 12.490, 5e-4);  // digits given
  EXPECT_NEAR(BlendViscosity(2000.0, 500.0, 0.5), 965.965, 5e-3);
}

TEST(BlendLaw, HoldsTheBlendingNumbersOverTheWholeRange) {
  for (const double thin : {200.0, 500.0, 1000.0}) {
    constexpr double kThick = 2000.0;
    const double far = std::log(thin / kThick);
    // Interaction from the half-and-half blend: h(1/2) = 1/2 - e/4.
    const double half = std::log(BlendViscosity(kThick, thin, 0.5) / kThick);
    const DilutionLaw law{
        DilutionLaw::Kind::kBlend, far, 2.0 - 4.0 * half / far};
    EXPECT_LE(std::abs(law.second), 0.3);  // one sd of the prior
    for (double share = 0.05; share < 0.95; share += 0.05) {
      const double truth =
          std::log(BlendViscosity(kThick, thin, share) / kThick);
      // 1 %: a quarter of what a good test of a cup can tell.
      EXPECT_NEAR(LevelAfter(law, 0.0, -std::log1p(-share)), truth, 0.01)
          << thin << ' ' << share;
    }
  }
}

TEST(BlendLaw, IsGrunbergAndNissanForEqualMolarVolumes) {
  // L. Grunberg, A. H. Nissan 1949, Nature 164, 799: ln eta = x1 ln eta1 +
  // x2 ln eta2 + x1 x2 G12; mole fractions are volume shares where both molar
  // volumes are the same.
  constexpr double kLnThick = 1.1;
  constexpr double kLnThin = -0.9;
  for (const double g12 : {-0.8, 0.0, 0.6, 1.4}) {
    const DilutionLaw law{
        DilutionLaw::Kind::kBlend, kLnThin, g12 / (kLnThick - kLnThin)};
    for (const double x : {0.1, 0.25, 0.5, 0.8}) {
      EXPECT_NEAR(LevelAfter(law, kLnThick, -std::log1p(-x)),
                  (1.0 - x) * kLnThick + x * kLnThin + x * (1.0 - x) * g12,
                  1e-12);  // rounding
    }
  }
}

TEST(BlendLaw, HoldsGrunbergAndNissanForUnequalMolarVolumes) {
  // Mole fractions from volumes where the thin liquid's molecules are half or
  // twice as large; interaction fitted at 20 mL per 100 mL.
  for (const double size : {0.5, 2.0}) {
    const auto level = [&](double share) {
      const double moles = share / size;
      const double x = moles / (moles + 1.0 - share);
      return 1.1 * (1.0 - x) - 0.9 * x + 0.4 * x * (1.0 - x);
    };
    constexpr double kAt = 1.0 / 6.0;
    const double h = (1.1 - level(kAt)) / 2.0;
    const DilutionLaw law{
        DilutionLaw::Kind::kBlend, -0.9, (kAt - h) / (kAt * (1.0 - kAt))};
    for (const double added : {0.05, 0.1, 0.2, 0.3, 0.4}) {
      // 4 %: what one good test can tell.
      EXPECT_NEAR(LevelAfter(law, 1.1, std::log1p(added)),
                  level(added / (1.0 + added)),
                  0.04)
          << size << ' ' << added;
    }
  }
}

TEST(VolumeAdditivity, GlycerolAndWaterShrinkLittleEnough) {
  // Density table at 20 degrees C (glycerol-density-15-30C.csv; columns:
  // mass per cent, 15, 20, 25, 30 degrees C). The engine counts volumes as if
  // they added up.
  std::ifstream file(std::string(FLOWKIN_SOURCE_DIR) +
                     "/tests/data/liquids/glycerol-density-15-30C.csv");
  ASSERT_TRUE(file);
  std::vector<double> density(101, 0.0);
  std::string line;
  while (std::getline(file, line)) {
    if (line.empty() || line[0] < '0' || line[0] > '9') continue;
    std::stringstream cells(line);
    std::string percent;
    std::string at15;
    std::string at20;
    std::getline(cells, percent, ',');
    std::getline(cells, at15, ',');
    std::getline(cells, at20, ',');
    density[static_cast<std::size_t>(std::stoi(percent))] = std::stod(at20);
  }
  const auto at = [&](double percent) {
    const auto low =
        std::min<std::size_t>(static_cast<std::size_t>(percent), 99);
    const double part = percent - static_cast<double>(low);
    return (1.0 - part) * density[low] + part * density[low + 1];
  };
  const double water = density[0];
  double most = 0.0;
  for (int percent = 1; percent < 100; ++percent) {
    const double c = 0.01 * percent;
    const double parts = c / density[100] + (1.0 - c) / water;
    most = std::max(most, 1.0 - 1.0 / at(percent) / parts);
  }
  // Pure glycerol and water lose at most about 1.1 % of their volume (the same
  // table; from memory also in handbooks).
  EXPECT_GT(most, 0.008);
  EXPECT_LT(most, 0.013);

  // On the way of a cup, 95 % glycerol thinned with up to 20 mL in 100 mL, the
  // growth in volume the engine works with is off by less than 0.6 %, which at
  // a slope of 14 is 8 % of ln ratio at the far end. It bends the curve, and
  // the curve is fitted: what is left after that is seen in PublishedLaw.
  const double stock_g = 100.0 * at(95.0);
  for (const double added_ml : {2.0, 5.0, 10.0, 20.0}) {
    const double mass_g = stock_g + added_ml * water;
    const double volume_ml = mass_g / at(95.0 * stock_g / mass_g);
    const double off = std::log1p(0.01 * added_ml) - std::log(0.01 * volume_ml);
    EXPECT_GT(off, 0.0) << added_ml;
    EXPECT_LT(off, 0.006) << added_ml;
  }
}

/// A cup of paint thinned with a liquid by the blending numbers above.
struct BlendCup {
  double thick, thin;  // mm2/s; base coat 1000 mm2/s
  double Ratio(double added_ml, double volume_ml) const {
    return BlendViscosity(thick, thin, added_ml / (added_ml + volume_ml)) /
           1000.0;
  }
};

std::vector<DilutionTest> Tests(const BlendCup& cup,
                                double sd,
                                Random& random) {
  std::vector<DilutionTest> tests;
  for (const double added_ml : {0.0, 20.0, 40.0, 60.0}) {
    tests.push_back(
        {std::log1p(added_ml / 120.0),
         std::log(cup.Ratio(added_ml, 120.0)) + sd * random.Normal(),
         sd});
  }
  return tests;
}

TEST(LearnedLiquid, KnowsTheLiquidAfterThreeCups) {
  constexpr double kThin = 300.0;
  Random random(9);
  const CurvePrior grid = BlendGrid();
  std::vector<CupEvidence> cups;
  for (const double thick : {1900.0, 2600.0, 1600.0}) {
    cups.push_back(
        {"A", LogLikelihood(Tests({thick, kThin}, 0.03, random), grid, {})});
  }
  const CurvePrior prior =
      FitBrandCurve(cups, "A", grid, BlendSpread()).next_cup;
  const CurveMoments m = MomentsOf(prior);
  const double sd = std::sqrt(m.variance_first);
  EXPECT_LT(sd, 0.6 * std::sqrt(MomentsOf(grid).variance_first));
  EXPECT_NEAR(m.first, std::log(0.3), 2.0 * sd);

  // The next cup, tested once: both know where it stands, but only what was
  // learned knows where 60 mL lead.
  const BlendCup next{2200.0, kThin};
  const std::vector<DilutionTest> first = {
      {0.0, std::log(next.Ratio(0.0, 120.0)), 0.03}};
  const double u = std::log1p(60.0 / 120.0);
  const Estimate learned =
      LevelMoments(FitDilutionCurve(first, prior, {}).belief, u);
  const Estimate unknown = LevelMoments(
      FitDilutionCurve(first, BlendPrior(std::nullopt), {}).belief, u);
  EXPECT_LT(learned.sd, 0.7 * unknown.sd);
  EXPECT_NEAR(
      learned.value, std::log(next.Ratio(60.0, 120.0)), 2.0 * learned.sd);
}

TEST(LearnedLiquid, MeasuredRatioTakesOver) {
  const CurvePrior grid = BlendGrid();
  const CurvePrior measured = AtMeasuredLevel(grid, {std::log(0.5), 0.04});
  const CurveMoments m = MomentsOf(measured);
  // The prior of sd 0.8 about 0.3 pulls by (0.04 / 0.8)^2 of the distance.
  EXPECT_NEAR(m.first, std::log(0.5), 0.04 * 0.2);
  EXPECT_NEAR(std::sqrt(m.variance_first), 0.04, 0.004);
}

TEST(LearnedLiquid, IntervalsHoldTheTruth) {
  // Liquids and paints of many kinds; three cups learned, the interval of the
  // fourth after 40 mL.
  Random random(4);
  const CurvePrior grid = BlendGrid();
  constexpr int kLiquids = 150;
  int held = 0;
  for (int k = 0; k < kLiquids; ++k) {
    const double thin = 300.0 * std::exp(0.7 * random.Normal());
    if (thin > 900.0) {
      ++held;  // no thinner at all; nothing to learn
      continue;
    }
    std::vector<CupEvidence> cups;
    for (int c = 0; c < 3; ++c) {
      cups.push_back(
          {"A",
           LogLikelihood(
               Tests({random.Uniform(1400.0, 3000.0), thin}, 0.04, random),
               grid,
               {})});
    }
    const CurvePrior prior =
        FitBrandCurve(cups, "A", grid, BlendSpread()).next_cup;
    const BlendCup next{random.Uniform(1400.0, 3000.0), thin};
    const DilutionCurve curve = FitDilutionCurve(
        {{0.0,
          std::log(next.Ratio(0.0, 120.0)) + 0.04 * random.Normal(),
          0.04}},
        prior,
        {});
    const double below = ChanceBelow(curve.belief,
                                     std::log(next.Ratio(40.0, 120.0)),
                                     std::log1p(40.0 / 120.0));
    if (below > 0.025 && below < 0.975) ++held;
  }
  // All cups here are of one bottle, so the share may lie above 95 %; three
  // standard deviations of 95 % below.
  EXPECT_GE(held, static_cast<int>(kLiquids * 0.95 - 3.0 * 2.7));
}

TEST(ChangeOfThinner, PartsOfAHistory) {
  CupHistory cup;
  cup.volume_ml = 100.0;
  cup.thinner = ThinnerKind::kMedium;
  cup.thinner_ln_ratio = Estimate{std::log(0.4), 0.05};
  cup.tests = {{0.0, 2.0, 0.04},
               {10.0, 1.5, 0.04, 1, ThinnerKind::kWater},
               {10.0, 1.52, 0.04},
               {30.0, 1.2, 0.04}};
  const std::vector<CupHistory> parts = cup.Parts();
  ASSERT_EQ(parts.size(), 2U);
  EXPECT_EQ(parts[0].thinner, ThinnerKind::kWater);
  EXPECT_FALSE(parts[0].thinner_ln_ratio);
  EXPECT_EQ(parts[0].volume_ml, 100.0);
  EXPECT_EQ(parts[0].tests.size(), 3U);
  EXPECT_EQ(parts[1].thinner, ThinnerKind::kMedium);
  EXPECT_TRUE(parts[1].thinner_ln_ratio);
  EXPECT_EQ(parts[1].volume_ml, 110.0);
  ASSERT_EQ(parts[1].tests.size(), 3U);
  EXPECT_EQ(parts[1].tests[0].added_ml, 0.0);
  EXPECT_EQ(parts[1].tests[2].added_ml, 20.0);
  EXPECT_EQ(parts[1].tests[2].ratio, 1.2);

  // Turned to medium, none of it in yet.
  cup.tests.pop_back();
  const std::vector<CupHistory> turned = cup.Parts();
  ASSERT_EQ(turned.size(), 2U);
  EXPECT_EQ(turned[1].volume_ml, 110.0);
  EXPECT_EQ(turned[1].tests.size(), 2U);
  // One thinner all along stays one part, as it was.
  cup.thinner = ThinnerKind::kWater;
  const std::vector<CupHistory> one = cup.Parts();
  ASSERT_EQ(one.size(), 1U);
  EXPECT_EQ(one[0].tests.size(), cup.tests.size());
  EXPECT_EQ(one[0].tests[1].added_ml, 10.0);
}

TEST(ChangeOfThinner, EarlierTestsStillTell) {
  // A cup watered to 1.6, then turned to medium. What the water taught narrows
  // where it stands, and the last test alone does not.
  DoseRequest both;
  both.cup.volume_ml = 120.0;
  both.cup.thinner = ThinnerKind::kMedium;
  both.cup.thinner_ln_ratio = Estimate{std::log(0.4), 0.05};
  both.cup.tests = {{0.0, 2.4, 0.04},
                    {0.0, 2.4, 0.04},
                    {3.0, 2.0, 0.04, 1, ThinnerKind::kWater},
                    {6.0, 1.68, 0.04, 1, ThinnerKind::kWater},
                    {7.0, 1.6, 0.04, 1, ThinnerKind::kWater}};
  DoseRequest alone = both;
  alone.cup.volume_ml = 127.0;
  alone.cup.tests = {{0.0, 1.6, 0.04}};
  const Result<DoseReport> with = AdviseDose(both, nullptr);
  const Result<DoseReport> without = AdviseDose(alone, nullptr);
  ASSERT_TRUE(with && without);
  const auto width = [](const Interval& i) { return std::log(i.high / i.low); };
  EXPECT_LT(width(with->dose.ratio_now), 0.9 * width(without->dose.ratio_now));
  EXPECT_NEAR(with->dose.ratio_now_median, 1.6, 0.08);
  ASSERT_EQ(with->dose.advice, DoseAdvice::kAdd);
  EXPECT_NEAR(with->dose.water_share,
              (7.0 + with->dose.add_ml) / (127.0 + with->dose.add_ml),
              1e-12);
}

TEST(ChangeOfThinner, WaterStaysCounted) {
  // 44 mL of water in 160 mL is 27.5 %; medium since then thins that share, and
  // water that comes after it is added to it.
  DoseRequest request;
  request.cup.volume_ml = 100.0;
  request.cup.tests = {{0.0, 4.0, 0.03},
                       {44.0, 2.6, 0.03},
                       {60.0, 2.2, 0.03, 1, ThinnerKind::kMedium},
                       {60.0, 2.2, 0.03}};
  const Result<DoseReport> report = AdviseDose(request, nullptr);
  ASSERT_TRUE(report);
  EXPECT_EQ(report->dose.advice, DoseAdvice::kLimit);
  bool said = false;
  for (const std::string& caution : report->cautions) {
    said = said || caution.find("Added water is 28 %") != std::string::npos;
  }
  EXPECT_TRUE(said);
}

TEST(ChangeOfThinner, WhereWaterEndsMediumIsAdvisedByAmount) {
  DoseRequest water;
  water.cup.volume_ml = 100.0;
  water.cup.tests = {{0.0, 4.0, 0.03}, {20.0, 3.0, 0.03}, {42.0, 2.3, 0.03}};
  const Result<DoseReport> report = AdviseDose(water, nullptr);
  ASSERT_TRUE(report);
  ASSERT_EQ(report->dose.advice, DoseAdvice::kLimit);
  // What she gets when she asks with medium at hand.
  DoseRequest medium = water;
  medium.cup.thinner = ThinnerKind::kMedium;
  medium.cup.tests[1].thinner = ThinnerKind::kWater;
  medium.cup.tests[2].thinner = ThinnerKind::kWater;
  const Result<DoseReport> onward = AdviseDose(medium, nullptr);
  ASSERT_TRUE(onward);
  ASSERT_EQ(onward->dose.advice, DoseAdvice::kAdd);
  double told_ml = 0.0;
  for (const std::string& caution : report->cautions) {
    std::sscanf(caution.c_str(), "Of medium, stir in %lf mL", &told_ml);
  }
  EXPECT_GT(told_ml, 0.0);
  EXPECT_LE(told_ml, *onward->add_ml + 1e-9);
  EXPECT_NEAR(told_ml, *onward->add_ml, 0.1);
}

}  // namespace
}  // namespace flowkin
