#include "app/usecases/bench.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <filesystem>
#include <string>

#include "app/usecases/bench_analysis.h"
#include "core/base/random.h"

namespace flowkin {
namespace {

namespace fs = std::filesystem;

/// A bench in a store of its own; its clock is moved by hand.
class OnTheBench : public testing::Test {
 protected:
  void SetUp() override {
    std::string name =
        testing::TempDir() + "flowkin_bench_" + std::string(6, 'X');
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
    Reopen();
    ASSERT_TRUE(bench_->NewSession("Tuesday", now_));
  }
  void TearDown() override {
    bench_.reset();
    fs::remove_all(folder_);
  }

  std::string Path() const { return (folder_ / "brands.db").string(); }
  void Reopen() {
    auto bench = Bench::Open(Path());
    ASSERT_TRUE(bench) << bench.error().message;
    bench_.emplace(std::move(*bench));
  }
  void Wait(double minutes) {
    now_.ms += static_cast<std::int64_t>(std::llround(minutes * 60'000.0));
  }
  CupId Add(const std::string& label,
            CupRole role = CupRole::kColour,
            double volume_ml = 120.0) {
    CupDetails cup;
    cup.label = label;
    cup.role = role;
    cup.volume_ml = volume_ml;
    auto id = bench_->AddCup(cup, now_);
    EXPECT_TRUE(id) << id.error().message;
    return *id;
  }
  /// A puddle test whose rate tells the viscosity; `index` sets films of
  /// one cup 1 % apart.
  static FilmedTest Film(double viscosity, int index = 0) {
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
    const double ln = -std::log(viscosity) + 0.01 * ((index % 3) - 1);
    proxy.value = std::exp(ln);
    proxy.ln_value = {ln, 0.01};
    proxy.exponent = {-1.0, 0.0};
    m.proxies = {proxy};
    return film;
  }
  TestId Record(CupId cup, double viscosity, int films = 1) {
    TestId last = 0;
    for (int i = 0; i < films; ++i) {
      Wait(1.0);
      auto id = bench_->RecordTest(cup, Film(viscosity, i), now_);
      EXPECT_TRUE(id) << id.error().message;
      last = *id;
    }
    return last;
  }
  void UsePuddles() {
    BenchSettings settings = bench_->session().settings();
    settings.test = TestKind::kPuddle;
    ASSERT_TRUE(bench_->ChangeSettings(settings, now_));
  }
  Board State() {
    auto board = bench_->State(now_);
    EXPECT_TRUE(board);
    return *board;
  }
  BoardCup Card(CupId id) {
    for (BoardCup& card : State().cups) {
      if (card.id == id) return card;
    }
    ADD_FAILURE() << "no card of cup " << id;
    return {};
  }

  fs::path folder_;
  UtcTime now_{1'772'366'400'000};  // 2026-03-01T12:00:00Z
  std::optional<Bench> bench_;
};

TEST_F(OnTheBench, AnEmptyBenchSaysSo) {
  const Board board = State();
  EXPECT_TRUE(board.cups.empty());
  EXPECT_FALSE(board.may_pour);
  EXPECT_FALSE(board.next_cup);
  EXPECT_FALSE(board.can_undo);
  EXPECT_EQ(board.session_name, "Tuesday");
}

TEST_F(OnTheBench, LeadsFromTheFirstFilmToThePour) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId lagoon = Add("Lagoon");
  Board board = State();
  EXPECT_EQ(board.next_cup, base);
  EXPECT_EQ(Card(base).step.kind, StepKind::kStirAndFilm);
  EXPECT_EQ(Card(base).step.films, 3);
  EXPECT_EQ(Card(base).step.test, TestKind::kPuddle);

  Record(base, 1000.0);
  EXPECT_EQ(Card(base).step.reason, StepReason::kTooFewFilms);
  EXPECT_EQ(Card(base).step.films, 2);
  Record(base, 1000.0, 3);
  EXPECT_EQ(Card(base).step.kind, StepKind::kNothing);
  EXPECT_EQ(State().next_cup, lagoon);
  EXPECT_EQ(Card(lagoon).step.reason, StepReason::kNoFilm);

  // The paint: 6 per unit of ln volume, as the prior's median.
  double viscosity = 1800.0;
  double water_ml = 0.0;
  int additions = 0;
  for (int turn = 0; turn < 20; ++turn) {
    const BoardCup card = Card(lagoon);
    if (card.step.kind == StepKind::kNothing) break;
    EXPECT_FALSE(State().may_pour);
    EXPECT_EQ(State().next_cup, lagoon);
    if (card.step.kind == StepKind::kAdd) {
      ASSERT_TRUE(card.step.amount_ml);
      water_ml += *card.step.amount_ml;
      viscosity = 1800.0 * std::exp(-6.0 * std::log1p(water_ml / 120.0));
      Wait(1.0);
      ASSERT_TRUE(bench_->RecordAddition(
          lagoon, *card.step.amount_ml, ThinnerKind::kWater, {}, now_));
      EXPECT_EQ(Card(lagoon).step.kind, StepKind::kStirAndFilm);
      EXPECT_EQ(Card(lagoon).step.reason, StepReason::kNewAddition);
      EXPECT_FALSE(Card(lagoon).verdict);
      EXPECT_TRUE(Card(lagoon).before_addition);
      Wait(1.0);
      ASSERT_TRUE(bench_->RecordStir(lagoon, now_));
      EXPECT_EQ(Card(lagoon).step.kind, StepKind::kFilm);
      EXPECT_DOUBLE_EQ(*Card(lagoon).minutes_since_stirred, 0.0);
      ++additions;
    }
    Record(lagoon, viscosity);
  }
  EXPECT_GE(additions, 1);
  EXPECT_LE(additions, 5);
  const BoardCup done = Card(lagoon);
  EXPECT_TRUE(done.matched);
  EXPECT_EQ(done.verdict, MatchVerdict::kMatch);
  // Truly in the band.
  EXPECT_LT(viscosity, 1150.0);
  EXPECT_GT(viscosity, 1000.0 / 1.15);
  EXPECT_NEAR(*done.water_share, water_ml / (120.0 + water_ml), 1e-12);
  EXPECT_TRUE(State().may_pour);
  EXPECT_FALSE(State().next_cup);
}

TEST_F(OnTheBench, BringsEverythingBackWhenOpenedAgain) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId cup = Add("Lagoon");
  Record(base, 1000.0, 3);
  const TestId test = Record(cup, 1500.0);
  ASSERT_TRUE(bench_->SetAsideTest(test, now_));
  ASSERT_TRUE(bench_->Undo(now_));
  const BoardCup before = Card(cup);
  Reopen();
  EXPECT_FALSE(bench_->HasSession());
  ASSERT_TRUE(*bench_->OpenLastSession());
  const BoardCup after = Card(cup);
  ASSERT_TRUE(after.comparison);
  EXPECT_EQ(after.comparison->ratio.Ratio(), before.comparison->ratio.Ratio());
  EXPECT_EQ(after.comparison->interval.low, before.comparison->interval.low);
  EXPECT_EQ(after.step.kind, before.step.kind);
  EXPECT_EQ(after.step.amount_ml, before.step.amount_ml);
  EXPECT_TRUE(State().can_redo);
  ASSERT_TRUE(bench_->Redo(now_));
  EXPECT_EQ(Card(cup).films.front().set_aside, 1);
}

TEST_F(OnTheBench, TwoProgramsSeeEachOther) {
  auto other = Bench::Open(Path());
  ASSERT_TRUE(other);
  ASSERT_TRUE(*other->OpenLastSession());
  const CupId base = Add("Base", CupRole::kBaseCoat);
  EXPECT_FALSE(*bench_->Refresh());
  ASSERT_TRUE(*other->Refresh());
  EXPECT_FALSE(*other->Refresh());
  EXPECT_NE(other->session().FindCup(base), nullptr);

  // The other one writes; this one acts without having looked.
  CupDetails lagoon;
  lagoon.label = "Lagoon";
  ASSERT_TRUE(other->AddCup(lagoon, now_));
  const CupId ember = Add("Ember");
  EXPECT_EQ(bench_->session().cups().size(), 3U);
  ASSERT_TRUE(*other->Refresh());
  EXPECT_EQ(other->session().FindCup(ember)->details.label, "Ember");

  // What made sense before the other one acted may not any more.
  ASSERT_TRUE(other->RemoveCup(ember, now_));
  const auto stirred = bench_->RecordStir(ember, now_);
  ASSERT_FALSE(stirred);
  EXPECT_EQ(stirred.error().code, ErrorCode::kInvalidArgument);
  EXPECT_EQ(bench_->session().cups().size(), 2U);
}

TEST_F(OnTheBench, ACupThatHasStoodIsFilmedAgainBeforeThePour) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId cup = Add("Lagoon");
  Record(base, 1000.0, 3);
  Record(cup, 1000.0, 3);
  ASSERT_TRUE(Card(cup).matched);
  ASSERT_TRUE(State().may_pour);
  Wait(59.0);
  EXPECT_TRUE(State().may_pour);
  Wait(2.0);
  EXPECT_EQ(Card(cup).recheck, StepReason::kStood);
  EXPECT_EQ(Card(cup).step.kind, StepKind::kStirAndFilm);
  EXPECT_EQ(Card(cup).step.films, 1);
  EXPECT_FALSE(State().may_pour);
  EXPECT_EQ(State().next_cup, cup);
  // It has thickened: only the new sitting counts.
  Record(cup, 1400.0);
  EXPECT_EQ(Card(cup).comparison->num_cup, 1);
  EXPECT_NEAR(Card(cup).comparison->ratio.Ratio(), 1.4, 0.1);
  EXPECT_FALSE(Card(cup).matched);
}

TEST_F(OnTheBench, TheBaseCoatIsDueWithTimeAndWarmth) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId cup = Add("Lagoon");
  ASSERT_TRUE(bench_->SetRoomTemperature(20.0, now_));
  Record(base, 1000.0, 3);
  Record(cup, 1500.0);
  EXPECT_EQ(Card(base).recheck, StepReason::kNone);
  ASSERT_TRUE(bench_->SetRoomTemperature(21.9, now_));
  EXPECT_EQ(Card(base).recheck, StepReason::kNone);
  ASSERT_TRUE(bench_->SetRoomTemperature(22.5, now_));
  EXPECT_EQ(Card(base).recheck, StepReason::kRoomMoved);
  EXPECT_EQ(State().next_cup, base);
  // Warm paint is thinner; the cup's cold film is still held against the cold
  // films of the base coat, its warm one against the warm ones.
  Record(base, 800.0, 3);
  EXPECT_EQ(Card(base).recheck, StepReason::kNone);
  EXPECT_EQ(Card(cup).comparison->num_reference, 3);
  EXPECT_NEAR(Card(cup).comparison->ratio.Ratio(), 1.5, 0.05);
  Wait(121.0);
  EXPECT_EQ(Card(base).recheck, StepReason::kBaseCoatAged);
}

TEST_F(OnTheBench, AThinnedBaseCoatIsANewReference) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId cup = Add("Lagoon");
  Record(base, 1000.0, 3);
  Record(cup, 1500.0, 2);
  ASSERT_TRUE(bench_->RecordAddition(base, 3.0, ThinnerKind::kWater, {}, now_));
  EXPECT_EQ(Card(base).step.reason, StepReason::kNewAddition);
  EXPECT_EQ(State().next_cup, base);
  EXPECT_FALSE(Card(cup).verdict);
  EXPECT_EQ(Card(cup).step.kind, StepKind::kFilmBaseCoat);
  // The cup's own films still hold.
  Record(base, 750.0, 3);
  EXPECT_NEAR(Card(cup).comparison->ratio.Ratio(), 2.0, 0.07);
}

TEST_F(OnTheBench, TooThinGetsItsReserveBack) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  CupDetails details;
  details.label = "Lagoon";
  details.volume_ml = 100.0;
  details.reserve_ml = 30.0;
  const CupId cup = *bench_->AddCup(details, now_);
  Record(base, 1000.0, 3);
  Record(cup, 1600.0, 2);
  ASSERT_TRUE(bench_->RecordAddition(cup, 12.0, ThinnerKind::kWater, {}, now_));
  Record(cup, 1600.0 * std::exp(-6.0 * std::log1p(0.12)), 4);
  const BoardCup thin = Card(cup);
  ASSERT_EQ(thin.step.kind, StepKind::kPutReserveBack);
  EXPECT_EQ(thin.step.reason, StepReason::kThinner);
  ASSERT_TRUE(thin.step.amount_ml);
  EXPECT_GE(*thin.step.total_ml, *thin.step.amount_ml);
  ASSERT_TRUE(bench_->PutReserveBack(cup, *thin.step.amount_ml, now_));
  const BoardCup back = Card(cup);
  EXPECT_DOUBLE_EQ(*back.reserve_left_ml, 30.0 - *thin.step.amount_ml);
  EXPECT_DOUBLE_EQ(*back.volume_now_ml, 112.0 + *thin.step.amount_ml);
  // The history goes on as if that mix had been there from the start: the first
  // test stands, the one at the higher dilution is left out.
  Record(cup, 1000.0);
  const CupHistory history = Card(cup).request->cup;
  EXPECT_DOUBLE_EQ(history.volume_ml, 100.0 + *thin.step.amount_ml);
  ASSERT_EQ(history.tests.size(), 2U);
  EXPECT_EQ(history.tests[0].added_ml, 0.0);
  EXPECT_EQ(history.tests[0].films, 2U);
  EXPECT_DOUBLE_EQ(history.tests[1].added_ml, 12.0);
}

TEST_F(OnTheBench, AnotherThinnerStartsAnotherHistory) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId cup = Add("Lagoon");
  Record(base, 1000.0, 3);
  Record(cup, 2500.0);
  ASSERT_TRUE(bench_->RecordAddition(cup, 5.0, ThinnerKind::kWater, {}, now_));
  Record(cup, 2000.0);
  CupDetails details = bench_->session().FindCup(cup)->details;
  details.thinner = ThinnerKind::kMedium;
  ASSERT_TRUE(bench_->ChangeCup(cup, details, now_));
  BoardCup card = Card(cup);
  EXPECT_EQ(card.request->cup.thinner, ThinnerKind::kMedium);
  EXPECT_DOUBLE_EQ(card.request->cup.volume_ml, 125.0);
  ASSERT_EQ(card.request->cup.tests.size(), 1U);
  EXPECT_EQ(card.step.thinner, ThinnerKind::kMedium);
  ASSERT_TRUE(bench_->RecordAddition(cup, 8.0, ThinnerKind::kMedium, {}, now_));
  Record(cup, 1600.0);
  card = Card(cup);
  ASSERT_EQ(card.request->cup.tests.size(), 2U);
  EXPECT_DOUBLE_EQ(card.request->cup.tests[1].added_ml, 8.0);
  EXPECT_DOUBLE_EQ(*card.water_share, 5.0 / 133.0);
}

TEST_F(OnTheBench, NamesTheAmountInHerUnit) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  CupDetails details;
  details.label = "Lagoon";
  details.volume_ml = 120.0;
  details.unit = DoseUnit{"drop", 0.046};
  const CupId cup = *bench_->AddCup(details, now_);
  Record(base, 1000.0, 3);
  Record(cup, 1800.0, 2);
  const NextStep step = Card(cup).step;
  ASSERT_EQ(step.kind, StepKind::kAdd);
  ASSERT_TRUE(step.amount_units);
  EXPECT_EQ(*step.amount_units, std::floor(*step.amount_units));
  EXPECT_NEAR(*step.amount_units * 0.046, *step.amount_ml, 1e-9);
  EXPECT_EQ(step.unit->name, "drop");
  // What cannot be measured out finely enough is said, not rounded up.
  details.unit = DoseUnit{"ladle", 20.0};
  ASSERT_TRUE(bench_->ChangeCup(cup, details, now_));
  EXPECT_EQ(Card(cup).step.kind, StepKind::kUseFinerUnit);
  EXPECT_LT(*Card(cup).step.amount_ml, 20.0);
  // In a thimbleful it would be less than a drop: nobody measures that out.
  details.volume_ml = 1.0;
  details.unit = DoseUnit{"spoon", 1.0};
  ASSERT_TRUE(bench_->ChangeCup(cup, details, now_));
  EXPECT_EQ(Card(cup).step.kind, StepKind::kUseFinerUnit);
  EXPECT_FALSE(Card(cup).step.amount_ml);
  details.volume_ml = 120.0;
  // No volume, no amount.
  details.volume_ml.reset();
  ASSERT_TRUE(bench_->ChangeCup(cup, details, now_));
  EXPECT_EQ(Card(cup).step.kind, StepKind::kSayVolume);
}

TEST_F(OnTheBench, AMatchedCupTeachesTheBook) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  CupDetails details;
  details.label = "Lagoon";
  details.volume_ml = 120.0;
  details.paint = {"Quillmere", "Lagoon"};
  const CupId cup = *bench_->AddCup(details, now_);
  Record(base, 1000.0, 3);
  Record(cup, 1300.0, 2);
  EXPECT_FALSE(Card(cup).can_learn);
  EXPECT_FALSE(bench_->Learn(cup, now_));  // no addition yet
  const double water_ml = 120.0 * std::expm1(std::log(1.3) / 6.0);
  ASSERT_TRUE(
      bench_->RecordAddition(cup, water_ml, ThinnerKind::kWater, {}, now_));
  Record(cup, 1000.0, 3);
  ASSERT_TRUE(Card(cup).can_learn);
  EXPECT_FALSE(Card(cup).brand_known);
  const auto report = bench_->Learn(cup, now_);
  ASSERT_TRUE(report) << report.error().message;
  EXPECT_EQ(report->cups, 1);
  EXPECT_EQ(report->tests, 2);
  EXPECT_FALSE(Card(cup).can_learn);
  EXPECT_TRUE(Card(cup).learned_at);
  // Undo goes past it to the last action.
  ASSERT_TRUE(bench_->Undo(now_));
  EXPECT_TRUE(Card(cup).learned_at);
  details.label = "Another Lagoon";
  const CupId next = *bench_->AddCup(details, now_);
  Record(next, 1300.0, 2);
  EXPECT_TRUE(Card(next).brand_known);
}

TEST_F(OnTheBench, FilmsThatSeeNothingInCommonSayWhy) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  const CupId cup = Add("Lagoon");
  Record(base, 1000.0, 3);
  FilmedTest film = Film(1500.0);
  film.measurement.proxies[0].unit = "px8/s";  // no ruler in this one
  Wait(1.0);
  ASSERT_TRUE(bench_->RecordTest(cup, film, now_));
  BoardCup card = Card(cup);
  ASSERT_TRUE(card.comparison);
  EXPECT_EQ(card.comparison->outcome, Outcome::kRefused);
  EXPECT_FALSE(card.comparison->reason.empty());
  EXPECT_EQ(card.step.reason, StepReason::kNotComparable);
  EXPECT_FALSE(card.dose);
  // A refused film does not count, and is counted as such.
  film.measurement.outcome = Outcome::kRefused;
  ASSERT_TRUE(bench_->RecordTest(cup, film, now_));
  EXPECT_EQ(Card(cup).films.front().refused, 1);
}

TEST_F(OnTheBench, FilmsOfClosedSessionsMayGo) {
  UsePuddles();
  const CupId base = Add("Base", CupRole::kBaseCoat);
  Record(base, 1000.0);
  EXPECT_THAT(*bench_->NeededFilms(), testing::ElementsAre("film.mp4"));
  ASSERT_TRUE(bench_->CloseSession(now_));
  EXPECT_THAT(*bench_->NeededFilms(), testing::IsEmpty());
  EXPECT_FALSE(*bench_->OpenLastSession());
  ASSERT_TRUE(bench_->ReopenSession(now_));
  EXPECT_THAT(*bench_->NeededFilms(), testing::SizeIs(1));
}

}  // namespace
}  // namespace flowkin
