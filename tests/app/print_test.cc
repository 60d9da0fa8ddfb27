// Printed pages, opened by programs that are not ours: poppler reads the text
// and draws the page, zbar reads the code.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <iomanip>
#include <map>
#include <nlohmann/json.hpp>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "app/usecases/bench.h"
#include "tests/app/run_flowkin.h"

namespace flowkin::testing {
namespace {

using nlohmann::json;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;

/// Standard output of a shell command, which must succeed.
std::string Shell(const std::string& command) {
  std::string out;
  FILE* pipe = ::popen(command.c_str(), "r");
  if (pipe == nullptr) return out;
  std::array<char, 4096> part{};
  for (std::size_t n;
       (n = std::fread(part.data(), 1, part.size(), pipe)) > 0;) {
    out.append(part.data(), n);
  }
  EXPECT_EQ(::pclose(pipe), 0) << command;
  return out;
}

std::string TextOf(const std::string& pdf) {
  return Shell("pdftotext -layout '" + pdf + "' -");
}

std::string CodesOf(const std::string& pdf) {
  const std::string stem = pdf + "-page";
  Shell("pdftoppm -r 200 -gray -png '" + pdf + "' '" + stem + "'");
  return Shell("zbarimg --quiet --raw --oneshot '" + stem +
               "-1.png' 2>/dev/null");
}

int PagesOf(const std::string& pdf) {
  const std::string info = Shell("pdfinfo '" + pdf + "'");
  std::smatch found;
  EXPECT_TRUE(std::regex_search(info, found, std::regex("Pages: *([0-9]+)")));
  EXPECT_THAT(info, HasSubstr("(A4)"));
  return found.empty() ? 0 : std::stoi(found[1]);
}

const char kLabel[] = R"({"format":"flowkin-label","version":1,
  "name":"Lagoon für Straße", "role":"colour", "brand":"Grüne Werft",
  "colour":"Zinnober", "mix":"paint 1 : medium 1.5", "volume_ml":138.4,
  "water_ml":8.5, "water_share":0.0614, "mixed_on":"2026-03-01",
  "ratio":{"value":1.05,"low":0.97,"high":1.14}, "base_on":"2026-02-27",
  "temperature_c":21.5, "hazard":"Follow the paint's label. No food container."})";

TEST(Print, LabelsCarryTheirRecipeInTheCode) {
  const std::string folder = ScratchFolder();
  const std::string pdf = folder + "/label.pdf";
  const FlowkinRun run =
      RunFlowkin({"print", "labels", "--out", pdf, "--json"}, kLabel);
  ASSERT_EQ(run.status, 0) << run.err;
  EXPECT_EQ(PagesOf(pdf), 1);
  const std::string text = TextOf(pdf);
  for (const char* words : {"Lagoon für",
                            "Straße",
                            "Grüne Werft, Zinnober",
                            "paint 1 : medium 1.5",
                            "138 mL",
                            "water 8.5 mL, 6.14 %",
                            "1.05 (0.97 to 1.14)",
                            "2026-02-27",
                            "21.5",
                            "mixed 2026-03-01",
                            "No food container"}) {
    EXPECT_THAT(text, HasSubstr(words));
  }
  const json scanned = json::parse(CodesOf(pdf), nullptr, false);
  ASSERT_TRUE(scanned.is_object());
  const json given = json::parse(kLabel);
  for (const auto& [name, value] : given.items()) {
    EXPECT_EQ(scanned[name], value) << name;
  }
  // What was scanned prints the same label again.
  const std::string again = folder + "/again.pdf";
  ASSERT_EQ(
      RunFlowkin({"print", "labels", "--out", again}, scanned.dump()).status,
      0);
  EXPECT_EQ(TextOf(again), text);
}

// The jar of a day, read by zbar, is a cup of another day on another machine.
TEST(Print, AScannedLabelSetsItsCupUpAgain) {
  const std::string folder = ScratchFolder();
  const auto bench = [&](std::vector<std::string> arguments,
                         const std::string& store,
                         const std::string& in = "") {
    arguments.insert(arguments.begin(), "bench");
    arguments.insert(arguments.end(), {"--store", folder + store, "--json"});
    const FlowkinRun run = RunFlowkin(arguments, in);
    EXPECT_EQ(run.status, 0) << arguments[1] << ": " << run.err;
    return json::parse(run.out, nullptr, false);
  };
  bench({"new", "Tuesday"}, "/here.db");
  bench({"cup",
         "Grüne Lagune",
         "--brand",
         "Quillmere",
         "--colour",
         "teal",
         "--role",
         "activator",
         "--volume-ml",
         "120",
         "--target",
         "1.2",
         "--thinner",
         "additive"},
        "/here.db");
  bench({"added", "Grüne Lagune", "6", "--thinner", "water"}, "/here.db");
  const std::string pdf = folder + "/label.pdf";
  ASSERT_EQ(RunFlowkin({"print",
                        "labels",
                        "--session",
                        "1",
                        "--store",
                        folder + "/here.db",
                        "--out",
                        pdf})
                .status,
            0);
  bench({"new", "Friday"}, "/there.db");
  const json board = bench({"label"}, "/there.db", CodesOf(pdf));
  ASSERT_EQ(board["cups"].size(), 1u);
  const json& cup = board["cups"][0];
  EXPECT_EQ(cup["label"], "Grüne Lagune");
  EXPECT_EQ(cup["brand"], "Quillmere");
  EXPECT_EQ(cup["colour"], "teal");
  EXPECT_EQ(cup["role"], "activator");
  EXPECT_EQ(cup["target"], 1.2);
  EXPECT_NEAR(cup["volume_ml"].get<double>(), 120.0, 0.06) << "4 digits";
  EXPECT_NEAR(cup["volume_now_ml"].get<double>(), 126.0, 0.06);
  EXPECT_NEAR(cup["water_share"].get<double>(), 6.0 / 126.0, 1e-4);
  // The same label as a file, twice: what comes after the base coat's.
  WriteFile(folder + "/two.json",
            R"({"labels": [{"name": "Dune", "role": "base coat"},
                {"name": "Ash", "volume_ml": 90, "water_share": 0.1}]})");
  const json two =
      bench({"label", "--file", folder + "/two.json"}, "/there.db");
  ASSERT_EQ(two["cups"].size(), 3u);
  for (const json& each : two["cups"]) {
    if (each["label"] != "Ash") continue;
    EXPECT_NEAR(each["volume_ml"].get<double>(), 81.0, 1e-9);
    EXPECT_NEAR(each["added_ml"].get<double>(), 9.0, 1e-9);
  }
}

/// A page as a phone sees it: from the side, in uneven light, not quite sharp.
std::string PhotoOf(const std::string& page, const std::string& photo) {
  cv::Mat sheet = cv::imread(page, cv::IMREAD_GRAYSCALE);
  sheet = sheet.rowRange(0, sheet.rows / 3).clone();
  const auto w = static_cast<float>(sheet.cols);
  const auto h = static_cast<float>(sheet.rows);
  const std::vector<cv::Point2f> from = {{0, 0}, {w, 0}, {w, h}, {0, h}};
  const std::vector<cv::Point2f> to = {
      {300, 250}, {w + 50, 420}, {w - 80, h + 500}, {120, h + 180}};
  cv::Mat seen(static_cast<int>(h) + 700,
               static_cast<int>(w) + 300,
               CV_8U,
               cv::Scalar(70));
  cv::warpPerspective(sheet,
                      seen,
                      cv::getPerspectiveTransform(from, to),
                      seen.size(),
                      cv::INTER_AREA,
                      cv::BORDER_TRANSPARENT);
  for (int y = 0; y < seen.rows; ++y) {
    seen.row(y) *= 1.0 - 0.4 * y / seen.rows;
  }
  cv::GaussianBlur(seen, seen, {}, 1.0);
  EXPECT_TRUE(cv::imwrite(photo, seen, {cv::IMWRITE_JPEG_QUALITY, 80}));
  return photo;
}

TEST(Print, APhotoOfLabelsSetsTheirCupsUpAgain) {
  const std::string folder = ScratchFolder();
  const std::string store = folder + "/book.db";
  const std::string pdf = folder + "/labels.pdf";
  ASSERT_EQ(RunFlowkin({"print", "labels", "--out", pdf},
                       std::string(R"({"labels": [)") + kLabel +
                           R"(,{"name":"Ash","volume_ml":90}]})")
                .status,
            0);
  Shell("pdftoppm -r 300 -gray -png '" + pdf + "' '" + folder + "/page'");
  const std::string photo =
      PhotoOf(folder + "/page-1.png", folder + "/jars.jpg");
  ASSERT_EQ(RunFlowkin({"bench", "new", "--store", store}).status, 0);
  const auto label = [&](const std::string& seen) {
    return RunFlowkin(
        {"bench", "label", "--photo", seen, "--store", store, "--json"});
  };
  const FlowkinRun run = label(photo);
  ASSERT_EQ(run.status, 0) << run.err;
  std::map<std::string, double> now_ml;
  const json cups = json::parse(run.out)["cups"];
  for (const json& cup : cups) {
    now_ml[cup["label"]] = cup["volume_now_ml"].get<double>();
  }
  ASSERT_EQ(now_ml.size(), 2u) << run.out;
  EXPECT_NEAR(now_ml["Lagoon für Straße"], 138.4, 1e-6);
  EXPECT_NEAR(now_ml["Ash"], 90.0, 1e-6);
  // No code, a code of something else, no picture.
  cv::imwrite(folder + "/none.png", cv::Mat(400, 600, CV_8U, cv::Scalar(128)));
  const FlowkinRun none = label(folder + "/none.png");
  EXPECT_EQ(none.status, 3);
  EXPECT_TRUE(IsOneSentence(none.err)) << none.err;
  EXPECT_EQ(json::parse(none.out)["outcome"], "refused");
  Shell("qrencode -s 8 -o '" + folder + "/other.png' 'https://example.org/'");
  const FlowkinRun other = label(folder + "/other.png");
  EXPECT_EQ(other.status, 3);
  EXPECT_TRUE(IsOneSentence(other.err)) << other.err;
  EXPECT_NE(other.err, none.err);
  EXPECT_EQ(label(pdf).status, 4);
  EXPECT_EQ(label(folder + "/missing.jpg").status, 4);
}

TEST(Print, ALabelThatIsNoCupIsRefused) {
  const std::string store = ScratchFolder() + "/book.db";
  ASSERT_EQ(RunFlowkin({"bench", "new", "--store", store}).status, 0);
  for (const auto& [label, status] :
       {std::pair(R"({"name":"Batch 7","role":"medium"})", 2),
        std::pair(R"({"name":"Ash","role":"soup"})", 2),
        std::pair(R"({"name":"Ash","volume_ml":50,"water_ml":50})", 2),
        std::pair(R"({"name":"Ash","thinner":"soup"})", 2),
        std::pair(R"({"name":"Ash","volume_ml":1e9})", 2),
        std::pair(R"({"labels":[]})", 2),
        std::pair(R"({"volume_ml":50})", 4),
        std::pair(R"({"format":"flowkin-plan","name":"Ash"})", 4),
        std::pair(R"({"name":"As)", 4)}) {
    const FlowkinRun run =
        RunFlowkin({"bench", "label", "--store", store}, label);
    EXPECT_EQ(run.status, status) << label;
    EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  }
  const FlowkinRun shown =
      RunFlowkin({"bench", "show", "--store", store, "--json"});
  EXPECT_EQ(json::parse(shown.out)["cups"].size(), 0u);
}

TEST(Print, MoreLabelsThanAPageHolds) {
  json labels = {{"labels", json::array()}};
  for (int i = 0; i < 11; ++i) {
    labels["labels"].push_back(
        {{"name", "Jar " + std::to_string(i)}, {"volume_ml", i}});
  }
  const std::string pdf = ScratchFolder() + "/labels.pdf";
  ASSERT_EQ(RunFlowkin({"print", "labels", "--out", pdf}, labels.dump()).status,
            0);
  EXPECT_EQ(PagesOf(pdf), 2);
  EXPECT_THAT(TextOf(pdf), HasSubstr("Jar 10"));
}

const char kPlan[] = R"({"technique":"swipe",
  "supports":[{"length_mm":500,"width_mm":400,"depth_mm":18}],
  "colours":[{"name":"Chalk","body":"heavy","share":2},{"name":"Lagoon"}]})";

TEST(Print, BenchSheetHoldsThePlansNumbers) {
  const std::string folder = ScratchFolder();
  WriteFile(folder + "/plan.json", kPlan);
  const std::string pdf = folder + "/sheet.pdf";
  ASSERT_EQ(
      RunFlowkin(
          {"print", "sheet", "--file", folder + "/plan.json", "--out", pdf})
          .status,
      0);
  const std::string text = TextOf(pdf);
  // By hand: 0.2324 m2 with edges. Chalk takes two thirds of 450 mL/m2, with
  // waste, four tests of 3 mL and a fifth kept back; one part in three paint.
  const double chalk_ml = (0.2324 * 300 * 1.2 + 12) * 1.2;
  const double paint_ml = chalk_ml / 3;
  char words[64];
  std::snprintf(words, sizeof(words), "%.1f mL", paint_ml);
  EXPECT_THAT(text, HasSubstr(words));
  std::snprintf(words, sizeof(words), "%.1f g", paint_ml * 1.25);
  EXPECT_THAT(text, HasSubstr(words));
  std::snprintf(words, sizeof(words), "%.0f mL", chalk_ml);
  EXPECT_THAT(text, HasSubstr(words));
  std::snprintf(words, sizeof(words), "%.1f mL", chalk_ml / 6);
  EXPECT_THAT(text, HasSubstr(words)) << "kept back";
  std::snprintf(words, sizeof(words), "%.0f mL on the canvas", 0.2324 * 1650);
  EXPECT_THAT(text, HasSubstr(words));
  EXPECT_THAT(text, HasSubstr("Follow the"));
}

/// Words that reach beyond the printed margins of 15 mm, in points.
int WordsOutside(const std::string& pdf) {
  constexpr double kMargin_pt = 15.0 / 25.4 * 72.0 - 1.0;
  const std::string boxes = Shell("pdftotext -bbox '" + pdf + "' -");
  const std::regex word(
      "<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" "
      "yMax=\"([0-9.]+)\">");
  int outside = 0;
  int words = 0;
  for (std::sregex_iterator found(boxes.begin(), boxes.end(), word), end;
       found != end;
       ++found, ++words) {
    if (std::stod((*found)[1]) < kMargin_pt ||
        std::stod((*found)[2]) < kMargin_pt ||
        std::stod((*found)[3]) > 595.28 - kMargin_pt ||
        std::stod((*found)[4]) > 841.89 - kMargin_pt) {
      ++outside;
    }
  }
  EXPECT_GT(words, 20);
  return outside;
}

struct InLanguage {
  const char* code;
  std::vector<const char*> sheet;
  std::vector<const char*> handout;
  std::vector<const char*> label;
};
class PrintLanguages : public ::testing::TestWithParam<InLanguage> {};

// No page mixes languages: none of the words that head the English ones is
// left, and the numbers have her decimal sign.
TEST_P(PrintLanguages, EveryPageIsInOneLanguage) {
  const InLanguage& in = GetParam();
  const std::string folder = ScratchFolder();
  WriteFile(folder + "/plan.json", kPlan);
  const std::string pdf = folder + "/page.pdf";
  const auto print = [&](std::vector<std::string> what, const char* given) {
    what.insert(what.begin(), "print");
    for (const char* more : {"--language", in.code, "--out", pdf.c_str()}) {
      what.emplace_back(more);
    }
    const FlowkinRun run = RunFlowkin(what, given);
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_EQ(WordsOutside(pdf), 0) << what[1];
    return TextOf(pdf);
  };
  const auto check = [&](const std::string& text,
                         const std::vector<const char*>& words) {
    for (const char* word : words) EXPECT_THAT(text, HasSubstr(word));
    EXPECT_THAT(text,
                Not(ContainsRegex("base coat|water|keep back|weight|"
                                  "colour|mixed|varnish|the ")));
    EXPECT_THAT(text, Not(ContainsRegex("[0-9][.][0-9]")));
  };
  check(print({"sheet", "--file", folder + "/plan.json"}, ""), in.sheet);
  check(print({"handout", "--file", folder + "/plan.json"}, ""), in.handout);
  json label = json::parse(kLabel);
  label["mix"] = "1 : 1";
  label["hazard"] = "Paint: follow its label. No food container.";
  check(print({"labels"}, label.dump().c_str()), in.label);
  // What the code holds is for machines and the same everywhere.
  const json scanned = json::parse(CodesOf(pdf), nullptr, false);
  EXPECT_EQ(scanned["role"], "colour");
  EXPECT_EQ(scanned["volume_ml"], 138.4);
}

INSTANTIATE_TEST_SUITE_P(
    Both,
    PrintLanguages,
    ::testing::Values(
        InLanguage{"de",
                   {"Blatt für den Tisch: Wischen",
                    "383 ml auf der Leinwand",
                    "1,65 mm nass",
                    "Grundfarbe",
                    "Gewicht"},
                   {"Kurs: Wischen", "An jedem Platz", "Deine Becher"},
                   {"Farbe, Grüne Werft",
                    "Wasser 8,5 ml, 6,14 %",
                    "1,05 (0,97 bis 1,14)",
                    "bei 21,5 °C",
                    "gemischt 2026-03-01"}},
        InLanguage{"fr",
                   {"Feuille d’établi : balayage",
                    "383 mL sur la toile",
                    "1,65 mm mouillé",
                    "couche de base",
                    "poids"},
                   {"Cours : balayage", "À chaque place", "Vos gobelets"},
                   {"couleur, Grüne Werft",
                    "eau 8,5 mL, 6,14 %",
                    "1,05 (0,97 à 1,14)",
                    "à 21,5 °C",
                    "mélangé 2026-03-01"}}),
    [](const auto& language) { return std::string(language.param.code); });

TEST(Print, HandoutSharesTheBatchAmongThePlaces) {
  const std::string folder = ScratchFolder();
  WriteFile(folder + "/plan.json", kPlan);
  const std::string pdf = folder + "/class.pdf";
  const FlowkinRun run = RunFlowkin({"print",
                                     "handout",
                                     "--file",
                                     folder + "/plan.json",
                                     "--out",
                                     pdf,
                                     "--students",
                                     "12",
                                     "--title",
                                     "Saturday class",
                                     "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  const json document = json::parse(run.out);
  EXPECT_EQ(document["plan"]["pictures"], 12);
  const std::string text = TextOf(pdf);
  EXPECT_THAT(text, HasSubstr("Saturday class"));
  const double chalk_ml = (12 * 0.2324 * 300 * 1.2 + 12) * 1.2;
  char words[64];
  std::snprintf(words, sizeof(words), "%.0f mL", chalk_ml);
  EXPECT_THAT(text, HasSubstr(words));
  std::snprintf(words, sizeof(words), "%.0f mL", chalk_ml / 12);
  EXPECT_THAT(text, HasSubstr(words)) << "one place";
}

FilmedTest Film(double viscosity) {
  FilmedTest film;
  film.film = "film.mp4";
  FlowMeasurement& m = film.measurement;
  m.kind = TestKind::kPuddle;
  m.outcome = Outcome::kMeasured;
  m.start_s = 1.0;
  m.proxies = {{"spreading_rate",
                1.0 / viscosity,
                "mm8/s",
                {-std::log(viscosity), 0.01},
                {-1.0, 0.0}}};
  return film;
}

TEST(Print, ReportTellsTheDay) {
  const std::string folder = ScratchFolder();
  const std::string store = folder + "/book.db";
  const UtcTime now{1'772'366'400'000};
  std::string number;
  {
    auto bench = Bench::Open(store);
    ASSERT_TRUE(bench);
    const auto id = bench->NewSession("Harbour at dusk", now);
    ASSERT_TRUE(id);
    number = std::to_string(*id);
    CupDetails base;
    base.label = "Dune";
    base.role = CupRole::kBaseCoat;
    CupDetails colour;
    colour.label = "Lagoon";
    colour.paint = {"Grüne Werft", "Zinnober"};
    colour.volume_ml = 120.0;
    const auto base_id = bench->AddCup(base, now);
    const auto colour_id = bench->AddCup(colour, now);
    for (int i = 0; i < 3; ++i) {
      ASSERT_TRUE(bench->RecordTest(*base_id, Film(1000.0), now));
      ASSERT_TRUE(bench->RecordTest(*colour_id, Film(1700.0), now));
    }
    ASSERT_TRUE(
        bench->RecordAddition(*colour_id, 6.0, ThinnerKind::kWater, {}, now));
    ASSERT_TRUE(bench->RecordTest(*colour_id, Film(1050.0), now));
    ASSERT_TRUE(bench->SetRoomTemperature(21.0, now));
    PourMade pour;
    pour.technique = "swipe";
    pour.used_ml = 412.0;
    pour.dry_mm = 0.52;
    ASSERT_TRUE(bench->RecordPour(pour, now));
    ASSERT_TRUE(bench->RecordFault({"crazing", "lower left"}, now));
    ASSERT_TRUE(bench->JudgePour({PourVerdict::kFair, ""}, now));
    ASSERT_TRUE(bench->RecordPhoto({PhotoKind::kWet, "gone.jpg", {}, ""}, now));
  }
  const std::string photo = folder + "/dry.png";
  Shell(
      "ffmpeg -loglevel error -f lavfi -i testsrc=size=600x400 -frames:v 1 '" +
      photo + "'");
  ASSERT_EQ(RunFlowkin({"journal",
                        "photo",
                        number,
                        photo,
                        "--kind",
                        "dry",
                        "--text",
                        "second day",
                        "--store",
                        store})
                .status,
            0);
  const std::string pdf = folder + "/report.pdf";
  const FlowkinRun run = RunFlowkin({"print",
                                     "report",
                                     "--session",
                                     number,
                                     "--store",
                                     store,
                                     "--out",
                                     pdf,
                                     "--json"});
  ASSERT_EQ(run.status, 0) << run.err;
  EXPECT_THAT(run.err, HasSubstr("gone.jpg")) << "a lost photo is told";
  EXPECT_EQ(json::parse(run.out)["photos"], 1);
  const std::string text = TextOf(pdf);
  for (const char* words : {"Harbour at dusk",
                            "2026-03-01",
                            "room 21",
                            "judged fair",
                            "dry: second day",
                            "Grüne Werft Zinnober",
                            "6 mL",
                            "412 mL",
                            "0.52 mm dry",
                            "crazing: lower left",
                            "The film was thick.",
                            "fits",
                            "none is proven"}) {
    EXPECT_THAT(text, HasSubstr(words));
  }
  // Puddle rates of 1000 and 1050 with exponent -1, and 6 mL in 126.
  EXPECT_THAT(text, ContainsRegex("1.05 \\("));
  EXPECT_THAT(text, HasSubstr("4.76 %"));
  EXPECT_THAT(Shell("pdfimages -list '" + pdf + "'"), HasSubstr("600   400"));
  // Labels of the same day.
  const std::string labels = folder + "/labels.pdf";
  ASSERT_EQ(RunFlowkin({"print",
                        "labels",
                        "--session",
                        number,
                        "--store",
                        store,
                        "--out",
                        labels})
                .status,
            0);
  const json scanned = json::parse(CodesOf(labels), nullptr, false);
  EXPECT_EQ(scanned["format"], "flowkin-label");
}

/// What stands on the report besides words: every number, once each.
std::set<std::string> NumbersIn(std::string text) {
  // Days and times of the log are compared as a whole, elsewhere.
  text = std::regex_replace(
      text, std::regex("[0-9]{4}-[0-9]{2}-[0-9]{2}( [0-9]{2}:[0-9]{2})?"), "");
  std::set<std::string> numbers;
  const std::regex number("[0-9]+([.][0-9]+)?");
  for (std::sregex_iterator found(text.begin(), text.end(), number), end;
       found != end;
       ++found) {
    numbers.insert(found->str());
  }
  return numbers;
}

/// As pages show numbers: at most three digits, two of them decimals, no zeros
/// at the end.
std::string Three(double value) {
  std::ostringstream text;
  text << std::fixed
       << std::setprecision(value < 9.995   ? 2
                            : value < 99.95 ? 1
                                            : 0)
       << value;
  return std::regex_replace(
      text.str(), std::regex("([.][0-9]*[1-9])0+$|[.]0+$"), "$1");
}

// Every number on the page is one that is worked out here from what was put
// in, and every one of these stands on the page. Only the intervals of the
// ratios are the engine's own (tests/core/flow checks their coverage); here
// they must be those of `bench show`.
TEST(Print, EveryNumberOfAReportIsWorkedOutAnew) {
  const std::string folder = ScratchFolder();
  const std::string store = folder + "/book.db";
  const UtcTime now{1'772'366'400'000};  // 2026-03-01 12:00
  constexpr double kBase_mm2_per_s = 1000.0;
  constexpr double kFirst_mm2_per_s = 1720.0;
  constexpr double kSecond_mm2_per_s = 1060.0;
  constexpr double kActivator_mm2_per_s = 810.0;
  std::string number;
  {
    auto bench = Bench::Open(store);
    ASSERT_TRUE(bench);
    const auto id = bench->NewSession("Harbour", now);
    ASSERT_TRUE(id);
    number = std::to_string(*id);
    CupDetails details;
    details.label = "Dune";
    details.role = CupRole::kBaseCoat;
    const auto base = bench->AddCup(details, now);
    details.label = "Lagoon";
    details.role = CupRole::kColour;
    details.volume_ml = 134.0;
    const auto colour = bench->AddCup(details, now);
    details.label = "Pearl";
    details.role = CupRole::kActivator;
    details.volume_ml = 62.0;
    details.target_ratio = 0.79;
    const auto activator = bench->AddCup(details, now);
    for (int i = 0; i < 3; ++i) {
      ASSERT_TRUE(bench->RecordTest(*base, Film(kBase_mm2_per_s), now));
      ASSERT_TRUE(bench->RecordTest(*colour, Film(kFirst_mm2_per_s), now));
      ASSERT_TRUE(
          bench->RecordTest(*activator, Film(kActivator_mm2_per_s), now));
    }
    ASSERT_TRUE(
        bench->RecordAddition(*colour, 7.3, ThinnerKind::kWater, {}, now));
    for (int i = 0; i < 3; ++i) {
      ASSERT_TRUE(bench->RecordTest(*colour, Film(kSecond_mm2_per_s), now));
    }
    ASSERT_TRUE(bench->SetRoomTemperature(23.4, now));
    PourMade pour;
    pour.technique = "swipe";
    pour.planned_ml = 383.0;
    pour.used_ml = 416.0;
    pour.wet_mm = 1.78;
    pour.dry_mm = 0.56;
    pour.humidity_percent = 43.0;
    pour.rested_min = 27.0;
    pour.strained = true;
    ASSERT_TRUE(bench->RecordPour(pour, now));
    CellsTested cells;
    cells.seen = CellsSeen::kLacing;
    cells.after_s = 33.0;
    cells.additive_parts = 0.45;
    cells.cup = *activator;
    cells.counted =
        CellsCounted{57, 12.7, {9.9, 16.2, 0.95}, 2.31, {2.1, 2.6, 0.95}};
    ASSERT_TRUE(bench->RecordCells(cells, now));
    ASSERT_TRUE(bench->RecordFault({"crazing", ""}, now));
    ASSERT_TRUE(bench->TakeNote({}, "calm", now));
  }
  const json shown = json::parse(
      RunFlowkin(
          {"bench", "show", "--session", number, "--store", store, "--json"})
          .out);
  std::map<std::string, json> cups;
  for (const json& cup : shown["cups"]) cups[cup["label"]] = cup;
  const double colour_ratio = kSecond_mm2_per_s / kBase_mm2_per_s;
  const double activator_ratio = kActivator_mm2_per_s / kBase_mm2_per_s;
  const std::pair<const char*, double> ratios[] = {{"Lagoon", colour_ratio},
                                                   {"Pearl", activator_ratio}};
  std::map<std::string, std::string> expected = {
      {"95", "% of the interval"},
      {"1", "base coat, targets, paint : additive, axis"},
      {Three(7.3), "mL added"},
      {Three(100.0 * 7.3 / (134.0 + 7.3)), "% water"},
      {"0", "% water of the activator, axis"},
      {Three(0.79), "target of the activator"},
      {Three(23.4), "room"},
      {Three(43.0), "% humidity"},
      {Three(383.0), "planned"},
      {Three(416.0), "used"},
      {Three(1.78), "wet"},
      {Three(0.56), "dry"},
      {Three(33.0), "s to the verdict"},
      {Three(0.45), "additive"},
      {Three(12.7), "cells"},
      {Three(9.9), "cells, low"},
      {Three(16.2), "cells, high"},
      {Three(2.31), "mm"},
      // What the causes of the fault are held against.
      {"5", "% water of the wettest cup, whole"}};
  for (const auto& [label, ratio] : ratios) {
    const json& said = cups[label]["ratio"];
    expected[Three(ratio)] = "ratio";
    for (const char* end : {"low", "high"}) {
      expected[Three(said[end].get<double>())] = "interval";
    }
    // Even in ln around the ratio, as an interval of a ratio has to be.
    EXPECT_NEAR(said["low"].get<double>() * said["high"].get<double>(),
                ratio * ratio,
                0.01);
  }
  const std::string pdf = folder + "/report.pdf";
  ASSERT_EQ(RunFlowkin({"print",
                        "report",
                        "--session",
                        number,
                        "--store",
                        store,
                        "--out",
                        pdf})
                .status,
            0);
  const std::string text = TextOf(pdf);
  EXPECT_THAT(text, HasSubstr("2026-03-01, room"));
  EXPECT_THAT(text, HasSubstr("2026-03-01, swipe"));
  EXPECT_THAT(text, HasSubstr("2026-03-01 12:00"));
  std::set<std::string> numbers = NumbersIn(text);
  for (const auto& [value, what] : expected) {
    EXPECT_EQ(numbers.erase(value), 1u) << value << ": " << what;
  }
  // The axis of the path from the first ratio to the second.
  for (const std::string& left : numbers) {
    const double tick = std::stod(left);
    EXPECT_TRUE(left.size() == 3 && tick > 0.6 && tick < 2.5)
        << left << " is on the page, and nothing accounts for it";
  }
}

class PrintBadCalls : public ::testing::TestWithParam<BadCall> {};
TEST_P(PrintBadCalls, EndWithTheirStatusAndOneSentence) {
  ExpectFails(GetParam());
}
const std::string kOut =
    (std::filesystem::temp_directory_path() / "flowkin-not-written.pdf")
        .string();
INSTANTIATE_TEST_SUITE_P(
    Calls,
    PrintBadCalls,
    ::testing::Values(
        BadCall{"NoKind", {"print"}, "", 2},
        BadCall{"NoSuchLanguage",
                {"print", "labels", "--out", kOut, "--language", "xx"},
                kLabel,
                2},
        BadCall{"NoFile", {"print", "labels"}, kLabel, 2},
        BadCall{"NoName", {"print", "labels", "--out", kOut}, "{}", 4},
        BadCall{"NoLabels",
                {"print", "labels", "--out", kOut},
                R"({"labels":[]})",
                2},
        BadCall{"CodeTooLong",
                {"print", "labels", "--out", kOut},
                json{{"name", std::string(1999, 'x')},
                     {"hazard", std::string(1999, 'y')}}
                    .dump(),
                2},
        BadCall{"NoFolder",
                {"print", "labels", "--out", "no-such-folder/l.pdf"},
                kLabel,
                1},
        BadCall{"NoSession",
                {"print",
                 "report",
                 "--session",
                 "1",
                 "--store",
                 "no/b.db",
                 "--out",
                 kOut},
                "",
                4}),
    [](const auto& call) { return call.param.name; });

}  // namespace
}  // namespace flowkin::testing
