#include "calibration/store/session_store.h"

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmath>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <limits>
#include <string>
#include <vector>

#include "calibration/store/entry_text.h"
#include "core/base/random.h"

namespace flowkin {
namespace {

namespace fs = std::filesystem;
using Access = SessionStore::Access;

FlowMeasurement Measurement() {
  FlowMeasurement m;
  m.kind = TestKind::kLevel;
  m.outcome = Outcome::kMeasured;
  m.laid_s = 1.0 / 3.0;
  m.drips_s = {1.25, 2.5};
  m.proxies = {
      {"decay_time", 2.0 / 7.0, "s", {-1.2, 0.03, 6.0}, {1.0, 0.03}, 0.05}};
  m.curves = {{"relief", "", {0.0, 0.1}, {1.0, 0.7}, {0.02, 0.02}, 0.07}};
  m.ln_kinematic_viscosity_mm2_s = Estimate{6.5, 0.1};
  m.warnings = {"Something fell on the paint."};
  return m;
}

FilmedTest Film() {
  FilmedTest film;
  film.measurement = Measurement();
  film.film = "/films/Grüne Werft 1.mp4";
  film.duration_s = 12.5;
  film.time_scale = 0.125;
  film.volume_ml = 2.0;
  film.mm_per_px = 0.11;
  film.shot_fps = 240.0;
  film.clip_warnings = {"Pictures are missing."};
  return film;
}

CupDetails Cup() {
  CupDetails cup;
  cup.label = "Lagune \"2\"";
  cup.role = CupRole::kActivator;
  cup.paint = {"Quillmere", "青"};
  cup.swatch = SwatchColour{1, 128, 255};
  cup.volume_ml = 120.0;
  cup.target_ratio = 0.8;
  cup.reserve_ml = 30.0;
  cup.thinner = ThinnerKind::kAdditive;
  cup.thinner_ln_ratio = Estimate{-0.7, 0.05};
  cup.unit = DoseUnit{"drop", 0.046};
  return cup;
}

BenchSettings Settings() {
  BenchSettings settings;
  settings.band = 0.2;
  settings.smallest_step_ml = 0.1;
  settings.unit = DoseUnit{"spray stroke", 0.13};
  settings.test = TestKind::kPuddle;
  settings.base_films = 4;
  settings.cup_films = 2;
  settings.recheck_min = 45.0;
  return settings;
}

PourMade Pour() {
  PourMade pour;
  pour.technique = "swipe";
  pour.planned_ml = 800.0;
  pour.plan_factor = 1.2;
  pour.used_ml = 912.5;
  pour.wet_mm = 1.65;
  pour.dry_mm = 0.61;
  pour.humidity_percent = 48.0;
  pour.rested_min = 25.0;
  pour.strained = false;
  pour.band = 0.2;
  pour.text = "second try";
  PouredCup cup;
  cup.cup = 3;
  cup.label = "Lagoon";
  cup.role = CupRole::kActivator;
  cup.target = 0.8;
  cup.ln_ratio = Estimate{-0.2, 0.04, 5.0};
  cup.interval = Interval{0.74, 0.91, 0.95};
  cup.water_share = 0.07;
  pour.cups = {cup, PouredCup{}};
  return pour;
}

/// One of every kind but ForeignEntry.
std::vector<EntryWhat> EveryKind() {
  return {
      CupAdded{Cup()},
      CupChanged{1, Cup()},
      CupRemoved{2},
      TestTaken{1, Film(), 21.5},
      TestTaken{1, Film(), {}},
      TestSetAside{4},
      TestTakenBack{4},
      EventCorrected{4, TestEvent::kLaid, 0.4, Measurement()},
      ThinnerAdded{1, 1.5, ThinnerKind::kMedium, 30.0, DoseUnit{"drop", 0.05}},
      ThinnerAdded{1, 1.5, ThinnerKind::kWater, {}, {}},
      ReservePutBack{1, 10.0},
      Stirred{1},
      RoomMeasured{21.5},
      SettingsChanged{Settings()},
      CupLearned{1},
      NoteTaken{1, "smells of lemon"},
      NoteTaken{{}, "windy"},
      Pour(),
      PourMade{},
      PhotoTaken{PhotoKind::kCells, "tile.jpg", 1, "lacing"},
      PhotoTaken{PhotoKind::kLater, "month.jpg", {}, ""},
      FaultSeen{"lost cells", "upper edge"},
      PourJudged{PourVerdict::kFair, "dull"},
      CellsTested{
          CellsSeen::kDrowned,
          30.0,
          1,
          0.5,
          Estimate{-0.1, 0.05, 4.0},
          "tile.jpg",
          "foam",
          CellsCounted{41, 12.5, {10.0, 15.5, 0.95}, 2.25, {2.0, 2.5, 0.95}}},
      CellsTested{},
      Undone{5},
      Redone{5},
      SessionClosed{},
      SessionReopened{}};
}

TEST(EntryText, EveryKindReadsAsItWasWritten) {
  std::vector<bool> seen(std::variant_size_v<EntryWhat>, false);
  for (const EntryWhat& what : EveryKind()) {
    seen[what.index()] = true;
    const EntryText text = ToText(what);
    const Result<EntryWhat> read = FromText(text);
    ASSERT_TRUE(read) << text.kind << ": " << text.body;
    ASSERT_EQ(read->index(), what.index()) << text.kind;
    // JSON keeps every field, so equal texts are equal entries.
    EXPECT_EQ(ToText(*read).kind, text.kind);
    EXPECT_EQ(ToText(*read).body, text.body);
  }
  for (std::size_t kind = 0; kind + 1 < seen.size(); ++kind) {
    EXPECT_TRUE(seen[kind]) << "no entry of kind " << kind;
  }
}

TEST(EntryText, APourComesBackWhole) {
  const auto read = FromText(ToText(Pour()));
  ASSERT_TRUE(read);
  const auto& pour = std::get<PourMade>(*read);
  EXPECT_EQ(pour.technique, "swipe");
  EXPECT_EQ(pour.planned_ml, 800.0);
  EXPECT_EQ(pour.used_ml, 912.5);
  EXPECT_EQ(pour.strained, false);
  EXPECT_EQ(pour.band, 0.2);
  ASSERT_EQ(pour.cups.size(), 2u);
  EXPECT_EQ(pour.cups[0].cup, 3);
  EXPECT_EQ(pour.cups[0].role, CupRole::kActivator);
  EXPECT_EQ(pour.cups[0].ln_ratio->degrees_of_freedom, 5.0);
  EXPECT_EQ(pour.cups[0].interval->low, 0.74);
  EXPECT_EQ(pour.cups[0].water_share, 0.07);
  EXPECT_FALSE(pour.cups[1].ln_ratio);
}

TEST(EntryText, NumbersComeBackToTheLastBit) {
  const auto read = FromText(ToText(TestTaken{1, Film(), 21.5}));
  ASSERT_TRUE(read);
  const auto& taken = std::get<TestTaken>(*read);
  const FlowMeasurement& m = taken.test.measurement;
  const FlowMeasurement wanted = Measurement();
  EXPECT_EQ(m.kind, wanted.kind);
  EXPECT_EQ(m.outcome, wanted.outcome);
  EXPECT_EQ(m.laid_s, wanted.laid_s);
  EXPECT_FALSE(m.lift_s);
  EXPECT_EQ(m.proxies[0].value, wanted.proxies[0].value);
  EXPECT_EQ(m.proxies[0].ln_value.degrees_of_freedom, 6.0);
  EXPECT_EQ(m.proxies[0].paint_sd, 0.05);
  EXPECT_TRUE(std::isinf(m.proxies[0].exponent.degrees_of_freedom));
  EXPECT_EQ(m.curves[0].value, wanted.curves[0].value);
  EXPECT_EQ(m.curves[0].stretch_sd, wanted.curves[0].stretch_sd);
  EXPECT_EQ(m.ln_kinematic_viscosity_mm2_s->value, 6.5);
  EXPECT_EQ(taken.test.film, "/films/Grüne Werft 1.mp4");
  EXPECT_EQ(taken.test.shot_fps, 240.0);
  EXPECT_EQ(taken.room_c, 21.5);
  const auto cup = std::get<CupAdded>(*FromText(ToText(CupAdded{Cup()}))).cup;
  EXPECT_EQ(cup.swatch, Cup().swatch);
  EXPECT_EQ(cup.role, CupRole::kActivator);
  EXPECT_EQ(cup.unit->ml, 0.046);
  const auto settings =
      std::get<SettingsChanged>(*FromText(ToText(SettingsChanged{Settings()})))
          .settings;
  EXPECT_EQ(settings.test, TestKind::kPuddle);
  EXPECT_EQ(settings.base_films, 4);
  EXPECT_EQ(settings.recheck_min, 45.0);
}

TEST(EntryText, AKindOfTheFutureIsKeptAndDamageIsSaid) {
  const EntryText future{"canvas_primed", R"({"coats":2})"};
  const auto foreign = FromText(future);
  ASSERT_TRUE(foreign);
  EXPECT_EQ(ToText(*foreign).body, future.body);
  EXPECT_EQ(ToText(*foreign).kind, future.kind);
  for (const char* body : {"",
                           "{",
                           "[]",
                           "7",
                           "null",
                           R"({"cup":"one","ml":1,"thinner":"water"})",
                           R"({"cup":1,"ml":1,"thinner":"syrup"})",
                           R"({"cup":1,"thinner":"water"})"}) {
    const auto damaged = FromText({"thinner_added", body});
    ASSERT_FALSE(damaged) << body;
    EXPECT_EQ(damaged.error().code, ErrorCode::kUnreadable);
  }
}

class SessionStoreTest : public testing::Test {
 protected:
  void SetUp() override {
    std::string name =
        testing::TempDir() + "flowkin_session_" + std::string(6, 'X');
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override { fs::remove_all(folder_); }
  std::string Path() const { return (folder_ / "brands.db").string(); }
  SessionStore Open(Access access = Access::kWrite) const {
    auto store = SessionStore::Open(Path(), access);
    EXPECT_TRUE(store) << store.error().message;
    return std::move(*store);
  }

  fs::path folder_;
};

TEST_F(SessionStoreTest, KeepsTheLogsOfSeveralSessionsApart) {
  SessionStore store = Open();
  const SessionId monday = *store.Begin("Monday", UtcTime{1000});
  const SessionId tuesday = *store.Begin("Tuesday", UtcTime{2000});
  EntryNumber last = 0;
  for (const EntryWhat& what : EveryKind()) {
    const auto number = store.Append(monday, last, UtcTime{3000 + last}, what);
    ASSERT_TRUE(number) << number.error().message;
    EXPECT_EQ(*number, last + 1);
    last = *number;
  }
  ASSERT_TRUE(store.Append(tuesday, 0, UtcTime{9000}, NoteTaken{{}, "x"}));
  ASSERT_TRUE(store.Append(tuesday, 1, UtcTime{9001}, SessionClosed{}));

  const SessionStore reader = Open(Access::kRead);
  const auto lines = reader.Sessions();
  ASSERT_TRUE(lines);
  ASSERT_EQ(lines->size(), 2U);
  EXPECT_EQ((*lines)[0].id, tuesday);
  EXPECT_EQ((*lines)[0].name, "Tuesday");
  EXPECT_EQ((*lines)[0].begun.ms, 2000);
  EXPECT_EQ((*lines)[0].last.ms, 9001);
  EXPECT_EQ((*lines)[0].entries, 2);
  EXPECT_TRUE((*lines)[0].closed);
  EXPECT_EQ((*lines)[1].entries, last);
  EXPECT_FALSE((*lines)[1].closed);

  const auto all = reader.Since(monday, 0);
  ASSERT_TRUE(all);
  ASSERT_EQ(all->size(), static_cast<std::size_t>(last));
  EXPECT_EQ(all->front().at.ms, 3000);
  EXPECT_EQ(reader.Since(monday, last - 2)->size(), 2U);
  EXPECT_TRUE(reader.Since(monday, last)->empty());
  EXPECT_FALSE(reader.Since(77, 0));
  EXPECT_FALSE(store.Append(77, 0, UtcTime{0}, SessionClosed{}));
}

TEST_F(SessionStoreTest, NobodyWritesOnABenchThatHasChanged) {
  SessionStore one = Open();
  SessionStore two = Open();
  const SessionId id = *one.Begin("Monday", UtcTime{0});
  const int before = *two.ChangeMark();
  ASSERT_TRUE(one.Append(id, 0, UtcTime{1}, NoteTaken{{}, "one"}));
  EXPECT_NE(*two.ChangeMark(), before);
  const auto late = two.Append(id, 0, UtcTime{2}, NoteTaken{{}, "two"});
  ASSERT_FALSE(late);
  EXPECT_EQ(late.error().code, ErrorCode::kRefused);
  EXPECT_EQ(two.Since(id, 0)->size(), 1U);
  EXPECT_TRUE(two.Append(id, 1, UtcTime{2}, NoteTaken{{}, "two"}));
  EXPECT_EQ(one.Since(id, 1)->size(), 1U);
}

/// Tells its parent of every entry once the store has confirmed it.
[[noreturn]] void WriteUntilKilled(const std::string& path,
                                   SessionId id,
                                   int pipe) {
  auto store = SessionStore::Open(path, Access::kWrite);
  EntryNumber last = store ? std::ssize(*store->Since(id, 0)) : 0;
  while (store) {
    const auto number =
        store->Append(id, last, UtcTime{last}, TestTaken{1, Film(), {}});
    if (!number) break;
    last = *number;
    if (::write(pipe, &last, sizeof(last)) != sizeof(last)) break;
  }
  ::_exit(1);
}

TEST_F(SessionStoreTest, AKilledProgramLosesNothingConfirmed) {
  const SessionId id = *Open().Begin("Monday", UtcTime{0});
  Random random(7);
  EntryNumber confirmed = 0;
  for (int kill = 0; kill < 15; ++kill) {
    int pipe[2];
    ASSERT_EQ(::pipe(pipe), 0);
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
      ::close(pipe[0]);
      WriteUntilKilled(Path(), id, pipe[1]);
    }
    ::close(pipe[1]);
    EntryNumber number = 0;
    // On a busy machine the child may not have begun by then; a part of the
    // kills comes after its first word.
    if (kill % 3 == 0 &&
        ::read(pipe[0], &number, sizeof(number)) == sizeof(number)) {
      confirmed = number;
    }
    ::usleep(static_cast<useconds_t>(random.Uniform(1000.0, 40000.0)));
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    while (::read(pipe[0], &number, sizeof(number)) == sizeof(number)) {
      confirmed = number;
    }
    ::close(pipe[0]);
    // Opening for writing rolls back what was half written.
    const auto entries = Open().Since(id, 0);
    ASSERT_TRUE(entries) << entries.error().message;
    EXPECT_GE(static_cast<EntryNumber>(entries->size()), confirmed);
    for (std::size_t i = 0; i < entries->size(); ++i) {
      EXPECT_EQ((*entries)[i].number, static_cast<EntryNumber>(i + 1));
    }
  }
  EXPECT_GT(confirmed, 0);
}

TEST_F(SessionStoreTest, AnEntryThatIsDamagedIsSaid) {
  SessionStore store = Open();
  const SessionId id = *store.Begin("Monday", UtcTime{0});
  ASSERT_TRUE(store.Append(id, 0, UtcTime{1}, NoteTaken{{}, "x"}));
  sqlite3* database = nullptr;
  ASSERT_EQ(sqlite3_open(Path().c_str(), &database), SQLITE_OK);
  sqlite3_exec(database,
               "UPDATE session_entry SET at_utc = 'noon'",
               nullptr,
               nullptr,
               nullptr);
  sqlite3_close(database);
  const auto entries = store.Since(id, 0);
  ASSERT_FALSE(entries);
  EXPECT_EQ(entries.error().code, ErrorCode::kUnreadable);
}

}  // namespace
}  // namespace flowkin
