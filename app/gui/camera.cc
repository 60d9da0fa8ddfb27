#include "app/gui/camera.h"

#include <unistd.h>

#include <QCamera>
#include <QDir>
#include <QLocale>
#include <QMetaObject>
#include <algorithm>
#include <utility>

namespace flowkin {
namespace {

/// Below this a camera is in the dark or overloaded.
constexpr double kSlowRate_hz = 20.0;

QString FormatKey(const QCameraFormat& format) {
  return QString("%1x%2@%3")
      .arg(format.resolution().width())
      .arg(format.resolution().height())
      .arg(qRound(format.maxFrameRate()));
}

/// True where video devices exist that this user may not open.
bool DevicesAreLocked() {
  const QStringList files =
      QDir("/dev").entryList({"video*"}, QDir::System | QDir::Files);
  return std::any_of(files.begin(), files.end(), [](const QString& file) {
    return ::access(("/dev/" + file).toLocal8Bit().constData(), R_OK | W_OK) !=
           0;
  });
}

}  // namespace

Camera::Camera(Preferences* preferences,
               CameraWorker::FrameTaker taker,
               QObject* parent)
    : QObject(parent),
      preferences_(preferences),
      worker_(new CameraWorker(&feed_, std::move(taker))) {
  worker_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, worker_, &QObject::deleteLater);
  connect(worker_, &CameraWorker::flowing, this, [this](bool arrive) {
    live_ = arrive;
    if (arrive) {
      was_live_ = true;
      refused_ = false;
      failure_.clear();
    }
    emit stateChanged();
  });
  connect(worker_,
          &CameraWorker::rateMeasured,
          this,
          [this](double frames_per_s, int dropped) {
            frames_per_s_ = frames_per_s;
            dropped_ = dropped;
            emit rateChanged();
          });
  connect(worker_, &CameraWorker::lockable, this, [this](bool can_lock) {
    can_lock_ = can_lock;
    emit stateChanged();
  });
  connect(worker_, &CameraWorker::refused, this, [this] {
    refused_ = true;
    emit stateChanged();
  });
  connect(worker_, &CameraWorker::failed, this, [this](const QString& text) {
    failure_ = text;
    emit stateChanged();
  });
  // Queued: the first look for cameras tells of them while it holds a lock that
  // a second look would wait for.
  connect(&watcher_,
          &QMediaDevices::videoInputsChanged,
          this,
          &Camera::FindDevices,
          Qt::QueuedConnection);
  thread_.setObjectName("camera");
  thread_.start();
}

Camera::~Camera() {
  thread_.quit();
  thread_.wait();
}

void Camera::FindDevices() {
  // The backend lists cameras twice and keeps ghosts of those that went, and
  // its ids do not outlive the program: a name is listed once, and the newest
  // device of that name is the one that is there.
  devices_.clear();
  for (const QCameraDevice& device : QMediaDevices::videoInputs()) {
    const auto known = std::find_if(
        devices_.begin(), devices_.end(), [&](const QCameraDevice& other) {
          return other.description() == device.description();
        });
    if (known == devices_.end()) {
      devices_.push_back(device);
    } else {
      *known = device;
    }
  }
  const auto named = [&](const QString& name) {
    return std::find_if(
        devices_.begin(), devices_.end(), [&](const QCameraDevice& device) {
          return device.description() == name;
        });
  };
  auto found = named(preferences_->cameraName());
  if (found == devices_.end()) found = named(device_.description());
  if (found == devices_.end()) found = devices_.begin();
  const QCameraDevice before = device_;
  device_ = found == devices_.end() ? QCameraDevice() : *found;
  emit devicesChanged();
  emit stateChanged();
  if (!wanted_ || device_.isNull()) return;
  // A second listing of the camera that runs is no reason to open it anew.
  const bool another = before.description() != device_.description();
  const bool plugged_in_again = !live_ && before.id() != device_.id();
  if (another || plugged_in_again) OpenChosen();
}

QStringList Camera::names() const {
  QStringList names;
  for (const QCameraDevice& device : devices_) names << device.description();
  return names;
}

QList<QCameraFormat> Camera::Formats() const {
  QList<QCameraFormat> formats;
  for (const QCameraFormat& format : device_.videoFormats()) {
    const bool known = std::any_of(
        formats.begin(), formats.end(), [&](const QCameraFormat& other) {
          return FormatKey(other) == FormatKey(format);
        });
    if (!known) formats.push_back(format);
  }
  std::sort(formats.begin(),
            formats.end(),
            [](const QCameraFormat& a, const QCameraFormat& b) {
              const auto size = [](const QCameraFormat& format) {
                return format.resolution().width() *
                       format.resolution().height();
              };
              if (size(a) != size(b)) return size(a) > size(b);
              return a.maxFrameRate() > b.maxFrameRate();
            });
  return formats;
}

QStringList Camera::formats() const {
  QStringList texts{tr("the camera's own choice")};
  for (const QCameraFormat& format : Formats()) {
    texts << tr("%1 × %2, %3 a second")
                 .arg(format.resolution().width())
                 .arg(format.resolution().height())
                 .arg(qRound(format.maxFrameRate()));
  }
  return texts;
}

int Camera::formatIndex() const {
  const QList<QCameraFormat> formats = Formats();
  for (qsizetype i = 0; i < formats.size(); ++i) {
    if (FormatKey(formats[i]) == preferences_->cameraFormat()) {
      return static_cast<int>(i) + 1;
    }
  }
  return 0;
}

void Camera::choose(const QString& name) {
  preferences_->setCameraName(name);
  FindDevices();
}

void Camera::chooseFormat(int index) {
  const QList<QCameraFormat> formats = Formats();
  const bool own = index < 1 || index > formats.size();
  preferences_->setCameraFormat(own ? QString()
                                    : FormatKey(formats[index - 1]));
  emit devicesChanged();
  if (wanted_) OpenChosen();
}

void Camera::start() {
  if (wanted_) return;
  wanted_ = true;
  was_live_ = false;
  device_ = QCameraDevice();
  FindDevices();
}

void Camera::stop() {
  if (!wanted_) return;
  wanted_ = false;
  live_ = false;
  QMetaObject::invokeMethod(worker_, &CameraWorker::Close);
  emit stateChanged();
}

void Camera::OpenChosen() {
  refused_ = false;
  failure_.clear();
  const QList<QCameraFormat> formats = Formats();
  const int index = formatIndex();
  const QCameraFormat format = index > 0 ? formats[index - 1] : QCameraFormat();
  const QCameraDevice device = device_;
  QMetaObject::invokeMethod(worker_, [worker = worker_, device, format] {
    worker->Open(device, format);
  });
}

void Camera::setLocked(bool locked) {
  if (locked_ == locked) return;
  locked_ = locked;
  QMetaObject::invokeMethod(
      worker_, [worker = worker_, locked] { worker->Lock(locked); });
  emit stateChanged();
}

QString Camera::trouble() const {
  if (!wanted_ || live_) return {};
  if (!failure_.isEmpty()) return failure_;
  if (device_.isNull()) {
    if (DevicesAreLocked()) {
      return tr(
          "A camera is there, but this user may not open it; allow "
          "access to the camera and come back.");
    }
    return tr("No camera found; plug one in, or drop clips from a phone.");
  }
  if (was_live_) {
    return tr(
        "The camera sends no pictures any more; check its cable. "
        "Filming goes on as soon as it is back.");
  }
  if (refused_) {
    return tr(
        "The camera sends no picture; close other programs that use it, or "
        "choose another one.");
  }
  return tr("Waiting for the camera's first picture …");
}

QString Camera::rate() const {
  if (!live_ || frames_per_s_ <= 0.0) return {};
  const QString rate = QLocale().toString(frames_per_s_, 'f', 1);
  QString text =
      dropped_ == 0
          ? tr("%1 pictures a second, none lost").arg(rate)
          : tr("%1 pictures a second, %n lost", nullptr, dropped_).arg(rate);
  if (frames_per_s_ < kSlowRate_hz) text += tr(" – more light makes it faster");
  return text;
}

}  // namespace flowkin
