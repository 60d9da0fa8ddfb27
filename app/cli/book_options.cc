#include "app/cli/book_options.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <cstdio>

namespace flowkin {

void AddStoreOption(CLI::App& app, std::string& store) {
  app.add_option("--store",
                 store,
                 "Brand book to use; without it, the one in your data folder");
}

std::string StorePath(const std::string& store) {
  return store.empty() ? CalibrationStore::DefaultPath() : store;
}

Result<CalibrationStore> OpenBook(const std::string& store, bool write) {
  return CalibrationStore::Open(StorePath(store),
                                write ? CalibrationStore::Access::kWrite
                                      : CalibrationStore::Access::kRead);
}

namespace {
double Fall(double slope) { return -std::expm1(-slope * std::log1p(0.01)); }
}  // namespace

Json CurveDocument(const CurveSummary& curve) {
  Json document;
  document["slope"] = {{"value", JsonNumber(curve.slope, 4)},
                       {"low", JsonNumber(curve.slope_interval.low, 4)},
                       {"high", JsonNumber(curve.slope_interval.high, 4)},
                       {"level", curve.slope_interval.level}};
  document["steepening"] = {{"value", JsonNumber(curve.steepening, 4)},
                            {"sd", JsonNumber(curve.steepening_sd, 3)}};
  document["fall_per_percent"] = JsonNumber(curve.fall_per_percent, 4);
  return document;
}

std::string CurveSentence(const CurveSummary& curve) {
  char text[160];
  std::snprintf(text,
                sizeof(text),
                "1 mL of water in 100 mL makes it %.1f %% thinner (%.1f to "
                "%.1f %%)",
                100.0 * curve.fall_per_percent,
                100.0 * Fall(curve.slope_interval.low),
                100.0 * Fall(curve.slope_interval.high));
  return text;
}

Json LiquidDocument(const LiquidReport& liquid) {
  Json document;
  document["thinner"] = ThinnerKindName(liquid.thinner);
  document["cups"] = liquid.cups;
  document["ratio"] = {{"value", JsonNumber(liquid.ratio, 4)},
                       {"low", JsonNumber(liquid.ratio_interval.low, 4)},
                       {"high", JsonNumber(liquid.ratio_interval.high, 4)},
                       {"level", liquid.ratio_interval.level}};
  document["interaction"] = {{"value", JsonNumber(liquid.interaction.value, 3)},
                             {"sd", JsonNumber(liquid.interaction.sd, 3)}};
  return document;
}

std::string LiquidSentence(const LiquidReport& liquid) {
  char text[200];
  std::snprintf(text,
                sizeof(text),
                "The %s is %.2f times as thick as the base coat (%.2f to "
                "%.2f), learned from %lld cup(s).",
                ThinnerKindName(liquid.thinner),
                liquid.ratio,
                liquid.ratio_interval.low,
                liquid.ratio_interval.high,
                static_cast<long long>(liquid.cups));
  return text;
}

}  // namespace flowkin
