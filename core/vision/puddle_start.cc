#include "core/vision/puddle_start.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace flowkin {
namespace {

constexpr int kRays = 64;
constexpr double kTwoPi = 6.283185307179586;
// Rows of the stack up to the final radius, but not finer than half a pixel.
constexpr double kRowsPerRadius = 48.0;
constexpr double kFinestStep = 0.5;
// A fall from paint to tile is measured over this many rows on both sides.
constexpr int kReach = 2;
// Shadows of hand and syringe move luma far and chroma little: the planes are
// weighed by that rather than by noise.
constexpr std::array<float, 3> kShadowSd = {25.0F, 4.0F, 4.0F};
// Paint and ground differ by so many of these at least, or tell nothing.
constexpr float kLeastStep = 1.0F;
// A path needs this many of the rays to count as seen.
constexpr double kLeastSupport = 0.12;

}  // namespace

PuddleStart FindPuddleStart(const std::deque<WorkPicture>& ring,
                            const WorkPicture& bare,
                            const OutlineTrace& trace,
                            int factor,
                            bool covers_clip) {
  PuddleStart start;
  if (ring.size() < 4) return start;
  const WorkPicture& newest = ring.back();
  // Full resolution to work px: pixel centres.
  const auto to_work = [&](double v) { return (v + 0.5) / factor - 0.5; };
  const double cx = to_work(trace.shape.x) - newest.shift.x;
  const double cy = to_work(trace.shape.y) - newest.shift.y;
  const double r_now = trace.shape.r / factor;
  const double step = std::max(kFinestStep, r_now / kRowsPerRadius);
  const int rows = static_cast<int>(std::ceil(r_now / step)) + 8;
  const int cols = static_cast<int>(ring.size());
  const int median_now = PlaneMedian(newest.y);
  const int cb_now = PlaneMedian(newest.cb), cr_now = PlaneMedian(newest.cr);

  // How a picture's colours are brought to those of the newest: exposure and
  // white balance change.
  struct Cast {
    float gain, cb, cr;
  };
  const auto cast_of = [&](const WorkPicture& p) {
    return Cast{static_cast<float>(median_now) /
                    static_cast<float>(std::max(1, PlaneMedian(p.y))),
                static_cast<float>(cb_now - PlaneMedian(p.cb)),
                static_cast<float>(cr_now - PlaneMedian(p.cr))};
  };
  const Cast bare_cast = cast_of(bare);

  // support[t][r]: rays (as a share) that fall from paint to tile at r.
  std::array<std::array<double, 2>, kRays> rays;
  for (std::size_t i = 0; i < kRays; ++i) {
    const double a = kTwoPi * static_cast<double>(i) / kRays;
    const double stretch =
        trace.shape.RadiusAt(a) / std::max(1.0, trace.shape.r);
    rays[i] = {std::cos(a) * stretch, std::sin(a) * stretch};
  }
  std::vector<std::vector<float>> support(
      static_cast<std::size_t>(cols),
      std::vector<float>(static_cast<std::size_t>(rows), 0.0F));
  for (int t = 0; t < cols; ++t) {
    const WorkPicture& p = ring[static_cast<std::size_t>(t)];
    const Cast cast = cast_of(p);
    auto& row = support[static_cast<std::size_t>(t)];
    std::vector<float> q(static_cast<std::size_t>(rows + kReach));
    for (const auto& [ca, sa] : rays) {
      for (std::size_t k = 0; k < q.size(); ++k) {
        const double r = (static_cast<double>(k)) * step;
        const auto x = static_cast<float>(cx + p.shift.x + r * ca);
        const auto y = static_cast<float>(cy + p.shift.y + r * sa);
        const float luma = SampleAt(p.y, x, y);
        if (luma < 0.0F) {
          q[k] = k > 0 ? q[k - 1] : 0.0F;
          continue;
        }
        if (trace.rim_only) {
          q[k] = luma * cast.gain;
          continue;
        }
        const std::array<float, 3> seen = {luma * cast.gain,
                                           SampleAt(p.cb, x, y) + cast.cb,
                                           SampleAt(p.cr, x, y) + cast.cr};
        std::array<float, 3> under = trace.tile;
        if (trace.patterned) {
          const float bx = x - p.shift.x, by = y - p.shift.y;
          const float bare_luma = SampleAt(bare.y, bx, by);
          if (bare_luma >= 0.0F) {
            under = {bare_luma * bare_cast.gain,
                     SampleAt(bare.cb, bx, by) + bare_cast.cb,
                     SampleAt(bare.cr, bx, by) + bare_cast.cr};
          }
        }
        float along = 0.0F, power = 0.0F;
        for (std::size_t c = 0; c < 3; ++c) {
          const float rise = trace.paint[c] - under[c];
          const float weight = 1.0F / (kShadowSd[c] * kShadowSd[c]);
          along += weight * rise * (seen[c] - under[c]);
          power += weight * rise * rise;
        }
        // Where the ground looks like the paint nothing is learned.
        if (trace.patterned && power < kLeastStep * kLeastStep) {
          q[k] = k > 0 ? q[k - 1] : 1.0F;
        } else {
          q[k] = std::clamp(along / std::max(1e-6F, power), 0.0F, 1.2F);
        }
      }
      for (int k = kReach; k < rows; ++k) {
        const auto ku = static_cast<std::size_t>(k);
        float fall = q[ku - kReach] - q[ku + kReach];
        if (trace.rim_only) {
          // Any line at that radius, in units of the rim's height.
          fall = std::abs(fall) * trace.rim_weight;
        }
        if (fall > 0.2F) row[ku] += std::min(fall, 0.7F) / kRays;
      }
    }
  }
  if (trace.rim_only) {
    // What was there before anything moved is not paint.
    const std::vector<float> first = support.front();
    for (auto& row : support) {
      for (std::size_t k = 0; k < row.size(); ++k) {
        row[k] = std::max(0.0F, row[k] - first[k]);
      }
    }
  }

  // Best path that never shrinks, backwards in time from the outline as it is.
  const int k_now =
      std::clamp(static_cast<int>(std::lround(r_now / step)), 1, rows - 1);
  constexpr float kNever = -1e9F;
  std::vector<std::vector<float>> score(
      support.size(), std::vector<float>(static_cast<std::size_t>(rows), 0.0F));
  std::vector<std::vector<int>> from(
      support.size(), std::vector<int>(static_cast<std::size_t>(rows), 0));
  for (int t = 0; t < cols; ++t) {
    const auto tu = static_cast<std::size_t>(t);
    float best = kNever;
    int best_k = 0;
    // In one picture the radius may grow by a sixth of the final one.
    const int reach = std::max(3, k_now / 6);
    for (int k = 0; k < rows; ++k) {
      const auto ku = static_cast<std::size_t>(k);
      if (t == 0) {
        score[tu][ku] = support[tu][ku];
        continue;
      }
      best = kNever;
      // One step back is allowed for noise, at a price.
      for (int j = std::max(0, k - reach); j <= std::min(rows - 1, k + 1);
           ++j) {
        float s = score[tu - 1][static_cast<std::size_t>(j)];
        if (j > k) s -= 0.02F;
        if (s > best) {
          best = s;
          best_k = j;
        }
      }
      score[tu][ku] = best + support[tu][ku];
      from[tu][ku] = best_k;
    }
  }
  std::vector<int> path(support.size());
  int k = k_now;
  for (int d = -2; d <= 2; ++d) {
    const int c = std::clamp(k_now + d, 0, rows - 1);
    if (score.back()[static_cast<std::size_t>(c)] >
        score.back()[static_cast<std::size_t>(k)]) {
      k = c;
    }
  }
  for (std::size_t t = support.size(); t-- > 0;) {
    path[t] = k;
    k = from[t][static_cast<std::size_t>(k)];
  }

  // Earliest picture of the unbroken run of seen outlines (a few may be
  // hidden by the hand).
  struct Point {
    double t, r;
    bool seen;
  };
  std::vector<Point> points;
  for (std::size_t t = 0; t < support.size(); ++t) {
    const auto& row = support[t];
    const int p = path[t];
    double r = p * step;
    bool seen = false;
    if (p >= 1 && p + 1 < rows) {
      const auto pu = static_cast<std::size_t>(p);
      const float a = row[pu - 1], b = row[pu], c = row[pu + 1];
      // Close to the centre lies the nozzle, which stands still.
      seen = b >= static_cast<float>(kLeastSupport) && r > 0.1 * r_now;
      const float bend = a - 2.0F * b + c;
      if (bend < 0.0F) {
        r += step * std::clamp(0.5F * (a - c) / bend, -0.5F, 0.5F);
      }
    }
    points.push_back({ring[t].t_s, r, seen});
  }
  std::size_t first = points.size();
  int hidden = 0;
  for (std::size_t t = points.size(); t-- > 0;) {
    if (points[t].seen) {
      first = t;
      hidden = 0;
    } else if (++hidden > std::max<int>(6, static_cast<int>(0.25 * cols))) {
      break;
    }
  }
  if (first == points.size()) return start;
  for (std::size_t t = first; t < points.size(); ++t) {
    if (points[t].seen)
      start.early_radius.emplace_back(points[t].t, points[t].r);
  }
  const auto& early = start.early_radius;
  if (early.size() < 4) return start;
  if (first <= 1 && covers_clip && early.front().second > 0.5 * r_now) {
    start.there_from_start = true;
    return start;
  }
  if (first <= 1 && !covers_clip) return start;  // began before the ring

  // Straight line through R^2 of the first growth: from the first sight until
  // the square has grown by half of the final square, at least five pictures.
  // Points before the growth (a nozzle's ring) bend the line; they are dropped
  // while that makes the line fit better.
  const double r2_end = std::max(
      0.45 * r_now * r_now, 2.0 * early.front().second * early.front().second);
  std::size_t count = 0;
  while (count < early.size() &&
         (count < 5 || early[count].second * early[count].second < r2_end)) {
    ++count;
  }
  const auto line = [&](std::size_t a, std::size_t b, double& rms) {
    double sw = 0, st = 0, sy = 0, stt = 0, sty = 0;
    for (std::size_t i = a; i < b; ++i) {
      const double t = early[i].first - early[a].first;
      const double y = early[i].second * early[i].second;
      // R^2 of an edge known to a fixed part of a pixel: weight 1 / R^2.
      const double w = 1.0 / std::max(1.0, y);
      sw += w;
      st += w * t;
      sy += w * y;
      stt += w * t * t;
      sty += w * t * y;
    }
    const double det = sw * stt - st * st;
    const double slope = det > 0 ? (sw * sty - st * sy) / det : 0.0;
    const double y0 = (sy - slope * st) / sw;
    rms = 0;
    for (std::size_t i = a; i < b; ++i) {
      const double t = early[i].first - early[a].first;
      const double y = early[i].second * early[i].second;
      rms += std::pow(y - y0 - slope * t, 2) / std::max(1.0, y);
    }
    rms =
        std::sqrt(rms / std::max<double>(1.0, static_cast<double>(b - a) - 2));
    return slope > 0 ? early[a].first - y0 / slope : early[a].first;
  };
  double best_rms = 0.0;
  double t0 = line(0, count, best_rms);
  std::size_t used = 0;
  for (std::size_t a = 1; a + 5 <= count && a <= count / 2; ++a) {
    double rms = 0.0;
    const double t = line(a, count, rms);
    if (rms < 0.8 * best_rms) {
      best_rms = rms;
      t0 = t;
      used = a;
    }
  }
  const double frame_s =
      (ring.back().t_s - ring.front().t_s) / std::max(1, cols - 1);
  // Not after the first sight, and not long before it: the nozzle hides
  // little, and a hand does not press evenly.
  const double seen_s = early[used].first;
  const double latest = seen_s;
  const double earliest = seen_s - std::max(4.0 * frame_s, 0.4);
  start.start_s = std::max(0.0, std::clamp(t0, earliest, latest));
  start.sd_s = std::max(0.5 * frame_s, 0.25 * (seen_s - *start.start_s));
  return start;
}

}  // namespace flowkin
