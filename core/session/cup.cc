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

}  // namespace flowkin
