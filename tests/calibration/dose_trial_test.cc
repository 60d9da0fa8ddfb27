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

TEST(DoseTrial, UnknownPaint) {
  const DoseTally tally = RunDoseTrial(AllFamilies(60));
  EXPECT_LE(tally.MeanAdditions(), 2.9);  // 2.8 and its sampling error
  EXPECT_LE(static_cast<double>(tally.below), Most(0.004, tally.cups));
  EXPECT_GE(static_cast<double>(tally.in_band),
            static_cast<double>(tally.cups) - Most(0.02, tally.cups));
  EXPECT_GE(tally.Coverage(), 0.93);
  EXPECT_LE(tally.Coverage(), 0.99);
  // What is stated is what happens, or less.
  EXPECT_LE(static_cast<double>(tally.overshoots),
            tally.overshoot_expected +
                3.0 * std::sqrt(tally.overshoot_expected) + 1.0);
  EXPECT_LT(tally.most_stated, 0.005);
}

TEST(DoseTrial, NarrowBandAndWorseTests) {
  DoseTrial trial = AllFamilies(15);
  trial.band = 0.10;
  trial.rel_sd = 0.07;
  const DoseTally tally = RunDoseTrial(trial);
  EXPECT_LE(static_cast<double>(tally.below), Most(0.004, tally.cups));
  EXPECT_GE(static_cast<double>(tally.in_band),
            static_cast<double>(tally.cups) - Most(0.05, tally.cups));
}

TEST(DoseTrial, KnownBrandNeedsFewer) {
  DoseTrial trial = AllFamilies(30);
  const double unknown = RunDoseTrial(trial).MeanAdditions();
  trial.learned_cups = 3;
  const DoseTally tally = RunDoseTrial(trial);
  EXPECT_LE(tally.MeanAdditions(), 1.85);
  EXPECT_LT(tally.MeanAdditions(), unknown - 0.5);
  EXPECT_LE(static_cast<double>(tally.below), Most(0.004, tally.cups));
}

TEST(DoseTrial, RepeatsExactly) {
  const DoseTrial trial = AllFamilies(3);
  EXPECT_EQ(RunDoseTrial(trial).additions, RunDoseTrial(trial).additions);
}

}  // namespace
}  // namespace flowkin
