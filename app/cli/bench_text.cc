#include "app/cli/bench_text.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ostream>

#include "app/cli/comparison_text.h"
#include "app/cli/measurement_text.h"
#include "app/usecases/amounts.h"

namespace flowkin {
namespace {

std::string ColourText(const SwatchColour& colour) {
  char text[16];
  std::snprintf(text,
                sizeof(text),
                "#%02x%02x%02x",
                static_cast<unsigned>(colour.red),
                static_cast<unsigned>(colour.green),
                static_cast<unsigned>(colour.blue));
  return text;
}

Json TextOrNull(const std::string& text) {
  return text.empty() ? Json(nullptr) : Json(text);
}

Json UnitDocument(const std::optional<DoseUnit>& unit) {
  if (!unit) return nullptr;
  return {{"name", unit->name}, {"ml", JsonNumber(unit->ml)}};
}

Json StepDocument(const NextStep& step) {
  Json document;
  document["kind"] = StepKindName(step.kind);
  document["reason"] = StepReasonName(step.reason);
  document["test"] = TestKindName(step.test);
  document["films"] = step.films;
  document["amount_ml"] = JsonNumber(step.amount_ml);
  document["amount_units"] = JsonNumber(step.amount_units);
  document["unit"] = UnitDocument(step.unit);
  document["thinner"] = ThinnerKindName(step.thinner);
  document["total_ml"] = JsonNumber(step.total_ml, 4);
  return document;
}

Json DoseDocument(const DoseReport& report) {
  const Dose& dose = report.dose;
  Json document;
  document["advice"] =
      report.refused ? Json(nullptr) : Json(AdviceName(dose.advice));
  document["reason"] = TextOrNull(report.reason);
  document["add_ml"] =
      report.refused ? Json(nullptr) : JsonNumber(report.add_ml);
  document["predicted"] = {{"value", JsonNumber(dose.predicted_median, 4)},
                           {"low", JsonNumber(dose.predicted.low, 4)},
                           {"high", JsonNumber(dose.predicted.high, 4)},
                           {"level", dose.predicted.level}};
  document["overshoot_probability"] = JsonNumber(dose.overshoot_probability, 3);
  document["water_share"] = JsonNumber(dose.water_share, 4);
  document["expected_additions_left"] =
      JsonNumber(dose.expected_additions_left, 2);
  return document;
}

Json TestDocument(const BenchTest& test) {
  const FlowMeasurement& measurement = test.film.measurement;
  const bool refused = measurement.outcome == Outcome::kRefused;
  Json document;
  document["id"] = test.id;
  document["at_utc"] = FormatUtc(test.at);
  document["test"] = TestKindName(measurement.kind);
  document["clip"] = test.film.film;
  document["outcome"] = refused ? "refused" : "measured";
  document["reason"] = refused ? Json(measurement.reason) : Json(nullptr);
  document["events"] = EventsDocument(measurement);
  document["by_hand"] = Json::object();
  for (const EventCorrected& event : test.corrections) {
    document["by_hand"][std::string(TestEventName(event.event)) + "_s"] =
        JsonNumber(event.at_s);
  }
  document["set_aside"] = test.set_aside;
  document["room_c"] = JsonNumber(test.room_c);
  return document;
}

Json CardDocument(const Bench& bench, const BoardCup& card) {
  const CupDetails& cup = card.details;
  Json document;
  document["id"] = card.id;
  document["label"] = cup.label;
  document["role"] = CupRoleName(cup.role);
  document["brand"] = TextOrNull(cup.paint.brand);
  document["colour"] = TextOrNull(cup.paint.colour);
  document["swatch"] =
      cup.swatch ? Json(ColourText(*cup.swatch)) : Json(nullptr);
  document["target"] = JsonNumber(cup.target_ratio);
  document["volume_ml"] = JsonNumber(cup.volume_ml);
  document["volume_now_ml"] = JsonNumber(card.volume_now_ml);
  document["added_ml"] = JsonNumber(card.thinner_ml);
  document["water_share"] = JsonNumber(card.water_share, 4);
  document["reserve_left_ml"] = JsonNumber(card.reserve_left_ml);
  document["unit"] = UnitDocument(cup.unit);
  if (card.comparison) {
    AddComparison(document, *card.comparison);
  } else {
    document["outcome"] = nullptr;
    document["ratio"] = nullptr;
  }
  document["verdict"] =
      card.verdict ? Json(MatchVerdictName(*card.verdict)) : Json(nullptr);
  document["before_addition"] = card.before_addition;
  document["matched"] = card.matched;
  document["films"] = Json::array();
  for (const FilmTally& tally : card.films) {
    document["films"].push_back({{"test", TestKindName(tally.test)},
                                 {"counted", tally.counted},
                                 {"set_aside", tally.set_aside},
                                 {"refused", tally.refused},
                                 {"wanted_more", tally.wanted_more}});
  }
  document["minutes_since_stirred"] = JsonNumber(card.minutes_since_stirred, 4);
  document["minutes_since_film"] = JsonNumber(card.minutes_since_film, 4);
  document["recheck"] = card.recheck == StepReason::kNone
                            ? Json(nullptr)
                            : Json(StepReasonName(card.recheck));
  document["step"] = StepDocument(card.step);
  document["dose"] = card.dose ? DoseDocument(*card.dose) : Json(nullptr);
  document["brand_known"] = card.brand_known;
  document["can_learn"] = card.can_learn;
  document["learned_utc"] =
      card.learned_at ? Json(FormatUtc(*card.learned_at)) : Json(nullptr);
  document["tests"] = Json::array();
  if (const BenchCup* known = bench.session().FindCup(card.id)) {
    for (const BenchTest& test : known->tests) {
      document["tests"].push_back(TestDocument(test));
    }
  }
  document["warnings"] = card.warnings;
  document["cautions"] = card.cautions;
  return document;
}

std::string Films(int count, TestKind test) {
  return std::to_string(count) + (count == 1 ? " film" : " films") +
         " of its " + TestKindName(test) + " test";
}

std::string Why(const BoardCup& card) {
  switch (card.step.reason) {
    case StepReason::kStood:
      return "It has stood for a while: ";
    case StepReason::kBaseCoatAged:
      return "Its films are more than two hours old: ";
    case StepReason::kRoomMoved:
      return "The room has become warmer or colder since: ";
    case StepReason::kUndecided:
      return "Not sure enough yet: ";
    case StepReason::kDoubtful:
      return "The last film does not fit the others: ";
    case StepReason::kTooFewFilms:
      return "It wants more films: ";
    case StepReason::kNotComparable:
      return "Its films and the base coat's do not compare: ";
    case StepReason::kThinner:
      return "It is too thin: ";
    case StepReason::kNone:
    case StepReason::kNoFilm:
    case StepReason::kNewAddition:
    case StepReason::kThicker:
      break;
  }
  return "";
}

std::string WholeMinutes(double minutes) {
  return Fixed(std::max(0.0, std::floor(minutes)), 0) + " min";
}

}  // namespace

std::string StepSentence(const BoardCup& card) {
  const NextStep& step = card.step;
  const std::string thinner = ThinnerKindName(step.thinner);
  const std::string amount =
      step.amount_ml ? Short(*step.amount_ml) + " mL" : std::string();
  const std::string start = Why(card);
  const auto sentence = [&](std::string rest) {
    if (start.empty()) rest[0] = static_cast<char>(rest[0] - 'a' + 'A');
    return start + rest;
  };
  switch (step.kind) {
    case StepKind::kNothing:
      return card.base_coat ? "Filmed." : "It matches: stop here.";
    case StepKind::kFilm:
      return sentence("take " + Films(step.films, step.test) + ".");
    case StepKind::kStirAndFilm:
      return sentence("stir for a minute, wait 15 seconds, take " +
                      Films(step.films, step.test) + ".");
    case StepKind::kAdd:
      if (step.amount_units && step.unit) {
        return sentence("add " + Short(*step.amount_units) + " x " +
                        step.unit->name + " (" + amount + ") of " + thinner +
                        ", stir for a minute, film it again.");
      }
      return sentence("add " + amount + " of " + thinner +
                      ", stir for a minute, film it again.");
    case StepKind::kPutReserveBack:
      return sentence("put back " + amount +
                      " of the unthinned mix, stir, film it again.");
    case StepKind::kThicken:
      return sentence(
          "stir in thicker paint or medium of the same kind, a little at a "
          "time, and film it again.");
    case StepKind::kUseMedium:
      return sentence("no more water; thin on with medium.");
    case StepKind::kUseFinerUnit:
      return sentence(step.amount_ml
                          ? "measure it out finer, at most " + amount +
                                " at once."
                          : "stop here, or film it again to know it better.");
    case StepKind::kOtherThinner:
      return sentence("this " + thinner +
                      " is hardly thinner than the target; take another.");
    case StepKind::kSayVolume:
      return sentence(
          "say how much is in the cup, so that an amount can be named.");
    case StepKind::kFilmBaseCoat:
      return sentence("film the base coat first.");
  }
  return "";
}

Json BoardDocument(const Bench& bench, const Board& board) {
  Json document;
  document["session"] = {{"id", board.session},
                         {"name", board.session_name},
                         {"closed", board.closed},
                         {"entries", bench.session().LastNumber()}};
  const BenchSettings& settings = board.settings;
  document["settings"] = {
      {"band", JsonNumber(settings.band)},
      {"smallest_step_ml", JsonNumber(settings.smallest_step_ml)},
      {"unit", UnitDocument(settings.unit)},
      {"test", TestKindName(settings.test)},
      {"base_films", settings.base_films},
      {"cup_films", settings.cup_films},
      {"recheck_min", JsonNumber(settings.recheck_min)}};
  document["room_c"] = JsonNumber(board.room_c);
  document["may_pour"] = board.may_pour;
  document["next_cup"] = board.next_cup ? Json(*board.next_cup) : Json(nullptr);
  document["can_undo"] = board.can_undo;
  document["can_redo"] = board.can_redo;
  document["cups"] = Json::array();
  for (const BoardCup& card : board.cups) {
    document["cups"].push_back(CardDocument(bench, card));
  }
  return document;
}

void PrintBoard(std::ostream& out, const Bench& bench, const Board& board) {
  out << board.session_name << (board.closed ? " (closed)" : "") << ", session "
      << board.session;
  if (board.room_c) out << ", room " << Fixed(*board.room_c, 1) << " degrees C";
  out << '\n';
  if (board.cups.empty()) {
    out << "The bench is empty: put the base coat on it with 'flowkin bench "
           "cup NAME --role base-coat'.\n";
    return;
  }
  for (const BoardCup& card : board.cups) {
    const CupDetails& cup = card.details;
    out << (board.next_cup == card.id ? "> " : "  ") << cup.label;
    if (card.base_coat) out << ", base coat";
    if (cup.role == CupRole::kActivator) out << ", activator";
    if (!cup.paint.brand.empty()) {
      out << " (" << cup.paint.brand;
      if (!cup.paint.colour.empty()) out << ", " << cup.paint.colour;
      out << ')';
    }
    out << ':';
    if (card.comparison && card.comparison->outcome == Outcome::kMeasured) {
      out << ' ' << Fixed(card.comparison->ratio.Ratio(), 2) << " ("
          << Fixed(card.comparison->interval.low, 2) << " to "
          << Fixed(card.comparison->interval.high, 2) << ')';
      if (card.before_addition) out << " before the last addition";
      if (card.verdict) out << ", " << MatchVerdictName(*card.verdict);
      out << '.';
    } else if (card.comparison && !card.comparison->reason.empty()) {
      out << " no ratio, " << card.comparison->reason << '.';
    }
    if (card.water_share && *card.water_share > 0.0) {
      out << " Water " << Fixed(100.0 * *card.water_share, 1) << " %.";
    }
    if (card.minutes_since_stirred) {
      out << " Stirred " << WholeMinutes(*card.minutes_since_stirred)
          << " ago.";
    }
    out << "\n    " << StepSentence(card) << '\n';
    for (const std::string& caution : card.cautions) {
      out << "    Note: " << caution << '\n';
    }
    if (const BenchCup* known = bench.session().FindCup(card.id)) {
      for (const BenchTest& test : known->tests) {
        const FlowMeasurement& m = test.film.measurement;
        out << "    film " << test.id << ": " << TestKindName(m.kind) << ", ";
        if (test.set_aside) {
          out << "set aside";
        } else if (m.outcome == Outcome::kRefused) {
          out << "refused: " << m.reason;
        } else if (!m.proxies.empty()) {
          out << SpokenName(m.proxies.front().name) << ' '
              << Digits(m.proxies.front().value, 4) << ' '
              << m.proxies.front().unit;
        }
        if (!test.corrections.empty()) out << ", set by hand";
        out << '\n';
      }
    }
  }
  if (board.may_pour) {
    out << "All match: pour.\n";
    return;
  }
  for (const BoardCup& card : board.cups) {
    if (board.next_cup == card.id) {
      out << card.details.label << " holds it back.\n";
    }
  }
}

Json HistoryDocument(const BoardCup& card) {
  const DoseRequest& request = *card.request;
  Json document;
  // To the last digit: a dose from this document is the bench's own dose.
  constexpr int kAllDigits = 17;
  document["volume_ml"] = JsonNumber(request.cup.volume_ml, kAllDigits);
  document["band"] = JsonNumber(request.band, kAllDigits);
  document["target"] = JsonNumber(request.target_ratio, kAllDigits);
  document["smallest_step_ml"] =
      JsonNumber(request.smallest_step_ml, kAllDigits);
  document["thinner"]["kind"] = ThinnerKindName(request.cup.thinner);
  if (const auto& ratio = request.cup.thinner_ln_ratio) {
    document["thinner"]["ratio"] =
        JsonNumber(std::exp(ratio->value), kAllDigits);
    document["thinner"]["rel_sd"] = JsonNumber(ratio->sd, kAllDigits);
  }
  document["brand"] = TextOrNull(card.details.paint.brand);
  document["colour"] = TextOrNull(card.details.paint.colour);
  if (request.reserve_ml) {
    document["reserve_ml"] = JsonNumber(*request.reserve_ml, kAllDigits);
  }
  document["common_rel_sd"] = JsonNumber(request.common_rel_sd, kAllDigits);
  if (!request.bench.other_water_shares.empty()) {
    document["other_water_shares"] = request.bench.other_water_shares;
  }
  document["history"] = Json::array();
  for (const CupTest& test : request.cup.tests) {
    document["history"].push_back(
        {{"added_ml", JsonNumber(test.added_ml, kAllDigits)},
         {"ratio", JsonNumber(test.ratio, kAllDigits)},
         {"rel_sd", JsonNumber(test.rel_sd, kAllDigits)},
         {"films", test.films}});
  }
  return document;
}

Json SessionsDocument(const std::vector<SessionLine>& lines) {
  Json document;
  document["sessions"] = Json::array();
  for (const SessionLine& line : lines) {
    document["sessions"].push_back({{"id", line.id},
                                    {"name", line.name},
                                    {"begun_utc", FormatUtc(line.begun)},
                                    {"last_utc", FormatUtc(line.last)},
                                    {"entries", line.entries},
                                    {"closed", line.closed}});
  }
  return document;
}

void PrintSessions(std::ostream& out, const std::vector<SessionLine>& lines) {
  if (lines.empty()) {
    out << "No sessions yet; 'flowkin bench new' begins one.\n";
  }
  for (const SessionLine& line : lines) {
    out << line.id << "  " << FormatUtc(line.begun) << "  " << line.name << " ("
        << line.entries << (line.entries == 1 ? " entry" : " entries")
        << (line.closed ? ", closed" : "") << ")\n";
  }
}

}  // namespace flowkin
