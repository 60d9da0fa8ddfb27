#include "core/flow/fitted_curve.h"

#include <gtest/gtest.h>

#include <cmath>

namespace flowkin {
namespace {

FlowMeasurement Measured(TestKind kind, const char* proxy, double value) {
  FlowMeasurement m;
  m.kind = kind;
  m.outcome = Outcome::kMeasured;
  m.proxies = {{proxy, value, "", {}, {}}};
  m.curves.resize(1);
  return m;
}

template <typename Law>
void ExpectFollows(const FlowCurve& fit, const Law& law) {
  ASSERT_GT(fit.t_s.size(), 10u);
  for (std::size_t i = 0; i < fit.t_s.size(); ++i) {
    EXPECT_NEAR(fit.value[i], law(fit.t_s[i]), 1e-9);
  }
}

TEST(FittedCurve, GoesThroughAnExponentialDecay) {
  // The flat picture was taken before all was gone.
  const auto law = [](double t_s) { return 8.0 * std::exp(-t_s / 1.7) - 0.3; };
  FlowMeasurement m = Measured(TestKind::kLevel, "decay_time", 1.7);
  for (double t_s = 0.05; t_s < 6.0; t_s += 0.05) {
    m.curves[0].t_s.push_back(t_s);
    m.curves[0].value.push_back(law(t_s));
  }
  ExpectFollows(FittedCurve(m), law);
}

// Late spreading of a fixed volume, r^8 ~ t: H. E. Huppert 1982, J. Fluid
// Mech. 121, 43-58.
TEST(FittedCurve, GoesThroughAPuddleThatSpreads) {
  const auto law = [](double t_s) { return std::pow(5e8 + 3e9 * t_s, 0.125); };
  FlowMeasurement m = Measured(TestKind::kPuddle, "spreading_rate", 3e9);
  for (double t_s = 0.1; t_s < 10.0; t_s += 0.1) {
    m.curves[0].t_s.push_back(t_s);
    m.curves[0].value.push_back(law(t_s));
  }
  ExpectFollows(FittedCurve(m), law);
}

TEST(FittedCurve, StandsWhereTheStreamBroke) {
  FlowMeasurement m = Measured(TestKind::kStream, "break_time", 4.8);
  EXPECT_TRUE(FittedCurve(m).t_s.empty()) << "no curve, no law";
  m.curves[0].t_s = {0.0, 2.0, 4.0, 6.0};
  m.curves[0].value = {1.0, 1.0, 1.0, 0.0};
  const FlowCurve fit = FittedCurve(m);
  ASSERT_EQ(fit.t_s.size(), 2u);
  EXPECT_EQ(fit.t_s[0], 4.8);
  EXPECT_EQ(fit.t_s[1], 4.8);
}

}  // namespace
}  // namespace flowkin
