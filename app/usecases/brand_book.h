#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "calibration/curve/brand_curve.h"
#include "calibration/store/calibration_store.h"
#include "core/base/result.h"
#include "core/session/cup.h"

namespace flowkin {

/// A brand's curve in the words of the bench.
struct CurveSummary {
  /// Fall of ln(ratio) per unit of ln volume, at the base coat's flow.
  double slope = 0.0;
  Interval slope_interval;
  double steepening = 0.0;
  double steepening_sd = 0.0;
  /// Fall of the viscosity by 1 mL of water in 100 mL at the base coat's flow.
  double fall_per_percent = 0.0;
};

struct LearnReport {
  AppendOutcome outcome = AppendOutcome::kAdded;
  std::int64_t cups = 0;   ///< of the brand that count now
  std::int64_t tests = 0;  ///< of those cups
  CurveSummary curve;
};

struct BrandReport {
  BrandEntry entry;
  std::optional<CurveSummary> curve;
};

/// What is known of a liquid other than water.
struct LiquidReport {
  ThinnerKind thinner = ThinnerKind::kMedium;
  std::int64_t cups = 0;
  double ratio = 1.0;  ///< its own, to the base coat
  Interval ratio_interval;
  /// Of the logarithmic mixing rule, see DilutionLaw.
  Estimate interaction;
};

/// Prior for a cup of `paint` thinned with `thinner`. Water: the brand's curve,
/// or where the brand is unknown what all brands say. Another liquid: what all
/// cups with it say, those of the brand the most. `known` tells whether the
/// brand, or the liquid, was among what was learned.
struct BookPrior {
  CurvePrior prior;
  bool known = false;
};
Result<BookPrior> PriorFromBook(const CalibrationStore& book,
                                const PaintKey& paint,
                                ThinnerKind thinner = ThinnerKind::kWater);

/// Puts a cup into the book, in one transaction; as several where it was
/// thinned with one liquid after another, each with the cup as it then stood.
/// kRefused where the history holds nothing a curve can be learned from.
Result<LearnReport> LearnCup(CalibrationStore& book, const StoredCup& cup);

/// Every brand with its curve, or only `brand` if it is not empty.
Result<std::vector<BrandReport>> ListBrands(const CalibrationStore& book,
                                            const std::string& brand);

/// The liquids other than water that the book has learned of.
Result<std::vector<LiquidReport>> ListLiquids(const CalibrationStore& book);

struct ForgetReport {
  std::int64_t cups = 0;
};
Result<ForgetReport> ForgetBrand(CalibrationStore& book,
                                 const std::string& brand,
                                 const std::optional<std::string>& colour,
                                 const std::string& now_utc);
Result<ForgetReport> RestoreBrand(CalibrationStore& book,
                                  const std::string& brand,
                                  const std::string& now_utc);

struct ImportReport {
  std::int64_t added = 0;
  std::int64_t known = 0;
  std::int64_t continued = 0;
};
/// All cups or none.
Result<ImportReport> ImportCups(CalibrationStore& book,
                                const std::vector<StoredCup>& cups);

/// Points and band of a brand's curve, for drawing.
struct CurvePlot {
  struct Point {
    double water_percent, ln_ratio, sd;
  };
  struct Line {
    double water_percent, low, middle, high;  ///< ln ratio, 95 %
  };
  std::vector<Point> points;
  std::vector<Line> line;
};
/// Water is counted in mL per 100 mL of paint that flows like the base coat,
/// so that cups of every start share one axis; 0 is the base coat's flow.
Result<CurvePlot> PlotBrand(const CalibrationStore& book,
                            const std::string& brand);

}  // namespace flowkin
