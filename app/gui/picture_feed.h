#pragma once

#include <QImage>
#include <QMutex>
#include <QObject>
#include <QPointF>
#include <QtQmlIntegration>
#include <vector>

namespace flowkin {

/// A line that shows what was found, in shares of the picture's width and
/// height, 0 to 1 from the top left.
struct PictureMark {
  std::vector<QPointF> points;
  bool closed = false;
  bool strong = false;  ///< the stick, the front; else an aid to the eye
};

/// Hands the newest picture from any thread to the items that show it; older
/// ones that nobody fetched in time are passed over.
class PictureFeed : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")

 public:
  using QObject::QObject;

  /// Any thread. A null picture empties the feed.
  void Show(QImage picture, std::vector<PictureMark> marks = {});
  /// Marks for the picture that is shown. Any thread.
  void ShowMarks(std::vector<PictureMark> marks);

  QImage Picture() const;
  std::vector<PictureMark> Marks() const;

 signals:
  void changed();

 private:
  void Announce();

  mutable QMutex mutex_;
  QImage picture_;
  std::vector<PictureMark> marks_;
  bool announced_ = false;
};

}  // namespace flowkin
