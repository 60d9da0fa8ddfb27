#include "core/planning/first_mix.h"

#include <algorithm>
#include <iterator>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr FirstMixRule kRules[] = {
    {PaintBody::kHeavy,
     {2.0, 2.0, 2.5},
     "Loosen it with a little medium first, press out the lumps, then add the "
     "rest."},
    {PaintBody::kSoft,
     {1.0, 1.0, 2.0},
     "Stir a little of the medium in first, then the rest."},
    {PaintBody::kFluid, {0.5, 0.5, 1.0}, "May need no water at all."},
    {PaintBody::kInk,
     {0.25, 0.25, 0.5},
     "Often too thin already: mix it into a thicker paint instead."},
    {PaintBody::kPowder,
     {0.01, 0.03, 0.05},
     "Wet it to a paste first and raise no dust; it settles, so stir before "
     "every test, and its sparkle can mislead the camera."},
};

}  // namespace

const char* PaintBodyName(PaintBody body) {
  switch (body) {
    case PaintBody::kHeavy:
      return "heavy";
    case PaintBody::kSoft:
      return "soft";
    case PaintBody::kFluid:
      return "fluid";
    case PaintBody::kInk:
      return "ink";
    case PaintBody::kPowder:
      return "powder";
  }
  return "";
}

std::optional<PaintBody> PaintBodyFromName(const std::string& name) {
  for (const FirstMixRule& rule : kRules) {
    if (name == PaintBodyName(rule.body)) return rule.body;
  }
  return std::nullopt;
}

const FirstMixRule& FirstMixFor(PaintBody body) {
  return *std::find_if(
      std::begin(kRules), std::end(kRules), [body](const FirstMixRule& rule) {
        return rule.body == body;
      });
}

MixParts PartsByVolume(PaintBody body,
                       double medium_parts,
                       const Material& paint,
                       const Material& medium) {
  FLOWKIN_CHECK(medium_parts >= 0.0);
  if (body != PaintBody::kPowder || medium_parts == 0.0) {
    return {1.0, medium_parts};
  }
  return {medium_parts * medium.density_g_per_ml / paint.density_g_per_ml, 1.0};
}

FirstMix MakeFirstMix(PaintBody body,
                      double medium_parts,
                      const Material& paint,
                      const Material& medium,
                      double volume_ml,
                      double reserve_share) {
  FLOWKIN_CHECK(volume_ml >= 0.0);
  FLOWKIN_CHECK(reserve_share >= 0.0 && reserve_share <= 1.0);
  const MixParts parts = PartsByVolume(body, medium_parts, paint, medium);
  const double all = parts.paint + parts.medium;
  FirstMix mix;
  mix.volume_ml = volume_ml;
  mix.paint = {volume_ml * parts.paint / all, paint};
  mix.medium = {volume_ml * parts.medium / all, medium};
  mix.blend = Blend({{parts.paint, paint}, {parts.medium, medium}});
  mix.reserve_ml = volume_ml * reserve_share / (1.0 + reserve_share);
  return mix;
}

double RescuableWaterShare(double water_share, double reserve_share) {
  FLOWKIN_CHECK(water_share >= 0.0 && water_share < 1.0);
  FLOWKIN_CHECK(reserve_share >= 0.0);
  const double rescuable =
      water_share / (1.0 - water_share) * (1.0 + reserve_share);
  return rescuable / (1.0 + rescuable);
}

}  // namespace flowkin
