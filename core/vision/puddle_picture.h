#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

#include "core/video/frame.h"

namespace flowkin {

/// A frame shrunk to 180 to 360 px on its longer side for searching. All planes
/// have the same size, 8 bit.
struct WorkPicture {
  double t_s = 0.0;
  cv::Mat y, cb, cr;
  /// Where a background point lies here minus where it lay in the first
  /// picture, px of the work picture.
  cv::Point2f shift;
};

/// Full-resolution px per work px, >= 1.
int WorkFactor(int width_px, int height_px);

/// Shrinks by area means. `factor` from WorkFactor.
WorkPicture ReducePicture(const Frame& frame, int factor);

/// Finds how far the static background moved against a reference by phase
/// correlation of the windowed gradient (C. D. Kuglin, D. C. Hines
/// 1975, The phase correlation image alignment method; from memory, not
/// checked). A shift that does not make the textured part of the picture agree
/// better is not taken, so that a blank tile cannot invent one.
class ShiftFinder {
 public:
  explicit ShiftFinder(const cv::Mat& reference_y);
  /// Shift in px of the picture handed in. Pictures come in order of time: one
  /// that lies where the last one lay is found fastest.
  cv::Point2f Find(const cv::Mat& picture_y);
  /// How many times as large the background was in the last picture as in the
  /// first, about the picture's middle; 1 where nothing holds on to that.
  float zoom() const { return zoom_; }
  /// That zoom explains the last picture clearly better than none does. What
  /// covers a ground of little texture can feign a zoom.
  bool zoom_holds() const { return zoom_holds_; }

 private:
  cv::Point2f Place(const cv::Point& p, cv::Point2f shift) const;
  void FollowZoom(const cv::Mat& y, cv::Point2f shift);
  cv::Point2f JudgeZoom(const cv::Mat& y, cv::Point2f shift);
  cv::Point2f Peak(const cv::Mat& y, std::size_t level) const;
  double Cost(const cv::Mat& y, cv::Point2f shift) const;
  cv::Point2f Refine(const cv::Mat& y, cv::Point2f shift) const;

  cv::Mat reference_;
  std::array<cv::Mat, 2> window_;
  std::array<cv::Mat, 2> spectrum_;
  std::vector<cv::Point> textured_;
  std::vector<cv::Point2f> gradient_;  // grey levels per px, same order
  cv::Point2f last_;
  float zoom_ = 1.0F;
  bool zoom_holds_ = false;
  double search_cost_ = 0.0;  // of the last full search
  int since_search_ = -1;     // pictures; -1: none yet
};

/// The value of an 8-bit plane between its pixel centres, or a negative number
/// outside.
inline float SampleAt(const cv::Mat& plane, float x, float y) {
  const int xi = static_cast<int>(x) - (x < 0.0F ? 1 : 0);
  const int yi = static_cast<int>(y) - (y < 0.0F ? 1 : 0);
  if (xi < 0 || yi < 0 || xi + 1 >= plane.cols || yi + 1 >= plane.rows) {
    return -1.0F;
  }
  const float fx = x - static_cast<float>(xi);
  const float fy = y - static_cast<float>(yi);
  const unsigned char* a = plane.ptr<unsigned char>(yi) + xi;
  const unsigned char* b = plane.ptr<unsigned char>(yi + 1) + xi;
  const float top = static_cast<float>(a[0]) +
                    fx * static_cast<float>(static_cast<int>(a[1]) - a[0]);
  const float bottom = static_cast<float>(b[0]) +
                       fx * static_cast<float>(static_cast<int>(b[1]) - b[0]);
  return top + fy * (bottom - top);
}

/// Middle value of an 8-bit plane.
int PlaneMedian(const cv::Mat& plane);

}  // namespace flowkin
