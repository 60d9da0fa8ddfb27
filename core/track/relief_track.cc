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

/// Minus one over the slope of ln(relief) between the two times; 0 if that is
/// not a decay.
double TimeConstant(const std::vector<double>& t_s,
                    const std::vector<double>& relief,
                    double from_s,
                    double to_s) {
  double n = 0.0;
  double st = 0.0;
  double sy = 0.0;
  double stt = 0.0;
  double sty = 0.0;
  for (std::size_t i = 0; i < relief.size(); ++i) {
    if (t_s[i] < from_s || t_s[i] > to_s || !(relief[i] > 0.0)) continue;
    const double y = std::log(relief[i]);
    n += 1.0;
    st += t_s[i];
    sy += y;
    stt += t_s[i] * t_s[i];
    sty += t_s[i] * y;
  }
  const double spread = n * stt - st * st;
  if (n < 3.0 || !(spread > 0.0)) return 0.0;
  const double slope = (n * sty - st * sy) / spread;
  return slope < 0.0 ? -1.0 / slope : 0.0;
}

}  // namespace

double ReliefDecayTime(const std::vector<double>& t_s,
                       const std::vector<double>& relief) {
  FLOWKIN_CHECK(t_s.size() == relief.size());
  if (relief.size() < 4) return 0.0;
  double clock = FallTime(t_s, relief);
  for (int pass = 0; pass < 8 && clock > 0.0; ++pass) {
    const double next =
        TimeConstant(t_s, relief, kDecayFrom * clock, kDecayTo * clock);
    if (!(next > 0.0)) return clock;
    // Steep relief saturates highlights and delays the first fall; the window
    // must not run away from it, though.
    const double step = std::clamp(next / clock, 0.7, 1.4);
    clock *= step;
    if (std::abs(step - 1.0) < 1e-3) break;
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
