#include "tests/support/render_puddle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace flowkin::testing {
namespace {
constexpr double kGravityMm = 9810.0;  // mm/s2
constexpr double kCellMm = 0.1;
constexpr double kStepS = 1e-3;
}  // namespace

SpreadingPuddle::SpreadingPuddle(const SpreadingPuddleOptions& options)
    : o_(options), dr_(kCellMm) {
  const auto n = static_cast<std::size_t>(o_.largest_radius_mm / dr_);
  h_.assign(n, 0.0);
  lower_.resize(n);
  diag_.resize(n);
  upper_.resize(n);
  face_.resize(n + 1);
}

void SpreadingPuddle::Step(double dt) {
  const std::size_t n = h_.size();
  // Only as far as the front can get in one step.
  std::size_t m = n;
  while (m > 1 && h_[m - 1] <= 0.0) --m;
  m = std::min(n, m + 3);
  m = std::max(
      m, std::min(n, static_cast<std::size_t>(o_.nozzle_radius_mm / dr_) + 3));
  const double c = kGravityMm / (3.0 * o_.nu_mm2_s);
  face_[0] = 0.0;
  for (std::size_t i = 1; i < m; ++i) {
    const double a = h_[i - 1], b = h_[i];
    double mobility = 0.5 * (a * a * a + b * b * b);
    if (o_.yield_pa > 0.0) {
      // Bingham layer: the flow is (1 - s)^2 (1 + s/2) of the Newtonian one,
      // s = yield stress over the stress at the bottom.
      const double slope = std::abs(b - a) / dr_;
      const double stress = o_.rho_kg_m3 * 9.81 * 0.5 * (a + b) * 1e-3 * slope;
      const double s = stress > 0.0 ? std::min(1.0, o_.yield_pa / stress) : 1.0;
      mobility *= (1.0 - s) * (1.0 - s) * (1.0 + 0.5 * s);
    }
    face_[i] = c * mobility * static_cast<double>(i) * dr_ / dr_;
  }
  face_[m] = 0.0;
  const double nozzle = o_.nozzle_radius_mm;
  const double rate =
      o_.volume_ml * 1e3 / o_.pour_s / (std::numbers::pi * nozzle * nozzle);
  const double begun = o_.again_s >= 0.0 && t_ >= o_.again_s ? o_.again_s : 0.0;
  const double share = std::clamp((begun + o_.pour_s - t_) / dt, 0.0, 1.0);
  for (std::size_t i = 0; i < m; ++i) {
    const double r = (static_cast<double>(i) + 0.5) * dr_;
    const double w = dt / (r * dr_);
    lower_[i] = -w * face_[i];
    upper_[i] = -w * face_[i + 1];
    diag_[i] = 1.0 - lower_[i] - upper_[i];
    // The nozzle's rim cuts a cell.
    const double begin = static_cast<double>(i) * dr_;
    const double under = std::clamp(
        (nozzle * nozzle - begin * begin) / (2.0 * r * dr_), 0.0, 1.0);
    h_[i] += rate * share * under * dt;
  }
  for (std::size_t i = 1; i < m; ++i) {
    const double w = lower_[i] / diag_[i - 1];
    diag_[i] -= w * upper_[i - 1];
    h_[i] -= w * h_[i - 1];
  }
  h_[m - 1] /= diag_[m - 1];
  for (std::size_t i = m - 1; i-- > 0;) {
    h_[i] = (h_[i] - upper_[i] * h_[i + 1]) / diag_[i];
  }
  t_ += dt;
}

void SpreadingPuddle::AdvanceTo(double t_s) {
  while (t_ < t_s - 1e-9) Step(std::min(kStepS, t_s - t_));
}

double SpreadingPuddle::RadiusMm() const {
  // Near the front h^3 falls linearly to zero: extend the line through two
  // cells that stand well clear of the last, half-filled ones.
  std::size_t last = h_.size();
  constexpr double kWet = 1e-3;
  while (last > 0 && h_[last - 1] < kWet) --last;
  if (last == 0) return 0.0;
  if (last < 14) return static_cast<double>(last) * dr_;
  auto cube = [&](std::size_t i) { return h_[i] * h_[i] * h_[i]; };
  const std::size_t b = last - 4, a = last - 12;
  const double slope = (cube(b) - cube(a)) / (8.0 * dr_);
  const double rb = (static_cast<double>(b) + 0.5) * dr_;
  if (slope >= 0.0) return static_cast<double>(last) * dr_;
  return std::min(rb - cube(b) / slope, static_cast<double>(last + 2) * dr_);
}

double SpreadingPuddle::HeightMm(double r_mm) const {
  const double at = r_mm / dr_ - 0.5;
  if (at <= 0.0) return h_[0];
  const auto i = static_cast<std::size_t>(at);
  if (i + 1 >= h_.size()) return 0.0;
  const double f = at - static_cast<double>(i);
  return (1.0 - f) * h_[i] + f * h_[i + 1];
}

double SpreadingPuddle::VolumeMl() const {
  double v = 0.0;
  for (std::size_t i = 0; i < h_.size(); ++i) {
    v += 2.0 * std::numbers::pi * (static_cast<double>(i) + 0.5) * dr_ * dr_ *
         h_[i];
  }
  return v * 1e-3;
}

PuddleHistory RunPuddle(const SpreadingPuddleOptions& options,
                        double duration_s,
                        double step_s) {
  SpreadingPuddle p(options);
  PuddleHistory out;
  for (double t = step_s; t <= duration_s; t += step_s) {
    p.AdvanceTo(t);
    out.t_s.push_back(t);
    out.radius_mm.push_back(p.RadiusMm());
  }
  double n = 0, st = 0, sy = 0, stt = 0, sty = 0;
  for (std::size_t i = out.t_s.size() / 2; i < out.t_s.size(); ++i) {
    const double y = std::pow(out.radius_mm[i] / out.radius_mm.back(), 8.0);
    n += 1;
    st += out.t_s[i];
    sy += y;
    stt += out.t_s[i] * out.t_s[i];
    sty += out.t_s[i] * y;
  }
  const double det = n * stt - st * st;
  if (det > 0.0) {
    const double slope = (n * sty - st * sy) / det;
    out.virtual_start_s = (st - sy / slope) / n;
  }
  return out;
}

}  // namespace flowkin::testing
