#pragma once

namespace flowkin::test {

/// Flow cup of ASTM D4212 or ASTM D1200: nu = slope (t - offset).
struct LinearCup {
  double slope_mm2_per_s2, offset_s;
  double ViscosityMm2PerS(double t_s) const {
    return slope_mm2_per_s2 * (t_s - offset_s);
  }
  /// d ln t / d ln nu.
  double Exponent(double t_s) const { return (t_s - offset_s) / t_s; }
};

/// Flow cup of ISO 2431: nu = slope t - loss / t.
struct InverseCup {
  double slope_mm2_per_s2, loss_mm2;
  double ViscosityMm2PerS(double t_s) const {
    return slope_mm2_per_s2 * t_s - loss_mm2 / t_s;
  }
  double Exponent(double t_s) const {
    const double a = slope_mm2_per_s2 * t_s, b = loss_mm2 / t_s;
    return (a - b) / (a + b);
  }
};

}  // namespace flowkin::test
