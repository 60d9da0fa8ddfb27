#include "calibration/defaults/default_prior.h"

#include <cmath>
#include <cstddef>

namespace flowkin {
namespace {

constexpr double kMedianSlope = 6.5;
constexpr double kSlopeLogSd = 0.40;
constexpr double kMedianBend = 0.34;
constexpr double kBendPower = -0.35;  // of the slope
constexpr double kBendLogSd = 0.33;
constexpr double kStraightShare = 0.03;
// The grid of bends.
constexpr double kStraight = 0.03;
constexpr double kLeastBend = 0.11;
constexpr double kBendStep = 1.3;
constexpr int kBends = 8;

double LogNormalWeight(double z) { return -0.5 * z * z; }

}  // namespace

CurvePrior WaterPrior() {
  CurvePrior prior;
  prior.kind = DilutionLaw::Kind::kWater;
  // 1.3 to 58 per unit: 4 standard deviations and more to each side.
  prior.first_low = std::log(kMedianSlope) - 1.6;
  prior.first_step = 0.1;
  prior.first_count = 39;
  prior.second.push_back(kStraight);
  for (int k = 0; k < kBends; ++k) {
    prior.second.push_back(kLeastBend * std::pow(kBendStep, k));
  }
  for (std::size_t i = 0; i < prior.first_count; ++i) {
    const double off = prior.first_low +
                       prior.first_step * static_cast<double>(i) -
                       std::log(kMedianSlope);
    const double slope = LogNormalWeight(off / kSlopeLogSd);
    const double bend = std::log(kMedianBend) + kBendPower * off;
    const auto weight = [&](double c) {
      return LogNormalWeight((std::log(c) - bend) / kBendLogSd);
    };
    double total = 0.0;
    for (std::size_t j = 1; j < prior.second.size(); ++j) {
      total += std::exp(weight(prior.second[j]));
    }
    prior.log_weight.push_back(slope + std::log(kStraightShare));
    for (std::size_t j = 1; j < prior.second.size(); ++j) {
      prior.log_weight.push_back(slope + weight(prior.second[j]) -
                                 std::log(total) + std::log1p(-kStraightShare));
    }
  }
  return prior;
}

namespace {

// A liquid nobody has tested, and how blends depart from the logarithmic rule.
constexpr double kLiquidSd = 0.8;
constexpr double kInteractionSd = 0.3;
const double kLiquidLevel = std::log(0.3);

void FillBlend(CurvePrior& prior, const Estimate& level) {
  prior.kind = DilutionLaw::Kind::kBlend;
  for (int k = -4; k <= 4; ++k) prior.second.push_back(0.2 * k);
  for (std::size_t i = 0; i < prior.first_count; ++i) {
    const double first =
        prior.first_low + prior.first_step * static_cast<double>(i);
    for (const double interaction : prior.second) {
      prior.log_weight.push_back(
          LogNormalWeight((first - level.value) / level.sd) +
          LogNormalWeight(interaction / kInteractionSd));
    }
  }
}

}  // namespace

CurvePrior BlendPrior(const std::optional<Estimate>& ln_ratio) {
  const Estimate level = ln_ratio.value_or(Estimate{kLiquidLevel, kLiquidSd});
  CurvePrior prior;
  prior.first_count = 29;
  prior.first_step = 0.25 * level.sd;
  prior.first_low = level.value - 14.0 * prior.first_step;
  FillBlend(prior, level);
  return prior;
}

CurvePrior BlendGrid() {
  CurvePrior prior;
  prior.first_count = 65;
  prior.first_step = 0.1;
  prior.first_low = std::log(0.005);
  FillBlend(prior, {kLiquidLevel, kLiquidSd});
  return prior;
}

}  // namespace flowkin
