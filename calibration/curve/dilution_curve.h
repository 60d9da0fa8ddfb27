#pragma once

#include <cstddef>
#include <vector>

#include "core/base/estimate.h"
#include "core/dosing/dilution_belief.h"
#include "core/dosing/dilution_law.h"

namespace flowkin {

/// What is held likely of a law's two numbers before this cup was tested, on
/// a grid. For water the first axis is ln g (evenly spaced), for a blend it is
/// the level a of the liquid; see DilutionLaw.
struct CurvePrior {
  DilutionLaw::Kind kind = DilutionLaw::Kind::kWater;
  double first_low = 0.0;
  double first_step = 0.1;  ///< > 0
  std::size_t first_count = 0;
  std::vector<double> second;
  /// ln weight of cell (i, j) at i * second.size() + j; any common offset.
  std::vector<double> log_weight;
  Estimate start_level{0.5, 1.5};

  DilutionLaw Law(double first, double second_value) const;
};

/// One test of a cup.
struct DilutionTest {
  double u = 0.0;         ///< ln(volume now / volume at the start), >= 0
  double ln_ratio = 0.0;  ///< measured
  double rel_sd = 0.05;   ///< standard uncertainty of ln_ratio, > 0
};

struct CurveOptions {
  /// One test in 1 / outlier_chance is spoilt (a hand that shook, paint left
  /// unstirred); it then errs by `outlier_sd` (of the logarithm).
  double outlier_chance = 0.02;
  double outlier_sd = 0.3;
  /// Part of every rel_sd that all tests of the cup share (the base coat's
  /// own error), so that repeating a test cannot remove it.
  double common_rel_sd = 0.0;
  /// No test is trusted beyond this.
  double least_rel_sd = 0.01;
  /// Relative standard uncertainty of a poured amount: a syringe or pipette
  /// read to half a mark.
  double pour_rel_sd = 0.01;
  /// Set where only flow times are known: the tests' ln_ratio are logarithms
  /// of time ratios, p times the logarithm of the viscosity ratio. What is
  /// learned then is the product of p and the slope. 0 sd and value 1: ratios.
  Estimate time_exponent{1.0, 0.0};
};

/// The law's numbers given the tests: mean and covariance of
/// (ln g, c) for water, (a, e) for a blend.
struct CurveMoments {
  double first = 0.0;
  double second = 0.0;
  double variance_first = 0.0;
  double covariance = 0.0;
  double variance_second = 0.0;
};

struct DilutionCurve {
  DilutionBelief belief;
  CurveMoments moments;
  /// Per test: probability that it is spoilt.
  std::vector<double> outlier_chance;
};

/// Bayes' rule over the prior's grid; the start level is integrated
/// analytically in every cell (linearised about its most likely value), over
/// every choice of up to two spoilt tests (one beyond 40 tests).
/// At least one test; the newest last, which is where the cup stands.
DilutionCurve FitDilutionCurve(const std::vector<DilutionTest>& tests,
                               const CurvePrior& prior,
                               const CurveOptions& options);

/// ln likelihood of the tests in every cell of the prior's grid (same order as
/// log_weight), the start level integrated out. For pooling cups.
std::vector<double> LogLikelihood(const std::vector<DilutionTest>& tests,
                                  const CurvePrior& prior,
                                  const CurveOptions& options);

}  // namespace flowkin
