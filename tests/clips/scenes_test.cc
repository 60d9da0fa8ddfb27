#include <gtest/gtest.h>

#include <cmath>
#include <opencv2/core.hpp>

#include "tests/clips/render/level_scene.h"
#include "tests/clips/render/puddle_scene.h"
#include "tests/clips/render/stream_scene.h"

namespace flowkin::clips {
namespace {

// Pixels of the scene that differ from its still background by more than a
// few per cent of full light in any component.
cv::Mat1b Changed(const cv::Mat3f& still, const cv::Mat3f& now, float by) {
  cv::Mat1b out(still.size(), static_cast<unsigned char>(0));
  for (int y = 0; y < still.rows; ++y) {
    for (int x = 0; x < still.cols; ++x) {
      for (int c = 0; c < 3; ++c) {
        if (std::abs(still(y, x)[c] - now(y, x)[c]) > by) out(y, x) = 255;
      }
    }
  }
  return out;
}

TEST(PuddleScene, PaintsTheSolvedRadius) {
  const cv::Size size(640, 480);
  PuddleLook look;
  look.mm_per_px = 0.2;
  look.paint = FromScreen(30, 60, 200);
  look.pitch_deg = 0.0;
  testing::SpreadingPuddleOptions paint;
  paint.volume_ml = 3.0;
  PuddleScene scene(size, look, paint);
  const cv::Mat3f still = scene.Background();
  cv::Mat3f now = still.clone();
  const double t = look.start_s + paint.pour_s + 3.0;  // pourer gone
  scene.Draw(t, &now);
  testing::SpreadingPuddle puddle(paint);
  puddle.AdvanceTo(t - look.start_s);
  // Blue paint on a pale tile: the red component falls by 0.6; the contact
  // shadow takes less than half of it.
  int painted = 0;
  for (int y = 0; y < size.height; ++y) {
    for (int x = 0; x < size.width; ++x) {
      if (now(y, x)[2] < 0.35f * still(y, x)[2]) ++painted;
    }
  }
  const double radius_px = std::sqrt(painted / CV_PI);
  // Counting whole pixels along the edge and the edge's bright rim: 1 px.
  EXPECT_NEAR(radius_px, puddle.RadiusMm() / look.mm_per_px, 1.0);
}

TEST(PuddleScene, ChangesNothingOutsideItsRegion) {
  const cv::Size size(640, 480);
  PuddleLook look;
  testing::SpreadingPuddleOptions paint;
  PuddleScene scene(size, look, paint);
  const cv::Mat3f still = scene.Background();
  for (double t : {0.1, 1.0, 2.0, 6.0}) {
    cv::Mat3f now = still.clone();
    scene.Draw(t, &now);
    cv::Mat1b changed = Changed(still, now, 0.0f);
    const cv::Rect region = scene.Region(t);
    if (!region.empty()) changed(region).setTo(0);
    EXPECT_EQ(cv::countNonZero(changed), 0) << t;
  }
}

TEST(LevelScene, RibbonShowsAndFades) {
  LevelLook look;
  look.centre_px = {320, 240};
  look.mm_per_px = 0.2;
  RibbonPath path;
  testing::LevellingReliefOptions paint;
  LevelScene scene({640, 480}, look, path, paint);
  const cv::Mat3f still = scene.Background();
  cv::Mat3f level = still.clone();
  scene.Draw(0.0, &level);
  auto shown = [&](double t) {
    cv::Mat3f now = still.clone();
    scene.Draw(t, &now);
    return cv::norm(now, level, cv::NORM_L1);
  };
  // 0.4 s: the stick is gone; 6 s: some ten decay times later.
  const double soon = shown(path.laid_s + 0.4);
  const double late = shown(path.laid_s + 6.0);
  EXPECT_GT(soon, 0.0);
  EXPECT_LT(late, 0.1 * soon);
}

TEST(StreamScene, ThreadIsThereUntilItBreaks) {
  testing::StreamSimOptions paint;
  paint.nu_mm2_s = 250.0;
  paint.fall_height_mm = 45.0;
  const StreamRecord record(paint, 1.0 / 60.0, 0.3);
  const double broke = record.result().break_s;
  ASSERT_GT(broke, 0.0);
  StreamLook look;
  look.mm_per_px = 0.2;
  look.pool_px = {240, 330};
  look.grip_above_mm = 0.0;
  look.paint = FromScreen(200, 40, 40);
  const double lift = 0.5;
  StreamScene scene({480, 400}, look, {&record}, lift);
  const cv::Mat3f still = scene.Background();
  // Rows of the middle column, from the stick's edge to the paint, that show
  // the thread.
  auto shown = [&](double t) {
    cv::Mat3f now = still.clone();
    scene.Draw(t, &now);
    const cv::Mat1b changed = Changed(still, now, 0.02f);
    const int top = 330 - static_cast<int>(43.0 / 0.2 * 0.974);
    int rows = 0, all = 0;
    for (int y = top; y < 330; ++y, ++all) {
      if (cv::countNonZero(changed(cv::Rect(230, y, 20, 1))) > 0) ++rows;
    }
    return static_cast<double>(rows) / all;
  };
  EXPECT_DOUBLE_EQ(shown(lift + 0.5 * broke), 1.0);
  EXPECT_LT(shown(lift + broke + 0.25), 0.9);
}

}  // namespace
}  // namespace flowkin::clips
