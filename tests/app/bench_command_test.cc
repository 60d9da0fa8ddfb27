// `flowkin bench` from an empty store, as a person would go about it.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/app/run_flowkin.h"

namespace flowkin::testing {
namespace {

using Json = nlohmann::json;

class BenchCommand : public ::testing::Test {
 protected:
  void SetUp() override { store_ = ScratchFolder() + "/brands.db"; }

  FlowkinRun Run(std::vector<std::string> arguments) const {
    arguments.insert(arguments.begin(), "bench");
    arguments.insert(arguments.end(), {"--store", store_});
    return RunFlowkin(arguments);
  }
  /// The board after an action that is done.
  Json Do(std::vector<std::string> arguments) const {
    arguments.emplace_back("--json");
    const FlowkinRun run = Run(arguments);
    EXPECT_EQ(run.status, 0) << arguments[0] << ": " << run.err;
    return run.out.empty() ? Json() : Json::parse(run.out);
  }
  static Json Cup(const Json& board, const std::string& label) {
    for (const Json& cup : board["cups"]) {
      if (cup["label"] == label) return cup;
    }
    ADD_FAILURE() << "no cup " << label;
    return {};
  }
  void WrongUse(const std::vector<std::string>& arguments) const {
    const FlowkinRun run = Run(arguments);
    EXPECT_EQ(run.status, 2) << arguments[0];
    EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
    EXPECT_TRUE(run.out.empty()) << run.out;
  }

  std::string store_;
};

TEST_F(BenchCommand, GivesTheNumbersOfCompareAndDose) {
  const std::vector<std::string> base = {SampleClip("level/base-a.mp4"),
                                         SampleClip("level/base-b.mp4"),
                                         SampleClip("level/base-c.mp4")};
  const std::string cup = SampleClip("level/gullfeather.mp4");
  Do({"new", "Tuesday"});
  Do({"cup", "Base", "--role", "base-coat"});
  Do({"cup", "Gullfeather", "--volume-ml", "120"});
  Do({"test", "Base", base[0], base[1], base[2], "--test", "level"});
  const Json board = Do({"test", "Gullfeather", cup, "--test", "level"});
  const Json card = Cup(board, "Gullfeather");

  std::vector<std::string> compare = {
      "compare", "--json", "--test", "level", "--reference"};
  compare.insert(compare.end(), base.begin(), base.end());
  compare.insert(compare.end(), {"--cup", cup});
  const Json compared = Json::parse(RunFlowkin(compare).out);
  EXPECT_EQ(card["ratio"], compared["ratio"]);
  EXPECT_EQ(card["verdict"], compared["verdict"]);
  EXPECT_EQ(card["by_proxy"], compared["by_proxy"]);
  EXPECT_EQ(card["common_rel_sd"], compared["common_rel_sd"]);

  // The history the bench prints gives the bench's dose...
  const FlowkinRun history = Run({"history", "Gullfeather"});
  ASSERT_EQ(history.status, 0) << history.err;
  const FlowkinRun dose =
      RunFlowkin({"dose", "--json", "--store", store_}, history.out);
  ASSERT_EQ(dose.status, 0) << dose.err;
  const Json advised = Json::parse(dose.out);
  for (const char* field : {"advice",
                            "add_ml",
                            "predicted",
                            "overshoot_probability",
                            "water_share",
                            "expected_additions_left"}) {
    EXPECT_EQ(card["dose"][field], advised[field]) << field;
  }
  // ...and so does what compare printed, written down by hand.
  Json by_hand = {{"volume_ml", 120},
                  {"common_rel_sd", compared["common_rel_sd"]},
                  {"history",
                   {{{"added_ml", 0},
                     {"ratio", compared["ratio"]["value"]},
                     {"rel_sd", compared["ratio"]["rel_sd"]}}}}};
  const Json written = Json::parse(
      RunFlowkin({"dose", "--json", "--store", store_}, by_hand.dump()).out);
  EXPECT_EQ(card["dose"]["advice"], written["advice"]);
  EXPECT_EQ(card["dose"]["add_ml"], written["add_ml"]);
  ASSERT_EQ(card["dose"]["advice"], "add");
  EXPECT_EQ(card["step"]["amount_ml"], written["add_ml"]);
}

TEST_F(BenchCommand, KeepsADayWithUndoAndCorrection) {
  Do({"new", "Tuesday"});
  Do({"cup",
      "Base",
      "--role",
      "base-coat",
      "--volume-ml",
      "300",
      "--swatch",
      "#f0f0f0"});
  Do({"cup",
      "Plumwing",
      "--volume-ml",
      "120",
      "--brand",
      "Quillmere",
      "--colour",
      "Plum",
      "--unit",
      "drop"});
  Json board =
      Do({"test", "Base", SampleClip("stream/base-a.mp4"), "--test", "stream"});
  Json base = Cup(board, "Base");
  EXPECT_EQ(base["swatch"], "#f0f0f0");
  EXPECT_EQ(base["films"][0]["wanted_more"], 2);
  const std::string film = std::to_string(base["tests"][0]["id"].get<int>());
  const double broke_s = base["tests"][0]["events"]["break_s"];

  // Set by hand, half a second later, and taken back again.
  board = Do({"correct", film, "--break-s", std::to_string(broke_s + 0.5)});
  base = Cup(board, "Base");
  EXPECT_NEAR(base["tests"][0]["events"]["break_s"].get<double>(),
              broke_s + 0.5,
              1e-5);  // six digits are given on
  EXPECT_NEAR(base["tests"][0]["by_hand"]["break_s"].get<double>(),
              broke_s + 0.5,
              1e-5);
  board = Do({"undo"});
  EXPECT_EQ(Cup(board, "Base")["tests"][0]["events"]["break_s"], broke_s);
  EXPECT_TRUE(Cup(board, "Base")["tests"][0]["by_hand"].empty());

  board = Do({"set-aside", film});
  EXPECT_EQ(Cup(board, "Base")["films"][0]["set_aside"], 1);
  board = Do({"take-back", film});
  EXPECT_EQ(Cup(board, "Base")["films"][0]["counted"], 1);

  board = Do({"added", "Plumwing", "--units", "20"});
  EXPECT_EQ(Cup(board, "Plumwing")["added_ml"], 1.0);
  board = Do({"added", "Plumwing", "2.5", "--thinner", "medium"});
  EXPECT_EQ(Cup(board, "Plumwing")["added_ml"], 3.5);
  EXPECT_NEAR(Cup(board, "Plumwing")["water_share"].get<double>(),
              1.0 / 123.5,
              1e-5);  // four digits are given on
  board = Do({"put-back", "Plumwing", "10"});
  EXPECT_EQ(Cup(board, "Plumwing")["volume_now_ml"], 133.5);
  board = Do({"undo"});
  board = Do({"undo"});
  EXPECT_EQ(Cup(board, "Plumwing")["added_ml"], 1.0);
  EXPECT_TRUE(board["can_redo"]);
  board = Do({"redo"});
  EXPECT_EQ(Cup(board, "Plumwing")["added_ml"], 3.5);
  Do({"stirred", "Plumwing"});
  board = Do({"room", "21.5"});
  EXPECT_EQ(board["room_c"], 21.5);
  EXPECT_FALSE(board["can_redo"]);
  Do({"note", "smells of lemon", "--cup", "Plumwing"});
  board = Do({"settings", "--band", "0.2", "--base-films", "1"});
  EXPECT_EQ(board["settings"]["band"], 0.2);
  EXPECT_EQ(Cup(board, "Base")["films"][0]["wanted_more"], 0);
  board = Do({"cup", "Plumwing", "--target", "0.8", "--name", "Plum"});
  EXPECT_EQ(Cup(board, "Plum")["target"], 0.8);
  EXPECT_EQ(Cup(board, "Plum")["brand"], "Quillmere");
  board = Do({"cup", "Plum", "--remove"});
  EXPECT_EQ(board["cups"].size(), 1U);

  Do({"new", "Wednesday"});
  Do({"close"});
  const FlowkinRun list = Run({"list", "--json"});
  const Json sessions = Json::parse(list.out)["sessions"];
  ASSERT_EQ(sessions.size(), 2U);
  EXPECT_EQ(sessions[0]["name"], "Wednesday");
  EXPECT_TRUE(sessions[0]["closed"]);
  EXPECT_FALSE(sessions[1]["closed"]);
  // The last session that is not closed goes on.
  EXPECT_EQ(Do({"show"})["session"]["name"], "Tuesday");
  EXPECT_EQ(Do({"show", "--session", "2"})["session"]["name"], "Wednesday");
}

TEST_F(BenchCommand, ShowsTheBoardToAPerson) {
  Do({"new", "Tuesday"});
  EXPECT_THAT(Run({"show"}).out, ::testing::HasSubstr("bench is empty"));
  Do({"cup", "Base", "--role", "base-coat"});
  const FlowkinRun run = Run({"show"});
  EXPECT_EQ(run.status, 0);
  EXPECT_THAT(run.out, ::testing::HasSubstr("Base, base coat"));
  EXPECT_THAT(run.out, ::testing::HasSubstr("Base holds it back."));
  EXPECT_TRUE(run.err.empty()) << run.err;
}

TEST_F(BenchCommand, ARefusedFilmIsKeptButDoesNotCount) {
  Do({"new", "Tuesday"});
  Do({"cup", "Base", "--role", "base-coat"});
  const FlowkinRun run = Run({"test",
                              "Base",
                              SampleClip("puddle/base-a.mp4"),
                              "--test",
                              "stream",
                              "--json"});
  EXPECT_EQ(run.status, 3);
  const Json board = Json::parse(run.out);
  EXPECT_EQ(board["outcome"], "refused");
  EXPECT_FALSE(board["reason"].get<std::string>().empty());
  const Json base = Cup(board, "Base");
  EXPECT_EQ(base["films"][0]["counted"], 0);
  EXPECT_EQ(base["films"][0]["refused"], 1);
  EXPECT_EQ(base["tests"][0]["outcome"], "refused");
}

TEST_F(BenchCommand, WrongUseIsOneSentence) {
  WrongUse({"show"});  // no session yet
  Do({"new", "Tuesday"});
  Do({"cup", "Base", "--role", "base-coat"});
  WrongUse({"cup", "Other", "--role", "base-coat"});
  WrongUse({"cup", "Lagoon", "--volume-ml", "0"});
  WrongUse({"cup", "Lagoon", "--swatch", "blue"});
  WrongUse({"cup", "Lagoon", "--unit", "thimble"});
  WrongUse({"added", "Lagoon", "1"});
  WrongUse({"added", "Base", "-1"});
  WrongUse({"added", "Base"});
  WrongUse({"added", "Base", "--units", "3"});
  WrongUse({"stirred", "Nobody"});
  WrongUse({"set-aside", "99"});
  WrongUse({"correct", "99", "--break-s", "1"});
  WrongUse({"room", "200"});
  WrongUse({"redo"});
  WrongUse({"learn", "Base"});
  WrongUse({"show", "--session", "7"});
  WrongUse({"show", "--at", "noon"});
  const FlowkinRun missing =
      Run({"test", "Base", "nowhere.mp4", "--test", "stream"});
  EXPECT_EQ(missing.status, 4);
  EXPECT_TRUE(IsOneSentence(missing.err)) << missing.err;
  const FlowkinRun none = Run({"history", "Base"});
  EXPECT_EQ(none.status, 3);
  EXPECT_EQ(RunFlowkin({"bench", "--help"}).status, 0);
  EXPECT_EQ(RunFlowkin({"bench"}).status, 2);
}

TEST_F(BenchCommand, OneFilmCountsOnce) {
  Do({"new", "Tuesday"});
  Do({"cup", "Base", "--role", "base-coat"});
  Do({"cup", "Lagoon"});
  const std::string clip = SampleClip("level/base-a.mp4");
  Do({"test", "Base", clip, "--test", "level"});
  WrongUse({"test", "Lagoon", clip, "--test", "level"});
}

}  // namespace
}  // namespace flowkin::testing
