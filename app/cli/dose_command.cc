#include <CLI/CLI.hpp>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <optional>
#include <ostream>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

#include "app/cli/command.h"
#include "app/cli/comparison_text.h"
#include "app/cli/cup_document.h"

namespace flowkin {
namespace {

struct DoseArguments {
  bool json = false;
  std::string file;
  std::string store;
  std::optional<double> path_ml;
};

Json Document(const DoseRequest& request, const DoseReport& report) {
  const Dose& dose = report.dose;
  Json document;
  document["outcome"] = report.refused ? "refused" : "advised";
  if (report.refused) {
    document["reason"] = report.reason;
  } else {
    document["reason"] = nullptr;
    document["advice"] = AdviceName(dose.advice);
    document["add_ml"] = JsonNumber(report.add_ml);
    if (request.unit) {
      document["add_units"] = JsonNumber(report.add_units);
      document["unit"] = request.unit->name;
    }
    document["predicted"] =
        IntervalDocument(dose.predicted_median, dose.predicted);
    document["overshoot_probability"] =
        JsonNumber(dose.overshoot_probability, 3);
    document["path_overshoot_probability"] =
        JsonNumber(dose.path_overshoot_probability, 3);
    document["water_share"] = JsonNumber(dose.water_share, 4);
    document["expected_additions_left"] =
        JsonNumber(dose.expected_additions_left, 2);
    if (dose.advice == DoseAdvice::kRescue) {
      document["rescue_total_ml"] = JsonNumber(report.rescue_total_ml, 4);
    }
    if (report.keep_back_ml) {
      document["keep_back_ml"] = JsonNumber(*report.keep_back_ml, 3);
    }
  }
  document["ratio_now"] =
      IntervalDocument(dose.ratio_now_median, dose.ratio_now);
  document["cautions"] = report.cautions;
  return document;
}

Json PathDocument(const std::vector<CupPathPoint>& path) {
  Json document = Json::array();
  for (const CupPathPoint& at : path) {
    Json point = IntervalDocument(at.ratio, at.interval);
    point["added_ml"] = JsonNumber(at.added_ml, 4);
    document.push_back(point);
  }
  return document;
}

std::string Format(const char* format, double a) {
  char text[160];
  std::snprintf(text, sizeof(text), format, a);
  return text;
}

std::string Format(const char* format, double a, double b, double c) {
  char text[160];
  std::snprintf(text, sizeof(text), format, a, b, c);
  return text;
}

std::string Amount(double ml) {
  std::string text = Format("%.2f", ml);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text + " mL";
}

void PrintForReading(std::ostream& out,
                     const DoseRequest& request,
                     const DoseReport& report) {
  const Dose& dose = report.dose;
  const std::string thinner = ThinnerKindName(request.cup.thinner);
  out << Format(
      "The cup is %.2f times as thick as the base coat (%.2f to "
      "%.2f).\n",
      dose.ratio_now_median,
      dose.ratio_now.low,
      dose.ratio_now.high);
  switch (dose.advice) {
    case DoseAdvice::kAdd:
      if (report.add_units) {
        out << "Add " << Format("%.0f", *report.add_units) << " x "
            << request.unit->name << " (" << Amount(dose.add_ml) << ") of "
            << thinner << ".\n";
      } else {
        out << "Add " << Amount(dose.add_ml) << " of " << thinner << ".\n";
      }
      out << Format("It should then be %.2f (%.2f to %.2f)",
                    dose.predicted_median,
                    dose.predicted.low,
                    dose.predicted.high)
          << Format("; the chance of too thin is %.2g %%.\n",
                    100.0 * dose.overshoot_probability)
          << Format("About %.0f addition(s) left, this one included; ",
                    std::max(1.0, dose.expected_additions_left))
          << Format("added so far and now: %.1f %% of the cup.\n",
                    100.0 * dose.water_share);
      if (report.keep_back_ml && *report.keep_back_ml >= 1.0) {
        out << "Keep back " << Amount(std::round(*report.keep_back_ml))
            << " of the unthinned paint before you start.\n";
      }
      break;
    case DoseAdvice::kMatch:
      out << "It matches: stop here.\n";
      break;
    case DoseAdvice::kMeasure:
      out << "Film it again before deciding.\n";
      break;
    case DoseAdvice::kRescue:
      if (report.add_ml) {
        out << "It is too thin: put back " << Amount(*report.add_ml)
            << " of the unthinned paint";
        if (*report.rescue_total_ml > 1.2 * *report.add_ml) {
          out << " (of " << Amount(*report.rescue_total_ml)
              << " in all), stir and test";
        }
        out << ".\n";
      } else {
        out << "It is too thin.\n";
      }
      break;
    case DoseAdvice::kLimit:
      out << "Stop adding water here.\n";
      break;
    case DoseAdvice::kTooCoarse:
    case DoseAdvice::kCannot:
      break;
  }
  for (const std::string& caution : report.cautions) {
    out << "Note: " << caution << '\n';
  }
}

void PrintPath(std::ostream& out, const std::vector<CupPathPoint>& path) {
  for (const CupPathPoint& at : path) {
    out << Format("With %.2f mL in it: ", at.added_ml)
        << Format("%.2f (%.2f to %.2f).\n",
                  at.ratio,
                  at.interval.low,
                  at.interval.high);
  }
}

/// What the brand book says; nothing where none is asked for or there.
Result<std::optional<BookPrior>> PriorFor(const CupDocument& cup,
                                          const std::string& store) {
  std::optional<BookPrior> none;
  const ThinnerKind thinner = cup.request.cup.thinner;
  std::string path = store;
  if (path.empty()) {
    if (cup.paint.brand.empty() && thinner == ThinnerKind::kWater) return none;
    path = CalibrationStore::DefaultPath();
    // An empty file is a book whose first entry was cut short.
    std::error_code missing;
    if (path.empty() || std::filesystem::file_size(path, missing) == 0 ||
        missing) {
      return none;
    }
  }
  const Result<CalibrationStore> book =
      CalibrationStore::Open(path, CalibrationStore::Access::kRead);
  if (!book) return book.error();
  const Result<BookPrior> prior = PriorFromBook(*book, cup.paint, thinner);
  if (!prior) return prior.error();
  return std::optional<BookPrior>(*prior);
}

ExitStatus RunDose(const DoseArguments& arguments, Terminal& terminal) {
  const Result<CupDocument> cup = ReadCupDocument(arguments.file, terminal.in);
  if (!cup) return Fail(terminal, cup.error());
  Result<std::optional<BookPrior>> book = PriorFor(*cup, arguments.store);
  if (!book) return Fail(terminal, book.error());
  const CurvePrior* prior = *book ? &(*book)->prior : nullptr;
  Result<DoseReport> report = AdviseDose(cup->request, prior);
  if (!report) return Fail(terminal, report.error());
  std::vector<CupPathPoint> path;
  if (arguments.path_ml) {
    auto foreseen = ForeseePath(cup->request, prior, *arguments.path_ml);
    if (!foreseen) return Fail(terminal, foreseen.error());
    path = std::move(*foreseen);
  }
  if (cup->request.cup.thinner == ThinnerKind::kWater &&
      !cup->paint.brand.empty() && !(*book && (*book)->known)) {
    report->cautions.push_back("The book does not know the brand '" +
                               cup->paint.brand +
                               "'; this is advice for an unknown paint.");
  }
  if (arguments.json) {
    Json document = Document(cup->request, *report);
    if (arguments.path_ml) document["path"] = PathDocument(path);
    PrintDocument(terminal, document);
  } else {
    PrintForReading(terminal.out, cup->request, *report);
    PrintPath(terminal.out, path);
  }
  if (report->refused) {
    return Fail(terminal, ExitStatus::kRefused, report->reason);
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddDoseCommand(CLI::App& parent) {
  auto arguments = std::make_shared<DoseArguments>();
  CLI::App* app = parent.add_subcommand(
      "dose", "Says what to add to a cup next, from its history");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--file",
                  arguments->file,
                  "Cup to read, as JSON; without it, standard input");
  app->add_option("--store", arguments->store, "Brand book to use");
  app->add_option("--path-ml",
                  arguments->path_ml,
                  "Also print the cup's path, foreseen to V mL stirred in")
      ->option_text("V")
      ->check(CLI::Range(0.0, 100000.0));
  return {app, [arguments](Terminal& terminal) {
            return RunDose(*arguments, terminal);
          }};
}

}  // namespace flowkin
