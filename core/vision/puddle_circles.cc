#include "core/vision/puddle_circles.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <opencv2/imgproc.hpp>
#include <optional>

namespace flowkin {
namespace {

// A 3 x 3 Sobel answers a step of one grey level with 4.
constexpr int kLeastMagnitude = 14;
constexpr int kLeastRadius = 4;
constexpr int kDirections = 32;
constexpr double kLeastCoverage = 0.5;
constexpr int kMostCircles = 4;
// A circle round another is so many times as large at least; its centre lies
// off by up to this share of the inner radius.
constexpr double kAround = 1.1;
constexpr double kAroundBand = 0.15;

struct Edge {
  float x, y, ux, uy;  // place and unit gradient
};

// Whether an edge of about this strength or more runs the same way within a
// pixel of (x, y): the grain of wood under the paint's rim runs another way.
bool HasLike(const EdgeMap& map, int x, int y, float gx, float gy) {
  constexpr float kSameWay = 0.8F;
  const float power = gx * gx + gy * gy;
  for (int r = std::max(0, y - 1); r <= std::min(y + 1, map.gx.rows - 1); ++r) {
    for (int c = std::max(0, x - 1); c <= std::min(x + 1, map.gx.cols - 1);
         ++c) {
      const float hx = map.gx.at<short>(r, c);
      const float hy = map.gy.at<short>(r, c);
      const float other = hx * hx + hy * hy;
      const float along = gx * hx + gy * hy;
      if (9.0F * other >= 4.0F * power &&
          along >= kSameWay * std::sqrt(power * other)) {
        return true;
      }
    }
  }
  return false;
}

// Algebraic circle through the edges that `take` picks; false if there is none.
template <typename Take>
bool FitCircle(const std::vector<Edge>& edges, const Take& take, Circle* out) {
  cv::Matx33d a = cv::Matx33d::zeros();
  cv::Vec3d b(0, 0, 0);
  for (const Edge& e : edges) {
    if (!take(e)) continue;
    const cv::Vec3d u(e.x, e.y, 1.0);
    const double z = u[0] * u[0] + u[1] * u[1];
    for (int i = 0; i < 3; ++i) {
      for (int j = 0; j < 3; ++j) a(i, j) += u[i] * u[j];
      b[i] += u[i] * z;
    }
  }
  cv::Vec3d p;
  if (!cv::solve(a, b, p, cv::DECOMP_LU)) return false;
  const double x = p[0] / 2.0, y = p[1] / 2.0;
  const double rr = p[2] + x * x + y * y;
  if (rr <= 0.0) return false;
  out->x = x;
  out->y = y;
  out->r = std::sqrt(rr);
  return true;
}

// Distance from a circle's centre if the edge runs along the circle, else -1.
double DistanceAlong(const Edge& e, const Circle& c) {
  const double dx = e.x - c.x, dy = e.y - c.y;
  const double d = std::hypot(dx, dy);
  return std::abs(dx * e.uy - dy * e.ux) < 0.25 * d ? d : -1.0;
}

// Directions in which edges run along a circle, by their distance from its
// centre in whole px.
std::vector<std::uint32_t> DirectionsByDistance(const std::vector<Edge>& edges,
                                                const Circle& c,
                                                int most_radius) {
  std::vector<std::uint32_t> seen(static_cast<std::size_t>(most_radius) + 2);
  for (const Edge& e : edges) {
    const double d = DistanceAlong(e, c);
    if (d < 0.0 || d > most_radius) continue;
    const double angle = std::atan2(e.y - c.y, e.x - c.x);
    seen[static_cast<std::size_t>(std::lround(d))] |=
        1U << (static_cast<int>((angle + CV_PI) / (2.0 * CV_PI) * kDirections) %
               kDirections);
  }
  return seen;
}

// Share of the directions with an edge between two distances.
double CoverageOf(const std::vector<std::uint32_t>& seen,
                  double from,
                  double to) {
  std::uint32_t all = 0;
  const auto last = std::min(static_cast<double>(seen.size() - 1), to);
  for (auto d = static_cast<std::size_t>(std::max(0.0, std::ceil(from)));
       static_cast<double>(d) <= last;
       ++d) {
    all |= seen[d];
  }
  return static_cast<double>(std::popcount(all)) / kDirections;
}

// A circle that goes round `inner` with a centre near its own: the paint round
// a lamp's reflection.
std::optional<Circle> CircleAround(const std::vector<Edge>& edges,
                                   const Circle& inner,
                                   int most_radius) {
  // Where the edges lie is known to a share of the radius only, while the
  // centre is the inner one's.
  Circle best;
  const double band = std::max(2.0, kAroundBand * inner.r);
  const auto about_inner = DirectionsByDistance(edges, inner, most_radius);
  for (double r = kAround * inner.r + band; r < most_radius; r += band) {
    const double coverage = CoverageOf(about_inner, r - band, r + band);
    if (coverage > 1.05 * best.coverage) best = {inner.x, inner.y, r, coverage};
  }
  if (best.coverage < kLeastCoverage) return std::nullopt;
  for (const double off : {band, 3.0, 1.6}) {
    const Circle from = best;
    const auto near = [&](const Edge& e) {
      const double d = DistanceAlong(e, from);
      return d >= 0.0 && std::abs(d - from.r) <= off;
    };
    if (!FitCircle(edges, near, &best)) return std::nullopt;
  }
  best.coverage = CoverageOf(DirectionsByDistance(edges, best, most_radius),
                             best.r - 1.6,
                             best.r + 1.6);
  const bool around =
      best.r > kAround * inner.r && best.r < most_radius &&
      std::hypot(best.x - inner.x, best.y - inner.y) + inner.r < best.r;
  if (!around || best.coverage < kLeastCoverage) return std::nullopt;
  return best;
}

}  // namespace

EdgeMap FindEdges(const WorkPicture& picture) {
  EdgeMap map;
  const cv::Size size = picture.y.size();
  map.gx.create(size, CV_16SC1);
  map.gy.create(size, CV_16SC1);
  map.magnitude.create(size, CV_16UC1);
  std::array<cv::Mat, 3> gx, gy;
  const std::array<const cv::Mat*, 3> planes = {
      &picture.y, &picture.cb, &picture.cr};
  for (std::size_t i = 0; i < 3; ++i) {
    cv::Sobel(*planes[i], gx[i], CV_16S, 1, 0);
    cv::Sobel(*planes[i], gy[i], CV_16S, 0, 1);
  }
  std::array<int, 2048> histogram{};
  for (int r = 0; r < size.height; ++r) {
    short* ox = map.gx.ptr<short>(r);
    short* oy = map.gy.ptr<short>(r);
    auto* om = map.magnitude.ptr<std::uint16_t>(r);
    for (int c = 0; c < size.width; ++c) {
      int best = -1, bx = 0, by = 0;
      for (std::size_t i = 0; i < 3; ++i) {
        const int x = gx[i].ptr<short>(r)[c];
        const int y = gy[i].ptr<short>(r)[c];
        const int power = x * x + y * y;
        if (power > best) {
          best = power;
          bx = x;
          by = y;
        }
      }
      ox[c] = static_cast<short>(bx);
      oy[c] = static_cast<short>(by);
      const int m = static_cast<int>(std::sqrt(static_cast<float>(best)));
      om[c] = static_cast<std::uint16_t>(m);
      ++histogram[static_cast<std::size_t>(std::min(m, 2047))];
    }
  }
  // Most of the picture is tile and table: the median is noise and, on wood or
  // stone, texture. Texture does not count, for the reference has it as well,
  // so the calmest fifth says what is noise there; on a plain tile, where the
  // magnitude is Rayleigh distributed, both come to the same.
  const auto quantile = [&](int parts) {
    int seen = 0, at = 0;
    for (; at < 2047; ++at) {
      seen += histogram[static_cast<std::size_t>(at)];
      if (parts * seen >= size.area()) break;
    }
    return at;
  };
  map.threshold =
      std::max(kLeastMagnitude, std::min(3 * quantile(2), 5 * quantile(5)));
  return map;
}

std::vector<Circle> FindCircles(const EdgeMap& edges,
                                const EdgeMap& reference,
                                cv::Point2f shift) {
  const int rows = edges.magnitude.rows;
  const int cols = edges.magnitude.cols;
  // What the reference had within two pixels does not count as new.
  cv::Mat old;
  cv::dilate(reference.magnitude,
             old,
             cv::getStructuringElement(cv::MORPH_RECT, {5, 5}));
  const int sx = static_cast<int>(std::lround(shift.x));
  const int sy = static_cast<int>(std::lround(shift.y));
  std::vector<Edge> found;
  for (int r = 2; r < rows - 2; ++r) {
    const auto* m = edges.magnitude.ptr<std::uint16_t>(r);
    for (int c = 2; c < cols - 2; ++c) {
      if (m[c] < edges.threshold) continue;
      const int ro = r - sy, co = c - sx;
      int before = 0;
      if (ro >= 0 && co >= 0 && ro < rows && co < cols) {
        before = old.at<std::uint16_t>(ro, co);
      }
      const float gx = edges.gx.at<short>(r, c);
      const float gy = edges.gy.at<short>(r, c);
      if (2 * m[c] < 3 * before && HasLike(reference, co, ro, gx, gy)) continue;
      const float norm = static_cast<float>(m[c]) + 1e-6F;
      const float ux = gx / norm, uy = gy / norm;
      // Thin: keep the crest across the gradient.
      const int dx = static_cast<int>(std::lround(ux));
      const int dy = static_cast<int>(std::lround(uy));
      if (edges.magnitude.at<std::uint16_t>(r + dy, c + dx) > m[c] ||
          edges.magnitude.at<std::uint16_t>(r - dy, c - dx) > m[c]) {
        continue;
      }
      found.push_back({static_cast<float>(c), static_cast<float>(r), ux, uy});
    }
  }
  const int most_radius = std::min(rows, cols) / 2;
  if (found.size() < 12) return {};
  // A hand over half of the picture gives no usable vote; bound the work.
  if (found.size() > 12000) return {};
  cv::Mat votes(rows, cols, CV_32F, cv::Scalar(0));
  for (const Edge& e : found) {
    for (const float sign : {1.0F, -1.0F}) {
      float x = e.x + sign * e.ux * kLeastRadius + 0.5F;
      float y = e.y + sign * e.uy * kLeastRadius + 0.5F;
      for (int k = kLeastRadius; k < most_radius; ++k) {
        const int xi = static_cast<int>(x), yi = static_cast<int>(y);
        if (x < 0 || y < 0 || xi >= cols || yi >= rows) break;
        votes.ptr<float>(yi)[xi] += 1.0F;
        x += sign * e.ux;
        y += sign * e.uy;
      }
    }
  }
  cv::boxFilter(votes, votes, CV_32F, {5, 5});

  std::vector<Circle> circles;
  for (int pick = 0; pick < kMostCircles; ++pick) {
    double top = 0.0;
    cv::Point peak;
    cv::minMaxLoc(votes, nullptr, &top, nullptr, &peak);
    if (top <= 0.0) break;
    cv::circle(votes, peak, 8, cv::Scalar(0), cv::FILLED);

    double cx = peak.x, cy = peak.y;
    Circle circle;
    for (int round = 0; round < 2; ++round) {
      std::vector<std::uint32_t> bins(static_cast<std::size_t>(most_radius) + 2,
                                      0U);
      const auto radius_of = [&](const Edge& e, double& angle) {
        const double dx = e.x - cx, dy = e.y - cy;
        const double d = std::hypot(dx, dy);
        angle = std::atan2(dy, dx);
        if (d < kLeastRadius - 1 || d >= most_radius) return -1.0;
        const double cross = std::abs(dx * e.uy - dy * e.ux);
        return cross < 0.25 * d ? d : -1.0;
      };
      for (const Edge& e : found) {
        double angle = 0.0;
        const double d = radius_of(e, angle);
        if (d < 0.0) continue;
        const int sector =
            static_cast<int>((angle + CV_PI) / (2.0 * CV_PI) * kDirections) %
            kDirections;
        bins[static_cast<std::size_t>(std::lround(d))] |= 1U << sector;
      }
      const auto coverage_at = [&](std::size_t r) {
        return std::popcount(bins[r - 1] | bins[r] | bins[r + 1]);
      };
      int best = 0;
      for (std::size_t r = kLeastRadius; r + 1 < bins.size(); ++r) {
        best = std::max(best, coverage_at(r));
      }
      // The rim's own inner lines and highlights lie inside: take the
      // outermost that is about as complete.
      std::size_t chosen = 0;
      for (std::size_t r = kLeastRadius; r + 1 < bins.size(); ++r) {
        if (10 * coverage_at(r) >= 9 * best) chosen = r;
      }
      circle.coverage = static_cast<double>(best) / kDirections;
      if (chosen == 0 || circle.coverage < kLeastCoverage) {
        circle.coverage = 0.0;
        break;
      }
      const auto on_ring = [&](const Edge& e) {
        double angle = 0.0;
        const double d = radius_of(e, angle);
        return d >= 0.0 && std::abs(d - static_cast<double>(chosen)) <= 1.6;
      };
      Circle fitted;
      if (!FitCircle(found, on_ring, &fitted) ||
          std::hypot(fitted.x - cx, fitted.y - cy) > 6.0) {
        circle.x = cx;
        circle.y = cy;
        circle.r = static_cast<double>(chosen);
        break;
      }
      cx = circle.x = fitted.x;
      cy = circle.y = fitted.y;
      circle.r = fitted.r;
    }
    if (circle.coverage < kLeastCoverage) continue;
    const bool known =
        std::any_of(circles.begin(), circles.end(), [&](const Circle& c) {
          return std::hypot(c.x - circle.x, c.y - circle.y) < 0.3 * c.r;
        });
    if (known) continue;
    circles.push_back(circle);
    if (const auto around = CircleAround(found, circle, most_radius)) {
      circles.push_back(*around);
    }
  }
  return circles;
}

}  // namespace flowkin
