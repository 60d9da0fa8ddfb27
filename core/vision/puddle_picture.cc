#include "core/vision/puddle_picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr int kMostWorkSide = 360;
// The shift is first found on pictures this much smaller.
constexpr std::array<int, 2> kCoarse = {4, 2};
// The refinement may move that by so much, px.
constexpr float kFinest = 2.0F;
// Pictures in a row that may do without a full search.
constexpr int kTrustedPictures = 15;
// A zoom below this is left out of the search for the shift, for most cameras
// stand still: half a pixel at the border of the picture.
constexpr float kLeastZoom = 0.002F;
// A zoom that is known worse than this is not believed; an error of it makes
// 0.4 % in viscosity.
constexpr double kZoomSd = 5e-4;
// A zoom must bring the difference down to this share.
constexpr double kZoomExplains = 0.9;
// Lenses zoom by less than this between two pictures.
constexpr double kZoomStep = 0.01;
// Noise moves the mean difference at a thousand points by less than this.
constexpr double kAsGood = 1.05;

// Means of `size` cells in a row from the sums of their columns. `Factor` is
// theirs when it is known to the compiler, else 0: the sum is then unrolled.
// Division is slow: a product and a shift give the same whole numbers while
// total times count is below 2^40, as for cells of up to 256 x 256 pixels.
template <int Factor>
void RowMeans(const std::uint16_t* sum,
              int factor,
              unsigned count,
              int size,
              unsigned char* to) {
  constexpr int kShift = 40;
  const std::uint64_t inverse = (std::uint64_t{1} << kShift) / count + 1;
  const int width = Factor > 0 ? Factor : factor;
  for (int c = 0; c < size; ++c, sum += width) {
    unsigned total = count / 2;
    for (int k = 0; k < width; ++k) total += sum[k];
    to[c] = static_cast<unsigned char>((total * inverse) >> kShift);
  }
}

// Means over cells of `factor` x `factor`, of every second row of them where
// that leaves two rows or more: enough for a mean, at half the cost. Columns
// are added first, over whole rows, which compilers turn into vector code.
cv::Mat CellMeans(const cv::Mat& plane, cv::Size size, int factor) {
  const int row_step = factor >= 4 ? 2 : 1;
  const int rows = (factor + row_step - 1) / row_step;
  const unsigned count = static_cast<unsigned>(rows * factor);
  const int cols = size.width * factor;
  cv::Mat out(size, CV_8UC1);
  // 16 bits hold 256 rows; a factor that large needs a picture 90000 px long.
  FLOWKIN_CHECK(factor <= 256 && cols <= plane.cols &&
                size.height * factor <= plane.rows);
  const auto means = factor == 2   ? RowMeans<2>
                     : factor == 3 ? RowMeans<3>
                     : factor == 4 ? RowMeans<4>
                     : factor == 6 ? RowMeans<6>
                                   : RowMeans<0>;
  std::vector<std::uint16_t> sums(static_cast<std::size_t>(cols));
  std::uint16_t* sum = sums.data();
  for (int r = 0; r < size.height; ++r) {
    const unsigned char* row = plane.ptr<unsigned char>(r * factor);
    for (int c = 0; c < cols; ++c) sum[c] = row[c];
    for (int k = row_step; k < factor; k += row_step) {
      row = plane.ptr<unsigned char>(r * factor + k);
      for (int c = 0; c < cols; ++c) {
        sum[c] = static_cast<std::uint16_t>(sum[c] + row[c]);
      }
    }
    means(sum, factor, count, size.width, out.ptr<unsigned char>(r));
  }
  return out;
}

// Spectrum of the shrunk picture's gradient, as the complex number
// d/dx + i d/dy: lines count by strength and direction, plain areas such as a
// dark puddle do not.
cv::Mat GradientSpectrum(const cv::Mat& y, const cv::Mat& window) {
  cv::Mat small, spectrum;
  cv::resize(y, small, window.size(), 0, 0, cv::INTER_AREA);
  std::array<cv::Mat, 2> gradient;
  cv::Sobel(small, gradient[0], CV_32F, 1, 0);
  cv::Sobel(small, gradient[1], CV_32F, 0, 1);
  for (cv::Mat& g : gradient) cv::multiply(g, window, g);
  cv::merge(gradient.data(), gradient.size(), spectrum);
  cv::dft(spectrum, spectrum);
  return spectrum;
}

}  // namespace

int WorkFactor(int width_px, int height_px) {
  const int longest = std::max(width_px, height_px);
  int factor = std::max(1, (longest + kMostWorkSide - 1) / kMostWorkSide);
  // Even factors shrink faster, chroma included.
  if (factor > 2 && factor % 2 != 0) ++factor;
  return factor;
}

WorkPicture ReducePicture(const Frame& frame, int factor) {
  WorkPicture work;
  work.t_s = frame.TimeS();
  const cv::Size size(std::max(1, frame.luma.cols / factor),
                      std::max(1, frame.luma.rows / factor));
  work.y =
      factor == 1 ? frame.luma.clone() : CellMeans(frame.luma, size, factor);
  if (factor > 1) {
    work.cb = CellMeans(frame.cb, size, factor / 2);
    work.cr = CellMeans(frame.cr, size, factor / 2);
  } else {
    cv::resize(frame.cb, work.cb, size, 0, 0, cv::INTER_LINEAR);
    cv::resize(frame.cr, work.cr, size, 0, 0, cv::INTER_LINEAR);
  }
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
  // Marks near the limit of resolution would bias the gradients.
  cv::blur(reference_y, reference_, {3, 3});
  for (std::size_t i = 0; i < kCoarse.size(); ++i) {
    cv::createHanningWindow(window_[i],
                            {std::max(4, reference_.cols / kCoarse[i]),
                             std::max(4, reference_.rows / kCoarse[i])},
                            CV_32F);
    spectrum_[i] = GradientSpectrum(reference_, window_[i]);
  }

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
    const cv::Point p = strengths[i].second;
    textured_.push_back(p);
    gradient_.emplace_back(static_cast<float>(gx.at<short>(p)) / 8.0F,
                           static_cast<float>(gy.at<short>(p)) / 8.0F);
  }
}

cv::Point2f ShiftFinder::Find(const cv::Mat& picture_y) {
  if (picture_y.size() != reference_.size() || textured_.size() < 50) return {};
  cv::Mat y;
  cv::blur(picture_y, y, {3, 3});
  // A camera on a stand stays where it was: while the last shift explains the
  // picture as well as the last full search did, none is needed. A new one is
  // made now and then, lest a creep of one mark of a ruler be followed.
  if (since_search_ >= 0 && since_search_ < kTrustedPictures) {
    const cv::Point2f shift = Refine(y, last_);
    if (Cost(y, shift) < kAsGood * search_cost_) {
      ++since_search_;
      FollowZoom(y, shift);
      return last_ = JudgeZoom(y, shift);
    }
  }
  // The rows of marks on a ruler look alike when moved by one mark; so several
  // guesses are refined and the one that explains most is taken. None at all
  // is preferred unless another is clearly better.
  cv::Point2f best = Refine(y, {});
  search_cost_ = Cost(y, best);
  double best_cost = 0.97 * search_cost_;
  for (std::size_t i = 0; i < kCoarse.size(); ++i) {
    const cv::Point2f shift = Refine(y, Peak(y, i));
    const double cost = Cost(y, shift);
    if (cost < best_cost) {
      best_cost = search_cost_ = cost;
      best = shift;
    }
  }
  since_search_ = 0;
  FollowZoom(y, best);
  return last_ = JudgeZoom(y, best);
}

// Where a point of the reference lies in a picture moved by `shift`.
cv::Point2f ShiftFinder::Place(const cv::Point& p, cv::Point2f shift) const {
  const cv::Point2f at(static_cast<float>(p.x), static_cast<float>(p.y));
  if (!zoom_holds_) return at + shift;
  const cv::Point2f middle(0.5F * static_cast<float>(reference_.cols - 1),
                           0.5F * static_cast<float>(reference_.rows - 1));
  return middle + zoom_ * (at - middle) + shift;
}

// Gauss-Newton on shift and zoom together, as in Refine().
void ShiftFinder::FollowZoom(const cv::Mat& y, cv::Point2f shift) {
  const cv::Point2f middle(0.5F * static_cast<float>(reference_.cols - 1),
                           0.5F * static_cast<float>(reference_.rows - 1));
  double zoom = static_cast<double>(zoom_);
  struct Seen {
    double difference, gx, gy, gz;
  };
  std::vector<Seen> seen;
  std::vector<double> size;
  double sd = 1.0;
  for (int round = 0; round < 3; ++round) {
    seen.clear();
    size.clear();
    for (std::size_t i = 0; i < textured_.size(); ++i) {
      const cv::Point2f from(static_cast<float>(textured_[i].x) - middle.x,
                             static_cast<float>(textured_[i].y) - middle.y);
      const cv::Point2f at = middle + static_cast<float>(zoom) * from + shift;
      const float moved = SampleAt(y, at.x, at.y);
      if (moved < 0.0F) continue;
      const cv::Point2f& g = gradient_[i];
      seen.push_back(
          {static_cast<double>(
               moved -
               static_cast<float>(reference_.at<unsigned char>(textured_[i]))),
           static_cast<double>(g.x),
           static_cast<double>(g.y),
           static_cast<double>(g.x * from.x + g.y * from.y)});
      size.push_back(seen.back().difference);
    }
    if (seen.size() < 100) return;
    const auto half = static_cast<std::ptrdiff_t>(size.size() / 2);
    std::nth_element(size.begin(), size.begin() + half, size.end());
    const double centre = size[seen.size() / 2];
    for (double& v : size) v = std::abs(v - centre);
    std::nth_element(size.begin(), size.begin() + half, size.end());
    const double spread = 1.4826 * std::max(0.35, size[seen.size() / 2]);
    cv::Matx33d a = cv::Matx33d::zeros();
    cv::Vec3d b(0, 0, 0);
    for (const Seen& s : seen) {
      const double d = s.difference - centre;
      if (std::abs(d) > 3.0 * spread) continue;
      const cv::Vec3d g(s.gx, s.gy, s.gz);
      a += g * g.t();
      b -= d * g;
    }
    cv::Matx33d inverse = a.inv(cv::DECOMP_CHOLESKY);
    const cv::Vec3d step = inverse * b;
    // Neighbouring points share the blur of the picture: about three are one.
    sd = spread * std::sqrt(3.0 * std::max(0.0, inverse(2, 2)));
    if (!(sd > 0.0 && sd < kZoomSd) || std::hypot(step[0], step[1]) > 3.0) {
      return;
    }
    shift +=
        cv::Point2f(static_cast<float>(step[0]), static_cast<float>(step[1]));
    zoom += step[2];
  }
  if (std::abs(zoom - static_cast<double>(zoom_)) > kZoomStep) return;
  zoom_ = static_cast<float>(zoom);
}

// Whether the zoom is needed at all; the shift with or without it.
cv::Point2f ShiftFinder::JudgeZoom(const cv::Mat& y, cv::Point2f shift) {
  if (std::abs(zoom_ - 1.0F) < kLeastZoom) {
    zoom_holds_ = false;
    return shift;
  }
  zoom_holds_ = true;
  const cv::Point2f with = Refine(y, shift);
  const double cost = Cost(y, with);
  zoom_holds_ = false;
  cv::Point2f without = Refine(y, shift);
  double least = Cost(y, without);
  // The shift found with a feigned zoom makes up for it.
  const cv::Point2f still = Refine(y, {});
  if (const double c = Cost(y, still); c < least) {
    least = c;
    without = still;
  }
  if (cost < kZoomExplains * least) {
    zoom_holds_ = true;
    return with;
  }
  if (cost > kAsGood * least) zoom_ = 1.0F;
  return without;
}

double ShiftFinder::Cost(const cv::Mat& y, cv::Point2f shift) const {
  // Mean difference at the textured points, clipped so that a hand in the way
  // does not decide.
  double sum = 0.0;
  int count = 0;
  for (const cv::Point& p : textured_) {
    const cv::Point2f at = Place(p, shift);
    const float moved = SampleAt(y, at.x, at.y);
    if (moved < 0.0F) continue;
    sum += std::min(
        20.0F,
        std::abs(moved - static_cast<float>(reference_.at<unsigned char>(p))));
    ++count;
  }
  return count > 0 ? sum / count : 1e9;
}

cv::Point2f ShiftFinder::Peak(const cv::Mat& y, std::size_t level) const {
  cv::Mat cross;
  cv::mulSpectrums(
      GradientSpectrum(y, window_[level]), spectrum_[level], cross, 0, true);
  // Whitened in part only (power 1/2): full whitening lets the noise of the
  // empty frequencies of a plain tile drown the peak.
  auto* data = cross.ptr<cv::Vec2f>(0);
  const int n = cross.rows * cross.cols;
  for (int i = 0; i < n; ++i) {
    const float power = data[i][0] * data[i][0] + data[i][1] * data[i][1];
    data[i] *= 1.0F / (std::sqrt(std::sqrt(power)) + 1e-3F);
  }
  cv::Mat correlation;
  cv::dft(cross,
          correlation,
          cv::DFT_INVERSE | cv::DFT_SCALE | cv::DFT_REAL_OUTPUT);
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
  const auto scale = static_cast<float>(kCoarse[level]);
  const cv::Point2f shift(scale * dx, scale * dy);
  const float limit = 0.15F * static_cast<float>(std::max(y.cols, y.rows));
  const bool far = std::abs(shift.x) > limit || std::abs(shift.y) > limit;
  return far ? cv::Point2f() : shift;
}

cv::Point2f ShiftFinder::Refine(const cv::Mat& y, cv::Point2f shift) const {
  // Gauss-Newton on the grey values of the textured points, with the
  // reference's own gradients; differences far from the median (hand, paint)
  // do not count.
  std::vector<float> difference, size;
  std::vector<std::size_t> index;
  cv::Point2f start = shift;
  for (int round = 0; round < 12; ++round) {
    difference.clear();
    index.clear();
    for (std::size_t i = 0; i < textured_.size(); ++i) {
      const cv::Point& p = textured_[i];
      const cv::Point2f at = Place(p, shift);
      const float moved = SampleAt(y, at.x, at.y);
      if (moved < 0.0F) continue;
      difference.push_back(moved -
                           static_cast<float>(reference_.at<unsigned char>(p)));
      index.push_back(i);
    }
    if (index.size() < 50) return start;
    size = difference;
    const auto half = static_cast<std::ptrdiff_t>(size.size() / 2);
    std::nth_element(size.begin(), size.begin() + half, size.end());
    const float centre = size[size.size() / 2];  // exposure
    for (float& v : size) v = std::abs(v - centre);
    std::nth_element(size.begin(), size.begin() + half, size.end());
    // Wide at first: a shift of more than a pixel moves every line.
    const float gate =
        (round < 4 ? 8.0F : 3.0F) * std::max(0.5F, size[size.size() / 2]);
    double xx = 0, xy = 0, yy = 0, bx = 0, by = 0;
    for (std::size_t k = 0; k < index.size(); ++k) {
      const float d = difference[k] - centre;
      if (std::abs(d) > gate) continue;
      const double gx = gradient_[index[k]].x, gy = gradient_[index[k]].y;
      xx += gx * gx;
      xy += gx * gy;
      yy += gy * gy;
      bx -= gx * d;
      by -= gy * d;
    }
    const double det = xx * yy - xy * xy;
    // Texture in one direction only cannot fix both.
    if (!(det > 1e-3 * (xx + yy) * (xx + yy))) return start;
    const double dx = (yy * bx - xy * by) / det;
    const double dy = (xx * by - xy * bx) / det;
    if (std::hypot(dx, dy) > 3.0) return start;
    shift += cv::Point2f(static_cast<float>(dx), static_cast<float>(dy));
    if (round >= 4 && std::hypot(dx, dy) < 0.005) break;
  }
  return std::hypot(shift.x - start.x, shift.y - start.y) < kFinest ? shift
                                                                    : start;
}

}  // namespace flowkin
