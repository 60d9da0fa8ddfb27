#pragma once

#include <QObject>
#include <QtQmlIntegration>

#include "app/gui/bench_board.h"
#include "app/gui/camera.h"
#include "app/gui/clip_queue.h"
#include "app/gui/preferences.h"

namespace flowkin {

/// What the window is opened with.
struct DeskOptions {
  QString settings_path;  ///< empty: the user's own
  QString store_path;     ///< empty: the user's own
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
  Q_PROPERTY(flowkin::ClipQueue* clips READ clips CONSTANT)

 public:
  explicit Desk(const DeskOptions& options, QObject* parent = nullptr);
  ~Desk() override;

  Preferences* preferences() { return preferences_; }
  BenchBoard* board() { return board_; }
  Camera* camera() { return camera_; }
  ClipQueue* clips() { return clips_; }

  /// Watches a folder, given as a file URL, for clips that arrive.
  Q_INVOKABLE void watch(const QUrl& folder);

 private:
  Preferences* preferences_;
  BenchBoard* board_;
  ClipQueue* clips_;
  Camera* camera_;
};

}  // namespace flowkin
