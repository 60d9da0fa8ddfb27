#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/base/estimate.h"

namespace flowkin {

enum class ThinnerKind {
  kWater,
  kAdditive,  ///< flow additive, as for an activator
  kMedium,    ///< pouring medium
};

/// "water", "additive" or "medium".
const char* ThinnerKindName(ThinnerKind kind);

/// A test of a cup and how much had been stirred in by then.
struct CupTest {
  double added_ml = 0.0;  ///< running total, >= 0, never falling
  double ratio = 1.0;     ///< viscosity, cup over base coat, > 0
  double rel_sd = 0.05;   ///< relative standard uncertainty of `ratio`, > 0
  std::size_t films = 1;  ///< repeats that `ratio` was taken from, > 0
  /// What was stirred in since the test before, where that was not the cup's
  /// own thinner.
  std::optional<ThinnerKind> thinner = std::nullopt;
};

/// What happened to one cup, oldest first.
struct CupHistory {
  double volume_ml = 0.0;                     ///< before any addition, > 0
  ThinnerKind thinner = ThinnerKind::kWater;  ///< the one at hand now
  /// ln of the thinner's own ratio to the base coat, where it was tested.
  std::optional<Estimate> thinner_ln_ratio;
  std::vector<CupTest> tests;

  /// Amounts stirred in, counted from the tests (two additions between two
  /// tests count as one).
  std::size_t Additions() const;
  /// Films since the last addition, >= 1 if there is any test.
  std::size_t TestsSinceAddition() const;
  /// ln(volume / start volume) at a running total.
  double Growth(double added_ml) const;
  /// The history in parts of one thinner each, the last of them for the one at
  /// hand now. A part starts with the cup as the one before left it: its
  /// volume then, and the tests made there. At least one part.
  std::vector<CupHistory> Parts() const;
};

/// What she measures small amounts with, in her own calibration.
struct DoseUnit {
  std::string name;  ///< singular, "drop"
  double ml = 0.0;   ///< of one, > 0
};

/// Paint as she calls it; an empty colour is a colour of its own.
struct PaintKey {
  std::string brand;
  std::string colour;
};

}  // namespace flowkin
