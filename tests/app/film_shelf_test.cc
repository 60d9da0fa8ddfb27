#include "app/usecases/film_shelf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

namespace flowkin {
namespace {

namespace fs = std::filesystem;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

class FilmShelfTest : public testing::Test {
 protected:
  void SetUp() override {
    std::string name =
        testing::TempDir() + "flowkin_shelf_" + std::string(6, 'X');
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override { fs::remove_all(folder_); }

  FilmShelf Open(std::int64_t most_bytes) const {
    auto shelf = FilmShelf::Open({(folder_ / "films").string(), most_bytes});
    EXPECT_TRUE(shelf) << shelf.error().message;
    return *shelf;
  }
  /// A film of 100 bytes, `age` hours old.
  static std::string Film(FilmShelf& shelf, int age) {
    const auto path = shelf.Reserve("Lagoon stream", "mp4");
    EXPECT_TRUE(path);
    std::ofstream(*path) << std::string(100, 'x');
    fs::last_write_time(
        *path, fs::file_time_type::clock::now() - std::chrono::hours(age));
    return *path;
  }

  fs::path folder_;
};

TEST_F(FilmShelfTest, NamesAreFreeAndTame) {
  FilmShelf shelf = Open(1000);
  const std::string first = *shelf.Reserve("../Grüne Werft", "mp4");
  EXPECT_EQ(fs::path(first).parent_path(), shelf.folder());
  EXPECT_EQ(fs::path(first).filename(), "___Gr__ne_Werft-1.mp4");
  EXPECT_NE(*shelf.Reserve("../Grüne Werft", "mp4"), first);
  // A file of hers by the next name is in nobody's way.
  std::ofstream(shelf.folder() + "/film-1.mp4") << "hers";
  EXPECT_EQ(fs::path(*shelf.Reserve("", "mp4")).filename(), "film-2.mp4");
}

TEST_F(FilmShelfTest, OldestGoFirstUntilTheBoundHolds) {
  FilmShelf shelf = Open(250);
  const std::string middle = Film(shelf, 2);
  const std::string oldest = Film(shelf, 3);
  const std::string newest = Film(shelf, 1);
  const std::string fresh = Film(shelf, 0);
  const auto report = shelf.Tidy({});
  ASSERT_TRUE(report);
  EXPECT_THAT(report->dropped, ElementsAre(oldest, middle));
  EXPECT_EQ(report->bytes, 200);
  EXPECT_FALSE(report->over_full);
  EXPECT_FALSE(fs::exists(oldest));
  EXPECT_TRUE(shelf.Holds(newest));
  EXPECT_TRUE(shelf.Holds(fresh));
  EXPECT_FALSE(shelf.Holds(oldest));
  EXPECT_THAT(shelf.Tidy({})->dropped, IsEmpty());
}

TEST_F(FilmShelfTest, KeepsWhatIsNeededHoweverItIsNamed) {
  FilmShelf shelf = Open(150);
  const std::string old = Film(shelf, 5);
  const std::string other = Film(shelf, 4);
  const std::string third = Film(shelf, 3);
  const auto report = shelf.Tidy(
      {shelf.folder() + "/../films/./" + fs::path(old).filename().string(),
       third});
  ASSERT_TRUE(report);
  EXPECT_THAT(report->dropped, ElementsAre(other));
  EXPECT_TRUE(report->over_full);
  EXPECT_TRUE(fs::exists(old));
  EXPECT_TRUE(fs::exists(third));
}

TEST_F(FilmShelfTest, NeverDeletesWhatItDidNotWrite) {
  FilmShelf shelf = Open(1);
  const fs::path hers = fs::path(shelf.folder()) / "holiday.mp4";
  std::ofstream(hers) << std::string(1000, 'x');
  const fs::path outside = folder_ / "outside.mp4";
  std::ofstream(outside) << std::string(1000, 'x');
  // Somebody put other names on the list, and a link in a film's place.
  const std::string film = Film(shelf, 1);
  fs::remove(film);
  fs::create_symlink(outside, film);
  std::ofstream(shelf.folder() + "/written-here.txt", std::ios::app)
      << "../outside.mp4\n..\n";
  const auto report = shelf.Tidy({});
  ASSERT_TRUE(report);
  EXPECT_THAT(report->dropped, IsEmpty());
  EXPECT_TRUE(fs::exists(hers));
  EXPECT_TRUE(fs::exists(outside));
  EXPECT_FALSE(shelf.Holds(hers.string()));
}

TEST_F(FilmShelfTest, AFilmThatWasNotFinishedIsStillItsOwn) {
  FilmShelf shelf = Open(50);
  const std::string path = *shelf.Reserve("Lagoon", "mp4");
  // Not begun yet: the name stays taken.
  ASSERT_TRUE(shelf.Tidy({}));
  std::ofstream(path) << std::string(100, 'x');
  FilmShelf again = Open(50);
  EXPECT_THAT(again.Tidy({})->dropped, ElementsAre(path));
}

TEST_F(FilmShelfTest, SaysWhereNothingCanBeKept) {
  std::ofstream(folder_ / "file") << "x";
  const auto shelf = FilmShelf::Open({(folder_ / "file").string(), 100});
  ASSERT_FALSE(shelf);
  EXPECT_EQ(shelf.error().message.back(), '.');
  EXPECT_FALSE(FilmShelf::Open({folder_.string(), 0}));
}

TEST_F(FilmShelfTest, DropsWhatAPowerCutLeftHalfWritten) {
  FilmShelf shelf = Open(1000);
  const std::string film = *shelf.Reserve("Lagoon stream", "mp4");
  const auto half = [](const std::string& path, int age_h) {
    std::ofstream(path) << "half";
    fs::last_write_time(
        path, fs::file_time_type::clock::now() - std::chrono::hours(age_h));
  };
  const std::string old = film + ".part-17";
  const std::string growing = film + ".part-18";
  const std::string foreign = shelf.folder() + "/holiday.mp4.part-17";
  half(old, 2);
  half(growing, 0);
  half(foreign, 2);
  ASSERT_TRUE(shelf.Tidy({}));
  EXPECT_FALSE(fs::exists(old));
  EXPECT_TRUE(fs::exists(growing));
  EXPECT_TRUE(fs::exists(foreign));
}

}  // namespace
}  // namespace flowkin
