// Made-up tracks: what is measured and what is refused, and why.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <sstream>
#include <string>

#include "core/flow/level_test.h"

namespace flowkin {
namespace {

using ::testing::HasSubstr;

constexpr double kFps = 60.0;
constexpr double kLaid_s = 2.0;
constexpr double kClock_s = 0.5;

/// A ribbon laid between 1 and 2 s, 20 codes of contrast, fading with 0.5 s.
ReliefTrack GoodTrack(double end_s = 4.5) {
  ReliefTrack track;
  track.num_frames = static_cast<int>(end_s * kFps);
  track.frame_interval_s = 1.0 / kFps;
  track.last_t_s = (track.num_frames - 1) / kFps;
  track.width_px = 640;
  track.height_px = 360;
  track.outline_px = {{200, 100}, {400, 100}, {400, 250}, {200, 250}};
  track.bursts = {{1.0, kLaid_s, 60.0}};
  track.laid_s = kLaid_s;
  track.luma_spread = 40.0;
  track.sharpness = 0.2;
  track.picture_motion = 15.0;
  track.calm_motion = 1.0;
  track.start_contrast = 20.0;
  track.change_after = 20.0;
  track.remaining_share = 0.02;
  track.unlike_before = 0.06;
  track.drift_share = 0.0;
  track.flat_s = track.last_t_s;
  std::vector<double> t_s;
  std::vector<double> relief;
  for (int i = 0; i < track.num_frames; ++i) {
    ReliefSample s;
    s.t_s = i / kFps;
    if (s.t_s > kLaid_s) {
      s.contrast = 20.0 * (std::exp(-(s.t_s - kLaid_s) / kClock_s) -
                           std::exp(-(track.flat_s - kLaid_s) / kClock_s));
      s.contrast_sd = 0.05;
      t_s.push_back(s.t_s - kLaid_s);
      relief.push_back(s.contrast);
    }
    track.samples.push_back(s);
  }
  track.decay_time_s = ReliefDecayTime(t_s, relief, track.flat_s - kLaid_s);
  return track;
}

TEST(MeasureLevel, MeasuresAPlainDecay) {
  const FlowMeasurement m = MeasureLevel(GoodTrack());
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_DOUBLE_EQ(m.laid_s.value(), kLaid_s);
  ASSERT_EQ(m.proxies.size(), 1U);
  EXPECT_EQ(m.proxies[0].name, "decay_time");
  // An exponential has one time constant; the flat picture's share of it is
  // solved for to 1e-4.
  EXPECT_NEAR(m.proxies[0].value, kClock_s, 1e-3);
  EXPECT_NEAR(m.proxies[0].ln_value.value, std::log(kClock_s), 2e-3);
  EXPECT_GT(m.proxies[0].ln_value.sd, 0.0);
  EXPECT_DOUBLE_EQ(m.proxies[0].exponent.value, 1.0);
  ASSERT_EQ(m.curves.size(), 1U);
  EXPECT_EQ(m.curves[0].name, "relief");
  EXPECT_GT(m.curves[0].t_s.front(), 0.0);
  EXPECT_LE(m.curves[0].t_s.back(), 4.5 - kLaid_s);
  EXPECT_TRUE(m.warnings.empty());
}

// The flat picture's own relief does not shorten the decay time.
TEST(ReliefDecayTime, DoesNotDependOnWhenTheClipEnds) {
  for (double end_s : {3.6, 4.0, 4.5, 6.0}) {
    EXPECT_NEAR(GoodTrack(end_s).decay_time_s, kClock_s, 5e-3) << end_s;
  }
}

TEST(ReliefDecayTime, IsZeroWhereNothingFades) {
  EXPECT_EQ(ReliefDecayTime({}, {}, 1.0), 0.0);
  EXPECT_EQ(ReliefDecayTime({0, 1, 2, 3, 4}, {1, 1, 1, 1, 1}, 4.0), 0.0);
  EXPECT_EQ(ReliefDecayTime({0, 1, 2, 3, 4}, {-1, -1, 0, 0, 0}, 4.0), 0.0);
}

struct Mishap {
  const char* name;
  void (*spoil)(ReliefTrack&);
  const char* word;  ///< the reason must hold it
};

const Mishap kMishaps[] = {
    {"Empty", [](ReliefTrack& t) { t = ReliefTrack(); }, "too short"},
    {"Black", [](ReliefTrack& t) { t.luma_spread = 0.1; }, "shows nothing"},
    {"Blurred", [](ReliefTrack& t) { t.sharpness = 0.03; }, "blurred"},
    {"Frozen", [](ReliefTrack& t) { t.picture_motion = 1.1; }, "Nothing moves"},
    {"StillLaying",
     [](ReliefTrack& t) { t.end_motion_share = 0.8; },
     "still moves"},
    {"NoOutline", [](ReliefTrack& t) { t.outline_px.clear(); }, "No ribbon"},
    {"Backwards",
     [](ReliefTrack& t) {
       t.change_before = 20.0;
       t.change_after = 1.0;
     },
     "backwards"},
    {"MovedCamera", [](ReliefTrack& t) { t.camera_jump_px = 60.0; }, "moved"},
    {"EndsEarly", [](ReliefTrack& t) { t = GoodTrack(3.0); }, "ends before"},
    {"NeverLaid",
     [](ReliefTrack& t) { t.bursts[0].peak = 3.0; },
     "laying of the ribbon is not"},
    {"TwoRibbons",
     [](ReliefTrack& t) {
       t.bursts.insert(t.bursts.begin(), {0.1, 0.6, 55.0});
     },
     "More than one ribbon"},
    {"Stiff", [](ReliefTrack& t) { t.remaining_share = 0.4; }, "stiff"},
    {"StickTakenOut",
     [](ReliefTrack& t) { t.unlike_before = 1.8; },
     "does not come back"},
    {"WanderingMirrorImage",
     [](ReliefTrack& t) { t.drift_share = 0.1; },
     "mirrors in the paint moved"},
    // Over for a quarter of a second, which is twice its clock.
    {"HiddenByWhatLeaves",
     [](ReliefTrack& t) {
       t.bursts = {{0.5, 1.2, 60.0}, {kLaid_s - 0.25, kLaid_s, 60.0}};
       t.decay_time_s = 0.25;
     },
     "moved over the ribbon"},
    {"TooThin", [](ReliefTrack& t) { t.frame_interval_s = 0.2; }, "too thin"},
    {"Unseen",
     [](ReliefTrack& t) { t.start_contrast = 0.1; },
     "hardly be seen"},
    // Relief is never below zero, so this climb is no surface that moved.
    {"BelowZero",
     [](ReliefTrack& t) {
       for (auto& s : t.samples) {
         if (s.t_s > 3.0) s.contrast += 5.0 * std::sin(9.0 * s.t_s);
       }
     },
     "hardly be seen"},
    // A clock of 0.5 s in 10 pictures; a highlight that stands, then goes.
    {"RaggedAndFast",
     [](ReliefTrack& t) {
       t.frame_interval_s = 0.05;
       for (auto& s : t.samples) {
         if (s.t_s < kLaid_s) continue;
         const double late_s = std::max(0.0, s.t_s - kLaid_s - 0.5);
         s.contrast = 20.0 * std::exp(-20.0 * late_s);
       }
     },
     "60 pictures"},
    {"Disturbed",
     [](ReliefTrack& t) {
       for (auto& s : t.samples) {
         if (s.t_s > 3.0 && s.t_s < 3.4) s.contrast += 12.0;
       }
     },
     "disturbed"}};

TEST(MeasureLevel, RefusesWithAReason) {
  for (const Mishap& mishap : kMishaps) {
    SCOPED_TRACE(mishap.name);
    ReliefTrack track = GoodTrack();
    mishap.spoil(track);
    const FlowMeasurement m = MeasureLevel(track);
    EXPECT_EQ(m.outcome, Outcome::kRefused);
    EXPECT_THAT(m.reason, HasSubstr(mishap.word));
    EXPECT_TRUE(m.proxies.empty());
    EXPECT_TRUE(m.curves.empty());
  }
}

/// Contrast that catches the light only where the relief is steep: it stands,
/// then goes. `height` is the ribbon's.
ReliefTrack StandingTrack(double height) {
  ReliefTrack track = GoodTrack();
  std::vector<double> t_s;
  std::vector<double> relief;
  for (ReliefSample& s : track.samples) {
    if (s.t_s <= kLaid_s) continue;
    const double t = s.t_s - kLaid_s;
    const double power = std::pow(height * std::exp(-t / kClock_s), 3.0);
    s.contrast = 20.0 * power / (0.05 + power);
    t_s.push_back(t);
    relief.push_back(s.contrast);
  }
  track.start_contrast = relief.front();
  track.decay_time_s = ReliefDecayTime(t_s, relief, track.flat_s - kLaid_s);
  return track;
}

// How high the ribbon was laid must not matter; where the contrast is not
// proportional to the relief it does, and the interval holds that.
TEST(MeasureLevel, CountsAContrastThatStandsBeforeItFalls) {
  const double plain_sd = MeasureLevel(GoodTrack()).curves[0].stretch_sd;
  EXPECT_LT(plain_sd, 0.01);
  const FlowMeasurement low = MeasureLevel(StandingTrack(1.0));
  const FlowMeasurement high = MeasureLevel(StandingTrack(1.2));
  ASSERT_EQ(low.outcome, Outcome::kMeasured) << low.reason;
  ASSERT_EQ(high.outcome, Outcome::kMeasured) << high.reason;
  std::vector<FlowCurve> curves{low.curves[0], high.curves[0]};
  const DecayAlignment fit = AlignDecays(curves);
  const double apart = fit.ln_clock[1].value - fit.ln_clock[0].value;
  EXPECT_GT(apart, 0.03);
  EXPECT_LT(
      apart,
      2.0 * std::hypot(low.curves[0].stretch_sd, high.curves[0].stretch_sd));
}

// A mirror image that drifts steadily and looks half like the relief, or half
// like its negative: the decay time goes astray, by about its uncertainty.
TEST(MeasureLevel, CountsADriftInTheInterval) {
  for (const double share : {0.01, 0.02, 0.03}) {
    for (const double alike : {-0.5, 0.5}) {
      SCOPED_TRACE(::testing::Message() << share << ' ' << alike);
      ReliefTrack track = GoodTrack();
      track.drift_share = share;
      std::vector<double> t_s;
      std::vector<double> relief;
      for (ReliefSample& s : track.samples) {
        if (s.t_s <= kLaid_s) continue;
        s.contrast += alike * share * 20.0 * (track.flat_s - s.t_s) / kClock_s;
        t_s.push_back(s.t_s - kLaid_s);
        relief.push_back(s.contrast);
      }
      track.decay_time_s = ReliefDecayTime(t_s, relief, track.flat_s - kLaid_s);
      const FlowMeasurement m = MeasureLevel(track);
      ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
      const Estimate& ln_clock = m.proxies[0].ln_value;
      const double error = std::abs(ln_clock.value - std::log(kClock_s));
      EXPECT_GT(error, share);
      EXPECT_LT(error, 1.5 * ln_clock.sd);
      EXPECT_LT(error, 1.5 * m.curves[0].stretch_sd);
    }
  }
}

TEST(MeasureLevel, WarnsOfALateDrip) {
  ReliefTrack track = GoodTrack();
  track.bursts = {{0.5, 1.4, 60.0}, {1.95, kLaid_s, 40.0}};
  const FlowMeasurement m = MeasureLevel(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_EQ(m.warnings.size(), 1U);
}

TEST(MeasureLevel, AStickThatComesInIsNoRibbon) {
  ReliefTrack track = GoodTrack();
  track.bursts.insert(track.bursts.begin(), {0.5, 0.55, 70.0});
  const FlowMeasurement m = MeasureLevel(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_EQ(m.warnings.size(), 1U);
}

TEST(ReliefTrace, HasOneLinePerSample) {
  const ReliefTrack track = GoodTrack();
  std::ostringstream out;
  WriteReliefTrace(out, track);
  const std::string text = out.str();
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n'),
            std::ssize(track.samples) + 1);
  EXPECT_THAT(text, ::testing::StartsWith("t_s,since_laid_s,"));
}

}  // namespace
}  // namespace flowkin
