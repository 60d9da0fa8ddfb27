#include "app/usecases/json_value.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace flowkin {

Json JsonNumber(double value, int digits) {
  if (!std::isfinite(value)) return nullptr;
  char text[64];
  std::snprintf(text, sizeof(text), "%.*g", digits, value);
  return std::strtod(text, nullptr);
}

Json JsonNumber(const std::optional<double>& value, int digits) {
  return value ? JsonNumber(*value, digits) : Json(nullptr);
}

Json IntervalDocument(double value, const Interval& interval) {
  Json document;
  document["value"] = JsonNumber(value, 4);
  document["low"] = JsonNumber(interval.low, 4);
  document["high"] = JsonNumber(interval.high, 4);
  document["level"] = interval.level;
  return document;
}

}  // namespace flowkin
