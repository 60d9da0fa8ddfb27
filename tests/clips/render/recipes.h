#pragma once

#include <functional>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace flowkin::clips {

/// One clip to be made: its truth is known before a picture is drawn.
struct Recipe {
  std::string file;  ///< without folder
  std::string set;
  bool quick = true;  ///< part of the short run
  /// Films it into `path` and fills in the truth; false if filming failed.
  std::function<bool(const std::string& path, nlohmann::json* truth)> make;
};

/// A paint: what the truth says of it.
struct Paint {
  std::string name;
  double nu_mm2_s = 500.0;
  double rho_kg_m3 = 1200.0;
  double sigma_n_m = 0.0325;
  double ratio_kinematic = 1.0;
  double ratio_dynamic = 1.0;
};

/// A set's base coat, its three repeats' names, and its cups.
struct Palette {
  Paint base;
  std::vector<Paint> cups;
};

/// Ratios are kinematic; densities and surface tensions vary with `seed`.
Palette MixPalette(double base_nu_mm2_s,
                   const std::vector<double>& ratios,
                   unsigned seed);

void AddPuddleRecipes(std::vector<Recipe>* out);
void AddLevelRecipes(std::vector<Recipe>* out);
void AddStreamRecipes(std::vector<Recipe>* out);
/// Sets drawn at random: tools, amounts, colours, grounds, lamps and cameras as
/// benches have them. For looking for what has not been thought of.
void AddRandomPuddleRecipes(unsigned seed, int sets, std::vector<Recipe>* out);
void AddRandomLevelRecipes(unsigned seed, int sets, std::vector<Recipe>* out);
void AddRandomStreamRecipes(unsigned seed, int sets, std::vector<Recipe>* out);

struct Camera;
/// The fields every clip's truth has.
nlohmann::json CommonTruth(const std::string& file,
                           const std::string& kind,
                           const std::string& set,
                           const std::string& role,
                           const std::string& expect,
                           const Paint& paint,
                           const Camera& camera,
                           int frames);
/// Rounds to 1e-6 for the file.
double Rounded(double v);

}  // namespace flowkin::clips
