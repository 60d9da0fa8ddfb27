#include "app/usecases/advise_dose.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "calibration/curve/brand_curve.h"
#include "calibration/defaults/default_prior.h"
#include "core/dosing/rescue.h"

namespace flowkin {
namespace {

// Commonly quoted advice for acrylic paint thinned with water, no source.
constexpr double kSoftWaterShare = 0.20;
constexpr double kStrongWaterShare = 0.30;
constexpr double kMostWaterShare = 0.50;
constexpr double kShareDifference = 0.15;
// Paint changes by 2 to 9 % per degree (ASTM D4212 warns of the upper end).
constexpr double kTemperatureDrift_c = 2.0;
constexpr double kBaseAge_min = 120.0;
constexpr double kOpen_min = 30.0;
constexpr double kRest_s = 60.0;
constexpr double kSuspect = 0.5;
// When another film is worth more than water: the addition goes less than this
// part of the way, and the film would make it this much longer.
constexpr double kFarEnough = 0.8;
constexpr double kWorthAFilm = 1.25;
constexpr std::size_t kMostTestsForReach = 2;

std::string Number(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof(text), "%.*f", decimals, value);
  return text;
}

std::string Millilitres(double ml) {
  return Number(ml, ml < 1.0 ? 2 : (ml < 10.0 ? 1 : 0)) + " mL";
}

std::string Percent(double share) { return Number(100.0 * share, 0) + " %"; }

bool Outside(double value, double low, double high) {
  return !(value >= low && value <= high);
}

Error OutOfRange(const std::string& what,
                 double value,
                 const std::string& range) {
  char text[64];
  std::snprintf(text, sizeof(text), "%.6g", value);
  return {ErrorCode::kInvalidArgument,
          what + " is " + text + ", but must be " + range + "."};
}

struct UnitSize {
  const char* name;
  double ml;
};
// Common practice, no source; a drop: European Pharmacopoeia dropper, 20 to
// the gram. Only named to say which measure would do.
constexpr std::array<UnitSize, 5> kUnits = {{{"a teaspoon", 5.0},
                                             {"a quarter teaspoon", 1.25},
                                             {"1 mL marks of a pipette", 1.0},
                                             {"0.1 mL marks of a pipette", 0.1},
                                             {"drops", 0.05}}};

std::string TooCoarse(const DoseRequest& request, double fine_ml) {
  std::string what =
      request.unit ? "One " + request.unit->name + " (" +
                         Number(request.unit->ml, 2) + " mL)"
                   : "A step of " + Number(request.smallest_step_ml, 2) + " mL";
  what += " is too much at once for this cup";
  for (const UnitSize& unit : kUnits) {
    if (unit.ml <= fine_ml && unit.ml < request.smallest_step_ml) {
      return what + "; measure it out with " + unit.name + " instead.";
    }
  }
  return what + "; stop here, or film it again to know it better.";
}

/// Share of the cup that is added water, once the advice is followed.
double WaterShare(const DoseRequest& request,
                  const Dose& dose,
                  const CupState& state) {
  const bool water = request.cup.thinner == ThinnerKind::kWater;
  if (water && state.earlier_ml == 0.0) return dose.water_share;
  double water_ml = state.earlier_water_ml;
  if (water) water_ml += state.added_ml + dose.add_ml;
  return water_ml / (state.start_volume_ml + state.added_ml + dose.add_ml);
}

void AddCautions(const DoseRequest& request,
                 const CupState& state,
                 DoseReport& report) {
  std::vector<std::string>& cautions = report.cautions;
  const BenchConditions& bench = request.bench;
  const double share = report.dose.water_share;
  const double water = WaterShare(request, report.dose, state);
  if (water >= kSoftWaterShare) {
    const std::string is = "Added water is " + Percent(water) + " of the cup: ";
    if (water >= kMostWaterShare) {
      cautions.push_back(is +
                         "outside all commonly quoted advice (50 %); the "
                         "binder is spread too thin.");
    } else if (water >= kStrongWaterShare) {
      cautions.push_back(is +
                         "more than commonly quoted advice allows (30 %); go "
                         "on with medium.");
    } else {
      cautions.push_back(is +
                         "above the 20 % that commonly quoted advice calls "
                         "safe for the film.");
    }
  }
  if (request.cup.thinner == ThinnerKind::kAdditive &&
      share - water >= kSoftWaterShare) {
    cautions.push_back("Additive is " + Percent(share - water) +
                       " of the cup: see what its label allows.");
  }
  if (!bench.other_water_shares.empty()) {
    double widest = 0.0;
    for (const double other : bench.other_water_shares) {
      if (std::abs(other - share) > std::abs(widest)) widest = share - other;
    }
    if (std::abs(widest) > kShareDifference) {
      cautions.push_back(
          "This cup holds " + Percent(std::abs(widest)) +
          std::string(" points ") + (widest > 0.0 ? "more" : "less") +
          " added liquid than another cup; they will dry and shrink "
          "differently.");
      std::string& text = cautions.back();
      text.erase(text.find(" %"), 2);
    }
  }
  if (bench.temperature_c && bench.base_temperature_c) {
    const double drift = *bench.temperature_c - *bench.base_temperature_c;
    if (std::abs(drift) > kTemperatureDrift_c) {
      cautions.push_back("The room is " + Number(std::abs(drift), 1) +
                         " degrees C " + (drift > 0.0 ? "warmer" : "colder") +
                         " than when the base coat was tested; test the base "
                         "coat again.");
    }
  }
  if (bench.base_age_min && *bench.base_age_min > kBaseAge_min) {
    cautions.push_back("The base coat was tested " +
                       Number(*bench.base_age_min / 60.0, 1) +
                       " hours ago; test it again.");
  }
  if (bench.open_min && *bench.open_min > kOpen_min) {
    cautions.push_back("The cup stood open for " + Number(*bench.open_min, 0) +
                       " minutes and has thickened; cover it and test again "
                       "before adding.");
  }
  if (bench.rest_s && *bench.rest_s > kRest_s) {
    cautions.push_back("The test came " + Number(*bench.rest_s, 0) +
                       " s after stirring; stir, wait 15 s and test, the same "
                       "for every cup.");
  }
}

std::vector<DilutionTest> TestsOf(const CupHistory& cup) {
  std::vector<DilutionTest> tests;
  for (const CupTest& test : cup.tests) {
    tests.push_back(
        {cup.Growth(test.added_ml), std::log(test.ratio), test.rel_sd});
  }
  return tests;
}

/// What the earlier parts of a cup's history tell of the level at which the
/// last one starts. The tests made there are left out: the last part holds
/// them.
Estimate StartOfLastPart(const std::vector<CupHistory>& parts,
                         Estimate start,
                         CurveOptions options) {
  // What all tests share is added once, in the last part.
  const double common = options.common_rel_sd;
  options.common_rel_sd = 0.0;
  for (std::size_t p = 0; p + 1 < parts.size(); ++p) {
    const CupHistory& part = parts[p];
    std::vector<DilutionTest> tests = TestsOf(part);
    const double end = tests.back().u;
    std::erase_if(tests, [&](const DilutionTest& t) { return t.u >= end; });
    if (tests.empty()) continue;
    for (DilutionTest& test : tests) {
      test.rel_sd =
          std::sqrt(std::max(0.0, test.rel_sd * test.rel_sd - common * common));
      test.rel_sd = std::max(test.rel_sd, options.least_rel_sd);
    }
    CurvePrior prior = part.thinner == ThinnerKind::kWater
                           ? WaterPrior()
                           : BlendPrior(part.thinner_ln_ratio);
    prior.start_level = start;
    const DilutionCurve curve = FitDilutionCurve(tests, prior, options);
    start = LevelMoments(curve.belief, end);
  }
  return start;
}

/// The cup's curve, with what it was fitted to.
struct FittedCup {
  CupHistory part;  ///< with the thinner at hand
  /// What other thinners had made of the cup before, mL.
  double earlier_ml = 0.0;
  double earlier_water_ml = 0.0;
  std::vector<DilutionTest> tests;
  CurvePrior prior;
  CurveOptions options;
  DilutionCurve curve;
};

/// `request` must be valid.
FittedCup FitCup(const DoseRequest& request, const CurvePrior* prior) {
  const CupHistory& cup = request.cup;
  const bool water = cup.thinner == ThinnerKind::kWater;
  const std::vector<CupHistory> parts = cup.Parts();
  FittedCup fitted;
  fitted.part = parts.back();
  fitted.earlier_ml = fitted.part.volume_ml - cup.volume_ml;
  for (std::size_t p = 0; p + 1 < parts.size(); ++p) {
    if (parts[p].thinner == ThinnerKind::kWater) {
      fitted.earlier_water_ml += parts[p].tests.back().added_ml;
    }
  }
  fitted.options.common_rel_sd = request.common_rel_sd;
  if (request.time_exponent) {
    fitted.options.time_exponent = *request.time_exponent;
  }
  fitted.tests = TestsOf(fitted.part);
  if (prior == nullptr) {
    fitted.prior = water ? WaterPrior() : BlendPrior(cup.thinner_ln_ratio);
  } else {
    fitted.prior = !water && cup.thinner_ln_ratio
                       ? AtMeasuredLevel(*prior, *cup.thinner_ln_ratio)
                       : *prior;
  }
  fitted.prior.start_level =
      StartOfLastPart(parts, fitted.prior.start_level, fitted.options);
  fitted.curve = FitDilutionCurve(fitted.tests, fitted.prior, fitted.options);
  return fitted;
}

/// Whether one more film, should it read what is now held likeliest, would let
/// the next addition go so much further that it is worth more than water now.
bool FilmReachesFurther(const Dose& dose,
                        std::vector<DilutionTest> tests,
                        const CurvePrior& prior,
                        const CurveOptions& curve_options,
                        CupState state,
                        const DoseOptions& options) {
  const double now = std::log(dose.ratio_now_median);
  const double fall = now - std::log(dose.predicted_median);
  const double wanted = now - std::log(options.target_ratio);
  if (fall > kFarEnough * wanted) return false;
  tests.push_back({tests.back().u, now, tests.back().rel_sd});
  ++state.tests_here;
  const DilutionCurve curve = FitDilutionCurve(tests, prior, curve_options);
  const Dose other = ChooseDose(curve.belief, state, options);
  if (other.advice != DoseAdvice::kAdd) return false;
  const double other_fall =
      std::log(other.ratio_now_median) - std::log(other.predicted_median);
  return other_fall > kWorthAFilm * fall;
}

/// The first addition of medium to a cup that has had its water, mL; none where
/// medium cannot be advised either.
std::optional<double> MediumInstead(DoseRequest request) {
  for (CupTest& test : request.cup.tests) {
    if (!test.thinner) test.thinner = request.cup.thinner;
  }
  request.cup.thinner = ThinnerKind::kMedium;
  request.cup.thinner_ln_ratio.reset();
  const Result<DoseReport> onward = AdviseDose(request, nullptr);
  if (!onward || onward->dose.advice != DoseAdvice::kAdd) return std::nullopt;
  return onward->add_ml;
}

}  // namespace

Result<void> DoseRequest::Validate() const {
  if (Outside(cup.volume_ml, 1.0, 20000.0)) {
    return OutOfRange("volume_ml", cup.volume_ml, "1 to 20000");
  }
  if (Outside(band, 0.02, 1.0)) return OutOfRange("band", band, "0.02 to 1");
  if (Outside(target_ratio, 0.2, 5.0)) {
    return OutOfRange("target", target_ratio, "0.2 to 5");
  }
  if (!(smallest_step_ml > 0.0) || smallest_step_ml > cup.volume_ml) {
    return OutOfRange("smallest_step_ml",
                      smallest_step_ml,
                      "above 0 and not more than the cup");
  }
  if (cup.thinner_ln_ratio &&
      Outside(std::exp(cup.thinner_ln_ratio->value), 1e-5, 100.0)) {
    return OutOfRange("thinner.ratio",
                      std::exp(cup.thinner_ln_ratio->value),
                      "0.00001 to 100");
  }
  if (reserve_ml && Outside(*reserve_ml, 0.0, 20000.0)) {
    return OutOfRange("reserve_ml", *reserve_ml, "0 to 20000");
  }
  if (reserve_ratio && Outside(*reserve_ratio, 0.01, 1000.0)) {
    return OutOfRange("reserve_ratio", *reserve_ratio, "0.01 to 1000");
  }
  if (Outside(common_rel_sd, 0.0, 1.0)) {
    return OutOfRange("common_rel_sd", common_rel_sd, "0 to 1");
  }
  if (time_exponent && (Outside(time_exponent->value, 0.1, 3.0) ||
                        Outside(time_exponent->sd, 0.0, 1.0))) {
    return OutOfRange("time_exponent",
                      time_exponent->value,
                      "0.1 to 3 with an uncertainty of 0 to 1");
  }
  if (cup.tests.empty()) {
    return Error{ErrorCode::kInvalidArgument,
                 "The history is empty; test the cup once before asking for "
                 "a dose."};
  }
  if (cup.tests.size() > 200) {
    return Error{ErrorCode::kInvalidArgument,
                 "The history holds more than 200 tests; leave out the "
                 "oldest."};
  }
  double before_ml = 0.0;
  for (std::size_t i = 0; i < cup.tests.size(); ++i) {
    const CupTest& test = cup.tests[i];
    const std::string where = "history[" + std::to_string(i) + "].";
    if (Outside(test.ratio, 0.01, 1000.0)) {
      return OutOfRange(where + "ratio", test.ratio, "0.01 to 1000");
    }
    if (!(test.rel_sd > 0.0) || test.rel_sd > 1.0) {
      return OutOfRange(where + "rel_sd", test.rel_sd, "above 0 and at most 1");
    }
    if (Outside(test.added_ml, 0.0, 10.0 * cup.volume_ml)) {
      return OutOfRange(where + "added_ml",
                        test.added_ml,
                        "0 to ten times the cup (it is the running total)");
    }
    if (test.added_ml < before_ml) {
      return OutOfRange(where + "added_ml",
                        test.added_ml,
                        "the running total, which never falls");
    }
    before_ml = test.added_ml;
  }
  return {};
}

Result<DoseReport> AdviseDose(const DoseRequest& request,
                              const CurvePrior* prior) {
  if (const Result<void> valid = request.Validate(); !valid) {
    return valid.error();
  }
  const CupHistory& cup = request.cup;
  const bool water = cup.thinner == ThinnerKind::kWater;
  const FittedCup fitted = FitCup(request, prior);
  const CupHistory& part = fitted.part;
  const DilutionCurve& curve = fitted.curve;

  DoseOptions options;
  options.band = request.band;
  options.target_ratio = request.target_ratio;
  options.smallest_step_ml = request.smallest_step_ml;
  if (!water) options.most_water_share.reset();
  CupState state;
  state.start_volume_ml = part.volume_ml;
  state.added_ml = part.tests.back().added_ml;
  state.earlier_ml = fitted.earlier_ml;
  state.earlier_water_ml = fitted.earlier_water_ml;
  state.additions = cup.Additions();
  state.tests_here = part.TestsSinceAddition();
  state.last_rel_sd = cup.tests.back().rel_sd;
  state.last_test_suspect = curve.outlier_chance.back() > kSuspect;

  DoseReport report;
  report.dose = ChooseDose(curve.belief, state, options);
  if (report.dose.advice == DoseAdvice::kAdd &&
      state.tests_here < kMostTestsForReach &&
      FilmReachesFurther(report.dose,
                         fitted.tests,
                         fitted.prior,
                         fitted.options,
                         state,
                         options)) {
    report.dose = StayAndMeasure(report.dose, curve.belief, state, options);
    report.cautions.push_back(
        "One more film before adding lets the next addition go further.");
  }
  report.add_ml = 0.0;
  switch (report.dose.advice) {
    case DoseAdvice::kAdd:
      report.add_ml = report.dose.add_ml;
      if (request.unit) {
        report.add_units =
            std::floor(report.dose.add_ml / request.unit->ml + 1e-9);
      }
      if (state.additions == 0) {
        report.keep_back_ml = ReserveToKeep_ml(curve.belief, state, options);
      }
      break;
    case DoseAdvice::kRescue: {
      const Reserve reserve{
          std::log(request.reserve_ratio.value_or(cup.tests.front().ratio)),
          request.reserve_ml};
      const Rescue rescue = PlanRescue(curve.belief, state, options, reserve);
      report.add_ml.reset();
      if (!rescue.possible) {
        report.cautions.push_back(
            "The cup is too thin and the reserve is no help: stir in thicker "
            "paint or medium of the same kind, a little at a time, and test "
            "again; water cannot help.");
        break;
      }
      report.add_ml = rescue.add_ml;
      report.rescue_total_ml = rescue.total_ml;
      report.dose.predicted = rescue.predicted;
      report.dose.predicted_median = rescue.predicted_median;
      report.dose.overshoot_probability = rescue.overshoot_probability;
      report.dose.path_overshoot_probability = rescue.overshoot_probability;
      report.dose.water_share = rescue.water_share;
      if (rescue.reserve_too_small) {
        report.cautions.push_back(
            "The repair takes " + Millilitres(rescue.total_ml) +
            " of unthinned paint, more than is kept back; mix more of the "
            "same first.");
      }
      report.cautions.push_back(
          "Loosen the thick paint with some of the cup first, then stir it "
          "back in.");
      break;
    }
    case DoseAdvice::kMeasure:
      if (state.last_test_suspect) {
        report.cautions.push_back(
            "The last test does not fit the others; stir, and film it again.");
      }
      break;
    case DoseAdvice::kLimit:
      report.cautions.push_back("Another " + Millilitres(report.dose.other_ml) +
                                " of water would pass " +
                                Percent(*options.most_water_share) +
                                " of the cup; thin on with medium.");
      if (const auto medium_ml = MediumInstead(request)) {
        // Rounded down.
        report.cautions.push_back(
            "Of medium, stir in " +
            Number(std::floor(10.0 * *medium_ml + 1e-9) / 10.0, 1) +
            " mL and film it again.");
      }
      break;
    case DoseAdvice::kTooCoarse:
      report.refused = true;
      report.reason = TooCoarse(request, report.dose.other_ml);
      break;
    case DoseAdvice::kCannot:
      report.refused = true;
      report.reason = std::string("This ") + ThinnerKindName(cup.thinner) +
                      " is hardly thinner than the target and cannot bring "
                      "the cup there; use water or a thinner one.";
      break;
    case DoseAdvice::kMatch:
      break;
  }
  AddCautions(request, state, report);
  return report;
}

Result<std::vector<CupPathPoint>> ForeseePath(const DoseRequest& request,
                                              const CurvePrior* prior,
                                              double until_ml) {
  if (const Result<void> valid = request.Validate(); !valid) {
    return valid.error();
  }
  // Enough for a smooth line.
  constexpr int kSteps = 40;
  constexpr double kCoverage = 0.95;
  const FittedCup fitted = FitCup(request, prior);
  const double last_ml = fitted.part.tests.back().added_ml;
  const double end_ml = std::max(last_ml, until_ml - fitted.earlier_ml);
  std::vector<double> stops_ml{last_ml};
  for (int k = 0; k <= kSteps; ++k) stops_ml.push_back(end_ml * k / kSteps);
  std::sort(stops_ml.begin(), stops_ml.end());
  std::vector<CupPathPoint> path;
  for (const double added_ml : stops_ml) {
    const double u = fitted.part.Growth(added_ml);
    CupPathPoint point;
    point.added_ml = fitted.earlier_ml + added_ml;
    point.ratio = std::exp(LevelQuantile(fitted.curve.belief, 0.5, u));
    point.interval = RatioInterval(fitted.curve.belief, kCoverage, u);
    path.push_back(point);
  }
  return path;
}

}  // namespace flowkin
