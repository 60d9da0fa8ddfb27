#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"

namespace flowkin {

/// Frames per second of playing time, from presentation times in ticks (any
/// order): from the mean of the intervals that lie within half of the median,
/// so that neither lost frames nor a clock in whole milliseconds biases it.
/// Empty with fewer than two different times.
std::optional<double> PlayingRateHz(std::vector<std::int64_t> ticks,
                                    double ticks_per_second);

/// Capture rate written by a phone into a file's tags, frames per second, if
/// `key` (any case) is such a tag and `value` a usable number.
///
/// Both phone families write it as a movie tag whose name ends in
/// "capture.fps" or "capture-fps", as text or as a float, which libavformat
/// shows as text. Tags that only say how a player should show a clip, such as
/// a "full frame rate playback intent", do not change the times in the file and
/// are not read.
std::optional<double> CaptureRateFromTag(const std::string& key,
                                         const std::string& value);

/// Seconds of real time per second of playing time.
struct TimeScale {
  double value = 1.0;
  std::string warning;  ///< empty if there is nothing to say
};

/// Finds the time scale from the rate the frames play at and the rate they were
/// shot at: playing / shot.
///
/// @param playing_hz  > 0; see PlayingRateHz.
/// @param shot_hz     Said by the person: holds whatever the tag says.
/// @param tagged_hz   Said by the file. Believed where it means slow motion or
///     time lapse by a factor of at least 1.9; phones also tag ordinary clips,
///     and in poor light their rate falls below the tag without any slow
///     motion, so a smaller factor leaves the times alone, with a warning.
/// Fails with kInvalidArgument if shot_hz is not a finite number > 0 or the
/// scale falls outside 0.001 … 1000.
Result<TimeScale> FindTimeScale(double playing_hz,
                                std::optional<double> shot_hz,
                                std::optional<double> tagged_hz);

}  // namespace flowkin
