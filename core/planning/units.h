#pragma once

namespace flowkin {

// Conversions to the units flowkin works in, from NIST SP 811 (2008), appendix
// B; exact where the inch and the pound are exact by definition.
inline constexpr double kMmPerInch = 25.4;
inline constexpr double kMmPerFoot = 304.8;
/// US fluid ounce, 231/128 cubic inches.
inline constexpr double kMlPerUsFluidOunce = 231.0 / 128.0 * 2.54 * 2.54 * 2.54;
inline constexpr double kMlPerUsGallon = 128.0 * kMlPerUsFluidOunce;
inline constexpr double kGramsPerPound = 453.59237;
inline constexpr double kGramsPerOunce = kGramsPerPound / 16.0;

constexpr double CelsiusFromFahrenheit(double fahrenheit) {
  return (fahrenheit - 32.0) / 1.8;
}
constexpr double FahrenheitFromCelsius(double celsius) {
  return 1.8 * celsius + 32.0;
}

}  // namespace flowkin
