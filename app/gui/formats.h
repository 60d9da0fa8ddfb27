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

  /// Weight: "16.3 g" or "0.57 oz".
  QString Weight(double g) const;
  /// Sides of a canvas, cm or in.
  QString LengthUnit() const;
  QString LengthInput(double mm) const;
  std::optional<double> LengthFromInput(const QString& text) const;
  /// Of a film: "1.65 mm" or "0.065 in".
  QString Thickness(double mm) const;
  /// "2000 cm²" or "310 in²".
  QString Area(double m2) const;
  /// What lies on a surface, mL/m² or fl oz/ft².
  QString CoverUnit() const;
  QString CoverInput(double ml_per_m2) const;
  std::optional<double> CoverFromInput(const QString& text) const;

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
