#pragma once

#include <string>
#include <utility>
#include <vector>

#include "app/cli/terminal.h"
#include "app/usecases/book_practice.h"
#include "app/usecases/plan_pour.h"
#include "core/base/result.h"

namespace CLI {
class App;
}

namespace flowkin {

/// Where a plan gets techniques, left-overs and earlier pours from.
struct PracticeOptions {
  std::string store;       ///< empty: the book in the data folder
  std::string techniques;  ///< file in front of the book's
  std::string today;
  bool no_book = false;
};

void AddPracticeOptions(CLI::App& app, PracticeOptions& options);
Result<BookPractice> ReadPractice(const PracticeOptions& options);

/// The plan of a document ("-" is standard input), for `times` as many of every
/// canvas.
Result<std::pair<PlanReport, PlanRequest>> ReadPlan(
    const std::string& file,
    const PracticeOptions& options,
    int times,
    Terminal& terminal);

/// Prints the table (techniques_command.cc).
void ListTechniques(const std::vector<Technique>& techniques,
                    bool json,
                    Terminal& terminal);

}  // namespace flowkin
