#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

namespace flowkin::clips {

/// Linear-light colour in the order blue, green, red, 0 .. 1 (lamps above 1).
using Light = cv::Vec3f;

/// From 8-bit screen values, red first, as a person would write them.
Light FromScreen(int red, int green, int blue);

/// What lies behind and under things.
struct Surface {
  /// plain wood speckle check stripes cloth print veins
  std::string kind = "plain";
  Light colour{0.5f, 0.5f, 0.5f};
  Light second{0.4f, 0.4f, 0.4f};
  double feature_px = 60.0;
  double contrast = 0.15;
};

/// Smooth noise, mean 0, standard deviation about 1.
cv::Mat SmoothNoise(cv::Size size,
                    double feature_x_px,
                    double feature_y_px,
                    std::uint32_t seed);

/// A whole picture of a surface (CV_32FC3, linear light).
cv::Mat3f PaintSurface(cv::Size size,
                       const Surface& surface,
                       std::uint32_t seed);

inline cv::Mat1b EmptyMask(cv::Size size) {
  return cv::Mat1b(size, static_cast<unsigned char>(0));
}

/// Keeps of `mask` what also lies in `with`.
void Intersect(const cv::Mat1b& with, cv::Mat1b* mask);

/// Mixes `colour` into `picture` where `mask` (CV_8UC1, same size) says so.
void Blend(cv::Mat3f* picture,
           const cv::Mat1b& mask,
           const Light& colour,
           double opacity = 1.0);

/// Same with a colour of its own for every pixel.
void BlendPicture(cv::Mat3f* picture,
                  const cv::Mat1b& mask,
                  const cv::Mat3f& colours);

/// Antialiased shapes on a mask; coordinates in px, pixel centres at whole
/// numbers.
void FillPolygon(cv::Mat1b* mask, const std::vector<cv::Point2d>& corners);
void FillEllipse(cv::Mat1b* mask,
                 cv::Point2d centre,
                 double half_x,
                 double half_y,
                 double turn_deg = 0.0);
void FillCapsule(cv::Mat1b* mask, cv::Point2d a, cv::Point2d b, double radius);

/// A soft shadow: darkens where the mask, blurred, lies.
void Shade(cv::Mat3f* picture,
           const cv::Mat1b& mask,
           double blur_px,
           double darkness);

/// A gloved hand round the point where a stick is held.
void DrawHand(cv::Mat3f* picture,
              cv::Point2d grip,
              double size_px,
              const Light& glove,
              bool from_right);

/// A hand that crosses the picture from right to left within 1.2 s about
/// `middle_s`; none if that is below 0.
void DrawCrossing(double t_s, double middle_s, cv::Mat3f* picture);

}  // namespace flowkin::clips
