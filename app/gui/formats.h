#pragma once

#include <QCoreApplication>
#include <QString>
#include <optional>

namespace flowkin {

/// Numbers as the artist reads and writes them: in her units and the manner of
/// her language (QLocale's default). The only place where units are converted.
class Formats {
  Q_DECLARE_TR_FUNCTIONS(Formats)

 public:
  explicit Formats(bool us_units) : us_(us_units) {}

  /// "2.25 mL"; in US units "0.46 tsp (2.25 mL)" or "4.1 fl oz", because small
  /// measures are marked in millilitres there too.
  QString Volume(double ml) const;
  /// The bare number that she would type for a cup's volume, mL or fl oz.
  QString VolumeInput(std::optional<double> ml) const;
  /// Reads such a number; empty where it is none.
  std::optional<double> VolumeFromInput(const QString& text) const;
  QString VolumeUnit() const;  ///< of the input, "mL" or "fl oz"

  QString Temperature(double c) const;
  QString TemperatureInput(std::optional<double> c) const;
  std::optional<double> TemperatureFromInput(const QString& text) const;
  QString TemperatureUnit() const;

  /// Three figures at most: "1.31", "0.87", "12.4".
  static QString Ratio(double ratio);
  /// "3 %", "2.8 %" below 10.
  static QString Percent(double share);
  static QString Seconds(double s);
  static QString Number(double value, int most_decimals);
  static std::optional<double> NumberFromInput(const QString& text);

 private:
  bool us_;
};

}  // namespace flowkin
