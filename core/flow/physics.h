#pragma once

namespace flowkin {

// The formulas flowkin reads its tests by, in SI units. Pure functions; every
// argument finite and in the range given, or the program ends (a bug). Keys in
// brackets: core/flow/README.md. What each was checked against: the tests of
// core/flow/physics.

/// Gravity; between 9.78 and 9.83 over the globe, 0.3 %, and it cancels in
/// every ratio.
inline constexpr double kGravityMPerS2 = 9.81;

// --- Stream from a stick -----------------------------------------------------

/// Thickness of the film draining off an upright plate [Jeffreys1930]:
/// h = sqrt(nu z / (g t)), z below the film's upper edge, t since that place
/// left the liquid. All > 0. Thin film, no inertia, no surface tension.
double DrainingFilmM(double nu_m2_per_s, double z_m, double t_s);

/// Flow off the lower edge of that film, wetted length z, perimeter P:
/// Q = (P/3) sqrt(nu/g) z^(3/2) t^(-3/2). All > 0.
double DrainingFlowM3PerS(double nu_m2_per_s,
                          double z_m,
                          double perimeter_m,
                          double t_s);

/// Volume still on the stick: (2/3) P sqrt(nu/g) z^(3/2) t^(-1/2). All > 0.
double DrainingVolumeM3(double nu_m2_per_s,
                        double z_m,
                        double perimeter_m,
                        double t_s);

/// Time until that flow has fallen to `flow_m3_per_s`, where the stream ends
/// if a fixed flow ends it: t ~ nu^(1/3). All > 0.
double StreamEndS(double nu_m2_per_s,
                  double z_m,
                  double perimeter_m,
                  double flow_m3_per_s);

/// Break time ~ nu^p. If the flow at which the stream parts goes as nu^m, the
/// draining film gives p = (1 - 2 m) / 3: 1/3 for a fixed flow (m = 0), 1 for a
/// capillary speed (m = -1), 5/3 for an intact length (m = -2, [Javadi2013]).
inline constexpr double kBreakExponentLow = 1.0 / 3.0;
inline constexpr double kBreakExponentHigh = 5.0 / 3.0;

/// How far apart, one standard deviation, the ln break times of two paints of
/// one kinematic viscosity lie. The slender thread (tests/support/stream_sim)
/// holds 1.3 % longer for 1 % less surface tension and 1.4 % longer for 1 %
/// more density. Paints mixed with the same medium are taken to lie within 2 %
/// of each other in the one and 4.5 % in the other (assumed, no source).
inline constexpr double kBreakPaintSd = 0.07;

/// Speed at which the radius of a thread's neck shrinks shortly before it
/// pinches, 0.0709 gamma/mu [Papageorgiou1995]; the diameter twice as fast.
/// Viscous thread (Ohnesorge > 1), no inertia. Both > 0.
double NeckRadiusSpeedMPerS(double surface_tension_n_per_m, double mu_pa_s);
inline constexpr double kNeckFactor = 0.0709;

/// mu / sqrt(rho gamma R): above 1 the viscous law of the neck holds. All > 0.
double OhnesorgeNumber(double mu_pa_s,
                       double rho_kg_per_m3,
                       double surface_tension_n_per_m,
                       double radius_m);

// --- Levelling ---------------------------------------------------------------

/// Rate at which a small ripple of wavenumber k on a layer of depth h dies,
/// amplitude ~ exp(-s t) [Orchard1962]:
/// s = (rho g + gamma k^2) / (2 mu k) (sinh 2q - 2q) / (cosh 2q + 1 + 2 q^2),
/// q = k h. No inertia, rigid bottom, Newtonian. depth may be infinite.
double LevellingRatePerS(double wavenumber_per_m,
                         double depth_m,
                         double mu_pa_s,
                         double rho_kg_per_m3,
                         double surface_tension_n_per_m);

/// Wavenumber of slowest levelling on a deep pool, sqrt(rho g / gamma).
double SlowestWavenumberPerM(double rho_kg_per_m3,
                             double surface_tension_n_per_m);

/// Time constant every relief on a deep pool ends with, mu/sqrt(rho g gamma).
double LateLevellingTimeS(double mu_pa_s,
                          double rho_kg_per_m3,
                          double surface_tension_n_per_m);

// --- Puddle ------------------------------------------------------------------

/// Similarity constant of the viscous gravity current of fixed volume,
/// (2^10 / (3^4 pi^3))^(1/8) [Huppert1982].
inline constexpr double kPuddleConstant = 0.893913848;

/// R = 0.8939 (g V^3 t / (3 nu))^(1/8) [Huppert1982]. All > 0. Gravity drives
/// (R > 5 capillary lengths), thickness above the wetting and yield limits.
double PuddleRadiusM(double volume_m3, double nu_m2_per_s, double t_s);

/// The same solved for the viscosity from R^8 = growth * (t - t0): growth is
/// the slope of R^8 against time, m^8/s. Both > 0.
double PuddleViscosityM2PerS(double volume_m3, double growth_m8_per_s);

/// Thickness at the centre, 4 V / (3 pi R^2). Both > 0.
double PuddleThicknessM(double volume_m3, double radius_m);

/// Radius at which a yield stress stops a puddle,
/// (225 rho g V^2 / (128 pi^2 tau_y))^(1/5) [RousselCoussot2005]. All > 0.
double PuddleStopRadiusM(double volume_m3,
                         double rho_kg_per_m3,
                         double yield_stress_pa);

/// sqrt(gamma / (rho g)): gravity rules above it, surface tension below.
double CapillaryLengthM(double rho_kg_per_m3, double surface_tension_n_per_m);

}  // namespace flowkin
