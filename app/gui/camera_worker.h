#pragma once

#include <QCameraDevice>
#include <QCameraFormat>
#include <QObject>
#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

#include "app/gui/picture_feed.h"
#include "app/usecases/clip_test.h"

class QCamera;
class QMediaCaptureSession;
class QTimer;
class QVideoFrame;
class QVideoSink;

namespace flowkin {

/// Reads one camera in a thread of its own, so that a busy window costs no
/// frame. Never changes sink or camera while the other is attached, because the
/// media backend then falls silent for good.
class CameraWorker : public QObject {
  Q_OBJECT

 public:
  using FrameTaker = std::function<void(const Frame&)>;

  CameraWorker(PictureFeed* feed, FrameTaker taker);
  ~CameraWorker() override;

  /// Any thread. Widest picture that is shown, px.
  static constexpr int kShownWidth_px = 960;

 public slots:
  void Open(const QCameraDevice& device, const QCameraFormat& format);
  void Close();
  void Lock(bool locked);

 signals:
  /// A camera is attached and frames arrive, or have stopped to.
  void flowing(bool frames_arrive);
  void rateMeasured(double frames_per_s, int dropped);
  void lockable(bool can_lock);
  void failed(const QString& text);
  /// It was opened and has sent nothing for a while.
  void refused();

 private:
  void Attach();
  void Detach();
  void Take(const QVideoFrame& picture);
  void LookAfter();
  std::optional<std::chrono::nanoseconds> TimeOf(const QVideoFrame& picture);

  PictureFeed* feed_;
  FrameTaker taker_;
  QCameraDevice device_;
  QCameraFormat format_;
  std::unique_ptr<QVideoSink> sink_;
  std::unique_ptr<QMediaCaptureSession> session_;
  std::unique_ptr<QCamera> camera_;
  QTimer* watch_ = nullptr;
  bool wanted_ = false;
  bool flows_ = false;
  bool own_clock_ = false;  ///< the camera gives no usable times
  bool any_ = false;
  std::chrono::steady_clock::time_point arrival_;
  std::chrono::nanoseconds stamp_{0};    ///< of the last frame, camera's own
  std::chrono::nanoseconds elapsed_{0};  ///< handed on, since the first frame
  std::chrono::nanoseconds usual_{0};    ///< usual step between frames
  std::int64_t index_ = 0;
  int dropped_ = 0;
  int counted_ = 0;
  std::chrono::steady_clock::time_point count_from_;
};

}  // namespace flowkin
