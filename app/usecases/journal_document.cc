#include "app/usecases/journal_document.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/base/distributions.h"

namespace flowkin {
namespace {

CupFacts ReadCup(const JsonFields& fields) {
  CupFacts cup;
  cup.name = fields.NeededText("name");
  const std::string role = fields.Text("role");
  if (role == "activator") {
    cup.activator = true;
  } else if (!role.empty() && role != "colour") {
    fields.RefuseValue("role", "must be colour or activator");
  }
  // As `compare` prints it.
  if (const auto ratio = fields.Object("ratio")) {
    const double value = ratio->NeededNumber("value");
    cup.ratio =
        Span{ratio->NeededNumber("low"), value, ratio->NeededNumber("high")};
  }
  if (const std::string verdict = fields.Text("verdict"); verdict == "match") {
    cup.matches = true;
  } else if (!verdict.empty() && verdict != "thicker" && verdict != "thinner" &&
             verdict != "undecided") {
    fields.RefuseValue("verdict",
                       "must be match, thicker, thinner or undecided");
  }
  cup.target = fields.Number("target", 1.0);
  cup.water_share = fields.Number("water_share");
  cup.minutes_since_film = fields.Number("minutes_since_film");
  cup.minutes_since_stirred = fields.Number("minutes_since_stirred");
  cup.temperature_c = fields.Number("temperature_c");
  cup.changed_since_film = fields.Flag("changed_since_film").value_or(false);
  return cup;
}

Json Text(const std::string& text) {
  return text.empty() ? Json(nullptr) : Json(text);
}

Json PourDocument(const PourMade& pour, const UtcTime& at) {
  Json document;
  document["at_utc"] = FormatUtc(at);
  document["technique"] = Text(pour.technique);
  document["planned_ml"] = JsonNumber(pour.planned_ml);
  document["plan_factor"] = JsonNumber(pour.plan_factor);
  document["used_ml"] = JsonNumber(pour.used_ml);
  document["wet_mm"] = JsonNumber(pour.wet_mm);
  document["dry_mm"] = JsonNumber(pour.dry_mm);
  document["humidity_percent"] = JsonNumber(pour.humidity_percent);
  document["rested_min"] = JsonNumber(pour.rested_min);
  document["strained"] = pour.strained ? Json(*pour.strained) : Json(nullptr);
  document["band"] = pour.band;
  document["text"] = Text(pour.text);
  document["cups"] = Json::array();
  for (const PouredCup& cup : pour.cups) {
    Json each;
    each["name"] = cup.label;
    each["role"] = CupRoleName(cup.role);
    each["target"] = JsonNumber(cup.target);
    each["ratio"] =
        cup.ln_ratio && cup.interval
            ? IntervalDocument(std::exp(cup.ln_ratio->value), *cup.interval)
            : Json(nullptr);
    each["water_share"] = JsonNumber(cup.water_share, 4);
    document["cups"].push_back(std::move(each));
  }
  return document;
}

/// One cell of a table after RFC 4180.
std::string Cell(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

std::string Cell(const std::optional<double>& value) {
  return value ? JsonNumber(*value).dump() : std::string();
}

std::string TableRows(const JournalPage& page) {
  const BenchJournal& journal = page.session.journal();
  std::string faults;
  for (const ExplainedFault& fault : page.faults) {
    faults += (faults.empty() ? "" : "; ") + fault.seen.fault;
  }
  const PourMade none;
  const PourMade& pour = journal.pour ? *journal.pour : none;
  const std::string head =
      std::to_string(page.line.id) + "," + Cell(page.line.name) + "," +
      FormatUtc(page.line.begun).substr(0, 10) + "," + Cell(pour.technique) +
      "," + Cell(page.session.room_c()) + "," + Cell(pour.humidity_percent) +
      "," + Cell(pour.planned_ml) + "," + Cell(pour.used_ml) + "," +
      Cell(pour.wet_mm) + "," + Cell(pour.dry_mm) + "," +
      (journal.judged ? PourVerdictName(journal.judged->verdict) : "") + "," +
      Cell(faults) + ",";
  if (pour.cups.empty()) return head + ",,,,,,\r\n";
  std::string rows;
  for (const PouredCup& cup : pour.cups) {
    std::optional<double> ratio, low, high;
    if (cup.ln_ratio && cup.interval) {
      ratio = std::exp(cup.ln_ratio->value);
      low = cup.interval->low;
      high = cup.interval->high;
    }
    rows += head + Cell(cup.label) + "," + CupRoleName(cup.role) + "," +
            Cell(cup.target) + "," + Cell(ratio) + "," + Cell(low) + "," +
            Cell(high) + "," + Cell(cup.water_share) + "\r\n";
  }
  return rows;
}

/// Calls `take` with every page, oldest first.
template <typename Take>
Result<void> ForEveryPage(const Journal& journal, const Take& take) {
  Result<std::vector<SessionLine>> lines =
      journal.Search("", std::numeric_limits<int>::max());
  if (!lines) return lines.error();
  std::reverse(lines->begin(), lines->end());
  for (const SessionLine& line : *lines) {
    const Result<JournalPage> page = journal.Page(line.id);
    if (!page) return page.error();
    take(*page);
  }
  return {};
}

}  // namespace

Result<DayFacts> ReadDayFacts(const std::string& path, std::istream& fallback) {
  return ReadDocument(
      path, fallback, "flowkin-table", 1, [](const JsonFields& fields) {
        DayFacts facts;
        for (const JsonFields& cup : fields.Objects("cups")) {
          facts.cups.push_back(ReadCup(cup));
        }
        facts.band = fields.Number("band", facts.band);
        facts.recheck_min = fields.Number("recheck_min", facts.recheck_min);
        facts.base_temperature_c = fields.Number("base_temperature_c");
        facts.room_c = fields.Number("room_c");
        facts.humidity_percent = fields.Number("humidity_percent");
        facts.wet_mm = fields.Number("wet_mm");
        facts.dry_mm = fields.Number("dry_mm");
        facts.rested_min = fields.Number("rested_min");
        facts.strained = fields.Flag("strained");
        return facts;
      });
}

Json ReadyDocument(const ReadyReport& report) {
  Json document;
  document["outcome"] = "checked";
  document["ready"] = report.readiness.ready;
  document["risks"] = Json::array();
  for (const Risk& risk : report.readiness.risks) {
    Json each;
    each["kind"] = RiskKindName(risk.kind);
    each["cup"] = Text(risk.cup);
    each["holds_back"] = risk.holds_back;
    each["says"] = risk.says;
    each["evidence"] = risk.evidence;
    each["basis"] = BasisName(risk.basis);
    document["risks"].push_back(std::move(each));
  }
  document["not_known"] = report.readiness.not_known;
  document["cautions"] = report.cautions;
  return document;
}

Json LineDocument(const SessionLine& line) {
  Json document;
  document["session"] = line.id;
  document["name"] = line.name;
  document["begun_utc"] = FormatUtc(line.begun);
  document["last_utc"] = FormatUtc(line.last);
  document["entries"] = line.entries;
  document["closed"] = line.closed;
  return document;
}

Json PageDocument(const JournalPage& page) {
  Json document = LineDocument(page.line);
  document["room_c"] = JsonNumber(page.session.room_c());
  document["cups"] = Json::array();
  for (const BenchCup& cup : page.session.cups()) {
    Json each;
    each["name"] = cup.details.label;
    each["role"] = CupRoleName(cup.details.role);
    each["brand"] = Text(cup.details.paint.brand);
    each["colour"] = Text(cup.details.paint.colour);
    each["volume_ml"] = JsonNumber(cup.details.volume_ml);
    each["water_ml"] = JsonNumber(cup.WaterMl());
    each["water_share"] = JsonNumber(cup.WaterShare(), 4);
    each["tests"] = cup.tests.size();
    document["cups"].push_back(std::move(each));
  }
  const BenchJournal& journal = page.session.journal();
  document["pour"] = journal.pour
                         ? PourDocument(*journal.pour, *journal.poured_at)
                         : Json(nullptr);
  document["verdict"] = journal.judged
                            ? Json(PourVerdictName(journal.judged->verdict))
                            : Json(nullptr);
  document["verdict_text"] =
      journal.judged ? Text(journal.judged->text) : Json(nullptr);
  document["photos"] = Json::array();
  for (const BenchJournal::Photo& photo : journal.photos) {
    document["photos"].push_back({{"at_utc", FormatUtc(photo.at)},
                                  {"kind", PhotoKindName(photo.photo.kind)},
                                  {"path", photo.photo.path},
                                  {"text", Text(photo.photo.text)}});
  }
  document["cell_tests"] = Json::array();
  for (const BenchJournal::Cells& cells : journal.cells) {
    const CellsTested& test = cells.test;
    Json each;
    each["at_utc"] = FormatUtc(cells.at);
    each["seen"] = CellsSeenName(test.seen);
    each["after_s"] = JsonNumber(test.after_s);
    each["additive_parts"] = JsonNumber(test.additive_parts);
    each["ratio"] =
        test.ln_ratio
            ? IntervalDocument(std::exp(test.ln_ratio->value),
                               {std::exp(CoverageInterval(*test.ln_ratio).low),
                                std::exp(CoverageInterval(*test.ln_ratio).high),
                                CoverageInterval(*test.ln_ratio).level})
            : Json(nullptr);
    each["photo"] = Text(test.photo);
    each["text"] = Text(test.text);
    if (test.counted) {
      each["cells"] = test.counted->cells;
      each["cells_per_cm2"] = IntervalDocument(test.counted->per_cm2,
                                               test.counted->per_cm2_interval);
      each["median_diameter_mm"] = IntervalDocument(
          test.counted->median_mm, test.counted->median_mm_interval);
    }
    document["cell_tests"].push_back(std::move(each));
  }
  document["notes"] = Json::array();
  for (const BenchJournal::Note& note : journal.notes) {
    document["notes"].push_back(
        {{"at_utc", FormatUtc(note.at)}, {"text", note.text}});
  }
  document["faults"] = Json::array();
  for (const ExplainedFault& fault : page.faults) {
    Json each;
    each["at_utc"] = FormatUtc(fault.at);
    each["fault"] = fault.seen.fault;
    each["text"] = Text(fault.seen.text);
    each["causes"] = Json::array();
    for (const Cause& cause : fault.causes) {
      each["causes"].push_back({{"says", cause.says},
                                {"standing", StandingName(cause.standing)},
                                {"evidence", Text(cause.evidence)}});
    }
    document["faults"].push_back(std::move(each));
  }
  return document;
}

Result<Json> JournalDocument(const Journal& journal) {
  Json document;
  document["format"] = "flowkin-journal";
  document["version"] = 1;
  document["sessions"] = Json::array();
  const Result<void> done = ForEveryPage(journal, [&](const JournalPage& page) {
    document["sessions"].push_back(PageDocument(page));
  });
  if (!done) return done.error();
  return document;
}

Result<std::string> JournalTable(const Journal& journal) {
  std::string table =
      "session,name,day,technique,room_c,humidity_percent,planned_ml,used_ml,"
      "wet_mm,dry_mm,verdict,faults,cup,role,target,ratio,ratio_low,"
      "ratio_high,water_share\r\n";
  const Result<void> done = ForEveryPage(
      journal, [&](const JournalPage& page) { table += TableRows(page); });
  if (!done) return done.error();
  return table;
}

Json LearnedDocument(const LearnedPractice& learned) {
  Json document;
  document["pours"] = learned.pours;
  document["judged"] = learned.judged;
  Json band;
  band["pours"] = learned.band.pours;
  band["poor"] = learned.band.poor;
  band["told"] = learned.band.told;
  band["evidence"] = JsonNumber(learned.band.evidence, 3);
  band["value"] = JsonNumber(learned.band.band, 3);
  band["low"] = JsonNumber(learned.band.band_interval.low, 3);
  band["high"] = JsonNumber(learned.band.band_interval.high, 3);
  band["level"] = learned.band.band_interval.level;
  document["band"] = std::move(band);
  document["targets"] = Json::array();
  for (const auto& [technique, roles] : learned.targets) {
    for (const auto& [role, target] : roles) {
      Json each;
      each["technique"] = technique;
      each["role"] = CupRoleName(role);
      each["pours"] = target.pours;
      each["told"] = target.told;
      each["ratio"] = target.told
                          ? IntervalDocument(target.ratio, target.interval)
                          : Json(nullptr);
      document["targets"].push_back(std::move(each));
    }
  }
  document["planned_against_used"] = Json::array();
  for (const auto& [technique, use] : learned.use) {
    Json each;
    each["technique"] = technique;
    each["pours"] = use.pours;
    each["told"] = use.told;
    each["factor"] = IntervalDocument(use.factor, use.interval);
    document["planned_against_used"].push_back(std::move(each));
  }
  return document;
}

Json RemindersDocument(const std::vector<Reminder>& reminders) {
  Json document;
  document["reminders"] = Json::array();
  for (const Reminder& reminder : reminders) {
    Json each;
    each["from"] = FormatDay(reminder.from);
    each["by"] = reminder.by ? Json(FormatDay(*reminder.by)) : Json(nullptr);
    each["kind"] = ReminderKindName(reminder.kind);
    each["session"] = reminder.session;
    each["name"] = reminder.name;
    each["says"] = reminder.says;
    document["reminders"].push_back(std::move(each));
  }
  document["cautions"] = CautionsOf(reminders);
  return document;
}

}  // namespace flowkin
