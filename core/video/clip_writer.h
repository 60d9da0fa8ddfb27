#pragma once

#include <chrono>
#include <memory>
#include <opencv2/core.hpp>
#include <string>

#include "core/base/result.h"
#include "core/video/frame.h"

namespace flowkin {

struct ClipWriterOptions {
  /// Constant rate factor of the H.264 encoder, 0 (lossless) … 51 (worst).
  int rate_factor = 21;
  /// Encoder threads, 1 … 64.
  int threads = 2;
  /// Spends the least time on a picture, at the price of a larger file: for
  /// films that are written while they are shot.
  bool in_a_hurry = false;
};

/// Writes pictures with their times to an MP4 file (H.264, 8-bit 4:2:0; MPEG-4
/// part 2 where there is no H.264 encoder).
///
/// Times are kept to the microsecond, less the first one. The file is written
/// under another name beside the wanted one and takes its name in Finish(), so
/// a run that fails leaves neither half a file nor a lost older one. Pictures
/// with an odd number of rows or columns gain one by repeating the last.
///
/// Not thread-safe. Every call after a failed one fails with the same error.
class ClipWriter {
 public:
  /// Fails with kInvalidArgument if an option is out of range or `path` does
  /// not end in .mp4; with kInternal if the file cannot be made there.
  static Result<std::unique_ptr<ClipWriter>> Create(
      const std::string& path, const ClipWriterOptions& options = {});

  /// Removes what was written unless Finish() succeeded.
  virtual ~ClipWriter() = default;

  /// @param bgr        CV_8UC3, any size from 16 x 16 to 8192 x 4608 px; the
  ///     first sets the size for all.
  /// @param timestamp  Later than the one before by at least a microsecond.
  /// Fails with kInvalidArgument on a picture or time outside these.
  virtual Result<void> Add(const cv::Mat& bgr,
                           std::chrono::nanoseconds timestamp) = 0;

  /// The same from a frame's planes, without a detour over BGR.
  virtual Result<void> Add(const Frame& frame) = 0;

  /// Closes the file and gives it its name, replacing an older one. Fails with
  /// kInvalidArgument if no picture was added.
  virtual Result<void> Finish() = 0;
};

}  // namespace flowkin
