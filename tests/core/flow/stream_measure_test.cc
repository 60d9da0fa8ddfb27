#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <vector>

#include "core/flow/stream_test.h"
#include "tests/support/synthetic_stream.h"

namespace flowkin {
namespace {

using testing::MakeTrack;
using testing::SyntheticStream;

TEST(StreamMeasure, RefusesWithAReason) {
  std::mt19937 random(12);
  SyntheticStream s;
  s.breaks = false;
  const auto refused = [](const StreamTrack& track) {
    const FlowMeasurement m = MeasureStream(track);
    return m.outcome == Outcome::kRefused && !m.reason.empty() &&
           m.proxies.empty();
  };
  EXPECT_TRUE(refused(MakeTrack(s, random)));
  s.breaks = true;
  StreamTrack track = MakeTrack(s, random);
  ASSERT_FALSE(refused(track));
  track.episodes[0].second_stream = 0.8;
  EXPECT_TRUE(refused(track));
  track = MakeTrack(s, random);
  // The camera is knocked at the moment of the break.
  for (std::size_t i = 0; i < track.episodes[0].t_s.size(); ++i)
    if (std::abs(track.episodes[0].t_s[i] - s.lift_s - s.break_time_s) < 0.05)
      track.episodes[0].change[i] = 12.0F;
  EXPECT_TRUE(refused(track));
  track = MakeTrack(s, random);
  track.episodes[0].edge_width_px = 40.0;
  EXPECT_TRUE(refused(track));
  track = MakeTrack(s, random);
  track.episodes.push_back(track.episodes[0]);
  EXPECT_TRUE(refused(track));
  EXPECT_TRUE(refused(StreamTrack{}));
}

// A codec drops a faint stretch for a while, with paint standing under it: what
// has parted would have fallen away.
TEST(StreamMeasure, ALostStretchIsNoBreak) {
  std::mt19937 random(16);
  const SyntheticStream s;
  StreamTrack track = MakeTrack(s, random);
  StreamEpisode& e = track.episodes[0];
  const double break_s = s.lift_s + s.break_time_s;
  for (std::size_t i = 0; i < e.t_s.size(); ++i) {
    const double left_s = break_s - e.t_s[i];
    if (left_s < 0.2 || left_s > 0.45) continue;
    for (std::size_t p = 6; p <= 7; ++p) e.presence[i * 14 + p] = 0.05F;
  }
  const FlowMeasurement m = MeasureStream(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  // Two neighbouring pieces must go before a gap is a gap.
  EXPECT_NEAR(*m.break_s, break_s, 2.5 / s.fps + 2.0 / s.spread_per_s + 0.03);
}

// In the slender thread (tests/support/stream_sim) the first gap, low in the
// fall, often closes again within a tenth of a second; the thread under the
// stick goes a quarter of a second later. Noise must not hide the first.
TEST(StreamMeasure, FindsAGapThatClosesAgainInNoise) {
  std::mt19937 random(19);
  std::normal_distribution<double> normal;
  for (const double noise : {0.05, 0.12, 0.18}) {
    SyntheticStream s;
    s.presence_noise = noise;
    StreamTrack track = MakeTrack(s, random);
    StreamEpisode& e = track.episodes[0];
    const double break_s = s.lift_s + s.break_time_s;
    for (std::size_t i = 0; i < e.t_s.size(); ++i) {
      const double after_s = e.t_s[i] - break_s;
      if (after_s < 0.0 || after_s > 0.27) continue;
      for (std::size_t p = 0; p < 14; ++p) {
        const bool gap = p >= 11 && after_s < 0.083;
        e.presence[i * 14 + p] =
            static_cast<float>((gap ? 0.0 : 1.0) + noise * normal(random));
      }
    }
    const FlowMeasurement m = MeasureStream(track);
    ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
    EXPECT_NEAR(*m.break_s, break_s, 3.0 / s.fps) << noise;
  }
}

// Under the stick a thread goes last: where the lower half is lost in noise,
// that may be all that is seen of the break, and the uncertainty owns up to it.
TEST(StreamMeasure, ALowerHalfLostInNoiseWidensTheBreak) {
  std::mt19937 random(20);
  std::normal_distribution<double> normal;
  SyntheticStream s;
  s.first_piece = 3;
  s.spread_per_s = 300.0;
  StreamTrack track = MakeTrack(s, random);
  const FlowMeasurement sharp = MeasureStream(track);
  StreamEpisode& e = track.episodes[0];
  for (std::size_t i = 0; i < e.t_s.size(); ++i)
    for (std::size_t p = 8; p < 14; ++p)
      e.presence[i * 14 + p] += static_cast<float>(0.5 * normal(random));
  const FlowMeasurement m = MeasureStream(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_GT(m.proxies[0].ln_value.sd, 1.5 * sharp.proxies[0].ln_value.sd);
}

// A thread that fades out of sight before it parts: the time between is owned
// up to.
TEST(StreamMeasure, AFadingThreadWidensTheBreak) {
  std::mt19937 random(17);
  const SyntheticStream s;
  const FlowMeasurement sharp = MeasureStream(MakeTrack(s, random));
  StreamTrack track = MakeTrack(s, random);
  StreamEpisode& e = track.episodes[0];
  const double break_s = s.lift_s + s.break_time_s;
  for (std::size_t i = 0; i < e.t_s.size(); ++i)
    if (break_s - e.t_s[i] < 0.25)
      for (std::size_t p = 10; p < 14; ++p) e.presence[i * 14 + p] = 0.05F;
  const FlowMeasurement m = MeasureStream(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_GT(m.proxies[0].ln_value.sd, sharp.proxies[0].ln_value.sd);
  EXPECT_GT(*m.break_s, break_s - 0.25);
  EXPECT_LT(*m.break_s, break_s + 0.05);
}

// A codec held the picture from before the break until well after it.
TEST(StreamMeasure, APictureThatStoodStillWidensTheBreak) {
  std::mt19937 random(18);
  SyntheticStream s;
  const FlowMeasurement sharp = MeasureStream(MakeTrack(s, random));
  const double break_s = s.lift_s + s.break_time_s;
  s.break_time_s += 0.3;
  StreamTrack track = MakeTrack(s, random);
  StreamEpisode& e = track.episodes[0];
  for (std::size_t i = 0; i < e.t_s.size(); ++i)
    if (e.t_s[i] > break_s - 0.1 && e.t_s[i] < break_s + 0.3)
      for (std::size_t p = 8; p < 14; ++p)
        e.unchanged_s[i * 14 + p] =
            static_cast<float>(e.t_s[i] - (break_s - 0.1));
  const FlowMeasurement m = MeasureStream(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_GT(m.proxies[0].ln_value.sd, sharp.proxies[0].ln_value.sd);
  EXPECT_LT(std::abs(*m.break_s - break_s), 0.15);
}

// A codec dropped the faint thread low down and left it so: no break seen, but
// from then on there may have been one.
TEST(StreamMeasure, AGapThatStandsStillWidensTheBreak) {
  std::mt19937 random(22);
  const SyntheticStream s;
  StreamTrack track = MakeTrack(s, random);
  StreamEpisode& e = track.episodes[0];
  const double break_s = s.lift_s + s.break_time_s;
  const double drawn_s = break_s - 0.4;
  for (std::size_t i = 0; i < e.t_s.size(); ++i)
    if (e.t_s[i] > drawn_s && e.t_s[i] < break_s)
      for (std::size_t p = 11; p < 14; ++p) {
        e.presence[i * 14 + p] = 0.05F;
        e.unchanged_s[i * 14 + p] = static_cast<float>(e.t_s[i] - drawn_s);
      }
  const FlowMeasurement m = MeasureStream(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  const Estimate& ln = m.proxies[0].ln_value;
  EXPECT_GT(*m.break_s, drawn_s + 0.1);
  EXPECT_LT(std::abs(ln.value - std::log(s.break_time_s)), 2.0 * ln.sd);
  EXPECT_GT(ln.sd, 0.4 / std::sqrt(12.0) / s.break_time_s);
}

// A camera that hangs and comes back shows the whole fall empty at once.
TEST(StreamMeasure, RefusesAFallThatEmptiesInOnePicture) {
  std::mt19937 random(18);
  SyntheticStream s;
  s.spread_per_s = 1e6;
  EXPECT_EQ(MeasureStream(MakeTrack(s, random)).outcome, Outcome::kRefused);
}

// The neck's last straight way to the pinch: rate of a known line, and no
// rate from a bent one.
TEST(StreamMeasure, ThinningRateOfAStraightNeckOnly) {
  std::mt19937 random(13);
  std::normal_distribution<double> normal;
  SyntheticStream s;
  StreamTrack straight = MakeTrack(s, random);
  StreamTrack bent = straight;
  const double break_s = s.lift_s + s.break_time_s;
  const double rate_px_s = 18.0;
  for (std::size_t i = 0; i < straight.episodes[0].t_s.size(); ++i) {
    const double left = break_s - straight.episodes[0].t_s[i];
    const std::size_t at = i * 14 + 5;
    if (left < 0.0 || left > 1.0) continue;
    straight.episodes[0].width_px[at] =
        static_cast<float>(rate_px_s * left + 0.2 * normal(random));
    bent.episodes[0].width_px[at] =
        static_cast<float>(18.0 * std::exp(-3.0 * (1.0 - left)));
  }
  const FlowMeasurement m = MeasureStream(straight);
  ASSERT_EQ(m.proxies.size(), 2U);
  EXPECT_EQ(m.proxies[1].name, "thinning_rate");
  EXPECT_NEAR(m.proxies[1].ln_value.value,
              std::log(rate_px_s),
              3.0 * m.proxies[1].ln_value.sd);
  EXPECT_EQ(MeasureStream(bent).proxies.size(), 1U);
}

TEST(StreamMeasure, TakesEventsSetByHand) {
  std::mt19937 random(21);
  SyntheticStream s;
  s.breaks = false;
  s.end_s = 3.0;
  const StreamTrack unbroken = MakeTrack(s, random);
  ASSERT_EQ(MeasureStream(unbroken).outcome, Outcome::kRefused);
  StreamTestOptions options;
  options.break_s = 6.5;
  FlowMeasurement m = MeasureStream(unbroken, options);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_EQ(m.break_s, 6.5);
  EXPECT_EQ(m.lift_s, unbroken.episodes[0].lift_s);
  EXPECT_DOUBLE_EQ(m.proxies[0].value, 6.5 - *m.lift_s);

  options.lift_s = 1.5;
  m = MeasureStream(unbroken, options);
  EXPECT_DOUBLE_EQ(m.proxies[0].value, 5.0);
  // Both moments are known to about a picture of the 60 in a second.
  EXPECT_GT(m.proxies[0].ln_value.sd, std::sqrt(2.0) * 0.5 / 60.0 / 5.0);
  EXPECT_LT(m.proxies[0].ln_value.sd, 0.05);

  // Both events known, no stream needs to be seen at all.
  StreamTrack nothing = unbroken;
  nothing.episodes.clear();
  EXPECT_DOUBLE_EQ(MeasureStream(nothing, options).proxies[0].value, 5.0);
  options.lift_s.reset();
  EXPECT_EQ(MeasureStream(nothing, options).outcome, Outcome::kRefused);
}

TEST(StreamMeasure, AnEventSetByHandSaysWhichLiftIsMeant) {
  std::mt19937 random(22);
  SyntheticStream s;
  StreamTrack track = MakeTrack(s, random);
  s.lift_s = 12.0;
  StreamTrack later = MakeTrack(s, random);
  track.episodes.push_back(later.episodes[0]);
  track.duration_s = later.duration_s;
  track.num_frames = 60 * static_cast<std::int64_t>(later.duration_s);
  ASSERT_EQ(MeasureStream(track).outcome, Outcome::kRefused);
  StreamTestOptions options;
  options.lift_s = 12.1;
  FlowMeasurement m = MeasureStream(track, options);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  // 50 ms: a gap is one only once two neighbouring pieces are gone.
  EXPECT_NEAR(*m.break_s, 17.0, 0.05);
  options = {};
  options.break_s = 6.2;
  m = MeasureStream(track, options);
  EXPECT_EQ(m.lift_s, track.episodes[0].lift_s);
}

TEST(StreamMeasure, RefusesEventsThatCannotBe) {
  std::mt19937 random(23);
  const StreamTrack track = MakeTrack({}, random);
  const auto refused = [&](std::optional<double> lift_s,
                           std::optional<double> break_s) {
    StreamTestOptions options;
    options.lift_s = lift_s;
    options.break_s = break_s;
    const FlowMeasurement m = MeasureStream(track, options);
    return m.outcome == Outcome::kRefused && !m.reason.empty();
  };
  EXPECT_TRUE(refused({}, 0.5));  // before the lift
  EXPECT_TRUE(refused(7.0, {}));  // after the break
  EXPECT_TRUE(refused(2.0, 2.0));
  EXPECT_TRUE(refused({}, 1e4));
  EXPECT_TRUE(refused(-1.0, {}));
  EXPECT_FALSE(refused(1.2, 5.8));
}

}  // namespace
}  // namespace flowkin
