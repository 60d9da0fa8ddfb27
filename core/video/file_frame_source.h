#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "core/video/frame_source.h"

namespace flowkin {

struct FileFrameSourceOptions {
  /// Rate the scene was shot at, for slow motion without a tag; overrides the
  /// file's own tags. Must be > 0.
  std::optional<double> shot_fps;
  /// Decoder threads, 1 … 64.
  int threads = 2;
};

/// Reads a video file through libavformat and libavcodec.
///
/// Time stamps are the container's presentation times less the first frame's,
/// times the time scale (see FindTimeScale). Edit lists and display matrices
/// are applied, pixels that are not square are made so. Frames whose time does
/// not rise, or jumps by more than ten minutes of playing time, are left out
/// and counted in a warning; so are pictures that were damaged. A change of
/// picture size ends the clip, with a warning.
///
/// Fails with kInvalidArgument if an option is out of range; with kUnreadable
/// if the path does not lead to a file with at least two decodable pictures and
/// their times. What can be read of a damaged file is delivered; the warnings
/// are complete once Next() has returned an empty optional.
///
/// Not thread-safe; frames may be handed to other threads and may outlive the
/// source.
Result<std::unique_ptr<FrameSource>> OpenClip(
    const std::string& path, const FileFrameSourceOptions& options = {});

/// The same from memory; `data` is not copied and must outlive the source.
/// `name` stands in for the file's name in messages.
Result<std::unique_ptr<FrameSource>> OpenClipFromMemory(
    const std::uint8_t* data,
    std::size_t size,
    const std::string& name,
    const FileFrameSourceOptions& options = {});

}  // namespace flowkin
