#pragma once

#include <memory>

#include "core/video/frame_source.h"

namespace flowkin {

/// Reads ahead of the caller in a thread of its own, at most `depth` frames
/// (>= 1), so that decoding and looking at frames share two cores.
///
/// Same frames, same order, same error as `source`. Info() is that of the start
/// until the end has been handed out, then that of the whole clip. Not to be
/// called from several threads.
std::unique_ptr<FrameSource> Prefetch(std::unique_ptr<FrameSource> source,
                                      int depth = 6);

}  // namespace flowkin
