#include "app/usecases/plan_pour.h"

#include <utility>

#include "app/usecases/cautions.h"

namespace flowkin {

Result<PlanReport> PlanPour(PlanRequest request) {
  if (!request.activator && request.technique.activator_ml_per_m2.start > 0.0) {
    PlannedPaint activator =
        request.colours.empty() ? request.base_coat : request.colours.front();
    activator.share = 1.0;
    activator.medium_parts.reset();
    request.activator = std::move(activator);
  }
  Result<PourPlan> plan = MakePourPlan(request);
  if (!plan) return plan.error();
  std::vector<Hazard> hazards = {Hazard::kPaint};
  for (const PlannedCup& cup : plan->cups) {
    if (cup.body == PaintBody::kPowder) hazards.push_back(Hazard::kPowder);
  }
  if (request.technique.name == "blown" || request.technique.name == "bloom") {
    hazards.push_back(Hazard::kBlowing);
  }
  // About what one person tilts without strain; an own guess.
  constexpr double kHeavy_kg = 5.0;
  if (plan->wet_kg_per_m2 * (plan->face_m2 + plan->edge_m2) / plan->pictures >
      kHeavy_kg) {
    hazards.push_back(Hazard::kWeight);
  }
  hazards.insert(hazards.end(),
                 {Hazard::kFlame, Hazard::kWaste, Hazard::kFood});
  return PlanReport{*std::move(plan), Cautions(hazards)};
}

}  // namespace flowkin
