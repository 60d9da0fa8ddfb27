#include <unistd.h>

#include <CLI/CLI.hpp>
#include <exception>
#include <iostream>
#include <new>
#include <string>
#include <vector>

#include "app/cli/command.h"

namespace flowkin {
namespace {

/// CLI11 speaks in several lines; a wrong call gets one sentence.
std::string WrongUseSentence(const CLI::App& app, const CLI::Error& error) {
  std::string help = app.get_name();
  for (const CLI::App* at = &app; !at->get_subcommands().empty();) {
    at = at->get_subcommands().front();
    help += " " + at->get_name();
  }
  std::string what = error.what();
  while (!what.empty() && (what.back() == '.' || what.back() == '\n')) {
    what.pop_back();
  }
  return what + "; '" + help + " --help' lists what can be given.";
}

int Main(int argc, char** argv) {
  HandOver(argc, argv);
  Terminal terminal{
      std::cin, std::cout, std::cerr, ::isatty(STDERR_FILENO) != 0};
  CLI::App app{
      "Measures from filmed tests how many times as thick a cup of paint is "
      "as the base coat, and says what to add next.",
      "flowkin"};
  app.set_version_flag("--version", "flowkin " FLOWKIN_VERSION);
  app.require_subcommand(0, 1);
  const std::vector<Command> commands = AddCommands(app);

  ExitStatus status = ExitStatus::kFailed;
  try {
    app.parse(argc, argv);
    if (app.get_subcommands().empty()) {
      throw CLI::RequiredError("A command");
    }
    for (const Command& command : commands) {
      if (command.app->parsed()) status = command.run(terminal);
    }
  } catch (const CLI::Success& asked) {
    app.exit(asked, std::cout, std::cerr);  // --help, --version
    status = ExitStatus::kDone;
  } catch (const CLI::Error& error) {
    status =
        Fail(terminal, ExitStatus::kWrongUse, WrongUseSentence(app, error));
  } catch (const std::bad_alloc&) {
    status = Fail(terminal,
                  ExitStatus::kFailed,
                  "There is not enough memory; close other programs and try "
                  "again.");
  } catch (const std::exception& error) {
    status = Fail(terminal,
                  ExitStatus::kFailed,
                  std::string("Something unforeseen happened (") +
                      error.what() + "); please report it.");
  }
  std::cout.flush();
  if (!std::cout && status == ExitStatus::kDone) {
    status = Fail(terminal,
                  ExitStatus::kFailed,
                  "The answer could not be written; make room on the disk or "
                  "send it elsewhere.");
  }
  return static_cast<int>(status);
}

}  // namespace
}  // namespace flowkin

int main(int argc, char** argv) {
  try {
    return flowkin::Main(argc, argv);
  } catch (...) {  // even the words to say so cannot be made
    return static_cast<int>(flowkin::ExitStatus::kFailed);
  }
}
