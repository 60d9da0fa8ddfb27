#include "app/usecases/measure_clip.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <system_error>
#include <utility>

#include "app/usecases/clip_overlay.h"
#include "core/base/distributions.h"
#include "core/video/file_frame_source.h"
#include "core/video/prefetch.h"

namespace flowkin {
namespace {

namespace fs = std::filesystem;

constexpr double kMinShotFps = 1.0;
constexpr double kMaxShotFps = 100000.0;

Error Wrong(std::string message) {
  return Error{ErrorCode::kInvalidArgument, std::move(message)};
}

/// Whether a file may be made or replaced at `path`.
Result<void> CheckOutput(const std::string& option,
                         const std::string& path,
                         const std::string& clip) {
  std::error_code ignored;
  if (path.empty() || fs::is_directory(path, ignored)) {
    return Wrong("The value of " + option +
                 " must be the name of a file to write; give one.");
  }
  const fs::path folder = fs::path(path).parent_path();
  if (!folder.empty() && !fs::is_directory(folder, ignored)) {
    return Wrong("The folder of " + option + " '" + path +
                 "' does not exist; make it first or choose another.");
  }
  if (IsSameFile(path, clip)) {
    return Wrong(option + " would overwrite the clip '" + clip +
                 "'; choose another name.");
  }
  return {};
}

Result<void> WriteTraceFile(const ClipTest& test, const std::string& path) {
  std::ofstream out(path, std::ios::binary | std::ios::trunc);
  if (out) test.WriteTrace(out);
  out.close();
  if (!out) {
    return Error{ErrorCode::kInternal,
                 "The trace '" + path +
                     "' could not be written; check the folder's permissions "
                     "and the room on the disk."};
  }
  return {};
}

/// Scales progress into a part of the whole.
ProgressCallback Part(const ProgressCallback& progress,
                      double from,
                      double to) {
  if (!progress) return {};
  return [&progress, from, to](double share) {
    progress(from + (to - from) * share);
  };
}

}  // namespace

bool IsSameFile(const std::string& a, const std::string& b) {
  std::error_code failed;
  return fs::equivalent(a, b, failed) && !failed;
}

Result<void> MeasureClipOptions::Validate(const std::string& clip) const {
  if (auto valid = test.Validate(); !valid) return valid;
  if (shot_fps && !(std::isfinite(*shot_fps) && *shot_fps >= kMinShotFps &&
                    *shot_fps <= kMaxShotFps)) {
    return Wrong(
        "The rate the scene was filmed at must lie between 1 and 100000 "
        "frames per second; give the camera's setting.");
  }
  if (overlay_path) {
    if (auto valid = CheckOutput("--overlay", *overlay_path, clip); !valid) {
      return valid;
    }
    if (fs::path(*overlay_path).extension() != ".mp4") {
      return Wrong("The name of --overlay must end in .mp4; give such a name.");
    }
  }
  if (trace_path) {
    if (auto valid = CheckOutput("--trace", *trace_path, clip); !valid) {
      return valid;
    }
  }
  if (overlay_path && trace_path &&
      (*overlay_path == *trace_path ||
       IsSameFile(*overlay_path, *trace_path))) {
    return Wrong("--overlay and --trace name the same file; choose two names.");
  }
  return {};
}

Result<MeasuredClip> MeasureFrames(FrameSource& source,
                                   ClipTest& test,
                                   const ProgressCallback& progress,
                                   std::stop_token stop) {
  while (true) {
    if (stop.stop_requested()) {
      return Error{ErrorCode::kInternal,
                   "The measurement was stopped; start it again."};
    }
    Result<std::optional<Frame>> next = source.Next();
    if (!next) return next.error();
    if (!next->has_value()) break;
    const Frame& frame = **next;
    test.Add(frame);
    if (progress) {
      const double duration_s = source.Info().duration_s;
      if (duration_s > 0.0) {
        progress(std::min(1.0, frame.TimeS() / duration_s));
      }
    }
  }
  MeasuredClip measured;
  measured.measurement = test.Finish();
  measured.info = source.Info();
  if (measured.measurement.ln_kinematic_viscosity_mm2_s) {
    const Interval ln_range =
        CoverageInterval(*measured.measurement.ln_kinematic_viscosity_mm2_s);
    measured.kinematic_viscosity_mm2_s = Interval{
        std::exp(ln_range.low), std::exp(ln_range.high), ln_range.level};
  }
  if (progress) progress(1.0);
  return measured;
}

Result<MeasuredClip> MeasureClip::Run(const std::string& clip,
                                      const ProgressCallback& progress,
                                      std::stop_token stop) const {
  if (auto valid = options_.Validate(clip); !valid) return valid.error();
  FileFrameSourceOptions source_options;
  source_options.shot_fps = options_.shot_fps;
  source_options.threads = options_.decoder_threads;

  auto source = OpenClip(clip, source_options);
  if (!source) return source.error();
  const std::unique_ptr<ClipTest> test = MakeClipTest(options_.test);
  const double measured_share = options_.overlay_path ? 0.4 : 1.0;
  const std::unique_ptr<FrameSource> ahead = Prefetch(std::move(*source));
  auto measured =
      MeasureFrames(*ahead, *test, Part(progress, 0.0, measured_share), stop);
  if (!measured) return measured.error();
  measured->clip = clip;

  if (options_.trace_path) {
    if (auto done = WriteTraceFile(*test, *options_.trace_path); !done) {
      return done.error();
    }
  }
  if (options_.overlay_path) {
    auto again = OpenClip(clip, source_options);
    if (!again) return again.error();
    auto done = WriteOverlay(**again,
                             *test,
                             *measured,
                             *options_.overlay_path,
                             Part(progress, measured_share, 1.0),
                             stop);
    if (!done) return done.error();
  }
  return measured;
}

}  // namespace flowkin
