// The window and the command line say the same of one clip.

#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <nlohmann/json.hpp>

#include "tests/app/gui/window_driver.h"

namespace flowkin::testing {
namespace {

struct Sample {
  const char* clip;
  TestKind kind;
};

class SameNumbers : public ::testing::TestWithParam<Sample> {};

TEST_P(SameNumbers, AsTheCommandLine) {
  const QString clip =
      QString(FLOWKIN_SOURCE_DIR "/sample-clips/") + GetParam().clip;
  QProcess flowkin;
  flowkin.start(
      FLOWKIN_BINARY,
      {"measure", clip, "--test", TestKindName(GetParam().kind), "--json"});
  ASSERT_TRUE(flowkin.waitForFinished(120000));
  const auto said =
      nlohmann::json::parse(flowkin.readAllStandardOutput().toStdString());

  WindowDriver window;
  BenchBoard& board = *window.desk().board();
  board.setTest(static_cast<int>(GetParam().kind));
  QVariantMap form = board.form(-1);
  form["name"] = "Dune";
  ASSERT_EQ(board.keep(-1, form), QString());
  window.Click("page2");
  window.DropFile(clip);
  const auto films = [&]() -> const std::vector<BenchTest>& {
    return board.bench()->session().FindCup(*board.ChosenCup())->tests;
  };
  ASSERT_TRUE(WindowDriver::WaitFor([&] { return !films().empty(); }, 120.0));
  const FlowMeasurement& seen = films().front().film.measurement;
  ASSERT_EQ(seen.outcome, Outcome::kMeasured) << seen.reason;
  ASSERT_EQ(said.at("outcome"), "measured");
  ASSERT_EQ(said.at("proxies").size(), seen.proxies.size());
  ASSERT_FALSE(seen.proxies.empty());
  for (std::size_t i = 0; i < seen.proxies.size(); ++i) {
    const auto& proxy = said.at("proxies").at(i);
    EXPECT_EQ(proxy.at("name"), seen.proxies[i].name);
    // Six digits are printed.
    EXPECT_NEAR(proxy.at("value"),
                seen.proxies[i].value,
                5.1e-6 * seen.proxies[i].value);
  }
}

INSTANTIATE_TEST_SUITE_P(
    Samples,
    SameNumbers,
    ::testing::Values(Sample{"stream/inkberry.mp4", TestKind::kStream},
                      Sample{"level/base-a.mp4", TestKind::kLevel},
                      Sample{"puddle/base-a.mp4", TestKind::kPuddle}));

}  // namespace
}  // namespace flowkin::testing
