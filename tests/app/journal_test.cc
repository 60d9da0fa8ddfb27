// The journal: what is written, found, explained and learned; in process where
// days at the bench are made up, through the built program where they are read.

#include "app/usecases/journal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "app/usecases/bench.h"
#include "core/base/random.h"
#include "tests/app/run_flowkin.h"
#include "tests/support/many_days.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

/// A puddle test whose rate tells the viscosity.
FilmedTest Film(double viscosity) {
  FilmedTest film;
  film.film = "film.mp4";
  film.duration_s = 20.0;
  FlowMeasurement& m = film.measurement;
  m.kind = TestKind::kPuddle;
  m.outcome = Outcome::kMeasured;
  m.start_s = 1.0;
  FlowProxy proxy;
  proxy.name = "spreading_rate";
  proxy.unit = "mm8/s";
  proxy.value = 1.0 / viscosity;
  proxy.ln_value = {-std::log(viscosity), 0.01};
  proxy.exponent = {-1.0, 0.0};
  m.proxies = {proxy};
  return film;
}

class TheJournal : public ::testing::Test {
 protected:
  void SetUp() override {
    store_ = ScratchFolder() + "/book.db";
    auto bench = Bench::Open(store_);
    ASSERT_TRUE(bench) << bench.error().message;
    bench_.emplace(*std::move(bench));
  }

  /// A day with a base coat and a colour `ratio` times as thick.
  SessionId Day(const std::string& name, double ratio = 1.0) {
    const auto id = bench_->NewSession(name, now_);
    EXPECT_TRUE(id);
    CupDetails base;
    base.label = "Dune";
    base.role = CupRole::kBaseCoat;
    CupDetails colour;
    colour.label = "Lagoon";
    colour.paint = {"Grüne Werft", "Zinnober"};
    colour.volume_ml = 120.0;
    const auto base_id = bench_->AddCup(base, now_);
    const auto colour_id = bench_->AddCup(colour, now_);
    EXPECT_TRUE(base_id && colour_id);
    for (int i = 0; i < 3; ++i) {
      EXPECT_TRUE(bench_->RecordTest(*base_id, Film(1000.0), now_));
      EXPECT_TRUE(bench_->RecordTest(*colour_id, Film(1000.0 * ratio), now_));
      now_.ms += 60'000;
    }
    return *id;
  }
  void Pour(const std::string& technique, PourVerdict verdict) {
    PourMade pour;
    pour.technique = technique;
    pour.planned_ml = 800.0;
    pour.used_ml = 1000.0;
    pour.dry_mm = 0.3;
    EXPECT_TRUE(bench_->RecordPour(pour, now_));
    EXPECT_TRUE(bench_->JudgePour({verdict, ""}, now_));
  }
  json Run(std::vector<std::string> arguments) {
    arguments.insert(arguments.end(), {"--store", store_, "--json"});
    const FlowkinRun run = RunFlowkin(arguments);
    EXPECT_EQ(run.status, 0) << run.err;
    return json::parse(run.out, nullptr, false);
  }
  Journal Open() {
    auto journal = Journal::Open(store_);
    EXPECT_TRUE(journal);
    return *std::move(journal);
  }

  std::string store_;
  std::optional<Bench> bench_;
  UtcTime now_{1'772'366'400'000};  // 2026-03-01T12:00:00Z
};

TEST_F(TheJournal, KeepsWhatThePourWas) {
  const SessionId id = Day("Sunday", 1.3);
  ASSERT_TRUE(bench_->SetRoomTemperature(16.0, now_));
  ASSERT_TRUE(bench_->TakeNote({}, "Straßenlärm, windy", now_));
  PourMade pour;
  pour.technique = "swipe";
  pour.dry_mm = 0.5;
  pour.strained = true;
  pour.text = "first swipe";
  ASSERT_TRUE(bench_->RecordPour(pour, now_));
  ASSERT_TRUE(bench_->RecordFault({"crazing", "lower left"}, now_));
  ASSERT_TRUE(bench_->RecordPhoto({PhotoKind::kDry, "dry.jpg", {}, ""}, now_));
  ASSERT_TRUE(bench_->JudgePour({PourVerdict::kPoor, "crazed"}, now_));

  const json page = Run({"journal", "show", std::to_string(id)});
  EXPECT_EQ(page["name"], "Sunday");
  EXPECT_EQ(page["room_c"], 16.0);
  EXPECT_EQ(page["verdict"], "poor");
  EXPECT_EQ(page["photos"][0]["kind"], "dry");
  EXPECT_EQ(page["notes"][0]["text"], "Straßenlärm, windy");
  const json& cup = page["pour"]["cups"][0];
  EXPECT_EQ(cup["name"], "Lagoon");
  // Puddles of exponent -1: the ratio of the rates, to four digits.
  EXPECT_NEAR(cup["ratio"]["value"].get<double>(), 1.3, 1e-3);
  EXPECT_LT(cup["ratio"]["low"], 1.3);
  EXPECT_GT(cup["ratio"]["high"], 1.3);
  const json& causes = page["faults"][0]["causes"];
  const auto standing = [&](const std::string& of) -> std::string {
    for (const json& cause : causes) {
      if (cause["says"].get<std::string>().find(of) != std::string::npos) {
        return cause["standing"];
      }
    }
    return "";
  };
  EXPECT_EQ(standing("film was thick"), "fits");
  EXPECT_EQ(standing("room was cold"), "not measured")
      << "16 °C is between the limits";
  EXPECT_EQ(standing("slope"), "not measured");
}

TEST_F(TheJournal, TakesBackWhatIsUndone) {
  const SessionId id = Day("Sunday");
  ASSERT_TRUE(bench_->RecordFault({"pits", ""}, now_));
  ASSERT_TRUE(bench_->Undo(now_));
  EXPECT_TRUE(Open().Page(id)->faults.empty());
  ASSERT_TRUE(bench_->Redo(now_));
  EXPECT_EQ(Open().Page(id)->faults.size(), 1u);
}

TEST_F(TheJournal, FindsByAnyWordsOfADay) {
  const SessionId first = Day("Harbour at dusk");
  ASSERT_TRUE(bench_->TakeNote({}, "Cells too small; add silicone-free", now_));
  const SessionId second = Day("Meadow");
  ASSERT_TRUE(bench_->RecordFault({"lost cells", ""}, now_));
  const auto ids = [&](const std::string& words) {
    std::vector<SessionId> found;
    const auto lines = Open().Search(words);
    EXPECT_TRUE(lines);
    for (const SessionLine& line : *lines) found.push_back(line.id);
    return found;
  };
  using Ids = std::vector<SessionId>;
  EXPECT_EQ(ids(""), (Ids{second, first}));
  EXPECT_EQ(ids("harbour"), (Ids{first}));
  EXPECT_EQ(ids("cell"), (Ids{second, first})) << "beginnings of words";
  EXPECT_EQ(ids("cells dusk"), (Ids{first})) << "all words of one day";
  EXPECT_EQ(ids("lost"), (Ids{second}));
  EXPECT_EQ(ids("grune"), (Ids{second, first})) << "marks are not needed";
  EXPECT_EQ(ids("nothing like it"), (Ids{}));
  // What the search language might take for its own is only text.
  for (const char* odd : {"\"",
                          "* ( )",
                          "NEAR(",
                          "a OR",
                          "text:x",
                          "-",
                          "\"\"",
                          "silicone-free",
                          "'; DROP TABLE session; --"}) {
    EXPECT_TRUE(Open().Search(odd)) << odd;
  }
  EXPECT_EQ(ids("silicone-free"), (Ids{first}));
}

TEST_F(TheJournal, FindsNothingThatWasTakenBack) {
  const SessionId id = Day("Meadow");
  const auto found = [&](const char* word) {
    const auto lines = Open().Search(word);
    EXPECT_TRUE(lines);
    return lines->size();
  };
  ASSERT_TRUE(bench_->TakeNote({}, "windy window", now_));
  ASSERT_TRUE(bench_->RecordFault({"lost cells", "upper edge"}, now_));
  EXPECT_EQ(found("upper"), 1u);
  ASSERT_TRUE(bench_->Undo(now_));
  EXPECT_EQ(found("upper"), 0u);
  EXPECT_EQ(found("windy"), 1u) << "what stands is still found";
  EXPECT_EQ(found("meadow lagoon zinnober"), 1u);
  ASSERT_TRUE(bench_->Undo(now_));
  EXPECT_EQ(found("windy"), 0u);
  ASSERT_TRUE(bench_->Redo(now_));
  EXPECT_EQ(found("windy"), 1u);
  EXPECT_EQ(found("upper"), 0u);
  // Words go on being added after that.
  ASSERT_TRUE(bench_->TakeNote({}, "calm again", now_));
  EXPECT_EQ(found("calm windy"), 1u);
  EXPECT_EQ(Open().Search("calm")->front().id, id);
}

TEST_F(TheJournal, AnOlderBookForgetsWhatWasTakenBack) {
  Day("Harbour");
  ASSERT_TRUE(bench_->TakeNote({}, "windy", now_));
  ASSERT_TRUE(bench_->TakeNote({}, "foggy", now_));
  ASSERT_TRUE(bench_->Undo(now_));
  ASSERT_TRUE(bench_->RecordFault({"pits", "corner"}, now_));
  ASSERT_TRUE(bench_->Undo(now_));
  ASSERT_TRUE(bench_->Redo(now_));
  bench_.reset();
  // As format 4 left it: every word that was ever written.
  sqlite3* connection = nullptr;
  ASSERT_EQ(sqlite3_open(store_.c_str(), &connection), SQLITE_OK);
  ASSERT_EQ(sqlite3_exec(connection,
                         "DROP TABLE jar_use; DROP TABLE jar;"
                         "DROP TABLE technique;"
                         "UPDATE journal_text SET text ="
                         " 'Harbour Dune Lagoon windy foggy pits corner';"
                         "PRAGMA user_version=4",
                         nullptr,
                         nullptr,
                         nullptr),
            SQLITE_OK)
      << sqlite3_errmsg(connection);
  sqlite3_close(connection);
  EXPECT_EQ(Open().Search("foggy")->size(), 1u) << "as it stands";
  ASSERT_TRUE(Bench::Open(store_));  // opened for writing once
  EXPECT_EQ(Open().Search("foggy")->size(), 0u);
  EXPECT_EQ(Open().Search("windy corner lagoon harbour")->size(), 1u);
}

TEST_F(TheJournal, KeepsACellTest) {
  const SessionId id = Day("Meadow", 1.2);
  const CupId cup = bench_->session().cups().back().id;
  CellsTested cells;
  cells.seen = CellsSeen::kLacing;
  cells.after_s = 40.0;
  cells.additive_parts = 0.5;
  cells.cup = cup;
  cells.text = "on the tile";
  ASSERT_TRUE(bench_->RecordCells(cells, now_));
  cells.after_s = -1.0;
  EXPECT_FALSE(bench_->RecordCells(cells, now_));
  bench_.reset();
  const json shown = Run({"journal",
                          "cells",
                          std::to_string(id),
                          "blob",
                          "--after-s",
                          "25",
                          "--cup",
                          "Lagoon"});
  ASSERT_EQ(shown["cell_tests"].size(), 2u);
  EXPECT_EQ(shown["cell_tests"][0]["seen"], "lacing");
  EXPECT_EQ(shown["cell_tests"][0]["after_s"], 40.0);
  EXPECT_EQ(shown["cell_tests"][0]["additive_parts"], 0.5);
  // Three films of 1.2 times the base coat's viscosity.
  EXPECT_NEAR(
      shown["cell_tests"][0]["ratio"]["value"].get<double>(), 1.2, 0.01);
  EXPECT_EQ(shown["cell_tests"][1]["seen"], "blob");
  EXPECT_EQ(shown["cell_tests"][1]["after_s"], 25.0);
  EXPECT_EQ(Open().Search("lacing tile")->size(), 1u);
}

TEST_F(TheJournal, ABookOfTheFormBeforeIsMadeSearchable) {
  Day("Harbour");
  ASSERT_TRUE(bench_->TakeNote({}, "windy", now_));
  bench_.reset();
  sqlite3* connection = nullptr;
  ASSERT_EQ(sqlite3_open(store_.c_str(), &connection), SQLITE_OK);
  ASSERT_EQ(sqlite3_exec(connection,
                         "DROP TABLE jar_use; DROP TABLE jar;"
                         "DROP TABLE technique; DROP TABLE journal_text;"
                         "DROP INDEX session_entry_by_kind;"
                         "PRAGMA user_version=3",
                         nullptr,
                         nullptr,
                         nullptr),
            SQLITE_OK);
  sqlite3_close(connection);
  const auto unsearchable = Open().Search("windy");
  ASSERT_FALSE(unsearchable);
  EXPECT_EQ(unsearchable.error().code, ErrorCode::kRefused);
  EXPECT_TRUE(Open().Search("")) << "reading stays possible";
  ASSERT_TRUE(Bench::Open(store_));  // opened for writing once
  for (const char* word : {"windy", "harbour", "lagoon", "zinnober"}) {
    const auto found = Open().Search(word);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->size(), 1u) << word;
  }
}

TEST_F(TheJournal, APlanFollowsWhatItLearned) {
  const auto plan = [&](std::vector<std::string> more) {
    std::vector<std::string> arguments = {"plan",
                                          "--canvas",
                                          "40x50",
                                          "--no-edges",
                                          "--technique",
                                          "swipe",
                                          "--colours",
                                          "Lagoon"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return Run(arguments);
  };
  const json untaught = plan({});
  EXPECT_EQ(untaught["planned_against_used"]["told_by"], nullptr);
  // Swipe starts with 1650 mL on a square metre; 0.2 of one here.
  EXPECT_NEAR(untaught["on_support_ml"].get<double>(), 330.0, 1e-3);
  for (int i = 0; i < 3; ++i) {
    Day("day " + std::to_string(i));
    Pour("swipe", PourVerdict::kGood);
  }
  // ln 1.25 from three pours against one as planned, see LearnUse.
  const double factor = std::pow(1.25, 3.0 / 4.0);
  const json taught = plan({});
  EXPECT_EQ(taught["planned_against_used"]["told_by"], "journal");
  EXPECT_EQ(taught["planned_against_used"]["pours"], 3);
  EXPECT_NEAR(taught["on_support_ml"].get<double>(), 330.0 * factor, 0.01);
  EXPECT_THAT(taught["notes"].dump(), HasSubstr("your journal: 3 pours"));
  const json told_otherwise = plan({"--no-book"});
  EXPECT_NEAR(told_otherwise["on_support_ml"].get<double>(), 330.0, 1e-3);
  // Pours that were planned with that factor teach the same again.
  for (int i = 0; i < 3; ++i) {
    Day("later " + std::to_string(i));
    PourMade pour;
    pour.technique = "swipe";
    pour.planned_ml = 1000.0;
    pour.plan_factor = 1.25;
    pour.used_ml = 1000.0;
    ASSERT_TRUE(bench_->RecordPour(pour, now_));
  }
  EXPECT_NEAR(plan({})["on_support_ml"].get<double>(),
              330.0 * std::pow(1.25, 6.0 / 7.0),
              0.01);
}

TEST_F(TheJournal, FindsOneOfTenThousandDays) {
  bench_.reset();
  FillWithDays(store_, 10'000);
  const Journal journal = Open();
  EXPECT_EQ(journal.Search("x7777")->size(), 1u);
  EXPECT_EQ(journal.Search("x7777")->front().id, 7777);
  EXPECT_EQ(journal.Search("lagoon")->size(), 100u);
  EXPECT_EQ(journal.Search("lagoon")->front().id, 10'000) << "newest first";
  EXPECT_EQ(journal.Search("la ce sw")->size(), 100u);
}

TEST_F(TheJournal, LearnsOnlyFromEnoughPours) {
  Day("one");
  Pour("swipe", PourVerdict::kGood);
  json learned = Run({"journal", "learned"});
  EXPECT_EQ(learned["pours"], 1);
  EXPECT_EQ(learned["band"]["told"], false);
  EXPECT_EQ(learned["band"]["value"], nullptr);
  EXPECT_EQ(learned["targets"][0]["told"], false);
  EXPECT_EQ(learned["planned_against_used"][0]["told"], false);
  Random random(3);
  double sum = 0.0;
  for (int i = 0; i < 12; ++i) {
    const bool far = i % 2 == 1;
    const double ratio = far ? 1.8 : std::exp(random.Normal(0.0, 0.02));
    if (!far) sum += std::log(ratio);
    Day("day " + std::to_string(i), ratio);
    Pour("swipe", far ? PourVerdict::kPoor : PourVerdict::kGood);
  }
  learned = Run({"journal", "learned"});
  EXPECT_EQ(learned["pours"], 13);
  EXPECT_EQ(learned["band"]["told"], true);
  EXPECT_GT(learned["band"]["value"], 0.03);
  EXPECT_LT(learned["band"]["value"], 0.8);
  ASSERT_EQ(learned["targets"].size(), 1u);
  EXPECT_EQ(learned["targets"][0]["pours"], 7);
  // The first day's ratio was 1; six more good ones. Four digits.
  EXPECT_NEAR(learned["targets"][0]["ratio"]["value"].get<double>(),
              std::exp(sum / 7.0),
              1e-3);
  // ln 1.25 from 13 pours against one as planned.
  EXPECT_NEAR(
      learned["planned_against_used"][0]["factor"]["value"].get<double>(),
      std::pow(1.25, 13.0 / 14.0),
      1e-3);
}

TEST_F(TheJournal, RemindsOfWhatIsDue) {
  Day("Sunday");
  ASSERT_TRUE(bench_->SetRoomTemperature(21.0, now_));
  PourMade pour;
  pour.technique = "open";
  ASSERT_TRUE(bench_->RecordPour(pour, now_));
  json due = Run({"journal", "remind", "--today", "2026-03-02"});
  ASSERT_EQ(due["reminders"].size(), 4u);
  EXPECT_EQ(due["reminders"][0]["kind"], "touch dry");
  EXPECT_EQ(due["reminders"][0]["from"], "2026-03-02");
  EXPECT_EQ(due["reminders"][0]["by"], "2026-03-04");
  EXPECT_EQ(due["reminders"][2]["kind"], "varnish");
  EXPECT_EQ(due["reminders"][2]["from"], "2026-03-15");
  EXPECT_THAT(due["cautions"].dump(), HasSubstr("resin"));
  ASSERT_TRUE(bench_->SetRoomTemperature(15.0, now_));
  due = Run({"journal", "remind", "--today", "2026-03-02"});
  EXPECT_THAT(due.dump(), HasSubstr("2026-03-29"));
  EXPECT_THAT(due.dump(), HasSubstr("colder than"));
  EXPECT_TRUE(
      Run({"journal", "remind", "--today", "2026-09-01"})["reminders"].empty());
}

TEST_F(TheJournal, IsWrittenFromTheCommandLine) {
  const SessionId id = Day("Sunday");
  const std::string number = std::to_string(id);
  const std::string photo = store_ + ".wet.png";
  WriteFile(photo, "a picture");
  Run({"journal",
       "pour",
       number,
       "--technique",
       "open",
       "--used-ml",
       "300",
       "--rested-min",
       "5",
       "--strained",
       "false"});
  Run({"journal", "photo", number, photo, "--kind", "wet"});
  Run({"journal", "note", number, "sold at the fair"});
  Run({"journal", "judge", number, "good"});
  const json page = Run({"journal", "fault", number, "pits", "--text", "few"});
  EXPECT_EQ(page["pour"]["used_ml"], 300.0);
  EXPECT_EQ(page["verdict"], "good");
  EXPECT_THAT(page["photos"][0]["path"].get<std::string>(),
              ::testing::EndsWith("wet.png"));
  EXPECT_EQ(page["faults"][0]["causes"][0]["standing"], "fits");
  const json found = Run({"journal", "search", "fair"});
  EXPECT_EQ(found["sessions"][0]["session"], id);
  const json both = Run({"journal", "show", number, "--against", number});
  EXPECT_EQ(both["sessions"].size(), 2u);
}

TEST_F(TheJournal, LeavesAsATable) {
  Day("Comma, and \"quote\"", 1.3);
  Pour("swipe", PourVerdict::kGood);
  ASSERT_TRUE(bench_->NewSession("empty", now_));
  const FlowkinRun run = RunFlowkin({"journal", "export", "--store", store_});
  EXPECT_EQ(run.status, 0) << run.err;
  EXPECT_THAT(
      run.out,
      HasSubstr("\r\n1,\"Comma, and \"\"quote\"\"\",2026-03-01,swipe,"));
  EXPECT_THAT(run.out, HasSubstr(",Lagoon,colour,1.0,1.3"));
  EXPECT_THAT(run.out, HasSubstr("\r\n2,empty,"));
  // As many cells in every row.
  std::istringstream rows(run.out.substr(0, run.out.find("\r\n1,")) + "\r\n" +
                          run.out.substr(run.out.find("2,empty")));
  std::string head, empty;
  std::getline(rows, head);
  std::getline(rows, empty);
  EXPECT_EQ(std::count(head.begin(), head.end(), ','),
            std::count(empty.begin(), empty.end(), ','));
  EXPECT_EQ(Run({"journal", "export"})["sessions"].size(), 2u);
}

TEST_F(TheJournal, TheLastCheckReadsTheBench) {
  const SessionId id = Day("Sunday", 1.6);
  const json check = Run({"ready", "--session", std::to_string(id)});
  EXPECT_EQ(check["ready"], false);
  // The films of that day are long past by now.
  EXPECT_THAT(check.dump(), HasSubstr("film too old"));
  EXPECT_THAT(check.dump(), HasSubstr("too thick"));
}

std::vector<std::string> ManyColours() {
  std::vector<std::string> call = {
      "plan", "--no-book", "--canvas", "40x50", "--technique", "swipe"};
  call.emplace_back("--colours");
  call.insert(call.end(), 101, "Lagoon");
  return call;
}

class JournalBadCalls : public ::testing::TestWithParam<BadCall> {};
TEST_P(JournalBadCalls, EndWithTheirStatusAndOneSentence) {
  ExpectFails(GetParam());
}
INSTANTIATE_TEST_SUITE_P(
    Calls,
    JournalBadCalls,
    ::testing::Values(
        BadCall{"NoAction", {"journal"}, "", 2},
        BadCall{"NoBook",
                {"journal", "search", "x", "--store", "no-such/book.db"},
                "",
                4},
        BadCall{"UnknownFault", {"journal", "fault", "1", "haunted"}, "", 2},
        BadCall{"NoDay", {"journal", "remind", "--today", "soon"}, "", 2},
        BadCall{"FolderAsBook", {"plan", "--store", "/"}, "", 4},
        BadCall{"FolderAsPlan", {"plan", "--file", "/"}, "", 4},
        BadCall{"FolderAsShelf", {"shelf", "--file", "/"}, "", 4},
        BadCall{"FolderAsTable", {"ready", "--file", "/"}, "", 4},
        BadCall{"FolderAsCup", {"dose", "--file", "/"}, "", 4},
        BadCall{"FolderAsPhoto", {"journal", "photo", "1", "/"}, "", 4},
        BadCall{"FolderAsCells", {"cells", "/", "--mm-per-px", "1"}, "", 4},
        BadCall{"FolderAsLabels",
                {"print", "labels", "--file", "/", "--out", "x.pdf"},
                "",
                4},
        BadCall{"NoteOfNoText", {"journal", "note", "1", "\xff"}, "", 2},
        BadCall{
            "JarOfNoText", {"shelf", "add", "\xff", "--volume-ml", "5"}, "", 2},
        BadCall{"ColourOfNoText",
                {"plan", "--no-book", "--colours", "\xff"},
                "",
                2},
        BadCall{"TooManyColours", ManyColours(), "", 2},
        BadCall{"NoTable", {"ready"}, "nothing", 4},
        BadCall{"EmptyTable", {"ready"}, "{}", 3},
        BadCall{"CupWithoutName", {"ready"}, R"({"cups": [{}]})", 4},
        BadCall{"ImpossibleShare",
                {"ready"},
                R"({"cups": [{"name": "a", "water_share": 2}]})",
                2}),
    [](const auto& call) { return call.param.name; });

// What will stand in the cup, left-over and new mix; only new mix is kept back.
TEST(JournalCommand, PlannedCupsCountTheirLeftOvers) {
  const std::string folder = ScratchFolder();
  const std::string store = folder + "/book.db";
  ASSERT_EQ(RunFlowkin({"bench", "new", "--store", store}).status, 0);
  for (const auto& [name, ml] :
       {std::pair("Lagoon", "20"), std::pair("Coal", "5000")}) {
    ASSERT_EQ(RunFlowkin({"shelf",
                          "add",
                          name,
                          "--volume-ml",
                          ml,
                          "--watered",
                          "--store",
                          store})
                  .status,
              0);
  }
  const FlowkinRun planned = RunFlowkin({"plan",
                                         "--canvas",
                                         "40x50x1.8cm",
                                         "--technique",
                                         "swipe",
                                         "--colours",
                                         "Lagoon",
                                         "Coal",
                                         "--on-bench",
                                         "--store",
                                         store,
                                         "--json"});
  ASSERT_EQ(planned.status, 0) << planned.err;
  const json told = json::parse(planned.out);
  const json cups = json::parse(
      RunFlowkin({"bench", "show", "--store", store, "--json"}).out)["cups"];
  ASSERT_EQ(told["cups"][1]["left_over_ml"], 20.0);
  EXPECT_EQ(cups[1]["reserve_left_ml"], told["cups"][1]["reserve_ml"]);
  EXPECT_NEAR(cups[1]["volume_ml"].get<double>() +
                  cups[1]["reserve_left_ml"].get<double>(),
              told["cups"][1]["needed_ml"].get<double>(),
              1e-3);
  ASSERT_EQ(told["cups"][2]["mix_ml"], 0.0);
  EXPECT_EQ(cups[2]["reserve_left_ml"], 0.0);
  EXPECT_NEAR(cups[2]["volume_ml"].get<double>(),
              told["cups"][2]["needed_ml"].get<double>(),
              1e-3);
  EXPECT_THAT(told["notes"].dump(), HasSubstr("Water that left-overs hold"));
}

// A plan is kept, its cups go to the bench, and the pour is held against it.
TEST(JournalCommand, APourRemembersItsPlan) {
  const std::string folder = ScratchFolder();
  const std::string store = folder + "/book.db";
  const std::string plan = folder + "/plan.json";
  const std::vector<std::string> call = {"plan",
                                         "--canvas",
                                         "40x50x1.8cm",
                                         "--technique",
                                         "swipe",
                                         "--colours",
                                         "Lagoon",
                                         "Coal",
                                         "--keep",
                                         plan,
                                         "--on-bench",
                                         "--store",
                                         store,
                                         "--json"};
  EXPECT_EQ(RunFlowkin(call).status, 2) << "there is no bench yet";
  ASSERT_EQ(RunFlowkin({"bench", "new", "--store", store}).status, 0);
  const FlowkinRun planned = RunFlowkin(call);
  ASSERT_EQ(planned.status, 0) << planned.err;
  ASSERT_EQ(RunFlowkin(call).status, 0) << "nothing twice";
  const json told = json::parse(planned.out);
  const json bench = json::parse(
      RunFlowkin({"bench", "show", "--store", store, "--json"}).out);
  ASSERT_EQ(bench["cups"].size(), told["cups"].size());
  for (std::size_t i = 0; i < told["cups"].size(); ++i) {
    const json& cup = told["cups"][i];
    EXPECT_NEAR(bench["cups"][i]["volume_ml"].get<double>(),
                cup["mix_ml"].get<double>() - cup["reserve_ml"].get<double>(),
                1e-3);
  }
  const FlowkinRun poured = RunFlowkin({"journal",
                                        "pour",
                                        "1",
                                        "--plan",
                                        plan,
                                        "--used-ml",
                                        "410",
                                        "--store",
                                        store,
                                        "--json"});
  ASSERT_EQ(poured.status, 0) << poured.err;
  const json pour = json::parse(poured.out)["pour"];
  EXPECT_EQ(pour["technique"], "swipe");
  EXPECT_EQ(pour["used_ml"], 410.0);
  // 40 x 50 cm with edges of 1.8 cm, 1650 mL on a square metre.
  EXPECT_NEAR(pour["planned_ml"].get<double>(),
              (0.40 * 0.50 + 2.0 * (0.40 + 0.50) * 0.018) * 1650.0,
              0.01);
  EXPECT_EQ(RunFlowkin({"print",
                        "sheet",
                        "--file",
                        plan,
                        "--out",
                        folder + "/sheet.pdf",
                        "--store",
                        store})
                .status,
            0);
}

}  // namespace
}  // namespace flowkin::testing
