#include "core/planning/practice.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/base/check.h"
#include "core/base/distributions.h"

namespace flowkin {
namespace {

constexpr double kStrong = 10.0;
constexpr std::size_t kBands = 41;
constexpr double kLeastLnBand = 0.03;
constexpr double kMostLnBand = 1.5;
constexpr std::array kWidths = {0.15, 0.4};
constexpr std::array kRates = {
    0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98};
// Below this a mismatch is as good as none.
constexpr double kNoMismatch = 1e-3;

double LnBand(std::size_t index) {
  const double low = std::log(kLeastLnBand);
  const double high = std::log(kMostLnBand);
  return low + (high - low) * static_cast<double>(index) /
                   static_cast<double>(kBands - 1);
}

}  // namespace

LearnedBand LearnBand(const std::vector<JudgedPour>& pours) {
  LearnedBand learned;
  learned.pours = static_cast<int>(pours.size());
  for (const JudgedPour& pour : pours) {
    FLOWKIN_CHECK(pour.ln_mismatch >= 0.0);
    learned.poor += pour.poor ? 1 : 0;
  }
  // In logarithms, because a hundred pours make likelihoods too small to hold.
  std::vector<double> ln_constant;
  for (const double rate : kRates) {
    ln_constant.push_back(learned.poor * std::log(rate) +
                          (learned.pours - learned.poor) * std::log1p(-rate));
  }
  struct Cell {
    std::size_t band;
    double ln_likelihood;
  };
  std::vector<Cell> cells;
  std::vector<double> step(pours.size());
  for (std::size_t b = 0; b < kBands; ++b) {
    for (const double width : kWidths) {
      for (std::size_t i = 0; i < pours.size(); ++i) {
        const double ln_m =
            std::log(std::max(pours[i].ln_mismatch, kNoMismatch));
        step[i] = NormalCdf((ln_m - LnBand(b)) / width);
      }
      for (std::size_t low = 0; low < kRates.size(); ++low) {
        for (std::size_t high = low + 1; high < kRates.size(); ++high) {
          double ln_likelihood = 0.0;
          for (std::size_t i = 0; i < pours.size(); ++i) {
            const double rate =
                kRates[low] + (kRates[high] - kRates[low]) * step[i];
            ln_likelihood += std::log(pours[i].poor ? rate : 1.0 - rate);
          }
          cells.push_back({b, ln_likelihood});
        }
      }
    }
  }
  double most = -std::numeric_limits<double>::infinity();
  for (const Cell& cell : cells) most = std::max(most, cell.ln_likelihood);
  std::array<double, kBands> weight{};
  double stepped = 0.0;
  for (const Cell& cell : cells) {
    const double likelihood = std::exp(cell.ln_likelihood - most);
    weight[cell.band] += likelihood;
    stepped += likelihood;
  }
  double constant = 0.0;
  for (const double ln_likelihood : ln_constant) {
    constant += std::exp(ln_likelihood - most);
  }
  learned.evidence = stepped / static_cast<double>(cells.size()) /
                     (constant / static_cast<double>(kRates.size()));

  const auto quantile = [&](double share) {
    double sum = 0.0;
    for (std::size_t b = 0; b < kBands; ++b) {
      const double next = sum + weight[b] / stepped;
      if (next >= share) return std::expm1(std::exp(LnBand(b)));
      sum = next;
    }
    return std::expm1(kMostLnBand);
  };
  learned.band_interval = {quantile(0.025), quantile(0.975), 0.95};
  learned.told = learned.evidence > kStrong;
  if (learned.told) learned.band = quantile(0.5);
  return learned;
}

LearnedTarget LearnTarget(const std::vector<Estimate>& ln_ratios) {
  constexpr int kFewest = 3;
  LearnedTarget learned;
  learned.pours = static_cast<int>(ln_ratios.size());
  if (learned.pours < kFewest) return learned;
  double sum = 0.0;
  for (const Estimate& each : ln_ratios) sum += each.value;
  const double count = learned.pours;
  const double mean = sum / count;
  double squares = 0.0;
  for (const Estimate& each : ln_ratios) {
    squares += (each.value - mean) * (each.value - mean);
  }
  const Interval interval = CoverageInterval(
      {mean, std::sqrt(squares / (count - 1.0) / count), count - 1.0});
  learned.told = true;
  learned.ratio = std::exp(mean);
  learned.interval = {
      std::exp(interval.low), std::exp(interval.high), interval.level};
  return learned;
}

}  // namespace flowkin
