#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <limits>

#include "app/usecases/compare_cup.h"
#include "app/usecases/measure_clip.h"
#include "app/usecases/measure_clips.h"
#include "app/usecases/view_cells.h"
#include "core/video/file_frame_source.h"

namespace flowkin {
namespace {

using ::testing::HasSubstr;

std::string Clip(const std::string& name) {
  return std::string(FLOWKIN_SOURCE_DIR) + "/sample-clips/" + name;
}

MeasureClipOptions LevelOptions() {
  MeasureClipOptions options;
  options.test.kind = TestKind::kLevel;
  return options;
}

TEST(MeasureFrames, StopsWhenAsked) {
  auto source = OpenClip(Clip("level/base-a.mp4"));
  ASSERT_TRUE(source.has_value());
  const auto test = MakeClipTest(LevelOptions().test);
  std::stop_source stop;
  int reports = 0;
  const auto measured = MeasureFrames(
      **source,
      *test,
      [&](double) {
        if (++reports == 5) stop.request_stop();
      },
      stop.get_token());
  ASSERT_FALSE(measured.has_value());
  EXPECT_EQ(measured.error().code, ErrorCode::kInternal);
  EXPECT_EQ(reports, 5);
}

TEST(MeasureFrames, ProgressRisesToOne) {
  auto source = OpenClip(Clip("level/base-a.mp4"));
  ASSERT_TRUE(source.has_value());
  const auto test = MakeClipTest(LevelOptions().test);
  double last = 0.0;
  const auto measured = MeasureFrames(**source, *test, [&](double share) {
    EXPECT_GE(share, last);
    EXPECT_LE(share, 1.0);
    last = share;
  });
  ASSERT_TRUE(measured.has_value());
  EXPECT_EQ(last, 1.0);
}

TEST(MeasureClips, GivesTheSameWithOneWorkerAndTwo) {
  const std::vector<std::string> clips = {Clip("level/base-a.mp4"),
                                          Clip("level/lagoon.mp4"),
                                          Clip("puddle/base-a.mp4")};
  const auto one = MeasureClips(clips, LevelOptions(), 1);
  const auto two = MeasureClips(clips, LevelOptions(), 2);
  ASSERT_TRUE(one.has_value());
  ASSERT_TRUE(two.has_value());
  ASSERT_EQ(one->size(), clips.size());
  ASSERT_EQ(two->size(), clips.size());
  for (std::size_t i = 0; i < clips.size(); ++i) {
    EXPECT_EQ((*one)[i].clip, clips[i]);
    EXPECT_EQ((*two)[i].clip, clips[i]);
    const FlowMeasurement& a = (*one)[i].measurement;
    const FlowMeasurement& b = (*two)[i].measurement;
    EXPECT_EQ(a.reason, b.reason);
    EXPECT_EQ(a.laid_s, b.laid_s);
    ASSERT_EQ(a.proxies.size(), b.proxies.size());
    for (std::size_t p = 0; p < a.proxies.size(); ++p) {
      EXPECT_EQ(a.proxies[p].value, b.proxies[p].value);
      EXPECT_EQ(a.proxies[p].ln_value.sd, b.proxies[p].ln_value.sd);
    }
  }
  // The puddle holds no ribbon: a refusal among the others is no failure.
  EXPECT_EQ((*one)[2].measurement.outcome, Outcome::kRefused);
}

TEST(MeasureClips, FailsAsTheFirstClipThatFails) {
  const auto measured = MeasureClips(
      {Clip("level/base-a.mp4"), Clip("no-such-clip.mp4"), Clip("README.md")},
      LevelOptions(),
      2);
  ASSERT_FALSE(measured.has_value());
  EXPECT_EQ(measured.error().code, ErrorCode::kUnreadable);
  EXPECT_THAT(measured.error().message, HasSubstr("no-such-clip.mp4"));
}

TEST(CheckDistinct, SeesThroughLinks) {
  const std::string link = ::testing::TempDir() + "flowkin-link.mp4";
  std::filesystem::remove(link);
  std::filesystem::create_symlink(Clip("level/base-a.mp4"), link);
  EXPECT_FALSE(CheckDistinct({Clip("level/base-a.mp4"), link}).has_value());
  EXPECT_TRUE(
      CheckDistinct({Clip("level/base-a.mp4"), Clip("level/base-b.mp4")})
          .has_value());
  std::filesystem::remove(link);
}

TEST(MeasureClipOptions, RefuseWhatIsOutOfRange) {
  const std::string clip = Clip("level/base-a.mp4");
  EXPECT_TRUE(LevelOptions().Validate(clip).has_value());
  for (const double wrong : {0.0,
                             -1.0,
                             1e9,
                             std::numeric_limits<double>::infinity(),
                             std::numeric_limits<double>::quiet_NaN()}) {
    MeasureClipOptions volume = LevelOptions();
    volume.test.volume_ml = wrong;
    EXPECT_FALSE(volume.Validate(clip).has_value()) << wrong;
    MeasureClipOptions scale = LevelOptions();
    scale.test.mm_per_px = wrong;
    EXPECT_FALSE(scale.Validate(clip).has_value()) << wrong;
    MeasureClipOptions rate = LevelOptions();
    rate.shot_fps = wrong;
    EXPECT_FALSE(rate.Validate(clip).has_value()) << wrong;
  }
  MeasureClipOptions overwrite = LevelOptions();
  overwrite.overlay_path = clip;
  EXPECT_FALSE(overwrite.Validate(clip).has_value());
}

TEST(KeepCellPicture, LeavesNothingWhereThereIsNoPicture) {
  const std::filesystem::path folder =
      std::filesystem::path(::testing::TempDir()) / "no-cell-picture";
  std::filesystem::remove_all(folder);
  const auto kept = KeepCellPicture({}, "run-down.mp4", folder.string());
  ASSERT_FALSE(kept.has_value());
  EXPECT_THAT(kept.error().message, HasSubstr("'run-down.mp4'"));
  EXPECT_TRUE(std::filesystem::is_empty(folder));
}

TEST(CompareCup, SwappingTheSidesInvertsTheRatio) {
  CompareCupOptions options;
  options.clip = LevelOptions();
  const std::vector<std::string> a = {Clip("level/base-a.mp4")};
  const std::vector<std::string> b = {Clip("level/gullfeather.mp4")};
  const auto there = CompareCup(options).Run(a, b);
  const auto back = CompareCup(options).Run(b, a);
  ASSERT_TRUE(there.has_value());
  ASSERT_TRUE(back.has_value());
  // The same clips and the same fit in another order: only the solver's own
  // stopping rule may differ.
  constexpr double kSolver = 1e-3;
  EXPECT_NEAR(there->comparison.ratio.ln_ratio.value,
              -back->comparison.ratio.ln_ratio.value,
              kSolver);
}

}  // namespace
}  // namespace flowkin
