#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/command.h"
#include "app/cli/shelf_document.h"
#include "app/usecases/amounts.h"

namespace flowkin {
namespace {

struct ShelfArguments {
  bool json = false;
  bool us = false;
  std::string file, today;
};

ExitStatus RunShelf(const ShelfArguments& arguments, Terminal& terminal) {
  const Result<Day> today = ReadToday(arguments.today);
  if (!today) return Fail(terminal, today.error());
  const Result<std::vector<ShelfJar>> shelf =
      ReadShelf(arguments.file == "-" ? "" : arguments.file, terminal.in);
  if (!shelf) return Fail(terminal, shelf.error());
  std::vector<Jar> jars;
  for (const ShelfJar& jar : *shelf) jars.push_back(jar.jar);
  jars = UseFirst(std::move(jars));
  Json document;
  document["jars"] = Json::array();
  for (const Jar& jar : jars) {
    const KeepsUntil keeps = HowLongItKeeps(jar.mixed, jar.watered);
    const char* state = JarStateName(StateOfJar(jar, *today));
    if (arguments.json) {
      document["jars"].push_back(
          {{"name", jar.name},
           {"volume_ml", JsonNumber(jar.volume_ml)},
           {"mixed_on", FormatDay(jar.mixed)},
           {"state", state},
           {"use_first_from", FormatDay(keeps.use_first)},
           {"keeps_until", FormatDay(keeps.discard)}});
      continue;
    }
    terminal.out << Padded(state, 11) << Padded(jar.name, 28)
                 << PaddedLeft(VolumeText(jar.volume_ml,
                                          arguments.us ? AmountUnits::kUs
                                                       : AmountUnits::kMetric),
                               12)
                 << "  keeps until " << FormatDay(keeps.discard) << '\n';
  }
  if (arguments.json) {
    PrintDocument(terminal, document);
  } else {
    terminal.out << "Smell, strain and test every jar before it is used; what "
                    "smells sour or curdles is thrown away as local rules "
                    "say.\n";
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddShelfCommand(CLI::App& parent) {
  auto arguments = std::make_shared<ShelfArguments>();
  CLI::App* app = parent.add_subcommand(
      "shelf", "What is left over, in the order in which to use it");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--file",
                  arguments->file,
                  "Shelf to read, as JSON; without it, standard input");
  app->add_option("--today", arguments->today, "Another day than today");
  app->add_flag("--us", arguments->us, "Print US ounces");
  return {app, [arguments](Terminal& terminal) {
            return RunShelf(*arguments, terminal);
          }};
}

}  // namespace flowkin
