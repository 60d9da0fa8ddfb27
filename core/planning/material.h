#pragma once

#include <vector>

#include "core/base/result.h"

namespace flowkin {

/// How well a number is known.
enum class Source {
  kDerived,         ///< follows from the other numbers
  kCommonPractice,  ///< told by many, published by none
  kOwnGuess,        ///< ours, to begin with
  kArtist,          ///< given or measured by her
  kLearned,         ///< from her own earlier pours
};

/// "common practice", "own guess", ...
const char* SourceName(Source source);

/// A middle value and the span it is quoted in, low <= start <= high.
struct Span {
  double low = 0.0;
  double start = 0.0;
  double high = 0.0;
};

/// kInvalidArgument with `what` where it does not hold low <= start <= high
/// within `least` and a million.
Result<void> Validate(const Span& span, double least, const char* what);

struct Material {
  double density_g_per_ml = 1.0;  ///< in (0, 10]
  double volume_solids = 0.0;     ///< share of the volume that stays, 0 to 1
};

// Makers' sheets of interior semi-gloss paint name 1.25 to 1.40 g/mL and 37 to
// 41 %, of water-borne gloss varnish 1.02 to 1.03 and 25 %, of artists' acrylic
// 1.1 to 1.5 g/mL and 45 to 55 % water by weight: common practice, no source.
// The additive is an own guess, mica from memory. All can be given instead.
inline constexpr Material kWallPaint{1.30, 0.38};
inline constexpr Material kClearVarnish{1.02, 0.25};
inline constexpr Material kArtistPaint{1.25, 0.38};
inline constexpr Material kFlowAdditive{1.05, 0.25};
inline constexpr Material kPowderPigment{2.8, 1.0};
inline constexpr Material kPlainWater{0.9982,
                                      0.0};  // 20 degrees C, CRC Handbook

/// An amount of one material; volume_ml >= 0.
struct Portion {
  double volume_ml = 0.0;
  Material material;

  double mass_g() const { return volume_ml * material.density_g_per_ml; }
};

/// Mass balance: volumes and masses of the portions add up. No volume: the
/// first portion's material; `portions` holds at least one.
Material Blend(const std::vector<Portion>& portions);

}  // namespace flowkin
