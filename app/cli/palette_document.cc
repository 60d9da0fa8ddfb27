#include "app/cli/palette_document.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <utility>

namespace flowkin {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

constexpr int kVersion = 1;
constexpr double kMaxCupMl = 100000.0;

/// Thrown and caught inside this file only.
struct NotAPalette {
  std::string what;
};

const json& Field(const json& object, const char* name) {
  const auto found = object.find(name);
  if (found == object.end()) {
    throw NotAPalette{std::string("the field '") + name + "' is missing"};
  }
  return *found;
}

double Number(const json& object, const char* name) {
  const json& field = Field(object, name);
  if (!field.is_number()) {
    throw NotAPalette{std::string("'") + name + "' is not a number"};
  }
  return field.get<double>();
}

std::optional<double> OptionalNumber(const json& object, const char* name) {
  if (!object.contains(name) || object[name].is_null()) return std::nullopt;
  return Number(object, name);
}

std::string Text(const json& object, const char* name) {
  const json& field = Field(object, name);
  if (!field.is_string()) {
    throw NotAPalette{std::string("'") + name + "' is not a text"};
  }
  return field.get<std::string>();
}

const json& List(const json& object, const char* name) {
  const json& field = Field(object, name);
  if (!field.is_array() || field.empty()) {
    throw NotAPalette{std::string("'") + name + "' is not a filled list"};
  }
  return field;
}

std::vector<std::string> Clips(const json& object, const fs::path& folder) {
  std::vector<std::string> clips;
  for (const json& clip : List(object, "clips")) {
    clips.push_back((folder / Text(clip, "file")).string());
  }
  return clips;
}

TestKind Kind(const std::string& name) {
  for (const TestKind kind :
       {TestKind::kStream, TestKind::kLevel, TestKind::kPuddle}) {
    if (name == TestKindName(kind)) return kind;
  }
  throw NotAPalette{"'" + name + "' is no test"};
}

std::vector<PaletteSet> Parse(const json& document, const fs::path& folder) {
  if (!document.is_object() || Text(document, "format") != "flowkin-palette") {
    throw NotAPalette{"its format is not 'flowkin-palette'"};
  }
  if (Number(document, "version") != kVersion) {
    throw NotAPalette{"its version is not 1"};
  }
  std::vector<PaletteSet> sets;
  for (const json& entry : List(document, "sets")) {
    PaletteSet set;
    set.clip.test.kind = Kind(Text(entry, "test"));
    set.clip.test.volume_ml = OptionalNumber(entry, "laid_volume_ml");
    set.clip.test.mm_per_px = OptionalNumber(entry, "mm_per_px");
    set.clip.shot_fps = OptionalNumber(entry, "shot_fps");
    const json& base = Field(entry, "base_coat");
    set.base_name = Text(base, "name");
    set.base_clips = Clips(base, folder);
    for (const json& item : List(entry, "cups")) {
      PaletteCup cup;
      cup.name = Text(item, "name");
      cup.volume_ml = Number(item, "volume_ml");
      cup.target = OptionalNumber(item, "target").value_or(1.0);
      cup.clips = Clips(item, folder);
      set.cups.push_back(std::move(cup));
    }
    sets.push_back(std::move(set));
  }
  return sets;
}

}  // namespace

Result<std::vector<PaletteSet>> ReadPalette(const std::string& path) {
  const auto unreadable = [&path](const std::string& what) {
    return Error{ErrorCode::kUnreadable,
                 "The palette file '" + path + "' cannot be used: " + what +
                     "; see README.md for its form."};
  };
  std::error_code ignored;
  std::ifstream in(path, std::ios::binary);
  if (!in || fs::is_directory(path, ignored)) {
    return unreadable("there is no such file");
  }
  std::vector<PaletteSet> sets;
  try {
    sets = Parse(json::parse(in), fs::path(path).parent_path());
  } catch (const json::exception&) {
    return unreadable("it is not JSON of the right form");
  } catch (const NotAPalette& wrong) {
    return unreadable(wrong.what);
  }
  for (const PaletteSet& set : sets) {
    for (const PaletteCup& cup : set.cups) {
      if (!(cup.volume_ml > 0.0 && cup.volume_ml <= kMaxCupMl)) {
        return Error{ErrorCode::kInvalidArgument,
                     "The volume of cup '" + cup.name +
                         "' must lie above 0 and not above 100000 mL; correct "
                         "it in '" +
                         path + "'."};
      }
    }
  }
  return sets;
}

}  // namespace flowkin
