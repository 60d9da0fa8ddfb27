#include "app/gui/bench_board.h"

#include <QDate>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <sstream>
#include <utility>

#include "app/gui/convert.h"
#include "app/usecases/cup_of_label.h"
#include "app/usecases/label_document.h"
#include "app/usecases/labels_on_photo.h"
#include "app/usecases/planned_cups.h"

namespace flowkin {
namespace {

/// Other programs' entries are looked for this often.
constexpr int kRefreshEvery_ms = 1000;
/// The minutes on the cards move on after as many of those.
constexpr int kTicksPerReload = 15;
/// From here on the time since stirring is told in hours.
constexpr int kHoursFrom_min = 120;
/// The bar reaches from a third of the target to three times it.
const double kBarReach = std::log(3.0);
/// One drop of water, mL (USP <1101>: a dropper gives 20 drops of 1 mL).
constexpr double kDrop_ml = 0.05;
/// A fine mist pump's stroke, mL; common practice, 0.10 to 0.16.
constexpr double kPumpStroke_ml = 0.13;

/// Place of a ratio on the bar, 0 to 1.
double Place(double ratio, double target) {
  return std::clamp(
      0.5 + std::log(ratio / target) / (2.0 * kBarReach), 0.0, 1.0);
}

QColor ToColor(const SwatchColour& swatch) {
  return {swatch.red, swatch.green, swatch.blue};
}

}  // namespace

BenchBoard::BenchBoard(const QString& store_path,
                       Preferences* preferences,
                       QObject* parent)
    : QAbstractListModel(parent), preferences_(preferences) {
  Result<Bench> bench = Bench::Open(store_path.toStdString());
  if (bench) {
    bench_.emplace(*std::move(bench));
    const Result<bool> opened = bench_->OpenLastSession();
    if (!opened) trouble_ = Text(opened.error().message);
  } else {
    trouble_ = Text(bench.error().message);
  }
  Reload();
  connect(&refresh_, &QTimer::timeout, this, [this] {
    if (!bench_) return;
    const Result<bool> news = bench_->Refresh();
    if ((news && *news) || ++ticks_ >= kTicksPerReload) {
      ticks_ = 0;
      Reload();
    }
  });
  refresh_.start(kRefreshEvery_ms);
  connect(preferences_, &Preferences::changed, this, &BenchBoard::Reload);
}

BenchBoard::~BenchBoard() = default;

Wording BenchBoard::Words() const { return Wording(Units()); }

void BenchBoard::Reload() {
  const std::size_t rows = board_.cups.size();
  Board now;
  if (bench_ && bench_->HasSession()) {
    const Result<Board> state = bench_->State(Now());
    if (state) {
      now = *state;
    } else {
      trouble_ = Text(state.error().message);
    }
  }
  if (bench_) {
    const Result<std::vector<SessionLine>> sessions = bench_->Sessions();
    if (sessions) sessions_ = *sessions;
  }
  const bool same_rows = rows == now.cups.size() &&
                         std::equal(now.cups.begin(),
                                    now.cups.end(),
                                    board_.cups.begin(),
                                    [](const BoardCup& a, const BoardCup& b) {
                                      return a.id == b.id;
                                    });
  if (!same_rows) beginResetModel();
  board_ = std::move(now);
  if (chosen_ && FindCup(*chosen_) == nullptr) chosen_.reset();
  if (!chosen_) chosen_ = board_.next_cup;
  if (!chosen_ && !board_.cups.empty()) chosen_ = board_.cups.front().id;
  if (!same_rows) {
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0), index(static_cast<int>(rows) - 1));
  }
  emit changed();
}

bool BenchBoard::Done(const Result<void>& result) {
  trouble_ = result ? QString() : Wording::Engine(result.error().message);
  Reload();
  return result.has_value();
}

bool BenchBoard::NeedSession() {
  if (!bench_) return false;
  if (bench_->HasSession()) return true;
  const Result<SessionId> made = bench_->NewSession(
      QLocale()
          .toString(QDate::currentDate(), QLocale::LongFormat)
          .toStdString(),
      Now());
  if (!made) trouble_ = Text(made.error().message);
  return made.has_value();
}

const BoardCup* BenchBoard::FindCup(CupId id) const {
  for (const BoardCup& cup : board_.cups) {
    if (cup.id == id) return &cup;
  }
  return nullptr;
}

const BoardCup* BenchBoard::Chosen() const {
  return chosen_ ? FindCup(*chosen_) : nullptr;
}

int BenchBoard::RowOf(std::optional<CupId> id) const {
  if (!id) return -1;
  for (std::size_t row = 0; row < board_.cups.size(); ++row) {
    if (board_.cups[row].id == *id) return static_cast<int>(row);
  }
  return -1;
}

std::optional<CupId> BenchBoard::ChosenCup() const { return chosen_; }

std::optional<CupId> BenchBoard::CupAt(int row) const {
  if (row < 0 || row >= rowCount()) return std::nullopt;
  return board_.cups[static_cast<std::size_t>(row)].id;
}

int BenchBoard::chosen() const { return RowOf(chosen_); }
int BenchBoard::next() const { return RowOf(board_.next_cup); }

void BenchBoard::setChosen(int row) {
  const std::optional<CupId> cup = CupAt(row);
  if (!cup || cup == chosen_) return;
  chosen_ = cup;
  emit changed();
}

void BenchBoard::chooseNext() {
  if (!board_.next_cup) return;
  chosen_ = board_.next_cup;
  emit changed();
}

int BenchBoard::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(board_.cups.size());
}

QHash<int, QByteArray> BenchBoard::roleNames() const {
  return {{kName, "name"},
          {kCupRole, "cupRole"},
          {kPaint, "paint"},
          {kSwatch, "swatch"},
          {kHasSwatch, "hasSwatch"},
          {kVerdict, "verdict"},
          {kVerdictWord, "verdictWord"},
          {kRatio, "ratio"},
          {kAt, "at"},
          {kLow, "low"},
          {kHigh, "high"},
          {kBandLow, "bandLow"},
          {kBandHigh, "bandHigh"},
          {kFacts, "facts"},
          {kRecheck, "recheck"},
          {kStep, "step"},
          {kIsNext, "isNext"},
          {kSpoken, "spoken"}};
}

QVariant BenchBoard::data(const QModelIndex& index, int role) const {
  if (index.row() < 0 || index.row() >= rowCount()) return {};
  const BoardCup& cup = board_.cups[static_cast<std::size_t>(index.row())];
  const bool compared =
      cup.comparison && cup.comparison->outcome == Outcome::kMeasured;
  const double target = cup.details.target_ratio;
  switch (role) {
    case kName:
      return Text(cup.details.label);
    case kCupRole:
      return Wording::Role(cup.details.role);
    case kPaint: {
      QStringList parts;
      for (const std::string& part :
           {cup.details.paint.brand, cup.details.paint.colour}) {
        if (!part.empty()) parts << Text(part);
      }
      return parts.join(" · ");
    }
    case kSwatch:
      return cup.details.swatch ? ToColor(*cup.details.swatch) : QColor();
    case kHasSwatch:
      return cup.details.swatch.has_value();
    case kVerdict:
      if (cup.base_coat) return "base";
      if (cup.before_addition || !cup.verdict) return "none";
      return MatchVerdictName(*cup.verdict);
    case kVerdictWord:
      return Wording::Verdict(cup);
    case kRatio:
      return Wording::Ratio(cup);
    case kAt:
      return compared ? Place(cup.comparison->ratio.Ratio(), target) : -1.0;
    case kLow:
      return compared ? Place(cup.comparison->interval.low, target) : -1.0;
    case kHigh:
      return compared ? Place(cup.comparison->interval.high, target) : -1.0;
    case kBandLow:
      return Place(target / (1.0 + board_.settings.band), target);
    case kBandHigh:
      return Place(target * (1.0 + board_.settings.band), target);
    case kFacts: {
      QStringList facts{Wording::Films(cup)};
      if (cup.water_share && *cup.water_share > 0.0) {
        facts << tr("%1 water").arg(Formats::Percent(*cup.water_share));
      }
      if (cup.minutes_since_stirred) {
        const int minutes = static_cast<int>(*cup.minutes_since_stirred);
        facts << (minutes < 1 ? tr("stirred just now")
                  : minutes < kHoursFrom_min
                      ? tr("stirred %n min ago", nullptr, minutes)
                      : tr("stirred %n h ago", nullptr, minutes / 60));
      }
      facts.removeAll(QString());
      return facts.join(QStringLiteral(" · "));
    }
    case kRecheck:
      return cup.recheck != StepReason::kNone ? tr("re-check due") : QString();
    case kStep:
      return Words().Step(cup);
    case kIsNext:
      return board_.next_cup == cup.id;
    case kSpoken: {
      QStringList parts{Text(cup.details.label),
                        Wording::Verdict(cup),
                        Wording::Ratio(cup),
                        Words().Step(cup)};
      parts.removeAll(QString());
      return parts.join(QStringLiteral(", "));
    }
    default:
      return {};
  }
}

QString BenchBoard::glance() const {
  if (!bench_) return trouble_;
  return Words().Glance(board_);
}

QString BenchBoard::glanceDetail() const {
  return Words().GlanceDetail(board_);
}

QString BenchBoard::chosenName() const {
  const BoardCup* cup = Chosen();
  return cup != nullptr ? Text(cup->details.label) : QString();
}

QString BenchBoard::step() const {
  const BoardCup* cup = Chosen();
  return cup != nullptr ? Words().Step(*cup) : QString();
}

QString BenchBoard::why() const {
  const BoardCup* cup = Chosen();
  if (cup == nullptr) return {};
  QStringList sentences{Words().Reason(*cup)};
  for (const auto* said : {&cup->cautions, &cup->warnings}) {
    for (const std::string& sentence : *said) {
      sentences << Wording::Engine(sentence);
    }
  }
  sentences.removeAll(QString());
  sentences.removeDuplicates();
  return sentences.join(QStringLiteral(" "));
}

QString BenchBoard::action() const {
  const BoardCup* cup = Chosen();
  if (cup == nullptr) return {};
  switch (cup->step.kind) {
    case StepKind::kFilm:
    case StepKind::kStirAndFilm:
      return "film";
    case StepKind::kFilmBaseCoat:
      return "base";
    case StepKind::kAdd:
      return "add";
    case StepKind::kPutReserveBack:
      return "putBack";
    case StepKind::kSayVolume:
      return "volume";
    case StepKind::kThicken:
    case StepKind::kUseMedium:
    case StepKind::kUseFinerUnit:
    case StepKind::kOtherThinner:
      return "change";
    case StepKind::kNothing:
      return cup->can_learn ? "learn" : "";
  }
  return {};
}

QString BenchBoard::actionText() const {
  const QString kind = action();
  if (kind == "film") return tr("Film");
  if (kind == "base") return tr("To the base coat");
  if (kind == "add") return tr("Added");
  if (kind == "putBack") return tr("Put back");
  if (kind == "volume" || kind == "change") return tr("Change the cup");
  if (kind == "learn") return tr("Remember this paint");
  return {};
}

QStringList BenchBoard::details() const {
  const BoardCup* cup = Chosen();
  if (cup == nullptr) return {};
  QStringList lines;
  const auto add = [&](const QString& name, const QString& value) {
    if (!value.isEmpty()) lines << name << value;
  };
  add(tr("role"), Wording::Role(cup->details.role));
  if (cup->volume_now_ml) {
    add(tr("in the cup now"), Units().Volume(*cup->volume_now_ml));
  }
  if (cup->thinner_ml > 0.0) {
    add(tr("added so far"), Units().Volume(cup->thinner_ml));
  }
  if (cup->reserve_left_ml) {
    add(tr("unthinned kept back"), Units().Volume(*cup->reserve_left_ml));
  }
  if (cup->details.target_ratio != 1.0) {
    add(tr("wanted"), Formats::Ratio(cup->details.target_ratio));
  }
  if (cup->dose && cup->dose->add_ml && *cup->dose->add_ml > 0.0) {
    const Dose& dose = cup->dose->dose;
    add(tr("should then be"),
        tr("%1 (%2 to %3)")
            .arg(Formats::Ratio(dose.predicted_median),
                 Formats::Ratio(dose.predicted.low),
                 Formats::Ratio(dose.predicted.high)));
    add(tr("chance of too thin"), Formats::Percent(dose.overshoot_probability));
  }
  add(tr("films"), Wording::Films(*cup));
  return lines;
}

QString BenchBoard::sessionName() const { return Text(board_.session_name); }

QStringList BenchBoard::sessions() const {
  QStringList names;
  for (const SessionLine& line : sessions_) names << Text(line.name);
  return names;
}

int BenchBoard::sessionRow() const {
  for (std::size_t row = 0; row < sessions_.size(); ++row) {
    if (sessions_[row].id == board_.session) return static_cast<int>(row);
  }
  return -1;
}

QString BenchBoard::room() const {
  return Units().TemperatureInput(board_.room_c);
}
QString BenchBoard::roomUnit() const { return Units().TemperatureUnit(); }
QString BenchBoard::volumeUnit() const { return Units().VolumeUnit(); }

QStringList BenchBoard::cupNames() const {
  QStringList names;
  for (const BoardCup& cup : board_.cups) names << Text(cup.details.label);
  return names;
}

QStringList BenchBoard::cupChoices() const {
  return QStringList{tr("say later")} + cupNames();
}

void BenchBoard::setTest(int kind) {
  if (kind < 0 || kind > static_cast<int>(TestKind::kPuddle)) return;
  if (!NeedSession()) return;
  BenchSettings settings = board_.settings;
  settings.test = static_cast<TestKind>(kind);
  Done(bench_->ChangeSettings(settings, Now()));
}

int BenchBoard::doseUnit() const {
  const std::optional<DoseUnit>& unit = board_.settings.unit;
  if (!unit) return 0;
  return unit->name == "drop" ? 1 : 2;
}

void BenchBoard::setDoseUnit(int unit) {
  if (!NeedSession()) return;
  BenchSettings settings = board_.settings;
  settings.unit.reset();
  if (unit == 1) settings.unit = DoseUnit{"drop", kDrop_ml};
  if (unit == 2) settings.unit = DoseUnit{"pump stroke", kPumpStroke_ml};
  Done(bench_->ChangeSettings(settings, Now()));
}

QVariantMap BenchBoard::form(int row) const {
  CupDetails details;
  const std::optional<CupId> id = CupAt(row);
  if (id) {
    details = FindCup(*id)->details;
  } else if (!board_.has_base_coat) {
    details.role = CupRole::kBaseCoat;
  }
  return FormOf(details);
}

QVariantMap BenchBoard::formOfLabel(const QString& code) const {
  std::istringstream text(code.toStdString());
  const Result<std::vector<BatchLabel>> labels = ReadLabels({}, text);
  if (!labels || labels->size() != 1) {
    return {{"trouble",
             tr("This is not the whole code of a label. Read it again; a hand "
                "scanner must be set to the keyboard that is in use.")}};
  }
  return FormOf(labels->front());
}

QVariantMap BenchBoard::formOfLabelPhoto(const QUrl& photo) const {
  const Result<LabelsOnPhoto> found =
      ReadLabelsOnPhoto(photo.toLocalFile().toStdString());
  if (!found) return {{"trouble", Wording::Engine(found.error().message)}};
  if (found->labels.empty()) {
    return {{"trouble", Wording::Engine(found->refused)}};
  }
  if (found->labels.size() > 1) {
    QStringList names;
    for (const BatchLabel& label : found->labels) names << Text(label.name);
    return {{"several", names}};
  }
  return FormOf(found->labels.front());
}

QString BenchBoard::keepLabels(const QUrl& photo) {
  if (!NeedSession()) return trouble_;
  const Result<LabelsOnPhoto> found =
      ReadLabelsOnPhoto(photo.toLocalFile().toStdString());
  if (!found) return Wording::Engine(found.error().message);
  if (found->labels.empty()) return Wording::Engine(found->refused);
  const Result<CupId> last = AddLabelledCups(*bench_, found->labels, Now());
  trouble_.clear();
  if (last) chosen_ = *last;
  Reload();
  return last ? QString() : Wording::Engine(last.error().message);
}

QVariantMap BenchBoard::FormOf(const BatchLabel& label) const {
  const Result<LabelledCup> cup = CupOfLabel(label);
  if (!cup) return {{"trouble", Wording::Engine(cup.error().message)}};
  QVariantMap form = FormOf(cup->details);
  QStringList told;
  if (!label.mixed_on.empty()) {
    told << tr("Mixed on %1.").arg(Text(label.mixed_on));
  }
  if (cup->water_ml > 0.0) {
    told << tr("%1 of water is in it besides; it is written down as added.")
                .arg(Units().Volume(cup->water_ml));
  }
  form["water"] = cup->water_ml;
  form["told"] = told.join(' ');
  return form;
}

QVariantMap BenchBoard::FormOf(const CupDetails& details) const {
  return {
      {"name", Text(details.label)},
      {"role", static_cast<int>(details.role)},
      {"brand", Text(details.paint.brand)},
      {"colour", Text(details.paint.colour)},
      {"swatch", details.swatch ? ToColor(*details.swatch).name() : QString()},
      {"volume", Units().VolumeInput(details.volume_ml)},
      {"target", Formats::Number(details.target_ratio, 2)},
      {"reserve", Units().VolumeInput(details.reserve_ml)},
      {"thinner", static_cast<int>(details.thinner)},
  };
}

QString BenchBoard::keep(int row, const QVariantMap& form) {
  if (!NeedSession()) return trouble_;
  const std::optional<CupId> id = CupAt(row);
  CupDetails details;
  if (id) details = FindCup(*id)->details;
  details.label = form["name"].toString().trimmed().toStdString();
  details.role = static_cast<CupRole>(form["role"].toInt());
  details.paint.brand = form["brand"].toString().trimmed().toStdString();
  details.paint.colour = form["colour"].toString().trimmed().toStdString();
  details.thinner = static_cast<ThinnerKind>(form["thinner"].toInt());
  const QColor swatch(form["swatch"].toString());
  details.swatch.reset();
  if (swatch.isValid()) {
    details.swatch = SwatchColour{static_cast<std::uint8_t>(swatch.red()),
                                  static_cast<std::uint8_t>(swatch.green()),
                                  static_cast<std::uint8_t>(swatch.blue())};
  }
  if (details.label.empty()) return tr("Give the cup a name.");
  const auto volume = [&](const char* field, std::optional<double>* ml) {
    const QString text = form[field].toString().trimmed();
    *ml = Units().VolumeFromInput(text);
    return text.isEmpty() || ml->has_value();
  };
  if (!volume("volume", &details.volume_ml) ||
      !volume("reserve", &details.reserve_ml)) {
    return tr("An amount is a number, such as %1.")
        .arg(Formats::Number(120, 0));
  }
  const std::optional<double> target =
      Formats::NumberFromInput(form["target"].toString());
  if (!target) {
    return tr("What is wanted is a number, 1 for the base coat's own flow.");
  }
  details.target_ratio = *target;
  if (id) {
    const Result<void> done = bench_->ChangeCup(*id, details, Now());
    if (!done) return Wording::Engine(done.error().message);
  } else {
    const Result<CupId> added =
        AddLabelledCup(*bench_, {details, form["water"].toDouble()}, Now());
    if (!added) return Wording::Engine(added.error().message);
    chosen_ = *added;
  }
  trouble_.clear();
  Reload();
  return {};
}

void BenchBoard::remove(int row) {
  if (const std::optional<CupId> id = CupAt(row); id && bench_) {
    Done(bench_->RemoveCup(*id, Now()));
  }
}

void BenchBoard::addedAsSaid() {
  const BoardCup* cup = Chosen();
  if (cup == nullptr || cup->step.kind != StepKind::kAdd ||
      !cup->step.amount_ml) {
    return;
  }
  const NextStep step = cup->step;
  const QString what =
      tr("%1: %2 added.").arg(Text(cup->details.label), Words().Amount(step));
  if (Done(bench_->RecordAddition(
          cup->id, *step.amount_ml, step.thinner, step.amount_units, Now()))) {
    emit told(what);
  }
}

bool BenchBoard::addedOther(const QString& amount) {
  const BoardCup* cup = Chosen();
  if (cup == nullptr) return false;
  std::optional<double> units;
  std::optional<double> ml;
  const std::optional<DoseUnit>& unit = board_.settings.unit;
  if (unit) {
    units = Formats::NumberFromInput(amount);
    if (units) ml = *units * unit->ml;
  } else {
    // Small amounts are read off in millilitres everywhere.
    ml = Formats::NumberFromInput(amount);
  }
  if (!ml) {
    trouble_ =
        tr("An amount is a number, such as %1.").arg(Formats::Number(1.5, 1));
    emit changed();
    return false;
  }
  return Done(
      bench_->RecordAddition(cup->id, *ml, cup->details.thinner, units, Now()));
}

void BenchBoard::putBackAsSaid() {
  const BoardCup* cup = Chosen();
  if (cup == nullptr || cup->step.kind != StepKind::kPutReserveBack ||
      !cup->step.amount_ml) {
    return;
  }
  Done(bench_->PutReserveBack(cup->id, *cup->step.amount_ml, Now()));
}

void BenchBoard::stirred() {
  if (chosen_ && bench_) Done(bench_->RecordStir(*chosen_, Now()));
}

void BenchBoard::learn() {
  if (!chosen_ || !bench_) return;
  const Result<LearnReport> learned = bench_->Learn(*chosen_, Now());
  Done(learned ? Result<void>() : Result<void>(learned.error()));
}

void BenchBoard::undo() {
  if (board_.can_undo) Done(bench_->Undo(Now()));
}

void BenchBoard::redo() {
  if (board_.can_redo) Done(bench_->Redo(Now()));
}

int BenchBoard::PutPlanned(const PourPlan& plan) {
  if (!NeedSession()) return 0;
  const Result<int> added =
      PutPlannedCups(*bench_, plan, tr("activator").toStdString(), Now());
  trouble_ = added ? QString() : Wording::Engine(added.error().message);
  Reload();
  return added ? *added : 0;
}

void BenchBoard::newSession(const QString& name) {
  if (!bench_) return;
  const QString wanted = name.trimmed();
  const Result<SessionId> made = bench_->NewSession(
      (wanted.isEmpty() ? QLocale().toString(QDateTime::currentDateTime(),
                                             QLocale::ShortFormat)
                        : wanted)
          .toStdString(),
      Now());
  chosen_.reset();
  Done(made ? Result<void>() : Result<void>(made.error()));
}

void BenchBoard::openSession(int row) {
  if (!bench_ || row < 0 || row >= static_cast<int>(sessions_.size())) return;
  chosen_.reset();
  Done(bench_->OpenSession(sessions_[static_cast<std::size_t>(row)].id));
}

bool BenchBoard::setRoom(const QString& text) {
  const std::optional<double> room_c = Units().TemperatureFromInput(text);
  if (!room_c || !NeedSession()) return false;
  return Done(bench_->SetRoomTemperature(*room_c, Now()));
}

void BenchBoard::forgetTrouble() {
  trouble_.clear();
  emit changed();
}

bool BenchBoard::Record(CupId cup, const FilmedTest& test) {
  if (!bench_) return false;
  const Result<TestId> recorded = bench_->RecordTest(cup, test, Now());
  return Done(recorded ? Result<void>() : Result<void>(recorded.error()));
}

bool BenchBoard::SetAside(TestId test, bool aside) {
  if (!bench_) return false;
  return Done(aside ? bench_->SetAsideTest(test, Now())
                    : bench_->TakeBackTest(test, Now()));
}

bool BenchBoard::Correct(TestId test,
                         TestEvent event,
                         double at_s,
                         const FlowMeasurement& remeasured) {
  if (!bench_) return false;
  return Done(bench_->CorrectEvent(test, event, at_s, remeasured, Now()));
}

}  // namespace flowkin
