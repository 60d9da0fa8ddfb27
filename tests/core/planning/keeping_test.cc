#include "core/planning/keeping.h"

#include <gtest/gtest.h>

#include <ctime>

namespace flowkin {
namespace {

using std::chrono::days;

TEST(Calendar, AgreesWithTheCLibrary) {
  // timegm of the C library as the second opinion, over 60 years of days.
  const Day first = *ParseDay("1990-01-01");
  for (int i = 0; i < 60 * 365; i += 13) {
    const Day day = first + days(i);
    std::tm time{};
    time.tm_year = 90;
    time.tm_mday = 1 + i;
    const std::time_t seconds = ::timegm(&time);
    char text[16];
    std::strftime(text, sizeof(text), "%Y-%m-%d", std::gmtime(&seconds));
    EXPECT_EQ(FormatDay(day), text);
    EXPECT_EQ(*ParseDay(text), day);
  }
}

TEST(Calendar, RefusesWhatIsNoDay) {
  for (const char* text : {"",
                           "2026-02-29",
                           "2026-13-01",
                           "2026-00-10",
                           "26-01-01",
                           "2026/01/01",
                           "2026-01-01 12:00",
                           "2026-1-1",
                           "1899-12-31",
                           "2026-01-0a"}) {
    EXPECT_FALSE(ParseDay(text)) << text;
  }
  EXPECT_TRUE(ParseDay("2028-02-29"));
  EXPECT_TRUE(ParseDay("2026-03-01T12:00:00Z"));
}

TEST(Calendar, AddsMonthsToTheEndOfShortOnes) {
  EXPECT_EQ(FormatDay(AddMonths(*ParseDay("2026-08-31"), 6)), "2027-02-28");
  EXPECT_EQ(FormatDay(AddMonths(*ParseDay("2026-08-15"), 12)), "2027-08-15");
  EXPECT_EQ(FormatDay(AddMonths(*ParseDay("2026-12-15"), 1)), "2027-01-15");
}

TEST(Keeping, WaterShortensIt) {
  const Day mixed = *ParseDay("2026-03-01");
  const KeepsUntil closed = HowLongItKeeps(mixed, false);
  EXPECT_EQ(FormatDay(closed.use_first), "2026-09-01");
  EXPECT_EQ(FormatDay(closed.discard), "2027-03-01");
  const KeepsUntil watered = HowLongItKeeps(mixed, true);
  EXPECT_EQ(FormatDay(watered.use_first), "2026-03-08");
  EXPECT_EQ(FormatDay(watered.discard), "2026-03-29");
  EXPECT_EQ(StateOfJar({"a", 1.0, mixed, true}, mixed), JarState::kGood);
  EXPECT_EQ(StateOfJar({"a", 1.0, mixed, true}, mixed + days(7)),
            JarState::kUseFirst);
  EXPECT_EQ(StateOfJar({"a", 1.0, mixed, true}, mixed + days(28)),
            JarState::kOverdue);
}

TEST(Keeping, UsesFirstWhatIsGoneFirst) {
  const Day day = *ParseDay("2026-03-01");
  std::vector<Jar> jars = {{"old medium", 500.0, day, false},
                           {"small", 20.0, day + days(30), true},
                           {"large", 60.0, day + days(30), true},
                           {"older", 5.0, day, true}};
  std::stable_sort(jars.begin(), jars.end(), GoesBefore);
  ASSERT_EQ(jars.size(), 4u);
  EXPECT_EQ(jars[0].name, "older");
  EXPECT_EQ(jars[1].name, "large");
  EXPECT_EQ(jars[2].name, "small");
  EXPECT_EQ(jars[3].name, "old medium");
}

TEST(Drying, ColdDampAndThickTakeLonger) {
  const DryingDays usual = HowLongItDries({21.0, 50.0, 0.3});
  EXPECT_TRUE(usual.why.empty());
  for (const DryingRoom& room : {DryingRoom{15.0, {}, {}},
                                 DryingRoom{{}, 75.0, {}},
                                 DryingRoom{{}, {}, 0.6}}) {
    const DryingDays late = HowLongItDries(room);
    EXPECT_GT(late.varnish_not_before, usual.varnish_not_before);
    EXPECT_GT(late.touch_dry_by, usual.touch_dry_by);
    EXPECT_EQ(late.why.size(), 1u);
  }
  EXPECT_EQ(HowLongItDries({8.0, 50.0, 0.3}).why.size(), 2u);
  EXPECT_TRUE(HowLongItDries({}).why.empty());
}

}  // namespace
}  // namespace flowkin
