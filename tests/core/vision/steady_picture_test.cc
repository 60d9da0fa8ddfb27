#include "core/vision/steady_picture.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace flowkin::testing {
namespace {

constexpr int kFps = 20;

/// Discs on a ground, moved by `shift_px` and blurred by `blur_px`.
cv::Mat Discs(double shift_px, double blur_px, double grey = 200.0) {
  cv::Mat picture(360, 640, CV_8UC1, cv::Scalar(grey));
  for (int y = 30; y < 360; y += 60) {
    for (int x = 30; x < 640; x += 60) {
      cv::circle(picture,
                 {x + static_cast<int>(shift_px), y},
                 18,
                 cv::Scalar(60.0),
                 cv::FILLED);
    }
  }
  if (blur_px > 0.0) cv::GaussianBlur(picture, picture, {}, blur_px);
  return picture;
}

class Clip {
 public:
  void Show(const cv::Mat& luma, bool damaged = false) {
    Frame frame;
    frame.luma = luma.clone();
    cv::RNG noise(static_cast<std::uint64_t>(index_) + 1);
    cv::Mat grain(luma.size(), CV_8UC1);
    noise.fill(grain, cv::RNG::UNIFORM, 0, 4);
    frame.luma += grain;
    frame.index = index_;
    frame.timestamp = std::chrono::milliseconds(1000 / kFps * index_++);
    frame.damaged = damaged;
    steady_.Add(frame);
  }
  std::int64_t Next() const { return index_; }
  std::int64_t Found() const { return steady_.Finish().value_or(-1); }

 private:
  SteadyPicture steady_;
  std::int64_t index_ = 0;
};

TEST(SteadyPicture, TakesTheSharpestOfTheLastRest) {
  Clip clip;
  for (int i = 0; i < 20; ++i) clip.Show(Discs(0.0, 0.0));  // before
  for (int i = 0; i < 10; ++i) clip.Show(Discs(6.0 * i, 1.0));
  for (int i = 0; i < 16; ++i) clip.Show(Discs(60.0, 1.0));
  const std::int64_t sharpest = clip.Next();
  clip.Show(Discs(60.0, 0.8));
  for (int i = 0; i < 4; ++i) clip.Show(Discs(60.0, 1.0));
  for (int i = 0; i < 8; ++i) clip.Show(Discs(60.0 + 9.0 * i, 0.0));
  EXPECT_EQ(clip.Found(), sharpest);
}

TEST(SteadyPicture, ACoveredLensIsNoRest) {
  Clip clip;
  for (int i = 0; i < 30; ++i) clip.Show(Discs(0.0, 0.6));
  const std::int64_t covered = clip.Next();
  for (int i = 0; i < 30; ++i) {
    clip.Show(cv::Mat(360, 640, CV_8UC1, cv::Scalar(12.0)));
  }
  EXPECT_LT(clip.Found(), covered);
}

TEST(SteadyPicture, AHandThatAlwaysMovesIsNotRefused) {
  Clip clip;
  for (int i = 0; i < 40; ++i) {
    clip.Show(Discs(10.0 * std::sin(i), i == 33 ? 0.0 : 1.5));
  }
  EXPECT_EQ(clip.Found(), 33);
}

TEST(SteadyPicture, LeavesDamagedFramesOut) {
  Clip clip;
  EXPECT_EQ(clip.Found(), -1);
  clip.Show(Discs(0.0, 1.0));
  clip.Show(Discs(0.0, 0.0), true);
  EXPECT_EQ(clip.Found(), 0);
}

}  // namespace
}  // namespace flowkin::testing
