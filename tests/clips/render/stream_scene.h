#pragma once

#include <string>
#include <vector>

#include "tests/clips/render/camera.h"
#include "tests/clips/render/picture.h"
#include "tests/support/stream_sim.h"

namespace flowkin::clips {

struct StreamLook {
  Surface background{
      "plain", FromScreen(150, 152, 150), FromScreen(130, 132, 130)};
  double background_blur_px = 0.0;
  Surface table{"wood", FromScreen(150, 110, 75), FromScreen(110, 78, 50)};
  Light paint = FromScreen(190, 170, 140);
  Light container = FromScreen(232, 232, 228);
  double pool_half_mm = 36.0;
  double wall_mm = 2.0;
  double rim_above_mm = 5.0;  ///< over the paint
  double body_mm = 60.0;      ///< height of the container
  double taper = 0.8;         ///< foot over rim
  double elevation_deg = 13.0;
  double mm_per_px = 0.17;
  cv::Point2d pool_px{640, 560};  ///< where the stream lands
  std::string stick = "wood";     ///< wood white steel dark
  double stick_lean = 0.0;        ///< right per length down
  Light glove = FromScreen(60, 90, 170);
  double grip_above_mm = 55.0;  ///< hand over the wetted part; 0 = out of view
  bool hand_from_right = true;
  double sway_mm = 0.0;
  double gloss = 1.0;
  double reflection = 0.15;  ///< of the stream in the paint
  std::uint32_t seed = 1;
};

/// What is in the picture besides a proper test.
enum class StreamStory { kTest, kStirring, kHandOnly, kTableOnly };

/// A simulated run kept at the camera's moments, so that truth and picture
/// come from the same run.
class StreamRecord {
 public:
  /// Runs until `after_s` past the lasting break (at most `limit_s`), keeping
  /// one state every `interval_s`.
  StreamRecord(const flowkin::testing::StreamSimOptions& options,
               double interval_s,
               double after_s,
               double limit_s = 40.0);
  const flowkin::testing::StreamSimResult& result() const { return result_; }
  const flowkin::testing::StreamSimOptions& options() const { return o_; }
  double end_s() const { return end_s_; }
  struct State {
    double edge_mm = 0.0;
    double flow_ml_s = 0.0;
    bool in_pool = false;
    std::vector<float> radius_mm;  ///< every kRowMm above the pool
  };
  /// State nearest to a time since the lift, >= 0.
  const State& At(double t_s) const;
  static constexpr double kRowMm = 0.05;

 private:
  flowkin::testing::StreamSimOptions o_;
  flowkin::testing::StreamSimResult result_;
  double interval_s_, end_s_ = 0.0;
  std::vector<State> states_;
};

class StreamScene : public Scene {
 public:
  /// One record is a test, two make two streams `apart_mm` from each other.
  StreamScene(cv::Size size,
              const StreamLook& look,
              std::vector<const StreamRecord*> records,
              double lift_s,
              StreamStory story = StreamStory::kTest,
              double apart_mm = 18.0);
  cv::Mat3f Background() override;
  cv::Rect Region(double t_s) const override;
  void Draw(double t_s, cv::Mat3f* picture) override;

 private:
  cv::Point2d ToPixel(double x_mm, double height_mm) const;
  double StickX(double t_s) const;
  double EdgeMm(const StreamRecord& record, double t_s) const;
  void DrawThread(const StreamRecord& record,
                  double t_s,
                  double offset_mm,
                  cv::Mat3f* picture) const;
  void DrawStick(double t_s,
                 double offset_mm,
                 double edge_mm,
                 const StreamRecord& record,
                 cv::Mat3f* picture) const;

  cv::Size size_;
  StreamLook look_;
  std::vector<const StreamRecord*> records_;
  double lift_s_;
  StreamStory story_;
  double apart_mm_;
  cv::Mat1b pool_mask_;
  cv::Mat1f grain_;
};

}  // namespace flowkin::clips
