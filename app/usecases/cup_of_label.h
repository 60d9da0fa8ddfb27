#pragma once

#include <vector>

#include "app/usecases/batch_label.h"
#include "app/usecases/bench.h"

namespace flowkin {

/// A cup as the label of its jar tells. The ratio on a label is not taken over:
/// how it flows after days in the jar is for a film to say.
struct LabelledCup {
  CupDetails details;     ///< volume_ml without the water
  double water_ml = 0.0;  ///< what is in it besides
};

/// kInvalidArgument for what is no cup (pouring medium) and for amounts that
/// contradict each other.
Result<LabelledCup> CupOfLabel(const BatchLabel& label);

/// Puts it on the bench; its water is written down as an addition.
Result<CupId> AddLabelledCup(Bench& bench, const LabelledCup& cup, UtcTime now);

/// A cup for each label, or none where one of them is no cup. Returns the last
/// one; `labels` is not empty.
Result<CupId> AddLabelledCups(Bench& bench,
                              const std::vector<BatchLabel>& labels,
                              UtcTime now);

}  // namespace flowkin
