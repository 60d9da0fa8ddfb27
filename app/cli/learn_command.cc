#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"

namespace flowkin {
namespace {

struct LearnArguments {
  bool json = false;
  std::string file, store, brand, colour, batch;
};

const char* OutcomeName(AppendOutcome outcome) {
  switch (outcome) {
    case AppendOutcome::kAdded:
      return "learned";
    case AppendOutcome::kContinued:
      return "continued";
    case AppendOutcome::kKnown:
      return "known";
  }
  return "";
}

ExitStatus RunLearn(const LearnArguments& arguments, Terminal& terminal) {
  Result<CupDocument> cup = ReadCupDocument(arguments.file, terminal.in);
  if (!cup) return Fail(terminal, cup.error());
  if (!arguments.brand.empty()) cup->paint.brand = arguments.brand;
  if (!arguments.colour.empty()) cup->paint.colour = arguments.colour;
  if (!arguments.batch.empty()) cup->batch = arguments.batch;
  if (cup->paint.brand.empty()) {
    return Fail(terminal,
                ExitStatus::kWrongUse,
                "There is no brand; name it with --brand.");
  }
  for (const Result<void>& fits : {CheckName("brand", cup->paint.brand),
                                   CheckName("colour", cup->paint.colour),
                                   CheckName("batch", cup->batch)}) {
    if (!fits) return Fail(terminal, fits.error());
  }
  Result<CalibrationStore> book = OpenBook(arguments.store, /*write=*/true);
  if (!book) return Fail(terminal, book.error());
  const Result<LearnReport> report =
      LearnCup(*book, ToStoredCup(*cup, NowUtc()));
  if (!report) return Fail(terminal, arguments.json, report.error());
  if (arguments.json) {
    Json document;
    document["outcome"] = OutcomeName(report->outcome);
    document["brand"] = cup->paint.brand;
    document["colour"] =
        cup->paint.colour.empty() ? Json(nullptr) : Json(cup->paint.colour);
    document["cups"] = report->cups;
    document["tests"] = report->tests;
    document["curve"] =
        report->cups > 0 ? CurveDocument(report->curve) : Json(nullptr);
    PrintDocument(terminal, document);
    return ExitStatus::kDone;
  }
  switch (report->outcome) {
    case AppendOutcome::kAdded:
      terminal.out << "Learned.";
      break;
    case AppendOutcome::kContinued:
      terminal.out << "Learned; it continues a cup that was in the book.";
      break;
    case AppendOutcome::kKnown:
      terminal.out << "This cup was in the book already.";
      break;
  }
  if (report->cups > 0) {
    terminal.out << " " << cup->paint.brand << ": "
                 << CurveSentence(report->curve) << " (" << report->cups
                 << " cup(s), " << report->tests << " tests).\n";
  } else {
    terminal.out << " Its brand was forgotten; 'flowkin forget --undo' brings "
                    "it back.\n";
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddLearnCommand(CLI::App& parent) {
  auto arguments = std::make_shared<LearnArguments>();
  CLI::App* app = parent.add_subcommand(
      "learn", "Puts a cup's history into its brand's curve");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--file",
                  arguments->file,
                  "Cup to read, as JSON; without it, standard input");
  AddStoreOption(*app, arguments->store);
  app->add_option("--brand", arguments->brand, "Brand of the paint");
  app->add_option("--colour", arguments->colour, "Its colour, as you call it");
  app->add_option("--batch", arguments->batch, "The mix this cup came from");
  return {app, [arguments](Terminal& terminal) {
            return RunLearn(*arguments, terminal);
          }};
}

}  // namespace flowkin
