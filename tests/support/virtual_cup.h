#pragma once

#include <memory>

#include "core/base/random.h"

namespace flowkin::test {

/// A liquid whose law is published and which the engine knows nothing of:
/// ln of its viscosity against how far it is thinned with water.
class ThinnedLiquid {
 public:
  virtual ~ThinnedLiquid() = default;
  /// ln viscosity (any fixed unit) of the undiluted stock after `w` mL of
  /// water per mL of stock, w >= 0.
  virtual double LnViscosity(double w) const = 0;
};

enum class LawFamily {
  kKriegerDougherty,  ///< tuned on
  kMooney,            ///< tuned on
  kGlycerolTable,     ///< tuned on
  kGlycerolFormula,   ///< tuned on
  kQuemada,           ///< never used while tuning
  kSucroseTable,      ///< never used while tuning
};
inline constexpr LawFamily kAllFamilies[] = {LawFamily::kKriegerDougherty,
                                             LawFamily::kMooney,
                                             LawFamily::kGlycerolTable,
                                             LawFamily::kGlycerolFormula,
                                             LawFamily::kQuemada,
                                             LawFamily::kSucroseTable};
const char* LawFamilyName(LawFamily family);

/// A paint: a liquid and the dilution at which it flows like the base coat.
struct VirtualPaint {
  std::shared_ptr<const ThinnedLiquid> liquid;
  double w_base = 0.0;  ///< mL of water per mL of stock at ratio 1
};

/// How much thicker than the base coat a paint's stock is at least.
inline constexpr double kStockRatio = 3.25;

/// The paint whose stock, kStockRatio times as thick as the base coat, is
/// `stock`.
VirtualPaint PaintOf(std::shared_ptr<const ThinnedLiquid> stock);

/// Draws a paint with textbook parameters.
VirtualPaint DrawPaint(LawFamily family, Random& random);

/// A cup of that paint.
class VirtualCup {
 public:
  /// Starts at `ratio` >= 1 to the base coat.
  VirtualCup(const VirtualPaint& paint, double ratio, double volume_ml);
  double Ratio(double added_ml) const;

 private:
  VirtualPaint paint_;
  double w_start_ = 0.0;
  double stock_ml_ = 0.0;
};

/// A measured ratio: log-normal, one in fifty off by 30 per cent either way.
double MeasuredRatio(double truth, double rel_sd, Random& random);

}  // namespace flowkin::test
