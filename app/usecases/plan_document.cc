#include "app/usecases/plan_document.h"

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <map>
#include <utility>

namespace flowkin {
namespace {

constexpr const char* kPlanFormat = "flowkin-plan";
constexpr const char* kTechniquesFormat = "flowkin-techniques";

Error BadSize(const std::string& text) {
  return {ErrorCode::kInvalidArgument,
          "'" + text +
              "' is no canvas size; write it like 40x50x1.8cm or 16x20in (a "
              "round one like 30x2cm)."};
}

Span ReadSpan(const JsonFields& fields, const char* name, const Span& old) {
  if (!fields.Has(name)) return old;
  if (fields.IsObject(name)) {
    const JsonFields span = *fields.Object(name);
    const double start = span.NeededNumber("start");
    return {span.Number("low", start), start, span.Number("high", start)};
  }
  const double value = fields.NeededNumber(name);
  return {value, value, value};
}

std::optional<Price> ReadPrice(const JsonFields& fields, const char* name) {
  const std::optional<JsonFields> price = fields.Object(name);
  if (!price) return std::nullopt;
  return Price{price->NeededNumber("container_ml"),
               price->NeededNumber("price")};
}

PlannedPaint ReadPaint(const JsonFields& fields, PlannedPaint paint) {
  if (fields.Has("name")) paint.name = fields.Text("name");
  paint.brand = fields.Text("brand");
  const std::string body = fields.Text("body");
  if (!body.empty()) {
    const std::optional<PaintBody> known = PaintBodyFromName(body);
    if (!known) {
      fields.RefuseValue("body", "must be heavy, soft, fluid, ink or powder");
    }
    paint.body = *known;
    if (paint.body == PaintBody::kPowder) paint.material = kPowderPigment;
  }
  paint.share = fields.Number("share", paint.share);
  if (fields.Has("medium_parts")) {
    paint.medium_parts = fields.Number("medium_parts");
  }
  paint.additive_parts = fields.Number("additive_parts", paint.additive_parts);
  ReadMaterial(fields, paint.material);
  paint.at_hand_ml = fields.Number("at_hand_ml", 0.0);
  paint.price = ReadPrice(fields, "price");
  return paint;
}

Support ReadSupportObject(const JsonFields& fields) {
  Support support;
  const std::string shape = fields.Text("shape");
  if (shape == "round") {
    support.shape = SupportShape::kRound;
    support.length_mm = fields.NeededNumber("diameter_mm");
  } else if (shape.empty() || shape == "rectangle") {
    support.length_mm = fields.NeededNumber("length_mm");
    support.width_mm = fields.NeededNumber("width_mm");
  } else {
    fields.RefuseValue("shape", "must be rectangle or round");
  }
  support.depth_mm = fields.Number("depth_mm", 0.0);
  support.count = fields.Whole("count").value_or(1);
  support.edges = fields.Flag("edges").value_or(true);
  return support;
}

Technique ReadTechniqueObject(const JsonFields& fields, Technique technique) {
  technique.name = fields.NeededText("name");
  if (fields.Has("what")) technique.what = fields.Text("what");
  technique.base_ml_per_m2 =
      ReadSpan(fields, "base_ml_per_m2", technique.base_ml_per_m2);
  technique.colours_ml_per_m2 =
      ReadSpan(fields, "colours_ml_per_m2", technique.colours_ml_per_m2);
  technique.activator_ml_per_m2 =
      ReadSpan(fields, "activator_ml_per_m2", technique.activator_ml_per_m2);
  technique.source = Source::kArtist;
  return technique;
}

LeftOver ReadLeftOver(const JsonFields& fields) {
  LeftOver left_over;
  left_over.name = fields.NeededText("name");
  const std::string role = fields.Text("role");
  if (role == "medium") {
    left_over.medium = true;
  } else if (role == "base coat") {
    left_over.role = PourRole::kBaseCoat;
  } else if (role == "activator") {
    left_over.role = PourRole::kActivator;
  } else if (!role.empty() && role != "colour") {
    fields.RefuseValue("role",
                       "must be base coat, colour, activator or medium");
  }
  left_over.volume_ml = fields.NeededNumber("volume_ml");
  left_over.age_days = fields.Number("age_days", 0.0);
  return left_over;
}

PlanRequest ReadPlan(const JsonFields& fields,
                     const std::vector<Technique>& techniques) {
  PlanRequest request;
  request.base_coat.name = "base coat";
  request.base_coat.material = kWallPaint;
  for (const JsonFields& support : fields.Objects("supports")) {
    request.supports.push_back(ReadSupportObject(support));
  }
  const std::string technique = fields.Text("technique");
  if (!technique.empty()) {
    const Result<Technique> found = FindTechnique(techniques, technique);
    if (!found) throw BadDocument{found.error()};
    request.technique = *found;
  }
  if (const auto base = fields.Object("base_coat")) {
    request.base_coat = ReadPaint(*base, request.base_coat);
  }
  for (const JsonFields& colour : fields.Objects("colours")) {
    request.colours.push_back(ReadPaint(colour, PlannedPaint{}));
    if (request.colours.back().name.empty()) {
      request.colours.back().name =
          "colour " + std::to_string(request.colours.size());
    }
  }
  if (const auto activator = fields.Object("activator")) {
    PlannedPaint paint;
    paint.name = "activator";
    request.activator = ReadPaint(*activator, paint);
    request.additive_price = ReadPrice(*activator, "additive_price");
    request.additive_at_hand_ml = activator->Number("additive_at_hand_ml", 0.0);
    request.additive.density_g_per_ml = activator->Number(
        "additive_density_g_per_ml", request.additive.density_g_per_ml);
    request.additive.volume_solids = activator->Number(
        "additive_volume_solids", request.additive.volume_solids);
  }
  if (const auto medium = fields.Object("medium")) {
    request.medium = ReadMediumRecipe(*medium);
    request.medium_base_price = ReadPrice(*medium, "base_price");
    request.medium_varnish_price = ReadPrice(*medium, "varnish_price");
    request.medium_base_at_hand_ml = medium->Number("base_at_hand_ml", 0.0);
    request.medium_varnish_at_hand_ml =
        medium->Number("varnish_at_hand_ml", 0.0);
  }
  for (const JsonFields& left_over : fields.Objects("left_overs")) {
    request.left_overs.push_back(ReadLeftOver(left_over));
  }
  for (const JsonFields& past : fields.Objects("past_pours")) {
    request.past.push_back(
        {past.NeededNumber("planned_ml"), past.NeededNumber("used_ml")});
  }
  request.waste_share = fields.Number("waste_share", request.waste_share);
  request.reserve_share = fields.Number("reserve_share", request.reserve_share);
  request.tests_per_cup =
      fields.Whole("tests_per_cup").value_or(request.tests_per_cup);
  request.test_loss_ml = fields.Number("test_loss_ml", request.test_loss_ml);
  request.medium_loss_share =
      fields.Number("medium_loss_share", request.medium_loss_share);
  request.water_share = fields.Number("water_share", request.water_share);
  request.nu_mm2_per_s =
      ReadSpan(fields, "kinematic_viscosity_mm2_s", request.nu_mm2_per_s);
  request.tilt_deg = fields.Number("tilt_deg", request.tilt_deg);
  request.tilting_s = fields.Number("tilting_s", request.tilting_s);
  return request;
}

Json OrNull(const std::optional<double>& value) { return JsonNumber(value); }

Json CupDocumentOf(const PlannedCup& cup) {
  Json document;
  document["name"] = cup.name;
  document["brand"] = cup.brand.empty() ? Json(nullptr) : Json(cup.brand);
  document["role"] = PourRoleName(cup.role);
  document["on_support_ml"] = JsonNumber(cup.on_support_ml);
  document["waste_ml"] = JsonNumber(cup.waste_ml);
  document["tests_ml"] = JsonNumber(cup.tests_ml);
  document["reserve_ml"] = JsonNumber(cup.reserve_ml);
  document["needed_ml"] = JsonNumber(cup.needed_ml);
  document["left_over_ml"] = JsonNumber(cup.left_over_ml);
  document["mix_ml"] = JsonNumber(cup.mix_ml);
  document["paint"] = PortionDocument(cup.paint);
  document["medium"] = PortionDocument(cup.medium);
  document["additive"] = PortionDocument(cup.additive);
  document["body"] = PaintBodyName(cup.body);
  document["medium_parts"] = JsonNumber(cup.medium_parts);
  document["medium_parts_source"] = SourceName(cup.medium_parts_source);
  document["density_g_per_ml"] = JsonNumber(cup.blend.density_g_per_ml);
  document["volume_solids"] = JsonNumber(cup.blend.volume_solids);
  document["remark"] = cup.remark.empty() ? Json(nullptr) : Json(cup.remark);
  return document;
}

}  // namespace

Result<Support> ReadSupport(const std::string& text, SupportShape shape) {
  static const std::map<std::string, double> kUnits = {{"", 10.0},
                                                       {"mm", 1.0},
                                                       {"cm", 10.0},
                                                       {"m", 1000.0},
                                                       {"in", kMmPerInch},
                                                       {"ft", kMmPerFoot}};
  std::string plain = text;
  for (std::size_t at; (at = plain.find("×")) != std::string::npos;) {
    plain.erase(at, std::string("×").size() - 1);
    plain[at] = 'x';
  }
  const std::size_t digits = plain.find_last_of("0123456789.");
  if (digits == std::string::npos) return BadSize(text);
  std::string unit = plain.substr(digits + 1);
  while (!unit.empty() && unit.front() == ' ') unit.erase(0, 1);
  const auto known = kUnits.find(unit);
  if (known == kUnits.end()) return BadSize(text);
  std::vector<double> sizes_mm;
  const std::string numbers = plain.substr(0, digits + 1);
  for (std::size_t from = 0;;) {
    const std::size_t cross = numbers.find('x', from);
    const std::string part = numbers.substr(from, cross - from);
    char* end = nullptr;
    const double value = std::strtod(part.c_str(), &end);
    if (part.empty() || *end != '\0' || !std::isfinite(value)) {
      return BadSize(text);
    }
    sizes_mm.push_back(value * known->second);
    if (cross == std::string::npos) break;
    from = cross + 1;
  }
  const std::size_t faces = shape == SupportShape::kRound ? 1 : 2;
  if (sizes_mm.size() < faces || sizes_mm.size() > faces + 1) {
    return BadSize(text);
  }
  Support support;
  support.shape = shape;
  support.length_mm = sizes_mm[0];
  if (faces == 2) support.width_mm = sizes_mm[1];
  if (sizes_mm.size() > faces) support.depth_mm = sizes_mm[faces];
  return support;
}

Result<std::pair<double, double>> ReadParts(const std::string& text) {
  char* end = nullptr;
  const double first = std::strtod(text.c_str(), &end);
  double second = 1.0;
  if (end != text.c_str() && *end == ':') {
    const char* rest = end + 1;
    second = std::strtod(rest, &end);
    if (end == rest) end = nullptr;
  }
  if (end == nullptr || end == text.c_str() || *end != '\0' ||
      !std::isfinite(first) || !std::isfinite(second)) {
    return Error{ErrorCode::kInvalidArgument,
                 "'" + text + "' are no parts; write them like 4:1."};
  }
  return std::pair(first, second);
}

Result<Technique> FindTechnique(const std::vector<Technique>& techniques,
                                const std::string& name) {
  std::string names;
  for (const Technique& technique : techniques) {
    if (technique.name == name) return technique;
    if (!names.empty()) names += ", ";
    names += technique.name;
  }
  return Error{ErrorCode::kInvalidArgument,
               "The technique '" + name + "' is not in the table (" + names +
                   "); --techniques FILE adds your own."};
}

Result<std::vector<Technique>> ReadTechniques(const std::string& path,
                                              std::vector<Technique> table) {
  if (path.empty()) return table;
  std::ifstream none;
  return ReadDocument(
      path, none, kTechniquesFormat, 1, [&](const JsonFields& fields) {
        for (const JsonFields& entry : fields.Objects("techniques")) {
          Technique* known = nullptr;
          for (Technique& technique : table) {
            if (technique.name == entry.NeededText("name")) known = &technique;
          }
          if (known == nullptr) {
            table.push_back({});
            known = &table.back();
          }
          *known = ReadTechniqueObject(entry, *known);
        }
        return table;
      });
}

Result<PlanRequest> ReadPlanRequest(const std::string& path,
                                    std::istream& fallback,
                                    const std::vector<Technique>& techniques) {
  return ReadDocument(
      path, fallback, kPlanFormat, 1, [&](const JsonFields& fields) {
        return ReadPlan(fields, techniques);
      });
}

void ReadMaterial(const JsonFields& fields, Material& material) {
  material.density_g_per_ml =
      fields.Number("density_g_per_ml", material.density_g_per_ml);
  material.volume_solids =
      fields.Number("volume_solids", material.volume_solids);
}

MediumRecipe ReadMediumRecipe(const JsonFields& fields) {
  MediumRecipe recipe;
  recipe.base_parts = fields.Number("base_parts", recipe.base_parts);
  recipe.varnish_parts = fields.Number("varnish_parts", recipe.varnish_parts);
  const std::string by = fields.Text("by");
  if (by == "weight") {
    recipe.by = PartsBy::kWeight;
  } else if (!by.empty() && by != "volume") {
    fields.RefuseValue("by", "must be volume or weight");
  }
  recipe.base.density_g_per_ml =
      fields.Number("base_density_g_per_ml", recipe.base.density_g_per_ml);
  recipe.base.volume_solids =
      fields.Number("base_volume_solids", recipe.base.volume_solids);
  recipe.varnish.density_g_per_ml = fields.Number(
      "varnish_density_g_per_ml", recipe.varnish.density_g_per_ml);
  recipe.varnish.volume_solids =
      fields.Number("varnish_volume_solids", recipe.varnish.volume_solids);
  return recipe;
}

Json SpanDocument(const Span& span) {
  Json document;
  document["value"] = JsonNumber(span.start);
  document["low"] = JsonNumber(span.low);
  document["high"] = JsonNumber(span.high);
  return document;
}

Json PortionDocument(const Portion& portion) {
  Json document;
  document["volume_ml"] = JsonNumber(portion.volume_ml);
  document["mass_g"] = JsonNumber(portion.mass_g());
  return document;
}

Json TechniqueDocument(const Technique& technique) {
  Json document;
  document["name"] = technique.name;
  document["what"] = technique.what;
  document["base_ml_per_m2"] = SpanDocument(technique.base_ml_per_m2);
  document["colours_ml_per_m2"] = SpanDocument(technique.colours_ml_per_m2);
  document["activator_ml_per_m2"] = SpanDocument(technique.activator_ml_per_m2);
  document["source"] = SourceName(technique.source);
  return document;
}

Json TechniquesDocument(const std::vector<Technique>& techniques) {
  Json document;
  document["format"] = kTechniquesFormat;
  document["version"] = 1;
  document["techniques"] = Json::array();
  for (const Technique& technique : techniques) {
    Json entry = TechniqueDocument(technique);
    for (const char* name :
         {"base_ml_per_m2", "colours_ml_per_m2", "activator_ml_per_m2"}) {
      entry[name]["start"] = entry[name]["value"];
    }
    document["techniques"].push_back(std::move(entry));
  }
  return document;
}

namespace {

Json PaintDocument(const PlannedPaint& paint) {
  Json document;
  document["name"] = paint.name;
  if (!paint.brand.empty()) document["brand"] = paint.brand;
  document["body"] = PaintBodyName(paint.body);
  document["share"] = paint.share;
  if (paint.medium_parts) document["medium_parts"] = *paint.medium_parts;
  document["additive_parts"] = paint.additive_parts;
  document["density_g_per_ml"] = paint.material.density_g_per_ml;
  document["volume_solids"] = paint.material.volume_solids;
  document["at_hand_ml"] = paint.at_hand_ml;
  return document;
}

void PutPrice(Json& document,
              const char* name,
              const std::optional<Price>& price) {
  if (!price) return;
  document[name] = {{"container_ml", price->container_ml},
                    {"price", price->price}};
}

Json SupportDocument(const Support& support) {
  Json document;
  const bool round = support.shape == SupportShape::kRound;
  document["shape"] = round ? "round" : "rectangle";
  document[round ? "diameter_mm" : "length_mm"] = support.length_mm;
  if (!round) document["width_mm"] = support.width_mm;
  document["depth_mm"] = support.depth_mm;
  document["count"] = support.count;
  document["edges"] = support.edges;
  return document;
}

}  // namespace

Json PlanRequestDocument(const PlanRequest& request) {
  Json document;
  document["format"] = kPlanFormat;
  document["version"] = 1;
  document["supports"] = Json::array();
  for (const Support& support : request.supports) {
    document["supports"].push_back(SupportDocument(support));
  }
  document["technique"] = request.technique.name;
  document["base_coat"] = PaintDocument(request.base_coat);
  PutPrice(document["base_coat"], "price", request.base_coat.price);
  document["colours"] = Json::array();
  for (const PlannedPaint& colour : request.colours) {
    Json each = PaintDocument(colour);
    PutPrice(each, "price", colour.price);
    document["colours"].push_back(std::move(each));
  }
  if (request.activator) {
    Json each = PaintDocument(*request.activator);
    PutPrice(each, "price", request.activator->price);
    PutPrice(each, "additive_price", request.additive_price);
    each["additive_at_hand_ml"] = request.additive_at_hand_ml;
    each["additive_density_g_per_ml"] = request.additive.density_g_per_ml;
    each["additive_volume_solids"] = request.additive.volume_solids;
    document["activator"] = std::move(each);
  }
  Json medium;
  medium["base_parts"] = request.medium.base_parts;
  medium["varnish_parts"] = request.medium.varnish_parts;
  medium["by"] = request.medium.by == PartsBy::kWeight ? "weight" : "volume";
  medium["base_density_g_per_ml"] = request.medium.base.density_g_per_ml;
  medium["base_volume_solids"] = request.medium.base.volume_solids;
  medium["varnish_density_g_per_ml"] = request.medium.varnish.density_g_per_ml;
  medium["varnish_volume_solids"] = request.medium.varnish.volume_solids;
  PutPrice(medium, "base_price", request.medium_base_price);
  PutPrice(medium, "varnish_price", request.medium_varnish_price);
  medium["base_at_hand_ml"] = request.medium_base_at_hand_ml;
  medium["varnish_at_hand_ml"] = request.medium_varnish_at_hand_ml;
  document["medium"] = std::move(medium);
  document["waste_share"] = request.waste_share;
  document["reserve_share"] = request.reserve_share;
  document["tests_per_cup"] = request.tests_per_cup;
  document["test_loss_ml"] = request.test_loss_ml;
  document["medium_loss_share"] = request.medium_loss_share;
  document["water_share"] = request.water_share;
  document["kinematic_viscosity_mm2_s"] = {
      {"low", request.nu_mm2_per_s.low},
      {"start", request.nu_mm2_per_s.start},
      {"high", request.nu_mm2_per_s.high}};
  document["tilt_deg"] = request.tilt_deg;
  document["tilting_s"] = request.tilting_s;
  return document;
}

Json PlanDocument(const PlanReport& report, const PlanRequest& request) {
  const PourPlan& plan = report.plan;
  Json document;
  document["outcome"] = "planned";
  document["pictures"] = plan.pictures;
  document["face_m2"] = JsonNumber(plan.face_m2);
  document["edge_m2"] = JsonNumber(plan.edge_m2);
  document["technique"] = TechniqueDocument(request.technique);
  document["amount_ml_per_m2"] = SpanDocument(plan.amount_ml_per_m2);
  document["on_support_ml"] = JsonNumber(plan.on_support_ml);
  document["cups"] = Json::array();
  for (const PlannedCup& cup : plan.cups) {
    document["cups"].push_back(CupDocumentOf(cup));
  }
  Json medium;
  medium["needed_ml"] = JsonNumber(plan.medium_needed_ml);
  medium["left_over_ml"] = JsonNumber(plan.medium_left_over_ml);
  medium["make_ml"] = JsonNumber(plan.medium.volume_ml);
  medium["make_g"] = JsonNumber(plan.medium.mass_g);
  medium["base"] = PortionDocument(plan.medium.base);
  medium["varnish"] = PortionDocument(plan.medium.varnish);
  medium["parts_by_volume"] = JsonNumber(plan.medium.parts_by_volume);
  medium["parts_by_weight"] = JsonNumber(plan.medium.parts_by_weight);
  document["medium"] = medium;
  document["left_overs_used"] = Json::array();
  for (const TakenLeftOver& taken : plan.left_overs) {
    document["left_overs_used"].push_back(
        {{"name", taken.left_over.name},
         {"age_days", JsonNumber(taken.left_over.age_days)},
         {"taken_ml", JsonNumber(taken.taken_ml)}});
  }
  document["supplies"] = Json::array();
  for (const Supply& supply : plan.supplies) {
    Json entry;
    entry["name"] = supply.name;
    entry["needed_ml"] = JsonNumber(supply.needed_ml);
    entry["needed_g"] = JsonNumber(supply.needed_g);
    entry["at_hand_ml"] = JsonNumber(supply.at_hand_ml);
    entry["buy_ml"] = JsonNumber(supply.buy_ml);
    entry["containers"] =
        supply.containers ? Json(*supply.containers) : Json(nullptr);
    entry["used_cost"] = OrNull(supply.used_cost);
    entry["buy_cost"] = OrNull(supply.buy_cost);
    document["supplies"].push_back(entry);
  }
  document["cost_per_picture"] = OrNull(plan.cost_per_picture);
  document["unpriced"] = plan.unpriced;
  Json film;
  film["wet_mm"] = SpanDocument(plan.wet_mm);
  film["dry_mm"] = SpanDocument(plan.dry_mm);
  film["volume_solids"] = JsonNumber(plan.volume_solids);
  film["wet_kg_per_m2"] = JsonNumber(plan.wet_kg_per_m2);
  film["stays_mm"] = SpanDocument(plan.film.stays_mm);
  film["runs_off_share"] = SpanDocument(plan.film.runs_off);
  film["verdict"] = FilmVerdictName(plan.film.verdict);
  film["tilt_deg"] = JsonNumber(request.tilt_deg);
  film["tilting_s"] = JsonNumber(request.tilting_s);
  film["kinematic_viscosity_mm2_s"] = SpanDocument(request.nu_mm2_per_s);
  document["film"] = film;
  Json learned;
  learned["pours"] = plan.learned.pours;
  learned["told_by"] = request.past.empty()      ? Json(nullptr)
                       : request.past_of_journal ? Json("journal")
                                                 : Json("plan");
  learned["told"] = plan.learned.told;
  learned["factor"] = JsonNumber(plan.learned.factor);
  learned["low"] = JsonNumber(plan.learned.interval.low);
  learned["high"] = JsonNumber(plan.learned.interval.high);
  learned["level"] = plan.learned.interval.level;
  document["planned_against_used"] = learned;
  document["notes"] = plan.notes;
  document["cautions"] = report.cautions;
  return document;
}

}  // namespace flowkin
