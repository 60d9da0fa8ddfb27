#include "calibration/defaults/default_prior.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace flowkin {
namespace {

constexpr double kMedianSlope = 6.0;
constexpr double kSlopeLogSdBelow = 0.40;
constexpr double kSlopeLogSdAbove = 0.50;
constexpr double kMedianSteepening = 0.35;
constexpr double kSteepeningLogSd = 0.55;
constexpr double kStraightShare = 0.05;

double LogNormalWeight(double z) { return -0.5 * z * z; }

}  // namespace

CurvePrior WaterPrior() {
  CurvePrior prior;
  prior.kind = DilutionLaw::Kind::kWater;
  // 1.2 to 54 per unit: 4 standard deviations and more to each side.
  prior.first_low = std::log(kMedianSlope) - 1.6;
  prior.first_step = 0.1;
  prior.first_count = 39;
  constexpr std::array<double, 7> kPoints = {
      -2.1, -1.4, -0.7, 0.0, 0.7, 1.4, 2.1};
  double total = 0.0;
  for (const double z : kPoints) total += std::exp(LogNormalWeight(z));
  prior.second.push_back(0.03);
  for (const double z : kPoints) {
    prior.second.push_back(kMedianSteepening * std::exp(kSteepeningLogSd * z));
  }
  for (std::size_t i = 0; i < prior.first_count; ++i) {
    const double off = prior.first_low +
                       prior.first_step * static_cast<double>(i) -
                       std::log(kMedianSlope);
    const double z = off / (off < 0.0 ? kSlopeLogSdBelow : kSlopeLogSdAbove);
    prior.log_weight.push_back(LogNormalWeight(z) + std::log(kStraightShare));
    for (const double y : kPoints) {
      prior.log_weight.push_back(LogNormalWeight(z) + LogNormalWeight(y) -
                                 std::log(total) + std::log1p(-kStraightShare));
    }
  }
  return prior;
}

CurvePrior BlendPrior(const std::optional<Estimate>& ln_ratio) {
  const Estimate level = ln_ratio.value_or(Estimate{std::log(0.3), 0.8});
  constexpr double kInteractionSd = 0.3;
  CurvePrior prior;
  prior.kind = DilutionLaw::Kind::kBlend;
  prior.first_count = 29;
  prior.first_step = 0.25 * level.sd;
  prior.first_low = level.value - 14.0 * prior.first_step;
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
  return prior;
}

}  // namespace flowkin
