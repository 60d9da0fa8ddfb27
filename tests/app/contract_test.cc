// Holds the built program to its contract with other programs: exit statuses,
// one sentence for every failure, exactly one document with --json.

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <thread>

#include "core/video/file_frame_source.h"
#include "tests/app/run_flowkin.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;
using ::testing::AnyOf;
using ::testing::HasSubstr;
using ::testing::IsSupersetOf;
using ::testing::Not;
using ::testing::StartsWith;

constexpr int kDone = 0;
constexpr int kWrongUse = 2;
constexpr int kRefused = 3;
constexpr int kUnreadable = 4;

struct BadCall {
  const char* name;
  std::vector<std::string> arguments;
  int status;
};

class BadCalls : public ::testing::TestWithParam<BadCall> {};

TEST_P(BadCalls, EndWithTheirStatusAndOneSentence) {
  const FlowkinRun run = RunFlowkin(GetParam().arguments);
  EXPECT_EQ(run.status, GetParam().status);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  EXPECT_EQ(run.out, "");
}

const std::string kClip = SampleClip("stream/base-a.mp4");
const std::string kOther = SampleClip("stream/lagoon.mp4");
const std::string kMissing = SampleClip("stream/no-such-clip.mp4");

INSTANTIATE_TEST_SUITE_P(
    Calls,
    BadCalls,
    ::testing::Values(
        BadCall{"NoCommand", {}, kWrongUse},
        BadCall{"UnknownCommand", {"stir"}, kWrongUse},
        BadCall{"UnknownOption",
                {"measure", kClip, "--test", "stream", "--colour", "red"},
                kWrongUse},
        BadCall{"NoClip", {"measure", "--test", "stream"}, kWrongUse},
        BadCall{"NoTest", {"measure", kClip}, kWrongUse},
        BadCall{
            "UnknownTest", {"measure", kClip, "--test", "taste"}, kWrongUse},
        BadCall{"TwoClips",
                {"measure", kClip, kOther, "--test", "stream"},
                kWrongUse},
        BadCall{"WordForANumber",
                {"measure", kClip, "--test", "puddle", "--volume-ml", "some"},
                kWrongUse},
        BadCall{"NegativeVolume",
                {"measure", kClip, "--test", "puddle", "--volume-ml=-1"},
                kWrongUse},
        BadCall{"VolumeOfABucket",
                {"measure", kClip, "--test", "puddle", "--volume-ml", "1e9"},
                kWrongUse},
        BadCall{"VolumeNotANumber",
                {"measure", kClip, "--test", "puddle", "--volume-ml", "nan"},
                kWrongUse},
        BadCall{"ZeroScale",
                {"measure", kClip, "--test", "puddle", "--mm-per-px", "0"},
                kWrongUse},
        BadCall{"InfiniteRate",
                {"measure", kClip, "--test", "stream", "--shot-fps", "inf"},
                kWrongUse},
        BadCall{"OverlayOverTheClip",
                {"measure", kClip, "--test", "stream", "--overlay", kClip},
                kWrongUse},
        BadCall{"TraceOverTheClip",
                {"measure", kClip, "--test", "stream", "--trace", kClip},
                kWrongUse},
        BadCall{"OverlayOfAnotherKind",
                {"measure", kClip, "--test", "stream", "--overlay", "o.gif"},
                kWrongUse},
        BadCall{"OverlayInNoFolder",
                {"measure",
                 kClip,
                 "--test",
                 "stream",
                 "--overlay",
                 "no-such-folder/out.mp4"},
                kWrongUse},
        BadCall{"OverlayAndTraceInOneFile",
                {"measure",
                 kClip,
                 "--test",
                 "stream",
                 "--overlay",
                 "both.mp4",
                 "--trace",
                 "both.mp4"},
                kWrongUse},
        BadCall{"SameClipTwice",
                {"compare",
                 "--test",
                 "stream",
                 "--reference",
                 kClip,
                 "--cup",
                 kClip},
                kWrongUse},
        BadCall{"NoCup",
                {"compare", "--test", "stream", "--reference", kClip},
                kWrongUse},
        BadCall{"TimesAndClips",
                {"compare",
                 "--test",
                 "stream",
                 "--reference",
                 kClip,
                 "--cup-times",
                 "4"},
                kWrongUse},
        BadCall{"TimesOfOneSide",
                {"compare", "--test", "stream", "--cup-times", "4"},
                kWrongUse},
        BadCall{"ZeroTime",
                {"compare",
                 "--test",
                 "stream",
                 "--reference-times",
                 "0",
                 "--cup-times",
                 "4"},
                kWrongUse},
        BadCall{"BandOfNothing",
                {"compare",
                 "--test",
                 "stream",
                 "--reference-times",
                 "3",
                 "--cup-times",
                 "4",
                 "--band",
                 "0"},
                kWrongUse},
        BadCall{"TargetNotANumber",
                {"compare",
                 "--test",
                 "stream",
                 "--reference-times",
                 "3",
                 "--cup-times",
                 "4",
                 "--target",
                 "nan"},
                kWrongUse},
        BadCall{"MissingCup",
                {"compare",
                 "--test",
                 "stream",
                 "--reference",
                 kClip,
                 "--cup",
                 kMissing,
                 "--json"},
                kUnreadable},
        BadCall{"PaletteThatIsNone",
                {"palette", SampleClip("README.md"), "--json"},
                kUnreadable},
        BadCall{"MissingClip",
                {"measure", kMissing, "--test", "stream", "--json"},
                kUnreadable},
        BadCall{"FolderForAClip",
                {"measure", SampleClip(""), "--test", "stream", "--json"},
                kUnreadable},
        BadCall{"TextForAClip",
                {"measure", SampleClip("README.md"), "--test", "stream"},
                kUnreadable}),
    [](const ::testing::TestParamInfo<BadCall>& tested) {
      return tested.param.name;
    });

std::vector<std::string> Keys(const json& object) {
  std::vector<std::string> keys;
  for (const auto& item : object.items()) keys.push_back(item.key());
  return keys;
}

/// Every number in the document is finite: NaN is not JSON, and what cannot be
/// measured is null.
bool HoldsNoNan(const std::string& text) {
  return text.find("nan") == std::string::npos &&
         text.find("inf") == std::string::npos;
}

TEST(Measure, DocumentHoldsTheFieldsOfTheContract) {
  const FlowkinRun run =
      RunFlowkin({"measure", kClip, "--test", "stream", "--json"});
  ASSERT_EQ(run.status, kDone) << run.err;
  const json document = json::parse(run.out);
  EXPECT_THAT(Keys(document),
              IsSupersetOf({"clip",
                            "test",
                            "outcome",
                            "reason",
                            "time_base",
                            "events",
                            "proxies",
                            "warnings"}));
  EXPECT_EQ(document["clip"], kClip);
  EXPECT_EQ(document["test"], "stream");
  EXPECT_EQ(document["outcome"], "measured");
  EXPECT_TRUE(document["reason"].is_null());
  EXPECT_THAT(
      Keys(document["time_base"]),
      IsSupersetOf({"frames", "duration_s", "time_scale", "rotation_deg"}));
  EXPECT_THAT(Keys(document["events"]),
              IsSupersetOf({"lift_s", "break_s", "drips_s"}));
  ASSERT_FALSE(document["proxies"].empty());
  for (const json& proxy : document["proxies"]) {
    EXPECT_THAT(Keys(proxy),
                IsSupersetOf(
                    {"name", "value", "unit", "rel_sd", "viscosity_exponent"}));
    EXPECT_GT(proxy["rel_sd"], 0.0);
  }
  EXPECT_TRUE(document["warnings"].is_array());
}

TEST(Measure, RefusalPrintsItsDocumentAndItsReason) {
  // A film of a puddle holds no stick.
  const FlowkinRun run = RunFlowkin({"measure",
                                     SampleClip("puddle/base-a.mp4"),
                                     "--test",
                                     "stream",
                                     "--json"});
  EXPECT_EQ(run.status, kRefused);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  const json document = json::parse(run.out);
  EXPECT_EQ(document["outcome"], "refused");
  EXPECT_THAT(run.err, HasSubstr(document["reason"].get<std::string>()));
  EXPECT_TRUE(document["events"]["lift_s"].is_null());
  EXPECT_TRUE(document["proxies"].empty());
  EXPECT_TRUE(HoldsNoNan(run.out)) << run.out;
}

TEST(Measure, RefusalForAPersonIsOneSentence) {
  const FlowkinRun run = RunFlowkin(
      {"measure", SampleClip("puddle/base-a.mp4"), "--test", "level"});
  EXPECT_EQ(run.status, kRefused);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
}

TEST(Measure, ShotRateStretchesEveryTime) {
  // Sixty pictures a second that were filmed at 240 show a quarter of the
  // playing time.
  const json plain = json::parse(
      RunFlowkin({"measure", kClip, "--test", "stream", "--json"}).out);
  const json slow = json::parse(
      RunFlowkin(
          {"measure", kClip, "--test", "stream", "--shot-fps", "240", "--json"})
          .out);
  // Six digits are printed.
  constexpr double kPrinted = 1e-5;
  EXPECT_NEAR(slow["time_base"]["time_scale"], 0.25, kPrinted);
  EXPECT_NEAR(4.0 * slow["time_base"]["duration_s"].get<double>(),
              plain["time_base"]["duration_s"],
              10 * kPrinted);
}

TEST(Measure, AnInterruptedOverlayLeavesNothing) {
  const std::string folder = ScratchFolder();
  std::string clip = SampleClip("puddle/base-a.mp4");
  std::string overlay = folder + "/seen.mp4";
  std::string program = FLOWKIN_BINARY;
  std::string measure = "measure", test = "--test", puddle = "puddle",
              option = "--overlay";
  std::vector<char*> argv = {program.data(),
                             measure.data(),
                             clip.data(),
                             test.data(),
                             puddle.data(),
                             option.data(),
                             overlay.data(),
                             nullptr};
  pid_t child = 0;
  ASSERT_EQ(
      ::posix_spawn(
          &child, program.c_str(), nullptr, nullptr, argv.data(), environ),
      0);
  // As soon as the file in the making is there.
  int state = 0;
  while (std::filesystem::is_empty(folder) &&
         ::waitpid(child, &state, WNOHANG) == 0) {
    std::this_thread::sleep_for(std::chrono::milliseconds(2));
  }
  ASSERT_FALSE(std::filesystem::is_empty(folder));
  ASSERT_EQ(::kill(child, SIGINT), 0);
  ASSERT_EQ(::waitpid(child, &state, 0), child);
  EXPECT_TRUE(WIFSIGNALED(state) && WTERMSIG(state) == SIGINT) << state;
  EXPECT_TRUE(std::filesystem::is_empty(folder));
}

TEST(Measure, OverlayAndTraceAreWritten) {
  const std::string folder = ScratchFolder();
  const std::string overlay = folder + "/seen.mp4";
  const std::string trace = folder + "/trace.csv";
  const FlowkinRun run = RunFlowkin({"measure",
                                     kClip,
                                     "--test",
                                     "stream",
                                     "--overlay",
                                     overlay,
                                     "--trace",
                                     trace,
                                     "--json"});
  ASSERT_EQ(run.status, kDone) << run.err;
  const json document = json::parse(run.out);
  auto written = OpenClip(overlay);
  ASSERT_TRUE(written.has_value()) << written.error().message;
  std::int64_t frames = 0;
  double last_s = 0.0;
  double changed = 0.0;
  auto original = OpenClip(kClip);
  ASSERT_TRUE(original.has_value());
  while (true) {
    auto frame = (*written)->Next();
    ASSERT_TRUE(frame.has_value());
    auto source = (*original)->Next();
    ASSERT_TRUE(source.has_value());
    if (!frame->has_value()) break;
    ASSERT_TRUE(source->has_value());
    // Away from what is drawn the picture is the clip's own. The encoder and
    // the way to RGB and back leave a few grey levels.
    const cv::Rect corner(20, 400, 100, 100);
    changed = std::max(changed,
                       std::abs(cv::mean((**frame).luma(corner))[0] -
                                cv::mean((**source).luma(corner))[0]));
    ++frames;
    last_s = (**frame).TimeS();
  }
  constexpr double kEncoderLuma = 3.0;
  EXPECT_LT(changed, kEncoderLuma);
  EXPECT_EQ(frames, document["time_base"]["frames"]);
  // Container times are kept to a microsecond; the document to six digits.
  constexpr double kTimeS = 1e-4;
  EXPECT_NEAR(last_s, document["time_base"]["duration_s"], kTimeS);
  const std::string text = ReadFile(trace);
  EXPECT_THAT(text, HasSubstr("t_s"));
  EXPECT_GT(std::count(text.begin(), text.end(), '\n'), 10);
  std::filesystem::remove_all(folder);
}

TEST(Measure, SaysTheSameTwice) {
  for (const char* test : {"stream", "level", "puddle"}) {
    const std::vector<std::string> call = {
        "measure",
        SampleClip(std::string(test) + "/base-a.mp4"),
        "--test",
        test,
        "--json"};
    const FlowkinRun first = RunFlowkin(call);
    const FlowkinRun second = RunFlowkin(call);
    EXPECT_EQ(first.status, kDone) << first.err;
    EXPECT_EQ(first.out, second.out);
  }
}

TEST(Measure, ForAPersonSaysEventsAndProxies) {
  const FlowkinRun run = RunFlowkin({"measure", kClip, "--test", "stream"});
  ASSERT_EQ(run.status, kDone) << run.err;
  EXPECT_THAT(run.out, HasSubstr("stream test, 450 frames over 7.48 s"));
  EXPECT_THAT(run.out, HasSubstr("lifted at "));
  EXPECT_THAT(run.out, HasSubstr("stream broke at "));
  EXPECT_THAT(run.out, HasSubstr("break time "));
  EXPECT_THAT(run.out, Not(HasSubstr("break_time")));
}

TEST(Measure, TellsATruncatedClip) {
  const std::string folder = ScratchFolder();
  const std::string whole = ReadFile(kClip);
  WriteFile(folder + "/cut.mp4", whole.substr(0, whole.size() / 3));
  const FlowkinRun run = RunFlowkin(
      {"measure", folder + "/cut.mp4", "--test", "stream", "--json"});
  // Whether a third of the file can be read depends on where its index
  // stands; either way nothing may be measured from it.
  EXPECT_THAT(run.status, AnyOf(kRefused, kUnreadable));
  EXPECT_THAT(run.err, HasSubstr("flowkin: "));
  std::filesystem::remove_all(folder);
}

TEST(Compare, DocumentHoldsTheFieldsOfTheContract) {
  const FlowkinRun run = RunFlowkin({"compare",
                                     "--test",
                                     "stream",
                                     "--reference",
                                     kClip,
                                     "--cup",
                                     SampleClip("stream/gullfeather.mp4"),
                                     "--band",
                                     "0.2",
                                     "--json"});
  ASSERT_EQ(run.status, kDone) << run.err;
  const json document = json::parse(run.out);
  EXPECT_THAT(Keys(document),
              IsSupersetOf({"outcome",
                            "ratio",
                            "band",
                            "verdict",
                            "by_proxy",
                            "repeats",
                            "warnings"}));
  EXPECT_THAT(Keys(document["ratio"]),
              IsSupersetOf({"value", "low", "high", "level", "rel_sd"}));
  EXPECT_EQ(document["band"], 0.2);
  EXPECT_EQ(document["repeats"]["reference"], 1);
  EXPECT_EQ(document["repeats"]["cup"], 1);
  EXPECT_EQ(document["verdict"], "thicker");
  EXPECT_LT(document["ratio"]["low"], document["ratio"]["value"]);
  EXPECT_LT(document["ratio"]["value"], document["ratio"]["high"]);
}

TEST(Compare, TakesStopwatchTimesWithoutClips) {
  const FlowkinRun run = RunFlowkin({"compare",
                                     "--test",
                                     "puddle",
                                     "--reference-times",
                                     "10.0",
                                     "10.2",
                                     "9.9",
                                     "--cup-times",
                                     "20.1",
                                     "20.3",
                                     "19.8",
                                     "--json"});
  ASSERT_EQ(run.status, kDone) << run.err;
  const json document = json::parse(run.out);
  // Time to a mark on the tile goes with the viscosity itself, so the ratio is
  // that of the geometric means.
  const double expected =
      std::cbrt(20.1 * 20.3 * 19.8) / std::cbrt(10.0 * 10.2 * 9.9);
  // Readings are weighed by how well a hand can read them, which moves the
  // mean by far less than their own scatter of one per cent.
  constexpr double kWeighing = 1e-3;
  EXPECT_NEAR(document["ratio"]["value"], expected, kWeighing * expected);
  EXPECT_EQ(document["verdict"], "thicker");
  EXPECT_EQ(document["repeats"]["reference"], 3);
}

TEST(Compare, LeavesOutAClipWithoutATest) {
  const FlowkinRun run = RunFlowkin({"compare",
                                     "--test",
                                     "level",
                                     "--reference",
                                     SampleClip("level/base-a.mp4"),
                                     SampleClip("puddle/base-b.mp4"),
                                     "--cup",
                                     SampleClip("level/basalt.mp4"),
                                     "--json"});
  ASSERT_EQ(run.status, kDone) << run.err;
  const json document = json::parse(run.out);
  EXPECT_EQ(document["repeats"]["reference"], 1);
  EXPECT_THAT(document["warnings"].dump(), HasSubstr("base-b.mp4"));
  EXPECT_THAT(run.err, HasSubstr("warning"));
}

TEST(Compare, RefusesWhenOneSideHoldsNoTest) {
  const FlowkinRun run = RunFlowkin({"compare",
                                     "--test",
                                     "stream",
                                     "--reference",
                                     kClip,
                                     "--cup",
                                     SampleClip("puddle/base-a.mp4"),
                                     "--json"});
  EXPECT_EQ(run.status, kRefused);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  const json document = json::parse(run.out);
  EXPECT_EQ(document["outcome"], "refused");
  EXPECT_TRUE(document["ratio"].is_null());
  EXPECT_TRUE(document["verdict"].is_null());
  EXPECT_THAT(document["reason"].get<std::string>(), HasSubstr("cup"));
}

struct GoldenCall {
  const char* name;
  std::vector<std::string> reference_s;
  const char* cup_s;
  const char* target;
};

class CompareGolden : public ::testing::TestWithParam<GoldenCall> {};

// The whole answer for a person. A change of words or digits is a change that
// readers notice, so it is made on purpose: with FLOWKIN_WRITE_GOLDEN set, the
// files are written anew.
TEST_P(CompareGolden, SaysTheSameWords) {
  std::vector<std::string> call = {"compare",
                                   "--test",
                                   "puddle",
                                   "--cup-times",
                                   GetParam().cup_s,
                                   "--target",
                                   GetParam().target,
                                   "--reference-times"};
  call.insert(
      call.end(), GetParam().reference_s.begin(), GetParam().reference_s.end());
  const FlowkinRun run = RunFlowkin(call);
  ASSERT_EQ(run.status, kDone) << run.err;
  EXPECT_EQ(run.err, "");
  const std::string path = std::string(FLOWKIN_SOURCE_DIR) +
                           "/tests/data/compare-" + GetParam().name + ".txt";
  if (std::getenv("FLOWKIN_WRITE_GOLDEN") != nullptr) WriteFile(path, run.out);
  EXPECT_EQ(run.out, ReadFile(path));
}

INSTANTIATE_TEST_SUITE_P(
    Verdicts,
    CompareGolden,
    ::testing::Values(GoldenCall{"thicker", {"10", "10.1", "9.9"}, "20", "1"},
                      GoldenCall{"match", {"10", "10.1", "9.9"}, "10.1", "1"},
                      GoldenCall{"thinner", {"10", "10.1", "9.9"}, "6", "1"},
                      GoldenCall{"undecided", {"10", "10.9", "9.2"}, "11", "1"},
                      GoldenCall{"target", {"10", "10.1", "9.9"}, "12", "1.2"}),
    [](const ::testing::TestParamInfo<GoldenCall>& tested) {
      return tested.param.name;
    });

TEST(Palette, AdvisesOnEveryCup) {
  const std::string folder = ScratchFolder();
  const json palette = {
      {"format", "flowkin-palette"},
      {"version", 1},
      {"sets",
       {{{"test", "level"},
         {"base_coat",
          {{"name", "Dune"},
           {"clips",
            {{{"file", SampleClip("level/base-a.mp4")}},
             {{"file", SampleClip("level/base-b.mp4")}}}}}},
         {"cups",
          {{{"name", "Gullfeather"},
            {"volume_ml", 90},
            {"clips", {{{"file", SampleClip("level/gullfeather.mp4")}}}}},
           {{"name", "Mistake"},
            {"volume_ml", 90},
            {"clips", {{{"file", SampleClip("puddle/base-a.mp4")}}}}}}}}}}};
  WriteFile(folder + "/palette.json", palette.dump());
  const FlowkinRun run = RunFlowkin({"palette", folder + "/palette.json"});
  // One cup has an answer, the other was filmed wrongly: both are told.
  EXPECT_EQ(run.status, kRefused);
  EXPECT_THAT(run.out, HasSubstr("level test, base coat Dune (2 films)"));
  EXPECT_THAT(run.out, HasSubstr("Gullfeather: 1."));
  EXPECT_THAT(run.out, HasSubstr("mL of water to the 90 mL"));
  EXPECT_THAT(run.out, HasSubstr("Mistake: not compared."));
  std::filesystem::remove_all(folder);
}

TEST(Palette, RefusesForeignAndWrongFiles) {
  const std::string folder = ScratchFolder();
  const std::string path = folder + "/palette.json";
  struct Wrong {
    const char* text;
    int status;
  };
  for (const Wrong& wrong : {
           Wrong{"", kUnreadable},
           Wrong{"[]", kUnreadable},
           Wrong{R"({"format": "something-else", "version": 1})", kUnreadable},
           Wrong{R"({"format": "flowkin-palette", "version": 2, "sets": []})",
                 kUnreadable},
           Wrong{R"({"format": "flowkin-palette", "version": 1, "sets": 3})",
                 kUnreadable},
           Wrong{R"({"format": "flowkin-palette", "version": 1, "sets": [
                    {"test": "stream",
                     "base_coat": {"name": "B", "clips": [{"file": "b"}]},
                     "cups": [{"name": "C", "volume_ml": -4,
                               "clips": [{"file": "c"}]}]}]})",
                 kWrongUse},
           Wrong{R"({"format": "flowkin-palette", "version": 1, "sets": [
                    {"test": "stream",
                     "base_coat": {"name": "B", "clips": [{"file": "b"}]},
                     "cups": [{"name": "C", "volume_ml": 4,
                               "clips": [{"file": "c"}]}]}]})",
                 kUnreadable},
       }) {
    WriteFile(path, wrong.text);
    const FlowkinRun run = RunFlowkin({"palette", path, "--json"});
    EXPECT_EQ(run.status, wrong.status) << wrong.text;
    EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
    EXPECT_EQ(run.out, "");
  }
  std::filesystem::remove_all(folder);
}

TEST(Output, ThatCannotBeWrittenIsAFailure) {
  if (!std::filesystem::exists("/dev/full")) GTEST_SKIP();
  const int status = std::system(
      ("'" FLOWKIN_BINARY
       "' compare --test puddle --reference-times 1 --cup-times 2 > /dev/full "
       "2> /dev/null"));
  EXPECT_EQ(WEXITSTATUS(status), 1);
}

TEST(Help, IsPrintedForTheProgramAndEveryCommand) {
  for (const std::vector<std::string>& call :
       {std::vector<std::string>{"--help"},
        {"measure", "--help"},
        {"compare", "--help"}}) {
    const FlowkinRun run = RunFlowkin(call);
    EXPECT_EQ(run.status, kDone);
    EXPECT_THAT(run.out, HasSubstr("Usage"));
    EXPECT_EQ(run.err, "");
  }
}

TEST(Version, NamesTheProgram) {
  const FlowkinRun run = RunFlowkin({"--version"});
  EXPECT_EQ(run.status, kDone);
  EXPECT_THAT(run.out, StartsWith("flowkin "));
}

}  // namespace
}  // namespace flowkin::testing
