#pragma once

#include <QObject>
#include <QSettings>
#include <QString>
#include <QStringList>
#include <QtQmlIntegration>

namespace flowkin {

/// What the artist chose about the window itself; kept in the user's settings
/// from the moment it changes. Nothing of the bench lives here.
class Preferences : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// "en", "de", "fr", or empty for the language of the system.
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
  /// "light", "dark", or empty for that of the system.
  Q_PROPERTY(QString shade READ shade WRITE setShade NOTIFY changed)
  /// The same three as places in the lists of choices.
  Q_PROPERTY(int languageIndex READ languageIndex WRITE setLanguageIndex NOTIFY
                 changed)
  Q_PROPERTY(int shadeIndex READ shadeIndex WRITE setShadeIndex NOTIFY changed)
  Q_PROPERTY(int sizeIndex READ sizeIndex WRITE setSizeIndex NOTIFY changed)
  Q_PROPERTY(QStringList sizes READ sizes CONSTANT)
  Q_PROPERTY(bool dark READ dark NOTIFY changed)
  /// Size of everything on screen, 1 to 2.
  Q_PROPERTY(double size READ size WRITE setSize NOTIFY changed)
  /// US customary units instead of millilitres and degrees Celsius.
  Q_PROPERTY(bool usUnits READ usUnits WRITE setUsUnits NOTIFY changed)
  Q_PROPERTY(
      QString cameraName READ cameraName WRITE setCameraName NOTIFY changed)
  /// "1920x1080@30", or empty for the camera's own choice.
  Q_PROPERTY(QString cameraFormat READ cameraFormat WRITE setCameraFormat NOTIFY
                 changed)
  Q_PROPERTY(bool speaks READ speaks WRITE setSpeaks NOTIFY changed)
  /// Folder that a phone's clips arrive in; empty for none.
  Q_PROPERTY(QString watchedFolder READ watchedFolder WRITE setWatchedFolder
                 NOTIFY changed)

 public:
  /// `path`: the settings file; empty for the user's own.
  explicit Preferences(const QString& path, QObject* parent = nullptr);

  QString language() const { return language_; }
  QString shade() const { return shade_; }
  bool dark() const;
  double size() const { return size_; }
  bool usUnits() const { return us_units_; }
  QString cameraName() const { return camera_name_; }
  QString cameraFormat() const { return camera_format_; }
  bool speaks() const { return speaks_; }
  QString watchedFolder() const { return watched_folder_; }

  int languageIndex() const;
  void setLanguageIndex(int index);
  int shadeIndex() const;
  void setShadeIndex(int index);
  int sizeIndex() const;
  void setSizeIndex(int index);
  QStringList sizes() const;
  void setLanguage(const QString& language);
  void setShade(const QString& shade);
  void setSize(double size);
  void setUsUnits(bool us_units);
  void setCameraName(const QString& name);
  void setCameraFormat(const QString& format);
  void setSpeaks(bool speaks);
  void setWatchedFolder(const QString& folder);

  /// The language in use: "en", "de" or "fr".
  QString LanguageInUse() const;
  QSettings& Store() { return *settings_; }

 signals:
  void changed();
  /// Before changed(): the words are to be loaded now.
  void languageWanted();
  void languageChanged();
  void unitsChanged();

 private:
  template <typename T>
  bool Keep(const char* key, T* field, const T& value);

  QSettings* settings_;
  QString language_;
  QString shade_;
  double size_ = 1.0;
  bool us_units_ = false;
  QString camera_name_;
  QString camera_format_;
  bool speaks_ = true;
  QString watched_folder_;
};

}  // namespace flowkin
