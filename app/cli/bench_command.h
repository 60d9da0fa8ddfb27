#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/cli/command.h"
#include "app/usecases/bench.h"

namespace CLI {
class App;
}

namespace flowkin {

/// What every action on a bench takes.
struct BenchFlags {
  std::string store;
  std::optional<SessionId> session;
  std::string at_utc;
  bool json = false;
};

/// What an action did.
struct BenchDone {
  /// Entry it wrote, named in the document; 0 where there is nothing to name.
  EntryNumber entry = 0;
  /// Set where the action was carried out but what it was given holds nothing.
  std::string refused;
};

/// One action, such as `flowkin bench stirred`.
struct BenchAction {
  CLI::App* app = nullptr;
  std::function<Result<BenchDone>(Bench&, UtcTime, Terminal&)> run;
};

/// `flowkin bench` with the actions that need no pictures. `more` adds others
/// to it; null adds none.
using AddBenchActions =
    std::function<void(CLI::App& bench, std::vector<BenchAction>& actions)>;
Command MakeBenchCommand(CLI::App& parent, const AddBenchActions& more);

/// The cup that she calls `name` (its label, or its number).
Result<CupId> FindCup(const Bench& bench, const std::string& name);

}  // namespace flowkin
