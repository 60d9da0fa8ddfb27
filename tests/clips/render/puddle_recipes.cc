#include <cmath>
#include <random>

#include "tests/clips/render/lots.h"
#include "tests/clips/render/puddle_scene.h"
#include "tests/clips/render/recipes.h"

namespace flowkin::clips {
namespace {

using testing::PuddleHistory;
using testing::RunPuddle;
using testing::SpreadingPuddleOptions;

struct PuddleShot {
  std::string file, set, role = "reference", expect = "measured";
  std::vector<std::string> nuisances;
  Paint paint;
  PuddleLook look;
  Camera camera;
  SpreadingPuddleOptions spread;
  double film_s = 10.0;  ///< after the first paint
  bool give_scale = true;
  bool quick = true;
};

bool Make(const PuddleShot& shot,
          const std::string& path,
          nlohmann::json* truth) {
  const int frames = static_cast<int>(
      std::lround((shot.look.start_s + shot.film_s) * shot.camera.fps));
  nlohmann::json t = CommonTruth(shot.file,
                                 "puddle",
                                 shot.set,
                                 shot.role,
                                 shot.expect,
                                 shot.paint,
                                 shot.camera,
                                 frames);
  t["nuisances"] = shot.nuisances;
  t["mm_per_px"] = shot.look.mm_per_px;
  t["volume_ml"] = Rounded(shot.spread.volume_ml);
  // The person doses by the mark on the syringe, not by what came out.
  const double stated = std::round(shot.spread.volume_ml * 10.0) / 10.0;
  t["measure_args"]["volume_ml"] = stated;
  t["measure_args"]["mm_per_px"] = shot.give_scale
                                       ? nlohmann::json(shot.look.mm_per_px)
                                       : nlohmann::json(nullptr);
  const PuddleHistory run = RunPuddle(shot.spread, shot.film_s, 0.1);
  nlohmann::json radius = nlohmann::json::array();
  for (std::size_t i = 1; i < run.t_s.size(); i += 2) {
    radius.push_back(
        {Rounded(run.t_s[i] + shot.look.start_s), Rounded(run.radius_mm[i])});
  }
  t["radius_mm"] = radius;
  t["events_true_s"] = {
      {"start_s", shot.look.start_s},
      {"pour_end_s", Rounded(shot.look.start_s + shot.spread.pour_s)},
      {"virtual_start_s", Rounded(shot.look.start_s + run.virtual_start_s)}};
  PuddleScene scene(shot.camera.size, shot.look, shot.spread);
  *truth = t;
  return Film(&scene, shot.camera, frames, path);
}

void Push(const PuddleShot& shot, std::vector<Recipe>* out) {
  out->push_back({shot.file,
                  shot.set,
                  shot.quick,
                  [shot](const std::string& path, nlohmann::json* truth) {
                    return Make(shot, path, truth);
                  }});
}

/// Three repeats of the base coat and the cups, with a hand's scatter.
void PushSet(const PuddleShot& plan,
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
    PuddleShot shot = plan;
    shot.role = role;
    shot.file = plan.set + "-" + name + ".mp4";
    shot.paint = paint;
    shot.spread.nu_mm2_s = paint.nu_mm2_s;
    shot.spread.rho_kg_m3 = paint.rho_kg_m3;
    shot.spread.volume_ml *= 1.0 + 0.006 * hand(random);
    shot.spread.pour_s *= 1.0 + 0.08 * hand(random);
    shot.look.paint = colour;
    shot.look.start_s = Rounded(plan.look.start_s + 0.12 * hand(random));
    shot.look.centre_mm += cv::Point2d(2.0 * hand(random), 2.0 * hand(random));
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
  PuddleShot s;
  s.set = "puddle-random-" + std::to_string(seed) + "-" + std::to_string(i);
  s.quick = false;
  s.spread.volume_ml = lots.Between(1.5, 8.0);
  s.spread.pour_s = lots.Between(0.6, 2.5);
  s.spread.nozzle_radius_mm = lots.Between(2.0, 5.0);
  s.camera.size = lots.OneOf(cv::Size(640, 360), cv::Size(480, 640));
  s.camera.fps = lots.OneOf(24.0, 25.0, 30.0);
  s.camera.blur_samples = 1;
  s.camera.noise = lots.Between(2.0, 9.0);
  s.camera.crf = lots.OneOf(18, 22, 27);
  s.camera.sway_px = lots.OneOf(0.0, 0.0, 0.5, 1.2);
  s.camera.flicker_depth = lots.OneOf(0.0, 0.0, 0.06, 0.12);
  s.camera.lamp_hz = lots.OneOf(100.0, 120.0);
  s.camera.row_readout_s = lots.Between(0.006, 0.025);
  s.camera.cast_red = lots.Between(0.9, 1.12);
  s.camera.cast_blue = lots.Between(0.9, 1.12);
  const double height = 2.0 * (s.camera.size.height > 500 ? 52.0 : 42.0);
  s.look.mm_per_px = lots.Between(0.8, 1.3) * height / s.camera.size.height;
  s.look.tile = {lots.OneOf("plain", "plain", "speckle", "veins", "wood"),
                 lots.Colour(50, 235),
                 lots.Colour(60, 220),
                 lots.Between(6.0, 60.0),
                 lots.Between(0.05, 0.4)};
  s.look.table = {lots.OneOf("wood", "print", "cloth", "veins", "check"),
                  lots.Colour(60, 230),
                  lots.Colour(40, 220),
                  lots.Between(10.0, 50.0),
                  lots.Between(0.1, 0.4)};
  s.look.tile_half_mm = {lots.Between(42, 75), lots.Between(38, 60)};
  s.look.centre_mm = {lots.Between(-9, 9), lots.Between(-6, 6)};
  s.look.pitch_deg = lots.Between(-5.0, 5.0);
  s.look.gloss = lots.Between(0.3, 1.8);
  s.look.lamps.clear();
  for (int lamp = lots.OneOf(1, 1, 2, 3); lamp > 0; --lamp) {
    s.look.lamps.push_back({lots.Between(0, 360),
                            lots.Between(35, 75),
                            lots.Between(4, 15),
                            lots.Between(0.5, 1.4)});
  }
  s.look.pourer = lots.OneOf("cup", "syringe");
  s.look.seed = lots.Seed();
  s.film_s = lots.Between(7.0, 12.0);
  if (i % 3 == 0) s.look.other_cup_mm = {-46, lots.Between(-20, 20)};
  const double low = lots.Between(0.55, 0.95), high = lots.Between(1.1, 3.3);
  const double nu = lots.Between(300.0, 1500.0);
  const Palette palette = MixPalette(nu, {low, high}, lots.Seed());
  const std::vector<Light> colours{
      lots.Colour(30, 230), lots.Colour(20, 240), lots.Colour(20, 240)};
  PushSet(s, palette, colours, lots.Seed(), out);
}

}  // namespace

void AddPuddleRecipes(std::vector<Recipe>* out) {
  {
    // White glazed tile, no ruler, scale given, poured from a small cup.
    PuddleShot s;
    s.set = "puddle-white";
    s.spread.volume_ml = 5.0;
    s.spread.pour_s = 1.6;
    s.spread.nozzle_radius_mm = 4.0;
    s.look.mm_per_px = 0.17;
    s.look.lamps = {{215, 55, 7, 1.0}, {330, 40, 5, 0.6}};
    s.camera.fps = 30;
    s.camera.size = {1280, 720};
    s.camera.blur_samples = 1;
    s.camera.noise = 4.5;
    PushSet(s,
            MixPalette(700.0, {0.55, 0.82, 1.3, 2.2}, 11),
            {FromScreen(225, 205, 120),
             FromScreen(30, 120, 125),
             FromScreen(215, 95, 80),
             FromScreen(35, 35, 45),
             FromScreen(238, 210, 60)},
            21,
            out);
  }
  {
    // Dark slate, ruler upright at the left, camera a little off the vertical,
    // puddle off the middle, dosed by syringe.
    PuddleShot s;
    s.set = "puddle-slate";
    s.quick = false;
    s.spread.volume_ml = 3.0;
    s.spread.pour_s = 1.1;
    s.look.tile = {
        "speckle", FromScreen(62, 64, 68), FromScreen(80, 82, 86), 9.0, 0.3};
    s.look.table = {
        "cloth", FromScreen(96, 104, 120), FromScreen(80, 88, 100), 40.0, 0.1};
    s.look.ruler = "vertical";
    s.look.mm_per_px = 0.2;
    s.look.centre_mm = {14, -6};
    s.look.pitch_deg = 3.0;
    s.look.pourer = "syringe";
    s.look.gloss = 1.3;
    s.look.lamps = {{160, 48, 10, 1.2}};
    s.give_scale = false;
    s.camera.fps = 30;
    s.camera.size = {960, 540};
    s.camera.blur_samples = 1;
    s.camera.noise = 5.0;
    s.camera.cast_red = 1.08;
    PushSet(s,
            MixPalette(480.0, {0.7, 1.6, 2.8}, 12),
            {FromScreen(235, 230, 220),
             FromScreen(70, 150, 90),
             FromScreen(170, 80, 140),
             FromScreen(240, 240, 236)},
            22,
            out);
  }
  {
    // Terracotta seen by an upright phone, a large puddle of thick paint.
    PuddleShot s;
    s.set = "puddle-terracotta";
    s.quick = false;
    s.spread.volume_ml = 9.0;
    s.spread.pour_s = 2.6;
    s.spread.nozzle_radius_mm = 5.0;
    s.look.tile = {
        "plain", FromScreen(188, 112, 82), FromScreen(165, 92, 64), 30.0, 0.2};
    s.look.table = {
        "check", FromScreen(230, 228, 220), FromScreen(190, 60, 60), 46.0, 0.4};
    s.look.tile_half_mm = {52, 80};
    s.look.mm_per_px = 0.165;
    s.look.lamps = {{250, 60, 6, 0.8}, {20, 50, 6, 0.8}, {130, 65, 5, 0.5}};
    s.camera.fps = 60;
    s.camera.size = {720, 1280};
    s.camera.blur_samples = 1;
    s.camera.noise = 3.5;
    s.camera.sway_px = 0.6;
    s.film_s = 9.0;
    PushSet(s,
            MixPalette(1500.0, {0.6, 1.25, 3.0}, 13),
            {FromScreen(240, 236, 225),
             FromScreen(40, 70, 150),
             FromScreen(205, 150, 120),
             FromScreen(28, 30, 34)},
            23,
            out);
  }
  {
    // Dark paint on dark stone under one hard lamp on the mains, a small phone
    // picture, rolling shutter.
    PuddleShot s;
    s.set = "puddle-night";
    s.quick = false;
    s.spread.volume_ml = 1.0;
    s.spread.pour_s = 0.9;
    s.look.tile = {
        "speckle", FromScreen(48, 46, 50), FromScreen(62, 60, 64), 7.0, 0.3};
    s.look.table = {
        "plain", FromScreen(40, 36, 34), FromScreen(30, 28, 26), 50.0, 0.2};
    s.look.ruler = "horizontal";
    s.look.mm_per_px = 0.2;
    s.look.tile_half_mm = {58, 34};
    s.look.centre_mm = {3, -11};
    s.look.pourer = "syringe";
    s.look.gloss = 1.7;
    s.look.lamps = {{240, 42, 6, 1.4}};
    s.give_scale = false;
    s.film_s = 9.0;
    s.camera.fps = 30;
    s.camera.size = {640, 360};
    s.camera.blur_samples = 1;
    s.camera.noise = 6.0;
    s.camera.flicker_depth = 0.12;
    s.camera.lamp_hz = 100.0;
    s.camera.row_readout_s = 0.02;
    PushSet(s,
            MixPalette(520.0, {0.75, 1.5, 2.4}, 14),
            {FromScreen(22, 24, 30),
             FromScreen(30, 40, 90),
             FromScreen(90, 24, 34),
             FromScreen(26, 70, 60)},
            24,
            out);
  }
  {
    // Checked tile seen 6 degrees askew, a large pour that takes long, 25
    // pictures a second, much compression.
    PuddleShot s;
    s.set = "puddle-checks";
    s.quick = false;
    s.spread.volume_ml = 10.0;
    s.spread.pour_s = 4.0;
    s.spread.nozzle_radius_mm = 4.0;
    s.look.tile = {
        "check", FromScreen(206, 204, 196), FromScreen(150, 158, 160), 36, 0.4};
    s.look.mm_per_px = 0.22;
    s.look.pitch_deg = 6.0;
    s.look.lamps = {{60, 50, 14, 0.9}, {190, 62, 5, 0.7}};
    s.film_s = 14.0;
    s.camera.fps = 25;
    s.camera.size = {854, 480};
    s.camera.blur_samples = 1;
    s.camera.crf = 27;
    PushSet(s,
            MixPalette(900.0, {0.6, 1.35, 2.0}, 15),
            {FromScreen(120, 60, 140),
             FromScreen(230, 228, 222),
             FromScreen(200, 80, 40),
             FromScreen(36, 60, 50)},
            25,
            out);
  }
  {
    // A small puddle of rather thin paint far from the camera, hand-held, under
    // a lamp at 120 Hz.
    PuddleShot s;
    s.set = "puddle-far";
    s.quick = false;
    s.spread.volume_ml = 2.0;
    s.spread.pour_s = 0.8;
    s.look.tile = {
        "wood", FromScreen(186, 150, 108), FromScreen(150, 112, 76), 60.0, 0.4};
    s.look.mm_per_px = 0.3;
    s.look.centre_mm = {-20, 9};
    s.look.lamps = {{300, 65, 10, 1.0}};
    s.film_s = 8.0;
    s.camera.fps = 30;
    s.camera.size = {640, 360};
    s.camera.blur_samples = 1;
    s.camera.noise = 5.0;
    s.camera.sway_px = 0.7;
    s.camera.flicker_depth = 0.08;
    s.camera.lamp_hz = 120.0;
    s.camera.row_readout_s = 0.015;
    PushSet(s,
            MixPalette(300.0, {0.7, 1.4, 2.5}, 16),
            {FromScreen(240, 238, 230),
             FromScreen(50, 90, 60),
             FromScreen(230, 190, 60),
             FromScreen(150, 40, 60)},
            26,
            out);
  }
  // Mishaps and hard cases, one clip each.
  PuddleShot m;
  m.set = "mishaps";
  m.role = "mishap";
  m.paint = {"base", 700.0, 1200.0, 0.0325, 1.0, 1.0};
  m.spread.nu_mm2_s = 700.0;
  m.spread.volume_ml = 4.0;
  m.spread.nozzle_radius_mm = 4.0;
  m.look.mm_per_px = 0.2;
  m.look.paint = FromScreen(60, 90, 160);
  m.camera.fps = 30;
  m.camera.size = {960, 540};
  m.camera.blur_samples = 1;
  {
    PuddleShot s = m;
    s.file = "puddle-tilted.mp4";
    s.nuisances = {"tile off level"};
    s.expect = "refused or measured with warning";
    s.look.creep_mm_s = 2.5;
    Push(s, out);
  }
  {
    PuddleShot s = m;
    s.file = "puddle-stops.mp4";
    s.nuisances = {"yield stress"};
    s.expect = "refused or measured with warning";
    s.spread.yield_pa = 6.0;
    Push(s, out);
  }
  {
    PuddleShot s = m;
    s.file = "puddle-knocked.mp4";
    s.nuisances = {"camera knocked"};
    s.expect = "refused or measured with warning";
    s.camera.knock_s = 5.0;
    s.camera.knock_px = {38, -21};
    Push(s, out);
  }
  const auto mishap = [&](const char* name, const char* what, auto change) {
    PuddleShot s = m;
    s.file = std::string("puddle-") + name + ".mp4";
    s.nuisances = {what};
    s.expect = "refused or measured with warning";
    s.camera.size = {640, 360};
    s.look.mm_per_px = 0.3;
    change(&s);
    Push(s, out);
  };
  mishap("again", "second pour on the first", [](PuddleShot* s) {
    s->spread.again_s = 5.0;
  });
  mishap("pushed", "tile pushed", [](PuddleShot* s) { s->look.push_s = 6.0; });
  mishap("crossed", "hand crossing", [](PuddleShot* s) {
    s->expect = "measured or refused";
    s->look.crossing_s = 6.0;
  });
  mishap("lampoff", "lamp goes out", [](PuddleShot* s) {
    s->expect = "measured or refused";
    s->camera.lamp_off_s = 6.0;
  });
  mishap("hunting", "lens hunts for focus", [](PuddleShot* s) {
    s->expect = "measured or refused";
    s->camera.hunt_s = 4.0;
  });
  mishap("zoomed", "lens zooms slowly", [](PuddleShot* s) {
    s->camera.zoom_per_s = 0.0015;
  });
  mishap("othercup", "another cup in the picture", [](PuddleShot* s) {
    s->expect = "measured";
    s->look.other_cup_mm = {-58, -12};
  });
  mishap("border", "puddle at the picture's border", [](PuddleShot* s) {
    s->look.centre_mm = {20, 32};
  });
  mishap("covered", "marks partly covered", [](PuddleShot* s) {
    s->expect = "measured";
    s->give_scale = false;
    s->look.ruler = "horizontal";
    s->look.mm_per_px = 0.2;
    s->camera.size = {960, 540};
    s->look.ruler_covered = 0.35;
  });
  {
    PuddleShot s = m;
    s.file = "puddle-faint.mp4";
    s.nuisances = {"paint like the tile"};
    s.expect = "measured or refused";
    s.look.paint = FromScreen(219, 215, 206);
    Push(s, out);
  }
}

void AddRandomPuddleRecipes(unsigned seed, int sets, std::vector<Recipe>* out) {
  for (int i = 0; i < sets; ++i) PushRandomSet(seed, i, out);
}

}  // namespace flowkin::clips
