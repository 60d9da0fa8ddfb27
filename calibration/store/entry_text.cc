#include "calibration/store/entry_text.h"

#include <array>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <utility>

#include "core/base/check.h"

namespace flowkin {
namespace {

using Json = nlohmann::json;

template <typename... F>
struct Overloaded : F... {
  using F::operator()...;
};
template <typename... F>
Overloaded(F...) -> Overloaded<F...>;

/// Thrown inside this file only.
struct Damaged {};

constexpr std::array kThinners = {
    ThinnerKind::kWater, ThinnerKind::kAdditive, ThinnerKind::kMedium};
constexpr std::array kRoles = {
    CupRole::kBaseCoat, CupRole::kColour, CupRole::kActivator};
constexpr std::array kTests = {
    TestKind::kStream, TestKind::kLevel, TestKind::kPuddle};

/// The enumerator whose name stands in `json`.
template <typename List, typename Name>
auto FromName(const Json& json, const List& list, const Name& name) {
  const auto& text = json.get_ref<const std::string&>();
  for (const auto each : list) {
    if (text == name(each)) return each;
  }
  throw Damaged{};
}

// Writing. Numbers that are not finite have no place in JSON: an infinite
// number of degrees of freedom is left out, anything else is a bug upstream
// and is kept as null, which reads as NaN.

template <typename T>
void Put(Json& json, const char* name, const std::optional<T>& value) {
  if (value) json[name] = *value;
}

Json Write(const Estimate& estimate) {
  Json json = {{"value", estimate.value}, {"sd", estimate.sd}};
  if (std::isfinite(estimate.degrees_of_freedom)) {
    json["dof"] = estimate.degrees_of_freedom;
  }
  return json;
}

Json Write(const Interval& interval) {
  return {{"low", interval.low},
          {"high", interval.high},
          {"level", interval.level}};
}

Json Write(const DoseUnit& unit) {
  return {{"name", unit.name}, {"ml", unit.ml}};
}

Json Write(const FlowMeasurement& m) {
  Json json;
  json["test"] = TestKindName(m.kind);
  json["measured"] = m.outcome == Outcome::kMeasured;
  if (!m.reason.empty()) json["reason"] = m.reason;
  Put(json, "lift_s", m.lift_s);
  Put(json, "break_s", m.break_s);
  Put(json, "laid_s", m.laid_s);
  Put(json, "start_s", m.start_s);
  if (!m.drips_s.empty()) json["drips_s"] = m.drips_s;
  json["proxies"] = Json::array();
  for (const FlowProxy& proxy : m.proxies) {
    json["proxies"].push_back({{"name", proxy.name},
                               {"value", proxy.value},
                               {"unit", proxy.unit},
                               {"ln_value", Write(proxy.ln_value)},
                               {"exponent", Write(proxy.exponent)},
                               {"paint_sd", proxy.paint_sd}});
  }
  for (const FlowCurve& curve : m.curves) {
    json["curves"].push_back({{"name", curve.name},
                              {"unit", curve.unit},
                              {"t_s", curve.t_s},
                              {"value", curve.value},
                              {"sd", curve.sd}});
    if (curve.stretch_sd > 0.0) {
      json["curves"].back()["stretch_sd"] = curve.stretch_sd;
    }
  }
  if (m.ln_kinematic_viscosity_mm2_s) {
    json["ln_kinematic_viscosity_mm2_s"] =
        Write(*m.ln_kinematic_viscosity_mm2_s);
  }
  if (!m.warnings.empty()) json["warnings"] = m.warnings;
  return json;
}

Json Write(const FilmedTest& test) {
  Json json;
  json["measurement"] = Write(test.measurement);
  json["film"] = test.film;
  json["duration_s"] = test.duration_s;
  json["time_scale"] = test.time_scale;
  Put(json, "volume_ml", test.volume_ml);
  Put(json, "mm_per_px", test.mm_per_px);
  Put(json, "shot_fps", test.shot_fps);
  if (!test.clip_warnings.empty()) json["clip_warnings"] = test.clip_warnings;
  return json;
}

Json Write(const CupDetails& cup) {
  Json json;
  json["label"] = cup.label;
  json["role"] = CupRoleName(cup.role);
  json["brand"] = cup.paint.brand;
  json["colour"] = cup.paint.colour;
  if (cup.swatch) {
    json["swatch"] = {cup.swatch->red, cup.swatch->green, cup.swatch->blue};
  }
  Put(json, "volume_ml", cup.volume_ml);
  json["target"] = cup.target_ratio;
  Put(json, "reserve_ml", cup.reserve_ml);
  json["thinner"] = ThinnerKindName(cup.thinner);
  if (cup.thinner_ln_ratio) {
    json["thinner_ln_ratio"] = Write(*cup.thinner_ln_ratio);
  }
  if (cup.unit) json["unit"] = Write(*cup.unit);
  return json;
}

Json Write(const BenchSettings& settings) {
  Json json;
  json["band"] = settings.band;
  json["smallest_step_ml"] = settings.smallest_step_ml;
  if (settings.unit) json["unit"] = Write(*settings.unit);
  json["test"] = TestKindName(settings.test);
  json["base_films"] = settings.base_films;
  json["cup_films"] = settings.cup_films;
  json["recheck_min"] = settings.recheck_min;
  return json;
}

// Reading.

Json Write(const PourMade& pour) {
  Json json = {{"technique", pour.technique},
               {"band", pour.band},
               {"text", pour.text},
               {"cups", Json::array()}};
  Put(json, "planned_ml", pour.planned_ml);
  if (pour.plan_factor != 1.0) json["plan_factor"] = pour.plan_factor;
  Put(json, "used_ml", pour.used_ml);
  Put(json, "wet_mm", pour.wet_mm);
  Put(json, "dry_mm", pour.dry_mm);
  Put(json, "humidity_percent", pour.humidity_percent);
  Put(json, "rested_min", pour.rested_min);
  Put(json, "strained", pour.strained);
  for (const PouredCup& cup : pour.cups) {
    Json each = {{"cup", cup.cup},
                 {"label", cup.label},
                 {"role", CupRoleName(cup.role)},
                 {"target", cup.target}};
    if (cup.ln_ratio) each["ln_ratio"] = Write(*cup.ln_ratio);
    if (cup.interval) {
      each["interval"] = Write(*cup.interval);
    }
    Put(each, "water_share", cup.water_share);
    json["cups"].push_back(std::move(each));
  }
  return json;
}

double Number(const Json& json) {
  return json.is_null() ? std::numeric_limits<double>::quiet_NaN()
                        : json.get<double>();
}

double Number(const Json& json, const char* name) {
  return Number(json.at(name));
}

std::vector<double> Numbers(const Json& json) {
  std::vector<double> numbers;
  for (const Json& each : json) numbers.push_back(Number(each));
  return numbers;
}

std::optional<double> MaybeNumber(const Json& json, const char* name) {
  const auto found = json.find(name);
  if (found == json.end() || found->is_null()) return std::nullopt;
  return found->get<double>();
}

std::string Text(const Json& json, const char* name) {
  return json.value(name, std::string());
}

std::vector<std::string> Texts(const Json& json, const char* name) {
  return json.value(name, std::vector<std::string>());
}

Estimate ReadEstimate(const Json& json) {
  Estimate estimate{Number(json, "value"), Number(json, "sd")};
  if (const auto dof = MaybeNumber(json, "dof")) {
    estimate.degrees_of_freedom = *dof;
  }
  return estimate;
}

Interval ReadInterval(const Json& json, const char* name) {
  const Json& interval = json.at(name);
  return {Number(interval, "low"),
          Number(interval, "high"),
          Number(interval, "level")};
}

std::optional<Estimate> MaybeEstimate(const Json& json, const char* name) {
  const auto found = json.find(name);
  if (found == json.end()) return std::nullopt;
  return ReadEstimate(*found);
}

std::optional<DoseUnit> MaybeUnit(const Json& json) {
  const auto found = json.find("unit");
  if (found == json.end()) return std::nullopt;
  return DoseUnit{Text(*found, "name"), Number(*found, "ml")};
}

TestKind ReadTest(const Json& json) {
  return FromName(json.at("test"), kTests, TestKindName);
}

ThinnerKind ReadThinner(const Json& json) {
  return FromName(json.at("thinner"), kThinners, ThinnerKindName);
}

FlowMeasurement ReadMeasurement(const Json& json) {
  FlowMeasurement m;
  m.kind = ReadTest(json);
  m.outcome =
      json.at("measured").get<bool>() ? Outcome::kMeasured : Outcome::kRefused;
  m.reason = Text(json, "reason");
  m.lift_s = MaybeNumber(json, "lift_s");
  m.break_s = MaybeNumber(json, "break_s");
  m.laid_s = MaybeNumber(json, "laid_s");
  m.start_s = MaybeNumber(json, "start_s");
  if (json.contains("drips_s")) m.drips_s = Numbers(json["drips_s"]);
  for (const Json& each : json.at("proxies")) {
    m.proxies.push_back({Text(each, "name"),
                         Number(each, "value"),
                         Text(each, "unit"),
                         ReadEstimate(each.at("ln_value")),
                         ReadEstimate(each.at("exponent")),
                         MaybeNumber(each, "paint_sd").value_or(0.0)});
  }
  if (json.contains("curves")) {
    for (const Json& each : json["curves"]) {
      m.curves.push_back({Text(each, "name"),
                          Text(each, "unit"),
                          Numbers(each.at("t_s")),
                          Numbers(each.at("value")),
                          Numbers(each.at("sd")),
                          MaybeNumber(each, "stretch_sd").value_or(0.0)});
    }
  }
  m.ln_kinematic_viscosity_mm2_s =
      MaybeEstimate(json, "ln_kinematic_viscosity_mm2_s");
  m.warnings = Texts(json, "warnings");
  return m;
}

FilmedTest ReadFilmedTest(const Json& json) {
  FilmedTest test;
  test.measurement = ReadMeasurement(json.at("measurement"));
  test.film = Text(json, "film");
  test.duration_s = Number(json, "duration_s");
  test.time_scale = Number(json, "time_scale");
  test.volume_ml = MaybeNumber(json, "volume_ml");
  test.mm_per_px = MaybeNumber(json, "mm_per_px");
  test.shot_fps = MaybeNumber(json, "shot_fps");
  test.clip_warnings = Texts(json, "clip_warnings");
  return test;
}

CupDetails ReadDetails(const Json& json) {
  CupDetails cup;
  cup.label = Text(json, "label");
  cup.role = FromName(json.at("role"), kRoles, CupRoleName);
  cup.paint = {Text(json, "brand"), Text(json, "colour")};
  if (json.contains("swatch")) {
    const auto channels = json["swatch"].get<std::array<std::uint8_t, 3>>();
    cup.swatch = SwatchColour{channels[0], channels[1], channels[2]};
  }
  cup.volume_ml = MaybeNumber(json, "volume_ml");
  cup.target_ratio = json.value("target", cup.target_ratio);
  cup.reserve_ml = MaybeNumber(json, "reserve_ml");
  cup.thinner = ReadThinner(json);
  cup.thinner_ln_ratio = MaybeEstimate(json, "thinner_ln_ratio");
  cup.unit = MaybeUnit(json);
  return cup;
}

BenchSettings ReadSettings(const Json& json) {
  BenchSettings settings;
  settings.band = json.value("band", settings.band);
  settings.smallest_step_ml =
      json.value("smallest_step_ml", settings.smallest_step_ml);
  settings.unit = MaybeUnit(json);
  settings.test = ReadTest(json);
  settings.base_films = json.value("base_films", settings.base_films);
  settings.cup_films = json.value("cup_films", settings.cup_films);
  settings.recheck_min = json.value("recheck_min", settings.recheck_min);
  return settings;
}

EntryNumber ReadNumber(const Json& json, const char* name) {
  return json.at(name).get<EntryNumber>();
}

PourMade ReadPour(const Json& json) {
  PourMade pour;
  pour.technique = Text(json, "technique");
  pour.band = Number(json, "band");
  pour.text = Text(json, "text");
  pour.planned_ml = MaybeNumber(json, "planned_ml");
  pour.plan_factor = json.value("plan_factor", 1.0);
  pour.used_ml = MaybeNumber(json, "used_ml");
  pour.wet_mm = MaybeNumber(json, "wet_mm");
  pour.dry_mm = MaybeNumber(json, "dry_mm");
  pour.humidity_percent = MaybeNumber(json, "humidity_percent");
  pour.rested_min = MaybeNumber(json, "rested_min");
  if (json.contains("strained")) {
    pour.strained = json["strained"].get<bool>();
  }
  for (const Json& each : json.at("cups")) {
    PouredCup cup;
    cup.cup = ReadNumber(each, "cup");
    cup.label = Text(each, "label");
    cup.role = FromName(each.at("role"), kRoles, CupRoleName);
    cup.target = Number(each, "target");
    cup.ln_ratio = MaybeEstimate(each, "ln_ratio");
    if (each.contains("interval")) {
      cup.interval = ReadInterval(each, "interval");
    }
    cup.water_share = MaybeNumber(each, "water_share");
    pour.cups.push_back(std::move(cup));
  }
  return pour;
}

struct Reader {
  const char* kind;
  EntryWhat (*read)(const Json& json);
};

const Reader kReaders[] = {
    {"cup_added",
     [](const Json& j) -> EntryWhat {
       return CupAdded{ReadDetails(j.at("cup"))};
     }},
    {"cup_changed",
     [](const Json& j) -> EntryWhat {
       return CupChanged{ReadNumber(j, "cup"), ReadDetails(j.at("details"))};
     }},
    {"cup_removed",
     [](const Json& j) -> EntryWhat {
       return CupRemoved{ReadNumber(j, "cup")};
     }},
    {"test_taken",
     [](const Json& j) -> EntryWhat {
       return TestTaken{ReadNumber(j, "cup"),
                        ReadFilmedTest(j.at("test")),
                        MaybeNumber(j, "room_c")};
     }},
    {"test_set_aside",
     [](const Json& j) -> EntryWhat {
       return TestSetAside{ReadNumber(j, "test")};
     }},
    {"test_taken_back",
     [](const Json& j) -> EntryWhat {
       return TestTakenBack{ReadNumber(j, "test")};
     }},
    {"event_corrected",
     [](const Json& j) -> EntryWhat {
       const auto event = TestEventFromName(Text(j, "event"));
       if (!event) throw Damaged{};
       return EventCorrected{ReadNumber(j, "test"),
                             *event,
                             Number(j, "at_s"),
                             ReadMeasurement(j.at("measurement"))};
     }},
    {"thinner_added",
     [](const Json& j) -> EntryWhat {
       return ThinnerAdded{ReadNumber(j, "cup"),
                           Number(j, "ml"),
                           ReadThinner(j),
                           MaybeNumber(j, "units"),
                           MaybeUnit(j)};
     }},
    {"reserve_put_back",
     [](const Json& j) -> EntryWhat {
       return ReservePutBack{ReadNumber(j, "cup"), Number(j, "ml")};
     }},
    {"stirred",
     [](const Json& j) -> EntryWhat { return Stirred{ReadNumber(j, "cup")}; }},
    {"room_measured",
     [](const Json& j) -> EntryWhat {
       return RoomMeasured{Number(j, "room_c")};
     }},
    {"settings_changed",
     [](const Json& j) -> EntryWhat {
       return SettingsChanged{ReadSettings(j.at("settings"))};
     }},
    {"cup_learned",
     [](const Json& j) -> EntryWhat {
       return CupLearned{ReadNumber(j, "cup")};
     }},
    {"note_taken",
     [](const Json& j) -> EntryWhat {
       NoteTaken note;
       if (j.contains("cup")) note.cup = ReadNumber(j, "cup");
       note.text = Text(j, "text");
       return note;
     }},
    {"pour_made", [](const Json& j) -> EntryWhat { return ReadPour(j); }},
    {"photo_taken",
     [](const Json& j) -> EntryWhat {
       PhotoTaken photo;
       const auto kind = PhotoKindFromName(Text(j, "photo"));
       if (!kind) throw Damaged{};
       photo.kind = *kind;
       photo.path = Text(j, "path");
       if (j.contains("cup")) photo.cup = ReadNumber(j, "cup");
       photo.text = Text(j, "text");
       return photo;
     }},
    {"fault_seen",
     [](const Json& j) -> EntryWhat {
       return FaultSeen{Text(j, "fault"), Text(j, "text")};
     }},
    {"pour_judged",
     [](const Json& j) -> EntryWhat {
       const auto verdict = PourVerdictFromName(Text(j, "verdict"));
       if (!verdict) throw Damaged{};
       return PourJudged{*verdict, Text(j, "text")};
     }},
    {"cells_tested",
     [](const Json& j) -> EntryWhat {
       CellsTested cells;
       const auto seen = CellsSeenFromName(Text(j, "seen"));
       if (!seen) throw Damaged{};
       cells.seen = *seen;
       cells.after_s = MaybeNumber(j, "after_s");
       if (j.contains("cup")) cells.cup = ReadNumber(j, "cup");
       cells.additive_parts = MaybeNumber(j, "additive_parts");
       cells.ln_ratio = MaybeEstimate(j, "ln_ratio");
       cells.photo = Text(j, "photo");
       cells.text = Text(j, "text");
       if (const auto counted = j.find("counted"); counted != j.end()) {
         cells.counted =
             CellsCounted{static_cast<int>(ReadNumber(*counted, "cells")),
                          Number(*counted, "per_cm2"),
                          ReadInterval(*counted, "per_cm2_interval"),
                          Number(*counted, "median_mm"),
                          ReadInterval(*counted, "median_mm_interval")};
       }
       return cells;
     }},
    {"undone",
     [](const Json& j) -> EntryWhat { return Undone{ReadNumber(j, "entry")}; }},
    {"redone",
     [](const Json& j) -> EntryWhat { return Redone{ReadNumber(j, "entry")}; }},
    {"session_closed",
     [](const Json&) -> EntryWhat { return SessionClosed{}; }},
    {"session_reopened",
     [](const Json&) -> EntryWhat { return SessionReopened{}; }},
};

}  // namespace

EntryText ToText(const EntryWhat& what) {
  const auto text = [](const char* kind, const Json& body) {
    // Bytes that are no UTF-8 (a file name can hold any) would else be an
    // exception.
    return EntryText{kind,
                     body.dump(-1, ' ', false, Json::error_handler_t::replace)};
  };
  return std::visit(
      Overloaded{
          [&](const CupAdded& e) {
            return text("cup_added", {{"cup", Write(e.cup)}});
          },
          [&](const CupChanged& e) {
            return text("cup_changed",
                        {{"cup", e.cup}, {"details", Write(e.details)}});
          },
          [&](const CupRemoved& e) {
            return text("cup_removed", {{"cup", e.cup}});
          },
          [&](const TestTaken& e) {
            Json body = {{"cup", e.cup}, {"test", Write(e.test)}};
            Put(body, "room_c", e.room_c);
            return text("test_taken", body);
          },
          [&](const TestSetAside& e) {
            return text("test_set_aside", {{"test", e.test}});
          },
          [&](const TestTakenBack& e) {
            return text("test_taken_back", {{"test", e.test}});
          },
          [&](const EventCorrected& e) {
            return text("event_corrected",
                        {{"test", e.test},
                         {"event", TestEventName(e.event)},
                         {"at_s", e.at_s},
                         {"measurement", Write(e.measurement)}});
          },
          [&](const ThinnerAdded& e) {
            Json body = {{"cup", e.cup},
                         {"ml", e.ml},
                         {"thinner", ThinnerKindName(e.thinner)}};
            Put(body, "units", e.units);
            if (e.unit) body["unit"] = Write(*e.unit);
            return text("thinner_added", body);
          },
          [&](const ReservePutBack& e) {
            return text("reserve_put_back", {{"cup", e.cup}, {"ml", e.ml}});
          },
          [&](const Stirred& e) {
            return text("stirred", {{"cup", e.cup}});
          },
          [&](const RoomMeasured& e) {
            return text("room_measured", {{"room_c", e.room_c}});
          },
          [&](const SettingsChanged& e) {
            return text("settings_changed", {{"settings", Write(e.settings)}});
          },
          [&](const CupLearned& e) {
            return text("cup_learned", {{"cup", e.cup}});
          },
          [&](const NoteTaken& e) {
            Json body = {{"text", e.text}};
            Put(body, "cup", e.cup);
            return text("note_taken", body);
          },
          [&](const PourMade& e) { return text("pour_made", Write(e)); },
          [&](const PhotoTaken& e) {
            Json body = {{"photo", PhotoKindName(e.kind)},
                         {"path", e.path},
                         {"text", e.text}};
            Put(body, "cup", e.cup);
            return text("photo_taken", body);
          },
          [&](const FaultSeen& e) {
            return text("fault_seen", {{"fault", e.fault}, {"text", e.text}});
          },
          [&](const PourJudged& e) {
            return text(
                "pour_judged",
                {{"verdict", PourVerdictName(e.verdict)}, {"text", e.text}});
          },
          [&](const CellsTested& e) {
            Json body = {{"seen", CellsSeenName(e.seen)},
                         {"photo", e.photo},
                         {"text", e.text}};
            Put(body, "after_s", e.after_s);
            Put(body, "cup", e.cup);
            Put(body, "additive_parts", e.additive_parts);
            if (e.ln_ratio) body["ln_ratio"] = Write(*e.ln_ratio);
            if (e.counted) {
              body["counted"] = {
                  {"cells", e.counted->cells},
                  {"per_cm2", e.counted->per_cm2},
                  {"per_cm2_interval", Write(e.counted->per_cm2_interval)},
                  {"median_mm", e.counted->median_mm},
                  {"median_mm_interval", Write(e.counted->median_mm_interval)}};
            }
            return text("cells_tested", body);
          },
          [&](const Undone& e) {
            return text("undone", {{"entry", e.entry}});
          },
          [&](const Redone& e) {
            return text("redone", {{"entry", e.entry}});
          },
          [&](const SessionClosed&) {
            return text("session_closed", Json::object());
          },
          [&](const SessionReopened&) {
            return text("session_reopened", Json::object());
          },
          [](const ForeignEntry& e) {
            return EntryText{e.kind, e.body};
          },
      },
      what);
}

Result<EntryWhat> FromText(const EntryText& text) {
  const Reader* reader = nullptr;
  for (const Reader& each : kReaders) {
    if (text.kind == each.kind) reader = &each;
  }
  if (reader == nullptr) return EntryWhat(ForeignEntry{text.kind, text.body});
  try {
    return reader->read(Json::parse(text.body));
  } catch (const Damaged&) {
  } catch (const Json::exception&) {
  }
  return Error{ErrorCode::kUnreadable,
               "An entry of this session ('" + text.kind +
                   "') is damaged; restore a backup of the brand book."};
}

}  // namespace flowkin
