#include "core/planning/faults.h"

#include <algorithm>
#include <cstdio>
#include <utility>

namespace flowkin {
namespace {

std::string Number(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof(text), "%.*f", decimals, value);
  return text;
}

Cause Unmeasured(std::string says) {
  return {std::move(says), Standing::kUnknown, ""};
}

/// Judges `value` where it is known: it fits beyond one limit and speaks
/// against the cause beyond the other; in between it tells nothing.
Cause Judge(std::string says,
            const std::optional<double>& value,
            double fits_from,
            double against_from,
            const std::string& unit,
            int decimals) {
  if (!value) return Unmeasured(std::move(says));
  const bool upwards = fits_from >= against_from;
  Standing standing = Standing::kUnknown;
  if (upwards ? *value >= fits_from : *value <= fits_from) {
    standing = Standing::kFits;
  } else if (upwards ? *value <= against_from : *value >= against_from) {
    standing = Standing::kAgainst;
  }
  return {std::move(says), standing, Number(*value, decimals) + " " + unit};
}

Cause ThickFilm(const DayFacts& facts) {
  if (!facts.dry_mm && facts.wet_mm) {
    return Judge("The film was thick.", facts.wet_mm, 1.9, 0.8, "mm wet", 2);
  }
  return Judge("The film was thick.", facts.dry_mm, 0.4, 0.25, "mm dry", 2);
}

Cause ColdRoom(const DayFacts& facts) {
  return Judge(
      "The room was cold.", facts.room_c, 15.0, 18.0, "°C in the room", 1);
}

Cause DryAir(const DayFacts& facts) {
  return Judge("Dry air, a fan or the sun dried the skin too fast.",
               facts.humidity_percent,
               40.0,
               50.0,
               "% humidity",
               0);
}

Cause MuchWater(const DayFacts& facts) {
  std::optional<double> most;
  for (const CupFacts& cup : facts.cups) {
    if (cup.water_share) {
      most = std::max(most.value_or(0.0), 100.0 * *cup.water_share);
    }
  }
  return Judge("Too much water spread the binder thin.",
               most,
               20.0,
               10.0,
               "% added water in the wettest cup",
               0);
}

/// Beyond the limit with the whole interval, within it with the whole interval,
/// or not told.
Standing StandingOf(double low, double high, double limit) {
  if (low > limit) return Standing::kFits;
  return high <= limit ? Standing::kAgainst : Standing::kUnknown;
}

/// How far a cup flows off its target to one side, above 1 where it does.
Span OffTarget(const CupFacts& cup, bool thick) {
  const Span& ratio = *cup.ratio;
  if (thick) {
    return {ratio.low / cup.target,
            ratio.start / cup.target,
            ratio.high / cup.target};
  }
  return {cup.target / ratio.high,
          cup.target / ratio.start,
          cup.target / ratio.low};
}

/// A cause that wants some cup on one side of its target.
Cause FlowedOff(std::string says,
                const DayFacts& facts,
                bool thick,
                bool activators) {
  const CupFacts* worst = nullptr;
  for (const CupFacts& cup : facts.cups) {
    if (!cup.ratio || cup.activator != activators) continue;
    if (worst == nullptr ||
        OffTarget(cup, thick).start > OffTarget(*worst, thick).start) {
      worst = &cup;
    }
  }
  if (worst == nullptr) return Unmeasured(std::move(says));
  const Span off = OffTarget(*worst, thick);
  return {std::move(says),
          StandingOf(off.low, off.high, 1.0 + facts.band),
          "'" + worst->name + "' " + Number(worst->ratio->start, 2) + " (" +
              Number(worst->ratio->low, 2) + " to " +
              Number(worst->ratio->high, 2) + "), aimed at " +
              Number(worst->target, 2)};
}

/// A cause that wants two colours to flow unlike.
Cause Uneven(std::string says, const DayFacts& facts) {
  const CupFacts* thick = nullptr;
  const CupFacts* thin = nullptr;
  for (const CupFacts& cup : facts.cups) {
    if (!cup.ratio || cup.activator) continue;
    const double off = OffTarget(cup, true).start;
    if (thick == nullptr || off > OffTarget(*thick, true).start) thick = &cup;
    if (thin == nullptr || off < OffTarget(*thin, true).start) thin = &cup;
  }
  if (thick == nullptr || thick == thin) return Unmeasured(std::move(says));
  const Span high = OffTarget(*thick, true);
  const Span low = OffTarget(*thin, true);
  return {std::move(says),
          StandingOf(high.low / low.high,
                     high.high / low.low,
                     (1.0 + facts.band) * (1.0 + facts.band)),
          "'" + thick->name + "' and '" + thin->name + "' a factor of " +
              Number(high.start / low.start, 2) + " apart"};
}

Cause Air(const DayFacts& facts) {
  return Judge("The mixes rested too short for the bubbles to rise.",
               facts.rested_min,
               10.0,
               720.0,
               "minutes of rest",
               0);
}

Cause Straining(const DayFacts& facts) {
  if (!facts.strained) return Unmeasured("Straining was skipped.");
  return {"Straining was skipped.",
          *facts.strained ? Standing::kAgainst : Standing::kFits,
          *facts.strained ? "the mixes were strained"
                          : "the mixes were not strained"};
}

struct Named {
  Fault fault;
  const char* name;
};
constexpr Named kNames[] = {{Fault::kCrazing, "crazing"},
                            {Fault::kCracks, "cracks"},
                            {Fault::kChalky, "chalky"},
                            {Fault::kSlid, "slid"},
                            {Fault::kSunk, "sunk"},
                            {Fault::kMuddy, "muddy"},
                            {Fault::kLostCells, "lost cells"},
                            {Fault::kPits, "pits"},
                            {Fault::kSag, "sag"},
                            {Fault::kBare, "bare"},
                            {Fault::kPeeling, "peeling"}};

std::vector<Cause> NamedCauses(Fault fault, const DayFacts& facts) {
  switch (fault) {
    case Fault::kCrazing:
      return {ThickFilm(facts),
              DryAir(facts),
              ColdRoom(facts),
              Unmeasured("It dried on a slope, so that pools stood deeper."),
              MuchWater(facts),
              Uneven("Layers of unlike flow dried at unlike rates.", facts)};
    case Fault::kCracks:
      return {Unmeasured("The dry film was bent."),
              ColdRoom(facts),
              Unmeasured("It was poured over a picture that was not dry."),
              Uneven("Thinner parts dried at another rate and pulled the "
                     "thicker ones open.",
                     facts),
              ThickFilm(facts)};
    case Fault::kChalky:
      return {MuchWater(facts), ColdRoom(facts)};
    case Fault::kSlid:
      return {
          FlowedOff(
              "The colour was thinner than its ground.", facts, false, false),
          Uneven("Neighbours flowed unlike.", facts),
          Unmeasured("It was tilted too far or too long.")};
    case Fault::kSunk:
      return {
          FlowedOff(
              "The colour was thicker than its ground.", facts, true, false),
          Uneven("Neighbours flowed unlike.", facts),
          Unmeasured("A heavy colour lay on a light one.")};
    case Fault::kMuddy:
      return {FlowedOff("The colours were too thin.", facts, false, false),
              Unmeasured("They were mixed too much on the way to the canvas."),
              Unmeasured("Opposite colours lay side by side.")};
    case Fault::kLostCells:
      return {FlowedOff("The activator was too thin.", facts, false, true),
              FlowedOff("The activator was too thick.", facts, true, true),
              Unmeasured("It was tilted too far."),
              Unmeasured("The paints under it do not react, though the cup "
                         "did.")};
    case Fault::kPits:
      return {Air(facts),
              Straining(facts),
              Unmeasured("Air was whipped in."),
              Unmeasured("There was oil or grease on the ground.")};
    case Fault::kSag:
      return {
          ThickFilm(facts),
          Unmeasured("It dried on a slope."),
          FlowedOff("The paint was too thick to level.", facts, true, false)};
    case Fault::kBare:
      return {
          FlowedOff("The paint was too thin and ran off.", facts, false, false),
          Judge("There was too little paint.",
                facts.wet_mm,
                0.8,
                1.3,
                "mm wet",
                2),
          Unmeasured("It was tilted too far or too long.")};
    case Fault::kPeeling:
      return {Unmeasured("Grease or silicone lay between the coats."),
              Unmeasured("The lower coat was chalky."),
              MuchWater(facts)};
  }
  return {};
}

}  // namespace

const char* FaultName(Fault fault) {
  for (const Named& named : kNames) {
    if (named.fault == fault) return named.name;
  }
  return "";
}

std::optional<Fault> FaultFromName(const std::string& name) {
  for (const Named& named : kNames) {
    if (name == named.name) return named.fault;
  }
  return std::nullopt;
}

const std::vector<Fault>& AllFaults() {
  static const std::vector<Fault> kAll = [] {
    std::vector<Fault> all;
    for (const Named& named : kNames) all.push_back(named.fault);
    return all;
  }();
  return kAll;
}

const char* StandingName(Standing standing) {
  switch (standing) {
    case Standing::kFits:
      return "fits";
    case Standing::kAgainst:
      return "against";
    case Standing::kUnknown:
      return "not measured";
  }
  return "";
}

std::vector<Cause> LikelyCauses(Fault fault, const DayFacts& facts) {
  std::vector<Cause> causes = NamedCauses(fault, facts);
  const auto rank = [](const Cause& cause) {
    switch (cause.standing) {
      case Standing::kFits:
        return 0;
      case Standing::kUnknown:
        return 1;
      case Standing::kAgainst:
        return 2;
    }
    return 3;
  };
  std::stable_sort(
      causes.begin(), causes.end(), [&](const Cause& a, const Cause& b) {
        return rank(a) < rank(b);
      });
  return causes;
}

}  // namespace flowkin
