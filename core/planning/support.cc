#include "core/planning/support.h"

#include <numbers>

namespace flowkin {
namespace {
constexpr double kMm2PerM2 = 1e6;
}  // namespace

double FaceAreaM2(const Support& support) {
  if (support.shape == SupportShape::kRound) {
    return std::numbers::pi / 4.0 * support.length_mm * support.length_mm /
           kMm2PerM2;
  }
  return support.length_mm * support.width_mm / kMm2PerM2;
}

double EdgeAreaM2(const Support& support) {
  if (!support.edges) return 0.0;
  const double around_mm = support.shape == SupportShape::kRound
                               ? std::numbers::pi * support.length_mm
                               : 2.0 * (support.length_mm + support.width_mm);
  return around_mm * support.depth_mm / kMm2PerM2;
}

}  // namespace flowkin
