#pragma once

#include <memory>
#include <string>
#include <vector>

#include "tests/clips/render/camera.h"
#include "tests/clips/render/puddle_scene.h"
#include "tests/support/render_relief.h"

namespace flowkin::clips {

/// How the ribbon is laid.
struct RibbonPath {
  std::string kind = "zigzag";  ///< drop line zigzag spiral ring stir
  double span_mm = 18.0;        ///< half extent
  double lay_start_s = 0.9;
  double laid_s = 2.2;
  double volume_ml = 1.4;
  double width_mm = 2.2;  ///< standard deviation of the cross-section
  cv::Point2d centre_mm{0, 0};
  double turn_deg = 0.0;
  /// Place at the share s = 0 .. 1 of the path.
  cv::Point2d At(double s) const;
};

struct LevelLook {
  Surface table{"wood", FromScreen(150, 110, 75), FromScreen(110, 78, 50)};
  Light paint = FromScreen(200, 190, 170);
  Light container = FromScreen(235, 235, 232);
  std::string shape = "cup";  ///< cup tray
  double pool_half_mm = 38.0;
  double pool_half_y_mm = 38.0;  ///< tray only
  double elevation_deg = 50.0;   ///< of the camera; 90 looks straight down
  double distance_mm = 260.0;    ///< camera to the pool's middle
  double mm_per_px = 0.12;
  cv::Point2d centre_px{640, 380};
  double gloss = 1.0;      ///< 0 = matte
  double roughness = 0.0;  ///< widens mirror images, radians
  double ceiling = 0.18;
  std::vector<Lamp> lamps{{250, 45, 12, 3.0}};
  std::string layer = "stick";  ///< stick spout
  /// A hand crosses the picture at this time, over 1.2 s (< 0: never).
  double crossing_s = -1.0;
  /// Another cup of the same paint, seen from above its rim, stands here (none
  /// if outside the picture).
  cv::Point2d other_cup_px{-1e4, -1e4};
  std::uint32_t seed = 1;
};

class LevelScene : public Scene {
 public:
  LevelScene(cv::Size size,
             const LevelLook& look,
             const RibbonPath& path,
             const flowkin::testing::LevellingReliefOptions& paint);
  cv::Mat3f Background() override;
  cv::Rect Region(double t_s) const override;
  void Draw(double t_s, cv::Mat3f* picture) override;

 private:
  cv::Point2d ToPixel(cv::Point3d mm) const;
  void DrawLayer(double t_s, cv::Mat3f* picture) const;

  cv::Size size_;
  LevelLook look_;
  RibbonPath path_;
  flowkin::testing::LevellingRelief relief_;
  double t_ = 0.0;
  cv::Rect pool_;
  cv::Mat1b pool_mask_;
  cv::Mat map_x_, map_y_;
};

/// Lays the part of the path between two times and lets them pass.
void LayAndLevel(const RibbonPath& path,
                 double from_s,
                 double to_s,
                 flowkin::testing::LevellingRelief* relief);

}  // namespace flowkin::clips
