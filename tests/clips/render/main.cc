// Renders clips of the three tests with known truth into a folder:
//   flowkin_render_clips OUT [--only TEXT] [--quick] [--list] [--random SEED]
// Clips that are there already are kept (use --again to make them anew).
#include <sys/resource.h>

#include <CLI/CLI.hpp>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <opencv2/core.hpp>
#include <random>

#include "tests/clips/render/camera.h"
#include "tests/clips/render/recipes.h"

namespace flowkin::clips {

double Rounded(double v) { return std::round(v * 1e6) / 1e6; }

Palette MixPalette(double base_nu,
                   const std::vector<double>& ratios,
                   unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> density(1100.0, 1300.0);
  std::uniform_real_distribution<double> tension(0.029, 0.035);
  Palette p;
  p.base = {"base",
            base_nu,
            std::round(density(random)),
            Rounded(tension(random)),
            1.0,
            1.0};
  static const char* const kNames[] = {
      "teal", "coral", "ink", "lemon", "plum", "chalk", "moss", "rust"};
  for (std::size_t i = 0; i < ratios.size(); ++i) {
    Paint c;
    c.name = kNames[(i + seed) % 8];
    c.nu_mm2_s = base_nu * ratios[i];
    c.rho_kg_m3 = std::round(density(random));
    // Paints of one range share their medium, hence nearly its tension.
    c.sigma_n_m = Rounded(p.base.sigma_n_m * (i % 2 == 0 ? 0.97 : 1.03));
    c.ratio_kinematic = ratios[i];
    c.ratio_dynamic = Rounded(ratios[i] * c.rho_kg_m3 / p.base.rho_kg_m3);
    p.cups.push_back(c);
  }
  return p;
}

nlohmann::json CommonTruth(const std::string& file,
                           const std::string& kind,
                           const std::string& set,
                           const std::string& role,
                           const std::string& expect,
                           const Paint& paint,
                           const Camera& camera,
                           int frames) {
  nlohmann::json t;
  t["file"] = file;
  t["kind"] = kind;
  t["set"] = set;
  t["role"] = role;
  t["expect"] = expect;
  t["nuisances"] = nlohmann::json::array();
  t["paint"] = paint.name;
  t["mu_pa_s"] = Rounded(paint.nu_mm2_s * 1e-6 * paint.rho_kg_m3);
  t["rho_kg_m3"] = paint.rho_kg_m3;
  t["sigma_n_m"] = paint.sigma_n_m;
  t["nu_mm2_s"] = Rounded(paint.nu_mm2_s);
  t["ratio_dynamic"] = paint.ratio_dynamic;
  t["ratio_kinematic"] = paint.ratio_kinematic;
  t["fps_true"] = camera.fps;
  t["fps_container"] = camera.fps;
  t["frames"] = frames;
  t["duration_true_s"] = Rounded(frames / camera.fps);
  t["duration_container_s"] = Rounded(frames / camera.fps);
  t["time_scale"] = 1.0;
  t["exposure_s"] = Rounded(camera.exposure_share / camera.fps);
  t["rotation_deg"] = 0;
  t["width"] = camera.size.width;
  t["height"] = camera.size.height;
  t["measure_args"] = {{"test", kind}};
  t["events_true_s"] = nlohmann::json::object();
  return t;
}

}  // namespace flowkin::clips

int main(int argc, char** argv) {
  using namespace flowkin::clips;
  std::string out, only;
  unsigned random_seed = 0;
  bool quick = false, list = false, again = false;
  CLI::App app{"Rendered clips of the three tests, with their truth"};
  app.add_option("out", out, "folder to write")->required();
  app.add_option("--only", only, "only files or sets holding this text");
  app.add_flag("--quick", quick, "one set of each test and every mishap");
  app.add_flag("--list", list, "name them, make none");
  app.add_option(
      "--random",
      random_seed,
      "ten sets of each test drawn at random with this seed, instead");
  app.add_flag("--again", again, "make clips anew that are there");
  CLI11_PARSE(app, argc, argv);
  cv::setNumThreads(1);
  setpriority(PRIO_PROCESS, 0, 19);

  std::vector<Recipe> recipes;
  if (random_seed > 0) {
    AddRandomPuddleRecipes(random_seed, 10, &recipes);
    AddRandomLevelRecipes(random_seed, 10, &recipes);
    AddRandomStreamRecipes(random_seed, 10, &recipes);
  } else {
    AddPuddleRecipes(&recipes);
    AddLevelRecipes(&recipes);
    AddStreamRecipes(&recipes);
  }

  namespace fs = std::filesystem;
  fs::create_directories(out);
  const fs::path truth_path = fs::path(out) / "truth.json";
  nlohmann::json truth = {{"sets", nlohmann::json::object()},
                          {"clips", nlohmann::json::array()}};
  if (fs::exists(truth_path)) {
    std::ifstream in(truth_path);
    truth = nlohmann::json::parse(in, nullptr, false);
    if (truth.is_discarded()) {
      std::fprintf(stderr, "%s is not JSON.\n", truth_path.c_str());
      return 4;
    }
  }
  truth["note"] =
      "rendered by flowkin_render_clips from solved physics; events_true_s: "
      "seconds of real time from the first frame";
  for (const Recipe& r : recipes) {
    if (quick && !r.quick) continue;
    if (!only.empty() && r.file.find(only) == std::string::npos &&
        r.set.find(only) == std::string::npos) {
      continue;
    }
    if (list) {
      std::cout << r.set << "  " << r.file << "\n";
      continue;
    }
    auto& clips = truth["clips"];
    auto known = clips.begin();
    while (known != clips.end() && (*known)["file"] != r.file) ++known;
    const fs::path path = fs::path(out) / r.file;
    if (!again && known != clips.end() && fs::exists(path)) continue;
    nlohmann::json t;
    // ffmpeg looks at the ending, so it stays.
    const fs::path part = fs::path(out) / ("part-" + r.file);
    if (!r.make(part.string(), &t)) return 1;
    fs::rename(part, path);
    t["events_container_s"] = t["events_true_s"];
    t["size_bytes"] = fs::file_size(path);
    if (known != clips.end()) {
      *known = t;
    } else {
      clips.push_back(t);
    }
    auto& set = truth["sets"];
    set = nlohmann::json::object();
    for (const auto& c : clips) {
      const std::string name = c["set"];
      if (name == "mishaps") continue;
      set[name]["clips"].push_back(c["file"]);
      if (c["role"] == "reference") {
        set[name]["reference_nu_mm2_s"] = c["nu_mm2_s"];
      }
    }
    const fs::path temporary = truth_path.string() + ".new";
    std::ofstream(temporary) << truth.dump(1) << "\n";
    fs::rename(temporary, truth_path);
    std::fprintf(stderr, "%s\n", r.file.c_str());
  }
  return 0;
}
