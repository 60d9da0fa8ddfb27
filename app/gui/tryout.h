#pragma once

#include <QObject>
#include <QStringList>
#include <QtQmlIntegration>

#include "app/gui/bench_board.h"
#include "app/gui/clip_queue.h"

namespace flowkin {

/// A first measurement without paint: the sample clips go through the same
/// loop as her own films, on a bench session of their own.
class Tryout : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// False where the sample clips are not installed.
  Q_PROPERTY(bool possible READ possible CONSTANT)
  /// 0 not begun, then one after the other to `steps`.
  Q_PROPERTY(int step READ step NOTIFY changed)
  Q_PROPERTY(int steps READ steps CONSTANT)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString headline READ headline NOTIFY changed)
  Q_PROPERTY(QString text READ text NOTIFY changed)
  Q_PROPERTY(QString buttonText READ buttonText NOTIFY changed)

 public:
  /// `folder`: where manifest.json lies; empty looks beside the program.
  Tryout(const QString& folder,
         BenchBoard* board,
         ClipQueue* clips,
         QObject* parent = nullptr);

  bool possible() const { return !folder_.isEmpty(); }
  int step() const { return step_; }
  int steps() const { return kSteps; }
  bool busy() const;
  QString headline() const;
  QString text() const;
  QString buttonText() const;

  /// Goes on to the next step; after the last one back to none.
  Q_INVOKABLE void goOn();
  Q_INVOKABLE void leave();

 signals:
  void changed();

 private:
  static constexpr int kSteps = 5;

  bool AddCup(const QString& name,
              const QString& brand,
              int role,
              const QString& swatch);
  void Film(const QStringList& files);

  QString folder_;
  BenchBoard* board_;
  ClipQueue* clips_;
  int step_ = 0;
};

}  // namespace flowkin
