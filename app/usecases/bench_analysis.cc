#include "app/usecases/bench_analysis.h"

#include <algorithm>
#include <cmath>

#include "app/usecases/compare_measurements.h"
#include "core/base/check.h"

namespace flowkin {
namespace {

// The limits of AdviseDose for its own cautions.
constexpr double kRound_min = 120.0;
constexpr double kRoom_c = 2.0;

struct Round {
  UtcTime begun;
  std::optional<double> room_c;
  std::vector<const BenchTest*> tests;
};

/// Rounds of one kind of test since the last addition, oldest first.
std::vector<Round> Rounds(const BenchCup& base, TestKind kind) {
  std::vector<Round> rounds;
  for (std::size_t i = base.FirstTestNow(); i < base.tests.size(); ++i) {
    const BenchTest& test = base.tests[i];
    if (!test.Counts() || test.film.measurement.kind != kind) continue;
    const bool first = rounds.empty();
    const bool aged =
        !first && MinutesBetween(rounds.back().begun, test.at) > kRound_min;
    const bool moved = !first && rounds.back().room_c && test.room_c &&
                       std::abs(*rounds.back().room_c - *test.room_c) > kRoom_c;
    if (first || aged || moved) rounds.push_back({test.at, test.room_c, {}});
    rounds.back().tests.push_back(&test);
  }
  return rounds;
}

std::vector<FlowMeasurement> Measurements(
    const std::vector<const BenchTest*>& tests) {
  std::vector<FlowMeasurement> measurements;
  measurements.reserve(tests.size());
  for (const BenchTest* test : tests) {
    measurements.push_back(test->film.measurement);
  }
  return measurements;
}

}  // namespace

std::vector<CupStage> StagesOf(const BenchCup& cup, double sitting_min) {
  std::vector<CupStage> stages;
  std::size_t additions = 0;
  for (std::size_t i = 0; i < cup.tests.size(); ++i) {
    while (additions < cup.additions.size() &&
           cup.additions[additions].before_test <= i) {
      ++additions;
    }
    const BenchTest& test = cup.tests[i];
    if (!test.Counts()) continue;
    if (stages.empty() || stages.back().additions != additions) {
      stages.push_back({additions, {}});
    }
    std::vector<const BenchTest*>& sitting = stages.back().tests;
    if (!sitting.empty() &&
        MinutesBetween(sitting.back()->at, test.at) > sitting_min) {
      sitting.clear();
    }
    sitting.push_back(&test);
  }
  return stages;
}

std::vector<const BenchTest*> ReferenceFor(const BenchCup& base,
                                           const CupStage& stage) {
  FLOWKIN_CHECK(!stage.tests.empty());
  std::vector<const BenchTest*> reference;
  for (const TestKind kind :
       {TestKind::kStream, TestKind::kLevel, TestKind::kPuddle}) {
    std::optional<UtcTime> last;
    for (const BenchTest* test : stage.tests) {
      if (test->film.measurement.kind == kind) last = test->at;
    }
    const std::vector<Round> rounds = Rounds(base, kind);
    if (!last || rounds.empty()) continue;
    const Round* used = &rounds.front();
    for (const Round& round : rounds) {
      if (round.begun <= *last) used = &round;
    }
    reference.insert(reference.end(), used->tests.begin(), used->tests.end());
  }
  return reference;
}

std::vector<const BenchTest*> NewestRound(const BenchCup& base, TestKind kind) {
  const std::vector<Round> rounds = Rounds(base, kind);
  return rounds.empty() ? std::vector<const BenchTest*>() : rounds.back().tests;
}

ComparedStage CompareStage(const BenchCup& base,
                           const CupStage& stage,
                           const CompareOptions& options) {
  ComparedStage compared;
  compared.additions = stage.additions;
  compared.comparison =
      CompareMeasurements(Measurements(ReferenceFor(base, stage)),
                          Measurements(stage.tests),
                          options);
  compared.common_rel_sd = compared.comparison.common_rel_sd;
  return compared;
}

CupHistory HistoryOf(const BenchCup& cup,
                     const std::vector<ComparedStage>& stages) {
  FLOWKIN_CHECK(cup.details.volume_ml.has_value());
  // A ratio less certain than this is no ground for any addition.
  constexpr double kMostRelSd = 1.0;
  constexpr double kSlack = 1e-9;
  CupHistory history;
  history.thinner = cup.details.thinner;
  history.thinner_ln_ratio = cup.details.thinner_ln_ratio;
  double paint_ml = *cup.details.volume_ml;
  double added_ml = 0.0;
  // Added volume per volume of paint, the scale on which dilution counts.
  struct Point {
    double dilution;
    CupTest test;
  };
  std::vector<Point> points;
  auto stage = stages.begin();
  for (std::size_t additions = 0;; ++additions) {
    for (; stage != stages.end() && stage->additions == additions; ++stage) {
      const Comparison& comparison = stage->comparison;
      if (comparison.outcome != Outcome::kMeasured ||
          !(comparison.ratio.ln_ratio.sd <= kMostRelSd)) {
        continue;
      }
      CupTest test;
      test.ratio = comparison.ratio.Ratio();
      test.rel_sd = comparison.ratio.ln_ratio.sd;
      test.films = static_cast<std::size_t>(std::max(1, comparison.num_cup));
      points.push_back({added_ml / paint_ml, test});
    }
    if (additions == cup.additions.size()) break;
    const BenchAddition& addition = cup.additions[additions];
    if (addition.reserve) {
      paint_ml += addition.ml;
      const double dilution = added_ml / paint_ml;
      std::erase_if(points, [&](const Point& point) {
        return point.dilution > dilution + kSlack;
      });
    } else if (addition.thinner == cup.details.thinner) {
      added_ml += addition.ml;
    } else {
      paint_ml += added_ml + addition.ml;
      added_ml = 0.0;
      points.clear();
    }
  }
  history.volume_ml = paint_ml;
  for (Point& point : points) {
    point.test.added_ml = point.dilution * paint_ml;
    history.tests.push_back(point.test);
  }
  return history;
}

}  // namespace flowkin
