#pragma once

#include <opencv2/core.hpp>

namespace flowkin::testing {

/// Decay rate (1/s) of a ripple of wavenumber `k_1_m` on a viscous layer:
/// s = (rho g + sigma k^2) / (2 mu k) (sinh 2q - 2q) / (cosh 2q + 1 + 2 q^2),
/// q = k h. After Orchard 1962 (Appl. Sci. Res. A 11; from memory, not
/// checked); no inertia, rigid bottom, small slopes.
double LevellingRate(double k_1_m,
                     double nu_mm2_s,
                     double rho_kg_m3,
                     double sigma_n_m,
                     double depth_mm);

struct LevellingReliefOptions {
  double nu_mm2_s = 2000.0;
  double rho_kg_m3 = 1200.0;
  double sigma_n_m = 0.0325;
  double depth_mm = 8.0;
  double field_mm = 100.0;  ///< side of the square, periodic field
  int cells = 192;          ///< a side
};

/// Height field over a pool: paint laid on it levels, each wavenumber at its
/// own rate.
class LevellingRelief {
 public:
  explicit LevellingRelief(const LevellingReliefOptions& options);
  /// Lays `volume_mm3` at (x, y) mm from the middle, a round bump of standard
  /// deviation `width_mm`.
  void Lay(double x_mm, double y_mm, double volume_mm3, double width_mm);
  /// Lets `dt_s` pass.
  void Level(double dt_s);
  /// Heights above the level pool, mm, CV_32F, row 0 at y = -field / 2.
  const cv::Mat& Heights() const { return height_; }
  /// Root mean square height about its mean within `radius_mm` of the middle.
  double RmsMm(double radius_mm) const;
  double CellMm() const { return o_.field_mm / o_.cells; }
  const LevellingReliefOptions& options() const { return o_; }

 private:
  LevellingReliefOptions o_;
  cv::Mat height_;
  cv::Mat rate_;  // 1/s for every cell of the full spectrum
  cv::Mat spectrum_, factor_;
  double factor_dt_ = -1.0;
};

}  // namespace flowkin::testing
