#include "app/usecases/planned_cups.h"

#include <algorithm>

namespace flowkin {
namespace {

CupRole RoleOf(PourRole role) {
  switch (role) {
    case PourRole::kBaseCoat:
      return CupRole::kBaseCoat;
    case PourRole::kColour:
      return CupRole::kColour;
    case PourRole::kActivator:
      return CupRole::kActivator;
  }
  return CupRole::kColour;
}

}  // namespace

Result<int> PutPlannedCups(Bench& bench,
                           const PourPlan& plan,
                           const std::string& activator,
                           UtcTime now) {
  int added = 0;
  for (const PlannedCup& planned : plan.cups) {
    CupDetails details;
    details.role = RoleOf(planned.role);
    details.label = planned.name;
    if (details.role == CupRole::kActivator &&
        std::any_of(
            plan.cups.begin(), plan.cups.end(), [&](const PlannedCup& other) {
              return other.role != planned.role && other.name == planned.name;
            })) {
      details.label += " " + activator;
    }
    const std::vector<BenchCup>& there = bench.session().cups();
    if (std::any_of(there.begin(), there.end(), [&](const BenchCup& cup) {
          return cup.details.role == details.role &&
                 (details.role == CupRole::kBaseCoat ||
                  cup.details.label == details.label);
        })) {
      continue;
    }
    if (!planned.brand.empty()) details.paint = {planned.brand, planned.name};
    // Left-overs may hold water, so they are poured and not kept back.
    details.reserve_ml = std::min(planned.reserve_ml, planned.mix_ml);
    details.volume_ml = planned.needed_ml - *details.reserve_ml;
    if (const Result<CupId> id = bench.AddCup(details, now); !id) {
      return id.error();
    }
    ++added;
  }
  return added;
}

}  // namespace flowkin
