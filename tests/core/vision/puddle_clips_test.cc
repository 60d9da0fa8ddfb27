// The whole way on the sample clips: pictures to viscosity. Vision and flow
// meet here only.

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "core/base/distributions.h"
#include "core/flow/puddle_test.h"
#include "core/video/file_frame_source.h"
#include "core/vision/puddle_tracker.h"

namespace flowkin {
namespace {

const std::string kFolder = FLOWKIN_SOURCE_DIR "/sample-clips/";

FrontTrack Track(const std::string& path) {
  auto source = OpenClip(path);
  if (!source) {
    ADD_FAILURE() << source.error().message;
    return {};
  }
  PuddleTracker tracker;
  while (true) {
    auto frame = (*source)->Next();
    if (!frame || !frame.value()) break;
    tracker.Add(**frame);
  }
  return tracker.Finish();
}

struct Clip {
  std::string file;
  double nu_mm2_s, start_s, mm_per_px, fps;
};

struct Palette {
  double volume_ml = 0.0;
  std::vector<Clip> base, cups;
};

Palette LoadPuddles() {
  std::ifstream in(kFolder + "manifest.json");
  const auto manifest = nlohmann::json::parse(in);
  Palette palette;
  const auto read = [](const nlohmann::json& c) {
    return Clip{c["file"],
                c["truth"]["kinematic_viscosity_mm2_s"],
                c["truth"]["start_s"],
                c["truth"]["mm_per_px"],
                c["frame_rate_hz"]};
  };
  for (const auto& set : manifest["sets"]) {
    if (set["test"] != "puddle") continue;
    palette.volume_ml = set["laid_volume_ml"];
    for (const auto& c : set["base_coat"]["clips"]) {
      palette.base.push_back(read(c));
    }
    for (const auto& cup : set["cups"]) {
      for (const auto& c : cup["clips"]) palette.cups.push_back(read(c));
    }
  }
  return palette;
}

TEST(PuddleClips, StartScaleViscosityAndRatiosHoldTheTruth) {
  const Palette palette = LoadPuddles();
  ASSERT_GE(palette.base.size(), 2U);
  ASSERT_GE(palette.cups.size(), 2U);
  PuddleTestOptions options;
  options.volume_ml = palette.volume_ml;
  constexpr double kMostError = 0.08;  // asked of this test's accuracy
  std::map<std::string, Estimate> ln_rate;
  std::vector<Clip> all = palette.base;
  all.insert(all.end(), palette.cups.begin(), palette.cups.end());
  for (const Clip& clip : all) {
    SCOPED_TRACE(clip.file);
    const FrontTrack track = Track(kFolder + clip.file);
    const FlowMeasurement m = MeasurePuddle(track, options);
    ASSERT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
    ASSERT_TRUE(m.start_s);
    EXPECT_NEAR(*m.start_s, clip.start_s, 2.0 / clip.fps);
    ASSERT_TRUE(track.scale);
    EXPECT_NEAR(std::log(track.scale->mm_per_px / clip.mm_per_px),
                0.0,
                2.0 * track.scale->rel_sd);
    ASSERT_TRUE(m.ln_kinematic_viscosity_mm2_s);
    const Interval interval = CoverageInterval(*m.ln_kinematic_viscosity_mm2_s);
    EXPECT_LE(interval.low, std::log(clip.nu_mm2_s));
    EXPECT_GE(interval.high, std::log(clip.nu_mm2_s));
    EXPECT_NEAR(m.ln_kinematic_viscosity_mm2_s->value,
                std::log(clip.nu_mm2_s),
                kMostError);
    ln_rate[clip.file] = m.proxies.at(0).ln_value;
  }
  for (const Clip& cup : palette.cups) {
    for (const Clip& base : palette.base) {
      SCOPED_TRACE(cup.file + " over " + base.file);
      const Estimate a = ln_rate[cup.file], b = ln_rate[base.file];
      const double ln_ratio = b.value - a.value;  // exponent -1
      const double half = NormalQuantile(0.975) * std::hypot(a.sd, b.sd);
      const double truth = std::log(cup.nu_mm2_s / base.nu_mm2_s);
      EXPECT_NEAR(ln_ratio, truth, std::min(half, kMostError));
      EXPECT_LE(half, std::log(1.35));
    }
  }
}

TEST(PuddleClips, OtherTestsHoldNoPuddle) {
  for (const char* file : {"stream/base-a.mp4", "level/base-a.mp4"}) {
    const FlowMeasurement m = MeasurePuddle(Track(kFolder + file), {});
    EXPECT_EQ(m.outcome, Outcome::kRefused) << file;
    EXPECT_FALSE(m.reason.empty()) << file;
  }
}

}  // namespace
}  // namespace flowkin
