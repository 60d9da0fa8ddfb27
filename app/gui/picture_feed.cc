#include "app/gui/picture_feed.h"

#include <QMetaObject>
#include <QMutexLocker>
#include <utility>

namespace flowkin {

void PictureFeed::Show(QImage picture, std::vector<PictureMark> marks) {
  {
    const QMutexLocker lock(&mutex_);
    picture_ = std::move(picture);
    marks_ = std::move(marks);
  }
  Announce();
}

void PictureFeed::ShowMarks(std::vector<PictureMark> marks) {
  {
    const QMutexLocker lock(&mutex_);
    marks_ = std::move(marks);
  }
  Announce();
}

void PictureFeed::Announce() {
  {
    const QMutexLocker lock(&mutex_);
    if (announced_) return;
    announced_ = true;
  }
  QMetaObject::invokeMethod(
      this,
      [this] {
        {
          const QMutexLocker lock(&mutex_);
          announced_ = false;
        }
        emit changed();
      },
      Qt::QueuedConnection);
}

QImage PictureFeed::Picture() const {
  const QMutexLocker lock(&mutex_);
  return picture_;
}

std::vector<PictureMark> PictureFeed::Marks() const {
  const QMutexLocker lock(&mutex_);
  return marks_;
}

}  // namespace flowkin
