// The published laws and tables that other tests lean on, against each other:
// a slip in typing one of them would make those tests worthless.

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/csv_table.h"
#include "tests/support/flow_cups.h"
#include "tests/support/reference_liquids.h"

namespace flowkin::test {
namespace {

TEST(Water, TwoCorrelationsAndTheStandard) {
  // ISO/TR 3666: 1.0016 mPa.s at 20 C, standard uncertainty 0.17 %.
  EXPECT_NEAR(WaterViscosityUpaS(20.0), 1001.6, 0.0017 * 1001.6);
  EXPECT_NEAR(WaterViscosityUpaS(20.0), 1001.567, 5e-4);  // printed digits
  for (double t_c = 0.0; t_c <= 40.0; t_c += 5.0) {
    // Kestin's is scaled to 1.0020 and good to 0.3 %.
    EXPECT_NEAR(
        WaterViscosityKestinUpaS(t_c) / WaterViscosityUpaS(t_c), 1.0, 0.003);
  }
  const CsvTable table = ReadCsv("liquids/water-viscosity-0-40C.csv");
  ASSERT_GT(table.rows.size(), 40u);
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    EXPECT_NEAR(WaterViscosityUpaS(table.Number(i, "temp_C")),
                table.Number(i, "iapws_uPas"),
                0.006);  // printed to 0.01
  }
}

TEST(Glycerol, ChengAgainstSegurOberstar) {
  const CsvTable table =
      ReadCsv("liquids/glycerol-viscosity-segur-oberstar-1951.csv");
  ASSERT_GT(table.rows.size(), 150u);
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    const double cheng =
        GlycerolViscosityMpaS(table.Number(i, "mass_percent_glycerol") / 100,
                              table.Number(i, "temp_C"));
    // Two copies of the table differ by 1 % in thin mixtures and 4 % in thick
    // ones; Cheng himself states a few percent.
    EXPECT_NEAR(cheng / table.Number(i, "viscosity_mPas"), 1.0, 0.05) << i;
  }
  EXPECT_NEAR(GlycerolViscosityMpaS(0.9, 20.0), 223.746, 5e-4);
}

// ISO 2431: a cup maker's published ends of range. ASTM D4212 and D1200: the
// ends of viscosity printed beside the formula are rounded to one or two
// digits and not everywhere reached, so a formula must come within a quarter.
TEST(FlowCups, RangeEnds) {
  const CsvTable table = ReadCsv("liquids/flow-cups.csv");
  ASSERT_EQ(table.rows.size(), 22u);
  int checked = 0;
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    if (table.Text(i, "t_min_s").empty()) continue;
    const bool inverse = table.Text(i, "form") == "inv";
    const double a = table.Number(i, "A"), b = table.Number(i, "B");
    const auto nu = [&](double t_s) {
      return inverse ? InverseCup{a, b}.ViscosityMm2PerS(t_s)
                     : LinearCup{a, b}.ViscosityMm2PerS(t_s);
    };
    const double high = table.Number(i, "nu_max_mm2s");
    if (inverse) {
      const double low = table.Number(i, "nu_min_mm2s");
      // Two printed digits; three above 100.
      EXPECT_NEAR(nu(table.Number(i, "t_min_s")), low, 0.02 * low);
      EXPECT_NEAR(nu(table.Number(i, "t_max_s")), high, 0.02 * high);
    } else {
      EXPECT_NEAR(nu(table.Number(i, "t_max_s")), high, 0.25 * high) << i;
    }
    ++checked;
  }
  EXPECT_EQ(checked, 21);
  // Worked example: ISO 2431, 4 mm, 60 s.
  const InverseCup four_mm{1.37, 200.0};
  EXPECT_NEAR(four_mm.ViscosityMm2PerS(60.0), 78.9, 0.05);
}

TEST(FlowCups, ExponentIsTheSlope) {
  const LinearCup linear{3.5, 14.0};
  const InverseCup inverse{1.37, 200.0};
  const double step = 1e-5;  // central difference, error of its square
  for (double t_s : {25.0, 40.0, 80.0}) {
    const auto slope = [&](const auto& cup) {
      return 2.0 * step /
             std::log(cup.ViscosityMm2PerS(t_s * std::exp(step)) /
                      cup.ViscosityMm2PerS(t_s * std::exp(-step)));
    };
    EXPECT_NEAR(linear.Exponent(t_s), slope(linear), 1e-8);
    EXPECT_NEAR(inverse.Exponent(t_s), slope(inverse), 1e-8);
  }
}

}  // namespace
}  // namespace flowkin::test
