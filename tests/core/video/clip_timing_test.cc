#include "core/video/clip_timing.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <limits>
#include <vector>

namespace flowkin {
namespace {

TEST(PlayingRate, IsExactForEvenTimes) {
  std::vector<std::int64_t> ticks;
  for (int i = 0; i < 50; ++i) ticks.push_back(i * 3003);
  EXPECT_DOUBLE_EQ(*PlayingRateHz(ticks, 90000.0), 30000.0 / 1001.0);
}

TEST(PlayingRate, IgnoresLostFramesAndOrder) {
  std::vector<std::int64_t> ticks;
  for (int i = 0; i < 60; ++i) {
    if (i % 7 != 3) ticks.push_back((i ^ 1) * 3000);
  }
  EXPECT_EQ(*PlayingRateHz(ticks, 90000.0), 30.0);
}

TEST(PlayingRate, IsNotBiasedByMilliseconds) {
  std::vector<std::int64_t> ticks;
  for (int i = 0; i <= 300; ++i) ticks.push_back((i * 1000 + 15) / 30);
  EXPECT_EQ(*PlayingRateHz(ticks, 1000.0), 30.0);
}

TEST(PlayingRate, NeedsTwoTimes) {
  EXPECT_FALSE(PlayingRateHz({}, 1.0));
  EXPECT_FALSE(PlayingRateHz({1}, 1.0));
  EXPECT_FALSE(PlayingRateHz({1, 1}, 1.0));
}

TEST(CaptureRateTag, ReadsBothFamiliesAndNothingElse) {
  EXPECT_EQ(CaptureRateFromTag("com.android.capture.fps", "240.000000"), 240.0);
  EXPECT_EQ(CaptureRateFromTag("com.android.capture.fps", "120"), 120.0);
  EXPECT_EQ(CaptureRateFromTag("com.example.quicktime.capture-fps", "240"),
            240.0);
  EXPECT_EQ(CaptureRateFromTag("COM.EXAMPLE.CAPTURE_FPS", " 960"), 960.0);
  EXPECT_FALSE(CaptureRateFromTag("com.android.version", "12"));
  EXPECT_FALSE(CaptureRateFromTag(
      "com.example.quicktime.full-frame-rate-playback-intent", "1"));
  EXPECT_FALSE(CaptureRateFromTag("fps", "30"));
}

TEST(CaptureRateTag, RefusesNonsense) {
  for (const char* value :
       {"", "fast", "0", "-30", "nan", "inf", "1e300", "\x43\x70"}) {
    EXPECT_FALSE(CaptureRateFromTag("com.android.capture.fps", value)) << value;
  }
}

TEST(FindTimeScale, SlowMotionByTag) {
  const auto scale = FindTimeScale(30.0, std::nullopt, 240.0);
  ASSERT_TRUE(scale);
  EXPECT_EQ(scale->value, 0.125);
  EXPECT_EQ(scale->warning, "");
}

TEST(FindTimeScale, StreamAtCaptureRateIsRealTime) {
  EXPECT_EQ(FindTimeScale(239.98, std::nullopt, 240.0)->value, 1.0);
  EXPECT_EQ(FindTimeScale(29.97, std::nullopt, 30.0)->value, 1.0);
  EXPECT_EQ(FindTimeScale(29.97, 30.0, std::nullopt)->value, 1.0);
}

TEST(FindTimeScale, PoorLightIsNotSlowMotion) {
  // Tagged 30, exposure brought it down to 20.
  const auto scale = FindTimeScale(20.0, std::nullopt, 30.0);
  ASSERT_TRUE(scale);
  EXPECT_EQ(scale->value, 1.0);
  EXPECT_NE(scale->warning, "");
}

TEST(FindTimeScale, DoubtfulTagsWarn) {
  const auto slow = FindTimeScale(30.0, std::nullopt, 60.0);
  EXPECT_EQ(slow->value, 0.5);
  EXPECT_NE(slow->warning, "");
  const auto lapse = FindTimeScale(30.0, std::nullopt, 2.0);
  EXPECT_EQ(lapse->value, 15.0);
  EXPECT_NE(lapse->warning, "");
  EXPECT_EQ(FindTimeScale(30.0, std::nullopt, 90000.0)->value, 1.0);
}

TEST(FindTimeScale, ThePersonOverridesTheTag) {
  const auto scale = FindTimeScale(30.0, 120.0, 240.0);
  EXPECT_EQ(scale->value, 0.25);
  EXPECT_NE(scale->warning, "");
  EXPECT_EQ(FindTimeScale(30.0, 30.0, 240.0)->value, 1.0);
}

TEST(FindTimeScale, RefusesImpossibleRates) {
  for (double shot_hz : {0.0,
                         -1.0,
                         1e-9,
                         1e9,
                         std::numeric_limits<double>::infinity(),
                         std::numeric_limits<double>::quiet_NaN()}) {
    const auto scale = FindTimeScale(30.0, shot_hz, std::nullopt);
    ASSERT_FALSE(scale) << shot_hz;
    EXPECT_EQ(scale.error().code, ErrorCode::kInvalidArgument);
  }
}

}  // namespace
}  // namespace flowkin
