#pragma once

#include <string>
#include <vector>

#include "core/planning/pour_plan.h"
#include "core/planning/units.h"

namespace flowkin {

struct PlanReport {
  PourPlan plan;
  std::vector<std::string> cautions;
};

/// A pour from canvas to shopping list. Where the technique wants an activator
/// and the request has none, it gets one of the first colour.
Result<PlanReport> PlanPour(PlanRequest request);

}  // namespace flowkin
