#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>
#include <utility>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/practice_options.h"
#include "app/usecases/label_document.h"
#include "app/usecases/plan_document.h"
#include "app/usecases/print_day.h"
#include "app/usecases/write_file.h"

namespace flowkin {
namespace {

struct PrintArguments {
  bool json = false;
  bool us = false;
  std::string file, out, title;
  std::string language = "en";
  PracticeOptions practice;
  std::optional<SessionId> session;
  int students = 8;
};

Words WordsOf(const PrintArguments& arguments) {
  return Words(
      LanguageFromCode(arguments.language).value_or(Language::kEnglish),
      arguments.us ? AmountUnits::kUs : AmountUnits::kMetric);
}

ExitStatus Save(const PrintArguments& arguments,
                const Result<Paper>& paper,
                Terminal& terminal,
                Json document) {
  const Result<std::string> pdf =
      paper ? paper->Pdf() : Result<std::string>(paper.error());
  if (!pdf) return Fail(terminal, pdf.error());
  if (const Result<void> written = WriteWhole(arguments.out, *pdf); !written) {
    return Fail(terminal, written.error());
  }
  if (arguments.json) {
    document["outcome"] = "printed";
    document["file"] = arguments.out;
    PrintDocument(terminal, document);
  } else {
    terminal.out << "Written: " << arguments.out << '\n';
  }
  return ExitStatus::kDone;
}

ExitStatus PrintLabelsCommand(const PrintArguments& arguments,
                              Terminal& terminal) {
  std::vector<BatchLabel> labels;
  if (arguments.session) {
    const Result<DayAtBench> day =
        ReadDay(StorePath(arguments.practice.store), *arguments.session);
    if (!day) return Fail(terminal, day.error());
    labels = LabelsOf(*day);
  } else {
    Result<std::vector<BatchLabel>> read =
        ReadLabels(arguments.file == "-" ? "" : arguments.file, terminal.in);
    if (!read) return Fail(terminal, read.error());
    labels = *std::move(read);
  }
  Json document;
  document["labels"] = Json::array();
  for (const BatchLabel& label : labels) {
    document["labels"].push_back(LabelDocument(label));
  }
  return Save(
      arguments, PrintLabels(labels, WordsOf(arguments)), terminal, document);
}

ExitStatus PrintSheetCommand(const PrintArguments& arguments,
                             Terminal& terminal) {
  const auto plan = ReadPlan(arguments.file, arguments.practice, 1, terminal);
  if (!plan) return Fail(terminal, plan.error());
  return Save(arguments,
              PrintBenchSheet(plan->first, plan->second, WordsOf(arguments)),
              terminal,
              {});
}

ExitStatus PrintHandoutCommand(const PrintArguments& arguments,
                               Terminal& terminal) {
  const auto plan = ReadPlan(
      arguments.file, arguments.practice, arguments.students, terminal);
  if (!plan) return Fail(terminal, plan.error());
  Json document;
  document["students"] = arguments.students;
  document["plan"] = PlanDocument(plan->first, plan->second);
  return Save(arguments,
              PrintHandout(plan->first,
                           plan->second,
                           arguments.students,
                           arguments.title,
                           WordsOf(arguments)),
              terminal,
              document);
}

ExitStatus PrintReportCommand(const PrintArguments& arguments,
                              Terminal& terminal) {
  const Result<DayAtBench> day =
      ReadDay(StorePath(arguments.practice.store), *arguments.session);
  if (!day) return Fail(terminal, day.error());
  const Words words = WordsOf(arguments);
  const DayPhotos photos = PhotosOf(day->page, words);
  // A lost photo does not cost her the report.
  for (const std::string& lost : photos.lost) Warn(terminal, lost);
  Json document;
  document["photos"] = photos.photos.size();
  return Save(arguments,
              PrintReport(day->page, day->board, photos.photos, words),
              terminal,
              document);
}

}  // namespace

Command AddPrintCommand(CLI::App& parent) {
  auto arguments = std::make_shared<PrintArguments>();
  using Run = ExitStatus (*)(const PrintArguments&, Terminal&);
  auto actions = std::make_shared<std::vector<std::pair<CLI::App*, Run>>>();
  CLI::App* app = parent.add_subcommand(
      "print", "Labels, bench sheet, report of a session, class handout: PDF");
  app->require_subcommand(1);
  const auto add = [&](const char* name, const char* what, Run run) {
    CLI::App* action = app->add_subcommand(name, what);
    action->add_option("--out", arguments->out, "PDF file to write")
        ->required();
    action->add_flag("--json", arguments->json, "Print one JSON document");
    action->add_flag("--us", arguments->us, "Print US ounces");
    action->add_option("--language", arguments->language, "Of the page")
        ->check(CLI::IsMember({"en", "de", "fr"}));
    actions->emplace_back(action, run);
    return action;
  };
  const auto add_session = [&](CLI::App* action) {
    action->add_option(
        "--store", arguments->practice.store, "Book that holds the session");
    return action->add_option(
        "--session", arguments->session, "Number of the session");
  };
  const auto add_plan = [&](CLI::App* action) {
    action->add_option("--file", arguments->file, "Plan to read, as JSON")
        ->required();
    AddPracticeOptions(*action, arguments->practice);
  };
  CLI::App* labels = add("labels",
                         "Labels for jars, with a code that holds the recipe",
                         PrintLabelsCommand);
  labels->add_option("--file",
                     arguments->file,
                     "Labels to read, as JSON; without it, standard input");
  add_session(labels);
  add_plan(add("sheet", "A plan to fill in at the bench", PrintSheetCommand));
  add_session(
      add("report", "A session with photos and plots", PrintReportCommand))
      ->required();
  CLI::App* handout =
      add("handout", "A class: the batch, places, steps", PrintHandoutCommand);
  add_plan(handout);
  handout->add_option("--students", arguments->students, "Places in the class")
      ->check(CLI::Range(1, 500));
  handout->add_option("--title", arguments->title, "What stands on top");
  return {app, [arguments, actions](Terminal& terminal) {
            for (const auto& [action, run] : *actions) {
              if (action->parsed()) return run(*arguments, terminal);
            }
            return ExitStatus::kFailed;
          }};
}

}  // namespace flowkin
