// dose, learn, brands and the brand book, through the built program.
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>

#include "tests/app/run_flowkin.h"

namespace flowkin {
namespace {

using testing::FlowkinRun;
using testing::IsOneSentence;
using testing::RunFlowkin;
using Json = nlohmann::json;

std::string Cup(const std::string& history, const std::string& more = "") {
  return R"({"volume_ml": 120, "band": 0.15, "smallest_step_ml": 0.25,
    "thinner": {"kind": "water"}, "brand": null, )" +
         more + R"("history": [)" + history + "]}";
}

const char* const kTwoTests =
    R"({"added_ml": 0, "ratio": 1.82, "rel_sd": 0.04},
       {"added_ml": 2.0, "ratio": 1.41, "rel_sd": 0.04})";

Json Dose(const std::string& cup,
          const std::vector<std::string>& more = {},
          int status = 0) {
  std::vector<std::string> arguments = {"dose", "--json"};
  arguments.insert(arguments.end(), more.begin(), more.end());
  const FlowkinRun run = RunFlowkin(arguments, cup);
  EXPECT_EQ(run.status, status) << run.err;
  return Json::parse(run.out, nullptr, false);
}

TEST(DoseCommand, GivesEveryFieldOfTheContract) {
  const Json document = Dose(Cup(kTwoTests));
  EXPECT_EQ(document["outcome"], "advised");
  EXPECT_EQ(document["advice"], "add");
  const double add_ml = document["add_ml"];
  EXPECT_GT(add_ml, 0.0);
  EXPECT_EQ(add_ml / 0.25, static_cast<int>(add_ml / 0.25));
  const Json& predicted = document["predicted"];
  EXPECT_LT(predicted["low"], predicted["value"]);
  EXPECT_LT(predicted["value"], predicted["high"]);
  EXPECT_EQ(predicted["level"], 0.95);
  EXPECT_LT(document["overshoot_probability"], 0.005);
  EXPECT_NEAR(document["water_share"].get<double>(),
              (2.0 + add_ml) / (122.0 + add_ml),
              1e-4);  // four digits are printed
  EXPECT_GE(document["expected_additions_left"], 1.0);
  EXPECT_TRUE(document["cautions"].is_array());
}

TEST(DoseCommand, SaysMatchMeasureRescueAndLimit) {
  EXPECT_EQ(
      Dose(Cup(R"({"added_ml": 0, "ratio": 1.02, "rel_sd": 0.03})"))["advice"],
      "match");
  EXPECT_EQ(
      Dose(Cup(R"({"added_ml": 0, "ratio": 1.05, "rel_sd": 0.2})"))["advice"],
      "measure");
  const Json rescue = Dose(Cup(R"({"added_ml": 0, "ratio": 1.8, "rel_sd": 0.03},
             {"added_ml": 14, "ratio": 0.7, "rel_sd": 0.03},
             {"added_ml": 14, "ratio": 0.71, "rel_sd": 0.03})",
                               R"("reserve_ml": 60, )"));
  EXPECT_EQ(rescue["advice"], "rescue");
  EXPECT_GT(rescue["add_ml"], 0.0);
  EXPECT_LE(rescue["add_ml"], 60.0);
  EXPECT_GT(rescue["predicted"]["value"], 0.71);
  const Json limit = Dose(Cup(R"({"added_ml": 0, "ratio": 3.0, "rel_sd": 0.02},
                  {"added_ml": 50, "ratio": 1.7, "rel_sd": 0.02},
                  {"added_ml": 50, "ratio": 1.7, "rel_sd": 0.02})"));
  EXPECT_EQ(limit["advice"], "limit");
  EXPECT_FALSE(limit["cautions"].empty());
}

TEST(DoseCommand, ThePathMeetsTheAdvice) {
  const double add_ml = Dose(Cup(kTwoTests))["add_ml"];
  const std::string end = std::to_string(2.0 + add_ml);
  const Json document = Dose(Cup(kTwoTests), {"--path-ml", end});
  const Json& path = document["path"];
  ASSERT_GT(path.size(), 10U);
  EXPECT_EQ(path.front()["added_ml"], 0.0);
  EXPECT_NEAR(path.back()["added_ml"].get<double>(), 2.0 + add_ml, 1e-3);
  for (const char* field : {"value", "low", "high"}) {
    // The same question asked twice; four digits are printed.
    EXPECT_NEAR(path.back()[field].get<double>(),
                document["predicted"][field].get<double>(),
                2e-3);
    for (const Json& at : path) {
      if (at["added_ml"] != 2.0) continue;
      EXPECT_NEAR(at[field].get<double>(),
                  document["ratio_now"][field].get<double>(),
                  2e-3);
    }
  }
  for (std::size_t i = 1; i < path.size(); ++i) {
    // Water never thickens a cup.
    EXPECT_LE(path[i]["value"], path[i - 1]["value"]);
  }
  // A path that should end before the last test still shows where the cup is.
  EXPECT_EQ(Dose(Cup(kTwoTests), {"--path-ml", "0"})["path"].back()["added_ml"],
            2.0);
}

TEST(DoseCommand, StartsTooThinGetsBodyNotWater) {
  const Json document =
      Dose(Cup(R"({"added_ml": 0, "ratio": 0.6, "rel_sd": 0.03})"));
  EXPECT_EQ(document["advice"], "rescue");
  EXPECT_TRUE(document["add_ml"].is_null());
  EXPECT_FALSE(document["cautions"].empty());
}

TEST(DoseCommand, SpeaksHerUnitRoundedDown) {
  const Json document =
      Dose(Cup(kTwoTests,
               R"("unit": {"kind": "drop", "count": 20, "weight_g": 0.96}, )"));
  const double drops = document["add_units"];
  EXPECT_EQ(drops, static_cast<int>(drops));
  // 0.96 g of water (0.9982 g/mL at 20 degrees C) in 20 drops; the step is the
  // whole number of drops not below 0.25 mL.
  EXPECT_NEAR(
      document["add_ml"].get<double>(), drops * 0.96 / 20.0 / 0.9982, 1e-4);
}

TEST(DoseCommand, RefusesATeaspoonForASmallCup) {
  const std::string cup = R"({"volume_ml": 40,
    "unit": {"kind": "teaspoon"},
    "history": [{"added_ml": 0, "ratio": 1.3, "rel_sd": 0.03},
                {"added_ml": 0, "ratio": 1.3, "rel_sd": 0.03}]})";
  const FlowkinRun run = RunFlowkin({"dose", "--json"}, cup);
  EXPECT_EQ(run.status, 3);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  const Json document = Json::parse(run.out);
  EXPECT_EQ(document["outcome"], "refused");
  EXPECT_NE(document["reason"].get<std::string>().find("teaspoon"),
            std::string::npos);
}

TEST(DoseCommand, CautionsForTheBench) {
  const Json document = Dose(
      Cup(kTwoTests,
          R"("temperature_c": 24.5, "base_temperature_c": 21, "open_min": 45,
             "base_age_min": 400, "rest_s": 300, "other_water_shares": [0.25],
          )"));
  EXPECT_EQ(document["cautions"].size(), 5U);
}

struct BadCup {
  const char* text;
  int status;
};
class BadCups : public ::testing::TestWithParam<BadCup> {};
TEST_P(BadCups, EndWithTheirStatusAndOneSentence) {
  const FlowkinRun run = RunFlowkin({"dose", "--json"}, GetParam().text);
  EXPECT_EQ(run.status, GetParam().status) << run.err;
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  EXPECT_EQ(run.out, "");
}
INSTANTIATE_TEST_SUITE_P(
    Dose,
    BadCups,
    ::testing::Values(
        BadCup{"", 4},
        BadCup{"not json", 4},
        BadCup{"[]", 4},
        BadCup{"{}", 4},
        BadCup{R"({"volume_ml": "much", "history": []})", 4},
        BadCup{R"({"volume_ml": 120, "history": 3})", 4},
        BadCup{R"({"volume_ml": 120, "history": [1]})", 4},
        BadCup{R"({"volume_ml": 120, "history": [{"ratio": 1.2}]})", 4},
        BadCup{R"({"volume_ml": 120, "history": []})", 2},
        BadCup{R"({"volume_ml": -1, "history":
                  [{"added_ml": 0, "ratio": 1.2, "rel_sd": 0.04}]})",
               2},
        BadCup{R"({"volume_ml": 120, "history":
                  [{"added_ml": 0, "ratio": 0, "rel_sd": 0.04}]})",
               2},
        BadCup{R"({"volume_ml": 120, "history":
                  [{"added_ml": 0, "ratio": 1.2, "rel_sd": -0.1}]})",
               2},
        BadCup{R"({"volume_ml": 120, "history":
                  [{"added_ml": 5, "ratio": 1.2, "rel_sd": 0.1},
                   {"added_ml": 3, "ratio": 1.1, "rel_sd": 0.1}]})",
               2},
        BadCup{R"({"volume_ml": 120, "band": 7, "history":
                  [{"added_ml": 0, "ratio": 1.2, "rel_sd": 0.04}]})",
               2},
        BadCup{R"({"volume_ml": 120, "thinner": {"kind": "wine"}, "history":
                  [{"added_ml": 0, "ratio": 1.2, "rel_sd": 0.04}]})",
               2}));

TEST(BrandBook, LearnedBrandNeedsNoProbing) {
  const std::string book = testing::ScratchFolder() + "/book.db";
  // Filmed twice, so that one more film is worth no more than water.
  const std::string first = R"({"added_ml": 0, "ratio": 2.0, "rel_sd": 0.04},
    {"added_ml": 0, "ratio": 2.0, "rel_sd": 0.04})";
  Dose(Cup(first), {"--store", "no such book"}, 4);
  const Json unknown = Dose(Cup(first));
  for (const char* history : {R"({"added_ml": 0, "ratio": 1.9, "rel_sd": 0.03},
           {"added_ml": 5, "ratio": 1.42, "rel_sd": 0.03},
           {"added_ml": 10, "ratio": 1.09, "rel_sd": 0.03})",
                              R"({"added_ml": 0, "ratio": 1.6, "rel_sd": 0.03},
           {"added_ml": 4, "ratio": 1.27, "rel_sd": 0.03},
           {"added_ml": 8, "ratio": 1.03, "rel_sd": 0.03})"}) {
    const FlowkinRun run = RunFlowkin(
        {"learn", "--store", book, "--brand", "Grüne Werft", "--json"},
        Cup(history));
    ASSERT_EQ(run.status, 0) << run.err;
    EXPECT_EQ(Json::parse(run.out)["outcome"], "learned");
  }
  const std::string known_cup = R"({"volume_ml": 120, "brand": "Grüne Werft",
    "history": [)" + first + "]}";
  const Json known = Dose(known_cup, {"--store", book});
  EXPECT_GT(known["add_ml"], 1.5 * unknown["add_ml"].get<double>());
  EXPECT_TRUE(known["cautions"].empty()) << known.dump();

  const FlowkinRun list = RunFlowkin({"brands", "--store", book, "--json"});
  ASSERT_EQ(list.status, 0) << list.err;
  const Json brands = Json::parse(list.out)["brands"];
  ASSERT_EQ(brands.size(), 1U);
  EXPECT_EQ(brands[0]["brand"], "Grüne Werft");
  EXPECT_EQ(brands[0]["cups"], 2);
  EXPECT_LT(brands[0]["curve"]["slope"]["low"],
            brands[0]["curve"]["slope"]["value"]);

  const std::string folder = std::filesystem::path(book).parent_path();
  for (const char* name : {"/curve.svg", "/curve.png"}) {
    const std::string plot = folder + name;
    const FlowkinRun run =
        RunFlowkin({"brands", "--store", book, "--plot", plot});
    ASSERT_EQ(run.status, 0) << run.err;
    const std::string bytes = testing::ReadFile(plot);
    if (plot.back() == 'g' && plot[plot.size() - 2] == 'v') {
      EXPECT_EQ(bytes.substr(0, 4), "<svg");
      EXPECT_NE(bytes.find("Grüne Werft"), std::string::npos);
      EXPECT_NE(bytes.find("<circle"), std::string::npos);
    } else {
      EXPECT_EQ(bytes.substr(1, 3), "PNG");  // ISO/IEC 15948, signature
    }
  }
}

TEST(BrandBook, ForgettingAsksAndIsUndone) {
  const std::string book = testing::ScratchFolder() + "/book.db";
  const std::string cup = Cup(kTwoTests);
  ASSERT_EQ(RunFlowkin({"learn", "--store", book, "--brand", "A"}, cup).status,
            0);
  const std::vector<std::string> forget = {
      "forget", "--store", book, "--brand", "A"};
  EXPECT_EQ(RunFlowkin(forget, "n\n").status, 3);
  EXPECT_EQ(RunFlowkin(forget, "y\n").status, 0);
  EXPECT_EQ(RunFlowkin(forget, "y\n").status, 2);
  const auto count = [&] {
    return Json::parse(
               RunFlowkin({"brands", "--store", book, "--json"}).out)["brands"]
        .size();
  };
  EXPECT_EQ(count(), 0U);
  EXPECT_EQ(
      RunFlowkin({"forget", "--store", book, "--brand", "A", "--undo"}).status,
      0);
  EXPECT_EQ(count(), 1U);
}

TEST(BrandBook, ExportImportMergesAndKnowsDuplicates) {
  const std::string folder = testing::ScratchFolder();
  const std::string one = folder + "/one.db";
  const std::string two = folder + "/two.db";
  const std::string file = folder + "/book.json";
  const std::string cup = Cup(kTwoTests);
  for (const char* brand : {"A", "B"}) {
    ASSERT_EQ(
        RunFlowkin({"learn", "--store", one, "--brand", brand}, cup).status, 0);
  }
  ASSERT_EQ(RunFlowkin({"learn", "--store", two, "--brand", "B"}, cup).status,
            0);
  ASSERT_EQ(RunFlowkin({"export", "--store", one, file}).status, 0);
  const FlowkinRun merged =
      RunFlowkin({"import", "--store", two, "--json", file});
  ASSERT_EQ(merged.status, 0) << merged.err;
  EXPECT_EQ(Json::parse(merged.out)["added"], 1);
  EXPECT_EQ(Json::parse(merged.out)["known"], 1);
  const auto exported = [](const std::string& book) {
    Json document = Json::parse(RunFlowkin({"export", "--store", book}).out);
    for (Json& entry : document["cups"]) entry.erase("learned_utc");
    return document;
  };
  // The same cups in another order.
  EXPECT_EQ(exported(one)["cups"].size(), exported(two)["cups"].size());

  Json newer = Json::parse(testing::ReadFile(file));
  newer["version"] = 99;
  const FlowkinRun refused =
      RunFlowkin({"import", "--store", two}, newer.dump());
  EXPECT_EQ(refused.status, 4);
  EXPECT_TRUE(IsOneSentence(refused.err)) << refused.err;
  EXPECT_EQ(RunFlowkin({"import", "--store", two}, "{\"format\": 1}").status,
            4);

  const std::string copy = folder + "/copy.db";
  EXPECT_EQ(RunFlowkin({"backup", "--store", two, copy}).status, 0);
  EXPECT_EQ(exported(copy), exported(two));
  EXPECT_EQ(RunFlowkin({"backup", "--store", two, copy}).status, 2);
}

/// The size no file may pass while this lives: what a full disk looks like.
class FullDisk {
 public:
  explicit FullDisk(std::uintmax_t bytes) {
    before_ = std::signal(SIGXFSZ, SIG_IGN);
    ::getrlimit(RLIMIT_FSIZE, &old_);
    rlimit limit = old_;
    limit.rlim_cur = bytes;
    ::setrlimit(RLIMIT_FSIZE, &limit);
  }
  ~FullDisk() {
    ::setrlimit(RLIMIT_FSIZE, &old_);
    std::signal(SIGXFSZ, before_);
  }
  FullDisk(const FullDisk&) = delete;
  FullDisk& operator=(const FullDisk&) = delete;

 private:
  rlimit old_{};
  void (*before_)(int) = nullptr;
};

TEST(BrandBook, FullDiskIsOneSentenceAndLosesNothing) {
  const std::string folder = testing::ScratchFolder();
  const std::string book = folder + "/book.db";
  const std::string cup = Cup(kTwoTests);
  for (const char* brand : {"A", "B", "C"}) {
    ASSERT_EQ(
        RunFlowkin({"learn", "--store", book, "--brand", brand}, cup).status,
        0);
  }
  Json many = {{"format", "flowkin brand book"}, {"version", 1}};
  for (int k = 0; k < 400; ++k) {
    Json entry = Json::parse(cup);
    entry["brand"] = "Brand " + std::to_string(k);
    many["cups"].push_back(entry);
  }
  testing::WriteFile(folder + "/many.json", many.dump());
  const std::string whole = RunFlowkin({"export", "--store", book}).out;
  const auto size = std::filesystem::file_size(book);
  for (const std::vector<std::string>& command :
       {std::vector<std::string>{
            "import", "--store", book, folder + "/many.json"},
        std::vector<std::string>{"export", "--store", book, folder + "/out"},
        std::vector<std::string>{
            "backup", "--store", book, folder + "/copy.db"}}) {
    // An import may not let the book grow, the others have less room; what is
    // said of it is kept in a file as well.
    std::uintmax_t room = size;
    if (command[0] == "backup") room = size / 2;
    if (command[0] == "export") room = whole.size() / 2;
    const FullDisk full(room);
    const FlowkinRun run = RunFlowkin(command);
    EXPECT_EQ(run.status, 1) << command[0] << run.err;
    EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
    EXPECT_NE(run.err.find("disk"), std::string::npos) << run.err;
  }
  EXPECT_EQ(RunFlowkin({"export", "--store", book}).out, whole);
  EXPECT_FALSE(std::filesystem::exists(folder + "/out"));
  EXPECT_FALSE(std::filesystem::exists(folder + "/copy.db"));
  EXPECT_EQ(
      RunFlowkin({"import", "--store", book, folder + "/many.json"}).status, 0);
}

TEST(BrandBook, LearnsALiquidAndACupThatChangedIt) {
  const std::string book = testing::ScratchFolder() + "/book.db";
  const std::string cup = R"({"volume_ml": 120, "brand": "A",
    "thinner": {"kind": "medium"},
    "history": [{"added_ml": 0, "ratio": 2.4, "rel_sd": 0.03},
                {"added_ml": 3, "ratio": 2.0, "rel_sd": 0.03,
                 "thinner": "water"},
                {"added_ml": 33, "ratio": 1.45, "rel_sd": 0.03},
                {"added_ml": 63, "ratio": 1.17, "rel_sd": 0.03}]})";
  const FlowkinRun learned =
      RunFlowkin({"learn", "--store", book, "--json"}, cup);
  ASSERT_EQ(learned.status, 0) << learned.err;
  EXPECT_EQ(Json::parse(learned.out)["outcome"], "learned");
  // One cup of water and one of medium, which starts as the water left it.
  const Json cups =
      Json::parse(RunFlowkin({"export", "--store", book}).out)["cups"];
  ASSERT_EQ(cups.size(), 2U);
  EXPECT_EQ(cups[0]["thinner"]["kind"], "water");
  EXPECT_EQ(cups[1]["thinner"]["kind"], "medium");
  EXPECT_EQ(cups[1]["volume_ml"], 123.0);
  EXPECT_EQ(cups[1]["history"][2]["added_ml"], 60.0);
  EXPECT_EQ(
      Json::parse(
          RunFlowkin({"learn", "--store", book, "--json"}, cup).out)["outcome"],
      "known");

  const Json list =
      Json::parse(RunFlowkin({"brands", "--store", book, "--json"}).out);
  ASSERT_EQ(list["liquids"].size(), 1U);
  EXPECT_EQ(list["liquids"][0]["thinner"], "medium");
  EXPECT_LT(list["liquids"][0]["ratio"]["low"],
            list["liquids"][0]["ratio"]["value"]);

  // Its next cup is surer of the medium than one that never met it.
  const std::string next = R"({"volume_ml": 120, "brand": "A",
    "thinner": {"kind": "medium"},
    "history": [{"added_ml": 0, "ratio": 2.0, "rel_sd": 0.04},
                {"added_ml": 0, "ratio": 2.0, "rel_sd": 0.04}]})";
  const Json known = Dose(next, {"--store", book});
  const Json alone = Dose(R"({"volume_ml": 120, "thinner": {"kind": "medium"},
    "history": [{"added_ml": 0, "ratio": 2.0, "rel_sd": 0.04},
                {"added_ml": 0, "ratio": 2.0, "rel_sd": 0.04}]})");
  const auto width = [](const Json& dose) {
    return dose["predicted"]["high"].get<double>() -
           dose["predicted"]["low"].get<double>();
  };
  EXPECT_EQ(known["add_ml"], alone["add_ml"]);  // both the most for one step
  EXPECT_LT(width(known), 0.9 * width(alone));
  const FlowkinRun bad = RunFlowkin({"dose", "--json"},
                                    R"({"volume_ml": 120, "history":
          [{"added_ml": 0, "ratio": 2.0, "thinner": "oil"}]})");
  EXPECT_EQ(bad.status, 2);
  EXPECT_TRUE(IsOneSentence(bad.err)) << bad.err;
}

TEST(BrandBook, PictureShowsLettersOfAnyName) {
  const std::string folder = testing::ScratchFolder();
  std::vector<std::string> pictures;
  for (const char* brand : {"Grüne Werft", "Grêne Werft", "Gr?ne Werft"}) {
    const std::string book =
        folder + "/" + std::to_string(pictures.size()) + ".db";
    ASSERT_EQ(
        RunFlowkin({"learn", "--store", book, "--brand", brand}, Cup(kTwoTests))
            .status,
        0);
    const std::string file = folder + "/curve.png";
    ASSERT_EQ(RunFlowkin({"brands", "--store", book, "--plot", file}).status,
              0);
    pictures.push_back(testing::ReadFile(file));
  }
  EXPECT_NE(pictures[0], pictures[1]);
  EXPECT_NE(pictures[0], pictures[2]);
}

TEST(LearnCommand, OneTestTeachesNothing) {
  const std::string book = testing::ScratchFolder() + "/book.db";
  const FlowkinRun run =
      RunFlowkin({"learn", "--store", book, "--brand", "A", "--json"},
                 Cup(R"({"added_ml": 0, "ratio": 1.8, "rel_sd": 0.04})"));
  EXPECT_EQ(run.status, 3);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  EXPECT_EQ(Json::parse(run.out)["outcome"], "refused");
}

}  // namespace
}  // namespace flowkin
