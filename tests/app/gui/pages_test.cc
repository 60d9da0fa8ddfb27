// The pages for plan, journal and paper, without their screens: what is written
// into their fields, and the same numbers as on the command line.

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QLocale>
#include <QPainter>
#include <QPrinter>
#include <QProcess>
#include <QTemporaryDir>
#include <cmath>
#include <map>
#include <memory>
#include <nlohmann/json.hpp>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <sstream>

#include "app/gui/cell_room.h"
#include "app/gui/last_check.h"
#include "app/gui/print_room.h"
#include "app/usecases/label_document.h"
#include "tests/app/run_flowkin.h"
#include "tests/support/cell_tile.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;

QString Squares(const QString& path, int across, int down) {
  return QString::fromStdString(
      testing_support::WriteCellTile(path.toStdString(), across, down));
}

class Pages : public ::testing::Test {
 protected:
  static void SetUpTestSuite() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static int argc = 1;
    static char name[] = "pages_test";
    static char* argv[] = {name, nullptr};
    static const QGuiApplication app(argc, argv);
  }
  void SetUp() override {
    QLocale::setDefault(QLocale("de_DE"));
    Open();
  }
  void TearDown() override { QLocale::setDefault(QLocale("en_US")); }
  void Open() {
    print_.reset();
    journal_.reset();
    planner_.reset();
    board_.reset();
    preferences_ =
        std::make_unique<Preferences>(folder_.filePath("settings.ini"));
    preferences_->setUsUnits(false);
    board_ = std::make_unique<BenchBoard>(Store(), preferences_.get());
    planner_ =
        std::make_unique<Planner>(Store(), preferences_.get(), board_.get());
    journal_ = std::make_unique<JournalReader>(
        Store(), preferences_.get(), board_.get(), planner_.get());
    print_ = std::make_unique<PrintRoom>(
        preferences_.get(), journal_.get(), planner_.get());
    print_->setFolder(QUrl::fromLocalFile(folder_.path()));
  }
  QString Store() const { return folder_.filePath("book.db"); }
  void PutCup(const char* name, int role) {
    QVariantMap form = board_->form(-1);
    form["name"] = name;
    form["role"] = role;
    form["volume"] = "120";
    EXPECT_EQ(board_->keep(-1, form), QString());
  }
  double OnCanvas() const {
    return planner_->Report() != nullptr
               ? planner_->Report()->plan.on_support_ml
               : -1.0;
  }
  QByteArray Written() const {
    QFile file(print_->written());
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }

  QTemporaryDir folder_;
  std::unique_ptr<Preferences> preferences_;
  std::unique_ptr<BenchBoard> board_;
  std::unique_ptr<Planner> planner_;
  std::unique_ptr<JournalReader> journal_;
  std::unique_ptr<PrintRoom> print_;
};

TEST_F(Pages, APlanIsReckonedAsOnTheCommandLine) {
  EXPECT_FALSE(planner_->planned()) << "there is no colour yet";
  PutCup("Dune", 0);
  PutCup("Lagoon", 1);
  planner_->visit();
  ASSERT_TRUE(planner_->planned()) << planner_->trouble().toStdString();
  planner_->addColour("Ember");
  planner_->setColour(1, "share", "2,5");
  planner_->setColour(1, "body", 3);
  planner_->set("length", "60,5");
  planner_->set("depth", "0");
  planner_->set("count", "2");
  planner_->set("reserve", "25");
  planner_->setSupply(0, "atHand", "150");
  planner_->setSupply(0, "container", "2500");
  planner_->setSupply(0, "price", "39,9");
  EXPECT_EQ(planner_->trouble(), QString());
  // 60.5 x 40 cm twice, 1650 mL on a square metre as swipe starts.
  EXPECT_NEAR(OnCanvas(), 2.0 * 0.605 * 0.40 * 1650.0, 1e-6);
  const QString file = folder_.filePath("plan.json");
  ASSERT_TRUE(planner_->keepPlan(QUrl::fromLocalFile(file)));
  const FlowkinRun run = RunFlowkin({"plan",
                                     "--file",
                                     file.toStdString(),
                                     "--store",
                                     Store().toStdString(),
                                     "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  const json plan = json::parse(run.out);
  const PourPlan& ours = planner_->Report()->plan;
  EXPECT_NEAR(plan["on_support_ml"].get<double>(), ours.on_support_ml, 1e-2);
  ASSERT_EQ(plan["cups"].size(), ours.cups.size());
  for (std::size_t i = 0; i < ours.cups.size(); ++i) {
    EXPECT_EQ(plan["cups"][i]["name"], ours.cups[i].name);
    EXPECT_NEAR(
        plan["cups"][i]["mix_ml"].get<double>(), ours.cups[i].mix_ml, 1e-2);
    EXPECT_NEAR(plan["cups"][i]["paint"]["mass_g"].get<double>(),
                ours.cups[i].paint.mass_g(),
                1e-2);
  }
  EXPECT_NEAR(plan["supplies"][0]["at_hand_ml"].get<double>(), 150.0, 1e-9);
  EXPECT_NEAR(plan["supplies"][0]["buy_cost"].get<double>(), 39.9, 1e-9);
  // It is there again when the window opens again.
  const double before = OnCanvas();
  Open();
  EXPECT_EQ(OnCanvas(), before);
  EXPECT_EQ(planner_->colours().size(), 2);
}

TEST_F(Pages, ALabelFillsTheFormOfItsCup) {
  const QString code =
      R"({"format":"flowkin-label","version":1,"name":"Lagoon","role":"colour",)"
      R"("brand":"Quillmere","colour":"teal","volume_ml":126,"water_ml":6,)"
      R"("target":1.2,"thinner":"medium","mixed_on":"2026-03-01"})";
  QVariantMap form = board_->formOfLabel(code);
  EXPECT_FALSE(form.contains("trouble"));
  EXPECT_EQ(form["name"], "Lagoon");
  EXPECT_EQ(form["role"], 1);
  EXPECT_EQ(form["brand"], "Quillmere");
  EXPECT_EQ(form["volume"], "120");
  EXPECT_EQ(form["target"], "1,2");
  EXPECT_EQ(form["thinner"], 2);
  EXPECT_TRUE(form["told"].toString().contains("2026-03-01"));
  EXPECT_TRUE(board_->empty()) << "she looks at it first";
  EXPECT_EQ(board_->keep(-1, form), QString());
  const json shown = json::parse(
      RunFlowkin({"bench", "show", "--store", Store().toStdString(), "--json"})
          .out);
  EXPECT_EQ(shown["cups"][0]["volume_now_ml"], 126.0);
  EXPECT_NEAR(shown["cups"][0]["water_share"].get<double>(), 6.0 / 126.0, 1e-4);
  // What a scanner garbles on another keyboard, and what is no cup.
  QString garbled = code;
  EXPECT_EQ(board_->formOfLabel(garbled.replace('"', '@')).keys(),
            QStringList("trouble"));
  EXPECT_EQ(board_->formOfLabel(R"({"name":"Batch 7","role":"medium"})").keys(),
            QStringList("trouble"));
  EXPECT_EQ(board_->rowCount(), 1);
}

// libqrencode makes the code, another library reads it from the page as a
// camera would see it: small, turned, on a dark table.
TEST_F(Pages, APhotoOfLabelsSetsTheirCupsUp) {
  std::istringstream text(
      R"({"labels":[{"name":"Lagune für Ä","role":"activator","volume_ml":126,)"
      R"("water_ml":6,"target":1.2},{"name":"Ash","volume_ml":90},)"
      R"({"name":"Batch 7","role":"medium"}]})");
  const Result<std::vector<BatchLabel>> labels = ReadLabels({}, text);
  ASSERT_TRUE(labels.has_value());
  const auto photo = [&](std::vector<BatchLabel> printed, const char* name) {
    const Result<Paper> paper = PrintLabels(printed, Words());
    EXPECT_TRUE(paper.has_value());
    const Result<Photo> page = paper->Picture(0, 1654);
    EXPECT_TRUE(page.has_value());
    const QImage sheet(page->rgb.data(),
                       page->width,
                       page->height,
                       3 * page->width,
                       QImage::Format_RGB888);
    const QImage turned =
        sheet.copy(0, 0, 1654, 800)
            .transformed(QTransform().rotate(97.0), Qt::SmoothTransformation);
    QImage table(turned.size(), QImage::Format_RGB32);
    table.fill(QColor(60, 50, 40));
    QPainter(&table).drawImage(0, 0, turned);
    EXPECT_TRUE(table.save(folder_.filePath(name), "JPG", 80));
    return QUrl::fromLocalFile(folder_.filePath(name));
  };
  const QVariantMap form =
      board_->formOfLabelPhoto(photo({labels->front()}, "jar.jpg"));
  EXPECT_EQ(form["trouble"].toString(), QString());
  EXPECT_EQ(form["name"], QString("Lagune für Ä"));
  EXPECT_EQ(form["role"], 2);
  EXPECT_EQ(form["volume"], "120");
  EXPECT_EQ(form["water"], 6.0);
  EXPECT_EQ(form["target"], "1,2");
  // None, no picture: the form stays and says why.
  QStringList said;
  for (const QUrl& wrong :
       {QUrl::fromLocalFile(Squares(folder_.filePath("none.png"), 4, 4)),
        QUrl::fromLocalFile(folder_.filePath("missing.jpg"))}) {
    const QVariantMap read = board_->formOfLabelPhoto(wrong);
    EXPECT_EQ(read.keys(), QStringList("trouble"))
        << wrong.path().toStdString();
    said << read["trouble"].toString();
  }
  EXPECT_EQ(said.removeDuplicates(), 0);
  // Of two jars, a cup each once she has seen their names.
  const QUrl two = photo({labels->at(0), labels->at(1)}, "two.jpg");
  const QVariantMap both = board_->formOfLabelPhoto(two);
  EXPECT_EQ(both.keys(), QStringList("several"));
  QStringList names = both["several"].toStringList();
  names.sort();
  EXPECT_EQ(names, QStringList({"Ash", QString("Lagune für Ä")}));
  EXPECT_TRUE(board_->empty());
  EXPECT_EQ(board_->keepLabels(two), QString());
  ASSERT_EQ(board_->State().cups.size(), 2u);
  std::map<std::string, double> now_ml;
  for (const BoardCup& cup : board_->State().cups) {
    now_ml[cup.details.label] = cup.volume_now_ml.value_or(0.0);
  }
  EXPECT_EQ(now_ml["Ash"], 90.0);
  EXPECT_EQ(now_ml["Lagune für Ä"], 126.0);
  // One of them is no cup: none is put there.
  EXPECT_NE(board_->keepLabels(photo(*labels, "medium.jpg")), QString());
  EXPECT_EQ(board_->State().cups.size(), 2u);
}

// Half the cup is medium and the new batch flows 1.2 / 1.0 as slowly: the
// logarithms mix by volume, as in core/planning/medium.h.
TEST_F(Pages, ItsOwnFlowMovesTheCups) {
  planner_->addColour("Ember");
  planner_->setColour(0, "body", 2);
  const qsizetype before = planner_->medium().size();
  planner_->set("mediumFlow", "1,2");
  EXPECT_EQ(planner_->medium().size(), before) << "nothing to compare with";
  planner_->set("lastFlow", "1");
  ASSERT_EQ(planner_->medium().size(), before + 1);
  double mix_ml = 0.0;
  double medium_ml = 0.0;
  for (const PlannedCup& cup : planner_->Report()->plan.cups) {
    if (cup.medium.volume_ml <= 0.0) continue;
    mix_ml += cup.mix_ml;
    medium_ml += cup.medium.volume_ml;
  }
  ASSERT_GT(medium_ml, 0.0);
  EXPECT_TRUE(planner_->medium().join(' ').contains(
      Formats::Ratio(std::pow(1.2, medium_ml / mix_ml))))
      << planner_->medium().join('\n').toStdString();
  planner_->set("lastFlow", "-1");
  EXPECT_FALSE(planner_->trouble().isEmpty());
  Open();
  EXPECT_EQ(planner_->form()["mediumFlow"], Formats::Ratio(1.2));
  EXPECT_EQ(planner_->medium().size(), before + 1) << "kept";
  planner_->set("mediumFlow", "0,7");
  EXPECT_EQ(planner_->medium().size(), before + 2) << "thin: a warning more";
  planner_->set("mediumFlow", "");
  EXPECT_EQ(planner_->medium().size(), before);
}

TEST_F(Pages, MediumIsMadeInHerCup) {
  planner_->addColour("Ember");
  const qsizetype in_a_jug = planner_->medium().size();
  planner_->set("cupTop", "10");
  planner_->set("cupHeight", "50");
  ASSERT_EQ(planner_->medium().size(), in_a_jug + 1);
  // A straight cup of 10 cm: 78.54 mL stand 1 cm high; base first, 4 of 5.
  const double full_cm =
      planner_->Report()->plan.medium.volume_ml / (25.0 * std::acos(-1.0));
  const QString marks = planner_->medium().join(' ');
  EXPECT_TRUE(marks.contains(Formats::Number(full_cm, 1) + " cm"))
      << marks.toStdString();
  EXPECT_TRUE(marks.contains(Formats::Number(0.8 * full_cm, 1) + " cm"))
      << marks.toStdString();
  planner_->set("cupHeight", "0,6");
  EXPECT_FALSE(planner_->medium().join(' ').contains(
      Formats::Number(full_cm, 1) + " cm"));
  planner_->set("cupHeight", "");
  EXPECT_EQ(planner_->medium().size(), in_a_jug);
}

TEST_F(Pages, WhatIsNoNumberIsSaidAndChangesNothing) {
  planner_->addColour("Ember");
  const double before = OnCanvas();
  planner_->set("length", "wide");
  EXPECT_FALSE(planner_->trouble().isEmpty());
  EXPECT_EQ(OnCanvas(), before);
  planner_->set("count", "1,5");
  EXPECT_FALSE(planner_->trouble().isEmpty());
  planner_->set("count", "0");
  EXPECT_FALSE(planner_->planned());
  planner_->set("count", "1");
  EXPECT_EQ(planner_->trouble(), QString());
  EXPECT_EQ(OnCanvas(), before);
}

TEST_F(Pages, HerAmountsAndJarsAreSharedWithTheCommandLine) {
  planner_->addColour("Ember");
  planner_->keepAmounts("1000", "500", "100");
  EXPECT_EQ(planner_->trouble(), QString());
  EXPECT_TRUE(planner_->amounts()["own"].toBool());
  EXPECT_NEAR(
      OnCanvas() / 1600.0,
      planner_->Report()->plan.face_m2 + planner_->Report()->plan.edge_m2,
      1e-9);
  EXPECT_EQ(planner_->putOnShelf("Ember", 0, "12,5", false), QString());
  EXPECT_FALSE(planner_->putOnShelf("Ember", 0, "some", false).isEmpty());
  const auto list = [&] {
    const FlowkinRun run = RunFlowkin(
        {"shelf", "list", "--store", Store().toStdString(), "--json"});
    return json::parse(run.out)["jars"];
  };
  ASSERT_EQ(list().size(), 1u);
  EXPECT_EQ(list()[0]["volume_ml"], 12.5);
  EXPECT_EQ(planner_->Report()->plan.cups[1].left_over_ml, 12.5);
  planner_->takeJar(list()[0]["jar"].get<qint64>());
  EXPECT_EQ(list().size(), 0u);
  EXPECT_EQ(planner_->Report()->plan.cups[1].left_over_ml, 0.0);
  planner_->putBack();
  EXPECT_EQ(list().size(), 1u);
  planner_->set("follow", false);
  EXPECT_EQ(planner_->Report()->plan.cups[1].left_over_ml, 0.0);
  planner_->dropAmounts();
  EXPECT_FALSE(planner_->amounts()["own"].toBool());
}

TEST_F(Pages, ADayIsWrittenFoundAndCompared) {
  PutCup("Dune", 0);
  PutCup("Lagoon", 1);
  planner_->visit();
  journal_->visit();
  ASSERT_EQ(journal_->days().size(), 1);
  journal_->pour({{"used", "400,5"}, {"humidity", "48"}, {"strained", 1}},
                 true);
  EXPECT_EQ(journal_->trouble(), QString());
  journal_->addFault(0, "corner");
  journal_->judge(0, "bright");
  journal_->cells(2, "30", "1,5", 2, "");
  journal_->note("smells of lemon");
  journal_->pour({{"used", "much"}}, false);
  EXPECT_FALSE(journal_->trouble().isEmpty());
  const FlowkinRun run = RunFlowkin(
      {"journal", "show", "1", "--store", Store().toStdString(), "--json"});
  const json page = json::parse(run.out);
  EXPECT_EQ(page["pour"]["used_ml"], 400.5);
  EXPECT_EQ(page["pour"]["technique"], "swipe");
  EXPECT_NEAR(page["pour"]["planned_ml"].get<double>(), OnCanvas(), 1e-2);
  EXPECT_EQ(page["pour"]["strained"], true);
  EXPECT_EQ(page["faults"][0]["fault"], "crazing");
  EXPECT_EQ(page["verdict"], "good");
  EXPECT_EQ(page["cell_tests"][0]["seen"], "blob");
  EXPECT_EQ(page["cell_tests"][0]["after_s"], 30.0);
  EXPECT_EQ(page["cell_tests"][0]["additive_parts"], 1.5);
  const QVariantList faults = journal_->page()["faults"].toList();
  ASSERT_EQ(faults.size(), 1);
  EXPECT_FALSE(faults[0].toMap()["causes"].toList().isEmpty());
  journal_->takeBack();  // the note
  EXPECT_TRUE(journal_->page()["notes"].toList().isEmpty());
  board_->newSession("Another");
  journal_->setWords("corner");
  ASSERT_EQ(journal_->days().size(), 1);
  journal_->setWords("");
  ASSERT_EQ(journal_->days().size(), 2);
  journal_->choose(0);
  EXPECT_EQ(journal_->page()["name"], "Another");
  journal_->compare(1);
  EXPECT_EQ(journal_->beside(), 1);
  EXPECT_EQ(journal_->other()["faults"].toList().size(), 1);
}

TEST_F(Pages, PagesAreWrittenToFiles) {
  PutCup("Dune", 0);
  PutCup("Lagoon", 1);
  planner_->visit();
  journal_->visit();
  for (const auto& print :
       {&PrintRoom::labels, &PrintRoom::report, &PrintRoom::sheet}) {
    (print_.get()->*print)();
    EXPECT_EQ(print_->trouble(), QString());
    EXPECT_EQ(print_->written(), QString()) << "looked at first";
    EXPECT_GE(print_->pages(), 1);
    // A4 upright with something dark on white.
    const QImage sight = print_->sight()->Picture();
    EXPECT_NEAR(1.0 * sight.height() / sight.width(), 297.0 / 210.0, 0.002);
    EXPECT_EQ(sight.pixelColor(2, 2), QColor(Qt::white));
    int dark = 0;
    for (int y = 0; y < sight.height(); ++y) {
      for (int x = 0; x < sight.width(); ++x) {
        if (qGray(sight.pixel(x, y)) < 64) ++dark;
      }
    }
    EXPECT_GT(dark, 1000);
    print_->save();
    EXPECT_EQ(print_->pages(), 0);
    EXPECT_TRUE(Written().startsWith("%PDF-"))
        << print_->written().toStdString();
  }
  for (const char* name : {"Plumwing", "Gullfeather", "Inkberry", "Basalt"}) {
    planner_->addColour(name);
  }
  print_->handout("12", "Tuesday");
  ASSERT_EQ(print_->pages(), 2);
  const QImage first = print_->sight()->Picture();
  print_->setPage(1);
  EXPECT_NE(print_->sight()->Picture(), first);
  print_->setPage(2);
  EXPECT_EQ(print_->page(), 1);
  print_->save();
  EXPECT_TRUE(Written().startsWith("%PDF-"));
  print_->handout("none", "");
  EXPECT_FALSE(print_->trouble().isEmpty());
  print_->table();
  const FlowkinRun table =
      RunFlowkin({"journal", "export", "--store", Store().toStdString()});
  EXPECT_EQ(Written().toStdString(), table.out);
  print_->document();
  const FlowkinRun document = RunFlowkin(
      {"journal", "export", "--store", Store().toStdString(), "--json"});
  EXPECT_EQ(Written().toStdString(), document.out);
}

void WaitForCount(CellRoom& room) {
  QElapsedTimer timer;
  timer.start();
  while (room.busy() && timer.elapsed() < 20000) {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
  }
  EXPECT_FALSE(room.busy());
}

TEST_F(Pages, CellsAreCountedAndKeptAsTheCommandCountsThem) {
  PutCup("Dune", 0);
  PutCup("Pearl", 2);
  journal_->visit();
  CellRoom room(journal_.get());
  const QString photo = Squares(folder_.filePath("a.png"), 15, 10);
  const QString other = Squares(folder_.filePath("b.png"), 12, 12);
  room.open(0, QUrl::fromLocalFile(photo));
  WaitForCount(room);
  EXPECT_FALSE(room.sides()[0].toMap()["measured"].toBool()) << "no scale yet";
  // Shown at half its size, ten squares apart are 400 px; she says 40 mm.
  const QRectF shown(10.0, 20.0, 310.0, 210.0);
  room.point(0, QPointF(20.0, 30.0), shown);
  room.point(0, QPointF(220.0, 30.0), shown);
  room.setLength(0, "40");
  WaitForCount(room);
  room.open(1, QUrl::fromLocalFile(other));
  room.setPixel(1, "0,1");
  WaitForCount(room);
  const QVariantMap first = room.sides()[0].toMap();
  EXPECT_EQ(first["trouble"].toString(), QString());
  ASSERT_TRUE(first["measured"].toBool());
  EXPECT_EQ(first["pixel"], "0,1");
  EXPECT_EQ(room.first()->Marks().size(), 151u) << "the cells, the scale";
  // Pointing to 2 px of the screen is 4 px of the photo, twice, in 400 px.
  const FlowkinRun counted = RunFlowkin({"cells",
                                         photo.toStdString(),
                                         "--mm-per-px",
                                         "0.1",
                                         "--scale-rel-sd",
                                         "0.01414213562",
                                         "--against",
                                         other.toStdString(),
                                         "--json"});
  ASSERT_EQ(counted.status, 0) << counted.err;
  const json told = json::parse(counted.out);
  EXPECT_EQ(told["cells"], 150);
  const auto number = [](const json& value) {
    return Formats::Ratio(value.get<double>());
  };
  const json& density = told["cells_per_cm2"];
  const json& median = told["median_diameter_mm"];
  const QString says = first["says"].toStringList().value(1);
  EXPECT_TRUE(says.startsWith(
      QString("%1 cells on a cm² (%2 to %3), half larger than %4 mm")
          .arg(number(density["value"]),
               number(density["low"]),
               number(density["high"]),
               number(median["value"]))))
      << says.toStdString();
  int in_bars = 0;
  for (const QVariant& bar : first["bars"].toList()) {
    in_bars += bar.toMap()["count"].toInt();
  }
  EXPECT_EQ(in_bars, 150);
  EXPECT_TRUE(room.comparison().contains(
      number(told["comparison"]["density_ratio"]["value"])))
      << room.comparison().toStdString();
  room.keep(0, 0, "30", "2", 2, "on the tile");
  EXPECT_EQ(journal_->trouble(), QString());
  const json shown_day = json::parse(
      RunFlowkin(
          {"journal", "show", "1", "--store", Store().toStdString(), "--json"})
          .out);
  const json& kept = shown_day["cell_tests"][0];
  EXPECT_EQ(kept["cells"], 150);
  EXPECT_EQ(kept["cells_per_cm2"], density);
  EXPECT_EQ(kept["median_diameter_mm"], median);
  EXPECT_EQ(kept["photo"], photo.toStdString());
  EXPECT_EQ(kept["after_s"], 30.0);
  EXPECT_EQ(kept["additive_parts"], 2.0);
  // A part of ten by eight squares, pointed at and as the command has it.
  room.markPart(0);
  EXPECT_TRUE(room.sides()[0].toMap()["marking"].toBool());
  room.point(0, QPointF(215.0, 185.0), shown);
  room.point(0, QPointF(15.0, 25.0), shown);
  WaitForCount(room);
  const QVariantMap part = room.sides()[0].toMap();
  EXPECT_EQ(part["trouble"].toString(), QString());
  EXPECT_EQ(part["part"], "10, 10, 400, 320");
  EXPECT_EQ(part["pixel"], "0,1") << "the scale is kept";
  const FlowkinRun piece = RunFlowkin({"cells",
                                       photo.toStdString(),
                                       "--mm-per-px",
                                       "0.1",
                                       "--part",
                                       "10,10,400,320",
                                       "--json"});
  ASSERT_EQ(piece.status, 0) << piece.err;
  const json told_of_piece = json::parse(piece.out);
  EXPECT_EQ(told_of_piece["cells"], 80);
  EXPECT_TRUE(part["says"].toStringList().value(1).startsWith(
      QString("%1 cells").arg(number(told_of_piece["cells_per_cm2"]["value"]))))
      << part["says"].toStringList().join(' ').toStdString();
  for (const char* wrong : {"1,2,3", "500,0,200,100", "0,0,0,5", "-1,0,9,9"}) {
    room.setPart(0, wrong);
    EXPECT_FALSE(room.sides()[0].toMap()["trouble"].toString().isEmpty())
        << wrong;
    EXPECT_EQ(room.sides()[0].toMap()["part"], "10, 10, 400, 320");
  }
  room.setPart(0, "");
  WaitForCount(room);
  EXPECT_EQ(room.sides()[0].toMap()["part"], "");
  EXPECT_EQ(room.first()->Marks().size(), 151u);
  EXPECT_FALSE(journal_->page()["photos"].toList().isEmpty());
  // What cannot be counted says so.
  room.putAway(1);
  EXPECT_EQ(room.comparison(), QString());
  room.open(1, QUrl::fromLocalFile(Store()));
  WaitForCount(room);
  EXPECT_FALSE(room.sides()[1].toMap()["trouble"].toString().isEmpty());
  EXPECT_TRUE(room.sides()[1].toMap()["name"].toString().isEmpty());
}

// Two seconds on the cells, then the hand takes the camera away.
TEST_F(Pages, CellsAreCountedInAClip) {
  PutCup("Pearl", 2);
  journal_->visit();
  CellRoom room(journal_.get());
  const QString photo = Squares(folder_.filePath("a.png"), 15, 10);
  const QString clip = folder_.filePath("run-down.mp4");
  testing_support::WriteRunDown(photo.toStdString(), clip.toStdString());
  room.open(0, QUrl::fromLocalFile(clip));
  room.setPixel(0, "0,1");  // before it is read
  WaitForCount(room);
  const QVariantMap seen = room.sides()[0].toMap();
  EXPECT_EQ(seen["trouble"].toString(), QString());
  ASSERT_TRUE(seen["measured"].toBool());
  const json told = json::parse(
      RunFlowkin({"cells", clip.toStdString(), "--mm-per-px", "0.1", "--json"})
          .out);
  EXPECT_TRUE(seen["says"].toStringList().value(0).contains(
      Formats::Number(told["at_s"].get<double>(), 1)))
      << seen["says"].toStringList().join(' ').toStdString();
  // The journal keeps the picture that was counted, twice if asked to.
  room.keep(0, 0, "30", "2", 1, "on the tile");
  room.keep(0, 0, "60", "2", 1, "again");
  EXPECT_EQ(journal_->trouble(), QString());
  const json shown_day = json::parse(
      RunFlowkin(
          {"journal", "show", "1", "--store", Store().toStdString(), "--json"})
          .out);
  ASSERT_EQ(shown_day["cell_tests"].size(), 2u);
  EXPECT_NE(shown_day["cell_tests"][0]["photo"],
            shown_day["cell_tests"][1]["photo"]);
  for (const json& test : shown_day["cell_tests"]) {
    EXPECT_EQ(test["cells"], told["cells"]);
    EXPECT_EQ(cv::imread(test["photo"].get<std::string>()).size(),
              cv::imread(photo.toStdString()).size());
  }
  // Another file is chosen while the clip is still read.
  room.open(1, QUrl::fromLocalFile(clip));
  room.open(1, QUrl::fromLocalFile(photo));
  room.setPixel(1, "0,1");
  WaitForCount(room);
  EXPECT_EQ(room.sides()[1].toMap()["name"], "a.png");
  EXPECT_TRUE(room.sides()[1].toMap()["measured"].toBool());
}

// What a printer gets lies where the PDF has it, as poppler draws both.
TEST_F(Pages, APrinterGetsThePagesInTheirTrueSize) {
  PutCup("Dune", 0);
  PutCup("Lagoon", 1);
  planner_->visit();
  print_->sheet();
  ASSERT_GT(print_->pages(), 0) << print_->trouble().toStdString();
  QPrinter printer;
  const QString sent = folder_.filePath("sent.pdf");
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(sent);
  print_->PrintOn(printer);
  EXPECT_EQ(print_->trouble(), QString());
  EXPECT_EQ(print_->sent(), sent);
  print_->save();
  const auto drawn = [&](const QString& pdf) {
    const QString stem = pdf + "-page";
    EXPECT_EQ(QProcess::execute(
                  "pdftoppm", {"-r", "300", "-gray", "-singlefile", pdf, stem}),
              0);
    return cv::Mat(cv::imread((stem + ".pgm").toStdString(), 0));
  };
  const cv::Mat paper = drawn(sent);
  const cv::Mat file = drawn(print_->written());
  // 210 x 297 mm, and a hair of 1/6 mm for how each program rounds.
  constexpr int kHair_px = 2;
  EXPECT_NEAR(paper.cols, 210.0 / 25.4 * 300.0, kHair_px);
  EXPECT_NEAR(paper.rows, 297.0 / 25.4 * 300.0, kHair_px);
  const cv::Rect ours = cv::boundingRect(paper < 128);
  const cv::Rect theirs = cv::boundingRect(file < 128);
  EXPECT_NEAR(ours.x, theirs.x, kHair_px);
  EXPECT_NEAR(ours.y, theirs.y, kHair_px);
  EXPECT_NEAR(ours.width, theirs.width, kHair_px);
  EXPECT_NEAR(ours.height, theirs.height, kHair_px);
  EXPECT_GT(ours.width, 1000) << "most of the sheet";
  // Paper that is shorter (ANSI A, 8.5 x 11 in) gets the page smaller, whole
  // and in the middle.
  print_->sheet();
  QPrinter letter;
  const QString small = folder_.filePath("small.pdf");
  letter.setOutputFormat(QPrinter::PdfFormat);
  letter.setOutputFileName(small);
  letter.setPageSize(QPageSize(QPageSize::Letter));
  print_->PrintOn(letter);
  const cv::Mat less = drawn(small);
  EXPECT_NEAR(less.cols, 8.5 * 300.0, kHair_px);
  EXPECT_NEAR(less.rows, 11.0 * 300.0, kHair_px);
  constexpr double kSmaller = 11.0 * 25.4 / 297.0;
  const cv::Rect shrunk = cv::boundingRect(less < 128);
  EXPECT_NEAR(shrunk.width, kSmaller * ours.width, 2 * kHair_px);
  EXPECT_NEAR(shrunk.height, kSmaller * ours.height, 2 * kHair_px);
  EXPECT_NEAR(shrunk.x + 0.5 * shrunk.width - 0.5 * less.cols,
              kSmaller * (ours.x + 0.5 * ours.width - 0.5 * paper.cols),
              2 * kHair_px);
  // A folder that is not there takes nothing.
  print_->sheet();
  QPrinter lost;
  lost.setOutputFormat(QPrinter::PdfFormat);
  lost.setOutputFileName(folder_.filePath("none/sent.pdf"));
  print_->PrintOn(lost);
  EXPECT_FALSE(print_->trouble().isEmpty());
  EXPECT_EQ(print_->sent(), QString());
}

TEST_F(Pages, TheLastCheckSaysWhatReadySays) {
  LastCheck check(board_.get());
  check.look();
  EXPECT_FALSE(check.ready());
  EXPECT_FALSE(check.headline().isEmpty());
  PutCup("Dune", 0);
  PutCup("Lagoon", 1);
  check.look();
  EXPECT_FALSE(check.ready());
  const FlowkinRun run = RunFlowkin(
      {"ready", "--session", "1", "--store", Store().toStdString(), "--json"});
  const json ready = json::parse(run.out);
  ASSERT_EQ(static_cast<std::size_t>(check.risks().size()),
            ready["risks"].size());
  EXPECT_EQ(check.risks()[0].toMap()["says"].toString().toStdString(),
            ready["risks"][0]["says"]);
}

}  // namespace
}  // namespace flowkin::testing
