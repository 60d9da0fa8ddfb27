#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/material.h"

namespace flowkin {

// What was measured on a day, for the last check before a pour and for the
// search for causes afterwards. What is not known stays empty.

struct CupFacts {
  std::string name;
  bool activator = false;
  /// Kinematic viscosity over the base coat's, with its 95 % interval.
  std::optional<Span> ratio;
  bool matches = false;  ///< the comparison says so
  double target = 1.0;
  std::optional<double> water_share;  ///< added water over the whole cup
  std::optional<double> minutes_since_film;
  std::optional<double> minutes_since_stirred;
  std::optional<double> temperature_c;
  bool changed_since_film = false;  ///< something was added after its last film
};

struct DayFacts {
  std::vector<CupFacts> cups;  ///< without the base coat
  double band = 0.15;
  std::optional<double> base_temperature_c;
  std::optional<double> room_c;
  std::optional<double> humidity_percent;
  std::optional<double> wet_mm;
  std::optional<double> dry_mm;
  std::optional<double> rested_min;  ///< mixes, since the last stirring in
  std::optional<bool> strained;
  double recheck_min = 60.0;  ///< a film counts no longer than this
};

}  // namespace flowkin
