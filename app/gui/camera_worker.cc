#include "app/gui/camera_worker.h"

#include <QCamera>
#include <QMediaCaptureSession>
#include <QTimer>
#include <QVideoFrame>
#include <QVideoSink>
#include <utility>

#include "app/gui/frame_picture.h"

namespace flowkin {
namespace {

using std::chrono::milliseconds;
using std::chrono::nanoseconds;
using std::chrono::steady_clock;

/// Silence after which a camera counts as gone. A camera in the dark may fall
/// to 5 frames per second; five of those.
constexpr milliseconds kSilence{1000};
/// Silence after which it is opened anew; opening takes up to a second.
constexpr milliseconds kReopenAfter{3000};
constexpr int kLookEvery_ms = 250;
/// A step of more than this many usual ones means that frames were lost.
constexpr double kLostStep = 1.5;

}  // namespace

CameraWorker::CameraWorker(PictureFeed* feed, FrameTaker taker)
    : feed_(feed), taker_(std::move(taker)) {}

CameraWorker::~CameraWorker() { Detach(); }

void CameraWorker::Open(const QCameraDevice& device,
                        const QCameraFormat& format) {
  wanted_ = true;
  device_ = device;
  format_ = format;
  if (watch_ == nullptr) {
    watch_ = new QTimer(this);
    connect(watch_, &QTimer::timeout, this, &CameraWorker::LookAfter);
    watch_->start(kLookEvery_ms);
  }
  Attach();
}

void CameraWorker::Close() {
  wanted_ = false;
  Detach();
  feed_->Show({});
}

void CameraWorker::Attach() {
  Detach();
  sink_ = std::make_unique<QVideoSink>();
  session_ = std::make_unique<QMediaCaptureSession>();
  session_->setVideoSink(sink_.get());
  connect(
      sink_.get(), &QVideoSink::videoFrameChanged, this, &CameraWorker::Take);
  camera_ = std::make_unique<QCamera>(device_);
  if (!format_.isNull()) camera_->setCameraFormat(format_);
  connect(camera_.get(),
          &QCamera::errorOccurred,
          this,
          [this](QCamera::Error error) {
            if (error != QCamera::NoError) emit refused();
          });
  any_ = false;
  own_clock_ = false;
  usual_ = nanoseconds{0};
  counted_ = 0;
  arrival_ = steady_clock::now();
  count_from_ = arrival_;
  session_->setCamera(camera_.get());
  camera_->start();
  emit lockable(
      camera_->isExposureModeSupported(QCamera::ExposureManual) ||
      camera_->isWhiteBalanceModeSupported(QCamera::WhiteBalanceManual) ||
      camera_->isFocusModeSupported(QCamera::FocusModeManual));
}

void CameraWorker::Detach() {
  if (session_) session_->setCamera(nullptr);
  camera_.reset();
  session_.reset();
  sink_.reset();
  if (flows_) {
    flows_ = false;
    emit flowing(false);
  }
}

void CameraWorker::Lock(bool locked) {
  if (!camera_) return;
  if (camera_->isExposureModeSupported(QCamera::ExposureManual)) {
    camera_->setExposureMode(locked ? QCamera::ExposureManual
                                    : QCamera::ExposureAuto);
  }
  if (camera_->isWhiteBalanceModeSupported(QCamera::WhiteBalanceManual)) {
    camera_->setWhiteBalanceMode(locked ? QCamera::WhiteBalanceManual
                                        : QCamera::WhiteBalanceAuto);
  }
  if (camera_->isFocusModeSupported(QCamera::FocusModeManual)) {
    camera_->setFocusMode(locked ? QCamera::FocusModeManual
                                 : QCamera::FocusModeAuto);
  }
}

void CameraWorker::LookAfter() {
  if (!wanted_) return;
  const auto silent = steady_clock::now() - arrival_;
  if (silent < kSilence) return;
  if (flows_) {
    flows_ = false;
    emit flowing(false);
  }
  if (silent > kReopenAfter) {
    if (!any_) emit refused();
    Attach();
  }
}

std::optional<nanoseconds> CameraWorker::TimeOf(const QVideoFrame& picture) {
  const auto now = steady_clock::now();
  const auto since_last = now - arrival_;
  arrival_ = now;
  const bool stamped = picture.startTime() >= 0;
  const nanoseconds stamp = std::chrono::microseconds(picture.startTime());
  if (!any_) {
    any_ = true;
    stamp_ = stamp;
    own_clock_ = !stamped;
    // After a loss the clock goes on by the time that has passed.
    if (index_ > 0) elapsed_ += since_last;
    return elapsed_;
  }
  if (!stamped) own_clock_ = true;
  const nanoseconds step = own_clock_ ? since_last : stamp - stamp_;
  if (step <= nanoseconds{0}) return std::nullopt;  // delivered twice
  if (!own_clock_) stamp_ = stamp;
  elapsed_ += step;
  if (usual_ > nanoseconds{0} &&
      static_cast<double>(step.count()) >
          kLostStep * static_cast<double>(usual_.count())) {
    dropped_ += static_cast<int>((step + usual_ / 2) / usual_) - 1;
  }
  usual_ = usual_ == nanoseconds{0} ? step : (usual_ * 7 + step) / 8;
  return elapsed_;
}

void CameraWorker::Take(const QVideoFrame& picture) {
  if (!picture.isValid()) return;  // the last one on detaching
  const std::optional<nanoseconds> time = TimeOf(picture);
  if (!time) return;
  Frame frame;
  if (!CopyPlanes(picture, &frame)) {
    emit failed(
        tr("This camera's pictures cannot be read; choose another "
           "size in the settings."));
    return;
  }
  frame.timestamp = *time;
  frame.index = index_++;
  if (!flows_) {
    flows_ = true;
    emit flowing(true);
  }
  if (taker_) taker_(frame);
  feed_->Show(ToPicture(frame, kShownWidth_px), feed_->Marks());
  ++counted_;
  const auto counting = steady_clock::now() - count_from_;
  if (counting >= std::chrono::seconds(1)) {
    emit rateMeasured(
        counted_ / std::chrono::duration<double>(counting).count(), dropped_);
    counted_ = 0;
    count_from_ = steady_clock::now();
  }
}

}  // namespace flowkin
