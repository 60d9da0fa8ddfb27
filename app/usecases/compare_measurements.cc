#include "app/usecases/compare_measurements.h"

#include <cmath>
#include <optional>
#include <utility>
#include <vector>

#include "core/flow/level_test.h"

namespace flowkin {
namespace {

/// Paints differ in density and surface tension. A ribbon's clock goes as
/// mu rho^-a sigma^-(1-a) with a = 0.69 to 0.91 for ribbons 2 to 5 mm wide
/// (elasticities of the levelling law on a deep pool), so the kinematic ratio
/// is off by (1 - a) of what they differ by: 8 % in density, 4 % in tension
/// (common practice, no source) and a = 0.7.
constexpr double kOtherPaintRelSd = 0.027;

/// Relief decays compare best when all of them are laid over one shape. Empty
/// when a curve cannot be laid over the others; each clip's own decay time
/// then has to do.
std::optional<ClipScalars> LevelClocks(
    std::span<const FlowMeasurement> reference,
    std::span<const FlowMeasurement> cup) {
  std::vector<FlowCurve> curves;
  const auto collect = [&](std::span<const FlowMeasurement> side) {
    std::size_t count = 0;
    for (const FlowMeasurement& measurement : side) {
      if (measurement.kind != TestKind::kLevel) continue;
      ++count;
      for (const FlowCurve& curve : measurement.curves) {
        if (curve.name == "relief") curves.push_back(curve);
      }
    }
    return count;
  };
  const std::size_t of_reference = collect(reference);
  const std::size_t of_cup = collect(cup);
  if (of_reference == 0 || of_cup == 0 ||
      curves.size() != of_reference + of_cup) {
    return std::nullopt;
  }
  const DecayAlignment alignment = AlignDecays(curves);
  ClipScalars clocks;
  clocks.kind = TestKind::kLevel;
  clocks.name = "decay_time";
  for (std::size_t i = 0; i < alignment.ln_clock.size(); ++i) {
    const Estimate& ln_clock = alignment.ln_clock[i];
    if (!std::isfinite(ln_clock.value) || !std::isfinite(ln_clock.sd)) {
      return std::nullopt;
    }
    if (i < of_reference) {
      clocks.ln_reference.push_back(ln_clock);
    } else {
      clocks.ln_cup.push_back(ln_clock);
      // Common to all films of the cup, so they must not average it out.
      clocks.ln_cup.back().sd =
          std::hypot(ln_clock.sd,
                     kOtherPaintRelSd * std::sqrt(static_cast<double>(of_cup)));
    }
  }
  return clocks;
}

}  // namespace

Comparison CompareMeasurements(std::span<const FlowMeasurement> reference,
                               std::span<const FlowMeasurement> cup,
                               const CompareOptions& options) {
  std::vector<ClipScalars> joint;
  if (auto clocks = LevelClocks(reference, cup)) {
    joint.push_back(std::move(*clocks));
  }
  return CompareToBaseCoat(reference, cup, options, joint);
}

}  // namespace flowkin
