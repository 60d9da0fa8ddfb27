#include "app/usecases/cup_of_label.h"

#include <utility>

namespace flowkin {
namespace {

Error NoCup(std::string message) {
  return {ErrorCode::kInvalidArgument, std::move(message)};
}

Result<CupRole> RoleOf(const std::string& role) {
  if (role.empty() || role == "colour") return CupRole::kColour;
  if (role == "base coat") return CupRole::kBaseCoat;
  if (role == "activator") return CupRole::kActivator;
  if (role == "medium") {
    return NoCup(
        "This label is of pouring medium, which is no cup on the bench.");
  }
  return NoCup("The label's role is not known to this program.");
}

}  // namespace

Result<LabelledCup> CupOfLabel(const BatchLabel& label) {
  LabelledCup cup;
  CupDetails& details = cup.details;
  const Result<CupRole> role = RoleOf(label.role);
  if (!role) return role.error();
  details.role = *role;
  details.label = label.name;
  details.paint = {label.brand, label.colour};
  if (label.target) details.target_ratio = *label.target;
  for (const ThinnerKind known :
       {ThinnerKind::kWater, ThinnerKind::kAdditive, ThinnerKind::kMedium}) {
    if (label.thinner == ThinnerKindName(known)) details.thinner = known;
  }
  if (label.water_ml) {
    cup.water_ml = *label.water_ml;
  } else if (label.volume_ml && label.water_share) {
    cup.water_ml = *label.volume_ml * *label.water_share;
  }
  if (label.volume_ml) {
    details.volume_ml = *label.volume_ml - cup.water_ml;
  }
  if (!(cup.water_ml >= 0.0) ||
      (details.volume_ml && !(*details.volume_ml > 0.0))) {
    return NoCup("The label tells of more water than there is in the cup.");
  }
  return cup;
}

Result<CupId> AddLabelledCup(Bench& bench,
                             const LabelledCup& cup,
                             UtcTime now) {
  Result<CupId> id = bench.AddCup(cup.details, now);
  if (!id || !(cup.water_ml > 0.0)) return id;
  if (const Result<void> added = bench.RecordAddition(
          *id, cup.water_ml, ThinnerKind::kWater, std::nullopt, now);
      !added) {
    return added.error();
  }
  return id;
}

Result<CupId> AddLabelledCups(Bench& bench,
                              const std::vector<BatchLabel>& labels,
                              UtcTime now) {
  std::vector<LabelledCup> cups;
  for (const BatchLabel& label : labels) {
    Result<LabelledCup> cup = CupOfLabel(label);
    if (!cup) return cup.error();
    cups.push_back(*std::move(cup));
  }
  Result<CupId> last = NoCup("There is no label to read.");
  for (const LabelledCup& cup : cups) {
    last = AddLabelledCup(bench, cup, now);
    if (!last) break;
  }
  return last;
}

}  // namespace flowkin
