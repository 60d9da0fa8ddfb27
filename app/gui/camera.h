#pragma once

#include <QCameraDevice>
#include <QMediaDevices>
#include <QObject>
#include <QStringList>
#include <QThread>
#include <QtQmlIntegration>

#include "app/gui/camera_worker.h"
#include "app/gui/picture_feed.h"
#include "app/gui/preferences.h"

namespace flowkin {

/// The camera on the bench: which there are, whether it runs, and in one
/// sentence what is wrong when it does not.
class Camera : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QStringList names READ names NOTIFY devicesChanged)
  Q_PROPERTY(int nameIndex READ nameIndex NOTIFY devicesChanged)
  Q_PROPERTY(QString name READ name NOTIFY devicesChanged)
  /// "1920 x 1080, 30 a second" for each format; the first is the camera's own
  /// choice.
  Q_PROPERTY(QStringList formats READ formats NOTIFY devicesChanged)
  Q_PROPERTY(int formatIndex READ formatIndex NOTIFY devicesChanged)
  Q_PROPERTY(bool live READ live NOTIFY stateChanged)
  Q_PROPERTY(bool wanted READ wanted NOTIFY stateChanged)
  /// What is wrong, empty if nothing is.
  Q_PROPERTY(QString trouble READ trouble NOTIFY stateChanged)
  /// "29.8 pictures a second, none lost".
  Q_PROPERTY(QString rate READ rate NOTIFY rateChanged)
  Q_PROPERTY(bool canLock READ canLock NOTIFY stateChanged)
  Q_PROPERTY(bool locked READ locked WRITE setLocked NOTIFY stateChanged)
  Q_PROPERTY(flowkin::PictureFeed* feed READ feed CONSTANT)

 public:
  /// `taker` gets every frame, in the camera's thread.
  Camera(Preferences* preferences,
         CameraWorker::FrameTaker taker,
         QObject* parent = nullptr);
  ~Camera() override;

  QStringList names() const;
  int nameIndex() const { return static_cast<int>(names().indexOf(name())); }
  QString name() const { return device_.description(); }
  QStringList formats() const;
  int formatIndex() const;
  bool live() const { return live_; }
  bool wanted() const { return wanted_; }
  QString trouble() const;
  QString rate() const;
  bool canLock() const { return can_lock_; }
  bool locked() const { return locked_; }
  void setLocked(bool locked);
  PictureFeed* feed() { return &feed_; }

  Q_INVOKABLE void choose(const QString& name);
  Q_INVOKABLE void chooseFormat(int index);
  Q_INVOKABLE void start();
  Q_INVOKABLE void stop();

 signals:
  void devicesChanged();
  void stateChanged();
  void rateChanged();

 private:
  void FindDevices();
  void OpenChosen();
  QList<QCameraFormat> Formats() const;

  Preferences* preferences_;
  QMediaDevices watcher_;
  PictureFeed feed_;
  QThread thread_;
  CameraWorker* worker_;
  QList<QCameraDevice> devices_;  ///< each name once
  QCameraDevice device_;
  bool wanted_ = false;
  bool live_ = false;
  bool was_live_ = false;
  bool can_lock_ = false;
  bool locked_ = false;
  QString failure_;
  bool refused_ = false;  ///< opened, and no picture came
  double frames_per_s_ = 0.0;
  int dropped_ = 0;
};

}  // namespace flowkin
