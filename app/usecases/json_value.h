#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "core/base/estimate.h"

namespace flowkin {

/// Keeps the order in which fields are written, so that documents read the
/// way the contract shows them.
using Json = nlohmann::ordered_json;

/// A number for a document, rounded to `digits` significant digits; null when
/// it is not finite, because a document never holds a guess.
Json JsonNumber(double value, int digits = 6);
Json JsonNumber(const std::optional<double>& value, int digits = 6);

/// {"value", "low", "high", "level"}, four digits each.
Json IntervalDocument(double value, const Interval& interval);

}  // namespace flowkin
