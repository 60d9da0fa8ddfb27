#include "app/usecases/label_document.h"

#include "core/planning/calendar.h"
#include "core/session/cup.h"

namespace flowkin {
namespace {

constexpr const char* kFormat = "flowkin-label";

std::string ReadDay(const JsonFields& fields, const char* name) {
  std::string day = fields.Text(name);
  if (!day.empty() && !ParseDay(day)) {
    fields.RefuseValue(name, "is no day; write it like 2026-03-01");
  }
  return day;
}

BatchLabel ReadLabel(const JsonFields& fields) {
  BatchLabel label;
  label.name = fields.NeededText("name");
  label.role = fields.Text("role");
  label.brand = fields.Text("brand");
  label.colour = fields.Text("colour");
  label.mix = fields.Text("mix");
  label.volume_ml = fields.Number("volume_ml");
  label.water_ml = fields.Number("water_ml");
  label.water_share = fields.Number("water_share");
  if (label.water_share &&
      !(*label.water_share >= 0.0 && *label.water_share <= 1.0)) {
    fields.RefuseValue("water_share", "must lie between 0 and 1");
  }
  label.target = fields.Number("target");
  label.thinner = fields.Text("thinner");
  if (!label.thinner.empty() &&
      label.thinner != ThinnerKindName(ThinnerKind::kWater) &&
      label.thinner != ThinnerKindName(ThinnerKind::kAdditive) &&
      label.thinner != ThinnerKindName(ThinnerKind::kMedium)) {
    fields.RefuseValue("thinner", "must be water, additive or medium");
  }
  label.mixed_on = ReadDay(fields, "mixed_on");
  if (const auto ratio = fields.Object("ratio")) {
    label.ratio = Span{ratio->NeededNumber("low"),
                       ratio->NeededNumber("value"),
                       ratio->NeededNumber("high")};
  }
  label.base_on = ReadDay(fields, "base_on");
  label.temperature_c = fields.Number("temperature_c");
  label.hazard = fields.Text("hazard");
  label.code =
      LabelDocument(label).dump(-1, ' ', true, Json::error_handler_t::replace);
  return label;
}

}  // namespace

Result<std::vector<BatchLabel>> ReadLabels(const std::string& path,
                                           std::istream& fallback) {
  return ReadDocument(path, fallback, kFormat, 1, [](const JsonFields& fields) {
    std::vector<BatchLabel> labels;
    if (fields.Has("labels")) {
      for (const JsonFields& label : fields.Objects("labels")) {
        labels.push_back(ReadLabel(label));
      }
    } else {
      labels.push_back(ReadLabel(fields));
    }
    return labels;
  });
}

Json LabelDocument(const BatchLabel& label) {
  Json document;
  document["format"] = kFormat;
  document["version"] = 1;
  document["name"] = label.name;
  const auto text = [&](const char* name, const std::string& value) {
    if (!value.empty()) document[name] = value;
  };
  const auto number = [&](const char* name,
                          const std::optional<double>& value) {
    if (value) document[name] = JsonNumber(*value, 4);
  };
  text("role", label.role);
  text("brand", label.brand);
  text("colour", label.colour);
  text("mix", label.mix);
  number("volume_ml", label.volume_ml);
  number("water_ml", label.water_ml);
  number("water_share", label.water_share);
  number("target", label.target);
  text("thinner", label.thinner);
  text("mixed_on", label.mixed_on);
  if (label.ratio) {
    document["ratio"] = {{"value", JsonNumber(label.ratio->start, 3)},
                         {"low", JsonNumber(label.ratio->low, 3)},
                         {"high", JsonNumber(label.ratio->high, 3)}};
  }
  text("base_on", label.base_on);
  number("temperature_c", label.temperature_c);
  text("hazard", label.hazard);
  return document;
}

}  // namespace flowkin
