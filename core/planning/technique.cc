#include "core/planning/technique.h"

#include <cmath>

#include "core/base/check.h"
#include "core/base/distributions.h"

namespace flowkin {

const std::vector<Technique>& StartingTechniques() {
  static const std::vector<Technique> kTable = {
      {"open",
       "open, dirty or flip pour without a wet base",
       {0.0, 150.0, 300.0},
       {1500.0, 1700.0, 1900.0},
       {0.0, 0.0, 0.0},
       Source::kOwnGuess},
      {"ring",
       "ring or flip pour over a wet base",
       {800.0, 1050.0, 1300.0},
       {500.0, 600.0, 700.0},
       {0.0, 0.0, 0.0},
       Source::kOwnGuess},
      {"swipe",
       "colours laid on a wet base and wiped over with an activator",
       {800.0, 1050.0, 1300.0},
       {300.0, 450.0, 600.0},
       {100.0, 150.0, 200.0},
       Source::kOwnGuess},
      {"blown",
       "thin colours blown out over a wet base",
       {1200.0, 1500.0, 1800.0},
       {100.0, 200.0, 300.0},
       {0.0, 25.0, 50.0},
       Source::kOwnGuess},
      {"bloom",
       "blown open on a thick pillow of base, then spun",
       {1300.0, 1900.0, 2500.0},
       {150.0, 275.0, 400.0},
       {10.0, 25.0, 40.0},
       Source::kOwnGuess},
  };
  return kTable;
}

Result<void> Validate(const Technique& technique) {
  for (const Result<void>& fits :
       {Validate(technique.base_ml_per_m2, 0.0, "The base coat's amount"),
        Validate(technique.colours_ml_per_m2, 0.0, "The colours' amount"),
        Validate(
            technique.activator_ml_per_m2, 0.0, "The activator's amount")}) {
    if (!fits) return fits;
  }
  if (!(technique.base_ml_per_m2.start + technique.colours_ml_per_m2.start +
            technique.activator_ml_per_m2.start >
        0.0)) {
    return Error{ErrorCode::kInvalidArgument, "The technique pours nothing."};
  }
  return {};
}

LearnedUse LearnUse(const std::vector<PastPour>& pours) {
  constexpr double kPriorWeight = 1.0;
  constexpr double kPriorScatter = 0.25;
  constexpr double kPriorDegrees = 4.0;
  constexpr int kFewest = 3;
  LearnedUse learned;
  learned.pours = static_cast<int>(pours.size());
  const double count = static_cast<double>(pours.size());
  double sum = 0.0;
  for (const PastPour& pour : pours) {
    FLOWKIN_CHECK(pour.planned_ml > 0.0 && pour.used_ml > 0.0);
    sum += std::log(pour.used_ml / pour.planned_ml);
  }
  const double mean = pours.empty() ? 0.0 : sum / count;
  double squares = kPriorDegrees * kPriorScatter * kPriorScatter;
  for (const PastPour& pour : pours) {
    squares += std::pow(std::log(pour.used_ml / pour.planned_ml) - mean, 2);
  }
  squares += kPriorWeight * count / (kPriorWeight + count) * mean * mean;
  const double degrees = kPriorDegrees + count;
  const double weight = kPriorWeight + count;
  const Estimate ln_factor{
      sum / weight, std::sqrt(squares / degrees / weight), degrees};
  const Interval ln_interval = CoverageInterval(ln_factor);
  learned.interval = {
      std::exp(ln_interval.low), std::exp(ln_interval.high), ln_interval.level};
  learned.told = learned.pours >= kFewest;
  if (learned.told) learned.factor = std::exp(ln_factor.value);
  return learned;
}

}  // namespace flowkin
