#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "calibration/store/session_store.h"
#include "core/planning/faults.h"
#include "core/planning/keeping.h"
#include "core/planning/practice.h"
#include "core/planning/readiness.h"
#include "core/planning/technique.h"

namespace flowkin {

struct Board;

/// A fault with the causes commonly named for it, weighed against the day.
struct ExplainedFault {
  UtcTime at;
  FaultSeen seen;
  std::vector<Cause> causes;  ///< empty for a fault the guide does not know
};

/// One day as the journal shows it.
struct JournalPage {
  SessionLine line;
  PaletteSession session;
  std::optional<DayFacts> facts;  ///< of the pour; none before it
  std::vector<ExplainedFault> faults;
};

/// What her pours add up to.
struct LearnedPractice {
  int pours = 0;
  int judged = 0;
  LearnedBand band;
  /// By technique, then role; from pours she judged good.
  std::map<std::string, std::map<CupRole, LearnedTarget>> targets;
  /// By technique: planned against used.
  std::map<std::string, LearnedUse> use;
  std::map<std::string, std::vector<PastPour>> past;
};

enum class ReminderKind {
  kTouchDry,
  kVarnish,
  kLaterPhoto,  ///< a month after the pour, to see whether faults came late
  kJudge,       ///< dry, but not judged yet
};
/// "touch dry", "varnish", ...
const char* ReminderKindName(ReminderKind kind);

struct Reminder {
  ReminderKind kind = ReminderKind::kTouchDry;
  Day from;  ///< not before this day
  std::optional<Day> by;
  SessionId session = 0;
  std::string name;
  std::string says;              ///< all of it
  std::string plain;             ///< the same without the reasons
  std::vector<std::string> why;  ///< reasons for the late end, and warnings
};

/// The days at the bench, read only.
class Journal {
 public:
  static Result<Journal> Open(const std::string& store_path);

  Result<std::vector<SessionLine>> Search(const std::string& words,
                                          int most = 100) const;
  Result<JournalPage> Page(SessionId id) const;
  Result<LearnedPractice> Learned() const;
  /// Of pours of the last `days`, by the day they are due.
  Result<std::vector<Reminder>> Reminders(Day today, int days = 60) const;

 private:
  explicit Journal(SessionStore store) : store_(std::move(store)) {}
  SessionStore store_;
};

/// The facts of the board as it stands, for the last check before a pour.
DayFacts FactsOfBoard(const Board& board);
/// The facts of a pour as they were written down.
DayFacts FactsOfPour(const PourMade& pour, std::optional<double> room_c);

/// The check, with the cautions that belong to a pour.
struct ReadyReport {
  Readiness readiness;
  std::vector<std::string> cautions;
};
Result<ReadyReport> CheckTable(const DayFacts& facts);

/// The cautions that belong to what is due: resin and solvents once it is time
/// for a varnish.
std::vector<std::string> CautionsOf(const std::vector<Reminder>& reminders);

}  // namespace flowkin
