#pragma once

#include <cstddef>
#include <vector>

#include "core/base/estimate.h"
#include "core/dosing/dilution_law.h"

namespace flowkin {

/// What is known of one cup: a weighted set of laws, and for each a normal
/// distribution of the level it started from. Weights sum to 1.
struct DilutionBelief {
  struct Part {
    double weight = 0.0;
    DilutionLaw law;
    double start_level = 0.0;
    double start_level_sd = 0.0;  ///< > 0
  };
  std::vector<Part> parts;
  /// ln volume growth at which the cup stands now.
  double u_now = 0.0;
  /// Relative standard uncertainty of an amount poured and stirred in.
  double pour_rel_sd = 0.0;
};

/// Probability that the cup lies below `level` once it has grown to `u`
/// (>= u_now).
double ChanceBelow(const DilutionBelief& belief, double level, double u);

/// The level the cup lies below with probability `chance` (0 < chance < 1) at
/// `u`, to 1e-5.
double LevelQuantile(const DilutionBelief& belief, double chance, double u);

/// Interval of the ratio itself (not of its logarithm) at `u`, equal tails.
Interval RatioInterval(const DilutionBelief& belief, double coverage, double u);

/// Mean and standard deviation of the level at `u`, each part to first order.
Estimate LevelMoments(const DilutionBelief& belief, double u);

}  // namespace flowkin
