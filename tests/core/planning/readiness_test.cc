#include "core/planning/readiness.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/base/random.h"
#include "core/planning/faults.h"
#include "core/planning/practice.h"

namespace flowkin {
namespace {

using testing::HasSubstr;

CupFacts Matched(const std::string& name) {
  CupFacts cup;
  cup.name = name;
  cup.ratio = Span{0.95, 1.0, 1.06};
  cup.water_share = 0.06;
  cup.minutes_since_film = 10.0;
  cup.minutes_since_stirred = 5.0;
  cup.temperature_c = 21.0;
  return cup;
}

DayFacts Table() {
  DayFacts facts;
  facts.cups = {Matched("Chalk"), Matched("Lagoon")};
  facts.room_c = 21.0;
  facts.base_temperature_c = 21.0;
  facts.dry_mm = 0.35;
  return facts;
}

/// The one risk of a table on which only `spoil` is amiss.
std::vector<Risk> RisksOf(const std::function<void(DayFacts&)>& spoil) {
  DayFacts facts = Table();
  spoil(facts);
  const Result<Readiness> readiness = CheckReadiness(facts);
  EXPECT_TRUE(readiness);
  return readiness ? readiness->risks : std::vector<Risk>();
}

TEST(Readiness, AMatchedTableMayBePoured) {
  const Result<Readiness> readiness = CheckReadiness(Table());
  ASSERT_TRUE(readiness);
  EXPECT_TRUE(readiness->ready);
  EXPECT_TRUE(readiness->risks.empty());
  EXPECT_TRUE(readiness->not_known.empty());
}

TEST(Readiness, EveryRiskIsFoundByItself) {
  struct Case {
    RiskKind kind;
    bool holds_back;
    std::function<void(DayFacts&)> spoil;
  };
  const std::vector<Case> cases = {
      {RiskKind::kNotFilmed,
       true,
       [](DayFacts& f) { f.cups[0].ratio.reset(); }},
      {RiskKind::kChangedSinceFilm,
       true,
       [](DayFacts& f) { f.cups[0].changed_since_film = true; }},
      {RiskKind::kTooThick,
       true,
       [](DayFacts& f) {
         f.cups[0].ratio = Span{1.2, 1.3, 1.4};
       }},
      {RiskKind::kTooThin,
       true,
       [](DayFacts& f) {
         f.cups[0].ratio = Span{0.7, 0.75, 0.8};
       }},
      {RiskKind::kUndecided,
       true,
       [](DayFacts& f) {
         f.cups[0].ratio = Span{0.9, 1.1, 1.3};
       }},
      {RiskKind::kMuchWater,
       false,
       [](DayFacts& f) {
         f.cups[0].water_share = 0.22;
         f.cups[1].water_share = 0.10;
       }},
      {RiskKind::kUnevenWater,
       false,
       [](DayFacts& f) {
         f.cups[0].water_share = 0.02;
         f.cups[1].water_share = 0.19;
       }},
      {RiskKind::kFilmTooOld,
       true,
       [](DayFacts& f) { f.cups[0].minutes_since_film = 61.0; }},
      {RiskKind::kStoodOpen,
       false,
       [](DayFacts& f) { f.cups[0].minutes_since_stirred = 45.0; }},
      {RiskKind::kTemperature,
       true,
       [](DayFacts& f) { f.cups[0].temperature_c = 24.0; }},
      {RiskKind::kColdRoom, false, [](DayFacts& f) { f.room_c = 16.0; }},
      {RiskKind::kThickFilm, false, [](DayFacts& f) { f.dry_mm = 0.6; }},
  };
  for (const Case& c : cases) {
    const std::vector<Risk> risks = RisksOf(c.spoil);
    ASSERT_EQ(risks.size(), 1u) << RiskKindName(c.kind);
    EXPECT_EQ(risks[0].kind, c.kind) << RiskKindName(risks[0].kind);
    EXPECT_EQ(risks[0].holds_back, c.holds_back) << RiskKindName(c.kind);
    EXPECT_FALSE(risks[0].says.empty());
    EXPECT_FALSE(risks[0].evidence.empty()) << "no claim without its ground";
  }
}

TEST(Readiness, AMatchThatTheComparisonFoundStands) {
  EXPECT_TRUE(RisksOf([](DayFacts& f) {
                f.cups[0].ratio = Span{0.82, 0.96, 1.12};
                f.cups[0].matches = true;
              }).empty());
}

TEST(Readiness, ATargetOfItsOwnCounts) {
  DayFacts facts = Table();
  facts.cups[1].activator = true;
  facts.cups[1].target = 0.8;
  facts.cups[1].ratio = Span{0.76, 0.8, 0.84};
  const Result<Readiness> readiness = CheckReadiness(facts);
  ASSERT_TRUE(readiness);
  EXPECT_TRUE(readiness->ready);
}

TEST(Readiness, NeighboursFarApartAreNamed) {
  const std::vector<Risk> risks = RisksOf([](DayFacts& f) {
    f.cups[0].ratio = Span{1.5, 1.6, 1.7};
    f.cups[1].ratio = Span{0.75, 0.8, 0.84};
  });
  const auto apart =
      std::find_if(risks.begin(), risks.end(), [](const Risk& r) {
        return r.kind == RiskKind::kUnevenFlow;
      });
  ASSERT_NE(apart, risks.end());
  EXPECT_THAT(apart->says, HasSubstr("2.00 times"));
  EXPECT_THAT(apart->evidence, HasSubstr("nobody has published"));
}

TEST(Readiness, WhatIsNotKnownIsSaid) {
  DayFacts facts;
  CupFacts cup;
  cup.name = "Lagoon";
  cup.ratio = Span{0.95, 1.0, 1.05};
  facts.cups = {cup};
  const Result<Readiness> readiness = CheckReadiness(facts);
  ASSERT_TRUE(readiness);
  EXPECT_EQ(readiness->not_known.size(), 5u);
  EXPECT_EQ(CheckReadiness(DayFacts{}).error().code, ErrorCode::kRefused);
  facts.cups[0].ratio = Span{1.2, 1.0, 1.5};
  EXPECT_EQ(CheckReadiness(facts).error().code, ErrorCode::kInvalidArgument);
  facts.cups[0].ratio.reset();
  facts.cups[0].water_share = std::nan("");
  EXPECT_EQ(CheckReadiness(facts).error().code, ErrorCode::kInvalidArgument);
}

Standing StandingIn(Fault fault, const DayFacts& facts, const std::string& of) {
  for (const Cause& cause : LikelyCauses(fault, facts)) {
    if (cause.says.find(of) != std::string::npos) return cause.standing;
  }
  ADD_FAILURE() << "no cause '" << of << "'";
  return Standing::kUnknown;
}

TEST(Faults, EveryFaultHasCausesAndAName) {
  for (const Fault fault : AllFaults()) {
    EXPECT_EQ(FaultFromName(FaultName(fault)), fault);
    EXPECT_FALSE(LikelyCauses(fault, DayFacts{}).empty());
    // Nothing measured, nothing claimed.
    for (const Cause& cause : LikelyCauses(fault, DayFacts{})) {
      EXPECT_EQ(cause.standing, Standing::kUnknown);
      EXPECT_EQ(cause.evidence, "");
    }
  }
  EXPECT_FALSE(FaultFromName("haunted"));
}

TEST(Faults, CausesStandAsTheDayWas) {
  DayFacts facts = Table();
  EXPECT_EQ(StandingIn(Fault::kCrazing, facts, "film was thick"),
            Standing::kUnknown);
  facts.dry_mm = 0.5;
  EXPECT_EQ(StandingIn(Fault::kCrazing, facts, "film was thick"),
            Standing::kFits);
  EXPECT_EQ(LikelyCauses(Fault::kCrazing, facts)[0].standing, Standing::kFits);
  facts.dry_mm = 0.2;
  EXPECT_EQ(StandingIn(Fault::kCrazing, facts, "film was thick"),
            Standing::kAgainst);
  EXPECT_EQ(StandingIn(Fault::kSlid, facts, "thinner than"),
            Standing::kAgainst);
  facts.cups[0].ratio = Span{0.5, 0.6, 0.7};
  EXPECT_EQ(StandingIn(Fault::kSlid, facts, "thinner than"), Standing::kFits);
  facts.cups[0].ratio = Span{0.5, 0.8, 1.2};
  EXPECT_EQ(StandingIn(Fault::kSlid, facts, "thinner than"),
            Standing::kUnknown);
  facts.cups[0].ratio = Span{1.8, 2.0, 2.2};
  EXPECT_EQ(StandingIn(Fault::kSunk, facts, "thicker than"), Standing::kFits);
  EXPECT_EQ(StandingIn(Fault::kCracks, facts, "another rate"), Standing::kFits);
  EXPECT_EQ(StandingIn(Fault::kLostCells, facts, "activator was too thin"),
            Standing::kUnknown)
      << "there was no activator";
  facts.strained = false;
  EXPECT_EQ(StandingIn(Fault::kPits, facts, "Straining"), Standing::kFits);
  facts.rested_min = 800.0;
  EXPECT_EQ(StandingIn(Fault::kPits, facts, "rested too short"),
            Standing::kAgainst);
}

std::vector<JudgedPour> Pours(int count, double ln_band, std::uint64_t seed) {
  Random random(seed);
  std::vector<JudgedPour> pours;
  for (int i = 0; i < count; ++i) {
    const double off = std::exp(random.Uniform(std::log(0.03), std::log(1.2)));
    const double rate = off > ln_band ? 0.85 : 0.1;
    pours.push_back({off, random.Uniform() < rate});
  }
  return pours;
}

TEST(LearnBand, SaysTooFewToTell) {
  EXPECT_FALSE(LearnBand({}).told);
  EXPECT_NEAR(LearnBand({}).evidence, 1.0, 1e-12);  // no data, no evidence
  EXPECT_FALSE(LearnBand({{0.05, false}, {0.1, false}, {0.6, true}}).told);
  // All good: nothing to learn a limit from.
  EXPECT_FALSE(LearnBand(std::vector<JudgedPour>(50, {0.2, false})).told);
}

TEST(LearnBand, FindsTheBandOfManyPoursAndCoversIt) {
  const double truth = std::expm1(0.3);
  int told = 0, covered = 0;
  constexpr int kTrials = 40;
  for (int trial = 0; trial < kTrials; ++trial) {
    const LearnedBand band =
        LearnBand(Pours(80, 0.3, 100 + static_cast<std::uint64_t>(trial)));
    told += band.told ? 1 : 0;
    covered +=
        band.band_interval.low <= truth && truth <= band.band_interval.high;
    EXPECT_EQ(band.told, band.band.has_value());
  }
  EXPECT_GE(told, kTrials - 1);
  // Binomial at 0.95, four standard deviations: 32 of 40.
  EXPECT_GE(covered, 32);
}

// Poor pictures that have nothing to do with flow: it must not see a limit.
TEST(LearnBand, SeldomSeesALimitWhereThereIsNone) {
  int told = 0;
  constexpr int kTrials = 200;
  for (int trial = 0; trial < kTrials; ++trial) {
    Random random(500 + static_cast<std::uint64_t>(trial));
    std::vector<JudgedPour> pours;
    for (int i = 0; i < 20; ++i) {
      pours.push_back({random.Uniform(0.02, 1.0), random.Uniform() < 0.3});
    }
    told += LearnBand(pours).told ? 1 : 0;
  }
  // Evidence above 10 comes up by chance in at most one of ten cases (Markov).
  EXPECT_LE(told, kTrials / 10);
}

TEST(LearnBand, HoldsThousandsOfPours) {
  const LearnedBand band = LearnBand(Pours(3000, 0.3, 9));
  EXPECT_TRUE(std::isfinite(*band.band));
  constexpr double kGrid = 0.06;  // two steps of the grid
  EXPECT_NEAR(std::log(*band.band / std::expm1(0.3)), 0.0, 3 * kGrid);
}

TEST(LearnTarget, IsTheMeanOfGoodPours) {
  EXPECT_FALSE(LearnTarget({{0.1, 0.05}, {0.2, 0.05}}).told);
  const LearnedTarget target = LearnTarget({{std::log(0.8), 0.1},
                                            {std::log(0.8), 0.1},
                                            {std::log(0.9), 0.1},
                                            {std::log(0.7), 0.1}});
  ASSERT_TRUE(target.told);
  EXPECT_NEAR(target.ratio, std::pow(0.8 * 0.8 * 0.9 * 0.7, 0.25), 1e-12);
  EXPECT_LT(target.interval.low, target.ratio);
  EXPECT_GT(target.interval.high, target.ratio);
}

}  // namespace
}  // namespace flowkin
