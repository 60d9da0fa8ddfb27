#include "app/cli/measure_options.h"

#include <CLI/CLI.hpp>
#include <chrono>
#include <map>
#include <ostream>
#include <utility>

namespace flowkin {
namespace {

constexpr double kPatienceS = 1.0;  // shorter work needs no bar
constexpr int kBarWidth = 30;

double NowS() {
  return std::chrono::duration<double>(
             std::chrono::steady_clock::now().time_since_epoch())
      .count();
}

}  // namespace

void ClipFlags::AddTo(CLI::App& app) {
  app.add_option("--test", test, "Which test was filmed: stream, level, puddle")
      ->required()
      ->type_name("TEST")
      ->check(CLI::IsMember({"stream", "level", "puddle"}));
  app.add_option("--volume-ml",
                 volume_ml,
                 "Puddle test: volume laid on the tile, millilitres")
      ->type_name("V");
  app.add_option("--mm-per-px", mm_per_px, "Image scale, millimetres per pixel")
      ->type_name("S");
  app.add_option("--shot-fps",
                 shot_fps,
                 "Rate the scene was filmed at, if the file plays slower")
      ->type_name("F");
}

MeasureClipOptions ClipFlags::ToOptions() const {
  static const std::map<std::string, TestKind> kKinds = {
      {"stream", TestKind::kStream},
      {"level", TestKind::kLevel},
      {"puddle", TestKind::kPuddle}};
  MeasureClipOptions options;
  options.test.kind = kKinds.at(test);
  options.test.volume_ml = volume_ml;
  options.test.mm_per_px = mm_per_px;
  options.shot_fps = shot_fps;
  return options;
}

ProgressBar::ProgressBar(Terminal& terminal, std::string label)
    : terminal_(terminal), label_(std::move(label)), started_s_(NowS()) {}

ProgressBar::~ProgressBar() {
  if (shown_percent_ >= 0) terminal_.err << "\r\033[K" << std::flush;
}

void ProgressBar::Show(double share) {
  if (!terminal_.err_is_terminal || NowS() - started_s_ < kPatienceS) return;
  const int percent = static_cast<int>(share * 100.0);
  if (percent == shown_percent_) return;
  shown_percent_ = percent;
  const int filled = percent * kBarWidth / 100;
  terminal_.err << "\r\033[K" << label_ << "  ["
                << std::string(static_cast<std::size_t>(filled), '=')
                << std::string(static_cast<std::size_t>(kBarWidth - filled),
                               ' ')
                << "] " << percent << " %" << std::flush;
}

}  // namespace flowkin
