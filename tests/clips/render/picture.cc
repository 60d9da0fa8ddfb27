#include "tests/clips/render/picture.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace flowkin::clips {
namespace {

constexpr int kShift = 4;  // sub-pixel bits of the polygon filler

cv::Point Fixed(cv::Point2d p) {
  return {static_cast<int>(std::lround(p.x * (1 << kShift))),
          static_cast<int>(std::lround(p.y * (1 << kShift)))};
}

}  // namespace

Light FromScreen(int red, int green, int blue) {
  auto linear = [](int v) {
    return static_cast<float>(std::pow(v / 255.0, 2.2));
  };
  return {linear(blue), linear(green), linear(red)};
}

cv::Mat SmoothNoise(cv::Size size,
                    double feature_x_px,
                    double feature_y_px,
                    std::uint32_t seed) {
  cv::RNG random(seed);
  const cv::Size coarse(
      std::max(4, static_cast<int>(size.width / feature_x_px) + 4),
      std::max(4, static_cast<int>(size.height / feature_y_px) + 4));
  cv::Mat1f small(coarse);
  random.fill(small, cv::RNG::NORMAL, 0.0, 1.4);
  cv::Mat large;
  cv::resize(small, large, size, 0, 0, cv::INTER_CUBIC);
  return large;
}

cv::Mat3f PaintSurface(cv::Size size, const Surface& s, std::uint32_t seed) {
  cv::Mat1f tone(size, 0.0f);  // 0 = colour, 1 = second
  const double f = s.feature_px;
  if (s.kind == "wood") {
    // Boards with long grain.
    const cv::Mat1f grain = SmoothNoise(size, 9 * f, 0.35 * f, seed);
    const cv::Mat1f fine = SmoothNoise(size, 2 * f, 3.0, seed + 1);
    for (int y = 0; y < size.height; ++y) {
      const double board = y / (2.2 * f);
      const double seam = std::abs(board - std::round(board)) * 2.2 * f;
      const float step = static_cast<float>(
          0.35 * std::sin(12.9898 * std::floor(board + 0.5)));
      for (int x = 0; x < size.width; ++x) {
        tone(y, x) = 0.4f + step + 0.5f * grain(y, x) + 0.25f * fine(y, x) +
                     (seam < 1.2 ? 2.5f : 0.0f);
      }
    }
  } else if (s.kind == "speckle") {
    const cv::Mat1f fine = SmoothNoise(size, f, f, seed);
    for (int y = 0; y < size.height; ++y) {
      for (int x = 0; x < size.width; ++x) {
        tone(y, x) = fine(y, x) > 1.2f ? 1.0f : 0.0f;
      }
    }
    cv::GaussianBlur(tone, tone, {}, 0.8);
  } else if (s.kind == "check" || s.kind == "stripes") {
    for (int y = 0; y < size.height; ++y) {
      for (int x = 0; x < size.width; ++x) {
        const bool a = std::fmod(x + 0.13 * y, 2 * f) < f;
        const bool b = std::fmod(y + 7.0, 2 * f) < f;
        tone(y, x) =
            s.kind == "stripes" ? (a ? 1.0f : 0.0f) : (a == b ? 1.0f : 0.0f);
      }
    }
    cv::GaussianBlur(tone, tone, {}, 0.7);
  } else if (s.kind == "cloth") {
    for (int y = 0; y < size.height; ++y) {
      for (int x = 0; x < size.width; ++x) {
        tone(y, x) = static_cast<float>(0.5 + 0.25 * std::sin(x * 1.9) +
                                        0.25 * std::sin(y * 2.1));
      }
    }
    tone += 0.3f * SmoothNoise(size, f, f, seed);
  } else if (s.kind == "print") {
    // Lines of words, as in a newspaper.
    const cv::Mat1f ink = SmoothNoise(size, 0.25 * f, 0.15 * f, seed);
    const cv::Mat1f gaps = SmoothNoise(size, 1.2 * f, 0.6 * f, seed + 1);
    for (int y = 0; y < size.height; ++y) {
      const bool line = std::fmod(y, f) < 0.6 * f;
      for (int x = 0; x < size.width; ++x) {
        tone(y, x) =
            line && gaps(y, x) > -0.9f && ink(y, x) > 0.1f ? 1.0f : 0.0f;
      }
    }
    cv::GaussianBlur(tone, tone, {}, 0.7);
  } else if (s.kind == "veins") {
    // Marble, or the creases of a plastic sheet.
    const cv::Mat1f wide = SmoothNoise(size, 3 * f, 2 * f, seed);
    const cv::Mat1f fine = SmoothNoise(size, f, f, seed + 1);
    for (int y = 0; y < size.height; ++y) {
      for (int x = 0; x < size.width; ++x) {
        const float v = (wide(y, x) + 0.3f * fine(y, x)) / 0.12f;
        tone(y, x) = std::exp(-v * v);
      }
    }
  } else {
    tone += 0.5f * SmoothNoise(size, 4 * f, 4 * f, seed);
  }
  const cv::Mat1f mottle = SmoothNoise(size, 5.0, 5.0, seed + 7);
  cv::Mat3f picture(size);
  const auto contrast = static_cast<float>(s.contrast);
  const bool pattern = s.kind == "check" || s.kind == "stripes" ||
                       s.kind == "speckle" || s.kind == "print";
  for (int y = 0; y < size.height; ++y) {
    for (int x = 0; x < size.width; ++x) {
      const float t = std::clamp(
          pattern ? tone(y, x) : tone(y, x) * contrast * 3.0f, -0.5f, 1.5f);
      const Light c = s.colour * (1.0f - t) + s.second * t;
      picture(y, x) = c * std::max(0.02f, 1.0f + 0.01f * mottle(y, x));
    }
  }
  return picture;
}

void Intersect(const cv::Mat1b& with, cv::Mat1b* mask) {
  for (int y = 0; y < mask->rows; ++y) {
    for (int x = 0; x < mask->cols; ++x) {
      (*mask)(y, x) = std::min((*mask)(y, x), with(y, x));
    }
  }
}

void Blend(cv::Mat3f* picture,
           const cv::Mat1b& mask,
           const Light& colour,
           double opacity) {
  const cv::Rect box = cv::boundingRect(mask);
  const auto k = static_cast<float>(opacity / 255.0);
  for (int y = box.y; y < box.y + box.height; ++y) {
    for (int x = box.x; x < box.x + box.width; ++x) {
      const float a = static_cast<float>(mask(y, x)) * k;
      if (a > 0.0f) {
        Light& p = (*picture)(y, x);
        p += (colour - p) * a;
      }
    }
  }
}

void BlendPicture(cv::Mat3f* picture,
                  const cv::Mat1b& mask,
                  const cv::Mat3f& colours) {
  const cv::Rect box = cv::boundingRect(mask);
  for (int y = box.y; y < box.y + box.height; ++y) {
    for (int x = box.x; x < box.x + box.width; ++x) {
      const float a = static_cast<float>(mask(y, x)) / 255.0f;
      if (a > 0.0f) {
        Light& p = (*picture)(y, x);
        p += (colours(y, x) - p) * a;
      }
    }
  }
}

void FillPolygon(cv::Mat1b* mask, const std::vector<cv::Point2d>& corners) {
  std::vector<cv::Point> fixed;
  for (const cv::Point2d& p : corners) fixed.push_back(Fixed(p));
  cv::fillConvexPoly(*mask, fixed, 255, cv::LINE_AA, kShift);
}

void FillEllipse(cv::Mat1b* mask,
                 cv::Point2d centre,
                 double half_x,
                 double half_y,
                 double turn_deg) {
  std::vector<cv::Point2d> corners;
  const double turn = turn_deg * CV_PI / 180.0;
  const int n = std::clamp(static_cast<int>(half_x + half_y), 24, 240);
  for (int i = 0; i < n; ++i) {
    const double a = 2.0 * CV_PI * i / n;
    const double x = half_x * std::cos(a), y = half_y * std::sin(a);
    corners.push_back(centre +
                      cv::Point2d(x * std::cos(turn) - y * std::sin(turn),
                                  x * std::sin(turn) + y * std::cos(turn)));
  }
  FillPolygon(mask, corners);
}

void FillCapsule(cv::Mat1b* mask, cv::Point2d a, cv::Point2d b, double radius) {
  const cv::Point2d along = b - a;
  const double length = std::max(1e-9, std::hypot(along.x, along.y));
  const cv::Point2d side(-along.y / length * radius, along.x / length * radius);
  FillPolygon(mask, {a + side, b + side, b - side, a - side});
  FillEllipse(mask, a, radius, radius);
  FillEllipse(mask, b, radius, radius);
}

void Shade(cv::Mat3f* picture,
           const cv::Mat1b& mask,
           double blur_px,
           double darkness) {
  cv::Mat1b soft;
  cv::GaussianBlur(mask, soft, {}, blur_px);
  Blend(picture, soft, Light(0.0f, 0.0f, 0.0f), darkness);
}

void DrawHand(cv::Mat3f* picture,
              cv::Point2d grip,
              double size,
              const Light& glove,
              bool from_right) {
  const double s = from_right ? 1.0 : -1.0;
  auto at = [&](double x, double y) {
    return grip + cv::Point2d(s * x * size, y * size);
  };
  auto part = [&](cv::Point2d a, cv::Point2d b, double r, float tone) {
    cv::Mat1b mask = EmptyMask(picture->size());
    FillCapsule(&mask, a, b, r * size);
    Blend(picture, mask, glove * tone);
    // Lit from above: a lighter streak.
    mask.setTo(0);
    FillCapsule(&mask,
                a + cv::Point2d(0, -0.35 * r * size),
                b + cv::Point2d(0, -0.35 * r * size),
                0.3 * r * size);
    cv::GaussianBlur(mask, mask, {}, std::max(0.5, 0.15 * r * size));
    Blend(picture, mask, glove * (tone * 1.5f), 0.5);
  };
  part(at(2.6, -0.7), at(1.2, -0.2), 0.62, 0.85f);    // wrist, palm
  part(at(1.1, -0.5), at(-0.25, -0.42), 0.24, 0.9f);  // fingers round it
  part(at(1.1, -0.05), at(-0.3, 0.02), 0.24, 1.0f);
  part(at(1.1, 0.35), at(-0.22, 0.42), 0.22, 0.95f);
  part(at(0.9, -0.3), at(0.05, 0.12), 0.22, 1.08f);  // thumb
}

void DrawCrossing(double t_s, double middle_s, cv::Mat3f* picture) {
  const double share = (t_s - middle_s) / 1.2;
  if (middle_s < 0.0 || std::abs(share) > 0.5) return;
  const double w = picture->cols, h = picture->rows;
  DrawHand(picture,
           {w * (0.5 - 1.6 * share), h * 0.5},
           0.13 * std::max(w, h),
           FromScreen(205, 160, 135),
           true);
}

}  // namespace flowkin::clips
