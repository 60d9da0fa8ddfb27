#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <vector>

#include "core/track/stream_track.h"

namespace flowkin {

/// Watches the upright edges of a raised stick and of the paint on it.
///
/// The lower part of the stick is cut into bands, each a little more than half
/// a stick's width high, up to where the picture or the hand begins. Of every
/// picture the rows of a band are averaged along the stick's lean into one
/// profile across it; what is seen of an edge is where that profile is
/// steepest. Memory grows with the logarithm of the test's length.
class StickCoat {
 public:
  StickCoat() = default;
  /// `stick_lean`: columns to the right per row down.
  StickCoat(const StreamEpisode& episode, double stick_lean, cv::Size picture);

  /// Upright luma, in time order; `shift_px` is how far the stick has moved to
  /// the right since the episode began, to a few pixels.
  void Add(const cv::Mat& luma, double t_s, double shift_px);

  /// Every edge that can be followed from the first picture on, into
  /// `coat_t_s` and `coat_edges`.
  void FollowEdges(StreamEpisode& episode) const;

 private:
  struct Sample {
    double t_s = 0.0;
    int left_px = 0;  ///< column of the profiles' first value
    /// Grey levels times kGreySteps. [band * columns + column]
    std::vector<std::uint16_t> profile;
  };
  struct Peak {
    double x_px = 0.0;   ///< from the profile's first column
    double slope = 0.0;  ///< grey levels per px, signed
    double step = 0.0;   ///< grey levels from one side to the other
  };

  std::vector<float> Slopes(const Sample& sample, int band) const;
  static std::vector<Peak> FindPeaks(const std::vector<float>& slopes,
                                     double least_slope);
  void FollowBand(int band, StreamEpisode& episode) const;

  double lift_s_ = 0.0;
  double center_x_px_ = 0.0;
  double bottom_y_px_ = 0.0;
  double width_px_ = 0.0;
  double lean_ = 0.0;
  int half_width_px_ = 0;
  int band_height_px_ = 0;
  int num_bands_ = 0;
  std::vector<Sample> samples_;
};

}  // namespace flowkin
