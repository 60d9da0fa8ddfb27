#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"
#include "app/usecases/amounts.h"
#include "app/usecases/shelf_document.h"

namespace flowkin {
namespace {

struct ShelfArguments {
  bool json = false;
  bool us = false;
  bool watered = false;
  std::string file, today, store, name, role = "colour", mixed_on;
  double volume_ml = 0.0;
  JarId jar = 0;
  std::optional<double> take_ml;
};

ExitStatus Print(const ShelfArguments& arguments,
                 const std::vector<ShelfJar>& shelf,
                 Terminal& terminal) {
  const Result<Day> today = ReadToday(arguments.today);
  if (!today) return Fail(terminal, today.error());
  if (arguments.json) {
    PrintDocument(terminal, ShelfDocument(shelf, *today));
    return ExitStatus::kDone;
  }
  for (const ShelfJar& jar : UseFirst(shelf)) {
    if (jar.id != 0)
      terminal.out << PaddedLeft(std::to_string(jar.id), 4) << "  ";
    terminal.out << Padded(JarStateName(StateOfJar(jar.jar, *today)), 11)
                 << Padded(jar.jar.name, 28)
                 << PaddedLeft(VolumeText(jar.jar.volume_ml,
                                          arguments.us ? AmountUnits::kUs
                                                       : AmountUnits::kMetric),
                               12)
                 << "  keeps until "
                 << FormatDay(
                        HowLongItKeeps(jar.jar.mixed, jar.jar.watered).discard)
                 << '\n';
  }
  terminal.out << "Smell, strain and test every jar before it is used; what "
                  "smells sour or curdles is thrown away as local rules say.\n";
  return ExitStatus::kDone;
}

ExitStatus PrintFile(const ShelfArguments& arguments, Terminal& terminal) {
  const Result<std::vector<ShelfJar>> shelf =
      ReadShelf(arguments.file == "-" ? "" : arguments.file, terminal.in);
  if (!shelf) return Fail(terminal, shelf.error());
  return Print(arguments, *shelf, terminal);
}

/// Does `verb` on the book's shelf, then prints it.
template <typename Verb>
ExitStatus Change(const ShelfArguments& arguments,
                  Terminal& terminal,
                  const Verb& verb) {
  Result<WorkshopStore> store = WorkshopStore::Open(
      StorePath(arguments.store), WorkshopStore::Access::kWrite);
  if (!store) return Fail(terminal, store.error());
  if (const Result<void> done = verb(*store); !done) {
    return Fail(terminal, done.error());
  }
  const auto shelf = store->Shelf();
  if (!shelf) return Fail(terminal, shelf.error());
  return Print(arguments, *shelf, terminal);
}

ExitStatus RunList(const ShelfArguments& arguments, Terminal& terminal) {
  const Result<WorkshopStore> store = WorkshopStore::Open(
      StorePath(arguments.store), WorkshopStore::Access::kRead);
  if (!store) return Fail(terminal, store.error());
  const auto shelf = store->Shelf();
  if (!shelf) return Fail(terminal, shelf.error());
  return Print(arguments, *shelf, terminal);
}

ExitStatus RunAdd(const ShelfArguments& arguments, Terminal& terminal) {
  std::vector<ShelfJar> jars;
  if (!arguments.file.empty()) {
    auto read =
        ReadShelf(arguments.file == "-" ? "" : arguments.file, terminal.in);
    if (!read) return Fail(terminal, read.error());
    jars = *std::move(read);
  } else {
    if (auto fits = CheckName("name", arguments.name); !fits) {
      return Fail(terminal, fits.error());
    }
    ShelfJar jar;
    jar.jar.name = arguments.name;
    jar.jar.volume_ml = arguments.volume_ml;
    jar.jar.watered = arguments.watered;
    if (!jar.SetRole(arguments.role)) {
      return Fail(terminal,
                  ExitStatus::kWrongUse,
                  "The role must be 'base coat', 'colour', 'activator' or "
                  "'medium'.");
    }
    const Result<Day> mixed = ReadToday(arguments.mixed_on);
    if (!mixed) return Fail(terminal, mixed.error());
    jar.jar.mixed = *mixed;
    jars.push_back(std::move(jar));
  }
  return Change(arguments, terminal, [&](WorkshopStore& store) -> Result<void> {
    for (const ShelfJar& jar : jars) {
      if (auto put = store.PutOnShelf(jar, Now()); !put) return put.error();
    }
    return {};
  });
}

ExitStatus RunTake(const ShelfArguments& arguments, Terminal& terminal) {
  return Change(arguments, terminal, [&](WorkshopStore& store) -> Result<void> {
    double take_ml = arguments.take_ml.value_or(0.0);
    if (!arguments.take_ml) {
      const auto shelf = store.Shelf();
      if (!shelf) return shelf.error();
      for (const ShelfJar& jar : *shelf) {
        if (jar.id == arguments.jar) take_ml = jar.jar.volume_ml;
      }
    }
    return store.TakeFromJar(arguments.jar, take_ml, Now());
  });
}

}  // namespace

Command AddShelfCommand(CLI::App& parent) {
  auto arguments = std::make_shared<ShelfArguments>();
  using Run = ExitStatus (*)(const ShelfArguments&, Terminal&);
  auto actions = std::make_shared<std::vector<std::pair<CLI::App*, Run>>>();
  CLI::App* app = parent.add_subcommand(
      "shelf", "What is left over, in the order in which to use it");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--file",
                  arguments->file,
                  "Shelf to read, as JSON; without it, standard input");
  app->add_option("--today", arguments->today, "Another day than today");
  app->add_flag("--us", arguments->us, "Print US ounces");
  AddStoreOption(*app, arguments->store);
  app->fallthrough();
  const auto add = [&](const char* name, const char* what, Run run) {
    CLI::App* action = app->add_subcommand(name, what);
    actions->emplace_back(action, run);
    return action;
  };
  add("list", "The jars in the book", RunList);
  CLI::App* put = add("add", "Puts a jar, or those of --file, there", RunAdd);
  put->add_option("NAME", arguments->name, "What is in it");
  put->add_option(
      "--role", arguments->role, "base coat, colour, activator or medium");
  put->add_option("--volume-ml", arguments->volume_ml, "How much");
  put->add_option(
      "--mixed-on", arguments->mixed_on, "Day it was made; else today");
  put->add_flag("--watered", arguments->watered, "Water was added to it");
  CLI::App* take = add("take", "Takes some or all out of a jar", RunTake);
  take->add_option("JAR", arguments->jar, "Number of the jar")->required();
  take->add_option(
      "--ml", arguments->take_ml, "So much; without it all; below 0 puts back");
  return {app, [arguments, actions](Terminal& terminal) {
            for (const auto& [action, run] : *actions) {
              if (action->parsed()) return run(*arguments, terminal);
            }
            return PrintFile(*arguments, terminal);
          }};
}

}  // namespace flowkin
