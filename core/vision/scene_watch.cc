#include "core/vision/scene_watch.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace flowkin {
namespace {

constexpr int kSmallWidth_px = 160;
/// Pictures this far apart are compared: long enough for a slow hand.
constexpr double kCompare_s = 0.1;
/// A change counts from here, grey levels, and from so many sd of the noise.
constexpr double kLeastChange = 6.0;
constexpr double kNoiseSds = 6.0;
/// Share of the picture that must change; a falling drop is smaller.
constexpr double kMovingShare = 0.001;
/// Neighbouring frames that must agree, so that one bad frame starts nothing.
constexpr int kMovingFrames = 2;
constexpr double kFrozen_s = 1.0;
constexpr double kJudgeEvery_s = 0.25;
/// Level below which the brightest 2 % count as dark, of 255.
constexpr double kDark = 60.0;
constexpr double kGlareLevel = 250.0;
constexpr double kGlareShare = 0.4;
constexpr double kSlowest_hz = 20.0;
/// Of the small picture, within kCompare_s.
constexpr double kShake_px = 0.25;
constexpr double kShakeRemembered_s = 0.6;
/// Steepest edges against the picture's range, per px at kDetailWidth_px: an
/// edge spread over a dozen pixels there is out of focus.
constexpr int kDetailWidth_px = 640;
constexpr double kLeastEdge = 0.08;
/// Edges of a stick: long, upright, above the middle.
constexpr double kStickShare = 0.2;

/// Rows of the longest upright edge of one sign at column x.
int LongestRun(const cv::Mat& slope, int x, float sign, double least) {
  int run = 0;
  int best = 0;
  int missed = 0;
  for (int y = 0; y < slope.rows; ++y) {
    bool edge = false;
    // A stick may lean a little.
    for (int k = -1; k <= 1 && !edge; ++k) {
      edge = sign * slope.at<float>(y, x + k) > least;
    }
    if (edge) {
      ++run;
      missed = 0;
    } else if (++missed > 2) {
      run = 0;
    }
    best = std::max(best, run);
  }
  return best;
}

double Level(const cv::Mat& luma, double share) {
  std::vector<std::uint8_t> values(luma.begin<std::uint8_t>(),
                                   luma.end<std::uint8_t>());
  const auto at =
      values.begin() + static_cast<std::ptrdiff_t>(
                           share * static_cast<double>(values.size() - 1));
  std::nth_element(values.begin(), at, values.end());
  return *at;
}

/// Difference less what the light did to each row as a whole: the lamp's
/// flicker and the exposure are no motion. A row's gain is found on the pixels
/// that follow it.
cv::Mat LightFreeDifference(const cv::Mat& now, const cv::Mat& then) {
  cv::Mat d(now.size(), CV_32F);
  std::vector<float> miss(static_cast<std::size_t>(now.cols));
  std::vector<float> sorted;
  for (int y = 0; y < now.rows; ++y) {
    const auto* a = now.ptr<std::uint8_t>(y);
    const auto* b = then.ptr<std::uint8_t>(y);
    float limit = std::numeric_limits<float>::max();
    for (int round = 0; round < 3; ++round) {
      float both = 0.0F;
      float own = 1.0F;
      for (int x = 0; x < now.cols; ++x) {
        if (round > 0 && miss[static_cast<std::size_t>(x)] > limit) continue;
        both += static_cast<float>(a[x] * b[x]);
        own += static_cast<float>(b[x] * b[x]);
      }
      const float gain = both / own;
      for (int x = 0; x < now.cols; ++x) {
        d.at<float>(y, x) =
            static_cast<float>(a[x]) - gain * static_cast<float>(b[x]);
        miss[static_cast<std::size_t>(x)] = std::abs(d.at<float>(y, x));
      }
      sorted = miss;
      const auto middle =
          sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
      std::nth_element(sorted.begin(), middle, sorted.end());
      limit = 3.0F * *middle + 1.0F;
    }
  }
  return d;
}

bool SomethingMoves(const cv::Mat& now, const cv::Mat& then) {
  const cv::Mat d = cv::abs(LightFreeDifference(now, then));
  std::vector<float> sizes(d.begin<float>(), d.end<float>());
  const auto middle =
      sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
  std::nth_element(sizes.begin(), middle, sizes.end());
  const double noise = 1.4826 * static_cast<double>(*middle);
  const int moved =
      cv::countNonZero(d > std::max(kLeastChange, kNoiseSds * noise));
  return moved > kMovingShare * static_cast<double>(d.total());
}

/// How far the picture as a whole moved, px; 0 where that cannot be told.
double WholeShift(const cv::Mat& now, const cv::Mat& then) {
  cv::Mat a;
  cv::Mat b;
  then.convertTo(a, CV_32F);
  now.convertTo(b, CV_32F);
  cv::Mat window;
  cv::createHanningWindow(window, a.size(), CV_32F);
  double response = 0.0;
  const cv::Point2d shift = cv::phaseCorrelate(a, b, window, &response);
  constexpr double kSure = 0.2;
  constexpr double kFarthest_px = 20.0;
  const double far = std::hypot(shift.x, shift.y);
  return response > kSure && far < kFarthest_px ? far : 0.0;
}

bool HasStick(const cv::Mat& luma, double range) {
  cv::Mat smooth;
  cv::blur(luma, smooth, {1, 5});
  cv::Mat slope;
  cv::Sobel(smooth, slope, CV_32F, 1, 0, 1, 0.5);
  const double least = std::max(2.0, 0.04 * range);
  const int wanted = static_cast<int>(kStickShare * slope.rows);
  const auto upper = cv::Range(0, slope.rows * 3 / 4);
  const cv::Mat top = slope.rowRange(upper);
  std::vector<int> rising(static_cast<std::size_t>(slope.cols), 0);
  std::vector<int> falling(rising);
  for (int x = 1; x + 1 < slope.cols; ++x) {
    rising[static_cast<std::size_t>(x)] = LongestRun(top, x, 1.0F, least);
    falling[static_cast<std::size_t>(x)] = LongestRun(top, x, -1.0F, least);
  }
  // Two edges of opposite sign, a stick's width apart.
  const int widest = slope.cols / 4;
  for (int x = 1; x + 1 < slope.cols; ++x) {
    for (int w = 2; w <= widest && x + w + 1 < slope.cols; ++w) {
      const auto left = static_cast<std::size_t>(x);
      const auto right = static_cast<std::size_t>(x + w);
      if ((rising[left] >= wanted && falling[right] >= wanted) ||
          (falling[left] >= wanted && rising[right] >= wanted)) {
        return true;
      }
    }
  }
  return false;
}

/// Steepest edges against the range of levels, per px.
double SteepestEdge(const cv::Mat& luma, double range) {
  cv::Mat smooth;
  cv::GaussianBlur(luma, smooth, {3, 3}, 0.0);
  cv::Mat dx;
  cv::Mat dy;
  cv::Sobel(smooth, dx, CV_32F, 1, 0, 1, 0.5);
  cv::Sobel(smooth, dy, CV_32F, 0, 1, 1, 0.5);
  cv::Mat size;
  cv::magnitude(dx, dy, size);
  cv::Mat levels;
  size.convertTo(levels, CV_8U, 2.0);
  constexpr double kSteepestShare = 0.998;
  return Level(levels, kSteepestShare) / 2.0 / std::max(range, 1.0);
}

cv::Mat Shrink(const cv::Mat& luma, int width_px) {
  if (luma.cols <= width_px) return luma.clone();
  cv::Mat small;
  cv::resize(luma,
             small,
             {width_px, std::max(1, luma.rows * width_px / luma.cols)},
             0,
             0,
             cv::INTER_AREA);
  return small;
}

}  // namespace

SceneView SceneWatch::Add(const Frame& frame) {
  SceneView view;
  const double t_s = frame.TimeS();
  if (frame.luma.size() != size_) {
    *this = SceneWatch(wants_stick_);
    size_ = frame.luma.size();
    first_s_ = last_motion_s_ = changed_s_ = t_s;
    next_judge_s_ = t_s;
  }
  Small now{t_s, Shrink(frame.luma, kSmallWidth_px)};
  if (!recent_.empty()) {
    const double step_s = t_s - recent_.back().t_s;
    interval_s_ =
        interval_s_ ? *interval_s_ + 0.1 * (step_s - *interval_s_) : step_s;
    if (cv::norm(now.luma, recent_.back().luma, cv::NORM_L1) > 0.0) {
      changed_s_ = t_s;
    }
    const cv::Mat& then = recent_.front().luma;
    moved_in_a_row_ = SomethingMoves(now.luma, then) ? moved_in_a_row_ + 1 : 0;
    if (moved_in_a_row_ >= kMovingFrames) last_motion_s_ = t_s;
  }
  if (t_s >= next_judge_s_) Judge(frame, t_s);
  recent_.push_back(std::move(now));
  while (recent_.size() > 1 && t_s - recent_[1].t_s >= kCompare_s) {
    recent_.pop_front();
  }

  view.moving = moved_in_a_row_ >= kMovingFrames;
  view.still_s = t_s - last_motion_s_;
  const bool light = picture_fault_ == SceneFault::kDark ||
                     picture_fault_ == SceneFault::kGlare;
  if (t_s - changed_s_ > kFrozen_s) {
    view.fault = SceneFault::kFrozen;
  } else if (!light && interval_s_ && *interval_s_ > 1.0 / kSlowest_hz) {
    view.fault = SceneFault::kSlow;
  } else if (!light && shaken_s_ >= 0.0 &&
             t_s - shaken_s_ < kShakeRemembered_s) {
    view.fault = SceneFault::kShaking;
  } else {
    view.fault = picture_fault_;
  }
  return view;
}

void SceneWatch::Judge(const Frame& frame, double t_s) {
  next_judge_s_ = t_s + kJudgeEvery_s;
  if (!recent_.empty() && WholeShift(Shrink(frame.luma, kSmallWidth_px),
                                     recent_.front().luma) > kShake_px) {
    shaken_s_ = t_s;
  }
  picture_fault_ = FaultOfPicture(frame);
}

SceneFault SceneWatch::FaultOfPicture(const Frame& frame) const {
  const cv::Mat luma = Shrink(frame.luma, kDetailWidth_px);
  const double black = frame.full_range ? 0.0 : 16.0;
  const double bright = (Level(luma, 0.98) - black) * 255.0 / (255.0 - black);
  if (bright < kDark) return SceneFault::kDark;
  const double white =
      frame.full_range ? kGlareLevel : kGlareLevel * 219.0 / 255.0 + 16.0;
  if (cv::countNonZero(luma >= white) >
      kGlareShare * static_cast<double>(luma.total())) {
    return SceneFault::kGlare;
  }
  const double range = Level(luma, 0.99) - Level(luma, 0.01);
  if (SteepestEdge(luma, range) < kLeastEdge) return SceneFault::kBlurred;
  if (wants_stick_ && !HasStick(Shrink(luma, 2 * kSmallWidth_px), range)) {
    return SceneFault::kNoStick;
  }
  return SceneFault::kNone;
}

}  // namespace flowkin
