#pragma once

#include <opencv2/core.hpp>
#include <string>

#include "core/base/result.h"

namespace flowkin {

/// A photo file as 8-bit BGR, upright. kUnreadable where it is none.
Result<cv::Mat> ReadPicture(const std::string& path);

}  // namespace flowkin
