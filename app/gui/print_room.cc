#include "app/gui/print_room.h"

#include <QDate>
#include <QDesktopServices>
#include <QDir>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>

#include "app/usecases/journal_document.h"
#include "app/usecases/print_day.h"
#include "app/usecases/write_file.h"

namespace flowkin {

PrintRoom::PrintRoom(Preferences* preferences,
                     JournalReader* journal,
                     Planner* planner,
                     QObject* parent)
    : QObject(parent),
      preferences_(preferences),
      journal_(journal),
      planner_(planner) {}

QString PrintRoom::folder() const {
  const QString kept = preferences_->Store().value("print-folder").toString();
  return kept.isEmpty() ? QStandardPaths::writableLocation(
                              QStandardPaths::DocumentsLocation)
                        : kept;
}

void PrintRoom::setFolder(const QUrl& folder) {
  preferences_->Store().setValue("print-folder", folder.toLocalFile());
  emit changed();
}

void PrintRoom::Refuse(const Error& error) {
  trouble_ = Wording::Engine(error.message);
  written_.clear();
  emit changed();
}

void PrintRoom::Write(const QString& name, const Result<std::string>& bytes) {
  trouble_.clear();
  if (!bytes) return Refuse(bytes.error());
  QDir().mkpath(folder());
  const QString path = QDir(folder()).filePath(name);
  const Result<void> done = WriteWhole(path.toStdString(), *bytes);
  if (!done) return Refuse(done.error());
  written_ = path;
  emit changed();
}

void PrintRoom::labels() {
  remark_.clear();
  if (!journal_->Chosen()) return;
  const Result<DayAtBench> day =
      ReadDay(journal_->StorePath().toStdString(), *journal_->Chosen());
  if (!day) return Refuse(day.error());
  Write(QString("labels-%1.pdf").arg(*journal_->Chosen()),
        PrintLabels(LabelsOf(*day)));
}

void PrintRoom::report() {
  remark_.clear();
  if (!journal_->Chosen()) return;
  const Result<DayAtBench> day =
      ReadDay(journal_->StorePath().toStdString(), *journal_->Chosen());
  if (!day) return Refuse(day.error());
  const DayPhotos photos = PhotosOf(day->page);
  if (!photos.lost.empty()) {
    remark_ = tr("%n photo(s) could not be read and are left out.",
                 nullptr,
                 static_cast<int>(photos.lost.size()));
  }
  Write(QString("report-%1.pdf").arg(*journal_->Chosen()),
        PrintReport(day->page, day->board, photos.photos));
}

void PrintRoom::sheet() {
  remark_.clear();
  if (planner_->Report() == nullptr) return;
  Write("bench-sheet.pdf",
        PrintBenchSheet(
            *planner_->Report(),
            planner_->Planned(),
            preferences_->usUnits() ? AmountUnits::kUs : AmountUnits::kMetric));
}

void PrintRoom::handout(const QString& places, const QString& title) {
  remark_.clear();
  if (planner_->Report() == nullptr) return;
  bool whole = false;
  const int students = QLocale().toInt(places, &whole);
  if (!whole || students < 1 || students > 500) {
    return Refuse(
        {ErrorCode::kInvalidArgument, "A class has 1 to 500 places."});
  }
  PlanRequest request = planner_->Planned();
  for (Support& support : request.supports) support.count *= students;
  const Result<PlanReport> report = PlanPour(request);
  if (!report) return Refuse(report.error());
  Write("handout.pdf",
        PrintHandout(
            *report,
            request,
            students,
            title.trimmed().toStdString(),
            preferences_->usUnits() ? AmountUnits::kUs : AmountUnits::kMetric));
}

void PrintRoom::table() {
  remark_.clear();
  const Result<Journal> journal =
      Journal::Open(journal_->StorePath().toStdString());
  if (!journal) return Refuse(journal.error());
  Write("journal.csv", JournalTable(*journal));
}

void PrintRoom::document() {
  remark_.clear();
  const Result<Journal> journal =
      Journal::Open(journal_->StorePath().toStdString());
  if (!journal) return Refuse(journal.error());
  const Result<Json> document = JournalDocument(*journal);
  if (!document) return Refuse(document.error());
  Write("journal.json",
        document->dump(2, ' ', false, Json::error_handler_t::replace) + '\n');
}

void PrintRoom::open() {
  if (!written_.isEmpty()) {
    QDesktopServices::openUrl(QUrl::fromLocalFile(written_));
  }
}

}  // namespace flowkin
