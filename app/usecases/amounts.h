#pragma once

#include <string>

namespace flowkin {

/// How amounts are shown to her.
enum class AmountUnits {
  kMetric,
  kUs,  ///< US fluid ounces, avoirdupois ounces
};

/// "12.5 mL", "340 mL" or "11.5 fl oz": three significant digits, no exponent.
std::string VolumeText(double volume_ml, AmountUnits units);
/// "16.3 g" or "12.0 oz".
std::string MassText(double mass_g, AmountUnits units);
/// `value` with at most three significant digits and no trailing zeros.
std::string Short(double value);
/// `text` filled with spaces to `width` characters (UTF-8 counted as one each).
std::string Padded(const std::string& text, std::size_t width);
std::string PaddedLeft(const std::string& text, std::size_t width);

}  // namespace flowkin
