#include "calibration/store/calibration_store.h"

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <thread>
#include <vector>

#include "calibration/store/session_store.h"
#include "calibration/store/workshop_store.h"
#include "core/base/random.h"

namespace flowkin {
namespace {

namespace fs = std::filesystem;
using Access = CalibrationStore::Access;

class StoreTest : public testing::Test {
 protected:
  void SetUp() override {
    std::string name =
        testing::TempDir() + "flowkin_store_" + std::string(6, 'X');
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override { fs::remove_all(folder_); }

  std::string Path(const std::string& name = "brands.db") const {
    return (folder_ / name).string();
  }
  fs::path folder_;
};

StoredCup Cup(const std::string& brand,
              const std::string& colour,
              double start,
              std::size_t tests = 3) {
  StoredCup cup;
  cup.paint = {brand, colour};
  cup.history.volume_ml = 120.0;
  for (std::size_t i = 0; i < tests; ++i) {
    cup.history.tests.push_back({1.5 * static_cast<double>(i),
                                 start - 0.2 * static_cast<double>(i),
                                 0.04});
  }
  cup.learned_utc = "2026-01-01T00:00:00Z";
  return cup;
}

AppendOutcome Append(CalibrationStore& store, const StoredCup& cup) {
  EXPECT_TRUE(store.Begin());
  const Result<AppendOutcome> outcome = store.Append(cup);
  EXPECT_TRUE(outcome) << outcome.error().message;
  EXPECT_TRUE(store.Commit());
  return *outcome;
}

bool Intact(const std::string& path) {
  sqlite3* database = nullptr;
  if (sqlite3_open_v2(
          path.c_str(), &database, SQLITE_OPEN_READWRITE, nullptr) !=
      SQLITE_OK) {
    sqlite3_close(database);
    return false;
  }
  std::string answer;
  sqlite3_exec(
      database,
      "PRAGMA integrity_check",
      [](void* to, int, char** values, char**) {
        *static_cast<std::string*>(to) += values[0];
        return 0;
      },
      &answer,
      nullptr);
  sqlite3_close(database);
  return answer == "ok";
}

TEST_F(StoreTest, RoundTripWithAnyName) {
  const StoredCup cup = Cup("Grüne Werft'; DROP TABLE cup;--", "青", 1.82);
  {
    auto store = CalibrationStore::Open(Path(), Access::kWrite);
    ASSERT_TRUE(store) << store.error().message;
    EXPECT_EQ(Append(*store, cup), AppendOutcome::kAdded);
  }
  const auto store = CalibrationStore::Open(Path(), Access::kRead);
  ASSERT_TRUE(store);
  const auto cups = store->Cups(cup.paint.brand, 10);
  ASSERT_TRUE(cups);
  ASSERT_EQ(cups->size(), 1U);
  EXPECT_EQ(cups->front().paint.colour, cup.paint.colour);
  ASSERT_EQ(cups->front().history.tests.size(), 3U);
  EXPECT_EQ(cups->front().history.tests[1].ratio, cup.history.tests[1].ratio);
  const auto brands = store->Brands();
  ASSERT_TRUE(brands);
  ASSERT_EQ(brands->size(), 1U);
  EXPECT_EQ(brands->front().tests, 3);
}

TEST_F(StoreTest, SameCupCountsOnceAndItsLongerHistoryInstead) {
  auto store = CalibrationStore::Open(Path(), Access::kWrite);
  ASSERT_TRUE(store);
  EXPECT_EQ(Append(*store, Cup("A", "", 1.8, 2)), AppendOutcome::kAdded);
  EXPECT_EQ(Append(*store, Cup("A", "", 1.8, 2)), AppendOutcome::kKnown);
  EXPECT_EQ(Append(*store, Cup("A", "", 1.8, 4)), AppendOutcome::kContinued);
  EXPECT_EQ(Append(*store, Cup("A", "", 1.8, 3)), AppendOutcome::kKnown);
  EXPECT_EQ(Append(*store, Cup("A", "red", 1.8, 4)), AppendOutcome::kAdded);
  const auto cups = store->Cups("A", 10);
  ASSERT_TRUE(cups);
  ASSERT_EQ(cups->size(), 2U);
  EXPECT_EQ(cups->back().history.tests.size(), 4U);
}

TEST_F(StoreTest, ForgettingIsUndone) {
  auto store = CalibrationStore::Open(Path(), Access::kWrite);
  ASSERT_TRUE(store);
  Append(*store, Cup("A", "red", 1.8));
  Append(*store, Cup("A", "blue", 1.7));
  EXPECT_EQ(*store->Forget("A", "red", "t"), 1);
  EXPECT_EQ(store->Cups("A", 10)->size(), 1U);
  EXPECT_EQ(*store->Forget("A", std::nullopt, "t"), 1);
  EXPECT_TRUE(store->Cups("A", 10)->empty());
  EXPECT_TRUE(store->Brands()->empty());
  Append(*store, Cup("A", "red", 2.0));  // learned after it: counts
  EXPECT_EQ(store->Cups("A", 10)->size(), 1U);
  EXPECT_EQ(*store->Restore("A", "t"), 2);
  EXPECT_EQ(store->Cups("A", 10)->size(), 3U);
  EXPECT_EQ(*store->Forget("B", std::nullopt, "t"), 0);
}

TEST_F(StoreTest, OpensTheFrozenFormat) {
  const std::string frozen =
      std::string(FLOWKIN_SOURCE_DIR) + "/tests/data/store/brands-format-1.db";
  fs::copy_file(frozen, Path());
  fs::permissions(Path(), fs::perms::owner_all);
  {
    const auto reader = CalibrationStore::Open(Path(), Access::kRead);
    ASSERT_TRUE(reader) << reader.error().message;
    EXPECT_EQ(reader->Cups("Nordlicht", 10)->size(), 2U);
    EXPECT_TRUE(reader->Summaries(1)->empty());
  }
  auto store = CalibrationStore::Open(Path(), Access::kWrite);
  ASSERT_TRUE(store) << store.error().message;
  const auto werft = store->Cups("Grüne Werft", 10);
  ASSERT_TRUE(werft);
  ASSERT_EQ(werft->size(), 1U);
  EXPECT_EQ(werft->front().history.tests.back().ratio, 1.2);
  EXPECT_TRUE(store->SaveSummary({"Nordlicht", {1.8, 0.1}}, 1));
  EXPECT_EQ(store->Summaries(1)->size(), 1U);
  // The identity of a cup is part of the format.
  StoredCup known;
  known.paint = {"Nordlicht", "Zinnober"};
  known.batch = "2";
  known.history.volume_ml = 120.0;
  known.history.tests = {{0.0, 1.5, 0.04}, {2.5, 1.14, 0.04}};
  EXPECT_EQ(Append(*store, known), AppendOutcome::kKnown);
}

TEST_F(StoreTest, OpensTheFrozenFormatBeforeSessions) {
  const std::string frozen =
      std::string(FLOWKIN_SOURCE_DIR) + "/tests/data/store/brands-format-2.db";
  fs::copy_file(frozen, Path());
  fs::permissions(Path(), fs::perms::owner_all);
  {
    const auto reader = CalibrationStore::Open(Path(), Access::kRead);
    ASSERT_TRUE(reader) << reader.error().message;
    EXPECT_EQ(reader->Cups("Quillmere", 10)->size(), 2U);
    const auto sessions = SessionStore::Open(Path(), Access::kRead);
    ASSERT_TRUE(sessions);
    EXPECT_TRUE(sessions->Sessions()->empty());
    EXPECT_FALSE(sessions->Since(1, 0));
  }
  auto sessions = SessionStore::Open(Path(), Access::kWrite);
  ASSERT_TRUE(sessions) << sessions.error().message;
  EXPECT_TRUE(sessions->Begin("Monday", UtcTime{0}));
  const auto store = CalibrationStore::Open(Path(), Access::kRead);
  ASSERT_TRUE(store);
  const auto cups = store->Cups("Quillmere", 10);
  ASSERT_EQ(cups->size(), 2U);
  EXPECT_EQ(cups->front().paint.colour, "Ember");
  EXPECT_EQ(cups->front().history.tests.back().ratio, 1.08);
  EXPECT_TRUE(store->Cups("Grüne Werft", 10)->empty());
  EXPECT_TRUE(Intact(Path()));
}

TEST_F(StoreTest, OpensTheFrozenFormatsWithSessions) {
  struct Frozen {
    const char* file;
    const char* day;
    bool searched;  // before it was brought up to date
  };
  for (const Frozen& frozen :
       {Frozen{"brands-format-3.db", "Meadow", false},
        Frozen{"brands-format-4.db", "Harbour at dusk", true}}) {
    SCOPED_TRACE(frozen.file);
    fs::remove(Path());
    fs::copy_file(
        std::string(FLOWKIN_SOURCE_DIR) + "/tests/data/store/" + frozen.file,
        Path());
    fs::permissions(Path(), fs::perms::owner_all);
    {
      const auto reader = SessionStore::Open(Path(), Access::kRead);
      ASSERT_TRUE(reader) << reader.error().message;
      EXPECT_EQ(reader->Sessions()->front().name, frozen.day);
      EXPECT_EQ(reader->Search("lemon").has_value(), frozen.searched);
      const auto workshop = WorkshopStore::Open(Path(), Access::kRead);
      ASSERT_TRUE(workshop) << workshop.error().message;
      EXPECT_TRUE(workshop->Shelf()->empty());
      EXPECT_TRUE(workshop->Techniques()->empty());
    }
    auto workshop = WorkshopStore::Open(Path(), Access::kWrite);
    ASSERT_TRUE(workshop) << workshop.error().message;
    ShelfJar jar;
    jar.jar = {"Lagoon", 40.0, *ParseDay("2026-03-01"), true};
    EXPECT_TRUE(workshop->PutOnShelf(jar, UtcTime{0}));
    EXPECT_EQ(workshop->Shelf()->front().jar.volume_ml, 40.0);
    const auto store = SessionStore::Open(Path(), Access::kRead);
    ASSERT_TRUE(store);
    EXPECT_EQ(store->Search("lemon lagoon zinnober")->size(), 1U);
    EXPECT_TRUE(store->Search("taken back")->empty());
    EXPECT_GE(store->Since(1, 0)->size(), 6U);
    EXPECT_TRUE(Intact(Path()));
  }
  const auto store = SessionStore::Open(Path(), Access::kRead);
  EXPECT_EQ(store->Search("swipe upper pits")->size(), 1U);
  ASSERT_EQ(store->Pours()->size(), 1U);
  const auto book = CalibrationStore::Open(Path(), Access::kRead);
  EXPECT_EQ(book->Cups("Quillmere", 10)->size(), 1U);
}

TEST_F(StoreTest, RefusesWhatIsNotItsOwn) {
  std::ofstream(Path("text.db"))
      << "These are notes, not a brand book. " << std::string(2000, 'x');
  std::ofstream(Path("empty.db"));
  for (const Access access : {Access::kRead, Access::kWrite}) {
    const auto text = CalibrationStore::Open(Path("text.db"), access);
    ASSERT_FALSE(text);
    EXPECT_EQ(text.error().code, ErrorCode::kUnreadable);
    const auto folder = CalibrationStore::Open(folder_.string(), access);
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().code, ErrorCode::kUnreadable);
  }
  EXPECT_FALSE(CalibrationStore::Open(Path("empty.db"), Access::kRead));
  EXPECT_FALSE(CalibrationStore::Open(Path("missing.db"), Access::kRead));
  EXPECT_FALSE(fs::exists(Path("missing.db")));

  const auto alter = [&](const std::string& name, const char* sql) {
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(Path(name).c_str(), &database), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(database, sql, nullptr, nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(database);
  };
  alter("other.db", "CREATE TABLE song(title TEXT)");
  const auto other = CalibrationStore::Open(Path("other.db"), Access::kWrite);
  ASSERT_FALSE(other);
  EXPECT_EQ(other.error().code, ErrorCode::kUnreadable);

  ASSERT_TRUE(CalibrationStore::Open(Path("new.db"), Access::kWrite));
  alter("new.db", "PRAGMA user_version=999");
  const auto newer = CalibrationStore::Open(Path("new.db"), Access::kWrite);
  ASSERT_FALSE(newer);
  EXPECT_NE(newer.error().message.find("newer"), std::string::npos);
}

TEST_F(StoreTest, BackUpIsWholeAndNeverOverwrites) {
  auto store = CalibrationStore::Open(Path(), Access::kWrite);
  ASSERT_TRUE(store);
  Append(*store, Cup("A", "", 1.8));
  ASSERT_TRUE(store->BackUp(Path("copy.db")));
  const auto copy = CalibrationStore::Open(Path("copy.db"), Access::kRead);
  ASSERT_TRUE(copy);
  EXPECT_EQ(copy->Cups("A", 10)->size(), 1U);
  EXPECT_FALSE(store->BackUp(Path("copy.db")));
}

TEST_F(StoreTest, DefaultPlaceFollowsTheRules) {
  ::setenv("XDG_DATA_HOME", "/data", 1);
  EXPECT_EQ(CalibrationStore::DefaultPath(), "/data/flowkin/brands.db");
  ::setenv("XDG_DATA_HOME", "relative", 1);
  ::setenv("HOME", "/hers", 1);
  EXPECT_EQ(CalibrationStore::DefaultPath(),
            "/hers/.local/share/flowkin/brands.db");
  ::unsetenv("XDG_DATA_HOME");
  EXPECT_EQ(CalibrationStore::DefaultPath(),
            "/hers/.local/share/flowkin/brands.db");
}

TEST_F(StoreTest, FullDiskIsOneSentenceAndLosesNothing) {
  ASSERT_TRUE(CalibrationStore::Open(Path(), Access::kWrite));
  const pid_t child = ::fork();
  ASSERT_GE(child, 0);
  if (child == 0) {
    // A file may not grow: what a full disk looks like to a program.
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{fs::file_size(Path()), fs::file_size(Path())};
    ::setrlimit(RLIMIT_FSIZE, &limit);
    auto store = CalibrationStore::Open(Path(), Access::kWrite);
    int failures = 0;
    for (int k = 0; store && k < 200; ++k) {
      if (!store->Begin()) ++failures;
      auto appended = store->Append(Cup("A", "", 2.0 + 0.01 * k));
      const bool done = appended && store->Commit();
      if (!done) {
        store->Rollback();
        ++failures;
        if (!appended && (appended.error().message.empty() ||
                          appended.error().message.back() != '.')) {
          ::_exit(2);
        }
      }
    }
    ::_exit(failures > 0 ? 0 : 1);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  ASSERT_TRUE(WIFEXITED(status));
  EXPECT_EQ(WEXITSTATUS(status), 0);
  EXPECT_TRUE(Intact(Path()));
  EXPECT_TRUE(CalibrationStore::Open(Path(), Access::kWrite));
}

TEST_F(StoreTest, ReadOnlyFileIsReadAndRefusedInOneSentence) {
  {
    auto store = CalibrationStore::Open(Path(), Access::kWrite);
    ASSERT_TRUE(store);
    Append(*store, Cup("A", "", 1.8));
  }
  fs::permissions(Path(), fs::perms(0444));
  fs::permissions(folder_, fs::perms(0555));
  const pid_t child = ::fork();
  ASSERT_GE(child, 0);
  if (child == 0) {
    // Rights mean nothing to root.
    constexpr uid_t kNobody = 65534;
    if (::getuid() == 0 && ::setuid(kNobody) != 0) ::_exit(2);
    const auto reader = CalibrationStore::Open(Path(), Access::kRead);
    if (!reader || reader->Cups("A", 10)->size() != 1) ::_exit(3);
    auto store = CalibrationStore::Open(Path(), Access::kWrite);
    std::string message;
    if (!store) {
      message = store.error().message;
    } else {
      // Whether there is a right to write shows at the first entry.
      const auto begun = store->Begin();
      if (!begun) ::_exit(4);
      const auto appended = store->Append(Cup("A", "", 1.9));
      if (appended) ::_exit(7);
      message = appended.error().message;
    }
    if (message.find("cannot be written") == std::string::npos) ::_exit(5);
    const auto fresh = CalibrationStore::Open(Path("fresh.db"), Access::kWrite);
    ::_exit(fresh ? 6 : 0);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  fs::permissions(folder_, fs::perms(0755));
  ASSERT_TRUE(WIFEXITED(status));
  EXPECT_EQ(WEXITSTATUS(status), 0);
  EXPECT_TRUE(Intact(Path()));
}

TEST_F(StoreTest, TwoProgramsWriteAtOnce) {
  constexpr int kEach = 25;
  std::vector<pid_t> children;
  for (int p = 0; p < 2; ++p) {
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
      auto store = CalibrationStore::Open(Path(), Access::kWrite);
      int done = 0;
      for (int k = 0; store && k < kEach; ++k) {
        if (!store->Begin()) continue;
        const auto appended =
            store->Append(Cup("A", p == 0 ? "red" : "blue", 2.0 + 0.01 * k));
        if (appended && store->Commit()) ++done;
      }
      ::_exit(done == kEach ? 0 : 1);
    }
    children.push_back(child);
  }
  for (const pid_t child : children) {
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0);
  }
  const auto store = CalibrationStore::Open(Path(), Access::kRead);
  ASSERT_TRUE(store);
  EXPECT_EQ(store->Cups("A", 1000)->size(), 2U * kEach);
}

// FLOWKIN_KILLS=1000 runs it as often as a release wants.
TEST_F(StoreTest, KilledAtAnyMomentLosesNothingConfirmed) {
  const char* asked = std::getenv("FLOWKIN_KILLS");
  const int kills = asked != nullptr ? std::atoi(asked) : 30;
  Random random(3);
  std::size_t confirmed = 0;
  std::size_t next = 0;
  for (int k = 0; k < kills; ++k) {
    int ends[2];
    ASSERT_EQ(::pipe(ends), 0);
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
      ::close(ends[0]);
      auto store = CalibrationStore::Open(Path(), Access::kWrite);
      for (std::size_t i = next; store && i < next + 100000; ++i) {
        if (!store->Begin()) ::_exit(1);
        if (!store->Append(Cup("A", "", 2.0 + 1e-6 * static_cast<double>(i)))) {
          ::_exit(1);
        }
        if (!store->Commit()) ::_exit(1);
        const char told = 1;
        if (::write(ends[1], &told, 1) != 1) ::_exit(1);
      }
      ::_exit(1);
    }
    ::close(ends[1]);
    char told[4096];
    // On a busy machine the child may not have begun by then; a part of the
    // kills comes after its first word.
    if (k % 3 == 0) {
      const ssize_t n = ::read(ends[0], told, 1);
      if (n > 0) confirmed += static_cast<std::size_t>(n);
    }
    std::this_thread::sleep_for(
        std::chrono::microseconds(500 + random.Below(25000)));
    ::kill(child, SIGKILL);
    for (ssize_t n = 0; (n = ::read(ends[0], told, sizeof(told))) > 0;) {
      confirmed += static_cast<std::size_t>(n);
    }
    ::close(ends[0]);
    ::waitpid(child, nullptr, 0);
    next += 100000;

    const auto store = CalibrationStore::Open(Path(), Access::kWrite);
    ASSERT_TRUE(store) << store.error().message;
    const auto brands = store->Brands();
    ASSERT_TRUE(brands);
    const std::size_t kept =
        brands->empty() ? 0 : static_cast<std::size_t>(brands->front().cups);
    ASSERT_GE(kept, confirmed) << "after kill " << k;
    // A kill between commit and telling leaves one more, never fewer.
    ASSERT_LE(kept, confirmed + static_cast<std::size_t>(k) + 1);
  }
  EXPECT_TRUE(Intact(Path()));
  RecordProperty("confirmed", std::to_string(confirmed));
  EXPECT_GT(confirmed, 0U);
}

}  // namespace
}  // namespace flowkin
