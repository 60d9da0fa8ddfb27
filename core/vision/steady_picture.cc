#include "core/vision/steady_picture.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>

namespace flowkin {
namespace {

/// Reduced to this, noise and coding hardly change a picture.
constexpr int kWidth_px = 320;
constexpr double kRest_s = 0.5;
/// Below this step of grey, of 255, nothing moves, whatever the median says.
constexpr double kStill = 0.5;
/// A rest must be at least this share as sharp as the sharpest one: less is a
/// cover, a table or a lost focus; our guess.
constexpr double kSharpEnough = 0.2;

}  // namespace

void SteadyPicture::Add(const Frame& frame) {
  if (frame.damaged || frame.luma.empty()) return;
  const double scale = std::min(1.0, 1.0 * kWidth_px / frame.luma.cols);
  cv::Mat small;
  cv::resize(frame.luma, small, {}, scale, scale, cv::INTER_AREA);
  cv::Mat edges;
  cv::Laplacian(small, edges, CV_32F);
  cv::Scalar mean;
  cv::Scalar sd;
  cv::meanStdDev(edges, mean, sd);
  Seen seen{frame.index, frame.TimeS(), 0.0, sd[0] * sd[0]};
  if (last_.size() == small.size()) {
    seen.change = cv::norm(small, last_, cv::NORM_L1) /
                  static_cast<double>(small.total());
  }
  seen_.push_back(seen);
  last_ = small;
}

std::optional<std::int64_t> SteadyPicture::Finish() const {
  if (seen_.empty()) return std::nullopt;
  std::vector<double> changes;
  for (const Seen& seen : seen_) changes.push_back(seen.change);
  const auto middle =
      changes.begin() + static_cast<std::ptrdiff_t>(changes.size() / 2);
  std::nth_element(changes.begin(), middle, changes.end());
  const double still = std::max(kStill, 2.0 * *middle);
  double sharpest = 0.0;
  for (const Seen& seen : seen_) {
    if (seen.change <= still) sharpest = std::max(sharpest, seen.sharpness);
  }
  const auto less_sharp = [](const Seen& a, const Seen& b) {
    return a.sharpness < b.sharpness;
  };
  for (auto end = seen_.end(); end != seen_.begin(); --end) {
    const double from_s = (end - 1)->t_s - kRest_s;
    auto begin = end;
    while (begin != seen_.begin() && (begin - 1)->t_s >= from_s &&
           (begin - 1)->change <= still) {
      --begin;
    }
    const bool cut = begin != seen_.begin() && (begin - 1)->t_s >= from_s;
    if (begin == end || cut) continue;
    const auto best = std::max_element(begin, end, less_sharp);
    if (best->sharpness >= kSharpEnough * sharpest) return best->index;
  }
  return std::max_element(seen_.begin(), seen_.end(), less_sharp)->index;
}

}  // namespace flowkin
