#include "tests/clips/render/level_scene.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace flowkin::clips {
namespace {

constexpr double kStepS = 1.0 / 240.0;

double Radians(double deg) { return deg * CV_PI / 180.0; }

}  // namespace

cv::Point2d RibbonPath::At(double s) const {
  cv::Point2d p(0, 0);
  const double a = span_mm;
  if (kind == "line") {
    p = {a * (2 * s - 1), 0.15 * a * std::sin(9.0 * s)};
  } else if (kind == "zigzag") {
    const double legs = 5.0;
    const double w = std::abs(std::fmod(s * legs, 2.0) - 1.0);
    p = {a * (2 * s - 1), 0.75 * a * (2 * w - 1)};
  } else if (kind == "spiral") {
    const double angle = 2 * CV_PI * 2.5 * s;
    p = {a * (0.15 + 0.85 * s) * std::cos(angle),
         a * (0.15 + 0.85 * s) * std::sin(angle)};
  } else if (kind == "ring" || kind == "stir") {
    const double angle = 2 * CV_PI * s;
    p = {a * std::cos(angle), a * std::sin(angle)};
  }
  const double c = std::cos(Radians(turn_deg)), n = std::sin(Radians(turn_deg));
  return centre_mm + cv::Point2d(c * p.x - n * p.y, n * p.x + c * p.y);
}

void LayAndLevel(const RibbonPath& path,
                 double from_s,
                 double to_s,
                 testing::LevellingRelief* relief) {
  const double whole = path.laid_s - path.lay_start_s;
  double t = from_s;
  while (t < to_s - 1e-9) {
    const bool laying = t < path.laid_s && t + kStepS > path.lay_start_s;
    double dt = to_s - t;
    if (laying) {
      dt = std::min(kStepS, dt);
    } else if (t < path.lay_start_s) {
      dt = std::min(dt, path.lay_start_s - kStepS / 2 - t);
      if (dt <= 0.0) dt = std::min(kStepS, to_s - t);
    }
    const double a = std::max(t, path.lay_start_s);
    const double b = std::min(t + dt, path.laid_s);
    if (b > a) {
      const double volume = path.volume_ml * 1e3 * (b - a) / whole;
      if (path.kind == "stir") {
        // A stick pushes a wave before it and leaves a trough behind.
        const double s = 2.5 * (0.5 * (a + b) - path.lay_start_s);
        const cv::Point2d at = path.At(s), ahead = path.At(s + 0.03);
        relief->Lay(ahead.x, ahead.y, 0.8 * volume, path.width_mm);
        relief->Lay(at.x, at.y, -0.8 * volume, path.width_mm);
      } else {
        const cv::Point2d at =
            path.At((0.5 * (a + b) - path.lay_start_s) / whole);
        relief->Lay(at.x, at.y, volume, path.width_mm);
      }
    }
    relief->Level(dt);
    t += dt;
  }
}

LevelScene::LevelScene(cv::Size size,
                       const LevelLook& look,
                       const RibbonPath& path,
                       const testing::LevellingReliefOptions& paint)
    : size_(size), look_(look), path_(path), relief_(paint) {
  const double e = std::sin(Radians(look_.elevation_deg));
  const double s = 1.0 / look_.mm_per_px;
  const double half_y =
      look_.shape == "cup" ? look_.pool_half_mm : look_.pool_half_y_mm;
  pool_ =
      cv::Rect(static_cast<int>(look_.centre_px.x - look_.pool_half_mm * s) - 2,
               static_cast<int>(look_.centre_px.y - half_y * e * s) - 2,
               static_cast<int>(2 * look_.pool_half_mm * s) + 5,
               static_cast<int>(2 * half_y * e * s) + 5) &
      cv::Rect({0, 0}, size_);
  pool_mask_ = EmptyMask(size_);
  if (look_.shape == "cup") {
    FillEllipse(&pool_mask_,
                look_.centre_px,
                look_.pool_half_mm * s,
                look_.pool_half_mm * e * s);
  } else {
    const double hx = look_.pool_half_mm * s, hy = half_y * e * s;
    FillPolygon(&pool_mask_,
                {look_.centre_px + cv::Point2d(-hx, -hy),
                 look_.centre_px + cv::Point2d(hx, -hy),
                 look_.centre_px + cv::Point2d(hx, hy),
                 look_.centre_px + cv::Point2d(-hx, hy)});
  }
  map_x_.create(pool_.size(), CV_32F);
  map_y_.create(pool_.size(), CV_32F);
  const double cell = relief_.CellMm();
  const double field = relief_.options().field_mm;
  for (int y = 0; y < pool_.height; ++y) {
    for (int x = 0; x < pool_.width; ++x) {
      const double mx = (pool_.x + x - look_.centre_px.x) * look_.mm_per_px;
      const double my = (pool_.y + y - look_.centre_px.y) * look_.mm_per_px / e;
      map_x_.at<float>(y, x) =
          static_cast<float>((mx + 0.5 * field) / cell - 0.5);
      map_y_.at<float>(y, x) =
          static_cast<float>((my + 0.5 * field) / cell - 0.5);
    }
  }
}

cv::Point2d LevelScene::ToPixel(cv::Point3d mm) const {
  const double e = Radians(look_.elevation_deg);
  return look_.centre_px +
         cv::Point2d(mm.x, mm.y * std::sin(e) - mm.z * std::cos(e)) /
             look_.mm_per_px;
}

cv::Mat3f LevelScene::Background() {
  cv::Mat3f picture = PaintSurface(size_, look_.table, look_.seed);
  const double e = Radians(look_.elevation_deg);
  const double s = 1.0 / look_.mm_per_px;
  auto fill = [&](const cv::Mat1b& mask, Light c) { Blend(&picture, mask, c); };
  for (const auto& [radius, colour] :
       {std::pair(30.0, look_.container), std::pair(26.0, look_.paint)}) {
    cv::Mat1b mask = EmptyMask(size_);
    FillEllipse(
        &mask, look_.other_cup_px, radius * s, radius * s * std::sin(e));
    fill(mask, colour);
  }
  if (look_.shape == "cup") {
    const double rim = look_.pool_half_mm + 2.5;
    const double above = 9.0;  // rim over the paint
    const cv::Point2d top = ToPixel({0, 0, above});
    const cv::Point2d foot = ToPixel({0, 0, -70});
    cv::Mat1b mask = EmptyMask(size_);
    FillEllipse(&mask,
                foot + cv::Point2d(12, 6),
                rim * 0.9 * s,
                rim * 0.9 * s * std::sin(e));
    Shade(&picture, mask, 14, 0.5);
    // Outside of the cup, tapering down.
    mask.setTo(0);
    FillPolygon(&mask,
                {top + cv::Point2d(-rim * s, 0),
                 top + cv::Point2d(rim * s, 0),
                 foot + cv::Point2d(rim * 0.75 * s, 0),
                 foot + cv::Point2d(-rim * 0.75 * s, 0)});
    fill(mask, look_.container * 0.75f);
    mask.setTo(0);
    FillEllipse(&mask, top, rim * s, rim * std::sin(e) * s);
    fill(mask, look_.container);
    mask.setTo(0);
    FillEllipse(&mask, top, (rim - 1.6) * s, (rim - 1.6) * std::sin(e) * s);
    fill(mask, look_.container * 0.6f);
  } else {
    const double hx = look_.pool_half_mm + 3, hy = look_.pool_half_y_mm + 3;
    auto rectangle = [&](double grow, double z) {
      cv::Mat1b mask = EmptyMask(size_);
      FillPolygon(&mask,
                  {ToPixel({-hx - grow, -hy - grow, z}),
                   ToPixel({hx + grow, -hy - grow, z}),
                   ToPixel({hx + grow, hy + grow, z}),
                   ToPixel({-hx - grow, hy + grow, z})});
      return mask;
    };
    Shade(&picture, rectangle(4.0, -6.0), 10, 0.4);
    fill(rectangle(0.0, 4.0), look_.container);
    fill(rectangle(-2.0, 3.0), look_.container * 0.7f);
  }
  return picture;
}

cv::Rect LevelScene::Region(double t) const {
  const bool crossed =
      look_.crossing_s >= 0.0 && std::abs(t - look_.crossing_s) < 0.7;
  if (!crossed && (t < path_.lay_start_s - 0.7 || t > path_.laid_s + 0.35)) {
    return pool_;
  }
  return {{0, 0}, size_};
}

void LevelScene::DrawLayer(double t, cv::Mat3f* picture) const {
  const double begin = path_.lay_start_s, end = path_.laid_s;
  double away = 0.0;
  if (t < begin - 0.05) {
    away = std::min(1.0, (begin - 0.05 - t) / 0.6);
  } else if (t > end) {
    away = std::min(1.0, (t - end) / 0.3);
  }
  if (away >= 1.0) return;
  const double whole = end - begin;
  double share = std::clamp((t - begin) / whole, 0.0, 1.0);
  if (path_.kind == "stir") share = 2.5 * std::clamp(t - begin, 0.0, whole);
  const cv::Point2d foot = path_.At(share);
  const double lag = std::max(0.0, share - 0.02);
  const cv::Point2d hand = path_.At(path_.kind == "stir" ? share : lag);
  const double lift = path_.kind == "stir" ? 0.0 : 32.0;
  const double s = 1.0 / look_.mm_per_px;
  const cv::Point3d tip(hand.x + 1.5, hand.y, lift + 90.0 * away);
  cv::Mat1b mask = EmptyMask(size_);
  const bool pouring = t >= begin && t < end && path_.kind != "stir";
  if (pouring) {
    FillCapsule(&mask, ToPixel({foot.x, foot.y, 0}), ToPixel(tip), 0.55 * s);
    Blend(picture, mask, look_.paint * 0.85f);
    mask.setTo(0);
    FillCapsule(&mask,
                ToPixel({foot.x - 0.3, foot.y, 0}),
                ToPixel(tip + cv::Point3d(-0.3, 0, 0)),
                0.12 * s);
    Blend(picture, mask, Light(0.8f, 0.8f, 0.8f), 0.5);
  }
  const Light wood = FromScreen(190, 150, 100);
  if (look_.layer == "stick" || path_.kind == "stir") {
    // Leaning away from the viewer, so that it clears the pool.
    const cv::Point3d lean(45, -70, 60);
    const cv::Point3d top = tip + lean * 1.6;
    mask.setTo(0);
    FillCapsule(&mask, ToPixel(tip), ToPixel(top), 3.0 * s);
    Blend(picture, mask, wood);
    mask.setTo(0);
    FillCapsule(&mask, ToPixel(tip), ToPixel(tip + lean * 0.25), 3.1 * s);
    Blend(picture, mask, look_.paint * 0.8f);
    DrawHand(picture,
             ToPixel(tip + lean * 1.1),
             12.0 * s,
             FromScreen(45, 45, 52),
             true);
  } else {
    // The lip of a small cup coming in from above.
    const cv::Point3d lip = tip + cv::Point3d(0, -4, 2);
    mask.setTo(0);
    FillEllipse(&mask,
                ToPixel(lip + cv::Point3d(9, -16, 8)),
                15.0 * s,
                12.0 * s,
                -35.0);
    Blend(picture, mask, FromScreen(220, 222, 225));
    mask.setTo(0);
    FillEllipse(
        &mask, ToPixel(lip + cv::Point3d(6, -11, 5)), 9.5 * s, 6.5 * s, -35.0);
    Blend(picture, mask, look_.paint * 0.75f);
  }
}

void LevelScene::Draw(double t, cv::Mat3f* picture) {
  if (t > t_) {
    LayAndLevel(path_, t_, t, &relief_);
    t_ = t;
  }
  cv::Mat1f height;
  cv::remap(relief_.Heights(),
            height,
            map_x_,
            map_y_,
            cv::INTER_CUBIC,
            cv::BORDER_WRAP);
  // The cubic's second derivative jumps at the cells; mirror images show it.
  cv::GaussianBlur(
      height, height, {}, 0.7 * relief_.CellMm() / look_.mm_per_px);
  const double e = Radians(look_.elevation_deg);
  const cv::Vec3f eye = static_cast<float>(look_.distance_mm) *
                        cv::Vec3f(0.0f,
                                  static_cast<float>(std::cos(e)),
                                  static_cast<float>(std::sin(e)));
  struct Seen {
    cv::Vec3f to;
    float tight, strength, share;
  };
  std::vector<Seen> lamps;
  for (const Lamp& lamp : look_.lamps) {
    const double spread = std::hypot(Radians(lamp.size_deg), look_.roughness);
    lamps.push_back(
        {cv::Vec3f(LampDirection(lamp)),
         static_cast<float>(1.0 / (1.0 - std::cos(spread))),
         static_cast<float>(lamp.strength * Radians(lamp.size_deg) *
                            Radians(lamp.size_deg) / (spread * spread)),
         static_cast<float>(0.5 * lamp.strength)});
  }
  float share = 0.0f;
  for (const Seen& lamp : lamps) share += lamp.share * lamp.to[2];
  const auto per_x = static_cast<float>(0.5 / look_.mm_per_px);
  const auto per_y = static_cast<float>(0.5 / look_.mm_per_px * std::sin(e));
  const auto gloss = static_cast<float>(look_.gloss);
  const auto ceiling = static_cast<float>(look_.ceiling);
  for (int y = 0; y < pool_.height; ++y) {
    for (int x = 0; x < pool_.width; ++x) {
      const unsigned char m = pool_mask_(pool_.y + y, pool_.x + x);
      if (!m) continue;
      const int xl = std::max(0, x - 1), xr = std::min(pool_.width - 1, x + 1);
      const int yl = std::max(0, y - 1), yr = std::min(pool_.height - 1, y + 1);
      cv::Vec3f n(-(height(y, xr) - height(y, xl)) * per_x,
                  -(height(yr, x) - height(yl, x)) * per_y,
                  1.0f);
      n *= 1.0f / std::sqrt(n.dot(n));
      // Mirror images shift over the pool: the camera is near.
      cv::Vec3f view =
          eye - cv::Vec3f(static_cast<float>((pool_.x + x - look_.centre_px.x) *
                                             look_.mm_per_px),
                          static_cast<float>((pool_.y + y - look_.centre_px.y) *
                                             look_.mm_per_px / std::sin(e)),
                          0.0f);
      view *= 1.0f / std::sqrt(view.dot(view));
      const float facing = std::max(0.0f, n.dot(view));
      const cv::Vec3f out = 2.0f * facing * n - view;
      float diffuse = 0.0f, mirror = 0.0f;
      for (const Seen& lamp : lamps) {
        diffuse += lamp.share * std::max(0.0f, n.dot(lamp.to));
        const float off = (1.0f - out.dot(lamp.to)) * lamp.tight;
        if (off < 6.0f) {
          // Flat-topped, as a soft box is.
          mirror += lamp.strength / (1.0f + off * off * off);
        }
      }
      mirror += ceiling * (0.6f + 0.8f * std::max(0.0f, out[2]));
      // Low rays meet the container's wall.
      if (out[2] < 0.22f) mirror *= 0.35f;
      const float base = 1.0f - facing;
      const float fresnel = 0.04f + 0.96f * base * base * base * base * base;
      Light colour =
          look_.paint * (0.35f + 0.65f * diffuse / std::max(0.05f, share));
      colour += Light::all(gloss * fresnel * mirror * 4.0f);
      Light& p = (*picture)(pool_.y + y, pool_.x + x);
      p += (colour - p) * (static_cast<float>(m) / 255.0f);
    }
  }
  DrawLayer(t, picture);
  DrawCrossing(t, look_.crossing_s, picture);
}

}  // namespace flowkin::clips
