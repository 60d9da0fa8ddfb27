#pragma once

#include <string>
#include <vector>

#include "core/base/estimate.h"
#include "core/planning/material.h"

namespace flowkin {

/// Starting amounts of one way of pouring, millilitres per square metre of
/// painted surface (1000 mL/m2 lie 1 mm thick), and how each role's cup should
/// flow against the base coat.
struct Technique {
  std::string name;  ///< one word, lower case
  std::string what;
  Span base_ml_per_m2;
  Span colours_ml_per_m2;
  Span activator_ml_per_m2;
  Source source = Source::kOwnGuess;
};

/// kInvalidArgument where an amount is out of range or nothing is poured.
Result<void> Validate(const Technique& technique);

/// The built-in table. The volumes lie within what is commonly told (0.8 to
/// 1.9 L on a square metre, 1.4 to 3.7 at most); how they are split over the
/// layers is an own guess. Meant to be edited, then to be learned.
const std::vector<Technique>& StartingTechniques();

/// What was planned for an earlier pour of the same technique, and what it
/// took.
struct PastPour {
  double planned_ml = 0.0;  ///< > 0
  double used_ml = 0.0;     ///< > 0
};

/// How much more or less than planned her own pours take.
struct LearnedUse {
  int pours = 0;
  /// False with fewer than three pours: too few to tell; `factor` is then 1.
  bool told = false;
  double factor = 1.0;
  Interval interval;  ///< of the factor, level 0.95
};

/// Normal-inverse-gamma estimate of ln(used / planned): prior mean 0 worth one
/// pour, scatter 0.25 worth four (own guesses); Student's t interval. See a
/// textbook of Bayesian statistics, conjugate normal model.
LearnedUse LearnUse(const std::vector<PastPour>& pours);

}  // namespace flowkin
