// The stream test's whole way on the sample clips, and on what goes wrong with
// such clips. Vision and flow meet here only.

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <fstream>
#include <nlohmann/json.hpp>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/flow/stream_test.h"
#include "core/video/file_frame_source.h"
#include "core/vision/stream_tracker.h"
#include "tests/support/test_clip.h"

namespace flowkin {
namespace {

const std::string kFolder = FLOWKIN_SOURCE_DIR "/sample-clips/";

struct Clip {
  std::string file;
  double fps, lift_s, break_from_s, break_to_s;
  std::vector<double> drips_s;
};

std::vector<Clip> LoadStreams() {
  std::ifstream in(kFolder + "manifest.json");
  const auto manifest = nlohmann::json::parse(in);
  std::vector<Clip> clips;
  const auto read = [&](const nlohmann::json& c) {
    const auto& truth = c["truth"];
    clips.push_back({c["file"],
                     c["frame_rate_hz"],
                     truth["lift_s"],
                     truth["break_window_s"][0],
                     truth["break_window_s"][1],
                     truth["drips_s"]});
  };
  for (const auto& set : manifest["sets"]) {
    if (set["test"] != "stream") continue;
    for (const auto& c : set["base_coat"]["clips"]) read(c);
    for (const auto& cup : set["cups"])
      for (const auto& c : cup["clips"]) read(c);
  }
  return clips;
}

std::vector<Frame> ReadFrames(const std::string& path) {
  auto source = OpenClip(path);
  std::vector<Frame> frames;
  if (!source) {
    ADD_FAILURE() << source.error().message;
    return frames;
  }
  while (true) {
    auto frame = (*source)->Next();
    if (!frame || !frame.value()) break;
    frames.push_back(**frame);
    frames.back().luma = frames.back().luma.clone();
  }
  return frames;
}

// As if the clip held only these frames, first one at 0.
FlowMeasurement Measure(const std::vector<Frame>& frames) {
  StreamTracker tracker;
  for (const Frame& f : frames) {
    Frame copy = f;
    copy.timestamp -= frames.front().timestamp;
    tracker.Add(copy);
  }
  return MeasureStream(tracker.Finish());
}

std::vector<Frame> Between(const std::vector<Frame>& frames,
                           double from_s,
                           double to_s) {
  std::vector<Frame> out;
  for (const Frame& f : frames)
    if (f.TimeS() >= from_s && f.TimeS() < to_s) out.push_back(f);
  return out;
}

TEST(StreamClips, FindLiftAndBreak) {
  const auto clips = LoadStreams();
  ASSERT_GE(clips.size(), 8U);
  for (const Clip& clip : clips) {
    SCOPED_TRACE(clip.file);
    const FlowMeasurement m = Measure(ReadFrames(kFolder + clip.file));
    ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
    // What the test promises: two frames.
    const double two_frames_s = 2.0 / clip.fps;
    EXPECT_NEAR(*m.lift_s, clip.lift_s, two_frames_s);
    EXPECT_GE(*m.break_s, clip.break_from_s - two_frames_s);
    EXPECT_LE(*m.break_s, clip.break_to_s + two_frames_s);
    ASSERT_FALSE(m.proxies.empty());
    EXPECT_EQ(m.proxies.front().name, "break_time");
    EXPECT_GT(m.proxies.front().ln_value.sd, 0.0);
  }
}

TEST(StreamClips, DripsFollowTheBreak) {
  const auto clips = LoadStreams();
  const auto clip = std::find_if(clips.begin(), clips.end(), [](const Clip& c) {
    return c.drips_s.size() >= 2;
  });
  ASSERT_NE(clip, clips.end());
  const FlowMeasurement m = Measure(ReadFrames(kFolder + clip->file));
  ASSERT_GE(m.drips_s.size(), 2U);
  // A drop is seen to have parted once it has fallen past the upper pieces.
  const double passing_s = 0.08;
  EXPECT_NEAR(m.drips_s[0], clip->drips_s[0], passing_s);
  EXPECT_NEAR(m.drips_s[1], clip->drips_s[1], passing_s);
}

// A coarse encoder holds back the slow thinning of a thread and then shows it
// all at once.
TEST(StreamClips, RefuseWhatWasCutBeforeTheBreakAndEncodedAgain) {
  const auto clips = LoadStreams();
  const std::vector<std::string> encoders = {"-preset superfast -crf 10",
                                             "-preset veryfast -crf 23",
                                             "-preset veryfast -crf 32"};
  for (std::size_t i = 0; i < clips.size(); ++i) {
    const Clip& clip = clips[i];
    const double share = i % 2 == 0 ? 0.5 : 0.92;
    const double end_s =
        clip.lift_s + share * (clip.break_from_s - clip.lift_s);
    const std::string& encoder = encoders[i % encoders.size()];
    SCOPED_TRACE(clip.file + " up to " + std::to_string(end_s) + " s, " +
                 encoder);
    const testing_support::ScratchPath cut(".mp4");
    testing_support::RunFfmpeg(
        "-i " + kFolder + clip.file + " -t " + std::to_string(end_s) +
        " -vsync passthrough -an -c:v libx264 " + encoder + " " + cut.path());
    const FlowMeasurement m = Measure(ReadFrames(cut.path()));
    EXPECT_EQ(m.outcome, Outcome::kRefused)
        << "break at " << m.break_s.value_or(-1.0);
  }
}

TEST(StreamClips, RefuseWhatHoldsNoWholeTest) {
  const auto clips = LoadStreams();
  const Clip& clip = clips.front();
  const auto frames = ReadFrames(kFolder + clip.file);
  const double end_s = frames.back().TimeS() + 1.0;
  struct Case {
    const char* name;
    std::vector<Frame> frames;
  };
  std::vector<Case> cases;
  cases.push_back({"before the lift", Between(frames, 0.0, clip.lift_s - 0.3)});
  cases.push_back(
      {"after the lift", Between(frames, clip.lift_s + 0.8, end_s)});
  cases.push_back(
      {"before the break", Between(frames, 0.0, clip.break_from_s - 0.2)});
  // Early on a stream thins fast; fading is not breaking.
  for (const double ends_s : {1.3, 2.0, 3.0, 4.0, 4.5})
    cases.push_back(
        {"while it runs", Between(frames, 0.0, clip.lift_s + ends_s)});
  cases.push_back({"nothing", {frames.begin(), frames.begin() + 5}});
  std::vector<Frame> reversed, frozen, dark;
  for (std::size_t i = 0; i < frames.size(); ++i) {
    Frame f = frames[frames.size() - 1 - i];
    f.timestamp = frames[i].timestamp;
    reversed.push_back(f);
    f.luma = frames.front().luma;
    frozen.push_back(f);
    f.luma = cv::Mat::zeros(f.luma.size(), CV_8U);
    dark.push_back(f);
  }
  cases.push_back({"reversed", reversed});
  cases.push_back({"frozen", frozen});
  cases.push_back({"dark", dark});
  // One test straight after another.
  std::vector<Frame> twice = frames;
  for (Frame f : frames) {
    f.timestamp += frames.back().timestamp + std::chrono::milliseconds(17);
    twice.push_back(f);
  }
  cases.push_back({"twice", twice});
  // The camera sticks while the stream still runs.
  std::vector<Frame> stuck = frames;
  for (Frame& f : stuck)
    if (f.TimeS() > clip.break_from_s - 1.0)
      f.luma =
          stuck[static_cast<std::size_t>((clip.break_from_s - 1.0) * clip.fps)]
              .luma;
  cases.push_back({"stuck", stuck});
  for (const Case& c : cases) {
    const FlowMeasurement m = Measure(c.frames);
    EXPECT_EQ(m.outcome, Outcome::kRefused) << c.name;
    EXPECT_FALSE(m.reason.empty()) << c.name;
    EXPECT_TRUE(m.proxies.empty()) << c.name;
  }
}

// Halving the frame rate or the light does not move the events.
// Two pictures or three of the way up: the moment is known to a picture.
TEST(StreamClips, AQuickLiftBeforeASlowCamera) {
  for (const Clip& clip : LoadStreams()) {
    if (clip.file.find("base-a") == std::string::npos) continue;
    SCOPED_TRACE(clip.file);
    const std::vector<Frame> all = ReadFrames(kFolder + clip.file);
    for (std::size_t first = 0; first < 8; ++first) {
      // The way up is shown eight times as fast, all else as it was.
      std::vector<Frame> frames;
      auto left_out = std::chrono::nanoseconds(0);
      for (std::size_t k = 0; k < all.size(); ++k) {
        const double t_s = all[k].TimeS();
        const bool way_up = t_s > clip.lift_s - 0.1 && t_s < clip.lift_s + 0.5;
        if (k > 0 && way_up && k % 8 != first) {
          left_out += all[k].timestamp - all[k - 1].timestamp;
          continue;
        }
        frames.push_back(all[k]);
        frames.back().timestamp -= left_out;
      }
      const FlowMeasurement m = Measure(frames);
      ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
      const double picture_s = 1.0 / clip.fps;
      EXPECT_NEAR(*m.lift_s, clip.lift_s - 0.1 + 0.1 / 8.0, 2.0 * picture_s);
    }
  }
}

// Thick paint stands out from the stick further than its edges are looked for,
// and the cup has edges of its own near where the stick meets the paint.
TEST(StreamClips, AThickCoatAndTheCupsEdgesDoNotMoveTheLift) {
  constexpr double kFps = 30.0, kLift_s = 1.3, kSpeed_px_s = 160.0;
  constexpr int kPool = 360, kRaised = 180, kMiddle = 160, kHalf = 20;
  cv::RNG random(21);
  StreamTracker tracker;
  for (int k = 0; k < 100; ++k) {
    const double t_s = k / kFps;
    cv::Mat luma(480, 320, CV_8U, cv::Scalar(190));
    luma(cv::Range(kPool, 480), cv::Range::all()) = 90;
    // Light on the paint, and the cup's front below.
    luma(cv::Range(kPool, kPool + 16), cv::Range(kMiddle - 40, kMiddle - 21)) =
        170;
    luma(cv::Range(kPool + 20, 480), cv::Range(0, kMiddle - 20)) = 150;
    // It begins on its way dipped 50 px deep.
    const double way_px = kSpeed_px_s * (t_s - kLift_s);
    const int end =
        std::clamp(kPool - static_cast<int>(way_px), kRaised, kPool + 50);
    const int shown = std::min(end, kPool);
    const auto draw = [&](int from, int to, int half, int level) {
      if (to > from)
        luma(cv::Range(std::max(0, from), to),
             cv::Range(kMiddle - half, kMiddle + half)) = level;
    };
    draw(0, shown, kHalf, 120);
    // The coat drains as time^(-1/2) [Jeffreys1930], from 8 px at its foot.
    const double coat_px =
        8.0 * std::min(1.0, std::sqrt(0.2 / std::max(0.2, t_s - kLift_s)));
    for (int y = end - 70; y < shown; ++y)
      draw(y,
           y + 1,
           kHalf + static_cast<int>(coat_px * (y - end + 70) / 70.0),
           60);
    draw(shown, kPool, 3, 60);
    cv::Mat noise(luma.size(), CV_8S);
    random.fill(noise, cv::RNG::NORMAL, 0.0, 2.0);
    cv::add(luma, noise, luma, cv::noArray(), CV_8U);
    Frame frame;
    frame.luma = luma;
    frame.timestamp = std::chrono::nanoseconds(
        static_cast<std::int64_t>(std::llround(1e9 * t_s)));
    tracker.Add(frame);
  }
  const StreamTrack track = tracker.Finish();
  ASSERT_EQ(track.episodes.size(), 1U);
  EXPECT_NEAR(track.episodes[0].lift_s, kLift_s, 1.0 / kFps);
}

// After the break a cone of paint as wide as the stick draws back into its end.
TEST(StreamClips, WhatDrawsBackIntoTheStickIsNoSecondLift) {
  std::vector<Frame> frames = ReadFrames(kFolder + "stream/lagoon.mp4");
  StreamTracker tracker;
  for (const Frame& f : frames) tracker.Add(f);
  const std::optional<StreamPlace> place = tracker.Place();
  ASSERT_TRUE(place);
  const FlowMeasurement plain = MeasureStream(tracker.Finish());
  ASSERT_EQ(plain.outcome, Outcome::kMeasured) << plain.reason;

  const double from_s = frames.back().TimeS(), back_s = 0.4;
  const auto step = frames[1].timestamp - frames[0].timestamp;
  const double half_px = 0.5 * place->stick_width_px;
  const double cone_px = 0.3 * (place->pool_y_px - place->stick_bottom_y_px);
  const std::size_t count = frames.size();
  for (std::size_t k = 0; k < 270; ++k) {
    Frame f = frames[count - 1 - k % 8];  // with their noise
    f.timestamp = frames.back().timestamp + step;
    f.luma = f.luma.clone();
    const double t_s = f.TimeS() - from_s - 3.2;
    const double length_px = cone_px * std::clamp(1.0 - t_s / back_s, 0.0, 1.0);
    for (int y = 0; y < static_cast<int>(length_px); ++y) {
      const int row = static_cast<int>(place->stick_bottom_y_px) + y;
      cv::line(f.luma,
               {static_cast<int>(place->stick_center_x_px - half_px), row},
               {static_cast<int>(place->stick_center_x_px + half_px), row},
               20);
    }
    frames.push_back(f);
  }
  const FlowMeasurement m = Measure(frames);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_NEAR(*m.break_s, *plain.break_s, 0.05);
}

TEST(StreamClips, DoNotDependOnRateOrLight) {
  const auto clips = LoadStreams();
  const Clip& clip = clips.front();
  const auto frames = ReadFrames(kFolder + clip.file);
  const FlowMeasurement whole = Measure(frames);
  std::vector<Frame> half, dim;
  for (std::size_t i = 0; i < frames.size(); ++i) {
    if (i % 2 == 0) half.push_back(frames[i]);
    dim.push_back(frames[i]);
    frames[i].luma.convertTo(dim.back().luma, CV_8U, 0.5, 5.0);
  }
  const double two_frames_s = 2.0 / clip.fps;
  for (const auto& variant : {half, dim}) {
    const FlowMeasurement m = Measure(variant);
    ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
    EXPECT_NEAR(*m.lift_s, *whole.lift_s, two_frames_s);
    EXPECT_NEAR(*m.break_s, *whole.break_s, two_frames_s);
  }
}

// What a codec does that spares bits: it sends nothing for the middle of the
// picture, where the stream is, for the time around the break.
TEST(StreamClips, ACameraHeldAskewSeesTheSame) {
  const Clip clip = LoadStreams().front();
  const auto frames = ReadFrames(kFolder + clip.file);
  for (const double turn_deg : {-6.0, 3.0}) {
    SCOPED_TRACE(turn_deg);
    std::vector<Frame> turned = frames;
    for (Frame& f : turned) {
      const cv::Point2f middle(0.5F * static_cast<float>(f.luma.cols),
                               0.5F * static_cast<float>(f.luma.rows));
      cv::Mat luma;
      cv::warpAffine(f.luma,
                     luma,
                     cv::getRotationMatrix2D(middle, turn_deg, 1.0),
                     f.luma.size(),
                     cv::INTER_LINEAR,
                     cv::BORDER_REFLECT);
      f.luma = luma;
    }
    const FlowMeasurement m = Measure(turned);
    ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
    // The stick's edge now leaves the paint corner by corner.
    EXPECT_NEAR(*m.lift_s, clip.lift_s, 4.0 / clip.fps);
    EXPECT_GE(*m.break_s, clip.break_from_s - 2.0 / clip.fps);
    EXPECT_LE(*m.break_s, clip.break_to_s + 2.0 / clip.fps);
  }
}

TEST(StreamClips, AStreamNotDrawnAnewWidensTheBreak) {
  const Clip clip = LoadStreams().front();
  auto frames = ReadFrames(kFolder + clip.file);
  const FlowMeasurement sharp = Measure(frames);
  const Frame* last_drawn = nullptr;
  for (Frame& f : frames) {
    const double after_s = f.TimeS() - clip.break_from_s;
    if (after_s < -0.1) last_drawn = &f;
    if (after_s < -0.1 || after_s > 0.2) continue;
    const cv::Rect middle(f.luma.cols / 4, 0, f.luma.cols / 2, f.luma.rows);
    last_drawn->luma(middle).copyTo(f.luma(middle));
  }
  const FlowMeasurement m = Measure(frames);
  ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  EXPECT_GT(m.proxies.front().ln_value.sd, sharp.proxies.front().ln_value.sd);
  // Half of what was hidden.
  EXPECT_NEAR(*m.break_s, clip.break_from_s, 0.15);
}

}  // namespace
}  // namespace flowkin
