#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "app/usecases/amounts.h"
#include "app/usecases/bench.h"
#include "app/usecases/journal.h"
#include "app/usecases/plan_pour.h"
#include "core/base/result.h"

namespace flowkin {

// What is printed, as the bytes of a PDF 1.5 file on A4. Texts may be any
// UTF-8.

/// What stands on a jar.
struct BatchLabel {
  std::string name;
  std::string role;  ///< "colour", "base coat", "activator", "medium"
  std::string brand;
  std::string colour;
  std::string mix;  ///< "paint 1 : medium 2", as she made it
  std::optional<double> volume_ml;
  std::optional<double> water_ml;
  std::optional<double> water_share;
  std::string mixed_on;       ///< day, ISO 8601
  std::optional<Span> ratio;  ///< flow against the base coat, 95 % interval
  std::string base_on;        ///< day of the base coat it was held against
  std::optional<double> temperature_c;
  std::string hazard;
  /// What the QR code holds; loads the recipe again.
  std::string code;
};

/// QR code of `text`, one row after the other, true for dark, without the quiet
/// zone. kInvalidArgument where it does not fit into one code.
struct CodeMatrix {
  int size = 0;
  std::vector<bool> dark;
};
Result<CodeMatrix> MakeCode(const std::string& text);

/// Labels of 90 x 55 mm, ten to a page, with marks to cut along.
Result<std::string> PrintLabels(const std::vector<BatchLabel>& labels);

/// The plan with empty columns to be filled in by hand at the bench.
Result<std::string> PrintBenchSheet(const PlanReport& report,
                                    const PlanRequest& request,
                                    AmountUnits units);

/// One reference, `students` places: the class batch, a place's share, steps,
/// cautions. `report` is the plan for all of them.
Result<std::string> PrintHandout(const PlanReport& report,
                                 const PlanRequest& request,
                                 int students,
                                 const std::string& title,
                                 AmountUnits units);

/// A photo as 8-bit sRGB rows of width x height x 3 bytes.
struct Photo {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgb;
  std::string caption;
};

/// One day with its photos, cups, paths to the match, pour and faults. Photos
/// are shown in the order given.
Result<std::string> PrintReport(const JournalPage& page,
                                const Board& board,
                                const std::vector<Photo>& photos);

}  // namespace flowkin
