#include "core/track/relief_track.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <ostream>

#include "core/base/check.h"

namespace flowkin {
namespace {

/// First time below 1/e of the start, two values in a row; 0 if never.
double FallTime(const std::vector<double>& t_s,
                const std::vector<double>& relief) {
  std::array<double, 3> head{relief[0], relief[1], relief[2]};
  std::sort(head.begin(), head.end());
  const double limit = head[1] * std::exp(-1.0);
  if (!(limit > 0.0)) return 0.0;
  for (std::size_t i = 1; i + 1 < relief.size(); ++i) {
    if (relief[i] > limit || relief[i + 1] > limit) continue;
    const double a = relief[i - 1];
    const double b = relief[i];
    const double f = a > b ? std::clamp((a - limit) / (a - b), 0.0, 1.0) : 1.0;
    return t_s[i - 1] + f * (t_s[i] - t_s[i - 1]);
  }
  return 0.0;
}

/// ln(relief) = level - t / clock between two times; clock 0 if that is not a
/// decay.
struct Line {
  double level = 0.0;
  double clock_s = 0.0;
};

Line FitLine(const std::vector<double>& t_s,
             const std::vector<double>& relief,
             double lost,
             double from_s,
             double to_s) {
  double n = 0.0;
  double st = 0.0;
  double sy = 0.0;
  double stt = 0.0;
  double sty = 0.0;
  for (std::size_t i = 0; i < relief.size(); ++i) {
    if (t_s[i] < from_s || t_s[i] > to_s || !(relief[i] + lost > 0.0)) continue;
    const double y = std::log(relief[i] + lost);
    n += 1.0;
    st += t_s[i];
    sy += y;
    stt += t_s[i] * t_s[i];
    sty += t_s[i] * y;
  }
  const double spread = n * stt - st * st;
  if (n < 3.0 || !(spread > 0.0)) return {};
  const double slope = (n * sty - st * sy) / spread;
  if (!(slope < 0.0)) return {};
  return {(sy - slope * st) / n, -1.0 / slope};
}

}  // namespace

double ReliefDecayTime(const std::vector<double>& t_s,
                       const std::vector<double>& relief,
                       double flat_s) {
  FLOWKIN_CHECK(t_s.size() == relief.size());
  if (relief.size() < 4) return 0.0;
  const double fall = FallTime(t_s, relief);
  if (!(fall > 0.0)) return 0.0;
  double clock = fall;
  double lost = 0.0;
  for (int pass = 0; pass < 60; ++pass) {
    const Line line =
        FitLine(t_s, relief, lost, kDecayFrom * fall, kDecayTo * fall);
    if (!(line.clock_s > 0.0)) return clock;
    const double before = clock;
    clock = line.clock_s;
    if (clock > flat_s || std::abs(clock - before) < 1e-4 * clock) break;
    lost = std::exp(line.level - flat_s / clock);
  }
  return clock;
}

void WriteReliefTrace(std::ostream& out, const ReliefTrack& track) {
  out << "t_s,since_laid_s,motion_codes,contrast_codes,contrast_sd_codes,"
         "share,brightness,shift_px\n";
  const auto precision = out.precision(7);
  for (const ReliefSample& s : track.samples) {
    out << s.t_s << ',';
    // Before the laying, and where no relief was measured, cells stay empty.
    const bool after = track.laid_s && s.t_s > *track.laid_s;
    if (after) out << s.t_s - *track.laid_s;
    out << ',' << s.motion << ',';
    if (after && s.contrast_sd > 0.0) {
      out << s.contrast << ',' << s.contrast_sd << ',' << s.share;
    } else {
      out << ",,";
    }
    out << ',' << s.brightness << ',' << s.shift_px << '\n';
  }
  out.precision(precision);
}

}  // namespace flowkin
