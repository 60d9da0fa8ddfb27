#include "tests/calibration/dose_trial.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <memory>
#include <numeric>
#include <optional>
#include <vector>

#include "app/usecases/advise_dose.h"
#include "calibration/curve/brand_curve.h"
#include "calibration/defaults/default_prior.h"
#include "core/base/check.h"
#include "core/dosing/dilution_law.h"

namespace flowkin::test {
namespace {

constexpr int kMostAnswers = 30;

class LikelyLiquid : public ThinnedLiquid {
 public:
  explicit LikelyLiquid(const DilutionLaw& law) : law_(law) {}
  double LnViscosity(double w) const override {
    return LevelAfter(law_, std::log(kStockRatio), std::log1p(w));
  }

 private:
  DilutionLaw law_;
};

std::size_t DrawIndex(const std::vector<double>& weights, Random& random) {
  double left =
      random.Uniform() * std::accumulate(weights.begin(), weights.end(), 0.0);
  std::size_t k = 0;
  while (k + 1 < weights.size() && left >= weights[k]) left -= weights[k++];
  return k;
}

struct LikelyLaw {
  double ln_slope, bend;
};

LikelyLaw DrawLikelyLaw(const CurvePrior& prior, Random& random) {
  std::vector<double> weights;
  for (const double log_weight : prior.log_weight) {
    weights.push_back(std::exp(log_weight));
  }
  const std::size_t cell = DrawIndex(weights, random);
  const std::size_t columns = prior.second.size();
  const std::size_t row = cell / columns;
  // Anywhere around the grid's point: the engine reads between them.
  const double position = static_cast<double>(row) + random.Uniform(-0.5, 0.5);
  return {prior.first_low + prior.first_step * position,
          prior.second[cell % columns]};
}

/// The paints of the cups a brand is learned from, and of the cup to match.
struct DrawnPaints {
  std::vector<VirtualPaint> learned;
  VirtualPaint last;
};

DrawnPaints DrawLikelyPaints(const DoseTrial& trial, Random& random) {
  const CurvePrior prior = WaterPrior();
  const BrandSpread spread;
  const auto paint = [&](const LikelyLaw& law, double off) {
    return PaintOf(std::make_shared<LikelyLiquid>(
        prior.Law(law.ln_slope + off, law.bend)));
  };
  const LikelyLaw brand = DrawLikelyLaw(prior, random);
  DrawnPaints paints;
  paints.last = paint(brand, 0.0);
  if (trial.learned_cups == 0) return paints;
  const double colour_off =
      random.Normal() *
      spread.colour_sd[DrawIndex(spread.colour_weight, random)];
  const double cup_sd = spread.cup_sd[DrawIndex(spread.cup_weight, random)];
  const auto next_cup = [&] {
    return paint(brand, colour_off + cup_sd * random.Normal());
  };
  for (std::size_t l = 0; l < trial.learned_cups; ++l) {
    paints.learned.push_back(next_cup());
  }
  paints.last = random.Uniform() < spread.stranger_chance
                    ? paint(DrawLikelyLaw(prior, random), 0.0)
                    : next_cup();
  return paints;
}

DrawnPaints DrawFamilyPaints(const DoseTrial& trial,
                             LawFamily family,
                             Random& random) {
  DrawnPaints paints;
  paints.last = DrawPaint(family, random);
  paints.learned.assign(trial.learned_cups, paints.last);
  return paints;
}

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

namespace {
DoseTally RunPaints(const DoseTrial& trial,
                    std::uint64_t stream,
                    const std::function<DrawnPaints(Random&)>& draw) {
  // A stream of its own for each family, so that a trial of one family repeats
  // what a trial of all gave for it.
  Random random(trial.seed * 1000 + stream);
  const auto ratio = [&] {
    return random.Uniform(trial.least_ratio, trial.most_ratio);
  };
  DoseTally all;
  for (std::size_t k = 0; k < trial.cups_per_family; ++k) {
    const DrawnPaints paints = draw(random);
    std::vector<CupHistory> learned;
    for (const VirtualPaint& paint : paints.learned) {
      const VirtualCup cup(paint, ratio(), trial.volume_ml);
      learned.push_back(RunCup(cup, trial, nullptr, random).history);
    }
    std::optional<CurvePrior> prior;
    if (!learned.empty()) prior = PriorFromCups(learned);
    const VirtualCup cup(paints.last, ratio(), trial.volume_ml);
    all.Add(RunCup(cup, trial, prior ? &*prior : nullptr, random).tally);
  }
  return all;
}
}  // namespace

DoseTally RunDoseTrial(const DoseTrial& trial) {
  if (trial.as_held_likely) {
    return RunPaints(trial, std::size(kAllFamilies), [&](Random& random) {
      return DrawLikelyPaints(trial, random);
    });
  }
  DoseTally all;
  for (const LawFamily family : trial.families) {
    all.Add(RunPaints(
        trial, static_cast<std::uint64_t>(family), [&](Random& random) {
          return DrawFamilyPaints(trial, family, random);
        }));
  }
  return all;
}

}  // namespace flowkin::test
