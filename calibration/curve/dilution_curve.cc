#include "calibration/curve/dilution_curve.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kLogTwoPi = 1.8378770664093454;
constexpr std::size_t kMostTestsForPairs = 40;
// Lighter than the heaviest by this factor: not even looked at.
constexpr double kLightest = 1e-7;
// Probability that may be dropped from a belief; chances are wanted to 1e-4.
constexpr double kNegligible = 1e-5;
constexpr std::size_t kFineCount = 33;

/// One test as seen by a cell.
struct Sighting {
  double u, level, variance, spoilt_variance;
  double log_in, log_out;  // ln(prior chance) - ln(sd) - ln(2 pi)/2
};

/// An assumption on which tests are spoilt, in one cell.
struct Component {
  double log_weight;
  double start_level;
  double start_level_sd;
  int spoilt_a;  // index of a test, or -1
  int spoilt_b;
};

std::vector<Sighting> Prepare(const std::vector<DilutionTest>& tests,
                              const CurveOptions& options,
                              double exponent) {
  std::vector<Sighting> sightings;
  sightings.reserve(tests.size());
  for (const DilutionTest& test : tests) {
    const double own =
        std::max(options.least_rel_sd * options.least_rel_sd,
                 test.rel_sd * test.rel_sd -
                     options.common_rel_sd * options.common_rel_sd);
    Sighting s{};
    s.u = test.u;
    s.level = test.ln_ratio / exponent;
    s.variance = own / (exponent * exponent);
    s.spoilt_variance =
        (own + options.outlier_sd * options.outlier_sd) / (exponent * exponent);
    // The density is that of the measured number, hence ln(exponent).
    s.log_in = std::log1p(-options.outlier_chance) -
               0.5 * (kLogTwoPi + std::log(s.variance)) - std::log(exponent);
    s.log_out = std::log(options.outlier_chance) -
                0.5 * (kLogTwoPi + std::log(s.spoilt_variance)) -
                std::log(exponent);
    sightings.push_back(s);
  }
  return sightings;
}

class CellSolver {
 public:
  CellSolver(const std::vector<Sighting>& sightings, const Estimate& start)
      : sightings_(sightings),
        start_(start),
        residual_(sightings.size()),
        sensitivity_(sightings.size()) {
    starts_.reserve(sightings.size());
  }

  /// Fills `out` with the cell's components and returns ln of their sum.
  double Solve(const DilutionLaw& law, std::vector<Component>& out) {
    const double centre = MostLikelyStart(law);
    Evaluate(law, centre);
    const std::size_t n = sightings_.size();
    const double prior_precision = 1.0 / (start_.sd * start_.sd);
    const double prior_offset = start_.value - centre;
    Sums all{prior_precision,
             prior_offset * prior_precision,
             prior_offset * prior_offset * prior_precision,
             -0.5 * std::log(1.0 / prior_precision)};
    for (std::size_t i = 0; i < n; ++i) {
      Add(all, i, sightings_[i].variance, 1.0, sightings_[i].log_in);
    }
    out.clear();
    Emit(all, centre, -1, -1, out);
    const bool pairs = n <= kMostTestsForPairs;
    for (std::size_t i = 0; i < n; ++i) {
      const Sums one = Spoil(all, i);
      Emit(one, centre, static_cast<int>(i), -1, out);
      for (std::size_t j = i + 1; pairs && j < n; ++j) {
        Emit(Spoil(one, j),
             centre,
             static_cast<int>(i),
             static_cast<int>(j),
             out);
      }
    }
    double top = -std::numeric_limits<double>::infinity();
    for (const Component& c : out) top = std::max(top, c.log_weight);
    double sum = 0.0;
    for (const Component& c : out) sum += std::exp(c.log_weight - top);
    return top + std::log(sum);
  }

 private:
  struct Sums {
    double precision, weighted, square, log_density;
  };

  void Add(Sums& sums,
           std::size_t i,
           double variance,
           double sign,
           double log_density) const {
    const double w = sign / variance;
    sums.precision += w * sensitivity_[i] * sensitivity_[i];
    sums.weighted += w * sensitivity_[i] * residual_[i];
    sums.square += w * residual_[i] * residual_[i];
    sums.log_density += sign * log_density;
  }

  Sums Spoil(Sums sums, std::size_t i) const {
    const Sighting& s = sightings_[i];
    Add(sums, i, s.variance, -1.0, s.log_in);
    Add(sums, i, s.spoilt_variance, 1.0, s.log_out);
    return sums;
  }

  static void Emit(const Sums& sums,
                   double centre,
                   int a,
                   int b,
                   std::vector<Component>& out) {
    const double offset = sums.weighted / sums.precision;
    out.push_back({sums.log_density - 0.5 * std::log(sums.precision) -
                       0.5 * (sums.square - offset * sums.weighted),
                   centre + offset,
                   1.0 / std::sqrt(sums.precision),
                   a,
                   b});
  }

  void Evaluate(const DilutionLaw& law, double start) {
    for (std::size_t i = 0; i < sightings_.size(); ++i) {
      residual_[i] =
          sightings_[i].level - LevelAfter(law, start, sightings_[i].u);
      sensitivity_[i] = LevelSensitivity(law, start, sightings_[i].u);
    }
  }

  /// A few steps of iteratively reweighted least squares from the median of
  /// what each test alone would say.
  double MostLikelyStart(const DilutionLaw& law) {
    starts_.clear();
    for (const Sighting& s : sightings_) {
      const double start = StartLevelFor(law, s.level, s.u);
      if (std::isfinite(start)) starts_.push_back(start);
    }
    double start = start_.value;
    if (!starts_.empty()) {
      const auto middle =
          starts_.begin() + static_cast<std::ptrdiff_t>(starts_.size() / 2);
      std::nth_element(starts_.begin(), middle, starts_.end());
      start = *middle;
    }
    for (int pass = 0; pass < 6; ++pass) {
      Evaluate(law, start);
      double precision = 1.0 / (start_.sd * start_.sd);
      double weighted = (start_.value - start) * precision;
      for (std::size_t i = 0; i < sightings_.size(); ++i) {
        const Sighting& s = sightings_[i];
        const double square = residual_[i] * residual_[i];
        const double in = s.log_in - 0.5 * square / s.variance;
        const double out = s.log_out - 0.5 * square / s.spoilt_variance;
        const double spoilt = 1.0 / (1.0 + std::exp(in - out));
        const double w =
            (1.0 - spoilt) / s.variance + spoilt / s.spoilt_variance;
        precision += w * sensitivity_[i] * sensitivity_[i];
        weighted += w * sensitivity_[i] * residual_[i];
      }
      const double step = weighted / precision;
      start += std::clamp(step, -1.0, 1.0);
      if (std::abs(step) < 1e-5) break;
    }
    return start;
  }

  const std::vector<Sighting>& sightings_;
  Estimate start_;
  std::vector<double> residual_;
  std::vector<double> sensitivity_;
  std::vector<double> starts_;
};

/// The prior seen through a finer or narrower first axis.
struct Axis {
  double low, step;
  std::size_t count;
};

double InterpolatedLogWeight(const CurvePrior& prior,
                             double first,
                             std::size_t j) {
  const std::size_t m = prior.second.size();
  const double position =
      std::clamp((first - prior.first_low) / prior.first_step,
                 0.0,
                 static_cast<double>(prior.first_count - 1));
  const std::size_t i =
      std::min(static_cast<std::size_t>(position),
               prior.first_count >= 2 ? prior.first_count - 2 : 0);
  const double part = position - static_cast<double>(i);
  const double low = prior.log_weight[i * m + j];
  if (prior.first_count < 2) return low;
  return low + part * (prior.log_weight[(i + 1) * m + j] - low);
}

/// Points and weights for the time exponent: three points of the normal
/// distribution with its mean and variance (Gauss-Hermite, M. Abramowitz and
/// I. A. Stegun 1964, 25.4.46), kept positive.
struct ExponentPoint {
  double value, weight;
};
std::vector<ExponentPoint> ExponentPoints(const Estimate& exponent) {
  if (exponent.sd <= 0.0) return {{exponent.value, 1.0}};
  const double off = std::sqrt(3.0) * exponent.sd / exponent.value;
  // Spread in the logarithm, so that no point can turn negative.
  return {{exponent.value * std::exp(-off), 1.0 / 6.0},
          {exponent.value, 2.0 / 3.0},
          {exponent.value * std::exp(off), 1.0 / 6.0}};
}

struct WeightedComponent {
  Component component;
  DilutionLaw law;
  double first, second;
};

class GridPass {
 public:
  GridPass(const std::vector<DilutionTest>& tests,
           const CurvePrior& prior,
           const CurveOptions& options)
      : prior_(prior), points_(ExponentPoints(options.time_exponent)) {
    for (const ExponentPoint& point : points_) {
      sightings_.push_back(Prepare(tests, options, point.value));
    }
  }

  void Run(const Axis& axis) {
    kept_.clear();
    marginal_.assign(axis.count, -std::numeric_limits<double>::infinity());
    double top = -std::numeric_limits<double>::infinity();
    for (std::size_t p = 0; p < points_.size(); ++p) {
      CellSolver solver(sightings_[p], prior_.start_level);
      for (std::size_t i = 0; i < axis.count; ++i) {
        const double first = axis.low + axis.step * static_cast<double>(i);
        for (std::size_t j = 0; j < prior_.second.size(); ++j) {
          const double log_prior = InterpolatedLogWeight(prior_, first, j) +
                                   std::log(points_[p].weight);
          if (!std::isfinite(log_prior)) continue;
          const DilutionLaw law = prior_.Law(first, prior_.second[j]);
          const double log_sum = solver.Solve(law, scratch_) + log_prior;
          marginal_[i] = std::max(marginal_[i], log_sum);
          top = std::max(top, log_sum);
          if (log_sum < top + std::log(kLightest)) continue;
          for (Component c : scratch_) {
            c.log_weight += log_prior;
            if (c.log_weight < top + std::log(kLightest)) continue;
            kept_.push_back({c, law, first, prior_.second[j]});
          }
        }
      }
    }
    top_ = top;
  }

  /// The part of the axis that still matters.
  Axis Narrowed(const Axis& axis) const {
    std::size_t low = axis.count;
    std::size_t high = 0;
    for (std::size_t i = 0; i < axis.count; ++i) {
      if (marginal_[i] < top_ + std::log(kLightest)) continue;
      low = std::min(low, i);
      high = i;
    }
    if (low > 0) --low;
    high = std::min(high + 1, axis.count - 1);
    Axis fine = axis;
    fine.low = axis.low + axis.step * static_cast<double>(low);
    fine.count = kFineCount;
    fine.step = axis.step * static_cast<double>(high - low) /
                static_cast<double>(kFineCount - 1);
    return fine;
  }

  const std::vector<WeightedComponent>& kept() const { return kept_; }
  double top() const { return top_; }

 private:
  const CurvePrior& prior_;
  std::vector<ExponentPoint> points_;
  std::vector<std::vector<Sighting>> sightings_;
  std::vector<Component> scratch_;
  std::vector<WeightedComponent> kept_;
  std::vector<double> marginal_;
  double top_ = 0.0;
};

/// The least weight to keep so that what is dropped sums to `negligible`.
double Lightest(std::vector<double> weights, double negligible) {
  std::sort(weights.begin(), weights.end());
  double dropped = 0.0;
  for (const double weight : weights) {
    dropped += weight;
    if (dropped > negligible) return weight;
  }
  return weights.back();
}

void CheckPrior(const CurvePrior& prior) {
  FLOWKIN_CHECK(prior.first_count > 0 && !prior.second.empty());
  FLOWKIN_CHECK(prior.first_step > 0.0);
  FLOWKIN_CHECK(prior.log_weight.size() ==
                prior.first_count * prior.second.size());
}

}  // namespace

DilutionLaw CurvePrior::Law(double first, double second_value) const {
  DilutionLaw law;
  law.kind = kind;
  law.first = kind == DilutionLaw::Kind::kWater ? std::exp(first) : first;
  law.second = second_value;
  return law;
}

DilutionCurve FitDilutionCurve(const std::vector<DilutionTest>& tests,
                               const CurvePrior& prior,
                               const CurveOptions& options) {
  FLOWKIN_CHECK(!tests.empty());
  CheckPrior(prior);
  GridPass pass(tests, prior, options);
  const Axis axis{prior.first_low, prior.first_step, prior.first_count};
  pass.Run(axis);
  const Axis fine = pass.Narrowed(axis);
  if (fine.step < 0.8 * axis.step) pass.Run(fine);

  DilutionCurve curve;
  curve.outlier_chance.assign(tests.size(), 0.0);
  curve.belief.u_now = tests.back().u;
  curve.belief.pour_rel_sd = options.pour_rel_sd;
  double total = 0.0;
  std::vector<double> weights;
  weights.reserve(pass.kept().size());
  for (const WeightedComponent& k : pass.kept()) {
    weights.push_back(std::exp(k.component.log_weight - pass.top()));
    total += weights.back();
  }
  FLOWKIN_CHECK(total > 0.0);
  const double lightest = Lightest(weights, kNegligible * total);
  total = 0.0;
  for (const double weight : weights) {
    if (weight >= lightest) total += weight;
  }
  CurveMoments& m = curve.moments;
  for (const bool second_pass : {false, true}) {
    for (std::size_t i = 0; i < weights.size(); ++i) {
      if (weights[i] < lightest) continue;
      const WeightedComponent& k = pass.kept()[i];
      const double share = weights[i] / total;
      if (second_pass) {
        const double first = k.first - m.first;
        const double second = k.second - m.second;
        m.variance_first += share * first * first;
        m.covariance += share * first * second;
        m.variance_second += share * second * second;
        continue;
      }
      curve.belief.parts.push_back(
          {share,
           k.law,
           k.component.start_level,
           std::hypot(k.component.start_level_sd, options.common_rel_sd)});
      m.first += share * k.first;
      m.second += share * k.second;
      for (const int spoilt : {k.component.spoilt_a, k.component.spoilt_b}) {
        if (spoilt >= 0) {
          curve.outlier_chance[static_cast<std::size_t>(spoilt)] += share;
        }
      }
    }
  }
  return curve;
}

std::vector<double> LogLikelihood(const std::vector<DilutionTest>& tests,
                                  const CurvePrior& prior,
                                  const CurveOptions& options) {
  FLOWKIN_CHECK(!tests.empty());
  CheckPrior(prior);
  const std::vector<Sighting> sightings =
      Prepare(tests, options, options.time_exponent.value);
  CellSolver solver(sightings, prior.start_level);
  std::vector<Component> scratch;
  std::vector<double> log_likelihood;
  log_likelihood.reserve(prior.log_weight.size());
  for (std::size_t i = 0; i < prior.first_count; ++i) {
    const double first =
        prior.first_low + prior.first_step * static_cast<double>(i);
    for (const double second : prior.second) {
      log_likelihood.push_back(solver.Solve(prior.Law(first, second), scratch));
    }
  }
  return log_likelihood;
}

}  // namespace flowkin
