#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>
#include <ostream>
#include <stop_token>

#include "app/cli/command.h"
#include "app/cli/comparison_text.h"
#include "app/cli/interrupt.h"
#include "app/cli/measure_options.h"
#include "app/cli/measurement_text.h"
#include "app/usecases/measure_clip.h"

namespace flowkin {
namespace {

struct MeasureFlags {
  std::string clip;
  ClipFlags test;
  std::optional<std::string> overlay;
  std::optional<std::string> trace;
  bool json = false;
};

Json ViscosityDocument(const MeasuredClip& measured) {
  if (!measured.kinematic_viscosity_mm2_s) return nullptr;
  const Interval& range = *measured.kinematic_viscosity_mm2_s;
  Json document;
  document["value"] = JsonNumber(
      std::exp(measured.measurement.ln_kinematic_viscosity_mm2_s->value));
  document["low"] = JsonNumber(range.low);
  document["high"] = JsonNumber(range.high);
  document["level"] = JsonNumber(range.level);
  return document;
}

Json MeasureDocument(const MeasuredClip& measured) {
  const FlowMeasurement& measurement = measured.measurement;
  const bool refused = measurement.outcome == Outcome::kRefused;
  Json document;
  document["clip"] = measured.clip;
  document["test"] = TestKindName(measurement.kind);
  document["outcome"] = refused ? "refused" : "measured";
  document["reason"] = refused ? Json(measurement.reason) : Json(nullptr);
  document["time_base"] = {{"frames", measured.info.frame_count},
                           {"duration_s", JsonNumber(measured.info.duration_s)},
                           {"time_scale", JsonNumber(measured.info.time_scale)},
                           {"rotation_deg", measured.info.rotation_deg}};
  document["events"] = EventsDocument(measurement);
  document["proxies"] = Json::array();
  for (const FlowProxy& proxy : measurement.proxies) {
    document["proxies"].push_back(
        {{"name", proxy.name},
         {"value", JsonNumber(proxy.value)},
         {"unit", proxy.unit},
         {"rel_sd", JsonNumber(proxy.ln_value.sd, 3)},
         {"viscosity_exponent", JsonNumber(proxy.exponent.value, 4)},
         {"viscosity_exponent_sd", JsonNumber(proxy.exponent.sd, 3)},
         {"paint_rel_sd", JsonNumber(proxy.paint_sd, 3)}});
  }
  if (measurement.kind == TestKind::kPuddle) {
    document["kinematic_viscosity_mm2_s"] = ViscosityDocument(measured);
  }
  document["warnings"] = Json::array();
  for (const std::string& text : measured.info.warnings) {
    document["warnings"].push_back(text);
  }
  for (const std::string& text : measurement.warnings) {
    document["warnings"].push_back(text);
  }
  return document;
}

void PrintEvent(std::ostream& out,
                const char* name,
                const std::optional<double>& time_s) {
  if (time_s) out << "  " << name << " at " << Fixed(*time_s, 2) << " s\n";
}

void PrintForPerson(std::ostream& out, const MeasuredClip& measured) {
  const FlowMeasurement& measurement = measured.measurement;
  out << measured.clip << ": " << TestKindName(measurement.kind) << " test, "
      << measured.info.frame_count << " frames over "
      << Fixed(measured.info.duration_s, 2) << " s";
  if (measured.info.time_scale != 1.0) {
    out << " of real time (plays " << Digits(1.0 / measured.info.time_scale, 3)
        << " times slower)";
  }
  out << '\n';
  if (measurement.outcome == Outcome::kRefused) {
    out << "  not measured\n";
    return;
  }
  PrintEvent(out, "lifted", measurement.lift_s);
  PrintEvent(out, "stream broke", measurement.break_s);
  PrintEvent(out, "ribbon laid", measurement.laid_s);
  PrintEvent(out, "first paint on the tile", measurement.start_s);
  if (!measurement.drips_s.empty()) {
    out << "  drips at";
    for (std::size_t i = 0; i < measurement.drips_s.size(); ++i) {
      out << (i == 0 ? " " : ", ") << Fixed(measurement.drips_s[i], 2);
    }
    out << " s\n";
  }
  for (const FlowProxy& proxy : measurement.proxies) {
    out << "  " << SpokenName(proxy.name) << ' ' << Digits(proxy.value, 4);
    if (!proxy.unit.empty()) out << ' ' << proxy.unit;
    out << ", good to " << Digits(100.0 * proxy.ln_value.sd, 2) << " %\n";
  }
  if (measured.kinematic_viscosity_mm2_s) {
    const Interval& range = *measured.kinematic_viscosity_mm2_s;
    out << "  kinematic viscosity "
        << Digits(std::exp(measurement.ln_kinematic_viscosity_mm2_s->value), 3)
        << " mm2/s, between " << Digits(range.low, 3) << " and "
        << Digits(range.high, 3) << '\n';
  }
}

ExitStatus RunMeasure(const MeasureFlags& flags, Terminal& terminal) {
  MeasureClipOptions options = flags.test.ToOptions();
  options.overlay_path = flags.overlay;
  options.trace_path = flags.trace;
  const InterruptWatch interrupt;
  Result<MeasuredClip> measured = [&] {
    ProgressBar bar(terminal, "measuring " + flags.clip);
    std::stop_source stop;
    return MeasureClip(options).Run(
        flags.clip,
        [&](double share) {
          bar.Show(share);
          if (interrupt.Signal() != 0) stop.request_stop();
        },
        stop.get_token());
  }();
  if (const int signal = interrupt.Signal(); signal != 0) EndBySignal(signal);
  if (!measured) return Fail(terminal, measured.error());

  for (const std::string& text : measured->info.warnings) Warn(terminal, text);
  for (const std::string& text : measured->measurement.warnings) {
    Warn(terminal, text);
  }
  if (flags.json) {
    PrintDocument(terminal, MeasureDocument(*measured));
  } else {
    PrintForPerson(terminal.out, *measured);
  }
  if (measured->measurement.outcome == Outcome::kRefused) {
    return Fail(terminal, ExitStatus::kRefused, measured->measurement.reason);
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddMeasureCommand(CLI::App& parent) {
  CLI::App* app = parent.add_subcommand("measure", "Measure one filmed test");
  auto flags = std::make_shared<MeasureFlags>();
  app->add_option("clip", flags->clip, "The film of one test")
      ->required()
      ->type_name("CLIP");
  flags->test.AddTo(*app);
  app->add_option("--overlay",
                  flags->overlay,
                  "Write the clip with what was found drawn on it")
      ->type_name("OUT.mp4");
  app->add_option("--trace", flags->trace, "Write the measured time series")
      ->type_name("OUT.csv");
  app->add_flag("--json", flags->json, "Print one JSON document");
  return {app,
          [flags](Terminal& terminal) { return RunMeasure(*flags, terminal); }};
}

}  // namespace flowkin
