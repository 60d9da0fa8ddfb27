#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/usecases/bench.h"
#include "app/usecases/journal_document.h"

namespace flowkin {
namespace {

struct ReadyArguments {
  bool json = false;
  std::string file, store;
  std::optional<std::int64_t> session;
  std::optional<double> dry_mm;
};

Result<DayFacts> Gather(const ReadyArguments& arguments, Terminal& terminal) {
  if (!arguments.session) {
    return ReadDayFacts(arguments.file == "-" ? "" : arguments.file,
                        terminal.in);
  }
  Result<Bench> bench = Bench::Open(arguments.store);
  if (!bench) return bench.error();
  if (auto opened = bench->OpenSession(*arguments.session); !opened) {
    return opened.error();
  }
  const Result<Board> board = bench->State(Now());
  if (!board) return board.error();
  return FactsOfBoard(*board);
}

void Print(std::ostream& out, const ReadyReport& report) {
  const Readiness& readiness = report.readiness;
  out << (readiness.ready ? "Nothing measured holds the pour back.\n"
                          : "Do not pour yet.\n");
  for (const Risk& risk : readiness.risks) {
    out << (risk.holds_back ? "Stop: " : "Mind: ");
    if (!risk.cup.empty()) out << "'" << risk.cup << "': ";
    out << risk.says << "\n      (" << BasisName(risk.basis) << ": "
        << risk.evidence << ")\n";
  }
  for (const std::string& fact : readiness.not_known) {
    out << "Not known: " << fact << ".\n";
  }
  for (const std::string& caution : report.cautions) {
    out << "Caution: " << caution << '\n';
  }
}

ExitStatus RunReady(const ReadyArguments& arguments, Terminal& terminal) {
  Result<DayFacts> facts = Gather(arguments, terminal);
  if (!facts) return Fail(terminal, facts.error());
  if (arguments.dry_mm) facts->dry_mm = *arguments.dry_mm;
  const Result<ReadyReport> report = CheckTable(*facts);
  if (!report) return Fail(terminal, arguments.json, report.error());
  if (arguments.json) {
    PrintDocument(terminal, ReadyDocument(*report));
  } else {
    Print(terminal.out, *report);
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddReadyCommand(CLI::App& parent) {
  auto arguments = std::make_shared<ReadyArguments>();
  CLI::App* app = parent.add_subcommand(
      "ready", "Looks at all cups together before the pour");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--file",
                  arguments->file,
                  "Table to read, as JSON; without it, standard input");
  app->add_option("--session", arguments->session, "Or a day at the bench");
  app->add_option("--store", arguments->store, "Book that holds it");
  app->add_option("--dry-mm", arguments->dry_mm, "Film as the plan gave it");
  return {app, [arguments](Terminal& terminal) {
            return RunReady(*arguments, terminal);
          }};
}

}  // namespace flowkin
