#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "core/video/frame.h"

namespace flowkin {

/// Finds the frame of a clip that stands for what it shows in the end, to be
/// read like a photo: the sharpest of the last half second in which camera and
/// paint are at rest. A lens that is covered or out of focus at the end does
/// not count as rest.
class SteadyPicture {
 public:
  /// Frames in their order; damaged ones are left out.
  void Add(const Frame& frame);
  /// Index of that frame, the sharpest of all where nothing ever rests; empty
  /// without frames.
  std::optional<std::int64_t> Finish() const;

 private:
  struct Seen {
    std::int64_t index = 0;
    double t_s = 0.0;
    double change = 0.0;     ///< mean step of grey since the frame before
    double sharpness = 0.0;  ///< variance of the Laplacian, no unit
  };
  std::vector<Seen> seen_;
  cv::Mat last_;
};

}  // namespace flowkin
