#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

#include "app/cli/command.h"
#include "app/cli/comparison_text.h"
#include "app/cli/measure_options.h"
#include "app/cli/palette_document.h"
#include "app/usecases/judge_palette.h"

namespace flowkin {
namespace {

struct PaletteFlags {
  std::string file;
  JudgePaletteOptions options;
  bool json = false;
};

std::string Amount(double ml) { return Digits(ml, 3) + " mL"; }

/// What to do with the cup, in one or two sentences.
std::string AdviceSentence(const DoseReport& report, double volume_ml) {
  if (report.refused) return report.reason;
  const Dose& dose = report.dose;
  switch (dose.advice) {
    case DoseAdvice::kAdd:
      return "Add " + Amount(report.add_ml.value_or(dose.add_ml)) +
             " of water to the " + Amount(volume_ml) +
             ", stir and test again; it should then be " +
             Fixed(dose.predicted_median, 2) + ", between " +
             Fixed(dose.predicted.low, 2) + " and " +
             Fixed(dose.predicted.high, 2) + ".";
    case DoseAdvice::kMatch:
      return "It matches: stop here.";
    case DoseAdvice::kMeasure:
      return "Film it again before deciding.";
    case DoseAdvice::kRescue:
      if (report.add_ml) {
        return "Too thin: put back " + Amount(*report.add_ml) +
               " of unthinned mix, stir and test again.";
      }
      return "Too thin: no water.";
    case DoseAdvice::kLimit:
      return "Too much water would be needed: thin it with medium.";
    case DoseAdvice::kTooCoarse:
      return "The smallest step is too coarse for this cup: use a finer "
             "measure.";
    case DoseAdvice::kCannot:
      return "Water cannot bring this cup to the target.";
  }
  return "";
}

Json CupDocument(const PaletteSet& set,
                 const PaletteCup& cup,
                 const JudgedCup& judged) {
  Json document;
  document["name"] = cup.name;
  document["test"] = TestKindName(set.clip.test.kind);
  document["base_coat"] = set.base_name;
  AddComparison(document, judged.compared.comparison);
  const bool comparison_measured =
      judged.compared.comparison.outcome == Outcome::kMeasured;
  document["advice"] = nullptr;
  document["add_ml"] = nullptr;
  document["overshoot_probability"] = nullptr;
  document["cautions"] = Json::array();
  if (comparison_measured && !judged.dose) document["advice"] = "measure";
  if (judged.dose && !judged.dose->refused) {
    document["advice"] = AdviceName(judged.dose->dose.advice);
    document["add_ml"] = JsonNumber(judged.dose->add_ml);
    document["overshoot_probability"] =
        JsonNumber(judged.dose->dose.overshoot_probability, 3);
    document["cautions"] = judged.dose->cautions;
  }
  document["warnings"] = judged.compared.warnings;
  return document;
}

void PrintCup(std::ostream& out,
              const PaletteCup& cup,
              const JudgedCup& judged) {
  const Comparison& comparison = judged.compared.comparison;
  out << cup.name << ": ";
  if (comparison.outcome == Outcome::kRefused) {
    out << "not compared. " << comparison.reason << '\n';
    return;
  }
  out << RatioSentence(comparison) << ".\n    ";
  if (!judged.dose) {
    out << "Far too uncertain to go by: film it again.\n";
    return;
  }
  out << AdviceSentence(*judged.dose, cup.volume_ml) << '\n';
  for (const std::string& caution : judged.dose->cautions) {
    out << "    Note: " << caution << '\n';
  }
}

ExitStatus RunPalette(const PaletteFlags& flags, Terminal& terminal) {
  const auto sets = ReadPalette(flags.file);
  if (!sets) return Fail(terminal, sets.error());
  Json cups = Json::array();
  int refused = 0;
  for (const PaletteSet& set : *sets) {
    const std::string kind = TestKindName(set.clip.test.kind);
    const auto judged = [&] {
      ProgressBar bar(terminal, "measuring the " + kind + " tests");
      return JudgePalette(flags.options).Run(set, [&bar](double share) {
        bar.Show(share);
      });
    }();
    if (!judged) return Fail(terminal, judged.error());
    if (!flags.json) {
      terminal.out << kind << " test, base coat " << set.base_name << " ("
                   << set.base_clips.size() << " films)\n";
    }
    for (std::size_t i = 0; i < set.cups.size(); ++i) {
      const JudgedCup& cup = (*judged)[i];
      const bool measured =
          cup.compared.comparison.outcome == Outcome::kMeasured;
      if (!measured) ++refused;
      for (const std::string& text : cup.compared.warnings) {
        Warn(terminal, cup.name + ": " + text);
      }
      if (flags.json) {
        cups.push_back(CupDocument(set, set.cups[i], cup));
      } else {
        PrintCup(terminal.out, set.cups[i], cup);
      }
    }
    if (!flags.json) terminal.out << std::endl;
  }
  if (flags.json) {
    PrintDocument(terminal,
                  {{"outcome", refused > 0 ? "refused" : "measured"},
                   {"band", JsonNumber(flags.options.band)},
                   {"cups", cups}});
  }
  if (refused > 0) {
    return Fail(terminal,
                ExitStatus::kRefused,
                std::to_string(refused) +
                    " of the cups could not be compared; film those again.");
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddPaletteCommand(CLI::App& parent) {
  CLI::App* app = parent.add_subcommand(
      "palette", "Compare all cups of a palette file and advise on each");
  auto flags = std::make_shared<PaletteFlags>();
  app->add_option("file", flags->file, "Palette file, JSON")
      ->required()
      ->type_name("FILE");
  app->add_option("--band",
                  flags->options.band,
                  "A match lies between 1/(1+band) and 1+band of the target")
      ->type_name("B")
      ->capture_default_str();
  app->add_option("--smallest-step-ml",
                  flags->options.smallest_step_ml,
                  "Smallest amount of water that can be measured out")
      ->type_name("V")
      ->capture_default_str();
  app->add_flag("--json", flags->json, "Print one JSON document");
  return {app,
          [flags](Terminal& terminal) { return RunPalette(*flags, terminal); }};
}

}  // namespace flowkin
