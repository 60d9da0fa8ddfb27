#include "app/gui/desk.h"

#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QRegularExpression>
#include <QStandardPaths>

namespace flowkin {
namespace {

/// Empty for the user's own.
QString FilmsFolder(const DeskOptions& options) {
  if (!options.films_path.isEmpty() || options.store_path.isEmpty()) {
    return options.films_path;
  }
  return QFileInfo(options.store_path).absolutePath() + "/films";
}

}  // namespace

Desk::Desk(const DeskOptions& options, QObject* parent)
    : QObject(parent),
      preferences_(new Preferences(options.settings_path, this)),
      board_(new BenchBoard(options.store_path, preferences_, this)),
      clips_(new ClipQueue(board_, preferences_, this)),
      review_(new ClipReview(board_, this)),
      curves_(new Curves(board_, this)),
      tryout_(new Tryout(options.sample_clips, board_, clips_, this)),
      last_check_(new LastCheck(board_, this)),
      planner_(new Planner(options.store_path, preferences_, board_, this)),
      journal_(new JournalReader(
          options.store_path, preferences_, board_, planner_, this)),
      print_room_(new PrintRoom(preferences_, journal_, planner_, this)),
      cells_(new CellRoom(journal_, this)),
      voice_(new Voice(preferences_, this)),
      camera_(new Camera(
          preferences_,
          [this](const Frame& frame) { film_->Take(frame); },
          this)),
      film_(
          new FilmStand(FilmsFolder(options), board_, clips_, camera_, this)) {
  connect(board_, &BenchBoard::told, voice_, &Voice::Say);
  connect(film_, &FilmStand::told, voice_, &Voice::Say);
}

Desk::~Desk() {
  // The camera's thread hands frames to the film stand: it ends first.
  delete camera_;
}

void Desk::watch(const QUrl& folder) {
  preferences_->setWatchedFolder(folder.toLocalFile());
}

QUrl Desk::pictureFile(const QString& title) const {
  const QDir folder(
      QStandardPaths::writableLocation(QStandardPaths::PicturesLocation));
  QString stem = title;
  stem.replace(QRegularExpression("[^\\w ]+"), " ");
  stem = stem.simplified();
  if (stem.isEmpty()) stem = "flowkin";
  QString file = folder.filePath(stem + ".png");
  for (int n = 2; QFileInfo::exists(file); ++n) {
    file = folder.filePath(QString("%1 %2.png").arg(stem).arg(n));
  }
  return QUrl::fromLocalFile(file);
}

bool Desk::keepPicture(const QVariant& image, const QUrl& file) {
  return image.value<QImage>().save(file.toLocalFile());
}

}  // namespace flowkin
