#include "app/gui/formats.h"

#include <QLocale>
#include <cmath>

namespace flowkin {
namespace {

// NIST SP 811 (2008), appendix B.8: gallon (US) 3.785412 L, of which the fluid
// ounce is 1/128 and the teaspoon 1/768.
constexpr double kFluidOunce_ml = 29.57353;
constexpr double kTeaspoon_ml = 4.928922;
// NIST SP 811 (2008), appendix B: inch, foot, avoirdupois ounce.
constexpr double kInch_mm = 25.4;
constexpr double kSquareFoot_m2 = 0.3048 * 0.3048;
constexpr double kOunce_g = 28.34952;
/// From here on US volumes are told in ounces.
constexpr double kOuncesFrom_ml = 15.0;

/// A number and its unit are not parted at the end of a line.
QString OnOneLine(QString text) { return text.replace(' ', QChar::Nbsp); }

}  // namespace

QString Formats::Number(double value, int most_decimals) {
  // Decimals that are zero say nothing to a painter.
  const QLocale locale;
  for (int decimals = 0; decimals < most_decimals; ++decimals) {
    const double scale = std::pow(10.0, decimals);
    const double finest = std::pow(10.0, most_decimals);
    if (std::abs(std::round(value * scale) / scale -
                 std::round(value * finest) / finest) < 0.5 / finest) {
      return locale.toString(value, 'f', decimals);
    }
  }
  return locale.toString(value, 'f', most_decimals);
}

std::optional<double> Formats::NumberFromInput(const QString& text) {
  bool is_number = false;
  double value = QLocale().toDouble(text.trimmed(), &is_number);
  if (!is_number) value = QLocale::c().toDouble(text.trimmed(), &is_number);
  if (!is_number || !std::isfinite(value)) return std::nullopt;
  return value;
}

QString Formats::Volume(double ml) const {
  const int decimals = ml < 10.0 ? 2 : ml < 100.0 ? 1 : 0;
  QString metric = OnOneLine(tr("%1 mL").arg(Number(ml, decimals)));
  if (!us_) return metric;
  if (ml < kOuncesFrom_ml) {
    return OnOneLine(
        tr("%1 tsp (%2)").arg(Number(ml / kTeaspoon_ml, 2), metric));
  }
  return OnOneLine(tr("%1 fl oz").arg(Number(ml / kFluidOunce_ml, 1)));
}

QString Formats::VolumeUnit() const { return us_ ? tr("fl oz") : tr("mL"); }

QString Formats::VolumeInput(std::optional<double> ml) const {
  if (!ml) return {};
  return us_ ? Number(*ml / kFluidOunce_ml, 3) : Number(*ml, 2);
}

std::optional<double> Formats::VolumeFromInput(const QString& text) const {
  const std::optional<double> number = NumberFromInput(text);
  if (!number) return std::nullopt;
  return us_ ? *number * kFluidOunce_ml : *number;
}

QString Formats::Weight(double g) const {
  return us_ ? tr("%1 oz").arg(Number(g / kOunce_g, 2))
             : tr("%1 g").arg(Number(g, g < 100.0 ? 1 : 0));
}

QString Formats::LengthUnit() const { return us_ ? tr("in") : tr("cm"); }

QString Formats::LengthInput(double mm) const {
  return us_ ? Number(mm / kInch_mm, 2) : Number(mm / 10.0, 1);
}

std::optional<double> Formats::LengthFromInput(const QString& text) const {
  const std::optional<double> number = NumberFromInput(text);
  if (!number) return std::nullopt;
  return *number * (us_ ? kInch_mm : 10.0);
}

QString Formats::Thickness(double mm) const {
  return us_ ? tr("%1 in").arg(Number(mm / kInch_mm, 3))
             : tr("%1 mm").arg(Number(mm, 2));
}

QString Formats::Area(double m2) const {
  return us_ ? tr("%1 in²").arg(Number(m2 * 1e6 / (kInch_mm * kInch_mm), 0))
             : tr("%1 cm²").arg(Number(m2 * 1e4, 0));
}

QString Formats::CoverUnit() const {
  return us_ ? tr("fl oz/ft²") : tr("mL/m²");
}

QString Formats::CoverInput(double ml_per_m2) const {
  return us_ ? Number(ml_per_m2 * kSquareFoot_m2 / kFluidOunce_ml, 2)
             : Number(ml_per_m2, 0);
}

std::optional<double> Formats::CoverFromInput(const QString& text) const {
  const std::optional<double> number = NumberFromInput(text);
  if (!number) return std::nullopt;
  return us_ ? *number * kFluidOunce_ml / kSquareFoot_m2 : *number;
}

QString Formats::Temperature(double c) const {
  return us_ ? tr("%1 °F").arg(Number(c * 1.8 + 32.0, 0))
             : tr("%1 °C").arg(Number(c, 1));
}

QString Formats::TemperatureUnit() const { return us_ ? tr("°F") : tr("°C"); }

QString Formats::TemperatureInput(std::optional<double> c) const {
  if (!c) return {};
  return Number(us_ ? *c * 1.8 + 32.0 : *c, 1);
}

std::optional<double> Formats::TemperatureFromInput(const QString& text) const {
  const std::optional<double> number = NumberFromInput(text);
  if (!number) return std::nullopt;
  return us_ ? (*number - 32.0) / 1.8 : *number;
}

QString Formats::Ratio(double ratio) {
  return QLocale().toString(ratio, 'f', ratio < 10.0 ? 2 : 1);
}

QString Formats::Percent(double share) {
  const double percent = share * 100.0;
  return OnOneLine(tr("%1 %").arg(Number(percent, percent < 10.0 ? 1 : 0)));
}

QString Formats::Seconds(double s) {
  return OnOneLine(tr("%1 s").arg(QLocale().toString(s, 'f', 2)));
}

}  // namespace flowkin
