#include "core/vision/puddle_outline.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <vector>

#include "core/base/cholesky.h"
#include "core/vision/puddle_picture.h"

namespace flowkin {
namespace {

constexpr int kRays = 128;
constexpr double kTwoPi = 6.283185307179586;
// The noise is one number: every fourth ray is enough for it.
constexpr int kNoiseEvery = 4;
constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
// Below this the fill of the puddle cannot carry the edge; its rim must.
constexpr double kLeastFillContrast = 10.0;
// Shadow beside the paint and shade on its rim move luma, counted from black,
// by about this share; they hardly move chroma.
constexpr float kShade = 0.05F;
constexpr float kBlack = 16.0F;
// Chroma is coarser and coded in less detail: its edge lies off by so much of
// its step.
constexpr float kChromaPlace = 0.25F;
// A ray whose own contrast is below this tells nothing.
constexpr float kLeastRayContrast = 5.0F;
// The picture from before the paint is used where the ground's own variance
// along the rays is so many times what is left when that picture is taken away.
// On a plain tile it would only add its noise.
constexpr double kPatterned = 3.0;
// The paint's level is a median over so many rays to either side: shading goes
// round slowly, a nozzle is narrow.
constexpr int kPaintReach = 10;
// Rays closer together than this share the pixels they read.
constexpr double kRaySpacingPx = 3.0;
// A ray that ends so near the shape has not ended at something else.
constexpr double kOnShape_px = 1.0;
// Tukey's biweight: 95 % efficiency for normal errors (from memory).
constexpr double kTukey = 4.685;
constexpr double kMadToSd = 1.4826;

// Rays on too short an arc to fix a shape; each adds about one.
constexpr double kLeastPivot = 1e-9;

template <typename T>
T MedianOf(std::vector<T>& v) {
  if (v.empty()) return T{};
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

struct Basis {
  double c1, s1, c2, s2, c3, s3;

  double RadiusOf(const OutlineShape& o) const {
    return o.r + o.c2 * c2 + o.s2 * s2 + o.c3 * c3 + o.s3 * s3;
  }
};

struct Polar {
  int steps = 0;  // samples per ray, odd; the middle one lies on the guess
  double step_px = 0.0;
  std::array<std::vector<float>, 3> v;  // rays x steps
  std::array<bool, kRays> inside{};     // the ray stays in the picture

  float at(std::size_t channel, int ray, int k) const {
    return v[channel][static_cast<std::size_t>(ray * steps + k)];
  }
  double offset(double k) const {
    const int middle = (steps - 1) / 2;
    return (k - middle) * step_px;
  }
};

// From the place of a point in the present picture to its place in another one.
struct Backwards {
  double scale = 1.0, x = 0.0, y = 0.0;
};

Polar ReadPolar(const Frame& frame,
                const OutlineShape& guess,
                double window_px,
                const std::array<Basis, kRays>& basis,
                const Backwards& to = {}) {
  Polar polar;
  polar.step_px = std::max(0.5, window_px / 40.0);
  const int half = static_cast<int>(std::ceil(window_px / polar.step_px));
  polar.steps = 2 * half + 1;
  for (auto& plane : polar.v) {
    plane.assign(static_cast<std::size_t>(kRays * polar.steps), 0.0F);
  }
  for (int i = 0; i < kRays; ++i) {
    const Basis& b = basis[static_cast<std::size_t>(i)];
    const double r0 = b.RadiusOf(guess);
    bool inside = true;
    for (int k = 0; k < polar.steps && inside; ++k) {
      const double r = std::max(0.0, r0 + polar.offset(k));
      const auto x = static_cast<float>(to.x + to.scale * (guess.x + r * b.c1));
      const auto y = static_cast<float>(to.y + to.scale * (guess.y + r * b.s1));
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

Backwards BackTo(const BareGround& bare) {
  const double scale = 1.0 / bare.zoom;
  const double middle_x = 0.5 * (bare.frame->luma.cols - 1);
  const double middle_y = 0.5 * (bare.frame->luma.rows - 1);
  return {scale,
          middle_x - scale * (middle_x + bare.dx_px),
          middle_y - scale * (middle_y + bare.dy_px)};
}

float Squared(float v) { return v * v; }

double VarianceOf(const Polar& polar, std::size_t channel, int ray) {
  double sum = 0.0, squares = 0.0;
  for (int k = 0; k < polar.steps; ++k) {
    const auto v = static_cast<double>(polar.at(channel, ray, k));
    sum += v;
    squares += v * v;
  }
  const double mean = sum / polar.steps;
  return squares / polar.steps - mean * mean;
}

// Every ray's level becomes the median of those round it.
void SmoothAround(const std::vector<int>& rays,
                  std::array<std::array<float, kRays>, 3>* levels) {
  std::array<bool, kRays> given{};
  for (const int i : rays) given[static_cast<std::size_t>(i)] = true;
  std::vector<float> pick;
  for (std::array<float, kRays>& level : *levels) {
    const std::array<float, kRays> own = level;
    for (const int i : rays) {
      pick.clear();
      for (int d = -kPaintReach; d <= kPaintReach; ++d) {
        const auto j = static_cast<std::size_t>((i + d + kRays) % kRays);
        if (given[j]) pick.push_back(own[j]);
      }
      level[static_cast<std::size_t>(i)] = MedianOf(pick);
    }
  }
}

// Change of luma across a few steps about k.
constexpr int kSteepReach = 2;
float Steepness(const Polar& polar, int ray, int k) {
  const int a = std::max(0, k - kSteepReach);
  const int b = std::min(polar.steps - 1, k + kSteepReach);
  return std::abs(polar.at(0, ray, b) - polar.at(0, ray, a));
}

// The outermost high crest of `q` within `reach` steps of `near`, at least half
// of one; NaN if there is none.
double CrestNear(const float* q, int n, double near, int reach) {
  const int from = std::max(1, static_cast<int>(near) - reach);
  const int to = std::min(n - 2, static_cast<int>(near) + reach);
  float top = 0.0F;
  for (int k = from; k <= to; ++k) top = std::max(top, q[k]);
  // A line has two flanks: the outer one is the edge of the paint.
  int best = -1;
  for (int k = from; k <= to; ++k) {
    if (q[k] >= q[k - 1] && q[k] > q[k + 1] && q[k] >= 0.5F &&
        q[k] >= 0.85F * top) {
      best = k;
    }
  }
  if (best < 0) return kNan;
  const float bend = q[best - 1] - 2.0F * q[best] + q[best + 1];
  const float off =
      bend < 0.0F ? 0.5F * (q[best - 1] - q[best + 1]) / bend : 0.0F;
  return best + static_cast<double>(off);
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

struct ShapeFit {
  std::array<double, 7> p{};  // radius, centre, harmonics two and three
  std::vector<double> residual, weight;
  double seen = 0.0;  // share of all rays that lie on the shape
  double spread = 0.0;
};

// Robust fits of r(a) to the radii where the used rays cross the edge.
struct ShapeFitter {
  const std::array<Basis, kRays>& basis;
  const std::vector<int>& used;
  const std::vector<double>& crossing;
  double cap;  // most that counts as roughness, px

  // `fixed`: harmonics two and three unless `full`. Starts from `start`, or
  // from the rays near the middle one.
  ShapeFit Fit(const std::array<double, 4>& fixed,
               const std::vector<double>* start,
               double radius,
               bool full = false) const {
    const std::size_t n = used.size();
    const std::size_t terms = full ? 7 : 3;
    ShapeFit fit;
    std::vector<std::array<double, 7>> rows(n);
    std::vector<double> z(n), size(n);
    fit.residual.resize(n);
    for (std::size_t j = 0; j < n; ++j) {
      const Basis& e = basis[static_cast<std::size_t>(used[j])];
      rows[j] = {1.0, e.c1, e.s1, e.c2, e.s2, e.c3, e.s3};
      z[j] = crossing[j];
      if (!full) {
        for (std::size_t h = 0; h < 4; ++h) z[j] -= fixed[h] * rows[j][3 + h];
      }
    }
    if (start != nullptr) {
      fit.weight = *start;
    } else {
      std::vector<double> copy = z;
      const double centre = MedianOf(copy);
      for (std::size_t j = 0; j < n; ++j) copy[j] = std::abs(z[j] - centre);
      const double gate =
          std::max({3.0, 4.0 * kMadToSd * MedianOf(copy), 0.04 * radius});
      for (std::size_t j = 0; j < n; ++j) {
        fit.weight.push_back(std::abs(z[j] - centre) < gate ? 1.0 : 0.0);
      }
    }
    for (int pass = 0; pass < 6; ++pass) {
      std::array<double, 49> a{};
      std::array<double, 7> b{};
      for (std::size_t j = 0; j < n; ++j) {
        for (std::size_t r = 0; r < terms; ++r) {
          b[r] += fit.weight[j] * rows[j][r] * z[j];
          for (std::size_t c = 0; c < terms; ++c) {
            a[r * terms + c] += fit.weight[j] * rows[j][r] * rows[j][c];
          }
        }
      }
      if (!SolvePositive(std::span(a).first(terms * terms),
                         std::span(b).first(terms),
                         kLeastPivot)) {
        return {};
      }
      fit.p = b;
      for (std::size_t j = 0; j < n; ++j) {
        double v = 0.0;
        for (std::size_t r = 0; r < terms; ++r) v += fit.p[r] * rows[j][r];
        fit.residual[j] = z[j] - v;
        size[j] = std::abs(fit.residual[j]);
      }
      std::vector<double> copy = size;
      fit.spread = std::clamp(kMadToSd * MedianOf(copy), 0.05, cap);
      double inliers = 0.0;
      for (std::size_t j = 0; j < n; ++j) {
        const double u = size[j] / (kTukey * fit.spread);
        fit.weight[j] = u < 1.0 ? (1.0 - u * u) * (1.0 - u * u) : 0.0;
        if (size[j] < 3.5 * fit.spread) inliers += 1.0;
      }
      fit.seen = inliers / kRays;
    }
    if (!full) {
      for (std::size_t h = 0; h < 4; ++h) fit.p[3 + h] = fixed[h];
    }
    return fit;
  }
};

}  // namespace

double OutlineShape::RadiusAt(double angle_rad) const {
  return r + c2 * std::cos(2 * angle_rad) + s2 * std::sin(2 * angle_rad) +
         c3 * std::cos(3 * angle_rad) + s3 * std::sin(3 * angle_rad);
}

std::optional<OutlineTrace> TraceOutline(const Frame& frame,
                                         const OutlineShape& guess,
                                         double window_px,
                                         const BareGround* bare) {
  std::array<Basis, kRays> basis;
  for (int i = 0; i < kRays; ++i) {
    const double a = kTwoPi * i / kRays;
    basis[static_cast<std::size_t>(i)] = {std::cos(a),
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

    std::optional<Polar> before;
    if (bare != nullptr)
      before =
          ReadPolar(*bare->frame, trace.shape, window_px, basis, BackTo(*bare));

    // Levels of paint and tile per ray, and the noise outside.
    std::array<std::array<float, kRays>, 3> tile{}, paint{}, drift{};
    std::array<float, 3> noise{}, noise_before{};
    std::array<std::vector<float>, 3> steps;
    std::vector<float> pick, paints, noises, noises_before, tiles;
    double left = 0.0, varied = 0.0;
    for (std::size_t c = 0; c < 3; ++c) {
      paints.clear();
      noises.clear();
      noises_before.clear();
      tiles.clear();
      const auto level = [&](int i, int from, int to, const Polar* less) {
        pick.clear();
        for (int k = from; k < to; ++k) {
          pick.push_back(polar.at(c, i, k) -
                         (less != nullptr ? less->at(c, i, k) : 0.0F));
        }
        return MedianOf(pick);
      };
      const auto spread = [&](float about) {  // of what was picked last
        for (float& v : pick) v = std::abs(v - about);
        return static_cast<float>(kMadToSd) * MedianOf(pick);
      };
      for (const int i : rays) {
        const auto iu = static_cast<std::size_t>(i);
        const float out = level(i, outer, n, nullptr);
        if (i % kNoiseEvery == 0) noises.push_back(spread(out));
        if (before && before->inside[iu]) {
          drift[c][iu] = level(i, outer, n, &*before);
          if (i % kNoiseEvery == 0) {
            noises_before.push_back(spread(drift[c][iu]));
            left += std::pow(noises_before.back(), 2);
            varied += VarianceOf(*before, c, i);
          }
        }
        paint[c][iu] = level(i, 0, inner, nullptr);
        paints.push_back(paint[c][iu]);
        steps[c].push_back(paint[c][iu] - out);
        tiles.push_back(out);
        tile[c][iu] = out;
      }
      trace.paint[c] = MedianOf(paints);
      trace.tile[c] = MedianOf(tiles);
      // Rounding to whole levels hides noise below about half a level; chroma
      // is coarser in place, so it has to be twice as clear to count as much.
      const float share = c == 0 ? 1.0F : 2.0F;
      noise[c] = std::max(0.7F, MedianOf(noises)) * share;
      noise_before[c] = std::max(0.7F, MedianOf(noises_before)) * share;
    }
    trace.patterned = varied > kPatterned * left;
    if (trace.patterned) noise = noise_before;
    SmoothAround(rays, &paint);
    // What the paint's own luma varies by round the rim cannot tell it.
    pick.clear();
    for (const int i : rays) {
      pick.push_back(
          std::abs(paint[0][static_cast<std::size_t>(i)] - trace.paint[0]));
    }
    const float shading = static_cast<float>(kMadToSd) * MedianOf(pick);
    const auto bare_level = [&](std::size_t c, int i, int k) {
      const auto iu = static_cast<std::size_t>(i);
      return trace.patterned && before->inside[iu]
                 ? before->at(c, i, k) + drift[c][iu]
                 : tile[c][iu];
    };
    const auto contrast = [&](auto&& step) {
      float power = 0.0F;
      for (std::size_t c = 0; c < 3; ++c) {
        power += std::pow(step(c) / noise[c], 2.0F);
      }
      return std::sqrt(power);
    };
    if (trace.patterned) {
      pick.clear();
      for (const int i : rays) {
        const auto iu = static_cast<std::size_t>(i);
        pick.push_back(contrast(
            [&](std::size_t c) { return paint[c][iu] - tile[c][iu]; }));
      }
      trace.contrast_to_noise = static_cast<double>(MedianOf(pick));
    } else {
      // Of paint like its tile the lit side is brighter and the other darker.
      trace.contrast_to_noise = static_cast<double>(
          contrast([&](std::size_t c) { return MedianOf(steps[c]); }));
    }
    trace.rim_only = trace.contrast_to_noise < kLeastFillContrast;
    if (trace.rim_only) {
      // The steepest place of luma, whichever way it goes: a lamp makes one
      // side of the rim bright and the other dark.
      float crest = 0.0F;
      for (int k = inner; k < outer; ++k) {
        float sum = 0.0F;
        for (const int i : rays) sum += Steepness(polar, i, k);
        crest = std::max(crest, sum / static_cast<float>(rays.size()));
      }
      pick.clear();
      for (int k = 0; k < n; ++k) {
        float sum = 0.0F;
        for (const int i : rays) sum += Steepness(polar, i, k);
        pick.push_back(sum / static_cast<float>(rays.size()));
      }
      const float ground = MedianOf(pick);
      trace.contrast_to_noise = crest / noise[0];
      if (crest < 1.5F * ground || crest < 1.0F) return std::nullopt;
      trace.rim_weight = 1.0F / crest;
    }

    // The signal, smoothed over three steps (even, so it does not shift).
    std::vector<float> q(static_cast<std::size_t>(kRays * n), 0.0F);
    std::vector<float> raw(static_cast<std::size_t>(n));
    for (const int i : rays) {
      for (int k = 0; k < n; ++k) {
        const auto ku = static_cast<std::size_t>(k);
        const auto iu = static_cast<std::size_t>(i);
        if (trace.rim_only) {
          raw[ku] = trace.rim_weight * Steepness(polar, i, k);
          continue;
        }
        float along = 0.0F, power = 0.0F, clear_of = 0.0F;
        for (std::size_t c = 0; c < 3; ++c) {
          const float under = bare_level(c, i, k);
          const float step = paint[c][iu] - under;
          // What else than noise moves the level, squared.
          const float stray =
              c == 0 ? shading * shading + kShade * kShade *
                                               (Squared(paint[c][iu] - kBlack) +
                                                Squared(under - kBlack))
                     : Squared(kChromaPlace * step);
          const float weight = 1.0F / (noise[c] * noise[c] + stray);
          along += weight * step * (polar.at(c, i, k) - under);
          power += weight * step * step;
          clear_of += step * step / (noise[c] * noise[c]);
        }
        // Where the ground looks like the paint nothing is learned.
        if (clear_of < kLeastRayContrast * kLeastRayContrast) {
          raw[ku] = k > 0 ? raw[ku - 1] : 1.0F;
        } else {
          raw[ku] = std::clamp(along / power, -1.0F, 2.0F);
        }
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
    const double common = trace.rim_only
                              ? CrestNear(mean_profile.data(), n, mid, mid / 2)
                              : FallNear(mean_profile.data(), n, mid);
    if (std::isnan(common)) return std::nullopt;
    std::vector<int> used;
    for (const int i : rays) {
      const float* row = q.data() + static_cast<std::ptrdiff_t>(i) * n;
      const double k = trace.rim_only
                           ? CrestNear(row, n, common, std::max(6, mid / 5))
                           : FallNear(row, n, common);
      if (std::isnan(k)) continue;
      used.push_back(i);
      crossing.push_back(
          basis[static_cast<std::size_t>(i)].RadiusOf(trace.shape) +
          polar.offset(k));
    }
    if (used.size() < kRays / 3) return std::nullopt;

    // The shape that most of the rays agree on: with the ellipse and egg of the
    // last frame, as a circle, or fitted in full where the outline is whole.
    const double cap = std::max(1.0, 0.02 * trace.shape.r);
    const ShapeFitter fitter{basis, used, crossing, cap};
    const OutlineShape& last = trace.shape;
    ShapeFit fit =
        fitter.Fit({last.c2, last.s2, last.c3, last.s3}, nullptr, last.r);
    if (fit.seen <= 0.7) {
      const ShapeFit circle = fitter.Fit({}, nullptr, last.r);
      if (circle.seen > fit.seen) fit = circle;
    }
    const ShapeFit whole =
        fitter.Fit({}, fit.seen > 0.7 ? &fit.weight : nullptr, last.r, true);
    if (whole.seen >= fit.seen - 0.02 && whole.seen > 0.75) fit = whole;
    const std::array<double, 7>& p = fit.p;
    const std::vector<double>& residual = fit.residual;
    const std::vector<double>& weight = fit.weight;
    const double seen = fit.seen, spread = fit.spread;
    // Rays that know the edge less well than most have seen it all the same.
    const auto on_shape =
        std::count_if(residual.begin(), residual.end(), [&](double r) {
          return std::abs(r) < std::max(3.5 * spread, kOnShape_px);
        });
    trace.visible = static_cast<double>(on_shape) / kRays;
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
    for (double off = -window_px / 2; round == 0 && off <= window_px / 2;
         off += 0.25) {
      aligned.clear();
      for (std::size_t j = 0; j < used.size(); j += 2) {
        if (weight[j] <= 0.0) continue;
        const Basis& e = basis[static_cast<std::size_t>(used[j])];
        const double k =
            (crossing[j] + off - e.RadiusOf(guess)) / polar.step_px + mid;
        const int ki = static_cast<int>(std::floor(k));
        if (ki < 0 || ki + 1 >= n) continue;
        const float* row = q.data() + static_cast<std::ptrdiff_t>(used[j]) * n;
        aligned.push_back(row[ki] +
                          static_cast<float>(k - ki) * (row[ki + 1] - row[ki]));
      }
      if (aligned.size() < 8) continue;
      const float m = MedianOf(aligned);
      if (off < 0.0 && m >= 0.8F) at80 = off;
      if (off > 0.0 && m <= 0.2F && std::isnan(at20)) at20 = off;
    }
    if (trace.rim_only) {
      trace.edge_width_px = 4.0;  // no step to measure: what shading blurs
    } else if (!std::isnan(at20) && !std::isnan(at80)) {
      trace.edge_width_px = at20 - at80;
    }
    if (round == 1 || (moved < 0.5 && grown < 0.2 * window_px)) break;
  }
  return trace;
}

}  // namespace flowkin
