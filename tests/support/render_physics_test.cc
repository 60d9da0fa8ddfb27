#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/render_puddle.h"
#include "tests/support/render_relief.h"

namespace flowkin::testing {
namespace {

// Huppert's law long after pouring; the constant 0.8939 is that of the
// similarity solution.
TEST(SpreadingPuddle, FollowsTheOneEighthLaw) {
  for (double volume : {2.0, 8.0}) {
    SpreadingPuddleOptions o;
    o.nu_mm2_s = 900.0;
    o.volume_ml = volume;
    o.pour_s = 0.3;
    const PuddleHistory run = RunPuddle(o, 20.0, 0.1);
    const double v = volume * 1e3;
    const double expected =
        0.8939 * std::pow(9810.0 * v * v * v * (20.0 - run.virtual_start_s) /
                              (3.0 * 900.0),
                          0.125);
    // The published agreement of a numerical run from a cylinder: 0.1 %; cells
    // of 0.1 mm add their own 0.1 %.
    EXPECT_NEAR(run.radius_mm.back() / expected, 1.0, 0.002);
    EXPECT_LT(std::abs(run.virtual_start_s), 1.0);
  }
}

TEST(SpreadingPuddle, KeepsItsVolume) {
  // A nozzle's rim that lies on a border of cells, and rims that cut one.
  for (const double nozzle_mm : {3.0, 2.23, 2.26, 4.17}) {
    SpreadingPuddleOptions o;
    o.volume_ml = 3.0;
    o.nozzle_radius_mm = nozzle_mm;
    SpreadingPuddle p(o);
    p.AdvanceTo(6.0);
    // Pouring ends within one step of 1 ms of 1.5 s.
    EXPECT_NEAR(p.VolumeMl(), 3.0, 0.003) << nozzle_mm;
  }
}

// The slump formula R = (225 rho g V^2 / (128 pi^2 tau))^(1/5).
TEST(SpreadingPuddle, YieldingPaintStops) {
  SpreadingPuddleOptions o;
  o.nu_mm2_s = 400.0;
  o.volume_ml = 5.0;
  o.yield_pa = 5.0;
  SpreadingPuddle p(o);
  p.AdvanceTo(60.0);
  const double v = 5e-6;
  const double stop =
      1e3 * std::pow(225.0 * o.rho_kg_m3 * 9.81 * v * v /
                         (128.0 * std::numbers::pi * std::numbers::pi * 5.0),
                     0.2);
  // It creeps to rest from below; after a minute within a few per cent.
  EXPECT_NEAR(p.RadiusMm() / stop, 1.0, 0.06);
}

// Direct Stokes solutions for mu 1 Pa.s, wavelength 20 mm, rho 1100 kg/m3,
// sigma 0.035 N/m: depth 50/5/2/0.5 mm.
TEST(LevellingRelief, RateMatchesStokesSolutions) {
  const double k = 2.0 * std::numbers::pi / 0.020;
  const struct {
    double depth_mm, rate;
  } cases[] = {{50, 22.6722}, {5, 10.8753}, {2, 2.19951}, {0.5, 0.056092}};
  for (const auto& c : cases) {
    EXPECT_NEAR(
        LevellingRate(k, 1e6 / 1100.0, 1100.0, 0.035, c.depth_mm) / c.rate,
        1.0,
        1e-5)  // six digits are given
        << c.depth_mm;
  }
}

// Every wavenumber by itself: a single ripple decays at its own rate.
TEST(LevellingRelief, RippleDecaysAtItsRate) {
  LevellingReliefOptions o;
  LevellingRelief relief(o);
  cv::Mat h = relief.Heights();
  const int waves = 7;
  for (int y = 0; y < o.cells; ++y) {
    for (int x = 0; x < o.cells; ++x) {
      h.at<float>(y, x) = static_cast<float>(
          std::cos(2.0 * std::numbers::pi * waves * x / o.cells));
    }
  }
  const double before = relief.RmsMm(40.0);
  for (int i = 0; i < 10; ++i) relief.Level(0.01);
  const double k = 2.0 * std::numbers::pi * waves / 0.1;
  const double rate =
      LevellingRate(k, o.nu_mm2_s, o.rho_kg_m3, o.sigma_n_m, o.depth_mm);
  // Single-precision transforms, ten of them.
  EXPECT_NEAR(std::log(before / relief.RmsMm(40.0)) / (0.1 * rate), 1.0, 1e-4);
}

}  // namespace
}  // namespace flowkin::testing
