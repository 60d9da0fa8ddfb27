#include "core/dosing/choose_dose.h"

#include <algorithm>
#include <cmath>

#include "core/base/check.h"

namespace flowkin {
namespace {

/// Share of the remaining budget that one addition may use, and that one may
/// use which is likely to be the last.
constexpr double kSpend = 0.5;
constexpr double kSpendLast = 0.85;
/// Likely the last: it leads this close to the target, in parts of the band.
constexpr double kLastShare = 0.55;
/// After this many films at one addition more of them will not decide it.
constexpr std::size_t kEnoughTests = 4;
// Of the path still to come, normal quantiles: the band's thick edge at a
// match, the target at the thin edge of the 95 % interval.
constexpr double kMatchTail = 1.48;
constexpr double kThickTail = 1.96;
/// An addition that goes this part of the way is not worth another test.
constexpr double kFarEnough = 0.8;

double Allowance(const DoseOptions& options, std::size_t additions) {
  return options.most_overshoot * kSpend *
         std::pow(1.0 - kSpend, static_cast<double>(additions));
}

/// What is known of a cup as two numbers: the level, and how far the slope is
/// off in parts of itself; with their covariance.
struct Walk {
  double level_variance, covariance, slope_variance;

  /// Variance of the level once water has lowered it by about `fall`.
  double After(double fall) const {
    return level_variance - 2.0 * fall * covariance +
           fall * fall * slope_variance;
  }
  void Add(double fall) {
    level_variance = After(fall);
    covariance -= fall * slope_variance;
  }
  void Test(double variance) {
    const double gain = 1.0 / (level_variance + variance);
    slope_variance -= gain * covariance * covariance;
    covariance -= gain * covariance * level_variance;
    level_variance -= gain * level_variance * level_variance;
  }
};

/// The largest fall that leaves the chance of passing `room` at `chance`.
double Reach(const Walk& walk, double room, double chance) {
  // About the normal quantile; a slope known to a factor only has a longer
  // tail than a normal one.
  const double z = std::sqrt(-2.0 * std::log(chance)) - 0.6;
  const double stretch = std::expm1(z * std::sqrt(walk.slope_variance)) / z;
  double low = 0.0;
  double high = std::max(0.0, room);
  for (int pass = 0; pass < 30; ++pass) {
    const double fall = 0.5 * (low + high);
    const double sd =
        std::sqrt(walk.level_variance + fall * fall * stretch * stretch);
    (fall + z * sd < room ? low : high) = fall;
  }
  return low;
}

/// How many additions are still to come for a cup that is about to be tested
/// `distance` above the target, by walking the rest of the path as this file
/// and whoever asks it would: tested once, again where that lets it go further
/// or is needed to tell match from thicker.
double AdditionsLeft(double distance,
                     Walk walk,
                     double test_sd,
                     const DoseOptions& options,
                     std::size_t additions) {
  const double edge = std::log1p(options.band);
  const double aim = options.aim_share * edge;
  const double variance = test_sd * test_sd;
  double count = 0.0;
  for (std::size_t k = additions; k < additions + 12; ++k) {
    walk.Test(variance);
    // Matched once the band holds all but its thick tail; tested until it is
    // either that or surely thicker than the target.
    const double done =
        std::max(edge - kMatchTail * std::sqrt(walk.level_variance),
                 edge * kThickTail / (kThickTail + kMatchTail));
    if (distance <= done) break;
    const double chance = Allowance(options, k) * kSpendLast / kSpend;
    double fall = Reach(walk, distance + edge, chance);
    for (std::size_t tests = 1; tests < kEnoughTests; ++tests) {
      if (fall >= kFarEnough * distance) break;
      walk.Test(variance);
      fall = Reach(walk, distance + edge, chance);
    }
    fall = std::min(fall, distance - aim);
    if (fall <= 0.0) break;
    count += 1.0;
    distance -= fall;
    walk.Add(fall);
  }
  return count;
}

}  // namespace

Dose StayAndMeasure(Dose dose,
                    const DilutionBelief& belief,
                    const CupState& cup,
                    const DoseOptions& options) {
  dose.advice = DoseAdvice::kMeasure;
  dose.add_ml = 0.0;
  dose.predicted = dose.ratio_now;
  dose.predicted_median = dose.ratio_now_median;
  dose.overshoot_probability =
      ChanceBelow(belief,
                  std::log(options.target_ratio) - std::log1p(options.band),
                  belief.u_now);
  dose.path_overshoot_probability = dose.overshoot_probability;
  dose.water_share =
      (cup.earlier_ml + cup.added_ml) / (cup.start_volume_ml + cup.added_ml);
  return dose;
}

Dose ChooseDose(const DilutionBelief& belief,
                const CupState& cup,
                const DoseOptions& options) {
  FLOWKIN_CHECK(!belief.parts.empty());
  FLOWKIN_CHECK(cup.start_volume_ml > 0.0 && cup.added_ml >= 0.0);
  FLOWKIN_CHECK(options.smallest_step_ml > 0.0 && options.band > 0.0);
  const double target = std::log(options.target_ratio);
  const double edge = std::log1p(options.band);
  const double low_edge = target - edge;
  const double high_edge = target + edge;
  const double u_now = belief.u_now;
  const double volume_ml = cup.start_volume_ml + cup.added_ml;

  const auto growth = [&](double add_ml) {
    return u_now + std::log1p(add_ml / volume_ml);
  };
  const auto share = [&](double add_ml) {
    return (cup.earlier_ml + cup.added_ml + add_ml) / (volume_ml + add_ml);
  };

  Dose dose;
  dose.ratio_now = RatioInterval(belief, options.coverage, u_now);
  dose.ratio_now_median = std::exp(LevelQuantile(belief, 0.5, u_now));
  const auto stay = [&](DoseAdvice advice) {
    dose = StayAndMeasure(dose, belief, cup, options);
    dose.advice = advice;
    return dose;
  };

  const double below = ChanceBelow(belief, low_edge, u_now);
  const double inside = ChanceBelow(belief, high_edge, u_now) - below;
  const double thin_tail = 0.5 * (1.0 - options.coverage);
  if (inside >= options.match_confidence && !cup.last_test_suspect) {
    return stay(DoseAdvice::kMatch);
  }
  const bool filmed_enough = cup.tests_here >= kEnoughTests;
  // Not against the newest test: that one is filmed again first.
  if ((below > 1.0 - thin_tail && !cup.last_test_suspect) ||
      (filmed_enough && below > 0.5)) {
    return stay(DoseAdvice::kRescue);
  }
  const bool spans = dose.ratio_now.low <= options.target_ratio &&
                     dose.ratio_now.high >= options.target_ratio;
  const bool thin_side = dose.ratio_now.high < options.target_ratio;
  if (cup.last_test_suspect || spans || thin_side) {
    if (filmed_enough && inside >= 0.5) return stay(DoseAdvice::kMatch);
    return stay(DoseAdvice::kMeasure);
  }

  // From here on the cup is thicker than the target beyond doubt.
  const double allowance = Allowance(options, cup.additions);
  const double aim = target + options.aim_share * edge;
  const double last_allowance = allowance * kSpendLast / kSpend;
  const auto allowed = [&](double add_ml, double risk) {
    const double u = growth(add_ml);
    return ChanceBelow(belief, low_edge, u) <= risk &&
           ChanceBelow(belief, aim, u) <= 0.5;
  };
  const double most_ml = options.most_growth * volume_ml;
  const auto most_steps =
      static_cast<long>(most_ml / options.smallest_step_ml + 1e-9);
  const auto largest = [&](double risk, long most) {
    long fits = 0;
    for (long high = most + 1; high - fits > 1;) {
      const long middle = fits + (high - fits) / 2;
      const double add_ml =
          static_cast<double>(middle) * options.smallest_step_ml;
      (allowed(add_ml, risk) ? fits : high) = middle;
    }
    return fits;
  };
  long steps = largest(last_allowance, most_steps);
  const double last_u =
      growth(static_cast<double>(steps) * options.smallest_step_ml);
  if (ChanceBelow(belief, target + kLastShare * edge, last_u) < 0.5) {
    steps = largest(allowance, steps);
  }

  if (steps == 0) {
    // Would a finer step do, or is the level itself too poorly known?
    double fine_ml = 0.0;
    double coarse_ml = std::min(most_ml, options.smallest_step_ml);
    for (int pass = 0; pass < 40; ++pass) {
      const double middle = 0.5 * (fine_ml + coarse_ml);
      (allowed(middle, allowance) ? fine_ml : coarse_ml) = middle;
    }
    // In the band on the thick side and no finer step at hand: that is as good
    // as this measure gets.
    if (inside >= 0.5 && filmed_enough) return stay(DoseAdvice::kMatch);
    // Knowing the level better makes no room for a step that leads past the aim
    // as likely as not.
    const bool too_coarse =
        most_steps == 0 ||
        ChanceBelow(belief, aim, growth(options.smallest_step_ml)) > 0.5;
    if (!filmed_enough &&
        (inside > 0.2 || fine_ml < 0.02 * options.smallest_step_ml ||
         (cup.tests_here < 2 && !too_coarse))) {
      return stay(DoseAdvice::kMeasure);
    }
    stay(DoseAdvice::kTooCoarse);
    dose.other_ml = fine_ml;
    return dose;
  }

  dose.add_ml = static_cast<double>(steps) * options.smallest_step_ml;
  const double water_ml = cup.earlier_water_ml + cup.added_ml + dose.add_ml;
  if (options.most_water_share &&
      water_ml > *options.most_water_share * (volume_ml + dose.add_ml)) {
    const double wanted_ml = dose.add_ml;
    stay(DoseAdvice::kLimit);
    dose.other_ml = wanted_ml;
    return dose;
  }
  const double u = growth(dose.add_ml);
  const Estimate now = LevelMoments(belief, u_now);
  const Estimate after = LevelMoments(belief, u);
  const double fall = now.value - after.value;
  if (fall < 1e-4) {
    // Stirring in as much as allowed does next to nothing.
    stay(DoseAdvice::kCannot);
    return dose;
  }
  dose.advice = DoseAdvice::kAdd;
  dose.predicted = RatioInterval(belief, options.coverage, u);
  dose.predicted_median = std::exp(LevelQuantile(belief, 0.5, u));
  dose.overshoot_probability = ChanceBelow(belief, low_edge, u);
  dose.water_share = share(dose.add_ml);
  const double slope_variance =
      std::max(1e-4, after.sd * after.sd - now.sd * now.sd) / (fall * fall);
  Walk walk{now.sd * now.sd, 0.0, slope_variance};
  walk.Add(fall);
  const double later = AdditionsLeft(
      after.value - target, walk, cup.last_rel_sd, options, cup.additions + 1);
  dose.expected_additions_left = 1.0 + later;
  dose.path_overshoot_probability = dose.overshoot_probability;
  for (std::size_t k = 1; k <= static_cast<std::size_t>(later); ++k) {
    dose.path_overshoot_probability += Allowance(options, cup.additions + k);
  }
  return dose;
}

}  // namespace flowkin
