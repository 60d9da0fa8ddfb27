#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <string_view>
#include <system_error>

#include "app/cli/command.h"

namespace flowkin {
namespace {

constexpr std::string_view kNoPictures[] = {"dose",
                                            "learn",
                                            "forget",
                                            "export",
                                            "import",
                                            "backup",
                                            "brands",
                                            "plan",
                                            "medium",
                                            "mix",
                                            "ready",
                                            "shelf",
                                            "techniques",
                                            "journal"};

bool NeedsNoPictures(int argc, char** argv) {
  if (argc < 2) return false;
  const std::string_view command = argv[1];
  if (command == "bench" && argc > 2) {
    // What is asked of a bench comes first; films and photos are read there.
    const std::string_view action = argv[2];
    return action.substr(0, 1) != "-" && action != "test" &&
           action != "correct" && action != "label";
  }
  if (std::find(std::begin(kNoPictures), std::end(kNoPictures), command) ==
      std::end(kNoPictures)) {
    return false;
  }
  if (command != "brands") return true;
  // A plot may be a PNG, and that takes the picture libraries.
  return std::none_of(argv + 2, argv + argc, [](const char* argument) {
    return std::string_view(argument).substr(0, 6) == "--plot";
  });
}

}  // namespace

std::vector<Command> AddCommands(CLI::App& parent) {
  return {AddDoseCommand(parent),
          AddPlanCommand(parent),
          AddMediumCommand(parent),
          AddMixCommand(parent),
          AddBenchWithoutFilmsCommand(parent),
          AddShelfCommand(parent),
          AddTechniquesCommand(parent),
          AddReadyCommand(parent),
          AddJournalCommand(parent),
          AddLearnCommand(parent),
          AddListBrandsCommand(parent),
          AddForgetCommand(parent),
          AddExportCommand(parent),
          AddImportCommand(parent),
          AddBackupCommand(parent)};
}

void HandOver(int argc, char** argv) {
  if (NeedsNoPictures(argc, argv)) return;
  std::error_code failed;
  const std::filesystem::path self =
      std::filesystem::read_symlink("/proc/self/exe", failed);
  const std::string other = (self.parent_path() / "flowkin-clips").string();
  if (!failed) ::execv(other.c_str(), argv);
  std::fprintf(stderr,
               "flowkin: Its part that reads clips is missing ('%s'); install "
               "flowkin anew.\n",
               other.c_str());
  std::exit(static_cast<int>(ExitStatus::kFailed));
}

}  // namespace flowkin
