#include "core/planning/readiness.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace flowkin {
namespace {

std::string Number(double value, int decimals = 2) {
  char text[64];
  std::snprintf(text, sizeof(text), "%.*f", decimals, value);
  return text;
}

std::string Percent(double share) { return Number(100.0 * share, 0) + " %"; }

bool Within(double value, double low, double high) {
  return value >= low && value <= high;  // false for not-a-number
}

// Shares of added water at which makers and teachers warn (common practice, no
// source): 20 to 30 %, at the most 50 %.
constexpr double kMuchWater = 0.20;
constexpr double kVeryMuchWater = 0.30;
constexpr double kOutsideAllAdvice = 0.50;
// Own guess: what one cup's added water may differ from the driest cup's.
constexpr double kUnevenWater = 0.15;
// Between neighbours, sinking and sliding are told of from here on.
constexpr double kFarApart = 1.5;
// Paints change by 2 to 10 % a degree; ASTM D4212 and its kin name the upper
// end. Two degrees can hide or feign a whole match band.
constexpr double kWarmer_c = 2.0;
constexpr double kOpen_min = 30.0;

void CheckFlow(const CupFacts& cup, double band, Readiness& out) {
  const auto add = [&](RiskKind kind,
                       bool holds_back,
                       std::string says,
                       std::string evidence,
                       Basis basis) {
    out.risks.push_back({kind,
                         cup.name,
                         holds_back,
                         std::move(says),
                         std::move(evidence),
                         basis});
  };
  if (!cup.ratio) {
    add(RiskKind::kNotFilmed,
        true,
        "Nobody has measured how it flows.",
        "no test of this cup",
        Basis::kMeasured);
    return;
  }
  const Span& ratio = *cup.ratio;
  const std::string measured = Number(ratio.start) + " times the base coat (" +
                               Number(ratio.low) + " to " + Number(ratio.high) +
                               "), aimed at " + Number(cup.target);
  if (cup.changed_since_film) {
    add(RiskKind::kChangedSinceFilm,
        true,
        "Something was added since its last test, so its flow is not known.",
        "last test: " + measured,
        Basis::kMeasured);
    return;
  }
  const double high = cup.target * (1.0 + band);
  const double low = cup.target / (1.0 + band);
  const double off = ratio.start / cup.target;
  if (ratio.low > high) {
    add(RiskKind::kTooThick,
        true,
        "It flows " + Number(off) +
            " times as slowly as aimed at: it may stand on its neighbours, "
            "sink into them as lumps, or leave a thicker film that dries "
            "later.",
        measured,
        Basis::kDerived);
  } else if (ratio.high < low) {
    add(RiskKind::kTooThin,
        true,
        "It flows " + Number(1.0 / off) +
            " times as fast as aimed at: it may run off with the tilt, slide "
            "from what lies under it, or blend to mud.",
        measured,
        Basis::kDerived);
  } else if (!cup.matches && (ratio.low < low || ratio.high > high)) {
    const bool most_inside = off >= 1.0 / (1.0 + band) && off <= 1.0 + band;
    add(RiskKind::kUndecided,
        true,
        most_inside ? "It may match, but its tests are not exact enough to "
                      "tell: film it once more."
                    : "Its tests are not exact enough to tell: film it once "
                      "more.",
        measured,
        Basis::kMeasured);
  }
}

void CheckWater(const CupFacts& cup, Readiness& out) {
  if (!cup.water_share || *cup.water_share < kMuchWater) return;
  const double share = *cup.water_share;
  std::string says =
      "Much water: the binder is spread thin, and the film may turn out "
      "chalky or weak.";
  if (share >= kOutsideAllAdvice) {
    says =
        "More water than any advice allows: the film may be weak and hold "
        "badly.";
  } else if (share >= kVeryMuchWater) {
    says = "Very much water: a chalky, weak film and poor hold are warned of.";
  }
  out.risks.push_back({RiskKind::kMuchWater,
                       cup.name,
                       share >= kOutsideAllAdvice,
                       says,
                       Percent(share) +
                           " added water; limits of 20 to 30 % are commonly "
                           "quoted, none is proven for pours",
                       Basis::kCommonPractice});
}

void CheckTime(const CupFacts& cup, const DayFacts& facts, Readiness& out) {
  if (cup.minutes_since_film && *cup.minutes_since_film > facts.recheck_min) {
    out.risks.push_back(
        {RiskKind::kFilmTooOld,
         cup.name,
         true,
         "It has stood since its test and may have thickened: stir it and "
         "test it again.",
         Number(*cup.minutes_since_film, 0) +
             " minutes since its last test; an open cup dries by a few per "
             "cent of its flow an hour",
         Basis::kDerived});
  } else if (cup.minutes_since_stirred &&
             *cup.minutes_since_stirred > kOpen_min) {
    out.risks.push_back({RiskKind::kStoodOpen,
                         cup.name,
                         false,
                         "It has stood: stir it before it is poured.",
                         Number(*cup.minutes_since_stirred, 0) +
                             " minutes since it was stirred",
                         Basis::kCommonPractice});
  }
  if (cup.temperature_c && facts.base_temperature_c) {
    const double warmer = *cup.temperature_c - *facts.base_temperature_c;
    if (std::fabs(warmer) > kWarmer_c) {
      out.risks.push_back(
          {RiskKind::kTemperature,
           cup.name,
           true,
           std::string("It is ") + Number(std::fabs(warmer), 1) + " °C " +
               (warmer > 0 ? "warmer" : "colder") +
               " than the base coat was; its flow will change as it comes to "
               "the room's temperature.",
           "paints change by 2 to 10 % a degree (the upper end after ASTM "
           "D4212)",
           Basis::kDerived});
    }
  }
}

void CheckTogether(const DayFacts& facts, Readiness& out) {
  const CupFacts* thickest = nullptr;
  const CupFacts* thinnest = nullptr;
  const CupFacts* wettest = nullptr;
  const CupFacts* driest = nullptr;
  for (const CupFacts& cup : facts.cups) {
    if (cup.ratio && !cup.activator) {
      const auto off = [](const CupFacts* c) {
        return c->ratio->start / c->target;
      };
      if (thickest == nullptr || off(&cup) > off(thickest)) thickest = &cup;
      if (thinnest == nullptr || off(&cup) < off(thinnest)) thinnest = &cup;
    }
    if (cup.water_share) {
      if (wettest == nullptr || *cup.water_share > *wettest->water_share) {
        wettest = &cup;
      }
      if (driest == nullptr || *cup.water_share < *driest->water_share) {
        driest = &cup;
      }
    }
  }
  if (thickest != nullptr && thickest != thinnest) {
    const double low = thickest->ratio->low / thickest->target /
                       (thinnest->ratio->high / thinnest->target);
    const double apart = thickest->ratio->start / thickest->target /
                         (thinnest->ratio->start / thinnest->target);
    if (low > kFarApart) {
      out.risks.push_back(
          {RiskKind::kUnevenFlow,
           "",
           true,
           "'" + thickest->name + "' flows " + Number(apart) +
               " times as slowly as '" + thinnest->name +
               "', both against what they aim at: where they meet, one may "
               "sink or slide.",
           "measured ratios; that this happens from 1.5 to 2 on is told in "
           "words, nobody has published numbers",
           Basis::kCommonPractice});
    }
  }
  if (wettest != nullptr && wettest != driest &&
      *wettest->water_share - *driest->water_share > kUnevenWater) {
    out.risks.push_back(
        {RiskKind::kUnevenWater,
         "",
         false,
         "'" + wettest->name + "' holds much more added water than '" +
             driest->name +
             "': it dries later and thinner, and parts that dry at another "
             "rate are told to pull cracks open.",
         Percent(*wettest->water_share) + " against " +
             Percent(*driest->water_share) +
             "; how much is too much nobody has published",
         Basis::kCommonPractice});
  }
  if (facts.room_c && *facts.room_c < 18.0) {
    out.risks.push_back(
        {RiskKind::kColdRoom,
         "",
         *facts.room_c < 10.0,
         *facts.room_c < 10.0
             ? "The room is so cold that the film may not form."
             : "The room is cold: it dries slowly and skins over wet paint.",
         Number(*facts.room_c, 1) +
             " °C; 18 to 24 are the usual room, below 10 the binder's lowest "
             "film-forming temperature is near",
         Basis::kCommonPractice});
  }
  if (facts.dry_mm && *facts.dry_mm > 0.4) {
    out.risks.push_back(
        {RiskKind::kThickFilm,
         "",
         false,
         "The film is thick: it skins over while it is wet below, which is "
         "the first cause named for crazing.",
         Number(*facts.dry_mm) +
             " mm dry; wall paint is asked to bear about 0.4 mm without "
             "cracks",
         Basis::kCommonPractice});
  }
}

}  // namespace

const char* BasisName(Basis basis) {
  switch (basis) {
    case Basis::kMeasured:
      return "measured";
    case Basis::kDerived:
      return "derived";
    case Basis::kCommonPractice:
      return "common practice";
  }
  return "";
}

const char* RiskKindName(RiskKind kind) {
  switch (kind) {
    case RiskKind::kNotFilmed:
      return "not filmed";
    case RiskKind::kChangedSinceFilm:
      return "changed since filmed";
    case RiskKind::kUndecided:
      return "undecided";
    case RiskKind::kTooThick:
      return "too thick";
    case RiskKind::kTooThin:
      return "too thin";
    case RiskKind::kMuchWater:
      return "much water";
    case RiskKind::kUnevenWater:
      return "uneven water";
    case RiskKind::kUnevenFlow:
      return "uneven flow";
    case RiskKind::kFilmTooOld:
      return "film too old";
    case RiskKind::kStoodOpen:
      return "stood";
    case RiskKind::kTemperature:
      return "temperature";
    case RiskKind::kColdRoom:
      return "cold room";
    case RiskKind::kThickFilm:
      return "thick film";
  }
  return "";
}

Result<void> Validate(const DayFacts& facts) {
  const auto bad = [](const std::string& what) {
    return Error{ErrorCode::kInvalidArgument, what};
  };
  if (!Within(facts.band, 0.02, 1.0)) {
    return bad("The match band must lie between 0.02 and 1.");
  }
  if (!Within(facts.recheck_min, 1.0, 1440.0)) {
    return bad("A test counts for 1 to 1440 minutes.");
  }
  for (const CupFacts& cup : facts.cups) {
    const std::string what = "'" + cup.name + "': ";
    if (cup.ratio &&
        !(cup.ratio->low > 0.0 && cup.ratio->low <= cup.ratio->start &&
          cup.ratio->start <= cup.ratio->high && cup.ratio->high < 1e6)) {
      return bad(what +
                 "its ratio must be above 0 and lie within its interval.");
    }
    if (!Within(cup.target, 0.2, 5.0)) {
      return bad(what + "its target must lie between 0.2 and 5.");
    }
    if (cup.water_share && !Within(*cup.water_share, 0.0, 1.0)) {
      return bad(what + "its share of water must lie between 0 and 1.");
    }
    for (const std::optional<double>& minutes :
         {cup.minutes_since_film, cup.minutes_since_stirred}) {
      if (minutes && !Within(*minutes, 0.0, 1e7)) {
        return bad(what + "minutes must not be negative.");
      }
    }
    if (cup.temperature_c && !Within(*cup.temperature_c, -20.0, 100.0)) {
      return bad(what + "its temperature must lie between -20 and 100 °C.");
    }
  }
  struct Fact {
    std::optional<double> value;
    double low, high;
    const char* what;
  };
  for (const Fact& fact :
       {Fact{facts.room_c, -20, 60, "The room must be -20 to 60 °C warm."},
        Fact{facts.base_temperature_c,
             -20,
             100,
             "The base coat must be -20 to 100 °C warm."},
        Fact{facts.humidity_percent, 0, 100, "Humidity must be 0 to 100 %."},
        Fact{facts.wet_mm, 0, 100, "The film must be 0 to 100 mm thick."},
        Fact{facts.dry_mm, 0, 100, "The film must be 0 to 100 mm thick."},
        Fact{facts.rested_min, 0, 1e6, "Rest must not be negative."}}) {
    if (fact.value && !Within(*fact.value, fact.low, fact.high)) {
      return bad(fact.what);
    }
  }
  return {};
}

Result<Readiness> CheckReadiness(const DayFacts& facts) {
  if (const Result<void> valid = Validate(facts); !valid) {
    return valid.error();
  }
  if (facts.cups.empty()) {
    return Error{ErrorCode::kRefused,
                 "There is no cup to check; put the cups on the bench first."};
  }
  Readiness out;
  bool water = true, time = true, temperature = true;
  for (const CupFacts& cup : facts.cups) {
    CheckFlow(cup, facts.band, out);
    CheckWater(cup, out);
    CheckTime(cup, facts, out);
    water = water && cup.water_share;
    time = time && (cup.minutes_since_film || !cup.ratio);
    temperature = temperature && cup.temperature_c && facts.base_temperature_c;
  }
  CheckTogether(facts, out);
  if (!water) out.not_known.emplace_back("added water of every cup");
  if (!time) out.not_known.emplace_back("how long ago every cup was tested");
  if (!temperature) out.not_known.emplace_back("temperature of every cup");
  if (!facts.room_c) out.not_known.emplace_back("temperature of the room");
  if (!facts.dry_mm) out.not_known.emplace_back("thickness of the film");
  out.ready = std::none_of(out.risks.begin(),
                           out.risks.end(),
                           [](const Risk& risk) { return risk.holds_back; });
  std::stable_sort(
      out.risks.begin(), out.risks.end(), [](const Risk& a, const Risk& b) {
        return a.holds_back && !b.holds_back;
      });
  return out;
}

}  // namespace flowkin
