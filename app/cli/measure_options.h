#pragma once

#include <functional>
#include <string>

#include "app/cli/terminal.h"
#include "app/usecases/measure_clip.h"

namespace CLI {
class App;
}

namespace flowkin {

/// The options that say how a clip is measured, shared by the commands that
/// take clips. Filled while the command line is read.
struct ClipFlags {
  std::string test;
  std::optional<double> volume_ml;
  std::optional<double> mm_per_px;
  std::optional<double> shot_fps;

  /// Adds --test, --volume-ml, --mm-per-px and --shot-fps.
  void AddTo(CLI::App& app);
  /// Call once the command line was read; ranges are checked by the use-case.
  MeasureClipOptions ToOptions() const;
};

/// Draws a progress bar on `terminal.err`, only when that is a terminal and the
/// work has taken more than a second. Wiped when it goes out of scope.
class ProgressBar {
 public:
  ProgressBar(Terminal& terminal, std::string label);
  ~ProgressBar();
  ProgressBar(const ProgressBar&) = delete;
  ProgressBar& operator=(const ProgressBar&) = delete;

  void Show(double share);

 private:
  Terminal& terminal_;
  std::string label_;
  double started_s_;
  int shown_percent_ = -1;
};

}  // namespace flowkin
