#include "tests/support/stream_sim.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace flowkin::testing {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kGravity = 9.81;
constexpr double kMm = 1e-3;
// Thinner threads are counted as parted (a fiftieth of a pixel).
constexpr double kPinchRadius = 8e-6;
constexpr double kElement = 0.10e-3;
constexpr double kLongestStep = 4e-4;
constexpr double kShortestStep = 2e-7;
// Crumbs below this volume (a 30 micrometre sphere) are forgotten.
constexpr double kCrumb = 1.4e-14;
// Smaller pieces are satellites, not drops.
constexpr double kDrop = 5e-9;
// The thread's foot is followed this far below the surface.
constexpr double kFootDepth = 0.4e-3;

double Volume(const std::vector<double>& parts) {
  double sum = 0.0;
  for (double v : parts) sum += v;
  return sum;
}

// Slopes for a monotone cubic: three-point, limited after Fritsch and Carlson
// 1980 (SIAM J. Numer. Anal. 17; from memory, not checked).
void Slopes(const std::vector<double>& x,
            const std::vector<double>& y,
            std::vector<double>* slope) {
  const std::size_t n = x.size();
  slope->resize(n);
  auto secant = [&](std::size_t i) {
    return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  };
  for (std::size_t i = 1; i + 1 < n; ++i) {
    const double h0 = x[i] - x[i - 1], h1 = x[i + 1] - x[i];
    const double d0 = secant(i - 1), d1 = secant(i);
    double m = (h1 * d0 + h0 * d1) / (h0 + h1);
    if (d0 * d1 <= 0.0) {
      m = 0.0;
    } else if (std::abs(m) > 3.0 * std::min(std::abs(d0), std::abs(d1))) {
      m = std::copysign(3.0 * std::min(std::abs(d0), std::abs(d1)), d0);
    }
    (*slope)[i] = m;
  }
  (*slope)[0] = secant(0);
  (*slope)[n - 1] = secant(n - 2);
}

double Cubic(const std::vector<double>& x,
             const std::vector<double>& y,
             const std::vector<double>& slope,
             std::size_t k,
             double at) {
  const double h = x[k + 1] - x[k];
  const double t = std::clamp((at - x[k]) / h, 0.0, 1.0);
  const double t2 = t * t, t3 = t2 * t;
  return (2.0 * t3 - 3.0 * t2 + 1.0) * y[k] +
         (t3 - 2.0 * t2 + t) * h * slope[k] + (3.0 * t2 - 2.0 * t3) * y[k + 1] +
         (t3 - t2) * h * slope[k + 1];
}

}  // namespace

double FilmThicknessMm(const StreamSimOptions& o,
                       double below_top_mm,
                       double age_s) {
  if (below_top_mm <= 0.0) return 0.0;
  // Every film thickness travels down at its own wave speed dQ/dS = z / age.
  const double nu = o.nu_mm2_s * 1e-6, z = below_top_mm * kMm;
  const double largest = o.largest_coat_mm * kMm;
  if (o.stick == StickShape::kFlat) {
    return std::min(largest, std::sqrt(nu * z / (kGravity * age_s))) / kMm;
  }
  // Rod of radius a, film out to beta a, section S = pi a^2 (beta^2 - 1):
  // dQ/dS = g a^2 / (2 nu) (2 beta^2 ln beta - beta^2 + 1), rising in beta.
  const double a = 0.5 * o.stick_width_mm * kMm;
  const double want = z / age_s * 2.0 * nu / (kGravity * a * a);
  double low = 1.0, high = 1.0 + largest / a;
  for (int i = 0; i < 60; ++i) {
    const double b = 0.5 * (low + high);
    (2.0 * b * b * std::log(b) - b * b + 1.0 < want ? low : high) = b;
  }
  return (low - 1.0) * a / kMm;
}

double FilmFlowMlS(const StreamSimOptions& o, double film_mm) {
  const double nu = o.nu_mm2_s * 1e-6, h = film_mm * kMm;
  if (o.stick == StickShape::kFlat) {
    const double perimeter =
        2.0 * (o.stick_width_mm + o.stick_thickness_mm) * kMm;
    return perimeter * kGravity * h * h * h / (3.0 * nu) * 1e6;
  }
  const double a = 0.5 * o.stick_width_mm * kMm;
  const double b2 = (1.0 + h / a) * (1.0 + h / a);
  const double b4 = b2 * b2;
  return kPi * kGravity * a * a * a * a / (8.0 * nu) *
         (2.0 * b4 * std::log(b2) - 3.0 * b4 + 4.0 * b2 - 1.0) * 1e6;
}

StreamSim::StreamSim(const StreamSimOptions& options)
    : o_(options),
      nu_(options.nu_mm2_s * 1e-6),
      rho_(options.rho_kg_m3),
      sigma_(options.sigma_n_m),
      mu_(nu_ * rho_),
      edge_r_(options.edge_radius_mm * kMm),
      wetted_(options.wetted_length_mm * kMm),
      fall_(options.fall_height_mm * kMm),
      lift_(options.lift_speed_mm_s * kMm),
      random_(options.seed) {
  // The meniscus under the edge when it leaves the surface: a short column
  // that the pool holds at its foot.
  Chain c;
  c.on_stick = true;
  c.in_pool = true;
  const double length = 1.0e-3;
  const int n = 10;
  for (int i = 0; i <= n; ++i) {
    c.x.push_back(-length + (length + kFootDepth) * i / n);
    c.u.push_back(-lift_ * (1.0 - static_cast<double>(i) / n));
  }
  const double column = 1.3 * edge_r_;
  for (int i = 0; i < n; ++i) {
    c.volume.push_back(kPi * column * column * (c.x[1] - c.x[0]));
  }
  chains_.push_back(std::move(c));
}

double StreamSim::EdgeX(double t) const {
  // Steady speed, then eased into the final height over its last fifth. The
  // first millimetre is the meniscus the chain starts with.
  const double ease = 0.2 * fall_;
  const double start = 1.0e-3;
  const double t1 = (fall_ - ease - start) / lift_;
  const double h = t < t1 ? start + lift_ * t
                          : fall_ - ease * std::exp(-(t - t1) * lift_ / ease);
  return -h;
}

double StreamSim::EdgeSpeed(double t) const {
  const double ease = 0.2 * fall_;
  const double t1 = (fall_ - ease - 1.0e-3) / lift_;
  return t < t1 ? -lift_ : -lift_ * std::exp(-(t - t1) * lift_ / ease);
}

double StreamSim::EdgeHeightMm() const { return -EdgeX(t_) / kMm; }

double StreamSim::FilmMm(double below_top_mm) const {
  // The lower edge left the paint at 0, the upper one wetted / lift earlier.
  return FilmThicknessMm(o_, below_top_mm, t_ + wetted_ / lift_);
}

double StreamSim::FlowMlS() const {
  return FilmFlowMlS(o_, FilmMm(o_.wetted_length_mm));
}

void StreamSim::NodeRadii(const Chain& c, std::vector<double>* r) const {
  const std::size_t n = c.volume.size();
  r->resize(n + 1);
  for (std::size_t i = 1; i < n; ++i) {
    (*r)[i] = std::sqrt((c.volume[i - 1] + c.volume[i]) /
                        (kPi * (c.x[i + 1] - c.x[i - 1])));
  }
  (*r)[0] = c.on_stick ? edge_r_ : 0.0;
  (*r)[n] = c.in_pool
                ? std::sqrt(c.volume[n - 1] / (kPi * (c.x[n] - c.x[n - 1])))
                : 0.0;
}

void StreamSim::Solve(Chain* chain, double dt, double flow) {
  Chain& c = *chain;
  const std::size_t n = c.volume.size();
  NodeRadii(c, &r_);

  // Surface energy of the frusta between nodes; the tension of element k is
  // dE/dl_k with the node radii following from the volumes.
  tension_.assign(n, 0.0);
  std::vector<double>& pull = tension_;
  rhs_.assign(n + 1, 0.0);  // first: dE/dr of each node
  for (std::size_t k = 0; k < n; ++k) {
    const double l = c.x[k + 1] - c.x[k];
    const double d = r_[k + 1] - r_[k], s = r_[k + 1] + r_[k];
    const double slant = std::hypot(l, d);
    pull[k] += sigma_ * kPi * s * l / slant;
    rhs_[k] += sigma_ * kPi * (slant - s * d / slant);
    rhs_[k + 1] += sigma_ * kPi * (slant + s * d / slant);
  }
  for (std::size_t k = 0; k < n; ++k) {
    // Inner node i: dr_i/dl = -r_i / (2 (l_{i-1} + l_i)). The ends have fixed
    // radii, except the foot in the pool.
    if (k > 0) pull[k] -= rhs_[k] * r_[k] / (2.0 * (c.x[k + 1] - c.x[k - 1]));
    if (k + 1 < n) {
      pull[k] -= rhs_[k + 1] * r_[k + 1] / (2.0 * (c.x[k + 2] - c.x[k]));
    } else if (c.in_pool) {
      pull[k] -= rhs_[n] * r_[n] / (2.0 * (c.x[n] - c.x[n - 1]));
    }
  }

  // Implicit in the viscous tension 3 mu A du/dz.
  viscous_.resize(n);
  for (std::size_t k = 0; k < n; ++k) {
    const double l = c.x[k + 1] - c.x[k];
    viscous_[k] = 3.0 * mu_ * c.volume[k] / (l * l);
  }
  lower_.assign(n + 1, 0.0);
  diag_.assign(n + 1, 0.0);
  upper_.assign(n + 1, 0.0);
  for (std::size_t i = 0; i <= n; ++i) {
    const double mass =
        0.5 * rho_ *
        ((i > 0 ? c.volume[i - 1] : 0.0) + (i < n ? c.volume[i] : 0.0));
    diag_[i] = mass / dt;
    rhs_[i] = mass / dt * c.u[i] + mass * kGravity;
    if (i < n) {
      diag_[i] += viscous_[i];
      upper_[i] = -viscous_[i];
      rhs_[i] += pull[i];
    }
    if (i > 0) {
      diag_[i] += viscous_[i - 1];
      lower_[i] = -viscous_[i - 1];
      rhs_[i] -= pull[i - 1];
    }
  }
  if (c.on_stick) {
    // The stick carries node 0; what flows in over the patch at the edge
    // lengthens element 0 without straining it.
    rhs_[1] += viscous_[0] * flow / (kPi * edge_r_ * edge_r_);
    diag_[0] = 1.0;
    upper_[0] = 0.0;
    rhs_[0] = EdgeSpeed(t_ + dt);
  }
  if (c.in_pool) {
    // The pool pulls the thread's foot as hard as the thread pulls itself,
    // and holds it against rising.
    rhs_[n] += pull[n - 1];
  }
  auto sweep = [&] {
    for (std::size_t i = 1; i <= n; ++i) {
      const double w = lower_[i] / diag_[i - 1];
      diag_[i] -= w * upper_[i - 1];
      rhs_[i] -= w * rhs_[i - 1];
    }
    c.u[n] = rhs_[n] / diag_[n];
    for (std::size_t i = n; i-- > 0;) {
      c.u[i] = (rhs_[i] - upper_[i] * c.u[i + 1]) / diag_[i];
    }
  };
  sweep();
  if (c.in_pool && c.u[n] < 0.0) {
    // Only the last row changes: u_n = 0, then substitute back again.
    c.u[n] = 0.0;
    for (std::size_t i = n; i-- > 0;) {
      c.u[i] = (rhs_[i] - upper_[i] * c.u[i + 1]) / diag_[i];
    }
  }
}

void StreamSim::FeedTop(Chain* c, double dt, double flow) {
  std::normal_distribution<double> scatter(0.0, 1.0);
  // Scatter per millisecond of flow, whatever the step.
  const double s = o_.disturbance * std::sqrt(1e-3 / dt) * scatter(random_);
  c->volume[0] += flow * dt * (1.0 + std::clamp(s, -0.9, 0.9));
}

void StreamSim::Remesh(Chain* chain) {
  // The nodes have moved with the liquid; volume and speed are carried back
  // onto an even grid between the ends by monotone cubics of the cumulative
  // volume (volume is kept to rounding, no section turns negative) and of the
  // speed. Even grids that stay put keep the solver's own noise far below the
  // disturbance that is put in on purpose.
  Chain& c = *chain;
  const double end = c.in_pool ? std::min(c.x.back(), kFootDepth) : c.x.back();
  const double length = end - c.x.front();
  const std::size_t old = c.volume.size();
  std::size_t n = old;
  const double spacing = length / static_cast<double>(n);
  const double want =
      c.in_pool || c.on_stick ? kElement : std::min(kElement, length / 12.0);
  if (spacing > 1.25 * want || spacing < 0.8 * want) {
    n = std::max<std::size_t>(
        6, static_cast<std::size_t>(std::lround(length / want)));
  }
  cumulative_.assign(old + 1, 0.0);
  for (std::size_t k = 0; k < old; ++k) {
    cumulative_[k + 1] = cumulative_[k] + c.volume[k];
  }
  Slopes(c.x, cumulative_, &slope_v_);
  if (c.on_stick) {
    // Liquid enters with the section of the patch it hangs from.
    slope_v_[0] = std::min(kPi * edge_r_ * edge_r_,
                           3.0 * c.volume[0] / (c.x[1] - c.x[0]));
  }
  Slopes(c.x, c.u, &slope_u_);
  new_x_.resize(n + 1);
  new_u_.resize(n + 1);
  new_volume_.resize(n);
  double before = 0.0;
  std::size_t k = 0;
  for (std::size_t i = 0; i <= n; ++i) {
    const double x = i == n ? end
                            : c.x.front() + length * static_cast<double>(i) /
                                                static_cast<double>(n);
    while (k + 1 < old && c.x[k + 1] < x) ++k;
    const double v = Cubic(c.x, cumulative_, slope_v_, k, x);
    new_x_[i] = x;
    new_u_[i] = Cubic(c.x, c.u, slope_u_, k, x);
    if (i > 0) new_volume_[i - 1] = std::max(v - before, 1e-20);
    before = v;
  }
  c.x = new_x_;
  c.u = new_u_;
  c.volume = new_volume_;
}

void StreamSim::DropIntoPool(Chain* c) {
  if (!c->in_pool && c->x.back() >= 0.0) {
    c->in_pool = true;
    if (!c->on_stick && Volume(c->volume) > kDrop) lands_s_.push_back(t_);
  }
}

void StreamSim::Pinch() {
  for (std::size_t i = 0; i < chains_.size(); ++i) {
    std::size_t at = 0;
    double thinnest = kPinchRadius;
    const Chain& c = chains_[i];
    for (std::size_t k = 0; k < c.volume.size(); ++k) {
      const double r = std::sqrt(c.volume[k] / (kPi * (c.x[k + 1] - c.x[k])));
      // The stick's own element is wetted and stays.
      if (r < thinnest && !(c.on_stick && k == 0)) {
        thinnest = r;
        at = k + 1;
      }
    }
    if (at == 0) continue;
    const std::size_t k = at - 1;
    if (chains_[i].on_stick) pinches_s_.push_back(t_);
    Chain below;
    below.in_pool = chains_[i].in_pool;
    Chain& above = chains_[i];
    const auto cut = static_cast<std::ptrdiff_t>(k);
    below.x.assign(above.x.begin() + cut + 1, above.x.end());
    below.u.assign(above.u.begin() + cut + 1, above.u.end());
    below.volume.assign(above.volume.begin() + cut + 1, above.volume.end());
    above.x.resize(k + 1);
    above.u.resize(k + 1);
    above.volume.resize(k);
    above.in_pool = false;
    if (above.on_stick) {
      const double left = supplied_ - Volume(above.volume);
      if (left - left_before_ > kDrop) drops_s_.push_back(t_);
      left_before_ = std::max(left_before_, left);
    }
    if (!below.volume.empty()) {
      chains_.insert(chains_.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                     std::move(below));
    }
  }
  Forget();
}

void StreamSim::Forget() {
  chains_.erase(std::remove_if(chains_.begin(),
                               chains_.end(),
                               [](const Chain& c) {
                                 if (c.on_stick) return false;
                                 return Volume(c.volume) < kCrumb ||
                                        c.volume.empty() || c.x[0] > 0.0;
                               }),
                chains_.end());
}

void StreamSim::Join() {
  for (std::size_t i = 0; i + 1 < chains_.size();) {
    Chain& a = chains_[i];
    Chain& b = chains_[i + 1];
    if (a.x.back() < b.x.front()) {
      ++i;
      continue;
    }
    // The tips have met: one bridging element takes up the overlap.
    const std::size_t last = a.volume.size() - 1;
    if (b.volume.size() > 1) {
      a.volume[last] += b.volume[0];
      a.x.back() = b.x[1];
      a.u.back() = b.u[1];
      a.x.insert(a.x.end(), b.x.begin() + 2, b.x.end());
      a.u.insert(a.u.end(), b.u.begin() + 2, b.u.end());
      a.volume.insert(a.volume.end(), b.volume.begin() + 1, b.volume.end());
    } else {
      a.volume[last] += b.volume[0];
      a.x.back() = std::max(a.x.back(), b.x.back());
    }
    a.in_pool = b.in_pool;
    chains_.erase(chains_.begin() + static_cast<std::ptrdiff_t>(i) + 1);
  }
  // Nodes in order, whatever the overlap was.
  for (Chain& c : chains_) {
    for (std::size_t k = 0; k + 1 < c.x.size(); ++k) {
      if (c.x[k + 1] < c.x[k] + 1e-6) c.x[k + 1] = c.x[k] + 1e-6;
    }
  }
}

void StreamSim::Step(double longest_s) {
  const double flow = FlowMlS() * 1e-6;
  double dt = std::min({longest_s, dt_ * 1.3, kLongestStep});
  for (Chain& c : chains_) Solve(&c, dt, c.on_stick ? flow : 0.0);
  // No element may change its length by more than a tenth in one step; the
  // speeds stay, the step shrinks (backward Euler is stable either way).
  double fastest = 0.0;
  for (const Chain& c : chains_) {
    for (std::size_t k = 0; k < c.volume.size(); ++k) {
      fastest = std::max(fastest,
                         std::abs(c.u[k + 1] - c.u[k]) / (c.x[k + 1] - c.x[k]));
    }
  }
  if (fastest * dt > 0.1) dt = std::max(0.1 / fastest, kShortestStep);
  dt_ = dt;
  for (Chain& c : chains_) {
    for (std::size_t i = 0; i < c.x.size(); ++i) c.x[i] += dt * c.u[i];
    if (c.on_stick) {
      FeedTop(&c, dt, flow);
      supplied_ += flow * dt;
      c.x[0] = EdgeX(t_ + dt);
      if (c.x[1] < c.x[0] + 1e-6) c.x[1] = c.x[0] + 1e-6;
    }
  }
  t_ += dt;
  Join();
  for (Chain& c : chains_) DropIntoPool(&c);
  Forget();
  for (Chain& c : chains_) {
    Remesh(&c);
  }
  Pinch();
}

void StreamSim::AdvanceTo(double t_s) {
  while (t_ < t_s - 1e-9) Step(t_s - t_);
}

std::vector<StreamPiece> StreamSim::Pieces() const {
  std::vector<StreamPiece> pieces;
  std::vector<double> r;
  for (const Chain& c : chains_) {
    if (c.volume.empty()) continue;
    NodeRadii(c, &r);
    StreamPiece p;
    p.on_stick = c.on_stick;
    p.in_pool = c.in_pool;
    for (std::size_t i = 0; i < r.size(); ++i) {
      p.points.push_back({-c.x[i] / kMm, r[i] / kMm, c.u[i] / kMm});
    }
    pieces.push_back(std::move(p));
  }
  return pieces;
}

double StreamSim::NeckRadiusMm() const {
  if (chains_.size() != 1 || !chains_[0].in_pool) return 0.0;
  const Chain& c = chains_[0];
  double neck = edge_r_;
  for (std::size_t k = 0; k < c.volume.size(); ++k) {
    if (c.x[k] > 0.0) break;
    neck =
        std::min(neck, std::sqrt(c.volume[k] / (kPi * (c.x[k + 1] - c.x[k]))));
  }
  return neck / kMm;
}

double StreamSim::RadiusMm(double height_mm) const {
  const double x = -height_mm * kMm;
  for (const Chain& c : chains_) {
    for (std::size_t k = 0; k < c.volume.size(); ++k) {
      if (c.x[k] <= x && x < c.x[k + 1]) {
        return std::sqrt(c.volume[k] / (kPi * (c.x[k + 1] - c.x[k]))) / kMm;
      }
    }
  }
  return 0.0;
}

double StreamSim::LargestGapMm(double* height_mm) const {
  double largest = 0.0, middle = 0.0;
  for (std::size_t i = 0; i < chains_.size(); ++i) {
    const double from = chains_[i].x.back();
    const double to = i + 1 < chains_.size()
                          ? std::min(chains_[i + 1].x.front(), 0.0)
                          : (chains_[i].in_pool ? from : 0.0);
    if (to - from > largest) {
      largest = to - from;
      middle = 0.5 * (from + to);
    }
  }
  if (height_mm) *height_mm = -middle / kMm;
  return largest / kMm;
}

void StreamWatch::See(const StreamSim& sim) {
  constexpr double kGapMm = 1.0;
  const double t = sim.time_s();
  double height = 0.0;
  const double gap = sim.LargestGapMm(&height);
  // Joined again only once the gap is closed, not when it is merely short.
  const bool joined = joined_ ? gap < kGapMm : gap <= 0.0;
  if (joined != joined_ || r_.continuity.empty()) {
    if (!joined && r_.break_s < 0.0) {
      r_.break_s = t;
      r_.break_height_mm = height;
    }
    r_.continuity.push_back({t, joined});
    joined_ = joined;
  }
  if (r_.first_pinch_s < 0.0 && !sim.pinches_s().empty()) {
    r_.first_pinch_s = sim.pinches_s().front();
  }
  const double neck = sim.NeckRadiusMm();
  if (t > 0.3 && neck > 0.0) {
    if (neck < 0.2 && r_.neck_0p2mm_s < 0.0) r_.neck_0p2mm_s = t;
    if (neck < 0.1 && r_.neck_0p1mm_s < 0.0) r_.neck_0p1mm_s = t;
  }
  if (t >= last_sample_s_ + 0.02 && r_.break_s < 0.0) {
    r_.samples.push_back({t, neck, sim.FlowMlS()});
    last_sample_s_ = t;
  }
}

StreamSimResult StreamWatch::Finish(const StreamSim& sim) const {
  constexpr double kLastingS = 0.08;
  StreamSimResult r = r_;
  for (std::size_t i = 0; i < r.continuity.size(); ++i) {
    if (r.continuity[i].joined) continue;
    const double until =
        i + 1 < r.continuity.size() ? r.continuity[i + 1].t_s : sim.time_s();
    if (until - r.continuity[i].t_s >= kLastingS) {
      r.lasting_break_s = r.continuity[i].t_s;
      break;
    }
  }
  if (r.break_s >= 0.0) {
    for (double t : sim.drops_s()) {
      if (t > r.break_s + 0.03) r.drips_s.push_back(t);
    }
    for (double t : sim.lands_s()) {
      if (t > r.break_s) r.lands_s.push_back(t);
    }
  }
  return r;
}

StreamSimResult RunStream(const StreamSimOptions& options,
                          double after_break_s,
                          double limit_s) {
  StreamSim sim(options);
  StreamWatch watch;
  double end = limit_s;
  while (sim.time_s() < end) {
    sim.Step(1.0);
    watch.See(sim);
    if (end == limit_s) {
      const StreamSimResult now = watch.Finish(sim);
      if (now.lasting_break_s >= 0.0) {
        end = std::min(limit_s, now.lasting_break_s + after_break_s);
      }
    }
  }
  return watch.Finish(sim);
}

}  // namespace flowkin::testing
