#include "core/flow/coat_thickness.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "core/base/estimate.h"
#include "core/fit/least_squares.h"
#include "core/fit/robust.h"

namespace flowkin {
namespace {

// On a plate [Jeffreys1930]. On a rod whose film is as thick as the rod's
// radius, as at the edge of a flat stick, 0.46 (annular film, tests).
constexpr Estimate kCoatExponent{0.5, 0.02};
// One outline stands for both, and a hand that turns the stick moves it.
constexpr double kOneSideSd = 0.05;
// The width that a coat's thickness is measured by.
constexpr double kWidthSd = 0.01;

// A film's time runs from when its upper end left the paint: a dip of 20 to 50
// mm at 0.1 to 0.3 m/s before the lower edge did. One hand differs from film to
// film by less than that.
constexpr double kFilmLead_s = 0.1, kFilmLeadSd_s = 0.05;
// Before, the film still knows how the stick was pulled out.
constexpr double kFilmFrom_s = 0.5;

constexpr std::size_t kLeastPictures = 24;

/// A length that narrows: `rest_px` + `coat_px` / sqrt(t / 1 s).
struct Narrowing {
  double rest_px = 0.0;
  Estimate coat_px;
  double middle_px = 0.0;  ///< length half-way through
};

/// Medians over stretches of equal ratio in time: what a codec or a hand does
/// to neighbouring pictures is one error, not many.
class Stretches {
 public:
  Stretches(const std::vector<double>& t_s,
            const std::vector<double>& length_px) {
    std::vector<double> seen;
    const double step = std::log(t_s.back() / t_s.front()) / kStretches;
    std::size_t i = 0;
    for (int b = 1; b <= kStretches; ++b) {
      const double end_s = t_s.front() * std::exp(step * b) * (1.0 + 1e-12);
      seen.clear();
      double sum_s = 0.0;
      std::size_t all = 0;
      for (; i < t_s.size() && t_s[i] <= end_s; ++i, ++all) {
        if (!std::isfinite(length_px[i])) continue;
        seen.push_back(length_px[i]);
        sum_s += t_s[i];
      }
      if (seen.empty() || seen.size() * 2 < all) continue;
      t_s_.push_back(sum_s / static_cast<double>(seen.size()));
      length_px_.push_back(Median(seen));
    }
  }

  std::optional<Narrowing> Fit() const {
    if (t_s_.size() < kLeastStretches) return std::nullopt;
    const std::size_t half = t_s_.size() / 2;
    const FitResult all = Line(0, t_s_.size(), kFilmLead_s);
    const FitResult early = Line(0, half, kFilmLead_s);
    const FitResult late = Line(half, t_s_.size(), kFilmLead_s);
    const FitResult led = Line(0, t_s_.size(), kFilmLead_s + kFilmLeadSd_s);
    if (!all.IsUsable() || !early.IsUsable() || !late.IsUsable() ||
        !led.IsUsable())
      return std::nullopt;
    Narrowing n{all.Parameter(0).value, all.Parameter(1), Median(length_px_)};
    // Halves that tell different things are no such film.
    const double apart_px = early.Parameter(1).value - late.Parameter(1).value;
    n.coat_px.sd = std::hypot(n.coat_px.sd,
                              0.25 * apart_px,
                              led.Parameter(1).value - n.coat_px.value);
    return n;
  }

 private:
  FitResult Line(std::size_t from, std::size_t to, double lead_s) const {
    std::vector<double> x, y;
    for (std::size_t i = from; i < to; ++i) {
      x.push_back(1.0 / std::sqrt(t_s_[i] + lead_s));
      y.push_back(length_px_[i]);
    }
    return FitLine(x, y);
  }

  static constexpr int kStretches = 24;
  static constexpr std::size_t kLeastStretches = 12;
  std::vector<double> t_s_, length_px_;
};

std::optional<Narrowing> FitNarrowing(const std::vector<double>& t_s,
                                      const std::vector<double>& length_px) {
  return Stretches(t_s, length_px).Fit();
}

std::vector<double> Combine(const CoatEdge& a,
                            double of_a,
                            const CoatEdge& b,
                            double of_b) {
  std::vector<double> sum(a.x_px.size());
  for (std::size_t i = 0; i < sum.size(); ++i)
    sum[i] = of_a * a.x_px[i] + of_b * b.x_px[i];
  return sum;
}

class Coat {
 public:
  Coat(const StreamEpisode& episode, double lift_s, double break_s)
      : stick_px_(episode.stick_width_px) {
    const double time_s = break_s - lift_s;
    std::vector<std::size_t> at;
    for (std::size_t i = 0; i < episode.coat_t_s.size(); ++i) {
      const double t_s = episode.coat_t_s[i] - lift_s;
      if (t_s < kFilmFrom_s || t_s > time_s) continue;
      at.push_back(i);
      t_s_.push_back(t_s);
    }
    if (t_s_.size() < kLeastPictures || t_s_.back() < 2.0 * t_s_.front())
      return;
    for (const CoatEdge& whole : episode.coat_edges) {
      if (whole.width_px > kSharp * stick_px_ + 2.0) continue;
      CoatEdge edge{whole.band, whole.side, whole.width_px, {}};
      for (const std::size_t i : at) edge.x_px.push_back(whole.x_px[i]);
      edges_.push_back(std::move(edge));
    }
    FindBareStick();
  }

  /// Mean of the two lowest bands.
  std::optional<Narrowing> Lower() const {
    const auto both = Join(BothSides(0), BothSides(1));
    return both.seen ? both.coat : Join(OneSide(0), OneSide(1)).coat;
  }

 private:
  // The edge of a round side in shade is wider.
  static constexpr double kSharp = 0.05;
  // What a thick coat leaves of the width that was seen at rest.
  static constexpr double kLeastRest = 0.5, kMostRest = 1.2;

  struct Joined {
    bool seen = false;
    std::optional<Narrowing> coat;  ///< empty if the two contradict each other
  };

  // Higher up the coat is thinner, but not suddenly: by sqrt of the distance
  // from its upper end, which lies 1.5 to 5 stick widths above the lower one.
  static Joined Join(std::optional<Narrowing> low,
                     std::optional<Narrowing> above) {
    constexpr double kShare = 0.84, kShareSd = 0.08;
    if (!low && !above) return {};
    if (low && above) {
      const double share = above->coat_px.value / low->coat_px.value;
      if (share < 0.4 || share > 1.2) return {true, std::nullopt};
    } else {
      // What the one tells of the other.
      const double factor = low ? kShare : 1.0 / kShare;
      Narrowing other = low ? *low : *above;
      other.coat_px.value *= factor;
      other.coat_px.sd = std::hypot(other.coat_px.sd * factor,
                                    2.0 * kShareSd * other.coat_px.value);
      (low ? above : low) = other;
    }
    low->rest_px = 0.5 * (low->rest_px + above->rest_px);
    low->coat_px.sd = 0.5 * std::hypot(low->coat_px.sd, above->coat_px.sd);
    low->coat_px.value = 0.5 * (low->coat_px.value + above->coat_px.value);
    return {true, low};
  }

  // Between two edges that can be the stick's own at one height.
  std::optional<Narrowing> Width(const CoatEdge& left,
                                 const CoatEdge& right) const {
    if (left.band != right.band || left.side > 0 || right.side < 0)
      return std::nullopt;
    const auto n = FitNarrowing(t_s_, Combine(right, 1.0, left, -1.0));
    if (!n || n->rest_px < kLeastRest * stick_px_ ||
        n->rest_px > kMostRest * stick_px_)
      return std::nullopt;
    return n;
  }

  // The highest band whose edges keep their distance shows how the stick moves.
  void FindBareStick() {
    int best_band = 1;
    double best_sd = 0.0;
    for (const CoatEdge& left : edges_)
      for (const CoatEdge& right : edges_) {
        if (left.band < 2 || left.band < best_band) continue;
        const auto n = Width(left, right);
        if (!n) continue;
        const double error_px = std::hypot(n->coat_px.value, n->coat_px.sd);
        if (error_px > 0.012 * stick_px_) continue;
        if (left.band == best_band && n->coat_px.sd > best_sd) continue;
        best_band = left.band;
        best_sd = n->coat_px.sd;
        bare_ = Combine(left, 0.5, right, 0.5);
        bare_sd_px_ = 0.5 * error_px;
        bare_px_ = n->rest_px;
      }
  }

  // Of an edge's or a middle's way, what the hand makes taken off.
  std::vector<double> LessHand(std::vector<double> x_px) const {
    if (!bare_.empty())
      for (std::size_t i = 0; i < x_px.size(); ++i) x_px[i] -= bare_[i];
    return x_px;
  }

  std::optional<Narrowing> BothSides(int band) const {
    std::optional<Narrowing> outermost;
    for (const CoatEdge& left : edges_)
      for (const CoatEdge& right : edges_) {
        if (left.band != band) continue;
        const auto n = Width(left, right);
        if (!n || !Narrows(*n)) continue;
        // Both sides must do it: an edge of what stands behind does not.
        const auto middle =
            FitNarrowing(t_s_, LessHand(Combine(right, 0.5, left, 0.5)));
        if (!middle || std::abs(middle->coat_px.value) + middle->coat_px.sd >
                           0.25 * n->coat_px.value)
          continue;
        if (!outermost || n->middle_px > outermost->middle_px) outermost = n;
      }
    return outermost;
  }

  std::optional<Narrowing> OneSide(int band) const {
    if (bare_.empty()) return std::nullopt;
    std::optional<Narrowing> outermost;
    for (const CoatEdge& edge : edges_) {
      if (edge.band != band) continue;
      std::vector<double> out(edge.x_px.size());
      for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = 2.0 * edge.side * (edge.x_px[i] - bare_[i]);
      auto n = FitNarrowing(t_s_, out);
      if (!n) continue;
      n->coat_px.sd = std::hypot(
          n->coat_px.sd, 2.0 * bare_sd_px_, kOneSideSd * n->coat_px.value);
      if (!Narrows(*n)) continue;
      n->rest_px = bare_px_;
      if (!outermost || n->middle_px > outermost->middle_px) outermost = n;
    }
    return outermost;
  }

  static bool Narrows(const Narrowing& n) {
    return n.coat_px.value > kLeastSure * n.coat_px.sd;
  }
  static constexpr double kLeastSure = 6.0;

  double stick_px_;
  std::vector<double> t_s_;
  std::vector<CoatEdge> edges_;
  std::vector<double> bare_;
  double bare_sd_px_ = 0.0, bare_px_ = 0.0;
};

}  // namespace

std::optional<FlowProxy> CoatThickness(const StreamEpisode& episode,
                                       double lift_s,
                                       double break_s) {
  const auto coat = Coat(episode, lift_s, break_s).Lower();
  if (!coat) return std::nullopt;
  const double value = coat->coat_px.value / coat->rest_px;
  return FlowProxy{
      "coat_thickness",
      value,
      "stick widths",
      {std::log(value),
       std::hypot(coat->coat_px.sd / coat->coat_px.value, kWidthSd)},
      kCoatExponent,
      kOutlineSd};
}

}  // namespace flowkin
