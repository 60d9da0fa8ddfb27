#include "core/planning/bubbles.h"

#include "core/base/check.h"

namespace flowkin {

double BubbleRiseMmPerS(double diameter_mm,
                        double mu_pa_s,
                        double density_g_per_ml) {
  FLOWKIN_CHECK(diameter_mm > 0.0 && mu_pa_s > 0.0 && density_g_per_ml > 0.0);
  constexpr double kGravityMPerS2 = 9.81;
  const double diameter_m = 1e-3 * diameter_mm;
  const double density_kg_per_m3 = 1e3 * density_g_per_ml;
  return 1e3 * diameter_m * diameter_m * kGravityMPerS2 * density_kg_per_m3 /
         (18.0 * mu_pa_s);
}

double RestTimeS(double depth_mm,
                 double diameter_mm,
                 double mu_pa_s,
                 double density_g_per_ml) {
  FLOWKIN_CHECK(depth_mm > 0.0);
  return depth_mm / BubbleRiseMmPerS(diameter_mm, mu_pa_s, density_g_per_ml);
}

}  // namespace flowkin
