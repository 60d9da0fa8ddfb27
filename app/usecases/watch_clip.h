#pragma once

#include <functional>
#include <stop_token>
#include <string>

#include "app/usecases/clip_test.h"
#include "app/usecases/measure_clip.h"
#include "core/base/result.h"

namespace flowkin {

/// Measures `clip` as MeasureClip does, with `test`, which must be one of
/// `options`, and hands every frame to `see` on the way, in this thread.
/// Outputs in `options` are not written.
Result<MeasuredClip> WatchClip(const std::string& clip,
                               const MeasureClipOptions& options,
                               ClipTest& test,
                               const std::function<void(const Frame&)>& see,
                               const ProgressCallback& progress = {},
                               std::stop_token stop = {});

}  // namespace flowkin
