#pragma once

#include <opencv2/core.hpp>

#include "core/video/frame.h"

namespace flowkin {

/// An 8-bit BGR copy of the frame that may be drawn on.
cv::Mat FrameToBgr(const Frame& frame);

}  // namespace flowkin
