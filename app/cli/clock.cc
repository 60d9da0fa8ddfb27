#include "app/cli/clock.h"

#include <ctime>

namespace flowkin {

std::string NowUtc() {
  const std::time_t now = std::time(nullptr);
  std::tm parts{};
  ::gmtime_r(&now, &parts);
  char text[32];
  std::strftime(text, sizeof(text), "%Y-%m-%dT%H:%M:%SZ", &parts);
  return text;
}

UtcTime Now() { return ParseUtc(NowUtc()).value_or(UtcTime{}); }

Result<Day> ReadToday(const std::string& given) {
  const std::string text = given.empty() ? NowUtc().substr(0, 10) : given;
  const std::optional<Day> today = ParseDay(text);
  if (!today) {
    return Error{ErrorCode::kInvalidArgument,
                 "'" + text + "' is no day; write it like 2026-03-01."};
  }
  return *today;
}

}  // namespace flowkin
