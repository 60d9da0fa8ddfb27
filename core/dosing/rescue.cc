#include "core/dosing/rescue.h"

#include <algorithm>
#include <cmath>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kLargeRepair = 0.1;  // of the cup
constexpr double kFirstPart = 0.7;    // of a large repair
// A cup is never more than doubled to save it.
constexpr double kMostRepair = 1.0;

/// Growth at which the likeliest start of `part` reaches `level`; below zero
/// where that is thicker than the start.
double GrowthTo(const DilutionBelief::Part& part, double level) {
  double low = -1.5;
  double high = 3.0;
  for (int pass = 0; pass < 50; ++pass) {
    const double middle = 0.5 * (low + high);
    double at = 0.0;
    if (middle >= 0.0) {
      at = LevelAfter(part.law, part.start_level, middle);
    } else {
      at = StartLevelFor(part.law, part.start_level, -middle);
    }
    (at > level ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

double MeanGrowthTo(const DilutionBelief& belief, double level) {
  double mean = 0.0;
  for (const DilutionBelief::Part& part : belief.parts) {
    if (part.weight < 1e-4) continue;
    mean += part.weight * GrowthTo(part, level);
  }
  return mean;
}

}  // namespace

Rescue PlanRescue(const DilutionBelief& belief,
                  const CupState& cup,
                  const DoseOptions& options,
                  const Reserve& reserve) {
  FLOWKIN_CHECK(cup.start_volume_ml > 0.0 && options.smallest_step_ml > 0.0);
  const double target = std::log(options.target_ratio);
  const double edge = std::log1p(options.band);
  const double volume_ml = cup.start_volume_ml + cup.added_ml;
  Rescue rescue;
  if (reserve.level <= target) return rescue;
  const double reserve_paint = std::exp(-MeanGrowthTo(belief, reserve.level));
  const auto growth = [&](double add_ml) {
    return std::log((volume_ml + add_ml) /
                    (cup.start_volume_ml + add_ml * reserve_paint));
  };
  const auto level = [&](double add_ml) {
    const double u = growth(add_ml);
    if (u >= 0.0) return LevelMoments(belief, u).value;
    // More paint than the cup started with: read the curve backwards.
    double mean = 0.0;
    for (const DilutionBelief::Part& part : belief.parts) {
      const double at = StartLevelFor(part.law, part.start_level, -u);
      mean += part.weight * std::min(at, reserve.level);
    }
    return mean;
  };
  double low = 0.0;
  double high = kMostRepair * volume_ml;
  if (level(high) < target) return rescue;
  for (int pass = 0; pass < 50; ++pass) {
    const double middle = 0.5 * (low + high);
    (level(middle) < target ? low : high) = middle;
  }
  rescue.possible = true;
  rescue.total_ml = low;
  double now_ml = low;
  if (now_ml > kLargeRepair * volume_ml) now_ml *= kFirstPart;
  if (reserve.volume_ml && *reserve.volume_ml < now_ml) {
    now_ml = *reserve.volume_ml;
  }
  rescue.reserve_too_small =
      reserve.volume_ml && *reserve.volume_ml < rescue.total_ml;
  const double step = options.smallest_step_ml;
  rescue.add_ml = std::floor(now_ml / step + 1e-9) * step;
  // The paint put back also carries the cup's own uncertainty with it, so the
  // interval of the cup as it stands is moved, not narrowed.
  const double shift = level(rescue.add_ml) - level(0.0);
  const Interval now = RatioInterval(belief, options.coverage, belief.u_now);
  rescue.predicted = {
      now.low * std::exp(shift), now.high * std::exp(shift), options.coverage};
  rescue.predicted_median =
      std::exp(LevelQuantile(belief, 0.5, belief.u_now) + shift);
  rescue.overshoot_probability =
      ChanceBelow(belief, target - edge - shift, belief.u_now);
  rescue.water_share =
      (cup.earlier_ml + cup.added_ml +
       rescue.add_ml * std::max(0.0, 1.0 - std::min(1.0, reserve_paint))) /
      (volume_ml + rescue.add_ml);
  return rescue;
}

double ReserveToKeep_ml(const DilutionBelief& belief,
                        const CupState& cup,
                        const DoseOptions& options) {
  const double target = std::log(options.target_ratio);
  const double edge = std::log1p(options.band);
  // Paint V0 thinned to 1 + w; bringing w back to w' takes V0 (w / w' - 1).
  const double right = std::expm1(MeanGrowthTo(belief, target));
  const double over = std::expm1(MeanGrowthTo(belief, target - 1.25 * edge));
  if (right <= 0.0) return 0.0;
  return cup.start_volume_ml * std::clamp(over / right - 1.0, 0.0, 0.5);
}

}  // namespace flowkin
