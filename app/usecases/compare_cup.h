#pragma once

#include <string>
#include <vector>

#include "app/usecases/measure_clip.h"
#include "core/flow/compare.h"

namespace flowkin {

struct CompareCupOptions {
  /// How every clip is measured; outputs in it are not written.
  MeasureClipOptions clip;
  CompareOptions compare;
  /// Clips measured at the same time, >= 1.
  int workers = 2;

  /// kInvalidArgument with a sentence when a value is out of range.
  Result<void> Validate() const;
};

/// What the clips of one cup and of the base coat gave together.
struct ComparedCup {
  Comparison comparison;
  std::vector<MeasuredClip> reference;
  std::vector<MeasuredClip> cup;
  /// Those of the clips, each with its clip's name, then those of the
  /// comparison.
  std::vector<std::string> warnings;
};

/// The use-case: a cup against the base coat.
class CompareCup {
 public:
  explicit CompareCup(CompareCupOptions options)
      : options_(std::move(options)) {}

  /// Measures both sides and compares. A clip that holds no test is left out
  /// with a warning as long as its side keeps another.
  Result<ComparedCup> Run(const std::vector<std::string>& reference_clips,
                          const std::vector<std::string>& cup_clips,
                          const ProgressCallback& progress = {},
                          std::stop_token stop = {}) const;

  /// The comparison alone, for clips that were measured before.
  Result<ComparedCup> Compare(std::vector<MeasuredClip> reference,
                              std::vector<MeasuredClip> cup) const;

  /// From stopwatch readings of the same test, seconds.
  Result<ComparedCup> RunTimes(const std::vector<double>& reference_times_s,
                               const std::vector<double>& cup_times_s) const;

 private:
  CompareCupOptions options_;
};

}  // namespace flowkin
