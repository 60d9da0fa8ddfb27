#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/base/estimate.h"
#include "core/dosing/dilution_belief.h"

namespace flowkin {

enum class DoseAdvice {
  kAdd,
  kMatch,      ///< stop
  kMeasure,    ///< film it again before deciding
  kRescue,     ///< too thin: put thicker paint back
  kLimit,      ///< the wanted amount would pass the safe share of water
  kTooCoarse,  ///< even one smallest step could end below the band
  kCannot,     ///< this liquid cannot bring the cup to the target
};

struct DoseOptions {
  double band =
      0.15;  ///< > 0; matched: target / (1 + band) to target (1 + band)
  double target_ratio = 1.0;       ///< > 0
  double smallest_step_ml = 0.25;  ///< > 0
  /// Chance that a cup ends below the band, over all additions it takes.
  double most_overshoot = 0.0045;
  /// One addition is at most this share of the cup as it stands. The curve
  /// bends the safe way for every published law; where a paint's network
  /// collapses at once it does not, and this is the guard.
  double most_growth = 0.15;
  /// `match` is said at this probability of lying in the band.
  double match_confidence = 0.93;
  double coverage = 0.95;  ///< of every interval given
  /// kLimit beyond this share of added water; none where it is not water.
  std::optional<double> most_water_share = 0.30;
  /// Level aimed at, above the target, in parts of ln(1 + band).
  double aim_share = 0.1;
};

/// Where a cup stands, apart from what is believed of its curve.
struct CupState {
  double start_volume_ml = 0.0;  ///< before any addition, > 0
  double added_ml = 0.0;
  /// Part of start_volume_ml that was stirred in earlier, another liquid; and
  /// the part of that which was water.
  double earlier_ml = 0.0;
  double earlier_water_ml = 0.0;
  std::size_t additions = 0;   ///< so far
  std::size_t tests_here = 1;  ///< since the last addition
  double last_rel_sd = 0.04;
  bool last_test_suspect = false;
};

struct Dose {
  DoseAdvice advice = DoseAdvice::kMeasure;
  double add_ml = 0.0;  ///< kAdd: > 0, a whole number of smallest steps
  Interval ratio_now;
  double ratio_now_median = 1.0;
  /// Ratio once the advice is followed.
  Interval predicted;
  double predicted_median = 1.0;
  /// Chance that the cup lies below the band once the advice is followed.
  double overshoot_probability = 0.0;
  /// Bound on the chance over this addition and all that may follow it.
  double path_overshoot_probability = 0.0;
  /// Of all liquids stirred in, once the advice is followed.
  double water_share = 0.0;
  double expected_additions_left = 0.0;  ///< this one included
  /// kTooCoarse: largest step that would do. kLimit: the volume wanted.
  double other_ml = 0.0;
};

/// The next addition: the largest that keeps the chance of ending below the
/// band within the cup's budget and does not aim past the target.
///
/// The budget of the whole path is spent as a geometric series over the
/// additions, so it holds however many there are; one that should be the last
/// may use seven tenths more. Nothing is added while the
/// interval of the ratio holds the target: that cup is matched or filmed again.
Dose ChooseDose(const DilutionBelief& belief,
                const CupState& cup,
                const DoseOptions& options);

/// `dose` turned into the advice to film again before deciding.
Dose StayAndMeasure(Dose dose,
                    const DilutionBelief& belief,
                    const CupState& cup,
                    const DoseOptions& options);

}  // namespace flowkin
