#pragma once

#include <cmath>

namespace flowkin::test {

/// Dynamic viscosity of aqueous glycerol, mPa.s: N.-S. Cheng 2008, Formula for
/// the viscosity of a glycerol-water mixture, Ind. Eng. Chem. Res. 47,
/// 3285-3288. Mass fraction 0..1, 0..100 C.
inline double GlycerolViscosityMpaS(double mass_fraction, double temp_c) {
  const double c = mass_fraction, t = temp_c;
  const double water =
      1.790 * std::exp((-1230.0 - t) * t / (36100.0 + 360.0 * t));
  const double glycerol =
      12100.0 * std::exp((-1233.0 + t) * t / (9900.0 + 70.0 * t));
  const double a = 0.705 - 0.0017 * t;
  const double b = (4.9 + 0.036 * t) * std::pow(a, 2.5);
  const double alpha =
      1.0 - c + a * b * c * (1.0 - c) / (a * c + b * (1.0 - c));
  return std::pow(water, alpha) * std::pow(glycerol, 1.0 - alpha);
}

/// Dynamic viscosity of water at 0.1 MPa, uPa.s: M. L. Huber et al. 2009, New
/// international formulation for the viscosity of H2O, J. Phys. Chem. Ref.
/// Data 38, 101-125 (IAPWS 2008); coefficients from memory, held to the
/// 1.0016 mPa.s of ISO/TR 3666 at 20 C.
inline double WaterViscosityUpaS(double temp_c) {
  const double t = (temp_c + 273.15) / 300.0;
  return 280.68 * std::pow(t, -1.9) + 511.45 * std::pow(t, -7.7) +
         61.131 * std::pow(t, -19.6) + 0.45903 * std::pow(t, -40.0);
}

/// The same by J. Kestin, M. Sokolov, W. A. Wakeham 1978, Viscosity of liquid
/// water in the range -8 C to 150 C, J. Phys. Chem. Ref. Data 7, 941-948.
inline double WaterViscosityKestinUpaS(double temp_c) {
  const double d = 20.0 - temp_c;
  return 1002.0 * std::pow(10.0,
                           d * (1.2364 - 1.37e-3 * d + 5.7e-6 * d * d) /
                               (temp_c + 96.0));
}

}  // namespace flowkin::test
