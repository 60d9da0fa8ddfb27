#pragma once

#include <type_traits>

namespace flowkin {

// One aggregate per quantity, its only field named after the unit. Sums,
// scaling and same-quantity ratios are given below; anything else does not
// compile. Inside kernels use plain double with the unit in the name.

struct Volume {
  double ml = 0.0;
};
struct Mass {
  double g = 0.0;
};
struct Length {
  double mm = 0.0;
};
/// Distance in the picture.
struct ImageLength {
  double px = 0.0;
};
/// A point on the Celsius scale, not a difference: it has no arithmetic.
struct Temperature {
  double c = 0.0;
};

template <typename Q>
struct QuantityField;
template <>
struct QuantityField<Volume> {
  static constexpr double Volume::*kField = &Volume::ml;
};
template <>
struct QuantityField<Mass> {
  static constexpr double Mass::*kField = &Mass::g;
};
template <>
struct QuantityField<Length> {
  static constexpr double Length::*kField = &Length::mm;
};
template <>
struct QuantityField<ImageLength> {
  static constexpr double ImageLength::*kField = &ImageLength::px;
};

template <typename Q, double Q::*F = QuantityField<Q>::kField>
constexpr Q operator+(Q a, Q b) {
  return Q{a.*F + b.*F};
}
template <typename Q, double Q::*F = QuantityField<Q>::kField>
constexpr Q operator-(Q a, Q b) {
  return Q{a.*F - b.*F};
}
template <typename Q, double Q::*F = QuantityField<Q>::kField>
constexpr Q operator*(double factor, Q a) {
  return Q{factor * a.*F};
}
template <typename Q, double Q::*F = QuantityField<Q>::kField>
constexpr double operator/(Q a, Q b) {
  return a.*F / b.*F;
}
template <typename Q, double Q::*F = QuantityField<Q>::kField>
constexpr bool operator<(Q a, Q b) {
  return a.*F < b.*F;
}
template <typename Q, double Q::*F = QuantityField<Q>::kField>
constexpr bool operator==(Q a, Q b) {
  return a.*F == b.*F;
}

constexpr Volume operator""_ml(long double value) {
  return {static_cast<double>(value)};
}
constexpr Mass operator""_g(long double value) {
  return {static_cast<double>(value)};
}
constexpr Length operator""_mm(long double value) {
  return {static_cast<double>(value)};
}

}  // namespace flowkin
