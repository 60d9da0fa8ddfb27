#include "app/cli/cup_document.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <optional>
#include <sstream>
#include <utility>

namespace flowkin {
namespace {

Error NotASchema(const std::string& what) {
  return {ErrorCode::kUnreadable, "This is not a cup: " + what + "."};
}

/// Thrown inside this file only.
struct Bad {
  Error error;
};

const Json* Find(const Json& object, const char* name) {
  const auto found = object.find(name);
  if (found == object.end() || found->is_null()) return nullptr;
  return &*found;
}

std::optional<double> Number(const Json& object,
                             const std::string& where,
                             const char* name) {
  const Json* field = Find(object, name);
  if (field == nullptr) return std::nullopt;
  if (!field->is_number()) {
    throw Bad{NotASchema(where + name + " must be a number")};
  }
  return field->get<double>();
}

double NeededNumber(const Json& object,
                    const std::string& where,
                    const char* name) {
  const std::optional<double> number = Number(object, where, name);
  if (!number) throw Bad{NotASchema(where + name + " is missing")};
  return *number;
}

std::string Text(const Json& object, const char* name) {
  const Json* field = Find(object, name);
  if (field == nullptr) return {};
  if (!field->is_string()) {
    throw Bad{NotASchema(std::string(name) + " must be text")};
  }
  return field->get<std::string>();
}

const Json& Object(const Json& value, const std::string& what) {
  if (!value.is_object()) throw Bad{NotASchema(what + " must be an object")};
  return value;
}

void ReadThinner(const Json& document, CupHistory& cup) {
  const Json* field = Find(document, "thinner");
  if (field == nullptr) return;
  const Json& thinner = Object(*field, "thinner");
  const std::string kind = Text(thinner, "kind");
  if (kind.empty() || kind == "water") {
    cup.thinner = ThinnerKind::kWater;
  } else if (kind == "additive") {
    cup.thinner = ThinnerKind::kAdditive;
  } else if (kind == "medium") {
    cup.thinner = ThinnerKind::kMedium;
  } else {
    throw Bad{{ErrorCode::kInvalidArgument,
               "thinner.kind is '" + kind +
                   "', but must be water, additive or medium."}};
  }
  if (const auto ratio = Number(thinner, "thinner.", "ratio")) {
    if (!(*ratio > 0.0)) {
      throw Bad{
          {ErrorCode::kInvalidArgument, "thinner.ratio must be above 0."}};
    }
    const double rel_sd = Number(thinner, "thinner.", "rel_sd").value_or(0.05);
    if (!(rel_sd > 0.0 && rel_sd <= 1.0)) {
      throw Bad{{ErrorCode::kInvalidArgument,
                 "thinner.rel_sd must be above 0 and at most 1."}};
    }
    cup.thinner_ln_ratio = Estimate{std::log(*ratio), rel_sd};
  }
}

struct KnownUnit {
  const char* kind;
  const char* name;
  double ml;
};
// A drop: European Pharmacopoeia dropper, 20 to the gram. Teaspoons: 5 mL
// metric, a third of half a US fluid ounce of 29.5735 mL. The rest: common
// practice, no source; all meant to be replaced by her own calibration.
constexpr KnownUnit kUnits[] = {{"drop", "drop", 0.05},
                                {"ml", "mL", 1.0},
                                {"gram", "gram", 1.0018},
                                {"spray", "spray stroke", 0.13},
                                {"teaspoon", "teaspoon", 5.0},
                                {"teaspoon_us", "US teaspoon", 4.92892}};
constexpr double kWaterDensity_g_per_ml = 0.9982;  // 20 degrees C

/// "unit": {"kind": "drop", "ml": 0.046} or, counted on a scale,
/// {"kind": "drop", "count": 20, "weight_g": 0.92}.
void ReadUnit(const Json& document, DoseRequest& request) {
  const Json* field = Find(document, "unit");
  if (field == nullptr) return;
  const Json& unit = Object(*field, "unit");
  const std::string kind = Text(unit, "kind");
  DoseUnit read;
  for (const KnownUnit& known : kUnits) {
    if (kind == known.kind) read = {known.name, known.ml};
  }
  if (read.name.empty()) {
    throw Bad{{ErrorCode::kInvalidArgument,
               "unit.kind is '" + kind +
                   "', but must be drop, ml, gram, spray, teaspoon or "
                   "teaspoon_us."}};
  }
  const auto ml = Number(unit, "unit.", "ml");
  const auto count = Number(unit, "unit.", "count");
  const auto weight_g = Number(unit, "unit.", "weight_g");
  if (ml) {
    read.ml = *ml;
  } else if (count || weight_g) {
    if (!count || !weight_g || !(*count > 0.0) || !(*weight_g > 0.0)) {
      throw Bad{{ErrorCode::kInvalidArgument,
                 "unit needs both count and weight_g above 0, for example 20 "
                 "drops that weigh 0.98 g."}};
    }
    read.ml = *weight_g / *count / kWaterDensity_g_per_ml;
  } else if (const auto step = Number(unit, "unit.", "mark")) {
    read.ml *= *step;  // the smallest mark of a pipette or a scale
  }
  if (!(read.ml >= 1e-3 && read.ml <= 100.0)) {
    throw Bad{{ErrorCode::kInvalidArgument,
               "unit is out of range; one of it must hold 0.001 to 100 mL."}};
  }
  request.unit = read;
}

CupDocument FromJson(const Json& document) {
  Object(document, "the document");
  CupDocument cup;
  DoseRequest& request = cup.request;
  request.cup.volume_ml = NeededNumber(document, "", "volume_ml");
  request.band = Number(document, "", "band").value_or(request.band);
  request.target_ratio =
      Number(document, "", "target").value_or(request.target_ratio);
  ReadThinner(document, request.cup);
  ReadUnit(document, request);
  const auto step = Number(document, "", "smallest_step_ml");
  if (step) request.smallest_step_ml = *step;
  if (request.unit) {
    // Amounts she can hand out: whole units, not below the stated step.
    request.smallest_step_ml =
        step ? request.unit->ml *
                   std::max(1.0, std::ceil(*step / request.unit->ml - 1e-9))
             : request.unit->ml;
  }
  request.reserve_ml = Number(document, "", "reserve_ml");
  request.reserve_ratio = Number(document, "", "reserve_ratio");
  request.common_rel_sd = Number(document, "", "common_rel_sd").value_or(0.0);
  if (const auto exponent = Number(document, "", "time_exponent")) {
    request.time_exponent = Estimate{
        *exponent, Number(document, "", "time_exponent_sd").value_or(0.0)};
  }
  BenchConditions& bench = request.bench;
  bench.temperature_c = Number(document, "", "temperature_c");
  bench.base_temperature_c = Number(document, "", "base_temperature_c");
  bench.base_age_min = Number(document, "", "base_age_min");
  bench.open_min = Number(document, "", "open_min");
  bench.rest_s = Number(document, "", "rest_s");
  if (const Json* others = Find(document, "other_water_shares")) {
    if (!others->is_array()) {
      throw Bad{NotASchema("other_water_shares must be a list")};
    }
    for (const Json& other : *others) {
      if (!other.is_number()) {
        throw Bad{NotASchema("other_water_shares must hold numbers")};
      }
      bench.other_water_shares.push_back(other.get<double>());
    }
  }
  cup.paint.brand = Text(document, "brand");
  cup.paint.colour = Text(document, "colour");

  const Json* history = Find(document, "history");
  if (history == nullptr || !history->is_array()) {
    throw Bad{NotASchema("history must be a list of tests")};
  }
  for (std::size_t i = 0; i < history->size(); ++i) {
    const std::string name = "history[" + std::to_string(i) + "]";
    const Json& entry = Object((*history)[i], name);
    CupTest test;
    test.added_ml = NeededNumber(entry, name + ".", "added_ml");
    test.ratio = NeededNumber(entry, name + ".", "ratio");
    test.rel_sd = Number(entry, name + ".", "rel_sd").value_or(test.rel_sd);
    request.cup.tests.push_back(test);
  }
  return cup;
}

}  // namespace

Result<CupDocument> ReadCupDocument(std::istream& in) {
  try {
    const Json document = Json::parse(in);
    CupDocument cup = FromJson(document);
    if (const Result<void> valid = cup.request.Validate(); !valid) {
      return valid.error();
    }
    return cup;
  } catch (const Bad& bad) {
    return bad.error;
  } catch (const Json::exception&) {
    return NotASchema(
        "it is no JSON; give a document with volume_ml and history");
  }
}

Result<CupDocument> ReadCupDocument(const std::string& path,
                                    std::istream& fallback) {
  if (path.empty()) return ReadCupDocument(fallback);
  std::ifstream file(path);
  if (!file) {
    return Error{
        ErrorCode::kUnreadable,
        "The file '" + path + "' cannot be opened; check its name and rights."};
  }
  return ReadCupDocument(file);
}

}  // namespace flowkin
