#pragma once

#include <QObject>
#include <QUrl>
#include <QVariant>
#include <QtQmlIntegration>

#include "app/gui/bench_board.h"
#include "app/gui/camera.h"
#include "app/gui/cell_room.h"
#include "app/gui/clip_queue.h"
#include "app/gui/clip_review.h"
#include "app/gui/curves.h"
#include "app/gui/film_stand.h"
#include "app/gui/journal_reader.h"
#include "app/gui/last_check.h"
#include "app/gui/planner.h"
#include "app/gui/preferences.h"
#include "app/gui/print_room.h"
#include "app/gui/tryout.h"
#include "app/gui/voice.h"

namespace flowkin {

/// What the window is opened with.
struct DeskOptions {
  QString settings_path;  ///< empty: the user's own
  QString store_path;     ///< empty: the user's own
  QString films_path;     ///< folder of her films; empty: beside the store
  QString sample_clips;   ///< folder; empty: looked for beside the program
};

/// Holds the controllers of all screens.
class Desk : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(flowkin::Preferences* preferences READ preferences CONSTANT)
  Q_PROPERTY(flowkin::BenchBoard* board READ board CONSTANT)
  Q_PROPERTY(flowkin::Camera* camera READ camera CONSTANT)
  Q_PROPERTY(flowkin::FilmStand* film READ film CONSTANT)
  Q_PROPERTY(flowkin::ClipQueue* clips READ clips CONSTANT)
  Q_PROPERTY(flowkin::ClipReview* review READ review CONSTANT)
  Q_PROPERTY(flowkin::Curves* curves READ curves CONSTANT)
  Q_PROPERTY(flowkin::Tryout* tryout READ tryout CONSTANT)
  Q_PROPERTY(flowkin::LastCheck* lastCheck READ lastCheck CONSTANT)
  Q_PROPERTY(flowkin::Planner* planner READ planner CONSTANT)
  Q_PROPERTY(flowkin::JournalReader* journal READ journal CONSTANT)
  Q_PROPERTY(flowkin::PrintRoom* printRoom READ printRoom CONSTANT)
  Q_PROPERTY(flowkin::CellRoom* cells READ cells CONSTANT)

 public:
  explicit Desk(const DeskOptions& options, QObject* parent = nullptr);
  ~Desk() override;

  Preferences* preferences() { return preferences_; }
  BenchBoard* board() { return board_; }
  Camera* camera() { return camera_; }
  FilmStand* film() { return film_; }
  ClipQueue* clips() { return clips_; }
  ClipReview* review() { return review_; }
  Curves* curves() { return curves_; }
  Tryout* tryout() { return tryout_; }
  LastCheck* lastCheck() { return last_check_; }
  Planner* planner() { return planner_; }
  JournalReader* journal() { return journal_; }
  PrintRoom* printRoom() { return print_room_; }
  CellRoom* cells() { return cells_; }

  /// Watches a folder, given as a file URL, for clips that arrive.
  Q_INVOKABLE void watch(const QUrl& folder);
  /// Writes a picture of a plot to a file URL; false where that fails.
  /// A free name for it in her folder of pictures.
  Q_INVOKABLE QUrl pictureFile(const QString& title) const;
  Q_INVOKABLE bool keepPicture(const QVariant& image, const QUrl& file);

 private:
  Preferences* preferences_;
  BenchBoard* board_;
  ClipQueue* clips_;
  ClipReview* review_;
  Curves* curves_;
  Tryout* tryout_;
  LastCheck* last_check_;
  Planner* planner_;
  JournalReader* journal_;
  PrintRoom* print_room_;
  CellRoom* cells_;
  Voice* voice_;
  Camera* camera_;
  FilmStand* film_;
};

}  // namespace flowkin
