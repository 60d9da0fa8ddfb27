// What happens on a day at the bench, done in the window by mouse and keys:
// several clips at once, a folder that is watched, sessions, undo, corrections,
// a picture kept, the window closed in the middle of the work.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QTest>

#include "tests/app/gui/window_driver.h"

namespace flowkin::testing {
namespace {

QString Clip(const char* name) {
  return QString(FLOWKIN_SOURCE_DIR "/sample-clips/stream/") + name;
}

/// The first thing to be seen that says that.
QQuickItem* FindText(QQuickItem* item, const QString& text) {
  if (!item->isVisible()) return nullptr;
  if (item->property("text") == text) return item;
  for (QQuickItem* child : item->childItems()) {
    if (QQuickItem* found = FindText(child, text)) return found;
  }
  return nullptr;
}

class BenchDay : public ::testing::Test {
 protected:
  BenchBoard& Board() { return *window_.desk().board(); }
  const std::vector<BenchTest>& Films(int row) {
    return Board().bench()->session().FindCup(*Board().CupAt(row))->tests;
  }
  bool Idle() {
    return WindowDriver::WaitFor(
        [this] { return !window_.desk().clips()->busy(); }, 120.0);
  }
  QVariant OfClip(int row, ClipQueue::Role role) {
    const ClipQueue& clips = *window_.desk().clips();
    return clips.data(clips.index(row), role);
  }
  void GoTo(const QString& control) {
    QQuickItem* item = window_.Find(control);
    ASSERT_NE(item, nullptr) << control.toStdString();
    item->forceActiveFocus(Qt::TabFocusReason);
  }

  WindowDriver window_;
};

TEST_F(BenchDay, ClipsDroppedAtOnceAreFinishedAfterTheWindowWasClosed) {
  window_.AddCup("Dune");
  window_.AddCup("Basalt");
  window_.Click("page2");
  window_.DropFiles(
      {Clip("basalt.mp4"), Clip("base-a.mp4"), Clip("base-b.mp4")});
  ASSERT_EQ(window_.desk().clips()->count(), 3);
  EXPECT_EQ(OfClip(1, ClipQueue::kCupRow), 1) << "the chosen cup's at first";
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("clipCupOf1") != nullptr; }, 5.0));
  GoTo("clipCupOf1");
  window_.Key(Qt::Key_Up);
  EXPECT_EQ(OfClip(1, ClipQueue::kCupRow), 0);
  window_.Click("clipStop2");
  EXPECT_EQ(OfClip(2, ClipQueue::kState), "stopped");
  EXPECT_TRUE(window_.desk().clips()->busy());
  EXPECT_TRUE(Films(0).empty());
  window_.Reopen();
  ASSERT_EQ(Board().rowCount(), 2);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return Films(0).size() == 1 && Films(1).size() == 1; }, 120.0))
      << Films(0).size() << ' ' << Films(1).size();
  EXPECT_EQ(Films(0)[0].film.film, Clip("base-a.mp4").toStdString());
  EXPECT_EQ(Films(1)[0].film.film, Clip("basalt.mp4").toStdString());
  // Once is enough.
  window_.Reopen();
  EXPECT_EQ(window_.desk().clips()->count(), 0);
}

TEST_F(BenchDay, AClipWaitsForTheSessionOfItsCup) {
  window_.AddCup("Dune");
  window_.Click("page2");
  window_.DropFile(Clip("base-a.mp4"));
  Board().newSession("Another");
  window_.AddCup("Chalk");
  ASSERT_TRUE(Idle());
  EXPECT_TRUE(Films(0).empty()) << "the cups have the same number";
  EXPECT_EQ(OfClip(0, ClipQueue::kCupRow), -1);
  EXPECT_TRUE(OfClip(0, ClipQueue::kStateWord).toString().contains("session"));
  // Back, by keys in the settings.
  window_.Key(Qt::Key_0, Qt::ControlModifier);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("session") != nullptr; }, 5.0));
  GoTo("session");
  window_.Key(Qt::Key_Down);
  EXPECT_EQ(Board().cupNames(), QStringList("Dune"));
  EXPECT_EQ(Films(0).size(), 1u);
}

TEST_F(BenchDay, KeysTakeBackAndDoAgain) {
  window_.AddCup("Dune");
  window_.AddCup("Basalt");
  window_.Key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(Board().cupNames(), QStringList("Dune"));
  window_.Key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(Board().cupNames(), QStringList({"Dune", "Basalt"}));
  // A form that is left changes nothing, and the keyboard is on the page again.
  GoTo("addCup");
  window_.Key(Qt::Key_Return);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("cupKeep") != nullptr; }, 5.0));
  window_.Key(Qt::Key_Escape);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("cupKeep") == nullptr; }, 5.0));
  EXPECT_EQ(Board().rowCount(), 2);
  QQuickItem* at = window_.quick()->activeFocusItem();
  ASSERT_NE(at, nullptr);
  EXPECT_EQ(at->objectName(), "addCup");
  // Cups are chosen by keys as well.
  GoTo("cup0");
  window_.Key(Qt::Key_Space);
  EXPECT_EQ(Board().chosen(), 0);
}

TEST_F(BenchDay, TheWatchedFolderBringsClips) {
  const QString folder = window_.folder() + "/phone";
  ASSERT_TRUE(QDir().mkpath(folder));
  ASSERT_TRUE(QFile::copy(Clip("base-b.mp4"), folder + "/old.mp4"));
  window_.AddCup("Dune");
  window_.desk().watch(QUrl::fromLocalFile(folder));
  window_.Click("page2");
  ASSERT_TRUE(QFile::copy(Clip("base-a.mp4"), folder + "/new.mp4"));
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.desk().clips()->count() == 1; }, 20.0));
  EXPECT_EQ(OfClip(0, ClipQueue::kFile), "new.mp4");
  ASSERT_TRUE(Idle());
  EXPECT_TRUE(Films(0).empty()) << "nobody has said whose it is";
  GoTo("clipCupOf0");
  window_.Key(Qt::Key_Down);
  EXPECT_EQ(Films(0).size(), 1u);
}

TEST_F(BenchDay, TheBreakIsDraggedAndTheNumbersFollow) {
  window_.AddCup("Dune");
  window_.Click("page2");
  window_.DropFile(Clip("base-a.mp4"));
  ASSERT_TRUE(WindowDriver::WaitFor([&] { return !Films(0).empty(); }, 120.0));
  const FlowMeasurement before = Films(0)[0].film.measurement;
  ASSERT_TRUE(before.lift_s && before.break_s);
  window_.Click("page3");
  ClipReview& review = *window_.desk().review();
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return review.frames() > 60 && !review.loading(); }, 60.0));
  const QString flag =
      "flag" + QString::number(static_cast<int>(TestEvent::kBreak));
  QQuickItem* tab = window_.Find(flag);
  ASSERT_NE(tab, nullptr);
  const QString said = review.result();
  QPoint at = tab->mapToScene({tab->width() / 2.0, 15.0}).toPoint();
  QTest::mousePress(window_.quick(), Qt::LeftButton, Qt::NoModifier, at);
  for (int step = 0; step < 8; ++step) {
    at.rx() += 5;
    QTest::mouseMove(window_.quick(), at);
    QTest::qWait(20);
  }
  QTest::mouseRelease(window_.quick(), Qt::LeftButton, Qt::NoModifier, at);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return Films(0)[0].corrections.size() == 1; }, 60.0));
  const BenchTest& after = Films(0)[0];
  EXPECT_EQ(after.corrections[0].event, TestEvent::kBreak);
  EXPECT_GT(*after.film.measurement.break_s, *before.break_s);
  EXPECT_NEAR(*after.film.measurement.break_s, after.corrections[0].at_s, 1e-3);
  EXPECT_NE(review.result(), said);
  EXPECT_TRUE(review.films()[0].contains("by hand"));
  // Set aside, it does not count; taken back, it does.
  ASSERT_TRUE(WindowDriver::WaitFor([&] { return !review.loading(); }, 60.0));
  window_.Click("aside");
  EXPECT_TRUE(Films(0)[0].set_aside);
  EXPECT_EQ(Board().State().cups[0].films[0].counted, 0);
  window_.Key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_FALSE(Films(0)[0].set_aside);
}

TEST_F(BenchDay, ACurveIsKeptAsAPicture) {
  for (const auto& [cup, clip] :
       {std::pair{"Dune", "base-a.mp4"}, std::pair{"Basalt", "basalt.mp4"}}) {
    window_.AddCup(cup);
    window_.Click("page2");
    window_.DropFile(Clip(clip));
    ASSERT_TRUE(Idle());
  }
  // Where her pictures are kept (freedesktop.org, xdg-user-dirs).
  QFile places(window_.folder() + "/user-dirs.dirs");
  ASSERT_TRUE(places.open(QIODevice::WriteOnly));
  places.write(
      QString("XDG_PICTURES_DIR=\"%1\"\n").arg(window_.folder()).toUtf8());
  places.close();
  qputenv("XDG_CONFIG_HOME", window_.folder().toUtf8());
  window_.Click("page4");
  window_.Click("keepCurve");
  // The dialog is Qt's own where the desktop has none; the name is there.
  QQuickItem* open = nullptr;
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] {
        open = FindText(window_.quick()->contentItem(), "Open");
        return open != nullptr && open->isEnabled();
      },
      10.0));
  QTest::qWait(200);
  QTest::mouseClick(
      window_.quick(),
      Qt::LeftButton,
      Qt::NoModifier,
      open->mapToScene({open->width() / 2.0, open->height() / 2.0}).toPoint());
  const QString file = window_.folder() + "/Basalt.png";
  ASSERT_TRUE(WindowDriver::WaitFor([&] { return QFile::exists(file); }, 10.0));
  const QImage picture(file);
  EXPECT_GT(picture.width(), 400);
  EXPECT_GT(picture.height(), 200);
}

}  // namespace
}  // namespace flowkin::testing
