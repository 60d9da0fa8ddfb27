#include "core/dosing/choose_dose.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/dosing/rescue.h"

namespace flowkin {
namespace {

DilutionBelief Belief(double ratio, double sd, double g, double u_now = 0.0) {
  DilutionBelief belief;
  const DilutionLaw law{DilutionLaw::Kind::kWater, g, 0.3};
  belief.parts.push_back(
      {1.0, law, StartLevelFor(law, std::log(ratio), u_now), sd});
  belief.u_now = u_now;
  return belief;
}

CupState Cup() {
  CupState cup;
  cup.start_volume_ml = 120.0;
  return cup;
}

TEST(DilutionBelief, QuantilesOfOneNormalPart) {
  const DilutionBelief belief = Belief(1.5, 0.05, 6.0);
  // 1.95996...: normal quantile of 97.5 %, any table. LevelQuantile is good
  // to 1e-5.
  EXPECT_NEAR(
      LevelQuantile(belief, 0.975, 0.0), std::log(1.5) + 1.959964 * 0.05, 2e-5);
  EXPECT_NEAR(ChanceBelow(belief, std::log(1.5), 0.0), 0.5, 1e-12);
  const Estimate moments = LevelMoments(belief, 0.0);
  EXPECT_NEAR(moments.value, std::log(1.5), 1e-12);
  EXPECT_NEAR(moments.sd, 0.05, 1e-9);
}

TEST(DilutionBelief, ChanceGrowsWithLevelAndWithWater) {
  DilutionBelief belief = Belief(1.5, 0.05, 6.0);
  belief.parts.front().weight = 0.5;
  belief.parts.push_back(belief.parts.front());
  belief.parts.back().law.first = 12.0;
  double before = 0.0;
  for (double u = 0.0; u < 0.2; u += 0.005) {
    const double chance = ChanceBelow(belief, 0.0, u);
    EXPECT_GE(chance, before);
    EXPECT_LE(chance, ChanceBelow(belief, 0.05, u));
    before = chance;
  }
}

TEST(ChooseDose, AddsWholeStepsWithinTheBudget) {
  const DoseOptions options;
  const Dose dose = ChooseDose(Belief(1.8, 0.04, 6.0), Cup(), options);
  ASSERT_EQ(dose.advice, DoseAdvice::kAdd);
  EXPECT_GT(dose.add_ml, 0.0);
  EXPECT_EQ(std::fmod(dose.add_ml, options.smallest_step_ml), 0.0);
  EXPECT_LE(dose.overshoot_probability, options.most_overshoot);
  EXPECT_GE(dose.predicted_median, 1.0);
  EXPECT_LT(dose.predicted.low, dose.predicted_median);
  EXPECT_GT(dose.predicted.high, dose.predicted_median);
  EXPECT_NEAR(dose.water_share, dose.add_ml / (120.0 + dose.add_ml), 1e-12);
}

TEST(ChooseDose, OneMoreStepWouldBreakARule) {
  const DoseOptions options;
  const DilutionBelief belief = Belief(1.8, 0.08, 6.0);
  const Dose dose = ChooseDose(belief, Cup(), options);
  ASSERT_EQ(dose.advice, DoseAdvice::kAdd);
  const double u = std::log1p((dose.add_ml + options.smallest_step_ml) / 120.0);
  const bool past_aim = LevelQuantile(belief, 0.5, u) <
                        options.aim_share * std::log1p(options.band);
  const bool past_budget = ChanceBelow(belief, -std::log1p(options.band), u) >
                           0.3 * options.most_overshoot;
  EXPECT_TRUE(past_aim || past_budget);
}

TEST(ChooseDose, NeverAddsWhileTheIntervalHoldsTheTarget) {
  for (const double ratio : {0.9, 1.0, 1.05, 1.1, 1.15}) {
    for (const double sd : {0.02, 0.05, 0.1}) {
      const Dose dose = ChooseDose(Belief(ratio, sd, 6.0), Cup(), {});
      if (dose.ratio_now.low <= 1.0 && dose.ratio_now.high >= 1.0) {
        EXPECT_NE(dose.advice, DoseAdvice::kAdd) << ratio << ' ' << sd;
      }
    }
  }
}

TEST(ChooseDose, SaysMatchMeasureAndRescueByTheEvidence) {
  EXPECT_EQ(ChooseDose(Belief(1.02, 0.03, 6.0), Cup(), {}).advice,
            DoseAdvice::kMatch);
  EXPECT_EQ(ChooseDose(Belief(1.05, 0.10, 6.0), Cup(), {}).advice,
            DoseAdvice::kMeasure);
  EXPECT_EQ(ChooseDose(Belief(0.70, 0.04, 6.0), Cup(), {}).advice,
            DoseAdvice::kRescue);
  // Below the target, perhaps below the band: neither match nor rescue yet.
  EXPECT_EQ(ChooseDose(Belief(0.88, 0.05, 6.0), Cup(), {}).advice,
            DoseAdvice::kMeasure);
}

TEST(ChooseDose, SuspectTestIsFilmedAgain) {
  CupState cup = Cup();
  cup.last_test_suspect = true;
  EXPECT_EQ(ChooseDose(Belief(1.8, 0.04, 6.0), cup, {}).advice,
            DoseAdvice::kMeasure);
}

TEST(ChooseDose, AimsAtAnotherTarget) {
  DoseOptions thin;
  thin.target_ratio = 0.8;
  EXPECT_EQ(ChooseDose(Belief(0.82, 0.03, 6.0), Cup(), thin).advice,
            DoseAdvice::kMatch);
  EXPECT_EQ(ChooseDose(Belief(1.2, 0.03, 6.0), Cup(), thin).advice,
            DoseAdvice::kAdd);
}

TEST(ChooseDose, LaterAdditionsRiskLess) {
  CupState late = Cup();
  late.additions = 3;
  const Dose first = ChooseDose(Belief(1.8, 0.1, 6.0), Cup(), {});
  const Dose fourth = ChooseDose(Belief(1.8, 0.1, 6.0), late, {});
  ASSERT_EQ(first.advice, DoseAdvice::kAdd);
  ASSERT_EQ(fourth.advice, DoseAdvice::kAdd);
  EXPECT_LT(fourth.add_ml, first.add_ml);
}

TEST(ChooseDose, CoarseMeasureIsRefused) {
  DoseOptions options;
  options.smallest_step_ml = 15.0;
  CupState cup = Cup();
  for (const std::size_t tests : {1u, 4u}) {
    cup.tests_here = tests;
    const Dose dose = ChooseDose(Belief(1.4, 0.03, 8.0), cup, options);
    ASSERT_EQ(dose.advice, DoseAdvice::kTooCoarse);
    EXPECT_GT(dose.other_ml, 0.0);
    EXPECT_LT(dose.other_ml, options.smallest_step_ml);
  }
}

TEST(ChooseDose, FilmsAgainWhereThatMakesRoomForTheStep) {
  DoseOptions options;
  options.smallest_step_ml = 2.5;
  CupState cup = Cup();
  cup.tests_here = 1;
  // 2.5 mL lead to about 1.06, but the level is known to 8 % only.
  EXPECT_EQ(ChooseDose(Belief(1.25, 0.08, 8.0), cup, options).advice,
            DoseAdvice::kMeasure);
  EXPECT_EQ(ChooseDose(Belief(1.25, 0.02, 8.0), cup, options).advice,
            DoseAdvice::kAdd);
}

// What is held likely says too thin, the newest test does not fit it.
TEST(ChooseDose, NoRescueAgainstTheNewestTest) {
  CupState cup = Cup();
  cup.additions = 1;
  cup.tests_here = 1;
  const DilutionBelief thin = Belief(0.4, 0.02, 8.0);
  EXPECT_EQ(ChooseDose(thin, cup, {}).advice, DoseAdvice::kRescue);
  cup.last_test_suspect = true;
  EXPECT_EQ(ChooseDose(thin, cup, {}).advice, DoseAdvice::kMeasure);
}

TEST(ChooseDose, WaterEndsAtItsLimit) {
  CupState cup = Cup();
  cup.added_ml = 50.0;  // 29 % of the cup
  cup.additions = 1;
  const double u = std::log1p(50.0 / 120.0);
  const Dose dose = ChooseDose(Belief(1.8, 0.04, 3.0, u), cup, {});
  ASSERT_EQ(dose.advice, DoseAdvice::kLimit);
  EXPECT_EQ(dose.add_ml, 0.0);
  EXPECT_GT(dose.other_ml, 0.0);
}

TEST(PlanRescue, PutsBackWhatTheShareRuleSays) {
  // V0 (w / w' - 1) of unthinned paint brings w back to w'; this cup holds
  // water for 12 % and needs it at 10 %: + 20 %.
  const DilutionLaw law{DilutionLaw::Kind::kWater, 6.0, 0.3};
  const double start = StartLevelFor(law, 0.0, std::log1p(0.10));
  DilutionBelief belief;
  belief.parts.push_back({1.0, law, start, 0.02});
  CupState cup;
  cup.start_volume_ml = 100.0;
  cup.added_ml = 12.0;
  belief.u_now = std::log1p(0.12);
  const Rescue rescue = PlanRescue(belief, cup, {}, {start, std::nullopt});
  ASSERT_TRUE(rescue.possible);
  EXPECT_NEAR(rescue.total_ml, 20.0, 1e-6);
  EXPECT_LT(rescue.add_ml, rescue.total_ml);
  EXPECT_LT(rescue.predicted_median, 1.0);
}

TEST(PlanRescue, ThinReserveIsNoHelp) {
  const DilutionBelief belief = Belief(0.7, 0.03, 6.0);
  EXPECT_FALSE(
      PlanRescue(belief, Cup(), {}, {std::log(0.7), std::nullopt}).possible);
}

TEST(PlanRescue, SmallReserveIsSaid) {
  const double u = std::log1p(0.2);
  CupState cup = Cup();
  cup.added_ml = 24.0;
  const DilutionBelief belief = Belief(0.7, 0.03, 6.0, u);
  const double start = belief.parts.front().start_level;
  const Rescue rescue = PlanRescue(belief, cup, {}, {start, 2.0});
  ASSERT_TRUE(rescue.possible);
  EXPECT_TRUE(rescue.reserve_too_small);
  EXPECT_LE(rescue.add_ml, 2.0);
}

}  // namespace
}  // namespace flowkin
