#include "calibration/curve/brand_curve.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kGridStep = 0.05;
constexpr double kLeastBrandSpread = 0.2;
constexpr double kFallbackBrands = 3.0;
constexpr double kFallbackShare = 0.2;

using Grid = std::vector<double>;

/// Gaussian smoothing along the first axis, normalised at the ends.
class Smoother {
 public:
  Smoother(const CurvePrior& grid, double sd)
      : rows_(grid.first_count), columns_(grid.second.size()) {
    reach_ = static_cast<std::ptrdiff_t>(4.0 * sd / grid.first_step);
    double sum = 0.0;
    for (std::ptrdiff_t k = -reach_; k <= reach_; ++k) {
      const double z = static_cast<double>(k) * grid.first_step / sd;
      kernel_.push_back(std::exp(-0.5 * z * z));
      sum += kernel_.back();
    }
    for (double& k : kernel_) k /= sum;
  }

  Grid operator()(const Grid& in) const {
    Grid out(in.size(), 0.0);
    const auto rows = static_cast<std::ptrdiff_t>(rows_);
    for (std::ptrdiff_t i = 0; i < rows; ++i) {
      double* to = &out[static_cast<std::size_t>(i) * columns_];
      const std::ptrdiff_t low = std::max<std::ptrdiff_t>(-reach_, -i);
      const std::ptrdiff_t high = std::min(reach_, rows - 1 - i);
      for (std::ptrdiff_t k = low; k <= high; ++k) {
        const double weight = kernel_[static_cast<std::size_t>(k + reach_)];
        const double* from = &in[static_cast<std::size_t>(i + k) * columns_];
        for (std::size_t j = 0; j < columns_; ++j) to[j] += weight * from[j];
      }
    }
    return out;
  }

 private:
  std::size_t rows_, columns_;
  std::ptrdiff_t reach_ = 0;
  std::vector<double> kernel_;
};

/// exp() of a log grid with its maximum at 1; returns that maximum's log.
double Exponentiate(const std::vector<double>& log_grid, Grid& grid) {
  const double top = *std::max_element(log_grid.begin(), log_grid.end());
  grid.resize(log_grid.size());
  for (std::size_t k = 0; k < grid.size(); ++k) {
    grid[k] = std::exp(log_grid[k] - top);
  }
  return top;
}

/// a *= b, rescaled to a maximum of 1; returns the log of the scale removed.
double Multiply(Grid& a, const Grid& b) {
  double top = 0.0;
  for (std::size_t k = 0; k < a.size(); ++k) {
    a[k] *= b[k];
    top = std::max(top, a[k]);
  }
  FLOWKIN_CHECK(top > 0.0);
  for (double& value : a) value /= top;
  return std::log(top);
}

double Sum(const Grid& grid) {
  double sum = 0.0;
  for (const double value : grid) sum += value;
  return sum;
}

}  // namespace

CurvePrior BrandGrid(const CurvePrior& population) {
  CurvePrior fine = population;
  const double length =
      population.first_step * static_cast<double>(population.first_count - 1);
  fine.first_count = static_cast<std::size_t>(length / kGridStep + 1.5);
  fine.first_step = length / static_cast<double>(fine.first_count - 1);
  fine.log_weight.clear();
  const std::size_t columns = population.second.size();
  for (std::size_t i = 0; i < fine.first_count; ++i) {
    const double position =
        static_cast<double>(i) * fine.first_step / population.first_step;
    const std::size_t row = std::min(static_cast<std::size_t>(position),
                                     population.first_count - 2);
    const double part = position - static_cast<double>(row);
    for (std::size_t j = 0; j < columns; ++j) {
      fine.log_weight.push_back(
          (1.0 - part) * population.log_weight[row * columns + j] +
          part * population.log_weight[(row + 1) * columns + j]);
    }
  }
  return fine;
}

BrandCurve FitBrandCurve(const std::vector<CupEvidence>& cups,
                         const std::string& colour,
                         const CurvePrior& population,
                         const BrandSpread& spread) {
  Grid start;
  Exponentiate(population.log_weight, start);
  std::map<std::string, std::vector<Grid>> colours;
  for (const CupEvidence& cup : cups) {
    FLOWKIN_CHECK(cup.log_likelihood.size() == start.size());
    Grid likelihood;
    Exponentiate(cup.log_likelihood, likelihood);
    colours[cup.colour].push_back(std::move(likelihood));
  }

  struct Choice {
    double log_evidence;
    Grid next;
  };
  std::vector<Choice> choices;
  for (std::size_t a = 0; a < spread.cup_sd.size(); ++a) {
    const Smoother by_cup(population, spread.cup_sd[a]);
    double cups_scale = 0.0;
    std::map<std::string, Grid> colour_likelihood;
    for (const auto& [name, grids] : colours) {
      Grid product(start.size(), 1.0);
      for (const Grid& grid : grids) {
        cups_scale += Multiply(product, by_cup(grid));
      }
      colour_likelihood[name] = std::move(product);
    }
    for (std::size_t b = 0; b < spread.colour_sd.size(); ++b) {
      const Smoother by_colour(population, spread.colour_sd[b]);
      double scale = cups_scale;
      // All of the brand but the asked colour; that one comes in one level
      // below, where it says more.
      Grid others = start;
      const Grid* own = nullptr;
      for (const auto& [name, likelihood] : colour_likelihood) {
        if (name == colour) {
          own = &likelihood;
          continue;
        }
        scale += Multiply(others, by_colour(likelihood));
      }
      Grid next = by_colour(others);
      if (own != nullptr) scale += Multiply(next, *own);
      const double evidence = Sum(next);
      next = by_cup(next);
      const double total = Sum(next);
      for (double& value : next) value /= total;
      choices.push_back({scale + std::log(evidence) +
                             std::log(spread.cup_weight[a]) +
                             std::log(spread.colour_weight[b]),
                         std::move(next)});
    }
  }

  double top = choices.front().log_evidence;
  for (const Choice& choice : choices) top = std::max(top, choice.log_evidence);
  double total = 0.0;
  Grid mixed(start.size(), 0.0);
  for (const Choice& choice : choices) {
    const double weight = std::exp(choice.log_evidence - top);
    total += weight;
    for (std::size_t k = 0; k < mixed.size(); ++k) {
      mixed[k] += weight * choice.next[k];
    }
  }
  const double start_sum = Sum(start);
  BrandCurve curve;
  curve.next_cup = population;
  for (std::size_t k = 0; k < mixed.size(); ++k) {
    curve.next_cup.log_weight[k] =
        std::log((1.0 - spread.stranger_chance) * mixed[k] / total +
                 spread.stranger_chance * start[k] / start_sum + 1e-300);
  }
  curve.next_cup_moments = MomentsOf(curve.next_cup);
  return curve;
}

BrandSpread BlendSpread() {
  BrandSpread spread;
  spread.colour_sd = {0.05, 0.25};
  spread.colour_weight = {0.6, 0.4};
  spread.cup_sd = {0.03, 0.12, 0.40};
  spread.cup_weight = {0.6, 0.3, 0.1};
  spread.stranger_chance = 0.02;
  return spread;
}

CurvePrior AtMeasuredLevel(const CurvePrior& learned,
                           const Estimate& ln_ratio) {
  FLOWKIN_CHECK(learned.kind == DilutionLaw::Kind::kBlend);
  FLOWKIN_CHECK(learned.first_count >= 2 && ln_ratio.sd > 0.0);
  CurvePrior prior = learned;
  prior.first_count = 29;
  prior.first_step = 0.25 * ln_ratio.sd;
  prior.first_low = ln_ratio.value - 14.0 * prior.first_step;
  prior.log_weight.clear();
  const std::size_t columns = learned.second.size();
  for (std::size_t i = 0; i < prior.first_count; ++i) {
    const double first =
        prior.first_low + prior.first_step * static_cast<double>(i);
    const double position =
        std::clamp((first - learned.first_low) / learned.first_step,
                   0.0,
                   static_cast<double>(learned.first_count - 1));
    const std::size_t row =
        std::min(static_cast<std::size_t>(position), learned.first_count - 2);
    const double part = position - static_cast<double>(row);
    const double* low = &learned.log_weight[row * columns];
    const double z = (first - ln_ratio.value) / ln_ratio.sd;
    for (std::size_t j = 0; j < columns; ++j) {
      prior.log_weight.push_back((1.0 - part) * low[j] +
                                 part * low[columns + j] - 0.5 * z * z);
    }
  }
  return prior;
}

CurveMoments MomentsOf(const CurvePrior& prior) {
  Grid grid;
  Exponentiate(prior.log_weight, grid);
  const double total = Sum(grid);
  CurveMoments m;
  const std::size_t columns = prior.second.size();
  const auto first = [&](std::size_t k) {
    const std::size_t row = k / columns;
    return prior.first_low + prior.first_step * static_cast<double>(row);
  };
  for (std::size_t k = 0; k < grid.size(); ++k) {
    grid[k] /= total;
    m.first += grid[k] * first(k);
    m.second += grid[k] * prior.second[k % columns];
  }
  for (std::size_t k = 0; k < grid.size(); ++k) {
    const double a = first(k) - m.first;
    const double b = prior.second[k % columns] - m.second;
    m.variance_first += grid[k] * a * a;
    m.covariance += grid[k] * a * b;
    m.variance_second += grid[k] * b * b;
  }
  return m;
}

CurvePrior PopulationPrior(const std::vector<Estimate>& brand_ln_slopes,
                           const CurvePrior& fallback) {
  if (brand_ln_slopes.empty()) return fallback;
  const CurveMoments base = MomentsOf(fallback);
  const double brands =
      kFallbackBrands + static_cast<double>(brand_ln_slopes.size());
  double mean = kFallbackBrands * base.first;
  for (const Estimate& slope : brand_ln_slopes) mean += slope.value;
  mean /= brands;
  double variance =
      kFallbackBrands *
      (base.variance_first + (base.first - mean) * (base.first - mean));
  for (const Estimate& slope : brand_ln_slopes) {
    const double off = slope.value - mean;
    variance += std::max(0.0, off * off - slope.sd * slope.sd);
  }
  variance /= brands;
  const double sd = std::max(kLeastBrandSpread, std::sqrt(variance));

  CurvePrior prior = fallback;
  Grid old;
  Exponentiate(fallback.log_weight, old);
  const std::size_t columns = fallback.second.size();
  Grid column(columns, 0.0);
  for (std::size_t k = 0; k < old.size(); ++k) column[k % columns] += old[k];
  Grid learned(old.size());
  for (std::size_t k = 0; k < old.size(); ++k) {
    const std::size_t row = k / columns;
    const double z = (fallback.first_low +
                      fallback.first_step * static_cast<double>(row) - mean) /
                     sd;
    learned[k] = std::exp(-0.5 * z * z) * column[k % columns];
  }
  const double old_sum = Sum(old);
  const double learned_sum = Sum(learned);
  for (std::size_t k = 0; k < old.size(); ++k) {
    prior.log_weight[k] =
        std::log((1.0 - kFallbackShare) * learned[k] / learned_sum +
                 kFallbackShare * old[k] / old_sum);
  }
  return prior;
}

}  // namespace flowkin
