#include "core/planning/medium.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kMm3PerMl = 1e3;
constexpr double kMixingSd = 0.3;

bool Within(double value, double low, double high) {
  return value >= low && value <= high;  // false for not-a-number
}

}  // namespace

Result<void> Validate(const MediumRecipe& recipe) {
  if (!Within(recipe.base_parts, 1e-3, 1e3) ||
      !Within(recipe.varnish_parts, 0.0, 1e3)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The parts of the medium are out of range; write them like "
                 "4:1."};
  }
  for (const Material& material : {recipe.base, recipe.varnish}) {
    if (!Within(material.density_g_per_ml, 0.1, 10.0) ||
        !Within(material.volume_solids, 0.0, 1.0)) {
      return Error{ErrorCode::kInvalidArgument,
                   "A density must lie between 0.1 and 10 g/mL and volume "
                   "solids between 0 and 1."};
    }
  }
  return {};
}

MediumBatch MakeMedium(const MediumRecipe& recipe, double volume_ml) {
  FLOWKIN_CHECK(volume_ml >= 0.0);
  double base = recipe.base_parts;
  double varnish = recipe.varnish_parts;
  if (recipe.by == PartsBy::kWeight) {
    base /= recipe.base.density_g_per_ml;
    varnish /= recipe.varnish.density_g_per_ml;
  }
  MediumBatch batch;
  batch.volume_ml = volume_ml;
  batch.base = {volume_ml * base / (base + varnish), recipe.base};
  batch.varnish = {volume_ml * varnish / (base + varnish), recipe.varnish};
  batch.mass_g = batch.base.mass_g() + batch.varnish.mass_g();
  batch.blend = Blend({{base, recipe.base}, {varnish, recipe.varnish}});
  batch.parts_by_volume =
      varnish > 0.0 ? base / varnish : std::numeric_limits<double>::infinity();
  batch.parts_by_weight = batch.parts_by_volume * recipe.base.density_g_per_ml /
                          recipe.varnish.density_g_per_ml;
  return batch;
}

Result<void> Validate(const Container& container) {
  for (const double size_mm : {container.bottom_diameter_mm,
                               container.top_diameter_mm,
                               container.height_mm}) {
    if (!Within(size_mm, 5.0, 2000.0)) {
      return Error{ErrorCode::kInvalidArgument,
                   "A cup's inner diameters and height must lie between 5 and "
                   "2000 mm."};
    }
  }
  return {};
}

double ContainerVolumeMl(const Container& container, double fill_mm) {
  FLOWKIN_CHECK(fill_mm >= 0.0 && fill_mm <= container.height_mm * (1 + 1e-9));
  const double bottom = container.bottom_diameter_mm;
  const double top = bottom + (container.top_diameter_mm - bottom) * fill_mm /
                                  container.height_mm;
  return std::numbers::pi / 12.0 * fill_mm *
         (bottom * bottom + bottom * top + top * top) / kMm3PerMl;
}

double FillHeightMm(const Container& container, double volume_ml) {
  FLOWKIN_CHECK(volume_ml >= 0.0);
  const double full_ml = ContainerVolumeMl(container, container.height_mm);
  FLOWKIN_CHECK(volume_ml <= full_ml * (1.0 + 1e-9));
  // The volume rises with the height, so halving finds it; a closed form
  // cancels badly for walls that are almost straight.
  double low = 0.0;
  double high = container.height_mm;
  for (int step = 0; step < 60; ++step) {
    const double middle = 0.5 * (low + high);
    (ContainerVolumeMl(container, middle) < volume_ml ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

Estimate MixLnRatio(const Estimate& paint_ln_ratio,
                    const Estimate& medium_ln_ratio,
                    double medium_share) {
  FLOWKIN_CHECK(medium_share >= 0.0 && medium_share <= 1.0);
  const double paint_share = 1.0 - medium_share;
  // The rule is exact for either part alone.
  const double rule_sd = 4.0 * medium_share * paint_share * kMixingSd;
  return {
      paint_share * paint_ln_ratio.value + medium_share * medium_ln_ratio.value,
      std::sqrt(std::pow(paint_share * paint_ln_ratio.sd, 2) +
                std::pow(medium_share * medium_ln_ratio.sd, 2) +
                rule_sd * rule_sd)};
}

Estimate BatchChangeLnRatio(const Estimate& old_ln_ratio,
                            const Estimate& new_ln_ratio,
                            double medium_share) {
  FLOWKIN_CHECK(medium_share >= 0.0 && medium_share <= 1.0);
  const double change = new_ln_ratio.value - old_ln_ratio.value;
  const double rule_sd =
      kMixingSd * std::fabs(change) * medium_share * (1.0 - medium_share);
  return {medium_share * change,
          std::sqrt(std::pow(medium_share, 2) * (std::pow(old_ln_ratio.sd, 2) +
                                                 std::pow(new_ln_ratio.sd, 2)) +
                    rule_sd * rule_sd)};
}

}  // namespace flowkin
