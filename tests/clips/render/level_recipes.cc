#include <algorithm>
#include <cmath>
#include <random>

#include "tests/clips/render/level_scene.h"
#include "tests/clips/render/lots.h"
#include "tests/clips/render/recipes.h"

namespace flowkin::clips {
namespace {

using testing::LevellingRelief;
using testing::LevellingReliefOptions;

struct LevelShot {
  std::string file, set, role = "reference", expect = "measured";
  std::vector<std::string> nuisances;
  Paint paint;
  LevelLook look;
  RibbonPath path;
  Camera camera;
  LevellingReliefOptions relief;
  double film_s = 0.0;  ///< after laid; 0 = until well levelled
  bool quick = true;
};

/// First time the falling curve meets `level`, between samples.
double Crossing(const std::vector<std::pair<double, double>>& curve,
                double level) {
  for (std::size_t i = 1; i < curve.size(); ++i) {
    const auto [t0, a] = curve[i - 1];
    const auto [t1, b] = curve[i];
    if (a >= level && b < level) {
      return t0 + (t1 - t0) * std::log(a / level) / std::log(a / b);
    }
  }
  return -1.0;
}

bool Make(const LevelShot& shot,
          const std::string& path,
          nlohmann::json* truth) {
  const double inner =
      0.85 * std::min(shot.look.pool_half_mm,
                      shot.look.shape == "cup" ? shot.look.pool_half_mm
                                               : shot.look.pool_half_y_mm);
  LevellingRelief relief(shot.relief);
  LayAndLevel(shot.path, 0.0, shot.path.laid_s, &relief);
  const double first = relief.RmsMm(inner);
  std::vector<std::pair<double, double>> curve{{0.0, first}};
  const double step = 0.02;
  while (curve.size() < 1000 && curve.back().second > 0.02 * first) {
    relief.Level(step);
    curve.emplace_back(curve.back().first + step, relief.RmsMm(inner));
  }
  const double tau = Crossing(curve, first / std::exp(1.0));
  const double tenth = Crossing(curve, 0.1 * first);
  const double film =
      shot.film_s > 0.0 ? shot.film_s : std::clamp(1.6 * tenth + 0.8, 1.5, 9.0);
  const int frames = static_cast<int>(
      std::lround((shot.path.laid_s + film) * shot.camera.fps));
  nlohmann::json t = CommonTruth(shot.file,
                                 "level",
                                 shot.set,
                                 shot.role,
                                 shot.expect,
                                 shot.paint,
                                 shot.camera,
                                 frames);
  t["nuisances"] = shot.nuisances;
  t["mm_per_px"] = shot.look.mm_per_px;
  t["relief"] = {{"rms_at_laid_mm", Rounded(first)},
                 {"half_s", Rounded(Crossing(curve, 0.5 * first))},
                 {"tau_e_s", Rounded(tau)},
                 {"to_10pct_s", Rounded(tenth)}};
  nlohmann::json rms = nlohmann::json::array();
  for (const auto& [at, value] : curve) {
    rms.push_back({Rounded(at + shot.path.laid_s), Rounded(value)});
  }
  t["relief_rms_mm"] = rms;
  t["geometry_mm"] = {{"pool_depth", shot.relief.depth_mm},
                      {"pool_half", shot.look.pool_half_mm},
                      {"path", shot.path.kind}};
  if (shot.role != "mishap" || shot.path.kind != "stir") {
    t["events_true_s"] = {{"lay_start_s", shot.path.lay_start_s},
                          {"laid_s", shot.path.laid_s}};
  }
  LevelScene scene(shot.camera.size, shot.look, shot.path, shot.relief);
  *truth = t;
  return Film(&scene, shot.camera, frames, path);
}

void Push(const LevelShot& shot, std::vector<Recipe>* out) {
  out->push_back({shot.file,
                  shot.set,
                  shot.quick,
                  [shot](const std::string& path, nlohmann::json* truth) {
                    return Make(shot, path, truth);
                  }});
}

void PushSet(const LevelShot& plan,
             const Palette& palette,
             const std::vector<Light>& colours,
             unsigned seed,
             std::vector<Recipe>* out) {
  std::mt19937 random(seed);
  std::normal_distribution<double> hand(0.0, 1.0);
  auto film = [&](const std::string& name,
                  const std::string& role,
                  const Paint& paint,
                  Light colour) {
    LevelShot shot = plan;
    shot.file = plan.set + "-" + name + ".mp4";
    shot.role = role;
    shot.paint = paint;
    shot.relief.nu_mm2_s = paint.nu_mm2_s;
    shot.relief.rho_kg_m3 = paint.rho_kg_m3;
    shot.relief.sigma_n_m = paint.sigma_n_m;
    shot.relief.depth_mm *= 1.0 + 0.004 * hand(random);
    shot.look.paint = colour;
    const double delay = 0.1 * hand(random);
    shot.path.laid_s = Rounded(plan.path.lay_start_s + delay +
                               (plan.path.laid_s - plan.path.lay_start_s) *
                                   (1.0 + 0.06 * hand(random)));
    shot.path.lay_start_s = Rounded(plan.path.lay_start_s + delay);
    shot.path.volume_ml *= 1.0 + 0.05 * hand(random);
    shot.path.width_mm *= 1.0 + 0.02 * hand(random);
    shot.path.span_mm *= 1.0 + 0.02 * hand(random);
    shot.path.centre_mm += cv::Point2d(0.8 * hand(random), 0.8 * hand(random));
    shot.path.turn_deg += 4.0 * hand(random);
    shot.camera.seed = static_cast<std::uint32_t>(random());
    Push(shot, out);
  };
  for (const char* repeat : {"base-a", "base-b", "base-c"}) {
    film(repeat, "reference", palette.base, colours[0]);
  }
  for (std::size_t i = 0; i < palette.cups.size(); ++i) {
    film(palette.cups[i].name,
         "colour",
         palette.cups[i],
         colours[1 + i % (colours.size() - 1)]);
  }
}

/// A set whose scene, camera and paints are drawn by lot.
void PushRandomSet(unsigned seed, int i, std::vector<Recipe>* out) {
  Lots lots(1000 * seed + static_cast<unsigned>(i));
  LevelShot s;
  s.set = "level-random-" + std::to_string(seed) + "-" + std::to_string(i);
  s.quick = false;
  s.relief.depth_mm = lots.Between(3.5, 14.0);
  s.path.kind = lots.OneOf("line", "zigzag", "ring", "spiral", "drop");
  s.path.span_mm = lots.Between(11.0, 17.0);
  s.path.width_mm = lots.Between(1.5, 3.0);
  s.path.volume_ml = lots.Between(0.8, 2.0);
  if (s.path.kind == "drop") {
    s.path.width_mm = lots.Between(3.0, 4.5);
    s.path.volume_ml = lots.Between(0.3, 0.6);
  }
  s.path.laid_s = s.path.lay_start_s + lots.Between(0.5, 1.6);
  s.look.shape = lots.OneOf("cup", "tray");
  s.look.pool_half_mm = lots.Between(30.0, 42.0);
  s.look.pool_half_y_mm = lots.Between(28.0, 34.0);
  s.look.elevation_deg = lots.Between(36.0, 80.0);
  s.camera.size = lots.OneOf(cv::Size(640, 360), cv::Size(480, 640));
  s.look.mm_per_px = lots.Between(0.19, 0.25);
  s.look.centre_px = {0.5 * s.camera.size.width + lots.Between(-30, 30),
                      0.52 * s.camera.size.height + lots.Between(-20, 20)};
  s.look.container = lots.Colour(60, 235);
  s.look.roughness = lots.OneOf(0.0, 0.0, 0.05, 0.12);
  s.look.gloss = lots.Between(0.6, 1.3);
  s.look.layer = lots.OneOf("stick", "spout");
  s.look.lamps.clear();
  for (int lamp = lots.OneOf(1, 2, 3); lamp > 0; --lamp) {
    s.look.lamps.push_back({lots.Between(190, 350),
                            lots.Between(32, 70),
                            lots.Between(5, 14),
                            lots.Between(1.2, 2.6)});
  }
  s.look.table = {lots.OneOf("wood", "print", "cloth", "veins", "check"),
                  lots.Colour(60, 230),
                  lots.Colour(40, 220),
                  lots.Between(10.0, 50.0),
                  lots.Between(0.1, 0.4)};
  s.look.seed = lots.Seed();
  if (i % 3 == 0) s.look.other_cup_px = {60.0, 70.0};
  s.camera.fps = lots.OneOf(25.0, 30.0, 30.0, 60.0);
  s.camera.blur_samples = 1;
  s.camera.noise = lots.Between(2.0, 8.0);
  s.camera.crf = lots.OneOf(18, 21, 26);
  s.camera.sway_px = lots.OneOf(0.0, 0.0, 0.5, 1.0);
  s.camera.flicker_depth = lots.OneOf(0.0, 0.0, 0.06, 0.1);
  s.camera.lamp_hz = lots.OneOf(100.0, 120.0);
  s.camera.row_readout_s = lots.Between(0.006, 0.025);
  // Paint that takes about a second, so that every depth has its own.
  const double k = 0.7 / s.path.width_mm * 1e3;
  const double rate =
      testing::LevellingRate(k, 1000.0, 1200.0, 0.0325, s.relief.depth_mm);
  const double nu = 1000.0 * rate * lots.Between(0.35, 1.0);
  const double low = lots.Between(0.55, 0.95), high = lots.Between(1.1, 3.3);
  const Palette palette = MixPalette(nu, {low, high}, lots.Seed());
  const std::vector<Light> colours{
      lots.Colour(30, 230), lots.Colour(20, 240), lots.Colour(20, 240)};
  PushSet(s, palette, colours, lots.Seed(), out);
}

}  // namespace

void AddLevelRecipes(std::vector<Recipe>* out) {
  {
    // Paper cup from 42 degrees above, zigzag off a stick, two lamps.
    LevelShot s;
    s.set = "level-zigzag";
    s.relief.depth_mm = 8.0;
    s.path.kind = "zigzag";
    s.path.volume_ml = 1.8;
    s.look.elevation_deg = 42.0;
    s.look.mm_per_px = 0.125;
    s.look.centre_px = {620, 350};
    s.look.lamps = {{258, 38, 7, 1.3}, {215, 30, 6, 2.0}, {300, 52, 4, 1.5}};
    s.look.table = {"check",
                    FromScreen(210, 214, 216),
                    FromScreen(120, 150, 160),
                    55.0,
                    0.4};
    s.camera.fps = 60;
    s.camera.blur_samples = 1;
    PushSet(s,
            MixPalette(1800.0, {0.6, 0.85, 1.35, 2.4}, 31),
            {FromScreen(205, 195, 180),
             FromScreen(160, 60, 60),
             FromScreen(40, 60, 110),
             FromScreen(30, 30, 34),
             FromScreen(235, 235, 230)},
            41,
            out);
  }
  {
    // Shallow tray almost from above, spiral from the lip of a small cup.
    LevelShot s;
    s.set = "level-tray";
    s.quick = false;
    s.relief.depth_mm = 3.2;
    s.relief.field_mm = 120.0;
    s.path.kind = "spiral";
    s.path.span_mm = 17.0;
    s.path.volume_ml = 2.4;
    s.path.laid_s = 2.8;
    s.look.shape = "tray";
    s.look.pool_half_mm = 52.0;
    s.look.pool_half_y_mm = 34.0;
    s.look.elevation_deg = 78.0;
    s.look.mm_per_px = 0.135;
    s.look.centre_px = {480, 275};
    s.look.container = FromScreen(70, 74, 80);
    s.look.layer = "spout";
    s.look.lamps = {{200, 70, 6, 1.5}, {330, 72, 5, 1.6}, {90, 66, 4, 1.5}};
    s.look.table = {"plain",
                    FromScreen(120, 122, 118),
                    FromScreen(100, 100, 98),
                    50.0,
                    0.1};
    s.camera.fps = 60;
    s.camera.size = {960, 540};
    s.camera.blur_samples = 1;
    s.camera.noise = 5.0;
    PushSet(s,
            MixPalette(1600.0, {0.65, 1.2, 1.9}, 32),
            {FromScreen(90, 110, 150),
             FromScreen(190, 150, 60),
             FromScreen(150, 155, 150),
             FromScreen(60, 110, 80)},
            42,
            out);
  }
  {
    // One drop of thick paint into a deep cup, upright phone, satin paint.
    LevelShot s;
    s.set = "level-drop";
    s.quick = false;
    s.relief.depth_mm = 32.0;
    s.path.kind = "drop";
    s.path.volume_ml = 0.45;
    s.path.width_mm = 4.0;
    s.path.lay_start_s = 1.0;
    s.path.laid_s = 1.7;
    s.look.elevation_deg = 58.0;
    s.look.mm_per_px = 0.13;
    s.look.centre_px = {370, 520};
    s.look.roughness = 0.16;
    s.look.lamps = {{280, 52, 9, 1.6}, {180, 40, 8, 2.0}};
    s.camera.fps = 60;
    s.camera.size = {720, 1280};
    s.camera.blur_samples = 1;
    PushSet(s,
            MixPalette(5200.0, {0.55, 1.3, 2.0}, 33),
            {FromScreen(215, 205, 190),
             FromScreen(60, 120, 120),
             FromScreen(190, 90, 110),
             FromScreen(240, 240, 238)},
            43,
            out);
  }
  {
    // Black gloss, a ring, 120 frames a second, hand-held.
    LevelShot s;
    s.set = "level-ring";
    s.quick = false;
    s.relief.depth_mm = 14.0;
    s.path.kind = "ring";
    s.path.span_mm = 15.0;
    s.path.volume_ml = 1.6;
    s.look.elevation_deg = 50.0;
    s.look.mm_per_px = 0.16;
    s.look.centre_px = {480, 270};
    s.look.container = FromScreen(190, 60, 50);
    s.look.lamps = {{255, 46, 8, 2.2}};
    s.look.table = {
        "stripes", FromScreen(70, 70, 74), FromScreen(95, 95, 100), 30.0, 0.3};
    s.camera.fps = 120;
    s.camera.size = {960, 540};
    s.camera.blur_samples = 1;
    s.camera.sway_px = 0.8;
    PushSet(s,
            MixPalette(2400.0, {0.7, 1.5}, 34),
            {FromScreen(34, 34, 38),
             FromScreen(24, 26, 40),
             FromScreen(45, 30, 30)},
            44,
            out);
  }
  {
    // One line across a small cup by a window, seen flat, 30 pictures a second.
    LevelShot s;
    s.set = "level-window";
    s.quick = false;
    s.relief.depth_mm = 5.0;
    s.path.kind = "line";
    s.path.span_mm = 16.0;
    s.path.volume_ml = 1.0;
    s.path.width_mm = 1.9;
    s.path.laid_s = 1.9;
    s.look.elevation_deg = 36.0;
    s.look.pool_half_mm = 30.0;
    s.look.mm_per_px = 0.15;
    s.look.centre_px = {320, 270};
    s.look.lamps = {{270, 34, 22, 1.6}};
    s.look.table = {
        "cloth", FromScreen(88, 96, 84), FromScreen(70, 80, 70), 30.0, 0.2};
    s.camera.fps = 30;
    s.camera.size = {640, 480};
    s.camera.blur_samples = 1;
    s.camera.noise = 5.0;
    PushSet(s,
            MixPalette(2600.0, {0.6, 1.4, 2.2}, 35),
            {FromScreen(236, 233, 226),
             FromScreen(30, 34, 60),
             FromScreen(225, 190, 70),
             FromScreen(40, 110, 70)},
            45,
            out);
  }
  {
    // Thin paint in a dish, a ring, slow motion, small picture.
    LevelShot s;
    s.set = "level-slow";
    s.quick = false;
    s.relief.depth_mm = 7.0;
    s.path.kind = "ring";
    s.path.span_mm = 13.0;
    s.path.volume_ml = 1.5;
    s.path.lay_start_s = 0.6;
    s.path.laid_s = 1.1;
    s.look.mm_per_px = 0.2;
    s.look.centre_px = {236, 136};
    s.look.elevation_deg = 56.0;
    s.look.container = FromScreen(60, 90, 120);
    s.look.lamps = {{230, 50, 6, 1.8}, {310, 44, 7, 1.4}};
    s.camera.fps = 240;
    s.camera.size = {480, 270};
    s.camera.blur_samples = 1;
    s.camera.noise = 6.0;
    PushSet(s,
            MixPalette(800.0, {0.7, 1.3, 2.4}, 36),
            {FromScreen(190, 60, 50),
             FromScreen(230, 228, 220),
             FromScreen(60, 60, 130),
             FromScreen(40, 40, 40)},
            46,
            out);
  }
  {
    // Narrow zigzag in a tray under lamps on the mains, rolling shutter, 25
    // pictures a second, satin paint.
    LevelShot s;
    s.set = "level-hall";
    s.quick = false;
    s.relief.depth_mm = 4.0;
    s.path.kind = "zigzag";
    s.path.span_mm = 15.0;
    s.path.width_mm = 1.6;
    s.path.volume_ml = 1.3;
    s.look.shape = "tray";
    s.look.pool_half_mm = 40.0;
    s.look.pool_half_y_mm = 30.0;
    s.look.elevation_deg = 64.0;
    s.look.mm_per_px = 0.15;
    s.look.centre_px = {330, 182};
    s.look.roughness = 0.06;
    s.look.lamps = {{20, 62, 8, 1.5}, {150, 58, 8, 1.5}, {265, 66, 8, 1.5}};
    s.camera.fps = 25;
    s.camera.size = {640, 360};
    s.camera.blur_samples = 1;
    s.camera.noise = 7.0;
    s.camera.flicker_depth = 0.1;
    s.camera.lamp_hz = 100.0;
    s.camera.row_readout_s = 0.018;
    PushSet(s,
            MixPalette(1500.0, {0.65, 1.5, 2.2}, 37),
            {FromScreen(40, 80, 60),
             FromScreen(120, 90, 160),
             FromScreen(30, 30, 36),
             FromScreen(210, 130, 110)},
            47,
            out);
  }
  LevelShot m;
  m.set = "mishaps";
  m.role = "mishap";
  m.expect = "refused";
  m.paint = {"base", 1800.0, 1200.0, 0.0325, 1.0, 1.0};
  m.relief.nu_mm2_s = 1800.0;
  m.camera.size = {960, 540};
  m.camera.blur_samples = 1;
  m.look.centre_px = {470, 270};
  m.look.mm_per_px = 0.16;
  m.look.lamps = {{250, 45, 8, 1.6}};
  {
    LevelShot s = m;
    s.file = "level-stirred.mp4";
    s.nuisances = {"stirring"};
    s.path.kind = "stir";
    s.path.lay_start_s = 0.5;
    s.path.laid_s = 5.5;
    s.path.volume_ml = 40.0;
    s.path.width_mm = 3.0;
    s.film_s = 0.5;
    Push(s, out);
  }
  const auto mishap = [&](const char* name, const char* what, auto change) {
    LevelShot s = m;
    s.file = std::string("level-") + name + ".mp4";
    s.nuisances = {what};
    s.expect = "measured or refused";
    s.film_s = 4.0;
    s.relief.depth_mm = 5.0;
    s.camera.size = {640, 360};
    s.look.centre_px = {320, 180};
    s.look.mm_per_px = 0.23;
    change(&s);
    Push(s, out);
  };
  mishap("plain", "none, for comparison", [](LevelShot* s) {
    s->expect = "measured";
  });
  mishap("crossed", "hand crossing while it levels", [](LevelShot* s) {
    s->look.crossing_s = 3.0;
  });
  mishap("lampoff", "lamp goes out while it levels", [](LevelShot* s) {
    s->camera.lamp_off_s = 2.6;
  });
  mishap("zoomed", "lens zooms slowly", [](LevelShot* s) {
    s->camera.zoom_per_s = 0.004;
  });
  mishap("othercup", "another cup in the picture", [](LevelShot* s) {
    s->expect = "measured";
    s->look.other_cup_px = {60, 70};
  });
  mishap("hunting", "lens hunts for focus", [](LevelShot* s) {
    s->camera.hunt_s = 2.3;
  });
  {
    LevelShot s = m;
    s.file = "level-knocked.mp4";
    s.nuisances = {"camera knocked"};
    s.expect = "refused or measured with warning";
    s.camera.knock_s = 2.4;
    s.camera.knock_px = {30, 24};
    Push(s, out);
  }
}

void AddRandomLevelRecipes(unsigned seed, int sets, std::vector<Recipe>* out) {
  for (int i = 0; i < sets; ++i) PushRandomSet(seed, i, out);
}

}  // namespace flowkin::clips
