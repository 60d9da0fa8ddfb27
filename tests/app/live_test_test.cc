#include "app/usecases/live_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <future>

#include "app/usecases/measure_clip.h"
#include "core/video/file_frame_source.h"

namespace flowkin {
namespace {

namespace fs = std::filesystem;
using std::chrono::nanoseconds;

std::string Sample(const std::string& name) {
  return std::string(FLOWKIN_SOURCE_DIR) + "/sample-clips/" + name;
}

/// A folder that is gone after the test.
class Folder {
 public:
  Folder()
      : path_(fs::temp_directory_path() /
              ("flowkin-live-" + std::to_string(::getpid()) + "-" +
               std::to_string(next_++))) {}
  ~Folder() { fs::remove_all(path_); }
  std::string path() const { return path_.string(); }
  int films() const { return Count(".mp4"); }
  /// Films that are being written included.
  int anything() const { return Count(".mp4") + Count(".mp4.part"); }

 private:
  int Count(const std::string& kind) const {
    int count = 0;
    for (const auto& entry : fs::directory_iterator(path_)) {
      const std::string name = entry.path().string();
      const std::size_t at = name.find(".mp4");
      if (at == std::string::npos) continue;
      const std::string end = name.substr(at, kind.size());
      const bool part = name.size() > at + 4;
      count += end == kind && part == (kind != ".mp4") ? 1 : 0;
    }
    return count;
  }

  static inline int next_ = 0;
  fs::path path_;
};

FilmShelf Shelf(const Folder& folder) {
  FilmShelfOptions options;
  options.folder = folder.path();
  auto shelf = FilmShelf::Open(options);
  EXPECT_TRUE(shelf.has_value());
  return *shelf;
}

/// A camera that sees sample clips one after the other, with the scene at rest
/// before and after each. At rest the sensor's noise goes on; a drop in the
/// last picture of a clip would hang in the air.
class Bench {
 public:
  explicit Bench(std::function<FilmerView(const Frame&)> take)
      : take_(std::move(take)) {}

  void Rest(double seconds) {
    for (int i = 0; i < static_cast<int>(seconds * 30.0); ++i) {
      Frame frame = last_;
      cv::Mat noise(frame.luma.size(), CV_16SC1);
      random_.fill(noise, cv::RNG::NORMAL, 0.0, 1.5);
      cv::Mat seen;
      last_.luma.convertTo(seen, CV_16S);
      seen += noise;
      seen.convertTo(frame.luma, CV_8U);
      Give(frame, nanoseconds(33'333'333));
    }
  }

  void Play(const std::string& clip,
            double rest_before_s,
            double rest_after_s,
            double until_s = 1e9) {
    auto source = OpenClip(Sample(clip));
    ASSERT_TRUE(source.has_value());
    nanoseconds before{0};
    bool first = true;
    while (true) {
      auto next = (*source)->Next();
      ASSERT_TRUE(next.has_value());
      if (!next->has_value() || (**next).TimeS() > until_s) break;
      last_ = **next;
      if (first && rest_before_s > 0.0) Rest(rest_before_s);
      Give(last_, first ? nanoseconds(16'666'667) : last_.timestamp - before);
      before = last_.timestamp;
      first = false;
    }
    Rest(rest_after_s);
  }

  void Wait(double seconds) {
    clock_ += nanoseconds(static_cast<std::int64_t>(seconds * 1e9));
  }

  std::vector<FilmTaken> taken;
  int starts = 0;

 private:
  void Give(Frame frame, nanoseconds step) {
    const nanoseconds kept = frame.timestamp;
    clock_ += step;
    frame.timestamp = clock_;
    frame.index = index_++;
    const FilmerView view = take_(frame);
    EXPECT_FALSE(view.error.has_value());
    if (view.filming && !filming_) ++starts;
    filming_ = view.filming;
    if (view.taken) taken.push_back(*view.taken);
    last_.timestamp = kept;
  }

  std::function<FilmerView(const Frame&)> take_;
  cv::RNG random_{3};
  Frame last_;
  nanoseconds clock_{1'000'000'000};
  std::int64_t index_ = 0;
  bool filming_ = false;
};

TestFilmerOptions Options(TestKind kind) {
  TestFilmerOptions options;
  options.test.kind = kind;
  return options;  // a puddle needs no volume to be compared
}

FlowMeasurement Measured(const std::string& path, TestKind kind) {
  MeasureClipOptions options;
  options.test = Options(kind).test;
  const auto measured = MeasureClip(options).Run(path);
  EXPECT_TRUE(measured.has_value());
  return measured ? measured->measurement : FlowMeasurement{};
}

/// Difference of the first proxy in its own standard uncertainties.
double Apart(const FlowMeasurement& a, const FlowMeasurement& b) {
  EXPECT_EQ(a.outcome, Outcome::kMeasured) << a.reason;
  EXPECT_EQ(b.outcome, Outcome::kMeasured) << b.reason;
  if (a.proxies.empty() || b.proxies.empty()) return 1e9;
  EXPECT_EQ(a.proxies[0].name, b.proxies[0].name);
  return std::abs(a.proxies[0].ln_value.value - b.proxies[0].ln_value.value) /
         std::hypot(a.proxies[0].ln_value.sd, b.proxies[0].ln_value.sd);
}

class OneFilm
    : public ::testing::TestWithParam<std::pair<TestKind, const char*>> {};

TEST_P(OneFilm, BeginsAndEndsByItselfAndSaysWhatTheClipSays) {
  const auto [kind, clip] = GetParam();
  const Folder folder;
  TestFilmer filmer(Shelf(folder), "film", Options(kind));
  Bench bench([&](const Frame& frame) { return filmer.Take(frame); });
  bench.Play(clip, 3.0, 6.0);
  ASSERT_EQ(bench.taken.size(), 1u);
  EXPECT_TRUE(bench.taken[0].begun);
  EXPECT_TRUE(bench.taken[0].settled);
  EXPECT_EQ(folder.films(), 1);
  EXPECT_LT(
      Apart(Measured(bench.taken[0].path, kind), Measured(Sample(clip), kind)),
      2.0);
}

INSTANTIATE_TEST_SUITE_P(
    Samples,
    OneFilm,
    ::testing::Values(std::pair{TestKind::kStream, "stream/inkberry.mp4"},
                      std::pair{TestKind::kLevel, "level/base-a.mp4"},
                      std::pair{TestKind::kLevel, "level/gullfeather.mp4"},
                      std::pair{TestKind::kPuddle, "puddle/base-a.mp4"}));

TEST(TestFilmer, TakesOneFilmAfterTheOther) {
  const Folder folder;
  TestFilmer filmer(Shelf(folder), "film", Options(TestKind::kStream));
  Bench bench([&](const Frame& frame) { return filmer.Take(frame); });
  bench.Play("stream/base-a.mp4", 3.0, 4.0);
  bench.Play("stream/lagoon.mp4", 3.0, 4.0);
  ASSERT_EQ(bench.taken.size(), 2u);
  EXPECT_NE(bench.taken[0].path, bench.taken[1].path);
  for (const FilmTaken& film : bench.taken) {
    const FlowMeasurement m = Measured(film.path, TestKind::kStream);
    EXPECT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
  }
}

TEST(TestFilmer, WhatIsNoTestLeavesNothing) {
  const Folder folder;
  TestFilmer filmer(Shelf(folder), "film", Options(TestKind::kStream));
  Bench bench([&](const Frame& frame) { return filmer.Take(frame); });
  // The stick is still in the paint when the clip is cut off.
  bench.Play("stream/base-a.mp4", 3.0, 12.0, 0.9);
  bench.Play("level/base-a.mp4", 3.0, 12.0);
  EXPECT_TRUE(bench.taken.empty());
  EXPECT_GT(bench.starts, 0);
  EXPECT_EQ(folder.anything(), 0);
}

TEST(TestFilmer, NothingBeginsUnlessItIsArmedOrAsked) {
  const Folder folder;
  TestFilmerOptions options = Options(TestKind::kStream);
  options.armed = false;
  TestFilmer filmer(Shelf(folder), "film", options);
  Bench bench([&](const Frame& frame) { return filmer.Take(frame); });
  bench.Play("stream/inkberry.mp4", 2.0, 2.0);
  EXPECT_EQ(bench.starts, 0);
  filmer.BeginByHand();
  bench.Rest(1.0);
  EXPECT_EQ(bench.starts, 1);
  const FilmerView view = filmer.EndByHand();
  ASSERT_TRUE(view.taken.has_value());
  EXPECT_FALSE(view.taken->settled);
  EXPECT_TRUE(fs::exists(view.taken->path));
}

TEST(TestFilmer, ALostCameraKeepsATestThatHadBegun) {
  const Folder folder;
  TestFilmer filmer(Shelf(folder), "film", Options(TestKind::kStream));
  Bench bench([&](const Frame& frame) { return filmer.Take(frame); });
  bench.Play("stream/base-a.mp4", 3.0, 0.0, 4.0);
  EXPECT_TRUE(bench.taken.empty());
  const FilmerView view = filmer.CameraLost();
  ASSERT_TRUE(view.taken.has_value());
  EXPECT_TRUE(view.taken->begun);
  const FlowMeasurement cut = Measured(view.taken->path, TestKind::kStream);
  EXPECT_EQ(cut.outcome, Outcome::kRefused);
  // It is back.
  bench.Wait(5.0);
  bench.Play("stream/lagoon.mp4", 3.0, 4.0);
  ASSERT_EQ(bench.taken.size(), 1u);
  EXPECT_EQ(Measured(bench.taken[0].path, TestKind::kStream).outcome,
            Outcome::kMeasured);
}

TEST(TestFilmer, AFolderThatIsGoneIsSaidAndFilmingStops) {
  auto folder = std::make_unique<Folder>();
  TestFilmer filmer(Shelf(*folder), "film", Options(TestKind::kStream));
  folder.reset();
  filmer.BeginByHand();
  Frame frame;
  frame.luma = cv::Mat(120, 160, CV_8UC1, cv::Scalar(90));
  frame.cb = frame.cr = cv::Mat(60, 80, CV_8UC1, cv::Scalar(128));
  const FilmerView view = filmer.Take(frame);
  ASSERT_TRUE(view.error.has_value());
  EXPECT_FALSE(view.error->message.empty());
  EXPECT_FALSE(filmer.armed());
}

TEST(ClipTest, ACopyThatIsFinishedLeavesTheTestAsItWas) {
  for (const auto& [kind, clip] :
       {std::pair{TestKind::kStream, "stream/inkberry.mp4"},
        std::pair{TestKind::kLevel, "level/base-a.mp4"},
        std::pair{TestKind::kPuddle, "puddle/base-a.mp4"}}) {
    auto source = OpenClip(Sample(clip));
    ASSERT_TRUE(source.has_value());
    const auto asked = MakeClipTest(Options(kind).test);
    const auto left_alone = MakeClipTest(Options(kind).test);
    int frames = 0;
    while (true) {
      auto next = (*source)->Next();
      ASSERT_TRUE(next.has_value());
      if (!next->has_value()) break;
      asked->Add(**next);
      left_alone->Add(**next);
      if (++frames % 40 == 0) asked->Copy()->Finish();
    }
    const FlowMeasurement a = asked->Finish();
    const FlowMeasurement b = left_alone->Finish();
    EXPECT_TRUE(asked->Begun());
    ASSERT_EQ(a.outcome, Outcome::kMeasured) << a.reason;
    ASSERT_EQ(a.proxies.size(), b.proxies.size());
    for (std::size_t i = 0; i < a.proxies.size(); ++i) {
      EXPECT_EQ(a.proxies[i].value, b.proxies[i].value);
      EXPECT_EQ(a.proxies[i].ln_value.sd, b.proxies[i].ln_value.sd);
    }
  }
}

TEST(ClipTest, TheLinesOfTheNewestFrameAreThoseOfALookBack) {
  struct Case {
    TestKind kind;
    const char* clip;
    double from_s;  // the test runs
  };
  for (const Case& c : {Case{TestKind::kStream, "stream/base-a.mp4", 3.0},
                        Case{TestKind::kPuddle, "puddle/base-a.mp4", 3.0}}) {
    ClipTestOptions options;
    options.kind = c.kind;
    const auto test = MakeClipTest(options);
    auto source = OpenClip(Sample(c.clip));
    ASSERT_TRUE(source.has_value());
    int compared = 0;
    for (double next_s = c.from_s;;) {
      const auto next = (*source)->Next();
      ASSERT_TRUE(next.has_value());
      if (!next->has_value()) break;
      test->Add(**next);
      if ((**next).TimeS() < next_s) continue;
      next_s += 1.0;
      const std::vector<FoundLine> now = test->LinesNow();
      const auto copy = test->Copy();
      copy->Finish();
      const std::vector<FoundLine> then = copy->Lines();
      // A look back also finds what has just begun.
      if (!copy->Begun() || then.empty() || now.empty()) continue;
      ASSERT_EQ(now.size(), then.size()) << c.clip << " at " << next_s;
      for (std::size_t i = 0; i < then.size(); ++i) {
        ASSERT_EQ(now[i].points.size(), then[i].points.size());
        for (std::size_t k = 0; k < then[i].points.size(); ++k) {
          const cv::Point2d d = now[i].points[k] - then[i].points[k];
          // The bench does not move; a stick is found to a pixel or two.
          EXPECT_LT(std::hypot(d.x, d.y), 3.0) << c.clip << " at " << next_s;
        }
      }
      ++compared;
    }
    EXPECT_GE(compared, 2) << c.clip;
  }
}

// The clip is cut out of the sample's pictures by a window that is shaken, so
// where the paint lies in each is known.
TEST(ClipTest, TheRibbonsOutlineStaysOnThePaintOfAShakenCamera) {
  constexpr int kMargin_px = 24;
  const auto window = [](const Frame& frame) {
    const double t_s = frame.TimeS();
    return cv::Point(
        kMargin_px + static_cast<int>(std::lround(14.0 * std::sin(9.0 * t_s))),
        kMargin_px + static_cast<int>(std::lround(8.0 * std::sin(7.0 * t_s))));
  };
  ClipTestOptions options;
  options.kind = TestKind::kLevel;
  const auto test = MakeClipTest(options);
  auto source = OpenClip(Sample("level/base-a.mp4"));
  ASSERT_TRUE(source.has_value());
  std::vector<FoundLine> seen;
  cv::Point seen_at;
  int compared = 0;
  double farthest_px = 0.0;
  for (double look_s = 4.0;;) {
    const auto next = (*source)->Next();
    ASSERT_TRUE(next.has_value());
    if (!next->has_value()) break;
    Frame frame = **next;
    const cv::Point at = window(frame);
    frame.luma =
        frame.luma(cv::Rect(at,
                            cv::Size(frame.luma.cols - 2 * kMargin_px,
                                     frame.luma.rows - 2 * kMargin_px)));
    test->Add(frame);
    if (seen.empty()) {
      EXPECT_TRUE(test->LinesNow().empty());
      if (frame.TimeS() < look_s) continue;
      look_s += 0.5;
      const auto copy = test->Copy();
      copy->Finish();
      test->Follow(*copy);
      seen = test->LinesNow();
      seen_at = at;
      continue;
    }
    const std::vector<FoundLine> now = test->LinesNow();
    ASSERT_EQ(now.size(), 1u);
    ASSERT_EQ(now[0].points.size(), seen[0].points.size());
    const cv::Point2d moved = now[0].points[0] - seen[0].points[0];
    const cv::Point2d shaken = cv::Point2d(seen_at - at);
    // A fifth of a pixel of the reduced pictures, as they are registered.
    EXPECT_LT(cv::norm(moved - shaken), 1.0) << "at " << frame.TimeS();
    farthest_px = std::max(farthest_px, cv::norm(shaken));
    ++compared;
  }
  EXPECT_GE(compared, 40);
  EXPECT_GT(farthest_px, 15.0);
}

TEST(TestFilmer, SaysWhereAPuddleHasNoRuler) {
  for (const auto& [clip, none] : {std::pair{"puddle/base-a.mp4", false},
                                   std::pair{"stream/base-a.mp4", true}}) {
    const Folder folder;
    TestFilmerOptions options = Options(TestKind::kPuddle);
    options.armed = false;
    TestFilmer filmer(Shelf(folder), "film", options);
    bool no_ruler = !none;
    Bench bench([&](const Frame& frame) {
      FilmerView view = filmer.Take(frame);
      no_ruler = view.no_ruler;
      return view;
    });
    bench.Play(clip, 2.0, 0.0, 0.1);
    EXPECT_EQ(no_ruler, none) << clip;
  }
}

TEST(LiveTest, FilmsInAThreadOfItsOwnAndDropsNothingItHasRoomFor) {
  const Folder folder;
  std::promise<FilmTaken> done;
  std::int64_t dropped = 0;
  LiveTest live(Shelf(folder),
                "film",
                Options(TestKind::kStream),
                [&](const LiveStatus& status) {
                  dropped = status.dropped;
                  if (status.view.taken) done.set_value(*status.view.taken);
                });
  Bench bench([&](const Frame& frame) {
    // As a camera would, but for its pace: it waits for room.
    while (!live.Add(frame)) {
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    return FilmerView{};
  });
  bench.Play("stream/inkberry.mp4", 3.0, 5.0);
  auto film = done.get_future();
  ASSERT_EQ(film.wait_for(std::chrono::minutes(2)), std::future_status::ready);
  const FlowMeasurement m = Measured(film.get().path, TestKind::kStream);
  EXPECT_EQ(m.outcome, Outcome::kMeasured) << m.reason;
}

}  // namespace
}  // namespace flowkin
