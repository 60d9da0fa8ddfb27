#include "core/session/palette_session.h"

#include <gtest/gtest.h>

#include <utility>

namespace flowkin {
namespace {

/// A session whose entries lie a minute apart.
class PaletteSessionTest : public testing::Test {
 protected:
  EntryNumber Log(EntryWhat what) {
    const EntryNumber number = session_.LastNumber() + 1;
    session_.Append({number, UtcTime{60'000 * number}, std::move(what)});
    return number;
  }
  CupId AddCup(const std::string& label, CupRole role = CupRole::kColour) {
    CupDetails cup;
    cup.label = label;
    cup.role = role;
    cup.volume_ml = 100.0;
    return Log(CupAdded{cup});
  }
  static FilmedTest Film(double break_s) {
    FilmedTest film;
    film.film = "a.mp4";
    film.duration_s = 10.0;
    film.measurement.outcome = Outcome::kMeasured;
    film.measurement.break_s = break_s;
    return film;
  }
  void Undo() { Log(Undone{*session_.NextUndo()}); }
  void Redo() { Log(Redone{*session_.NextRedo()}); }

  PaletteSession session_;
};

TEST_F(PaletteSessionTest, AddsUpWhatHappenedToACup) {
  const CupId base = AddCup("Base", CupRole::kBaseCoat);
  const CupId cup = AddCup("Lagoon");
  const TestId test = Log(TestTaken{cup, Film(4.0), 21.0});
  Log(ThinnerAdded{
      cup, 2.0, ThinnerKind::kWater, 40.0, DoseUnit{"drop", 0.05}});
  Log(TestTaken{cup, Film(3.0), {}});
  Log(ThinnerAdded{cup, 3.0, ThinnerKind::kMedium, {}, {}});
  Log(ReservePutBack{cup, 20.0});
  const EntryNumber stirred = Log(Stirred{cup});

  ASSERT_EQ(session_.cups().size(), 2U);
  EXPECT_EQ(session_.BaseCoat()->id, base);
  const BenchCup& lagoon = *session_.FindCup(cup);
  ASSERT_EQ(lagoon.tests.size(), 2U);
  EXPECT_EQ(lagoon.tests[0].id, test);
  EXPECT_EQ(lagoon.tests[0].room_c, 21.0);
  ASSERT_EQ(lagoon.additions.size(), 3U);
  EXPECT_EQ(lagoon.additions[0].before_test, 1U);
  EXPECT_EQ(lagoon.additions[1].before_test, 2U);
  EXPECT_EQ(lagoon.FirstTestNow(), 2U);
  EXPECT_DOUBLE_EQ(lagoon.ThinnerMl(), 5.0);
  EXPECT_DOUBLE_EQ(lagoon.WaterMl(), 2.0);
  EXPECT_DOUBLE_EQ(*lagoon.VolumeNowMl(), 125.0);
  EXPECT_DOUBLE_EQ(*lagoon.WaterShare(), 2.0 / 125.0);
  EXPECT_EQ(lagoon.stirred_at->ms, 60'000 * stirred);
}

TEST_F(PaletteSessionTest, UndoWalksBackAndRedoForthAgain) {
  const CupId cup = AddCup("Lagoon");
  Log(ThinnerAdded{cup, 2.0, ThinnerKind::kWater, {}, {}});
  const EntryNumber second =
      Log(ThinnerAdded{cup, 3.0, ThinnerKind::kWater, {}, {}});
  EXPECT_EQ(session_.NextUndo(), second);
  EXPECT_FALSE(session_.NextRedo());
  Undo();
  EXPECT_DOUBLE_EQ(session_.FindCup(cup)->WaterMl(), 2.0);
  Undo();
  EXPECT_DOUBLE_EQ(session_.FindCup(cup)->WaterMl(), 0.0);
  Undo();
  EXPECT_EQ(session_.FindCup(cup), nullptr);
  EXPECT_FALSE(session_.NextUndo());
  Redo();
  Redo();
  EXPECT_DOUBLE_EQ(session_.FindCup(cup)->WaterMl(), 2.0);
  Redo();
  EXPECT_DOUBLE_EQ(session_.FindCup(cup)->WaterMl(), 5.0);
  EXPECT_FALSE(session_.NextRedo());
  EXPECT_EQ(session_.NextUndo(), second);
}

TEST_F(PaletteSessionTest, RedoIsGoneAfterSomethingNew) {
  const CupId cup = AddCup("Lagoon");
  Log(ThinnerAdded{cup, 2.0, ThinnerKind::kWater, {}, {}});
  Undo();
  EXPECT_TRUE(session_.NextRedo());
  Log(Stirred{cup});
  EXPECT_FALSE(session_.NextRedo());
  EXPECT_FALSE(session_.Check(Redone{2}));
  // The log itself still holds it.
  EXPECT_NE(session_.FindEntry(2), nullptr);
}

TEST_F(PaletteSessionTest, ReadingALogAnewGivesTheSameBench) {
  const CupId cup = AddCup("Lagoon");
  const TestId test = Log(TestTaken{cup, Film(4.0), {}});
  Log(TestSetAside{test});
  Undo();
  Log(ThinnerAdded{cup, 2.0, ThinnerKind::kWater, {}, {}});
  Undo();
  Redo();
  PaletteSession again;
  for (const LogEntry& entry : session_.log()) again.Append(entry);
  ASSERT_EQ(again.cups().size(), 1U);
  EXPECT_FALSE(again.FindTest(test)->set_aside);
  EXPECT_DOUBLE_EQ(again.cups().front().WaterMl(), 2.0);
  EXPECT_EQ(again.NextUndo(), session_.NextUndo());
  EXPECT_EQ(again.NextRedo(), session_.NextRedo());
}

TEST_F(PaletteSessionTest, ACorrectionStandsInForTheFindAndCanBeUndone) {
  const CupId cup = AddCup("Lagoon");
  const TestId test = Log(TestTaken{cup, Film(4.0), {}});
  Log(EventCorrected{test, TestEvent::kBreak, 4.2, Film(4.2).measurement});
  Log(EventCorrected{test, TestEvent::kBreak, 4.5, Film(4.5).measurement});
  EXPECT_EQ(session_.FindTest(test)->film.measurement.break_s, 4.5);
  ASSERT_EQ(session_.FindTest(test)->corrections.size(), 1U);
  EXPECT_EQ(session_.FindTest(test)->corrections[0].at_s, 4.5);
  Undo();
  EXPECT_EQ(session_.FindTest(test)->film.measurement.break_s, 4.2);
  Undo();
  EXPECT_EQ(session_.FindTest(test)->film.measurement.break_s, 4.0);
  EXPECT_TRUE(session_.FindTest(test)->corrections.empty());
}

TEST_F(PaletteSessionTest, ATestSetAsideDoesNotCountUntilTakenBack) {
  const CupId cup = AddCup("Lagoon");
  const TestId test = Log(TestTaken{cup, Film(4.0), {}});
  EXPECT_TRUE(session_.FindTest(test)->Counts());
  EXPECT_FALSE(session_.Check(TestTakenBack{test}));
  Log(TestSetAside{test});
  EXPECT_FALSE(session_.FindTest(test)->Counts());
  EXPECT_FALSE(session_.Check(TestSetAside{test}));
  Log(TestTakenBack{test});
  EXPECT_TRUE(session_.FindTest(test)->Counts());
}

TEST_F(PaletteSessionTest, EntriesOfACupThatIsGoneHaveNoEffect) {
  const CupId cup = AddCup("Lagoon");
  const TestId test = Log(TestTaken{cup, Film(4.0), {}});
  Log(CupRemoved{cup});
  // As another program may have written them meanwhile.
  Log(ThinnerAdded{cup, 2.0, ThinnerKind::kWater, {}, {}});
  Log(EventCorrected{test, TestEvent::kBreak, 4.2, Film(4.2).measurement});
  Log(Stirred{cup});
  EXPECT_TRUE(session_.cups().empty());
  EXPECT_EQ(session_.log().size(), 6U);
}

TEST_F(PaletteSessionTest, OneBaseCoatOnABench) {
  const CupId base = AddCup("Base", CupRole::kBaseCoat);
  CupDetails other;
  other.label = "Other";
  other.role = CupRole::kBaseCoat;
  EXPECT_FALSE(session_.Check(CupAdded{other}));
  const CupId cup = AddCup("Lagoon");
  EXPECT_FALSE(session_.Check(CupChanged{cup, other}));
  EXPECT_TRUE(session_.Check(CupChanged{base, other}));
  // Two programs at once may have added one each: the first stays it.
  Log(CupAdded{other});
  EXPECT_EQ(session_.BaseCoat()->id, base);
  EXPECT_EQ(session_.cups().size(), 2U);
}

TEST_F(PaletteSessionTest, SaysInOneSentenceWhatMakesNoSense) {
  const CupId cup = AddCup("Lagoon");
  const TestId test = Log(TestTaken{cup, Film(4.0), {}});
  CupDetails nameless;
  CupDetails huge;
  huge.label = "Huge";
  huge.volume_ml = 1e6;
  CupDetails odd_unit;
  odd_unit.label = "Odd";
  odd_unit.unit = DoseUnit{"drop", 0.0};
  BenchSettings wide;
  wide.band = 3.0;
  const EntryWhat wrong[] = {
      CupAdded{nameless},
      CupAdded{huge},
      CupAdded{odd_unit},
      CupChanged{99, huge},
      CupRemoved{99},
      TestTaken{99, Film(4.0), {}},
      TestSetAside{99},
      EventCorrected{test, TestEvent::kLaid, 1.0, {}},
      EventCorrected{test, TestEvent::kBreak, 11.0, {}},
      EventCorrected{test, TestEvent::kBreak, -1.0, {}},
      ThinnerAdded{cup, 0.0, ThinnerKind::kWater, {}, {}},
      ThinnerAdded{99, 1.0, ThinnerKind::kWater, {}, {}},
      ReservePutBack{cup, -1.0},
      Stirred{99},
      RoomMeasured{100.0},
      SettingsChanged{wide},
      NoteTaken{{}, ""},
      Undone{1},
      Redone{1}};
  for (const EntryWhat& what : wrong) {
    const Result<void> check = session_.Check(what);
    ASSERT_FALSE(check) << what.index();
    EXPECT_EQ(check.error().code, ErrorCode::kInvalidArgument);
    EXPECT_EQ(check.error().message.back(), '.') << what.index();
  }
  EXPECT_TRUE(session_.Check(EventCorrected{test, TestEvent::kLift, 1.0, {}}));
}

}  // namespace
}  // namespace flowkin
