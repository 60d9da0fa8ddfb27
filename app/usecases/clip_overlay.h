#pragma once

#include <stop_token>
#include <string>

#include "app/usecases/clip_test.h"
#include "app/usecases/measure_clip.h"
#include "core/base/result.h"
#include "core/video/frame_source.h"

namespace flowkin {

/// Writes `source` to `path` with what `test` found drawn on every frame: the
/// marks of the test, the running time, the events as they happen and, once
/// the test is over, its numbers or why it was refused. Slow motion stays slow.
/// A run that fails leaves no half-written file.
Result<void> WriteOverlay(FrameSource& source,
                          const ClipTest& test,
                          const MeasuredClip& measured,
                          const std::string& path,
                          const ProgressCallback& progress = {},
                          std::stop_token stop = {});

}  // namespace flowkin
