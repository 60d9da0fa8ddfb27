#include "core/base/utc_time.h"

#include <chrono>
#include <cstdio>

namespace flowkin {
namespace {

constexpr std::int64_t kMsPerMinute = 60'000;
constexpr std::int64_t kMsPerDay = 86'400'000;

/// `count` digits at `*at`, moving past them; -1 where something else stands.
int Digits(const std::string& text, std::size_t& at, std::size_t count) {
  int value = 0;
  for (std::size_t i = 0; i < count; ++i, ++at) {
    if (at >= text.size() || text[at] < '0' || text[at] > '9') return -1;
    value = 10 * value + (text[at] - '0');
  }
  return value;
}

bool Mark(const std::string& text, std::size_t& at, char mark) {
  return at < text.size() && text[at++] == mark;
}

}  // namespace

double MinutesBetween(UtcTime earlier, UtcTime later) {
  return static_cast<double>(later.ms - earlier.ms) /
         static_cast<double>(kMsPerMinute);
}

std::string FormatUtc(UtcTime time) {
  std::int64_t days = time.ms / kMsPerDay;
  std::int64_t rest_ms = time.ms % kMsPerDay;
  if (rest_ms < 0) {
    rest_ms += kMsPerDay;
    --days;
  }
  const std::chrono::year_month_day date{std::chrono::sys_days{
      std::chrono::days{static_cast<std::chrono::days::rep>(days)}}};
  char text[64];
  std::snprintf(text,
                sizeof(text),
                "%04d-%02u-%02uT%02d:%02d:%02d.%03dZ",
                static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()),
                static_cast<unsigned>(date.day()),
                static_cast<int>(rest_ms / 3'600'000),
                static_cast<int>(rest_ms / kMsPerMinute % 60),
                static_cast<int>(rest_ms / 1000 % 60),
                static_cast<int>(rest_ms % 1000));
  return text;
}

std::optional<UtcTime> ParseUtc(const std::string& text) {
  std::size_t at = 0;
  const int year = Digits(text, at, 4);
  if (year < 0 || !Mark(text, at, '-')) return std::nullopt;
  const int month = Digits(text, at, 2);
  if (month < 0 || !Mark(text, at, '-')) return std::nullopt;
  const int day = Digits(text, at, 2);
  if (day < 0 || !Mark(text, at, 'T')) return std::nullopt;
  const int hour = Digits(text, at, 2);
  if (hour < 0 || hour > 23 || !Mark(text, at, ':')) return std::nullopt;
  const int minute = Digits(text, at, 2);
  if (minute < 0 || minute > 59 || !Mark(text, at, ':')) return std::nullopt;
  const int second = Digits(text, at, 2);
  if (second < 0 || second > 59) return std::nullopt;
  int ms = 0;
  if (at < text.size() && text[at] == '.') {
    ++at;
    int unit = 100;
    const std::size_t first = at;
    while (at < text.size() && text[at] >= '0' && text[at] <= '9') {
      if (unit == 0) return std::nullopt;
      ms += unit * (text[at++] - '0');
      unit /= 10;
    }
    if (at == first) return std::nullopt;
  }
  if (!Mark(text, at, 'Z') || at != text.size()) return std::nullopt;
  const std::chrono::year_month_day date{
      std::chrono::year{year},
      std::chrono::month{static_cast<unsigned>(month)},
      std::chrono::day{static_cast<unsigned>(day)}};
  if (!date.ok()) return std::nullopt;
  const std::int64_t days =
      std::chrono::sys_days{date}.time_since_epoch().count();
  return UtcTime{days * kMsPerDay + hour * 3'600'000LL + minute * kMsPerMinute +
                 second * 1000LL + ms};
}

}  // namespace flowkin
