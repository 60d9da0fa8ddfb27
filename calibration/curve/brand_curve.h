#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "calibration/curve/dilution_curve.h"
#include "core/base/estimate.h"

namespace flowkin {

/// What one cup of a brand told, as a log likelihood over a grid.
struct CupEvidence {
  std::string colour;
  std::vector<double> log_likelihood;  ///< LogLikelihood() on the brand's grid
};

/// How far curves differ from colour to colour of a brand and from cup to cup
/// of a colour (sd of ln slope) is itself learned, from these few values.
/// Cups of one colour are one paint; they differ where they were mixed or
/// stood differently (assumed, no source).
/// Colours of one brand differ by about a quarter (from memory).
struct BrandSpread {
  std::vector<double> colour_sd = {0.08, 0.20, 0.35};
  std::vector<double> colour_weight = {0.25, 0.50, 0.25};
  std::vector<double> cup_sd = {0.01, 0.03, 0.10};
  std::vector<double> cup_weight = {0.85, 0.13, 0.02};
  /// Chance that the next cup has nothing to do with what was learned.
  double stranger_chance = 0.003;
};

/// The same prior on a grid fine enough for what a brand knows.
CurvePrior BrandGrid(const CurvePrior& population);

struct BrandCurve {
  /// For the next cup of the asked colour, on the grid of the population.
  CurvePrior next_cup;
  CurveMoments next_cup_moments;
};

/// How far a liquid that is no water differs, as its level (ln of its ratio to
/// the base coat): from paint to paint it is stirred into, and from cup to cup,
/// which may mean another bottle of it (assumed, no source).
BrandSpread BlendSpread();

/// brand -> colour -> cup, all levels on the grid `population` (see
/// BrandGrid): a cup's ln slope scatters about its colour's, a colour's about
/// its brand's, a brand's about all brands'; the steepening is the brand's. A
/// colour not among the cups starts from its brand.
BrandCurve FitBrandCurve(const std::vector<CupEvidence>& cups,
                         const std::string& colour,
                         const CurvePrior& population,
                         const BrandSpread& spread = {});

/// A blend's prior once the liquid itself was tested: its level as measured,
/// the interaction as `learned` has it at that level.
CurvePrior AtMeasuredLevel(const CurvePrior& learned, const Estimate& ln_ratio);

/// Mean and covariance of (first, second) under a prior.
CurveMoments MomentsOf(const CurvePrior& prior);

/// Prior for a brand nobody knows, from the brands that are known: `fallback`
/// counts as three brands, and a fifth of it stays mixed in, because the next
/// brand may be unlike all of them.
CurvePrior PopulationPrior(const std::vector<Estimate>& brand_ln_slopes,
                           const CurvePrior& fallback);

}  // namespace flowkin
