#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/video/frame.h"

namespace flowkin {

/// Where the time stamps of a source come from.
enum class TimestampOrigin { kContainer, kNominalRate, kCameraClock };

/// What is known of a clip. `frame_count` and `duration_s` are exact only once
/// the source is exhausted; before, they are the container's promise.
struct ClipInfo {
  int width_px = 0;            ///< after rotation
  int height_px = 0;           ///< after rotation
  double frame_rate_hz = 0.0;  ///< nominal, for display only
  double duration_s = 0.0;     ///< real time, first to last frame
  std::int64_t frame_count = 0;
  /// Seconds of real time per second of playing time (0.125 for 240 fps
  /// played at 30).
  double time_scale = 1.0;
  int rotation_deg = 0;  ///< clockwise turn that was applied, 0/90/180/270
  TimestampOrigin timestamps = TimestampOrigin::kContainer;
  /// Sentences for the person: damage, lost frames, guessed time scale.
  std::vector<std::string> warnings;
};

/// Frames in display order.
class FrameSource {
 public:
  virtual ~FrameSource() = default;
  virtual const ClipInfo& Info() const = 0;
  /// The next frame, an empty optional at the end, or an Error when nothing
  /// more can be read and nothing was.
  virtual Result<std::optional<Frame>> Next() = 0;
};

}  // namespace flowkin
