#pragma once

#include <cstdint>
#include <random>

namespace flowkin {

/// Seeded random numbers, the same on every machine: the C++ standard fixes
/// std::mt19937_64 but not its distributions, so those are our own.
class Random {
 public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}

  /// In [0, 1), 53 random bits.
  double Uniform();
  /// In [low, high).
  double Uniform(double low, double high);
  /// One of 0 .. count - 1; count > 0.
  std::uint64_t Below(std::uint64_t count);
  /// Standard normal.
  double Normal();
  double Normal(double mean, double sd) { return mean + sd * Normal(); }

 private:
  std::mt19937_64 engine_;
};

}  // namespace flowkin
