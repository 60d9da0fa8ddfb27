#include "app/gui/print_room.h"

#include <QDate>
#include <QDesktopServices>
#include <QDir>
#include <QImage>
#include <QLocale>
#include <QPageLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QSettings>
#include <QStandardPaths>
#include <algorithm>
#include <memory>
#include <utility>

#include "app/usecases/journal_document.h"
#include "app/usecases/print_day.h"
#include "app/usecases/write_file.h"

namespace flowkin {
namespace {

Result<QImage> PictureOf(const Paper& paper, int page, int width_px) {
  const Result<Photo> picture = paper.Picture(page, width_px);
  if (!picture) return picture.error();
  const QImage image(picture->rgb.data(),
                     picture->width,
                     picture->height,
                     3 * picture->width,
                     QImage::Format_RGB888);
  return image.copy();
}

}  // namespace

PrintRoom::PrintRoom(Preferences* preferences,
                     JournalReader* journal,
                     Planner* planner,
                     QObject* parent)
    : QObject(parent),
      preferences_(preferences),
      journal_(journal),
      planner_(planner),
      sight_(new PictureFeed(this)) {
  // What was drawn is told in the language and units of before.
  connect(preferences_, &Preferences::languageChanged, this, &PrintRoom::drop);
  connect(preferences_, &Preferences::unitsChanged, this, &PrintRoom::drop);
}

Words PrintRoom::HerWords() const {
  return Words(
      LanguageFromCode(preferences_->LanguageInUse().toStdString())
          .value_or(Language::kEnglish),
      preferences_->usUnits() ? AmountUnits::kUs : AmountUnits::kMetric);
}

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
  sent_.clear();
  drop();
}

void PrintRoom::Look(const QString& name, Result<Paper> paper) {
  trouble_.clear();
  written_.clear();
  sent_.clear();
  if (!paper) return Refuse(paper.error());
  paper_ = *std::move(paper);
  name_ = name;
  page_ = 0;
  ShowPage();
  emit changed();
}

void PrintRoom::ShowPage() {
  constexpr int kWidth_px = 1240;  // 150 to the inch
  const Result<QImage> picture = PictureOf(*paper_, page_, kWidth_px);
  if (!picture) return Refuse(picture.error());
  sight_->Show(*picture);
}

void PrintRoom::setPage(int page) {
  if (page < 0 || page >= pages() || page == page_) return;
  page_ = page;
  ShowPage();
  emit changed();
}

void PrintRoom::drop() {
  paper_.reset();
  sight_->Show({});
  emit changed();
}

void PrintRoom::save() {
  if (!paper_) return;
  Write(name_, paper_->Pdf());
  if (trouble_.isEmpty()) drop();
}

void PrintRoom::print() {
  if (!paper_) return;
  trouble_.clear();
  if (QPrinterInfo::availablePrinterNames().isEmpty()) {
    trouble_ =
        tr("No printer is set up on this computer; save the pages as a file "
           "and print it elsewhere.");
    emit changed();
    return;
  }
  const auto printer = std::make_shared<QPrinter>();
  printer->setDocName(name_);
  auto* dialog = new QPrintDialog(printer.get());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setMinMax(1, pages());
  connect(dialog, &QDialog::accepted, this, [this, printer] {
    if (paper_) PrintOn(*printer);
  });
  // It draws on the printer until it is gone.
  connect(dialog, &QObject::destroyed, this, [printer] {});
  dialog->open();
}

void PrintRoom::PrintOn(QPrinter& printer) {
  if (!paper_) return;
  trouble_.clear();
  written_.clear();
  sent_.clear();
  constexpr int kDotsPerInch = 300;
  printer.setResolution(kDotsPerInch);
  printer.setFullPage(true);
  printer.setPageMargins(QMarginsF());
  printer.setPageOrientation(QPageLayout::Portrait);
  const QRect sheet = printer.pageLayout().fullRectPixels(kDotsPerInch);
  // In its true size, or smaller where her paper is smaller than the page.
  QSize size = QPageSize(QPageSize::A4).sizePixels(kDotsPerInch);
  if (size.width() > sheet.width() || size.height() > sheet.height()) {
    size.scale(sheet.size(), Qt::KeepAspectRatio);
  }
  QRect place(QPoint(), size);
  place.moveCenter(sheet.center());
  const bool all = printer.printRange() != QPrinter::PageRange;
  const int first = all ? 1 : std::clamp(printer.fromPage(), 1, pages());
  const int last = all ? pages() : std::clamp(printer.toPage(), first, pages());
  QPainter painter;
  bool sound = painter.begin(&printer);
  for (int page = first; sound && page <= last; ++page) {
    if (page > first) sound = printer.newPage();
    const Result<QImage> picture = PictureOf(*paper_, page - 1, place.width());
    if (!picture) return Refuse(picture.error());
    painter.drawImage(place, *picture);
  }
  sound = painter.end() && sound;
  if (sound && printer.printerState() != QPrinter::Error) {
    sent_ = printer.outputFileName().isEmpty() ? printer.printerName()
                                               : printer.outputFileName();
  } else {
    trouble_ =
        tr("The printer does not take the pages; save them as a file "
           "and open it.");
  }
  emit changed();
}

void PrintRoom::Write(const QString& name, const Result<std::string>& bytes) {
  trouble_.clear();
  sent_.clear();
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
  Look(QString("labels-%1.pdf").arg(*journal_->Chosen()),
       PrintLabels(LabelsOf(*day), HerWords()));
}

void PrintRoom::report() {
  remark_.clear();
  if (!journal_->Chosen()) return;
  const Result<DayAtBench> day =
      ReadDay(journal_->StorePath().toStdString(), *journal_->Chosen());
  if (!day) return Refuse(day.error());
  const DayPhotos photos = PhotosOf(day->page, HerWords());
  if (!photos.lost.empty()) {
    remark_ = tr("%n photo(s) could not be read and are left out.",
                 nullptr,
                 static_cast<int>(photos.lost.size()));
  }
  Look(QString("report-%1.pdf").arg(*journal_->Chosen()),
       PrintReport(day->page, day->board, photos.photos, HerWords()));
}

void PrintRoom::sheet() {
  remark_.clear();
  if (planner_->Report() == nullptr) return;
  Look("bench-sheet.pdf",
       PrintBenchSheet(*planner_->Report(), planner_->Planned(), HerWords()));
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
  Look("handout.pdf",
       PrintHandout(*report,
                    request,
                    students,
                    title.trimmed().toStdString(),
                    HerWords()));
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
