#include "core/flow/puddle_test.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

#include "core/fit/least_squares.h"
#include "core/flow/physics.h"

namespace flowkin {
namespace {

constexpr double kPi = 3.141592653589793;
// Fewest outlines and shortest film after the pour that can fix C and t0.
constexpr std::size_t kLeastSamples = 12;
constexpr double kLeastWindow_s = 1.0;
// The law must be seen to act: the radius grows by 1 % at least.
constexpr double kLeastGrowth = 0.01;
// ln R may stray this far from the law without being noise (edge, gloss).
constexpr double kModelFloor = 3e-4;
// The edge is uncertain by this share of its 20-80 % width, and by this share
// of the radius (rounded rim, gloss, compression); once as a constant, once as
// a drift between the ends of the window.
constexpr double kEdgeShare = 0.06;
// Of a rim without a step the share is larger: light and shadow lie on either
// side of it.
constexpr double kRimShare = 0.3;
constexpr double kEdgeRel = 0.001;
// Exponents, counted from the first paint on the tile, below which the puddle
// is called slow or stopped. The law gives 1/8 and more at any time
// (counting from the first paint instead of t0 only raises it); 0.108 belongs
// to a power-law index of 0.8 (physics: R ~ t^(n/(3n+5))).
constexpr double kSlowExponent = 0.108;
constexpr double kStoppedExponent = 0.085;
// A puddle that is still fed grows with t^(1/2).
constexpr double kPouringExponent = 0.38;
// What is seen before the law's own beginning must still be fed: a volume that
// grows with t^(1/2) or faster makes the radius grow with t^((3/2 + 1) / 8).
constexpr double kFedExponent = 0.3;
// The radius steps when paint is added later or the camera zooms. Exponents are
// taken between bins of ln t this wide, and a step shows as growth above (or
// below) that of the bins around it, in ln R. It must last: a lens that hunts
// comes back. A step of this size makes an error of 12 % in viscosity.
constexpr double kStepBin = 0.15;
constexpr double kMostStep = 0.015;
// Axes ratio of the outline.
constexpr double kMostStretch = 0.12;  // (a - b) / (a + b): camera 38 deg off
// A step of the centre from one outline to the next counts as a jump above
// this many px, plus this share of the radius (an outline half seen is found
// askew), plus so many times its usual pace.
constexpr double kJump_px = 3.0;
constexpr double kJumpRel = 0.02;
constexpr double kJumpPace = 5.0;
// A zoom of the lens, or a camera that rises or sinks, is taken out by the
// background. Its largest span, and the share of it that may be left: the
// background can lie lower than the tile, and lenses bend lines.
constexpr double kZoomWarn = 0.003;
constexpr double kMostZoom = 0.1;
constexpr double kZoomLeft = 0.1;
// Drift of the centre over growth of the radius. The shift is of first order
// in the tile's slope, the error of the mean radius of second order.
constexpr double kTiltWarn = 0.12;
constexpr double kTiltRefuse = 0.35;
// Scatter of the sectors' growth over the growth.
constexpr double kUnevenWarn = 0.15;
constexpr double kUnevenRefuse = 0.4;
constexpr double kRoughRefuse = 0.03;  // rms of the outline over the radius
// Five capillary lengths of paint (1.8 mm at 35 mN/m, 1100 kg/m3).
constexpr double kLeastGravityRadius_mm = 9.0;

// Share of the outline, as far as it lies in the picture, that must be seen,
// and share that must be seen at all.
constexpr double kLeastOfEdge = 0.8;
constexpr double kLeastOfRim = 0.6;
constexpr double kLeastSeen = 0.6;

// Outlines that end before so much of the film after the first one is left are
// not those of a film that ends too soon.
constexpr double kCutShort = 0.3;

// Sharpest edges of a picture in focus, grey levels per px of the small one.
constexpr double kLeastDetail = 8.0;

double MedianOf(std::vector<double> v) {
  if (v.empty()) return 0.0;
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

FlowMeasurement Refuse(FlowMeasurement m, std::string reason) {
  m.outcome = Outcome::kRefused;
  m.reason = std::move(reason);
  m.proxies.clear();
  m.ln_kinematic_viscosity_mm2_s.reset();
  return m;
}

struct LawFit {
  bool usable = false;
  double ln_rate = 0.0, origin_s = 0.0;
  double ln_rate_sd = 0.0;  // with the correlation of the residuals
  double trend = 0.0;       // chi-square of block means per degree of freedom
  double noise = 0.0;       // of ln R, one sample
  std::size_t begin = 0;
};

// Fits ln R = (ln C + ln(t - t0)) / 8 to samples [begin, end).
LawFit FitLaw(const std::vector<double>& t,
              const std::vector<double>& ln_r,
              const std::vector<double>& sd,
              std::size_t begin,
              std::size_t end) {
  LawFit law;
  law.begin = begin;
  const std::size_t n = end - begin;
  if (n < kLeastSamples) return law;
  const double t_begin = t[begin], span = t[end - 1] - t_begin;
  // u = ln of the time from the origin to the window's begin, so that the
  // origin cannot enter the window.
  const std::vector<double> times(
      t.begin() + static_cast<std::ptrdiff_t>(begin),
      t.begin() + static_cast<std::ptrdiff_t>(end));
  const std::vector<double> y(ln_r.begin() + static_cast<std::ptrdiff_t>(begin),
                              ln_r.begin() + static_cast<std::ptrdiff_t>(end));
  const std::vector<double> s(sd.begin() + static_cast<std::ptrdiff_t>(begin),
                              sd.begin() + static_cast<std::ptrdiff_t>(end));
  CurveModel model;
  model.values = [&](std::span<const double> p, std::span<double> values) {
    const double lead = std::exp(p[1]);
    for (std::size_t i = 0; i < values.size(); ++i) {
      values[i] = (p[0] + std::log(times[i] - t_begin + lead)) / 8.0;
    }
  };
  model.jacobian = [&](std::span<const double> p, std::span<double> j) {
    const double lead = std::exp(p[1]);
    const std::size_t m = times.size();
    for (std::size_t i = 0; i < m; ++i) {
      j[i] = 0.125;
      j[m + i] = 0.125 * lead / (times[i] - t_begin + lead);
    }
  };
  // Start from a straight line through R^8 at the two ends.
  const double ratio = std::exp(8.0 * (y.back() - y.front()));
  const double lead =
      std::clamp(span / std::max(1e-3, ratio - 1.0), 1e-3 * span, 100.0 * span);
  const std::array<double, 2> start = {8.0 * y.back() - std::log(span + lead),
                                       std::log(lead)};
  FitOptions options;
  options.huber_threshold = 2.0;
  options.lower = {-200.0, std::log(1e-5 * span)};
  options.upper = {400.0, std::log(1e4 * span)};
  const FitResult fit = FitNonlinear(model, y, s, start, options);
  if (!fit.IsUsable() || fit.at_bound[1]) return law;
  law.usable = true;
  law.ln_rate = fit.parameters[0];
  law.origin_s = t_begin - std::exp(fit.parameters[1]);

  // Noise from neighbours (blind to a trend), correlation from the residuals.
  std::vector<double> values(n), residual(n);
  model.values(fit.parameters, values);
  double jumps = 0.0, power = 0.0, lagged = 0.0;
  for (std::size_t i = 0; i < n; ++i) residual[i] = y[i] - values[i];
  std::vector<double> steps;
  for (std::size_t i = 0; i < n; ++i) {
    power += residual[i] * residual[i];
    if (i > 0) {
      lagged += residual[i] * residual[i - 1];
      steps.push_back(std::abs(residual[i] - residual[i - 1]));
    }
  }
  jumps = 1.4826 * MedianOf(steps) / std::sqrt(2.0);
  law.noise = std::max(jumps, 1e-5);
  const double rho = std::clamp(power > 0 ? lagged / power : 0.0, 0.0, 0.95);
  law.ln_rate_sd = std::sqrt(std::max(0.0, fit.Covariance(0, 0)) * (1.0 + rho) /
                             (1.0 - rho));
  // Six blocks, equal in ln t: is there a trend the law does not have?
  constexpr int kBlocks = 6;
  std::array<double, kBlocks> sum{}, count{};
  const double l0 = std::log(times.front() - law.origin_s);
  const double l1 = std::log(times.back() - law.origin_s);
  for (std::size_t i = 0; i < n; ++i) {
    const double l = std::log(times[i] - law.origin_s);
    const int b = std::clamp(
        static_cast<int>(kBlocks * (l - l0) / (l1 - l0)), 0, kBlocks - 1);
    sum[static_cast<std::size_t>(b)] += residual[i];
    count[static_cast<std::size_t>(b)] += 1.0;
  }
  double chi = 0.0;
  for (std::size_t b = 0; b < kBlocks; ++b) {
    if (count[b] < 1.0) continue;
    const double mean = sum[b] / count[b];
    chi += mean * mean /
           (law.noise * law.noise / count[b] + kModelFloor * kModelFloor);
  }
  law.trend = chi / (kBlocks - 2);
  return law;
}

// d ln R / d ln(t - origin) over samples [begin, end), by a straight line.
double ExponentFrom(const std::vector<double>& t,
                    const std::vector<double>& ln_r,
                    std::size_t begin,
                    std::size_t end,
                    double origin_s) {
  double n = 0, sx = 0, sy = 0, sxx = 0, sxy = 0;
  for (std::size_t i = begin; i < end; ++i) {
    const double lead = t[i] - origin_s;
    if (!(lead > 0.0)) continue;
    const double x = std::log(lead);
    n += 1;
    sx += x;
    sy += ln_r[i];
    sxx += x * x;
    sxy += x * ln_r[i];
  }
  const double det = n * sxx - sx * sx;
  return det > 1e-12 ? (n * sxy - sx * sy) / det
                     : std::numeric_limits<double>::quiet_NaN();
}

// The largest lasting step of ln R against its slowing growth, once that is
// below the growth of a puddle that is fed; signed.
double LargestStep(const std::vector<double>& t,
                   const std::vector<double>& ln_r,
                   double origin_s) {
  std::vector<double> x, y;  // middle of each bin
  std::vector<double> in;
  double sum = 0.0;
  int bin = 0;
  const auto close = [&] {
    if (in.size() >= 2) {
      x.push_back(sum / static_cast<double>(in.size()));
      y.push_back(MedianOf(in));
    }
    in.clear();
    sum = 0.0;
  };
  for (std::size_t i = 0; i < t.size(); ++i) {
    if (!(t[i] > origin_s)) continue;
    const double at = std::log(t[i] - origin_s);
    const int own = static_cast<int>(std::floor(at / kStepBin));
    if (own != bin) close();
    bin = own;
    sum += at;
    in.push_back(ln_r[i]);
  }
  close();
  std::vector<double> growth;
  for (std::size_t k = 0; k + 1 < x.size(); ++k) {
    growth.push_back((y[k + 1] - y[k]) / (x[k + 1] - x[k]));
  }
  const auto median_over = [&](std::size_t from, std::size_t to) {
    return MedianOf({growth.begin() + static_cast<std::ptrdiff_t>(from),
                     growth.begin() + static_cast<std::ptrdiff_t>(to)});
  };
  double largest = 0.0;
  const std::size_t n = growth.size();
  for (std::size_t j = 2; j + 2 < n; ++j) {
    const double before = median_over(j < 5 ? 0 : j - 5, j);
    if (before > kFedExponent) continue;
    const double after = median_over(j + 2, std::min(n, j + 7));
    // Growth slows ever less: between the two it lies below their mean.
    const auto beyond = [&](double usual, std::size_t bins) {
      double excess = 0.0;
      for (std::size_t k = j; k < std::min(n, j + bins); ++k) {
        excess += (growth[k] - usual) * (x[k + 1] - x[k]);
      }
      return excess;
    };
    const double mean = 0.5 * (before + after);
    const double low = std::min(before, after);
    const double up = std::min(beyond(mean, 3), beyond(mean, 5));
    const double down = std::max(beyond(low, 3), beyond(low, 5));
    if (up > std::abs(largest)) largest = up;
    if (-down > std::abs(largest)) largest = down;
  }
  return largest;
}

struct SteadyCentre {
  std::vector<double> x_px, y_px;
  bool jumped = false;
};

// The centre on the tile at the samples `index`, with the jumps taken out that
// a knock to camera or tile makes, or a background that was recognised wrongly
// after one: paint creeps, it does not jump.
SteadyCentre WithoutJumps(const std::vector<FrontSample>& samples,
                          const std::vector<std::size_t>& index) {
  SteadyCentre centre;
  const std::size_t n = index.size();
  const auto raw_x = [&](std::size_t i) {
    const FrontSample& s = samples[index[i]];
    return s.x_px - s.shift_x_px;
  };
  const auto raw_y = [&](std::size_t i) {
    const FrontSample& s = samples[index[i]];
    return s.y_px - s.shift_y_px;
  };
  // The usual pace, over an eighth of the film: long enough for noise to be
  // small, short enough that one jump leaves the median alone.
  const std::size_t lag = std::max<std::size_t>(1, n / 8);
  std::vector<double> pace;
  for (std::size_t i = 0; i + lag < n; ++i) {
    pace.push_back(
        std::hypot(raw_x(i + lag) - raw_x(i), raw_y(i + lag) - raw_y(i)) /
        (samples[index[i + lag]].t_s - samples[index[i]].t_s));
  }
  const double usual = MedianOf(pace);
  double off_x = 0.0, off_y = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    if (i > 0) {
      const FrontSample& s = samples[index[i]];
      const double dt = s.t_s - samples[index[i - 1]].t_s;
      const double dx = raw_x(i) - raw_x(i - 1), dy = raw_y(i) - raw_y(i - 1);
      if (std::hypot(dx, dy) >
          kJump_px + kJumpRel * s.radius_px + kJumpPace * usual * dt) {
        off_x += dx;
        off_y += dy;
        centre.jumped = true;
      }
    }
    centre.x_px.push_back(raw_x(i) - off_x);
    centre.y_px.push_back(raw_y(i) - off_y);
  }
  return centre;
}

// The samples as a camera would have seen them whose lens stays as it was when
// the scale was read.
std::vector<FrontSample> WithoutZoom(const FrontTrack& track) {
  std::vector<FrontSample> samples = track.samples;
  const double middle_x = 0.5 * (track.width_px - 1);
  const double middle_y = 0.5 * (track.height_px - 1);
  for (FrontSample& s : samples) {
    const double gain = track.scale_zoom / s.zoom;
    if (gain == 1.0) continue;
    s.x_px = middle_x + gain * (s.x_px - s.shift_x_px - middle_x);
    s.y_px = middle_y + gain * (s.y_px - s.shift_y_px - middle_y);
    s.shift_x_px = s.shift_y_px = 0.0;
    for (double* length : {&s.radius_px,
                           &s.radius_sd_px,
                           &s.c2_px,
                           &s.s2_px,
                           &s.c3_px,
                           &s.s3_px,
                           &s.roughness_px}) {
      *length *= gain;
    }
    for (float& v : s.sector_px) v *= static_cast<float>(gain);
  }
  return samples;
}

// A camera's noise never repeats for long; a spreading puddle neither.
bool Frozen(const PictureFacts& p) {
  return p.frozen_s > 2.0 && p.frozen_s > 0.2 * (p.last_t_s - p.first_t_s);
}

// Why nothing was followed at all.
std::string NothingFound(const FrontTrack& track) {
  const PictureFacts& p = track.picture;
  if (p.frames == 0) return "The clip holds no picture.";
  if (p.brightness < 0.08) {
    return "The picture is black: turn on a lamp, take off the lens cap and "
           "film again.";
  }
  if (Frozen(p)) {
    return "The picture stands still: the film is one frozen picture. Film "
           "again.";
  }
  if (p.detail < kLeastDetail) {
    return "The picture is blurred or empty: nothing in it has an edge. Focus "
           "on the tile and film again.";
  }
  if (p.changed_share < 0.002) {
    return "Nothing happens in this clip: no paint is put on the tile. Start "
           "filming, put down the paint, and let it spread for ten seconds.";
  }
  return "No round puddle was found. Film the tile from straight above, put "
         "the measured paint down in one place, take the syringe away and let "
         "it spread for ten seconds.";
}

constexpr const char* kHardlyStandsOut =
    "The paint hardly stands out from what lies under it: put it on a plain "
    "tile of another colour.";

// Why too few outlines are whole.
std::string WhyNotWhole(const FrontTrack& track) {
  if (track.left_picture) {
    return "The puddle runs out of the picture: put the paint down in the "
           "middle, or film from further away.";
  }
  if (track.rim_only) return kHardlyStandsOut;
  return "The puddle is hardly ever seen whole: take hand and syringe out of "
         "the picture once the paint is down and film on for ten seconds.";
}

// Why the radius does not follow the law. A rim without a step in colour is
// easily taken for another line.
std::string WhyUnlawful(const FrontTrack& track) {
  if (track.rim_only) return kHardlyStandsOut;
  return "The puddle does not spread as flowing paint left alone does: keep "
         "hands and sticks off it and film again; if it does so every time, "
         "this paint sets too soon for the puddle test.";
}

}  // namespace

Result<void> PuddleTestOptions::Validate() const {
  if (volume_ml && !(*volume_ml >= 0.1 && *volume_ml <= 100.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The volume of the puddle must lie between 0.1 and 100 mL."};
  }
  if (!(volume_rel_sd >= 0.0 && volume_rel_sd <= 0.5)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The uncertainty of the volume must lie between 0 and 0.5."};
  }
  return {};
}

FlowMeasurement MeasurePuddle(const FrontTrack& track,
                              const PuddleTestOptions& options) {
  return MeasurePuddle(track, options, nullptr);
}

FlowMeasurement MeasurePuddle(const FrontTrack& track,
                              const PuddleTestOptions& options,
                              std::optional<PuddleLaw>* law_out) {
  FLOWKIN_CHECK(options.Validate().has_value());
  FlowMeasurement m;
  m.kind = TestKind::kPuddle;
  const std::optional<double> start_s =
      options.start_s ? options.start_s : track.start_s;
  m.start_s = start_s;
  if (Frozen(track.picture)) {
    return Refuse(std::move(m),
                  "The picture stands still: the film is one frozen picture. "
                  "Film again.");
  }
  if (track.samples.size() < 2) {
    return Refuse(std::move(m), NothingFound(track));
  }
  if (track.picture.detail < kLeastDetail) {
    return Refuse(std::move(m), NothingFound(track));
  }
  if (track.later_puddles > 0) {
    return Refuse(std::move(m),
                  "Paint is put down twice in this clip: cut it so that it "
                  "holds one puddle.");
  }
  if (track.other_puddles > 0) {
    return Refuse(std::move(m),
                  "There are two puddles in the picture: film one at a time.");
  }

  const std::vector<FrontSample> samples = WithoutZoom(track);

  // Whole outlines only: what a hand half hides is known less well than its
  // residuals say.
  std::vector<double> t, ln_r, sd, radius;
  std::vector<std::size_t> source;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const FrontSample& s = samples[i];
    const double least = track.rim_only ? kLeastOfRim : kLeastOfEdge;
    if (s.visible < std::max(kLeastSeen, least * s.in_picture)) continue;
    if (!(s.radius_px > 0.0)) continue;
    if (options.start_s && s.t_s <= *options.start_s) continue;
    if (!t.empty() && !(s.t_s > t.back())) continue;
    t.push_back(s.t_s);
    radius.push_back(s.radius_px);
    ln_r.push_back(std::log(s.radius_px));
    sd.push_back(std::hypot(s.radius_sd_px / s.radius_px, kModelFloor));
    source.push_back(i);
  }
  const std::size_t n = t.size();
  const double tail_s = n > 0 ? track.picture.last_t_s - t.front() : 0.0;
  if (n > 0 && tail_s < 1.5 * kLeastWindow_s) {
    return Refuse(std::move(m),
                  "The clip ends too soon: paint is still being put down, or "
                  "has only just been. Film on for ten seconds after the "
                  "syringe is away.");
  }
  if (n < kLeastSamples) return Refuse(std::move(m), WhyNotWhole(track));
  const auto at = [&](std::size_t i) -> const FrontSample& {
    return samples[source[i]];
  };
  // Mean of the first and last tenth.
  const std::size_t tenth = std::max<std::size_t>(3, n / 10);
  double ln_first = 0.0, ln_last = 0.0;
  for (std::size_t i = 0; i < tenth; ++i) {
    ln_first += ln_r[i] / static_cast<double>(tenth);
    ln_last += ln_r[n - 1 - i] / static_cast<double>(tenth);
  }
  if (ln_last - ln_first < -kLeastGrowth) {
    return Refuse(std::move(m),
                  "The puddle shrinks: the film runs backwards, or something "
                  "draws the paint away. Film again.");
  }
  if (track.there_from_start && !options.start_s) {
    return Refuse(std::move(m),
                  "The paint is already on the tile when the clip begins: "
                  "start filming first, then put the paint down.");
  }
  if (ln_last - ln_first < kLeastGrowth) {
    return Refuse(std::move(m),
                  "What is round in the picture does not spread: either it is "
                  "no puddle or the paint stopped at once. Use more paint, or "
                  "test this cup with the stream.");
  }
  const SteadyCentre centre = WithoutJumps(samples, source);
  if (track.moved || centre.jumped) {
    m.warnings.push_back(
        "Camera or tile was moved while the puddle spread; leave both alone.");
  }
  double least_zoom = samples[source.front()].zoom, most_zoom = least_zoom;
  for (const std::size_t i : source) {
    least_zoom = std::min(least_zoom, samples[i].zoom);
    most_zoom = std::max(most_zoom, samples[i].zoom);
  }
  const double zoomed = std::log(most_zoom / least_zoom);
  if (zoomed > kMostZoom) {
    return Refuse(std::move(m),
                  "The camera zoomed, or was moved up or down, while the "
                  "puddle spread: fix camera and zoom and film again.");
  }
  if (zoomed > kZoomWarn) {
    m.warnings.push_back(
        "The camera zoomed a little, or was moved up or down, while the puddle "
        "spread; this was taken out by what lies round the tile.");
  }
  if (track.left_picture) {
    m.warnings.push_back(
        "The puddle touches the edge of the picture; the rest is measured.");
  }

  // The window: from the end of the clip back to where the law stops
  // holding. Candidates are spread evenly in ln t.
  const double t_last = t.back();
  LawFit best;
  std::vector<LawFit> fits;
  {
    std::size_t previous = n;
    for (int step = 0; step < 24; ++step) {
      const double share = std::pow(0.85, step);  // of the film still left
      const double begin_t = t.front() + (1.0 - share) * (t_last - t.front());
      const std::size_t i = static_cast<std::size_t>(
          std::lower_bound(t.begin(), t.end(), begin_t) - t.begin());
      if (i == previous || i + kLeastSamples > n) continue;
      if (t_last - t[i] < kLeastWindow_s) break;
      previous = i;
      fits.push_back(FitLaw(t, ln_r, sd, i, n));
    }
  }
  // The earliest begin without a trend that later begins do not have as well.
  double least_trend = std::numeric_limits<double>::infinity();
  for (LawFit& f : fits) {
    const auto before = static_cast<std::size_t>(
        std::lower_bound(t.begin(), t.end(), f.origin_s) - t.begin());
    if (f.usable && before >= 2) {
      f.usable =
          track.start_s &&
          ExponentFrom(t, ln_r, 0, before, *track.start_s) >= kFedExponent;
    }
    if (f.usable) least_trend = std::min(least_trend, f.trend);
  }
  for (const LawFit& f : fits) {
    if (f.usable && f.trend <= std::max(3.0, 1.5 * least_trend)) {
      best = f;
      break;
    }
  }
  // Exponents from the first paint over the last half of the film tell a
  // puddle that is still poured and one that has stopped.
  const double film_begin = start_s.value_or(track.picture.first_t_s);
  if (std::abs(LargestStep(t, ln_r, film_begin)) > kMostStep) {
    return Refuse(
        std::move(m),
        track.rim_only
            ? kHardlyStandsOut
            : "The size of the puddle jumps after it had slowed down: paint "
              "was added later, or the camera zoomed or was moved up or down. "
              "Film one pour from a fixed camera.");
  }
  const std::size_t half = static_cast<std::size_t>(
      std::lower_bound(
          t.begin(), t.end(), t.front() + 0.5 * (t_last - t.front())) -
      t.begin());
  const double late_exponent = n - half >= 4
                                   ? ExponentFrom(t, ln_r, half, n, film_begin)
                                   : std::numeric_limits<double>::quiet_NaN();
  if (start_s && late_exponent < kStoppedExponent) {
    return Refuse(
        std::move(m),
        "The puddle comes to a stop: this paint stands on the tile before it "
        "can be timed. Use more paint or a cleaner tile, or test this cup "
        "with the stream.");
  }
  // The film may go on while the outline is no longer seen whole.
  const bool cut_short = track.picture.last_t_s - t_last > kCutShort * tail_s;
  if (late_exponent > kPouringExponent || t_last - t.front() < kLeastWindow_s) {
    return Refuse(
        std::move(m),
        cut_short ? WhyNotWhole(track)
                  : "The clip ends too soon: paint is still being put down, or "
                    "has only just been. Film on for ten seconds after the "
                    "syringe is away.");
  }
  if (!best.usable) {
    return Refuse(std::move(m), WhyUnlawful(track));
  }

  const std::size_t b = best.begin;
  const double mid_radius = std::exp(0.5 * (ln_r[n - 1] + ln_r[b]));
  const double lead_ratio = (t_last - best.origin_s) / (t[b] - best.origin_s);
  if (lead_ratio < 1.25) {
    return Refuse(
        std::move(m),
        cut_short
            ? WhyNotWhole(track)
            : "The clip ends too soon to see how the puddle slows down. Film "
              "on for ten seconds after the syringe is away.");
  }
  if (best.trend > 25.0) {
    return Refuse(std::move(m), WhyUnlawful(track));
  }
  if (start_s && late_exponent < kSlowExponent) {
    m.warnings.push_back(
        "The puddle slows down more than flowing paint should: it may be about "
        "to stop, so the ratio is less sure.");
  }

  // Shape: a camera that is not square makes a constant ellipse, a tilted tile
  // lets the centre creep.
  std::vector<double> along, stretch, rough;
  const double direction = track.scale && track.scale->direction_rad
                               ? *track.scale->direction_rad
                               : 0.0;
  for (std::size_t i = b; i < n; ++i) {
    const FrontSample& s = at(i);
    along.push_back((s.c2_px * std::cos(2 * direction) +
                     s.s2_px * std::sin(2 * direction)) /
                    s.radius_px);
    stretch.push_back(std::hypot(s.c2_px, s.s2_px) / s.radius_px);
    rough.push_back(s.roughness_px / s.radius_px);
  }
  const double ellipse = MedianOf(stretch);
  if (ellipse > kMostStretch || MedianOf(rough) > kRoughRefuse) {
    return Refuse(std::move(m),
                  "The puddle is not round: film from straight above on a "
                  "level, clean tile, with nothing in the paint's way.");
  }
  const bool directed = track.scale && track.scale->direction_rad;
  const double ln_along = directed ? std::log1p(MedianOf(along)) : 0.0;
  if (ellipse > 0.02) {
    m.warnings.push_back(
        directed ? "The camera does not look straight down; the radius is "
                   "taken along the ruler."
                 : "The camera does not look straight down; the mean radius "
                   "is taken.");
  }
  // Means over the first and last quarter of the window for drift and sectors.
  const std::size_t quarter = std::max<std::size_t>(3, (n - b) / 4);
  const auto mean_over = [&](std::size_t from, auto&& value) {
    double sum = 0.0;
    for (std::size_t i = from; i < from + quarter; ++i) sum += value(at(i));
    return sum / static_cast<double>(quarter);
  };
  const auto change = [&](auto&& value) {
    return mean_over(n - quarter, value) - mean_over(b, value);
  };
  const double grown =
      std::max(1e-6, change([](const FrontSample& s) { return s.radius_px; }));
  const auto crept = [&](const std::vector<double>& c) {
    const auto sum = [&](std::size_t from) {
      const auto first = c.begin() + static_cast<std::ptrdiff_t>(from);
      return std::accumulate(
          first, first + static_cast<std::ptrdiff_t>(quarter), 0.0);
    };
    return (sum(n - quarter) - sum(b)) / static_cast<double>(quarter);
  };
  // In the picture as such, and on what lies round the tile: a puddle that
  // covers most of that leaves little to tell a camera's motion by, and one
  // that stands still in the picture of a still camera does not creep.
  std::vector<double> seen_x, seen_y;
  for (const std::size_t i : source) {
    seen_x.push_back(track.samples[i].x_px);
    seen_y.push_back(track.samples[i].y_px);
  }
  const double drift =
      std::min(std::hypot(crept(centre.x_px), crept(centre.y_px)),
               std::hypot(crept(seen_x), crept(seen_y))) /
      grown;
  double uneven = 0.0;
  for (int k = 0; k < kFrontSectors; ++k) {
    const double a = 2.0 * kPi * (k + 0.5) / kFrontSectors;
    const double extra = change([&](const FrontSample& s) {
      const float own = s.sector_px[static_cast<std::size_t>(k)];
      return (std::isnan(own) ? 0.0 : static_cast<double>(own)) +
             s.c2_px * std::cos(2 * a) + s.s2_px * std::sin(2 * a) +
             s.c3_px * std::cos(3 * a) + s.s3_px * std::sin(3 * a) -
             // A constant ellipse grows with the radius.
             0.0;
    });
    const double expected =
        MedianOf(stretch) > 0.0
            ? grown * (mean_over(b,
                                 [&](const FrontSample& s) {
                                   return (s.c2_px * std::cos(2 * a) +
                                           s.s2_px * std::sin(2 * a)) /
                                          s.radius_px;
                                 }))
            : 0.0;
    uneven += std::pow((extra - expected) / grown, 2) / kFrontSectors;
  }
  uneven = std::sqrt(uneven);
  if (drift > kTiltRefuse) {
    return Refuse(std::move(m),
                  "The puddle creeps to one side as it spreads: the tile is "
                  "not level. Level it in both directions and film again.");
  }
  if (uneven > kUnevenRefuse) {
    return Refuse(std::move(m),
                  "The puddle spreads further on one side than on another: "
                  "clean the tile, keep things out of the paint's way, and "
                  "film again.");
  }
  if (drift > kTiltWarn) {
    m.warnings.push_back(
        "The puddle creeps a little to one side: check that the tile is "
        "level.");
  }
  if (uneven > kUnevenWarn) {
    m.warnings.push_back(
        "The puddle does not spread evenly all round; the interval is wider "
        "for it.");
  }

  // How sure ln C is.
  double window_term = 0.0;
  for (const LawFit& f : fits) {
    // A window that begins half as far in again: does it say the same?
    if (f.usable && f.begin > b &&
        t[f.begin] - t[b] >= 0.25 * (t_last - t[b])) {
      const double gap = std::abs(f.ln_rate - best.ln_rate);
      const double chance = std::sqrt(std::max(
          0.0,
          f.ln_rate_sd * f.ln_rate_sd - best.ln_rate_sd * best.ln_rate_sd));
      window_term = std::max(0.0, gap - chance);
      break;
    }
  }
  const double edge_px = std::hypot(
      (track.rim_only ? kRimShare : kEdgeShare) * track.edge_width_px,
      kEdgeRel * mid_radius);
  const double edge_constant = 7.0 * edge_px / mid_radius;
  const double edge_drift = edge_px / grown;
  const double zoom_term = kZoomLeft * zoomed * mid_radius / grown;
  const double shape_term =
      std::hypot(uneven / std::sqrt(static_cast<double>(kFrontSectors)),
                 0.5 * drift * drift);
  const double volume_term = 3.0 * options.volume_rel_sd;
  const double misfit = std::sqrt(std::max(1.0, best.trend / 3.0));
  const double common_sd =
      std::sqrt(std::pow(best.ln_rate_sd * misfit, 2) +
                std::pow(window_term, 2) + std::pow(edge_constant, 2) +
                std::pow(edge_drift, 2) + std::pow(zoom_term, 2) +
                std::pow(shape_term, 2) + std::pow(volume_term, 2));

  m.outcome = Outcome::kMeasured;
  if (!m.start_s) {
    m.warnings.push_back(
        "The first touch of the paint on the tile was not seen.");
  }
  const double mm_per_px = track.scale ? track.scale->mm_per_px : 1.0;
  const double ln_c = best.ln_rate + 8.0 * (std::log(mm_per_px) + ln_along);
  FlowProxy proxy;
  proxy.name = "spreading_rate";
  proxy.value = std::exp(ln_c);
  proxy.unit = track.scale ? "mm8/s" : "px8/s";
  proxy.ln_value.value = ln_c;
  proxy.ln_value.sd = common_sd;
  proxy.exponent = Estimate{-1.0, 0.0};
  m.proxies.push_back(proxy);
  if (!track.scale) {
    m.warnings.push_back(
        (track.scale_note.empty() ? std::string("There is no scale.")
                                  : track.scale_note) +
        " Clips can be compared only if the camera stays where it is.");
  }
  FlowCurve curve;
  curve.name = "radius";
  curve.unit = track.scale ? "mm" : "px";
  const double factor = mm_per_px * std::exp(ln_along);
  const double zero = m.start_s.value_or(0.0);
  for (std::size_t i = 0; i < n; ++i) {
    curve.t_s.push_back(t[i] - zero);
    curve.value.push_back(radius[i] * factor);
    curve.sd.push_back(at(i).radius_sd_px * factor);
  }
  m.curves.push_back(std::move(curve));

  if (track.scale && options.volume_ml) {
    const double volume_m3 = 1e-6 * *options.volume_ml;
    // C came in mm^8/s.
    const double ln_nu = std::log(
        1e6 * PuddleViscosityM2PerS(volume_m3, std::exp(ln_c) * 1e-24));
    const double scale_sd =
        std::hypot(track.scale->rel_sd, directed ? 0.0 : 0.5 * ellipse);
    m.ln_kinematic_viscosity_mm2_s =
        Estimate{ln_nu, std::hypot(common_sd, 8.0 * scale_sd)};
    const double r_begin = std::exp(ln_r[b]) * factor;
    const double r_end = std::exp(ln_r[n - 1]) * factor;
    if (r_begin < kLeastGravityRadius_mm) {
      m.warnings.push_back(
          "The puddle is so small that surface tension helps to spread it: "
          "use 5 mL for a true viscosity.");
    }
    // Thickness in the middle at the end; 0.9 mm is where paint that wets the
    // tile at 30 degrees stands still.
    const double height_mm = 1e3 * PuddleThicknessM(volume_m3, 1e-3 * r_end);
    if (height_mm < 1.0) {
      m.warnings.push_back(
          "The puddle ends up thinner than a millimetre, where it may be about "
          "to stop; 5 mL gives a surer viscosity.");
    }
    // Reynolds number of the current where the window begins.
    const double h0 = 1e3 * PuddleThicknessM(volume_m3, 1e-3 * r_begin);
    const double speed = r_begin / (8.0 * (t[b] - best.origin_s));
    const double reynolds = speed * h0 * h0 / (std::exp(ln_nu) * r_begin);
    if (reynolds > 0.3) {
      m.warnings.push_back(
          "The paint is so thin that its own swing still carries it: the "
          "viscosity is a lower bound.");
    }
  }
  if (law_out != nullptr) {
    *law_out = PuddleLaw{best.ln_rate, best.origin_s, t[b], t_last};
  }
  return m;
}

}  // namespace flowkin
