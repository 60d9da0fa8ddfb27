#include "core/dosing/dilution_belief.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/base/check.h"
#include "core/base/distributions.h"

namespace flowkin {
namespace {

// Called for every part of a belief: NormalCdf checks more and costs more.
double BelowUnitNormal(double z) {
  return 0.5 * std::erfc(-z * 0.70710678118654752);
}

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
      chance += part.weight * BelowUnitNormal(off / std::sqrt(variance));
    }
  }
  return std::clamp(chance, 0.0, 1.0);
}

namespace {

/// `moments` of the level at `u`, from which the search starts: secants, as
/// long as they stay between what is known to be too low and too high.
double QuantileNear(const DilutionBelief& belief,
                    const Estimate& moments,
                    double chance,
                    double u) {
  FLOWKIN_CHECK(chance > 0.0 && chance < 1.0 && !belief.parts.empty());
  double reach = 2.0 * moments.sd + kLevelTolerance;
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  const double z = NormalQuantile(chance);
  double slope = std::exp(-0.5 * z * z) / (2.507 * moments.sd + 1e-12);
  double level = moments.value + z * moments.sd;
  double last_level = level;
  double last_off = 0.0;
  for (int pass = 0; pass < 80; ++pass) {
    const double off = ChanceBelow(belief, level, u) - chance;
    (off < 0.0 ? low : high) = level;
    if (high - low < kLevelTolerance) break;
    if (pass > 0) slope = (off - last_off) / (level - last_level);
    last_level = level;
    last_off = off;
    double next = level - off / slope;
    const bool bracketed = std::isfinite(low) && std::isfinite(high);
    if (std::abs(next - level) < 0.1 * kLevelTolerance) return next;
    if (bracketed && (pass % 8 == 7 || !(next > low && next < high))) {
      next = 0.5 * (low + high);
    } else if (!bracketed && !(std::abs(next - level) < reach &&
                               (next < level) == (off > 0.0))) {
      next = off > 0.0 ? level - reach : level + reach;
      reach *= 2.0;
    }
    level = next;
  }
  return level;
}

}  // namespace

double LevelQuantile(const DilutionBelief& belief, double chance, double u) {
  return QuantileNear(belief, LevelMoments(belief, u), chance, u);
}

Interval RatioInterval(const DilutionBelief& belief,
                       double coverage,
                       double u) {
  const double tail = 0.5 * (1.0 - coverage);
  const Estimate moments = LevelMoments(belief, u);
  return {std::exp(QuantileNear(belief, moments, tail, u)),
          std::exp(QuantileNear(belief, moments, 1.0 - tail, u)),
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
