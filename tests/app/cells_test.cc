#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <opencv2/imgcodecs.hpp>
#include <string>
#include <vector>

#include "tests/app/run_flowkin.h"
#include "tests/support/cell_tile.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;
using testing_support::WriteCellTile;
using testing_support::WriteRunDown;

TEST(Cells, AreCountedOnAPhoto) {
  const std::string folder = ScratchFolder();
  const std::string photo = WriteCellTile(folder + "/grid.ppm", 15, 10);
  const std::string marks = folder + "/marks.png";
  const FlowkinRun run = RunFlowkin({"cells",
                                     photo,
                                     "--mm-per-px",
                                     "0.1",
                                     "--scale-rel-sd",
                                     "0",
                                     "--marks",
                                     marks,
                                     "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  const json view = json::parse(run.out);
  EXPECT_TRUE(view["at_s"].is_null()) << "no clip";
  EXPECT_EQ(view["cells"], 150);
  // 620 x 420 px of 0.1 mm; squares of 2 mm are discs of 2.257 mm.
  EXPECT_NEAR(view["area_cm2"].get<double>(), 6.2 * 4.2, 1e-4);
  constexpr double kHalfAPixel = 0.1;
  EXPECT_NEAR(
      view["median_diameter_mm"]["value"].get<double>(), 2.257, kHalfAPixel);
  EXPECT_LE(view["cells_per_cm2"]["low"], 150 / (6.2 * 4.2) * 1.1);
  EXPECT_GT(std::filesystem::file_size(marks), 1000u);
  // A part holds its share of them.
  const json part = json::parse(RunFlowkin({"cells",
                                            photo,
                                            "--mm-per-px",
                                            "0.1",
                                            "--part",
                                            "0,0,220,220",
                                            "--json"})
                                    .out);
  EXPECT_EQ(part["cells"], 25);
}

TEST(Cells, AreWrittenIntoASession) {
  const std::string folder = ScratchFolder();
  const std::string store = folder + "/book.db";
  const std::string photo = WriteCellTile(folder + "/grid.ppm", 15, 10);
  ASSERT_EQ(RunFlowkin({"bench", "new", "Harbour", "--store", store}).status,
            0);
  const FlowkinRun cup = RunFlowkin({"bench",
                                     "cup",
                                     "Pearl",
                                     "--role",
                                     "activator",
                                     "--store",
                                     store,
                                     "--json"});
  ASSERT_EQ(cup.status, 0) << cup.err;
  const std::string session = json::parse(cup.out)["session"]["id"].dump();
  const std::vector<std::string> cells = {"cells",
                                          photo,
                                          "--mm-per-px",
                                          "0.1",
                                          "--session",
                                          session,
                                          "--after-s",
                                          "30",
                                          "--store",
                                          store,
                                          "--json",
                                          "--cup"};
  auto with = [&](const std::string& name) {
    std::vector<std::string> all = cells;
    all.push_back(name);
    return RunFlowkin(all);
  };
  const FlowkinRun run = with("Pearl");
  ASSERT_EQ(run.status, 0) << run.err;
  const json counted = json::parse(run.out);
  const json kept = json::parse(
      RunFlowkin({"journal", "show", session, "--store", store, "--json"})
          .out)["cell_tests"];
  ASSERT_EQ(kept.size(), 1u);
  EXPECT_EQ(kept[0]["seen"], "lacing");
  EXPECT_EQ(kept[0]["cells"], 150);
  EXPECT_EQ(kept[0]["cells_per_cm2"], counted["cells_per_cm2"]);
  EXPECT_EQ(kept[0]["median_diameter_mm"], counted["median_diameter_mm"]);
  EXPECT_EQ(kept[0]["photo"], photo);
  EXPECT_EQ(with("Nobody").status, 2);
}

// Two seconds on the cells, then the lens is covered.
TEST(Cells, AreCountedOnTheLastPictureAtRest) {
  const std::string folder = ScratchFolder();
  const std::string photo = WriteCellTile(folder + "/grid.ppm", 15, 10);
  const std::string clip = folder + "/run-down.mp4";
  WriteRunDown(photo, clip);
  const std::string picture = folder + "/seen.png";
  const FlowkinRun run = RunFlowkin(
      {"cells", clip, "--mm-per-px", "0.1", "--picture", picture, "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  const json view = json::parse(run.out);
  EXPECT_EQ(view["cells"], 150);
  EXPECT_GE(view["at_s"].get<double>(), 1.4);
  EXPECT_LE(view["at_s"].get<double>(), 1.95);
  EXPECT_EQ(cv::imread(picture).size(), cv::imread(photo).size());
  EXPECT_THAT(RunFlowkin({"cells", clip, "--mm-per-px", "0.1"}).out,
              HasSubstr("s of the clip was read."));
}

TEST(Cells, TwoPhotosAreCompared) {
  const std::string folder = ScratchFolder();
  const std::string photo = WriteCellTile(folder + "/a.ppm", 15, 10);
  const FlowkinRun run = RunFlowkin({"cells",
                                     photo,
                                     "--mm-per-px",
                                     "0.2",
                                     "--against",
                                     photo,
                                     "--against-mm-per-px",
                                     "0.1",
                                     "--scale-rel-sd",
                                     "0.01",
                                     "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  const json view = json::parse(run.out);
  // Half the scale: four times as many, half as large.
  EXPECT_NEAR(
      view["comparison"]["density_ratio"]["value"].get<double>(), 4.0, 1e-3);
  EXPECT_NEAR(
      view["comparison"]["size_ratio"]["value"].get<double>(), 0.5, 1e-3);
  EXPECT_EQ(view["comparison"]["verdict"], "more");
}

TEST(Cells, RefusalsAndBadCalls) {
  const std::string folder = ScratchFolder();
  const std::string photo = WriteCellTile(folder + "/few.ppm", 2, 2);
  const FlowkinRun refused =
      RunFlowkin({"cells", photo, "--mm-per-px", "0.1", "--json"});
  EXPECT_EQ(refused.status, 3);
  EXPECT_TRUE(IsOneSentence(refused.err)) << refused.err;
  EXPECT_EQ(json::parse(refused.out)["outcome"], "refused");
  WriteFile(folder + "/text.png", "no picture");
  struct BadCall {
    std::vector<std::string> arguments;
    int status;
  };
  for (const BadCall& call :
       {BadCall{{"cells"}, 2},
        BadCall{{"cells", photo}, 2},
        BadCall{{"cells", photo, "--mm-per-px", "0"}, 2},
        BadCall{{"cells", photo, "--mm-per-px", "nan"}, 2},
        BadCall{{"cells", photo, "--mm-per-px", "1", "--part", "all"}, 2},
        BadCall{{"cells", photo, "--mm-per-px", "1", "--part", "0,0,9,9"}, 2},
        BadCall{{"cells", folder + "/none.png", "--mm-per-px", "1"}, 4},
        BadCall{{"cells", folder + "/text.png", "--mm-per-px", "1"}, 4}}) {
    const FlowkinRun run = RunFlowkin(call.arguments);
    EXPECT_EQ(run.status, call.status) << run.err;
    EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
    EXPECT_EQ(run.out, "");
  }
}

}  // namespace
}  // namespace flowkin::testing
