#pragma once

#include <QAbstractSeries>
#include <QList>
#include <QObject>
#include <QPointF>
#include <QStringList>
#include <QVariantList>
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
  /// What the picture shows, to stand above it.
  Q_PROPERTY(QString title READ title NOTIFY filled)
  /// What the points, the line and the shade are; empty where there is none.
  Q_PROPERTY(QString pointsWord READ pointsWord NOTIFY filled)
  Q_PROPERTY(QString lineWord READ lineWord NOTIFY filled)
  Q_PROPERTY(QString shadeWord READ shadeWord NOTIFY filled)
  /// 95 % interval of each point: "x", "low", "high".
  Q_PROPERTY(QVariantList intervals READ intervals NOTIFY filled)
  /// Edges of the match band; equal where the picture has none.
  Q_PROPERTY(double matchLow READ matchLow NOTIFY filled)
  Q_PROPERTY(double matchHigh READ matchHigh NOTIFY filled)
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
  QString across() const { return shown_.across; }
  QString up() const { return shown_.up; }
  QString title() const { return shown_.title; }
  QString pointsWord() const { return shown_.points_word; }
  QString lineWord() const { return shown_.line_word; }
  QString shadeWord() const { return shown_.shade_word; }
  QVariantList intervals() const { return shown_.intervals; }
  double matchLow() const { return shown_.match_low; }
  double matchHigh() const { return shown_.match_high; }
  QString nothing() const { return nothing_; }

  /// A round step for the ticks of an axis.
  Q_INVOKABLE static double step(double from, double to);
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
  struct Filling {
    QList<QPointF> points, line, low, high;
    QVariantList intervals;
    double match_low = 0.0;
    double match_high = 0.0;
    QString title, across, up, points_word, line_word, shade_word;
  };
  void Show(Filling filling,
            QAbstractSeries* points,
            QAbstractSeries* line,
            QAbstractSeries* low,
            QAbstractSeries* high);

  BenchBoard* board_;
  double left_ = 0.0;
  double right_ = 1.0;
  double bottom_ = 0.0;
  double top_ = 1.0;
  Filling shown_;
  QString nothing_;
};

}  // namespace flowkin
