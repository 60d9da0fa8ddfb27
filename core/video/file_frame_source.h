#pragma once

#include <memory>
#include <optional>
#include <string>

#include "core/video/frame_source.h"

namespace flowkin {

struct FileFrameSourceOptions {
  /// Rate the scene was shot at, for slow motion without a tag; overrides the
  /// file's own tags. Must be > 0.
  std::optional<double> shot_fps;
  /// Decoder threads, >= 1.
  int threads = 2;
};

/// Reads a video file through libavformat and libavcodec.
Result<std::unique_ptr<FrameSource>> OpenClip(
    const std::string& path, const FileFrameSourceOptions& options = {});

}  // namespace flowkin
