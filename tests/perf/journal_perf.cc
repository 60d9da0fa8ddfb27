// How long the journal's search takes in a book of 10,000 days.

#include <benchmark/benchmark.h>
#include <unistd.h>

#include <filesystem>
#include <string>

#include "app/usecases/bench.h"
#include "app/usecases/journal.h"
#include "core/base/check.h"
#include "tests/support/many_days.h"

namespace {

using namespace flowkin;

void Search(benchmark::State& state, const std::string& words) {
  const std::filesystem::path folder =
      std::filesystem::temp_directory_path() /
      ("flowkin-journal-perf-" + std::to_string(::getpid()));
  const std::string store = (folder / "book.db").string();
  if (!std::filesystem::exists(store)) {
    FLOWKIN_CHECK(Bench::Open(store).has_value());
    testing::FillWithDays(store, 10'000);
  }
  for (auto _ : state) {
    // As the command line does it, the opening included.
    const auto journal = Journal::Open(store);
    FLOWKIN_CHECK(journal.has_value());
    const auto found = journal->Search(words);
    FLOWKIN_CHECK(found && !found->empty());
  }
}

}  // namespace

int main(int argc, char** argv) {
  for (const char* words : {"lagoon", "word5 cells", "x7777", "", "la ce sw"}) {
    benchmark::RegisterBenchmark(
        (std::string("search '") + words + "'").c_str(), Search, words)
        ->Unit(benchmark::kMillisecond);
  }
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  std::filesystem::remove_all(
      std::filesystem::temp_directory_path() /
      ("flowkin-journal-perf-" + std::to_string(::getpid())));
}
