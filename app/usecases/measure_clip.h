#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <string>

#include "app/usecases/clip_test.h"
#include "core/base/result.h"
#include "core/flow/measurement.h"
#include "core/video/frame_source.h"

namespace flowkin {

/// Share of the work done, 0 to 1; called from the measuring thread.
using ProgressCallback = std::function<void(double share)>;

/// What one clip gave. `measurement` may be a refusal; that is no Error.
struct MeasuredClip {
  std::string clip;  ///< the path as given
  ClipInfo info;
  FlowMeasurement measurement;
  /// Where the kinematic viscosity lies, mm2/s; puddle test with a volume and
  /// a scale only.
  std::optional<Interval> kinematic_viscosity_mm2_s;
};

/// Feeds every frame of `source` to `test` and measures. Stops with kInternal
/// when `stop` is asked for; fails as the source fails.
Result<MeasuredClip> MeasureFrames(FrameSource& source,
                                   ClipTest& test,
                                   const ProgressCallback& progress = {},
                                   std::stop_token stop = {});

struct MeasureClipOptions {
  ClipTestOptions test;
  /// Rate the scene was filmed at, frames per second of real time, in
  /// [1, 100000]; overrides the file's own tags.
  std::optional<double> shot_fps;
  /// Decoder threads, >= 1.
  int decoder_threads = 2;
  /// Writes the clip with what was found drawn on it (H.264 in MP4). The clip
  /// is read a second time, because events are known only at its end.
  std::optional<std::string> overlay_path;
  /// Writes the measured time series (comma-separated values).
  std::optional<std::string> trace_path;

  /// kInvalidArgument with a sentence when a value is out of range or an
  /// output would overwrite `clip` or the other output, or has no folder.
  Result<void> Validate(const std::string& clip) const;
};

/// The use-case: one test of one clip.
class MeasureClip {
 public:
  explicit MeasureClip(MeasureClipOptions options)
      : options_(std::move(options)) {}

  /// Outputs are written for a refusal too: they show what was found.
  Result<MeasuredClip> Run(const std::string& clip,
                           const ProgressCallback& progress = {},
                           std::stop_token stop = {}) const;

 private:
  MeasureClipOptions options_;
};

/// True when both names lead to one existing file.
bool IsSameFile(const std::string& a, const std::string& b);

}  // namespace flowkin
