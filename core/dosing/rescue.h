#pragma once

#include <optional>

#include "core/base/estimate.h"
#include "core/dosing/choose_dose.h"
#include "core/dosing/dilution_belief.h"

namespace flowkin {

/// Thicker paint of the same kind, kept back to repair a cup.
struct Reserve {
  double level = 0.0;  ///< ln(ratio to the base coat)
  std::optional<double> volume_ml;
};

struct Rescue {
  bool possible = false;  ///< false: this reserve is no thicker than the target
  double add_ml = 0.0;    ///< now, rounded down to smallest steps
  double total_ml = 0.0;  ///< what the whole repair takes, this part included
  bool reserve_too_small = false;
  Interval predicted;
  double predicted_median = 1.0;
  double overshoot_probability = 0.0;  ///< still below the band afterwards
  double water_share = 0.0;            ///< afterwards
};

/// How much of the reserve lifts a thin cup to the target. Cup and reserve are
/// the same paint at two dilutions: their paint adds up, and the curve says
/// what that much dilution gives. A repair of more than a tenth of the cup is
/// done in two parts, so that the second can be measured in.
Rescue PlanRescue(const DilutionBelief& belief,
                  const CupState& cup,
                  const DoseOptions& options,
                  const Reserve& reserve);

/// Unthinned paint to keep back before the first addition, so that a cup that
/// ends a quarter of the band's width below it can be brought back to the
/// target; at most half the cup.
double ReserveToKeep_ml(const DilutionBelief& belief,
                        const CupState& cup,
                        const DoseOptions& options);

}  // namespace flowkin
