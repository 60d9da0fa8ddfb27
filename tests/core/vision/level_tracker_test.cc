// Made-up pictures: a ribbon whose decay time is known, under mishaps that pass
// for relief or hide it. Truth is how the pictures were made.

#include "core/vision/level_tracker.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <vector>

#include "core/flow/level_test.h"

namespace flowkin {
namespace {

constexpr double kFps = 60.0;
constexpr double kLaying_s = 1.2;
constexpr double kLaid_s = 1.8;
constexpr double kClock_s = 0.5;
constexpr double kRelief = 40.0;  ///< luma codes at the start, amplitude
const cv::Size kSize(320, 240);
const cv::Rect kPaint(100, 60, 120, 120);

/// Smooth noise, mean 0, standard deviation 1.
cv::Mat1f Blotches(std::uint64_t seed, double feature_px) {
  cv::RNG random(seed);
  cv::Mat1f noise(kSize);
  random.fill(noise, cv::RNG::NORMAL, 0.0, 1.0);
  cv::GaussianBlur(noise, noise, {}, feature_px);
  cv::Scalar mean;
  cv::Scalar sd;
  cv::meanStdDev(noise, mean, sd);
  return cv::Mat1f((noise - mean[0]) / sd[0]);
}

struct Bench {
  double around = 0.0;    ///< codes by which the ground's look wavers, rms
  double on_paint = 0.0;  ///< the same on the paint
  double blob = 0.0;      ///< soft mirror image on the paint, codes
  double blob_speed_px_s = 0.0;
  std::uint64_t pattern = 2;  ///< of what wavers
  double stripes = 0.0;       ///< depth of those a lamp on the mains makes
  bool upright = false;       ///< they stand: the camera was turned
  double starts_s = 0.0;      ///< pictures before are not in the clip
};

std::vector<Frame> Film(const Bench& bench) {
  const cv::Mat1f ground(110.0 + 12.0 * Blotches(1, 6.0));
  const cv::Mat1f wavering = Blotches(bench.pattern, 4.0);
  cv::RNG random(3);
  std::vector<Frame> frames;
  for (int i = 0; i < 4.6 * kFps; ++i) {
    const double t = i / kFps;
    if (t < bench.starts_s) continue;
    const double waver = std::sqrt(2.0) * std::sin(2.0 * M_PI * 0.8 * t + 1.0);
    cv::Mat1f look(ground + bench.around * waver * wavering);
    cv::Mat1f paint = look(kPaint);
    paint.setTo(150.0F);
    paint += bench.on_paint * waver * wavering(kPaint);
    const double relief =
        t < kLaid_s ? 0.0 : kRelief * std::exp(-(t - kLaid_s) / kClock_s);
    const double blob_x = 25.0 + bench.blob_speed_px_s * t;
    for (int y = 0; y < paint.rows; ++y) {
      for (int x = 0; x < paint.cols; ++x) {
        paint(y, x) += static_cast<float>(
            relief * std::cos(2.0 * M_PI * x / 30.0) +
            bench.blob *
                std::exp(-(std::pow(x - blob_x, 2) + std::pow(y - 60.0, 2)) /
                         (2.0 * 25.0 * 25.0)));
      }
    }
    if (t > kLaying_s && t < kLaid_s) {
      // The thread that is laid wanders over the paint.
      const double share = (t - kLaying_s) / (kLaid_s - kLaying_s);
      const int x = static_cast<int>(share * 110.0);
      paint.colRange(x, x + 8).setTo(60.0F);
    }
    // 100 Hz, and a shutter that takes 20 ms from one side to the other.
    const int lines = bench.upright ? kSize.width : kSize.height;
    for (int k = 0; bench.stripes > 0.0 && k < lines; ++k) {
      const double at_s = t + 0.02 * k / lines;
      cv::Mat line = bench.upright ? look.col(k) : look.row(k);
      line *= 1.0 + bench.stripes * std::sin(2.0 * M_PI * 100.0 * at_s);
    }
    cv::Mat1f noise(kSize);
    random.fill(noise, cv::RNG::NORMAL, 0.0, 1.5);
    Frame frame;
    cv::Mat(look + noise).convertTo(frame.luma, CV_8U);
    frame.timestamp = std::chrono::nanoseconds(
        static_cast<std::int64_t>((t - bench.starts_s) * 1e9));
    frames.push_back(std::move(frame));
  }
  return frames;
}

ReliefTrack Track(const Bench& bench) {
  LevelTracker tracker;
  for (const Frame& frame : Film(bench)) tracker.Add(frame);
  return tracker.Finish();
}

// Of one exponential's decay time; what is left is the rounding to whole codes.
constexpr double kDecayRel = 0.05;

TEST(LevelTracker, FindsAMadeUpDecay) {
  const ReliefTrack track = Track({});
  ASSERT_TRUE(track.laid_s);
  EXPECT_NEAR(*track.laid_s, kLaid_s, 2.0 / kFps);
  EXPECT_NEAR(track.decay_time_s / kClock_s, 1.0, kDecayRel);
  ASSERT_TRUE(track.drift_share);
  EXPECT_LT(*track.drift_share, 0.01);
}

// What wavers everywhere, as coding and lamps do, is seen around the paint and
// taken out on it.
TEST(LevelTracker, TakesOutWhatWaversEverywhere) {
  // Chance likeness of the pattern and the relief moves the decay by a tenth
  // either way; over six patterns the mean is held to that.
  double sum = 0.0;
  for (std::uint64_t pattern = 2; pattern < 8; ++pattern) {
    Bench bench;
    bench.pattern = pattern;
    bench.around = bench.on_paint = 3.0;
    const double found = Track(bench).decay_time_s / kClock_s;
    EXPECT_NEAR(found, 1.0, 0.3) << pattern;
    sum += found;
  }
  EXPECT_NEAR(sum / 6.0, 1.0, 0.1);
}

// Printed ground that wavers, as a camera's sway makes it do, says nothing of
// smooth paint: no relief is below zero.
TEST(LevelTracker, TakesNoMoreOutThanThePaintShows) {
  Bench bench;
  bench.around = 3.0;
  EXPECT_NEAR(Track(bench).decay_time_s / kClock_s, 1.0, kDecayRel);
}

// A soft mirror image that wanders over the paint makes the decay look slower.
// It is counted in the interval or refused for what it is.
TEST(LevelTracker, CountsAMirrorImageThatWanders) {
  int measured = 0;
  int refused = 0;
  for (const double blob : {6.0, 20.0, 60.0}) {
    for (const double speed_px_s : {-8.0, 14.0}) {
      SCOPED_TRACE(::testing::Message() << blob << ' ' << speed_px_s);
      Bench bench;
      bench.blob = blob;
      bench.blob_speed_px_s = speed_px_s;
      const FlowMeasurement m = MeasureLevel(Track(bench));
      if (m.outcome == Outcome::kRefused) {
        EXPECT_NE(m.reason.find("mirrors in the paint moved"),
                  std::string::npos)
            << m.reason;
        ++refused;
        continue;
      }
      ++measured;
      const Estimate& ln_clock = m.proxies[0].ln_value;
      EXPECT_NEAR(ln_clock.value, std::log(kClock_s), 2.0 * ln_clock.sd);
      EXPECT_GT(m.curves[0].stretch_sd, 0.0);
    }
  }
  EXPECT_GT(measured, 0);
  EXPECT_GT(refused, 0);
}

// Stripes of a tenth of the light are half as deep as the relief's shading.
TEST(LevelTracker, TakesOutALampsStripes) {
  for (const bool upright : {false, true}) {
    SCOPED_TRACE(upright ? "upright" : "lying");
    Bench bench;
    bench.stripes = 0.1;
    bench.upright = upright;
    const ReliefTrack track = Track(bench);
    ASSERT_TRUE(track.laid_s);
    EXPECT_NEAR(*track.laid_s, kLaid_s, 2.0 / kFps);
    EXPECT_NEAR(track.decay_time_s / kClock_s, 1.0, kDecayRel);
  }
}

TEST(LevelTracker, SaysWhenTheQuietSurfaceIsNotFilmed) {
  Bench bench;
  bench.starts_s = kLaying_s - 0.05;
  const ReliefTrack track = Track(bench);
  EXPECT_FALSE(track.drift_share);
  const FlowMeasurement m = MeasureLevel(track);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  ASSERT_EQ(m.warnings.size(), 1U);
  EXPECT_NE(m.warnings[0].find("quiet surface"), std::string::npos);
}

}  // namespace
}  // namespace flowkin
