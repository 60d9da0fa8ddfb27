#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>
#include <utility>

#include "app/cli/book_options.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"
#include "app/cli/label_document.h"
#include "app/cli/plan_document.h"
#include "app/usecases/load_photo.h"
#include "app/usecases/paper.h"

namespace flowkin {
namespace {

struct PrintArguments {
  bool json = false;
  bool us = false;
  std::string file, out, store, techniques, title;
  std::optional<SessionId> session;
  int students = 8;
};

struct SessionView {
  JournalPage page;
  Board board;
};

/// One session as the journal and as the bench shows it, at its last entry.
Result<SessionView> ReadSession(const PrintArguments& arguments) {
  const std::string store = arguments.store.empty()
                                ? CalibrationStore::DefaultPath()
                                : arguments.store;
  const Result<Journal> journal = Journal::Open(store);
  if (!journal) return journal.error();
  Result<JournalPage> page = journal->Page(*arguments.session);
  if (!page) return page.error();
  Result<Bench> bench = Bench::Open(store);
  if (!bench) return bench.error();
  if (auto opened = bench->OpenSession(*arguments.session); !opened) {
    return opened.error();
  }
  Result<Board> board = bench->State(page->line.last);
  if (!board) return board.error();
  return SessionView{*std::move(page), *std::move(board)};
}

std::vector<BatchLabel> LabelsOf(const SessionView& day) {
  std::vector<BatchLabel> labels;
  std::string base_on;
  for (const BoardCup& cup : day.board.cups) {
    const BenchCup* known = day.page.session.FindCup(cup.id);
    if (cup.base_coat && known != nullptr && !known->tests.empty()) {
      base_on = FormatUtc(known->tests.back().at).substr(0, 10);
    }
  }
  for (const BoardCup& cup : day.board.cups) {
    BatchLabel label;
    label.name = cup.details.label;
    label.role = PourRoleName(cup.base_coat ? PourRole::kBaseCoat
                              : cup.details.role == CupRole::kActivator
                                  ? PourRole::kActivator
                                  : PourRole::kColour);
    label.brand = cup.details.paint.brand;
    label.colour = cup.details.paint.colour;
    label.volume_ml = cup.volume_now_ml;
    const BenchCup* known = day.page.session.FindCup(cup.id);
    if (known != nullptr && known->WaterMl() > 0.0) {
      label.water_ml = known->WaterMl();
      label.water_share = cup.water_share;
    }
    label.mixed_on = FormatUtc(day.page.line.begun).substr(0, 10);
    if (cup.comparison && cup.comparison->outcome == Outcome::kMeasured &&
        !cup.before_addition) {
      label.ratio = Span{cup.comparison->interval.low,
                         cup.comparison->ratio.Ratio(),
                         cup.comparison->interval.high};
      label.base_on = base_on;
    }
    label.temperature_c = day.board.room_c;
    label.hazard = "Paint: follow its label. No food container.";
    label.code = LabelDocument(label).dump(
        -1, ' ', true, Json::error_handler_t::replace);
    labels.push_back(std::move(label));
  }
  return labels;
}

ExitStatus Save(const PrintArguments& arguments,
                const Result<std::string>& pdf,
                Terminal& terminal,
                Json document) {
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
    const Result<SessionView> day = ReadSession(arguments);
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
  return Save(arguments, PrintLabels(labels), terminal, document);
}

/// The plan of the document, for `times` as many of every canvas.
Result<std::pair<PlanReport, PlanRequest>> ReadPlan(
    const PrintArguments& arguments, Terminal& terminal, int times) {
  const auto techniques = ReadTechniques(arguments.techniques);
  if (!techniques) return techniques.error();
  Result<PlanRequest> request = ReadPlanRequest(
      arguments.file == "-" ? "" : arguments.file, terminal.in, *techniques);
  if (!request) return request.error();
  for (Support& support : request->supports) support.count *= times;
  Result<PlanReport> report = PlanPour(*request);
  if (!report) return report.error();
  return std::pair(*std::move(report), *std::move(request));
}

ExitStatus PrintSheetCommand(const PrintArguments& arguments,
                             Terminal& terminal) {
  const auto plan = ReadPlan(arguments, terminal, 1);
  if (!plan) return Fail(terminal, plan.error());
  return Save(
      arguments,
      PrintBenchSheet(plan->first,
                      plan->second,
                      arguments.us ? AmountUnits::kUs : AmountUnits::kMetric),
      terminal,
      {});
}

ExitStatus PrintHandoutCommand(const PrintArguments& arguments,
                               Terminal& terminal) {
  const auto plan = ReadPlan(arguments, terminal, arguments.students);
  if (!plan) return Fail(terminal, plan.error());
  Json document;
  document["students"] = arguments.students;
  document["plan"] = PlanDocument(plan->first, plan->second);
  return Save(
      arguments,
      PrintHandout(plan->first,
                   plan->second,
                   arguments.students,
                   arguments.title,
                   arguments.us ? AmountUnits::kUs : AmountUnits::kMetric),
      terminal,
      document);
}

ExitStatus PrintReportCommand(const PrintArguments& arguments,
                              Terminal& terminal) {
  const Result<SessionView> day = ReadSession(arguments);
  if (!day) return Fail(terminal, day.error());
  constexpr int kMost_px = 1600;  // about 220 to the inch across the page
  std::vector<Photo> photos;
  for (const BenchJournal::Photo& kept : day->page.session.journal().photos) {
    Result<Photo> photo = LoadPhoto(kept.photo.path, kMost_px);
    if (!photo) {
      // A lost photo does not cost her the report.
      Warn(terminal, photo.error().message);
      continue;
    }
    photo->caption = PhotoKindName(kept.photo.kind);
    if (!kept.photo.text.empty()) photo->caption += ": " + kept.photo.text;
    photos.push_back(*std::move(photo));
  }
  Json document;
  document["photos"] = photos.size();
  return Save(arguments,
              PrintReport(day->page, day->board, photos),
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
    actions->emplace_back(action, run);
    return action;
  };
  const auto add_session = [&](CLI::App* action) {
    action->add_option(
        "--store", arguments->store, "Book that holds the session");
    return action->add_option(
        "--session", arguments->session, "Number of the session");
  };
  const auto add_plan = [&](CLI::App* action) {
    action->add_option("--file", arguments->file, "Plan to read, as JSON")
        ->required();
    action->add_option("--techniques",
                       arguments->techniques,
                       "File with your own amounts by technique");
    action->add_flag("--us", arguments->us, "Print US ounces");
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
