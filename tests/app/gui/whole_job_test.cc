// The whole job with the sample clips, as a newcomer does it in the window:
// plan, six cups, last check, pour, cells, journal, printed pages. With
// FLOWKIN_PICTURES set to a folder it leaves a picture of every step there.

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <sstream>

#include "app/usecases/label_document.h"
#include "app/usecases/paper.h"
#include "tests/app/gui/window_driver.h"

namespace flowkin::testing {
namespace {

class WholeJob : public ::testing::Test {
 protected:
  /// Tall, so that every button of a page can be hit without scrolling.
  void SetUp() override { window_.quick()->resize(1280, 2300); }

  void Picture(const QString& name) {
    WindowDriver::WaitFor([] { return false; }, 0.3);
    const QString folder = qEnvironmentVariable("FLOWKIN_PICTURES");
    if (folder.isEmpty()) return;
    ASSERT_TRUE(QDir().mkpath(folder));
    ASSERT_TRUE(window_.quick()->grabWindow().save(QDir(folder).filePath(
        QString("%1-%2.png").arg(++pictures_).arg(name))));
  }

  void AddCup(const QString& name, const QStringList& clips) {
    window_.AddCup(name);
    window_.Click("page2");
    for (const QString& clip : clips) {
      window_.DropFile(FLOWKIN_SOURCE_DIR "/sample-clips/stream/" + clip);
    }
    const BenchBoard& board = *window_.desk().board();
    ASSERT_TRUE(WindowDriver::WaitFor(
        [&] {
          const BenchCup* cup =
              board.bench()->session().FindCup(*board.ChosenCup());
          return cup->tests.size() == static_cast<std::size_t>(clips.size());
        },
        120.0))
        << name.toStdString();
  }

  WindowDriver window_;
  int pictures_ = 0;
};

TEST_F(WholeJob, FromPlanToReport) {
  QElapsedTimer timer;
  timer.start();
  // Plan.
  window_.Click("page5");
  for (const char* colour :
       {"Lagoon", "Plumwing", "Gullfeather", "Inkberry", "Basalt"}) {
    window_.Type("planNewColour", colour);
    window_.Click("planAddColour");
  }
  Planner& planner = *window_.desk().planner();
  ASSERT_NE(planner.Report(), nullptr) << planner.trouble().toStdString();
  EXPECT_EQ(planner.Report()->plan.cups.size(), 7u)
      << "base coat, five colours, activator";
  Picture("plan");

  // Six cups.
  AddCup("Dune", {"base-a.mp4", "base-b.mp4", "base-c.mp4"});
  AddCup("Lagoon", {"lagoon.mp4"});
  AddCup("Plumwing", {"plumwing.mp4"});
  AddCup("Gullfeather", {"gullfeather.mp4"});
  AddCup("Inkberry", {"inkberry.mp4"});
  AddCup("Basalt", {"basalt.mp4"});
  Picture("clips");
  window_.Click("page0");
  EXPECT_EQ(window_.desk().board()->State().cups.size(), 6u);
  Picture("bench");
  window_.Click("lastCheck");
  Picture("last-check");

  // Pour, and what became of it.
  window_.Click("checkPoured");
  window_.Type("pourUsed", "410");
  window_.Type("pourHumidity", "48");
  Picture("pour");
  window_.Click("pourKeep");
  JournalReader& journal = *window_.desk().journal();
  ASSERT_TRUE(journal.page()["poured"].toBool())
      << journal.trouble().toStdString();
  window_.Click("writeFault");
  window_.Click("faultKeep");
  window_.Click("writeVerdict");
  window_.Click("verdict0");
  EXPECT_EQ(journal.page()["faults"].toList().size(), 1);

  // Cells of the activator, on a photo.
  const QString photo = window_.folder() + "/tile.png";
  QImage tile(840, 640, QImage::Format_RGB32);
  tile.fill(QColor(230, 224, 220));
  for (int y = 0; y < tile.height(); ++y) {
    for (int x = 0; x < tile.width(); ++x) {
      const int dx = x % 60 - 30;
      const int dy = y % 60 - 30;
      if (dx * dx + dy * dy < 300 + x / 4) {
        tile.setPixelColor(x, y, QColor(200, 48, 32));
      }
    }
  }
  ASSERT_TRUE(tile.save(photo));
  window_.Click("writeCells");
  CellRoom& cells = *window_.desk().cells();
  cells.open(0, QUrl::fromLocalFile(photo));
  window_.Type("cellsPixel0", "0.1");
  window_.Key(Qt::Key_Return);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return cells.sides()[0].toMap()["measured"].toBool(); }, 30.0))
      << cells.sides()[0].toMap()["trouble"].toString().toStdString();
  window_.Type("cellsParts", "1.5");
  Picture("cells");
  window_.Click("cellsKeep0");
  ASSERT_EQ(journal.page()["photos"].toList().size(), 1)
      << journal.trouble().toStdString();
  window_.Click("writeCells");
  Picture("journal");

  // On paper.
  window_.Click("page7");
  PrintRoom& room = *window_.desk().printRoom();
  room.setFolder(QUrl::fromLocalFile(window_.folder()));
  for (const char* button :
       {"printLabels", "printReport", "printSheet", "printHandout"}) {
    window_.Click(button);
    ASSERT_GT(room.pages(), 0) << room.trouble().toStdString();
    Picture(button);
    window_.Click("sightSave");
    QFile file(room.written());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << room.trouble().toStdString();
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
  }
  Picture("printed");
  RecordProperty("seconds", static_cast<int>(timer.elapsed() / 1000));
}

TEST_F(WholeJob, ThePlansCupsGoOnTheBenchOnce) {
  window_.Click("page5");
  window_.Type("planNewColour", "Lagoon");
  window_.Click("planAddColour");
  const Planner& planner = *window_.desk().planner();
  ASSERT_NE(planner.Report(), nullptr) << planner.trouble().toStdString();
  window_.Click("planToBench");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("addCup") != nullptr; }, 5.0))
      << "the bench is shown";
  Picture("planned-cups");
  const Board& board = window_.desk().board()->State();
  ASSERT_EQ(board.cups.size(), 3u) << "base coat, colour, activator";
  for (std::size_t i = 0; i < 3; ++i) {
    const PlannedCup& planned = planner.Report()->plan.cups[i];
    EXPECT_NEAR(*board.cups[i].details.volume_ml,
                planned.mix_ml - planned.reserve_ml,
                1e-9);
    EXPECT_NEAR(*board.cups[i].details.reserve_ml, planned.reserve_ml, 1e-9);
  }
  EXPECT_TRUE(board.cups[0].base_coat);
  EXPECT_EQ(board.cups[1].details.label, "Lagoon");
  EXPECT_EQ(board.cups[2].details.label, "Lagoon activator");
  window_.Click("page5");
  window_.Click("planToBench");
  EXPECT_EQ(window_.desk().board()->State().cups.size(), 3u);
}

// A hand scanner types like a keyboard and ends with Enter.
TEST_F(WholeJob, AScannerTypesALabel) {
  window_.Click("addCup");
  window_.Click("cupFromLabel");
  window_.Type("cupLabel",
               R"({"format":"flowkin-label","version":1,"name":"Dune",)"
               R"("role":"base coat","volume_ml":126,"water_ml":6})");
  window_.Key(Qt::Key_Return);
  EXPECT_EQ(window_.TextOf("cupName"), "Dune");
  EXPECT_EQ(window_.TextOf("cupVolume"), "120");
  EXPECT_TRUE(window_.TextOf("cupTold").contains("6\u00a0mL"));
  Picture("label");
  window_.Key(Qt::Key_Return);
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("cupKeep") == nullptr; }, 5.0));
  const Board& board = window_.desk().board()->State();
  ASSERT_EQ(board.cups.size(), 1u);
  EXPECT_TRUE(board.cups[0].base_coat);
  EXPECT_EQ(board.cups[0].volume_now_ml, 126.0);
  // The next one is garbled: the form stays and says so.
  window_.Click("addCup");
  window_.Click("cupFromLabel");
  window_.Type("cupLabel", "[#format#");
  window_.Key(Qt::Key_Return);
  EXPECT_FALSE(window_.TextOf("cupWrong").isEmpty());
  EXPECT_EQ(board.cups.size(), 1u);
}

// She chooses one photo of two jars, sees their names and takes both.
TEST_F(WholeJob, APhotoOfTwoLabelsPutsTwoCupsOnTheBench) {
  std::istringstream text(
      R"({"labels":[{"name":"Dune","role":"base coat","volume_ml":126,)"
      R"("water_ml":6},{"name":"Ash","volume_ml":90}]})");
  const Result<std::vector<BatchLabel>> labels = ReadLabels({}, text);
  ASSERT_TRUE(labels.has_value());
  const Result<Paper> paper = PrintLabels(*labels, Words());
  ASSERT_TRUE(paper.has_value());
  const Result<Photo> page = paper->Picture(0, 1654);
  ASSERT_TRUE(page.has_value());
  const QString photo = window_.folder() + "/jars.jpg";
  ASSERT_TRUE(QImage(page->rgb.data(),
                     page->width,
                     page->height,
                     3 * page->width,
                     QImage::Format_RGB888)
                  .save(photo));
  window_.Click("addCup");
  window_.Click("cupFromLabel");
  // The system's own dialog has no place in a test; this is what it answers.
  auto* dialog = window_.quick()->findChild<QObject*>("cupLabelDialog");
  ASSERT_NE(dialog, nullptr);
  dialog->setProperty("selectedFile", QUrl::fromLocalFile(photo));
  ASSERT_TRUE(QMetaObject::invokeMethod(dialog, "accepted"));
  EXPECT_TRUE(window_.TextOf("cupSeveral").contains("Ash"))
      << window_.TextOf("cupWrong").toStdString();
  EXPECT_EQ(window_.Find("cupKeep"), nullptr);
  Picture("two-labels");
  window_.Click("cupAllLabels");
  ASSERT_TRUE(WindowDriver::WaitFor(
      [&] { return window_.Find("cupAllLabels") == nullptr; }, 5.0));
  const Board& board = window_.desk().board()->State();
  ASSERT_EQ(board.cups.size(), 2u);
  EXPECT_EQ(board.cups[0].volume_now_ml.value_or(0.0) +
                board.cups[1].volume_now_ml.value_or(0.0),
            126.0 + 90.0);
}

// What a film said is said anew when she changes the language.
TEST_F(WholeJob, WhatAFilmShowedFollowsTheLanguage) {
  AddCup("Dune", {"base-a.mp4"});
  Desk& desk = window_.desk();
  const QString english = desk.film()->result();
  EXPECT_TRUE(english.startsWith("Dune: ")) << english.toStdString();
  EXPECT_TRUE(english.contains("stream")) << english.toStdString();
  desk.preferences()->setLanguage("de");
  const QString german = desk.film()->result();
  EXPECT_TRUE(german.startsWith("Dune: ")) << german.toStdString();
  EXPECT_FALSE(german.contains("stream")) << german.toStdString();
  const ClipQueue& clips = *desk.clips();
  EXPECT_TRUE(german.endsWith(
      clips.data(clips.index(0), ClipQueue::kResult).toString()));
  desk.preferences()->setLanguage("en");
  EXPECT_EQ(desk.film()->result(), english);
}

}  // namespace
}  // namespace flowkin::testing
