#include "core/session/cup.h"

#include <cmath>

#include "core/base/check.h"

namespace flowkin {

const char* ThinnerKindName(ThinnerKind kind) {
  switch (kind) {
    case ThinnerKind::kWater:
      return "water";
    case ThinnerKind::kAdditive:
      return "additive";
    case ThinnerKind::kMedium:
      return "medium";
  }
  FLOWKIN_CHECK(false);
}

std::size_t CupHistory::Additions() const {
  std::size_t count = 0;
  double before_ml = 0.0;
  for (const CupTest& test : tests) {
    if (test.added_ml > before_ml) ++count;
    before_ml = test.added_ml;
  }
  return count;
}

std::size_t CupHistory::TestsSinceAddition() const {
  std::size_t count = 0;
  for (auto test = tests.rbegin(); test != tests.rend(); ++test) {
    if (test->added_ml < tests.back().added_ml) break;
    count += test->films;
  }
  return count;
}

double CupHistory::Growth(double added_ml) const {
  return std::log1p(added_ml / volume_ml);
}

std::vector<CupHistory> CupHistory::Parts() const {
  const auto part = [&](ThinnerKind kind, double part_volume_ml) {
    CupHistory fresh;
    fresh.volume_ml = part_volume_ml;
    fresh.thinner = kind;
    if (kind == thinner) fresh.thinner_ln_ratio = thinner_ln_ratio;
    return fresh;
  };
  std::vector<CupHistory> parts = {part(thinner, volume_ml)};
  double start_ml = 0.0;  // of the last part, as a running total
  double before_ml = 0.0;
  const auto turn_to = [&](ThinnerKind kind) {
    CupHistory& last = parts.back();
    if (last.thinner == kind) return;
    if (before_ml == start_ml) {  // nothing stirred in yet
      CupHistory renamed = part(kind, last.volume_ml);
      renamed.tests = last.tests;
      last = renamed;
      return;
    }
    CupHistory next = part(kind, volume_ml + before_ml);
    for (const CupTest& test : last.tests) {
      if (test.added_ml < last.tests.back().added_ml) continue;
      next.tests.push_back(test);
      next.tests.back().added_ml = 0.0;
    }
    parts.push_back(next);
    start_ml = before_ml;
  };
  for (const CupTest& test : tests) {
    if (test.added_ml > before_ml) {
      turn_to(test.thinner.value_or(thinner));
      before_ml = test.added_ml;
    }
    CupTest own = test;
    own.added_ml -= start_ml;
    own.thinner.reset();
    parts.back().tests.push_back(own);
  }
  turn_to(thinner);
  return parts;
}

}  // namespace flowkin
