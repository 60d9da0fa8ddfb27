#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/base/utc_time.h"
#include "core/flow/measurement.h"
#include "core/session/cup.h"

namespace flowkin {

// A day at the bench as an append-only log. Entries are numbered from 1 in the
// order in which they were written, by whichever program; a cup is known by the
// number of the entry that put it on the bench, a test by the number of the
// entry that recorded it. Nothing is ever taken out: changing one's mind is an
// entry of its own.

using EntryNumber = std::int64_t;
using CupId = EntryNumber;
using TestId = EntryNumber;

enum class CupRole {
  kBaseCoat,  ///< the reference; one on the bench
  kColour,
  kActivator,  ///< paint with flow additive
};

/// "base_coat", "colour" or "activator".
const char* CupRoleName(CupRole role);

/// Colour of a swatch, sRGB (IEC 61966-2-1), 8 bits a channel.
struct SwatchColour {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;

  bool operator==(const SwatchColour&) const = default;
};

/// A cup as she describes it.
struct CupDetails {
  std::string label;  ///< what she calls the cup
  CupRole role = CupRole::kColour;
  PaintKey paint;  ///< brand and colour word; brand empty: unknown paint
  std::optional<SwatchColour> swatch;
  /// Before any addition, 1 to 20000 mL; without it no dose can be named.
  std::optional<double> volume_ml;
  double target_ratio = 1.0;         ///< to the base coat, 0.2 to 5
  std::optional<double> reserve_ml;  ///< kept back unthinned, 0 to 20000
  ThinnerKind thinner = ThinnerKind::kWater;  ///< what it is thinned with
  /// ln of that thinner's own ratio to the base coat, where it was tested.
  std::optional<Estimate> thinner_ln_ratio;
  std::optional<DoseUnit> unit;  ///< her unit for this cup; else the bench's
};

/// How this bench works; an entry of its own when it changes.
struct BenchSettings {
  double band = 0.15;                 ///< see CompareOptions, 0.02 to 1
  double smallest_step_ml = 0.25;     ///< what can be measured out, > 0
  std::optional<DoseUnit> unit;       ///< for cups without their own
  TestKind test = TestKind::kStream;  ///< until one was filmed
  int base_films = 3;                 ///< wanted of the base coat, 1 to 20
  int cup_films = 1;  ///< wanted of a cup after a change, 1 to 20
  /// A cup is filmed again before the pour when its last film is older.
  double recheck_min = 60.0;  ///< 1 to 1440
};

/// What is kept of one filmed test, enough to measure the film again.
struct FilmedTest {
  FlowMeasurement measurement;
  std::string film;  ///< path of the clip as it was measured
  double duration_s = 0.0;
  double time_scale = 1.0;
  std::optional<double> volume_ml;  ///< of a puddle
  std::optional<double> mm_per_px;  ///< as given
  std::optional<double> shot_fps;   ///< as given
  /// What was known of the clip itself: damage, lost frames.
  std::vector<std::string> clip_warnings;
};

/// What of a measurement she may set by hand.
enum class TestEvent { kLift, kBreak, kLaid, kStart };

/// "lift", "break", "laid" or "start".
const char* TestEventName(TestEvent event);
std::optional<TestEvent> TestEventFromName(const std::string& name);
/// Whether a test of `kind` has it.
bool HasEvent(TestKind kind, TestEvent event);

// --- What an entry can say ---------------------------------------------------

struct CupAdded {
  CupDetails cup;
};
struct CupChanged {
  CupId cup = 0;
  CupDetails details;  ///< all of them, as they are from now on
};
struct CupRemoved {
  CupId cup = 0;
};
struct TestTaken {
  CupId cup = 0;
  FilmedTest test;
  std::optional<double> room_c;  ///< degrees Celsius, where known
};
struct TestSetAside {
  TestId test = 0;
};
struct TestTakenBack {
  TestId test = 0;
};
struct EventCorrected {
  TestId test = 0;
  TestEvent event = TestEvent::kBreak;
  double at_s = 0.0;  ///< since the clip's first frame
  /// The film measured again with every correction so far.
  FlowMeasurement measurement;
};
struct ThinnerAdded {
  CupId cup = 0;
  double ml = 0.0;  ///< > 0
  ThinnerKind thinner = ThinnerKind::kWater;
  /// As she measured it out, where not in mL.
  std::optional<double> units;
  std::optional<DoseUnit> unit;
};
struct ReservePutBack {
  CupId cup = 0;
  double ml = 0.0;  ///< > 0
};
struct Stirred {
  CupId cup = 0;
};
struct RoomMeasured {
  double room_c = 0.0;  ///< -20 to 60
};
struct SettingsChanged {
  BenchSettings settings;
};
/// The cup went into the brand book. Not undone by Undo: the book forgets by
/// itself (brand_book.h).
struct CupLearned {
  CupId cup = 0;
};
/// What the board said of a cup when it was poured.
struct PouredCup {
  CupId cup = 0;
  std::string label;
  CupRole role = CupRole::kColour;
  double target = 1.0;
  /// ln of its ratio to the base coat; its sd is the standard uncertainty.
  std::optional<Estimate> ln_ratio;
  std::optional<Interval> interval;  ///< of the ratio itself
  std::optional<double> water_share;
};
/// The picture was poured. Amounts in mL, thickness in mm.
struct PourMade {
  std::string technique;
  std::optional<double> planned_ml;
  /// By how much her earlier pours had corrected planned_ml already.
  double plan_factor = 1.0;
  std::optional<double> used_ml;
  std::optional<double> wet_mm;
  std::optional<double> dry_mm;
  std::optional<double> humidity_percent;
  std::optional<double> rested_min;
  std::optional<bool> strained;
  double band = 0.15;
  std::vector<PouredCup> cups;
  std::string text;
};
enum class PhotoKind { kWet, kDry, kLater, kCells };
/// "wet", "dry", "later" or "cells".
const char* PhotoKindName(PhotoKind kind);
std::optional<PhotoKind> PhotoKindFromName(const std::string& name);
struct PhotoTaken {
  PhotoKind kind = PhotoKind::kWet;
  std::string path;
  std::optional<CupId> cup;
  std::string text;
};
/// What a drop of activator did on the wet wall of a cup or on a tile.
enum class CellsSeen {
  kLacing,   ///< cells open: it works
  kNone,     ///< no reaction: wrong paint, or too little additive
  kBlob,     ///< too thick: it sits as a blob
  kDrowned,  ///< too thin: it sinks, or covers all in cells like foam
};
/// "lacing", "none", "blob" or "drowned".
const char* CellsSeenName(CellsSeen seen);
std::optional<CellsSeen> CellsSeenFromName(const std::string& name);
/// What was counted on a photo of it; the intervals are of level 0.95.
struct CellsCounted {
  int cells = 0;
  double per_cm2 = 0.0;
  Interval per_cm2_interval;
  double median_mm = 0.0;  ///< diameter
  Interval median_mm_interval;
};
struct CellsTested {
  CellsSeen seen = CellsSeen::kNone;
  std::optional<double> after_s;  ///< from drop to verdict, 0 to 3600
  std::optional<CupId> cup;       ///< of the activator
  /// Flow additive to one of paint by volume, as it was mixed.
  std::optional<double> additive_parts;
  /// ln of the activator's ratio to the base coat at that moment, if tested.
  std::optional<Estimate> ln_ratio;
  std::string photo;  ///< path; may be empty
  std::string text;
  std::optional<CellsCounted> counted;
};
/// Something seen on the picture; the names are those of the fault guide.
struct FaultSeen {
  std::string fault;
  std::string text;
};
enum class PourVerdict { kGood, kFair, kPoor };
/// "good", "fair" or "poor".
const char* PourVerdictName(PourVerdict verdict);
std::optional<PourVerdict> PourVerdictFromName(const std::string& name);
struct PourJudged {
  PourVerdict verdict = PourVerdict::kFair;
  std::string text;
};
struct NoteTaken {
  std::optional<CupId> cup;
  std::string text;
};
/// Takes an action back, or puts it in force again.
struct Undone {
  EntryNumber entry = 0;
};
struct Redone {
  EntryNumber entry = 0;
};
/// The day is over; its films may go.
struct SessionClosed {};
struct SessionReopened {};
/// Written by a newer program: kept, without effect here.
struct ForeignEntry {
  std::string kind;
  std::string body;
};

using EntryWhat = std::variant<CupAdded,
                               CupChanged,
                               CupRemoved,
                               TestTaken,
                               TestSetAside,
                               TestTakenBack,
                               EventCorrected,
                               ThinnerAdded,
                               ReservePutBack,
                               Stirred,
                               RoomMeasured,
                               SettingsChanged,
                               CupLearned,
                               NoteTaken,
                               PourMade,
                               PhotoTaken,
                               FaultSeen,
                               PourJudged,
                               CellsTested,
                               Undone,
                               Redone,
                               SessionClosed,
                               SessionReopened,
                               ForeignEntry>;

struct LogEntry {
  EntryNumber number = 0;  ///< 1, 2, 3, ... in one session
  UtcTime at;
  EntryWhat what;
};

// --- What the log adds up to -------------------------------------------------

/// A test with what happened to it since.
struct BenchTest {
  TestId id = 0;
  UtcTime at;
  FilmedTest film;  ///< its measurement as corrected
  std::optional<double> room_c;
  bool set_aside = false;
  /// Events set by hand, newest last, each event once.
  std::vector<EventCorrected> corrections;

  bool Counts() const {
    return !set_aside && film.measurement.outcome == Outcome::kMeasured;
  }
};

/// A change of what is in the cup.
struct BenchAddition {
  UtcTime at;
  bool reserve = false;  ///< unthinned paint put back; else thinner
  double ml = 0.0;
  ThinnerKind thinner = ThinnerKind::kWater;
  std::optional<double> units;
  std::optional<DoseUnit> unit;
  /// Index into BenchCup::tests: the first test after it.
  std::size_t before_test = 0;
};

struct BenchCup {
  CupId id = 0;
  CupDetails details;
  std::vector<BenchTest> tests;          ///< oldest first
  std::vector<BenchAddition> additions;  ///< oldest first
  std::optional<UtcTime> stirred_at;
  std::optional<UtcTime> learned_at;

  /// Index of the first test after the last addition (tests.size() where there
  /// is none yet).
  std::size_t FirstTestNow() const;
  double ThinnerMl() const;  ///< all thinners together
  double WaterMl() const;    ///< added water alone
  double ReservePutBackMl() const;
  /// Start volume, thinners and reserve; empty without a start volume.
  std::optional<double> VolumeNowMl() const;
  /// Added water over the whole cup; empty without a start volume.
  std::optional<double> WaterShare() const;
};

/// The journal's part of a session, as far as it is in force.
struct BenchJournal {
  struct Note {
    UtcTime at;
    std::optional<CupId> cup;
    std::string text;
  };
  struct Photo {
    UtcTime at;
    PhotoTaken photo;
  };
  struct Seen {
    UtcTime at;
    FaultSeen fault;
  };
  struct Cells {
    UtcTime at;
    CellsTested test;
  };
  std::vector<Note> notes;
  std::vector<Photo> photos;
  std::vector<Seen> faults;
  std::vector<Cells> cells;
  std::optional<PourMade> pour;  ///< the newest
  std::optional<UtcTime> poured_at;
  std::optional<PourJudged> judged;  ///< the newest
};

/// Fold over the log. Entries that no longer make sense (of a cup that another
/// program removed meanwhile) stay in the log without effect.
class PaletteSession {
 public:
  PaletteSession() = default;

  /// Takes entries in; their numbers must go on from the last one.
  void Append(LogEntry entry);

  const std::vector<LogEntry>& log() const { return log_; }
  EntryNumber LastNumber() const {
    return log_.empty() ? 0 : log_.back().number;
  }

  /// On the bench now, in the order they came.
  const std::vector<BenchCup>& cups() const { return cups_; }
  const BenchCup* FindCup(CupId id) const;     ///< null if not on the bench
  const BenchCup* BaseCoat() const;            ///< null if there is none
  const BenchTest* FindTest(TestId id) const;  ///< of a cup on the bench
  const BenchCup* CupOfTest(TestId id) const;
  const BenchSettings& settings() const { return settings_; }
  /// Room temperature, degrees Celsius, and when it was read.
  std::optional<double> room_c() const { return room_c_; }
  std::optional<UtcTime> room_at() const { return room_at_; }
  bool closed() const { return closed_; }
  const BenchJournal& journal() const { return journal_; }

  /// The action Undo takes back: the newest in force; empty if none is left.
  std::optional<EntryNumber> NextUndo() const;
  /// The action Redo puts in force again; empty where none was undone, or
  /// something new was done since.
  std::optional<EntryNumber> NextRedo() const;
  const LogEntry* FindEntry(EntryNumber number) const;

  /// One sentence where `what` makes no sense as the next entry: a value out of
  /// range, a cup that is not on the bench, a second base coat.
  Result<void> Check(const EntryWhat& what) const;

 private:
  void Fold();
  void Apply(const LogEntry& entry);
  BenchCup* Cup(CupId id);

  std::vector<LogEntry> log_;
  std::vector<BenchCup> cups_;
  BenchSettings settings_;
  std::optional<double> room_c_;
  std::optional<UtcTime> room_at_;
  bool closed_ = false;
  BenchJournal journal_;
  std::vector<EntryNumber> undo_;  ///< actions in force, oldest first
  std::vector<EntryNumber> redo_;  ///< actions undone, newest last
};

}  // namespace flowkin
