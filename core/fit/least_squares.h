#pragma once

#include <functional>
#include <limits>
#include <span>
#include <string>
#include <vector>

#include "core/base/estimate.h"
#include "core/base/result.h"

namespace flowkin {

/// A model y_i = f_i(parameters), i = 0 .. n-1. The abscissae live inside.
struct CurveModel {
  /// Writes the n model values. A non-finite value means "not allowed here":
  /// the fitter steps back.
  std::function<void(std::span<const double> parameters,
                     std::span<double> values)>
      values;
  /// Optional. Writes d f_i / d parameter_j to jacobian[j * n + i]. Without it
  /// central differences are taken (about 1e-10 relative).
  std::function<void(std::span<const double> parameters,
                     std::span<double> jacobian)>
      jacobian;
};

enum class CovarianceScale {
  kGivenSd,        ///< the sd given with the data are true standard deviations
  kFromResiduals,  ///< they are relative only: times chi-square / dof
};

struct FitOptions {
  int max_iterations = 1000;  ///< >= 1, Jacobians taken
  /// Stop when a full step is shorter than this, relative to the parameters
  /// in their own scales. In (0, 1e-3].
  double step_tolerance = 1e-10;
  CovarianceScale covariance_scale = CovarianceScale::kFromResiduals;
  /// Huber's loss: residuals beyond this many sd count linearly, not squared
  /// (1.345 keeps 95 % efficiency on clean normal data [Huber1964]). Infinite:
  /// plain least squares. With kFromResiduals the sd is first rescaled by the
  /// median absolute residual. > 0.
  double huber_threshold = std::numeric_limits<double>::infinity();
  /// Box bounds, one per parameter; empty: none. low < high.
  std::vector<double> lower, upper;

  Result<void> Validate() const;
};

enum class Termination {
  kConverged,
  kMaxIterations,  ///< still moving
  kStalled,        ///< no step lowers the sum, yet its slope is not zero
  kSingular,       ///< the data do not fix every parameter
  kTooFewData,     ///< fewer values than parameters
  kBadInput,       ///< non-finite data or start, sd <= 0, model not finite
};

/// Outcome of a fit. Use only if IsUsable().
struct FitResult {
  std::vector<double> parameters;
  /// Row-major, same order as `parameters`. Rows and columns of parameters
  /// held at a bound are zero. Infinite where there is no dof to scale by.
  std::vector<double> covariance;
  std::vector<bool> at_bound;
  /// sqrt(sum of squared weighted residuals / dof): near 1 when the given sd
  /// are true; 0 without dof. With Huber's loss the residuals count as clipped.
  double residual_rms = 0.0;
  /// Sum of squared weighted residuals, unclipped.
  double chi_square = 0.0;
  int degrees_of_freedom = 0;  ///< values minus free parameters
  int num_iterations = 0;
  Termination termination = Termination::kBadInput;
  std::string message;

  bool IsUsable() const { return termination == Termination::kConverged; }
  /// Parameter `index` with its standard uncertainty. Its dof is that of the
  /// fit when the sd came from the residuals, else infinite.
  Estimate Parameter(int index) const;
  double Covariance(int row, int column) const;

  CovarianceScale covariance_scale = CovarianceScale::kFromResiduals;
};

/// Weighted nonlinear least squares: minimises sum ((y_i - f_i) / sd_i)^2 by
/// Levenberg-Marquardt [Levenberg1944, Marquardt1963] with QR steps; covariance
/// (J^T W J)^-1. `sd` may be empty (all 1), else one > 0 per value.
/// With Huber's loss the covariance is that of an M-estimator [Huber1981].
FitResult FitNonlinear(const CurveModel& model,
                       std::span<const double> observed,
                       std::span<const double> sd,
                       std::span<const double> start,
                       const FitOptions& options = {});

/// Weighted linear least squares, y_i = sum_j design[j * n + i] * parameter_j,
/// by QR. Of the options: covariance_scale and huber_threshold; no bounds.
FitResult FitLinear(std::span<const double> design,
                    std::span<const double> observed,
                    std::span<const double> sd,
                    const FitOptions& options = {});

/// The straight line y ~ parameter 0 + parameter 1 * x, all points alike.
FitResult FitLine(std::span<const double> x, std::span<const double> y);

/// A model that is linear in some parameters:
/// y_i = sum_j basis_j,i(shape) * amplitude_j.
struct SeparableModel {
  int num_amplitudes = 1;
  /// Writes basis_j,i to basis[j * n + i].
  std::function<void(std::span<const double> shape, std::span<double> basis)>
      basis;
};

/// Variable projection [GolubPereyra1973]: amplitudes solved linearly inside,
/// shape parameters outside, so no start is needed for amplitudes. The result
/// holds shape parameters first, then amplitudes, with their joint covariance.
/// Bounds, if given, are for the shape parameters only.
FitResult FitSeparable(const SeparableModel& model,
                       std::span<const double> observed,
                       std::span<const double> sd,
                       std::span<const double> shape_start,
                       const FitOptions& options = {});

}  // namespace flowkin
