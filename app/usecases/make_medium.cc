#include "app/usecases/make_medium.h"

#include <cmath>
#include <utility>

#include "app/usecases/cautions.h"
#include "core/base/distributions.h"
#include "core/planning/bubbles.h"
#include "core/planning/pour_plan.h"

namespace flowkin {
namespace {

Error OutOfRange(const std::string& message) {
  return {ErrorCode::kInvalidArgument, message};
}

bool Within(double value, double low, double high) {
  return value >= low && value <= high;  // false for not-a-number
}

constexpr const char* kFold =
    "Pour the base first, the varnish into it, and fold it in slowly with a "
    "flat stick; do not whip.";
constexpr const char* kStrain =
    "Strain it through a paint cone or a fine mesh.";
constexpr const char* kRest =
    "Close it and let it rest until the bubbles are up.";
constexpr const char* kMark = "Write the parts, the date and the volume on it.";
constexpr const char* kTestIt =
    "Test it once like a cup: its own flow moves every cup it goes into.";

/// A ratio below this flows faster than the base coat beyond any usual band.
constexpr double kThinRatio = 1.0 / 1.15;

RestTime RestOf(double bubble_mm,
                double depth_mm,
                const Span& nu_mm2_per_s,
                double density_g_per_ml) {
  const auto minutes = [&](double nu) {
    // mm2/s times g/mL is mPa.s.
    const double mu_pa_s = 1e-3 * nu * density_g_per_ml;
    return RestTimeS(depth_mm, bubble_mm, mu_pa_s, density_g_per_ml) / 60.0;
  };
  return {bubble_mm,
          {minutes(nu_mm2_per_s.low),
           minutes(nu_mm2_per_s.start),
           minutes(nu_mm2_per_s.high)}};
}

Result<double> VolumeOf(const MediumRequest& request) {
  if (request.container) {
    if (const Result<void> valid = Validate(*request.container); !valid) {
      return valid.error();
    }
    const double fill_mm =
        request.fill_mm.value_or(request.container->height_mm);
    if (!Within(fill_mm, 1.0, request.container->height_mm)) {
      return OutOfRange(
          "The fill height must lie between 1 mm and the cup's own height.");
    }
    if (request.volume_ml) {
      return OutOfRange("Give a volume or a cup to fill, not both.");
    }
    return ContainerVolumeMl(*request.container, fill_mm);
  }
  if (!request.volume_ml) {
    return OutOfRange(
        "It is not said how much; give a volume or a cup to fill.");
  }
  if (!Within(*request.volume_ml, 0.1, 1e6)) {
    return OutOfRange("The volume must lie between 0.1 mL and 1000 L.");
  }
  return *request.volume_ml;
}

}  // namespace

Result<Estimate> TestedLnRatio(double ratio) {
  constexpr double kTestSd = 0.07;
  if (!(ratio > 0.0) || !std::isfinite(ratio)) {
    return OutOfRange("A ratio must be above 0.");
  }
  return Estimate{std::log(ratio), kTestSd};
}

Result<MediumReport> PlanMedium(const MediumRequest& request) {
  if (const Result<void> valid = Validate(request.recipe); !valid) {
    return valid.error();
  }
  if (!Within(request.medium_share, 0.0, 1.0)) {
    return OutOfRange("The medium's share of a cup must be 0 to 1.");
  }
  if (request.nu_mm2_per_s && !Within(*request.nu_mm2_per_s, 0.1, 1e6)) {
    return OutOfRange(
        "The kinematic viscosity must lie between 0.1 and 1000000 mm2/s.");
  }
  const Result<double> volume_ml = VolumeOf(request);
  if (!volume_ml) return volume_ml.error();
  MediumReport report;
  report.batch = MakeMedium(request.recipe, *volume_ml);
  if (request.container) {
    report.full_mark_mm =
        request.fill_mm.value_or(request.container->height_mm);
    report.base_mark_mm =
        FillHeightMm(*request.container, report.batch.base.volume_ml);
    report.depth_mm = *report.full_mark_mm;
  } else {
    // A jug about as wide as the medium stands high.
    report.depth_mm = 10.0 * std::cbrt(*volume_ml);
  }
  const double density = report.batch.blend.density_g_per_ml;
  const Span nu = request.nu_mm2_per_s ? Span{*request.nu_mm2_per_s,
                                              *request.nu_mm2_per_s,
                                              *request.nu_mm2_per_s}
                                       : PlanRequest{}.nu_mm2_per_s;
  for (const double bubble_mm : {0.5, 0.2}) {
    report.rest.push_back(RestOf(bubble_mm, report.depth_mm, nu, density));
  }
  if (request.mixed) {
    report.keeps = HowLongItKeeps(*request.mixed, request.watered);
  }
  if (request.ln_ratio && request.last_ln_ratio) {
    const Estimate change = BatchChangeLnRatio(
        *request.last_ln_ratio, *request.ln_ratio, request.medium_share);
    const Interval interval = CoverageInterval(change);
    report.cup_factor = std::exp(change.value);
    report.cup_factor_interval = {
        std::exp(interval.low), std::exp(interval.high), interval.level};
  }
  if (request.ln_ratio && std::exp(request.ln_ratio->value) < kThinRatio) {
    report.notes.push_back(
        "This medium flows faster than the base coat. A thin paint mixed with "
        "it may start too thin: add body, not water.");
  }
  for (const char* step : {kFold, kStrain, kRest, kMark, kTestIt}) {
    report.steps.emplace_back(step);
  }
  report.notes.push_back(
      "4:1 and 3:1 are both in use and it matters little which; what matters "
      "is to keep to one. Parts by volume and by weight are not the same.");
  report.cautions = Cautions({Hazard::kPaint, Hazard::kWaste, Hazard::kFood});
  return report;
}

Result<FirstMixReport> PlanFirstMix(const FirstMixRequest& request) {
  if (!Within(request.volume_ml, 0.1, 1e6)) {
    return OutOfRange("The volume must lie between 0.1 mL and 1000 L.");
  }
  if (!Within(request.reserve_share, 0.0, 1.0)) {
    return OutOfRange("The reserve must be 0 to 100 %.");
  }
  const bool powder = request.body == PaintBody::kPowder;
  const FirstMixRule& rule = FirstMixFor(request.body);
  FirstMixReport report;
  report.usual_parts = rule.parts;
  report.medium_parts = request.medium_parts.value_or(rule.parts.start);
  report.source =
      request.medium_parts ? Source::kArtist : Source::kCommonPractice;
  if (!Within(report.medium_parts, powder ? 1e-6 : 0.0, 100.0)) {
    return OutOfRange("The parts are out of range.");
  }
  for (const Material& material : {request.paint, request.medium}) {
    if (!Within(material.density_g_per_ml, 0.1, 10.0) ||
        !Within(material.volume_solids, 0.0, 1.0)) {
      return OutOfRange("A density must lie between 0.1 and 10 g/mL.");
    }
  }
  report.mix = MakeFirstMix(request.body,
                            report.medium_parts,
                            request.paint,
                            request.medium,
                            request.volume_ml,
                            request.reserve_share);
  if (request.paint_ln_ratio && request.medium_ln_ratio && !powder) {
    const Estimate ln_ratio =
        MixLnRatio(*request.paint_ln_ratio,
                   *request.medium_ln_ratio,
                   report.mix.medium.volume_ml / request.volume_ml);
    const Interval interval = CoverageInterval(ln_ratio);
    report.expected_ratio = std::exp(ln_ratio.value);
    report.expected_interval = {
        std::exp(interval.low), std::exp(interval.high), interval.level};
    if (interval.high < std::log(kThinRatio)) {
      report.notes.push_back(
          "It will start thinner than the base coat: take less medium or a "
          "thicker paint; water would only make it worse.");
    }
  }
  for (const double water_share : {0.05, 0.10, 0.15}) {
    report.rescues.emplace_back(
        water_share, RescuableWaterShare(water_share, request.reserve_share));
  }
  report.steps.emplace_back(rule.remark);
  report.steps.emplace_back(
      "Stir slowly to the bottom without beating air in; strain it if it is "
      "lumpy; let it rest.");
  if (report.mix.reserve_ml > 0.0) {
    report.steps.emplace_back(
        "Take the reserve off now, before any water, close it and mark it.");
  }
  report.steps.emplace_back(
      "Mix all colours first; then thin them one by one, because paints of "
      "different body need different amounts.");
  std::vector<Hazard> hazards = {Hazard::kPaint};
  if (powder) hazards.push_back(Hazard::kPowder);
  hazards.insert(hazards.end(), {Hazard::kWaste, Hazard::kFood});
  report.cautions = Cautions(hazards);
  return report;
}

}  // namespace flowkin
