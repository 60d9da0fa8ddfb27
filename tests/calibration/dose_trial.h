#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "tests/support/virtual_cup.h"

namespace flowkin::test {

/// One way to run the dosing loop over many virtual cups.
struct DoseTrial {
  std::vector<LawFamily> families;
  /// Instead of the families: paints as the engine itself holds them likely,
  /// and, where learned, brands and cups that differ as it holds likely. What
  /// it states must then be what is seen (simulation-based calibration, S. R.
  /// Cook, A. Gelman and D. B. Rubin 2006).
  bool as_held_likely = false;
  std::size_t cups_per_family = 100;
  double rel_sd = 0.04;
  double band = 0.15;
  double smallest_step_ml = 0.25;
  double volume_ml = 120.0;
  double least_ratio = 1.15;
  double most_ratio = 3.2;
  /// Cups of the same law whose histories the brand is learned from first.
  std::size_t learned_cups = 0;
  std::uint64_t seed = 1;
};

struct DoseTally {
  std::size_t cups = 0;
  std::size_t additions = 0;
  std::size_t films = 0;
  std::size_t below = 0;       ///< cups that ever stood below the band
  std::size_t in_band = 0;     ///< cups that ended in the band
  std::size_t unfinished = 0;  ///< no match after 30 answers, or refused
  std::size_t predicted = 0;   ///< intervals given for an addition
  std::size_t predicted_held = 0;
  std::size_t stated = 0;  ///< intervals given for the ratio as it is
  std::size_t stated_held = 0;
  std::size_t overshoots = 0;       ///< additions that went below the band
  double overshoot_expected = 0.0;  ///< sum of the stated probabilities
  double most_stated = 0.0;
  double left_error = 0.0;  ///< sum of (additions left as stated - true)
  double left_absolute = 0.0;

  void Add(const DoseTally& other);
  double MeanAdditions() const;
  double BelowShare() const;
  double InBandShare() const;
  double Coverage() const;       ///< of the predicted ratio
  double RatioCoverage() const;  ///< of the ratio as it is
};

DoseTally RunDoseTrial(const DoseTrial& trial);

}  // namespace flowkin::test
