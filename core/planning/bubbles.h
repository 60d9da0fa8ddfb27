#pragma once

namespace flowkin {

/// Rising speed of a small bubble, d^2 g rho / (18 mu), mm/s: Stokes' law for a
/// sphere whose surface does not give (G. G. Stokes, 1851, from memory;
/// re-derived in the tests from the drag 3 pi mu d v), as surface-active matter
/// makes it in paint. A clean bubble would rise half as fast again. Holds while
/// v d rho / mu < 1. All > 0; the weight of the air is left out.
double BubbleRiseMmPerS(double diameter_mm,
                        double mu_pa_s,
                        double density_g_per_ml);

/// Time for that bubble to come up from `depth_mm`, seconds. All > 0. A paint
/// that stands still may hold small bubbles for good; this is the least time.
double RestTimeS(double depth_mm,
                 double diameter_mm,
                 double mu_pa_s,
                 double density_g_per_ml);

}  // namespace flowkin
