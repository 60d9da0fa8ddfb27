#include "core/vision/puddle_picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace flowkin {
namespace {

constexpr int kWorkLongSide = 320;

cv::Mat ReducePlane(const cv::Mat& plane, cv::Size size, double factor) {
  // The part of the plane that makes whole cells.
  const int cols =
      std::min(plane.cols, static_cast<int>(std::lround(size.width * factor)));
  const int rows =
      std::min(plane.rows, static_cast<int>(std::lround(size.height * factor)));
  cv::Mat source = plane(cv::Rect(0, 0, cols, rows));
  const int whole = static_cast<int>(std::lround(factor));
  if (whole >= 4 && whole % 2 == 0 && whole == factor && rows % 2 == 0) {
    // Every second row is enough for a mean over 4 x 4 or more, at half cost.
    source = cv::Mat(rows / 2, cols, CV_8UC1, source.data, source.step[0] * 2);
  }
  cv::Mat out;
  if (factor == 1.0) {
    source.copyTo(out);
  } else {
    cv::resize(source,
               out,
               size,
               0,
               0,
               factor > 1.0 ? cv::INTER_AREA : cv::INTER_LINEAR);
  }
  return out;
}

}  // namespace

int WorkFactor(int width_px, int height_px) {
  const double longest = std::max(width_px, height_px);
  return std::max(1, static_cast<int>(std::lround(longest / kWorkLongSide)));
}

WorkPicture ReducePicture(const Frame& frame, int factor) {
  WorkPicture work;
  work.t_s = frame.TimeS();
  const cv::Size size(std::max(1, frame.luma.cols / factor),
                      std::max(1, frame.luma.rows / factor));
  work.y = ReducePlane(frame.luma, size, factor);
  work.cb = ReducePlane(frame.cb, size, factor / 2.0);
  work.cr = ReducePlane(frame.cr, size, factor / 2.0);
  return work;
}

int PlaneMedian(const cv::Mat& plane) {
  std::array<int, 256> histogram{};
  int count = 0;
  for (int r = 0; r < plane.rows; r += 2) {
    const unsigned char* row = plane.ptr<unsigned char>(r);
    for (int c = 0; c < plane.cols; c += 2) {
      ++histogram[row[c]];
      ++count;
    }
  }
  int seen = 0;
  for (int v = 0; v < 256; ++v) {
    seen += histogram[static_cast<std::size_t>(v)];
    if (2 * seen >= count) return v;
  }
  return 255;
}

ShiftFinder::ShiftFinder(const cv::Mat& reference_y) {
  reference_ = reference_y.clone();
  cv::Mat half;
  cv::resize(reference_, half, {}, 0.5, 0.5, cv::INTER_AREA);
  half.convertTo(half, CV_32F);
  cv::createHanningWindow(window_, half.size(), CV_32F);
  half -= cv::mean(half);
  cv::multiply(half, window_, half);
  cv::dft(half, spectrum_);

  // The most textured tenth of the picture, on a thinned grid.
  cv::Mat gx, gy;
  cv::Sobel(reference_, gx, CV_16S, 1, 0);
  cv::Sobel(reference_, gy, CV_16S, 0, 1);
  std::vector<std::pair<int, cv::Point>> strengths;
  for (int r = 8; r < reference_.rows - 8; r += 2) {
    for (int c = 8; c < reference_.cols - 8; c += 2) {
      const int g = std::abs(gx.at<short>(r, c)) + std::abs(gy.at<short>(r, c));
      strengths.emplace_back(g, cv::Point(c, r));
    }
  }
  const std::size_t keep = strengths.size() / 10;
  if (keep > 0) {
    std::nth_element(
        strengths.begin(),
        strengths.begin() + static_cast<std::ptrdiff_t>(keep),
        strengths.end(),
        [](const auto& a, const auto& b) { return a.first > b.first; });
  }
  for (std::size_t i = 0; i < keep; ++i) {
    textured_.push_back(strengths[i].second);
  }
}

cv::Point2f ShiftFinder::Find(const cv::Mat& y) const {
  if (y.size() != reference_.size() || textured_.size() < 50) return {};
  cv::Mat half, spectrum, cross;
  cv::resize(y, half, {}, 0.5, 0.5, cv::INTER_AREA);
  half.convertTo(half, CV_32F);
  half -= cv::mean(half);
  cv::multiply(half, window_, half);
  cv::dft(half, spectrum);
  cv::mulSpectrums(spectrum, spectrum_, cross, 0, true);
  // Whitened in part only (power 1/2): full whitening lets the noise of the
  // empty frequencies of a plain tile drown the peak.
  float* data = cross.ptr<float>(0);
  const int n = cross.rows * cross.cols;
  cv::Mat magnitude = cv::abs(cross);
  cv::sqrt(magnitude, magnitude);
  const float* m = magnitude.ptr<float>(0);
  for (int i = 0; i < n; ++i) data[i] /= m[i] + 1e-3F;
  cv::Mat correlation;
  cv::dft(cross, correlation, cv::DFT_INVERSE | cv::DFT_SCALE);
  cv::Point peak;
  cv::minMaxLoc(correlation, nullptr, nullptr, nullptr, &peak);
  const auto at = [&](int px, int py) {
    px = (px + correlation.cols) % correlation.cols;
    py = (py + correlation.rows) % correlation.rows;
    return correlation.at<float>(py, px);
  };
  const auto vertex = [](float a, float b, float c) {
    const float bend = a - 2.0F * b + c;
    return bend < 0.0F ? std::clamp(0.5F * (a - c) / bend, -0.5F, 0.5F) : 0.0F;
  };
  const float mid = at(peak.x, peak.y);
  float dx = static_cast<float>(peak.x) +
             vertex(at(peak.x - 1, peak.y), mid, at(peak.x + 1, peak.y));
  float dy = static_cast<float>(peak.y) +
             vertex(at(peak.x, peak.y - 1), mid, at(peak.x, peak.y + 1));
  if (dx > 0.5F * static_cast<float>(correlation.cols)) {
    dx -= static_cast<float>(correlation.cols);
  }
  if (dy > 0.5F * static_cast<float>(correlation.rows)) {
    dy -= static_cast<float>(correlation.rows);
  }
  const cv::Point2f shift(2.0F * dx, 2.0F * dy);
  const float limit = 0.15F * static_cast<float>(std::max(y.cols, y.rows));
  if (std::abs(shift.x) > limit || std::abs(shift.y) > limit) return {};

  // Does it make the textured points agree better? Medians, so that a hand in
  // the way does not decide.
  std::vector<float> before, after;
  before.reserve(textured_.size());
  after.reserve(textured_.size());
  for (const cv::Point& p : textured_) {
    const auto ref = static_cast<float>(reference_.at<unsigned char>(p));
    const float moved = SampleAt(y,
                                 static_cast<float>(p.x) + shift.x,
                                 static_cast<float>(p.y) + shift.y);
    if (moved < 0.0F) continue;
    before.push_back(
        std::abs(static_cast<float>(y.at<unsigned char>(p)) - ref));
    after.push_back(std::abs(moved - ref));
  }
  if (before.size() < 50) return {};
  const auto middle = [](std::vector<float>& v) {
    const auto it = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), it, v.end());
    return *it;
  };
  return middle(after) < 0.9F * middle(before) ? shift : cv::Point2f();
}

}  // namespace flowkin
