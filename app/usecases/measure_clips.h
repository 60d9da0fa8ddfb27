#pragma once

#include <string>
#include <vector>

#include "app/usecases/measure_clip.h"

namespace flowkin {

/// Measures several clips of one test, `workers` (>= 1) at a time, each with
/// one decoder thread when there is more than one worker. Results stand in the
/// order of `clips` and do not depend on `workers`. Fails as the first clip of
/// the list that fails; a refusal is no failure. Outputs in `options` are not
/// written.
Result<std::vector<MeasuredClip>> MeasureClips(
    const std::vector<std::string>& clips,
    const MeasureClipOptions& options,
    int workers,
    const ProgressCallback& progress = {},
    std::stop_token stop = {});

/// kInvalidArgument when two of the names lead to the same file: one film is
/// one repeat.
Result<void> CheckDistinct(const std::vector<std::string>& clips);

}  // namespace flowkin
