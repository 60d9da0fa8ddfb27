#pragma once

#include <functional>

#include "app/cli/terminal.h"

namespace CLI {
class App;
}

namespace flowkin {

/// A subcommand and what it does once the command line was read.
struct Command {
  CLI::App* app = nullptr;  ///< owned by its parent
  std::function<ExitStatus(Terminal&)> run;
};

// One file per command: NAME_command.cc defines AddNAMECommand, which adds the
// subcommand with its options to `parent`. main.cc calls them all.
Command AddMeasureCommand(CLI::App& parent);
Command AddCompareCommand(CLI::App& parent);
Command AddPaletteCommand(CLI::App& parent);
Command AddDoseCommand(CLI::App& parent);
Command AddLearnCommand(CLI::App& parent);
Command AddBrandsCommand(CLI::App& parent);

}  // namespace flowkin
