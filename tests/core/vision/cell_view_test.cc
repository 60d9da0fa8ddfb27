#include "core/vision/cell_view.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/base/random.h"

namespace flowkin {
namespace {

struct Drawn {
  cv::Mat picture;
  std::vector<double> diameters_px;  ///< of all discs, cut ones too
};

struct Look {
  cv::Scalar cell{40, 60, 200};  // BGR
  cv::Scalar lacing{230, 225, 220};
  double noise = 4.0;
  double shade = 0.0;  ///< brightness falls by this share from left to right
  double mean_ln_px = std::log(20.0);
  double sd_ln = 0.3;
  int count = 220;
};

/// Discs that do not touch, at random places over a larger plane, so that the
/// edge of the picture cuts some.
Drawn Draw(const Look& look, std::uint64_t seed, cv::Size size = {800, 600}) {
  Random random(seed);
  constexpr int kShift = 4;
  constexpr double kSub = 1 << kShift;
  Drawn drawn;
  drawn.picture = cv::Mat(size, CV_8UC3, look.lacing);
  struct Disc {
    double x, y, r;
  };
  std::vector<Disc> discs;
  for (int tries = 0;
       tries < 200 * look.count && static_cast<int>(discs.size()) < look.count;
       ++tries) {
    const double r = 0.5 * std::exp(random.Normal(look.mean_ln_px, look.sd_ln));
    const Disc disc{random.Uniform(-40.0, size.width + 40.0),
                    random.Uniform(-40.0, size.height + 40.0),
                    r};
    const bool free =
        std::none_of(discs.begin(), discs.end(), [&](const Disc& other) {
          return std::hypot(other.x - disc.x, other.y - disc.y) <
                 other.r + disc.r + 3.0;
        });
    if (free) discs.push_back(disc);
  }
  for (const Disc& disc : discs) {
    cv::circle(
        drawn.picture,
        {static_cast<int>(disc.x * kSub), static_cast<int>(disc.y * kSub)},
        static_cast<int>(disc.r * kSub),
        look.cell,
        cv::FILLED,
        cv::LINE_AA,
        kShift);
    drawn.diameters_px.push_back(2.0 * disc.r);
  }
  for (int row = 0; row < size.height; ++row) {
    auto* line = drawn.picture.ptr<cv::Vec3b>(row);
    for (int column = 0; column < size.width; ++column) {
      const double light = 1.0 - look.shade * column / size.width;
      for (int channel = 0; channel < 3; ++channel) {
        line[column][channel] = cv::saturate_cast<uchar>(
            light * line[column][channel] + random.Normal(0.0, look.noise));
      }
    }
  }
  return drawn;
}

/// Discs per square centimetre of the plane they were strewn over.
double TrueDensity(const Drawn& drawn, double mm_per_px) {
  const double width = drawn.picture.cols + 80.0;
  const double height = drawn.picture.rows + 80.0;
  return static_cast<double>(drawn.diameters_px.size()) /
         (width * height * mm_per_px * mm_per_px / 100.0);
}

double Median(std::vector<double> numbers) {
  std::nth_element(
      numbers.begin(),
      numbers.begin() + static_cast<std::ptrdiff_t>(numbers.size() / 2),
      numbers.end());
  return numbers[numbers.size() / 2];
}

constexpr double kMmPerPx = 0.1;
const CellViewOptions kExactScale{kMmPerPx, 0.0, {}};

TEST(CellView, CountsAndMeasuresDrawnCells) {
  const Drawn drawn = Draw({}, 1);
  const Result<CellView> view = ViewCells(drawn.picture, kExactScale);
  ASSERT_TRUE(view);
  ASSERT_TRUE(view->measured) << view->reason;
  EXPECT_DOUBLE_EQ(view->area_cm2, 8.0 * 6.0);
  // Half a pixel on the rim of a cell of 20 px.
  constexpr double kRim = 0.05;
  EXPECT_NEAR(view->median_mm / (kMmPerPx * Median(drawn.diameters_px)),
              1.0,
              kRim + 0.05);  // and the cells that were cut
  EXPECT_LT(view->lower_mm, view->median_mm);
  EXPECT_GT(view->upper_mm, view->median_mm);
  EXPECT_LT(view->per_cm2.low, TrueDensity(drawn, kMmPerPx));
  EXPECT_GT(view->per_cm2.high, TrueDensity(drawn, kMmPerPx));
}

TEST(CellView, ReadsEitherColouringAndUnevenLight) {
  Look look;
  const Result<CellView> plain = ViewCells(Draw(look, 2).picture, kExactScale);
  look.shade = 0.45;
  const Result<CellView> shaded = ViewCells(Draw(look, 2).picture, kExactScale);
  look.shade = 0.0;
  std::swap(look.cell, look.lacing);
  const Result<CellView> light = ViewCells(Draw(look, 2).picture, kExactScale);
  look.cell = {60, 120, 60};    // no lighter than its lacing, but green
  look.lacing = {60, 60, 155};  // on red
  const Result<CellView> coloured =
      ViewCells(Draw(look, 2).picture, kExactScale);
  for (const auto* view : {&shaded, &light, &coloured}) {
    ASSERT_TRUE(*view);
    ASSERT_TRUE((*view)->measured) << (*view)->reason;
    constexpr double kAlike = 0.05;
    EXPECT_NEAR(static_cast<double>((*view)->cells.size()) /
                    static_cast<double>(plain->cells.size()),
                1.0,
                kAlike);
    EXPECT_NEAR((*view)->median_mm / plain->median_mm, 1.0, kAlike);
  }
}

TEST(CellView, IntervalsCoverTheTruth) {
  int density = 0;
  int size = 0;
  constexpr int kTrials = 60;
  for (int trial = 0; trial < kTrials; ++trial) {
    Look look;
    look.count = 140;
    look.sd_ln = 0.25;
    const Drawn drawn =
        Draw(look, 100 + static_cast<std::uint64_t>(trial), {500, 400});
    const Result<CellView> view = ViewCells(drawn.picture, kExactScale);
    ASSERT_TRUE(view && view->measured);
    const double per_cm2 = TrueDensity(drawn, kMmPerPx);
    density += view->per_cm2.low <= per_cm2 && per_cm2 <= view->per_cm2.high;
    const double median = kMmPerPx * std::exp(look.mean_ln_px);
    size += view->median_mm_interval.low <= median &&
            median <= view->median_mm_interval.high;
  }
  // 95 %, less four standard deviations of the binomial: 50 of 60.
  EXPECT_GE(density, 50);
  EXPECT_GE(size, 50);
}

TEST(CellView, ScaleEntersTheInterval) {
  const Drawn drawn = Draw({}, 3);
  const Result<CellView> exact = ViewCells(drawn.picture, kExactScale);
  const Result<CellView> rough = ViewCells(drawn.picture, {kMmPerPx, 0.1, {}});
  ASSERT_TRUE(exact && rough);
  EXPECT_NEAR(
      rough->ln_per_cm2.sd, std::hypot(exact->ln_per_cm2.sd, 0.2), 1e-12);
  EXPECT_GT(rough->ln_median_mm.sd, exact->ln_median_mm.sd);
}

TEST(CellView, TellsTwoActivatorsApartOnlyWhereTheyAre) {
  Look few;
  few.count = 90;
  Look many;
  many.count = 420;
  many.mean_ln_px = std::log(13.0);
  const Result<CellView> a = ViewCells(Draw(few, 4).picture, kExactScale);
  const Result<CellView> b = ViewCells(Draw(many, 5).picture, kExactScale);
  const Result<CellView> c = ViewCells(Draw(few, 6).picture, kExactScale);
  ASSERT_TRUE(a && b && c && a->measured && b->measured && c->measured);
  const CellComparison more = CompareCells(*a, *b);
  EXPECT_EQ(more.verdict, CellVerdict::kMore);
  EXPECT_LT(more.size_interval.high, 1.0);
  EXPECT_EQ(CompareCells(*b, *a).verdict, CellVerdict::kFewer);
  const CellVerdict same = CompareCells(*a, *c).verdict;
  EXPECT_TRUE(same == CellVerdict::kAlike || same == CellVerdict::kUndecided);
}

TEST(CellView, RefusesWhereThereAreNoCells) {
  const auto refused = [](const cv::Mat& picture) {
    const Result<CellView> view = ViewCells(picture, kExactScale);
    return view && !view->measured && !view->reason.empty();
  };
  const cv::Size size(400, 300);
  EXPECT_TRUE(refused(cv::Mat(size, CV_8UC3, cv::Scalar(90, 120, 200))));
  cv::Mat shade(size, CV_8UC3);
  Random random(8);
  cv::Mat noise(size, CV_8UC3);
  for (int row = 0; row < size.height; ++row) {
    for (int column = 0; column < size.width; ++column) {
      shade.at<cv::Vec3b>(row, column) =
          cv::Vec3b::all(static_cast<uchar>(60 + column / 3));
      for (int channel = 0; channel < 3; ++channel) {
        noise.at<cv::Vec3b>(row, column)[channel] =
            cv::saturate_cast<uchar>(random.Normal(128.0, 30.0));
      }
    }
  }
  EXPECT_TRUE(refused(shade));
  EXPECT_TRUE(refused(noise));
  // Stripes are no closed cells.
  cv::Mat stripes(size, CV_8UC3, cv::Scalar::all(220));
  for (int x = 0; x < size.width; x += 20) {
    cv::rectangle(stripes, {x, 0, 10, size.height}, {40, 40, 160}, cv::FILLED);
  }
  EXPECT_TRUE(refused(stripes));
  Look tiny;
  tiny.mean_ln_px = std::log(3.0);
  tiny.sd_ln = 0.05;
  EXPECT_TRUE(refused(Draw(tiny, 9).picture));
}

TEST(CellView, RefusesImpossibleOptions) {
  const cv::Mat picture(200, 200, CV_8UC3, cv::Scalar::all(9));
  EXPECT_FALSE(ViewCells(picture, {0.0, 0.0, {}}));
  EXPECT_FALSE(ViewCells(picture, {std::nan(""), 0.0, {}}));
  EXPECT_FALSE(ViewCells(picture, {0.1, -1.0, {}}));
  EXPECT_FALSE(ViewCells(picture, {0.1, 0.0, cv::Rect(150, 0, 100, 100)}));
  EXPECT_FALSE(ViewCells(picture, {0.1, 0.0, cv::Rect(0, 0, 20, 20)}));
  EXPECT_FALSE(ViewCells(cv::Mat(200, 200, CV_8UC1), {0.1, 0.0, {}}));
}

}  // namespace
}  // namespace flowkin
