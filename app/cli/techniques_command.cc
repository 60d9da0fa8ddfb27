#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"
#include "app/cli/practice_options.h"
#include "app/usecases/amounts.h"
#include "app/usecases/book_practice.h"
#include "app/usecases/plan_document.h"

namespace flowkin {

void ListTechniques(const std::vector<Technique>& techniques,
                    bool json,
                    Terminal& terminal) {
  if (json) {
    PrintDocument(terminal, TechniquesDocument(techniques));
    return;
  }
  terminal.out << Padded("technique", 12) << PaddedLeft("base", 7)
               << PaddedLeft("colours", 9) << PaddedLeft("activator", 11)
               << "  mL/m2, source\n";
  for (const Technique& technique : techniques) {
    terminal.out << Padded(technique.name, 12)
                 << PaddedLeft(Short(technique.base_ml_per_m2.start), 7)
                 << PaddedLeft(Short(technique.colours_ml_per_m2.start), 9)
                 << PaddedLeft(Short(technique.activator_ml_per_m2.start), 11)
                 << "  " << SourceName(technique.source) << ": "
                 << technique.what << '\n';
  }
}

namespace {

struct TechniquesArguments {
  bool json = false;
  std::string store, file;
  Technique technique;
  std::vector<double> base, colours, activator;
};

ExitStatus Show(const TechniquesArguments& arguments, Terminal& terminal) {
  const Result<BookPractice> practice =
      ReadPractice(StorePath(arguments.store));
  if (!practice) return Fail(terminal, practice.error());
  ListTechniques(practice->techniques, arguments.json, terminal);
  return ExitStatus::kDone;
}

/// One number, or low, start and high.
Result<void> Take(const std::vector<double>& given,
                  const char* option,
                  Span& span) {
  if (given.empty()) return {};
  if (given.size() == 1) {
    span = {given[0], given[0], given[0]};
  } else if (given.size() == 3) {
    span = {given[0], given[1], given[2]};
  } else {
    return Error{ErrorCode::kInvalidArgument,
                 std::string(option) +
                     " takes one amount, or the low end, the start and the "
                     "high end."};
  }
  return {};
}

ExitStatus Keep(const TechniquesArguments& arguments, Terminal& terminal) {
  {
    Result<WorkshopStore> store = WorkshopStore::Open(
        StorePath(arguments.store), WorkshopStore::Access::kWrite);
    if (!store) return Fail(terminal, store.error());
    const Result<std::vector<Technique>> own = store->Techniques();
    if (!own) return Fail(terminal, own.error());
    const std::vector<Technique> table = WithOwn(*own);
    if (!arguments.file.empty()) {
      // Only what the file holds, not the whole table, becomes hers.
      const auto read = ReadTechniques(arguments.file, {});
      if (!read) return Fail(terminal, read.error());
      for (const Technique& technique : *read) {
        if (auto kept = store->KeepTechnique(technique, Now()); !kept) {
          return Fail(terminal, kept.error());
        }
      }
    } else {
      Technique technique = arguments.technique;
      for (const std::string& text : {technique.name, technique.what}) {
        if (auto fits = CheckName("technique", text); !fits) {
          return Fail(terminal, fits.error());
        }
      }
      for (const Technique& known : table) {
        if (known.name != technique.name) continue;
        const std::string what = technique.what;
        technique = known;
        if (!what.empty()) technique.what = what;
      }
      for (const Result<void>& taken :
           {Take(arguments.base, "--base", technique.base_ml_per_m2),
            Take(arguments.colours, "--colours", technique.colours_ml_per_m2),
            Take(arguments.activator,
                 "--activator",
                 technique.activator_ml_per_m2)}) {
        if (!taken) return Fail(terminal, taken.error());
      }
      if (auto kept = store->KeepTechnique(technique, Now()); !kept) {
        return Fail(terminal, kept.error());
      }
    }
  }
  return Show(arguments, terminal);
}

ExitStatus Drop(const TechniquesArguments& arguments, Terminal& terminal) {
  {
    Result<WorkshopStore> store = WorkshopStore::Open(
        StorePath(arguments.store), WorkshopStore::Access::kWrite);
    if (!store) return Fail(terminal, store.error());
    if (auto done = store->DropTechnique(arguments.technique.name, Now());
        !done) {
      return Fail(terminal, done.error());
    }
  }
  return Show(arguments, terminal);
}

}  // namespace

Command AddTechniquesCommand(CLI::App& parent) {
  auto arguments = std::make_shared<TechniquesArguments>();
  CLI::App* app = parent.add_subcommand(
      "techniques", "Amounts by technique: the starting ones and your own");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  AddStoreOption(*app, arguments->store);
  app->fallthrough();
  CLI::App* keep = app->add_subcommand("keep", "Keeps amounts of your own");
  CLI::Option* name =
      keep->add_option("NAME", arguments->technique.name, "The technique");
  keep->add_option("--what", arguments->technique.what, "What it is, in words");
  keep->add_option("--base", arguments->base, "Base coat, mL on a square metre")
      ->expected(1, 3);
  keep->add_option("--colours", arguments->colours, "Colours, the same")
      ->expected(1, 3);
  keep->add_option("--activator", arguments->activator, "Activator, the same")
      ->expected(1, 3);
  CLI::Option* file = keep->add_option(
      "--file", arguments->file, "Or all of a techniques document");
  name->excludes(file);
  CLI::App* drop = app->add_subcommand("drop", "Back to the starting amounts");
  drop->add_option("NAME", arguments->technique.name, "The technique")
      ->required();
  return {app, [arguments, keep, drop](Terminal& terminal) {
            if (keep->parsed()) return Keep(*arguments, terminal);
            if (drop->parsed()) return Drop(*arguments, terminal);
            return Show(*arguments, terminal);
          }};
}

}  // namespace flowkin
