#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/estimate.h"

namespace flowkin {

enum class TestKind { kStream, kLevel, kPuddle };

/// "stream", "level" or "puddle".
const char* TestKindName(TestKind kind);

enum class Outcome { kMeasured, kRefused };

/// One number a test yields that moves with the kinematic viscosity as
/// value ~ nu^exponent when test, stick, volume and set-up stay the same.
/// Two cups are compared by the same proxy only: the difference of `ln_value`
/// over `exponent` is the logarithm of the viscosity ratio.
struct FlowProxy {
  std::string name;  ///< "break_time", "thinning_rate", ...
  double value = 0.0;
  std::string unit;
  /// Logarithm of the value; its sd is what this one clip's evidence leaves
  /// open (pixels, frames, fit), not how evenly a hand repeats.
  Estimate ln_value;
  /// d ln(value) / d ln(nu), with its own uncertainty.
  Estimate exponent;
  /// How far apart two paints of one viscosity lie in ln(value), one standard
  /// deviation: what density and surface tension do. All films of a paint share
  /// it, so repeats do not lessen it.
  double paint_sd = 0.0;
};

/// A sampled curve kept from a clip so that two clips can be laid over each
/// other (level test: relief against time; stream: width against time).
struct FlowCurve {
  std::string name;
  std::string unit;
  std::vector<double> t_s;  ///< since the test's own start event
  std::vector<double> value;
  std::vector<double> sd;
  /// Standard uncertainty of the ln of its whole time scale that its scatter
  /// does not show.
  double stretch_sd = 0.0;
};

/// Moments that a person read off the film, seconds of real time since its
/// first frame. Each stands in for what the test would have found itself.
struct EventsByHand {
  std::optional<double> lift_s, break_s, laid_s, start_s;
};

/// What one clip of one test gave.
struct FlowMeasurement {
  TestKind kind = TestKind::kStream;
  Outcome outcome = Outcome::kRefused;
  std::string reason;  ///< of a refusal: one sentence a painter understands
  std::optional<double> lift_s, break_s, laid_s, start_s;
  std::vector<double> drips_s;
  std::vector<FlowProxy> proxies;
  std::vector<FlowCurve> curves;
  /// Puddle with volume and scale only.
  std::optional<Estimate> ln_kinematic_viscosity_mm2_s;
  std::vector<std::string> warnings;
};

}  // namespace flowkin
