#pragma once

namespace flowkin {

/// How the level x = ln(viscosity ratio, cup over base coat) of a cup falls
/// as a liquid is stirred in. `u` is ln(volume now / volume at the start), >=
/// 0. Neither ever rises with u, as long as a blend's liquid is the thinner
/// one.
///
/// Water (kWater): the fall per unit of u grows with the level,
///     dx/du = -g exp(c x),   x(u) = -(1/c) ln(exp(-c x0) + c g u),
/// so one pair (g, c) serves a cup of the paint however thick it starts.
/// A thickener power law is c = 0. Krieger and Dougherty 1959 and Quemada 1977
/// give dx/du = -(A exp(x/n) - n), n = [eta] phi_max (2 for Quemada), and a
/// thickened water phase adds its exponent to it: close to this form with
/// c <= 1/n. tests/calibration/curve measures how close, for Mooney 1951 and
/// the tables of glycerol and sucrose as well.
///
/// Blend (kBlend): another liquid of level a, by volume share s = 1 - exp(-u),
///     x = (1 - h) x0 + h a,   h = s - e s (1 - s),   -1 <= e <= 1,
/// the logarithmic mixing rule with one interaction term, e (x0 - a) for the
/// G12 of Grunberg and Nissan 1949 (there in mole fractions, here in volume):
/// bounded so that more of the liquid never leads away from its level.
struct DilutionLaw {
  enum class Kind { kWater, kBlend };
  Kind kind = Kind::kWater;
  /// kWater: g, slope at the base coat's own flow, > 0, per unit of u.
  /// kBlend: a, level of the liquid itself.
  double first = 6.0;
  /// kWater: c, >= 0, per unit of level. kBlend: e, interaction, -1 to 1.
  double second = 0.3;
};

/// Level of a cup that started at `start_level` after ln volume growth `u`.
double LevelAfter(const DilutionLaw& law, double start_level, double u);

/// d LevelAfter / d start_level, in (0, 1].
double LevelSensitivity(const DilutionLaw& law, double start_level, double u);

/// The start level from which `u` leads to `level`; +infinity where no cup is
/// thick enough to end there.
double StartLevelFor(const DilutionLaw& law, double level, double u);

}  // namespace flowkin
