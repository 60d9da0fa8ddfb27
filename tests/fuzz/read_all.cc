#include "tests/fuzz/read_all.h"

#include <opencv2/core.hpp>

#include "core/video/file_frame_source.h"

namespace flowkin::testing_support {

std::string ReadAll(const std::uint8_t* data,
                    std::size_t size,
                    int threads,
                    std::int64_t max_frames) {
  FileFrameSourceOptions options;
  options.threads = threads;
  auto source = OpenClipFromMemory(data, size, "clip", options);
  if (!source) {
    if (source.error().code != ErrorCode::kUnreadable) return "wrong code";
    if (source.error().message.empty()) return "no message";
    return "refused";
  }
  const ClipInfo promised = (*source)->Info();
  if (!(promised.time_scale > 0.0) || promised.duration_s < 0.0 ||
      promised.frame_count < 0) {
    return "nonsense in the promise";
  }
  std::chrono::nanoseconds last{-1};
  std::int64_t count = 0;
  double sum = 0.0;
  while (count < max_frames) {
    auto next = (*source)->Next();
    if (!next) return "error in the middle: " + next.error().message;
    if (!*next) break;
    const Frame& frame = **next;
    if (frame.luma.cols != promised.width_px ||
        frame.luma.rows != promised.height_px) {
      return "size changes";
    }
    if (frame.timestamp <= last) return "times do not rise";
    if (frame.index != count) return "index jumps";
    last = frame.timestamp;
    ++count;
    // Touches every pixel, so that a bad plane shows under the sanitizers.
    sum += cv::sum(frame.luma)[0] + cv::sum(frame.cb)[0] + cv::sum(frame.cr)[0];
  }
  if (count == 0) return "no frame and no error";
  if (sum < 0.0) return "negative light";
  return "read";
}

}  // namespace flowkin::testing_support
