#pragma once

#include <optional>
#include <string>
#include <vector>

#include "calibration/curve/dilution_curve.h"
#include "core/base/result.h"
#include "core/dosing/choose_dose.h"
#include "core/session/cup.h"

namespace flowkin {

/// What else is known of the bench; everything may be left out.
struct BenchConditions {
  std::optional<double> temperature_c;       ///< now
  std::optional<double> base_temperature_c;  ///< when the base coat was tested
  std::optional<double> base_age_min;        ///< since the base coat was tested
  std::optional<double> open_min;            ///< the cup stood open
  std::optional<double> rest_s;              ///< between stirring and this test
  std::vector<double> other_water_shares;    ///< of the other cups, 0 to 1
};

struct DoseRequest {
  CupHistory cup;
  double band = 0.15;              ///< 0.02 to 1
  double target_ratio = 1.0;       ///< 0.2 to 5
  double smallest_step_ml = 0.25;  ///< what can be measured out
  std::optional<DoseUnit> unit;
  std::optional<double> reserve_ml;
  std::optional<double> reserve_ratio;  ///< default: the first test
  /// Part of every rel_sd that the tests of this cup share.
  double common_rel_sd = 0.0;
  /// Set where the history holds flow times over the base coat's, not
  /// viscosities: exponent of the time in the viscosity.
  std::optional<Estimate> time_exponent;
  BenchConditions bench;

  /// One sentence on the first value out of range.
  Result<void> Validate() const;
};

struct DoseReport {
  bool refused = false;
  std::string reason;  ///< of a refusal: what is wrong and what to do
  Dose dose;
  /// 0 where nothing is to be added; missing for a rescue that no reserve can
  /// bring.
  std::optional<double> add_ml;
  /// kAdd with a unit: how many of it.
  std::optional<double> add_units;
  /// kRescue: the whole repair, of which add_ml is the first part.
  std::optional<double> rescue_total_ml;
  /// Before the first addition: unthinned paint worth keeping back.
  std::optional<double> keep_back_ml;
  std::vector<std::string> cautions;
};

/// `prior`: what the brand's curve says, or the default for an unknown paint
/// (calibration/defaults) if null.
Result<DoseReport> AdviseDose(const DoseRequest& request,
                              const CurvePrior* prior);

/// How thick a cup is held to have been, and to become, with so much of its
/// thinner in it.
struct CupPathPoint {
  double added_ml = 0.0;  ///< running total, as in the history
  double ratio = 1.0;     ///< median
  Interval interval;      ///< 95 %, of the ratio
};

/// The path of a cup on the curve that its tests and `prior` lead to, from
/// where the thinner at hand was first used to `until_ml` stirred in, or to the
/// last test where that is farther. Beyond the last test it is foreseen; where
/// the advice is to add, it meets what AdviseDose predicts.
Result<std::vector<CupPathPoint>> ForeseePath(const DoseRequest& request,
                                              const CurvePrior* prior,
                                              double until_ml);

}  // namespace flowkin
