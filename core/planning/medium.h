#pragma once

#include "core/base/estimate.h"
#include "core/base/result.h"
#include "core/planning/material.h"

namespace flowkin {

enum class PartsBy { kVolume, kWeight };

/// Pouring medium: so many parts of paint base to one or more of varnish. 4:1
/// and 3:1 by volume are both in use (common practice, no source); it matters
/// little which.
struct MediumRecipe {
  double base_parts = 4.0;     ///< > 0
  double varnish_parts = 1.0;  ///< >= 0
  PartsBy by = PartsBy::kVolume;
  Material base = kWallPaint;
  Material varnish = kClearVarnish;
};

struct MediumBatch {
  Portion base;
  Portion varnish;
  Material blend;
  double volume_ml = 0.0;
  double mass_g = 0.0;
  /// Base to one part of varnish, by both ways of measuring; infinite without
  /// varnish.
  double parts_by_volume = 0.0;
  double parts_by_weight = 0.0;
};

Result<void> Validate(const MediumRecipe& recipe);

/// A batch of `volume_ml` (>= 0), volumes and weights by mass balance.
MediumBatch MakeMedium(const MediumRecipe& recipe, double volume_ml);

/// A cup with straight or evenly tapered walls.
struct Container {
  double bottom_diameter_mm = 0.0;  ///< inside, 5 to 2000
  double top_diameter_mm = 0.0;     ///< inside, 5 to 2000
  double height_mm = 0.0;           ///< inside, 5 to 2000
};

Result<void> Validate(const Container& container);

/// Volume of a cone cut off, filled to `fill_mm` (0 to its height).
double ContainerVolumeMl(const Container& container, double fill_mm);

/// The height that holds `volume_ml`, 0 to what it holds full.
double FillHeightMm(const Container& container, double volume_ml);

/// How many times as thick as the base coat a first mix is, from its two parts:
/// their logarithms mix by volume (Arrhenius, 1887, from memory), which is only
/// rough for paints; `Estimate::sd` holds an own guess of 0.3 for that.
/// @param paint_ln_ratio, medium_ln_ratio  ln of the ratios to the base coat
/// @param medium_share  volume of medium in the mix, 0 to 1
/// @return ln of the mix's ratio
Estimate MixLnRatio(const Estimate& paint_ln_ratio,
                    const Estimate& medium_ln_ratio,
                    double medium_share);

/// ln of the factor by which the same first mix changes when a batch with
/// another flow replaces the last one; the paint's own flow cancels.
Estimate BatchChangeLnRatio(const Estimate& old_ln_ratio,
                            const Estimate& new_ln_ratio,
                            double medium_share);

}  // namespace flowkin
