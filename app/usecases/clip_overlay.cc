#include "app/usecases/clip_overlay.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <opencv2/imgproc.hpp>
#include <utility>
#include <vector>

#include "app/usecases/frame_to_bgr.h"
#include "core/video/clip_writer.h"

namespace flowkin {
namespace {

const cv::Scalar kInk(245, 240, 235);
const cv::Scalar kPanel(40, 34, 30);
constexpr double kPanelOpacity = 0.72;
/// Height of a line of text as a share of the picture's shorter side.
constexpr double kLineShare = 0.045;

std::string TimeText(const char* name, double time_s) {
  char text[80];
  std::snprintf(text, sizeof(text), "%s %.2f s", name, time_s);
  return text;
}

struct Event {
  const char* name;
  double time_s;
};

std::vector<Event> EventsOf(const FlowMeasurement& measurement) {
  std::vector<Event> events;
  const auto add = [&](const char* name, const std::optional<double>& time_s) {
    if (time_s) events.push_back({name, *time_s});
  };
  add("lift", measurement.lift_s);
  add("laid", measurement.laid_s);
  add("start", measurement.start_s);
  add("break", measurement.break_s);
  for (const double drip_s : measurement.drips_s) add("drip", drip_s);
  return events;
}

/// The numbers of the test, one line each.
std::vector<std::string> ResultLines(const FlowMeasurement& measurement) {
  std::vector<std::string> lines;
  if (measurement.outcome == Outcome::kRefused) {
    lines.push_back("not measured: " + measurement.reason);
    return lines;
  }
  for (const FlowProxy& proxy : measurement.proxies) {
    char text[160];
    std::snprintf(text,
                  sizeof(text),
                  "%s %.4g %s  +- %.2g %%",
                  proxy.name.c_str(),
                  proxy.value,
                  proxy.unit.c_str(),
                  100.0 * proxy.ln_value.sd);
    std::string line = text;
    std::replace(line.begin(), line.end(), '_', ' ');
    lines.push_back(line);
  }
  return lines;
}

/// Breaks a line at spaces so that it fits into `width_px`.
std::vector<std::string> Wrap(const std::string& text,
                              double scale,
                              int width_px) {
  std::vector<std::string> lines(1);
  std::size_t from = 0;
  while (from < text.size()) {
    std::size_t to = text.find(' ', from);
    if (to == std::string::npos) to = text.size();
    const std::string word = text.substr(from, to - from);
    const std::string longer =
        lines.back().empty() ? word : lines.back() + " " + word;
    if (!lines.back().empty() &&
        cv::getTextSize(longer, cv::FONT_HERSHEY_SIMPLEX, scale, 1, nullptr)
                .width > width_px) {
      lines.push_back(word);
    } else {
      lines.back() = longer;
    }
    from = to + 1;
  }
  return lines;
}

/// A dark strip with `lines` along the top of the picture.
void DrawPanel(cv::Mat& bgr, const std::vector<std::string>& lines) {
  const int shorter = std::min(bgr.cols, bgr.rows);
  const int line_px = std::max(12, static_cast<int>(kLineShare * shorter));
  const double scale = cv::getFontScaleFromHeight(
      cv::FONT_HERSHEY_SIMPLEX, std::max(7, line_px * 3 / 5), 1);
  const int margin = line_px / 2;
  std::vector<std::string> wrapped;
  for (const std::string& line : lines) {
    for (std::string& part : Wrap(line, scale, bgr.cols - 2 * margin)) {
      wrapped.push_back(std::move(part));
    }
  }
  const int height =
      std::min(bgr.rows, static_cast<int>(wrapped.size()) * line_px + margin);
  cv::Mat strip = bgr(cv::Rect(0, 0, bgr.cols, height));
  const cv::Mat fill(strip.size(), strip.type(), kPanel);
  cv::addWeighted(fill, kPanelOpacity, strip, 1.0 - kPanelOpacity, 0.0, strip);
  int y = line_px;
  for (const std::string& line : wrapped) {
    cv::putText(bgr,
                line,
                cv::Point(margin, y),
                cv::FONT_HERSHEY_SIMPLEX,
                scale,
                kInk,
                1,
                cv::LINE_AA);
    y += line_px;
  }
}

}  // namespace

Result<void> WriteOverlay(FrameSource& source,
                          const ClipTest& test,
                          const MeasuredClip& measured,
                          const std::string& path,
                          const ProgressCallback& progress,
                          std::stop_token stop) {
  const FlowMeasurement& measurement = measured.measurement;
  const std::vector<Event> events = EventsOf(measurement);
  const std::vector<std::string> results = ResultLines(measurement);
  // The numbers appear once the last event they rest on has passed.
  double shown_from_s = measured.info.duration_s * 0.5;
  for (const Event& event : events) {
    shown_from_s = std::max(shown_from_s, event.time_s);
  }
  const std::string heading =
      std::string(TestKindName(measurement.kind)) + " test";
  const double duration_s = std::max(measured.info.duration_s, 1e-9);

  auto writer = ClipWriter::Create(path);
  if (!writer) return writer.error();
  while (true) {
    if (stop.stop_requested()) {
      return Error{ErrorCode::kInternal,
                   "Writing the overlay was stopped; start it again."};
    }
    auto next = source.Next();
    if (!next) return next.error();
    if (!next->has_value()) break;
    const Frame& frame = **next;
    const double t_s = frame.TimeS();
    cv::Mat bgr = FrameToBgr(frame);
    test.DrawFound(bgr, t_s);
    std::string times = heading + "   " + TimeText("", t_s);
    for (const Event& event : events) {
      if (event.time_s <= t_s) {
        times += "   " + TimeText(event.name, event.time_s);
      }
    }
    std::vector<std::string> lines = {times};
    if (t_s >= shown_from_s) {
      lines.insert(lines.end(), results.begin(), results.end());
    }
    DrawPanel(bgr, lines);
    // Slow motion plays as slowly as the clip does.
    const auto played = std::chrono::duration_cast<std::chrono::nanoseconds>(
        frame.timestamp / source.Info().time_scale);
    if (auto done = (*writer)->Add(bgr, played); !done) return done;
    if (progress) progress(std::min(1.0, t_s / duration_s));
  }
  return (*writer)->Finish();
}

}  // namespace flowkin
