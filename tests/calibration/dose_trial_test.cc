// The dosing loop against liquids whose law it does not know. The full
// benchmark is dose_benchmark; this is a part of it that fits into a test.
// Sources of the laws: tests/support/virtual_cup.h and tests/data/liquids.
#include "tests/calibration/dose_trial.h"

#include <gtest/gtest.h>

#include <cmath>

namespace flowkin {
namespace {

using test::DoseTally;
using test::DoseTrial;

DoseTrial AllFamilies(std::size_t cups) {
  DoseTrial trial;
  trial.families.assign(std::begin(test::kAllFamilies),
                        std::end(test::kAllFamilies));
  trial.cups_per_family = cups;
  trial.seed = 42;
  return trial;
}

/// Largest count of n that a true chance p passes in all but 1 of 1000 runs
/// (normal approximation, three standard deviations, one more for small n).
double Most(double chance, std::size_t n) {
  const auto count = static_cast<double>(n);
  return count * chance + 3.0 * std::sqrt(count * chance * (1.0 - chance)) +
         1.0;
}

/// The share of intervals that hold lies between the limits, with room for
/// three standard deviations of n intervals at a true 95 %.
void ExpectCalibrated(double share, std::size_t n) {
  const double room = 3.0 * std::sqrt(0.95 * 0.05 / static_cast<double>(n));
  EXPECT_GE(share, 0.93 - room);
  EXPECT_LE(share, 0.975 + room);
}

// The whole figure takes dose_benchmark; these are small parts of it.

TEST(DoseTrial, UnknownPaint) {
  const DoseTally tally = RunDoseTrial(AllFamilies(35));
  EXPECT_LE(tally.MeanAdditions(), 2.8);
  EXPECT_LE(static_cast<double>(tally.below), Most(0.004, tally.cups));
  EXPECT_GE(static_cast<double>(tally.in_band),
            static_cast<double>(tally.cups) - Most(0.02, tally.cups));
  ExpectCalibrated(tally.Coverage(), tally.predicted);
  ExpectCalibrated(tally.RatioCoverage(), tally.stated);
  // What is stated is what happens, or less.
  EXPECT_LE(static_cast<double>(tally.overshoots),
            tally.overshoot_expected +
                3.0 * std::sqrt(tally.overshoot_expected) + 1.0);
  EXPECT_LT(tally.most_stated, 0.005);
  // Half an addition, as the figure is told in whole ones.
  EXPECT_LT(std::abs(tally.left_error / static_cast<double>(tally.predicted)),
            0.5);
}

TEST(DoseTrial, NarrowBandAndWorseTests) {
  DoseTrial trial = AllFamilies(6);
  trial.band = 0.10;
  trial.rel_sd = 0.07;
  const DoseTally tally = RunDoseTrial(trial);
  EXPECT_LE(static_cast<double>(tally.below), Most(0.004, tally.cups));
  EXPECT_GE(static_cast<double>(tally.in_band),
            static_cast<double>(tally.cups) - Most(0.05, tally.cups));
}

TEST(DoseTrial, KnownBrandNeedsFewer) {
  DoseTrial trial = AllFamilies(12);
  trial.learned_cups = 3;
  const DoseTally tally = RunDoseTrial(trial);
  EXPECT_LE(tally.MeanAdditions(), 1.6);
  EXPECT_LE(static_cast<double>(tally.below), Most(0.004, tally.cups));
  ExpectCalibrated(tally.Coverage(), tally.predicted);
  ExpectCalibrated(tally.RatioCoverage(), tally.stated);
}

// Simulation-based calibration: of paints drawn from what is held likely, 95 %
// intervals hold 95 %, and nothing is stated in excess. The families' slopes
// lie closer together than that, so theirs may hold more.
TEST(DoseTrial, StatesWhatIsSeenWherePaintsAreAsHeldLikely) {
  DoseTrial trial;
  trial.as_held_likely = true;
  trial.cups_per_family = 250;
  trial.rel_sd = 0.02;
  const DoseTally tally = RunDoseTrial(trial);
  const auto room = [](std::size_t n) {
    return 3.0 * std::sqrt(0.95 * 0.05 / static_cast<double>(n));
  };
  EXPECT_NEAR(tally.Coverage(), 0.95, room(tally.predicted));
  EXPECT_NEAR(tally.RatioCoverage(), 0.95, room(tally.stated));
  EXPECT_LE(static_cast<double>(tally.overshoots),
            tally.overshoot_expected +
                3.0 * std::sqrt(tally.overshoot_expected) + 1.0);
}

TEST(DoseTrial, RepeatsExactly) {
  const DoseTrial trial = AllFamilies(1);
  EXPECT_EQ(RunDoseTrial(trial).additions, RunDoseTrial(trial).additions);
}

}  // namespace
}  // namespace flowkin
