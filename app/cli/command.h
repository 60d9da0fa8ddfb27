#pragma once

#include <functional>
#include <vector>

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
Command AddPlanCommand(CLI::App& parent);
// medium_command.cc
Command AddMediumCommand(CLI::App& parent);
Command AddMixCommand(CLI::App& parent);
Command AddShelfCommand(CLI::App& parent);
Command AddTechniquesCommand(CLI::App& parent);
Command AddReadyCommand(CLI::App& parent);
Command AddJournalCommand(CLI::App& parent);
Command AddPrintCommand(CLI::App& parent);
Command AddCellsCommand(CLI::App& parent);
Command AddLearnCommand(CLI::App& parent);
Command AddBrandsCommand(CLI::App& parent);
Command AddListBrandsCommand(CLI::App& parent);  ///< brands without --plot
Command AddBenchCommand(CLI::App& parent);
Command AddBenchWithoutFilmsCommand(CLI::App& parent);
// book_commands.cc
Command AddForgetCommand(CLI::App& parent);
Command AddExportCommand(CLI::App& parent);
Command AddImportCommand(CLI::App& parent);
Command AddBackupCommand(CLI::App& parent);

// Loading what reads clips takes longer than a whole dose. So there are two
// programs of one source: `flowkin`, which answers what needs no pictures and
// hands everything else over to `flowkin-clips`, which knows all commands.
// front_commands.cc and all_commands.cc define these two differently.

/// Adds the program's commands to `parent`.
std::vector<Command> AddCommands(CLI::App& parent);

/// Becomes the other program where this one does not know the command.
void HandOver(int argc, char** argv);

}  // namespace flowkin
