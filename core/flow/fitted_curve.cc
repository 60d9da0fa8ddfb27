#include "core/flow/fitted_curve.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/base/check.h"
#include "core/fit/least_squares.h"
#include "core/track/relief_track.h"

namespace flowkin {
namespace {

constexpr int kPoints = 60;

template <typename Law>
void Draw(double from_s, double to_s, const Law& law, FlowCurve* fit) {
  for (int i = 0; i <= kPoints; ++i) {
    const double t_s = from_s + (to_s - from_s) * i / kPoints;
    fit->t_s.push_back(t_s);
    fit->value.push_back(law(t_s));
  }
}

/// The relief counts from the picture that was taken for flat, which shifts it
/// by a little: level and shift are both taken from the curve.
void FitFading(const FlowCurve& curve, double clock_s, FlowCurve* fit) {
  std::vector<double> x;
  std::vector<double> y;
  for (std::size_t i = 0; i < curve.t_s.size(); ++i) {
    if (curve.t_s[i] < kDecayFrom * clock_s ||
        curve.t_s[i] > kDecayTo * clock_s) {
      continue;
    }
    x.push_back(std::exp(-curve.t_s[i] / clock_s));
    y.push_back(curve.value[i]);
  }
  if (x.size() < 3) return;
  const FitResult line = FitLine(x, y);
  if (!line.IsUsable()) return;
  Draw(
      kDecayFrom * clock_s,
      kDecayTo * clock_s,
      [&](double t_s) {
        return line.parameters[0] +
               line.parameters[1] * std::exp(-t_s / clock_s);
      },
      fit);
}

void FitSpreading(const FlowCurve& curve, double rate, FlowCurve* fit) {
  // The law holds late; what came before it stays in the offset.
  const std::size_t from = curve.t_s.size() / 2;
  const auto n = static_cast<double>(curve.t_s.size() - from);
  double offset = 0.0;
  for (std::size_t i = from; i < curve.t_s.size(); ++i) {
    offset += (std::pow(curve.value[i], 8.0) - rate * curve.t_s[i]) / n;
  }
  Draw(
      curve.t_s[from],
      curve.t_s.back(),
      [&](double t_s) {
        return std::pow(std::max(0.0, offset + rate * t_s), 0.125);
      },
      fit);
}

}  // namespace

FlowCurve FittedCurve(const FlowMeasurement& measurement) {
  FlowCurve fit;
  if (measurement.curves.empty() || measurement.proxies.empty()) return fit;
  const FlowCurve& curve = measurement.curves.front();
  if (curve.t_s.size() < 3 || curve.value.size() != curve.t_s.size()) {
    return fit;
  }
  fit.name = curve.name;
  fit.unit = curve.unit;
  const double proxy = measurement.proxies.front().value;
  switch (measurement.kind) {
    case TestKind::kStream:
      fit.t_s = {proxy, proxy};
      fit.value = {0.0, 1.0};
      return fit;
    case TestKind::kLevel:
      FitFading(curve, proxy, &fit);
      return fit;
    case TestKind::kPuddle:
      FitSpreading(curve, proxy, &fit);
      return fit;
  }
  FLOWKIN_CHECK(false);
}

}  // namespace flowkin
