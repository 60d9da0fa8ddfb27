#include "tests/calibration/dose_trial.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "app/usecases/advise_dose.h"
#include "calibration/curve/brand_curve.h"
#include "calibration/defaults/default_prior.h"
#include "core/base/check.h"

namespace flowkin::test {
namespace {

constexpr int kMostAnswers = 30;

struct CupRun {
  DoseTally tally;
  CupHistory history;
};

CupRun RunCup(const VirtualCup& cup,
              const DoseTrial& trial,
              const CurvePrior* prior,
              Random& random) {
  CupRun run;
  DoseTally& tally = run.tally;
  DoseRequest request;
  request.band = trial.band;
  request.smallest_step_ml = trial.smallest_step_ml;
  request.cup.volume_ml = trial.volume_ml;
  const double low_edge = 1.0 / (1.0 + trial.band);
  double added_ml = 0.0;
  bool below = false;
  bool finished = false;
  std::vector<double> stated_left;
  tally.cups = 1;
  for (int answer = 0; answer < kMostAnswers; ++answer) {
    const double truth = cup.Ratio(added_ml);
    request.cup.tests.push_back(
        {added_ml, MeasuredRatio(truth, trial.rel_sd, random), trial.rel_sd});
    ++tally.films;
    const Result<DoseReport> report = AdviseDose(request, prior);
    FLOWKIN_CHECK(report.has_value());
    const Dose& dose = report->dose;
    ++tally.stated;
    if (truth >= dose.ratio_now.low && truth <= dose.ratio_now.high) {
      ++tally.stated_held;
    }
    if (dose.advice == DoseAdvice::kMeasure) continue;
    if (dose.advice != DoseAdvice::kAdd) {
      finished = dose.advice == DoseAdvice::kMatch;
      break;
    }
    FLOWKIN_CHECK(dose.add_ml > 0.0);
    added_ml += dose.add_ml;
    ++tally.additions;
    stated_left.push_back(dose.expected_additions_left);
    const double after = cup.Ratio(added_ml);
    ++tally.predicted;
    if (after >= dose.predicted.low && after <= dose.predicted.high) {
      ++tally.predicted_held;
    }
    tally.overshoot_expected += dose.overshoot_probability;
    tally.most_stated = std::max(tally.most_stated, dose.overshoot_probability);
    if (after < low_edge) {
      ++tally.overshoots;
      below = true;
    }
  }
  for (std::size_t i = 0; i < stated_left.size(); ++i) {
    const double error =
        stated_left[i] - static_cast<double>(stated_left.size() - i);
    tally.left_error += error;
    tally.left_absolute += std::abs(error);
  }
  const double end = cup.Ratio(added_ml);
  tally.below = below ? 1 : 0;
  tally.in_band = end >= low_edge && end <= 1.0 + trial.band ? 1 : 0;
  tally.unfinished = finished ? 0 : 1;
  run.history = request.cup;
  return run;
}

CurvePrior PriorFromCups(const std::vector<CupHistory>& histories) {
  const CurvePrior grid = BrandGrid(WaterPrior());
  std::vector<CupEvidence> cups;
  for (const CupHistory& history : histories) {
    std::vector<DilutionTest> tests;
    for (const CupTest& test : history.tests) {
      tests.push_back(
          {history.Growth(test.added_ml), std::log(test.ratio), test.rel_sd});
    }
    cups.push_back({"", LogLikelihood(tests, grid, {})});
  }
  return FitBrandCurve(cups, "", grid).next_cup;
}

}  // namespace

void DoseTally::Add(const DoseTally& other) {
  cups += other.cups;
  additions += other.additions;
  films += other.films;
  below += other.below;
  in_band += other.in_band;
  unfinished += other.unfinished;
  predicted += other.predicted;
  predicted_held += other.predicted_held;
  stated += other.stated;
  stated_held += other.stated_held;
  overshoots += other.overshoots;
  overshoot_expected += other.overshoot_expected;
  most_stated = std::max(most_stated, other.most_stated);
  left_error += other.left_error;
  left_absolute += other.left_absolute;
}

namespace {
double Share(std::size_t part, std::size_t whole) {
  return whole == 0 ? 0.0
                    : static_cast<double>(part) / static_cast<double>(whole);
}
}  // namespace

double DoseTally::MeanAdditions() const { return Share(additions, cups); }
double DoseTally::BelowShare() const { return Share(below, cups); }
double DoseTally::InBandShare() const { return Share(in_band, cups); }
double DoseTally::Coverage() const { return Share(predicted_held, predicted); }
double DoseTally::RatioCoverage() const { return Share(stated_held, stated); }

DoseTally RunDoseTrial(const DoseTrial& trial) {
  DoseTally all;
  for (const LawFamily family : trial.families) {
    // Each family draws from a seed of its own, so that a trial of one family
    // repeats what a trial of all gave for it.
    Random random(trial.seed * 1000 + static_cast<std::uint64_t>(family));
    const auto ratio = [&] {
      return random.Uniform(trial.least_ratio, trial.most_ratio);
    };
    for (std::size_t k = 0; k < trial.cups_per_family; ++k) {
      const VirtualPaint paint = DrawPaint(family, random);
      std::vector<CupHistory> learned;
      for (std::size_t l = 0; l < trial.learned_cups; ++l) {
        const VirtualCup cup(paint, ratio(), trial.volume_ml);
        learned.push_back(RunCup(cup, trial, nullptr, random).history);
      }
      std::optional<CurvePrior> prior;
      if (!learned.empty()) prior = PriorFromCups(learned);
      const VirtualCup cup(paint, ratio(), trial.volume_ml);
      all.Add(RunCup(cup, trial, prior ? &*prior : nullptr, random).tally);
    }
  }
  return all;
}

}  // namespace flowkin::test
