#pragma once

#include <string>

#include "app/usecases/bench.h"
#include "core/planning/pour_plan.h"

namespace flowkin {

/// Puts the cups of a plan on the bench, those that are not there yet by role
/// and name, and returns how many. Left-overs count as mix before any water,
/// because nobody knows how much water is in them; the plan's notes say so. An
/// activator called like a colour is told from it by the word `activator`.
Result<int> PutPlannedCups(Bench& bench,
                           const PourPlan& plan,
                           const std::string& activator,
                           UtcTime now);

}  // namespace flowkin
