#include "app/usecases/amounts.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/planning/units.h"

namespace flowkin {
namespace {

std::size_t Letters(const std::string& text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
      }));
}

}  // namespace

std::string Short(double value) {
  int decimals = 2;
  if (std::fabs(value) >= 9.995) decimals = 1;
  if (std::fabs(value) >= 99.95) decimals = 0;
  char text[400];
  std::snprintf(text, sizeof(text), "%.*f", decimals, value);
  std::string number = text;
  if (decimals > 0) {
    while (number.back() == '0') number.pop_back();
    if (number.back() == '.') number.pop_back();
  }
  return number == "-0" ? "0" : number;
}

std::string VolumeText(double volume_ml, AmountUnits units) {
  if (units == AmountUnits::kUs) {
    return Short(volume_ml / kMlPerUsFluidOunce) + " fl oz";
  }
  return Short(volume_ml) + " mL";
}

std::string MassText(double mass_g, AmountUnits units) {
  if (units == AmountUnits::kUs) return Short(mass_g / kGramsPerOunce) + " oz";
  return Short(mass_g) + " g";
}

std::string Padded(const std::string& text, std::size_t width) {
  const std::size_t letters = Letters(text);
  return letters < width ? text + std::string(width - letters, ' ') : text;
}

std::string PaddedLeft(const std::string& text, std::size_t width) {
  const std::size_t letters = Letters(text);
  return letters < width ? std::string(width - letters, ' ') + text : text;
}

}  // namespace flowkin
