// Runs the dosing loop over many virtual cups and prints what came of them.
//   dose_benchmark [cups per family and setting] [seed] [part of a row's name]
// "tuning" as the part runs every row without the two laws kept for checking,
// "likely" every row with paints as the engine holds them likely.

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "tests/calibration/dose_trial.h"

namespace {

void PrintRow(const char* name, const flowkin::test::DoseTally& t) {
  std::printf(
      "%-34s %6zu %6.2f %6.2f %7.3f%% %7.2f%% %6zu %7.2f%% %7.2f%% %9.1f %6zu "
      "%+6.2f "
      "%5.2f\n",
      name,
      t.cups,
      t.MeanAdditions(),
      static_cast<double>(t.films) / static_cast<double>(t.cups),
      100.0 * t.BelowShare(),
      100.0 * t.InBandShare(),
      t.unfinished,
      100.0 * t.Coverage(),
      100.0 * t.RatioCoverage(),
      t.overshoot_expected,
      t.overshoots,
      t.left_error / static_cast<double>(t.predicted),
      t.left_absolute / static_cast<double>(t.predicted));
}

}  // namespace

int main(int argc, char** argv) {
  using flowkin::test::DoseTally;
  using flowkin::test::DoseTrial;
  using flowkin::test::LawFamily;
  const auto cups =
      static_cast<std::size_t>(argc > 1 ? std::atol(argv[1]) : 500);
  const auto seed =
      static_cast<std::uint64_t>(argc > 2 ? std::atol(argv[2]) : 1);
  const std::string_view wanted = argc > 3 ? argv[3] : "";
  const bool tuning = wanted == "tuning";
  const bool likely = wanted.substr(0, 6) == "likely";
  const std::string_view part =
      likely ? wanted.substr(std::min<std::size_t>(7, wanted.size()))
             : (tuning ? "" : wanted);
  std::printf("%-34s %6s %6s %6s %8s %8s %6s %8s %8s %9s %6s %6s %5s\n",
              "cups",
              "n",
              "adds",
              "films",
              "below",
              "in band",
              "open",
              "held",
              "now",
              "expected",
              "over",
              "left",
              "|.|");
  for (const std::size_t learned : {std::size_t{0}, std::size_t{3}}) {
    for (const double band : {0.15, 0.10}) {
      for (const double rel_sd : {0.02, 0.04, 0.07}) {
        char name[64];
        std::snprintf(name,
                      sizeof(name),
                      "%s, band %.2f, scatter %.0f %%",
                      learned == 0 ? "unknown" : "learned",
                      band,
                      100.0 * rel_sd);
        if (std::string_view(name).find(part) == std::string_view::npos) {
          continue;
        }
        DoseTrial trial;
        trial.cups_per_family = cups;
        trial.rel_sd = rel_sd;
        trial.band = band;
        trial.learned_cups = learned;
        trial.seed = seed;
        trial.as_held_likely = likely;
        DoseTally all;
        if (likely) all = RunDoseTrial(trial);
        for (const LawFamily family : flowkin::test::kAllFamilies) {
          if (likely) break;
          if (tuning && (family == LawFamily::kQuemada ||
                         family == LawFamily::kSucroseTable)) {
            continue;
          }
          trial.families = {family};
          const DoseTally tally = RunDoseTrial(trial);
          all.Add(tally);
          if (band == 0.15 && rel_sd == 0.04) {
            PrintRow(flowkin::test::LawFamilyName(family), tally);
          }
        }
        PrintRow(name, all);
        std::fflush(stdout);
      }
    }
  }
  return 0;
}
