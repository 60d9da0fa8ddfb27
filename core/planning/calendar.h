#pragma once

#include <chrono>
#include <optional>
#include <string>

namespace flowkin {

using Day = std::chrono::sys_days;

/// "2026-03-01" (ISO 8601), also at the head of a UTC time; none where it is no
/// day of the calendar between 1900 and 2999.
std::optional<Day> ParseDay(const std::string& text);
std::string FormatDay(Day day);
/// So many months on; the last of the month where it has no such day.
Day AddMonths(Day day, int months);

}  // namespace flowkin
