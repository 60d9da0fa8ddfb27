#pragma once

#include <QPointer>
#include <QQuickPaintedItem>
#include <QRectF>
#include <QtQmlIntegration>

#include "app/gui/picture_feed.h"

namespace flowkin {

/// Shows a feed's newest picture, as large as fits, with its marks. Painted in
/// software, so it works on every scene graph.
class LivePicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(
      flowkin::PictureFeed* feed READ feed WRITE setFeed NOTIFY feedChanged)
  /// Where the picture lies inside the item, px.
  Q_PROPERTY(QRectF pictureRect READ pictureRect NOTIFY pictureRectChanged)
  Q_PROPERTY(bool empty READ empty NOTIFY pictureRectChanged)

 public:
  explicit LivePicture(QQuickItem* parent = nullptr);

  PictureFeed* feed() const { return feed_; }
  void setFeed(PictureFeed* feed);
  QRectF pictureRect() const { return rect_; }
  bool empty() const { return picture_.isNull(); }

  void paint(QPainter* painter) override;

 signals:
  void feedChanged();
  void pictureRectChanged();

 protected:
  void geometryChange(const QRectF& now, const QRectF& before) override;

 private:
  void Fetch();
  void PlacePicture();

  QPointer<PictureFeed> feed_;
  QImage picture_;
  std::vector<PictureMark> marks_;
  QRectF rect_;
};

}  // namespace flowkin
