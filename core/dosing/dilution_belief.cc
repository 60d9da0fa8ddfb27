#include "core/dosing/dilution_belief.h"

#include <algorithm>
#include <cmath>

#include "core/base/check.h"

namespace flowkin {
namespace {

double NormalCdf(double z) { return 0.5 * std::erfc(-z * 0.70710678118654752); }

// Standard deviations beyond which a tail is less than 1e-8.
constexpr double kCertain = 5.7;
// Far below what any test can tell.
constexpr double kLevelTolerance = 1e-5;

}  // namespace

double ChanceBelow(const DilutionBelief& belief, double level, double u) {
  const bool poured = belief.pour_rel_sd > 0.0 && u > belief.u_now;
  double chance = 0.0;
  // Neighbours mostly share their law, and the law is the costly part.
  const DilutionLaw* law = nullptr;
  double start = 0.0;
  double pour_variance = 0.0;
  for (const DilutionBelief::Part& part : belief.parts) {
    if (law == nullptr || part.law.first != law->first ||
        part.law.second != law->second) {
      law = &part.law;
      start = StartLevelFor(*law, level, u);
      if (poured && std::isfinite(start)) {
        const double fall = start - StartLevelFor(*law, level, belief.u_now);
        const double sd = belief.pour_rel_sd * fall;
        pour_variance = sd * sd;
      }
    }
    const double off = start - part.start_level;
    const double variance =
        part.start_level_sd * part.start_level_sd + pour_variance;
    if (off * off > kCertain * kCertain * variance) {
      if (off > 0.0) chance += part.weight;
    } else {
      chance += part.weight * NormalCdf(off / std::sqrt(variance));
    }
  }
  return std::clamp(chance, 0.0, 1.0);
}

double LevelQuantile(const DilutionBelief& belief, double chance, double u) {
  FLOWKIN_CHECK(chance > 0.0 && chance < 1.0 && !belief.parts.empty());
  const Estimate moments = LevelMoments(belief, u);
  double reach = 3.0 * moments.sd + 1e-6;
  double low = moments.value - reach;
  double high = moments.value + reach;
  while (ChanceBelow(belief, low, u) > chance && reach < 1e3) {
    reach *= 2.0;
    low -= reach;
  }
  reach = 3.0 * moments.sd + 1e-6;
  while (ChanceBelow(belief, high, u) < chance && reach < 1e3) {
    reach *= 2.0;
    high += reach;
  }
  // False position with the Illinois rule (M. Dowell and P. Jarratt 1971), and
  // a halving whenever it does not shrink the bracket well.
  double at_low = ChanceBelow(belief, low, u) - chance;
  double at_high = ChanceBelow(belief, high, u) - chance;
  for (int pass = 0; pass < 60 && high - low > kLevelTolerance; ++pass) {
    double middle = 0.5 * (low + high);
    if (pass % 3 != 2 && at_high > at_low) {
      middle = std::clamp((low * at_high - high * at_low) / (at_high - at_low),
                          low + 0.25 * kLevelTolerance,
                          high - 0.25 * kLevelTolerance);
    }
    const double at_middle = ChanceBelow(belief, middle, u) - chance;
    if (at_middle < 0.0) {
      low = middle;
      at_low = at_middle;
      at_high *= 0.5;
    } else {
      high = middle;
      at_high = at_middle;
      at_low *= 0.5;
    }
  }
  return 0.5 * (low + high);
}

Interval RatioInterval(const DilutionBelief& belief,
                       double coverage,
                       double u) {
  const double tail = 0.5 * (1.0 - coverage);
  return {std::exp(LevelQuantile(belief, tail, u)),
          std::exp(LevelQuantile(belief, 1.0 - tail, u)),
          coverage};
}

Estimate LevelMoments(const DilutionBelief& belief, double u) {
  double mean = 0.0;
  double square = 0.0;
  double total = 0.0;
  // Sums around the first part's level keep their digits.
  double origin = 0.0;
  bool first = true;
  for (const DilutionBelief::Part& part : belief.parts) {
    const double level = LevelAfter(part.law, part.start_level, u);
    if (first) origin = level;
    first = false;
    const double sd =
        part.start_level_sd * LevelSensitivity(part.law, part.start_level, u);
    const double off = level - origin;
    mean += part.weight * off;
    square += part.weight * (off * off + sd * sd);
    total += part.weight;
  }
  FLOWKIN_CHECK(total > 0.0);
  mean /= total;
  square /= total;
  return {origin + mean, std::sqrt(std::max(0.0, square - mean * mean))};
}

}  // namespace flowkin
