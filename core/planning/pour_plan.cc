#include "core/planning/pour_plan.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <utility>

#include "core/base/check.h"

namespace flowkin {
namespace {

Error OutOfRange(const std::string& what) {
  return {ErrorCode::kInvalidArgument, what + "."};
}

bool Within(double value, double low, double high) {
  return value >= low && value <= high;  // false for not-a-number
}

Result<void> ValidateSupport(const Support& support) {
  const bool round = support.shape == SupportShape::kRound;
  if (!Within(support.length_mm, 10.0, 1e4) ||
      (!round && !Within(support.width_mm, 10.0, 1e4))) {
    return OutOfRange("A canvas must measure between 10 mm and 10 m each way");
  }
  if (!Within(support.depth_mm, 0.0, 500.0)) {
    return OutOfRange("A canvas must be 0 to 500 mm deep");
  }
  if (support.count < 1 || support.count > 1000) {
    return OutOfRange("There must be 1 to 1000 canvases of a kind");
  }
  return {};
}

Result<void> ValidatePaint(const PlannedPaint& paint) {
  const std::string what =
      "'" + (paint.name.empty() ? std::string("a paint") : paint.name) + "': ";
  if (!Within(paint.share, 1e-6, 1e6)) {
    return OutOfRange(what + "its share must be above 0");
  }
  if (paint.medium_parts && !Within(*paint.medium_parts, 0.0, 100.0)) {
    return OutOfRange(what + "medium to one part of paint must be 0 to 100");
  }
  if (paint.body == PaintBody::kPowder && paint.medium_parts &&
      !(*paint.medium_parts > 0.0)) {
    return OutOfRange(what +
                      "grams of powder to one of medium must be above 0");
  }
  if (!Within(paint.additive_parts, 0.0, 100.0)) {
    return OutOfRange(what + "additive to one part of paint must be 0 to 100");
  }
  if (!Within(paint.material.density_g_per_ml, 0.1, 10.0) ||
      !Within(paint.material.volume_solids, 0.0, 1.0)) {
    return OutOfRange(what +
                      "its density must lie between 0.1 and 10 g/mL and its "
                      "volume solids between 0 and 1");
  }
  if (!Within(paint.at_hand_ml, 0.0, 1e6)) {
    return OutOfRange(what + "what is at hand must be 0 to 1000 L");
  }
  return {};
}

Result<void> ValidatePrice(const std::optional<Price>& price) {
  if (price && (!Within(price->container_ml, 0.1, 1e6) ||
                !Within(price->price, 0.0, 1e9))) {
    return OutOfRange(
        "A price needs the container's volume above 0 and an amount of 0 or "
        "more");
  }
  return {};
}

Result<void> Validate(const PlanRequest& request) {
  if (request.supports.empty()) {
    return OutOfRange("There is no canvas; give its size");
  }
  std::vector<Result<void>> checks;
  for (const Support& support : request.supports) {
    checks.push_back(ValidateSupport(support));
  }
  checks.push_back(ValidatePaint(request.base_coat));
  for (const PlannedPaint& colour : request.colours) {
    checks.push_back(ValidatePaint(colour));
    checks.push_back(ValidatePrice(colour.price));
  }
  if (request.activator) {
    checks.push_back(ValidatePaint(*request.activator));
    checks.push_back(ValidatePrice(request.activator->price));
  }
  checks.push_back(flowkin::Validate(request.medium));
  for (const std::optional<Price>& price : {request.base_coat.price,
                                            request.medium_base_price,
                                            request.medium_varnish_price,
                                            request.additive_price}) {
    checks.push_back(ValidatePrice(price));
  }
  checks.push_back(
      flowkin::Validate(request.nu_mm2_per_s, 1e-3, "The kinematic viscosity"));
  checks.push_back(flowkin::Validate(request.technique));
  for (const Result<void>& check : checks) {
    if (!check) return check;
  }
  if (request.technique.colours_ml_per_m2.start > 0.0 &&
      request.colours.empty()) {
    return OutOfRange("The technique needs colours; name at least one");
  }
  constexpr std::size_t kMostColours = 100;
  if (request.colours.size() > kMostColours) {
    return OutOfRange("A plan holds at most 100 colours");
  }
  struct Share {
    double value;
    double high;
    const char* what;
  };
  for (const Share& share :
       {Share{request.waste_share, 2.0, "The waste must be 0 to 200 %"},
        Share{request.reserve_share, 1.0, "The reserve must be 0 to 100 %"},
        Share{request.medium_loss_share,
              0.5,
              "The loss of medium must be 0 to 50 %"},
        Share{request.water_share, 0.5, "The water must be 0 to 50 %"},
        Share{request.test_loss_ml, 100.0, "A test must take 0 to 100 mL"},
        Share{request.medium_base_at_hand_ml, 1e6, "Too much is at hand"},
        Share{request.medium_varnish_at_hand_ml, 1e6, "Too much is at hand"},
        Share{request.additive_at_hand_ml, 1e6, "Too much is at hand"}}) {
    if (!Within(share.value, 0.0, share.high)) return OutOfRange(share.what);
  }
  if (request.tests_per_cup < 0 || request.tests_per_cup > 100) {
    return OutOfRange("There must be 0 to 100 tests of a cup");
  }
  if (!Within(request.tilt_deg, 0.1, 90.0) ||
      !Within(request.tilting_s, 1.0, 36000.0)) {
    return OutOfRange(
        "The tilt must be 0.1 to 90 degrees for 1 second to 10 hours");
  }
  for (const LeftOver& left_over : request.left_overs) {
    if (!Within(left_over.volume_ml, 0.0, 1e6) ||
        !Within(left_over.age_days, 0.0, 36500.0)) {
      return OutOfRange("'" + left_over.name +
                        "': a left-over's volume and age must not be negative");
    }
  }
  for (const PastPour& pour : request.past) {
    if (!Within(pour.planned_ml, 0.1, 1e6) || !Within(pour.used_ml, 0.1, 1e6)) {
      return OutOfRange("Earlier pours need planned and used volumes above 0");
    }
  }
  return {};
}

/// Takes from the oldest left-overs that `fits`, up to `wanted_ml`.
template <typename Fits>
double Take(std::vector<LeftOver>& shelf,
            double wanted_ml,
            const Fits& fits,
            std::vector<TakenLeftOver>& taken) {
  double total_ml = 0.0;
  for (LeftOver& left_over : shelf) {
    const double take_ml = std::min(left_over.volume_ml, wanted_ml - total_ml);
    if (!(take_ml > 0.0) || !fits(left_over)) continue;
    taken.push_back({left_over, take_ml});
    left_over.volume_ml -= take_ml;
    total_ml += take_ml;
  }
  return total_ml;
}

PlannedCup PlanCup(const PlannedPaint& paint,
                   PourRole role,
                   double on_support_ml,
                   const PlanRequest& request,
                   const Material& medium,
                   std::vector<LeftOver>& shelf,
                   PourPlan& plan) {
  PlannedCup cup;
  cup.name = paint.name;
  cup.brand = paint.brand;
  cup.role = role;
  cup.body = paint.body;
  // Water makes the mix go further; what is planned is the mix before it.
  cup.on_support_ml = on_support_ml * (1.0 - request.water_share);
  cup.waste_ml = cup.on_support_ml * request.waste_share;
  cup.tests_ml = request.tests_per_cup * request.test_loss_ml;
  const double poured_ml = cup.on_support_ml + cup.waste_ml + cup.tests_ml;
  const double reserve_share =
      role == PourRole::kBaseCoat ? 0.0 : request.reserve_share;
  cup.reserve_ml = poured_ml * reserve_share;
  cup.needed_ml = poured_ml + cup.reserve_ml;
  cup.left_over_ml = Take(
      shelf,
      cup.needed_ml,
      [&](const LeftOver& left_over) {
        return !left_over.medium && left_over.role == role &&
               left_over.name == paint.name;
      },
      plan.left_overs);
  cup.mix_ml = cup.needed_ml - cup.left_over_ml;

  const FirstMixRule& rule = FirstMixFor(paint.body);
  cup.medium_parts_source = Source::kArtist;
  if (paint.medium_parts) {
    cup.medium_parts = *paint.medium_parts;
  } else if (role == PourRole::kColour) {
    cup.medium_parts = rule.parts.start;
    cup.medium_parts_source = Source::kCommonPractice;
  } else {
    cup.medium_parts = 0.0;
    cup.medium_parts_source = Source::kOwnGuess;
  }
  if (cup.medium_parts > 0.0) cup.remark = rule.remark;
  const double additive_parts =
      role == PourRole::kActivator ? paint.additive_parts : 0.0;
  const MixParts split =
      PartsByVolume(paint.body, cup.medium_parts, paint.material, medium);
  const double parts = split.paint + split.medium + additive_parts;
  cup.paint = {cup.mix_ml * split.paint / parts, paint.material};
  cup.medium = {cup.mix_ml * split.medium / parts, medium};
  cup.additive = {cup.mix_ml * additive_parts / parts, request.additive};
  cup.blend = Blend({{split.paint, paint.material},
                     {split.medium, medium},
                     {additive_parts, request.additive}});
  return cup;
}

Supply MakeSupply(const std::string& name,
                  const Portion& needed,
                  double at_hand_ml,
                  const std::optional<Price>& price) {
  Supply supply;
  supply.name = name;
  supply.needed_ml = needed.volume_ml;
  supply.needed_g = needed.mass_g();
  supply.at_hand_ml = at_hand_ml;
  supply.buy_ml = std::max(0.0, needed.volume_ml - at_hand_ml);
  if (price) {
    // A hair of rounding must not send her for another tube.
    supply.containers =
        static_cast<int>(std::ceil(supply.buy_ml / price->container_ml - 1e-9));
    supply.used_cost = needed.volume_ml / price->container_ml * price->price;
    supply.buy_cost = *supply.containers * price->price;
  }
  return supply;
}

void AddSupplies(const PlanRequest& request, PourPlan& plan) {
  const auto add = [&](const std::string& name,
                       const Portion& needed,
                       double at_hand_ml,
                       const std::optional<Price>& price) {
    if (!(needed.volume_ml > 0.0)) return;
    plan.supplies.push_back(MakeSupply(name, needed, at_hand_ml, price));
    if (!price) plan.unpriced.push_back(name);
  };
  std::vector<const PlannedPaint*> paints = {&request.base_coat};
  for (const PlannedPaint& colour : request.colours) paints.push_back(&colour);
  if (request.activator) paints.push_back(&*request.activator);
  double additive_ml = 0.0;
  // The same paint may fill two cups; it is bought once.
  std::vector<Portion> needed(paints.size());
  for (std::size_t i = 0, cup = 0; i < paints.size(); ++i, ++cup) {
    std::size_t first = i;
    for (std::size_t j = 0; j < i; ++j) {
      if (paints[j]->name == paints[i]->name &&
          paints[j]->brand == paints[i]->brand) {
        first = j;
        break;
      }
    }
    needed[first].material = paints[first]->material;
    needed[first].volume_ml += plan.cups[cup].paint.volume_ml;
    additive_ml += plan.cups[cup].additive.volume_ml;
  }
  for (std::size_t i = 0; i < paints.size(); ++i) {
    add(paints[i]->brand.empty() ? paints[i]->name
                                 : paints[i]->brand + " " + paints[i]->name,
        needed[i],
        paints[i]->at_hand_ml,
        paints[i]->price);
  }
  add("base of the medium",
      plan.medium.base,
      request.medium_base_at_hand_ml,
      request.medium_base_price);
  add("varnish of the medium",
      plan.medium.varnish,
      request.medium_varnish_at_hand_ml,
      request.medium_varnish_price);
  add("flow additive",
      {additive_ml, request.additive},
      request.additive_at_hand_ml,
      request.additive_price);
  if (plan.unpriced.empty()) {
    double cost = 0.0;
    for (const Supply& supply : plan.supplies) cost += *supply.used_cost;
    plan.cost_per_picture = cost / plan.pictures;
  }
}

Span Times(double factor, const Span& span) {
  return {factor * span.low, factor * span.start, factor * span.high};
}

Span Sum(const Span& a, const Span& b) {
  return {a.low + b.low, a.start + b.start, a.high + b.high};
}

/// Distance the paint runs: the side of a square of the same face.
double RunMm(const PlanRequest& request, const PourPlan& plan) {
  double longest_mm = 0.0;
  for (const Support& support : request.supports) {
    longest_mm = std::max(longest_mm, 1e3 * std::sqrt(FaceAreaM2(support)));
  }
  FLOWKIN_CHECK(plan.pictures > 0);
  return longest_mm;
}

void AddNotes(const PlanRequest& request, PourPlan& plan) {
  constexpr double kSmall_m2 = 0.1;  // about 30 x 30 cm
  if (plan.face_m2 / plan.pictures < kSmall_m2) {
    plan.notes.push_back(
        "On small canvases more runs off: up to 2.5 L on a square metre is "
        "told for them (common practice).");
  }
  if (!plan.learned.told && plan.learned.pours > 0) {
    plan.notes.push_back(
        "Too few pours to tell how much more or less than planned yours take; "
        "three or more are needed.");
  }
  if (plan.learned.told) {
    char factor[80];
    std::snprintf(factor,
                  sizeof(factor),
                  "%.2f times what was planned (%.2f to %.2f)",
                  plan.learned.factor,
                  plan.learned.interval.low,
                  plan.learned.interval.high);
    plan.notes.push_back(
        std::string("The amounts follow ") +
        (request.past_of_journal ? "your journal: " : "your earlier pours: ") +
        std::to_string(plan.learned.pours) + " pours of this kind took " +
        factor + ".");
  }
  for (const TakenLeftOver& taken : plan.left_overs) {
    if (taken.left_over.age_days > 180.0) {
      plan.notes.push_back("'" + taken.left_over.name +
                           "' is more than half a year old: smell it, strain "
                           "it, and test its flow anew before it counts.");
    }
  }
  if (std::any_of(plan.cups.begin(), plan.cups.end(), [](const auto& cup) {
        return cup.left_over_ml > 0.0;
      })) {
    plan.notes.push_back(
        "Water that left-overs hold already is not counted; a cup's share of "
        "water is what is added to it from now on.");
  }
  for (const PlannedCup& cup : plan.cups) {
    if (cup.body == PaintBody::kInk && cup.medium.volume_ml > 0.0) {
      plan.notes.push_back("'" + cup.name +
                           "' is an ink and may start thinner than the base "
                           "coat: it then takes body, not water.");
    }
  }
  if (request.water_share == 0.0) {
    plan.notes.push_back(
        "Water is not counted: what you thin with comes on top.");
  }
}

}  // namespace

const char* PourRoleName(PourRole role) {
  switch (role) {
    case PourRole::kBaseCoat:
      return "base coat";
    case PourRole::kColour:
      return "colour";
    case PourRole::kActivator:
      return "activator";
  }
  return "";
}

Result<PourPlan> MakePourPlan(const PlanRequest& request) {
  if (const Result<void> valid = Validate(request); !valid) {
    return valid.error();
  }
  PourPlan plan;
  for (const Support& support : request.supports) {
    plan.pictures += support.count;
    plan.face_m2 += support.count * FaceAreaM2(support);
    plan.edge_m2 += support.count * EdgeAreaM2(support);
  }
  const double area_m2 = plan.face_m2 + plan.edge_m2;
  plan.learned = LearnUse(request.past);
  const Technique& technique = request.technique;
  const Span base = Times(plan.learned.factor, technique.base_ml_per_m2);
  const Span colours = Times(plan.learned.factor, technique.colours_ml_per_m2);
  const Span activator =
      request.activator
          ? Times(plan.learned.factor, technique.activator_ml_per_m2)
          : Span{};
  plan.amount_ml_per_m2 = Sum(Sum(base, colours), activator);
  plan.on_support_ml = area_m2 * plan.amount_ml_per_m2.start;

  std::vector<LeftOver> shelf = request.left_overs;
  std::stable_sort(
      shelf.begin(), shelf.end(), [](const LeftOver& a, const LeftOver& b) {
        return a.age_days > b.age_days;
      });
  const Material medium = MakeMedium(request.medium, 0.0).blend;
  double shares = 0.0;
  for (const PlannedPaint& colour : request.colours) shares += colour.share;
  plan.cups.push_back(PlanCup(request.base_coat,
                              PourRole::kBaseCoat,
                              area_m2 * base.start,
                              request,
                              medium,
                              shelf,
                              plan));
  for (const PlannedPaint& colour : request.colours) {
    plan.cups.push_back(PlanCup(colour,
                                PourRole::kColour,
                                area_m2 * colours.start * colour.share / shares,
                                request,
                                medium,
                                shelf,
                                plan));
  }
  if (request.activator) {
    plan.cups.push_back(PlanCup(*request.activator,
                                PourRole::kActivator,
                                area_m2 * activator.start,
                                request,
                                medium,
                                shelf,
                                plan));
  }

  for (const PlannedCup& cup : plan.cups) {
    plan.medium_needed_ml += cup.medium.volume_ml;
  }
  plan.medium_needed_ml *= 1.0 + request.medium_loss_share;
  plan.medium_left_over_ml = Take(
      shelf,
      plan.medium_needed_ml,
      [](const LeftOver& left_over) { return left_over.medium; },
      plan.left_overs);
  plan.medium = MakeMedium(request.medium,
                           plan.medium_needed_ml - plan.medium_left_over_ml);
  AddSupplies(request, plan);

  std::vector<Portion> layers;
  for (const PlannedCup& cup : plan.cups) {
    layers.push_back({cup.on_support_ml, cup.blend});
  }
  layers.push_back({request.water_share * plan.on_support_ml, kPlainWater});
  const Material poured = Blend(layers);
  constexpr double kMmPerMlPerM2 = 1e-3;
  plan.volume_solids = poured.volume_solids;
  plan.wet_mm = Times(kMmPerMlPerM2, plan.amount_ml_per_m2);
  plan.dry_mm = Times(poured.volume_solids, plan.wet_mm);
  plan.wet_kg_per_m2 =
      plan.amount_ml_per_m2.start * 1e-3 * poured.density_g_per_ml;
  plan.film = CheckFilm(plan.wet_mm.start,
                        request.nu_mm2_per_s,
                        RunMm(request, plan),
                        request.tilt_deg,
                        request.tilting_s);
  AddNotes(request, plan);
  return plan;
}

}  // namespace flowkin
