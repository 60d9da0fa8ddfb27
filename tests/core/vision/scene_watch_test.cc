#include "core/vision/scene_watch.h"

#include <gtest/gtest.h>

#include <functional>
#include <opencv2/imgproc.hpp>

namespace flowkin {
namespace {

constexpr double kFps = 30.0;
constexpr int kWidth_px = 960;
constexpr int kHeight_px = 540;

/// A bench: a table's edge, a cup, an upright stick; drawn, then seen by a
/// sensor with noise.
cv::Mat Bench(bool with_stick, int stick_bottom_px = 400) {
  cv::Mat picture(kHeight_px, kWidth_px, CV_8UC1, cv::Scalar(140));
  cv::rectangle(picture, {0, 470, kWidth_px, 70}, cv::Scalar(70), -1);
  cv::ellipse(picture, {480, 440}, {170, 50}, 0, 0, 360, cv::Scalar(215), -1);
  cv::ellipse(picture, {480, 435}, {150, 40}, 0, 0, 360, cv::Scalar(60), -1);
  if (with_stick) {
    cv::rectangle(picture, {452, 0, 56, stick_bottom_px}, cv::Scalar(195), -1);
  }
  cv::GaussianBlur(picture, picture, {3, 3}, 0.7);
  return picture;
}

class Camera {
 public:
  explicit Camera(bool wants_stick) : watch_(wants_stick) {}

  SceneView Show(const cv::Mat& picture, double seconds, double fps = kFps) {
    return Show([&](double) { return picture; }, seconds, fps);
  }

  SceneView Show(const std::function<cv::Mat(double)>& picture,
                 double seconds,
                 double fps = kFps) {
    SceneView view;
    const int frames = static_cast<int>(seconds * fps);
    for (int i = 0; i < frames; ++i) {
      cv::Mat noise(kHeight_px, kWidth_px, CV_16SC1);
      random_.fill(noise, cv::RNG::NORMAL, 0.0, noise_);
      cv::Mat seen;
      picture(i / fps).convertTo(seen, CV_16S);
      seen += noise;
      Frame frame;
      seen.convertTo(frame.luma, CV_8U);
      frame.full_range = true;
      t_s_ += 1.0 / fps;
      frame.timestamp =
          std::chrono::nanoseconds(static_cast<std::int64_t>(t_s_ * 1e9));
      view = watch_.Add(frame);
      ever_moved_ = ever_moved_ || view.moving;
    }
    return view;
  }

  bool ever_moved() const { return ever_moved_; }
  void set_noise(double sd) { noise_ = sd; }

 private:
  SceneWatch watch_;
  cv::RNG random_{7};
  double noise_ = 3.0;
  double t_s_ = 0.0;
  bool ever_moved_ = false;
};

TEST(SceneWatch, NothingIsWrongWithAStillBench) {
  Camera camera(true);
  const SceneView view = camera.Show(Bench(true), 2.0);
  EXPECT_EQ(view.fault, SceneFault::kNone);
  EXPECT_FALSE(camera.ever_moved());
  EXPECT_GT(view.still_s, 1.8);
}

TEST(SceneWatch, NoiseAndFlickerAreNoMotion) {
  Camera camera(true);
  camera.set_noise(10.0);
  const cv::Mat bench = Bench(true);
  // A lamp at 100 Hz seen at 30 pictures a second, in bands by a rolling
  // shutter.
  camera.Show(
      [&](double t_s) {
        cv::Mat lit = bench.clone();
        for (int y = 0; y < lit.rows; ++y) {
          const double phase =
              2.0 * CV_PI * 100.0 * (t_s + 0.02 * y / kHeight_px);
          lit.row(y) *= 0.9 + 0.1 * std::sin(phase);
        }
        return lit;
      },
      2.0);
  EXPECT_FALSE(camera.ever_moved());
}

TEST(SceneWatch, SeesTheStickGoUpAndComeToRest) {
  Camera camera(true);
  camera.Show(Bench(true), 1.0);
  const SceneView during = camera.Show(
      [](double t_s) { return Bench(true, 400 - static_cast<int>(300 * t_s)); },
      0.5);
  EXPECT_TRUE(during.moving);
  const SceneView after = camera.Show(Bench(true, 250), 1.0);
  EXPECT_FALSE(after.moving);
  EXPECT_NEAR(after.still_s, 0.9, 0.15);
}

TEST(SceneWatch, NamesWhatIsWrong) {
  cv::Mat dark;
  Bench(true).convertTo(dark, CV_8U, 0.15);
  EXPECT_EQ(Camera(true).Show(dark, 1.0).fault, SceneFault::kDark);

  cv::Mat bright;
  Bench(true).convertTo(bright, CV_8U, 2.0);
  EXPECT_EQ(Camera(true).Show(bright, 1.0).fault, SceneFault::kGlare);

  cv::Mat blurred;
  cv::GaussianBlur(Bench(true), blurred, {0, 0}, 14.0);
  EXPECT_EQ(Camera(true).Show(blurred, 1.0).fault, SceneFault::kBlurred);

  EXPECT_EQ(Camera(true).Show(Bench(false), 1.0).fault, SceneFault::kNoStick);
  EXPECT_EQ(Camera(false).Show(Bench(false), 1.0).fault, SceneFault::kNone);

  EXPECT_EQ(Camera(true).Show(Bench(true), 2.0, 10.0).fault, SceneFault::kSlow);

  Camera frozen(true);
  frozen.set_noise(0.0);
  EXPECT_EQ(frozen.Show(Bench(true), 2.0).fault, SceneFault::kFrozen);
}

TEST(SceneWatch, AShakingHandIsToldFromAMovingOne) {
  const cv::Mat bench = Bench(true);
  Camera shaken(true);
  const SceneView shaking = shaken.Show(
      [&](double t_s) {
        const double x = 9.0 * std::sin(2.0 * CV_PI * 3.0 * t_s);
        cv::Mat moved;
        const cv::Mat shift = (cv::Mat_<double>(2, 3) << 1, 0, x, 0, 1, x / 2);
        cv::warpAffine(bench,
                       moved,
                       shift,
                       bench.size(),
                       cv::INTER_LINEAR,
                       cv::BORDER_REPLICATE);
        return moved;
      },
      2.0);
  EXPECT_EQ(shaking.fault, SceneFault::kShaking);

  Camera still(true);
  const SceneView lifting = still.Show(
      [](double t_s) { return Bench(true, 400 - static_cast<int>(100 * t_s)); },
      2.0);
  EXPECT_EQ(lifting.fault, SceneFault::kNone);
}

}  // namespace
}  // namespace flowkin
