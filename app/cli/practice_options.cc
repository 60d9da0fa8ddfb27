#include "app/cli/practice_options.h"

#include <CLI/CLI.hpp>
#include <utility>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/usecases/plan_document.h"

namespace flowkin {

void AddPracticeOptions(CLI::App& app, PracticeOptions& options) {
  AddStoreOption(app, options.store);
  app.add_flag("--no-book",
               options.no_book,
               "Leave out what the book knows: earlier pours, own amounts by "
               "technique, left-overs");
  app.add_option("--techniques",
                 options.techniques,
                 "File with your own amounts by technique");
  app.add_option("--today", options.today, "Another day than today");
}

Result<BookPractice> ReadPractice(const PracticeOptions& options) {
  Result<BookPractice> practice =
      ReadPractice(options.no_book ? std::string() : StorePath(options.store));
  if (!practice) return practice;
  Result<std::vector<Technique>> techniques =
      ReadTechniques(options.techniques, std::move(practice->techniques));
  if (!techniques) return techniques.error();
  practice->techniques = *std::move(techniques);
  return practice;
}

Result<std::pair<PlanReport, PlanRequest>> ReadPlan(
    const std::string& file,
    const PracticeOptions& options,
    int times,
    Terminal& terminal) {
  const Result<BookPractice> practice = ReadPractice(options);
  if (!practice) return practice.error();
  const Result<Day> today = ReadToday(options.today);
  if (!today) return today.error();
  Result<PlanRequest> request = ReadPlanRequest(
      file == "-" ? "" : file, terminal.in, practice->techniques);
  if (!request) return request.error();
  UsePractice(*practice, *today, *request);
  for (Support& support : request->supports) support.count *= times;
  Result<PlanReport> report = PlanPour(*request);
  if (!report) return report.error();
  return std::pair(*std::move(report), *std::move(request));
}

}  // namespace flowkin
