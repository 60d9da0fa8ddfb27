#include "core/base/quantities.h"

#include <gtest/gtest.h>

namespace flowkin {
namespace {

template <typename A, typename B>
constexpr bool kCanAdd = requires(A a, B b) {
  a + b;
};

TEST(Quantities, ArithmeticStaysInItsUnit) {
  EXPECT_EQ((1.5_ml + 0.25_ml).ml, 1.75);
  EXPECT_EQ((2.0_g - 0.5_g).g, 1.5);
  EXPECT_EQ((2.0 * 3.0_mm).mm, 6.0);
  EXPECT_EQ(3.0_ml / 1.5_ml, 2.0);
  EXPECT_TRUE(1.0_ml < 2.0_ml);
  EXPECT_TRUE(1.0_ml == Volume{.ml = 1.0});
}

TEST(Quantities, UnlikeOnesDoNotMix) {
  static_assert(kCanAdd<Volume, Volume>);
  static_assert(!kCanAdd<Volume, Length>);
  static_assert(!kCanAdd<Volume, double>);
  static_assert(!kCanAdd<Length, ImageLength>);
  static_assert(!kCanAdd<Temperature, Temperature>);
}

}  // namespace
}  // namespace flowkin
