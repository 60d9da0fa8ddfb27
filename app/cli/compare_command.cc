#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

#include "app/cli/command.h"
#include "app/cli/comparison_text.h"
#include "app/cli/measure_options.h"
#include "app/usecases/compare_cup.h"

namespace flowkin {
namespace {

struct CompareFlags {
  ClipFlags test;
  std::vector<std::string> reference;
  std::vector<std::string> cup;
  std::vector<double> reference_times_s;
  std::vector<double> cup_times_s;
  double band = CompareOptions{}.band;
  double target = CompareOptions{}.target;
  bool json = false;
};

Json CompareDocument(const CompareFlags& flags, const ComparedCup& compared) {
  Json document;
  document["test"] = flags.test.test;
  AddComparison(document, compared.comparison);
  document["band"] = JsonNumber(flags.band);
  document["target"] = JsonNumber(flags.target);
  document["repeats"] = {{"reference", compared.comparison.num_reference},
                         {"cup", compared.comparison.num_cup}};
  document["warnings"] = compared.warnings;
  return document;
}

Result<ComparedCup> Run(const CompareFlags& flags, Terminal& terminal) {
  CompareCupOptions options;
  options.clip = flags.test.ToOptions();
  options.compare.band = flags.band;
  options.compare.target = flags.target;
  const bool clips = !flags.reference.empty() || !flags.cup.empty();
  const bool times =
      !flags.reference_times_s.empty() || !flags.cup_times_s.empty();
  if (clips && times) {
    return Error{ErrorCode::kInvalidArgument,
                 "Give either clips or stopwatch times, not both."};
  }
  if (times) {
    if (flags.reference_times_s.empty() || flags.cup_times_s.empty()) {
      return Error{ErrorCode::kInvalidArgument,
                   "Give both --reference-times and --cup-times."};
    }
    return CompareCup(options).RunTimes(flags.reference_times_s,
                                        flags.cup_times_s);
  }
  if (flags.reference.empty() || flags.cup.empty()) {
    return Error{ErrorCode::kInvalidArgument,
                 "Give clips of the base coat with --reference and of the cup "
                 "with --cup, or stopwatch times with --reference-times and "
                 "--cup-times."};
  }
  ProgressBar bar(
      terminal,
      "measuring " + std::to_string(flags.reference.size() + flags.cup.size()) +
          " clips");
  return CompareCup(options).Run(
      flags.reference, flags.cup, [&bar](double share) { bar.Show(share); });
}

ExitStatus RunCompare(const CompareFlags& flags, Terminal& terminal) {
  const Result<ComparedCup> compared = Run(flags, terminal);
  if (!compared) return Fail(terminal, compared.error());
  const bool refused = compared->comparison.outcome == Outcome::kRefused;
  if (!refused) {
    for (const std::string& text : compared->warnings) Warn(terminal, text);
  }
  if (flags.json) {
    PrintDocument(terminal, CompareDocument(flags, *compared));
  } else if (!refused) {
    PrintComparison(
        terminal.out, compared->comparison, flags.band, flags.target);
  }
  if (refused) {
    return Fail(terminal, ExitStatus::kRefused, compared->comparison.reason);
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddCompareCommand(CLI::App& parent) {
  CLI::App* app = parent.add_subcommand(
      "compare", "Compare a cup with the base coat, from clips or times");
  auto flags = std::make_shared<CompareFlags>();
  flags->test.AddTo(*app);
  app->add_option(
         "--reference", flags->reference, "Films of the base coat, one or more")
      ->type_name("CLIP...");
  app->add_option("--cup", flags->cup, "Films of the cup, one or more")
      ->type_name("CLIP...");
  app->add_option("--reference-times",
                  flags->reference_times_s,
                  "Stopwatch times of the base coat, seconds")
      ->type_name("S...");
  app->add_option("--cup-times",
                  flags->cup_times_s,
                  "Stopwatch times of the cup, same test, seconds")
      ->type_name("S...");
  app->add_option("--band",
                  flags->band,
                  "A match lies between 1/(1+band) and 1+band of the target")
      ->type_name("B")
      ->capture_default_str();
  app->add_option("--target", flags->target, "Wanted ratio to the base coat")
      ->type_name("R")
      ->capture_default_str();
  app->add_flag("--json", flags->json, "Print one JSON document");
  return {app,
          [flags](Terminal& terminal) { return RunCompare(*flags, terminal); }};
}

}  // namespace flowkin
