#pragma once

#include <chrono>
#include <cstdint>
#include <opencv2/core.hpp>

namespace flowkin {

/// One picture of a clip or camera, upright (rotation metadata applied).
///
/// Planes are 8-bit, single channel, as coded: Y'CbCr with chroma at half the
/// size each way (4:2:0; other layouts are converted). `full_range` tells
/// whether luma spans 0..255 or 16..235. The planes may share memory with the
/// decoder's reference-counted buffers: never write into them.
struct Frame {
  cv::Mat luma;  ///< CV_8UC1, rows x cols
  cv::Mat cb;    ///< CV_8UC1, (rows + 1) / 2 x (cols + 1) / 2, 128 = no colour
  cv::Mat cr;    ///< as cb
  bool full_range = false;
  /// Real time at the bench since the first frame (slow motion undone),
  /// strictly rising within a source.
  std::chrono::nanoseconds timestamp{0};
  /// 0, 1, 2 … in display order; never a measure of time.
  std::int64_t index = 0;
  /// The decoder met errors in this picture and filled in what was missing.
  bool damaged = false;

  /// Of its three planes together.
  std::int64_t Bytes() const {
    return static_cast<std::int64_t>(luma.total() + cb.total() + cr.total());
  }
  double TimeS() const {
    return std::chrono::duration<double>(timestamp).count();
  }
};

}  // namespace flowkin
