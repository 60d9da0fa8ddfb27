// Plan, medium and first mix on the command line. Every number is worked out
// again here from the request alone.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <numbers>

#include "tests/app/run_flowkin.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;
using ::testing::Not;

// Documents hold six significant digits: half a step of 1.00000.
constexpr double kSixDigits = 5.1e-6;

void ExpectClose(const json& number, double expected) {
  ASSERT_TRUE(number.is_number()) << number;
  EXPECT_NEAR(
      number.get<double>(), expected, kSixDigits * std::fabs(expected) + 1e-9);
}

json Document(const std::vector<std::string>& arguments,
              const std::string& input = "") {
  const FlowkinRun run = RunFlowkin(arguments, input);
  EXPECT_EQ(run.status, 0) << run.err;
  EXPECT_EQ(run.err, "");
  return json::parse(run.out, nullptr, false);
}

const char kPlan[] = R"({
  "format": "flowkin-plan", "version": 1,
  "supports": [ { "length_mm": 500, "width_mm": 400, "depth_mm": 18, "count": 2 },
                { "shape": "round", "diameter_mm": 300, "depth_mm": 20 } ],
  "technique": "swipe",
  "base_coat": { "name": "Dune", "density_g_per_ml": 1.32, "volume_solids": 0.39,
                 "price": { "container_ml": 2500, "price": 40 } },
  "colours": [
    { "name": "Chalk", "brand": "Quillmere", "body": "heavy", "share": 2,
      "price": { "container_ml": 200, "price": 14 }, "at_hand_ml": 50 },
    { "name": "Lagoon", "brand": "Quillmere", "medium_parts": 1.5,
      "price": { "container_ml": 59, "price": 5 } } ],
  "activator": { "name": "Pearl", "additive_parts": 2,
                 "price": { "container_ml": 59, "price": 6 },
                 "additive_price": { "container_ml": 1000, "price": 18 } },
  "medium": { "base_parts": 3, "varnish_parts": 1, "by": "weight",
              "base_price": { "container_ml": 2500, "price": 40 },
              "varnish_price": { "container_ml": 750, "price": 15 } },
  "left_overs": [ { "name": "Lagoon", "volume_ml": 25, "age_days": 12 } ],
  "waste_share": 0.15, "reserve_share": 0.25, "tests_per_cup": 3,
  "test_loss_ml": 2.5, "water_share": 0.08,
  "tilt_deg": 20, "tilting_s": 45, "kinematic_viscosity_mm2_s": 1500 })";

TEST(Plan, EveryNumberFollowsFromTheRequest) {
  const json plan = Document({"plan", "--file", "-", "--json"}, kPlan);
  ASSERT_TRUE(plan.is_object());
  const double pi = std::numbers::pi;
  const double face_m2 = 2 * 0.5 * 0.4 + pi * 0.15 * 0.15;
  const double edge_m2 = 2 * 2 * (0.5 + 0.4) * 0.018 + pi * 0.3 * 0.02;
  const double area_m2 = face_m2 + edge_m2;
  EXPECT_EQ(plan["pictures"], 3);
  ExpectClose(plan["face_m2"], face_m2);
  ExpectClose(plan["edge_m2"], edge_m2);
  // The table's middle amounts for a swipe: 1050 + 450 + 150.
  ExpectClose(plan["on_support_ml"], area_m2 * 1650);
  struct Cup {
    double layer_ml, reserve_share, left_over_ml, medium_parts, additive_parts,
        density;
  };
  const double medium_ml_per_g_base = 1 / 1.30;
  const double medium_base = 3 * medium_ml_per_g_base;
  const double medium_varnish = 1 / 1.02;
  const double medium_density = 4 / (medium_base + medium_varnish);
  const double medium_solids = (0.38 * medium_base + 0.25 * medium_varnish) /
                               (medium_base + medium_varnish);
  const Cup cups[] = {{area_m2 * 1050, 0.0, 0, 0, 0, 1.32},
                      {area_m2 * 300, 0.25, 0, 2, 0, 1.25},
                      {area_m2 * 150, 0.25, 25, 1.5, 0, 1.25},
                      {area_m2 * 150, 0.25, 0, 0, 2, 1.25}};
  const double solids[] = {0.39, 0.38, 0.38, 0.38};
  double medium_ml = 0, additive_ml = 0, cost = 0, solids_ml = 0, mass_g = 0;
  double paint_ml[4];
  ASSERT_EQ(plan["cups"].size(), 4u);
  for (int i = 0; i < 4; ++i) {
    const Cup& cup = cups[i];
    const json& found = plan["cups"][static_cast<std::size_t>(i)];
    const double on_support = cup.layer_ml * 0.92;
    const double poured = on_support * 1.15 + 3 * 2.5;
    const double needed = poured * (1 + cup.reserve_share);
    const double mix = needed - cup.left_over_ml;
    const double parts = 1 + cup.medium_parts + cup.additive_parts;
    ExpectClose(found["on_support_ml"], on_support);
    ExpectClose(found["waste_ml"], on_support * 0.15);
    ExpectClose(found["tests_ml"], 7.5);
    ExpectClose(found["reserve_ml"], poured * cup.reserve_share);
    ExpectClose(found["needed_ml"], needed);
    ExpectClose(found["left_over_ml"], cup.left_over_ml);
    ExpectClose(found["mix_ml"], mix);
    paint_ml[i] = mix / parts;
    ExpectClose(found["paint"]["volume_ml"], paint_ml[i]);
    ExpectClose(found["paint"]["mass_g"], paint_ml[i] * cup.density);
    ExpectClose(found["medium"]["volume_ml"], mix * cup.medium_parts / parts);
    ExpectClose(found["additive"]["volume_ml"],
                mix * cup.additive_parts / parts);
    medium_ml += mix * cup.medium_parts / parts;
    additive_ml += mix * cup.additive_parts / parts;
    const double blend_density =
        (cup.density + cup.medium_parts * medium_density +
         cup.additive_parts * 1.05) /
        parts;
    const double blend_solids = (solids[i] + cup.medium_parts * medium_solids +
                                 cup.additive_parts * 0.25) /
                                parts;
    ExpectClose(found["density_g_per_ml"], blend_density);
    ExpectClose(found["volume_solids"], blend_solids);
    solids_ml += on_support * blend_solids;
    mass_g += on_support * blend_density;
  }
  medium_ml *= 1.05;
  ExpectClose(plan["medium"]["make_ml"], medium_ml);
  ExpectClose(plan["medium"]["base"]["volume_ml"],
              medium_ml * medium_base / (medium_base + medium_varnish));
  ExpectClose(
      plan["medium"]["varnish"]["mass_g"],
      medium_ml * medium_varnish / (medium_base + medium_varnish) * 1.02);
  ExpectClose(plan["medium"]["parts_by_weight"], 3);
  ExpectClose(plan["medium"]["parts_by_volume"], 3 * 1.02 / 1.30);

  const double wet_mm = 1.65;
  const double total_ml = area_m2 * 1650;
  mass_g += 0.08 * total_ml * 0.9982;
  ExpectClose(plan["film"]["wet_mm"]["value"], wet_mm);
  ExpectClose(plan["film"]["volume_solids"], solids_ml / total_ml);
  ExpectClose(plan["film"]["dry_mm"]["value"], wet_mm * solids_ml / total_ml);
  ExpectClose(plan["film"]["wet_kg_per_m2"], mass_g / total_ml * 1.65);
  // Jeffreys 1930 on the slope, over the side of a square as large as the
  // largest face, two thirds of the thickness at its end.
  const double run_m = std::sqrt(0.5 * 0.4);
  const double stays_mm =
      2.0 / 3.0 * 1e3 *
      std::sqrt(1500e-6 * run_m / (9.81 * std::sin(20 * pi / 180) * 45));
  ExpectClose(plan["film"]["stays_mm"]["value"], std::min(wet_mm, stays_mm));
  ExpectClose(plan["film"]["runs_off_share"]["value"],
              1 - std::min(wet_mm, stays_mm) / wet_mm);

  cost = paint_ml[0] / 2500 * 40 + paint_ml[1] / 200 * 14 +
         paint_ml[2] / 59 * 5 + paint_ml[3] / 59 * 6 + additive_ml / 1000 * 18 +
         medium_ml * medium_base / (medium_base + medium_varnish) / 2500 * 40 +
         medium_ml * medium_varnish / (medium_base + medium_varnish) / 750 * 15;
  ExpectClose(plan["cost_per_picture"], cost / 3);
  const json& chalk = plan["supplies"][1];
  EXPECT_EQ(chalk["name"], "Quillmere Chalk");
  ExpectClose(chalk["buy_ml"], std::max(0.0, paint_ml[1] - 50));
  EXPECT_EQ(chalk["containers"],
            static_cast<int>(std::ceil((paint_ml[1] - 50) / 200)));
  EXPECT_FALSE(plan["cautions"].empty());
}

TEST(Plan, OptionsDoWithoutAFile) {
  const json plan = Document({"plan",
                              "--canvas",
                              "40x50x1.8cm",
                              "--technique",
                              "ring",
                              "--colours",
                              "Chalk:2:heavy",
                              "Lagoon",
                              "--json"});
  ExpectClose(plan["face_m2"], 0.2);
  ExpectClose(plan["edge_m2"], 2 * 0.9 * 0.018);
  ASSERT_EQ(plan["cups"].size(), 3u);
  EXPECT_EQ(plan["cups"][1]["body"], "heavy");
  EXPECT_EQ(plan["cost_per_picture"], nullptr);
  EXPECT_FALSE(plan["unpriced"].empty());
}

TEST(Plan, InchesAreInches) {
  const json inches = Document({"plan",
                                "--canvas",
                                "16x20in",
                                "--technique",
                                "open",
                                "--colours",
                                "a",
                                "--json"});
  ExpectClose(inches["face_m2"], 16 * 20 * 0.0254 * 0.0254);
  const FlowkinRun us = RunFlowkin({"plan",
                                    "--canvas",
                                    "16x20in",
                                    "--technique",
                                    "open",
                                    "--colours",
                                    "a",
                                    "--us"});
  EXPECT_EQ(us.status, 0);
  EXPECT_THAT(us.out, HasSubstr("fl oz"));
  EXPECT_THAT(us.out, Not(HasSubstr(" mL\n")));
}

TEST(Plan, HerOwnTableReplacesTheStart) {
  const std::string folder = ScratchFolder();
  const json table = Document({"plan", "--list-techniques", "--json"});
  json own = table;
  for (json& technique : own["techniques"]) {
    EXPECT_EQ(technique["source"], "own guess");
    if (technique["name"] == "open") {
      technique["colours_ml_per_m2"] = 2000;
      technique["base_ml_per_m2"] = 0;
    }
  }
  own["techniques"].push_back(
      {{"name", "drizzle"}, {"colours_ml_per_m2", 300}});
  WriteFile(folder + "/own.json", own.dump());
  const json plan = Document({"plan",
                              "--techniques",
                              folder + "/own.json",
                              "--canvas",
                              "100x100cm",
                              "--technique",
                              "open",
                              "--colours",
                              "a",
                              "--json"});
  ExpectClose(plan["amount_ml_per_m2"]["value"], 2000);
  EXPECT_EQ(plan["technique"]["source"], "given");
  const json drizzle = Document({"plan",
                                 "--techniques",
                                 folder + "/own.json",
                                 "--canvas",
                                 "100x100cm",
                                 "--technique",
                                 "drizzle",
                                 "--colours",
                                 "a",
                                 "--json"});
  ExpectClose(drizzle["on_support_ml"], 300);
}

TEST(Plan, PastPoursCorrectIt) {
  json request = json::parse(kPlan);
  request["past_pours"] = {{{"planned_ml", 1000}, {"used_ml", 1300}},
                           {{"planned_ml", 800}, {"used_ml", 1040}}};
  const json two = Document({"plan", "--file", "-", "--json"}, request.dump());
  EXPECT_EQ(two["planned_against_used"]["told"], false);
  ExpectClose(two["planned_against_used"]["factor"], 1.0);
  request["past_pours"].push_back({{"planned_ml", 500}, {"used_ml", 650}});
  const json three =
      Document({"plan", "--file", "-", "--json"}, request.dump());
  EXPECT_EQ(three["planned_against_used"]["told"], true);
  // ln 1.3 from three pours, one pour's worth of "as planned": 3/4 of it.
  ExpectClose(three["planned_against_used"]["factor"], std::pow(1.3, 0.75));
}

TEST(Shelf, UsesFirstWhatIsGoneFirst) {
  const std::string folder = ScratchFolder();
  const std::string shelf = folder + "/shelf.json";
  WriteFile(shelf, R"({"format":"flowkin-shelf","version":1,"jars":[
    {"name":"medium","role":"medium","volume_ml":50,"mixed_on":"2026-02-01"},
    {"name":"Lagoon","volume_ml":20,"mixed_on":"2026-03-01","watered":true},
    {"name":"Lagoon","volume_ml":90,"mixed_on":"2025-01-01","watered":true}]})");
  const json list =
      Document({"shelf", "--file", shelf, "--today", "2026-03-11", "--json"});
  ASSERT_EQ(list["jars"].size(), 3u);
  EXPECT_EQ(list["jars"][0]["state"], "overdue");
  EXPECT_EQ(list["jars"][1]["name"], "Lagoon");
  EXPECT_EQ(list["jars"][1]["state"], "use first");
  EXPECT_EQ(list["jars"][1]["keeps_until"], "2026-03-29");
  EXPECT_EQ(list["jars"][2]["state"], "good");
  // The plan takes what may still be used.
  const json plan = Document({"plan",
                              "--canvas",
                              "40x50",
                              "--technique",
                              "ring",
                              "--colours",
                              "Lagoon",
                              "--shelf",
                              shelf,
                              "--today",
                              "2026-03-11",
                              "--json"});
  ExpectClose(plan["cups"][1]["left_over_ml"], 20);
  ExpectClose(plan["medium"]["left_over_ml"], 50);
  EXPECT_EQ(plan["left_overs_used"][0]["age_days"], 10);
}

TEST(Shelf, InTheBookIsTakenByThePlan) {
  const std::string store = ScratchFolder() + "/book.db";
  const auto shelf = [&](std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "shelf");
    arguments.insert(arguments.end(),
                     {"--store", store, "--today", "2026-03-11", "--json"});
    return Document(arguments);
  };
  shelf({"add",
         "Lagoon",
         "--volume-ml",
         "90",
         "--mixed-on",
         "2025-01-01",
         "--watered"});
  shelf({"add", "Lagoon", "--volume-ml", "20", "--mixed-on", "2026-03-01"});
  json list = shelf({"add",
                     "house medium",
                     "--role",
                     "medium",
                     "--volume-ml",
                     "50",
                     "--mixed-on",
                     "2026-02-01"});
  ASSERT_EQ(list["jars"].size(), 3u);
  EXPECT_EQ(list["jars"][0]["state"], "overdue");
  const std::vector<std::string> call = {"plan",
                                         "--canvas",
                                         "40x50",
                                         "--technique",
                                         "ring",
                                         "--colours",
                                         "Lagoon",
                                         "--store",
                                         store,
                                         "--today",
                                         "2026-03-11",
                                         "--json"};
  const json plan = Document(call);
  ExpectClose(plan["cups"][1]["left_over_ml"], 20);
  ExpectClose(plan["medium"]["left_over_ml"], 50);
  std::vector<std::string> without = call;
  without.push_back("--no-book");
  ExpectClose(Document(without)["cups"][1]["left_over_ml"], 0);
  // Some is taken, too much is not, and what is gone is gone.
  list = shelf({"take", "2", "--ml", "5"});
  ExpectClose(Document(call)["cups"][1]["left_over_ml"], 15);
  ExpectFails({"too much",
               {"shelf", "take", "2", "--ml", "16", "--store", store},
               "",
               2});
  ExpectFails({"no jar", {"shelf", "take", "9", "--store", store}, "", 2});
  list = shelf({"take", "2"});
  ASSERT_EQ(list["jars"].size(), 2u);
  EXPECT_EQ(list["jars"][0]["jar"], 1);
  list = shelf({"take", "2", "--ml=-20"});  // put back
  ASSERT_EQ(list["jars"].size(), 3u);
  ExpectFails(
      {"full", {"shelf", "take", "2", "--ml=-1", "--store", store}, "", 2});
}

TEST(Techniques, OfHerOwnAreKeptInTheBook) {
  const std::string store = ScratchFolder() + "/book.db";
  const auto of = [&](const json& table, const std::string& name) {
    for (const json& technique : table["techniques"]) {
      if (technique["name"] == name) return technique;
    }
    return json();
  };
  const json start = Document({"techniques", "--store", store, "--json"});
  EXPECT_EQ(of(start, "open")["source"], "own guess");
  Document({"techniques",
            "keep",
            "open",
            "--colours",
            "1800",
            "2000",
            "2200",
            "--store",
            store,
            "--json"});
  const json table = Document({"techniques",
                               "keep",
                               "drizzle",
                               "--what",
                               "thin lines",
                               "--colours",
                               "300",
                               "--store",
                               store,
                               "--json"});
  ExpectClose(of(table, "open")["colours_ml_per_m2"]["high"], 2200);
  EXPECT_EQ(of(table, "open")["base_ml_per_m2"],
            of(start, "open")["base_ml_per_m2"])
      << "what was not said stays";
  EXPECT_EQ(of(table, "drizzle")["what"], "thin lines");
  const json plan = Document({"plan",
                              "--canvas",
                              "100x100cm",
                              "--technique",
                              "drizzle",
                              "--colours",
                              "a",
                              "--store",
                              store,
                              "--json"});
  ExpectClose(plan["on_support_ml"], 300);
  EXPECT_EQ(plan["technique"]["source"], "given");
  const json dropped =
      Document({"techniques", "drop", "open", "--store", store, "--json"});
  EXPECT_EQ(of(dropped, "open"), of(start, "open"));
  ExpectFails(
      {"not hers", {"techniques", "drop", "open", "--store", store}, "", 2});
  ExpectFails(
      {"disorder",
       {"techniques", "keep", "odd", "--base", "9", "1", "5", "--store", store},
       "",
       2});
}

TEST(Medium, BatchFollowsFromPartsAndDensities) {
  const json medium =
      Document({"medium", "--parts", "4:1", "--make-ml", "1000", "--json"});
  ExpectClose(medium["base"]["volume_ml"], 800);
  ExpectClose(medium["base"]["mass_g"], 1040);
  ExpectClose(medium["varnish"]["mass_g"], 204);
  ExpectClose(medium["parts_by_weight"], 1040.0 / 204.0);
}

TEST(Medium, ContainerIsFilledToTheMarks) {
  const json medium = Document({"medium",
                                "--parts",
                                "3:1",
                                "--cup-bottom-mm",
                                "60",
                                "--cup-top-mm",
                                "90",
                                "--cup-height-mm",
                                "120",
                                "--fill-mm",
                                "100",
                                "--json"});
  const auto volume_ml = [](double height) {
    const double radius = 30 + 15 * height / 120;
    return std::numbers::pi / 3 * height *
           (30 * 30 + 30 * radius + radius * radius) / 1e3;
  };
  ExpectClose(medium["volume_ml"], volume_ml(100));
  const double mark_mm = medium["base_mark_mm"];
  EXPECT_NEAR(volume_ml(mark_mm), 0.75 * volume_ml(100), 0.01);
  // Stokes 1851, 0.5 mm, thinnest and thickest of the span, by viscosity alone:
  // t = 18 nu depth / (g d^2).
  ExpectClose(medium["rest"][0]["min"]["low"],
              18 * 420e-6 * 0.1 / (9.81 * 0.25e-6) / 60);
  ExpectClose(medium["rest"][0]["min"]["high"],
              18 * 4200e-6 * 0.1 / (9.81 * 0.25e-6) / 60);
}

TEST(Medium, OwnFlowAndAgeAreTold) {
  const json medium = Document({"medium",
                                "--make-ml",
                                "500",
                                "--ratio",
                                "0.65",
                                "--last-ratio",
                                "0.5",
                                "--medium-share",
                                "0.5",
                                "--mixed",
                                "2026-03-01",
                                "--json"});
  EXPECT_NEAR(medium["cup_factor"]["value"].get<double>(),
              std::sqrt(1.3),
              1e-3);  // four digits
  EXPECT_EQ(medium["use_first_from"], "2026-09-01");
  EXPECT_EQ(medium["keeps_until"], "2027-03-01");
  EXPECT_THAT(medium["notes"].dump(), HasSubstr("add body, not water"));
}

TEST(Mix, FirstMixKeepsItsReserve) {
  const json mix =
      Document({"mix", "--volume-ml", "120", "--body", "heavy", "--json"});
  ExpectClose(mix["paint"]["volume_ml"], 40);
  ExpectClose(mix["medium"]["volume_ml"], 80);
  ExpectClose(mix["reserve_ml"], 20);
  EXPECT_EQ(mix["source"], "common practice");
  // 10 % water, reserve a fifth: q = 1/9 x 1.2 = 2/15, w = 2/17.
  EXPECT_NEAR(mix["rescues"][1]["rescuable_up_to"].get<double>(),
              2.0 / 17.0,
              1e-4);  // four digits
  const json powder =
      Document({"mix", "--volume-ml", "100", "--body", "powder", "--json"});
  EXPECT_NEAR(powder["paint"]["mass_g"].get<double>() /
                  powder["medium"]["mass_g"].get<double>(),
              0.03,
              1e-6);  // six digits of two numbers
  EXPECT_THAT(powder["cautions"].dump(), HasSubstr("respirator"));
}

class PlanBadCalls : public ::testing::TestWithParam<BadCall> {};

TEST_P(PlanBadCalls, EndWithTheirStatusAndOneSentence) {
  ExpectFails(GetParam());
}

INSTANTIATE_TEST_SUITE_P(
    Calls,
    PlanBadCalls,
    ::testing::Values(
        BadCall{"NoTechnique", {"plan", "--canvas", "40x50"}, "", 2},
        BadCall{"NoCanvas",
                {"plan", "--technique", "open", "--colours", "a"},
                "",
                2},
        BadCall{"NoSize",
                {"plan",
                 "--canvas",
                 "wide",
                 "--technique",
                 "open",
                 "--colours",
                 "a"},
                "",
                2},
        BadCall{
            "OneSideOnly",
            {"plan", "--canvas", "40", "--technique", "open", "--colours", "a"},
            "",
            2},
        BadCall{"UnknownUnit",
                {"plan",
                 "--canvas",
                 "40x50furlong",
                 "--technique",
                 "open",
                 "--colours",
                 "a"},
                "",
                2},
        BadCall{"UnknownTechnique",
                {"plan",
                 "--canvas",
                 "40x50",
                 "--technique",
                 "fling",
                 "--colours",
                 "a"},
                "",
                2},
        BadCall{"NoColours",
                {"plan", "--canvas", "40x50", "--technique", "open"},
                "",
                2},
        BadCall{"MissingFile", {"plan", "--file", "no-such.json"}, "", 4},
        BadCall{"NoJson", {"plan", "--file", "-"}, "not json", 4},
        BadCall{"AList", {"plan", "--file", "-"}, "[]", 4},
        BadCall{"ForeignFormat",
                {"plan", "--file", "-"},
                R"({"format": "flowkin-palette"})",
                4},
        BadCall{"NewerVersion",
                {"plan", "--file", "-"},
                R"({"format": "flowkin-plan", "version": 2})",
                4},
        BadCall{"WordForANumber",
                {"plan", "--file", "-"},
                R"({"supports": [{"length_mm": "wide"}]})",
                4},
        BadCall{"UnknownBody",
                {"plan", "--file", "-"},
                R"({"technique": "open", "colours": [{"body": "stiff"}]})",
                2},
        BadCall{"HalfACanvas",
                {"plan",
                 "--canvas",
                 "40x50",
                 "--count",
                 "0",
                 "--technique",
                 "open",
                 "--colours",
                 "a"},
                "",
                2},
        BadCall{"NoVolume", {"medium"}, "", 2},
        BadCall{
            "BadParts", {"medium", "--make-ml", "10", "--parts", "4-1"}, "", 2},
        BadCall{"CupTooFull",
                {"medium",
                 "--cup-bottom-mm",
                 "60",
                 "--cup-height-mm",
                 "100",
                 "--fill-mm",
                 "101"},
                "",
                2},
        BadCall{"NoDay",
                {"medium", "--make-ml", "10", "--mixed", "2026-02-30"},
                "",
                2},
        BadCall{"UnknownBodyOfMix",
                {"mix", "--volume-ml", "10", "--body", "stiff"},
                "",
                2},
        BadCall{"NothingToMix", {"mix", "--volume-ml", "0"}, "", 2}),
    [](const auto& call) { return call.param.name; });

}  // namespace
}  // namespace flowkin::testing
