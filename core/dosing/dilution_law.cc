#include "core/dosing/dilution_law.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace flowkin {
namespace {

// Below this c x the logarithmic form loses digits and is a straight line.
constexpr double kStraight = 1e-7;

double BlendPull(const DilutionLaw& law, double u) {
  const double share = -std::expm1(-u);
  return share - law.second * share * (1.0 - share);
}

}  // namespace

double LevelAfter(const DilutionLaw& law, double start_level, double u) {
  if (law.kind == DilutionLaw::Kind::kBlend) {
    const double pull = BlendPull(law, u);
    return (1.0 - pull) * start_level + pull * law.first;
  }
  const double c = law.second;
  if (c < kStraight) return start_level - law.first * u;
  return start_level -
         std::log1p(c * law.first * u * std::exp(c * start_level)) / c;
}

double LevelSensitivity(const DilutionLaw& law, double start_level, double u) {
  if (law.kind == DilutionLaw::Kind::kBlend) return 1.0 - BlendPull(law, u);
  const double c = law.second;
  return 1.0 / (1.0 + c * law.first * u * std::exp(c * start_level));
}

double StartLevelFor(const DilutionLaw& law, double level, double u) {
  if (law.kind == DilutionLaw::Kind::kBlend) {
    const double pull = BlendPull(law, u);
    return (level - pull * law.first) / (1.0 - pull);
  }
  const double c = law.second;
  if (c < kStraight) return level + law.first * u;
  const double left = -c * law.first * u * std::exp(c * level);
  if (left <= -1.0) return std::numeric_limits<double>::infinity();
  return level - std::log1p(left) / c;
}

}  // namespace flowkin
