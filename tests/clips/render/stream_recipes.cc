#include <algorithm>
#include <cmath>
#include <cstdio>
#include <memory>
#include <random>
#include <string>

#include "tests/clips/render/lots.h"
#include "tests/clips/render/recipes.h"
#include "tests/clips/render/stream_scene.h"

namespace flowkin::clips {
namespace {

using testing::StickShape;
using testing::StreamSimOptions;
using testing::StreamSimResult;

struct StreamShot {
  std::string file, set, role = "reference", expect = "measured";
  std::vector<std::string> nuisances;
  Paint paint;
  StreamLook look;
  Camera camera;
  StreamSimOptions sim;
  double lift_s = 1.2;
  StreamStory story = StreamStory::kTest;
  int streams = 1;
  double after_s = 2.2;  ///< filmed past the lasting break
  double film_s = 6.0;   ///< length of the other stories
  bool quick = true;
};

bool Make(const StreamShot& shot,
          const std::string& path,
          nlohmann::json* truth) {
  const double interval =
      1.0 / (shot.camera.fps * std::max(2, shot.camera.blur_samples));
  std::vector<std::unique_ptr<StreamRecord>> records;
  std::vector<const StreamRecord*> seen;
  const bool test = shot.story == StreamStory::kTest;
  for (int i = 0; i < shot.streams; ++i) {
    StreamSimOptions o = shot.sim;
    o.seed += static_cast<std::uint32_t>(i);
    records.push_back(std::make_unique<StreamRecord>(
        o, interval, shot.after_s, test ? 40.0 : 0.1));
    seen.push_back(records.back().get());
  }
  const StreamSimResult& r = records[0]->result();
  if (test && r.break_s < 0.0) {
    std::fprintf(stderr, "%s never breaks\n", shot.file.c_str());
    return false;
  }
  const double film = test ? shot.lift_s + records[0]->end_s() : shot.film_s;
  const int frames = static_cast<int>(film * shot.camera.fps);
  nlohmann::json t = CommonTruth(shot.file,
                                 "stream",
                                 shot.set,
                                 shot.role,
                                 shot.expect,
                                 shot.paint,
                                 shot.camera,
                                 frames);
  t["nuisances"] = shot.nuisances;
  t["mm_per_px"] = shot.look.mm_per_px;
  if (test) {
    // The simulation starts when the edge is a millimetre up.
    const double zero = shot.lift_s + 1.0 / shot.sim.lift_speed_mm_s;
    auto at = [&](double s) {
      return s < 0.0 ? nlohmann::json(nullptr)
                     : nlohmann::json(Rounded(zero + s));
    };
    auto all = [&](const std::vector<double>& times) {
      nlohmann::json list = nlohmann::json::array();
      for (double s : times) list.push_back(at(s));
      return list;
    };
    t["events_true_s"] = {{"lift_s", shot.lift_s},
                          {"break_s", at(r.break_s)},
                          {"lasting_break_s", at(r.lasting_break_s)},
                          {"first_pinch_s", at(r.first_pinch_s)},
                          {"neck_0p2mm_s", at(r.neck_0p2mm_s)},
                          {"neck_0p1mm_s", at(r.neck_0p1mm_s)},
                          {"drips_s", all(r.drips_s)},
                          {"drop_lands_s", all(r.lands_s)}};
    t["break_time_s"] = Rounded(zero + r.break_s - shot.lift_s);
    t["break_window_s"] = {at(r.break_s), at(r.lasting_break_s)};
    t["break_height_mm"] = Rounded(r.break_height_mm);
    nlohmann::json continuity = nlohmann::json::array();
    for (const auto& c : r.continuity) {
      continuity.push_back({at(c.t_s), c.joined ? 1 : 0});
    }
    t["continuity"] = continuity;
    nlohmann::json neck = nlohmann::json::array();
    for (std::size_t i = 0; i < r.samples.size(); i += 5) {
      const auto& s = r.samples[i];
      neck.push_back(
          {at(s.t_s), Rounded(s.neck_radius_mm), Rounded(s.flow_ml_s)});
    }
    t["neck_radius_mm"] = neck;
    t["neck_columns"] = {"t_s", "min_radius_mm", "flow_ml_s"};
    t["lift_speed_m_s"] = Rounded(1e-3 * shot.sim.lift_speed_mm_s);
    t["geometry_mm"] = {
        {"stick", shot.sim.stick == StickShape::kRod ? "rod" : "flat"},
        {"stick_width", shot.sim.stick_width_mm},
        {"stick_thickness", shot.sim.stick_thickness_mm},
        {"wetted_length", Rounded(shot.sim.wetted_length_mm)},
        {"fall_height", Rounded(shot.sim.fall_height_mm)},
        {"edge_radius", shot.sim.edge_radius_mm}};
  }
  StreamScene scene(shot.camera.size, shot.look, seen, shot.lift_s, shot.story);
  *truth = t;
  return Film(&scene, shot.camera, frames, path);
}

void Push(const StreamShot& shot, std::vector<Recipe>* out) {
  out->push_back({shot.file,
                  shot.set,
                  shot.quick,
                  [shot](const std::string& path, nlohmann::json* truth) {
                    return Make(shot, path, truth);
                  }});
}

void PushSet(const StreamShot& plan,
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
    StreamShot shot = plan;
    shot.file = plan.set + "-" + name + ".mp4";
    shot.role = role;
    shot.paint = paint;
    shot.sim.nu_mm2_s = paint.nu_mm2_s;
    shot.sim.rho_kg_m3 = paint.rho_kg_m3;
    shot.sim.sigma_n_m = paint.sigma_n_m;
    shot.sim.wetted_length_mm *= 1.0 + 0.015 * hand(random);
    shot.sim.fall_height_mm *= 1.0 + 0.015 * hand(random);
    shot.sim.lift_speed_mm_s *= 1.0 + 0.04 * hand(random);
    shot.sim.seed = static_cast<std::uint32_t>(random());
    shot.lift_s = Rounded(plan.lift_s + 0.12 * hand(random));
    shot.look.paint = colour;
    shot.look.pool_px += cv::Point2d(3.0 * hand(random), 2.0 * hand(random));
    shot.look.seed = static_cast<std::uint32_t>(random() % 1000);
    shot.camera.seed = static_cast<std::uint32_t>(random());
    if (paint.name == "activator") {
      shot.nuisances = {"low surface tension"};
    }
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

}  // namespace

void AddStreamRecipes(std::vector<Recipe>* out) {
  {
    // Steel rod, blue glove in view, grey wall out of focus.
    StreamShot s;
    s.set = "stream-rod";
    s.sim.stick = StickShape::kRod;
    s.sim.stick_width_mm = 6.0;
    s.sim.edge_radius_mm = 2.2;
    s.sim.largest_coat_mm = 4.0;
    s.sim.wetted_length_mm = 28.0;
    s.sim.fall_height_mm = 58.0;
    s.look.stick = "steel";
    s.look.background = {"speckle",
                         FromScreen(140, 145, 150),
                         FromScreen(120, 128, 140),
                         60.0,
                         0.3};
    s.look.background_blur_px = 9.0;
    s.look.grip_above_mm = 14.0;
    s.look.mm_per_px = 0.19;
    s.look.pool_px = {600, 590};
    s.look.sway_mm = 0.25;
    s.camera.fps = 60;
    s.camera.size = {1280, 720};
    Palette p = MixPalette(450.0, {0.6, 0.85, 1.3, 1.9, 2.8}, 51);
    Paint activator = p.base;
    activator.name = "activator";
    activator.nu_mm2_s *= 0.9;
    activator.sigma_n_m = 0.024;
    activator.ratio_kinematic = activator.ratio_dynamic = 0.9;
    p.cups.push_back(activator);
    PushSet(s,
            p,
            {FromScreen(212, 196, 160),
             FromScreen(40, 110, 120),
             FromScreen(200, 80, 70),
             FromScreen(36, 36, 44),
             FromScreen(235, 205, 70),
             FromScreen(120, 60, 120),
             FromScreen(240, 238, 232)},
            61,
            out);
  }
  {
    // White paint, white cup, white wall, narrow white stick, 30 frames/s.
    StreamShot s;
    s.set = "stream-whites";
    s.sim.stick_width_mm = 7.0;
    s.sim.stick_thickness_mm = 1.6;
    s.sim.edge_radius_mm = 1.5;
    s.sim.wetted_length_mm = 26.0;
    s.sim.fall_height_mm = 38.0;
    s.sim.lift_speed_mm_s = 120.0;
    s.look.stick = "white";
    s.look.background = {"plain",
                         FromScreen(222, 222, 220),
                         FromScreen(212, 212, 212),
                         50.0,
                         0.1};
    s.look.table = {"plain",
                    FromScreen(214, 212, 208),
                    FromScreen(205, 204, 200),
                    60.0,
                    0.1};
    s.look.container = FromScreen(238, 238, 236);
    s.look.grip_above_mm = 0.0;
    s.look.mm_per_px = 0.16;
    s.look.pool_px = {430, 430};
    s.camera.fps = 30;
    s.camera.size = {960, 540};
    s.camera.exposure_share = 0.35;
    PushSet(s,
            MixPalette(900.0, {0.7, 1.5, 2.2}, 52),
            {FromScreen(240, 238, 233),
             FromScreen(236, 232, 224),
             FromScreen(242, 242, 240)},
            62,
            out);
  }
  {
    // Wide white stick, high fall, upright phone, patterned cloth behind.
    StreamShot s;
    s.set = "stream-wide";
    s.quick = false;
    s.sim.stick_width_mm = 19.0;
    s.sim.edge_radius_mm = 2.5;
    s.sim.wetted_length_mm = 32.0;
    s.sim.fall_height_mm = 92.0;
    s.sim.lift_speed_mm_s = 210.0;
    s.look.stick = "white";
    s.look.background = {"stripes",
                         FromScreen(170, 140, 120),
                         FromScreen(120, 140, 150),
                         34.0,
                         0.5};
    s.look.grip_above_mm = 16.0;
    s.look.glove = FromScreen(40, 40, 44);
    s.look.mm_per_px = 0.17;
    s.look.pool_px = {380, 950};
    s.look.sway_mm = 0.4;
    s.camera.fps = 60;
    s.camera.size = {720, 1280};
    s.camera.sway_px = 0.7;
    PushSet(s,
            MixPalette(330.0, {0.55, 1.25, 3.3}, 53),
            {FromScreen(60, 70, 110),
             FromScreen(190, 90, 60),
             FromScreen(230, 226, 215),
             FromScreen(30, 32, 34)},
            63,
            out);
  }
  {
    // Dark paint against a dark wall, wooden rod, tin, 120 frames/s.
    StreamShot s;
    s.set = "stream-dark";
    s.quick = false;
    s.sim.stick = StickShape::kRod;
    s.sim.stick_width_mm = 9.0;
    s.sim.edge_radius_mm = 2.8;
    s.sim.largest_coat_mm = 4.0;
    s.sim.wetted_length_mm = 24.0;
    s.sim.fall_height_mm = 45.0;
    s.look.background = {
        "cloth", FromScreen(58, 56, 62), FromScreen(44, 44, 50), 40.0, 0.1};
    s.look.table = {
        "plain", FromScreen(60, 58, 56), FromScreen(50, 48, 46), 60.0, 0.1};
    s.look.container = FromScreen(128, 130, 134);
    s.look.taper = 1.0;
    s.look.body_mm = 45.0;
    s.look.grip_above_mm = 0.0;
    s.look.mm_per_px = 0.19;
    s.look.pool_px = {560, 430};
    s.camera.fps = 120;
    s.camera.size = {960, 540};
    s.camera.blur_samples = 1;
    s.camera.noise = 7.0;
    PushSet(s,
            MixPalette(240.0, {0.75, 1.6}, 54),
            {FromScreen(34, 34, 38),
             FromScreen(26, 28, 46),
             FromScreen(50, 30, 32)},
            64,
            out);
  }
  {
    // 1080p at 30 frames/s, stream far left of the middle, checked cloth.
    StreamShot s;
    s.set = "stream-offside";
    s.quick = false;
    s.sim.stick_width_mm = 12.0;
    s.sim.wetted_length_mm = 34.0;
    s.sim.fall_height_mm = 66.0;
    s.look.background = {"check",
                         FromScreen(200, 190, 175),
                         FromScreen(150, 165, 150),
                         80.0,
                         0.5};
    s.look.background_blur_px = 3.0;
    s.look.grip_above_mm = 0.0;
    s.look.mm_per_px = 0.13;
    s.look.pool_px = {520, 880};
    s.look.sway_mm = 0.3;
    s.camera.fps = 30;
    s.camera.size = {1920, 1080};
    s.camera.crf = 20;
    PushSet(s,
            MixPalette(620.0, {0.8, 1.4}, 55),
            {FromScreen(200, 120, 130),
             FromScreen(90, 130, 90),
             FromScreen(60, 60, 70)},
            65,
            out);
  }
  StreamShot m;
  m.set = "mishaps";
  m.role = "mishap";
  m.expect = "refused";
  m.paint = {"base", 400.0, 1200.0, 0.0325, 1.0, 1.0};
  m.sim.nu_mm2_s = 400.0;
  m.look.mm_per_px = 0.21;
  m.look.pool_px = {470, 430};
  m.look.grip_above_mm = 12.0;
  m.look.paint = FromScreen(70, 120, 150);
  m.camera.fps = 30;
  m.camera.size = {960, 540};
  m.camera.blur_samples = 2;
  {
    StreamShot s = m;
    s.file = "stream-stirring.mp4";
    s.nuisances = {"stirring"};
    s.story = StreamStory::kStirring;
    s.sim.fall_height_mm = 50;
    Push(s, out);
  }
  {
    StreamShot s = m;
    s.file = "stream-hand-only.mp4";
    s.nuisances = {"hand only"};
    s.story = StreamStory::kHandOnly;
    Push(s, out);
  }
  {
    StreamShot s = m;
    s.file = "stream-table-only.mp4";
    s.nuisances = {"table only"};
    s.story = StreamStory::kTableOnly;
    s.film_s = 5.0;
    Push(s, out);
  }
  {
    StreamShot s = m;
    s.file = "stream-two.mp4";
    s.nuisances = {"two streams"};
    s.streams = 2;
    s.sim.stick_width_mm = 8.0;
    s.look.grip_above_mm = 0.0;
    Push(s, out);
  }
  {
    StreamShot s = m;
    s.file = "stream-knocked.mp4";
    s.nuisances = {"camera knocked"};
    s.expect = "refused or measured with warning";
    s.camera.knock_s = 3.2;
    s.camera.knock_px = {-42, 17};
    Push(s, out);
  }
}

void AddRandomStreamRecipes(unsigned seed, int sets, std::vector<Recipe>* out) {
  Lots lots(seed), askew(seed + 1);
  auto spread = [&](double low, double high) {
    return low * std::pow(high / low, lots.Between(0.0, 1.0));
  };
  auto colour = [&](double low, double high) {
    const double level = lots.Between(low, high);
    const auto part = [&] {
      return static_cast<int>(
          std::clamp(level + lots.Between(-50.0, 50.0), 12.0, 244.0));
    };
    const int r = part(), g = part(), b = part();
    return FromScreen(r, g, b);
  };
  for (int i = 0; i < sets; ++i) {
    StreamShot s;
    s.set = "stream-random-" + std::to_string(seed) + "-" + std::to_string(i);
    s.quick = false;
    if (lots.Between(0.0, 1.0) < 0.25) {
      s.sim.stick = StickShape::kRod;
      s.sim.stick_width_mm = lots.Between(5.0, 10.0);
      s.sim.largest_coat_mm = 4.0;
      s.look.stick = lots.OneOf("wood", "steel", "dark");
    } else {
      s.sim.stick_width_mm = lots.Between(6.0, 20.0);
      s.sim.stick_thickness_mm = lots.Between(1.5, 2.5);
      s.look.stick = lots.OneOf("wood", "wood", "white", "dark");
    }
    s.sim.edge_radius_mm =
        std::min(lots.Between(1.7, 3.0), 0.45 * s.sim.stick_width_mm);
    s.sim.wetted_length_mm = lots.Between(22.0, 48.0);
    s.sim.fall_height_mm = lots.Between(35.0, 90.0);
    s.sim.lift_speed_mm_s = lots.Between(110.0, 220.0);
    const auto surface = [&] {
      const char* kind =
          lots.OneOf("plain", "plain", "wood", "speckle", "cloth", "check");
      const Light first = colour(30.0, 235.0), second = colour(30.0, 235.0);
      const double feature_px = lots.Between(25.0, 90.0);
      return Surface{kind, first, second, feature_px, lots.Between(0.05, 0.35)};
    };
    s.look.background = surface();
    s.look.background_blur_px = lots.Between(0.0, 8.0);
    s.look.table = surface();
    s.look.container = colour(90.0, 240.0);
    s.look.glove = colour(30.0, 200.0);
    s.look.grip_above_mm = lots.OneOf(0.0, 14.0, 30.0, 55.0);
    s.look.hand_from_right = lots.Between(0.0, 1.0) < 0.5;
    s.look.elevation_deg = lots.Between(8.0, 20.0);
    s.look.sway_mm = lots.Between(0.0, 0.4);
    s.look.gloss = lots.Between(0.3, 1.2);
    s.camera.size = lots.OneOf(cv::Size(960, 540),
                               cv::Size(1280, 720),
                               cv::Size(1920, 1080),
                               cv::Size(720, 1280));
    s.camera.fps = lots.OneOf(24.0, 25.0, 30.0, 30.0, 50.0, 60.0, 60.0);
    s.camera.exposure_share = lots.Between(0.2, 0.7);
    s.camera.noise = lots.Between(2.0, 7.0);
    s.camera.sharpen = lots.Between(0.2, 0.8);
    s.camera.lens_blur_px = lots.Between(0.5, 1.1);
    s.camera.sway_px = lots.Between(0.0, 0.8);
    s.camera.cast_blue = lots.Between(0.9, 1.1);
    s.camera.cast_red = lots.Between(0.9, 1.1);
    s.camera.crf = lots.OneOf(17, 20, 23, 26);
    if (lots.Between(0.0, 1.0) < 0.4) {
      s.camera.flicker_depth = lots.Between(0.02, 0.10);
      s.camera.lamp_hz = lots.OneOf(100.0, 120.0);
      s.camera.row_readout_s = lots.Between(0.0, 0.02);
    }
    // The fall takes between a third and half of the picture's height.
    const double height_px = s.camera.size.height;
    s.look.mm_per_px =
        s.sim.fall_height_mm / (lots.Between(0.33, 0.5) * height_px);
    s.look.pool_px = {lots.Between(0.35, 0.65) * s.camera.size.width,
                      lots.Between(0.72, 0.82) * height_px};
    s.look.stick_lean = askew.OneOf(0.0, askew.Between(-0.1, 0.1));
    s.camera.roll_deg = askew.OneOf(0.0, askew.Between(-4.0, 4.0));
    const Palette palette =
        MixPalette(spread(250.0, 900.0),
                   {spread(0.6, 0.9), spread(1.1, 1.5), spread(1.6, 2.8)},
                   lots.Seed());
    PushSet(s,
            palette,
            {colour(20.0, 240.0),
             colour(20.0, 240.0),
             colour(20.0, 240.0),
             colour(20.0, 240.0)},
            lots.Seed(),
            out);
  }
}

}  // namespace flowkin::clips
