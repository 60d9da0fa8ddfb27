#include "core/planning/medium.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/base/random.h"
#include "core/planning/first_mix.h"

namespace flowkin {
namespace {

constexpr double kRounding = 1e-12;

// 4:1 and 3:1 by volume are common practice; their weights follow from the
// densities 1.30 and 1.02 by mass balance, worked by hand.
TEST(Medium, PartsByVolumeAreOtherPartsByWeight) {
  const MediumBatch four = MakeMedium({.base_parts = 4.0}, 1000.0);
  EXPECT_NEAR(four.base.volume_ml, 800.0, 800.0 * kRounding);
  EXPECT_NEAR(four.varnish.volume_ml, 200.0, 200.0 * kRounding);
  EXPECT_NEAR(four.base.mass_g(), 1040.0, 1040.0 * kRounding);
  EXPECT_NEAR(four.varnish.mass_g(), 204.0, 204.0 * kRounding);
  EXPECT_NEAR(four.mass_g, 1244.0, 1244.0 * kRounding);
  EXPECT_NEAR(four.parts_by_weight, 1040.0 / 204.0, 10.0 * kRounding);
  EXPECT_NEAR(four.blend.density_g_per_ml, 1.244, kRounding);
  EXPECT_NEAR(four.blend.volume_solids, 0.354, kRounding);
  const MediumBatch three = MakeMedium({.base_parts = 3.0}, 1000.0);
  EXPECT_NEAR(three.blend.density_g_per_ml, 1.23, kRounding);
  EXPECT_NEAR(three.blend.volume_solids, 0.3475, kRounding);
}

TEST(Medium, PartsByWeightWeighOutAsAsked) {
  const MediumBatch batch =
      MakeMedium({.base_parts = 4.0, .by = PartsBy::kWeight}, 500.0);
  EXPECT_NEAR(batch.base.mass_g() / batch.varnish.mass_g(), 4.0, 1e-11);
  EXPECT_NEAR(batch.base.volume_ml + batch.varnish.volume_ml, 500.0, 1e-9);
  EXPECT_NEAR(batch.parts_by_weight, 4.0, 1e-11);
}

TEST(Medium, RefusesPartsThatMakeNothing) {
  EXPECT_FALSE(Validate(MediumRecipe{.base_parts = 0.0}));
  EXPECT_FALSE(Validate(MediumRecipe{.base_parts = std::nan("")}));
  EXPECT_FALSE(Validate(MediumRecipe{.varnish_parts = -1.0}));
  EXPECT_TRUE(Validate(MediumRecipe{.varnish_parts = 0.0}));
}

TEST(Container, HoldsWhatIntegrationSays) {
  const Container cup{50.0, 74.0, 100.0};
  for (const double fill_mm : {0.0, 10.0, 55.0, 100.0}) {
    constexpr int kSlices = 20000;
    double sum_mm3 = 0.0;
    for (int i = 0; i < kSlices; ++i) {
      const double height = (i + 0.5) * fill_mm / kSlices;
      const double radius = 0.5 * (50.0 + 24.0 * height / 100.0);
      sum_mm3 += std::numbers::pi * radius * radius * fill_mm / kSlices;
    }
    // The midpoint rule with 20000 slices errs below one part in 10^8.
    EXPECT_NEAR(ContainerVolumeMl(cup, fill_mm), sum_mm3 / 1e3, 1e-5);
  }
  const Container straight{60.0, 60.0, 120.0};
  EXPECT_DOUBLE_EQ(ContainerVolumeMl(straight, 100.0),
                   std::numbers::pi * 900.0 * 100.0 / 1e3);
}

TEST(Container, HeightAndVolumeAreInverse) {
  for (const Container& cup : {Container{50.0, 74.0, 100.0},
                               Container{60.0, 60.0, 120.0},
                               Container{80.0, 40.0, 90.0}}) {
    for (const double share : {0.0, 0.1, 0.5, 0.75, 1.0}) {
      const double volume_ml = share * ContainerVolumeMl(cup, cup.height_mm);
      EXPECT_NEAR(ContainerVolumeMl(cup, FillHeightMm(cup, volume_ml)),
                  volume_ml,
                  1e-9);
    }
  }
}

// Three quarters of the height is not three quarters of a tapered cup.
TEST(Container, TaperMovesTheMark) {
  const Container cup{50.0, 80.0, 100.0};
  const double full_ml = ContainerVolumeMl(cup, 100.0);
  EXPECT_GT(FillHeightMm(cup, 0.75 * full_ml), 75.0);
  EXPECT_LT(ContainerVolumeMl(cup, 75.0) / full_ml, 0.75);
}

TEST(Medium, ItsFlowMovesTheCupsByItsShare) {
  const Estimate thick{std::log(1.8), 0.05};
  const Estimate thin{std::log(0.6), 0.05};
  EXPECT_DOUBLE_EQ(MixLnRatio(thick, thin, 0.0).value, thick.value);
  EXPECT_DOUBLE_EQ(MixLnRatio(thick, thin, 1.0).value, thin.value);
  EXPECT_DOUBLE_EQ(MixLnRatio(thick, thin, 0.0).sd, thick.sd);
  EXPECT_NEAR(MixLnRatio(thick, thin, 0.5).value, 0.5 * std::log(1.08), 1e-12);
  EXPECT_GT(MixLnRatio(thick, thin, 0.5).sd, 0.25);
  // A batch 1.3 times as thick, half of the cup: 1.14 times.
  const Estimate change =
      BatchChangeLnRatio({0.0, 0.05}, {std::log(1.3), 0.05}, 0.5);
  EXPECT_NEAR(std::exp(change.value), std::sqrt(1.3), 1e-12);
  EXPECT_EQ(BatchChangeLnRatio({0.1, 0.0}, {0.1, 0.0}, 0.7).sd, 0.0);
}

TEST(FirstMix, SplitsByPartsAndKeepsTheReserve) {
  const FirstMix mix = MakeFirstMix(
      PaintBody::kHeavy, 2.0, kArtistPaint, {1.244, 0.354}, 120.0, 0.2);
  EXPECT_NEAR(mix.paint.volume_ml, 40.0, 1e-10);
  EXPECT_NEAR(mix.medium.volume_ml, 80.0, 1e-10);
  EXPECT_NEAR(mix.reserve_ml, 20.0, 1e-10);  // 20 of 100 poured
  EXPECT_NEAR(mix.blend.density_g_per_ml * 120.0,
              mix.paint.mass_g() + mix.medium.mass_g(),
              1e-9);
}

TEST(FirstMix, PowderIsWeighedAgainstTheMedium) {
  const FirstMix mix = MakeFirstMix(
      PaintBody::kPowder, 0.03, kPowderPigment, {1.244, 0.354}, 100.0, 0.0);
  EXPECT_NEAR(mix.paint.mass_g() / mix.medium.mass_g(), 0.03, 1e-12);
  EXPECT_NEAR(mix.paint.volume_ml + mix.medium.volume_ml, 100.0, 1e-10);
}

TEST(FirstMix, EveryBodyHasItsRuleAndName) {
  for (const PaintBody body : {PaintBody::kHeavy,
                               PaintBody::kSoft,
                               PaintBody::kFluid,
                               PaintBody::kInk,
                               PaintBody::kPowder}) {
    const FirstMixRule& rule = FirstMixFor(body);
    EXPECT_EQ(rule.body, body);
    EXPECT_LE(rule.parts.low, rule.parts.start);
    EXPECT_LT(rule.parts.start, rule.parts.high);
    EXPECT_EQ(PaintBodyFromName(PaintBodyName(body)), body);
  }
  EXPECT_FALSE(PaintBodyFromName("stiff"));
}

// Put the reserve back and count the water, whatever the shares.
TEST(FirstMix, ReserveRepairsWhatItSays) {
  Random random(7);
  for (int i = 0; i < 200; ++i) {
    const double wanted = random.Uniform(0.01, 0.3);
    const double reserve = random.Uniform(0.0, 0.5);
    const double worst = RescuableWaterShare(wanted, reserve);
    const double unthinned_ml = 100.0;
    const double water_ml = worst / (1.0 - worst) * unthinned_ml;
    const double after = water_ml / (unthinned_ml * (1.0 + reserve) + water_ml);
    EXPECT_NEAR(after, wanted, kRounding);
  }
}

}  // namespace
}  // namespace flowkin
