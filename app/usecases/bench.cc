#include "app/usecases/bench.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <set>
#include <utility>

#include "app/usecases/bench_analysis.h"
#include "core/base/check.h"

namespace flowkin {
namespace {

// As AdviseDose's cautions; commonly quoted, no source.
constexpr double kBaseAge_min = 120.0;
constexpr double kRoomDrift_c = 2.0;
/// A drop: nobody measures out less (common practice, no source).
constexpr double kLeastDose_ml = 0.05;
/// What a dose may be asked about (DoseRequest::Validate).
constexpr double kLeastRatio = 0.01;
constexpr double kMostRatio = 1000.0;
/// Filmed this often in one state without an answer, it is the base coat's own
/// error that is in the way.
constexpr double kBaseShare = 0.5;

Error NoSessionOpen() {
  return {ErrorCode::kInvalidArgument,
          "No session is open; begin one or choose one first."};
}

/// What the answer for one cup rests on, apart from the time.
struct Analysis {
  std::string key;                   ///< of everything it was worked out from
  std::optional<ComparedStage> now;  ///< newest stage that was filmed
  std::optional<DoseRequest> request;
  std::optional<DoseReport> dose;
  bool brand_known = false;
  std::string error;  ///< why there is no dose, where that is worth saying
};

class Key {
 public:
  void Add(const std::string& text) {
    text_ += std::to_string(text.size()) + ':' + text;
  }
  void Add(double number) {
    char digits[40];
    std::snprintf(digits, sizeof(digits), "%a|", number);
    text_ += digits;
  }
  void Add(std::int64_t number) { text_ += std::to_string(number) + '|'; }
  void Add(const std::optional<double>& number) {
    if (number) Add(*number);
    text_ += ';';
  }
  void Add(const std::optional<DoseUnit>& unit) {
    if (unit) {
      Add(unit->name);
      Add(unit->ml);
    }
    text_ += ';';
  }
  void Add(const BenchCup& cup) {
    Add(cup.id);
    for (const BenchTest& test : cup.tests) {
      if (!test.Counts()) continue;
      Add(test.id);
      for (const EventCorrected& by_hand : test.corrections) {
        Add(static_cast<std::int64_t>(by_hand.event));
        Add(by_hand.at_s);
      }
    }
    for (const BenchAddition& addition : cup.additions) {
      Add(addition.ml);
      Add(static_cast<std::int64_t>(addition.before_test));
      Add(std::int64_t{addition.reserve});
      Add(static_cast<std::int64_t>(addition.thinner));
    }
    const CupDetails& details = cup.details;
    Add(details.paint.brand);
    Add(details.paint.colour);
    Add(details.volume_ml);
    Add(details.target_ratio);
    Add(details.reserve_ml);
    Add(static_cast<std::int64_t>(details.thinner));
    Add(details.thinner_ln_ratio
            ? std::optional<double>(details.thinner_ln_ratio->value)
            : std::nullopt);
    Add(details.thinner_ln_ratio
            ? std::optional<double>(details.thinner_ln_ratio->sd)
            : std::nullopt);
    Add(details.unit);
  }
  std::string Take() { return std::move(text_); }

 private:
  std::string text_;
};

std::optional<double> ReserveLeft(const BenchCup& cup) {
  if (!cup.details.reserve_ml) return std::nullopt;
  return std::max(0.0, *cup.details.reserve_ml - cup.ReservePutBackMl());
}

std::optional<DoseUnit> UnitOf(const BenchCup& cup,
                               const BenchSettings& settings) {
  return cup.details.unit ? cup.details.unit : settings.unit;
}

std::optional<DoseRequest> RequestFor(const BenchCup& cup,
                                      const std::vector<ComparedStage>& stages,
                                      const BenchSettings& settings,
                                      const std::vector<double>& other_shares) {
  if (!cup.details.volume_ml) return std::nullopt;
  DoseRequest request;
  request.cup = HistoryOf(cup, stages);
  if (request.cup.tests.empty()) return std::nullopt;
  for (const CupTest& test : request.cup.tests) {
    if (!(test.ratio >= kLeastRatio && test.ratio <= kMostRatio)) {
      return std::nullopt;
    }
  }
  request.band = settings.band;
  request.target_ratio = cup.details.target_ratio;
  request.unit = UnitOf(cup, settings);
  request.smallest_step_ml =
      request.unit ? request.unit->ml : settings.smallest_step_ml;
  request.reserve_ml = ReserveLeft(cup);
  // Stages held against different rounds of the base coat share less than
  // this; the least of them is common to all in any case.
  request.common_rel_sd = stages.front().common_rel_sd;
  for (const ComparedStage& stage : stages) {
    request.common_rel_sd =
        std::min(request.common_rel_sd, stage.common_rel_sd);
  }
  request.bench.other_water_shares = other_shares;
  return request;
}

std::vector<FilmTally> Tally(const BenchCup& cup,
                             TestKind usual,
                             const std::set<TestKind>& wanted_kinds,
                             const std::vector<const BenchTest*>& counting,
                             int wanted) {
  std::map<TestKind, FilmTally> tallies;
  for (const TestKind kind : wanted_kinds) tallies[kind];
  for (std::size_t i = cup.FirstTestNow(); i < cup.tests.size(); ++i) {
    const BenchTest& test = cup.tests[i];
    FilmTally& tally = tallies[test.film.measurement.kind];
    if (test.set_aside) {
      ++tally.set_aside;
    } else if (!test.Counts()) {
      ++tally.refused;
    }
  }
  for (const BenchTest* test : counting) {
    ++tallies[test->film.measurement.kind].counted;
  }
  std::vector<FilmTally> list;
  for (auto& [kind, tally] : tallies) {
    tally.test = kind;
    if (wanted_kinds.count(kind) != 0) {
      tally.wanted_more = std::max(0, wanted - tally.counted);
    }
    list.push_back(tally);
  }
  // The usual test first.
  std::stable_partition(list.begin(), list.end(), [&](const FilmTally& tally) {
    return tally.test == usual;
  });
  return list;
}

/// The test she films: that of the newest film that counts.
TestKind UsualTest(const PaletteSession& session) {
  const BenchTest* newest = nullptr;
  for (const BenchCup& cup : session.cups()) {
    for (const BenchTest& test : cup.tests) {
      if (test.Counts() && (newest == nullptr || newest->id < test.id)) {
        newest = &test;
      }
    }
  }
  return newest != nullptr ? newest->film.measurement.kind
                           : session.settings().test;
}

std::optional<UtcTime> LastFilm(const std::vector<const BenchTest*>& tests) {
  std::optional<UtcTime> last;
  for (const BenchTest* test : tests) {
    if (!last || *last < test->at) last = test->at;
  }
  return last;
}

/// Fills what a card says of the cup itself.
BoardCup Card(const BenchCup& cup, UtcTime now) {
  BoardCup card;
  card.id = cup.id;
  card.details = cup.details;
  card.base_coat = cup.details.role == CupRole::kBaseCoat;
  card.volume_now_ml = cup.VolumeNowMl();
  card.thinner_ml = cup.ThinnerMl();
  card.water_share = cup.WaterShare();
  card.reserve_left_ml = ReserveLeft(cup);
  card.learned_at = cup.learned_at;
  std::optional<UtcTime> stirred = cup.stirred_at;
  if (!cup.tests.empty()) {
    const UtcTime filmed = cup.tests.back().at;
    // Clocks are set back now and then.
    card.minutes_since_film = std::max(0.0, MinutesBetween(filmed, now));
    // A test begins with stirring.
    if (!stirred || *stirred < filmed) stirred = filmed;
  }
  if (stirred) {
    card.minutes_since_stirred = std::max(0.0, MinutesBetween(*stirred, now));
  }
  return card;
}

/// How far a card is from done; cards with the highest are treated first.
double Urgency(const BoardCup& card) {
  if (card.step.kind == StepKind::kNothing) return -1.0;
  if (card.step.kind == StepKind::kFilmBaseCoat) return 0.0;
  // Nothing can be judged without the base coat.
  if (card.base_coat) return 60.0;
  // What was begun is finished first: paint just added must be stirred in.
  if (card.step.reason == StepReason::kNewAddition) return 50.0;
  const double distance =
      card.comparison && card.comparison->outcome == Outcome::kMeasured
          ? std::min(9.0,
                     std::abs(card.comparison->ratio.ln_ratio.value -
                              std::log(card.details.target_ratio)))
          : 0.0;
  // A cup that is done but has stood is filmed once more just before the pour.
  if (card.step.reason == StepReason::kStood) return 1.0 + distance;
  if (card.step.reason == StepReason::kNoFilm) return 40.0;
  // The farthest first: it takes the most additions.
  return 20.0 + distance;
}

}  // namespace

struct Bench::Impl {
  std::string path;
  CalibrationStore book;
  SessionStore store;
  SessionId id = 0;
  std::string name;
  PaletteSession session;
  int change_mark = 0;
  mutable std::map<CupId, Analysis> analyses;
  mutable std::map<std::pair<std::string, std::string>, BookPrior> priors;

  Impl(std::string path_in, CalibrationStore book_in, SessionStore store_in)
      : path(std::move(path_in)),
        book(std::move(book_in)),
        store(std::move(store_in)) {}

  Result<EntryNumber> Write(EntryWhat what, UtcTime now);
  Result<void> Do(EntryWhat what, UtcTime now);
  Result<bool> TakeIn();
  Result<void> Open(SessionId session_id);

  /// What the book says of the cup's paint and thinner, read once.
  Result<const BookPrior*> PriorOf(const CupDetails& cup) const;
  const Analysis& Analyse(const BenchCup& cup,
                          const BenchCup* base,
                          const std::vector<double>& other_shares) const;
  void FillBaseCoat(const BenchCup& base,
                    const std::set<TestKind>& kinds,
                    UtcTime now,
                    BoardCup& card) const;
  void FillCup(const BenchCup& cup,
               const BenchCup* base,
               const BoardCup* base_card,
               const std::vector<double>& other_shares,
               UtcTime now,
               BoardCup& card) const;
};

Bench::Bench(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Bench::Bench(Bench&&) noexcept = default;
Bench& Bench::operator=(Bench&&) noexcept = default;
Bench::~Bench() = default;

Result<Bench> Bench::Open(const std::string& store_path) {
  const std::string path =
      store_path.empty() ? CalibrationStore::DefaultPath() : store_path;
  auto book = CalibrationStore::Open(path, CalibrationStore::Access::kWrite);
  if (!book) return book.error();
  auto store = SessionStore::Open(path, SessionStore::Access::kWrite);
  if (!store) return store.error();
  return Bench(
      std::make_unique<Impl>(path, std::move(*book), std::move(*store)));
}

const std::string& Bench::store_path() const { return impl_->path; }

Result<std::vector<SessionLine>> Bench::Sessions() const {
  return impl_->store.Sessions();
}

Result<void> Bench::Impl::Open(SessionId session_id) {
  const auto mark = store.ChangeMark();
  if (!mark) return mark.error();
  auto lines = store.Sessions();
  if (!lines) return lines.error();
  auto entries = store.Since(session_id, 0);
  if (!entries) return entries.error();
  PaletteSession fresh;
  for (LogEntry& entry : *entries) fresh.Append(std::move(entry));
  session = std::move(fresh);
  id = session_id;
  name.clear();
  for (const SessionLine& line : *lines) {
    if (line.id == session_id) name = line.name;
  }
  change_mark = *mark;
  analyses.clear();
  return {};
}

Result<SessionId> Bench::NewSession(const std::string& name, UtcTime now) {
  auto id = impl_->store.Begin(name, now);
  if (!id) return id;
  if (auto opened = impl_->Open(*id); !opened) return opened.error();
  return id;
}

Result<void> Bench::OpenSession(SessionId id) { return impl_->Open(id); }

Result<bool> Bench::OpenLastSession() {
  const auto lines = impl_->store.Sessions();
  if (!lines) return lines.error();
  for (const SessionLine& line : *lines) {
    if (line.closed) continue;
    if (auto opened = impl_->Open(line.id); !opened) return opened.error();
    return true;
  }
  return false;
}

Result<void> Bench::CloseSession(UtcTime now) {
  return impl_->Do(SessionClosed{}, now);
}

Result<void> Bench::ReopenSession(UtcTime now) {
  return impl_->Do(SessionReopened{}, now);
}

Result<std::vector<std::string>> Bench::NeededFilms() const {
  return impl_->store.FilmsOfOpenSessions();
}

bool Bench::HasSession() const { return impl_->id != 0; }

const PaletteSession& Bench::session() const { return impl_->session; }

Result<bool> Bench::Impl::TakeIn() {
  auto entries = store.Since(id, session.LastNumber());
  if (!entries) return entries.error();
  for (LogEntry& entry : *entries) session.Append(std::move(entry));
  return !entries->empty();
}

Result<bool> Bench::Refresh() {
  if (impl_->id == 0) return false;
  const auto mark = impl_->store.ChangeMark();
  if (!mark) return mark.error();
  if (*mark == impl_->change_mark) return false;
  auto any = impl_->TakeIn();
  if (!any) return any;
  impl_->change_mark = *mark;
  // Another program may have learned or forgotten a brand.
  impl_->priors.clear();
  impl_->analyses.clear();
  return any;
}

Result<EntryNumber> Bench::Impl::Write(EntryWhat what, UtcTime now) {
  if (id == 0) return NoSessionOpen();
  if (auto fits = session.Check(what); !fits) return fits.error();
  auto number = store.Append(id, session.LastNumber(), now, what);
  if (!number && number.error().code == ErrorCode::kRefused) {
    // Another program wrote meanwhile: look again whether it still fits.
    if (auto any = TakeIn(); !any) return any.error();
    if (auto fits = session.Check(what); !fits) return fits.error();
    number = store.Append(id, session.LastNumber(), now, what);
  }
  if (!number) return number;
  session.Append({*number, now, std::move(what)});
  return number;
}

Result<void> Bench::Impl::Do(EntryWhat what, UtcTime now) {
  auto written = Write(std::move(what), now);
  if (!written) return written.error();
  return {};
}

Result<CupId> Bench::AddCup(const CupDetails& cup, UtcTime now) {
  return impl_->Write(CupAdded{cup}, now);
}

Result<void> Bench::ChangeCup(CupId cup,
                              const CupDetails& details,
                              UtcTime now) {
  return impl_->Do(CupChanged{cup, details}, now);
}

Result<void> Bench::RemoveCup(CupId cup, UtcTime now) {
  return impl_->Do(CupRemoved{cup}, now);
}

Result<TestId> Bench::RecordTest(CupId cup,
                                 const FilmedTest& test,
                                 UtcTime now) {
  return impl_->Write(TestTaken{cup, test, impl_->session.room_c()}, now);
}

Result<void> Bench::SetAsideTest(TestId test, UtcTime now) {
  return impl_->Do(TestSetAside{test}, now);
}

Result<void> Bench::TakeBackTest(TestId test, UtcTime now) {
  return impl_->Do(TestTakenBack{test}, now);
}

Result<void> Bench::CorrectEvent(TestId test,
                                 TestEvent event,
                                 double at_s,
                                 const FlowMeasurement& remeasured,
                                 UtcTime now) {
  return impl_->Do(EventCorrected{test, event, at_s, remeasured}, now);
}

Result<void> Bench::RecordAddition(CupId cup,
                                   double ml,
                                   ThinnerKind thinner,
                                   std::optional<double> units,
                                   UtcTime now) {
  ThinnerAdded added{cup, ml, thinner, units, std::nullopt};
  if (const BenchCup* known = impl_->session.FindCup(cup); known && units) {
    added.unit = UnitOf(*known, impl_->session.settings());
  }
  return impl_->Do(std::move(added), now);
}

Result<void> Bench::PutReserveBack(CupId cup, double ml, UtcTime now) {
  return impl_->Do(ReservePutBack{cup, ml}, now);
}

Result<void> Bench::RecordStir(CupId cup, UtcTime now) {
  return impl_->Do(Stirred{cup}, now);
}

Result<void> Bench::SetRoomTemperature(double room_c, UtcTime now) {
  return impl_->Do(RoomMeasured{room_c}, now);
}

Result<void> Bench::ChangeSettings(const BenchSettings& settings, UtcTime now) {
  return impl_->Do(SettingsChanged{settings}, now);
}

Result<void> Bench::TakeNote(std::optional<CupId> cup,
                             const std::string& text,
                             UtcTime now) {
  return impl_->Do(NoteTaken{cup, text}, now);
}

Result<void> Bench::RecordPour(PourMade pour, UtcTime now) {
  const Result<Board> board = State(now);
  if (!board) return board.error();
  pour.band = board->settings.band;
  pour.cups.clear();
  for (const BoardCup& cup : board->cups) {
    if (cup.base_coat) continue;
    PouredCup poured;
    poured.cup = cup.id;
    poured.label = cup.details.label;
    poured.role = cup.details.role;
    poured.target = cup.details.target_ratio;
    if (cup.comparison && cup.comparison->outcome == Outcome::kMeasured &&
        !cup.before_addition) {
      poured.ln_ratio = cup.comparison->ratio.ln_ratio;
      poured.interval = cup.comparison->interval;
    }
    poured.water_share = cup.water_share;
    pour.cups.push_back(std::move(poured));
  }
  return impl_->Do(pour, now);
}

Result<void> Bench::RecordPhoto(const PhotoTaken& photo, UtcTime now) {
  return impl_->Do(photo, now);
}

Result<void> Bench::RecordFault(const FaultSeen& fault, UtcTime now) {
  return impl_->Do(fault, now);
}

Result<void> Bench::JudgePour(const PourJudged& judged, UtcTime now) {
  return impl_->Do(judged, now);
}

Result<void> Bench::RecordCells(CellsTested cells, UtcTime now) {
  cells.ln_ratio.reset();
  if (cells.cup) {
    const Result<Board> board = State(now);
    if (!board) return board.error();
    for (const BoardCup& cup : board->cups) {
      if (cup.id == *cells.cup && cup.comparison && !cup.before_addition &&
          cup.comparison->outcome == Outcome::kMeasured) {
        cells.ln_ratio = cup.comparison->ratio.ln_ratio;
      }
    }
  }
  return impl_->Do(std::move(cells), now);
}

Result<void> Bench::Undo(UtcTime now) {
  return impl_->Do(Undone{impl_->session.NextUndo().value_or(0)}, now);
}

Result<void> Bench::Redo(UtcTime now) {
  return impl_->Do(Redone{impl_->session.NextRedo().value_or(0)}, now);
}

Result<LearnReport> Bench::Learn(CupId cup, UtcTime now) {
  if (impl_->id == 0) return NoSessionOpen();
  if (auto fits = impl_->session.Check(CupLearned{cup}); !fits) {
    return fits.error();
  }
  const BenchCup& known = *impl_->session.FindCup(cup);
  if (known.details.paint.brand.empty()) {
    return Error{ErrorCode::kInvalidArgument,
                 "There is no brand to learn for; say whose paint it is."};
  }
  const Analysis& analysis =
      impl_->Analyse(known, impl_->session.BaseCoat(), {});
  if (!analysis.request) {
    return Error{ErrorCode::kRefused,
                 "This cup has no ratio to the base coat or no volume, so "
                 "there is nothing to learn yet."};
  }
  StoredCup stored;
  stored.paint = known.details.paint;
  stored.history = analysis.request->cup;
  stored.common_rel_sd = analysis.request->common_rel_sd;
  stored.learned_utc = FormatUtc(now);
  auto report = LearnCup(impl_->book, stored);
  if (!report) return report;
  impl_->priors.clear();
  impl_->analyses.clear();
  if (auto noted = impl_->Do(CupLearned{cup}, now); !noted) {
    return noted.error();
  }
  return report;
}

Result<const BookPrior*> Bench::Impl::PriorOf(const CupDetails& cup) const {
  const bool water = cup.thinner == ThinnerKind::kWater;
  // A colour's name holds no control character.
  const std::pair<std::string, std::string> paint{
      cup.paint.brand,
      water ? cup.paint.colour
            : std::string("\x01") + ThinnerKindName(cup.thinner)};
  auto known = priors.find(paint);
  if (known == priors.end()) {
    auto read = PriorFromBook(book, cup.paint, cup.thinner);
    if (!read) return read.error();
    known = priors.emplace(paint, std::move(*read)).first;
  }
  return &known->second;
}

Result<std::vector<CupPathPoint>> Bench::Path(const BoardCup& cup,
                                              double until_ml) const {
  FLOWKIN_CHECK(cup.request.has_value());
  const auto prior = impl_->PriorOf(cup.details);
  if (!prior) return prior.error();
  return ForeseePath(*cup.request, &(*prior)->prior, until_ml);
}

const Analysis& Bench::Impl::Analyse(
    const BenchCup& cup,
    const BenchCup* base,
    const std::vector<double>& other_shares) const {
  const BenchSettings& settings = session.settings();
  Key key;
  key.Add(cup);
  if (base != nullptr) key.Add(*base);
  key.Add(settings.band);
  key.Add(settings.smallest_step_ml);
  key.Add(settings.unit);
  key.Add(settings.recheck_min);
  for (const double share : other_shares) key.Add(share);
  const std::string now = key.Take();
  Analysis& analysis = analyses[cup.id];
  if (analysis.key == now) return analysis;

  analysis = {};
  analysis.key = now;
  if (base == nullptr) return analysis;
  CompareOptions options;
  options.band = settings.band;
  options.target = cup.details.target_ratio;
  std::vector<ComparedStage> stages;
  for (const CupStage& stage : StagesOf(cup, settings.recheck_min)) {
    stages.push_back(CompareStage(*base, stage, options));
  }
  if (stages.empty()) return analysis;
  analysis.now = stages.back();
  analysis.request = RequestFor(cup, stages, settings, other_shares);
  if (!analysis.request) return analysis;

  const auto prior = PriorOf(cup.details);
  if (!prior) {
    analysis.error = prior.error().message;
    return analysis;
  }
  analysis.brand_known =
      cup.details.thinner == ThinnerKind::kWater && (*prior)->known;
  auto dose = AdviseDose(*analysis.request, &(*prior)->prior);
  if (dose) {
    analysis.dose = std::move(*dose);
  } else {
    analysis.error = dose.error().message;
  }
  return analysis;
}

void Bench::Impl::FillBaseCoat(const BenchCup& base,
                               const std::set<TestKind>& kinds,
                               UtcTime now,
                               BoardCup& card) const {
  const BenchSettings& settings = session.settings();
  std::vector<const BenchTest*> counting;
  for (const TestKind kind : kinds) {
    const auto round = NewestRound(base, kind);
    counting.insert(counting.end(), round.begin(), round.end());
    const auto last = LastFilm(round);
    if (!last) continue;
    if (MinutesBetween(*last, now) > kBaseAge_min) {
      card.recheck = StepReason::kBaseCoatAged;
    }
    const auto& then = round.front()->room_c;
    if (then && session.room_c() &&
        std::abs(*session.room_c() - *then) > kRoomDrift_c) {
      card.recheck = StepReason::kRoomMoved;
    }
  }
  card.films =
      Tally(base, UsualTest(session), kinds, counting, settings.base_films);
  for (const FilmTally& tally : card.films) {
    if (tally.wanted_more == 0) continue;
    const bool stir = tally.counted == 0;
    card.step = {stir ? StepKind::kStirAndFilm : StepKind::kFilm,
                 tally.counted > 0        ? StepReason::kTooFewFilms
                 : base.additions.empty() ? StepReason::kNoFilm
                                          : StepReason::kNewAddition,
                 tally.test,
                 tally.wanted_more,
                 {},
                 {},
                 {},
                 base.details.thinner,
                 {}};
    return;
  }
  if (card.recheck != StepReason::kNone) {
    card.step.kind = StepKind::kStirAndFilm;
    card.step.reason = card.recheck;
    card.step.test = card.films.front().test;
    card.step.films = settings.base_films;
  }
}

void Bench::Impl::FillCup(const BenchCup& cup,
                          const BenchCup* base,
                          const BoardCup* base_card,
                          const std::vector<double>& other_shares,
                          UtcTime now,
                          BoardCup& card) const {
  const BenchSettings& settings = session.settings();
  const Analysis& analysis = Analyse(cup, base, other_shares);
  const std::vector<CupStage> stages = StagesOf(cup, settings.recheck_min);
  const bool filmed_now =
      !stages.empty() && stages.back().additions == cup.additions.size();
  const std::vector<const BenchTest*> counting =
      filmed_now ? stages.back().tests : std::vector<const BenchTest*>();
  std::set<TestKind> kinds;
  for (const BenchTest* test : counting) {
    kinds.insert(test->film.measurement.kind);
  }
  const TestKind usual = UsualTest(session);
  if (kinds.empty()) kinds.insert(usual);
  card.films = Tally(cup, usual, kinds, counting, settings.cup_films);

  if (analysis.now) card.comparison = analysis.now->comparison;
  card.before_addition = analysis.now && !filmed_now;
  card.request = analysis.request;
  card.brand_known = analysis.brand_known;
  const bool measured =
      card.comparison && card.comparison->outcome == Outcome::kMeasured;
  if (measured) card.warnings = card.comparison->warnings;
  for (const BenchTest* test : counting) {
    for (const auto* texts :
         {&test->film.clip_warnings, &test->film.measurement.warnings}) {
      card.warnings.insert(card.warnings.end(), texts->begin(), texts->end());
    }
  }
  if (!analysis.error.empty()) card.warnings.push_back(analysis.error);
  if (filmed_now) {
    card.dose = analysis.dose;
    if (measured) card.verdict = card.comparison->verdict;
    if (card.dose && card.dose->dose.advice == DoseAdvice::kMatch) {
      card.verdict = MatchVerdict::kMatch;
    }
    if (card.dose) card.cautions = card.dose->cautions;
  }
  card.matched = card.verdict == MatchVerdict::kMatch;
  card.can_learn = card.matched && !cup.learned_at && card.request &&
                   !cup.details.paint.brand.empty() &&
                   card.request->cup.Additions() > 0;
  const auto last = LastFilm(counting);
  if (last && MinutesBetween(*last, now) > settings.recheck_min) {
    card.recheck = StepReason::kStood;
  }

  NextStep& step = card.step;
  step.test = card.films.front().test;
  step.thinner = cup.details.thinner;
  step.unit = UnitOf(cup, settings);
  const auto film = [&](StepKind kind, StepReason reason, int films) {
    step.kind = kind;
    step.reason = reason;
    step.films = std::max(1, films);
    for (FilmTally& tally : card.films) {
      if (tally.test == step.test) tally.wanted_more = step.films;
    }
  };
  if (!filmed_now) {
    const bool added = !cup.additions.empty();
    const bool stirred = cup.stirred_at &&
                         (!added || cup.additions.back().at <= *cup.stirred_at);
    film(stirred ? StepKind::kFilm : StepKind::kStirAndFilm,
         added ? StepReason::kNewAddition : StepReason::kNoFilm,
         settings.cup_films);
    return;
  }
  if (card.recheck == StepReason::kStood) {
    film(StepKind::kStirAndFilm, StepReason::kStood, settings.cup_films);
    return;
  }
  if (card.films.front().wanted_more > 0) {
    film(StepKind::kFilm,
         StepReason::kTooFewFilms,
         card.films.front().wanted_more);
    return;
  }
  if (base_card == nullptr || !analysis.now ||
      (base_card->step.reason == StepReason::kNoFilm)) {
    step.kind = StepKind::kFilmBaseCoat;
    step.reason = StepReason::kNoFilm;
    return;
  }
  if (!measured) {
    step.kind = StepKind::kFilmBaseCoat;
    step.reason = StepReason::kNotComparable;
    return;
  }
  if (card.matched) return;
  if (!card.dose) {
    if (card.verdict == MatchVerdict::kUndecided || cup.details.volume_ml) {
      film(StepKind::kFilm, StepReason::kUndecided, 1);
    } else {
      step.kind = StepKind::kSayVolume;
      step.reason = card.verdict == MatchVerdict::kThicker
                        ? StepReason::kThicker
                        : StepReason::kThinner;
    }
    return;
  }
  const Dose& dose = card.dose->dose;
  switch (dose.advice) {
    case DoseAdvice::kAdd:
      step.kind = StepKind::kAdd;
      step.reason = StepReason::kThicker;
      step.amount_ml = card.dose->add_ml;
      step.amount_units = card.dose->add_units;
      break;
    case DoseAdvice::kMatch:
      break;
    case DoseAdvice::kMeasure: {
      const double sd = card.comparison->ratio.ln_ratio.sd;
      const double of_base = card.comparison->reference_rel_sd;
      if (of_base * of_base > kBaseShare * sd * sd &&
          card.comparison->num_cup >= card.comparison->num_reference) {
        step.kind = StepKind::kFilmBaseCoat;
        step.reason = StepReason::kUndecided;
      } else {
        film(StepKind::kFilm, StepReason::kUndecided, 1);
      }
      break;
    }
    case DoseAdvice::kRescue:
      step.kind =
          card.dose->add_ml ? StepKind::kPutReserveBack : StepKind::kThicken;
      step.reason = StepReason::kThinner;
      step.amount_ml = card.dose->add_ml;
      step.total_ml = card.dose->rescue_total_ml;
      break;
    case DoseAdvice::kLimit:
      step.kind = StepKind::kUseMedium;
      step.reason = StepReason::kThicker;
      break;
    case DoseAdvice::kTooCoarse:
      step.kind = StepKind::kUseFinerUnit;
      step.reason = StepReason::kThicker;
      if (dose.other_ml >= kLeastDose_ml) step.amount_ml = dose.other_ml;
      break;
    case DoseAdvice::kCannot:
      step.kind = StepKind::kOtherThinner;
      step.reason = StepReason::kThicker;
      break;
  }
}

Result<Board> Bench::State(UtcTime now) const {
  Board board;
  if (impl_->id == 0) return board;
  const PaletteSession& session = impl_->session;
  board.session = impl_->id;
  board.session_name = impl_->name;
  board.closed = session.closed();
  board.settings = session.settings();
  board.room_c = session.room_c();
  board.can_undo = session.NextUndo().has_value();
  board.can_redo = session.NextRedo().has_value();
  const BenchCup* base = session.BaseCoat();
  board.has_base_coat = base != nullptr;

  std::set<TestKind> kinds;
  for (const BenchCup& cup : session.cups()) {
    if (&cup == base) continue;
    const auto stages = StagesOf(cup, board.settings.recheck_min);
    if (stages.empty()) continue;
    for (const BenchTest* test : stages.back().tests) {
      kinds.insert(test->film.measurement.kind);
    }
  }
  if (kinds.empty()) kinds.insert(UsualTest(session));
  if (base != nullptr) {
    BoardCup card = Card(*base, now);
    impl_->FillBaseCoat(*base, kinds, now, card);
    board.cups.push_back(std::move(card));
  }
  for (const BenchCup& cup : session.cups()) {
    if (&cup == base) continue;
    std::vector<double> other_shares;
    for (const BenchCup& other : session.cups()) {
      if (&other == &cup || &other == base) continue;
      if (const auto share = other.WaterShare()) other_shares.push_back(*share);
    }
    BoardCup card = Card(cup, now);
    impl_->FillCup(cup,
                   base,
                   base != nullptr ? &board.cups.front() : nullptr,
                   other_shares,
                   now,
                   card);
    board.cups.push_back(std::move(card));
  }
  // Cups that wait for the base coat make it the next, however well it was
  // filmed.
  if (base != nullptr && board.cups.front().step.kind == StepKind::kNothing) {
    for (const BoardCup& card : board.cups) {
      if (card.step.kind != StepKind::kFilmBaseCoat) continue;
      NextStep& step = board.cups.front().step;
      step.kind = StepKind::kFilm;
      step.reason = card.step.reason;
      step.test = card.step.test;
      step.films = 1;
    }
  }
  double most = 0.0;
  std::size_t num_colours = 0;
  bool all_matched = true;
  bool any_due = false;
  for (const BoardCup& card : board.cups) {
    any_due = any_due || card.recheck != StepReason::kNone;
    if (!card.base_coat) {
      ++num_colours;
      all_matched = all_matched && card.matched;
    }
    const double urgency = Urgency(card);
    if (urgency >= 0.0 && (!board.next_cup || urgency > most)) {
      board.next_cup = card.id;
      most = urgency;
    }
  }
  board.may_pour = num_colours > 0 && all_matched && !any_due;
  // More films of the base coat would narrow an answer that is good enough.
  if (board.may_pour) board.next_cup.reset();
  return board;
}

const char* StepKindName(StepKind kind) {
  switch (kind) {
    case StepKind::kNothing:
      return "nothing";
    case StepKind::kFilm:
      return "film";
    case StepKind::kStirAndFilm:
      return "stir_and_film";
    case StepKind::kAdd:
      return "add";
    case StepKind::kPutReserveBack:
      return "put_reserve_back";
    case StepKind::kThicken:
      return "thicken";
    case StepKind::kUseMedium:
      return "use_medium";
    case StepKind::kUseFinerUnit:
      return "use_finer_unit";
    case StepKind::kOtherThinner:
      return "other_thinner";
    case StepKind::kSayVolume:
      return "say_volume";
    case StepKind::kFilmBaseCoat:
      return "film_base_coat";
  }
  FLOWKIN_CHECK(false);
}

const char* StepReasonName(StepReason reason) {
  switch (reason) {
    case StepReason::kNone:
      return "none";
    case StepReason::kNoFilm:
      return "no_film";
    case StepReason::kNewAddition:
      return "new_addition";
    case StepReason::kTooFewFilms:
      return "too_few_films";
    case StepReason::kUndecided:
      return "undecided";
    case StepReason::kDoubtful:
      return "doubtful";
    case StepReason::kNotComparable:
      return "not_comparable";
    case StepReason::kStood:
      return "stood";
    case StepReason::kBaseCoatAged:
      return "base_coat_aged";
    case StepReason::kRoomMoved:
      return "room_moved";
    case StepReason::kThicker:
      return "thicker";
    case StepReason::kThinner:
      return "thinner";
  }
  FLOWKIN_CHECK(false);
}

}  // namespace flowkin
