#pragma once

#include <memory>
#include <string>
#include <vector>

#include "tests/clips/render/camera.h"
#include "tests/clips/render/picture.h"
#include "tests/support/render_puddle.h"

namespace flowkin::clips {

/// A lamp far away, seen from the table.
struct Lamp {
  double azimuth_deg = 220.0;  ///< 0 = to the right, 90 = towards the viewer
  double elevation_deg = 50.0;
  double size_deg = 8.0;  ///< half width of its mirror image
  double strength = 1.0;
};
cv::Vec3d LampDirection(const Lamp& lamp);

struct PuddleLook {
  Surface tile{"plain", FromScreen(225, 222, 215), FromScreen(210, 207, 200)};
  Surface table{"wood", FromScreen(150, 110, 75), FromScreen(110, 78, 50)};
  Light paint = FromScreen(40, 130, 150);
  double mm_per_px = 0.15;      ///< at the picture's middle
  cv::Point2d centre_mm{0, 0};  ///< of the puddle, from the picture's middle
  cv::Point2d tile_half_mm{80, 52};
  std::string ruler = "none";  ///< none horizontal vertical
  double pitch_deg = 0.0;      ///< camera off the vertical
  double gloss = 1.0;
  std::vector<Lamp> lamps{{215, 55, 8, 1.0}};
  std::string pourer = "cup";  ///< cup syringe
  double start_s = 1.2;
  /// Tile off level: the puddle creeps along +x at so many mm/s at first.
  double creep_mm_s = 0.0;
  /// The tile is pushed by so many mm at this time (< 0: never).
  double push_s = -1.0;
  cv::Point2d push_mm{7, 4};
  /// A hand crosses the picture at this time, over 1.2 s (< 0: never).
  double crossing_s = -1.0;
  /// Another cup of the same paint stands here (none if far outside).
  cv::Point2d other_cup_mm{1e3, 1e3};
  /// A cloth lies over this share of the ruler's middle.
  double ruler_covered = 0.0;
  std::uint32_t seed = 1;
};

class PuddleScene : public Scene {
 public:
  PuddleScene(cv::Size size,
              const PuddleLook& look,
              const flowkin::testing::SpreadingPuddleOptions& paint);
  cv::Mat3f Background() override;
  cv::Rect Region(double t_s) const override;
  void Draw(double t_s, cv::Mat3f* picture) override;

 private:
  cv::Mat3f Backdrop(cv::Point2d tile_mm) const;
  cv::Point2d ToPixel(cv::Point2d mm) const;
  cv::Point2d ToTile(cv::Point2d px) const;
  void DrawPourer(double t_s, cv::Mat3f* picture) const;

  cv::Size size_;
  PuddleLook look_;
  flowkin::testing::SpreadingPuddleOptions paint_;
  flowkin::testing::SpreadingPuddle puddle_;
  double camera_mm_ = 450.0;
  cv::Mat3f pushed_;  // the backdrop after a push
};

}  // namespace flowkin::clips
