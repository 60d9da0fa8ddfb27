#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

#include "app/cli/command.h"
#include "app/usecases/amounts.h"
#include "app/usecases/make_medium.h"
#include "app/usecases/plan_document.h"

namespace flowkin {
namespace {

struct MediumArguments {
  bool json = false;
  bool us = false;
  bool watered = false;
  std::string parts = "4:1", by = "volume", mixed;
  std::optional<double> make_ml, bottom_mm, top_mm, height_mm, fill_mm, nu;
  std::optional<double> ratio, last_ratio;
  double medium_share = 0.5;
  MediumRecipe recipe;
};

Result<std::optional<Estimate>> LnRatio(const std::optional<double>& ratio) {
  if (!ratio) return std::optional<Estimate>();
  const Result<Estimate> ln_ratio = TestedLnRatio(*ratio);
  if (!ln_ratio) return ln_ratio.error();
  return std::optional<Estimate>(*ln_ratio);
}

Result<MediumRequest> Gather(const MediumArguments& arguments) {
  MediumRequest request;
  request.recipe = arguments.recipe;
  const auto parts = ReadParts(arguments.parts);
  if (!parts) return parts.error();
  request.recipe.base_parts = parts->first;
  request.recipe.varnish_parts = parts->second;
  request.recipe.by =
      arguments.by == "weight" ? PartsBy::kWeight : PartsBy::kVolume;
  request.volume_ml = arguments.make_ml;
  if (arguments.bottom_mm || arguments.top_mm || arguments.height_mm) {
    const double bottom_mm =
        arguments.bottom_mm.value_or(arguments.top_mm.value_or(0.0));
    if (!arguments.height_mm && !arguments.fill_mm) {
      return Error{ErrorCode::kInvalidArgument,
                   "A cup needs its height; give --cup-height-mm."};
    }
    request.container =
        Container{bottom_mm,
                  arguments.top_mm.value_or(bottom_mm),
                  arguments.height_mm.value_or(arguments.fill_mm.value_or(0))};
  }
  request.fill_mm = arguments.fill_mm;
  const auto ratio = LnRatio(arguments.ratio);
  if (!ratio) return ratio.error();
  request.ln_ratio = *ratio;
  const auto last = LnRatio(arguments.last_ratio);
  if (!last) return last.error();
  request.last_ln_ratio = *last;
  request.medium_share = arguments.medium_share;
  request.nu_mm2_per_s = arguments.nu;
  request.watered = arguments.watered;
  if (!arguments.mixed.empty()) {
    request.mixed = ParseDay(arguments.mixed);
    if (!request.mixed) {
      return Error{
          ErrorCode::kInvalidArgument,
          "'" + arguments.mixed + "' is no day; write it like 2026-03-01."};
    }
  }
  return request;
}

Json Document(const MediumReport& report) {
  Json document;
  document["outcome"] = "planned";
  document["volume_ml"] = JsonNumber(report.batch.volume_ml);
  document["mass_g"] = JsonNumber(report.batch.mass_g);
  document["base"] = PortionDocument(report.batch.base);
  document["varnish"] = PortionDocument(report.batch.varnish);
  document["parts_by_volume"] = JsonNumber(report.batch.parts_by_volume);
  document["parts_by_weight"] = JsonNumber(report.batch.parts_by_weight);
  document["density_g_per_ml"] =
      JsonNumber(report.batch.blend.density_g_per_ml);
  document["volume_solids"] = JsonNumber(report.batch.blend.volume_solids);
  document["base_mark_mm"] = JsonNumber(report.base_mark_mm);
  document["full_mark_mm"] = JsonNumber(report.full_mark_mm);
  document["depth_mm"] = JsonNumber(report.depth_mm);
  document["rest"] = Json::array();
  for (const RestTime& rest : report.rest) {
    document["rest"].push_back(
        {{"bubble_mm", rest.bubble_mm}, {"min", SpanDocument(rest.minutes)}});
  }
  document["use_first_from"] =
      report.keeps ? Json(FormatDay(report.keeps->use_first)) : Json(nullptr);
  document["keeps_until"] =
      report.keeps ? Json(FormatDay(report.keeps->discard)) : Json(nullptr);
  document["cup_factor"] =
      report.cup_factor
          ? IntervalDocument(*report.cup_factor, report.cup_factor_interval)
          : Json(nullptr);
  document["steps"] = report.steps;
  document["notes"] = report.notes;
  document["cautions"] = report.cautions;
  return document;
}

std::string Minutes(double minutes) {
  if (minutes >= 90.0) return Short(minutes / 60.0) + " h";
  return Short(minutes) + " min";
}

void Print(std::ostream& out, const MediumReport& report, AmountUnits units) {
  const MediumBatch& batch = report.batch;
  out << "Medium: " << VolumeText(batch.volume_ml, units) << " ("
      << MassText(batch.mass_g, units) << ").\n"
      << "  base    " << VolumeText(batch.base.volume_ml, units) << " ("
      << MassText(batch.base.mass_g(), units) << ")\n"
      << "  varnish " << VolumeText(batch.varnish.volume_ml, units) << " ("
      << MassText(batch.varnish.mass_g(), units) << ")\n";
  if (std::isfinite(batch.parts_by_volume)) {
    out << Short(batch.parts_by_volume) << ":1 by volume is "
        << Short(batch.parts_by_weight) << ":1 by weight.\n";
  }
  if (report.base_mark_mm) {
    out << "In this cup: base up to " << Short(*report.base_mark_mm)
        << " mm, then varnish up to " << Short(*report.full_mark_mm)
        << " mm, measured inside from the bottom.\n";
  }
  for (const RestTime& rest : report.rest) {
    out << "Bubbles of " << Short(rest.bubble_mm) << " mm need at least "
        << Minutes(rest.minutes.low);
    if (rest.minutes.high > rest.minutes.low) {
      out << " (thin) to " << Minutes(rest.minutes.high) << " (thick)";
    }
    out << " to rise " << Short(report.depth_mm) << " mm.\n";
  }
  if (report.keeps) {
    out << "Use it first from " << FormatDay(report.keeps->use_first)
        << ", not after " << FormatDay(report.keeps->discard)
        << " without smelling, straining and testing it.\n";
  }
  if (report.cup_factor) {
    out << "A usual cup starts " << Short(*report.cup_factor)
        << " times as thick as with the last batch ("
        << Short(report.cup_factor_interval.low) << " to "
        << Short(report.cup_factor_interval.high) << ").\n";
  }
  int number = 0;
  for (const std::string& step : report.steps) {
    out << ++number << ". " << step << '\n';
  }
  for (const std::string& note : report.notes) out << "Note: " << note << '\n';
  for (const std::string& caution : report.cautions) {
    out << "Caution: " << caution << '\n';
  }
}

ExitStatus RunMedium(const MediumArguments& arguments, Terminal& terminal) {
  const Result<MediumRequest> request = Gather(arguments);
  if (!request) return Fail(terminal, request.error());
  const Result<MediumReport> report = PlanMedium(*request);
  if (!report) return Fail(terminal, report.error());
  if (arguments.json) {
    PrintDocument(terminal, Document(*report));
  } else {
    Print(terminal.out,
          *report,
          arguments.us ? AmountUnits::kUs : AmountUnits::kMetric);
  }
  return ExitStatus::kDone;
}

struct MixArguments {
  bool json = false;
  bool us = false;
  std::string body = "soft";
  std::optional<double> medium_parts, paint_ratio, medium_ratio, density;
  double volume_ml = 0.0;
  double reserve_share = 0.2;
};

Json Document(const MixArguments& arguments, const FirstMixReport& report) {
  Json document;
  document["outcome"] = "planned";
  document["body"] = arguments.body;
  document["medium_parts"] = JsonNumber(report.medium_parts);
  document["medium_parts_usual"] = SpanDocument(report.usual_parts);
  document["source"] = SourceName(report.source);
  document["volume_ml"] = JsonNumber(report.mix.volume_ml);
  document["paint"] = PortionDocument(report.mix.paint);
  document["medium"] = PortionDocument(report.mix.medium);
  document["reserve_ml"] = JsonNumber(report.mix.reserve_ml);
  document["density_g_per_ml"] = JsonNumber(report.mix.blend.density_g_per_ml);
  document["expected_ratio"] =
      report.expected_ratio
          ? IntervalDocument(*report.expected_ratio, report.expected_interval)
          : Json(nullptr);
  document["rescues"] = Json::array();
  for (const auto& [wanted, worst] : report.rescues) {
    document["rescues"].push_back(
        {{"water_share", wanted}, {"rescuable_up_to", JsonNumber(worst, 4)}});
  }
  document["steps"] = report.steps;
  document["notes"] = report.notes;
  document["cautions"] = report.cautions;
  return document;
}

void Print(std::ostream& out,
           const FirstMixReport& report,
           bool powder,
           AmountUnits units) {
  out << "First mix of " << VolumeText(report.mix.volume_ml, units) << ": "
      << VolumeText(report.mix.paint.volume_ml, units) << " ("
      << MassText(report.mix.paint.mass_g(), units) << ") of paint and "
      << VolumeText(report.mix.medium.volume_ml, units) << " ("
      << MassText(report.mix.medium.mass_g(), units) << ") of medium.\n";
  if (powder) {
    out << "Powder is weighed: " << Short(100.0 * report.medium_parts)
        << " % of the medium's weight";
  } else {
    out << "Paint to medium 1:" << Short(report.medium_parts);
  }
  out << " (" << SourceName(report.source) << "; usual "
      << Short(report.usual_parts.low * (powder ? 100.0 : 1.0)) << " to "
      << Short(report.usual_parts.high * (powder ? 100.0 : 1.0)) << ").\n";
  if (report.mix.reserve_ml > 0.0) {
    out << "Keep back " << VolumeText(report.mix.reserve_ml, units)
        << " of it. It brings a cup that should hold 10 % water back from "
        << Short(100.0 * report.rescues[1].second) << " %.\n";
  }
  if (report.expected_ratio) {
    out << "It may start " << Short(*report.expected_ratio)
        << " times as thick as the base coat ("
        << Short(report.expected_interval.low) << " to "
        << Short(report.expected_interval.high)
        << "); this rule is rough, so test it.\n";
  }
  int number = 0;
  for (const std::string& step : report.steps) {
    out << ++number << ". " << step << '\n';
  }
  for (const std::string& note : report.notes) out << "Note: " << note << '\n';
  for (const std::string& caution : report.cautions) {
    out << "Caution: " << caution << '\n';
  }
}

ExitStatus RunMix(const MixArguments& arguments, Terminal& terminal) {
  FirstMixRequest request;
  const std::optional<PaintBody> body = PaintBodyFromName(arguments.body);
  if (!body) {
    return Fail(terminal,
                ExitStatus::kWrongUse,
                "'" + arguments.body +
                    "' is no body; say heavy, soft, fluid, ink or powder.");
  }
  request.body = *body;
  if (*body == PaintBody::kPowder) request.paint = kPowderPigment;
  if (arguments.density) request.paint.density_g_per_ml = *arguments.density;
  request.medium_parts = arguments.medium_parts;
  request.volume_ml = arguments.volume_ml;
  request.reserve_share = arguments.reserve_share;
  const auto paint = LnRatio(arguments.paint_ratio);
  if (!paint) return Fail(terminal, paint.error());
  request.paint_ln_ratio = *paint;
  const auto medium = LnRatio(arguments.medium_ratio);
  if (!medium) return Fail(terminal, medium.error());
  request.medium_ln_ratio = *medium;
  const Result<FirstMixReport> report = PlanFirstMix(request);
  if (!report) return Fail(terminal, report.error());
  if (arguments.json) {
    PrintDocument(terminal, Document(arguments, *report));
  } else {
    Print(terminal.out,
          *report,
          *body == PaintBody::kPowder,
          arguments.us ? AmountUnits::kUs : AmountUnits::kMetric);
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddMediumCommand(CLI::App& parent) {
  auto arguments = std::make_shared<MediumArguments>();
  CLI::App* app = parent.add_subcommand(
      "medium", "Says how to make a batch of pouring medium");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--parts", arguments->parts, "Base to varnish, as 4:1");
  app->add_option("--by", arguments->by, "Parts by volume or by weight")
      ->check(CLI::IsMember({"volume", "weight"}));
  app->add_option("--make-ml", arguments->make_ml, "Volume to make");
  app->add_option("--cup-bottom-mm",
                  arguments->bottom_mm,
                  "Or a cup to fill: inner diameter at the bottom");
  app->add_option("--cup-top-mm",
                  arguments->top_mm,
                  "Inner diameter at the rim; without it the walls are "
                  "straight");
  app->add_option("--cup-height-mm", arguments->height_mm, "Inner height");
  app->add_option("--fill-mm", arguments->fill_mm, "Fill it to this height");
  app->add_option("--ratio",
                  arguments->ratio,
                  "Flow of this batch against the base coat, as tested");
  app->add_option("--last-ratio", arguments->last_ratio, "Of the last batch");
  app->add_option("--medium-share",
                  arguments->medium_share,
                  "Medium in a usual cup, 0 to 1");
  app->add_option("--kinematic-viscosity-mm2-s",
                  arguments->nu,
                  "As a puddle test measured it");
  app->add_option("--mixed", arguments->mixed, "Day it was made, 2026-03-01");
  app->add_flag("--watered", arguments->watered, "Water was added to it");
  app->add_option("--base-density-g-per-ml",
                  arguments->recipe.base.density_g_per_ml,
                  "Density of the base");
  app->add_option("--varnish-density-g-per-ml",
                  arguments->recipe.varnish.density_g_per_ml,
                  "Density of the varnish");
  app->add_flag("--us", arguments->us, "Print US ounces");
  return {app, [arguments](Terminal& terminal) {
            return RunMedium(*arguments, terminal);
          }};
}

Command AddMixCommand(CLI::App& parent) {
  auto arguments = std::make_shared<MixArguments>();
  CLI::App* app = parent.add_subcommand(
      "mix", "Says how to make the first mix of a colour, before any water");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("--volume-ml", arguments->volume_ml, "Mix to make")
      ->required();
  app->add_option(
      "--body", arguments->body, "heavy, soft, fluid, ink or powder");
  app->add_option("--medium-parts",
                  arguments->medium_parts,
                  "Medium to one of paint (powder: grams to one of medium)");
  app->add_option("--reserve-share",
                  arguments->reserve_share,
                  "Kept back unthinned, over what is poured");
  app->add_option("--paint-ratio",
                  arguments->paint_ratio,
                  "Flow of the paint alone against the base coat");
  app->add_option("--medium-ratio",
                  arguments->medium_ratio,
                  "Flow of the medium against the base coat");
  app->add_option(
      "--paint-density-g-per-ml", arguments->density, "Density of the paint");
  app->add_flag("--us", arguments->us, "Print US ounces");
  return {app, [arguments](Terminal& terminal) {
            return RunMix(*arguments, terminal);
          }};
}

}  // namespace flowkin
