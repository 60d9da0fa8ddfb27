#pragma once

#include <cstdint>
#include <cstdio>
#include <functional>
#include <memory>
#include <opencv2/core.hpp>
#include <string>

namespace flowkin::clips {

/// How the scene is filmed and stored.
struct Camera {
  double fps = 60.0;
  cv::Size size{1280, 720};
  double exposure_share = 0.5;  ///< of the frame interval
  int blur_samples = 2;         ///< pictures averaged over one exposure
  double gain = 1.0;
  double noise = 4.0;  ///< 8-bit levels before the sensor's own blur
  double sharpen = 0.5;
  double lens_blur_px = 0.7;
  double vignette = 0.15;  ///< loss in the corners
  double flicker_depth = 0.0;
  double lamp_hz = 100.0;
  double row_readout_s = 0.0;  ///< rolling shutter, first to last row
  double sway_px = 0.0;        ///< hand-held wander
  double roll_deg = 0.0;       ///< held askew; the scene turns clockwise
  /// A knock: at this time the picture jumps by so many px and stays (< 0:
  /// never).
  double knock_s = -1.0;
  cv::Point2d knock_px{0, 0};
  /// The lamp goes out at this time, daylight is left (< 0: never).
  double lamp_off_s = -1.0;
  /// The lens hunts for focus for 1.5 s from this time on (< 0: never).
  double hunt_s = -1.0;
  /// The lens zooms in by this share a second from `zoom_from_s` on.
  double zoom_per_s = 0.0;
  double zoom_from_s = 0.0;
  double cast_blue = 1.0, cast_red = 1.0;  ///< white balance
  int crf = 17;  ///< low enough that the noise lives through it
  std::uint32_t seed = 1;
};

/// Something that moves in front of a still picture.
class Scene {
 public:
  virtual ~Scene() = default;
  /// The still part, linear light, of the camera's size.
  virtual cv::Mat3f Background() = 0;
  /// Where Draw may change it at that time.
  virtual cv::Rect Region(double t_s) const = 0;
  /// Draws the state at `t_s`; times never fall.
  virtual void Draw(double t_s, cv::Mat3f* picture) = 0;
};

/// Films `frames` frames of the scene into `path` (H.264 through the ffmpeg
/// command). Frame n is exposed around n / fps. Returns false and prints to
/// standard error when ffmpeg fails.
bool Film(Scene* scene,
          const Camera& camera,
          int frames,
          const std::string& path);

}  // namespace flowkin::clips
