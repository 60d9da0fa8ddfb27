#pragma once

#include <opencv2/core.hpp>

#include "core/video/frame.h"

namespace flowkin {

/// An 8-bit BGR copy of the frame that may be drawn on; of `size`, or of the
/// frame's own where that is empty.
cv::Mat FrameToBgr(const Frame& frame, cv::Size size = {});

}  // namespace flowkin
