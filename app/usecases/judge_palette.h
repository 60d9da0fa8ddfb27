#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/usecases/advise_dose.h"
#include "app/usecases/compare_cup.h"

namespace flowkin {

struct PaletteCup {
  std::string name;
  double volume_ml = 0.0;  ///< before any addition, > 0
  double target = 1.0;     ///< wanted ratio to the base coat
  std::vector<std::string> clips;
};

/// Cups that were filmed with one test, and the base coat they belong to.
struct PaletteSet {
  /// How the clips are measured; outputs in it are not written.
  MeasureClipOptions clip;
  std::string base_name;
  std::vector<std::string> base_clips;
  std::vector<PaletteCup> cups;
};

struct JudgedCup {
  std::string name;
  ComparedCup compared;
  /// Empty when the comparison was refused or says next to nothing.
  std::optional<DoseReport> dose;
};

struct JudgePaletteOptions {
  double band = 0.15;
  double smallest_step_ml = 0.25;
  int workers = 2;
};

/// The use-case: every cup of a palette against its base coat, and what to add
/// to each next, the paint's brand unknown. Measures each clip once.
class JudgePalette {
 public:
  explicit JudgePalette(JudgePaletteOptions options) : options_(options) {}

  /// Results stand in the order of `set.cups`.
  Result<std::vector<JudgedCup>> Run(const PaletteSet& set,
                                     const ProgressCallback& progress = {},
                                     std::stop_token stop = {}) const;

 private:
  JudgePaletteOptions options_;
};

}  // namespace flowkin
