// The built program on the clips of the sample palette, whose truth is known.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "tests/app/run_flowkin.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

/// Two frames of grace: the eye that marks an event in a film does no better.
constexpr double kGraceFrames = 2.0;
/// What the main job must hold against these clips: no comparison further off
/// than this, and the whole palette close in the median.
constexpr double kWorstRatioError = 0.12;

const json& Manifest() {
  static const json kManifest =
      json::parse(ReadFile(SampleClip("manifest.json")));
  return kManifest;
}

std::vector<std::string> MeasureArguments(const json& set,
                                          const std::string& file) {
  std::vector<std::string> arguments = {
      "measure", SampleClip(file), "--test", set["test"], "--json"};
  if (set.contains("laid_volume_ml")) {
    arguments.push_back("--volume-ml");
    arguments.push_back(set["laid_volume_ml"].dump());
  }
  return arguments;
}

std::vector<json> AllClips(const json& set) {
  std::vector<json> clips = set["base_coat"]["clips"];
  for (const json& cup : set["cups"]) {
    clips.insert(clips.end(), cup["clips"].begin(), cup["clips"].end());
  }
  return clips;
}

class SampleSets : public ::testing::TestWithParam<std::size_t> {
 protected:
  const json& Set() const { return Manifest()["sets"][GetParam()]; }
};

TEST_P(SampleSets, EventsStandWhereTheyHappened) {
  for (const json& clip : AllClips(Set())) {
    SCOPED_TRACE(clip["file"]);
    const FlowkinRun run = RunFlowkin(MeasureArguments(Set(), clip["file"]));
    ASSERT_EQ(run.status, 0) << run.err;
    const json document = json::parse(run.out);
    EXPECT_EQ(document["outcome"], "measured");
    EXPECT_EQ(document["time_base"]["frames"], clip["frames"]);
    const double grace_s = kGraceFrames / clip["frame_rate_hz"].get<double>();
    const json& truth = clip["truth"];
    for (const char* name : {"lift_s", "laid_s", "start_s"}) {
      if (!truth.contains(name)) continue;
      ASSERT_TRUE(document["events"][name].is_number()) << name;
      EXPECT_NEAR(document["events"][name], truth[name], grace_s) << name;
    }
    if (truth.contains("break_window_s")) {
      const double break_s = document["events"]["break_s"];
      EXPECT_GE(break_s, truth["break_window_s"][0].get<double>() - grace_s);
      EXPECT_LE(break_s, truth["break_window_s"][1].get<double>() + grace_s);
    }
    if (Set().contains("laid_volume_ml")) {
      const json& nu = document["kinematic_viscosity_mm2_s"];
      EXPECT_LE(nu["low"], truth["kinematic_viscosity_mm2_s"]);
      EXPECT_GE(nu["high"], truth["kinematic_viscosity_mm2_s"]);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(
    Sets,
    SampleSets,
    ::testing::Range<std::size_t>(0, 3),
    [](const ::testing::TestParamInfo<std::size_t>& tested) {
      return Manifest()["sets"][tested.param]["test"].get<std::string>();
    });

TEST(SamplePalette, RatiosHoldTheTruthInsideTheirIntervals) {
  const FlowkinRun run =
      RunFlowkin({"palette", SampleClip("manifest.json"), "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  const json document = json::parse(run.out);
  std::size_t index = 0;
  int inside = 0;
  for (const json& set : Manifest()["sets"]) {
    for (const json& cup : set["cups"]) {
      const json& judged = document["cups"].at(index++);
      SCOPED_TRACE(judged.dump());
      ASSERT_EQ(judged["name"], cup["name"]);
      const double truth = cup["truth"]["ratio"];
      const json& ratio = judged["ratio"];
      EXPECT_LE(std::abs(std::log(ratio["value"].get<double>() / truth)),
                std::log1p(kWorstRatioError));
      inside += ratio["low"].get<double>() <= truth &&
                truth <= ratio["high"].get<double>();
      // The wrong side of the base coat would be a harmful answer.
      if (judged["verdict"] == "thicker") {
        EXPECT_GT(truth, 1.0);
      }
      if (judged["verdict"] == "thinner") {
        EXPECT_LT(truth, 1.0);
      }
      // Water never goes into a cup that is thinner than the base coat.
      if (truth < 1.0) {
        EXPECT_NE(judged["advice"], "add");
      }
    }
  }
  // 95 % intervals: fewer than nine of ten would happen by chance with
  // probability 0.09 (binomial), fewer than eight with 0.01.
  EXPECT_GE(inside, 9);
}

}  // namespace
}  // namespace flowkin::testing
