#include "core/planning/film.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "core/planning/bubbles.h"
#include "core/planning/support.h"
#include "core/planning/units.h"

namespace flowkin {
namespace {

// NIST SP 811 (2008), appendix B.9, lists them to seven digits.
constexpr double kSevenDigits = 5e-7;

TEST(Units, AgreeWithTheFactorsOfNistSp811) {
  EXPECT_EQ(kMmPerInch, 25.4);
  EXPECT_EQ(kMmPerFoot, 304.8);
  EXPECT_NEAR(kMlPerUsFluidOunce / 29.57353, 1.0, kSevenDigits);
  EXPECT_NEAR(kMlPerUsGallon / 3785.412, 1.0, kSevenDigits);
  EXPECT_NEAR(kGramsPerOunce / 28.34952, 1.0, kSevenDigits);
  EXPECT_EQ(kGramsPerPound, 453.59237);
  EXPECT_DOUBLE_EQ(CelsiusFromFahrenheit(212.0), 100.0);
  EXPECT_DOUBLE_EQ(CelsiusFromFahrenheit(-40.0), -40.0);
}

// The rules of thumb in US units, converted by hand (common practice, no
// source): one fluid ounce on 25 square inches is 1830 mL on a square metre.
TEST(Units, TurnRulesOfThumbIntoThickness) {
  const double ml_per_m2 =
      kMlPerUsFluidOunce / (25.0 * kMmPerInch * kMmPerInch * 1e-6);
  constexpr double kRoundedInTheTable = 5.0;
  EXPECT_NEAR(ml_per_m2, 1830.0, kRoundedInTheTable);
}

TEST(Support, SideFacesAddWhatTheyAreKnownToAdd) {
  struct Case {
    double length_mm, width_mm, depth_mm, added;
  };
  // Worked by hand from the perimeter: 20 x 20 x 1.8 cm adds 36 %, and so on.
  for (const Case& c : {Case{200, 200, 18, 0.36},
                        Case{300, 400, 18, 0.21},
                        Case{400, 500, 38, 0.342},
                        Case{600, 900, 38, 0.2111}}) {
    const Support support{
        SupportShape::kRectangle, c.length_mm, c.width_mm, c.depth_mm};
    constexpr double kRounding = 5e-4;
    EXPECT_NEAR(EdgeAreaM2(support) / FaceAreaM2(support), c.added, kRounding);
  }
  const Support round{SupportShape::kRound, 300.0, 0.0, 20.0};
  EXPECT_DOUBLE_EQ(FaceAreaM2(round), std::numbers::pi * 0.15 * 0.15);
  EXPECT_DOUBLE_EQ(EdgeAreaM2(round), std::numbers::pi * 0.3 * 0.02);
  Support bare = round;
  bare.edges = false;
  EXPECT_EQ(EdgeAreaM2(bare), 0.0);
}

/// Drains a film on a slope step by step, from mass balance and the flow of a
/// falling film alone: q = g sin(a) h^3 / (3 nu). First order, upwind.
std::vector<double> DrainStepwise(double start_mm,
                                  double nu_mm2_per_s,
                                  double length_mm,
                                  double tilt_deg,
                                  double until_s) {
  constexpr int kCells = 800;
  const double dx = length_mm / kCells;
  const double pull = 9810.0 * std::sin(tilt_deg * std::numbers::pi / 180.0) /
                      (3.0 * nu_mm2_per_s);
  std::vector<double> h(kCells, start_mm);
  for (double t = 0.0; t < until_s;) {
    double fastest = 0.0;
    for (const double thickness : h) {
      fastest = std::max(fastest, 3.0 * pull * thickness * thickness);
    }
    const double dt = std::min(0.8 * dx / fastest, until_s - t);
    double above = 0.0;  // nothing comes over the upper edge
    for (double& thickness : h) {
      const double below = pull * thickness * thickness * thickness;
      thickness += dt / dx * (above - below);
      above = below;
    }
    t += dt;
  }
  return h;
}

TEST(DrainedFilm, AgreesWithMassBalanceSolvedStepByStep) {
  constexpr double kNu = 1250.0, kLength = 300.0, kTilt = 15.0;
  for (const double time_s : {60.0, 120.0}) {
    const std::vector<double> h =
        DrainStepwise(4.0, kNu, kLength, kTilt, time_s);
    double mean = 0.0;
    for (const double thickness : h) mean += thickness;
    mean /= static_cast<double>(h.size());
    // The scheme is of first order with 800 cells.
    constexpr double kScheme = 0.01;
    EXPECT_NEAR(
        MeanDrainedFilmMm(kNu, kLength, kTilt, time_s) / mean, 1.0, kScheme);
    EXPECT_NEAR(
        DrainedFilmMm(kNu, kLength, kTilt, time_s) / h.back(), 1.0, kScheme);
  }
}

// Worked by hand for 1200 kg/m3, 0.3 m, 15 degrees.
TEST(DrainedFilm, AgreesWithWorkedNumbers) {
  struct Case {
    double mu_pa_s, time_s, film_mm;
  };
  for (const Case& c : {Case{0.5, 30, 1.281},
                        Case{1, 60, 1.281},
                        Case{2, 30, 2.562},
                        Case{5, 120, 2.025}}) {
    constexpr double kPrinted = 1e-3;
    EXPECT_NEAR(DrainedFilmMm(c.mu_pa_s / 1200.0 * 1e6, 300.0, 15.0, c.time_s),
                c.film_mm,
                kPrinted);
  }
}

TEST(FilmCheck, TellsWhatStaysFromWhatCannot) {
  const Span nu{420.0, 1250.0, 4200.0};
  const FilmCheck usual = CheckFilm(1.8, nu, 300.0, 15.0, 60.0);
  EXPECT_EQ(usual.verdict, FilmVerdict::kRunsOff);
  EXPECT_LE(usual.runs_off.low, usual.runs_off.start);
  EXPECT_LT(usual.runs_off.start, usual.runs_off.high);
  // "An eighth of an inch deep" is told, but does not stay on a slope.
  EXPECT_EQ(CheckFilm(6.4, nu, 300.0, 15.0, 60.0).verdict,
            FilmVerdict::kNotCredible);
  const FilmCheck thin = CheckFilm(0.3, nu, 300.0, 15.0, 60.0);
  EXPECT_EQ(thin.verdict, FilmVerdict::kStays);
  EXPECT_EQ(thin.runs_off.high, 0.0);
}

TEST(Bubbles, RiseAsDragBalancesBuoyancy) {
  constexpr double kDiameter = 0.5e-3, kMu = 2.0, kDensity = 1200.0;
  const double speed = 1e-3 * BubbleRiseMmPerS(0.5, kMu, 1.2);
  const double drag = 3.0 * std::numbers::pi * kMu * kDiameter * speed;
  const double lift =
      std::numbers::pi / 6.0 * std::pow(kDiameter, 3) * kDensity * 9.81;
  EXPECT_DOUBLE_EQ(drag, lift);
}

// Worked by hand for 1200 kg/m3 and 50 mm of paint, in minutes.
TEST(Bubbles, NeedTheWorkedTimes) {
  struct Case {
    double diameter_mm, mu_pa_s, minutes;
  };
  for (const Case& c : {Case{0.5, 2.0, 10.2},
                        Case{0.5, 5.0, 25.5},
                        Case{0.2, 2.0, 63.7},
                        Case{0.2, 5.0, 159.3}}) {
    constexpr double kPrinted = 0.05;
    EXPECT_NEAR(RestTimeS(50.0, c.diameter_mm, c.mu_pa_s, 1.2) / 60.0,
                c.minutes,
                kPrinted);
  }
}

}  // namespace
}  // namespace flowkin
