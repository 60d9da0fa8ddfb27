#include "core/vision/puddle_outline.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/vision/puddle_picture.h"

namespace flowkin {
namespace {

constexpr int kRays = 128;
constexpr double kTwoPi = 6.283185307179586;
constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
// Below this the fill of the puddle cannot carry the edge; its rim must.
constexpr double kLeastFillContrast = 4.0;
// Rays closer together than this share the pixels they read.
constexpr double kRaySpacingPx = 3.0;
// Tukey's biweight: 95 % efficiency for normal errors (from memory).
constexpr double kTukey = 4.685;
constexpr double kMadToSd = 1.4826;

template <typename T>
T MedianOf(std::vector<T>& v) {
  if (v.empty()) return T{};
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

// Solves the symmetric positive system a x = b of n <= 7 by Cholesky.
bool SolveNormal(std::array<std::array<double, 7>, 7>& a,
                 std::array<double, 7>& b,
                 std::size_t n) {
  for (std::size_t j = 0; j < n; ++j) {
    for (std::size_t k = 0; k < j; ++k) a[j][j] -= a[j][k] * a[j][k];
    if (!(a[j][j] > 1e-9)) return false;
    a[j][j] = std::sqrt(a[j][j]);
    for (std::size_t i = j + 1; i < n; ++i) {
      for (std::size_t k = 0; k < j; ++k) a[i][j] -= a[i][k] * a[j][k];
      a[i][j] /= a[j][j];
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) b[i] -= a[i][k] * b[k];
    b[i] /= a[i][i];
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) b[i] -= a[k][i] * b[k];
    b[i] /= a[i][i];
  }
  return true;
}

struct Basis {
  double angle, c1, s1, c2, s2, c3, s3;
};

struct Polar {
  int steps = 0;  // samples per ray, odd; the middle one lies on the guess
  double step_px = 0.0;
  std::array<std::vector<float>, 3> v;  // rays x steps
  std::array<bool, kRays> inside{};     // the ray stays in the picture

  float at(std::size_t channel, int ray, int k) const {
    return v[channel][static_cast<std::size_t>(ray * steps + k)];
  }
  double offset(double k) const { return (k - (steps - 1) / 2) * step_px; }
};

Polar ReadPolar(const Frame& frame,
                const OutlineShape& guess,
                double window_px,
                const std::array<Basis, kRays>& basis) {
  Polar polar;
  polar.step_px = std::max(0.5, window_px / 40.0);
  const int half = static_cast<int>(std::ceil(window_px / polar.step_px));
  polar.steps = 2 * half + 1;
  for (auto& plane : polar.v) {
    plane.assign(static_cast<std::size_t>(kRays * polar.steps), 0.0F);
  }
  for (int i = 0; i < kRays; ++i) {
    const Basis& b = basis[static_cast<std::size_t>(i)];
    const double r0 = guess.RadiusAt(b.angle);
    bool inside = true;
    for (int k = 0; k < polar.steps && inside; ++k) {
      const double r = std::max(0.0, r0 + polar.offset(k));
      const auto x = static_cast<float>(guess.x + r * b.c1);
      const auto y = static_cast<float>(guess.y + r * b.s1);
      // Chroma: half size; its quarter-pixel siting moves the centre only.
      const float cx = (x - 0.5F) / 2.0F, cy = (y - 0.5F) / 2.0F;
      const float luma = SampleAt(frame.luma, x, y);
      const float cb = SampleAt(frame.cb, cx, cy);
      const float cr = SampleAt(frame.cr, cx, cy);
      if (luma < 0.0F || cb < 0.0F || cr < 0.0F) inside = false;
      const auto at = static_cast<std::size_t>(i * polar.steps + k);
      polar.v[0][at] = luma;
      polar.v[1][at] = cb;
      polar.v[2][at] = cr;
    }
    polar.inside[static_cast<std::size_t>(i)] = inside;
  }
  return polar;
}

// Where `q` falls through one half towards the outside, nearest to `near`.
// Positions in steps; NaN if it never does.
double FallNear(const float* q, int n, double near) {
  double best = kNan;
  for (int k = 0; k + 1 < n; ++k) {
    if (!(q[k] >= 0.5F && q[k + 1] < 0.5F)) continue;
    const double at =
        k + static_cast<double>((q[k] - 0.5F) / (q[k] - q[k + 1]));
    if (std::isnan(best) || std::abs(at - near) < std::abs(best - near)) {
      best = at;
    }
  }
  return best;
}

}  // namespace

double OutlineShape::RadiusAt(double angle_rad) const {
  return r + c2 * std::cos(2 * angle_rad) + s2 * std::sin(2 * angle_rad) +
         c3 * std::cos(3 * angle_rad) + s3 * std::sin(3 * angle_rad);
}

std::optional<OutlineTrace> TraceOutline(const Frame& frame,
                                         const OutlineShape& guess,
                                         double window_px) {
  std::array<Basis, kRays> basis;
  for (int i = 0; i < kRays; ++i) {
    const double a = kTwoPi * i / kRays;
    basis[static_cast<std::size_t>(i)] = {a,
                                          std::cos(a),
                                          std::sin(a),
                                          std::cos(2 * a),
                                          std::sin(2 * a),
                                          std::cos(3 * a),
                                          std::sin(3 * a)};
  }
  OutlineTrace trace;
  trace.shape = guess;
  for (int round = 0; round < 3; ++round) {
    const Polar polar = ReadPolar(frame, trace.shape, window_px, basis);
    const int n = polar.steps;
    const int mid = (n - 1) / 2;
    const int inner = static_cast<int>(0.6 * mid);      // [0, inner): paint
    const int outer = n - static_cast<int>(0.6 * mid);  // [outer, n): tile
    std::vector<int> rays;
    for (int i = 0; i < kRays; ++i) {
      if (polar.inside[static_cast<std::size_t>(i)]) rays.push_back(i);
    }
    trace.off_picture = 1.0 - static_cast<double>(rays.size()) / kRays;
    if (rays.size() < kRays / 3) return std::nullopt;

    // Levels of paint and tile per ray, and the noise outside.
    std::array<std::array<float, kRays>, 3> tile{};
    std::array<float, 3> contrast{}, noise{};
    std::vector<float> pick, steps, noises, tiles;
    for (std::size_t c = 0; c < 3; ++c) {
      steps.clear();
      noises.clear();
      tiles.clear();
      for (const int i : rays) {
        pick.clear();
        for (int k = outer; k < n; ++k) pick.push_back(polar.at(c, i, k));
        const float out = MedianOf(pick);
        for (float& v : pick) v = std::abs(v - out);
        noises.push_back(static_cast<float>(kMadToSd) * MedianOf(pick));
        pick.clear();
        for (int k = 0; k < inner; ++k) pick.push_back(polar.at(c, i, k));
        steps.push_back(MedianOf(pick) - out);
        tiles.push_back(out);
        tile[c][static_cast<std::size_t>(i)] = out;
      }
      contrast[c] = MedianOf(steps);
      trace.step[c] = contrast[c];
      trace.tile[c] = MedianOf(tiles);
      // Rounding to whole levels hides noise below about half a level; chroma
      // is coarser in place, so it has to be twice as clear to count as much.
      noise[c] = std::max(0.7F, MedianOf(noises)) * (c == 0 ? 1.0F : 2.0F);
    }
    double power = 0.0;
    for (std::size_t c = 0; c < 3; ++c) {
      power += std::pow(contrast[c] / noise[c], 2);
    }
    trace.contrast_to_noise = std::sqrt(power);
    trace.rim_only = trace.contrast_to_noise < kLeastFillContrast;
    if (!trace.rim_only) {
      for (std::size_t c = 0; c < 3; ++c) {
        trace.weights[c] =
            static_cast<float>(contrast[c] / (noise[c] * noise[c]) / power);
      }
    } else {
      // The crest of the mean rim gives sign and size.
      float crest = 0.0F;
      for (int k = inner; k < outer; ++k) {
        pick.clear();
        for (const int i : rays) {
          pick.push_back(polar.at(0, i, k) -
                         tile[0][static_cast<std::size_t>(i)]);
        }
        const float m = MedianOf(pick);
        if (std::abs(m) > std::abs(crest)) crest = m;
      }
      trace.contrast_to_noise = std::abs(crest) / noise[0];
      if (trace.contrast_to_noise < 1.5) return std::nullopt;
      trace.weights = {1.0F / crest, 0.0F, 0.0F};
    }

    // The signal, smoothed over three steps (even, so it does not shift).
    std::vector<float> q(static_cast<std::size_t>(kRays * n), 0.0F);
    std::vector<float> raw(static_cast<std::size_t>(n));
    for (const int i : rays) {
      for (int k = 0; k < n; ++k) {
        float v = 0.0F;
        for (std::size_t c = 0; c < 3; ++c) {
          v += trace.weights[c] *
               (polar.at(c, i, k) - tile[c][static_cast<std::size_t>(i)]);
        }
        raw[static_cast<std::size_t>(k)] = v;
      }
      float* row = q.data() + static_cast<std::ptrdiff_t>(i) * n;
      for (int k = 0; k < n; ++k) {
        const auto a = static_cast<std::size_t>(std::max(0, k - 1));
        const auto b = static_cast<std::size_t>(std::min(n - 1, k + 1));
        row[k] = (raw[a] + raw[static_cast<std::size_t>(k)] + raw[b]) / 3.0F;
      }
    }
    // Where most rays have their edge: the middle of the nearest crossings.
    std::vector<double> crossing;
    std::vector<float> mean_profile(static_cast<std::size_t>(n));
    for (int k = 0; k < n; ++k) {
      pick.clear();
      for (const int i : rays) {
        pick.push_back(q[static_cast<std::size_t>(i * n + k)]);
      }
      mean_profile[static_cast<std::size_t>(k)] = MedianOf(pick);
    }
    const double common = FallNear(mean_profile.data(), n, mid);
    if (std::isnan(common)) return std::nullopt;
    std::vector<int> used;
    for (const int i : rays) {
      const double k =
          FallNear(q.data() + static_cast<std::ptrdiff_t>(i) * n, n, common);
      if (std::isnan(k)) continue;
      used.push_back(i);
      crossing.push_back(
          trace.shape.RadiusAt(basis[static_cast<std::size_t>(i)].angle) +
          polar.offset(k));
    }
    if (used.size() < kRays / 3) return std::nullopt;

    // Robust fit of the shape: first circle and centre, then the harmonics if
    // enough of the outline is there to carry them.
    const double cap = std::max(1.0, 0.02 * trace.shape.r);
    std::vector<double> residual(used.size());
    std::vector<double> weight(used.size(), 1.0);
    {
      std::vector<double> d(used.size());
      for (std::size_t j = 0; j < used.size(); ++j) {
        d[j] =
            crossing[j] - trace.shape.RadiusAt(
                              basis[static_cast<std::size_t>(used[j])].angle);
      }
      std::vector<double> copy = d;
      const double centre = MedianOf(copy);
      for (std::size_t j = 0; j < d.size(); ++j) {
        copy[j] = std::abs(d[j] - centre);
      }
      const double gate =
          std::max({3.0, 4.0 * kMadToSd * MedianOf(copy), 0.04 * guess.r});
      for (std::size_t j = 0; j < d.size(); ++j) {
        weight[j] = std::abs(d[j] - centre) < gate ? 1.0 : 0.0;
      }
    }
    double spread = cap;
    std::array<double, 7> p{};
    double seen = 0.0;
    for (int pass = 0; pass < 8; ++pass) {
      const bool full = pass >= 3 && seen > 0.7;
      const std::size_t terms = full ? 7 : 3;
      std::array<std::array<double, 7>, 7> a{};
      std::array<double, 7> b{};
      for (std::size_t j = 0; j < used.size(); ++j) {
        const Basis& e = basis[static_cast<std::size_t>(used[j])];
        const std::array<double, 7> f = {
            1.0, e.c1, e.s1, e.c2, e.s2, e.c3, e.s3};
        double z = crossing[j];
        if (!full) z -= trace.shape.RadiusAt(e.angle) - trace.shape.r;
        for (std::size_t r = 0; r < terms; ++r) {
          b[r] += weight[j] * f[r] * z;
          for (std::size_t c = 0; c < terms; ++c) {
            a[r][c] += weight[j] * f[r] * f[c];
          }
        }
      }
      if (!SolveNormal(a, b, terms)) return std::nullopt;
      p = b;
      if (!full) {
        p[3] = trace.shape.c2;
        p[4] = trace.shape.s2;
        p[5] = trace.shape.c3;
        p[6] = trace.shape.s3;
      }
      std::vector<double> size(used.size());
      for (std::size_t j = 0; j < used.size(); ++j) {
        const Basis& e = basis[static_cast<std::size_t>(used[j])];
        residual[j] =
            crossing[j] - (p[0] + p[1] * e.c1 + p[2] * e.s1 + p[3] * e.c2 +
                           p[4] * e.s2 + p[5] * e.c3 + p[6] * e.s3);
        size[j] = std::abs(residual[j]);
      }
      std::vector<double> copy = size;
      spread = std::clamp(kMadToSd * MedianOf(copy), 0.05, cap);
      double inliers = 0.0;
      for (std::size_t j = 0; j < used.size(); ++j) {
        const double u = size[j] / (kTukey * spread);
        weight[j] = u < 1.0 ? (1.0 - u * u) * (1.0 - u * u) : 0.0;
        if (size[j] < 3.5 * spread) inliers += 1.0;
      }
      seen = inliers / kRays;
    }
    trace.visible = seen;
    if (seen < 1.0 / 3.0) return std::nullopt;
    const double moved = std::hypot(p[1], p[2]);
    const double grown = std::abs(p[0] - trace.shape.r);
    trace.shape.x += p[1];
    trace.shape.y += p[2];
    trace.shape.r = p[0];
    trace.shape.c2 = p[3];
    trace.shape.s2 = p[4];
    trace.shape.c3 = p[5];
    trace.shape.s3 = p[6];
    if (!(trace.shape.r > 2.0)) return std::nullopt;

    double sum = 0.0, count = 0.0;
    std::array<std::vector<float>, kFrontSectors> sectors;
    for (std::size_t j = 0; j < used.size(); ++j) {
      if (std::abs(residual[j]) >= 3.5 * spread) continue;
      sum += residual[j] * residual[j];
      count += 1.0;
      sectors[static_cast<std::size_t>(used[j] * kFrontSectors / kRays)]
          .push_back(static_cast<float>(residual[j]));
    }
    for (std::size_t s = 0; s < sectors.size(); ++s) {
      trace.sector_px[s] = sectors[s].size() < 4
                               ? std::numeric_limits<float>::quiet_NaN()
                               : MedianOf(sectors[s]);
    }
    trace.roughness_px = std::sqrt(sum / std::max(1.0, count));
    const double independent =
        std::min(count, seen * kTwoPi * trace.shape.r / kRaySpacingPx);
    trace.radius_sd_px = std::max(0.02, trace.roughness_px) /
                         std::sqrt(std::max(4.0, independent));

    // Width of the edge in the mean profile, rays laid over each other.
    std::vector<float> aligned;
    double at20 = kNan, at80 = kNan;
    for (double off = -window_px / 2; off <= window_px / 2; off += 0.25) {
      aligned.clear();
      for (std::size_t j = 0; j < used.size(); j += 2) {
        if (weight[j] <= 0.0) continue;
        const Basis& e = basis[static_cast<std::size_t>(used[j])];
        const double k =
            (crossing[j] + off - (guess.RadiusAt(e.angle))) / polar.step_px +
            mid;
        const int ki = static_cast<int>(std::floor(k));
        if (round != 0 || ki < 0 || ki + 1 >= n) continue;
        const float* row = q.data() + static_cast<std::ptrdiff_t>(used[j]) * n;
        aligned.push_back(row[ki] +
                          static_cast<float>(k - ki) * (row[ki + 1] - row[ki]));
      }
      if (aligned.size() < 8) continue;
      const float m = MedianOf(aligned);
      if (off < 0.0 && m >= 0.8F) at80 = off;
      if (off > 0.0 && m <= 0.2F && std::isnan(at20)) at20 = off;
    }
    if (!std::isnan(at20) && !std::isnan(at80)) {
      trace.edge_width_px = at20 - at80;
    }
    if (round == 1 || (moved < 0.5 && grown < 0.2 * window_px)) break;
  }
  return trace;
}

}  // namespace flowkin
