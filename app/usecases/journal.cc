#include "app/usecases/journal.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/usecases/bench.h"
#include "app/usecases/cautions.h"

namespace flowkin {
namespace {

Day DayOf(UtcTime time) {
  return std::chrono::floor<std::chrono::days>(
      std::chrono::sys_time<std::chrono::milliseconds>(
          std::chrono::milliseconds(time.ms)));
}

}  // namespace

const char* ReminderKindName(ReminderKind kind) {
  switch (kind) {
    case ReminderKind::kTouchDry:
      return "touch dry";
    case ReminderKind::kVarnish:
      return "varnish";
    case ReminderKind::kLaterPhoto:
      return "later photo";
    case ReminderKind::kJudge:
      return "judge";
  }
  return "";
}

Result<Journal> Journal::Open(const std::string& store_path) {
  Result<SessionStore> store =
      SessionStore::Open(store_path, SessionStore::Access::kRead);
  if (!store) return store.error();
  return Journal(*std::move(store));
}

Result<std::vector<SessionLine>> Journal::Search(const std::string& words,
                                                 int most) const {
  return store_.Search(words, most);
}

Result<JournalPage> Journal::Page(SessionId id) const {
  Result<std::vector<LogEntry>> entries = store_.Since(id, 0);
  if (!entries) return entries.error();
  const Result<SessionLine> line = store_.Line(id);
  if (!line) return line.error();
  JournalPage page;
  page.line = *line;
  for (LogEntry& entry : *entries) page.session.Append(std::move(entry));
  const BenchJournal& journal = page.session.journal();
  if (journal.pour) {
    page.facts = FactsOfPour(*journal.pour, page.session.room_c());
  }
  for (const BenchJournal::Seen& seen : journal.faults) {
    ExplainedFault explained{seen.at, seen.fault, {}};
    if (const auto fault = FaultFromName(seen.fault.fault)) {
      DayFacts facts = page.facts.value_or(DayFacts{});
      if (!page.facts) facts.room_c = page.session.room_c();
      explained.causes = LikelyCauses(*fault, facts);
    }
    page.faults.push_back(std::move(explained));
  }
  return page;
}

Result<LearnedPractice> Journal::Learned() const {
  Result<std::vector<SessionStore::SessionEntries>> pours = store_.Pours();
  if (!pours) return pours.error();
  LearnedPractice learned;
  std::vector<JudgedPour> judged;
  std::map<std::string, std::map<CupRole, std::vector<Estimate>>> good;
  for (SessionStore::SessionEntries& entries : *pours) {
    PaletteSession session;
    for (LogEntry& entry : entries.entries) session.Append(std::move(entry));
    const BenchJournal& journal = session.journal();
    if (!journal.pour) continue;  // taken back
    const PourMade& pour = *journal.pour;
    ++learned.pours;
    if (pour.planned_ml && pour.used_ml) {
      // A plan that followed her earlier pours would else hide what they
      // taught.
      learned.past[pour.technique].push_back(
          {*pour.planned_ml / pour.plan_factor, *pour.used_ml});
    }
    if (!journal.judged) continue;
    ++learned.judged;
    std::optional<double> worst;
    for (const PouredCup& cup : pour.cups) {
      if (!cup.ln_ratio) continue;
      const double off = std::fabs(cup.ln_ratio->value - std::log(cup.target));
      worst = std::max(worst.value_or(0.0), off);
    }
    if (worst) {
      judged.push_back({*worst, journal.judged->verdict == PourVerdict::kPoor});
    }
    if (journal.judged->verdict != PourVerdict::kGood) continue;
    for (const CupRole role : {CupRole::kColour, CupRole::kActivator}) {
      // One number per pour: its cups share the base coat's error and the day.
      double sum = 0.0;
      int count = 0;
      for (const PouredCup& cup : pour.cups) {
        if (cup.role != role || !cup.ln_ratio) continue;
        sum += cup.ln_ratio->value;
        ++count;
      }
      if (count > 0) good[pour.technique][role].push_back({sum / count, 0.0});
    }
  }
  learned.band = LearnBand(judged);
  for (const auto& [technique, roles] : good) {
    for (const auto& [role, ratios] : roles) {
      learned.targets[technique][role] = LearnTarget(ratios);
    }
  }
  for (const auto& [technique, past] : learned.past) {
    learned.use[technique] = LearnUse(past);
  }
  return learned;
}

Result<std::vector<Reminder>> Journal::Reminders(Day today, int days) const {
  Result<std::vector<SessionStore::SessionEntries>> pours = store_.Pours();
  if (!pours) return pours.error();
  std::vector<Reminder> reminders;
  for (SessionStore::SessionEntries& entries : *pours) {
    PaletteSession session;
    for (LogEntry& entry : entries.entries) session.Append(std::move(entry));
    const BenchJournal& journal = session.journal();
    if (!journal.pour) continue;
    const Day poured = DayOf(*journal.poured_at);
    if (poured > today || today - poured > std::chrono::days(days)) continue;
    const Result<SessionLine> line = store_.Line(entries.session);
    if (!line) return line.error();
    const DryingDays drying = HowLongItDries({session.room_c(),
                                              journal.pour->humidity_percent,
                                              journal.pour->dry_mm});
    std::string reasons;
    for (const std::string& reason : drying.why) {
      reasons += reasons.empty() ? "; " : ", ";
      reasons += reason;
    }
    // The reasons stand where `says` is cut in two.
    const auto add = [&](ReminderKind kind,
                         int from,
                         std::optional<int> by,
                         const std::string& says,
                         const std::string& rest = {}) {
      Reminder reminder;
      reminder.kind = kind;
      reminder.from = poured + std::chrono::days(from);
      reminder.plain = says + rest;
      reminder.says = reminder.plain;
      if (!rest.empty()) {
        reminder.says = says;
        reminder.says += reasons;
        reminder.says += rest;
        reminder.why = drying.why;
      }
      if (by) reminder.by = poured + std::chrono::days(*by);
      reminder.session = line->id;
      reminder.name = line->name;
      reminders.push_back(std::move(reminder));
    };
    add(ReminderKind::kTouchDry,
        drying.touch_dry_from,
        drying.touch_dry_by,
        "Touch dry about now; leave it level and covered",
        ".");
    add(ReminderKind::kVarnish,
        drying.varnish_not_before,
        {},
        "Varnish or resin not before this day, and only if it feels hard and "
        "no longer cool",
        "; the varnish's own sheet decides.");
    const bool has_later =
        std::any_of(journal.photos.begin(),
                    journal.photos.end(),
                    [](const BenchJournal::Photo& photo) {
                      return photo.photo.kind == PhotoKind::kLater;
                    });
    if (!has_later) {
      add(ReminderKind::kLaterPhoto,
          30,
          {},
          "Take a photo a month on: late cracks only show then.");
    }
    if (!journal.judged) {
      add(ReminderKind::kJudge,
          drying.touch_dry_by,
          {},
          "Say how it turned out: your own match band is learned from it.");
    }
  }
  std::stable_sort(
      reminders.begin(),
      reminders.end(),
      [](const Reminder& a, const Reminder& b) { return a.from < b.from; });
  return reminders;
}

DayFacts FactsOfBoard(const Board& board) {
  DayFacts facts;
  facts.band = board.settings.band;
  facts.recheck_min = board.settings.recheck_min;
  facts.room_c = board.room_c;
  for (const BoardCup& cup : board.cups) {
    if (cup.base_coat) continue;
    CupFacts each;
    each.name = cup.details.label;
    each.activator = cup.details.role == CupRole::kActivator;
    each.target = cup.details.target_ratio;
    if (cup.comparison && cup.comparison->outcome == Outcome::kMeasured) {
      each.ratio = Span{cup.comparison->interval.low,
                        cup.comparison->ratio.Ratio(),
                        cup.comparison->interval.high};
    }
    each.matches = cup.matched;
    each.changed_since_film = cup.before_addition;
    each.water_share = cup.water_share;
    each.minutes_since_film = cup.minutes_since_film;
    each.minutes_since_stirred = cup.minutes_since_stirred;
    facts.cups.push_back(std::move(each));
  }
  return facts;
}

DayFacts FactsOfPour(const PourMade& pour, std::optional<double> room_c) {
  DayFacts facts;
  facts.band = pour.band;
  facts.room_c = room_c;
  facts.humidity_percent = pour.humidity_percent;
  facts.wet_mm = pour.wet_mm;
  facts.dry_mm = pour.dry_mm;
  facts.rested_min = pour.rested_min;
  facts.strained = pour.strained;
  for (const PouredCup& cup : pour.cups) {
    CupFacts each;
    each.name = cup.label;
    each.activator = cup.role == CupRole::kActivator;
    each.target = cup.target;
    if (cup.ln_ratio && cup.interval) {
      each.ratio = Span{
          cup.interval->low, std::exp(cup.ln_ratio->value), cup.interval->high};
    }
    each.water_share = cup.water_share;
    facts.cups.push_back(std::move(each));
  }
  return facts;
}

Result<ReadyReport> CheckTable(const DayFacts& facts) {
  Result<Readiness> readiness = CheckReadiness(facts);
  if (!readiness) return readiness.error();
  return ReadyReport{*std::move(readiness),
                     Cautions({Hazard::kPaint,
                               Hazard::kFlame,
                               Hazard::kAlcohol,
                               Hazard::kElectricity,
                               Hazard::kWaste})};
}

std::vector<std::string> CautionsOf(const std::vector<Reminder>& reminders) {
  const bool finish = std::any_of(
      reminders.begin(), reminders.end(), [](const Reminder& reminder) {
        return reminder.kind == ReminderKind::kVarnish;
      });
  return finish ? Cautions({Hazard::kResin, Hazard::kAlcohol})
                : std::vector<std::string>();
}

}  // namespace flowkin
