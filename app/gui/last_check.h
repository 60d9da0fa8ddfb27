#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQmlIntegration>

#include "app/gui/bench_board.h"

namespace flowkin {

/// The last look at all cups together before the pour, as `flowkin ready`
/// tells it, with what each risk rests on.
class LastCheck : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString headline READ headline NOTIFY changed)
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  /// Each with "stops", "line" (which cup, what), "says", "evidence".
  Q_PROPERTY(QVariantList risks READ risks NOTIFY changed)
  Q_PROPERTY(QString notKnown READ notKnown NOTIFY changed)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)

 public:
  explicit LastCheck(BenchBoard* board, QObject* parent = nullptr);

  QString headline() const { return headline_; }
  bool ready() const { return ready_; }
  QVariantList risks() const { return risks_; }
  QString notKnown() const { return not_known_; }
  QStringList cautions() const { return cautions_; }

  /// Looks at the bench as it stands.
  Q_INVOKABLE void look();

 signals:
  void changed();

 private:
  BenchBoard* board_;
  QString headline_;
  bool ready_ = false;
  QVariantList risks_;
  QString not_known_;
  QStringList cautions_;
};

}  // namespace flowkin
