#include "core/vision/level_tracker.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <opencv2/imgproc.hpp>
#include <utility>
#include <vector>

#include "core/base/check.h"

namespace flowkin {
namespace {

/// Reduced pictures hold luma codes times this in 16 bits.
constexpr float kCodeScale = 128.0F;
/// A pixel jumps when it goes this share of its whole range in one step; paint
/// that fades that fast is gone within five pictures and cannot be measured.
constexpr double kJumpShare = 0.2;
/// Camera shake below this, reduced px, is left alone: about what the
/// registration itself errs by.
constexpr double kStillShift = 0.08;
/// Patches of relief nearer than this share of the outline's length belong to
/// the same pool.
constexpr double kJoinShare = 0.35;
/// Patches weaker than this share of the strongest one are left out: coding
/// leaves such traces where a hand has been.
constexpr double kLeastPatch = 0.01;
/// The picture rests when this share of its strongest motion is left.
constexpr double kCalmShare = 0.15;
/// Gain and offset of the light are told apart where the surroundings' codes
/// spread by more than this many times what the pictures differ by; in more
/// even ones it is all gain.
constexpr double kClearSpread = 3.0;
/// Smoothed pictures are kept for up to this many: 33 MB of 24000 pixels.
constexpr std::size_t kMostSmoothKept = 340;
/// Side of the patches that drift is read from, reduced px: noise and coding
/// average out over one, a soft mirror image does not.
constexpr int kPatch = 6;
/// What is left of the relief in the flat picture is taken for at most this
/// many times what its decay says; the rest is drift.
constexpr double kMostLeft = 2.0;
/// Stripes of a lamp on the mains, which a shutter that rolls down the picture
/// makes, are taken out where they are deeper than this share of the light.
constexpr double kLeastBand = 0.005;
/// The surroundings must make up this share of the picture to say anything of
/// shake and brightness.
constexpr double kLeastSurroundings = 0.08;

/// How a picture lies to the reference picture, and the light in it:
/// picture(x + shift) = gain * reference(x) + offset.
struct View {
  cv::Point2f shift{0.0F, 0.0F};  ///< reduced px
  float gain = 1.0F;
  float offset = 0.0F;  ///< luma codes
};

struct Picture {
  double t_s = 0.0;
  cv::Mat codes;   ///< CV_16UC1, luma above black times kCodeScale
  cv::Mat coarse;  ///< CV_32FC1, for the change since the picture before
  double change = 0.0;
  View view;
  /// What every row (one column) or every column (one row) is to be multiplied
  /// by once laid over the reference picture; empty: nothing.
  cv::Mat bands;  ///< CV_32FC1
};

double Median(std::vector<double> v) {
  if (v.empty()) return 0.0;
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

double Quantile(std::vector<double> v, double q) {
  if (v.empty()) return 0.0;
  const auto k = static_cast<std::ptrdiff_t>(std::min(
      q * static_cast<double>(v.size()), static_cast<double>(v.size() - 1)));
  std::nth_element(v.begin(), v.begin() + k, v.end());
  return v[static_cast<std::size_t>(k)];
}

/// Third largest value: the strongest that is not a glitch of one picture.
double ThirdLargest(std::vector<double> v) {
  if (v.empty()) return 0.0;
  const auto k = std::min<std::ptrdiff_t>(2, std::ssize(v) - 1);
  std::nth_element(v.begin(), v.begin() + k, v.end(), std::greater<>());
  return v[static_cast<std::size_t>(k)];
}

/// Mean of the largest `share` of the values (at least 8 of them).
double TopMean(std::vector<float>& v, double share) {
  if (v.empty()) return 0.0;
  auto n = static_cast<std::ptrdiff_t>(
      std::lround(share * static_cast<double>(v.size())));
  n = std::clamp<std::ptrdiff_t>(
      n, std::min<std::ptrdiff_t>(8, std::ssize(v)), std::ssize(v));
  std::nth_element(v.begin(), v.begin() + (n - 1), v.end(), std::greater<>());
  return std::accumulate(v.begin(), v.begin() + n, 0.0) /
         static_cast<double>(n);
}

/// Sums blocks of `factor` x `factor` pixels; codes above `black`.
cv::Mat ReduceLuma(const cv::Mat& luma, int factor, int black) {
  const int rows = luma.rows / factor;
  const int cols = luma.cols / factor;
  cv::Mat out(rows, cols, CV_16UC1);
  std::vector<std::uint16_t> column(static_cast<std::size_t>(cols * factor));
  const float scale = kCodeScale / static_cast<float>(factor * factor);
  const float offset = static_cast<float>(black) * kCodeScale;
  for (int r = 0; r < rows; ++r) {
    std::fill(column.begin(), column.end(), std::uint16_t{0});
    for (int k = 0; k < factor; ++k) {
      const std::uint8_t* src = luma.ptr<std::uint8_t>(r * factor + k);
      std::uint16_t* sum = column.data();
      const int n = cols * factor;
      for (int c = 0; c < n; ++c) {
        sum[c] = static_cast<std::uint16_t>(sum[c] + src[c]);
      }
    }
    auto* dst = out.ptr<std::uint16_t>(r);
    const std::uint16_t* sum = column.data();
    for (int c = 0; c < cols; ++c, sum += factor) {
      std::uint32_t s = 0;
      for (int k = 0; k < factor; ++k) s += sum[k];
      // Rounded by hand: lround is many times slower here.
      const float code =
          std::max(0.0F, static_cast<float>(s) * scale - offset) + 0.5F;
      dst[c] = static_cast<std::uint16_t>(code);
    }
  }
  return out;
}

cv::Mat ToFloat(const cv::Mat& codes, const View& view = {}) {
  cv::Mat f;
  codes.convertTo(f,
                  CV_32F,
                  1.0 / static_cast<double>(kCodeScale * view.gain),
                  -static_cast<double>(view.offset / view.gain));
  return f;
}

/// The picture in luma codes, laid over the reference picture.
cv::Mat Look(const Picture& p) {
  cv::Mat f = ToFloat(p.codes, p.view);
  const cv::Point2f shift = p.view.shift;
  if (shift.x != 0.0F || shift.y != 0.0F) {
    cv::Mat moved;
    cv::warpAffine(f,
                   moved,
                   cv::Matx23f(1, 0, shift.x, 0, 1, shift.y),
                   f.size(),
                   cv::INTER_LINEAR | cv::WARP_INVERSE_MAP,
                   cv::BORDER_REPLICATE);
    f = moved;
  }
  if (!p.bands.empty()) {
    const int down = p.bands.cols == 1 ? 1 : f.rows;
    const int across = p.bands.cols == 1 ? f.cols : 1;
    cv::multiply(f, cv::repeat(p.bands, down, across), f);
  }
  return f;
}

/// Gain of the rows of `look` against those of `reference`, one column; where
/// `use` is zero the picture may move by itself, and moving things count less.
cv::Mat RowGain(const cv::Mat& look,
                const cv::Mat& reference,
                const cv::Mat& use) {
  constexpr float kMoves = 12.0F;  // codes
  constexpr int kReach = 2;        // rows are averaged this far either way
  constexpr float kLeastPixels = 20.0F;
  const int rows = look.rows;
  std::vector<std::array<float, 3>> sums(static_cast<std::size_t>(rows));
  for (int r = 0; r < rows; ++r) {
    const float* value = look.ptr<float>(r);
    const float* ref = reference.ptr<float>(r);
    const auto* used = use.ptr<std::uint8_t>(r);
    auto& [top, bottom, count] = sums[static_cast<std::size_t>(r)];
    top = bottom = count = 0.0F;
    for (int c = r % 3; c < look.cols; c += 3) {
      if (used[c] == 0) continue;
      const float e = value[c] - ref[c];
      const float w = 1.0F / (1.0F + e * e / (kMoves * kMoves));
      top += w * e * ref[c];
      bottom += w * ref[c] * ref[c];
      count += 1.0F;
    }
  }
  cv::Mat gain(rows, 1, CV_32F, cv::Scalar(1.0));
  for (int r = 0; r < rows; ++r) {
    float top = 0.0F;
    float bottom = 0.0F;
    float count = 0.0F;
    for (int k = std::max(0, r - kReach); k <= std::min(rows - 1, r + kReach);
         ++k) {
      const auto& sum = sums[static_cast<std::size_t>(k)];
      top += sum[0];
      bottom += sum[1];
      count += sum[2];
    }
    if (count >= kLeastPixels && bottom > 0.0F) {
      gain.at<float>(r) = std::clamp(1.0F + top / bottom, 0.5F, 2.0F);
    } else if (r > 0) {
      gain.at<float>(r) = gain.at<float>(r - 1);
    }
  }
  return gain;
}

double SpreadOf(const cv::Mat& v) {
  cv::Scalar mean;
  cv::Scalar spread;
  cv::meanStdDev(v, mean, spread);
  return spread[0];
}

cv::Mat SmoothLook(const Picture& p) {
  cv::Mat f = Look(p);
  cv::blur(f, f, cv::Size(3, 3));
  return f;
}

/// Steepest edges (upper 0.2 % of gradients, per reduced px) against the range
/// of the picture: 0.12 and more in focus.
double Sharpness(const cv::Mat& look) {
  cv::Mat gx;
  cv::Mat gy;
  cv::Sobel(look, gx, CV_32F, 1, 0, 3, 0.125);
  cv::Sobel(look, gy, CV_32F, 0, 1, 3, 0.125);
  cv::Mat steep;
  cv::magnitude(gx, gy, steep);
  std::vector<float> slopes(steep.begin<float>(), steep.end<float>());
  const auto n = std::ssize(slopes);
  const auto k = n - 1 - n / 500;
  std::nth_element(slopes.begin(), slopes.begin() + k, slopes.end());
  const auto slope = static_cast<double>(slopes[static_cast<std::size_t>(k)]);
  std::vector<float> codes(look.begin<float>(), look.end<float>());
  const auto low = n / 50;
  const auto high = n - 1 - n / 50;
  std::nth_element(codes.begin(), codes.begin() + low, codes.end());
  const float dark = codes[static_cast<std::size_t>(low)];
  std::nth_element(codes.begin(), codes.begin() + high, codes.end());
  const float bright = codes[static_cast<std::size_t>(high)];
  return slope / std::max(1.0, static_cast<double>(bright - dark));
}

/// Finds the view of pictures against a reference by Gauss-Newton on the
/// surroundings, doubtful pixels weighted down.
/// (Inverse compositional form of B. D. Lucas, T. Kanade 1981, Proc. Imaging
/// Understanding Workshop, 121-130; from memory.)
class Registration {
 public:
  /// `reference` CV_32F; `use` CV_8U, zero where the picture may move by
  /// itself.
  Registration(const cv::Mat& reference, const cv::Mat& use) {
    cv::Mat ref = reference;
    cv::Mat mask = use;
    for (auto& level : levels_) {
      level.reference = ref.clone();
      level.use = mask.clone();
      cv::Sobel(ref, level.gx, CV_32F, 1, 0, 3, 0.125);
      cv::Sobel(ref, level.gy, CV_32F, 0, 1, 3, 0.125);
      cv::resize(ref, ref, {}, 0.5, 0.5, cv::INTER_AREA);
      cv::resize(mask, mask, ref.size(), 0, 0, cv::INTER_NEAREST);
    }
  }

  /// True if the surroundings have edges in both directions to hold on to.
  bool HoldsShift() const { return holds_; }

  /// `coarse` looks at half the size only, which is enough to find the paint.
  void Fit(const cv::Mat& picture, bool coarse, View* view) {
    // Wide at first: a lamp's flicker moves every pixel at once.
    spread_ = kMostSpread;
    std::array<cv::Mat, 2> pyramid{picture, cv::Mat()};
    cv::resize(picture, pyramid[1], {}, 0.5, 0.5, cv::INTER_AREA);
    for (int level = 1; level >= (coarse ? 1 : 0); --level) {
      Refine(pyramid[static_cast<std::size_t>(level)],
             levels_[static_cast<std::size_t>(level)],
             level == 0 ? 1.0F : 0.5F,
             level == 0 ? 2 : 4,
             view);
    }
  }

 private:
  struct Level {
    cv::Mat reference, use, gx, gy;
  };

  void Refine(const cv::Mat& picture,
              const Level& level,
              float scale,
              int iterations,
              View* view) {
    cv::Point2f& shift = view->shift;
    const int rows = level.reference.rows;
    const int cols = level.reference.cols;
    const int border = 3;
    // Some thousand pixels are plenty for four numbers.
    const int row_step = scale > 0.9F ? 3 : 2;
    const int step = scale > 0.9F ? 2 : 1;
    for (int it = 0; it < iterations; ++it) {
      const float dx = shift.x * scale;
      const float dy = shift.y * scale;
      if (std::abs(dx) > static_cast<float>(cols) * 0.2F ||
          std::abs(dy) > static_cast<float>(rows) * 0.2F) {
        shift = {0.0F, 0.0F};
        return;
      }
      const int ix = static_cast<int>(std::floor(dx));
      const int iy = static_cast<int>(std::floor(dy));
      const float fx = dx - static_cast<float>(ix);
      const float fy = dy - static_cast<float>(iy);
      const float inv_gain = 1.0F / view->gain;
      const float dark = view->offset;
      // Residual scale of this pass from the pass before.
      const auto c2 = static_cast<float>(4.0 * spread_ * spread_);
      // Sums of gx gx, gx gy, gx r, gx, gy gy, gy r, gy, r r, r and 1.
      std::array<double, 10> h{};
      std::array<double, 4> b{};
      double abs_sum = 0.0;
      for (int r = border; r < rows - border; r += row_step) {
        const int pr = r + iy;
        if (pr < 0 || pr + 1 >= rows) continue;
        const float* ref = level.reference.ptr<float>(r);
        const float* gx = level.gx.ptr<float>(r);
        const float* gy = level.gy.ptr<float>(r);
        const auto* use = level.use.ptr<std::uint8_t>(r);
        const float* p0 = picture.ptr<float>(pr);
        const float* p1 = picture.ptr<float>(pr + 1);
        std::array<float, 15> row{};  // of one row; floats hold that
        for (int c = border; c < cols - border; c += step) {
          const int pc = c + ix;
          if (use[c] == 0 || pc < 0 || pc + 1 >= cols) continue;
          const float top = p0[pc] + fx * (p0[pc + 1] - p0[pc]);
          const float bottom = p1[pc] + fx * (p1[pc + 1] - p1[pc]);
          const float value = (top + fy * (bottom - top) - dark) * inv_gain;
          const float e = value - ref[c];
          const float w = 1.0F / (1.0F + e * e / c2);
          const float wx = w * gx[c];
          const float wy = w * gy[c];
          const float wr = w * ref[c];
          row[0] += wx * gx[c];
          row[1] += wx * gy[c];
          row[2] += wx * ref[c];
          row[3] += wx;
          row[4] += wy * gy[c];
          row[5] += wy * ref[c];
          row[6] += wy;
          row[7] += wr * ref[c];
          row[8] += wr;
          row[9] += w;
          row[10] += wx * e;
          row[11] += wy * e;
          row[12] += wr * e;
          row[13] += w * e;
          row[14] += w * std::abs(e);
        }
        for (std::size_t k = 0; k < 10; ++k) {
          h[k] += static_cast<double>(row[k]);
        }
        for (std::size_t k = 0; k < 4; ++k) {
          b[k] += static_cast<double>(row[10 + k]);
        }
        abs_sum += static_cast<double>(row[14]);
      }
      const double count = h[9];
      if (count < 30.0) return;
      spread_ = std::clamp(1.5 * abs_sum / count, 0.7, kMostSpread);
      // Shift is only trusted where both directions have edges.
      const double trace = h[0] + h[4];
      const double det = h[0] * h[4] - h[1] * h[1];
      const double low =
          0.5 * (trace - std::sqrt(std::max(0.0, trace * trace - 4.0 * det)));
      holds_ = low > 0.15 * count;
      if (!holds_) {
        h[0] = h[4] = 1.0;
        h[1] = h[2] = h[3] = h[5] = h[6] = 0.0;
        b[0] = b[1] = 0.0;
        shift = {0.0F, 0.0F};
      }
      h[0] += 1e-6 * trace + 1e-9;
      h[4] += 1e-6 * trace + 1e-9;
      h[7] += 1e-9;
      const double even = kClearSpread * std::min(spread_, 2.0);
      const double hold = even * even * count * count / std::max(h[7], 1.0);
      h[9] += hold;
      b[3] -= hold * static_cast<double>(dark * inv_gain);
      cv::Matx44d m;
      std::size_t k = 0;
      for (int r = 0; r < 4; ++r) {
        for (int c = r; c < 4; ++c) m(r, c) = m(c, r) = h[k++];
      }
      const cv::Vec4d d =
          m.solve(cv::Vec4d(b[0], b[1], b[2], b[3]), cv::DECOMP_LU);
      shift.x -= static_cast<float>(d[0]) / scale;
      shift.y -= static_cast<float>(d[1]) / scale;
      view->offset = std::clamp(
          dark + view->gain * static_cast<float>(d[3]), -60.0F, 60.0F);
      view->gain = std::clamp(
          view->gain * static_cast<float>(std::clamp(1.0 + d[2], 0.7, 1.4)),
          0.1F,
          8.0F);
      // The first weights are too wide to stop at.
      const bool settled = std::hypot(d[0], d[1]) < 2e-3 &&
                           std::abs(d[2]) < 1e-4 && std::abs(d[3]) < 1e-2;
      if (settled && it > 0) break;
    }
  }

  /// Of the residuals, luma codes: more is a hand or another picture.
  static constexpr double kMostSpread = 12.0;

  std::array<Level, 2> levels_;
  double spread_ = kMostSpread;
  bool holds_ = false;
};

/// Convex outline of the pixels that carry `signal` (CV_32F, >= 0) above
/// `threshold`: the strongest patch and what lies near it, for highlights light
/// the relief only here and there. Empty if there is none.
std::vector<cv::Point> StrongestOutline(const cv::Mat& signal,
                                        double threshold) {
  cv::Mat on = signal > threshold;
  cv::morphologyEx(on, on, cv::MORPH_OPEN, cv::Mat::ones(3, 3, CV_8U));
  cv::Mat labels;
  const int n = cv::connectedComponents(on, labels, 8, CV_32S);
  std::vector<std::vector<cv::Point>> patches(static_cast<std::size_t>(n));
  std::vector<double> weight(static_cast<std::size_t>(n), 0.0);
  for (int r = 0; r < on.rows; ++r) {
    for (int c = 0; c < on.cols; ++c) {
      const auto k = static_cast<std::size_t>(labels.at<int>(r, c));
      if (k == 0) continue;
      patches[k].emplace_back(c, r);
      weight[k] += static_cast<double>(signal.at<float>(r, c));
    }
  }
  if (n < 2) return {};
  const auto best = static_cast<std::size_t>(
      std::max_element(weight.begin() + 1, weight.end()) - weight.begin());
  std::vector<cv::Point> hull;
  cv::convexHull(patches[best], hull);
  double pixels = static_cast<double>(patches[best].size());
  std::vector<char> taken(patches.size(), 0);
  taken[0] = taken[best] = 1;
  const cv::Rect box = cv::boundingRect(hull);
  const double reach = kJoinShare * std::max(box.width, box.height);
  for (bool grown = true; grown;) {
    grown = false;
    for (std::size_t k = 1; k < patches.size(); ++k) {
      if (taken[k] != 0 || weight[k] < kLeastPatch * weight[best]) continue;
      const bool near = std::any_of(
          patches[k].begin(), patches[k].end(), [&](const cv::Point& p) {
            return cv::pointPolygonTest(hull, cv::Point2f(p), true) > -reach;
          });
      if (!near) continue;
      taken[k] = 1;
      grown = true;
      pixels += static_cast<double>(patches[k].size());
      std::vector<cv::Point> all = hull;
      all.insert(all.end(), patches[k].begin(), patches[k].end());
      cv::convexHull(all, hull);
      break;
    }
  }
  return pixels < 40.0 ? std::vector<cv::Point>() : hull;
}

std::vector<int> PixelsInside(const std::vector<cv::Point>& hull,
                              cv::Size size) {
  cv::Mat mask = cv::Mat::zeros(size, CV_8U);
  cv::fillConvexPoly(mask, hull, cv::Scalar(1));
  std::vector<int> pixels;
  for (int r = 0; r < mask.rows; ++r) {
    for (int c = 0; c < mask.cols; ++c) {
      if (mask.at<std::uint8_t>(r, c) != 0)
        pixels.push_back(r * size.width + c);
    }
  }
  return pixels;
}

/// 255 well outside the outline, 0 elsewhere; empty where that is too little to
/// say anything.
cv::Mat SurroundingsOf(const std::vector<cv::Point>& hull, cv::Size size) {
  cv::Mat use(size, CV_8U, cv::Scalar(255));
  cv::fillConvexPoly(use, hull, cv::Scalar(0));
  cv::erode(use, use, cv::Mat::ones(7, 7, CV_8U));
  const bool enough = cv::countNonZero(use) > kLeastSurroundings * size.area();
  return enough ? use : cv::Mat();
}

/// The relief's contrast against time, from the pictures after the laying.
class Decay {
 public:
  Decay(std::vector<double> t_s, cv::Mat rows)
      : t_s_(std::move(t_s)), rows_(std::move(rows)) {}

  std::size_t size() const { return t_s_.size(); }
  const std::vector<double>& t_s() const { return t_s_; }

  /// Takes as flat surface the pictures between `from_s` and `to_s`.
  void SetFlat(double from_s, double to_s) {
    for (int parity = 0; parity < 2; ++parity) {
      flat_[static_cast<std::size_t>(parity)] = Mean(from_s, to_s, parity);
    }
  }

  cv::Mat Flat() const { return 0.5 * (flat_[0] + flat_[1]); }

  /// Mean picture of the rows with time in [from, to]; every second one if
  /// `parity` is 0 or 1.
  cv::Mat Mean(double from_s, double to_s, int parity) const {
    cv::Mat sum = cv::Mat::zeros(1, rows_.cols, CV_32F);
    int n = 0;
    int last = -1;
    double nearest = 1e300;
    for (int i = 0; i < rows_.rows; ++i) {
      const double t = t_s_[static_cast<std::size_t>(i)];
      const double off = std::abs(t - 0.5 * (from_s + to_s));
      if (off < nearest) {
        nearest = off;
        last = i;
      }
      if (t < from_s - 1e-9 || t > to_s + 1e-9) continue;
      if (parity >= 0 && i % 2 != parity) continue;
      sum += rows_.row(i);
      ++n;
    }
    if (n == 0) return rows_.row(last).clone();
    return sum / n;
  }

  /// Mean product of neighbouring differences from the flat surface over the
  /// chosen pixels (all if empty), one value per pair (i, i + 1).
  std::vector<double> Power(const cv::Mat& weight) const {
    std::vector<double> power;
    const double total = weight.empty() ? rows_.cols : cv::sum(weight)[0];
    for (int i = 0; i + 1 < rows_.rows; ++i) {
      cv::Mat a = rows_.row(i) - flat_[static_cast<std::size_t>(i % 2)];
      const cv::Mat b =
          rows_.row(i + 1) - flat_[static_cast<std::size_t>((i + 1) % 2)];
      if (!weight.empty()) a = a.mul(weight);
      power.push_back(a.dot(b) / total);
    }
    return power;
  }

  /// What Power() would be where nothing happens: the middle one of 15 groups
  /// of neighbouring pixels, middle of 9 in time.
  std::vector<double> Floor() const {
    constexpr int kGroups = 15;
    const int width = rows_.cols / kGroups;
    std::vector<std::vector<double>> groups;
    for (int g = 0; g < kGroups && width > 0; ++g) {
      cv::Mat weight = cv::Mat::zeros(1, rows_.cols, CV_32F);
      weight.colRange(g * width, (g + 1) * width).setTo(1.0F);
      groups.push_back(Power(weight));
    }
    const auto n = static_cast<std::size_t>(rows_.rows - 1);
    std::vector<double> middle(n, 0.0);
    if (groups.empty()) return middle;
    for (std::size_t i = 0; i < n; ++i) {
      std::vector<double> v;
      for (const auto& g : groups) v.push_back(g[i]);
      middle[i] = Median(v);
    }
    std::vector<double> smooth(n);
    for (std::size_t i = 0; i < n; ++i) {
      const std::size_t from = i < 4 ? 0 : i - 4;
      const std::size_t to = std::min(n, i + 5);
      smooth[i] = Median({middle.begin() + static_cast<std::ptrdiff_t>(from),
                          middle.begin() + static_cast<std::ptrdiff_t>(to)});
    }
    return smooth;
  }

  std::vector<double> Share(double from_s, double to_s) const {
    const cv::Mat flat = Flat();
    const cv::Mat shape = Mean(from_s, to_s, -1) - flat;
    const double norm = shape.dot(shape);
    std::vector<double> share;
    for (int i = 0; i < rows_.rows; ++i) {
      share.push_back(norm > 0.0 ? (rows_.row(i) - flat).dot(shape) / norm
                                 : 0.0);
    }
    return share;
  }

 private:
  std::vector<double> t_s_;  ///< since the laying
  cv::Mat rows_;             ///< one picture per row, pixels inside only
  std::array<cv::Mat, 2> flat_;
};

/// Means over the square patches at least half of which lie in `pixels`; over
/// all of these if there is no such patch.
class Patches {
 public:
  Patches(const std::vector<int>& pixels, int width) {
    const int columns = width / kPatch + 1;
    std::vector<int> patch;
    for (const int p : pixels) {
      const int row = p / width / kPatch;
      const int column = p % width / kPatch;
      patch.push_back(row * columns + column);
    }
    if (patch.empty()) return;
    const auto most =
        static_cast<std::size_t>(*std::max_element(patch.begin(), patch.end()));
    std::vector<int> size(most + 1, 0);
    for (const int k : patch) ++size[static_cast<std::size_t>(k)];
    std::vector<int> place(most + 1, -1);
    for (std::size_t k = 0; k <= most; ++k) {
      if (2 * size[k] < kPatch * kPatch) continue;
      place[k] = static_cast<int>(sizes_.size());
      sizes_.push_back(size[k]);
    }
    if (sizes_.empty()) {
      std::fill(place.begin(), place.end(), 0);
      sizes_.push_back(static_cast<int>(patch.size()));
    }
    for (const int k : patch) {
      places_.push_back(place[static_cast<std::size_t>(k)]);
    }
  }

  /// `row` has one value per pixel.
  cv::Mat Means(const cv::Mat& row) const {
    cv::Mat means = cv::Mat::zeros(1, static_cast<int>(sizes_.size()), CV_32F);
    const float* value = row.ptr<float>();
    for (const int place : places_) {
      if (place >= 0) means.ptr<float>()[place] += *value;
      ++value;
    }
    for (int k = 0; k < means.cols; ++k) {
      means.ptr<float>()[k] /=
          static_cast<float>(sizes_[static_cast<std::size_t>(k)]);
    }
    return means;
  }

 private:
  std::vector<int> places_;  ///< of every pixel, -1: in none
  std::vector<int> sizes_;
};

double RootMeanSquare(const cv::Mat& v) {
  return cv::norm(v) / std::sqrt(static_cast<double>(v.total()));
}

/// How much of the surroundings' floor holds on the paint, 0 to 1. Printed
/// ground shows every rest of the camera's sway, smooth paint none, and no
/// relief is below zero: once the ribbon is gone, the floor must not exceed
/// what is seen on the paint.
double FloorShare(const std::vector<double>& t_s,
                  const std::vector<double>& power,
                  const std::vector<double>& floor,
                  double from_s) {
  std::vector<double> on_paint;
  std::vector<double> around;
  for (std::size_t i = 0; i < power.size(); ++i) {
    if (t_s[i] < from_s) continue;
    on_paint.push_back(power[i]);
    around.push_back(floor[i]);
  }
  const double most = Median(around);
  if (!(most > 0.0)) return 1.0;
  return std::clamp(Median(on_paint) / most, 0.0, 1.0);
}

double SignedRoot(double v) { return v < 0.0 ? -std::sqrt(-v) : std::sqrt(v); }

/// `t_s` has one more entry than `power`.
double DecayTime(const std::vector<double>& t_s,
                 const std::vector<double>& power,
                 double flat_s) {
  std::vector<double> mid;
  std::vector<double> relief;
  for (std::size_t i = 0; i < power.size(); ++i) {
    mid.push_back(0.5 * (t_s[i] + t_s[i + 1]));
    relief.push_back(SignedRoot(power[i]));
  }
  return ReliefDecayTime(mid, relief, flat_s);
}

}  // namespace

Result<void> LevelTrackerOptions::Validate() const {
  if (reduced_pixels < 4000 || reduced_pixels > 100000) {
    return Error{ErrorCode::kInvalidArgument,
                 "reduced_pixels must lie between 4000 and 100000"};
  }
  if (max_pictures < 100 || max_pictures > 4000) {
    return Error{ErrorCode::kInvalidArgument,
                 "max_pictures must lie between 100 and 4000"};
  }
  if (!(flat_after >= 2.5 && flat_after <= 8.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "flat_after must lie between 2.5 and 8"};
  }
  return {};
}

struct LevelTracker::Impl {
  explicit Impl(const LevelTrackerOptions& o) : options(o) {}

  void Add(const Frame& frame);
  void Thin();
  ReliefTrack Finish();

  void Follow(const std::vector<ReliefPoint>& outline_px);
  cv::Mat QuietPicture() const;
  void Register(const cv::Mat& use, bool coarse, ReliefTrack* track);
  void TakeOutBands(const cv::Mat& reference, const cv::Mat& use);
  void MeasureNoise(ReliefTrack* track);
  cv::Mat FadingSignal(std::size_t from, cv::Mat* settling) const;
  struct Outlines {
    std::vector<cv::Point> faded;  ///< what faded smoothly
    std::vector<cv::Point> whole;  ///< with what hangs together with that
  };
  Outlines FindOutlines(std::size_t from) const;
  std::size_t FirstAfterLaid(const ReliefTrack& track) const;
  bool CalmBetween(const ReliefTrack& track, std::size_t i) const;
  void FindBursts(const std::vector<int>& pixels, ReliefTrack* track);
  double SlowChange(const std::vector<int>& pixels,
                    std::size_t from,
                    std::size_t to) const;
  std::vector<int> CalmSurroundings(const std::vector<int>& pixels) const;
  cv::Mat MeanLook(const std::vector<int>& pixels,
                   std::size_t from,
                   std::size_t to) const;
  double QuietDriftPerS(const std::vector<int>& pixels,
                        std::size_t quiet_end) const;
  void MeasureDecay(const std::vector<int>& pixels, ReliefTrack* track);
  std::size_t Count() const { return pictures.size(); }
  cv::Mat Smooth(std::size_t i) const;
  void SetViews(const std::vector<View>& views);

  LevelTrackerOptions options;
  std::vector<Picture> pictures;
  int factor = 0;
  cv::Size frame_size;
  int num_frames = 0;
  double last_t_s = 0.0;
  std::vector<double> motion;  ///< per pair of pictures, inside the outline
  /// Nothing moved inside the outline before; a stick that comes in slowly
  /// does so long before the first burst.
  double untouched_to_s = 0.0;
  std::vector<double> whole_motion;     ///< per pair of pictures, anywhere
  double smooth_noise = 0.0;            ///< sd of a pixel of Smooth()
  mutable std::vector<cv::Mat> smooth;  ///< see Smooth()
  std::vector<ReliefPoint> followed;    ///< in the picture of `surroundings`
  std::optional<Registration> surroundings;  ///< none: they do not tell
  View newest;  ///< how the newest picture lies to it
};

/// SmoothLook() of picture `i`, to be read only. Those of short clips are kept,
/// for every step of Finish() asks for them, and long clips keep more pictures
/// instead.
cv::Mat LevelTracker::Impl::Smooth(std::size_t i) const {
  if (Count() > kMostSmoothKept) return SmoothLook(pictures[i]);
  smooth.resize(Count());
  if (smooth[i].empty()) smooth[i] = SmoothLook(pictures[i]);
  return smooth[i];
}

/// How the pictures lie from now on, one view for each; none: as they came.
void LevelTracker::Impl::SetViews(const std::vector<View>& views) {
  for (std::size_t i = 0; i < Count(); ++i) {
    pictures[i].view = views.empty() ? View() : views[i];
    pictures[i].bands.release();
  }
  smooth.clear();
}

void LevelTracker::Impl::Add(const Frame& frame) {
  if (frame.luma.empty() || frame.luma.type() != CV_8UC1) return;
  if (factor == 0) {
    frame_size = frame.luma.size();
    const double area = static_cast<double>(frame_size.area());
    factor = std::max(
        1,
        static_cast<int>(std::lround(
            std::sqrt(area / static_cast<double>(options.reduced_pixels)))));
    // 16 rows of 255 still fit the sums; larger pictures lose nothing by it.
    factor = std::min(factor, 64);
  }
  if (frame.luma.size() != frame_size || frame_size.width < 16 * factor ||
      frame_size.height < 16 * factor) {
    return;
  }
  const double t_s = frame.TimeS();
  if (num_frames > 0 && t_s <= last_t_s) return;
  Picture picture;
  picture.t_s = t_s;
  picture.codes = ReduceLuma(frame.luma, factor, frame.full_range ? 0 : 16);
  cv::Mat small;
  cv::resize(picture.codes, small, {}, 0.25, 0.25, cv::INTER_AREA);
  picture.coarse = ToFloat(small);
  if (!pictures.empty()) {
    cv::Mat d = picture.coarse - pictures.back().coarse;
    // A change of brightness alone is no event.
    d -= cv::mean(d)[0];
    picture.change = cv::norm(d, cv::NORM_L2SQR);
  }
  if (surroundings) {
    surroundings->Fit(SmoothLook(picture), false, &newest);
  }
  pictures.push_back(std::move(picture));
  ++num_frames;
  last_t_s = t_s;
  if (std::ssize(pictures) > options.max_pictures) Thin();
}

/// Drops a quarter of the pictures: those whose neighbours tell most of what
/// they hold. Steps in time count too, so no stretch is left without pictures.
void LevelTracker::Impl::Thin() {
  std::vector<double> changes;
  for (const auto& p : pictures) changes.push_back(p.change);
  const double quiet = std::max(Quantile(changes, 0.2), 1e-6);
  std::vector<std::pair<double, std::size_t>> cost;
  for (std::size_t i = 1; i + 1 < Count(); ++i) {
    const double gap = pictures[i + 1].t_s - pictures[i - 1].t_s;
    const double change = (pictures[i].change + pictures[i + 1].change) / quiet;
    cost.emplace_back(gap * std::log1p(change), i);
  }
  std::sort(cost.begin(), cost.end());
  std::vector<char> drop(Count(), 0);
  std::size_t left = Count() / 4;
  for (const auto& [value, i] : cost) {
    if (left == 0) break;
    if (drop[i - 1] != 0 || drop[i + 1] != 0) continue;
    drop[i] = 1;
    --left;
  }
  std::vector<Picture> kept;
  kept.reserve(Count());
  double carried = 0.0;
  for (std::size_t i = 0; i < Count(); ++i) {
    if (drop[i] != 0) {
      carried += pictures[i].change;
      continue;
    }
    kept.push_back(std::move(pictures[i]));
    kept.back().change += carried;
    carried = 0.0;
  }
  pictures = std::move(kept);
}

/// The last quiet picture, as it came, which all others are laid over.
cv::Mat LevelTracker::Impl::QuietPicture() const {
  // Not the very last picture: cameras are switched off by touching them.
  const std::size_t reference =
      Count() - 1 - std::min<std::size_t>(2, Count() / 20);
  // Noise of the reference would pass for spread of the surroundings.
  cv::Mat quiet = cv::Mat::zeros(pictures.front().codes.size(), CV_32F);
  const std::size_t from = reference - std::min<std::size_t>(6, reference / 10);
  for (std::size_t k = from; k <= reference; ++k) {
    quiet += SmoothLook(pictures[k]);
  }
  quiet /= static_cast<double>(reference - from + 1);
  return quiet;
}

/// Finds how all pictures lie to the last quiet one, and their brightness
/// against it. `use` marks the surroundings.
void LevelTracker::Impl::Register(const cv::Mat& use,
                                  bool coarse,
                                  ReliefTrack* track) {
  SetViews({});
  const cv::Mat quiet = QuietPicture();
  Registration registration(quiet, use);
  View view;
  std::vector<double> size;
  std::vector<View> found(Count());
  for (std::size_t k = Count(); k-- > 0;) {
    registration.Fit(Smooth(k), coarse, &view);
    found[k] = view;
    size.push_back(std::hypot(static_cast<double>(view.shift.x),
                              static_cast<double>(view.shift.y)));
  }
  // A camera that stands still is not resampled: that would only soften it.
  const bool shaken =
      registration.HoldsShift() && Quantile(size, 0.95) > kStillShift;
  if (!shaken) {
    for (View& each : found) each.shift = {0.0F, 0.0F};
  }
  SetViews(found);
  track->camera_shift_px =
      shaken ? Quantile(size, 1.0) * static_cast<double>(factor) : 0.0;
  TakeOutBands(quiet, use);
}

/// Finds a lamp's stripes, along rows or along columns, on what `use` marks,
/// and has them taken out. They differ from picture to picture; relief makes
/// stripes as well, but the same ones in neighbouring pictures.
void LevelTracker::Impl::TakeOutBands(const cv::Mat& reference,
                                      const cv::Mat& use) {
  const std::array<cv::Mat, 2> references{reference, reference.t()};
  const std::array<cv::Mat, 2> uses{use, use.t()};
  const auto gain = [&](std::size_t i, std::size_t axis) {
    const cv::Mat look = Smooth(i);
    return RowGain(
        axis == 0 ? look : cv::Mat(look.t()), references[axis], uses[axis]);
  };
  std::array<double, 2> depth{};
  for (const std::size_t axis : {0U, 1U}) {
    std::vector<double> depths;
    const std::size_t step = std::max<std::size_t>(2, Count() / 30);
    for (std::size_t i = 0; i + 1 < Count(); i += step) {
      depths.push_back(SpreadOf(gain(i, axis) - gain(i + 1, axis)) /
                       std::sqrt(2.0));
    }
    depth[axis] = Median(depths);
  }
  const std::size_t axis = depth[1] > depth[0] ? 1 : 0;
  if (depth[axis] < kLeastBand) return;
  for (std::size_t i = 0; i < Count(); ++i) {
    const cv::Mat bands = 1.0 / gain(i, axis);
    pictures[i].bands = axis == 0 ? bands : cv::Mat(bands.t());
  }
  smooth.clear();
}

/// How far each pixel was from its last look when it last jumped, where it
/// then came back smoothly; CV_32F. Hands and sticks leave nothing behind.
/// Pictures before `from` are left out. `settling`: how far it was from its
/// last look at most since then, where half of that is gone by half-time, for
/// mirror images of lamps wander over a ribbon while it fades.
cv::Mat LevelTracker::Impl::FadingSignal(std::size_t from,
                                         cv::Mat* settling) const {
  const std::size_t n = Count();
  const cv::Size size = pictures.front().codes.size();
  const std::size_t tail = std::max<std::size_t>(3, (n - from) / 20);
  cv::Mat last_look = cv::Mat::zeros(size, CV_32F);
  for (std::size_t i = n - tail; i < n; ++i) {
    last_look += Smooth(i);
  }
  last_look /= static_cast<double>(tail);
  // A jump is a good part of all that the pixel ever did within one step.
  cv::Mat jump(
      size, CV_32F, cv::Scalar(std::max(8.0 * smooth_noise, 1.5) / kJumpShare));
  for (std::size_t i = from; i < n; ++i) {
    jump = cv::max(jump, cv::abs(Smooth(i) - last_look));
  }
  jump *= kJumpShare;
  cv::Mat since(size, CV_32S, cv::Scalar(static_cast<double>(from)));
  cv::Mat before = Smooth(from);
  for (std::size_t i = from + 1; i < n; ++i) {
    cv::Mat now = Smooth(i);
    cv::Mat moved = cv::abs(now - before) > jump;
    since.setTo(cv::Scalar(static_cast<double>(i)), moved);
    before = now;
  }
  // Mean looks at the start and after a third of what follows.
  cv::Mat start = cv::Mat::zeros(size, CV_32F);
  cv::Mat later = cv::Mat::zeros(size, CV_32F);
  cv::Mat start_n = cv::Mat::zeros(size, CV_32F);
  cv::Mat later_n = cv::Mat::zeros(size, CV_32F);
  cv::Mat most = cv::Mat::zeros(size, CV_32F);
  cv::Mat late = cv::Mat::zeros(size, CV_32F);
  for (std::size_t i = from; i < n; ++i) {
    const cv::Mat now = Smooth(i);
    for (int r = 0; r < size.height; ++r) {
      const float* value = now.ptr<float>(r);
      const float* end = last_look.ptr<float>(r);
      const int* s = since.ptr<int>(r);
      for (int c = 0; c < size.width; ++c) {
        const int age = static_cast<int>(i) - s[c];
        if (age < 0) continue;
        const float off = std::abs(value[c] - end[c]);
        if (2 * age < static_cast<int>(n) - s[c]) {
          most.at<float>(r, c) = std::max(most.at<float>(r, c), off);
        } else {
          late.at<float>(r, c) += off;
        }
        if (age < 3) {
          start.at<float>(r, c) += value[c] - end[c];
          start_n.at<float>(r, c) += 1.0F;
        }
        const int third = (static_cast<int>(n) - s[c]) / 3;
        if (age >= third && age < third + 3) {
          later.at<float>(r, c) += value[c] - end[c];
          later_n.at<float>(r, c) += 1.0F;
        }
      }
    }
  }
  cv::Mat signal = cv::Mat::zeros(size, CV_32F);
  *settling = cv::Mat::zeros(size, CV_32F);
  const auto slack = static_cast<float>(2.0 * smooth_noise);
  for (int r = 0; r < size.height; ++r) {
    for (int c = 0; c < size.width; ++c) {
      const int s = since.at<int>(r, c);
      if (static_cast<std::size_t>(s) + tail + 6 >= n) continue;
      const float high = most.at<float>(r, c);
      const float rest = 2.0F * late.at<float>(r, c) /
                         static_cast<float>(static_cast<int>(n) - s);
      if (rest < 0.5F * high) settling->at<float>(r, c) = high;
      const float a =
          start.at<float>(r, c) / std::max(1.0F, start_n.at<float>(r, c));
      const float b =
          later.at<float>(r, c) / std::max(1.0F, later_n.at<float>(r, c));
      const float size_a = std::abs(a);
      const float along = a < 0.0F ? -b : b;
      // On its way back: between where it was and where it ends.
      if (along < -slack || along > size_a + slack) continue;
      signal.at<float>(r, c) = size_a;
    }
  }
  return signal;
}

/// True if the whole picture came to rest between the last burst and picture
/// `i`: a hand and stick that lay a ribbon move on even where they are out of
/// the outline.
bool LevelTracker::Impl::CalmBetween(const ReliefTrack& track,
                                     std::size_t i) const {
  const double limit =
      track.calm_motion +
      kCalmShare * std::max(0.0, track.picture_motion - track.calm_motion);
  // In heavy noise rest looks like motion and the other way round; there only
  // a long pause counts.
  const bool clear = track.picture_motion > 2.0 * track.calm_motion;
  const double pause_s =
      std::max(clear ? 0.15 : 0.6, 4.0 * track.frame_interval_s);
  double calm_from = -1.0;
  for (std::size_t k = 0; k < i; ++k) {
    if (pictures[k].t_s < track.bursts.back().end_s) continue;
    if (whole_motion[k] > limit) {
      calm_from = -1.0;
      continue;
    }
    if (calm_from < 0.0) calm_from = pictures[k].t_s;
    if (pictures[k + 1].t_s - calm_from > pause_s) return true;
  }
  return false;
}

/// Motion inside the outline that a steady change does not explain, and the
/// stretches of time in which it was strong.
void LevelTracker::Impl::FindBursts(const std::vector<int>& pixels,
                                    ReliefTrack* track) {
  const std::size_t n = Count();
  motion.assign(n, 0.0);
  track->bursts.clear();
  track->laid_s.reset();
  std::array<cv::Mat, 3> look;
  std::vector<float> misfit(pixels.size());
  for (std::size_t i = n; i-- > 0;) {
    look[2] = look[1];
    look[1] = look[0];
    look[0] = Smooth(i);
    if (i + 2 >= n) continue;
    // What the next two pictures say this one should look like. Steps in time
    // may differ; a long step says nothing of a short one.
    const double near = pictures[i + 1].t_s - pictures[i].t_s;
    const double far = pictures[i + 2].t_s - pictures[i + 1].t_s;
    const auto f = static_cast<float>(std::min(near / far, 1.5));
    const float* a = look[0].ptr<float>();
    const float* b = look[1].ptr<float>();
    const float* c = look[2].ptr<float>();
    for (std::size_t k = 0; k < pixels.size(); ++k) {
      const int p = pixels[k];
      misfit[k] = std::abs(a[p] - b[p] - f * (b[p] - c[p]));
    }
    // After a pause in the pictures even a steady decay has gone on a while.
    motion[i] =
        TopMean(misfit, 0.02) * std::min(1.0, track->frame_interval_s / near);
  }
  std::vector<double> sorted(motion.begin(), motion.end() - 2);
  const double high = ThirdLargest(sorted);
  const double quiet = Quantile(sorted, 0.25);
  const double noise = std::max(2.5 * quiet, 3.0);
  const double threshold = std::max(0.3 * high, noise);
  untouched_to_s = last_t_s;
  for (std::size_t i = 0; i + 2 < n; ++i) {
    if (motion[i] > noise) {
      untouched_to_s = std::min(untouched_to_s, pictures[i].t_s);
    }
    if (motion[i] < threshold) continue;
    const double start = pictures[i].t_s;
    const double end = 0.5 * (pictures[i].t_s + pictures[i + 1].t_s);
    if (!track->bursts.empty() && !CalmBetween(*track, i)) {
      track->bursts.back().end_s = end;
      track->bursts.back().peak =
          std::max(track->bursts.back().peak, motion[i]);
    } else {
      track->bursts.push_back({start, end, motion[i]});
    }
    track->laid_s = end;
    track->laid_sd_s =
        (pictures[i + 1].t_s - pictures[i].t_s) / std::sqrt(12.0);
  }
  if (!options.laid_s) return;
  const double laid = *options.laid_s;
  ReliefBurst laying{laid, laid, 0.0};
  for (std::size_t i = 0; i + 2 < n && pictures[i].t_s <= laid; ++i) {
    laying.peak = std::max(laying.peak, motion[i]);
  }
  if (!track->bursts.empty()) {
    laying.start_s = std::min(laid, track->bursts.front().start_s);
  }
  track->bursts = {laying};
  track->laid_s = laid;
  track->laid_sd_s = track->frame_interval_s / std::sqrt(12.0);
}

/// Pixels away from the paint on even ground, at most 3000: what coding and
/// noise do there, they do on the paint as well.
std::vector<int> LevelTracker::Impl::CalmSurroundings(
    const std::vector<int>& pixels) const {
  const cv::Mat look = Smooth(Count() - 1);
  cv::Mat gx;
  cv::Mat gy;
  cv::Sobel(look, gx, CV_32F, 1, 0, 3, 0.125);
  cv::Sobel(look, gy, CV_32F, 0, 1, 3, 0.125);
  const cv::Mat steep = gx.mul(gx) + gy.mul(gy);
  cv::Mat away(look.size(), CV_8U, cv::Scalar(255));
  for (int p : pixels) away.ptr<std::uint8_t>()[p] = 0;
  cv::erode(away, away, cv::Mat::ones(9, 9, CV_8U));
  std::vector<double> steepness;
  std::vector<int> places;
  for (int p = 0; p < static_cast<int>(look.total()); ++p) {
    if (away.ptr<std::uint8_t>()[p] == 0) continue;
    places.push_back(p);
    steepness.push_back(static_cast<double>(steep.ptr<float>()[p]));
  }
  const double limit = Quantile(steepness, 0.5);
  std::vector<int> calm;
  const std::size_t step = places.size() / 6000 + 1;
  for (std::size_t k = 0; k < places.size(); k += step) {
    if (steepness[k] <= limit) calm.push_back(places[k]);
  }
  return calm.size() < 300 ? std::vector<int>() : calm;
}

/// Root-mean-square difference over `pixels` between the first and the last
/// three of the pictures [from, to).
double LevelTracker::Impl::SlowChange(const std::vector<int>& pixels,
                                      std::size_t from,
                                      std::size_t to) const {
  if (to < from + 8) return 0.0;
  cv::Mat difference = cv::Mat::zeros(pictures.front().codes.size(), CV_32F);
  for (std::size_t k = 0; k < 3; ++k) {
    difference += Smooth(from + k) - Smooth(to - 1 - k);
  }
  double square = 0.0;
  for (int p : pixels) {
    const auto d = static_cast<double>(difference.ptr<float>()[p]) / 3.0;
    square += d * d;
  }
  return std::sqrt(square / static_cast<double>(pixels.size()));
}

/// Mean of `pixels` over the pictures [from, to), one row.
cv::Mat LevelTracker::Impl::MeanLook(const std::vector<int>& pixels,
                                     std::size_t from,
                                     std::size_t to) const {
  cv::Mat mean = cv::Mat::zeros(1, static_cast<int>(pixels.size()), CV_32F);
  for (std::size_t i = from; i < to; ++i) {
    const cv::Mat look = Look(pictures[i]);
    float* sum = mean.ptr<float>();
    for (const int p : pixels) *sum++ += look.ptr<float>()[p];
  }
  return mean / static_cast<double>(to - from);
}

/// How fast the surface's look changes in the pictures [0, quiet_end), root
/// mean square of its patches, luma codes per second. Counts what exceeds
/// twice the noise's own part, which bends as much as it slopes.
double LevelTracker::Impl::QuietDriftPerS(const std::vector<int>& pixels,
                                          std::size_t quiet_end) const {
  const std::size_t ends = std::min<std::size_t>(6, quiet_end / 3);
  if (ends < 3) return 0.0;
  const Patches patches(pixels, pictures.front().codes.cols);
  const std::size_t middle = (quiet_end - ends) / 2;
  const cv::Mat first = patches.Means(MeanLook(pixels, 0, ends));
  const cv::Mat half = patches.Means(MeanLook(pixels, middle, middle + ends));
  const cv::Mat last =
      patches.Means(MeanLook(pixels, quiet_end - ends, quiet_end));
  const double slope = RootMeanSquare(last - first);
  const double bend = RootMeanSquare(half - 0.5 * (first + last));
  // Variances of the two, where every mean errs by 1: 2 and 3/2.
  const double drift = slope * slope - 2.0 * (4.0 / 3.0) * bend * bend;
  const double span_s = pictures[quiet_end - ends].t_s - pictures.front().t_s;
  return std::sqrt(std::max(0.0, drift)) / span_s;
}

void LevelTracker::Impl::MeasureDecay(const std::vector<int>& pixels,
                                      ReliefTrack* track) {
  const std::size_t n = Count();
  const std::size_t first = FirstAfterLaid(*track);
  if (n - first < 6) return;
  const std::vector<int> calm = CalmSurroundings(pixels);
  const auto size = static_cast<int>(n - first);
  cv::Mat rows(size, static_cast<int>(pixels.size()), CV_32F);
  cv::Mat calm_rows(size, static_cast<int>(calm.size()), CV_32F);
  std::vector<double> t_s;
  for (std::size_t i = first; i < n; ++i) {
    const cv::Mat look = Look(pictures[i]);
    const float* codes = look.ptr<float>();
    float* row = rows.ptr<float>(static_cast<int>(i - first));
    for (int p : pixels) *row++ = codes[p];
    if (!calm.empty()) {
      row = calm_rows.ptr<float>(static_cast<int>(i - first));
      for (int p : calm) *row++ = codes[p];
    }
    t_s.push_back(pictures[i].t_s - *track->laid_s);
  }
  Decay decay(t_s, rows);
  Decay still(t_s, calm_rows);
  const double span = t_s.back();
  double flat_to = span;
  std::vector<double> power;
  for (int pass = 0; pass < 8; ++pass) {
    decay.SetFlat(0.88 * flat_to, flat_to);
    power = decay.Power({});
    if (!calm.empty()) {
      still.SetFlat(0.88 * flat_to, flat_to);
      const std::vector<double> floor = still.Floor();
      const double holds = FloorShare(t_s, power, floor, 0.5 * flat_to);
      for (std::size_t i = 0; i < power.size(); ++i) {
        power[i] -= holds * floor[i];
      }
    }
    const double clock = DecayTime(t_s, power, 0.94 * flat_to);
    const bool settled =
        std::abs(clock - track->decay_time_s) < 2e-3 * clock && pass > 1;
    track->decay_time_s = clock;
    track->flat_s = *track->laid_s + 0.94 * flat_to;
    if (clock <= 0.0 || settled) break;
    flat_to = std::min(span, options.flat_after * clock);
  }
  const double fall = track->decay_time_s > 0.0 ? track->decay_time_s : span;
  const std::vector<double> share = decay.Share(0.5 * fall, 2.0 * fall);
  track->start_contrast = SignedRoot(Median({power[0], power[1], power[2]}));

  // Scatter of the power where little is left, from second differences.
  std::vector<double> rough;
  for (std::size_t i = power.size() / 2; i + 2 < power.size(); ++i) {
    rough.push_back(std::abs(power[i] - 2.0 * power[i + 1] + power[i + 2]));
  }
  const double power_sd = Median(rough) / (0.6745 * std::sqrt(6.0));
  const double pixel_var = track->noise * track->noise;
  for (std::size_t i = 0; i < power.size(); ++i) {
    ReliefSample& s = track->samples[first + i];
    s.t_s = *track->laid_s + 0.5 * (t_s[i] + t_s[i + 1]);
    s.contrast = SignedRoot(power[i]);
    const double c = std::max(std::abs(s.contrast), std::sqrt(power_sd));
    const double growing =
        2.0 * pixel_var * c * c / static_cast<double>(pixels.size());
    s.contrast_sd =
        std::sqrt(power_sd * power_sd + growing) / std::max(2.0 * c, 1e-6);
    s.share = 0.5 * (share[i] + share[i + 1]);
  }

  for (std::size_t i = 0; i + 1 < n; ++i) {
    if (pictures[i].t_s < track->bursts.front().start_s) continue;
    const cv::Point2f d = pictures[i + 1].view.shift - pictures[i].view.shift;
    track->camera_jump_px =
        std::max(track->camera_jump_px,
                 factor * std::hypot(static_cast<double>(d.x),
                                     static_cast<double>(d.y)));
  }

  // The four quarters of the outline, each by itself.
  double cx = 0.0;
  double cy = 0.0;
  const int width = pictures.front().codes.cols;
  for (int p : pixels) {
    cx += p % width;
    const int row = p / width;
    cy += row;
  }
  cx /= static_cast<double>(pixels.size());
  cy /= static_cast<double>(pixels.size());
  for (int quarter = 0; quarter < 4; ++quarter) {
    cv::Mat weight = cv::Mat::zeros(1, static_cast<int>(pixels.size()), CV_32F);
    for (std::size_t k = 0; k < pixels.size(); ++k) {
      const bool right = pixels[k] % width > cx;
      const int row = pixels[k] / width;
      const bool low = row > cy;
      if ((right ? 1 : 0) + (low ? 2 : 0) == quarter) {
        weight.ptr<float>()[k] = 1.0F;
      }
    }
    if (cv::sum(weight)[0] < 10.0) continue;
    const std::vector<double> part = decay.Power(weight);
    // Only where the start stands well clear of the noise.
    if (Median({part[0], part[1], part[2]}) < 0.05 * power[0]) continue;
    const double t = DecayTime(t_s, part, 0.94 * flat_to);
    if (t > 0.0) track->part_decay_times_s.push_back(t);
  }

  track->change_after = SlowChange(pixels, first, n);
  // Is the surface as flat as before the laying?
  std::size_t quiet_end = 0;
  if (!track->bursts.empty()) {
    const double quiet_to_s =
        std::min(untouched_to_s, track->bursts.front().start_s) - 0.1;
    while (quiet_end < n && pictures[quiet_end].t_s < quiet_to_s) ++quiet_end;
  }
  if (quiet_end >= 4) {
    track->change_before = SlowChange(pixels, 0, quiet_end);
    const std::size_t from = quiet_end - std::min<std::size_t>(quiet_end, 12);
    const cv::Mat before = MeanLook(pixels, from, quiet_end);
    const cv::Mat left = decay.Flat() - before;
    const cv::Mat shape = decay.Mean(0.3 * fall, 1.5 * fall, -1) - decay.Flat();
    const cv::Mat start = decay.Mean(0.0, 0.1 * fall, -1) - decay.Flat();
    const double norm = std::sqrt(shape.dot(shape) * start.dot(start));
    if (norm > 0.0) {
      track->remaining_share = left.dot(shape) / norm;
      track->unlike_before = cv::norm(left) / cv::norm(start);
    }
    if (track->start_contrast > 0.0) {
      const Patches patches(pixels, width);
      // The rest of the relief does not count as drift.
      const cv::Mat relief = patches.Means(shape);
      cv::Mat change = patches.Means(left);
      const double flat_s = 0.94 * flat_to;
      const double relief_square = relief.dot(relief);
      if (relief_square > 0.0) {
        const double most = kMostLeft * track->start_contrast *
                            std::exp(-flat_s / fall) / RootMeanSquare(relief);
        change -=
            std::clamp(change.dot(relief) / relief_square, 0.0, most) * relief;
      }
      const double since_s =
          flat_s + *track->laid_s -
          0.5 * (pictures[from].t_s + pictures[quiet_end - 1].t_s);
      const double per_s = std::max(RootMeanSquare(change) / since_s,
                                    QuietDriftPerS(pixels, quiet_end));
      track->drift_share = per_s * fall / track->start_contrast;
    }
  }
}

void LevelTracker::Impl::MeasureNoise(ReliefTrack* track) {
  // Noise of a pixel: the calmer half of the pictures, typical pixel.
  std::vector<double> per_pair;
  whole_motion.clear();
  cv::Mat before = Smooth(0);
  std::vector<float> change;
  for (std::size_t i = 1; i < Count(); ++i) {
    const cv::Mat now = Smooth(i);
    const cv::Mat d = cv::abs(now - before);
    const float* codes = d.ptr<float>();
    change.assign(codes, codes + d.total());
    whole_motion.push_back(TopMean(change, 0.02));
    // The typical pixel: every seventh tells.
    change.clear();
    for (std::size_t k = 0; k < d.total(); k += 7) change.push_back(codes[k]);
    const auto middle = change.begin() + std::ssize(change) / 2;
    std::nth_element(change.begin(), middle, change.end());
    per_pair.push_back(static_cast<double>(*middle));
    before = now;
  }
  smooth_noise =
      std::max(0.02, Quantile(per_pair, 0.5) / (0.6745 * std::sqrt(2.0)));
  track->noise = 3.0 * smooth_noise;
  track->picture_motion = ThirdLargest(whole_motion);
  track->calm_motion = Quantile(whole_motion, 0.1);
  const std::vector<double> last(
      whole_motion.end() - std::min<std::ptrdiff_t>(5, std::ssize(per_pair)),
      whole_motion.end());
  const double action = track->picture_motion - track->calm_motion;
  if (action > 0.0) {
    track->end_motion_share = (Median(last) - track->calm_motion) / action;
  }
}

/// Convex outlines of what faded after picture `from`; empty if nothing did.
LevelTracker::Impl::Outlines LevelTracker::Impl::FindOutlines(
    std::size_t from) const {
  cv::Mat settling;
  cv::Mat signal = FadingSignal(from, &settling);
  std::vector<float> values(signal.begin<float>(), signal.end<float>());
  const double strong = TopMean(values, 0.02);
  const double threshold = std::max({4.0 * smooth_noise, 0.8, 0.08 * strong});
  Outlines found;
  found.faded = StrongestOutline(signal, threshold);
  if (found.faded.empty()) return found;
  cv::Mat labels;
  cv::Mat on = settling > threshold;
  cv::morphologyEx(on, on, cv::MORPH_OPEN, cv::Mat::ones(3, 3, CV_8U));
  cv::connectedComponents(on, labels, 8, CV_32S);
  std::vector<char> joined;
  for (int p : PixelsInside(found.faded, on.size())) {
    const auto k = static_cast<std::size_t>(labels.ptr<int>()[p]);
    if (joined.size() <= k) joined.resize(k + 1, 0);
    joined[k] = 1;
  }
  std::vector<cv::Point> all = found.faded;
  for (int r = 0; r < labels.rows; ++r) {
    for (int c = 0; c < labels.cols; ++c) {
      const auto k = static_cast<std::size_t>(labels.at<int>(r, c));
      if (k > 0 && k < joined.size() && joined[k] != 0) all.emplace_back(c, r);
    }
  }
  cv::convexHull(all, found.whole);
  return found;
}

std::size_t LevelTracker::Impl::FirstAfterLaid(const ReliefTrack& track) const {
  std::size_t first = Count();
  while (first > 0 && pictures[first - 1].t_s > *track.laid_s) --first;
  return first;
}

ReliefTrack LevelTracker::Impl::Finish() {
  ReliefTrack track;
  track.num_frames = num_frames;
  track.last_t_s = last_t_s;
  track.width_px = frame_size.width;
  track.height_px = frame_size.height;
  const std::size_t n = Count();
  if (n < 8) return track;
  std::vector<double> steps;
  for (std::size_t i = 1; i < n; ++i) {
    steps.push_back(pictures[i].t_s - pictures[i - 1].t_s);
  }
  track.frame_interval_s = Quantile(steps, 0.3);
  const cv::Size size = pictures.front().codes.size();

  cv::Scalar mean;
  cv::Scalar spread;
  cv::meanStdDev(ToFloat(pictures[n / 2].codes), mean, spread);
  track.mean_luma = mean[0];
  track.luma_spread = spread[0];
  track.sharpness = Sharpness(Smooth(n / 2));

  Register(cv::Mat(size, CV_8U, cv::Scalar(255)), true, &track);
  MeasureNoise(&track);
  const Outlines outlines = FindOutlines(0);
  std::vector<cv::Point> hull = outlines.faded;
  std::vector<int> pixels;
  if (!hull.empty()) {
    // Once more, without the paint itself; then the laying, then the outline
    // of what faded after it.
    pixels = PixelsInside(hull, size);
    const cv::Mat use = SurroundingsOf(hull, size);
    if (!use.empty()) {
      Register(use, false, &track);
    } else {
      track.surroundings = false;
      SetViews({});
    }
    MeasureNoise(&track);
    FindBursts(PixelsInside(outlines.whole, size), &track);
    if (track.laid_s && FirstAfterLaid(track) < n) {
      const std::vector<cv::Point> faded =
          FindOutlines(FirstAfterLaid(track)).faded;
      if (!faded.empty()) {
        hull = faded;
        pixels = PixelsInside(hull, size);
      }
    }
  }
  track.samples.resize(n);
  for (std::size_t i = 0; i < n; ++i) {
    track.samples[i].t_s = pictures[i].t_s;
    track.samples[i].motion = motion.empty() ? 0.0 : motion[i];
    const View& view = pictures[i].view;
    track.samples[i].brightness = static_cast<double>(view.gain);
    track.samples[i].shift_px = std::hypot(static_cast<double>(view.shift.x),
                                           static_cast<double>(view.shift.y)) *
                                factor;
  }

  if (hull.empty()) return track;
  for (const auto& p : hull) {
    track.outline_px.push_back({(p.x + 0.5) * factor, (p.y + 0.5) * factor});
  }
  track.outline_share =
      static_cast<double>(pixels.size()) / static_cast<double>(size.area());
  if (track.laid_s) MeasureDecay(pixels, &track);
  return track;
}

void LevelTracker::Impl::Follow(const std::vector<ReliefPoint>& outline_px) {
  followed = outline_px;
  surroundings.reset();
  newest = View();
  if (outline_px.empty() || pictures.empty()) return;
  std::vector<cv::Point> hull;
  for (const ReliefPoint& p : outline_px) {
    hull.emplace_back(static_cast<int>(p.x_px / factor),
                      static_cast<int>(p.y_px / factor));
  }
  const cv::Mat use = SurroundingsOf(hull, pictures.front().codes.size());
  if (use.empty()) return;
  surroundings.emplace(QuietPicture(), use);
  surroundings->Fit(SmoothLook(pictures.back()), false, &newest);
}

LevelTracker::LevelTracker(const LevelTrackerOptions& options)
    : impl_(std::make_unique<Impl>(options)) {
  FLOWKIN_CHECK(options.Validate().has_value());
}
LevelTracker::~LevelTracker() = default;
LevelTracker::LevelTracker(const LevelTracker& other)
    : impl_(std::make_unique<Impl>(*other.impl_)) {}
LevelTracker::LevelTracker(LevelTracker&&) noexcept = default;
LevelTracker& LevelTracker::operator=(LevelTracker&&) noexcept = default;

void LevelTracker::Add(const Frame& frame) { impl_->Add(frame); }

void LevelTracker::Follow(const std::vector<ReliefPoint>& outline_px) {
  impl_->Follow(outline_px);
}

std::vector<ReliefPoint> LevelTracker::OutlineNow() const {
  std::vector<ReliefPoint> outline = impl_->followed;
  for (ReliefPoint& p : outline) {
    p.x_px += static_cast<double>(impl_->newest.shift.x) * impl_->factor;
    p.y_px += static_cast<double>(impl_->newest.shift.y) * impl_->factor;
  }
  return outline;
}

ReliefTrack LevelTracker::Finish() {
  ReliefTrack track = impl_->Finish();
  impl_ = std::make_unique<Impl>(impl_->options);
  return track;
}

}  // namespace flowkin
