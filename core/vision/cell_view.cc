#include "core/vision/cell_view.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <opencv2/imgproc.hpp>

#include "core/base/check.h"
#include "core/base/distributions.h"

namespace flowkin {
namespace {

constexpr int kLeastSide_px = 64;
constexpr double kLeastDiameter_px = 6.0;
constexpr int kFewest = 8;
// Share of the variance that two classes explain; a shade that varies evenly
// reaches 0.75, a normal scatter 0.64.
constexpr double kLeastSeparation = 0.78;
// Area of a cell over that of its convex hull: what is less is a gap in the
// lacing, not a cell.
constexpr double kLeastSolidity = 0.80;

/// The picture as one channel along the colours' main direction of contrast,
/// without what changes slowly across it; mean 0.
cv::Mat Contrast(const cv::Mat& bgr) {
  cv::Mat lab;
  bgr.convertTo(lab, CV_32F, 1.0 / 255.0);
  cv::cvtColor(lab, lab, cv::COLOR_BGR2Lab);
  cv::GaussianBlur(lab, lab, {}, 0.8);
  cv::Mat slow;
  const double reach = std::max(lab.cols, lab.rows) / 6.0;
  // Blurring by a sixth of the picture on a quarter of its size is the same
  // and quick.
  cv::resize(lab, slow, {}, 0.25, 0.25, cv::INTER_AREA);
  cv::GaussianBlur(slow, slow, {}, reach / 4.0, 0.0, cv::BORDER_REFLECT);
  cv::resize(slow, slow, lab.size(), 0.0, 0.0, cv::INTER_LINEAR);
  lab -= slow;
  const cv::Mat points =
      lab.reshape(1, static_cast<int>(lab.total()));  // N x 3
  cv::Mat covariance;
  cv::Mat mean;
  cv::calcCovarMatrix(points,
                      covariance,
                      mean,
                      cv::COVAR_NORMAL | cv::COVAR_ROWS | cv::COVAR_SCALE,
                      CV_32F);
  cv::Mat values;
  cv::Mat vectors;
  cv::eigen(covariance, values, vectors);
  cv::Mat projected =
      (points - cv::repeat(mean, points.rows, 1)) * vectors.row(0).t();
  return projected.reshape(1, lab.rows).clone();
}

struct Split {
  double threshold = 0.0;
  double separation = 0.0;  ///< between-class over whole variance
};

/// N. Otsu, IEEE Trans. Syst. Man Cybern. 9, 62-66 (1979), from memory.
Split OtsuSplit(const cv::Mat& picture) {
  double low = 0.0;
  double high = 0.0;
  cv::minMaxLoc(picture, &low, &high);
  Split split;
  if (!(high > low)) return split;
  constexpr int kBins = 512;
  std::array<double, kBins> histogram{};
  const double scale = (kBins - 1) / (high - low);
  for (int row = 0; row < picture.rows; ++row) {
    const float* line = picture.ptr<float>(row);
    for (int column = 0; column < picture.cols; ++column) {
      histogram[static_cast<std::size_t>((line[column] - low) * scale)] += 1.0;
    }
  }
  double total = 0.0;
  double sum = 0.0;
  double squares = 0.0;
  for (int bin = 0; bin < kBins; ++bin) {
    const double n = histogram[static_cast<std::size_t>(bin)];
    const double value = low + bin / scale;
    total += n;
    sum += n * value;
    squares += n * value * value;
  }
  const double mean = sum / total;
  const double variance = squares / total - mean * mean;
  double count = 0.0;
  double part = 0.0;
  for (int bin = 0; bin + 1 < kBins; ++bin) {
    const double n = histogram[static_cast<std::size_t>(bin)];
    count += n;
    part += n * (low + bin / scale);
    if (count <= 0.0 || count >= total) continue;
    const double gap = part / count - (sum - part) / (total - count);
    const double between =
        count / total * (1.0 - count / total) * gap * gap / variance;
    if (between > split.separation) {
      split = {low + (bin + 1) / scale, between};
    }
  }
  return split;
}

struct Found {
  std::vector<Cell> cells;
  std::vector<double> area_px;
};

/// Closed patches of the dark or the light class.
Found FindCells(const cv::Mat& picture,
                double threshold,
                bool light,
                const CellViewOptions& options,
                cv::Point origin) {
  cv::Mat mask = light ? picture > threshold : picture <= threshold;
  std::vector<std::vector<cv::Point>> contours;
  std::vector<cv::Vec4i> tree;
  cv::findContours(mask, contours, tree, cv::RETR_CCOMP, cv::CHAIN_APPROX_NONE);
  Found found;
  const double least_px =
      std::numbers::pi / 4.0 * kLeastDiameter_px * kLeastDiameter_px;
  for (std::size_t i = 0; i < contours.size(); ++i) {
    if (tree[i][3] >= 0) continue;  // a hole
    const cv::Rect box = cv::boundingRect(contours[i]);
    if (box.x <= 0 || box.y <= 0 || box.br().x >= picture.cols ||
        box.br().y >= picture.rows) {
      continue;
    }
    // The contour runs through the middle of the outermost pixels; half of
    // them lie outside it.
    const double area = cv::contourArea(contours[i]) +
                        0.5 * cv::arcLength(contours[i], true) + 1.0;
    if (area < least_px) continue;
    std::vector<cv::Point> hull;
    cv::convexHull(contours[i], hull);
    const double hull_area =
        cv::contourArea(hull) + 0.5 * cv::arcLength(hull, true) + 1.0;
    if (area < kLeastSolidity * hull_area) continue;
    const cv::Moments moments = cv::moments(contours[i]);
    if (!(moments.m00 > 0.0)) continue;
    Cell cell;
    cell.x_px = moments.m10 / moments.m00 + origin.x;
    cell.y_px = moments.m01 / moments.m00 + origin.y;
    cell.diameter_mm =
        options.mm_per_px * std::sqrt(4.0 * area / std::numbers::pi);
    cell.box_px = box + origin;
    found.cells.push_back(cell);
    found.area_px.push_back(area);
  }
  return found;
}

double Sum(const std::vector<double>& numbers) {
  double sum = 0.0;
  for (const double number : numbers) sum += number;
  return sum;
}

/// Sets density and its uncertainty. Each cell weighs the inverse of its chance
/// to lie inside whole.
void Density(const cv::Rect& roi, CellView& view, double rel_sd_scale) {
  constexpr int kTiles = 4;
  std::array<double, kTiles * kTiles> tiles{};
  double count = 0.0;
  double squares = 0.0;
  for (const Cell& cell : view.cells) {
    const double weight = static_cast<double>(roi.area()) /
                          (static_cast<double>(roi.width - cell.box_px.width) *
                           (roi.height - cell.box_px.height));
    count += weight;
    squares += weight * weight;
    const auto tile_of = [](double at, int from, int size) {
      return std::clamp(
          static_cast<int>((at - from) * kTiles / size), 0, kTiles - 1);
    };
    tiles[static_cast<std::size_t>(
        tile_of(cell.y_px, roi.y, roi.height) * kTiles +
        tile_of(cell.x_px, roi.x, roi.width))] += weight;
  }
  const double mean = count / static_cast<double>(tiles.size());
  double scatter = 0.0;
  for (const double tile : tiles) scatter += (tile - mean) * (tile - mean);
  const double n = static_cast<double>(tiles.size());
  const double by_tiles = std::sqrt(scatter / (n - 1.0) * n) / count;
  const double by_chance = std::sqrt(squares) / count;
  const double rel_sd =
      std::hypot(std::max(by_tiles, by_chance), 2.0 * rel_sd_scale);
  view.ln_per_cm2 = {std::log(count / view.area_cm2), rel_sd, n - 1.0};
  const Interval ln_interval = CoverageInterval(view.ln_per_cm2);
  view.per_cm2 = {
      std::exp(ln_interval.low), std::exp(ln_interval.high), ln_interval.level};
}

/// Order statistics around the median: binomial, normal approximation, one rank
/// further out on each side.
void Sizes(CellView& view, double rel_sd_scale) {
  std::vector<double> sizes;
  for (const Cell& cell : view.cells) sizes.push_back(cell.diameter_mm);
  std::sort(sizes.begin(), sizes.end());
  const auto at = [&](double share) {
    const double place = share * static_cast<double>(sizes.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sizes.size() - 1);
    const double part = place - static_cast<double>(below);
    return (1.0 - part) * sizes[below] + part * sizes[above];
  };
  view.median_mm = at(0.5);
  view.lower_mm = at(0.1);
  view.upper_mm = at(0.9);
  const double n = static_cast<double>(sizes.size());
  const double z = NormalQuantile(0.975);
  const double reach = 0.5 * z * std::sqrt(n) + 1.0;
  const auto rank = [&](double r) {
    return sizes[static_cast<std::size_t>(std::clamp(r, 0.0, n - 1.0))];
  };
  const double low = std::log(rank(std::floor(0.5 * (n - 1.0) - reach)));
  const double high = std::log(rank(std::ceil(0.5 * (n - 1.0) + reach)));
  const double scale = z * rel_sd_scale;
  const double middle = std::log(view.median_mm);
  view.median_mm_interval = {
      std::exp(middle - std::hypot(middle - low, scale)),
      std::exp(middle + std::hypot(high - middle, scale)),
      0.95};
  view.ln_median_mm = {middle,
                       std::hypot((high - low) / (2.0 * z), rel_sd_scale)};
}

}  // namespace

Result<CellView> ViewCells(const cv::Mat& bgr, const CellViewOptions& options) {
  const auto bad = [](const std::string& message) {
    return Error{ErrorCode::kInvalidArgument, message};
  };
  if (bgr.type() != CV_8UC3) return bad("The picture must be in colour.");
  if (!(options.mm_per_px >= 1e-4 && options.mm_per_px <= 10.0)) {
    return bad("The scale must lie between 0.0001 and 10 mm per pixel.");
  }
  if (!(options.rel_sd_scale >= 0.0 && options.rel_sd_scale <= 0.5)) {
    return bad("The scale's uncertainty must lie between 0 and 0.5.");
  }
  const cv::Rect whole(0, 0, bgr.cols, bgr.rows);
  const cv::Rect roi = options.roi_px.empty() ? whole : options.roi_px;
  if ((roi & whole) != roi || std::min(roi.width, roi.height) < kLeastSide_px) {
    return bad("The part to read must lie in the picture and be at least " +
               std::to_string(kLeastSide_px) + " pixels wide and high.");
  }
  CellView view;
  view.area_cm2 = roi.area() * options.mm_per_px * options.mm_per_px / 100.0;
  try {
    const cv::Mat picture = Contrast(bgr(roi));
    const Split split = OtsuSplit(picture);
    if (split.separation < kLeastSeparation) {
      view.reason =
          "The cells do not stand out from what surrounds them; take the "
          "photo in even light and without glare.";
      return view;
    }
    Found best;
    for (const bool light : {false, true}) {
      Found found =
          FindCells(picture, split.threshold, light, options, roi.tl());
      if (Sum(found.area_px) > Sum(best.area_px)) best = std::move(found);
    }
    view.cells = std::move(best.cells);
    view.share_covered = Sum(best.area_px) / roi.area();
  } catch (const cv::Exception&) {
    return Error{ErrorCode::kInternal,
                 "The picture could not be worked on; there may not be enough "
                 "memory."};
  }
  if (static_cast<int>(view.cells.size()) < kFewest) {
    view.reason = "Only " + std::to_string(view.cells.size()) +
                  " closed cells were found, " + std::to_string(kFewest) +
                  " are needed; show a larger piece, or come closer if they "
                  "are tiny.";
    return view;
  }
  view.measured = true;
  Density(roi, view, options.rel_sd_scale);
  Sizes(view, options.rel_sd_scale);
  return view;
}

CellComparison CompareCells(const CellView& first, const CellView& second) {
  FLOWKIN_CHECK(first.measured && second.measured);
  const auto ratio = [](const Estimate& a, const Estimate& b) {
    // Welch and Satterthwaite for the degrees of freedom.
    const double va = a.sd * a.sd;
    const double vb = b.sd * b.sd;
    const double degrees =
        (va + vb) * (va + vb) /
        (va * va / a.degrees_of_freedom + vb * vb / b.degrees_of_freedom);
    return Estimate{
        b.value - a.value,
        std::sqrt(va + vb),
        degrees > 0.0 ? degrees : std::numeric_limits<double>::infinity()};
  };
  const auto exponentiated = [](const Interval& ln) {
    return Interval{std::exp(ln.low), std::exp(ln.high), ln.level};
  };
  CellComparison comparison;
  const Estimate density = ratio(first.ln_per_cm2, second.ln_per_cm2);
  comparison.density_ratio = std::exp(density.value);
  comparison.density_interval = exponentiated(CoverageInterval(density));
  const Estimate size = ratio(first.ln_median_mm, second.ln_median_mm);
  comparison.size_ratio = std::exp(size.value);
  comparison.size_interval = exponentiated(CoverageInterval(size));
  constexpr double kAlike = 1.25;
  const Interval& interval = comparison.density_interval;
  if (interval.low > 1.0) {
    comparison.verdict = CellVerdict::kMore;
  } else if (interval.high < 1.0) {
    comparison.verdict = CellVerdict::kFewer;
  } else if (interval.low > 1.0 / kAlike && interval.high < kAlike) {
    comparison.verdict = CellVerdict::kAlike;
  }
  return comparison;
}

}  // namespace flowkin
