#pragma once

#include <algorithm>
#include <cmath>
#include <random>

#include "core/track/stream_track.h"

namespace flowkin::testing {

/// A stream track as StreamTracker would hand it over, made from event times
/// instead of pictures.
struct SyntheticStream {
  double fps = 60.0;
  double lift_s = 1.0;
  double lift_sd_s = 0.008;  ///< of the tracker's own reading
  double break_time_s = 5.0;
  /// Speed of the gap's spread over the pieces, pieces per second; its first
  /// piece.
  double spread_per_s = 120.0;
  int first_piece = 12;
  double presence_noise = 0.05;
  double end_s = 1.5;  ///< film after the break
  bool breaks = true;
};

inline StreamTrack MakeTrack(const SyntheticStream& s, std::mt19937& random) {
  std::normal_distribution<double> normal;
  std::uniform_real_distribution<double> uniform;
  StreamTrack track;
  track.width_px = 960;
  track.height_px = 540;
  track.luma_spread = 20.0;
  track.mean_luma = 120.0;
  track.sharpness = 0.15;
  StreamEpisode e;
  e.lift_seen = true;
  e.lift_s = s.lift_s + s.lift_sd_s * normal(random);
  e.lift_sd_s = s.lift_sd_s;
  e.rest_s = s.lift_s + 0.6;
  e.stick_width_px = 58.0;
  e.stick_bottom_y_px = 254.0;
  e.pool_y_px = 466.0;
  e.edge_width_px = 3.0;
  e.num_pieces = 14;
  const double break_s = s.lift_s + s.break_time_s;
  const double phase = uniform(random);
  for (double t = e.rest_s + phase / s.fps; t < break_s + s.end_s;
       t += 1.0 / s.fps) {
    e.t_s.push_back(t);
    e.shift_px.push_back(0.0F);
    e.change.push_back(0.5F);
    e.line_left.push_back(s.breaks ? 0.0F : 0.6F);
    e.line_left_sd.push_back(0.05F);
    for (int p = 0; p < e.num_pieces; ++p) {
      const double gone_s =
          break_s + std::abs(p - s.first_piece) / s.spread_per_s;
      const bool there = !s.breaks || t < gone_s;
      // Once the template has nothing but noise the tracker says so by a wide
      // sd.
      const bool known = t < gone_s + 0.3 || there;
      const double noise = s.presence_noise * normal(random);
      e.presence.push_back(
          static_cast<float>(known ? (there ? 1.0 : 0.0) + noise : 1.0));
      e.presence_sd.push_back(
          static_cast<float>(known ? s.presence_noise : 10.0));
      e.strength.push_back(there ? 20.0F : 1.0F);
      e.unchanged_s.push_back(0.0F);
      e.width_px.push_back(-1.0F);
    }
  }
  track.duration_s = e.t_s.back();
  e.background_from_s = track.duration_s - 0.4;
  track.num_frames = static_cast<std::int64_t>(e.t_s.size());
  track.episodes.push_back(std::move(e));
  return track;
}

}  // namespace flowkin::testing
