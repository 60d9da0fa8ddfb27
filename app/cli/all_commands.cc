#include "app/cli/command.h"

namespace flowkin {

std::vector<Command> AddCommands(CLI::App& parent) {
  return {AddMeasureCommand(parent), AddCompareCommand(parent),
          AddPaletteCommand(parent), AddDoseCommand(parent),
          AddPlanCommand(parent),    AddMediumCommand(parent),
          AddMixCommand(parent),     AddBenchCommand(parent),
          AddShelfCommand(parent),   AddTechniquesCommand(parent),
          AddReadyCommand(parent),   AddJournalCommand(parent),
          AddPrintCommand(parent),   AddCellsCommand(parent),
          AddLearnCommand(parent),   AddBrandsCommand(parent),
          AddForgetCommand(parent),  AddExportCommand(parent),
          AddImportCommand(parent),  AddBackupCommand(parent)};
}

void HandOver(int /*argc*/, char** /*argv*/) {}

}  // namespace flowkin
