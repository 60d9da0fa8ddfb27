#include "app/usecases/draw_found.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace flowkin {
namespace {

// Teal for what is there, amber for what has ended: apart in lightness as well
// as in hue, so that colour-blind eyes tell them. Each line has a dark edge, so
// that it shows on white paint and on black.
const cv::Scalar kPresent(190, 200, 60);
const cv::Scalar kEnded(40, 170, 245);
const cv::Scalar kEdge(30, 25, 20);

int LineWidth(const cv::Mat& bgr) {
  return std::max(1, std::min(bgr.cols, bgr.rows) / 360);
}

cv::Point ToPoint(double x_px, double y_px) {
  // Far outside the picture is clipped by the drawing anyway; keep it in the
  // range of int.
  constexpr double kFar = 1e6;
  return {cvRound(std::clamp(x_px, -kFar, kFar)),
          cvRound(std::clamp(y_px, -kFar, kFar))};
}

void DrawCurve(cv::Mat& bgr,
               const std::vector<cv::Point>& points,
               bool closed,
               const cv::Scalar& colour) {
  if (points.size() < 2) return;
  const int width = LineWidth(bgr);
  cv::polylines(bgr, points, closed, kEdge, width + 2, cv::LINE_AA);
  cv::polylines(bgr, points, closed, colour, width, cv::LINE_AA);
}

void DrawLine(cv::Mat& bgr,
              const cv::Point& from,
              const cv::Point& to,
              const cv::Scalar& colour) {
  DrawCurve(bgr, {from, to}, false, colour);
}

/// A curve of (time, share of full height) along the lower fifth of the
/// picture, up to `t_s`; time runs over `t0_s` .. `t1_s`.
void DrawHistory(cv::Mat& bgr,
                 const std::vector<cv::Point2d>& history,
                 double t0_s,
                 double t1_s,
                 double t_s) {
  if (t1_s <= t0_s) return;
  const double left = 0.05 * bgr.cols;
  const double width = 0.9 * bgr.cols;
  const double bottom = 0.97 * bgr.rows;
  const double height = 0.17 * bgr.rows;
  std::vector<cv::Point> points;
  for (const cv::Point2d& at : history) {
    if (at.x < t0_s || at.x > std::min(t_s, t1_s) || !std::isfinite(at.y)) {
      continue;
    }
    points.push_back(ToPoint(left + width * (at.x - t0_s) / (t1_s - t0_s),
                             bottom - height * std::clamp(at.y, 0.0, 1.0)));
  }
  DrawLine(bgr,
           ToPoint(left, bottom),
           ToPoint(left + width, bottom),
           cv::Scalar(200, 200, 200));
  DrawCurve(bgr, points, false, kPresent);
}

/// The last sample at or before `t_s`; null before the first.
template <typename Sample>
const Sample* SampleAt(const std::vector<Sample>& samples, double t_s) {
  const auto after = std::upper_bound(
      samples.begin(), samples.end(), t_s, [](double t, const Sample& s) {
        return t < s.t_s;
      });
  return after == samples.begin() ? nullptr : &*(after - 1);
}

}  // namespace

void DrawStream(cv::Mat& bgr,
                double t_s,
                const StreamTrack& track,
                const FlowMeasurement& measurement) {
  const bool broken = measurement.break_s && t_s >= *measurement.break_s;
  const cv::Scalar& colour = broken ? kEnded : kPresent;
  for (const StreamEpisode& episode : track.episodes) {
    if (t_s < episode.rest_s || episode.num_pieces <= 0) continue;
    const auto after =
        std::upper_bound(episode.t_s.begin(), episode.t_s.end(), t_s);
    if (after == episode.t_s.begin()) continue;
    const auto at = static_cast<std::size_t>(after - episode.t_s.begin()) - 1;
    const double shift = at < episode.shift_px.size()
                             ? static_cast<double>(episode.shift_px[at])
                             : 0.0;
    const double half = 0.5 * episode.stick_width_px;
    const double stick_x = episode.stick_center_x_px + shift;
    DrawLine(bgr,
             ToPoint(stick_x - half, episode.stick_bottom_y_px),
             ToPoint(stick_x + half, episode.stick_bottom_y_px),
             colour);
    DrawLine(bgr,
             ToPoint(stick_x - 3.0 * half, episode.pool_y_px),
             ToPoint(stick_x + 3.0 * half, episode.pool_y_px),
             colour);

    // Both sides of the stream, piece by piece, where it is there.
    const auto pieces = static_cast<std::size_t>(episode.num_pieces);
    if (episode.width_px.size() < (at + 1) * pieces ||
        episode.presence.size() < (at + 1) * pieces) {
      continue;
    }
    const double fall = episode.pool_y_px - episode.stick_bottom_y_px;
    std::vector<cv::Point> left;
    std::vector<cv::Point> right;
    const auto draw_sides = [&] {
      DrawCurve(bgr, left, false, colour);
      DrawCurve(bgr, right, false, colour);
      left.clear();
      right.clear();
    };
    for (std::size_t piece = 0; piece < pieces; ++piece) {
      const float width = episode.width_px[at * pieces + piece];
      if (width < 0.0F || episode.presence[at * pieces + piece] < 0.5F) {
        draw_sides();
        continue;
      }
      const double y = episode.stick_bottom_y_px +
                       fall * (static_cast<double>(piece) + 0.5) /
                           static_cast<double>(pieces);
      const double x = episode.stream_x_px + shift + episode.AsidePx(y);
      left.push_back(ToPoint(x - 0.5 * static_cast<double>(width), y));
      right.push_back(ToPoint(x + 0.5 * static_cast<double>(width), y));
    }
    draw_sides();
  }
}

void DrawRelief(cv::Mat& bgr,
                double t_s,
                const ReliefTrack& track,
                const FlowMeasurement& measurement) {
  std::vector<cv::Point> outline;
  for (const ReliefPoint& corner : track.outline_px) {
    outline.push_back(ToPoint(corner.x_px, corner.y_px));
  }
  const bool laid = measurement.laid_s && t_s >= *measurement.laid_s;
  DrawCurve(bgr, outline, true, laid ? kPresent : kEnded);
  if (!measurement.laid_s || track.start_contrast <= 0.0) return;
  std::vector<cv::Point2d> history;
  for (const ReliefSample& sample : track.samples) {
    if (sample.t_s >= *measurement.laid_s) {
      history.emplace_back(sample.t_s, sample.contrast / track.start_contrast);
    }
  }
  DrawHistory(bgr, history, *measurement.laid_s, track.last_t_s, t_s);
}

void DrawFront(cv::Mat& bgr, double t_s, const FrontTrack& track) {
  if (track.scale && track.scale->method == "ruler") {
    const auto& line = track.scale->line_px;
    DrawLine(
        bgr, ToPoint(line[0], line[1]), ToPoint(line[2], line[3]), kPresent);
  }
  const FrontSample* sample = SampleAt(track.samples, t_s);
  if (sample == nullptr) return;
  constexpr int kCorners = 96;
  std::vector<cv::Point> outline;
  for (int i = 0; i < kCorners; ++i) {
    const double a = 2.0 * CV_PI * i / kCorners;
    const double r = sample->radius_px + sample->c2_px * std::cos(2.0 * a) +
                     sample->s2_px * std::sin(2.0 * a) +
                     sample->c3_px * std::cos(3.0 * a) +
                     sample->s3_px * std::sin(3.0 * a);
    outline.push_back(ToPoint(sample->x_px + r * std::cos(a),
                              sample->y_px + r * std::sin(a)));
  }
  DrawCurve(bgr, outline, true, kPresent);
  const int arm = 3 * LineWidth(bgr);
  DrawLine(bgr,
           ToPoint(sample->x_px - arm, sample->y_px),
           ToPoint(sample->x_px + arm, sample->y_px),
           kPresent);
  DrawLine(bgr,
           ToPoint(sample->x_px, sample->y_px - arm),
           ToPoint(sample->x_px, sample->y_px + arm),
           kPresent);
  double largest = 0.0;
  for (const FrontSample& other : track.samples) {
    largest = std::max(largest, other.radius_px);
  }
  if (largest <= 0.0) return;
  std::vector<cv::Point2d> history;
  for (const FrontSample& other : track.samples) {
    history.emplace_back(other.t_s, other.radius_px / largest);
  }
  DrawHistory(
      bgr, history, track.samples.front().t_s, track.samples.back().t_s, t_s);
}

}  // namespace flowkin
