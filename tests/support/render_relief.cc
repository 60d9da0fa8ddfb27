#include "tests/support/render_relief.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace flowkin::testing {

double LevellingRate(
    double k, double nu_mm2_s, double rho, double sigma, double depth_mm) {
  if (k <= 0.0) return 0.0;
  const double mu = nu_mm2_s * 1e-6 * rho;
  const double q = k * depth_mm * 1e-3;
  const double deep = (rho * 9.81 + sigma * k * k) / (2.0 * mu * k);
  if (q > 15.0) return deep;
  if (q < 0.02) {
    // Both differences vanish; leading term of the depth factor.
    return deep * (2.0 / 3.0) * q * q * q;
  }
  return deep * (std::sinh(2 * q) - 2 * q) /
         (std::cosh(2 * q) + 1.0 + 2.0 * q * q);
}

LevellingRelief::LevellingRelief(const LevellingReliefOptions& options)
    : o_(options) {
  const int n = o_.cells;
  height_ = cv::Mat::zeros(n, n, CV_32F);
  rate_.create(n, n, CV_32F);
  for (int y = 0; y < n; ++y) {
    for (int x = 0; x < n; ++x) {
      const int fx = x <= n / 2 ? x : x - n, fy = y <= n / 2 ? y : y - n;
      const double k =
          2.0 * std::numbers::pi * std::hypot(fx, fy) / (o_.field_mm * 1e-3);
      rate_.at<float>(y, x) = static_cast<float>(LevellingRate(
          k, o_.nu_mm2_s, o_.rho_kg_m3, o_.sigma_n_m, o_.depth_mm));
    }
  }
}

void LevellingRelief::Lay(double x_mm,
                          double y_mm,
                          double volume_mm3,
                          double width_mm) {
  const double cell = CellMm();
  const double peak =
      volume_mm3 / (2.0 * std::numbers::pi * width_mm * width_mm);
  const int reach = static_cast<int>(std::ceil(4.0 * width_mm / cell));
  const double cx = (x_mm + 0.5 * o_.field_mm) / cell - 0.5;
  const double cy = (y_mm + 0.5 * o_.field_mm) / cell - 0.5;
  const int n = o_.cells;
  for (int y = static_cast<int>(cy) - reach; y <= static_cast<int>(cy) + reach;
       ++y) {
    if (y < 0 || y >= n) continue;
    for (int x = static_cast<int>(cx) - reach;
         x <= static_cast<int>(cx) + reach;
         ++x) {
      if (x < 0 || x >= n) continue;
      const double d2 =
          ((x - cx) * (x - cx) + (y - cy) * (y - cy)) * cell * cell;
      height_.at<float>(y, x) += static_cast<float>(
          peak * std::exp(-0.5 * d2 / (width_mm * width_mm)));
    }
  }
}

void LevellingRelief::Level(double dt_s) {
  if (factor_dt_ != dt_s) {
    cv::Mat real;
    cv::exp(rate_ * (-dt_s), real);
    cv::Mat both[2] = {real, real};
    cv::merge(both, 2, factor_);
    factor_dt_ = dt_s;
  }
  cv::dft(height_, spectrum_, cv::DFT_COMPLEX_OUTPUT);
  cv::multiply(spectrum_, factor_, spectrum_);
  cv::dft(spectrum_,
          height_,
          cv::DFT_INVERSE | cv::DFT_REAL_OUTPUT | cv::DFT_SCALE);
}

double LevellingRelief::RmsMm(double radius_mm) const {
  double n = 0, sum = 0, squares = 0;
  const double cell = CellMm();
  for (int y = 0; y < o_.cells; ++y) {
    for (int x = 0; x < o_.cells; ++x) {
      const double dx = (x + 0.5) * cell - 0.5 * o_.field_mm;
      const double dy = (y + 0.5) * cell - 0.5 * o_.field_mm;
      if (dx * dx + dy * dy > radius_mm * radius_mm) continue;
      const double h = static_cast<double>(height_.at<float>(y, x));
      n += 1;
      sum += h;
      squares += h * h;
    }
  }
  const double mean = sum / n;
  return std::sqrt(std::max(0.0, squares / n - mean * mean));
}

}  // namespace flowkin::testing
