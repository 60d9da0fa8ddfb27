#pragma once

#include <cmath>
#include <random>
#include <utility>
#include <vector>

#include "core/track/stream_track.h"
#include "tests/support/stream_sim.h"

namespace flowkin::testing {

/// A stick under a film that drains [Jeffreys1930; annular film on a rod,
/// core/flow/README.md], seen by a camera 5 px to the millimetre.
struct FilmedStick {
  StreamSimOptions paint;
  double lift_s = 1.2;
  double end_s = 8.0;
  /// How much thicker the coat looks than it is.
  double shade = 1.0;
  double noise_px = 0.1;
  double sway_px = 0.5;
  bool left_stands_out = true, right_stands_out = true;
  bool bare_seen = true;
  double edge_width_px = 2.4;

  /// Only what is seen of the stick.
  StreamEpisode Film(std::mt19937& random) const {
    constexpr double kPxPerMm = 5.0, kBand_mm = 6.6;
    std::normal_distribution<double> normal;
    StreamEpisode e;
    e.stick_width_px = kPxPerMm * (paint.stick_width_mm + 1.0);
    for (double t_s = lift_s + 0.3; t_s < end_s; t_s += 1.0 / 60.0)
      e.coat_t_s.push_back(t_s);
    std::vector<double> middle_px;
    for (const double t_s : e.coat_t_s)
      middle_px.push_back(
          400.0 + sway_px * (std::sin(9.0 * t_s) + 0.3 * std::sin(66.0 * t_s)));
    for (int band = 0; band < 9; ++band) {
      const double below_top_mm =
          paint.wetted_length_mm - 2.4 - (band + 0.5) * kBand_mm;
      const bool bare = below_top_mm < -0.5 * kBand_mm;
      for (const int side : {-1, 1}) {
        if (bare ? !bare_seen
                 : !(side < 0 ? left_stands_out : right_stands_out))
          continue;
        CoatEdge edge{band, side, edge_width_px, {}};
        for (std::size_t i = 0; i < e.coat_t_s.size(); ++i) {
          const double age_s = e.coat_t_s[i] - lift_s +
                               paint.wetted_length_mm / paint.lift_speed_mm_s;
          const double half_mm =
              0.5 * paint.stick_width_mm +
              shade * FilmThicknessMm(paint, below_top_mm, age_s);
          edge.x_px.push_back(static_cast<float>(middle_px[i] +
                                                 side * kPxPerMm * half_mm +
                                                 noise_px * normal(random)));
        }
        e.coat_edges.push_back(std::move(edge));
      }
    }
    return e;
  }
};

}  // namespace flowkin::testing
