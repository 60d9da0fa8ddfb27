#include "tests/fuzz/measure_all.h"

#include <cmath>
#include <memory>
#include <optional>
#include <sstream>

#include "app/usecases/measure_clip.h"
#include "core/video/file_frame_source.h"

namespace flowkin::testing_support {
namespace {

bool IsSound(const Estimate& estimate) {
  return std::isfinite(estimate.value) && std::isfinite(estimate.sd) &&
         estimate.sd >= 0.0;
}

std::string Broken(const FlowMeasurement& measured, double duration_s) {
  if (measured.outcome == Outcome::kRefused && measured.reason.empty()) {
    return "a refusal without a reason";
  }
  if (measured.outcome == Outcome::kMeasured && measured.proxies.empty() &&
      measured.curves.empty()) {
    return "measured, but nothing";
  }
  const std::optional<double> events[] = {
      measured.lift_s, measured.break_s, measured.laid_s, measured.start_s};
  for (const std::optional<double>& event : events) {
    if (event && !(*event >= 0.0 && *event <= duration_s)) {
      return "an event at " + std::to_string(*event) + " of " +
             std::to_string(duration_s) + " s";
    }
  }
  for (const FlowProxy& proxy : measured.proxies) {
    if (!std::isfinite(proxy.value) || !IsSound(proxy.ln_value) ||
        !IsSound(proxy.exponent)) {
      return "the proxy " + proxy.name + " is not finite";
    }
  }
  for (const FlowCurve& curve : measured.curves) {
    if (curve.t_s.size() != curve.value.size() ||
        curve.t_s.size() != curve.sd.size()) {
      return "the curve " + curve.name + " has unequal columns";
    }
  }
  if (measured.ln_kinematic_viscosity_mm2_s &&
      !IsSound(*measured.ln_kinematic_viscosity_mm2_s)) {
    return "the viscosity is not finite";
  }
  return "";
}

}  // namespace

std::string MeasureAll(const std::uint8_t* data,
                       std::size_t size,
                       TestKind kind,
                       int threads) {
  FileFrameSourceOptions reader;
  reader.threads = threads;
  auto source = OpenClipFromMemory(data, size, "clip", reader);
  if (!source) return "refused";
  ClipTestOptions options;
  options.kind = kind;
  if (kind == TestKind::kPuddle) options.volume_ml = 1.0;
  const auto test = MakeClipTest(options);
  const auto result = MeasureFrames(**source, *test);
  if (!result) return "error in the middle: " + result.error().message;
  const std::string broken =
      Broken(result->measurement, result->info.duration_s);
  if (!broken.empty()) return broken;
  std::ostringstream trace;
  test->WriteTrace(trace);
  if (trace.str().find("nan") != std::string::npos) return "nan in the trace";
  return result->measurement.outcome == Outcome::kMeasured ? "measured"
                                                           : "refused";
}

}  // namespace flowkin::testing_support
