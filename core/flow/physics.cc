#include "core/flow/physics.h"

#include <cmath>
#include <initializer_list>
#include <numbers>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kPi = std::numbers::pi;

bool Positive(std::initializer_list<double> values) {
  for (double v : values) {
    if (!(v > 0.0) || !std::isfinite(v)) return false;
  }
  return true;
}

/// sqrt(nu/g) z^(3/2), common to film, flow and volume.
double FilmFactor(double nu_m2_per_s, double z_m) {
  return std::sqrt(nu_m2_per_s / kGravityMPerS2) * z_m * std::sqrt(z_m);
}

}  // namespace

double DrainingFilmM(double nu_m2_per_s, double z_m, double t_s) {
  FLOWKIN_CHECK(Positive({nu_m2_per_s, z_m, t_s}));
  return std::sqrt(nu_m2_per_s * z_m / (kGravityMPerS2 * t_s));
}

double DrainingFlowM3PerS(double nu_m2_per_s,
                          double z_m,
                          double perimeter_m,
                          double t_s) {
  FLOWKIN_CHECK(Positive({nu_m2_per_s, z_m, perimeter_m, t_s}));
  return perimeter_m / 3.0 * FilmFactor(nu_m2_per_s, z_m) /
         (t_s * std::sqrt(t_s));
}

double DrainingVolumeM3(double nu_m2_per_s,
                        double z_m,
                        double perimeter_m,
                        double t_s) {
  FLOWKIN_CHECK(Positive({nu_m2_per_s, z_m, perimeter_m, t_s}));
  return 2.0 / 3.0 * perimeter_m * FilmFactor(nu_m2_per_s, z_m) /
         std::sqrt(t_s);
}

double StreamEndS(double nu_m2_per_s,
                  double z_m,
                  double perimeter_m,
                  double flow_m3_per_s) {
  FLOWKIN_CHECK(Positive({nu_m2_per_s, z_m, perimeter_m, flow_m3_per_s}));
  const double root =
      perimeter_m * FilmFactor(nu_m2_per_s, z_m) / (3.0 * flow_m3_per_s);
  return std::cbrt(root * root);
}

double NeckRadiusSpeedMPerS(double surface_tension_n_per_m, double mu_pa_s) {
  FLOWKIN_CHECK(Positive({surface_tension_n_per_m, mu_pa_s}));
  return kNeckFactor * surface_tension_n_per_m / mu_pa_s;
}

double OhnesorgeNumber(double mu_pa_s,
                       double rho_kg_per_m3,
                       double surface_tension_n_per_m,
                       double radius_m) {
  FLOWKIN_CHECK(
      Positive({mu_pa_s, rho_kg_per_m3, surface_tension_n_per_m, radius_m}));
  return mu_pa_s /
         std::sqrt(rho_kg_per_m3 * surface_tension_n_per_m * radius_m);
}

double LevellingRatePerS(double wavenumber_per_m,
                         double depth_m,
                         double mu_pa_s,
                         double rho_kg_per_m3,
                         double surface_tension_n_per_m) {
  FLOWKIN_CHECK(Positive({wavenumber_per_m, mu_pa_s, rho_kg_per_m3}) &&
                depth_m > 0.0 && surface_tension_n_per_m >= 0.0);
  const double k = wavenumber_per_m;
  const double drive =
      (rho_kg_per_m3 * kGravityMPerS2 + surface_tension_n_per_m * k * k) /
      (2.0 * mu_pa_s * k);
  const double q = k * depth_m;
  // Deep: the factor differs from 1 by less than rounding. Shallow: sinh 2q
  // - 2q cancels, so its series (2q)^3/6 (1 + (2q)^2/20 + (2q)^4/840) stands
  // in.
  if (q > 25.0) return drive;
  const double x = 2.0 * q;
  const double numerator =
      x > 0.1 ? std::sinh(x) - x
              : x * x * x / 6.0 * (1.0 + x * x / 20.0 + x * x * x * x / 840.0);
  return drive * numerator / (std::cosh(x) + 1.0 + 2.0 * q * q);
}

double SlowestWavenumberPerM(double rho_kg_per_m3,
                             double surface_tension_n_per_m) {
  return 1.0 / CapillaryLengthM(rho_kg_per_m3, surface_tension_n_per_m);
}

double LateLevellingTimeS(double mu_pa_s,
                          double rho_kg_per_m3,
                          double surface_tension_n_per_m) {
  FLOWKIN_CHECK(Positive({mu_pa_s, rho_kg_per_m3, surface_tension_n_per_m}));
  return mu_pa_s /
         std::sqrt(rho_kg_per_m3 * kGravityMPerS2 * surface_tension_n_per_m);
}

double PuddleRadiusM(double volume_m3, double nu_m2_per_s, double t_s) {
  FLOWKIN_CHECK(Positive({volume_m3, nu_m2_per_s, t_s}));
  return kPuddleConstant * std::pow(kGravityMPerS2 * volume_m3 * volume_m3 *
                                        volume_m3 * t_s / (3.0 * nu_m2_per_s),
                                    0.125);
}

double PuddleViscosityM2PerS(double volume_m3, double growth_m8_per_s) {
  FLOWKIN_CHECK(Positive({volume_m3, growth_m8_per_s}));
  return std::pow(kPuddleConstant, 8) * kGravityMPerS2 * volume_m3 * volume_m3 *
         volume_m3 / (3.0 * growth_m8_per_s);
}

double PuddleThicknessM(double volume_m3, double radius_m) {
  FLOWKIN_CHECK(Positive({volume_m3, radius_m}));
  return 4.0 * volume_m3 / (3.0 * kPi * radius_m * radius_m);
}

double PuddleStopRadiusM(double volume_m3,
                         double rho_kg_per_m3,
                         double yield_stress_pa) {
  FLOWKIN_CHECK(Positive({volume_m3, rho_kg_per_m3, yield_stress_pa}));
  return std::pow(225.0 * rho_kg_per_m3 * kGravityMPerS2 * volume_m3 *
                      volume_m3 / (128.0 * kPi * kPi * yield_stress_pa),
                  0.2);
}

double CapillaryLengthM(double rho_kg_per_m3, double surface_tension_n_per_m) {
  FLOWKIN_CHECK(Positive({rho_kg_per_m3, surface_tension_n_per_m}));
  return std::sqrt(surface_tension_n_per_m / (rho_kg_per_m3 * kGravityMPerS2));
}

}  // namespace flowkin
