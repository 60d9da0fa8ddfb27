#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace flowkin {

/// A moment, UTC. The engine is told the time; it never asks a clock.
struct UtcTime {
  std::int64_t ms = 0;  ///< milliseconds since 1970-01-01T00:00:00Z

  friend bool operator==(UtcTime a, UtcTime b) { return a.ms == b.ms; }
  friend bool operator<(UtcTime a, UtcTime b) { return a.ms < b.ms; }
  friend bool operator<=(UtcTime a, UtcTime b) { return a.ms <= b.ms; }
};

/// Minutes from `earlier` to `later`; negative where they are the other way
/// round.
double MinutesBetween(UtcTime earlier, UtcTime later);

/// "2026-03-01T12:00:00.250Z" (ISO 8601, proleptic Gregorian calendar).
std::string FormatUtc(UtcTime time);

/// Reads what FormatUtc writes; the fraction of a second may be missing or of
/// 1 to 3 digits. Empty where `text` is anything else, such as a 30th of
/// February.
std::optional<UtcTime> ParseUtc(const std::string& text);

}  // namespace flowkin
