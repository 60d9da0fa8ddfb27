#include "app/gui/live_picture.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace flowkin {

LivePicture::LivePicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setOpaquePainting(false);
  setAntialiasing(true);
}

void LivePicture::setFeed(PictureFeed* feed) {
  if (feed_ == feed) return;
  if (feed_) feed_->disconnect(this);
  feed_ = feed;
  if (feed_) connect(feed_, &PictureFeed::changed, this, &LivePicture::Fetch);
  Fetch();
  emit feedChanged();
}

void LivePicture::Fetch() {
  picture_ = feed_ ? feed_->Picture() : QImage();
  marks_ = feed_ ? feed_->Marks() : std::vector<PictureMark>();
  PlacePicture();
  update();
}

void LivePicture::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  PlacePicture();
}

void LivePicture::PlacePicture() {
  QRectF rect;
  if (!picture_.isNull() && width() > 0.0 && height() > 0.0) {
    const double scale =
        std::min(width() / picture_.width(), height() / picture_.height());
    const QSizeF size(picture_.width() * scale, picture_.height() * scale);
    rect = QRectF((width() - size.width()) / 2.0,
                  (height() - size.height()) / 2.0,
                  size.width(),
                  size.height());
  }
  if (rect == rect_) return;
  rect_ = rect;
  emit pictureRectChanged();
}

void LivePicture::paint(QPainter* painter) {
  if (picture_.isNull()) return;
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  painter->drawImage(rect_, picture_);
  painter->setRenderHint(QPainter::Antialiasing);
  for (const PictureMark& mark : marks_) {
    if (mark.points.empty()) continue;
    QPainterPath path;
    bool first = true;
    for (const QPointF& share : mark.points) {
      const QPointF at(rect_.x() + share.x() * rect_.width(),
                       rect_.y() + share.y() * rect_.height());
      if (first) {
        path.moveTo(at);
      } else {
        path.lineTo(at);
      }
      first = false;
    }
    if (mark.closed) path.closeSubpath();
    // A dark edge under a light line is seen on any paint.
    const double width = mark.strong ? 4.0 : 2.0;
    painter->setPen(QPen(QColor(0, 0, 0, 170), width + 3.0));
    painter->drawPath(path);
    painter->setPen(QPen(QColor(255, 255, 255), width));
    painter->drawPath(path);
  }
}

}  // namespace flowkin
