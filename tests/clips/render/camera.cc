#include "tests/clips/render/camera.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "tests/clips/render/picture.h"

namespace flowkin::clips {
namespace {

// A phone's tone curve: the usual 1/2.2 with a soft shoulder.
class ToneCurve {
 public:
  ToneCurve() {
    table_.resize(kSteps + 1);
    for (int i = 0; i <= kSteps; ++i) {
      const double x = kTop * i / kSteps;
      const double y = std::pow(std::min(x, 1.0), 1.0 / 2.2);
      const double shoulder =
          y < 0.85
              ? y
              : 0.85 + 0.15 * std::tanh((std::pow(x, 1.0 / 2.2) - 0.85) / 0.15);
      table_[static_cast<std::size_t>(i)] =
          static_cast<unsigned char>(std::lround(255.0 * shoulder));
    }
  }
  unsigned char operator()(float x) const {
    const float at = std::clamp(x, 0.0f, static_cast<float>(kTop)) *
                     static_cast<float>(kSteps / kTop);
    return table_[static_cast<std::size_t>(at)];
  }

 private:
  static constexpr int kSteps = 8192;
  static constexpr double kTop = 2.0;
  std::vector<unsigned char> table_;
};

class Pipe {
 public:
  Pipe(const Camera& camera, const std::string& path) {
    char command[1024];
    std::snprintf(command,
                  sizeof(command),
                  "ffmpeg -v error -y -f rawvideo -pix_fmt bgr24 -s %dx%d "
                  "-r %g -i - -an -c:v libx264 -preset veryfast -crf %d "
                  "-pix_fmt yuv420p -threads 1 '%s'",
                  camera.size.width,
                  camera.size.height,
                  camera.fps,
                  camera.crf,
                  path.c_str());
    file_ = popen(command, "w");
  }
  ~Pipe() { Close(); }
  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;

  bool Write(const cv::Mat3b& picture) {
    if (!file_) return false;
    const std::size_t bytes = picture.total() * 3;
    return std::fwrite(picture.data, 1, bytes, file_) == bytes;
  }
  bool Close() {
    if (!file_) return false;
    const bool good = pclose(file_) == 0;
    file_ = nullptr;
    return good;
  }

 private:
  std::FILE* file_ = nullptr;
};

}  // namespace

bool Film(Scene* scene, const Camera& c, int frames, const std::string& path) {
  static const ToneCurve tone;
  cv::RNG random(c.seed);
  const cv::Mat3f still = scene->Background();
  const cv::Rect whole({0, 0}, c.size);

  cv::Mat1f falloff(c.size);
  for (int y = 0; y < c.size.height; ++y) {
    for (int x = 0; x < c.size.width; ++x) {
      const double dx = 2.0 * x / c.size.width - 1.0;
      const double dy = 2.0 * y / c.size.height - 1.0;
      falloff(y, x) = static_cast<float>(
          c.gain * (1.0 - c.vignette * 0.5 * (dx * dx + dy * dy)));
    }
  }
  const Light cast(
      static_cast<float>(c.cast_blue), 1.0f, static_cast<float>(c.cast_red));
  auto develop = [&](const cv::Mat3f& from, cv::Rect part, cv::Mat3b* to) {
    for (int y = part.y; y < part.y + part.height; ++y) {
      for (int x = part.x; x < part.x + part.width; ++x) {
        const Light& p = from(y, x);
        const float g = falloff(y, x);
        (*to)(y, x) = {
            tone(p[0] * g * cast[0]), tone(p[1] * g), tone(p[2] * g * cast[2])};
      }
    }
  };
  // Lens blur works on the region with a margin, then it is developed.
  const int margin = static_cast<int>(std::ceil(3.0 * c.lens_blur_px)) + 1;
  auto grown = [&](cv::Rect r) {
    return (cv::Rect(r.x - margin,
                     r.y - margin,
                     r.width + 2 * margin,
                     r.height + 2 * margin) &
            whole);
  };
  auto blurred = [&](const cv::Mat3f& from, cv::Rect part) {
    if (c.lens_blur_px <= 0.0) return from.clone();
    cv::Mat3f out(from.size());
    const cv::Rect wide = grown(part);
    cv::Mat3f soft;
    cv::GaussianBlur(from(wide), soft, {}, c.lens_blur_px);
    soft.copyTo(out(wide));
    return out;
  };

  cv::Mat3b developed(c.size);
  develop(blurred(still, whole), whole, &developed);

  // Noise tiles a little larger than the picture, used at random offsets.
  constexpr int kSpare = 64;
  cv::Mat noise(c.size + cv::Size(kSpare, kSpare), CV_16SC3);
  random.fill(noise, cv::RNG::NORMAL, 0.0, c.noise);
  // Sensors correlate neighbouring pixels a little (demosaicing).
  cv::blur(noise, noise, {2, 2});
  noise *= 1.6;

  cv::Rect before;  // what the last frame changed
  cv::Mat3f picture = still.clone();
  cv::Mat3f sum;
  Pipe pipe(c, path);
  cv::Mat3b frame, moved;
  cv::Mat wide16;
  for (int n = 0; n < frames; ++n) {
    const double middle = n / c.fps;
    const double half = 0.5 * c.exposure_share / c.fps;
    const cv::Rect now = (scene->Region(std::max(0.0, middle - half)) |
                          scene->Region(middle + half)) &
                         whole;
    // Blur carries a change a little beyond its edge.
    const cv::Rect region = grown(now | before);
    before = now;
    sum.create(region.size());
    sum.setTo(0.0f);
    for (int k = 0; k < c.blur_samples; ++k) {
      const double t = middle + c.exposure_share / c.fps *
                                    ((k + 0.5) / c.blur_samples - 0.5);
      still(region).copyTo(picture(region));
      scene->Draw(std::max(0.0, t), &picture);
      sum += picture(region);
    }
    cv::Mat3f mean;
    sum.convertTo(mean, CV_32F, 1.0 / c.blur_samples);
    mean.copyTo(picture(region));
    develop(blurred(picture, region), region, &developed);
    developed.copyTo(frame);

    // Camera moves: hand-held wander and knocks.
    const double w = c.sway_px;
    double dx = w * (0.6 * std::sin(2 * CV_PI * 0.7 * middle + c.seed) +
                     0.4 * std::sin(2 * CV_PI * 1.9 * middle));
    double dy = w * (0.6 * std::sin(2 * CV_PI * 0.5 * middle + 2.0 * c.seed) +
                     0.4 * std::sin(2 * CV_PI * 2.3 * middle + 1.0));
    if (c.knock_s >= 0.0 && middle > c.knock_s) {
      const double since = middle - c.knock_s;
      const double settle =
          1.0 - std::exp(-since / 0.08) * std::cos(2 * CV_PI * 5.0 * since);
      dx += c.knock_px.x * settle;
      dy += c.knock_px.y * settle;
    }
    const double zoom =
        1.0 + c.zoom_per_s * std::max(0.0, middle - c.zoom_from_s);
    if (dx != 0.0 || dy != 0.0 || zoom != 1.0 || c.roll_deg != 0.0) {
      const double turn = c.roll_deg * CV_PI / 180.0;
      const double along = zoom * std::cos(turn),
                   across = zoom * std::sin(turn);
      const double x = 0.5 * (c.size.width - 1), y = 0.5 * (c.size.height - 1);
      dx += x - along * x + across * y;
      dy += y - across * x - along * y;
      const cv::Matx23d shift(along, -across, dx, across, along, dy);
      cv::warpAffine(
          frame, moved, shift, c.size, cv::INTER_LINEAR, cv::BORDER_REFLECT);
      moved.copyTo(frame);
    }
    const double hunting = (middle - c.hunt_s) / 1.5;
    if (c.hunt_s >= 0.0 && hunting > 0.0 && hunting < 1.0) {
      const double sigma = 5.0 * std::abs(std::sin(2.0 * CV_PI * hunting));
      if (sigma > 0.3) cv::GaussianBlur(frame, frame, {}, sigma);
    }
    if (c.sharpen > 0.0) {
      cv::Mat3b soft;
      cv::GaussianBlur(frame, soft, {}, 1.2);
      cv::addWeighted(frame, 1.0 + c.sharpen, soft, -c.sharpen, 0.0, frame);
    }
    frame.convertTo(wide16, CV_16S);
    if (c.flicker_depth > 0.0) {
      for (int y = 0; y < wide16.rows; ++y) {
        const double t =
            middle + c.row_readout_s * y / std::max(1, wide16.rows - 1);
        // Screen values go as light to the power 1/2.2.
        const double gain = std::pow(
            1.0 + c.flicker_depth * std::sin(2 * CV_PI * c.lamp_hz * t),
            1.0 / 2.2);
        wide16.row(y) *= gain;
      }
    }
    if (c.lamp_off_s >= 0.0 && middle > c.lamp_off_s) {
      wide16 *= std::pow(0.12, 1.0 / 2.2);
    }
    if (c.noise > 0.0) {
      const cv::Rect at(random.uniform(0, kSpare),
                        random.uniform(0, kSpare),
                        c.size.width,
                        c.size.height);
      wide16 += noise(at);
    }
    wide16.convertTo(frame, CV_8U);
    if (!pipe.Write(frame)) {
      std::fprintf(stderr, "ffmpeg stopped while writing %s\n", path.c_str());
      return false;
    }
  }
  return pipe.Close();
}

}  // namespace flowkin::clips
