#include "core/base/utc_time.h"

#include <gtest/gtest.h>

namespace flowkin {
namespace {

TEST(UtcTime, KnowsTheCalendar) {
  EXPECT_EQ(FormatUtc(UtcTime{0}), "1970-01-01T00:00:00.000Z");
  EXPECT_EQ(FormatUtc(UtcTime{-1}), "1969-12-31T23:59:59.999Z");
  // 10^9 s after the epoch, a moment that is told everywhere.
  EXPECT_EQ(FormatUtc(UtcTime{1'000'000'000'000}), "2001-09-09T01:46:40.000Z");
  // RFC 3339, 5.8, gives this moment as an example.
  EXPECT_EQ(ParseUtc("1985-04-12T23:20:50.52Z"), UtcTime{482'196'050'520});
  EXPECT_EQ(FormatUtc(UtcTime{482'196'050'520}), "1985-04-12T23:20:50.520Z");
}

TEST(UtcTime, ReadsWhatItWrites) {
  for (std::int64_t ms = -5'000'000'000'000; ms < 5'000'000'000'000;
       ms += 7'777'777'777) {
    EXPECT_EQ(ParseUtc(FormatUtc(UtcTime{ms})), UtcTime{ms});
  }
  EXPECT_TRUE(ParseUtc("2024-02-29T00:00:00Z"));
}

TEST(UtcTime, RefusesWhatIsNoTime) {
  for (const char* text : {"",
                           "2026-03-01",
                           "2026-03-01T12:00:00",
                           "2026-03-01 12:00:00Z",
                           "2026-02-30T12:00:00Z",
                           "2023-02-29T12:00:00Z",
                           "2026-13-01T12:00:00Z",
                           "2026-03-01T24:00:00Z",
                           "2026-03-01T12:60:00Z",
                           "2026-03-01T12:00:60Z",
                           "2026-03-01T12:00:00.Z",
                           "2026-03-01T12:00:00.1234Z",
                           "2026-03-01T12:00:00Zx",
                           "-026-03-01T12:00:00Z"}) {
    EXPECT_FALSE(ParseUtc(text)) << text;
  }
}

TEST(UtcTime, CountsMinutes) {
  EXPECT_DOUBLE_EQ(MinutesBetween(UtcTime{0}, UtcTime{90'000}), 1.5);
  EXPECT_DOUBLE_EQ(MinutesBetween(UtcTime{90'000}, UtcTime{0}), -1.5);
}

}  // namespace
}  // namespace flowkin
