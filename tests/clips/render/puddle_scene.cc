#include "tests/clips/render/puddle_scene.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace flowkin::clips {

cv::Vec3d LampDirection(const Lamp& lamp) {
  const double a = lamp.azimuth_deg * CV_PI / 180.0;
  const double e = lamp.elevation_deg * CV_PI / 180.0;
  return {std::cos(e) * std::cos(a), std::cos(e) * std::sin(a), std::sin(e)};
}

PuddleScene::PuddleScene(cv::Size size,
                         const PuddleLook& look,
                         const testing::SpreadingPuddleOptions& paint)
    : size_(size), look_(look), paint_(paint), puddle_(paint) {}

cv::Point2d PuddleScene::ToPixel(cv::Point2d mm) const {
  const double p = look_.pitch_deg * CV_PI / 180.0;
  const double f = camera_mm_ / look_.mm_per_px;
  const double depth = camera_mm_ - mm.y * std::sin(p);
  return {0.5 * size_.width + f * mm.x / depth,
          0.5 * size_.height + f * mm.y * std::cos(p) / depth};
}

cv::Point2d PuddleScene::ToTile(cv::Point2d px) const {
  const double p = look_.pitch_deg * CV_PI / 180.0;
  const double f = camera_mm_ / look_.mm_per_px;
  const double u = px.x - 0.5 * size_.width, v = px.y - 0.5 * size_.height;
  const double y = v * camera_mm_ / (f * std::cos(p) + v * std::sin(p));
  return {u * (camera_mm_ - y * std::sin(p)) / f, y};
}

cv::Mat3f PuddleScene::Background() {
  if (look_.push_s >= 0.0) pushed_ = Backdrop(look_.push_mm);
  return Backdrop({0, 0});
}

cv::Mat3f PuddleScene::Backdrop(cv::Point2d tile_mm) const {
  cv::Mat3f picture = PaintSurface(size_, look_.table, look_.seed);
  const cv::Mat3f tile = PaintSurface(size_, look_.tile, look_.seed + 100);
  auto quad = [&](cv::Point2d low, cv::Point2d high) {
    low += tile_mm;
    high += tile_mm;
    cv::Mat1b mask = EmptyMask(size_);
    FillPolygon(&mask,
                {ToPixel(low),
                 ToPixel({high.x, low.y}),
                 ToPixel(high),
                 ToPixel({low.x, high.y})});
    return mask;
  };
  const cv::Point2d h = look_.tile_half_mm;
  Shade(&picture, quad(-h + cv::Point2d(1, 2), h + cv::Point2d(2, 4)), 8, 0.4);
  BlendPicture(&picture, quad(-h, h), tile);

  if (look_.ruler != "none") {
    const bool flat = look_.ruler == "horizontal";
    // 100 mm, ticks every millimetre on the edge towards the puddle.
    const double across = flat ? h.y - 22.0 : -h.x + 18.0;
    auto place = [&](double along, double off) {
      const double a = along - 50.0;
      return tile_mm + (flat ? cv::Point2d(a, across + off)
                             : cv::Point2d(across - off, a));
    };
    auto strip = [&](double a0, double a1, double o0, double o1, Light c) {
      cv::Mat1b mask = EmptyMask(size_);
      FillPolygon(&mask,
                  {ToPixel(place(a0, o0)),
                   ToPixel(place(a1, o0)),
                   ToPixel(place(a1, o1)),
                   ToPixel(place(a0, o1))});
      Blend(&picture, mask, c);
    };
    strip(-3, 103, 0, 16, FromScreen(236, 232, 214));
    const Light ink = FromScreen(30, 30, 34);
    for (int i = 0; i <= 100; ++i) {
      const double length = i % 10 == 0 ? 7.0 : i % 5 == 0 ? 5.0 : 3.2;
      strip(i - 0.11, i + 0.11, 0.6, 0.6 + length, ink);
    }
    cv::Mat1b digits = EmptyMask(size_);
    for (int i = 0; i <= 10; ++i) {
      const cv::Point2d at = ToPixel(place(10.0 * i - 1.2, 13.5));
      cv::putText(digits,
                  std::to_string(i),
                  at,
                  cv::FONT_HERSHEY_SIMPLEX,
                  0.07 / look_.mm_per_px,
                  255,
                  std::max(1, static_cast<int>(0.2 / look_.mm_per_px)),
                  cv::LINE_AA);
    }
    Blend(&picture, digits, ink);
    const double half = 50.0 * look_.ruler_covered;
    if (half > 0.0)
      strip(50 - half, 50 + half, -2, 18, FromScreen(90, 98, 120));
  }
  if (std::abs(look_.other_cup_mm.x) < 500.0) {
    const cv::Point2d at = ToPixel(look_.other_cup_mm);
    const double s = 1.0 / look_.mm_per_px;
    cv::Mat1b mask = EmptyMask(size_);
    FillEllipse(&mask, at + cv::Point2d(4, 3) * s, 19 * s, 19 * s);
    Shade(&picture, mask, 3.0 * s, 0.35);
    for (const auto& [radius, colour] :
         {std::pair(18.0, FromScreen(228, 228, 224)),
          std::pair(16.8, FromScreen(170, 170, 168)),
          std::pair(15.5, Light(look_.paint * 0.8f))}) {
      mask.setTo(0);
      FillEllipse(&mask, at, radius * s, radius * s);
      Blend(&picture, mask, colour);
    }
  }
  return picture;
}

cv::Rect PuddleScene::Region(double t) const {
  const cv::Rect whole({0, 0}, size_);
  if (t < look_.start_s - 0.9) return {};
  if (t < look_.start_s + paint_.pour_s + 0.85) return whole;
  if (look_.push_s >= 0.0 && t > look_.push_s - 0.1) return whole;
  if (look_.crossing_s >= 0.0 && std::abs(t - look_.crossing_s) < 0.7) {
    return whole;
  }
  if (paint_.again_s >= 0.0) {
    const double again = look_.start_s + paint_.again_s;
    if (t > again - 1.0 && t < again + paint_.pour_s + 0.85) return whole;
  }
  // Only the puddle is left; it never outgrows its radius at this time plus
  // what one frame adds.
  const double r = puddle_.RadiusMm() + 6.0;
  const double slide = look_.creep_mm_s * 4.0;
  const cv::Point2d a = ToPixel(look_.centre_mm - cv::Point2d(r, r));
  const cv::Point2d b =
      ToPixel(look_.centre_mm + cv::Point2d(2.0 * slide + r, r));
  return cv::Rect(cv::Point(static_cast<int>(a.x), static_cast<int>(a.y)),
                  cv::Point(static_cast<int>(b.x), static_cast<int>(b.y))) &
         whole;
}

void PuddleScene::DrawPourer(double t, cv::Mat3f* picture) const {
  double begin = look_.start_s;
  if (paint_.again_s >= 0.0 && t > begin + paint_.again_s - 1.0) {
    begin += paint_.again_s;
  }
  const double end = begin + paint_.pour_s;
  // Comes in over 0.7 s, stays while pouring, goes within 0.6 s.
  double away = 0.0;
  if (t < begin - 0.1) {
    away = std::min(1.0, (begin - 0.1 - t) / 0.7);
  } else if (t > end + 0.15) {
    away = std::min(1.0, (t - end - 0.15) / 0.6);
  }
  if (away >= 1.0) return;
  away = away * away * (3.0 - 2.0 * away);
  const cv::Point2d c = look_.centre_mm;
  const cv::Point2d shift(130.0 * away, -50.0 * away);
  auto fill = [&](auto draw, Light colour) {
    cv::Mat1b mask = EmptyMask(size_);
    draw(&mask);
    Blend(picture, mask, colour);
  };
  const double s = 1.0 / look_.mm_per_px;
  {
    cv::Mat1b mask = EmptyMask(size_);
    FillEllipse(
        &mask, ToPixel(c + shift + cv::Point2d(26, 4)), 15.0 * s, 13.0 * s);
    Shade(picture, mask, 3.0 * s, 0.35);
  }
  if (t >= begin && t < end) {
    // The paint on its way down, seen from above.
    fill(
        [&](cv::Mat1b* m) {
          FillCapsule(
              m, ToPixel(c + cv::Point2d(4.0, -1.5)), ToPixel(c), 1.6 * s);
        },
        look_.paint * 0.95f);
  }
  if (look_.pourer == "cup") {
    const cv::Point2d m = c + shift + cv::Point2d(17.0, -6.0);
    fill([&](cv::Mat1b* k) { FillEllipse(k, ToPixel(m), 14 * s, 13 * s); },
         FromScreen(225, 228, 230));
    fill([&](cv::Mat1b* k) { FillEllipse(k, ToPixel(m), 12.5 * s, 11.5 * s); },
         FromScreen(170, 172, 176));
    fill(
        [&](cv::Mat1b* k) {
          FillEllipse(k, ToPixel(m + cv::Point2d(-3.0, 1.0)), 8.0 * s, 7.5 * s);
        },
        look_.paint * 0.8f);
    DrawHand(picture,
             ToPixel(m + cv::Point2d(12, -8)),
             11.0 * s,
             FromScreen(60, 90, 170),
             true);
  } else {
    const cv::Point2d tip = c + shift + cv::Point2d(3.0, -1.0);
    fill(
        [&](cv::Mat1b* k) {
          FillCapsule(
              k, ToPixel(tip), ToPixel(tip + cv::Point2d(12, -6)), 1.4 * s);
        },
        FromScreen(200, 205, 210));
    fill(
        [&](cv::Mat1b* k) {
          FillCapsule(k,
                      ToPixel(tip + cv::Point2d(14, -7)),
                      ToPixel(tip + cv::Point2d(80, -40)),
                      8.0 * s);
        },
        FromScreen(215, 222, 228));
    fill(
        [&](cv::Mat1b* k) {
          FillCapsule(k,
                      ToPixel(tip + cv::Point2d(18, -9)),
                      ToPixel(tip + cv::Point2d(40, -20)),
                      6.5 * s);
        },
        look_.paint * 0.9f);
  }
}

void PuddleScene::Draw(double t, cv::Mat3f* picture) {
  const double since = t - look_.start_s;
  if (since > 0.0) puddle_.AdvanceTo(since);
  const double radius = since > 0.0 ? puddle_.RadiusMm() : 0.0;
  const bool pushed = look_.push_s >= 0.0 && t > look_.push_s;
  if (pushed) pushed_.copyTo(*picture);
  if (radius > 0.3) {
    const double volume = 1e3 * puddle_.VolumeMl();
    const double middle = 4.0 * volume / (3.0 * CV_PI * radius * radius);
    // A puddle on a slope slides and its lower half runs ahead.
    const double slide =
        look_.creep_mm_s * 4.0 * (1.0 - std::exp(-since / 4.0));
    const cv::Point2d c = look_.centre_mm + cv::Point2d(slide, 0.0) +
                          (pushed ? look_.push_mm : cv::Point2d());
    const double stretch = 1.0 + 0.9 * slide / (radius + 1.0);
    std::vector<cv::Vec3d> lamps, halves;
    for (const Lamp& lamp : look_.lamps) {
      const cv::Vec3d l = LampDirection(lamp);
      lamps.push_back(l);
      cv::Vec3d half = l + cv::Vec3d(0, 0, 1);
      halves.push_back(half / cv::norm(half));
    }
    const cv::Point2d low = ToPixel(c - cv::Point2d(radius + 4, radius + 4));
    const cv::Point2d high =
        ToPixel(c + cv::Point2d(radius * stretch + 4, radius + 4));
    const cv::Rect box = cv::Rect(cv::Point(static_cast<int>(low.x) - 2,
                                            static_cast<int>(low.y) - 2),
                                  cv::Point(static_cast<int>(high.x) + 3,
                                            static_cast<int>(high.y) + 3)) &
                         cv::Rect({0, 0}, size_);
    for (int y = box.y; y < box.y + box.height; ++y) {
      for (int x = box.x; x < box.x + box.width; ++x) {
        const cv::Point2d mm = ToTile(cv::Point2d(x, y)) - c;
        const double dx = mm.x > 0.0 ? mm.x / stretch : mm.x;
        const double r = std::hypot(dx, mm.y);
        const double inside = (radius - r) / look_.mm_per_px + 0.5;
        Light& p = (*picture)(y, x);
        if (inside <= 0.0) {
          // Contact shadow away from the first lamp.
          const double d = r - radius;
          if (d < 2.5) {
            const double facing =
                -(lamps[0][0] * dx + lamps[0][1] * mm.y) / std::max(1e-6, r);
            const double dark =
                0.10 * std::exp(-d / 0.4) +
                0.35 * std::max(0.0, facing) * std::exp(-d / 0.7);
            p *= static_cast<float>(1.0 - dark);
          }
          continue;
        }
        const double rho = std::min(0.9995, r / radius);
        // Viscous profile with its edge rounded by surface tension.
        const double slope =
            std::min(1.1,
                     middle * (2.0 / 3.0) * rho / radius *
                         std::pow(1.0 - rho * rho, -2.0 / 3.0));
        cv::Vec3d n(slope * dx / std::max(1e-6, r),
                    slope * mm.y / std::max(1e-6, r),
                    1.0);
        n /= cv::norm(n);
        double diffuse = 0.5, shine = 0.0;
        for (std::size_t i = 0; i < lamps.size(); ++i) {
          const Lamp& lamp = look_.lamps[i];
          diffuse += 0.5 * lamp.strength * std::max(0.0, n.dot(lamps[i])) /
                     static_cast<double>(lamps.size()) / lamps[i][2];
          const double spread = 0.5 * lamp.size_deg * CV_PI / 180.0;
          const double off = std::acos(std::clamp(n.dot(halves[i]), -1.0, 1.0));
          shine +=
              lamp.strength * std::exp(-0.5 * off * off / (spread * spread));
        }
        const double sky = 0.02 + 0.05 * (1.0 - n[2]);
        Light colour = look_.paint * static_cast<float>(diffuse);
        colour +=
            Light::all(static_cast<float>(look_.gloss * (sky + 0.9 * shine)));
        const auto a = static_cast<float>(std::min(1.0, inside));
        p += (colour - p) * a;
      }
    }
  }
  DrawPourer(t, picture);
  DrawCrossing(t, look_.crossing_s, picture);
}

}  // namespace flowkin::clips
