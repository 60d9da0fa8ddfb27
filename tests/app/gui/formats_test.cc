#include "app/gui/formats.h"

#include <gtest/gtest.h>

#include <QLocale>

namespace flowkin {
namespace {

// Reading back what was written loses what the shown decimals leave out.
constexpr double kShown = 0.005;
// One teaspoon is 4.928922 mL, one fluid ounce 29.57353 mL (NIST SP 811, 2008,
// appendix B.8); a degree Fahrenheit by (t - 32) / 1.8 (same place).
constexpr double kFluidOunce_ml = 29.57353;

class FormatsTest : public ::testing::Test {
 protected:
  void SetUp() override { QLocale::setDefault(QLocale("en_US")); }
  void TearDown() override { QLocale::setDefault(QLocale("en_US")); }
};

TEST_F(FormatsTest, WritesNoEmptyDecimals) {
  EXPECT_EQ(Formats::Number(2.0, 2), "2");
  EXPECT_EQ(Formats::Number(2.5, 2), "2.5");
  EXPECT_EQ(Formats::Number(2.25, 2), "2.25");
  EXPECT_EQ(Formats::Number(0.0, 2), "0");
}

TEST_F(FormatsTest, TellsVolumesInMillilitres) {
  const Formats metric(false);
  EXPECT_EQ(metric.Volume(2.25), "2.25\u00a0mL");
  EXPECT_EQ(metric.Volume(120.0), "120\u00a0mL");
  EXPECT_EQ(metric.Volume(0.05), "0.05\u00a0mL");
}

TEST_F(FormatsTest, TellsVolumesInUsUnits) {
  const Formats us(true);
  EXPECT_EQ(us.Volume(4.928922), "1\u00a0tsp\u00a0(4.93\u00a0mL)");
  EXPECT_EQ(us.Volume(4.0 * kFluidOunce_ml), "4\u00a0fl\u00a0oz");
}

TEST_F(FormatsTest, FollowsTheManner) {
  QLocale::setDefault(QLocale("de_DE"));
  const Formats metric(false);
  EXPECT_EQ(metric.Volume(2.25), "2,25\u00a0mL");
  ASSERT_TRUE(metric.VolumeFromInput("2,25").has_value());
  EXPECT_DOUBLE_EQ(*metric.VolumeFromInput("2,25"), 2.25);
  QLocale::setDefault(QLocale("fr_FR"));
  EXPECT_EQ(Formats::Ratio(1.314), "1,31");
}

TEST_F(FormatsTest, ReadsBackWhatItWrote) {
  for (const bool us_units : {false, true}) {
    const Formats formats(us_units);
    for (const double ml : {0.25, 29.57353, 120.0, 946.353}) {
      const auto again = formats.VolumeFromInput(formats.VolumeInput(ml));
      ASSERT_TRUE(again.has_value());
      // Three decimals of an ounce, two of a millilitre.
      EXPECT_NEAR(*again, ml, us_units ? 0.0005 * kFluidOunce_ml : kShown);
    }
  }
}

TEST_F(FormatsTest, ConvertsTemperatures) {
  const Formats us(true);
  EXPECT_EQ(us.Temperature(20.0), "68 °F");
  ASSERT_TRUE(us.TemperatureFromInput("68").has_value());
  EXPECT_DOUBLE_EQ(*us.TemperatureFromInput("68"), 20.0);
  EXPECT_EQ(Formats(false).Temperature(21.5), "21.5 °C");
}

TEST_F(FormatsTest, RefusesWhatIsNoNumber) {
  const Formats metric(false);
  for (const char* text : {"", "abc", "1.5 x", "nan", "inf", "--2"}) {
    EXPECT_FALSE(metric.VolumeFromInput(text).has_value()) << text;
  }
}

// NIST SP 811 (2008), appendix B: inch 25.4 mm, foot 0.3048 m, US fluid ounce
// 29.57353 mL, avoirdupois ounce 28.34952 g. One ounce on 25 square inches is a
// common rule of thumb; it is 144/25 ounces on a square foot.
TEST(Formats, MeasuresOfACanvas) {
  QLocale::setDefault(QLocale("en_US"));
  const Formats us(true);
  const Formats metric(false);
  EXPECT_EQ(us.LengthInput(508.0), "20");
  EXPECT_EQ(metric.LengthInput(505.0), "50.5");
  EXPECT_NEAR(*us.LengthFromInput("16"), 406.4, 1e-9);
  EXPECT_NEAR(*metric.LengthFromInput("1.8"), 18.0, 1e-9);
  EXPECT_NEAR(
      *us.CoverFromInput("5.76"), 29.57353 / (25.0 * 25.4e-3 * 25.4e-3), 1e-6);
  EXPECT_EQ(us.CoverInput(1833.56), "5.76");
  EXPECT_EQ(us.Weight(28.34952), "1 oz");
  EXPECT_EQ(us.Thickness(1.651), "0.065 in");
  EXPECT_EQ(us.Area(0.2064512), "320 in²");  // 16 x 20 in
  EXPECT_FALSE(us.LengthFromInput("wide"));
}

}  // namespace
}  // namespace flowkin
