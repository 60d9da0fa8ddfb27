#pragma once

#include <vector>

namespace flowkin::testing {

struct SpreadingPuddleOptions {
  double nu_mm2_s = 600.0;
  double volume_ml = 5.0;
  double pour_s = 1.5;            ///< volume arrives at a steady rate
  double nozzle_radius_mm = 3.0;  ///< of the disc it arrives on
  /// As much again arrives from this time on (< 0: never).
  double again_s = -1.0;
  /// Paint with a yield stress (Pa) slows and stops; 0 is Newtonian.
  double yield_pa = 0.0;
  double rho_kg_m3 = 1200.0;
  double largest_radius_mm = 80.0;
};

/// Paint poured on a level tile: numerical solution of the radial viscous
/// gravity current h_t = (g / 3 nu) r^-1 (r h^3 h_r)_r + source on a fixed
/// grid (finite volumes, implicit in h, mobility lagged). Long after pouring
/// it follows Huppert 1982 (J. Fluid Mech. 121; from memory, not checked),
/// R = 0.8939 (g V^3 t / (3 nu))^(1/8); the test holds it to that.
class SpreadingPuddle {
 public:
  explicit SpreadingPuddle(const SpreadingPuddleOptions& options);
  /// Time 0 is the first paint on the tile.
  void AdvanceTo(double t_s);
  double time_s() const { return t_; }
  double RadiusMm() const;
  double HeightMm(double r_mm) const;
  double VolumeMl() const;

 private:
  void Step(double dt);

  SpreadingPuddleOptions o_;
  double t_ = 0.0;
  double dr_;              // mm
  std::vector<double> h_;  // mm, cell centres (i + 1/2) dr
  std::vector<double> lower_, diag_, upper_, face_;
};

/// Radius against time and the origin of its one-eighth power law.
struct PuddleHistory {
  std::vector<double> t_s, radius_mm;
  /// Where R^8 against t, over the later half, meets zero.
  double virtual_start_s = 0.0;
};
PuddleHistory RunPuddle(const SpreadingPuddleOptions& options,
                        double duration_s,
                        double step_s);

}  // namespace flowkin::testing
