#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/first_mix.h"
#include "core/planning/keeping.h"
#include "core/planning/medium.h"

namespace flowkin {

/// How much medium is wanted: a volume, or a container filled to a height (to
/// the brim without one).
struct MediumRequest {
  MediumRecipe recipe;
  std::optional<double> volume_ml;
  std::optional<Container> container;
  std::optional<double> fill_mm;
  /// ln of this batch's and the last batch's ratio to the base coat, as tested.
  std::optional<Estimate> ln_ratio;
  std::optional<Estimate> last_ln_ratio;
  double medium_share = 0.5;  ///< of a usual cup, 0 to 1
  /// From a puddle test; without it the span of section "film" of the plan.
  std::optional<double> nu_mm2_per_s;
  std::optional<Day> mixed;
  bool watered = false;
};

/// Least time for bubbles of one size to come up.
struct RestTime {
  double bubble_mm = 0.0;
  Span minutes;  ///< thin, middle, thick paint
};

struct MediumReport {
  MediumBatch batch;
  double depth_mm = 0.0;               ///< of the resting medium
  std::optional<double> base_mark_mm;  ///< fill with base up to here
  std::optional<double> full_mark_mm;  ///< then with varnish up to here
  std::vector<RestTime> rest;
  std::optional<KeepsUntil> keeps;
  /// Factor by which a usual cup changes against the last batch, level 0.95.
  std::optional<double> cup_factor;
  Interval cup_factor_interval;
  std::vector<std::string> steps;  ///< in order, one sentence each
  std::vector<std::string> notes;
  std::vector<std::string> cautions;
};

/// ln of a ratio to the base coat as she tested it; its sd is 7 %, what one
/// full test should reach. kInvalidArgument for what is not above 0.
Result<Estimate> TestedLnRatio(double ratio);

Result<MediumReport> PlanMedium(const MediumRequest& request);

struct FirstMixRequest {
  std::string name;
  PaintBody body = PaintBody::kSoft;
  std::optional<double> medium_parts;
  Material paint = kArtistPaint;
  Material medium{1.244, 0.354};  ///< 4:1 by mass balance
  double volume_ml = 0.0;
  double reserve_share = 0.2;
  /// ln of the ratios to the base coat, where they were tested.
  std::optional<Estimate> paint_ln_ratio;
  std::optional<Estimate> medium_ln_ratio;
};

struct FirstMixReport {
  FirstMix mix;
  Span usual_parts;
  double medium_parts = 0.0;
  Source source = Source::kCommonPractice;
  /// How it may start, ratio to the base coat, level 0.95.
  std::optional<double> expected_ratio;
  Interval expected_interval;
  /// Water share that the reserve brings back to 5, 10, 15 %.
  std::vector<std::pair<double, double>> rescues;
  std::vector<std::string> steps;
  std::vector<std::string> notes;
  std::vector<std::string> cautions;
};

Result<FirstMixReport> PlanFirstMix(const FirstMixRequest& request);

}  // namespace flowkin
