#include "app/gui/journal_reader.h"

#include <QDate>
#include <QDateTime>
#include <QFileInfo>
#include <QLocale>
#include <cmath>
#include <filesystem>

#include "app/gui/convert.h"

namespace flowkin {
namespace {

QString DayText(UtcTime time) {
  return QLocale().toString(QDateTime::fromMSecsSinceEpoch(time.ms).date(),
                            QLocale::ShortFormat);
}

QString DayText(Day day) {
  return QLocale().toString(
      QDate::fromString(Text(FormatDay(day)), Qt::ISODate),
      QLocale::ShortFormat);
}

}  // namespace

JournalReader::JournalReader(const QString& store_path,
                             Preferences* preferences,
                             BenchBoard* board,
                             Planner* planner,
                             QObject* parent)
    : QObject(parent),
      store_path_(store_path),
      preferences_(preferences),
      board_(board),
      planner_(planner) {
  connect(preferences_, &Preferences::changed, this, &JournalReader::Read);
  connect(planner_, &Planner::changed, this, &JournalReader::changed);
}

QString JournalReader::Line(const QString& what, const QString& more) {
  return more.isEmpty() ? what : tr("%1: %2").arg(what, more);
}

QString JournalReader::StorePath() const {
  return store_path_.isEmpty() ? Text(CalibrationStore::DefaultPath())
                               : store_path_;
}

void JournalReader::visit() {
  if (!chosen_ && board_->State().session != 0) {
    chosen_ = board_->State().session;
  }
  Read();
}

void JournalReader::setWords(const QString& words) {
  if (words == words_) return;
  words_ = words;
  Read();
}

int JournalReader::RowOf(std::optional<SessionId> id) const {
  for (std::size_t row = 0; id && row < lines_.size(); ++row) {
    if (lines_[row].id == *id) return static_cast<int>(row);
  }
  return -1;
}

void JournalReader::openToday() {
  words_.clear();
  chosen_ = board_->State().session;
  Read();
}

void JournalReader::choose(int row) {
  if (row < 0 || row >= static_cast<int>(lines_.size())) return;
  chosen_ = lines_[static_cast<std::size_t>(row)].id;
  if (beside_ == chosen_) beside_.reset();
  Read();
}

void JournalReader::compare(int row) {
  if (row < 0 || row >= static_cast<int>(lines_.size())) return;
  const SessionId id = lines_[static_cast<std::size_t>(row)].id;
  if (beside_ == id || chosen_ == id) {
    beside_.reset();
  } else {
    beside_ = id;
  }
  Read();
}

void JournalReader::Read() {
  lines_.clear();
  cups_.clear();
  page_.clear();
  other_.clear();
  learned_.clear();
  reminders_.clear();
  cautions_.clear();
  std::error_code missing;
  if (!std::filesystem::exists(StorePath().toStdString(), missing)) {
    emit changed();
    return;
  }
  const Result<Journal> journal = Journal::Open(StorePath().toStdString());
  const auto fail = [&](const Error& error) {
    trouble_ = Wording::Engine(error.message);
    emit changed();
  };
  if (!journal) return fail(journal.error());
  Result<std::vector<SessionLine>> found =
      journal->Search(words_.toStdString());
  if (!found) return fail(found.error());
  lines_ = *std::move(found);
  if (!chosen_ && !lines_.empty()) chosen_ = lines_.front().id;
  if (chosen_) {
    const Result<JournalPage> page = journal->Page(*chosen_);
    if (!page) return fail(page.error());
    for (const BenchCup& cup : page->session.cups()) {
      cups_.emplace_back(cup.id, cup.details.label);
    }
    page_ = PageOf(*page);
  }
  if (beside_) {
    const Result<JournalPage> page = journal->Page(*beside_);
    if (!page) return fail(page.error());
    other_ = PageOf(*page);
  }
  const Result<LearnedPractice> learned = journal->Learned();
  if (!learned) return fail(learned.error());
  learned_ << tr("%n pour(s)", nullptr, learned->pours) + ", " +
                  tr("%n judged", nullptr, learned->judged) + ".";
  const LearnedBand& band = learned->band;
  learned_ << (band.told && band.band
                   ? tr("Your pictures bear a mismatch of about %1 (%2 to %3).")
                         .arg(Formats::Percent(*band.band),
                              Formats::Percent(band.band_interval.low),
                              Formats::Percent(band.band_interval.high))
                   : tr("How large a mismatch your pictures bear: too few "
                        "pours to tell."));
  for (const auto& [technique, roles] : learned->targets) {
    for (const auto& [role, target] : roles) {
      const QString who =
          Wording::Engine(technique) + ", " + Wording::Role(role);
      learned_ << Line(who,
                       target.told
                           ? tr("good pours lay at %1 (%2 to %3) of the base "
                                "coat.")
                                 .arg(Formats::Ratio(target.ratio),
                                      Formats::Ratio(target.interval.low),
                                      Formats::Ratio(target.interval.high))
                           : tr("too few pours to tell."));
    }
  }
  for (const auto& [technique, use] : learned->use) {
    learned_ << Line(Wording::Engine(technique),
                     use.told
                         ? tr("you use %1 times what is planned (%2 to %3).")
                               .arg(Formats::Ratio(use.factor),
                                    Formats::Ratio(use.interval.low),
                                    Formats::Ratio(use.interval.high))
                         : tr("planned against used: too few pours to tell."));
  }
  const Result<std::vector<Reminder>> due = journal->Reminders(
      *ParseDay(QDate::currentDate().toString(Qt::ISODate).toStdString()));
  if (!due) return fail(due.error());
  for (const Reminder& reminder : *due) {
    QStringList why;
    for (const std::string& reason : reminder.why) {
      why << Wording::Engine(reason);
    }
    QString says = Wording::Engine(reminder.plain);
    if (!why.isEmpty()) says += " (" + why.join(QStringLiteral(", ")) + ")";
    reminders_ << QVariantMap{{"day", DayText(reminder.from)},
                              {"says", Line(Text(reminder.name), says)}};
  }
  for (const std::string& caution : CautionsOf(*due)) {
    cautions_ << Wording::Engine(caution);
  }
  emit changed();
}

QVariantList JournalReader::days() const {
  QVariantList list;
  for (const SessionLine& line : lines_) {
    list << QVariantMap{{"name", Text(line.name)},
                        {"day", DayText(line.begun)}};
  }
  return list;
}

QStringList JournalReader::faults() const {
  QStringList names;
  for (const Fault fault : AllFaults()) {
    names << Wording::Engine(FaultName(fault));
  }
  return names;
}

QStringList JournalReader::cupNames() const {
  QStringList names{tr("no cup of this day")};
  for (const auto& cup : cups_) names << Text(cup.second);
  return names;
}

QString JournalReader::plannedText() const {
  const PlanReport* report = planner_->Report();
  if (report == nullptr) return {};
  return tr("As planned now: %1, %2")
      .arg(Wording::Engine(planner_->Planned().technique.name),
           Units().Volume(report->plan.on_support_ml));
}

QVariantMap JournalReader::PageOf(const JournalPage& page) const {
  const BenchJournal& journal = page.session.journal();
  const Formats units = Units();
  QStringList facts;
  QString day = DayText(page.line.begun);
  if (page.session.room_c()) {
    day += " · " + tr("room %1").arg(units.Temperature(*page.session.room_c()));
  }
  if (journal.pour && journal.pour->humidity_percent) {
    day += " · " +
           tr("%1 humidity")
               .arg(Formats::Percent(0.01 * *journal.pour->humidity_percent));
  }
  facts << day;
  QVariantList cups;
  if (journal.pour) {
    const PourMade& pour = *journal.pour;
    QStringList parts{tr("poured %1").arg(DayText(*journal.poured_at))};
    if (!pour.technique.empty()) parts << Wording::Engine(pour.technique);
    if (pour.planned_ml) {
      parts << tr("planned %1").arg(units.Volume(*pour.planned_ml));
    }
    if (pour.used_ml) parts << tr("used %1").arg(units.Volume(*pour.used_ml));
    if (pour.wet_mm) {
      parts << tr("%1 wet").arg(units.Thickness(*pour.wet_mm));
    }
    if (pour.dry_mm) {
      parts << tr("%1 dry").arg(units.Thickness(*pour.dry_mm));
    }
    facts << parts.join(QStringLiteral(", "));
    if (!pour.text.empty()) facts << Text(pour.text);
    for (const PouredCup& cup : pour.cups) {
      QString flow = tr("not measured");
      if (cup.ln_ratio && cup.interval) {
        flow = tr("%1 (%2 to %3), aimed at %4")
                   .arg(Formats::Ratio(std::exp(cup.ln_ratio->value)),
                        Formats::Ratio(cup.interval->low),
                        Formats::Ratio(cup.interval->high),
                        Formats::Ratio(cup.target));
      }
      if (cup.water_share && *cup.water_share > 0.0) {
        flow += ", " + tr("%1 water").arg(Formats::Percent(*cup.water_share));
      }
      cups << QVariantMap{{"name", Text(cup.label)}, {"text", flow}};
    }
  } else {
    for (const BenchCup& cup : page.session.cups()) {
      QString text =
          Wording::Role(cup.details.role) + ", " +
          tr("%n film(s)", nullptr, static_cast<int>(cup.tests.size()));
      if (const auto share = cup.WaterShare(); share && *share > 0.0) {
        text += ", " + tr("%1 water").arg(Formats::Percent(*share));
      }
      cups << QVariantMap{{"name", Text(cup.details.label)}, {"text", text}};
    }
  }
  if (journal.judged) {
    QString verdict = journal.judged->verdict == PourVerdict::kGood
                          ? tr("It turned out well.")
                      : journal.judged->verdict == PourVerdict::kFair
                          ? tr("It turned out fair.")
                          : tr("It turned out badly.");
    if (!journal.judged->text.empty()) {
      verdict += " " + Text(journal.judged->text);
    }
    facts << verdict;
  }
  QVariantList photos;
  const auto add_photo = [&](const std::string& path, const QString& what) {
    const QFileInfo file(Text(path));
    photos << QVariantMap{
        {"url",
         file.exists() ? QUrl::fromLocalFile(file.absoluteFilePath()) : QUrl()},
        {"found", file.exists()},
        {"text",
         file.exists() ? what : tr("%1: the photo is not found").arg(what)}};
  };
  for (const BenchJournal::Photo& kept : journal.photos) {
    QString what;
    switch (kept.photo.kind) {
      case PhotoKind::kWet:
        what = tr("wet");
        break;
      case PhotoKind::kDry:
        what = tr("dry");
        break;
      case PhotoKind::kLater:
        what = tr("later");
        break;
      case PhotoKind::kCells:
        what = tr("cells");
        break;
    }
    add_photo(kept.photo.path, Line(what, Text(kept.photo.text)));
  }
  QStringList cell_tests;
  for (const BenchJournal::Cells& kept : journal.cells) {
    const CellsTested& test = kept.test;
    QString line =
        test.seen == CellsSeen::kLacing ? tr("cell test: lacing")
        : test.seen == CellsSeen::kNone ? tr("cell test: nothing happens")
        : test.seen == CellsSeen::kBlob ? tr("cell test: too thick, a blob")
                                        : tr("cell test: too thin, drowned");
    if (test.after_s) {
      line += ", " + tr("after %1 s").arg(Formats::Number(*test.after_s, 0));
    }
    if (test.additive_parts) {
      line += ", " + tr("1 paint to %1 additive")
                         .arg(Formats::Number(*test.additive_parts, 2));
    }
    const BenchCup* cup = test.cup ? page.session.FindCup(*test.cup) : nullptr;
    if (cup != nullptr) line += ", " + Text(cup->details.label);
    if (test.counted) line += ", " + Wording::Counted(*test.counted);
    line = Line(line, Text(test.text));
    cell_tests << line;
    if (!test.photo.empty()) add_photo(test.photo, line);
  }
  facts << cell_tests;
  QVariantList faults;
  for (const ExplainedFault& fault : page.faults) {
    QVariantList causes;
    for (const Cause& cause : fault.causes) {
      QString mark;
      switch (cause.standing) {
        case Standing::kFits:
          mark = tr("fits");
          break;
        case Standing::kAgainst:
          mark = tr("speaks against it");
          break;
        case Standing::kUnknown:
          mark = tr("not measured");
          break;
      }
      causes << QVariantMap{{"fits", cause.standing == Standing::kFits},
                            {"mark", mark},
                            {"says", Wording::Engine(cause.says)},
                            {"evidence", Wording::Engine(cause.evidence)}};
    }
    const QString name =
        Line(Wording::Engine(fault.seen.fault), Text(fault.seen.text));
    faults << QVariantMap{{"name", name}, {"causes", causes}};
  }
  QStringList notes;
  for (const BenchJournal::Note& note : journal.notes) {
    notes << DayText(note.at) + "  " + Text(note.text);
  }
  return {{"name", Text(page.line.name)},
          {"facts", facts},
          {"cups", cups},
          {"photos", photos},
          {"faults", faults},
          {"notes", notes},
          {"poured", journal.pour.has_value()}};
}

void JournalReader::Write(
    const std::function<Result<void>(Bench& bench)>& verb) {
  trouble_.clear();
  if (!chosen_) return;
  {
    Result<Bench> bench = Bench::Open(StorePath().toStdString());
    const Result<void> opened =
        bench ? bench->OpenSession(*chosen_) : Result<void>(bench.error());
    const Result<void> done = opened ? verb(*bench) : opened;
    if (!done) trouble_ = Wording::Engine(done.error().message);
  }
  Read();
}

void JournalReader::addPhoto(const QUrl& file, int kind) {
  PhotoTaken photo;
  photo.kind = kind == 0   ? PhotoKind::kWet
               : kind == 1 ? PhotoKind::kDry
                           : PhotoKind::kLater;
  photo.path = file.toLocalFile().toStdString();
  Write([&](Bench& bench) { return bench.RecordPhoto(photo, Now()); });
}

void JournalReader::addFault(int fault, const QString& text) {
  const std::vector<Fault>& all = AllFaults();
  if (fault < 0 || fault >= static_cast<int>(all.size())) return;
  const FaultSeen seen{FaultName(all[static_cast<std::size_t>(fault)]),
                       text.trimmed().toStdString()};
  Write([&](Bench& bench) { return bench.RecordFault(seen, Now()); });
}

void JournalReader::judge(int verdict, const QString& text) {
  const PourJudged judged{verdict == 0   ? PourVerdict::kGood
                          : verdict == 1 ? PourVerdict::kFair
                                         : PourVerdict::kPoor,
                          text.trimmed().toStdString()};
  Write([&](Bench& bench) { return bench.JudgePour(judged, Now()); });
}

void JournalReader::note(const QString& text) {
  Write([&](Bench& bench) {
    return bench.TakeNote({}, text.trimmed().toStdString(), Now());
  });
}

void JournalReader::pour(const QVariantMap& form, bool by_plan) {
  PourMade pour;
  pour.text = form["text"].toString().trimmed().toStdString();
  QString wrong;
  const auto read = [&](const char* field, bool volume, auto* to) {
    const QString text = form[field].toString().trimmed();
    if (text.isEmpty()) return;
    *to =
        volume ? Units().VolumeFromInput(text) : Formats::NumberFromInput(text);
    if (!to->has_value()) wrong = text;
  };
  read("used", true, &pour.used_ml);
  read("humidity", false, &pour.humidity_percent);
  read("rested", false, &pour.rested_min);
  if (!wrong.isEmpty()) {
    trouble_ = tr("'%1' is no number.").arg(wrong);
    emit changed();
    return;
  }
  const int strained = form["strained"].toInt();  // 0 not said, 1 yes, 2 no
  if (strained != 0) pour.strained = strained == 1;
  if (by_plan && planner_->Report() != nullptr) {
    const PourPlan& plan = planner_->Report()->plan;
    pour.technique = planner_->Planned().technique.name;
    pour.planned_ml = plan.on_support_ml;
    pour.plan_factor = plan.learned.factor;
    pour.wet_mm = plan.wet_mm.start;
    pour.dry_mm = plan.dry_mm.start;
  }
  Write([&](Bench& bench) { return bench.RecordPour(pour, Now()); });
}

void JournalReader::cells(int seen,
                          const QString& after_s,
                          const QString& parts,
                          int cup,
                          const QString& text) {
  KeepCells({}, seen, after_s, parts, cup, text);
}

void JournalReader::KeepCells(CellsTested test,
                              int seen,
                              const QString& after_s,
                              const QString& parts,
                              int cup,
                              const QString& text) {
  test.seen = seen == 0   ? CellsSeen::kLacing
              : seen == 1 ? CellsSeen::kNone
              : seen == 2 ? CellsSeen::kBlob
                          : CellsSeen::kDrowned;
  test.text = text.trimmed().toStdString();
  for (const auto& [given, number] :
       {std::pair(&after_s, &test.after_s),
        std::pair(&parts, &test.additive_parts)}) {
    if (given->trimmed().isEmpty()) continue;
    *number = Formats::NumberFromInput(*given);
    if (!*number) {
      trouble_ = tr("'%1' is no number.").arg(*given);
      emit changed();
      return;
    }
  }
  if (cup > 0 && cup <= static_cast<int>(cups_.size())) {
    test.cup = cups_[static_cast<std::size_t>(cup - 1)].first;
  }
  Write([&](Bench& bench) { return bench.RecordCells(test, Now()); });
}

void JournalReader::takeBack() {
  Write([](Bench& bench) { return bench.Undo(Now()); });
}

}  // namespace flowkin
