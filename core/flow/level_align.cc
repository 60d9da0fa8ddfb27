#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>

#include "core/base/check.h"
#include "core/fit/least_squares.h"
#include "core/flow/level_test.h"
#include "core/track/relief_track.h"

namespace flowkin {
namespace {

constexpr int kKnots = 10;
constexpr int kLeastBins = 5;
/// Weight, in bins, of the expectation that curves scatter by half of the
/// least_misfit and least_floor of the options.
constexpr double kPriorBins = 10.0;
/// Errors of neighbouring knots are not independent: pictures are coded in
/// groups that last about 0.15 clocks, and knots are 0.13 apart, so errors keep
/// 0.4 of themselves from one to the next: (1 + 0.4) / (1 - 0.4) count as one.
constexpr double kKnotsPerError = 2.4;
/// Relief left when the flat picture was taken, as a share of the start,
/// shortens a clock by up to three times that share: 0.8 times in pools 6 mm
/// deep, 2.5 in 3 mm by the levelling law, 3 where highlights fade slower than
/// the relief. Only its difference between the curves matters, and all of that
/// is doubtful, because the tail beyond the window is a guess.
constexpr double kFlatShortens = 3.0;
/// How far that difference is followed: it depends on the very clocks that are
/// sought, and in full it would swell their scatter.
constexpr double kFlatTrust = 0.5;

double MedianOf(std::vector<double> v) {
  if (v.empty()) return 0.0;
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

/// ln of the shares of the start at which the times of the curves' falls are
/// compared, so that curves of unlike bend give themselves away.
constexpr std::array kFallLevels{-0.4, -1.0};

/// First time the curve has fallen to `level`, s; 0 if never.
double FallTime(const FlowCurve& c, double level) {
  for (std::size_t k = 1; k < c.t_s.size(); ++k) {
    if (c.value[k] > level) continue;
    const double drop = c.value[k - 1] - c.value[k];
    const double part = drop > 0.0 ? (c.value[k - 1] - level) / drop : 1.0;
    return c.t_s[k - 1] +
           std::clamp(part, 0.0, 1.0) * (c.t_s[k] - c.t_s[k - 1]);
  }
  return 0.0;
}

double SlopeOf(const std::vector<std::pair<int, double>>& values) {
  std::vector<double> x;
  std::vector<double> y;
  for (const auto& [place, value] : values) {
    x.push_back(place);
    y.push_back(value);
  }
  const FitResult line = FitLine(x, y);
  return line.IsUsable() ? line.parameters[1] : 0.0;
}

/// How much the slope of a curve's misfit differs between the halves of the
/// window, per clock; 0 if a half holds less than three knots.
double RateChange(const std::vector<std::pair<int, double>>& misfit,
                  double knot_width) {
  std::vector<std::pair<int, double>> early;
  std::vector<std::pair<int, double>> late;
  for (const auto& at : misfit) {
    (at.first < kKnots / 2 ? early : late).push_back(at);
  }
  if (early.size() < 3 || late.size() < 3) return 0.0;
  return (SlopeOf(late) - SlopeOf(early)) / knot_width;
}

/// Variance of RateChange where every knot errs by 1 on its own.
double RateVariance(double knot_width) {
  constexpr double kHalf = kKnots / 2.0;
  return 2.0 * 12.0 / (kHalf * (kHalf * kHalf - 1.0) * knot_width * knot_width);
}

/// Symmetric positive definite system by Cholesky; small and dense.
class Normal {
 public:
  explicit Normal(std::size_t n) : n_(n), a_(n * n, 0.0), b_(n, 0.0) {}

  void Add(const std::vector<std::pair<std::size_t, double>>& row,
           double y,
           double weight) {
    for (const auto& [i, vi] : row) {
      b_[i] += weight * vi * y;
      for (const auto& [j, vj] : row) a_[i * n_ + j] += weight * vi * vj;
    }
  }

  /// False if the matrix is not positive definite.
  bool Factor() {
    for (std::size_t j = 0; j < n_; ++j) {
      double d = a_[j * n_ + j];
      for (std::size_t k = 0; k < j; ++k) d -= a_[j * n_ + k] * a_[j * n_ + k];
      if (!(d > 0.0)) return false;
      const double root = std::sqrt(d);
      a_[j * n_ + j] = root;
      for (std::size_t i = j + 1; i < n_; ++i) {
        double s = a_[i * n_ + j];
        for (std::size_t k = 0; k < j; ++k) {
          s -= a_[i * n_ + k] * a_[j * n_ + k];
        }
        a_[i * n_ + j] = s / root;
      }
    }
    return true;
  }

  std::vector<double> Solve(std::vector<double> y) const {
    for (std::size_t i = 0; i < n_; ++i) {
      for (std::size_t k = 0; k < i; ++k) y[i] -= a_[i * n_ + k] * y[k];
      y[i] /= a_[i * n_ + i];
    }
    for (std::size_t i = n_; i-- > 0;) {
      for (std::size_t k = i + 1; k < n_; ++k) y[i] -= a_[k * n_ + i] * y[k];
      y[i] /= a_[i * n_ + i];
    }
    return y;
  }
  std::vector<double> Solution() const { return Solve(b_); }
  /// Diagonal element of the inverse.
  double Variance(std::size_t i) const {
    std::vector<double> unit(n_, 0.0);
    unit[i] = 1.0;
    return Solve(unit)[i];
  }

 private:
  std::size_t n_;
  std::vector<double> a_, b_;
};

/// Mean of a curve's ln(relief) over one knot's neighbourhood.
struct Bin {
  std::size_t curve = 0;
  int knot = 0;
  double x = 0.0;
  double y = 0.0;
  double var = 0.0;
};

}  // namespace

Result<void> DecayAlignmentOptions::Validate() const {
  if (!(from > 0.0 && to > from + 0.2 && to < 5.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "the window of the alignment is empty or reaches too far"};
  }
  if (!(start_sd > 0.0 && bend_sd > 0.0 && least_misfit > 0.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "spreads of the alignment must be positive"};
  }
  return {};
}

DecayAlignment AlignDecays(const std::vector<FlowCurve>& curves,
                           const DecayAlignmentOptions& options) {
  FLOWKIN_CHECK(options.Validate().has_value());
  const std::size_t n = curves.size();
  DecayAlignment result;
  result.ln_clock.resize(n);
  for (auto& e : result.ln_clock) {
    e.sd = std::numeric_limits<double>::infinity();
  }
  std::vector<std::size_t> used;
  std::vector<double> ln_clock(n, 0.0);
  std::vector<double> start(n, 1.0);
  std::vector<double> step_s(n, 0.0);
  for (std::size_t i = 0; i < n; ++i) {
    const FlowCurve& c = curves[i];
    FLOWKIN_CHECK(c.t_s.size() == c.value.size() &&
                  c.t_s.size() == c.sd.size());
    const double fall =
        c.t_s.empty() ? 0.0 : ReliefDecayTime(c.t_s, c.value, c.t_s.back());
    if (!(fall > 0.0)) continue;
    ln_clock[i] = std::log(fall);
    start[i] = MedianOf({c.value[0], c.value[1], c.value[2]});
    std::vector<double> steps;
    for (std::size_t k = 1; k < c.t_s.size(); ++k) {
      steps.push_back(c.t_s[k] - c.t_s[k - 1]);
    }
    step_s[i] = MedianOf(steps);
    used.push_back(i);
  }
  if (used.empty()) return result;

  const double width = (options.to - options.from) / (kKnots - 1);
  const auto knot_x = [&](int k) { return options.from + width * k; };
  // A start for the shape: one exponential.
  std::vector<double> shape(kKnots);
  for (int k = 0; k < kKnots; ++k) {
    shape[static_cast<std::size_t>(k)] = -knot_x(k);
  }
  const auto slope = [&](int k) {
    const int a = std::max(0, k - 1);
    const int b = std::min(kKnots - 1, k + 1);
    const double s = (shape[static_cast<std::size_t>(b)] -
                      shape[static_cast<std::size_t>(a)]) /
                     (width * (b - a));
    return std::min(s, -0.05);  // relief only falls
  };

  // What relief was left, on average over the curves, when their flat pictures
  // were taken. `shape` is short of that much, like the curves.
  double mean_left = 0.0;
  // Relief beyond the window: it goes on at the rate of its later half.
  const auto late_relief = [&](double x) {
    constexpr int kFrom = kKnots / 2;
    const double last = std::log(std::exp(shape[kKnots - 1]) + mean_left);
    const double rate = (last - std::log(std::exp(shape[kFrom]) + mean_left)) /
                        (width * (kKnots - 1 - kFrom));
    const double held = std::min(rate, -0.3);
    const double value = std::exp(last + held * (x - options.to));
    return std::pair(value, held * value);  // and its slope
  };

  double scale2 = 0.5;
  std::vector<std::vector<std::pair<int, double>>> misfit(n);  // knot, ln
  std::vector<double> knot_var(n, 0.0);  // sum over a curve's knots
  std::vector<double> contrast(n, 1.0);
  std::vector<double> left(n, 0.0);
  std::vector<double> pull(n, 0.0);  // d(lost) / d(ln clock)
  std::vector<double> variance(n, 0.0);
  double dof = 1.0;
  for (int pass = 0; pass < 40; ++pass) {
    if (pass > 1) {
      double sum = 0.0;
      for (std::size_t i : used) {
        const double x = curves[i].t_s.back() / std::exp(ln_clock[i]);
        const auto late = late_relief(x);
        left[i] = std::min(0.3, late.first);
        pull[i] = -kFlatTrust * contrast[i] * x * late.second;
        sum += left[i];
      }
      mean_left = sum / static_cast<double>(used.size());
    }
    // Bins at the knots, every curve by its own clock.
    std::vector<Bin> bins;
    std::vector<int> bins_of(n, 0);
    for (std::size_t i : used) {
      const FlowCurve& c = curves[i];
      const double clock = std::exp(ln_clock[i]);
      const double lost = kFlatTrust * contrast[i] * (left[i] - mean_left);
      for (int k = 0; k < kKnots; ++k) {
        const double lo = (knot_x(k) - 0.5 * width) * clock;
        const double hi = (knot_x(k) + 0.5 * width) * clock;
        std::vector<double> y;
        std::vector<double> var;
        for (std::size_t j = 0; j < c.t_s.size(); ++j) {
          // Fast decays: the nearest pictures on both sides stand in.
          const double reach = std::max(0.0, step_s[i] - (hi - lo)) * 0.5;
          if (c.t_s[j] < lo - reach || c.t_s[j] >= hi + reach) continue;
          const double v = c.value[j] / start[i] + lost;
          const double sd = c.sd[j] / start[i];
          if (!(v > 2.0 * sd) || v < 0.01) continue;
          // Moved along the shape to the knot.
          y.push_back(std::log(v) - slope(k) * (c.t_s[j] / clock - knot_x(k)));
          var.push_back(sd * sd / (v * v));
        }
        if (y.empty() || c.t_s.back() < knot_x(k) * clock) continue;
        // One odd picture must not count: clip at three robust deviations.
        const double mid = MedianOf(y);
        std::vector<double> dev;
        for (double v : y) dev.push_back(std::abs(v - mid));
        const double robust = 1.4826 * MedianOf(dev);
        const double n_y = static_cast<double>(y.size());
        double sum = 0.0;
        for (double v : y) {
          sum += y.size() < 4
                     ? v
                     : std::clamp(v, mid - 3.0 * robust, mid + 3.0 * robust);
        }
        const double mean_var =
            std::accumulate(var.begin(), var.end(), 0.0) / n_y;
        bins.push_back(
            {i,
             k,
             knot_x(k),
             sum / n_y,
             std::max(mean_var, robust * robust) / n_y +
                 options.least_misfit * options.least_misfit +
                 std::pow(options.least_floor * std::exp(-sum / n_y), 2)});
        ++bins_of[i];
      }
    }
    std::vector<std::size_t> kept;
    for (std::size_t i : used) {
      if (bins_of[i] >= kLeastBins) kept.push_back(i);
    }
    used = kept;
    if (used.empty()) return result;

    // Unknowns: shape, then per curve contrast, clock, laying time.
    const std::size_t m = used.size();
    std::vector<std::size_t> place(n, 0);
    for (std::size_t q = 0; q < m; ++q) place[used[q]] = q;
    const std::size_t total = kKnots + 3 * m;
    Normal normal(total);
    double data = 0.0;
    for (const Bin& b : bins) {
      if (bins_of[b.curve] < kLeastBins) continue;
      const std::size_t at = kKnots + 3 * place[b.curve];
      const double s = slope(b.knot);
      normal.Add({{static_cast<std::size_t>(b.knot), 1.0},
                  {at, 1.0},
                  {at + 1, -b.x * s - pull[b.curve] * std::exp(-b.y)},
                  {at + 2, -s / std::exp(ln_clock[b.curve])}},
                 b.y,
                 1.0 / (b.var * scale2));
      data += 1.0;
    }
    for (std::size_t k = 0; k + 2 < kKnots; ++k) {
      normal.Add({{k, 1.0}, {k + 1, -2.0}, {k + 2, 1.0}},
                 0.0,
                 1.0 / (options.bend_sd * options.bend_sd));
    }
    std::vector<std::pair<std::size_t, double>> gauge;
    for (std::size_t q = 0; q < m; ++q) {
      const std::size_t at = kKnots + 3 * q;
      normal.Add({{at, 1.0}}, 0.0, 1.0 / (options.start_sd * options.start_sd));
      const double late = 0.3 * step_s[used[q]];
      normal.Add({{at + 2, 1.0}}, 0.0, 1.0 / (late * late));
      gauge.emplace_back(at + 1, 1.0);
    }
    // The mean of the clocks cannot be told from the shape's own scale.
    normal.Add(gauge, 0.0, 1e6);
    if (!normal.Factor()) return result;
    const std::vector<double> p = normal.Solution();
    double chi2 = 0.0;
    double square = 0.0;
    for (auto& each : misfit) each.clear();
    std::fill(knot_var.begin(), knot_var.end(), 0.0);
    for (const Bin& b : bins) {
      if (bins_of[b.curve] < kLeastBins) continue;
      const std::size_t at = kKnots + 3 * place[b.curve];
      const double s = slope(b.knot);
      const double r = b.y - p[static_cast<std::size_t>(b.knot)] - p[at] +
                       (b.x * s + pull[b.curve] * std::exp(-b.y)) * p[at + 1] +
                       s / std::exp(ln_clock[b.curve]) * p[at + 2];
      chi2 += r * r / b.var;
      square += r * r;
      misfit[b.curve].emplace_back(b.knot, r);
      knot_var[b.curve] += b.var;
    }
    // The shape takes about half its knots from the data, a curve its clock
    // and most of its contrast.
    dof = std::max(1.0, data - 0.5 * kKnots - 2.0 * static_cast<double>(m));
    result.misfit = std::sqrt(square / data);
    // The scatter itself is known from few bins: held by what is assumed.
    scale2 = (chi2 + kPriorBins * 0.25) / (dof + kPriorBins);
    result.misfit_ratio = std::sqrt(scale2);
    std::copy_n(p.begin(), kKnots, shape.begin());
    double largest = 0.0;
    for (std::size_t q = 0; q < m; ++q) {
      const double d = std::clamp(p[kKnots + 3 * q + 1], -0.3, 0.3);
      largest = std::max(largest, std::abs(d));
      ln_clock[used[q]] += 0.8 * d;
      contrast[used[q]] = std::exp(std::clamp(p[kKnots + 3 * q], -0.5, 0.5));
      variance[used[q]] = normal.Variance(kKnots + 3 * q + 1);
    }
    if (largest < 1e-4 && pass > 5) break;
  }
  const double m = static_cast<double>(used.size());
  // A dark paint shows the lamp's mirror image, a pale one its own shade; where
  // these fade by different laws no stretch lays one curve over the other. Then
  // the times of the falls and the clock, which is free of the start, disagree,
  // and that much of the ratio is doubtful.
  std::vector<double> other_law(n, 0.0);
  for (const double level : kFallLevels) {
    std::vector<double> unlike(n, 0.0);
    std::vector<std::size_t> fallen;
    double mean_unlike = 0.0;
    for (std::size_t i : used) {
      const double fall = FallTime(curves[i], start[i] * std::exp(level));
      if (!(fall > 0.0)) continue;
      unlike[i] = std::log(fall) - ln_clock[i];
      mean_unlike += unlike[i];
      fallen.push_back(i);
    }
    mean_unlike /= std::max(1.0, static_cast<double>(fallen.size()));
    for (std::size_t i : fallen) {
      const double apart = (unlike[i] - mean_unlike) * std::sqrt(0.5 * m);
      // Highlights that saturate at the start explain some of it, and so does
      // the time between two pictures.
      const double saturated = options.start_sd / level;
      const double late = 0.5 * step_s[i] / std::exp(unlike[i] + ln_clock[i]);
      const double rest = apart * apart - saturated * saturated - late * late;
      other_law[i] = std::max(other_law[i], std::sqrt(std::max(0.0, rest)));
    }
  }
  // Nor do their rates keep one ratio: how far it is off in the first and in
  // the second half of the window, the clock may be off. Only what exceeds
  // twice the noise's own part is another law.
  for (std::size_t i : used) {
    const double bend = RateChange(misfit[i], width) * std::sqrt(0.5 * m);
    const double one_knot =
        scale2 * knot_var[i] /
        std::max(1.0, static_cast<double>(misfit[i].size()));
    const double noise2 =
        2.0 * 0.25 * kKnotsPerError * RateVariance(width) * one_knot;
    other_law[i] = std::max(
        other_law[i], std::sqrt(std::max(0.0, 0.25 * bend * bend - noise2)));
  }
  for (std::size_t i : used) {
    result.ln_clock[i].value = ln_clock[i];
    // The tail's shape is common to all: repeats do not average this out.
    const double cut_short =
        kFlatShortens * (left[i] - mean_left) * std::sqrt(0.5 * m);
    result.ln_clock[i].sd = std::sqrt(
        kKnotsPerError * variance[i] * (m > 1.0 ? m / (m - 1.0) : 1.0) +
        cut_short * cut_short + other_law[i] * other_law[i] +
        curves[i].stretch_sd * curves[i].stretch_sd);
    result.ln_clock[i].degrees_of_freedom = (dof + kPriorBins) / kKnotsPerError;
  }
  for (int k = 0; k < kKnots; ++k) {
    result.shape_x.push_back(knot_x(k));
    result.shape_ln_relief.push_back(shape[static_cast<std::size_t>(k)]);
  }
  return result;
}

}  // namespace flowkin
