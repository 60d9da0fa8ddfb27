#include "core/flow/stream_test.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/fit/least_squares.h"
#include "core/fit/robust.h"
#include "core/flow/coat_thickness.h"
#include "core/flow/physics.h"

namespace flowkin {
namespace {

// How the break time grows with viscosity. Theory bounds the exponent by 1/3 (a
// fixed critical flow) and 5/3 (breakup length equal to the fall)
// [Javadi2013]. In between it depends on stick, height and paint. The
// slender-thread equations (tests/support/stream_sim), solved for random
// benches (stick 6-20 mm wide, thread hanging from a patch of 1.7-3 mm radius,
// dip 20-55 mm, fall 35-105 mm, 250-4500 mm2/s, surface tension 27-36 mN/m)
// and pairs of paints 1.6 to 3 apart, give 0.78 on average, 0.10 (1 sd) from
// bench to bench once the chance in each break is taken off.
constexpr Estimate kBreakTimeExponent{0.78, 0.1};

// When a thread this thin parts is partly chance: in the slender thread another
// seed of the disturbance moves the break by 2 %.
constexpr double kBreakChanceRelSd = 0.02;

// Film left on the stick [Jeffreys1930]: flow ~ nu^(1/2) t^(-3/2), so the time
// one drop takes, brought to a common time, goes with nu^(-1/2).
constexpr Estimate kDripExponent{-0.5, 0.02};
// Drops off a flat stick are not all of one size; common practice, no source.
constexpr double kDropVolumeRelSd = 0.1;

// Speed of the neck ~ sigma / mu [Papageorgiou1995]. Density and surface
// tension differ a little from paint to paint.
constexpr Estimate kThinningExponent{-1.0, 0.1};

// Standard uncertainty of an event read off the pictures, as a share of their
// distance.
constexpr double kFrameShare = 0.6;

struct Break {
  double t_s = 0.0;
  double sd_s = 0.0;
  /// All of the fall was empty at once, what hangs from the stick too.
  bool in_one_picture = false;
};

/// A stream that runs: seen in most pieces for a while.
bool HasStream(const StreamEpisode& e) {
  const auto count = static_cast<std::size_t>(e.num_pieces);
  const std::size_t first = count / 7;
  std::size_t seen = 0;
  for (std::size_t i = 0; i < e.t_s.size(); ++i) {
    std::size_t n = 0;
    for (std::size_t p = first; p < count; ++p)
      n += e.presence_sd[i * count + p] < 0.5F ? 1 : 0;
    if (n * 2 >= count - first) ++seen;
  }
  return seen >= 6;
}

/// Looks at one episode's pieces.
class Pieces {
 public:
  explicit Pieces(const StreamEpisode& e)
      : e_(e), first_(e.num_pieces / 7), single_(SinglePieces()) {
    for (const double reach_s : kReaches_s)
      for (const int height : kHeights) {
        if (height > Count()) continue;
        if (auto g = MakeGroups(height, reach_s)) groups_.push_back(*g);
      }
    FindUpperGaps();
  }

  std::optional<Break> FindBreak() const {
    for (std::size_t i = 1; i < Samples(); ++i)
      for (const Groups& g : groups_) {
        if (!GapAt(g, i).IsGap() || !LastsFrom(g, i) || !Opens(g, i) ||
            !AllGone(i) || !WasThere(i))
          continue;
        Break b = FirstGap(g, i);
        if (!IsSeen(i))
          b.sd_s = std::hypot(b.sd_s, kUnseenShare * (b.t_s - e_.lift_s));
        return b;
      }
    return std::nullopt;
  }

 private:
  /// Presence of `height` neighbouring pieces over the pictures within
  /// `reach_s` taken together, and what it is good for.
  /// [sample * count + uppermost piece]
  struct Groups {
    int height = 1;
    double reach_s = 0.0;
    int count = 0;
    std::vector<double> presence, sd;
    double Presence(std::size_t i, int p) const { return presence[At(i, p)]; }
    double Sd(std::size_t i, int p) const { return sd[At(i, p)]; }
    std::size_t At(std::size_t i, int p) const {
      return i * static_cast<std::size_t>(count) + static_cast<std::size_t>(p);
    }
  };

  static constexpr double kGone = 0.4;
  // What a codec leaves behind, or light that drifted since.
  static constexpr double kAsGoodAsGone = 0.15;
  // Three of these between what runs and kGone.
  static constexpr double kReliableSd = 0.2;
  // Codecs freeze noise for a while: only values this far apart tell of it.
  static constexpr double kNoiseLag_s = 0.1;
  static constexpr double kNoiseSpan_s = 0.8;
  // A gap must last this long: one bad picture is none, unless pictures are
  // rare.
  static constexpr double kLeastGap_s = 0.03;

  // A thread that parts low above the paint may close the gap again within a
  // tenth of a second, on a third of the fall; noise hides what is small and
  // short. So gaps of many heights are looked for, in one picture and in the
  // mean of a few.
  static constexpr std::array<int, 5> kHeights{2, 3, 4, 6, 9};
  static constexpr std::array<double, 3> kReaches_s{0.0, 0.017, 0.034};

  std::size_t Samples() const { return e_.t_s.size(); }
  int Count() const { return e_.num_pieces; }
  std::size_t At(std::size_t i, int p) const {
    return i * static_cast<std::size_t>(e_.num_pieces) +
           static_cast<std::size_t>(p);
  }

  Groups SinglePieces() const {
    Groups g;
    g.count = Count();
    g.presence.assign(e_.presence.begin(), e_.presence.end());
    g.sd.assign(e_.presence_sd.begin(), e_.presence_sd.end());
    AddScatter(g);
    return g;
  }

  // None where pictures are too rare for a mean of some.
  std::optional<Groups> MakeGroups(int height, double reach_s) const {
    Groups g;
    g.height = height;
    g.reach_s = reach_s;
    g.count = Count() - height + 1;
    g.presence.resize(Samples() * static_cast<std::size_t>(g.count));
    g.sd.resize(g.presence.size());
    for (std::size_t i = 0; i < Samples(); ++i)
      for (int p = 0; p < g.count; ++p) {
        double sum = 0.0, weight = 0.0;
        for (int k = p; k < p + height; ++k) {
          // Pieces seen well count alike.
          const double sd = single_.Sd(i, k);
          const double w = 1.0 / (sd * sd + 0.03 * 0.03);
          sum += w * e_.presence[At(i, k)];
          weight += w;
        }
        g.presence[g.At(i, p)] = sum / weight;
        g.sd[g.At(i, p)] = 1.0 / std::sqrt(weight);
      }
    if (reach_s > 0.0 && !TakeMeans(g)) return std::nullopt;
    AddScatter(g);
    return g;
  }

  // Over the pictures within reach of each; false if there never are any.
  bool TakeMeans(Groups& g) const {
    const std::vector<double> presence = g.presence;
    const auto width = static_cast<std::size_t>(g.count);
    const double reach_s = g.reach_s + 1e-3;  // stamps are rounded
    bool any = false;
    std::size_t from = 0, to = 0;
    for (std::size_t i = 0; i < Samples(); ++i) {
      while (e_.t_s[i] - e_.t_s[from] > reach_s) ++from;
      while (to < Samples() && e_.t_s[to] - e_.t_s[i] <= reach_s) ++to;
      any = any || to - from > 1;
      for (std::size_t p = 0; p < width; ++p) {
        double sum = 0.0;
        for (std::size_t k = from; k < to; ++k) sum += presence[k * width + p];
        g.presence[i * width + p] = sum / static_cast<double>(to - from);
      }
    }
    return any;
  }

  // The scatter of the last moments before each sample is the noise as it is,
  // whatever the camera and the codec made of it.
  void AddScatter(Groups& g) const {
    const double lag_s = kNoiseLag_s + 2.0 * g.reach_s;
    const double span_s = kNoiseSpan_s + 2.0 * g.reach_s;
    // Last sample at least `lag_s` before each.
    std::vector<std::size_t> before(Samples());
    for (std::size_t i = 0, j = 0; i < Samples(); ++i) {
      while (j < i && e_.t_s[i] - e_.t_s[j + 1] >= lag_s) ++j;
      before[i] = e_.t_s[i] - e_.t_s[j] >= lag_s ? j : i;
    }
    std::vector<double> steps;
    for (int p = 0; p < g.count; ++p) {
      double scatter = 0.0, next_s = 0.0;
      for (std::size_t i = 0; i < Samples(); ++i) {
        // It changes slowly: no need to look at every picture, nor often.
        if (e_.t_s[i] >= next_s) {
          next_s = e_.t_s[i] + kNoiseLag_s;
          steps.clear();
          double next_ago_s = lag_s;
          for (std::size_t k = i; k-- > 0;) {
            const double ago_s = e_.t_s[i] - e_.t_s[k];
            if (ago_s > span_s) break;
            if (ago_s <= next_ago_s || before[k] == k) continue;
            next_ago_s = ago_s + 0.25 * kNoiseLag_s;
            steps.push_back(
                std::abs(g.Presence(k, p) - g.Presence(before[k], p)));
          }
          if (steps.size() >= 5)
            scatter = 1.4826 * Median(steps) / std::sqrt(2.0);
        }
        double& sd = g.sd[g.At(i, p)];
        sd = std::max(sd, scatter);
      }
    }
  }

  bool Gone(const Groups& g, std::size_t i, int p) const {
    const double sd = g.Sd(i, p);
    return sd < kReliableSd &&
           g.Presence(i, p) < std::clamp(3.0 * sd, kAsGoodAsGone, kGone);
  }
  /// The tallest gap: its height and the piece below it.
  struct Gap {
    int height = 0;
    int end = 0;
    bool IsGap() const { return height > 0; }
  };
  Gap GapAt(const Groups& g, std::size_t i) const {
    Gap tallest;
    int run = 0;
    for (int p = 0; p < g.count; ++p) {
      run = Gone(g, i, p) ? run + (run > 0 ? 1 : g.height) : 0;
      if (run > tallest.height) tallest = {run, p + g.height};
    }
    return tallest;
  }

  bool LastsFrom(const Groups& g, std::size_t i) const {
    for (std::size_t k = i;
         k < Samples() && e_.t_s[k] < e_.t_s[i] + kLeastGap_s;
         ++k)
      if (!GapAt(g, k).IsGap()) return false;
    return true;
  }

  // What has parted falls or draws back: a gap that stays small with paint
  // standing under it is none.
  bool Opens(const Groups& g, std::size_t i) const {
    for (std::size_t k = i; k < Samples() && e_.t_s[k] < e_.t_s[i] + 0.15;
         ++k) {
      const Gap gap = GapAt(g, k);
      if (!gap.IsGap()) return false;
      const bool low = gap.end >= Count() - 2;
      if (gap.height * 6 > Count() && (gap.height > g.height || low))
        return true;
      if (g.height == 2 && gap.height > 2 && low &&
          e_.t_s[k] > e_.t_s[i] + kLeastGap_s)
        return true;
    }
    return false;
  }

  // Once a stream has broken for good the rest of it runs off within a short
  // time: most of it is gone together, or nothing stands under what hangs from
  // the stick; and before the moments that say what "gone" looks like.
  std::optional<std::size_t> AllGone(std::size_t i) const {
    const double limit =
        std::min(e_.t_s[i] + std::max(0.5, 0.1 * (e_.t_s[i] - e_.rest_s)),
                 e_.background_from_s);
    int judged = 0;
    for (int p = first_; p < Count(); ++p)
      judged += single_.Sd(i, p) <= kSeenSd ? 1 : 0;
    // Seen over most of the fall, or what parts first may be what is not seen.
    const bool seen = judged * 3 >= (Count() - first_) * 2;
    for (std::size_t k = i; k < Samples() && e_.t_s[k] <= limit; ++k) {
      if (LastsAbove(k)) return k;
      int gone = 0;
      for (int p = first_; p < Count(); ++p)
        gone += single_.Sd(i, p) <= kSeenSd && e_.presence[At(k, p)] < kGone
                    ? 1
                    : 0;
      if (seen && gone * 10 >= judged * 7) return k;
    }
    return std::nullopt;
  }
  static constexpr double kSeenSd = 0.5;

  // A third of the fall empty, from what hangs from the stick downwards: there
  // the thread is thickest and the last to be lost in noise.
  void FindUpperGaps() {
    upper_gap_.assign(Samples(), false);
    for (const Groups& g : groups_) {
      if (g.height != 4 || g.reach_s < groups_.back().reach_s) continue;
      for (std::size_t i = 0; i < Samples(); ++i) {
        const Gap gap = GapAt(g, i);
        upper_gap_[i] =
            gap.height * 3 >= Count() && (gap.end - gap.height) * 4 <= Count();
      }
    }
  }
  bool LastsAbove(std::size_t i) const {
    for (std::size_t k = i; k < Samples(); ++k) {
      if (!upper_gap_[k]) return false;
      if (e_.t_s[k] - e_.t_s[i] >= 0.05) return true;
    }
    return false;
  }

  // What went was most of what stood there: else the stream still runs at the
  // end of the clip and only its changes were seen, which a codec may hold back
  // and then show all at once.
  bool WasThere(std::size_t i) const {
    std::vector<double> left;
    for (std::size_t k = i; k-- > 0 && e_.t_s[i] - e_.t_s[k] < 0.25;)
      left.push_back(e_.line_left[k] + 2.0 * e_.line_left_sd[k]);
    return !left.empty() && Median(left) < kMostLeft;
  }
  // A thread finer than a pixel loses contrast as it loses width; one that goes
  // on thinning has kept more than this a second later.
  static constexpr double kMostLeft = 0.25;

  // Threads part low first; under the stick they part about a twentieth of the
  // time later. Where much of the fall is lost in noise the one may be taken
  // for the other.
  bool IsSeen(std::size_t i) const {
    int seen = 0;
    for (int p = first_; p < Count(); ++p)
      seen += single_.Sd(i, p) < 1.5 * kReliableSd ? 1 : 0;
    return seen * 5 >= (Count() - first_) * 3;
  }
  static constexpr double kUnseenShare = 0.05;

  // A thread fades as it thins below a pixel, and codecs drop what is faint:
  // it has surely parted when the gap flies open, and may have parted since it
  // was first seen.
  Break FirstGap(const Groups& g, std::size_t i) const {
    std::optional<Break> first;
    for (int p = 0; p < g.count; ++p) {
      bool gone = false;
      for (std::size_t k = i; k < Samples() && e_.t_s[k] < e_.t_s[i] + 0.1; ++k)
        gone = gone || Gone(g, k, p);
      if (!gone) continue;
      const Break b = Parting(g, i, p);
      if (!first || b.t_s < first->t_s) first = b;
    }
    const std::size_t open = FliesOpen(g, i);
    const double unsure_s = e_.t_s[open] - kFlyOpen_s - first->t_s;
    if (unsure_s > 0.0) {
      first->t_s += 0.5 * unsure_s;
      first->sd_s = std::hypot(first->sd_s, unsure_s / std::sqrt(12.0));
    }
    // What had parted unseen lies wide open once it is drawn.
    const double hidden_s =
        unsure_s <= 0.0 && IsTall(GapAt(g, open)) ? Hidden(i) : 0.0;
    if (hidden_s > kNoiseLag_s) {
      first->t_s -= 0.5 * hidden_s;
      first->sd_s = std::hypot(first->sd_s, hidden_s / std::sqrt(12.0));
    }
    first->in_one_picture = GapAt(g, i).height * 8 > Count() * 7 &&
                            !GapAt(g, i - 1).IsGap() && open == i &&
                            StoodWhole(i - 1);
    return *first;
  }
  // A third of the fall, 10 to 30 mm, in free fall.
  static constexpr double kFlyOpen_s = 0.05;

  // From the gap at `i` on, when it is tall. One that a codec drew once and
  // then left standing does not tell: the stream has surely parted when it is
  // gone.
  std::size_t FliesOpen(const Groups& g, std::size_t i) const {
    std::size_t open = i;
    int tallest = 0;
    for (std::size_t k = i; k < Samples() && e_.t_s[k] < e_.t_s[i] + 0.3; ++k) {
      const Gap gap = GapAt(g, k);
      if (!gap.IsGap()) break;
      if (gap.height > tallest) open = k;
      tallest = std::max(tallest, gap.height);
      if (IsTall(gap)) return open;
      if (StandsStill(gap, k)) return std::max(open, AllGone(i).value_or(i));
    }
    return open;
  }
  bool IsTall(const Gap& gap) const { return gap.height * 3 > Count(); }
  // A gap in what falls opens or closes within a tenth of a second.
  bool StandsStill(const Gap& gap, std::size_t i) const {
    for (int p = gap.end - gap.height; p < gap.end; ++p)
      if (e_.unchanged_s[At(i, p)] < kNoiseLag_s) return false;
    return true;
  }

  // Not yet fading.
  bool StoodWhole(std::size_t i) const {
    std::vector<double> presence;
    for (int p = first_; p < Count(); ++p)
      if (single_.Sd(i, p) <= kSeenSd)
        presence.push_back(e_.presence[At(i, p)]);
    return presence.empty() || Median(presence) > 0.7;
  }

  // A codec that spares bits does not draw anew what changes little: where the
  // picture of the stream had stood still before it went, it may have parted
  // at any time in between. Two pieces, as the smallest gap has.
  double Hidden(std::size_t i) const {
    float longest_s = 0.0F;
    for (std::size_t k = i; k-- > 0 && e_.t_s[i] - e_.t_s[k] < kNoiseLag_s;)
      for (int p = first_; p + 1 < Count(); ++p)
        if (std::max(single_.Sd(k, p), single_.Sd(k, p + 1)) <= kSeenSd)
          longest_s = std::max(
              longest_s,
              std::min(e_.unchanged_s[At(k, p)], e_.unchanged_s[At(k, p + 1)]));
    return longest_s;
  }

  Break Parting(const Groups& g, std::size_t i, int p) const {
    double least = g.Presence(i, p);
    for (std::size_t k = i; k < Samples() && e_.t_s[k] < e_.t_s[i] + 0.2; ++k)
      least = std::min(least, g.Presence(k, p));
    const double step = std::clamp(2.0 * g.Sd(i, p), 0.1, 0.3);
    const auto falls_below = [&](double level) {
      std::size_t k = i;
      while (k > 1 && e_.t_s[i] - e_.t_s[k - 1] < 0.2) --k;
      while (k + 1 < Samples() && g.Presence(k, p) >= level) ++k;
      const double before = g.Presence(k - 1, p), after = g.Presence(k, p);
      const double dt = e_.t_s[k] - e_.t_s[k - 1];
      if (before <= level || after >= level) return e_.t_s[k];
      return e_.t_s[k] - dt * (level - after) / (before - after);
    };
    const double low = falls_below(least + step);
    // In a short group the gap fills what there is at once; a tall one goes
    // while the gap spreads.
    const double high = falls_below(g.height > 2 ? 0.7 : least + 2.0 * step);
    const double between = std::max(0.0, low - high);
    // The mean of a few pictures is half gone when the middle one is.
    const double at_s = g.reach_s > 0.0 ? falls_below(0.5 * (1.0 + least))
                        : g.height > 2  ? low - 0.5 * between
                                        : low;
    return {
        at_s,
        std::hypot(0.5 * between, kFrameShare * (e_.t_s[i] - e_.t_s[i - 1])),
        false};
  }

  const StreamEpisode& e_;
  // Those above hold what hangs from the stick.
  const int first_;
  const Groups single_;
  std::vector<Groups> groups_;
  std::vector<bool> upper_gap_;
};

/// Moments at which the paint between stick and pool parts after `from_s`:
/// the stream's own upper part first, then one per drop.
std::vector<double> FindDrips(const StreamEpisode& e, double from_s) {
  // Just below what hangs from the stick.
  const int first = 3 * e.num_pieces / 14, last = 6 * e.num_pieces / 14 - 1;
  std::vector<double> level(e.t_s.size());
  for (std::size_t i = 0; i < level.size(); ++i)
    for (int p = first; p <= last; ++p)
      level[i] =
          std::max(level[i],
                   static_cast<double>(
                       e.strength[i * static_cast<std::size_t>(e.num_pieces) +
                                  static_cast<std::size_t>(p)]));
  std::vector<double> before;
  for (std::size_t i = 0; i < level.size() && e.t_s[i] < from_s; ++i)
    if (e.t_s[i] > from_s - 0.4) before.push_back(level[i]);
  std::vector<double> drips;
  if (before.empty()) return drips;
  const double high = std::max(4.0, 0.5 * Median(before));
  bool there = true;
  for (std::size_t i = 1; i < level.size(); ++i) {
    if (e.t_s[i] < from_s) continue;
    if (there && level[i] < 0.6 * high) {
      drips.push_back(e.t_s[i]);
      there = false;
    } else if (!there && level[i] > high && e.t_s[i] - drips.back() > 0.05) {
      there = true;
    }
  }
  return drips;
}

/// How much of the stream is there, mean over the fall, from the lift to a
/// while after the break; for looking at.
FlowCurve StreamLeft(const StreamEpisode& e, double lift_s, double broke_s) {
  constexpr double kAfterwards_s = 1.5;
  constexpr std::size_t kMostPoints = 200;
  constexpr double kFaint = 0.3;  // sd: where nothing is known
  FlowCurve curve;
  curve.name = "stream_left";
  const auto pieces = static_cast<std::size_t>(std::max(0, e.num_pieces));
  const std::size_t step = e.t_s.size() / kMostPoints + 1;
  for (std::size_t i = 0; i < e.t_s.size() && pieces > 0; i += step) {
    if (e.t_s[i] > broke_s + kAfterwards_s) break;
    double sum = 0.0;
    double var = 0.0;
    for (std::size_t k = i * pieces; k < (i + 1) * pieces; ++k) {
      sum += static_cast<double>(e.presence[k]);
      var += std::pow(static_cast<double>(e.presence_sd[k]), 2);
    }
    const double sd = std::sqrt(var) / static_cast<double>(pieces);
    if (!(sd < kFaint) || !std::isfinite(sum)) continue;
    curve.t_s.push_back(e.t_s[i] - lift_s);
    curve.value.push_back(sum / static_cast<double>(pieces));
    curve.sd.push_back(sd);
  }
  return curve;
}

std::optional<FlowProxy> DripInterval(double lift_s,
                                      const std::vector<double>& drips_s) {
  if (drips_s.size() < 3) return std::nullopt;
  std::vector<double> ln;
  for (std::size_t k = 1; k < drips_s.size(); ++k) {
    const double a = drips_s[k - 1] - lift_s;
    const double b = drips_s[k] - lift_s;
    ln.push_back(std::log(2.0 * (1.0 / std::sqrt(a) - 1.0 / std::sqrt(b))));
  }
  const double n = static_cast<double>(ln.size());
  double mean = 0.0, square = 0.0;
  for (const double v : ln) mean += v / n;
  for (const double v : ln) square += (v - mean) * (v - mean);
  const double sd =
      std::max(kDropVolumeRelSd, std::sqrt(square / (n - 1.0))) / std::sqrt(n);
  return FlowProxy{
      "drip_interval", std::exp(mean), "s", {mean, sd}, kDripExponent};
}

/// The straight last part of a neck's way to a pinch, in the piece where it
/// is longest in view.
std::optional<FlowProxy> ThinningRate(const StreamEpisode& e, double end_s) {
  std::optional<FlowProxy> best;
  for (int p = e.num_pieces / 14; p < e.num_pieces; ++p) {
    std::vector<double> t, w;
    for (std::size_t i = 0; i < e.t_s.size() && e.t_s[i] < end_s; ++i) {
      const double width =
          e.width_px[i * static_cast<std::size_t>(e.num_pieces) +
                     static_cast<std::size_t>(p)];
      if (e.t_s[i] < end_s - 1.5 || width < 2.5) continue;
      t.push_back(e.t_s[i] - end_s);
      w.push_back(width);
    }
    // From 8 px or more to less than half, in at least 8 pictures.
    if (t.size() < 8 || w.front() < 8.0 || w.back() > 0.45 * w.front())
      continue;
    std::vector<double> design(3 * t.size(), 1.0);
    for (std::size_t i = 0; i < t.size(); ++i) {
      design[t.size() + i] = t[i];
      design[2 * t.size() + i] = t[i] * t[i];
    }
    const std::span<const double> all(design);
    const FitResult line = FitLinear(all.first(2 * t.size()), w, {});
    const FitResult bend = FitLinear(all, w, {});
    if (!line.IsUsable() || !bend.IsUsable()) continue;
    // A curved way means shear thinning or a stream that is still fed: no
    // single rate.
    const Estimate curve = bend.Parameter(2);
    const double span_s = t.back() - t.front();
    const double bow_px = std::abs(curve.value) * span_s * span_s / 8.0;
    if (bow_px > 0.06 * (w.front() - w.back())) continue;
    const Estimate rate = line.Parameter(1);
    if (rate.value > -3.0 * rate.sd) continue;
    const double rel = std::hypot(rate.sd / -rate.value, 0.03);
    if (!best || rel < best->ln_value.sd)
      best = FlowProxy{"thinning_rate",
                       -rate.value,
                       "px/s",
                       {std::log(-rate.value), rel},
                       kThinningExponent};
  }
  return best;
}

/// A break changes a few pixels; a knock, a stuck camera that comes back or a
/// hand changes them all, more than a codec does that draws all anew at times.
bool PictureJumps(const StreamEpisode& e, double break_s) {
  std::vector<double> usual;
  double here = 0.0;
  for (std::size_t i = 0; i < e.t_s.size(); ++i) {
    usual.push_back(e.change[i]);
    if (e.t_s[i] > break_s - 0.15 && e.t_s[i] < break_s + 0.15)
      here = std::max(here, static_cast<double>(e.change[i]));
  }
  const double median = Median(usual);
  const auto high =
      usual.begin() +
      static_cast<std::ptrdiff_t>(0.95 * static_cast<double>(usual.size()));
  std::nth_element(usual.begin(), high, usual.end());
  return here > 1.0 && here > 5.0 * median && here > 2.0 * *high;
}

FlowMeasurement Refuse(std::string reason) {
  FlowMeasurement m;
  m.kind = TestKind::kStream;
  m.outcome = Outcome::kRefused;
  m.reason = std::move(reason);
  return m;
}

std::string ReasonForNoEpisode(const StreamTrack& track) {
  if (track.num_frames < 10)
    return "The clip is too short to hold a stream test; film from before the "
           "lift until the drips.";
  if (track.mean_luma < 12.0 && track.luma_spread < 8.0)
    return "The picture is black; take the cap off the lens or add light.";
  if (track.rests_without_lift > 0)
    return "The moment the stick leaves the paint could not be seen; start "
           "filming with the stick standing in the paint and lift it straight "
           "up.";
  if (track.luma_spread < 4.0 || track.sharpness < 0.02)
    return "The picture is too blurred or too plain to see a stick; focus on "
           "the stick and film again.";
  if (track.most_motion < 0.002)
    return "Nothing moves in this clip; film the stick being lifted out of "
           "the paint.";
  return "No stick was seen to be lifted out of the paint and held still; "
         "start filming with the stick standing in the cup, lift it straight "
         "up and hold it.";
}

}  // namespace

FlowMeasurement MeasureStream(const StreamTrack& track,
                              const StreamTestOptions& options) {
  const bool by_hand = options.lift_s || options.break_s;
  for (const auto& event : {options.lift_s, options.break_s}) {
    if (event && !(*event >= 0.0 && *event <= track.duration_s)) {
      return Refuse(
          "The moment that was set by hand lies outside the film; choose one "
          "within it.");
    }
  }
  std::vector<const StreamEpisode*> lifts;
  for (const StreamEpisode& e : track.episodes)
    if (HasStream(e)) lifts.push_back(&e);
  // A person who names an event says by it which lift is meant.
  const StreamEpisode* meant = lifts.empty() ? nullptr : lifts.front();
  for (const StreamEpisode* e : lifts) {
    if (options.break_s && e->rest_s < *options.break_s) meant = e;
    if (options.lift_s && std::abs(e->rest_s - *options.lift_s) <
                              std::abs(meant->rest_s - *options.lift_s))
      meant = e;
  }
  if (meant == nullptr && !(options.lift_s && options.break_s)) {
    if (track.episodes.empty()) return Refuse(ReasonForNoEpisode(track));
    return Refuse(
        "A stick was lifted but no stream could be seen under it; use a "
        "background that differs from the paint, or more light.");
  }
  if (lifts.size() > 1 && !by_hand)
    return Refuse(
        "The stick was lifted more than once in this clip; keep one test to a "
        "clip.");

  FlowMeasurement m;
  m.kind = TestKind::kStream;
  // What is set by hand is good to about a picture, like what is found.
  const double by_hand_sd_s =
      kFrameShare * track.duration_s /
      static_cast<double>(std::max<std::int64_t>(1, track.num_frames - 1));
  Break lift{0.0, by_hand_sd_s};
  if (options.lift_s) {
    lift.t_s = *options.lift_s;
  } else {
    lift = {meant->lift_s, meant->lift_sd_s};
  }
  Break broke{0.0, by_hand_sd_s};
  if (options.break_s) {
    broke.t_s = *options.break_s;
    if (meant != nullptr && meant->second_stream > 0.5)
      m.warnings.push_back(
          "Two streams seem to run off the stick; dip it straighter or use a "
          "narrower stick.");
  } else {
    if (meant->edge_width_px > 0.35 * meant->stick_width_px)
      return Refuse(
          "The picture is too blurred to see the stream; focus on the stick "
          "and film again.");
    if (meant->second_stream > 0.5)
      return Refuse(
          "Two streams run off the stick; dip it straighter or use a narrower "
          "stick, and film again.");
    const auto found = Pieces(*meant).FindBreak();
    if (!found)
      return Refuse(
          "The stream had not broken by the end of the clip, or it is too "
          "faint to tell; film on until it drips, against a background that "
          "differs from the paint.");
    if (found->in_one_picture || PictureJumps(*meant, found->t_s))
      return Refuse(
          "The camera, the light or something in front of it moved just when "
          "the stream seemed to break; keep all of it still and film again.");
    broke = *found;
  }
  const double time_s = broke.t_s - lift.t_s;
  if (by_hand && !(time_s > by_hand_sd_s)) {
    return Refuse(
        "The stream cannot break before the stick is lifted; set the two "
        "moments in order.");
  }

  m.outcome = Outcome::kMeasured;
  m.lift_s = lift.t_s;
  m.break_s = broke.t_s;
  if (meant != nullptr) m.drips_s = FindDrips(*meant, broke.t_s);
  m.proxies.push_back(
      {"break_time",
       time_s,
       "s",
       {std::log(time_s),
        std::hypot(broke.sd_s / time_s, lift.sd_s / time_s, kBreakChanceRelSd)},
       options.break_time_exponent.value_or(kBreakTimeExponent),
       kBreakPaintSd});
  if (meant == nullptr) return m;
  if (auto coat = CoatThickness(*meant, lift.t_s, broke.t_s))
    m.proxies.push_back(*coat);
  if (auto drip = DripInterval(lift.t_s, m.drips_s)) m.proxies.push_back(*drip);
  if (auto rate = ThinningRate(*meant, broke.t_s)) m.proxies.push_back(*rate);
  m.curves.push_back(StreamLeft(*meant, lift.t_s, broke.t_s));
  return m;
}

}  // namespace flowkin
