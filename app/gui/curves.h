#pragma once

#include <QAbstractSeries>
#include <QObject>
#include <QStringList>
#include <QtQmlIntegration>

#include "app/gui/bench_board.h"

namespace flowkin {

/// The series behind the plots: what a film showed, a cup's path over its
/// additions, a brand's dilution curve.
class Curves : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QStringList films READ films NOTIFY changed)
  Q_PROPERTY(QStringList brands READ brands NOTIFY changed)
  /// Limits of what was filled last, with some room.
  Q_PROPERTY(double left READ left NOTIFY filled)
  Q_PROPERTY(double right READ right NOTIFY filled)
  Q_PROPERTY(double bottom READ bottom NOTIFY filled)
  Q_PROPERTY(double top READ top NOTIFY filled)
  Q_PROPERTY(QString across READ across NOTIFY filled)
  Q_PROPERTY(QString up READ up NOTIFY filled)
  /// Why there is nothing to see; empty where there is.
  Q_PROPERTY(QString nothing READ nothing NOTIFY filled)

 public:
  explicit Curves(BenchBoard* board, QObject* parent = nullptr);

  QStringList films() const;
  QStringList brands() const;
  double left() const { return left_; }
  double right() const { return right_; }
  double bottom() const { return bottom_; }
  double top() const { return top_; }
  QString across() const { return across_; }
  QString up() const { return up_; }
  QString nothing() const { return nothing_; }

  /// Each fills four series: points, middle line, lower and upper edge.
  Q_INVOKABLE void fillFilm(int row,
                            QAbstractSeries* points,
                            QAbstractSeries* line,
                            QAbstractSeries* low,
                            QAbstractSeries* high);
  Q_INVOKABLE void fillPath(QAbstractSeries* points,
                            QAbstractSeries* line,
                            QAbstractSeries* low,
                            QAbstractSeries* high);
  Q_INVOKABLE void fillBrand(int row,
                             QAbstractSeries* points,
                             QAbstractSeries* line,
                             QAbstractSeries* low,
                             QAbstractSeries* high);

 signals:
  void changed();
  void filled();

 private:
  struct Filling;
  void Show(const Filling& filling,
            QAbstractSeries* points,
            QAbstractSeries* line,
            QAbstractSeries* low,
            QAbstractSeries* high);

  BenchBoard* board_;
  double left_ = 0.0;
  double right_ = 1.0;
  double bottom_ = 0.0;
  double top_ = 1.0;
  QString across_;
  QString up_;
  QString nothing_;
};

}  // namespace flowkin
