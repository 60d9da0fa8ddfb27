#include "core/fit/least_squares.h"

#include <Eigen/Core>
#include <Eigen/QR>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include "core/base/check.h"
#include "core/base/distributions.h"
#include "core/fit/robust.h"

namespace flowkin {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double kEpsilon = std::numeric_limits<double>::epsilon();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

// Cosine of the angle between the residuals and the model's tangents below
// which a stop counts as a minimum. Rounding in differenced Jacobians leaves
// about 1e-9; a stop on a slope shows 1e-3 or more.
constexpr double kFlatCosine = 1e-5;
// Residuals this small against the data are rounding: the fit is exact.
constexpr double kExactFit = 1e-12;
// Columns of the scaled Jacobian more dependent than this are not told apart.
constexpr double kRankTolerance = 1e-13;
// Iterations of Huber's scale and of its reweighting in the linear fit.
constexpr int kMaxReweightings = 100;

std::span<double> Span(VectorXd& v) {
  return {v.data(), static_cast<std::size_t>(v.size())};
}
std::span<const double> ConstSpan(const VectorXd& v) {
  return {v.data(), static_cast<std::size_t>(v.size())};
}
std::span<double> Span(MatrixXd& m) {
  return {m.data(), static_cast<std::size_t>(m.size())};
}
VectorXd ToVector(std::span<const double> values) {
  return Eigen::Map<const VectorXd>(values.data(),
                                    static_cast<Index>(values.size()));
}

bool AllFinite(std::span<const double> values) {
  return std::all_of(
      values.begin(), values.end(), [](double v) { return std::isfinite(v); });
}

/// Data problems that no fit can answer; nothing if all is well.
std::optional<std::string> FindBadData(std::span<const double> observed,
                                       std::span<const double> sd) {
  if (!AllFinite(observed)) return "the data hold a value that is not finite";
  for (double s : sd) {
    if (!(s > 0.0) || !std::isfinite(s)) {
      return "a standard deviation is not a positive number";
    }
  }
  return std::nullopt;
}

double HuberWeight(double residual, double threshold) {
  const double size = std::abs(residual);
  return size <= threshold ? 1.0 : threshold / size;
}

/// Half the sum of Huber's loss; plain half sum of squares at infinity.
double Cost(const VectorXd& residuals, double threshold) {
  if (std::isinf(threshold)) return 0.5 * residuals.squaredNorm();
  double sum = 0.0;
  for (double r : residuals) {
    const double size = std::abs(r);
    sum +=
        size <= threshold ? 0.5 * r * r : threshold * (size - 0.5 * threshold);
  }
  return sum;
}

/// Residual scale that outliers do not move: 1.4826 times the median absolute
/// residual, times sqrt(n / dof) because fitting has shrunk the residuals.
double RobustResidualScale(const VectorXd& residuals, Index dof) {
  std::vector<double> sizes(static_cast<std::size_t>(residuals.size()));
  for (Index i = 0; i < residuals.size(); ++i) {
    sizes[static_cast<std::size_t>(i)] = std::abs(residuals[i]);
  }
  const double n = static_cast<double>(residuals.size());
  return 1.482602218505602 * Median(sizes) *
         std::sqrt(n / static_cast<double>(std::max<Index>(dof, 1)));
}

/// The weighted problem: residual r_i = (f_i - y_i) / sd_i.
class Problem {
 public:
  Problem(const CurveModel& model,
          std::span<const double> observed,
          std::span<const double> sd,
          const FitOptions& options)
      : model_(model),
        observed_(ToVector(observed)),
        weight_(VectorXd::Ones(observed_.size())),
        options_(options) {
    if (!sd.empty()) weight_ = ToVector(sd).cwiseInverse();
  }

  Index num_values() const { return observed_.size(); }
  double WeightedDataNorm() const {
    return observed_.cwiseProduct(weight_).norm();
  }

  bool Residuals(const VectorXd& parameters, VectorXd& residuals) const {
    residuals.resize(num_values());
    model_.values(ConstSpan(parameters), Span(residuals));
    residuals = (residuals - observed_).cwiseProduct(weight_);
    return residuals.allFinite();
  }

  bool Jacobian(const VectorXd& parameters, MatrixXd& jacobian) {
    const Index p = parameters.size();
    if (model_.jacobian) {
      jacobian.resize(num_values(), p);
      model_.jacobian(ConstSpan(parameters), Span(jacobian));
      jacobian.array().colwise() *= weight_.array();
      return jacobian.allFinite();
    }
    if (jacobian.rows() != num_values() || jacobian.cols() != p) {
      jacobian = MatrixXd::Zero(num_values(), p);
    }
    VectorXd x = parameters, above, below;
    for (Index j = 0; j < p; ++j) {
      const double center = parameters[j];
      // A parameter near zero still needs a step that moves the model: one
      // in its own scale, taken from the last Jacobian.
      const double norm = jacobian.col(j).norm();
      double scale = std::abs(center);
      if (norm > 0.0) {
        scale = std::max(scale, 1e-3 * WeightedDataNorm() / norm);
      }
      if (!(scale > 0.0) || !std::isfinite(scale)) scale = 1.0;
      double step = std::cbrt(kEpsilon) * scale;
      bool done = false;
      for (int attempt = 0; attempt < 8 && !done; ++attempt, step *= 0.1) {
        const double high = std::min(center + step, Upper(j));
        const double low = std::max(center - step, Lower(j));
        x[j] = high;
        const bool above_ok = high > low && Residuals(x, above);
        x[j] = low;
        done = above_ok && Residuals(x, below);
        if (done) jacobian.col(j) = (above - below) / (high - low);
      }
      x[j] = center;
      if (!done) return false;
    }
    return jacobian.allFinite();
  }

  double Lower(Index j) const {
    return options_.lower.empty() ? -kInfinity
                                  : options_.lower[static_cast<std::size_t>(j)];
  }
  double Upper(Index j) const {
    return options_.upper.empty() ? kInfinity
                                  : options_.upper[static_cast<std::size_t>(j)];
  }
  VectorXd Clamp(VectorXd x) const {
    for (Index j = 0; j < x.size(); ++j) {
      x[j] = std::clamp(x[j], Lower(j), Upper(j));
    }
    return x;
  }

 private:
  const CurveModel& model_;
  VectorXd observed_;
  VectorXd weight_;
  const FitOptions& options_;
};

/// Least squares [R; sqrt(damping) diag(scale)] step = [-reduced; 0], where Q R
/// is the Jacobian and `reduced` the leading part of Q^T residuals. Solved in
/// scaled parameters, whatever their units.
VectorXd DampedStep(const MatrixXd& r_factor,
                    const VectorXd& reduced,
                    const VectorXd& scale,
                    double damping) {
  const Index p = r_factor.cols();
  MatrixXd stacked = MatrixXd::Zero(2 * p, p);
  stacked.topRows(p) = r_factor * scale.cwiseInverse().asDiagonal();
  stacked.bottomRows(p).diagonal().setConstant(std::sqrt(damping));
  VectorXd rhs = VectorXd::Zero(2 * p);
  rhs.head(p) = -reduced;
  return stacked.householderQr().solve(rhs).cwiseQuotient(scale);
}

struct Minimum {
  VectorXd parameters;
  VectorXd residuals;
  MatrixXd jacobian;
  std::vector<Index> free;
  Termination termination = Termination::kMaxIterations;
  int num_iterations = 0;
};

/// Whether a step ended where some parameter no longer moves the model at all,
/// not even by all its size, though it did before: such a long step went past
/// the data (a decay faster than the first sample, say) and cannot be undone.
bool FellOnPlateau(const Minimum& before,
                   const VectorXd& trial,
                   const MatrixXd& trial_jacobian,
                   double data_norm) {
  for (Index j : before.free) {
    const double norm = trial_jacobian.col(j).norm();
    const double size =
        std::max(std::abs(trial[j]), std::abs(before.parameters[j]));
    if (norm <= 1e-10 * before.jacobian.col(j).norm() &&
        norm * size <= kEpsilon * data_norm) {
      return true;
    }
  }
  return false;
}

/// Levenberg-Marquardt with Marquardt's scaling and Nielsen's damping rule
/// (K. Madsen, H. B. Nielsen, O. Tingleff 2004, Methods for non-linear least
/// squares problems). Bounds: a parameter on its bound that the slope pushes
/// outwards is held; other steps are clipped to the box.
Minimum Minimise(Problem& problem,
                 const VectorXd& start,
                 double threshold,
                 const FitOptions& options) {
  Minimum m;
  m.parameters = problem.Clamp(start);
  m.termination = Termination::kBadInput;
  if (!problem.Residuals(m.parameters, m.residuals)) return m;
  const Index p = start.size();
  const double data_norm = problem.WeightedDataNorm();
  const double exact_cost = 0.5 * std::pow(kExactFit * data_norm, 2);
  double cost = Cost(m.residuals, threshold);
  double damping = 1e-3, growth = 2.0;
  VectorXd scale = VectorXd::Zero(p);
  double last_step_norm = kInfinity;

  if (!problem.Jacobian(m.parameters, m.jacobian)) return m;
  while (m.num_iterations < options.max_iterations) {
    ++m.num_iterations;

    VectorXd root_weight(m.residuals.size());
    for (Index i = 0; i < root_weight.size(); ++i) {
      root_weight[i] = std::sqrt(HuberWeight(m.residuals[i], threshold));
    }
    const VectorXd r = m.residuals.cwiseProduct(root_weight);
    const MatrixXd weighted =
        (m.jacobian.array().colwise() * root_weight.array()).matrix();
    const VectorXd slope = weighted.transpose() * r;

    m.free.clear();
    for (Index j = 0; j < p; ++j) {
      const bool held =
          (m.parameters[j] <= problem.Lower(j) && slope[j] >= 0.0) ||
          (m.parameters[j] >= problem.Upper(j) && slope[j] <= 0.0);
      if (!held) m.free.push_back(j);
    }
    const Index num_free = static_cast<Index>(m.free.size());
    if (num_free == 0) {
      m.termination = Termination::kConverged;
      return m;
    }
    const MatrixXd j_free = weighted(Eigen::all, m.free);
    VectorXd d_free(num_free);
    double cosine = 0.0;
    for (Index k = 0; k < num_free; ++k) {
      const Index j = m.free[static_cast<std::size_t>(k)];
      const double norm = j_free.col(k).norm();
      scale[j] = std::max(scale[j], norm);
      d_free[k] = scale[j] > 0.0 ? scale[j] : 1.0;
      if (norm > 0.0 && r.norm() > 0.0) {
        cosine = std::max(cosine, std::abs(slope[j]) / (norm * r.norm()));
      }
    }
    const double x_norm =
        d_free.cwiseProduct(VectorXd(m.parameters(m.free))).norm();
    const bool flat = cosine < kFlatCosine || cost <= exact_cost;

    const Eigen::HouseholderQR<MatrixXd> qr(j_free);
    const MatrixXd r_factor =
        qr.matrixQR().topRows(num_free).template triangularView<Eigen::Upper>();
    const VectorXd rotated = qr.householderQ().adjoint() * r;
    const VectorXd reduced = rotated.head(num_free);

    bool accepted = false;
    while (!accepted) {
      const VectorXd step = DampedStep(r_factor, reduced, d_free, damping);
      VectorXd trial = m.parameters;
      trial(m.free) += step;
      trial = problem.Clamp(trial);
      const VectorXd taken = (trial - m.parameters)(m.free);
      const double step_norm = d_free.cwiseProduct(taken).norm();
      const double predicted = -taken.dot(VectorXd(slope(m.free))) -
                               0.5 * (j_free * taken).squaredNorm();
      VectorXd trial_residuals;
      const bool finite =
          step.allFinite() && problem.Residuals(trial, trial_residuals);
      const double trial_cost =
          finite ? Cost(trial_residuals, threshold) : kInfinity;
      const double actual = cost - trial_cost;
      // Below the rounding of the sum itself the model's own word decides:
      // the step is a Newton step, and the sum cannot tell.
      const double rounding = 100.0 * kEpsilon * cost;
      const bool last = finite && predicted <= rounding &&
                        std::abs(actual) <= 10.0 * rounding;
      MatrixXd trial_jacobian = m.jacobian;
      if (finite && (last || (actual > 0.0 && predicted > 0.0)) &&
          problem.Jacobian(trial, trial_jacobian) &&
          !FellOnPlateau(m, trial, trial_jacobian, data_norm)) {
        const double gain = last ? 1.0 : actual / predicted;
        m.parameters = trial;
        m.residuals = trial_residuals;
        m.jacobian = trial_jacobian;
        cost = trial_cost;
        const double shrink = 1.0 - std::pow(2.0 * gain - 1.0, 3);
        damping = std::max(damping * std::max(shrink, 1.0 / 3.0), 1e-20);
        growth = 2.0;
        accepted = true;
        const bool short_step = step_norm <= options.step_tolerance * x_norm;
        // A short step means a minimum only when damping did not shorten it.
        // Steps too fine for the sum go on while they shrink.
        const bool settled = last && step_norm > 0.9 * last_step_norm;
        last_step_norm = last ? step_norm : kInfinity;
        if ((short_step && (damping < 1e-2 || flat)) || (settled && flat)) {
          m.termination = Termination::kConverged;
          return m;
        }
      } else {
        damping *= growth;
        growth *= 2.0;
        if (step_norm <= kEpsilon * x_norm || damping > 1e30) {
          m.termination =
              flat ? Termination::kConverged : Termination::kStalled;
          return m;
        }
      }
    }
  }
  m.termination = Termination::kMaxIterations;
  return m;
}

/// (J^T J)^-1 by QR of the column-scaled J, or nothing if rank deficient.
std::optional<MatrixXd> InverseNormal(const MatrixXd& jacobian) {
  const Index p = jacobian.cols();
  VectorXd norm(p);
  for (Index j = 0; j < p; ++j) {
    norm[j] = jacobian.col(j).norm();
    if (!(norm[j] > 0.0)) return std::nullopt;
  }
  const MatrixXd scaled = jacobian * norm.cwiseInverse().asDiagonal();
  const Eigen::ColPivHouseholderQR<MatrixXd> qr(scaled);
  const MatrixXd r =
      qr.matrixR().topRows(p).template triangularView<Eigen::Upper>();
  if (std::abs(r(p - 1, p - 1)) < kRankTolerance * std::abs(r(0, 0))) {
    return std::nullopt;
  }
  const MatrixXd r_inverse = r.triangularView<Eigen::Upper>().solve(
      MatrixXd(MatrixXd::Identity(p, p)));
  const MatrixXd permuted = qr.colsPermutation() * r_inverse;
  MatrixXd inverse = permuted * permuted.transpose();
  return MatrixXd(norm.cwiseInverse().asDiagonal() * inverse *
                  norm.cwiseInverse().asDiagonal());
}

/// Variance factor of Huber's M-estimator over (J^T J)^-1 [Huber1981, ch. 7].
/// `unit` is the residual scale the threshold counts in.
double HuberVarianceFactor(const VectorXd& residuals,
                           double threshold,
                           double unit,
                           Index num_parameters,
                           CovarianceScale scale) {
  const double n = static_cast<double>(residuals.size());
  const double dof = std::max(1.0, n - static_cast<double>(num_parameters));
  double inside = 0.0, clipped_squares = 0.0;
  for (double r : residuals) {
    const double u = r / unit;
    const double psi = std::clamp(u, -threshold, threshold);
    if (std::abs(u) <= threshold) inside += 1.0;
    clipped_squares += psi * psi;
  }
  const double share = std::max(inside / n, 1e-3);
  if (scale == CovarianceScale::kFromResiduals) {
    const double p = static_cast<double>(num_parameters);
    const double small_sample = 1.0 + p / n * (1.0 - share) / share;
    return unit * unit * small_sample * small_sample * clipped_squares / dof /
           (share * share);
  }
  // True sd given: the clipped variance is that of a normal variate.
  const double tail = NormalCdf(-threshold);
  const double density = std::exp(-0.5 * threshold * threshold) /
                         std::sqrt(2.0 * std::numbers::pi);
  const double variance = 1.0 - 2.0 * tail - 2.0 * threshold * density +
                          2.0 * threshold * threshold * tail;
  return variance / (share * share);
}

std::string Explain(Termination termination) {
  switch (termination) {
    case Termination::kConverged:
      return "converged";
    case Termination::kMaxIterations:
      return "stopped at the iteration limit before settling";
    case Termination::kStalled:
      return "no further step lowers the residuals, yet this is no minimum";
    case Termination::kSingular:
      return "the data do not fix every parameter";
    case Termination::kTooFewData:
      return "fewer values than parameters";
    case Termination::kBadInput:
      return "the model is not finite at the start";
  }
  return {};
}

void Finish(FitResult& result, Termination termination, std::string why = {}) {
  result.termination = termination;
  result.message = why.empty() ? Explain(termination) : std::move(why);
}

/// Covariance and residual figures at a minimum. `unit`: see above.
void Summarise(const MatrixXd& jacobian,
               const VectorXd& residuals,
               const std::vector<Index>& free,
               double threshold,
               double unit,
               FitResult& result) {
  const Index p = jacobian.cols();
  const Index num_free = static_cast<Index>(free.size());
  result.degrees_of_freedom = static_cast<int>(residuals.size() - num_free);
  result.chi_square = residuals.squaredNorm();
  result.covariance.assign(static_cast<std::size_t>(p * p), 0.0);
  result.at_bound.assign(static_cast<std::size_t>(p), true);
  for (Index j : free) result.at_bound[static_cast<std::size_t>(j)] = false;

  const bool robust = std::isfinite(threshold);
  double squares = result.chi_square;
  if (robust) {
    squares = 0.0;
    for (double r : residuals) {
      const double limit = threshold * unit;
      squares += std::pow(std::clamp(r, -limit, limit), 2);
    }
  }
  const bool has_dof = result.degrees_of_freedom > 0;
  result.residual_rms =
      has_dof ? std::sqrt(squares / result.degrees_of_freedom) : 0.0;

  const auto inverse = InverseNormal(jacobian(Eigen::all, free));
  if (!inverse) {
    Finish(result, Termination::kSingular);
    return;
  }
  double factor = 1.0;
  if (result.covariance_scale == CovarianceScale::kFromResiduals && !has_dof) {
    factor = kInfinity;
  } else if (robust && unit > 0.0) {
    factor = HuberVarianceFactor(
        residuals, threshold, unit, num_free, result.covariance_scale);
  } else if (result.covariance_scale == CovarianceScale::kFromResiduals) {
    factor = result.residual_rms * result.residual_rms;
  }
  for (Index a = 0; a < num_free; ++a) {
    for (Index b = 0; b < num_free; ++b) {
      const Index row = free[static_cast<std::size_t>(a)];
      const Index column = free[static_cast<std::size_t>(b)];
      const double entry = (*inverse)(a, b);
      result.covariance[static_cast<std::size_t>(row * p + column)] =
          std::isinf(factor) ? (a == b ? kInfinity : 0.0) : factor * entry;
    }
  }
}

}  // namespace

Result<void> FitOptions::Validate() const {
  const auto invalid = [](const char* message) {
    return Error{ErrorCode::kInvalidArgument, message};
  };
  if (max_iterations < 1) return invalid("max_iterations must be at least 1");
  if (!(step_tolerance > 0.0 && step_tolerance <= 1e-3)) {
    return invalid("step_tolerance must lie in (0, 1e-3]");
  }
  if (!(huber_threshold > 0.0)) {
    return invalid("huber_threshold must be greater than 0");
  }
  if (lower.size() != upper.size()) {
    return invalid("give both lower and upper bounds, or none");
  }
  for (std::size_t j = 0; j < lower.size(); ++j) {
    if (!(lower[j] < upper[j])) {
      return invalid("each lower bound must be below its upper bound");
    }
  }
  return {};
}

Estimate FitResult::Parameter(int index) const {
  const auto i = static_cast<std::size_t>(index);
  FLOWKIN_CHECK(i < parameters.size());
  const bool known = covariance_scale == CovarianceScale::kGivenSd;
  return {parameters[i],
          std::sqrt(Covariance(index, index)),
          known ? kInfinity : std::max(1.0, double(degrees_of_freedom))};
}

double FitResult::Covariance(int row, int column) const {
  const std::size_t p = parameters.size();
  const auto r = static_cast<std::size_t>(row);
  const auto c = static_cast<std::size_t>(column);
  FLOWKIN_CHECK(r < p && c < p);
  return covariance.size() == p * p ? covariance[r * p + c] : kInfinity;
}

FitResult FitNonlinear(const CurveModel& model,
                       std::span<const double> observed,
                       std::span<const double> sd,
                       std::span<const double> start,
                       const FitOptions& options) {
  FLOWKIN_CHECK(options.Validate().has_value());
  FLOWKIN_CHECK(sd.empty() || sd.size() == observed.size());
  FLOWKIN_CHECK(options.lower.empty() || options.lower.size() == start.size());
  FLOWKIN_CHECK(!start.empty());
  FitResult result;
  result.covariance_scale = options.covariance_scale;
  result.parameters.assign(start.begin(), start.end());
  if (auto bad = FindBadData(observed, sd)) {
    Finish(result, Termination::kBadInput, *bad);
    return result;
  }
  if (!AllFinite(start)) {
    Finish(result, Termination::kBadInput, "the start is not finite");
    return result;
  }
  if (observed.size() < start.size()) {
    Finish(result, Termination::kTooFewData);
    return result;
  }

  Problem problem(model, observed, sd, options);
  const bool robust = std::isfinite(options.huber_threshold);
  const bool find_unit =
      robust && options.covariance_scale == CovarianceScale::kFromResiduals;
  double unit = 1.0;
  Minimum minimum = Minimise(problem,
                             ToVector(start),
                             find_unit ? kInfinity : options.huber_threshold,
                             options);
  if (find_unit && minimum.termination == Termination::kConverged) {
    // Scale and parameters in turn until the scale settles.
    double last_unit = 0.0;
    for (int i = 0; i < kMaxReweightings; ++i) {
      const Index dof =
          problem.num_values() - static_cast<Index>(minimum.free.size());
      unit = RobustResidualScale(minimum.residuals, dof);
      if (!(unit > kExactFit * problem.WeightedDataNorm()) ||
          std::abs(unit - last_unit) <= 1e-6 * unit) {
        break;
      }
      last_unit = unit;
      const int used = minimum.num_iterations;
      minimum = Minimise(
          problem, minimum.parameters, options.huber_threshold * unit, options);
      minimum.num_iterations += used;
      if (minimum.termination != Termination::kConverged) break;
    }
  }
  result.parameters.assign(minimum.parameters.begin(),
                           minimum.parameters.end());
  result.num_iterations = minimum.num_iterations;
  Finish(result, minimum.termination);
  if (minimum.jacobian.size() > 0 && minimum.jacobian.allFinite()) {
    Summarise(minimum.jacobian,
              minimum.residuals,
              minimum.free,
              options.huber_threshold,
              unit,
              result);
  }
  return result;
}

FitResult FitLinear(std::span<const double> design,
                    std::span<const double> observed,
                    std::span<const double> sd,
                    const FitOptions& options) {
  FLOWKIN_CHECK(options.Validate().has_value());
  FLOWKIN_CHECK(options.lower.empty());
  FLOWKIN_CHECK(!observed.empty() && design.size() % observed.size() == 0);
  FLOWKIN_CHECK(sd.empty() || sd.size() == observed.size());
  const Index n = static_cast<Index>(observed.size());
  const Index p = static_cast<Index>(design.size()) / n;
  FLOWKIN_CHECK(p >= 1);
  FitResult result;
  result.covariance_scale = options.covariance_scale;
  result.parameters.assign(static_cast<std::size_t>(p), 0.0);
  if (auto bad = FindBadData(observed, sd)) {
    Finish(result, Termination::kBadInput, *bad);
    return result;
  }
  if (!AllFinite(design)) {
    Finish(result, Termination::kBadInput, "the design is not finite");
    return result;
  }
  if (n < p) {
    Finish(result, Termination::kTooFewData);
    return result;
  }
  MatrixXd a = Eigen::Map<const MatrixXd>(design.data(), n, p);
  VectorXd y = ToVector(observed);
  if (!sd.empty()) {
    const VectorXd weight = ToVector(sd).cwiseInverse();
    a.array().colwise() *= weight.array();
    y = y.cwiseProduct(weight);
  }
  const VectorXd column_norm = a.colwise().norm().cwiseMax(1e-300);
  const MatrixXd scaled = a * column_norm.cwiseInverse().asDiagonal();
  const auto solve = [&](const VectorXd& root_weight) {
    const MatrixXd left =
        (scaled.array().colwise() * root_weight.array()).matrix();
    VectorXd x = left.colPivHouseholderQr().solve(y.cwiseProduct(root_weight));
    return VectorXd(x.cwiseQuotient(column_norm));
  };
  VectorXd root_weight = VectorXd::Ones(n);
  VectorXd x = solve(root_weight);
  VectorXd residuals = a * x - y;
  result.num_iterations = 1;
  double unit = 1.0;
  if (std::isfinite(options.huber_threshold)) {
    bool settled = false;
    while (!settled && result.num_iterations < kMaxReweightings) {
      if (options.covariance_scale == CovarianceScale::kFromResiduals) {
        unit = RobustResidualScale(residuals, n - p);
        if (!(unit > kExactFit * y.norm())) break;
      }
      for (Index i = 0; i < n; ++i) {
        root_weight[i] = std::sqrt(
            HuberWeight(residuals[i], options.huber_threshold * unit));
      }
      const VectorXd next = solve(root_weight);
      settled = (next - x).cwiseProduct(column_norm).norm() <=
                1e-9 * unit * std::sqrt(double(n));
      x = next;
      residuals = a * x - y;
      ++result.num_iterations;
    }
  }
  result.parameters.assign(x.begin(), x.end());
  Finish(result, Termination::kConverged);
  std::vector<Index> all(static_cast<std::size_t>(p));
  for (Index j = 0; j < p; ++j) all[static_cast<std::size_t>(j)] = j;
  Summarise(a, residuals, all, options.huber_threshold, unit, result);
  return result;
}

FitResult FitLine(std::span<const double> x, std::span<const double> y) {
  std::vector<double> design(x.size(), 1.0);
  design.insert(design.end(), x.begin(), x.end());
  return FitLinear(design, y, {});
}

FitResult FitSeparable(const SeparableModel& model,
                       std::span<const double> observed,
                       std::span<const double> sd,
                       std::span<const double> shape_start,
                       const FitOptions& options) {
  FLOWKIN_CHECK(options.Validate().has_value());
  FLOWKIN_CHECK(model.num_amplitudes >= 1);
  FLOWKIN_CHECK(sd.empty() || sd.size() == observed.size());
  FLOWKIN_CHECK(options.lower.empty() ||
                options.lower.size() == shape_start.size());
  const std::size_t n = observed.size();
  const std::size_t num_shape = shape_start.size();
  const auto num_amplitudes = static_cast<std::size_t>(model.num_amplitudes);
  FitResult failed;
  failed.covariance_scale = options.covariance_scale;
  failed.parameters.assign(num_shape + num_amplitudes, 0.0);
  if (auto bad = FindBadData(observed, sd)) {
    Finish(failed, Termination::kBadInput, *bad);
    return failed;
  }
  if (n < num_shape + num_amplitudes) {
    Finish(failed, Termination::kTooFewData);
    return failed;
  }

  const Index rows = static_cast<Index>(n);
  const Index columns = static_cast<Index>(num_amplitudes);
  const VectorXd y = ToVector(observed);
  const VectorXd weight = sd.empty() ? VectorXd(VectorXd::Ones(rows))
                                     : VectorXd(ToVector(sd).cwiseInverse());
  MatrixXd basis(rows, columns);
  const auto amplitudes = [&](std::span<const double> shape) {
    model.basis(shape, Span(basis));
    if (!basis.allFinite()) {
      return VectorXd(VectorXd::Constant(
          columns, std::numeric_limits<double>::quiet_NaN()));
    }
    const MatrixXd left = (basis.array().colwise() * weight.array()).matrix();
    return VectorXd(left.colPivHouseholderQr().solve(y.cwiseProduct(weight)));
  };

  // Outer fit: the shape alone, its amplitudes always at their best.
  CurveModel projected;
  projected.values = [&](std::span<const double> shape,
                         std::span<double> values) {
    const VectorXd best = amplitudes(shape);
    Eigen::Map<VectorXd>(values.data(), rows) = basis * best;
  };
  FitOptions outer = options;
  outer.huber_threshold = kInfinity;
  const FitResult shape_fit =
      FitNonlinear(projected, observed, sd, shape_start, outer);
  if (shape_fit.termination == Termination::kBadInput) {
    failed.message = shape_fit.message;
    return failed;
  }

  // All parameters together from there: joint covariance and robust loss.
  std::vector<double> start = shape_fit.parameters;
  const VectorXd best = amplitudes(start);
  start.insert(start.end(), best.begin(), best.end());
  CurveModel full;
  full.values = [&](std::span<const double> parameters,
                    std::span<double> values) {
    model.basis(parameters.first(num_shape), Span(basis));
    Eigen::Map<VectorXd>(values.data(), rows) =
        basis *
        Eigen::Map<const VectorXd>(parameters.data() + num_shape, columns);
  };
  FitOptions joint = options;
  if (!joint.lower.empty()) {
    joint.lower.resize(num_shape + num_amplitudes, -kInfinity);
    joint.upper.resize(num_shape + num_amplitudes, kInfinity);
  }
  FitResult result = FitNonlinear(full, observed, sd, start, joint);
  result.num_iterations += shape_fit.num_iterations;
  return result;
}

}  // namespace flowkin
