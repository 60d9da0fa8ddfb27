#include <CLI/CLI.hpp>
#include <fstream>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"
#include "app/usecases/read_file.h"
#include "app/usecases/write_file.h"

namespace flowkin {
namespace {

struct ForgetArguments {
  bool json = false, yes = false, undo = false, colour_given = false;
  std::string store, brand, colour;
};

ExitStatus RunForget(const ForgetArguments& arguments, Terminal& terminal) {
  Result<CalibrationStore> book = OpenBook(arguments.store, /*write=*/true);
  if (!book) return Fail(terminal, book.error());
  if (!arguments.undo && !arguments.yes) {
    terminal.err << "Forget "
                 << (arguments.colour_given ? arguments.colour + " of "
                                            : std::string())
                 << arguments.brand << "? It can be undone with --undo. [y/N] "
                 << std::flush;
    std::string answer;
    std::getline(terminal.in, answer);
    if (answer != "y" && answer != "Y" && answer != "yes") {
      return Fail(terminal,
                  ExitStatus::kRefused,
                  "Nothing was forgotten; answer y or give --yes to forget.");
    }
  }
  const Result<ForgetReport> report =
      arguments.undo
          ? RestoreBrand(*book, arguments.brand, NowUtc())
          : ForgetBrand(*book,
                        arguments.brand,
                        arguments.colour_given
                            ? std::optional<std::string>(arguments.colour)
                            : std::nullopt,
                        NowUtc());
  if (!report) return Fail(terminal, report.error());
  if (arguments.json) {
    Json document;
    document["outcome"] = arguments.undo ? "restored" : "forgotten";
    document["brand"] = arguments.brand;
    document["cups"] = report->cups;
    PrintDocument(terminal, document);
  } else {
    terminal.out << report->cups << " cup(s) of " << arguments.brand
                 << (arguments.undo ? " count again.\n"
                                    : " count no more; --undo brings them "
                                      "back.\n");
  }
  return ExitStatus::kDone;
}

struct TransferArguments {
  bool json = false;
  std::string store, file;
};

ExitStatus RunExport(const TransferArguments& arguments, Terminal& terminal) {
  const Result<CalibrationStore> book =
      OpenBook(arguments.store, /*write=*/false);
  if (!book) return Fail(terminal, book.error());
  const Result<std::vector<StoredCup>> cups = book->AllCups();
  if (!cups) return Fail(terminal, cups.error());
  const Json document = BookDocument(*cups);
  if (arguments.file.empty()) {
    PrintDocument(terminal, document);
    return ExitStatus::kDone;
  }
  if (const auto done = WriteWhole(arguments.file, document.dump(2) + '\n');
      !done) {
    return Fail(terminal, done.error());
  }
  if (arguments.json) {
    Json answer;
    answer["outcome"] = "exported";
    answer["cups"] = cups->size();
    PrintDocument(terminal, answer);
  } else {
    terminal.out << cups->size() << " cup(s) written.\n";
  }
  return ExitStatus::kDone;
}

ExitStatus RunImport(const TransferArguments& arguments, Terminal& terminal) {
  Result<std::vector<StoredCup>> cups = [&] {
    if (arguments.file.empty()) return ReadBookDocument(terminal.in);
    Result<std::ifstream> file = OpenToRead(arguments.file);
    if (!file) return Result<std::vector<StoredCup>>(file.error());
    return ReadBookDocument(*file);
  }();
  if (!cups) return Fail(terminal, cups.error());
  Result<CalibrationStore> book = OpenBook(arguments.store, /*write=*/true);
  if (!book) return Fail(terminal, book.error());
  const Result<ImportReport> report = ImportCups(*book, *cups);
  if (!report) return Fail(terminal, report.error());
  if (arguments.json) {
    Json document;
    document["outcome"] = "imported";
    document["added"] = report->added;
    document["continued"] = report->continued;
    document["known"] = report->known;
    PrintDocument(terminal, document);
  } else {
    terminal.out << report->added << " cup(s) added, " << report->continued
                 << " continued, " << report->known << " known already.\n";
  }
  return ExitStatus::kDone;
}

ExitStatus RunBackup(const TransferArguments& arguments, Terminal& terminal) {
  const Result<CalibrationStore> book =
      OpenBook(arguments.store, /*write=*/false);
  if (!book) return Fail(terminal, book.error());
  if (const auto done = book->BackUp(arguments.file); !done) {
    return Fail(terminal, done.error());
  }
  if (arguments.json) {
    Json document;
    document["outcome"] = "backed up";
    PrintDocument(terminal, document);
  } else {
    terminal.out << "The book was copied to " << arguments.file << ".\n";
  }
  return ExitStatus::kDone;
}

Command AddTransfer(CLI::App& parent,
                    const char* name,
                    const char* description,
                    const char* file,
                    ExitStatus (*run)(const TransferArguments&, Terminal&)) {
  auto arguments = std::make_shared<TransferArguments>();
  CLI::App* app = parent.add_subcommand(name, description);
  app->add_flag("--json", arguments->json, "Print one JSON document");
  AddStoreOption(*app, arguments->store);
  app->add_option("FILE", arguments->file, file);
  return {app, [arguments, run](Terminal& terminal) {
            return run(*arguments, terminal);
          }};
}

}  // namespace

Command AddForgetCommand(CLI::App& parent) {
  auto arguments = std::make_shared<ForgetArguments>();
  CLI::App* app = parent.add_subcommand(
      "forget", "Takes a brand or a colour out of the curves; can be undone");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_flag("--yes", arguments->yes, "Do not ask");
  app->add_flag("--undo", arguments->undo, "Bring the brand back");
  AddStoreOption(*app, arguments->store);
  app->add_option("--brand", arguments->brand, "Brand of the paint")
      ->required();
  CLI::Option* colour =
      app->add_option("--colour", arguments->colour, "Only this colour of it");
  return {app, [arguments, colour](Terminal& terminal) {
            arguments->colour_given = colour->count() > 0;
            return RunForget(*arguments, terminal);
          }};
}

Command AddExportCommand(CLI::App& parent) {
  return AddTransfer(parent,
                     "export",
                     "Writes the brand book as JSON, to keep or to give away",
                     "Without it, standard output",
                     RunExport);
}

Command AddImportCommand(CLI::App& parent) {
  return AddTransfer(parent,
                     "import",
                     "Merges an exported brand book into this one",
                     "Without it, standard input",
                     RunImport);
}

Command AddBackupCommand(CLI::App& parent) {
  Command command =
      AddTransfer(parent,
                  "backup",
                  "Copies the brand book, whole even while it is in use",
                  "New file",
                  RunBackup);
  command.app->get_option("FILE")->required();
  return command;
}

}  // namespace flowkin
