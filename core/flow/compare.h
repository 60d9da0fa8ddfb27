#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/estimate.h"
#include "core/base/result.h"
#include "core/flow/measurement.h"

namespace flowkin {

/// Where a cup stands to the target, see ClassifyMatch.
enum class MatchVerdict { kThicker, kMatch, kThinner, kUndecided };

/// "thicker", "match", "thinner" or "undecided".
const char* MatchVerdictName(MatchVerdict verdict);

struct CompareOptions {
  /// A match lies between target / (1 + band) and target * (1 + band). In
  /// (0, 1].
  double band = 0.15;
  /// Wanted ratio to the base coat, in [0.02, 50].
  double target = 1.0;
  /// Coverage of the interval and certainty of a mismatch, in [0.5, 0.999].
  double level = 0.95;
  /// For stopwatch times: d ln(time) / d ln(nu) of this stick and paint, from
  /// the user's own dilution data; value in [0.2, 2], sd in [0, value]. Without
  /// it the prior of CompareTimes stands in.
  std::optional<Estimate> time_exponent;

  Result<void> Validate() const;
};

/// Kinematic viscosity of a cup over that of the base coat.
///
/// ln(ratio) = D / P. D is Student-distributed about `ln_ratio.value` with
/// `repeat_sd` and `repeat_dof` (films and hand); P is log-normal about 1 with
/// `exponent_rel_sd`: how well the exponents are known stretches every ln ratio
/// by the same factor, however often one films.
struct ViscosityRatio {
  /// All of it in one standard uncertainty; the contract's rel_sd is its sd.
  Estimate ln_ratio;
  double repeat_sd = 0.0;
  double repeat_dof = 1.0;
  double exponent_rel_sd = 0.0;

  /// P(true ln ratio <= `ln`), by quadrature over P.
  double ProbabilityBelow(double ln) const;
  /// Central interval of the ratio itself; level in (0, 1).
  Interval RatioInterval(double level) const;
  double Ratio() const;
};

/// What one proxy alone says.
struct ProxyRatio {
  TestKind kind = TestKind::kStream;
  std::string name;
  Estimate ln_ratio;
  /// Share of this proxy in the fused ln ratio; they add up to 1.
  double weight = 0.0;
};

/// A cup held against the base coat.
struct Comparison {
  Outcome outcome = Outcome::kRefused;
  std::string reason;  ///< of a refusal
  ViscosityRatio ratio;
  Interval interval;  ///< of the ratio, at options.level
  MatchVerdict verdict = MatchVerdict::kUndecided;
  std::vector<ProxyRatio> by_proxy;
  /// Part of the ratio's relative standard uncertainty that the base coat's own
  /// tests bring.
  double reference_rel_sd = 0.0;
  /// The part that all tests of this cup share: the same, and what differs from
  /// paint to paint besides viscosity.
  double common_rel_sd = 0.0;
  int num_reference = 0;  ///< clips or readings used
  int num_cup = 0;
  std::vector<std::string> warnings;
};

/// Numbers that only exist when all clips are looked at together, such as the
/// clock of each level test after laying all relief curves over one shape: one
/// entry per clip. They stand in for proxies of the same kind and name.
struct ClipScalars {
  TestKind kind = TestKind::kLevel;
  std::string name;
  std::vector<Estimate> ln_reference;
  std::vector<Estimate> ln_cup;
  Estimate exponent{1.0, 0.0};
};

/// From repeats to one ratio.
///
/// Each proxy present on both sides gives D = mean ln(cup) - mean ln(base),
/// with the sd of each clip's own evidence and one hand scatter for base and
/// cup, known only from these few repeats and a weak prior: a scaled inverse
/// chi-square of 2 degrees of freedom with its median at 3.7 % of the time, how
/// a trained operator repeats a dip cup [ASTM-D4212]. D over the exponent is
/// the proxy's ln ratio. Proxies are fused by inverse covariance: those of the
/// same clips share their hand scatter (correlation 0.5, an assumption between
/// "same cause", 1, and "unrelated", 0), exponents err apart. Where proxies
/// contradict each other (probability below 5 % by chance) the interval is
/// widened by Birge's ratio [Birge1932] and a warning says what that means.
///
/// Several kinds of test may be mixed; refused measurements are passed over.
/// Refused, with the reason, when no proxy stands on both sides. Options must
/// be valid. Pure.
Comparison CompareToBaseCoat(std::span<const FlowMeasurement> reference,
                             std::span<const FlowMeasurement> cup,
                             const CompareOptions& options = {},
                             std::span<const ClipScalars> joint = {});

/// The same from stopwatch readings of one test, seconds: stream = lift to
/// first break; level, puddle = time to a given state, which goes as nu^1.
/// The stream's exponent, if not given, is only known to lie between 1/3 and
/// 5/3 (core/flow/physics.h): log-normal with these as its 95 % limits.
/// kInvalidArgument: a side is empty or a time is not a number above 0.
Result<Comparison> CompareTimes(TestKind kind,
                                std::span<const double> reference_s,
                                std::span<const double> cup_s,
                                const CompareOptions& options = {});

/// What may be said about the match:
///  - match: at least 80 % of the probability lies inside the band, and at most
///    2.5 % beyond twice the band (factor 1 + 2 band either way);
///  - thicker, thinner: no match, and the central interval at `level` lies
///    wholly above (below) the target, so the wrong side is named at most with
///    probability (1 - level) / 2;
///  - undecided: neither; the interval holds the target and is too wide to
///    tell.
MatchVerdict ClassifyMatch(const ViscosityRatio& ratio,
                           const CompareOptions& options);

}  // namespace flowkin
