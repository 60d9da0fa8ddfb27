#include "app/cli/cup_document.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <optional>
#include <sstream>
#include <utility>

#include "app/usecases/read_file.h"

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

ThinnerKind KindOf(const std::string& where, const std::string& kind) {
  for (const ThinnerKind known :
       {ThinnerKind::kWater, ThinnerKind::kAdditive, ThinnerKind::kMedium}) {
    if (kind == ThinnerKindName(known)) return known;
  }
  throw Bad{
      {ErrorCode::kInvalidArgument,
       where + " is '" + kind + "', but must be water, additive or medium."}};
}

void ReadThinner(const Json& document, CupHistory& cup) {
  const Json* field = Find(document, "thinner");
  if (field == nullptr) return;
  const Json& thinner = Object(*field, "thinner");
  const std::string kind = Text(thinner, "kind");
  if (!kind.empty()) cup.thinner = KindOf("thinner.kind", kind);
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

struct UnitSize {
  const char* kind;
  const char* name;
  double ml;
};
// A drop: European Pharmacopoeia dropper, 20 to the gram. Teaspoons: 5 mL
// metric, a third of half a US fluid ounce of 29.5735 mL. The rest: common
// practice, no source; all meant to be replaced by her own calibration.
constexpr UnitSize kUnits[] = {{"drop", "drop", 0.05},
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
  if (const auto known = KnownUnit(kind)) {
    read = *known;
  } else {
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
  cup.batch = Text(document, "batch");
  for (const auto& [what, name] :
       {std::pair<const char*, const std::string&>("brand", cup.paint.brand),
        std::pair<const char*, const std::string&>("colour", cup.paint.colour),
        std::pair<const char*, const std::string&>("batch", cup.batch)}) {
    if (const Result<void> fits = CheckName(what, name); !fits) {
      throw Bad{fits.error()};
    }
  }

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
    const double films = Number(entry, name + ".", "films").value_or(1.0);
    if (!(films >= 1.0 && films <= 1000.0)) {
      throw Bad{{ErrorCode::kInvalidArgument,
                 name + ".films must be a count of 1 to 1000."}};
    }
    test.films = static_cast<std::size_t>(films);
    // What was stirred in before this test, if not the thinner at hand now.
    if (const std::string kind = Text(entry, "thinner"); !kind.empty()) {
      test.thinner = KindOf(name + ".thinner", kind);
    }
    request.cup.tests.push_back(test);
  }
  return cup;
}

constexpr const char* kBookFormat = "flowkin brand book";
constexpr int kBookVersion = 1;
constexpr std::size_t kMostName = 200;

/// Length of the UTF-8 sequence at `at`, 0 if there is none (RFC 3629).
std::size_t SequenceLength(const std::string& text, std::size_t at) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
  };
  const unsigned lead = byte(at);
  std::size_t length = 0;
  unsigned low = 0x80;
  unsigned high = 0xbf;
  if (lead < 0x80) return 1;
  if (lead >= 0xc2 && lead <= 0xdf) {
    length = 2;
  } else if (lead >= 0xe0 && lead <= 0xef) {
    length = 3;
    if (lead == 0xe0) low = 0xa0;
    if (lead == 0xed) high = 0x9f;
  } else if (lead >= 0xf0 && lead <= 0xf4) {
    length = 4;
    if (lead == 0xf0) low = 0x90;
    if (lead == 0xf4) high = 0x8f;
  } else {
    return 0;
  }
  for (std::size_t i = 1; i < length; ++i) {
    if (byte(at + i) < low || byte(at + i) > high) return 0;
    low = 0x80;
    high = 0xbf;
  }
  return length;
}

bool IsPlain(const std::string& text, bool lines) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = SequenceLength(text, at);
    const char byte = text[at];
    const bool control = (byte >= 0 && byte < ' ') || byte == '\x7f';
    const bool of_lines = byte == '\n' || byte == '\t';
    if (length == 0 || (control && !(lines && of_lines))) return false;
    at += length;
  }
  return true;
}

}  // namespace

std::optional<DoseUnit> KnownUnit(const std::string& kind) {
  for (const UnitSize& known : kUnits) {
    if (kind == known.kind) return DoseUnit{known.name, known.ml};
  }
  return std::nullopt;
}

Result<void> CheckName(const std::string& what, const std::string& name) {
  const Error error{ErrorCode::kInvalidArgument,
                    "The " + what +
                        " must be plain text (UTF-8) of at most 200 bytes "
                        "without control characters."};
  if (name.size() > kMostName || !IsPlain(name, /*lines=*/false)) return error;
  return {};
}

Result<void> CheckText(const std::string& text) {
  constexpr std::size_t kMostText = 20000;
  if (text.size() <= kMostText && IsPlain(text, /*lines=*/true)) return {};
  return Error{ErrorCode::kInvalidArgument,
               "What is written down must be plain text (UTF-8) of at most "
               "20000 bytes without control characters."};
}

StoredCup ToStoredCup(const CupDocument& cup, const std::string& now_utc) {
  StoredCup stored;
  stored.paint = cup.paint;
  stored.batch = cup.batch;
  stored.history = cup.request.cup;
  stored.common_rel_sd = cup.request.common_rel_sd;
  stored.learned_utc = now_utc;
  if (cup.request.time_exponent) {
    // Times become ratios by the exponent she works with; what is learned is
    // its product with the slope, which is what the next dose needs.
    const double p = cup.request.time_exponent->value;
    for (CupTest& test : stored.history.tests) {
      test.ratio = std::pow(test.ratio, 1.0 / p);
      test.rel_sd /= p;
    }
    stored.common_rel_sd /= p;
  }
  return stored;
}

Json BookDocument(const std::vector<StoredCup>& cups) {
  Json document;
  document["format"] = kBookFormat;
  document["version"] = kBookVersion;
  document["cups"] = Json::array();
  for (const StoredCup& cup : cups) {
    Json entry;
    entry["brand"] = cup.paint.brand;
    if (!cup.paint.colour.empty()) entry["colour"] = cup.paint.colour;
    if (!cup.batch.empty()) entry["batch"] = cup.batch;
    entry["learned_utc"] = cup.learned_utc;
    entry["volume_ml"] = cup.history.volume_ml;
    entry["thinner"]["kind"] = ThinnerKindName(cup.history.thinner);
    if (const auto& ratio = cup.history.thinner_ln_ratio) {
      entry["thinner"]["ratio"] = std::exp(ratio->value);
      entry["thinner"]["rel_sd"] = ratio->sd;
    }
    if (cup.common_rel_sd > 0.0) entry["common_rel_sd"] = cup.common_rel_sd;
    entry["history"] = Json::array();
    for (const CupTest& test : cup.history.tests) {
      Json row = {{"added_ml", test.added_ml},
                  {"ratio", test.ratio},
                  {"rel_sd", test.rel_sd}};
      if (test.thinner) row["thinner"] = ThinnerKindName(*test.thinner);
      entry["history"].push_back(std::move(row));
    }
    document["cups"].push_back(std::move(entry));
  }
  return document;
}

Result<std::vector<StoredCup>> ReadBookDocument(std::istream& in) {
  const auto foreign = [](const std::string& what) {
    return Error{ErrorCode::kUnreadable,
                 "This is no brand book: " + what + "."};
  };
  try {
    const Json document = Json::parse(in);
    if (!document.is_object() || Text(document, "format") != kBookFormat) {
      return foreign("give a file that 'flowkin export' wrote");
    }
    const auto version = Number(document, "", "version");
    if (!version) return foreign("its version is missing");
    if (*version > kBookVersion) {
      return Error{ErrorCode::kUnreadable,
                   "This brand book was written by a newer flowkin; update "
                   "this one."};
    }
    const Json* list = Find(document, "cups");
    if (list == nullptr || !list->is_array()) {
      return foreign("cups must be a list");
    }
    std::vector<StoredCup> cups;
    for (const Json& entry : *list) {
      const std::string where = "cups[" + std::to_string(cups.size()) + "]: ";
      try {
        CupDocument cup = FromJson(entry);
        if (cup.paint.brand.empty()) throw Bad{NotASchema("brand is missing")};
        cup.request.time_exponent.reset();
        if (const auto valid = cup.request.Validate(); !valid) {
          throw Bad{valid.error()};
        }
        std::string learned = Text(entry, "learned_utc");
        if (learned.size() > 40) learned.clear();
        cups.push_back(ToStoredCup(cup, learned));
      } catch (const Bad& bad) {
        return Error{ErrorCode::kUnreadable, where + bad.error.message};
      }
    }
    return cups;
  } catch (const Bad& bad) {
    return bad.error;
  } catch (const Json::exception&) {
    return foreign("it is no JSON");
  }
}

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
  Result<std::ifstream> file = OpenToRead(path);
  if (!file) return file.error();
  return ReadCupDocument(*file);
}

}  // namespace flowkin
