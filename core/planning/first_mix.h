#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/material.h"

namespace flowkin {

enum class PaintBody { kHeavy, kSoft, kFluid, kInk, kPowder };

/// "heavy", "soft", "fluid", "ink", "powder".
const char* PaintBodyName(PaintBody body);
std::optional<PaintBody> PaintBodyFromName(const std::string& name);

/// How much medium to one part of paint, before any water: common practice, no
/// source. `start` is the thick end, because medium can be added but not taken
/// out. For a powder the numbers are grams of powder to one of medium.
struct FirstMixRule {
  PaintBody body;
  Span parts;
  const char* remark;
};
const FirstMixRule& FirstMixFor(PaintBody body);

/// Volumes of paint and medium in any whole.
struct MixParts {
  double paint = 1.0;
  double medium = 0.0;
};

/// @param medium_parts  medium to one of paint by volume, >= 0; for a powder
///                      grams of powder to one of medium, > 0, or 0 for none
MixParts PartsByVolume(PaintBody body,
                       double medium_parts,
                       const Material& paint,
                       const Material& medium);

struct FirstMix {
  Portion paint;
  Portion medium;
  double volume_ml = 0.0;
  Material blend;
  /// Taken off before any water and kept for a rescue; part of volume_ml.
  double reserve_ml = 0.0;
};

/// Splits `volume_ml` (>= 0) of mix into paint and medium.
/// @param medium_parts  as in PartsByVolume
/// @param reserve_share  reserve over what is poured, 0 to 1
FirstMix MakeFirstMix(PaintBody body,
                      double medium_parts,
                      const Material& paint,
                      const Material& medium,
                      double volume_ml,
                      double reserve_share);

/// The highest water share of a cup that a reserve brings back to
/// `water_share`. Water over unthinned mix is q = w / (1 - w), and putting the
/// reserve r back divides it by 1 + r (derived).
/// @param water_share  of the whole cup, 0 to below 1
/// @param reserve_share  reserve over the unthinned mix in the cup, >= 0
double RescuableWaterShare(double water_share, double reserve_share);

}  // namespace flowkin
