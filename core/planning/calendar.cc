#include "core/planning/calendar.h"

#include <cstdio>

namespace flowkin {
namespace {

std::optional<int> Digits(const std::string& text,
                          std::size_t at,
                          std::size_t count) {
  int value = 0;
  for (std::size_t i = at; i < at + count; ++i) {
    if (i >= text.size() || text[i] < '0' || text[i] > '9') return std::nullopt;
    value = 10 * value + (text[i] - '0');
  }
  return value;
}

}  // namespace

std::optional<Day> ParseDay(const std::string& text) {
  if (text.size() < 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  if (text.size() > 10 && text[10] != 'T') return std::nullopt;
  const auto year = Digits(text, 0, 4);
  const auto month = Digits(text, 5, 2);
  const auto day = Digits(text, 8, 2);
  if (!year || !month || !day || *year < 1900 || *year > 2999) {
    return std::nullopt;
  }
  const std::chrono::year_month_day date{
      std::chrono::year(*year),
      std::chrono::month(static_cast<unsigned>(*month)),
      std::chrono::day(static_cast<unsigned>(*day))};
  if (!date.ok()) return std::nullopt;
  return Day(date);
}

std::string FormatDay(Day day) {
  const std::chrono::year_month_day date(day);
  char text[40];
  std::snprintf(text,
                sizeof(text),
                "%04d-%02u-%02u",
                static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()),
                static_cast<unsigned>(date.day()));
  return text;
}

Day AddMonths(Day day, int months) {
  std::chrono::year_month_day date(day);
  date += std::chrono::months(months);
  if (!date.ok()) date = date.year() / date.month() / std::chrono::last;
  return Day(date);
}

}  // namespace flowkin
