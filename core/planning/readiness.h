#pragma once

#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/planning/day_facts.h"

namespace flowkin {

/// What a statement rests on.
enum class Basis {
  kMeasured,        ///< today, on these cups
  kDerived,         ///< follows from physics and the measured numbers
  kCommonPractice,  ///< told by many, published by none
};
/// "measured", "derived" or "common practice".
const char* BasisName(Basis basis);

enum class RiskKind {
  kNotFilmed,
  kChangedSinceFilm,
  kUndecided,
  kTooThick,
  kTooThin,
  kMuchWater,
  kUnevenWater,
  kUnevenFlow,  ///< two cups far from each other
  kFilmTooOld,
  kStoodOpen,
  kTemperature,
  kColdRoom,
  kThickFilm,
};
/// "not filmed", "too thick", ...
const char* RiskKindName(RiskKind kind);

struct Risk {
  RiskKind kind = RiskKind::kNotFilmed;
  std::string cup;  ///< empty: of the whole table
  bool holds_back = false;
  std::string says;      ///< what is risked, for a person to read
  std::string evidence;  ///< what it rests on
  Basis basis = Basis::kMeasured;
};

struct Readiness {
  bool ready = false;  ///< nothing holds the pour back
  std::vector<Risk> risks;
  std::vector<std::string> not_known;  ///< facts that would have been weighed
};

/// The last look at all cups together. kInvalidArgument where a value is out of
/// range; an empty table is kRefused.
Result<Readiness> CheckReadiness(const DayFacts& facts);

/// Range checks of the facts alone.
Result<void> Validate(const DayFacts& facts);

}  // namespace flowkin
