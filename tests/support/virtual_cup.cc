#include "tests/support/virtual_cup.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace flowkin::test {
namespace {

struct Table {
  std::vector<double> x, y;
  /// Monotone cubic through the points (F. N. Fritsch, R. E. Carlson 1980).
  double At(double at) const;
};

double Table::At(double at) const {
  const std::size_t n = x.size();
  auto upper = std::upper_bound(x.begin(), x.end(), at);
  std::size_t i =
      upper == x.begin() ? 0 : static_cast<std::size_t>(upper - x.begin()) - 1;
  i = std::min(i, n - 2);
  const auto chord = [&](std::size_t k) {
    return (y[k + 1] - y[k]) / (x[k + 1] - x[k]);
  };
  const auto slope = [&](std::size_t k) {
    if (k == 0) return chord(0);
    if (k == n - 1) return chord(n - 2);
    const double a = chord(k - 1);
    const double b = chord(k);
    return a * b <= 0.0 ? 0.0 : 2.0 * a * b / (a + b);
  };
  const double h = x[i + 1] - x[i];
  const double t = (at - x[i]) / h;
  return y[i] * (1 + 2 * t) * (1 - t) * (1 - t) +
         slope(i) * h * t * (1 - t) * (1 - t) + y[i + 1] * t * t * (3 - 2 * t) +
         slope(i + 1) * h * t * t * (t - 1);
}

std::vector<std::vector<std::string>> ReadRows(const std::string& name) {
  const std::string path =
      std::string(FLOWKIN_SOURCE_DIR) + "/tests/data/liquids/" + name;
  std::ifstream file(path);
  if (!file) throw std::runtime_error("missing " + path);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  while (std::getline(file, line)) {
    if (line.empty() || line[0] < '0' || line[0] > '9') continue;
    std::vector<std::string> row;
    std::stringstream cells(line);
    std::string cell;
    while (std::getline(cells, cell, ',')) row.push_back(cell);
    rows.push_back(row);
  }
  return rows;
}

/// Kinematic viscosity of an aqueous solution from tables by mass, so that
/// the volume which water and solute lose on mixing is accounted for.
class Solution : public ThinnedLiquid {
 public:
  Solution(Table ln_viscosity, const Table& density, double stock_percent)
      : ln_viscosity_(std::move(ln_viscosity)),
        density_(density),
        stock_percent_(stock_percent) {}
  double LnViscosity(double w) const override {
    const double stock_g = density_.At(stock_percent_);
    const double percent = stock_percent_ * stock_g / (stock_g + w * 0.9982);
    return ln_viscosity_.At(percent) - std::log(density_.At(percent));
  }

 private:
  Table ln_viscosity_;
  Table density_;
  double stock_percent_;
};

const Table& GlycerolDensity() {
  static const Table table = [] {
    Table t;
    for (const auto& row : ReadRows("glycerol-density-15-30C.csv")) {
      t.x.push_back(std::stod(row[0]));
      t.y.push_back(std::stod(row[2]));
    }
    return t;
  }();
  return table;
}

const Table& SegurOberstar() {
  static const Table table = [] {
    Table t;
    for (const auto& row :
         ReadRows("glycerol-viscosity-segur-oberstar-1951.csv")) {
      if (std::stod(row[1]) != 20.0) continue;
      t.x.push_back(std::stod(row[0]));
      t.y.push_back(std::log(std::stod(row[2])));
    }
    return t;
  }();
  return table;
}

/// N.-S. Cheng 2008, Ind. Eng. Chem. Res. 47, 3285-3288; mPa s.
double ChengViscosity(double mass_fraction, double temperature_c) {
  const double t = temperature_c;
  const double water =
      1.790 * std::exp((-1230.0 - t) * t / (36100.0 + 360.0 * t));
  const double glycerol =
      12100.0 * std::exp((-1233.0 + t) * t / (9900.0 + 70.0 * t));
  const double a = 0.705 - 0.0017 * t;
  const double b = (4.9 + 0.036 * t) * std::pow(a, 2.5);
  const double c = mass_fraction;
  const double alpha =
      1.0 - c + a * b * c * (1.0 - c) / (a * c + b * (1.0 - c));
  return std::exp(alpha * std::log(water) + (1.0 - alpha) * std::log(glycerol));
}

Table ChengTable(double temperature_c) {
  Table t;
  for (int percent = 0; percent <= 100; ++percent) {
    t.x.push_back(percent);
    t.y.push_back(std::log(ChengViscosity(0.01 * percent, temperature_c)));
  }
  return t;
}

struct Sucrose {
  Table ln_viscosity, density;
};
const Sucrose& SucroseTables() {
  static const Sucrose tables = [] {
    Sucrose s;
    for (const auto& row : ReadRows("sucrose-viscosity-density-20C.csv")) {
      const double percent = std::stod(row[0]);
      if (percent == 32.0) continue;  // misprinted in the handbook itself
      s.ln_viscosity.x.push_back(percent);
      s.ln_viscosity.y.push_back(std::log(std::stod(row[2])));
      s.density.x.push_back(percent);
      s.density.y.push_back(std::stod(row[1]));
    }
    return s;
  }();
  return tables;
}

/// Particles in a thickened water phase: suspension law times c^alpha.
class Suspension : public ThinnedLiquid {
 public:
  Suspension(LawFamily family, double solids, double limit, double thickener)
      : family_(family), solids_(solids), limit_(limit), alpha_(thickener) {}
  double LnViscosity(double w) const override {
    const double phi = solids_ / (1.0 + w);
    double particles = 0.0;
    if (family_ == LawFamily::kMooney) {
      particles = 2.5 * phi / (1.0 - limit_ * phi);  // limit: kM
    } else if (family_ == LawFamily::kQuemada) {
      particles = -2.0 * std::log1p(-phi / limit_);
    } else {
      particles = -2.5 * limit_ * std::log1p(-phi / limit_);
    }
    return particles - alpha_ * std::log1p(w);
  }

 private:
  LawFamily family_;
  double solids_, limit_, alpha_;
};

/// Dilution at which `liquid` has the given ln viscosity.
double Dilution(const ThinnedLiquid& liquid, double ln_viscosity) {
  double low = 0.0;
  double high = 20.0;
  for (int pass = 0; pass < 80; ++pass) {
    const double middle = 0.5 * (low + high);
    (liquid.LnViscosity(middle) > ln_viscosity ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

/// Stock fraction (of `limit`) is raised until the stock is `ln_ratio` above
/// the paint at `solids`.
std::shared_ptr<const ThinnedLiquid> SuspensionStock(LawFamily family,
                                                     double solids,
                                                     double limit,
                                                     double thickener,
                                                     double ln_ratio) {
  const double most =
      (family == LawFamily::kMooney ? 1.0 / limit : limit) * 0.9999;
  double low = solids;
  double high = most;
  const auto rise = [&](double stock) {
    const Suspension liquid(family, stock, limit, thickener);
    return liquid.LnViscosity(0.0) - liquid.LnViscosity(stock / solids - 1.0);
  };
  for (int pass = 0; pass < 80; ++pass) {
    const double middle = 0.5 * (low + high);
    (rise(middle) < ln_ratio ? low : high) = middle;
  }
  return std::make_shared<Suspension>(family, high, limit, thickener);
}

const double kStockLnRatio = std::log(kStockRatio);

}  // namespace

const char* LawFamilyName(LawFamily family) {
  switch (family) {
    case LawFamily::kKriegerDougherty:
      return "Krieger-Dougherty";
    case LawFamily::kMooney:
      return "Mooney";
    case LawFamily::kGlycerolTable:
      return "glycerol table";
    case LawFamily::kGlycerolFormula:
      return "glycerol formula";
    case LawFamily::kQuemada:
      return "Quemada";
    case LawFamily::kSucroseTable:
      return "sucrose table";
  }
  return "";
}

double MeasuredRatio(double truth, double rel_sd, Random& random) {
  double ratio = truth * std::exp(rel_sd * random.Normal());
  if (random.Uniform(0.0, 1.0) < 0.02) {
    ratio *= random.Uniform(0.0, 1.0) < 0.5 ? 1.3 : 0.7;
  }
  return ratio;
}

VirtualPaint PaintOf(std::shared_ptr<const ThinnedLiquid> stock) {
  const double w_base =
      Dilution(*stock, stock->LnViscosity(0.0) - kStockLnRatio);
  return {std::move(stock), w_base};
}

VirtualPaint DrawPaint(LawFamily family, Random& random) {
  std::shared_ptr<const ThinnedLiquid> stock;
  switch (family) {
    case LawFamily::kKriegerDougherty:
    case LawFamily::kQuemada: {
      const double limit = random.Uniform(0.58, 0.70);
      const double solids = random.Uniform(0.33, 0.45);
      stock = SuspensionStock(
          family, solids, limit, random.Uniform(1.0, 3.0), kStockLnRatio);
      break;
    }
    case LawFamily::kMooney:
      stock = SuspensionStock(family,
                              random.Uniform(0.28, 0.38),
                              random.Uniform(1.35, 1.75),
                              random.Uniform(1.0, 3.0),
                              kStockLnRatio);
      break;
    case LawFamily::kGlycerolTable:
      stock = std::make_shared<Solution>(
          SegurOberstar(), GlycerolDensity(), random.Uniform(88.0, 99.5));
      break;
    case LawFamily::kGlycerolFormula:
      stock = std::make_shared<Solution>(ChengTable(random.Uniform(16.0, 26.0)),
                                         GlycerolDensity(),
                                         random.Uniform(88.0, 99.5));
      break;
    case LawFamily::kSucroseTable:
      stock = std::make_shared<Solution>(SucroseTables().ln_viscosity,
                                         SucroseTables().density,
                                         random.Uniform(60.0, 74.0));
      break;
  }
  return PaintOf(std::move(stock));
}

VirtualCup::VirtualCup(const VirtualPaint& paint,
                       double ratio,
                       double volume_ml)
    : paint_(paint) {
  const double base = paint.liquid->LnViscosity(paint.w_base);
  w_start_ = Dilution(*paint.liquid, base + std::log(ratio));
  stock_ml_ = volume_ml / (1.0 + w_start_);
}

double VirtualCup::Ratio(double added_ml) const {
  const double w = w_start_ + added_ml / stock_ml_;
  return std::exp(paint_.liquid->LnViscosity(w) -
                  paint_.liquid->LnViscosity(paint_.w_base));
}

}  // namespace flowkin::test
