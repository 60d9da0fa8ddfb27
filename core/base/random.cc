#include "core/base/random.h"

#include "core/base/check.h"
#include "core/base/distributions.h"

namespace flowkin {

double Random::Uniform() {
  return static_cast<double>(engine_() >> 11) * 0x1.0p-53;
}

double Random::Uniform(double low, double high) {
  return low + (high - low) * Uniform();
}

std::uint64_t Random::Below(std::uint64_t count) {
  FLOWKIN_CHECK(count > 0);
  // Values in the last, incomplete block would favour small results.
  const std::uint64_t limit = count * (engine_.max() / count);
  std::uint64_t value = engine_();
  while (value >= limit) value = engine_();
  return value % count;
}

double Random::Normal() {
  // Half a step off the grid keeps the argument strictly inside (0, 1).
  return NormalQuantile(Uniform() * (1.0 - 0x1.0p-53) + 0x1.0p-54);
}

}  // namespace flowkin
