#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"
#include "app/cli/practice_options.h"
#include "app/usecases/amounts.h"
#include "app/usecases/plan_document.h"
#include "app/usecases/planned_cups.h"
#include "app/usecases/shelf_document.h"
#include "app/usecases/write_file.h"

namespace flowkin {
namespace {

struct PlanArguments {
  bool json = false;
  bool us = false;
  bool list = false;
  bool no_edges = false;
  bool on_bench = false;
  std::string file, technique, parts, by, shelf, keep;
  PracticeOptions practice;
  std::vector<std::string> canvases, rounds, colours;
  std::optional<int> count, tests;
  std::optional<double> waste, reserve, water, tilt_deg, tilting_s, nu;
};

/// "Lagoon", "white:2" (a double share) or "white:2:heavy".
Result<PlannedPaint> ReadColour(const std::string& text) {
  std::vector<std::string> parts;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, ':');) {
    parts.push_back(part);
  }
  PlannedPaint paint;
  const Error bad{ErrorCode::kInvalidArgument,
                  "'" + text +
                      "' is no colour; write NAME, NAME:SHARE or "
                      "NAME:SHARE:BODY (heavy, soft, fluid, ink, powder)."};
  if (parts.empty() || parts[0].empty() || parts.size() > 3) return bad;
  paint.name = parts[0];
  if (auto fits = CheckName("colour", paint.name); !fits) return fits.error();
  if (parts.size() > 1 && !parts[1].empty()) {
    const Result<std::pair<double, double>> share = ReadParts(parts[1]);
    if (!share) return bad;
    paint.share = share->first;
  }
  if (parts.size() > 2) {
    const std::optional<PaintBody> body = PaintBodyFromName(parts[2]);
    if (!body) return bad;
    paint.body = *body;
    if (paint.body == PaintBody::kPowder) paint.material = kPowderPigment;
  }
  return paint;
}

Result<PlanRequest> Gather(const PlanArguments& arguments,
                           const BookPractice& practice,
                           Terminal& terminal) {
  PlanRequest request;
  request.base_coat.name = "base coat";
  request.base_coat.material = kWallPaint;
  if (!arguments.file.empty()) {
    Result<PlanRequest> read =
        ReadPlanRequest(arguments.file == "-" ? "" : arguments.file,
                        terminal.in,
                        practice.techniques);
    if (!read) return read.error();
    request = *std::move(read);
  }
  if (!arguments.canvases.empty() || !arguments.rounds.empty()) {
    request.supports.clear();
  }
  for (const auto& [texts, shape] :
       {std::pair(&arguments.canvases, SupportShape::kRectangle),
        std::pair(&arguments.rounds, SupportShape::kRound)}) {
    for (const std::string& text : *texts) {
      const Result<Support> support = ReadSupport(text, shape);
      if (!support) return support.error();
      request.supports.push_back(*support);
    }
  }
  for (Support& support : request.supports) {
    if (arguments.count) support.count = *arguments.count;
    if (arguments.no_edges) support.edges = false;
  }
  if (!arguments.technique.empty()) {
    const Result<Technique> found =
        FindTechnique(practice.techniques, arguments.technique);
    if (!found) return found.error();
    request.technique = *found;
  }
  if (request.technique.name.empty()) {
    return Error{ErrorCode::kInvalidArgument,
                 "There is no technique; name one with --technique "
                 "(--list-techniques shows them)."};
  }
  if (!arguments.colours.empty()) request.colours.clear();
  for (const std::string& text : arguments.colours) {
    const Result<PlannedPaint> colour = ReadColour(text);
    if (!colour) return colour.error();
    request.colours.push_back(*colour);
  }
  const Result<Day> today = ReadToday(arguments.practice.today);
  if (!today) return today.error();
  if (!arguments.shelf.empty()) {
    const auto shelf = ReadShelf(arguments.shelf, terminal.in);
    if (!shelf) return shelf.error();
    for (LeftOver& left_over : UsableLeftOvers(*shelf, *today)) {
      request.left_overs.push_back(std::move(left_over));
    }
  }
  UsePractice(practice, *today, request);
  if (!arguments.parts.empty()) {
    const auto parts = ReadParts(arguments.parts);
    if (!parts) return parts.error();
    request.medium.base_parts = parts->first;
    request.medium.varnish_parts = parts->second;
  }
  if (!arguments.by.empty()) {
    request.medium.by =
        arguments.by == "weight" ? PartsBy::kWeight : PartsBy::kVolume;
  }
  if (arguments.tests) request.tests_per_cup = *arguments.tests;
  if (arguments.waste) request.waste_share = *arguments.waste;
  if (arguments.reserve) request.reserve_share = *arguments.reserve;
  if (arguments.water) request.water_share = *arguments.water;
  if (arguments.tilt_deg) request.tilt_deg = *arguments.tilt_deg;
  if (arguments.tilting_s) request.tilting_s = *arguments.tilting_s;
  if (arguments.nu) {
    request.nu_mm2_per_s = {*arguments.nu, *arguments.nu, *arguments.nu};
  }
  return request;
}

void PrintCups(std::ostream& out, const PourPlan& plan, AmountUnits units) {
  constexpr std::size_t kName = 22;
  constexpr std::size_t kNumber = 11;
  out << Padded("cup", kName) << PaddedLeft("mix", kNumber)
      << PaddedLeft("paint", kNumber) << PaddedLeft("medium", kNumber)
      << PaddedLeft("additive", kNumber) << PaddedLeft("keep back", kNumber)
      << '\n';
  for (const PlannedCup& cup : plan.cups) {
    const auto volume = [&](double ml) {
      return PaddedLeft(ml > 0.0 ? VolumeText(ml, units) : "-", kNumber);
    };
    const auto mass = [&](const Portion& portion) {
      return PaddedLeft(
          portion.volume_ml > 0.0 ? MassText(portion.mass_g(), units) : "-",
          kNumber);
    };
    out << Padded(cup.name, kName) << volume(cup.mix_ml)
        << volume(cup.paint.volume_ml) << volume(cup.medium.volume_ml)
        << volume(cup.additive.volume_ml) << volume(cup.reserve_ml) << '\n';
    out << Padded(std::string("  ") + PourRoleName(cup.role), kName)
        << PaddedLeft(MassText(cup.mix_ml * cup.blend.density_g_per_ml, units),
                      kNumber)
        << mass(cup.paint) << mass(cup.medium) << mass(cup.additive) << '\n';
    if (cup.left_over_ml > 0.0) {
      out << "  and " << VolumeText(cup.left_over_ml, units)
          << " of an earlier mix\n";
    }
  }
}

void PrintPlan(std::ostream& out,
               const PlanReport& report,
               const PlanRequest& request,
               AmountUnits units) {
  const PourPlan& plan = report.plan;
  out << plan.pictures << (plan.pictures == 1 ? " picture, " : " pictures, ")
      << Short(1e4 * plan.face_m2) << " cm2 of face and "
      << Short(1e4 * plan.edge_m2) << " cm2 of edge; " << request.technique.what
      << ".\n";
  out << "On the canvas: " << VolumeText(plan.on_support_ml, units) << " ("
      << Short(plan.amount_ml_per_m2.start) << " mL/m2; "
      << Short(plan.amount_ml_per_m2.low) << " to "
      << Short(plan.amount_ml_per_m2.high) << " are usual; "
      << SourceName(plan.learned.told ? Source::kLearned
                                      : request.technique.source)
      << ").\n\n";
  PrintCups(out, plan, units);
  if (plan.medium_needed_ml > 0.0) {
    out << "\nMedium: " << VolumeText(plan.medium_needed_ml, units);
    if (plan.medium_left_over_ml > 0.0) {
      out << ", of it " << VolumeText(plan.medium_left_over_ml, units)
          << " from the shelf";
    }
    out << ". Make " << VolumeText(plan.medium.volume_ml, units) << ": "
        << VolumeText(plan.medium.base.volume_ml, units) << " ("
        << MassText(plan.medium.base.mass_g(), units) << ") of base and "
        << VolumeText(plan.medium.varnish.volume_ml, units) << " ("
        << MassText(plan.medium.varnish.mass_g(), units) << ") of varnish.\n";
  }
  out << "\nFilm: " << Short(plan.wet_mm.start) << " mm wet ("
      << Short(plan.wet_mm.low) << " to " << Short(plan.wet_mm.high) << "), "
      << Short(plan.dry_mm.start) << " mm dry. ";
  switch (plan.film.verdict) {
    case FilmVerdict::kStays:
      out << "It stays while you tilt.\n";
      break;
    case FilmVerdict::kRunsOff:
      out << "After " << Short(request.tilting_s) << " s at "
          << Short(request.tilt_deg) << " degrees "
          << Short(100.0 * plan.film.runs_off.low) << " to "
          << Short(100.0 * plan.film.runs_off.high)
          << " % of it has run off, the more the thinner the paint.\n";
      break;
    case FilmVerdict::kNotCredible:
      out << "That is not credible as a film left on a tilted canvas: more "
             "than half runs off.\n";
      break;
  }
  if (!plan.supplies.empty()) {
    out << "\nOn the shelf before you start:\n";
    for (const Supply& supply : plan.supplies) {
      out << "  " << Padded(supply.name, 28)
          << PaddedLeft(VolumeText(supply.needed_ml, units), 12);
      if (supply.at_hand_ml > 0.0) {
        out << ", at hand " << VolumeText(supply.at_hand_ml, units);
      }
      if (supply.buy_ml > 0.0) {
        out << ", buy " << VolumeText(supply.buy_ml, units);
        if (supply.containers) {
          out << " = " << *supply.containers << " container(s), "
              << Short(*supply.buy_cost);
        }
      }
      out << '\n';
    }
  }
  if (plan.cost_per_picture) {
    out << "Cost per picture: " << Short(*plan.cost_per_picture) << ".\n";
  }
  out << '\n';
  for (const std::string& note : plan.notes) out << "Note: " << note << '\n';
  for (const std::string& caution : report.cautions) {
    out << "Caution: " << caution << '\n';
  }
}

Result<int> PutOnBench(const PlanArguments& arguments, const PourPlan& plan) {
  Result<Bench> bench = Bench::Open(StorePath(arguments.practice.store));
  if (!bench) return bench.error();
  const Result<bool> any = bench->OpenLastSession();
  if (!any) return any.error();
  if (!*any) {
    return Error{ErrorCode::kInvalidArgument,
                 "There is no open session; begin one with 'flowkin bench "
                 "new'."};
  }
  return PutPlannedCups(*bench, plan, "activator", Now());
}

ExitStatus RunPlan(const PlanArguments& arguments, Terminal& terminal) {
  const Result<BookPractice> practice = ReadPractice(arguments.practice);
  if (!practice) return Fail(terminal, practice.error());
  if (arguments.list) {
    ListTechniques(practice->techniques, arguments.json, terminal);
    return ExitStatus::kDone;
  }
  const Result<PlanRequest> request = Gather(arguments, *practice, terminal);
  if (!request) return Fail(terminal, request.error());
  const Result<PlanReport> report = PlanPour(*request);
  if (!report) return Fail(terminal, report.error());
  if (!arguments.keep.empty()) {
    const Result<void> kept = WriteWhole(
        arguments.keep, PlanRequestDocument(*request).dump(2) + '\n');
    if (!kept) return Fail(terminal, kept.error());
  }
  std::optional<int> put;
  if (arguments.on_bench) {
    const Result<int> done = PutOnBench(arguments, report->plan);
    if (!done) return Fail(terminal, done.error());
    put = *done;
  }
  if (arguments.json) {
    PrintDocument(terminal, PlanDocument(*report, *request));
  } else {
    PrintPlan(terminal.out,
              *report,
              *request,
              arguments.us ? AmountUnits::kUs : AmountUnits::kMetric);
    if (!arguments.keep.empty()) {
      terminal.out << "Written: " << arguments.keep << '\n';
    }
    if (put) {
      terminal.out << "Put on the bench: " << *put
                   << (*put == 1 ? " cup.\n" : " cups.\n");
    }
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddPlanCommand(CLI::App& parent) {
  auto arguments = std::make_shared<PlanArguments>();
  CLI::App* app = parent.add_subcommand(
      "plan", "Says what a pour takes: paint, medium, reserve, film, cost");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option(
      "--file", arguments->file, "Plan to read, as JSON; - is standard input");
  app->add_option("--canvas",
                  arguments->canvases,
                  "Size, as 40x50, 40x50x1.8cm or 16x20in; may be repeated");
  app->add_option("--round",
                  arguments->rounds,
                  "Diameter of a round one, with its depth: 30x2cm");
  app->add_option("--count", arguments->count, "So many of each");
  app->add_flag("--no-edges", arguments->no_edges, "Leave the side faces bare");
  app->add_option("--technique", arguments->technique, "Way of pouring");
  AddPracticeOptions(*app, arguments->practice);
  app->add_flag("--list-techniques",
                arguments->list,
                "Print the table of amounts by technique");
  app->add_option("--colours",
                  arguments->colours,
                  "Colours as NAME, NAME:SHARE or NAME:SHARE:BODY");
  app->add_option("--shelf",
                  arguments->shelf,
                  "Left-overs to use first, as JSON, in place of the book's");
  app->add_option("--parts", arguments->parts, "Base to varnish, as 4:1");
  app->add_option("--by", arguments->by, "Parts by volume or by weight")
      ->check(CLI::IsMember({"volume", "weight"}));
  app->add_option("--waste-share", arguments->waste, "Lost to cups and sticks");
  app->add_option("--reserve-share", arguments->reserve, "Kept back unthinned");
  app->add_option("--water-share",
                  arguments->water,
                  "Water expected in the finished mix, as 0.08");
  app->add_option("--tests-per-cup", arguments->tests, "Tests of each cup");
  app->add_option("--tilt-deg", arguments->tilt_deg, "Tilt of the canvas");
  app->add_option("--tilting-s", arguments->tilting_s, "Seconds of tilting");
  app->add_option("--kinematic-viscosity-mm2-s",
                  arguments->nu,
                  "As a puddle test measured it");
  app->add_flag("--us", arguments->us, "Print US ounces");
  app->add_option("--keep",
                  arguments->keep,
                  "Write the plan as a document, for 'print', 'journal pour' "
                  "and another time");
  app->add_flag("--on-bench",
                arguments->on_bench,
                "Put its cups on the bench that is open");
  return {app, [arguments](Terminal& terminal) {
            return RunPlan(*arguments, terminal);
          }};
}

}  // namespace flowkin
