#include "core/planning/pour_plan.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/random.h"

namespace flowkin {
namespace {

constexpr double kRounding = 1e-9;

PlanRequest Swipe() {
  PlanRequest request;
  request.supports = {{SupportShape::kRectangle, 500.0, 400.0, 18.0, 2, true}};
  for (const Technique& technique : StartingTechniques()) {
    if (technique.name == "swipe") request.technique = technique;
  }
  request.base_coat.name = "Dune";
  request.base_coat.material = kWallPaint;
  PlannedPaint white;
  white.name = "white";
  white.share = 2.0;
  white.body = PaintBody::kHeavy;
  PlannedPaint lagoon;
  lagoon.name = "Lagoon";
  request.colours = {white, lagoon};
  request.activator = PlannedPaint{};
  request.activator->name = "pearl";
  return request;
}

TEST(PourPlan, EveryVolumeFollowsFromTheRequest) {
  const Result<PourPlan> plan = MakePourPlan(Swipe());
  ASSERT_TRUE(plan);
  // By hand: two of 0.5 x 0.4 m, edges 2 x (0.5 + 0.4) x 0.018 m.
  const double area_m2 = 2.0 * (0.20 + 0.0324);
  EXPECT_NEAR(plan->face_m2 + plan->edge_m2, area_m2, kRounding);
  EXPECT_NEAR(plan->on_support_ml, area_m2 * 1650.0, 1e-6);
  ASSERT_EQ(plan->cups.size(), 4u);
  const double tests_ml = 4 * 3.0;
  const PlannedCup& base = plan->cups[0];
  EXPECT_NEAR(base.needed_ml, area_m2 * 1050.0 * 1.2 + tests_ml, 1e-6);
  EXPECT_EQ(base.reserve_ml, 0.0);
  EXPECT_NEAR(base.paint.volume_ml, base.needed_ml, 1e-9);
  const PlannedCup& white = plan->cups[1];
  const double white_ml = area_m2 * 450.0 * 2.0 / 3.0;
  EXPECT_NEAR(white.needed_ml, (white_ml * 1.2 + tests_ml) * 1.2, 1e-6);
  EXPECT_NEAR(white.paint.volume_ml, white.needed_ml / 3.0, 1e-6);
  EXPECT_NEAR(white.medium.volume_ml, white.needed_ml * 2.0 / 3.0, 1e-6);
  const PlannedCup& lagoon = plan->cups[2];
  EXPECT_NEAR(lagoon.paint.volume_ml, lagoon.medium.volume_ml, 1e-9);
  const PlannedCup& activator = plan->cups[3];
  EXPECT_NEAR(activator.paint.volume_ml, activator.additive.volume_ml, 1e-9);
  EXPECT_EQ(activator.medium.volume_ml, 0.0);
  EXPECT_NEAR(plan->medium_needed_ml,
              (white.medium.volume_ml + lagoon.medium.volume_ml) * 1.05,
              1e-6);
  EXPECT_NEAR(plan->medium.volume_ml, plan->medium_needed_ml, 1e-9);
  EXPECT_NEAR(plan->wet_mm.start, 1.65, kRounding);
}

TEST(PourPlan, MassesAndVolumesBalance) {
  const Result<PourPlan> plan = MakePourPlan(Swipe());
  ASSERT_TRUE(plan);
  double cups_ml = 0.0, cups_g = 0.0, parts_ml = 0.0;
  for (const PlannedCup& cup : plan->cups) {
    cups_ml += cup.mix_ml;
    cups_g += cup.mix_ml * cup.blend.density_g_per_ml;
    parts_ml +=
        cup.paint.volume_ml + cup.medium.volume_ml + cup.additive.volume_ml;
    EXPECT_NEAR(
        cup.on_support_ml + cup.waste_ml + cup.tests_ml + cup.reserve_ml,
        cup.needed_ml,
        kRounding);
  }
  EXPECT_NEAR(parts_ml, cups_ml, 1e-8);
  // The shelf holds the cups and what medium is lost on the way.
  double shelf_ml = 0.0, shelf_g = 0.0;
  for (const Supply& supply : plan->supplies) {
    shelf_ml += supply.needed_ml;
    shelf_g += supply.needed_g;
  }
  const double lost = 1.0 - 1.0 / 1.05;
  EXPECT_NEAR(shelf_ml, cups_ml + lost * plan->medium.volume_ml, 1e-8);
  EXPECT_NEAR(shelf_g, cups_g + lost * plan->medium.mass_g, 1e-8);
}

TEST(PourPlan, WaterStretchesTheMixAndThinsTheDryFilm) {
  PlanRequest request = Swipe();
  const Result<PourPlan> dry = MakePourPlan(request);
  request.water_share = 0.10;
  const Result<PourPlan> wet = MakePourPlan(request);
  ASSERT_TRUE(dry && wet);
  EXPECT_NEAR(
      wet->cups[1].on_support_ml, 0.9 * dry->cups[1].on_support_ml, kRounding);
  EXPECT_NEAR(wet->volume_solids, 0.9 * dry->volume_solids, 1e-12);
  EXPECT_NEAR(wet->dry_mm.start, 0.9 * dry->dry_mm.start, 1e-12);
}

TEST(PourPlan, LeftOversGoFirstTheOldestFirst) {
  PlanRequest request = Swipe();
  request.left_overs = {
      {"Lagoon", PourRole::kColour, false, 50.0, 10.0},
      {"Lagoon", PourRole::kColour, false, 30.0, 90.0},
      {"Lagoon", PourRole::kActivator, false, 500.0, 200.0},
      {"medium", PourRole::kColour, true, 40.0, 5.0},
  };
  const Result<PourPlan> plan = MakePourPlan(request);
  ASSERT_TRUE(plan);
  const PlannedCup& lagoon = plan->cups[2];
  EXPECT_DOUBLE_EQ(lagoon.left_over_ml, 80.0);
  EXPECT_DOUBLE_EQ(lagoon.mix_ml, lagoon.needed_ml - 80.0);
  ASSERT_GE(plan->left_overs.size(), 3u);
  EXPECT_EQ(plan->left_overs[0].left_over.age_days, 90.0);
  EXPECT_EQ(plan->left_overs[1].left_over.age_days, 10.0);
  EXPECT_DOUBLE_EQ(plan->medium_left_over_ml, 40.0);
  EXPECT_DOUBLE_EQ(plan->medium.volume_ml, plan->medium_needed_ml - 40.0);
}

TEST(PourPlan, BuysWholeContainersAndPricesAPicture) {
  PlanRequest request = Swipe();
  request.base_coat.price = Price{2500.0, 40.0};
  request.base_coat.at_hand_ml = 100.0;
  for (PlannedPaint& colour : request.colours) colour.price = Price{60.0, 5.0};
  request.activator->price = Price{60.0, 6.0};
  request.additive_price = Price{1000.0, 20.0};
  request.medium_base_price = Price{2500.0, 40.0};
  Result<PourPlan> plan = MakePourPlan(request);
  ASSERT_TRUE(plan);
  EXPECT_FALSE(plan->cost_per_picture) << "the varnish has no price";
  EXPECT_EQ(plan->unpriced, std::vector<std::string>{"varnish of the medium"});
  request.medium_varnish_price = Price{750.0, 15.0};
  plan = MakePourPlan(request);
  ASSERT_TRUE(plan && plan->cost_per_picture);
  const double by_hand = plan->cups[0].paint.volume_ml / 2500.0 * 40.0 +
                         plan->cups[1].paint.volume_ml / 60.0 * 5.0 +
                         plan->cups[2].paint.volume_ml / 60.0 * 5.0 +
                         plan->cups[3].paint.volume_ml / 60.0 * 6.0 +
                         plan->cups[3].additive.volume_ml / 1000.0 * 20.0 +
                         plan->medium.base.volume_ml / 2500.0 * 40.0 +
                         plan->medium.varnish.volume_ml / 750.0 * 15.0;
  EXPECT_NEAR(*plan->cost_per_picture, by_hand / 2.0, 1e-9);
  const Supply& white = plan->supplies[1];
  EXPECT_EQ(*white.containers,
            static_cast<int>(std::ceil(plan->cups[1].paint.volume_ml / 60.0)));
}

TEST(PourPlan, OnePaintInTwoCupsIsBoughtOnce) {
  PlanRequest request = Swipe();
  request.activator->name = "Lagoon";
  const Result<PourPlan> plan = MakePourPlan(request);
  ASSERT_TRUE(plan);
  int entries = 0;
  for (const Supply& supply : plan->supplies) {
    if (supply.name != "Lagoon") continue;
    ++entries;
    EXPECT_NEAR(supply.needed_ml,
                plan->cups[2].paint.volume_ml + plan->cups[3].paint.volume_ml,
                kRounding);
  }
  EXPECT_EQ(entries, 1);
}

TEST(PourPlan, RefusesWhatCannotBe) {
  const auto refused = [](const auto& spoil) {
    PlanRequest request = Swipe();
    spoil(request);
    const Result<PourPlan> plan = MakePourPlan(request);
    return !plan && plan.error().code == ErrorCode::kInvalidArgument;
  };
  EXPECT_TRUE(refused([](PlanRequest& r) { r.supports.clear(); }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.supports[0].length_mm = -1; }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.supports[0].count = 0; }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.colours.clear(); }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.colours[0].share = 0.0; }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.waste_share = -0.1; }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.water_share = std::nan(""); }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.technique = {}; }));
  EXPECT_TRUE(refused([](PlanRequest& r) { r.past = {{100.0, 0.0}}; }));
  EXPECT_TRUE(refused([](PlanRequest& r) {
    r.base_coat.price = Price{0.0, 1.0};
  }));
}

TEST(LearnUse, SaysTooFewToTellAndThenFollowsHerPours) {
  EXPECT_FALSE(LearnUse({}).told);
  const LearnedUse two = LearnUse({{100, 150}, {100, 150}});
  EXPECT_FALSE(two.told);
  EXPECT_EQ(two.factor, 1.0);
  std::vector<PastPour> many(40, PastPour{100.0, 130.0});
  const LearnedUse learned = LearnUse(many);
  EXPECT_TRUE(learned.told);
  EXPECT_GT(learned.factor, 1.25);
  EXPECT_LT(learned.factor, 1.30);
  EXPECT_LT(learned.interval.low, learned.factor);
  EXPECT_LT(learned.factor, learned.interval.high);
  EXPECT_LT(learned.interval.high - learned.interval.low, 0.2);
}

// Drawn from the model's own prior, the interval holds the truth 95 times in
// 100: the conjugate algebra is right.
TEST(LearnUse, IntervalCoversTheTruth) {
  Random random(20261125);
  constexpr int kTrials = 4000;
  int covered = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    double chi_square = 0.0;
    for (int i = 0; i < 4; ++i) chi_square += std::pow(random.Normal(), 2);
    const double scatter = 0.25 * std::sqrt(4.0 / chi_square);
    const double truth = random.Normal(0.0, scatter);
    std::vector<PastPour> pours;
    for (int i = 0; i < 5; ++i) {
      pours.push_back({100.0, 100.0 * std::exp(random.Normal(truth, scatter))});
    }
    const Interval interval = LearnUse(pours).interval;
    covered +=
        interval.low <= std::exp(truth) && std::exp(truth) <= interval.high;
  }
  // Four standard deviations of the binomial at 0.95.
  const double band = 4.0 * std::sqrt(0.95 * 0.05 / kTrials);
  EXPECT_NEAR(covered / static_cast<double>(kTrials), 0.95, band);
}

}  // namespace
}  // namespace flowkin
