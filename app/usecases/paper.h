#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/usecases/batch_label.h"
#include "app/usecases/bench.h"
#include "app/usecases/journal.h"
#include "app/usecases/plan_pour.h"
#include "app/usecases/words.h"
#include "core/base/result.h"

namespace flowkin {

/// A picture as 8-bit sRGB rows of width x height x 3 bytes.
struct Photo {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgb;
  std::string caption;
};

/// Pages of A4 that are drawn already. Texts on them may be any UTF-8.
class Paper {
 public:
  struct Sheets;  ///< what they are drawn on
  explicit Paper(std::shared_ptr<const Sheets> sheets);

  int pages() const;
  /// The bytes of a PDF 1.5 file.
  Result<std::string> Pdf() const;
  /// One page, from 0 on, as the file shows it.
  Result<Photo> Picture(int page, int width_px) const;

 private:
  std::shared_ptr<const Sheets> sheets_;
};

/// QR code of `text`, one row after the other, true for dark, without the quiet
/// zone. kInvalidArgument where it does not fit into one code.
struct CodeMatrix {
  int size = 0;
  std::vector<bool> dark;
};
Result<CodeMatrix> MakeCode(const std::string& text);

/// Labels of 90 x 53.4 mm, ten to a page, with lines to cut along. What the
/// codes hold is the same in every language.
Result<Paper> PrintLabels(const std::vector<BatchLabel>& labels,
                          const Words& words);

/// The plan with empty columns to be filled in by hand at the bench.
Result<Paper> PrintBenchSheet(const PlanReport& report,
                              const PlanRequest& request,
                              const Words& words);

/// One reference, `students` places: the class batch, a place's share, steps,
/// cautions. `report` is the plan for all of them.
Result<Paper> PrintHandout(const PlanReport& report,
                           const PlanRequest& request,
                           int students,
                           const std::string& title,
                           const Words& words);

/// One day with its photos, cups, paths to the match, pour and faults. Photos
/// are shown in the order given.
Result<Paper> PrintReport(const JournalPage& page,
                          const Board& board,
                          const std::vector<Photo>& photos,
                          const Words& words);

}  // namespace flowkin
