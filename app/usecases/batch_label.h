#pragma once

#include <optional>
#include <string>

#include "core/planning/material.h"

namespace flowkin {

/// What stands on a jar.
struct BatchLabel {
  std::string name;
  std::string role;  ///< "colour", "base coat", "activator", "medium"
  std::string brand;
  std::string colour;
  std::string mix;  ///< "paint 1 : medium 2", as she made it
  std::optional<double> volume_ml;
  std::optional<double> water_ml;
  std::optional<double> water_share;
  std::optional<double> target;  ///< wanted ratio to the base coat
  std::string thinner;           ///< ThinnerKindName of what it is thinned with
  std::string mixed_on;          ///< day, ISO 8601
  std::optional<Span> ratio;     ///< flow against the base coat, 95 % interval
  std::string base_on;           ///< day of the base coat it was held against
  std::optional<double> temperature_c;
  std::string hazard;
  /// What the QR code holds; loads the recipe again.
  std::string code;
};

}  // namespace flowkin
