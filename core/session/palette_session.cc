#include "core/session/palette_session.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <type_traits>
#include <utility>

#include "core/base/check.h"

namespace flowkin {
namespace {

template <typename... F>
struct Overloaded : F... {
  using F::operator()...;
};
template <typename... F>
Overloaded(F...) -> Overloaded<F...>;

constexpr double kMostVolume_ml = 20000.0;

Error Invalid(std::string message) {
  return {ErrorCode::kInvalidArgument, std::move(message)};
}

bool Within(double value, double low, double high) {
  return value >= low && value <= high;
}

Error NoCup() {
  return Invalid(
      "There is no such cup on the bench; look at the list of cups.");
}

Error NoTest() {
  return Invalid(
      "There is no such test on the bench; look at the list of tests.");
}

Result<void> CheckUnit(const std::optional<DoseUnit>& unit) {
  if (unit && (unit->name.empty() || !Within(unit->ml, 1e-3, 100.0))) {
    return Invalid(
        "A unit needs a name, and one of it must hold 0.001 to 100 mL.");
  }
  return {};
}

Result<void> CheckDetails(const CupDetails& cup) {
  if (cup.label.empty()) {
    return Invalid("A cup needs a name; say what you call it.");
  }
  if (cup.volume_ml && !Within(*cup.volume_ml, 1.0, kMostVolume_ml)) {
    return Invalid("The volume of a cup must lie between 1 and 20000 mL.");
  }
  if (!Within(cup.target_ratio, 0.2, 5.0)) {
    return Invalid("The target of a cup must lie between 0.2 and 5.");
  }
  if (cup.role == CupRole::kBaseCoat && cup.target_ratio != 1.0) {
    return Invalid(
        "The base coat is what the others are compared with; it has no target "
        "of its own.");
  }
  if (cup.reserve_ml && !Within(*cup.reserve_ml, 0.0, kMostVolume_ml)) {
    return Invalid("The reserve of a cup must lie between 0 and 20000 mL.");
  }
  if (cup.thinner_ln_ratio &&
      !(Within(std::exp(cup.thinner_ln_ratio->value), 1e-5, 100.0) &&
        Within(cup.thinner_ln_ratio->sd, 1e-6, 1.0))) {
    return Invalid("The thinner's own ratio must lie between 0.00001 and 100.");
  }
  return CheckUnit(cup.unit);
}

Result<void> CheckSettings(const BenchSettings& settings) {
  if (!Within(settings.band, 0.02, 1.0)) {
    return Invalid("The match band must lie between 0.02 and 1.");
  }
  if (!Within(settings.smallest_step_ml, 1e-3, 100.0)) {
    return Invalid("The smallest step must lie between 0.001 and 100 mL.");
  }
  if (settings.base_films < 1 || settings.base_films > 20 ||
      settings.cup_films < 1 || settings.cup_films > 20) {
    return Invalid("Between 1 and 20 films of a cup can be asked for.");
  }
  if (!Within(settings.recheck_min, 1.0, 1440.0)) {
    return Invalid(
        "A cup can be checked again after 1 to 1440 minutes, not sooner or "
        "later.");
  }
  return CheckUnit(settings.unit);
}

Result<void> CheckAmount(double ml) {
  if (!Within(ml, 1e-3, kMostVolume_ml)) {
    return Invalid("An addition must lie between 0.001 and 20000 mL.");
  }
  return {};
}

Result<void> CheckPour(const PourMade& pour) {
  for (const std::optional<double>& ml : {pour.planned_ml, pour.used_ml}) {
    if (ml && !Within(*ml, 0.1, 1e6)) {
      return Invalid(
          "What was planned and used must lie between 0.1 mL and 1000 L.");
    }
  }
  if (!Within(pour.plan_factor, 0.05, 20.0)) {
    return Invalid("The factor of the plan must lie between 0.05 and 20.");
  }
  for (const std::optional<double>& mm : {pour.wet_mm, pour.dry_mm}) {
    if (mm && !Within(*mm, 0.0, 100.0)) {
      return Invalid("A film must be 0 to 100 mm thick.");
    }
  }
  if (pour.humidity_percent && !Within(*pour.humidity_percent, 0.0, 100.0)) {
    return Invalid("Humidity must be 0 to 100 %.");
  }
  if (pour.rested_min && !Within(*pour.rested_min, 0.0, 1e6)) {
    return Invalid("Minutes of rest must not be negative.");
  }
  return {};
}

/// What Undo can take back.
bool IsAction(const EntryWhat& what) {
  return std::visit(
      [](const auto& entry) {
        using T = std::decay_t<decltype(entry)>;
        return !std::is_same_v<T, Undone> && !std::is_same_v<T, Redone> &&
               !std::is_same_v<T, CupLearned> &&
               !std::is_same_v<T, SessionClosed> &&
               !std::is_same_v<T, SessionReopened> &&
               !std::is_same_v<T, ForeignEntry>;
      },
      what);
}

}  // namespace

const char* CupRoleName(CupRole role) {
  switch (role) {
    case CupRole::kBaseCoat:
      return "base_coat";
    case CupRole::kColour:
      return "colour";
    case CupRole::kActivator:
      return "activator";
  }
  FLOWKIN_CHECK(false);
}

const char* TestEventName(TestEvent event) {
  switch (event) {
    case TestEvent::kLift:
      return "lift";
    case TestEvent::kBreak:
      return "break";
    case TestEvent::kLaid:
      return "laid";
    case TestEvent::kStart:
      return "start";
  }
  FLOWKIN_CHECK(false);
}

std::optional<TestEvent> TestEventFromName(const std::string& name) {
  for (const TestEvent event : {TestEvent::kLift,
                                TestEvent::kBreak,
                                TestEvent::kLaid,
                                TestEvent::kStart}) {
    if (name == TestEventName(event)) return event;
  }
  return std::nullopt;
}

const char* PhotoKindName(PhotoKind kind) {
  switch (kind) {
    case PhotoKind::kWet:
      return "wet";
    case PhotoKind::kDry:
      return "dry";
    case PhotoKind::kLater:
      return "later";
    case PhotoKind::kCells:
      return "cells";
  }
  FLOWKIN_CHECK(false);
}

std::optional<PhotoKind> PhotoKindFromName(const std::string& name) {
  for (const PhotoKind kind : {PhotoKind::kWet,
                               PhotoKind::kDry,
                               PhotoKind::kLater,
                               PhotoKind::kCells}) {
    if (name == PhotoKindName(kind)) return kind;
  }
  return std::nullopt;
}

const char* CellsSeenName(CellsSeen seen) {
  switch (seen) {
    case CellsSeen::kLacing:
      return "lacing";
    case CellsSeen::kNone:
      return "none";
    case CellsSeen::kBlob:
      return "blob";
    case CellsSeen::kDrowned:
      return "drowned";
  }
  FLOWKIN_CHECK(false);
}

std::optional<CellsSeen> CellsSeenFromName(const std::string& name) {
  for (const CellsSeen seen : {CellsSeen::kLacing,
                               CellsSeen::kNone,
                               CellsSeen::kBlob,
                               CellsSeen::kDrowned}) {
    if (name == CellsSeenName(seen)) return seen;
  }
  return std::nullopt;
}

const char* PourVerdictName(PourVerdict verdict) {
  switch (verdict) {
    case PourVerdict::kGood:
      return "good";
    case PourVerdict::kFair:
      return "fair";
    case PourVerdict::kPoor:
      return "poor";
  }
  FLOWKIN_CHECK(false);
}

std::optional<PourVerdict> PourVerdictFromName(const std::string& name) {
  for (const PourVerdict verdict :
       {PourVerdict::kGood, PourVerdict::kFair, PourVerdict::kPoor}) {
    if (name == PourVerdictName(verdict)) return verdict;
  }
  return std::nullopt;
}

bool HasEvent(TestKind kind, TestEvent event) {
  switch (event) {
    case TestEvent::kLift:
    case TestEvent::kBreak:
      return kind == TestKind::kStream;
    case TestEvent::kLaid:
      return kind == TestKind::kLevel;
    case TestEvent::kStart:
      return kind == TestKind::kPuddle;
  }
  FLOWKIN_CHECK(false);
}

std::size_t BenchCup::FirstTestNow() const {
  return additions.empty() ? 0 : additions.back().before_test;
}

double BenchCup::ThinnerMl() const {
  double sum = 0.0;
  for (const BenchAddition& addition : additions) {
    if (!addition.reserve) sum += addition.ml;
  }
  return sum;
}

double BenchCup::WaterMl() const {
  double sum = 0.0;
  for (const BenchAddition& addition : additions) {
    if (!addition.reserve && addition.thinner == ThinnerKind::kWater) {
      sum += addition.ml;
    }
  }
  return sum;
}

double BenchCup::ReservePutBackMl() const {
  double sum = 0.0;
  for (const BenchAddition& addition : additions) {
    if (addition.reserve) sum += addition.ml;
  }
  return sum;
}

std::optional<double> BenchCup::VolumeNowMl() const {
  if (!details.volume_ml) return std::nullopt;
  return *details.volume_ml + ThinnerMl() + ReservePutBackMl();
}

std::optional<double> BenchCup::WaterShare() const {
  const std::optional<double> volume = VolumeNowMl();
  if (!volume) return std::nullopt;
  return WaterMl() / *volume;
}

void PaletteSession::Append(LogEntry entry) {
  FLOWKIN_CHECK(entry.number > LastNumber());
  log_.push_back(std::move(entry));
  const LogEntry& last = log_.back();
  const auto drop = [](std::vector<EntryNumber>& from, EntryNumber number) {
    const auto found = std::find(from.begin(), from.end(), number);
    if (found == from.end()) return false;
    from.erase(found);
    return true;
  };
  if (const auto* undone = std::get_if<Undone>(&last.what)) {
    if (!drop(undo_, undone->entry)) return;
    redo_.push_back(undone->entry);
    Fold();
  } else if (const auto* redone = std::get_if<Redone>(&last.what)) {
    if (!drop(redo_, redone->entry)) return;
    // Back to where it stood, so that Undo goes on in the order things were
    // done.
    undo_.insert(std::upper_bound(undo_.begin(), undo_.end(), redone->entry),
                 redone->entry);
    Fold();
  } else {
    if (IsAction(last.what)) {
      undo_.push_back(last.number);
      redo_.clear();
    }
    Apply(last);
  }
}

void PaletteSession::Fold() {
  cups_.clear();
  settings_ = {};
  room_c_.reset();
  room_at_.reset();
  closed_ = false;
  journal_ = {};
  for (const LogEntry& entry : log_) {
    if (IsAction(entry.what) &&
        !std::binary_search(undo_.begin(), undo_.end(), entry.number)) {
      continue;
    }
    Apply(entry);
  }
}

void PaletteSession::Apply(const LogEntry& entry) {
  const auto add = [&](CupId id, BenchAddition addition) {
    BenchCup* cup = Cup(id);
    if (cup == nullptr) return;
    addition.at = entry.at;
    addition.before_test = cup->tests.size();
    cup->additions.push_back(std::move(addition));
  };
  const auto test = [&](TestId id) -> BenchTest* {
    for (BenchCup& cup : cups_) {
      for (BenchTest& each : cup.tests) {
        if (each.id == id) return &each;
      }
    }
    return nullptr;
  };
  std::visit(
      Overloaded{
          [&](const CupAdded& added) {
            // Two programs may each have put a base coat on the bench; the
            // first one stays it.
            if (added.cup.role == CupRole::kBaseCoat && BaseCoat() != nullptr) {
              return;
            }
            BenchCup cup;
            cup.id = entry.number;
            cup.details = added.cup;
            cups_.push_back(std::move(cup));
          },
          [&](const CupChanged& changed) {
            BenchCup* cup = Cup(changed.cup);
            if (cup == nullptr) return;
            const BenchCup* base = BaseCoat();
            if (changed.details.role == CupRole::kBaseCoat && base != nullptr &&
                base != cup) {
              return;
            }
            cup->details = changed.details;
          },
          [&](const CupRemoved& removed) {
            std::erase_if(cups_, [&](const BenchCup& cup) {
              return cup.id == removed.cup;
            });
          },
          [&](const TestTaken& taken) {
            BenchCup* cup = Cup(taken.cup);
            if (cup == nullptr) return;
            BenchTest record;
            record.id = entry.number;
            record.at = entry.at;
            record.film = taken.test;
            record.room_c = taken.room_c;
            cup->tests.push_back(std::move(record));
          },
          [&](const TestSetAside& aside) {
            if (BenchTest* found = test(aside.test)) found->set_aside = true;
          },
          [&](const TestTakenBack& back) {
            if (BenchTest* found = test(back.test)) found->set_aside = false;
          },
          [&](const EventCorrected& corrected) {
            BenchTest* found = test(corrected.test);
            if (found == nullptr) return;
            found->film.measurement = corrected.measurement;
            std::erase_if(found->corrections, [&](const EventCorrected& old) {
              return old.event == corrected.event;
            });
            found->corrections.push_back(corrected);
          },
          [&](const ThinnerAdded& added) {
            BenchAddition addition;
            addition.ml = added.ml;
            addition.thinner = added.thinner;
            addition.units = added.units;
            addition.unit = added.unit;
            add(added.cup, std::move(addition));
          },
          [&](const ReservePutBack& put) {
            BenchAddition addition;
            addition.reserve = true;
            addition.ml = put.ml;
            add(put.cup, std::move(addition));
          },
          [&](const Stirred& stirred) {
            if (BenchCup* cup = Cup(stirred.cup)) cup->stirred_at = entry.at;
          },
          [&](const RoomMeasured& room) {
            room_c_ = room.room_c;
            room_at_ = entry.at;
          },
          [&](const SettingsChanged& changed) { settings_ = changed.settings; },
          [&](const CupLearned& learned) {
            if (BenchCup* cup = Cup(learned.cup)) cup->learned_at = entry.at;
          },
          [&](const SessionClosed&) { closed_ = true; },
          [&](const SessionReopened&) { closed_ = false; },
          [&](const NoteTaken& note) {
            journal_.notes.push_back({entry.at, note.cup, note.text});
          },
          [&](const PourMade& pour) {
            journal_.pour = pour;
            journal_.poured_at = entry.at;
          },
          [&](const PhotoTaken& photo) {
            journal_.photos.push_back({entry.at, photo});
          },
          [&](const FaultSeen& fault) {
            journal_.faults.push_back({entry.at, fault});
          },
          [&](const PourJudged& judged) { journal_.judged = judged; },
          [&](const CellsTested& cells) {
            journal_.cells.push_back({entry.at, cells});
          },
          [](const Undone&) {},
          [](const Redone&) {},
          [](const ForeignEntry&) {},
      },
      entry.what);
}

BenchCup* PaletteSession::Cup(CupId id) {
  for (BenchCup& cup : cups_) {
    if (cup.id == id) return &cup;
  }
  return nullptr;
}

const BenchCup* PaletteSession::FindCup(CupId id) const {
  for (const BenchCup& cup : cups_) {
    if (cup.id == id) return &cup;
  }
  return nullptr;
}

const BenchCup* PaletteSession::BaseCoat() const {
  for (const BenchCup& cup : cups_) {
    if (cup.details.role == CupRole::kBaseCoat) return &cup;
  }
  return nullptr;
}

const BenchTest* PaletteSession::FindTest(TestId id) const {
  for (const BenchCup& cup : cups_) {
    for (const BenchTest& test : cup.tests) {
      if (test.id == id) return &test;
    }
  }
  return nullptr;
}

const BenchCup* PaletteSession::CupOfTest(TestId id) const {
  for (const BenchCup& cup : cups_) {
    for (const BenchTest& test : cup.tests) {
      if (test.id == id) return &cup;
    }
  }
  return nullptr;
}

std::optional<EntryNumber> PaletteSession::NextUndo() const {
  if (undo_.empty()) return std::nullopt;
  return undo_.back();
}

std::optional<EntryNumber> PaletteSession::NextRedo() const {
  if (redo_.empty()) return std::nullopt;
  return redo_.back();
}

const LogEntry* PaletteSession::FindEntry(EntryNumber number) const {
  const auto found =
      std::lower_bound(log_.begin(),
                       log_.end(),
                       number,
                       [](const LogEntry& entry, EntryNumber wanted) {
                         return entry.number < wanted;
                       });
  return found != log_.end() && found->number == number ? &*found : nullptr;
}

Result<void> PaletteSession::Check(const EntryWhat& what) const {
  const auto cup_known = [&](CupId id) -> Result<void> {
    if (FindCup(id) == nullptr) return NoCup();
    return {};
  };
  const auto one_base = [&](const CupDetails& details,
                            CupId self) -> Result<void> {
    const BenchCup* base = BaseCoat();
    if (details.role == CupRole::kBaseCoat && base != nullptr &&
        base->id != self) {
      return Invalid("'" + base->details.label +
                     "' is the base coat already; there is one on a bench.");
    }
    return {};
  };
  return std::visit(
      Overloaded{
          [&](const CupAdded& added) -> Result<void> {
            if (auto fits = CheckDetails(added.cup); !fits) return fits;
            return one_base(added.cup, 0);
          },
          [&](const CupChanged& changed) -> Result<void> {
            if (auto fits = cup_known(changed.cup); !fits) return fits;
            if (auto fits = CheckDetails(changed.details); !fits) return fits;
            return one_base(changed.details, changed.cup);
          },
          [&](const CupRemoved& removed) { return cup_known(removed.cup); },
          [&](const TestTaken& taken) { return cup_known(taken.cup); },
          [&](const TestSetAside& aside) -> Result<void> {
            const BenchTest* test = FindTest(aside.test);
            if (test == nullptr) return NoTest();
            if (test->set_aside) {
              return Invalid("This test is set aside already.");
            }
            return {};
          },
          [&](const TestTakenBack& back) -> Result<void> {
            const BenchTest* test = FindTest(back.test);
            if (test == nullptr) return NoTest();
            if (!test->set_aside) {
              return Invalid("This test was not set aside.");
            }
            return {};
          },
          [&](const EventCorrected& corrected) -> Result<void> {
            const BenchTest* test = FindTest(corrected.test);
            if (test == nullptr) return NoTest();
            const TestKind kind = test->film.measurement.kind;
            if (!HasEvent(kind, corrected.event)) {
              return Invalid(std::string("A ") + TestKindName(kind) +
                             " test has no event '" +
                             TestEventName(corrected.event) + "'.");
            }
            if (!Within(corrected.at_s, 0.0, test->film.duration_s)) {
              return Invalid(
                  "The moment must lie within the film; give seconds of real "
                  "time since its first frame.");
            }
            return {};
          },
          [&](const ThinnerAdded& added) -> Result<void> {
            if (auto fits = cup_known(added.cup); !fits) return fits;
            if (auto fits = CheckUnit(added.unit); !fits) return fits;
            return CheckAmount(added.ml);
          },
          [&](const ReservePutBack& put) -> Result<void> {
            if (auto fits = cup_known(put.cup); !fits) return fits;
            return CheckAmount(put.ml);
          },
          [&](const Stirred& stirred) { return cup_known(stirred.cup); },
          [&](const RoomMeasured& room) -> Result<void> {
            if (!Within(room.room_c, -20.0, 60.0)) {
              return Invalid(
                  "The room temperature must lie between -20 and 60 degrees "
                  "Celsius.");
            }
            return {};
          },
          [&](const SettingsChanged& changed) {
            return CheckSettings(changed.settings);
          },
          [&](const CupLearned& learned) { return cup_known(learned.cup); },
          [&](const PourMade& pour) { return CheckPour(pour); },
          [&](const PhotoTaken& photo) -> Result<void> {
            if (photo.path.empty()) {
              return Invalid("There is no photo; name its file.");
            }
            if (photo.cup && FindCup(*photo.cup) == nullptr) return NoCup();
            return {};
          },
          [&](const FaultSeen& seen) -> Result<void> {
            if (seen.fault.empty()) {
              return Invalid("It is not said what was seen; name the fault.");
            }
            return {};
          },
          [](const PourJudged&) -> Result<void> { return {}; },
          [&](const CellsTested& cells) -> Result<void> {
            if (cells.after_s && !Within(*cells.after_s, 0.0, 3600.0)) {
              return Invalid("A cell test takes 0 to 3600 seconds.");
            }
            if (cells.additive_parts &&
                !Within(*cells.additive_parts, 0.0, 100.0)) {
              return Invalid("Additive to one part of paint must be 0 to 100.");
            }
            if (cells.counted &&
                (cells.counted->cells < 1 || !(cells.counted->per_cm2 > 0.0) ||
                 !(cells.counted->median_mm > 0.0))) {
              return Invalid("What was counted must be more than nothing.");
            }
            if (cells.cup) return cup_known(*cells.cup);
            return {};
          },
          [&](const NoteTaken& note) -> Result<void> {
            if (note.text.empty()) return Invalid("The note is empty.");
            if (note.cup) return cup_known(*note.cup);
            return {};
          },
          [&](const Undone& undone) -> Result<void> {
            if (NextUndo() != undone.entry) {
              return Invalid("There is nothing to undo.");
            }
            return {};
          },
          [&](const Redone& redone) -> Result<void> {
            if (NextRedo() != redone.entry) {
              return Invalid("There is nothing to redo.");
            }
            return {};
          },
          [](const SessionClosed&) -> Result<void> { return {}; },
          [](const SessionReopened&) -> Result<void> { return {}; },
          [](const ForeignEntry&) -> Result<void> { return {}; },
      },
      what);
}

}  // namespace flowkin
