#include "core/flow/compare.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>
#include <numbers>
#include <utility>

#include "core/base/check.h"
#include "core/base/cholesky.h"
#include "core/base/distributions.h"
#include "core/flow/physics.h"

namespace flowkin {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

// Prior of the hand's scatter, relative sd of a time or rate: its median is the
// within-laboratory coefficient of variation of dip cup times, six laboratories
// and eight paints [ASTM-D4212]. Two degrees of freedom: three own repeats
// already outweigh it, and simulated benches with 1 to 6 % scatter get 95 %
// intervals that hold the truth in 96 % (93 to 95 % for the shakiest hand).
constexpr double kHandScatter = 0.037;
constexpr double kHandScatterDof = 2.0;
// A quantity that moves less with viscosity than any time does (a radius goes
// as nu^(1/8)) also moves less with the hand.
constexpr double kTimeExponent = 1.0 / 3.0;
// Hand scatter common to proxies of the same clips.
constexpr double kHandCorrelation = 0.5;
// Starting and stopping a watch by hand, one standard deviation (common
// practice, no source).
constexpr double kStopwatchSdS = 0.1;
// Proxies contradict each other when chance would do so less often than this.
constexpr double kDisagreement = 0.05;
// Repeats this far apart (relative sd) deserve a word.
constexpr double kRestlessHand = 0.10;

constexpr double kMatchProbability = 0.80;
constexpr double kFarProbability = 0.025;

/// One proxy with all its clips.
struct Group {
  TestKind kind;
  std::string name;
  std::vector<Estimate> reference, cup;
  double exponent = 1.0;
  double exponent_rel_sd = 0.0;
  double paint_sd = 0.0;
};

/// The difference of a proxy's ln values, cup less base coat.
struct Difference {
  double value = 0.0;
  double variance = 0.0;
  double dof = 1.0;
  double hand_variance = 0.0;    ///< part of `variance` the hand makes
  double hand_sd = 0.0;          ///< of one clip
  double reference_share = 0.0;  ///< of `variance`, from the base coat's side
  double paint_share = 0.0;      ///< of `variance`, of the paint itself
};

/// Mean of one side for a given hand variance.
struct SideMean {
  double mean = 0.0;
  double variance = 0.0;
  double ln_likelihood = 0.0;  ///< mean integrated out
  double clip_variance = 0.0;  ///< part of `variance` from the clips' own sd
};

SideMean MeanOfSide(std::span<const Estimate> clips, double hand_variance) {
  SideMean side;
  double total = 0.0;
  for (const Estimate& clip : clips) {
    const double weight = 1.0 / (hand_variance + clip.sd * clip.sd);
    total += weight;
    side.mean += weight * clip.value;
    side.ln_likelihood += 0.5 * std::log(weight);
  }
  side.mean /= total;
  side.variance = 1.0 / total;
  side.ln_likelihood -= 0.5 * std::log(total);
  for (const Estimate& clip : clips) {
    const double weight = 1.0 / (hand_variance + clip.sd * clip.sd);
    const double off = clip.value - side.mean;
    side.ln_likelihood -= 0.5 * weight * off * off;
    const double share = weight / total;
    side.clip_variance += share * share * clip.sd * clip.sd;
  }
  return side;
}

/// Posterior of the difference, hand scatter integrated over a grid. The
/// mixture of normals over the scatter is Student's t when clips have no error
/// of their own; otherwise a t with the same first two moments of the precision
/// stands for it.
Difference Subtract(const Group& group) {
  const double prior_sd =
      kHandScatter * std::min(1.0, std::abs(group.exponent) / kTimeExponent);
  // The scale whose inverse chi-square has its median there: the median of
  // chi-square with two degrees is 2 ln 2.
  const double prior_variance = prior_sd * prior_sd * std::numbers::ln2;
  constexpr int kSteps = 240;
  const double ln_low = std::log(prior_sd) - 6.0;
  const double ln_high = std::log(prior_sd) + 6.0;

  struct Point {
    double ln_weight, hand_variance, value, variance, clip_variance;
    double reference_share;
  };
  std::vector<Point> points;
  double top = -kInfinity;
  for (int i = 0; i <= kSteps; ++i) {
    const double ln_sd = ln_low + (ln_high - ln_low) * i / kSteps;
    const double variance = std::exp(2.0 * ln_sd);
    const SideMean reference = MeanOfSide(group.reference, variance);
    const SideMean cup = MeanOfSide(group.cup, variance);
    // Scaled inverse chi-square in the variance, times d variance / d ln sd.
    const double ln_prior = -kHandScatterDof * ln_sd -
                            0.5 * kHandScatterDof * prior_variance / variance;
    points.push_back(
        {ln_prior + reference.ln_likelihood + cup.ln_likelihood,
         variance,
         cup.mean - reference.mean,
         reference.variance + cup.variance,
         reference.clip_variance + cup.clip_variance,
         reference.variance / (reference.variance + cup.variance)});
    top = std::max(top, points.back().ln_weight);
  }
  double total = 0.0, value = 0.0, precision = 0.0, precision2 = 0.0;
  double clip_variance = 0.0, hand_precision = 0.0, reference_share = 0.0;
  for (Point& p : points) {
    p.ln_weight = std::exp(p.ln_weight - top);
    total += p.ln_weight;
    value += p.ln_weight * p.value;
    precision += p.ln_weight / p.variance;
    precision2 += p.ln_weight / (p.variance * p.variance);
    clip_variance += p.ln_weight * p.clip_variance;
    hand_precision += p.ln_weight / p.hand_variance;
    reference_share += p.ln_weight * p.reference_share;
  }
  value /= total;
  precision /= total;
  precision2 /= total;
  clip_variance /= total;
  double spread = 0.0;
  for (const Point& p : points) {
    spread += p.ln_weight * (p.value - value) * (p.value - value);
  }
  Difference d;
  d.value = value;
  d.variance = 1.0 / precision + spread / total;
  const double relative = precision2 / (precision * precision) - 1.0;
  d.dof = std::min(1e6, 2.0 / std::max(relative, 1e-9));
  d.hand_variance = std::max(0.0, d.variance - clip_variance);
  d.hand_sd = std::sqrt(total / hand_precision);
  // What differs from paint to paint counts as known, and no film lessens it.
  const double of_films = d.variance;
  const double of_paint = group.paint_sd * group.paint_sd;
  d.variance += of_paint;
  d.dof *= std::pow(d.variance / of_films, 2);
  d.paint_share = of_paint / d.variance;
  d.reference_share = reference_share / total * (1.0 - d.paint_share);
  return d;
}

/// Solves a x = b for a covariance matrix `a`.
std::vector<double> Solve(const std::vector<std::vector<double>>& a,
                          std::vector<double> b) {
  std::vector<double> flat;
  flat.reserve(b.size() * b.size());
  for (const auto& row : a) flat.insert(flat.end(), row.begin(), row.end());
  FLOWKIN_CHECK(SolvePositive(flat, b));
  return b;
}

/// Several proxies brought to one ln ratio.
struct Fused {
  double ln_ratio = 0.0;
  double repeat_sd = 0.0;
  double repeat_dof = 1.0;
  double exponent_rel_sd = 0.0;
  std::vector<double> weight;  ///< share in ln_ratio, adds up to 1
  double chance = 1.0;  ///< probability of at least this much contradiction
  double birge = 1.0;

  double Variance() const {
    const double stretch = exponent_rel_sd * ln_ratio;
    return repeat_sd * repeat_sd + stretch * stretch;
  }
};

using Matrix = std::vector<std::vector<double>>;

/// `between_kinds`: variance of ln ratio from one kind of test to another, for
/// paint that has no single viscosity.
Fused Fuse(const std::vector<Group>& groups,
           const std::vector<Difference>& differences,
           double between_kinds) {
  const std::size_t n = groups.size();
  Matrix repeat(n, std::vector<double>(n, 0.0));
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      if (i == j) {
        repeat[i][i] = differences[i].variance;
      } else if (groups[i].kind == groups[j].kind) {
        const double sign = groups[i].exponent * groups[j].exponent;
        repeat[i][j] = std::copysign(kHandCorrelation, sign) *
                       std::sqrt(differences[i].hand_variance *
                                 differences[j].hand_variance);
      }
      if (groups[i].kind == groups[j].kind) {
        repeat[i][j] += between_kinds * groups[i].exponent * groups[j].exponent;
      }
    }
  }
  const auto total = [&](const std::vector<std::size_t>& used, double y) {
    Matrix sum(used.size(), std::vector<double>(used.size()));
    for (std::size_t a = 0; a < used.size(); ++a) {
      for (std::size_t b = 0; b < used.size(); ++b) {
        sum[a][b] = repeat[used[a]][used[b]];
      }
      const Group& g = groups[used[a]];
      const double stretch = y * g.exponent * g.exponent_rel_sd;
      sum[a][a] += stretch * stretch;
    }
    return sum;
  };
  const auto exponents = [&](const std::vector<std::size_t>& used) {
    std::vector<double> p;
    p.reserve(used.size());
    for (std::size_t k : used) p.push_back(groups[k].exponent);
    return p;
  };

  std::vector<std::size_t> used(n);
  for (std::size_t k = 0; k < n; ++k) used[k] = k;
  Fused fused;
  std::vector<double> estimator;  // ln ratio = sum estimator * difference
  while (true) {
    // The exponents' errors count at the common ln ratio, not at each proxy's
    // own: else small readings would get too much weight.
    const std::vector<double> p = exponents(used);
    double y = 0.0;
    for (int i = 0; i < 100; ++i) {
      estimator = Solve(total(used, y), p);
      double norm = 0.0;
      for (std::size_t a = 0; a < used.size(); ++a) norm += p[a] * estimator[a];
      double next = 0.0;
      for (std::size_t a = 0; a < used.size(); ++a) {
        estimator[a] /= norm;
        next += estimator[a] * differences[used[a]].value;
      }
      const bool settled = std::abs(next - y) < 1e-12;
      y = next;
      if (settled) break;
    }
    fused.ln_ratio = y;
    // A proxy whose error is mostly another's, only larger, would be
    // extrapolated from (negative weight): it adds nothing and is left out.
    std::size_t worst = 0;
    for (std::size_t a = 1; a < used.size(); ++a) {
      if (estimator[a] * p[a] < estimator[worst] * p[worst]) worst = a;
    }
    if (estimator[worst] * p[worst] >= 0.0) break;
    used.erase(used.begin() + static_cast<std::ptrdiff_t>(worst));
  }

  fused.weight.assign(n, 0.0);
  double variance = 0.0, stretch = 0.0, parts = 0.0, per_dof = 0.0;
  for (std::size_t a = 0; a < used.size(); ++a) {
    const Group& g = groups[used[a]];
    const double share = estimator[a] * g.exponent;
    fused.weight[used[a]] = share;
    stretch += std::pow(share * g.exponent_rel_sd, 2);
    for (std::size_t b = 0; b < used.size(); ++b) {
      variance += estimator[a] * estimator[b] * repeat[used[a]][used[b]];
    }
    const double part = estimator[a] * estimator[a] * repeat[used[a]][used[a]];
    parts += part;
    per_dof += part / differences[used[a]].dof;
  }
  fused.repeat_sd = std::sqrt(variance);
  fused.repeat_dof = parts / per_dof;
  fused.exponent_rel_sd = std::sqrt(stretch);

  if (n > 1) {
    // All proxies, also those left out above, about the fused value.
    std::vector<std::size_t> all(n);
    std::vector<double> residual(n);
    for (std::size_t k = 0; k < n; ++k) {
      all[k] = k;
      residual[k] = differences[k].value - groups[k].exponent * fused.ln_ratio;
    }
    const std::vector<double> solved =
        Solve(total(all, fused.ln_ratio), residual);
    double chi_square = 0.0;
    for (std::size_t k = 0; k < n; ++k) chi_square += residual[k] * solved[k];
    const double count = static_cast<double>(n - 1);
    fused.chance = FisherUpperTail(chi_square / count, count, fused.repeat_dof);
    if (fused.chance < kDisagreement) {
      fused.birge = std::max(1.0, std::sqrt(chi_square / count));
      fused.repeat_sd =
          std::sqrt(fused.repeat_sd * fused.repeat_sd +
                    (fused.birge * fused.birge - 1.0) * fused.Variance());
    }
  }
  return fused;
}

ViscosityRatio ToRatio(const Fused& fused) {
  ViscosityRatio ratio;
  ratio.repeat_sd = fused.repeat_sd;
  ratio.repeat_dof = fused.repeat_dof;
  ratio.exponent_rel_sd = fused.exponent_rel_sd;
  const double variance = fused.Variance();
  // Welch-Satterthwaite; the exponents' part counts as known.
  const double dof =
      fused.repeat_dof *
      std::pow(variance / (fused.repeat_sd * fused.repeat_sd), 2);
  ratio.ln_ratio = {fused.ln_ratio, std::sqrt(variance), dof};
  return ratio;
}

/// A proxy's name as a person reads it.
std::string Number(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.2f", value);
  return text;
}

/// The clip's own reading of a proxy, null without it.
const FlowProxy* FindProxy(const FlowMeasurement& m, const FlowProxy& wanted) {
  for (const FlowProxy& proxy : m.proxies) {
    // Pixels and millimetres do not compare.
    if (proxy.name == wanted.name && proxy.unit == wanted.unit) return &proxy;
  }
  return nullptr;
}

// A logarithm known to a factor of e^10 or an exponent known to a factor of
// e^3 says nothing; beyond, the arithmetic would only lose digits.
constexpr double kUselessLnSd = 10.0;
constexpr double kUselessExponentSd = 3.0;

bool Usable(const Estimate& ln_value) {
  return std::isfinite(ln_value.value) && ln_value.sd >= 0.0 &&
         ln_value.sd <= kUselessLnSd;
}

bool UsableExponent(const Estimate& exponent) {
  return std::isfinite(exponent.value) && exponent.value != 0.0 &&
         exponent.sd >= 0.0 &&
         exponent.sd <= kUselessExponentSd * std::abs(exponent.value);
}

/// Proxies that stand on both sides, in the order in which they first occur.
std::vector<Group> CollectGroups(std::span<const FlowMeasurement> reference,
                                 std::span<const FlowMeasurement> cup,
                                 std::span<const ClipScalars> joint) {
  std::vector<Group> groups;
  const auto known = [&](TestKind kind, const std::string& name) {
    return std::any_of(groups.begin(), groups.end(), [&](const Group& g) {
      return g.kind == kind && g.name == name;
    });
  };
  for (const ClipScalars& scalars : joint) {
    Group group{scalars.kind,
                scalars.name,
                {},
                {},
                scalars.exponent.value,
                scalars.exponent.sd / std::abs(scalars.exponent.value)};
    for (const Estimate& e : scalars.ln_reference) {
      if (Usable(e)) group.reference.push_back(e);
    }
    for (const Estimate& e : scalars.ln_cup) {
      if (Usable(e)) group.cup.push_back(e);
    }
    if (!group.reference.empty() && !group.cup.empty() &&
        UsableExponent(scalars.exponent)) {
      groups.push_back(std::move(group));
    }
  }
  for (const FlowMeasurement& first : cup) {
    if (first.outcome != Outcome::kMeasured) continue;
    for (const FlowProxy& wanted : first.proxies) {
      if (known(first.kind, wanted.name)) continue;
      Group group{first.kind, wanted.name, {}, {}, 0.0};
      double count = 0.0;
      bool same_sign = true;
      const auto collect = [&](std::span<const FlowMeasurement> side,
                               std::vector<Estimate>& into) {
        for (const FlowMeasurement& m : side) {
          if (m.outcome != Outcome::kMeasured || m.kind != first.kind) continue;
          const FlowProxy* proxy = FindProxy(m, wanted);
          if (!proxy || !Usable(proxy->ln_value) ||
              !UsableExponent(proxy->exponent)) {
            continue;
          }
          const Estimate& exponent = proxy->exponent;
          same_sign = same_sign && exponent.value * wanted.exponent.value > 0;
          into.push_back(proxy->ln_value);
          group.exponent += exponent.value;
          group.exponent_rel_sd += exponent.sd / std::abs(exponent.value);
          group.paint_sd = std::max(group.paint_sd, proxy->paint_sd);
          count += 1.0;
        }
      };
      collect(reference, group.reference);
      collect(cup, group.cup);
      if (group.reference.empty() || group.cup.empty() || !same_sign) continue;
      group.exponent /= count;
      group.exponent_rel_sd /= count;
      groups.push_back(std::move(group));
    }
  }
  return groups;
}

int CountMeasured(std::span<const FlowMeasurement> side) {
  return static_cast<int>(
      std::count_if(side.begin(), side.end(), [](const FlowMeasurement& m) {
        return m.outcome == Outcome::kMeasured;
      }));
}

std::string WhyNothing(std::span<const FlowMeasurement> reference,
                       std::span<const FlowMeasurement> cup) {
  const auto first_reason = [](std::span<const FlowMeasurement> side) {
    for (const FlowMeasurement& m : side) {
      if (!m.reason.empty()) return " (" + m.reason + ")";
    }
    return std::string();
  };
  if (CountMeasured(reference) == 0) {
    return "no film of the base coat could be measured" +
           first_reason(reference);
  }
  if (CountMeasured(cup) == 0) {
    return "no film of the cup could be measured" + first_reason(cup);
  }
  return "the films of the base coat and of the cup have no reading in common: "
         "film both in the same test";
}

void WarnOfKinds(const std::vector<std::pair<TestKind, Fused>>& kinds,
                 std::vector<std::string>& warnings) {
  std::string said;
  for (const auto& [kind, fused] : kinds) {
    if (!said.empty()) said += ", ";
    said += "the " + std::string(TestKindName(kind)) + " test " +
            Number(std::exp(fused.ln_ratio));
  }
  const auto has = [&](TestKind kind) {
    return std::any_of(kinds.begin(), kinds.end(), [&](const auto& entry) {
      return entry.first == kind;
    });
  };
  std::string advice;
  if (has(TestKind::kLevel)) {
    advice += " Go by the level test for how it settles on the canvas.";
  }
  if (has(TestKind::kStream)) {
    advice += " Go by the stream test for how it pours.";
  }
  if (has(TestKind::kPuddle)) {
    advice += " Go by the puddle test for how far it spreads by itself.";
  }
  warnings.push_back(
      "The tests do not agree (" + said +
      " times the base coat): paint that runs thinner the harder it is pulled, "
      "or that holds a flow additive, cannot match the base coat in both. The "
      "range given covers both." +
      advice);
}

const char* WarningOfProxies(TestKind kind) {
  if (kind == TestKind::kStream) {
    return "The moment the stream breaks, the coat on the stick and the drips "
           "tell different ratios of this cup, further apart than chance "
           "allows; the range given was widened. A flow additive or heavy "
           "pigment in only one of the two cups does that, and so does paint "
           "that runs thinner the harder it is pulled: the level test tells "
           "how it will settle on the canvas.";
  }
  return "The same films tell different ratios of this cup, further apart than "
         "chance allows; the range given was widened.";
}

/// Everything after the proxies are sorted.
Comparison CompareGroups(const std::vector<Group>& groups,
                         const CompareOptions& options) {
  Comparison comparison;
  comparison.outcome = Outcome::kMeasured;
  std::vector<Difference> differences;
  differences.reserve(groups.size());
  for (const Group& group : groups) differences.push_back(Subtract(group));

  // Disagreement, first within one kind of test, then between them.
  std::vector<std::pair<TestKind, Fused>> kinds;
  for (TestKind kind :
       {TestKind::kStream, TestKind::kLevel, TestKind::kPuddle}) {
    std::vector<Group> own;
    std::vector<Difference> own_differences;
    for (std::size_t k = 0; k < groups.size(); ++k) {
      if (groups[k].kind != kind) continue;
      own.push_back(groups[k]);
      own_differences.push_back(differences[k]);
    }
    if (own.empty()) continue;
    kinds.emplace_back(kind, Fuse(own, own_differences, 0.0));
    if (kinds.back().second.chance < kDisagreement) {
      comparison.warnings.emplace_back(WarningOfProxies(kind));
    }
  }
  // Two tests that contradict each other see different viscosities. Their half
  // squared distance is the variance from test to test: the range then spans
  // both, whichever of them is the sharper.
  double between_kinds = 0.0;
  for (std::size_t a = 0; a < kinds.size(); ++a) {
    for (std::size_t b = a + 1; b < kinds.size(); ++b) {
      const Fused& x = kinds[a].second;
      const Fused& y = kinds[b].second;
      const double apart = x.ln_ratio - y.ln_ratio;
      const double f = apart * apart / (x.Variance() + y.Variance());
      if (FisherUpperTail(f, 1.0, std::min(x.repeat_dof, y.repeat_dof)) <
          kDisagreement) {
        between_kinds = std::max(between_kinds, 0.5 * apart * apart);
        WarnOfKinds({kinds[a], kinds[b]}, comparison.warnings);
      }
    }
  }

  const Fused fused = Fuse(groups, differences, between_kinds);
  comparison.ratio = ToRatio(fused);
  comparison.interval = comparison.ratio.RatioInterval(options.level);
  comparison.verdict = ClassifyMatch(comparison.ratio, options);
  double reference_share = 0.0, paint_share = 0.0;
  for (std::size_t k = 0; k < groups.size(); ++k) {
    reference_share += fused.weight[k] * differences[k].reference_share;
    paint_share += fused.weight[k] * differences[k].paint_share;
  }
  comparison.reference_rel_sd = fused.repeat_sd * std::sqrt(reference_share);
  comparison.common_rel_sd =
      fused.repeat_sd * std::sqrt(reference_share + paint_share);
  for (std::size_t k = 0; k < groups.size(); ++k) {
    ProxyRatio proxy;
    proxy.kind = groups[k].kind;
    proxy.name = groups[k].name;
    proxy.ln_ratio = ToRatio(Fuse({groups[k]}, {differences[k]}, 0.0)).ln_ratio;
    proxy.weight = fused.weight[k];
    comparison.by_proxy.push_back(std::move(proxy));
  }

  std::size_t heaviest = 0;
  for (std::size_t k = 1; k < groups.size(); ++k) {
    if (fused.weight[k] > fused.weight[heaviest]) heaviest = k;
  }
  const Group& main = groups[heaviest];
  if (main.reference.size() == 1 && main.cup.size() == 1) {
    comparison.warnings.emplace_back(
        "One reading of each only: how evenly the hand repeats was taken from "
        "what is usual. Test the base coat and the cup again for a narrower "
        "answer.");
  } else if (differences[heaviest].hand_sd > kRestlessHand) {
    comparison.warnings.emplace_back(
        "The repeats of the same paint lie more than a tenth apart: dip to the "
        "same mark, wait the same time after stirring, and test again.");
  }
  return comparison;
}

}  // namespace

const char* MatchVerdictName(MatchVerdict verdict) {
  switch (verdict) {
    case MatchVerdict::kThicker:
      return "thicker";
    case MatchVerdict::kMatch:
      return "match";
    case MatchVerdict::kThinner:
      return "thinner";
    case MatchVerdict::kUndecided:
      return "undecided";
  }
  FLOWKIN_CHECK(false);
}

Result<void> CompareOptions::Validate() const {
  const auto invalid = [](const char* message) {
    return Error{ErrorCode::kInvalidArgument, message};
  };
  if (!(band > 0.0 && band <= 1.0)) {
    return invalid("the match band must lie above 0 and not above 1");
  }
  if (!(target >= 0.02 && target <= 50.0)) {
    return invalid("the target ratio must lie between 0.02 and 50");
  }
  if (!(level >= 0.5 && level <= 0.999)) {
    return invalid("the level must lie between 0.5 and 0.999");
  }
  if (time_exponent &&
      !(time_exponent->value >= 0.2 && time_exponent->value <= 2.0 &&
        time_exponent->sd >= 0.0 &&
        time_exponent->sd <= time_exponent->value)) {
    return invalid(
        "the time's exponent must lie between 0.2 and 2, its sd between 0 and "
        "the exponent");
  }
  return {};
}

double ViscosityRatio::Ratio() const { return std::exp(ln_ratio.value); }

double ViscosityRatio::ProbabilityBelow(double ln) const {
  const auto below = [&](double stretch) {
    return StudentTCdf((ln * stretch - ln_ratio.value) / repeat_sd, repeat_dof);
  };
  if (exponent_rel_sd == 0.0) return below(1.0);
  // Trapezoids over a normal density converge faster than any power of the
  // step, once it resolves the rise of `below`.
  constexpr double kReach = 7.0;
  const double rise =
      repeat_sd / (exponent_rel_sd * (std::abs(ln) + repeat_sd));
  const double step = std::clamp(0.5 * rise, 0.02, 0.25);
  double sum = 0.0, total = 0.0;
  const int num_steps = static_cast<int>(kReach / step);
  for (int i = 0; i < num_steps; ++i) {
    const double z = (i + 0.5) * step;
    const double density = std::exp(-0.5 * z * z);
    const double stretch = std::exp(exponent_rel_sd * z);
    total += 2.0 * density;
    sum += density * (below(stretch) + below(1.0 / stretch));
  }
  return sum / total;
}

Interval ViscosityRatio::RatioInterval(double level) const {
  FLOWKIN_CHECK(level > 0.0 && level < 1.0);
  const auto quantile = [&](double probability) {
    const auto excess = [&](double ln) {
      return ProbabilityBelow(ln) - probability;
    };
    double low = ln_ratio.value, high = ln_ratio.value;
    double at_low = excess(low), at_high = at_low;
    for (double reach = 2.0 * ln_ratio.sd; at_low > 0.0; reach *= 2.0) {
      at_low = excess(low -= reach);
    }
    for (double reach = 2.0 * ln_ratio.sd; at_high < 0.0; reach *= 2.0) {
      at_high = excess(high += reach);
    }
    // Regula falsi; halving the value at an end that stays (Illinois rule)
    // keeps it from creeping.
    double ln = low;
    for (int i = 0; i < 100 && high - low > 1e-9 && at_high > at_low; ++i) {
      ln = (low * at_high - high * at_low) / (at_high - at_low);
      const double at = excess(ln);
      if (std::abs(at) < 1e-7) break;
      if (at < 0.0) {
        low = ln;
        at_low = at;
        at_high *= 0.5;
      } else {
        high = ln;
        at_high = at;
        at_low *= 0.5;
      }
    }
    return std::exp(ln);
  };
  return {quantile(0.5 - 0.5 * level), quantile(0.5 + 0.5 * level), level};
}

Comparison CompareToBaseCoat(std::span<const FlowMeasurement> reference,
                             std::span<const FlowMeasurement> cup,
                             const CompareOptions& options,
                             std::span<const ClipScalars> joint) {
  FLOWKIN_CHECK(options.Validate().has_value());
  const std::vector<Group> groups = CollectGroups(reference, cup, joint);
  Comparison comparison;
  if (groups.empty()) {
    comparison.reason = WhyNothing(reference, cup);
  } else {
    comparison = CompareGroups(groups, options);
  }
  comparison.num_reference = CountMeasured(reference);
  comparison.num_cup = CountMeasured(cup);
  for (const ClipScalars& scalars : joint) {
    comparison.num_reference =
        std::max(comparison.num_reference,
                 static_cast<int>(scalars.ln_reference.size()));
    comparison.num_cup =
        std::max(comparison.num_cup, static_cast<int>(scalars.ln_cup.size()));
  }
  return comparison;
}

Result<Comparison> CompareTimes(TestKind kind,
                                std::span<const double> reference_s,
                                std::span<const double> cup_s,
                                const CompareOptions& options) {
  if (auto valid = options.Validate(); !valid) return valid.error();
  Group group{kind, "", {}, {}, 1.0, 0.0};
  switch (kind) {
    case TestKind::kStream: {
      group.name = "break_time";
      group.exponent = std::sqrt(kBreakExponentLow * kBreakExponentHigh);
      group.exponent_rel_sd = std::log(kBreakExponentHigh / kBreakExponentLow) /
                              (2.0 * NormalQuantile(0.975));
      group.paint_sd = kBreakPaintSd;
      break;
    }
    case TestKind::kLevel:
      group.name = "level_time";
      break;
    case TestKind::kPuddle:
      group.name = "puddle_time";
      break;
  }
  if (options.time_exponent) {
    group.exponent = options.time_exponent->value;
    group.exponent_rel_sd = options.time_exponent->sd / group.exponent;
  }
  const auto read = [](std::span<const double> times_s,
                       std::vector<Estimate>& side) {
    for (double t_s : times_s) {
      if (!(t_s > 0.0) || !std::isfinite(t_s)) return false;
      side.push_back({std::log(t_s), kStopwatchSdS / t_s});
    }
    return !side.empty();
  };
  if (!read(reference_s, group.reference) || !read(cup_s, group.cup)) {
    return Error{ErrorCode::kInvalidArgument,
                 "give at least one time above 0 seconds for the base coat and "
                 "one for the cup"};
  }
  Comparison comparison = CompareGroups({group}, options);
  comparison.num_reference = static_cast<int>(reference_s.size());
  comparison.num_cup = static_cast<int>(cup_s.size());
  return comparison;
}

MatchVerdict ClassifyMatch(const ViscosityRatio& ratio,
                           const CompareOptions& options) {
  const double target = std::log(options.target);
  const auto within = [&](double factor) {
    const double reach = std::log(factor);
    return ratio.ProbabilityBelow(target + reach) -
           ratio.ProbabilityBelow(target - reach);
  };
  if (within(1.0 + options.band) >= kMatchProbability &&
      1.0 - within(1.0 + 2.0 * options.band) <= kFarProbability) {
    return MatchVerdict::kMatch;
  }
  const double below = ratio.ProbabilityBelow(target);
  const double risk = 0.5 * (1.0 - options.level);
  if (below <= risk) return MatchVerdict::kThicker;
  if (below >= 1.0 - risk) return MatchVerdict::kThinner;
  return MatchVerdict::kUndecided;
}

}  // namespace flowkin
