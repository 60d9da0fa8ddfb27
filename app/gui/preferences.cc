#include "app/gui/preferences.h"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <algorithm>
#include <cmath>

namespace flowkin {

namespace {
constexpr double kSmallest = 1.0;
constexpr double kLargest = 2.0;
constexpr double kSizeStep = 0.25;
// In the order of the lists of choices; the first is that of the system.
const QStringList kLanguages{"", "en", "de", "fr"};
const QStringList kShades{"", "light", "dark"};
}  // namespace

Preferences::Preferences(const QString& path, QObject* parent)
    : QObject(parent),
      settings_(path.isEmpty()
                    ? new QSettings(this)
                    : new QSettings(path, QSettings::IniFormat, this)) {
  const QSettings& kept = *settings_;
  language_ = kept.value("language").toString();
  shade_ = kept.value("shade").toString();
  size_ = std::clamp(kept.value("size", 1.0).toDouble(), kSmallest, kLargest);
  const bool us_system =
      QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
  us_units_ = kept.value("us-units", us_system).toBool();
  camera_name_ = kept.value("camera").toString();
  camera_format_ = kept.value("camera-format").toString();
  speaks_ = kept.value("speaks", true).toBool();
  watched_folder_ = kept.value("watched-folder").toString();
}

template <typename T>
bool Preferences::Keep(const char* key, T* field, const T& value) {
  if (*field == value) return false;
  *field = value;
  settings_->setValue(key, value);
  emit changed();
  return true;
}

bool Preferences::dark() const {
  if (!shade_.isEmpty()) return shade_ == "dark";
  return QGuiApplication::palette().window().color().lightness() < 128;
}

QString Preferences::LanguageInUse() const {
  const QString wanted =
      language_.isEmpty() ? QLocale::system().name().left(2) : language_;
  return wanted == "de" || wanted == "fr" ? wanted : QStringLiteral("en");
}

int Preferences::languageIndex() const {
  return static_cast<int>(
      std::max<qsizetype>(0, kLanguages.indexOf(language_)));
}

void Preferences::setLanguageIndex(int index) {
  setLanguage(kLanguages.value(index));
}

int Preferences::shadeIndex() const {
  return static_cast<int>(std::max<qsizetype>(0, kShades.indexOf(shade_)));
}

void Preferences::setShadeIndex(int index) { setShade(kShades.value(index)); }

int Preferences::sizeIndex() const {
  return static_cast<int>(std::lround((size_ - kSmallest) / kSizeStep));
}

void Preferences::setSizeIndex(int index) {
  setSize(kSmallest + kSizeStep * index);
}

QStringList Preferences::sizes() const {
  QStringList texts;
  for (double size = kSmallest; size <= kLargest; size += kSizeStep) {
    texts << QString("%1 %").arg(std::lround(size * 100.0));
  }
  return texts;
}

void Preferences::setLanguage(const QString& language) {
  if (language_ == language) return;
  language_ = language;
  settings_->setValue("language", language);
  // The words first, then everything that is told in them.
  emit languageWanted();
  emit changed();
  emit languageChanged();
}

void Preferences::setShade(const QString& shade) {
  Keep("shade", &shade_, shade);
}

void Preferences::setSize(double size) {
  Keep("size", &size_, std::clamp(size, kSmallest, kLargest));
}

void Preferences::setUsUnits(bool us_units) {
  if (Keep("us-units", &us_units_, us_units)) emit unitsChanged();
}

void Preferences::setCameraName(const QString& name) {
  Keep("camera", &camera_name_, name);
}

void Preferences::setCameraFormat(const QString& format) {
  Keep("camera-format", &camera_format_, format);
}

void Preferences::setSpeaks(bool speaks) { Keep("speaks", &speaks_, speaks); }

void Preferences::setWatchedFolder(const QString& folder) {
  Keep("watched-folder", &watched_folder_, folder);
}

}  // namespace flowkin
