// From an empty bench to "all match", as a person would: by mouse and keys, in
// front of a camera that plays the sample clips. The camera is a file (see
// tests/support/test_camera); ctest sets where it is looked for.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>

#include "tests/app/gui/window_driver.h"

namespace flowkin::testing {
namespace {

/// Sample clips one after the other, each with the scene at rest before and
/// after it, and with the noise that a sensor has at rest too.
void MakeTape(const QStringList& clips, const QString& path) {
  QStringList arguments{"-nostdin", "-v", "error", "-y"};
  QString filter;
  for (qsizetype i = 0; i < clips.size(); ++i) {
    arguments << "-i" << FLOWKIN_SOURCE_DIR "/sample-clips/stream/" + clips[i];
    filter += QString(
                  "[%1:v]tpad=start_duration=3:start_mode=clone:"
                  "stop_duration=4:stop_mode=clone[c%1];")
                  .arg(i);
  }
  for (qsizetype i = 0; i < clips.size(); ++i)
    filter += QString("[c%1]").arg(i);
  filter += QString("concat=n=%1,fps=30,noise=alls=3:allf=t").arg(clips.size());
  const QString part = path + ".part.mp4";
  arguments << "-filter_complex" << filter << "-c:v"
            << "libx264"
            << "-preset"
            << "ultrafast"
            << "-crf"
            << "14"
            << "-pix_fmt"
            << "yuv420p" << part;
  ASSERT_EQ(QProcess::execute("ffmpeg", arguments), 0);
  QFile::remove(path);
  ASSERT_TRUE(QFile::rename(part, path));
}

class CameraFaults : public ::testing::Test {
 protected:
  void SetUp() override {
    const QString path = qEnvironmentVariable("TEST_CAMERA_DIR");
    ASSERT_FALSE(path.isEmpty());
    ASSERT_TRUE(QDir().mkpath(path));
    cameras_ = QDir(path);
    for (const QString& old : cameras_.entryList({"*.cam"})) {
      ASSERT_TRUE(cameras_.remove(old));
    }
  }
  void TearDown() override {
    for (const QString& name : plugged_) cameras_.remove(name);
  }

  /// A camera that plays the tape; `then` comes last in its pipeline.
  void PlugIn(const QString& name, int rate_hz, const QString& then) {
    const QString caps =
        QString("video/x-raw,format=I420,width=960,height=540,framerate=%1/1")
            .arg(rate_hz);
    QFile camera(cameras_.filePath(name + ".part"));
    ASSERT_TRUE(camera.open(QIODevice::WriteOnly));
    camera.write(QString("%1\nfilesrc location=\"%2\" ! qtdemux ! h264parse ! "
                         "avdec_h264 ! videorate ! videoconvert ! %1 ! %3\n")
                     .arg(caps, cameras_.filePath("fault-tape.mp4"), then)
                     .toUtf8());
    camera.close();
    ASSERT_TRUE(camera.rename(cameras_.filePath(name + ".cam")));
    plugged_ << name + ".cam";
  }

  QDir cameras_;
  QStringList plugged_;
};

TEST_F(CameraFaults, AreSaidInOneSentenceAndFilmingGoesOn) {
  MakeTape({"base-a.mp4"}, cameras_.filePath("fault-tape.mp4"));
  WindowDriver window;
  Camera& camera = *window.desk().camera();
  window.AddCup("Dune");
  window.Click("act");
  const auto says = [&](const QString& what, const char* where) {
    return WindowDriver::WaitFor(
        [&] { return window.TextOf(where).contains(what); }, 60.0);
  };
  EXPECT_TRUE(says("No camera found", "cameraTrouble"));
  // Its cable comes loose while the stream runs.
  PlugIn("Loose", 30, "identity sync=true error-after=210");
  ASSERT_TRUE(says("Test runs", "filmWord"))
      << window.TextOf("cameraTrouble").toStdString();
  EXPECT_TRUE(says("sends no pictures any more", "cameraTrouble"));
  EXPECT_EQ(window.TextOf("filmWord"), "No picture");
  EXPECT_TRUE(WindowDriver::WaitFor([&] { return camera.live(); }, 60.0))
      << "it is taken up again";
  const BenchBoard& board = *window.desk().board();
  EXPECT_TRUE(WindowDriver::WaitFor(
      [&] {
        return !board.bench()
                    ->session()
                    .FindCup(*board.CupAt(0))
                    ->tests.empty();
      },
      60.0))
      << "what was filmed is kept";
  PlugIn("Frozen", 30, "imagefreeze is-live=true ! identity");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return camera.names().contains("Frozen"); }, 20.0));
  camera.choose("Frozen");
  EXPECT_TRUE(says("stands still", "filmAdvice"))
      << window.TextOf("filmAdvice").toStdString();
  PlugIn("Dark", 10, "identity sync=true");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return camera.names().contains("Dark"); }, 20.0));
  camera.choose("Dark");
  EXPECT_TRUE(says("camera is slow", "filmAdvice"))
      << window.TextOf("filmAdvice").toStdString();
  PlugIn("Busy", 30, "identity drop-probability=1");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return camera.names().contains("Busy"); }, 20.0));
  window.Click("page0");
  camera.choose("Busy");
  window.Click("page1");
  EXPECT_TRUE(says("other programs", "cameraTrouble"))
      << window.TextOf("cameraTrouble").toStdString();
}

class Walk : public ::testing::Test {
 protected:
  void SetUp() override {
    const QString cameras = qEnvironmentVariable("TEST_CAMERA_DIR");
    ASSERT_FALSE(cameras.isEmpty());
    ASSERT_TRUE(QDir().mkpath(cameras));
    tape_ = cameras + "/tape.mp4";
    QFile camera(cameras + "/Bench camera.cam");
    ASSERT_TRUE(camera.open(QIODevice::WriteOnly));
    camera.write(
        "video/x-raw,format=I420,width=960,height=540,framerate=30/1\n");
    camera.write(QString("filesrc location=\"%1\" ! qtdemux ! h264parse ! "
                         "avdec_h264 ! videoconvert ! "
                         "video/x-raw,format=I420 ! identity sync=true\n")
                     .arg(tape_)
                     .toUtf8());
  }

  static std::size_t Films(WindowDriver& window) {
    const BenchBoard& board = *window.desk().board();
    return board.bench()->session().FindCup(*board.ChosenCup())->tests.size();
  }

  /// For the message of a failure: what became of the chosen cup's films.
  static std::string Told(WindowDriver& window) {
    const BenchBoard& board = *window.desk().board();
    std::string told = board.step().toStdString() +
                       " Screen: " + window.TextOf("filmWord").toStdString() +
                       ". " + window.TextOf("filmAdvice").toStdString() +
                       window.TextOf("cameraTrouble").toStdString() + " " +
                       window.desk().camera()->rate().toStdString();
    const BenchCup* cup = board.bench()->session().FindCup(*board.ChosenCup());
    for (const BenchTest& test : cup->tests) {
      const FlowMeasurement& m = test.film.measurement;
      told += "\nfilm of " + std::to_string(test.film.duration_s) + " s: " +
              (m.outcome == Outcome::kMeasured
                   ? std::to_string(m.proxies.front().value)
                   : m.reason);
    }
    return told;
  }

  QString tape_;
};

TEST_F(Walk, FromAnEmptyBenchToAllMatch) {
  WindowDriver window;
  BenchBoard& board = *window.desk().board();
  ASSERT_TRUE(board.empty());

  // The base coat, three films without a touch.
  MakeTape({"base-a.mp4", "base-b.mp4", "base-c.mp4"}, tape_);
  window.AddCup("Dune");
  window.Click("act");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window.TextOf("filmWord") == "Ready"; }, 20.0))
      << window.TextOf("filmWord").toStdString() << ' '
      << window.TextOf("cameraTrouble").toStdString();
  EXPECT_TRUE(window.TextOf("filmCount").contains("3"));
  bool ran = false;
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] {
        ran = ran || window.TextOf("filmWord") == "Test runs";
        return Films(window) == 3;
      },
      120.0))
      << Told(window);
  EXPECT_TRUE(ran);
  ASSERT_EQ(board.State().cups.front().films.front().counted, 3)
      << Told(window);
  EXPECT_TRUE(window.TextOf("filmResult").startsWith("Dune: "));
  // The tape ends: said in one sentence, and the camera is taken up again.
  EXPECT_TRUE(WindowDriver::WaitFor(
      [&] { return !window.TextOf("cameraTrouble").isEmpty(); }, 60.0));
  EXPECT_TRUE(WindowDriver::WaitFor(
      [&] { return window.desk().camera()->live(); }, 60.0));

  // A thick cup: one film, then the water that is advised, by the pedal.
  MakeTape({"basalt.mp4"}, tape_);
  window.AddCup("Basalt");
  window.Click("page1");
  ASSERT_TRUE(
      WindowDriver::WaitFor([&] { return board.action() == "add"; }, 150.0))
      << Told(window);
  // Truth of the sample clip: 1.66 times the base coat (its manifest).
  const Interval interval = board.State().cups.back().comparison->interval;
  EXPECT_LT(interval.low, 1.66154);
  EXPECT_GT(interval.high, 1.66154);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window.TextOf("filmPress") == board.actionText(); }, 5.0));
  WindowDriver::WaitFor([] { return false; }, 1.0);  // foot off the pedal
  window.Key(Qt::Key_F6);
  ASSERT_GT(board.State().cups.back().thinner_ml, 0.0);

  // What it looks like with the water in: one clip from a phone, the others
  // before the camera, until it is decided.
  const std::size_t before = Films(window);
  window.Click("page2");
  window.DropFile(FLOWKIN_SOURCE_DIR "/sample-clips/stream/lagoon.mp4");
  ASSERT_TRUE(
      WindowDriver::WaitFor([&] { return Films(window) == before + 1; }, 60.0));
  MakeTape({"base-b.mp4", "base-c.mp4", "lagoon.mp4"}, tape_);
  window.Click("page1");
  EXPECT_TRUE(WindowDriver::WaitFor([&] { return board.mayPour(); }, 150.0))
      << Told(window);
  window.Click("page0");
  EXPECT_EQ(window.TextOf("glance"), board.glance());

  // The films of the camera are kept and can be looked at again.
  const QDir films(window.folder() + "/films");
  EXPECT_GE(films.entryList({"*.mp4"}).size(), 4);
  window.Click("page3");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window.desk().review()->frames() > 60; }, 60.0));
  const int frame = window.desk().review()->frame();
  window.Click("frameOn");
  EXPECT_EQ(window.desk().review()->frame(), frame + 1);
}

}  // namespace
}  // namespace flowkin::testing
