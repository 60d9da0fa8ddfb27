#pragma once

#include <optional>
#include <vector>

#include "core/base/estimate.h"

namespace flowkin {

// What her own pours teach, with how sure that is.

/// One judged pour: how far its worst cup flowed off its target, |ln(ratio /
/// target)|, and whether she judged the picture poor.
struct JudgedPour {
  double ln_mismatch = 0.0;  ///< >= 0
  bool poor = false;
};

/// How large a mismatch her pictures bear.
struct LearnedBand {
  int pours = 0;
  int poor = 0;
  /// Evidence that poor pictures depend on the mismatch at all, against a
  /// constant rate of poor pictures (Bayes factor).
  double evidence = 1.0;
  /// False: too few pours to tell, or no dependence seen; `band` then empty.
  bool told = false;
  std::optional<double> band;  ///< as a match band: 0.15 is 15 per cent
  Interval band_interval;      ///< level 0.95, told or not
};

/// The chance of a poor picture steps up from a lower to a higher rate around
/// the band B: p0 + (p1 - p0) Phi((ln m - ln B) / s); B, s, p0 and p1 > p0 are
/// weighed on a grid with flat weights. It is told at an evidence above 10,
/// "strong" on H. Jeffreys' scale (Theory of Probability, 1961, from memory).
LearnedBand LearnBand(const std::vector<JudgedPour>& pours);

/// Where the cups of her good pours lay: the target for next time.
struct LearnedTarget {
  int pours = 0;
  bool told = false;  ///< three pours or more
  double ratio = 1.0;
  Interval interval;  ///< of the mean, level 0.95; pours scatter more
};

/// Mean of ln ratios with Student's t; the scatter includes the tests' own.
LearnedTarget LearnTarget(const std::vector<Estimate>& ln_ratios);

}  // namespace flowkin
