#pragma once

#include <string>

#include "core/base/result.h"
#include "core/base/utc_time.h"
#include "core/planning/calendar.h"

namespace flowkin {

/// Now, as "2026-03-01T12:00:00Z".
std::string NowUtc();
UtcTime Now();

/// Today, or the day that is given; kInvalidArgument where it is none.
Result<Day> ReadToday(const std::string& given);

}  // namespace flowkin
