#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/usecases/advise_dose.h"
#include "app/usecases/brand_book.h"
#include "calibration/store/session_store.h"
#include "core/base/result.h"
#include "core/base/utc_time.h"
#include "core/flow/compare.h"
#include "core/session/palette_session.h"

namespace flowkin {

// The bench as a front end shows it. Data only: a front end words sentences in
// the artist's language from the enumerators and numbers below.

/// What is to be done next with a cup.
enum class StepKind {
  kNothing,         ///< matched and fresh, or all its films are taken
  kFilm,            ///< film `films` more of `test`
  kStirAndFilm,     ///< stir, wait 15 s, film `test`
  kAdd,             ///< add `amount_ml` (`amount_units`) of `thinner`
  kPutReserveBack,  ///< too thin: put `amount_ml` of the unthinned mix back
  kThicken,         ///< too thin and no reserve helps: stir in thicker paint
  kUseMedium,       ///< more water would pass the share that is advised
  kUseFinerUnit,    ///< one of her unit is too much; at most `amount_ml` at
                    ///< once, or, without an amount, stop here or film again
  kOtherThinner,    ///< this thinner is hardly thinner than the target
  kSayVolume,       ///< no dose without the cup's volume
  kFilmBaseCoat,    ///< the base coat must be filmed first (or more)
};

/// Why.
enum class StepReason {
  kNone,
  kNoFilm,         ///< never filmed in this state
  kNewAddition,    ///< something was added since the last film
  kTooFewFilms,    ///< fewer than the settings ask for
  kUndecided,      ///< the interval is too wide to act on
  kDoubtful,       ///< the last test does not fit the others
  kNotComparable,  ///< its films and the base coat's do not compare
  kStood,          ///< the last film is older than settings.recheck_min
  kBaseCoatAged,   ///< the base coat was filmed more than two hours ago
  kRoomMoved,      ///< the room is more than 2 degrees C off since then
  kThicker,
  kThinner,
};

/// Names for documents: "add", "stir_and_film", "too_few_films", ...
const char* StepKindName(StepKind kind);
const char* StepReasonName(StepReason reason);

struct NextStep {
  StepKind kind = StepKind::kNothing;
  StepReason reason = StepReason::kNone;
  TestKind test = TestKind::kStream;  ///< which test to film
  int films = 0;                      ///< how many more
  std::optional<double> amount_ml;
  std::optional<double> amount_units;  ///< whole units of `unit`
  std::optional<DoseUnit> unit;        ///< hers, where she has one
  ThinnerKind thinner = ThinnerKind::kWater;
  /// kPutReserveBack: the whole repair, of which amount_ml is the first part.
  std::optional<double> total_ml;
};

/// Films of one kind of test of a cup as it stands now.
struct FilmTally {
  TestKind test = TestKind::kStream;
  int counted = 0;
  int set_aside = 0;
  int refused = 0;
  int wanted_more = 0;  ///< "two more"
};

/// One card of the board.
struct BoardCup {
  CupId id = 0;
  CupDetails details;  ///< label, role, paint, swatch, target, volume, unit
  bool base_coat = false;

  /// Against the base coat, from its newest films; refused or missing where
  /// there is no ratio. The base coat has none.
  std::optional<Comparison> comparison;
  /// The comparison was made before the newest addition.
  bool before_addition = false;
  /// Verdict of the comparison, or a match that all tests of the cup together
  /// prove; missing without a comparison and after an addition.
  std::optional<MatchVerdict> verdict;
  bool matched = false;  ///< verdict is kMatch
  /// What the dose rests on and says; missing without a ratio or a volume.
  std::optional<DoseRequest> request;
  std::optional<DoseReport> dose;
  bool brand_known = false;  ///< the book knows its brand's curve

  std::vector<FilmTally> films;  ///< kinds that were filmed or are wanted
  std::optional<double> volume_now_ml;
  double thinner_ml = 0.0;            ///< all that was added
  std::optional<double> water_share;  ///< of the whole cup, 0 to 1
  std::optional<double> reserve_left_ml;
  std::optional<double> minutes_since_stirred;  ///< a film counts as a stir
  std::optional<double> minutes_since_film;
  /// kStood, kBaseCoatAged or kRoomMoved: due for another film; else kNone.
  StepReason recheck = StepReason::kNone;
  NextStep step;
  std::vector<std::string> warnings;  ///< of films and comparison
  std::vector<std::string> cautions;  ///< of the dose
  bool can_learn = false;  ///< matched, of a brand, with something to learn
  std::optional<UtcTime> learned_at;
};

struct Board {
  SessionId session = 0;
  std::string session_name;
  bool closed = false;
  BenchSettings settings;
  std::optional<double> room_c;
  std::vector<BoardCup> cups;  ///< in the order they came; base coat first
  bool has_base_coat = false;
  bool may_pour = false;  ///< every cup matches and none is due for a film
  /// The cup to treat next; it is also the one that holds the pour back. Empty
  /// where everything may be poured or the bench is empty.
  std::optional<CupId> next_cup;
  bool can_undo = false;
  bool can_redo = false;
};

/// A day at the bench on top of the store: every verb is in the file when it
/// returns, so a crash or a power cut loses nothing. Times come from the
/// caller. Not for several threads at once; several programs may work on one
/// session (see Refresh).
///
/// Verbs fail with kInvalidArgument where they make no sense (a cup that is not
/// on the bench), and as the store fails; then nothing was changed.
class Bench {
 public:
  /// Opens or makes the store; CalibrationStore::DefaultPath() where empty.
  static Result<Bench> Open(const std::string& store_path);
  Bench(Bench&&) noexcept;
  Bench& operator=(Bench&&) noexcept;
  ~Bench();

  const std::string& store_path() const;

  // Sessions. A bench without a session has an empty board; its verbs fail.
  Result<std::vector<SessionLine>> Sessions() const;  ///< newest entry first
  Result<SessionId> NewSession(const std::string& name, UtcTime now);
  Result<void> OpenSession(SessionId id);
  /// The session last worked on that is not closed; false if there is none.
  Result<bool> OpenLastSession();
  Result<void> CloseSession(UtcTime now);
  Result<void> ReopenSession(UtcTime now);
  bool HasSession() const;
  /// Films that any session which is not closed refers to, for FilmShelf.
  Result<std::vector<std::string>> NeededFilms() const;
  const PaletteSession& session() const;
  /// Takes in what other programs wrote meanwhile; true if there was anything.
  /// Cheap enough to be called twice a second.
  Result<bool> Refresh();

  Result<CupId> AddCup(const CupDetails& cup, UtcTime now);
  Result<void> ChangeCup(CupId cup, const CupDetails& details, UtcTime now);
  Result<void> RemoveCup(CupId cup, UtcTime now);
  /// A refused film is recorded too; it just does not count.
  Result<TestId> RecordTest(CupId cup, const FilmedTest& test, UtcTime now);
  Result<void> SetAsideTest(TestId test, UtcTime now);
  Result<void> TakeBackTest(TestId test, UtcTime now);
  /// `remeasured`: the film measured again with the options that
  /// CorrectionOptions (filmed_test.h) gives for this correction.
  Result<void> CorrectEvent(TestId test,
                            TestEvent event,
                            double at_s,
                            const FlowMeasurement& remeasured,
                            UtcTime now);
  /// `units`: as she measured it out, of the cup's unit; `ml` is what counts.
  Result<void> RecordAddition(CupId cup,
                              double ml,
                              ThinnerKind thinner,
                              std::optional<double> units,
                              UtcTime now);
  Result<void> PutReserveBack(CupId cup, double ml, UtcTime now);
  Result<void> RecordStir(CupId cup, UtcTime now);
  Result<void> SetRoomTemperature(double room_c, UtcTime now);
  Result<void> ChangeSettings(const BenchSettings& settings, UtcTime now);
  Result<void> TakeNote(std::optional<CupId> cup,
                        const std::string& text,
                        UtcTime now);
  /// The cups' ratios and shares of water are taken from the board as it
  /// stands; `pour` brings the rest.
  Result<void> RecordPour(PourMade pour, UtcTime now);
  Result<void> RecordPhoto(const PhotoTaken& photo, UtcTime now);
  Result<void> RecordFault(const FaultSeen& fault, UtcTime now);
  Result<void> JudgePour(const PourJudged& judged, UtcTime now);
  /// The ratio of its cup is taken from the board as it stands.
  Result<void> RecordCells(CellsTested cells, UtcTime now);
  Result<void> Undo(UtcTime now);
  Result<void> Redo(UtcTime now);

  /// Puts a cup's history into the brand book, once she confirms the match.
  Result<LearnReport> Learn(CupId cup, UtcTime now);

  /// The board as it stands at `now`. Work is done only for cups that changed.
  Result<Board> State(UtcTime now) const;

  /// ForeseePath of a cup with a request on the board, from what its dose rests
  /// on.
  Result<std::vector<CupPathPoint>> Path(const BoardCup& cup,
                                         double until_ml) const;

 private:
  struct Impl;
  explicit Bench(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace flowkin
