#include "core/flow/coat_thickness.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <random>
#include <utility>
#include <vector>

#include "tests/support/filmed_stick.h"

namespace flowkin {
namespace {

using testing::FilmedStick;
using testing::StickShape;

constexpr double kLift_s = 1.2, kBreak_s = 6.0;

std::optional<FlowProxy> Measure(const FilmedStick& stick,
                                 std::mt19937& random) {
  return CoatThickness(stick.Film(random), kLift_s, kBreak_s);
}

double LnViscosityRatio(const FlowProxy& cup, const FlowProxy& base) {
  return (cup.ln_value.value - base.ln_value.value) / base.exponent.value;
}

TEST(CoatThickness, GoesWithTheRootOfViscosity) {
  std::mt19937 random(3);
  for (const StickShape shape : {StickShape::kFlat, StickShape::kRod}) {
    FilmedStick base;
    base.paint.stick = shape;
    base.paint.stick_width_mm = 12.0;
    base.paint.wetted_length_mm = 30.0;
    base.paint.nu_mm2_s = 420.0;
    const auto of_base = Measure(base, random);
    ASSERT_TRUE(of_base);
    for (const double ratio : {0.5, 0.8, 1.25, 2.2}) {
      FilmedStick cup = base;
      cup.paint.nu_mm2_s *= ratio;
      const auto of_cup = Measure(cup, random);
      ASSERT_TRUE(of_cup) << ratio;
      const double error =
          LnViscosityRatio(*of_cup, *of_base) - std::log(ratio);
      // On the rod thicker films grow more slowly: the exponent's share.
      const double of_exponent = 2.0 * of_base->exponent.sd /
                                 of_base->exponent.value *
                                 std::abs(std::log(ratio));
      EXPECT_NEAR(error, 0.0, 0.05 + of_exponent) << ratio;
    }
  }
}

// 1,000 seeded films of one paint: the stated sd must hold what noise and the
// hand's lift make of them.
TEST(CoatThickness, StatesItsUncertainty) {
  std::mt19937 random(4);
  std::uniform_real_distribution<double> uniform;
  int inside = 0;
  constexpr int kFilms = 1000;
  double sum = 0.0;
  std::vector<FlowProxy> films;
  for (int i = 0; i < kFilms; ++i) {
    FilmedStick stick;
    stick.paint.stick_width_mm = 12.0;
    stick.paint.wetted_length_mm = 30.0;
    stick.paint.nu_mm2_s = 420.0;
    stick.paint.lift_speed_mm_s = 120.0 + 80.0 * uniform(random);
    stick.noise_px = 0.1 + 0.5 * uniform(random);
    const auto film = Measure(stick, random);
    ASSERT_TRUE(film);
    sum += film->ln_value.value;
    films.push_back(*film);
  }
  for (const FlowProxy& film : films)
    inside +=
        std::abs(film.ln_value.value - sum / kFilms) < 1.96 * film.ln_value.sd;
  // It also counts what only differs between paints (halves, lead).
  EXPECT_GE(inside, kFilms * 93 / 100);
}

TEST(CoatThickness, OneOutlineAndABareStickAreEnough) {
  std::mt19937 random(5);
  FilmedStick stick;
  const auto both = Measure(stick, random);
  stick.right_stands_out = false;
  const auto one = Measure(stick, random);
  ASSERT_TRUE(both && one);
  EXPECT_NEAR(one->ln_value.value, both->ln_value.value, 0.05);
  EXPECT_GT(one->ln_value.sd, both->ln_value.sd);
  // Nothing tells what of its way is the hand's.
  stick.bare_seen = false;
  EXPECT_FALSE(Measure(stick, random));
}

TEST(CoatThickness, EmptyWhereNoCoatDrains) {
  std::mt19937 random(6);
  FilmedStick stick;
  // What stands beside the stick as upright as its outline does not narrow, and
  // no bare stick tells of the other side alone.
  StreamEpisode e = stick.Film(random);
  for (CoatEdge& edge : e.coat_edges)
    if (edge.side > 0 && edge.band < 2)
      for (float& x_px : edge.x_px) x_px = 436.0F;
  e.coat_edges.erase(
      std::remove_if(e.coat_edges.begin(),
                     e.coat_edges.end(),
                     [](const CoatEdge& edge) { return edge.band > 2; }),
      e.coat_edges.end());
  EXPECT_FALSE(CoatThickness(e, kLift_s, kBreak_s));
  // A bare stick.
  stick.paint.wetted_length_mm = 1.0;
  EXPECT_FALSE(Measure(stick, random));
  // A round side in shade is not where the paint ends.
  stick = {};
  stick.edge_width_px = 9.0;
  EXPECT_FALSE(Measure(stick, random));
  // It was not seen.
  stick = {};
  e = stick.Film(random);
  for (CoatEdge& edge : e.coat_edges)
    for (std::size_t i = 0; i < edge.x_px.size(); ++i)
      if (i % 3 != 0) edge.x_px[i] = std::numeric_limits<float>::quiet_NaN();
  EXPECT_FALSE(CoatThickness(e, kLift_s, kBreak_s));
  // The stream broke before there was anything to see.
  EXPECT_FALSE(CoatThickness(stick.Film(random), kLift_s, kLift_s + 0.6));
  EXPECT_FALSE(CoatThickness(StreamEpisode{}, kLift_s, kBreak_s));
}

// Growing instead of narrowing, or in steps, is not a film that drains.
TEST(CoatThickness, EmptyWhereTheLawIsNotFollowed) {
  std::mt19937 random(7);
  StreamEpisode e = FilmedStick{}.Film(random);
  for (CoatEdge& edge : e.coat_edges)
    for (std::size_t i = 0; i < edge.x_px.size(); ++i)
      edge.x_px[i] = 400.0F + static_cast<float>(edge.side) *
                                  (30.0F + 0.01F * static_cast<float>(i));
  EXPECT_FALSE(CoatThickness(e, kLift_s, kBreak_s));
  for (CoatEdge& edge : e.coat_edges)
    for (std::size_t i = 0; i < edge.x_px.size(); ++i)
      edge.x_px[i] = 400.0F + static_cast<float>(edge.side) *
                                  (e.coat_t_s[i] > 4.0 ? 30.0F : 36.0F);
  EXPECT_FALSE(CoatThickness(e, kLift_s, kBreak_s));
}

}  // namespace
}  // namespace flowkin
