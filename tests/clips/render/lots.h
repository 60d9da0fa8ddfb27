#pragma once

#include <algorithm>
#include <array>
#include <random>

#include "tests/clips/render/picture.h"

namespace flowkin::clips {

/// What is drawn by lot for scenes nobody thought of.
class Lots {
 public:
  explicit Lots(unsigned seed) : random_(seed) {}

  double Between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }
  template <typename... Values>
  auto OneOf(Values... values) {
    const std::array all{values...};
    return all[random_() % all.size()];
  }
  /// A tinted grey between two levels of 0 to 255.
  Light Colour(int low, int high) {
    const int grey = static_cast<int>(Between(low, high));
    const auto tint = [&] {
      return std::clamp(grey + static_cast<int>(Between(-45, 45)), 8, 245);
    };
    const int red = tint(), green = tint(), blue = tint();
    return FromScreen(red, green, blue);
  }
  unsigned Seed() { return static_cast<unsigned>(random_()); }

 private:
  std::mt19937 random_;
};

}  // namespace flowkin::clips
