#include "app/usecases/json_fields.h"

#include <cmath>
#include <fstream>
#include <limits>
#include <utility>

#include "app/usecases/read_file.h"

namespace flowkin {
namespace {

constexpr std::size_t kLongestText = 2000;

}  // namespace

JsonFields::JsonFields(const Json& object, std::string where)
    : object_(&object), where_(std::move(where)) {
  if (!object.is_object()) {
    std::string name = where_.empty() ? "the document" : where_;
    if (name.back() == '.') name.pop_back();
    throw BadDocument{
        {ErrorCode::kUnreadable,
         "The document cannot be used: " + name + " must be an object."}};
  }
}

const Json* JsonFields::Find(const char* name) const {
  const auto found = object_->find(name);
  if (found == object_->end() || found->is_null()) return nullptr;
  return &*found;
}

void JsonFields::RefuseForm(const char* name, const std::string& why) const {
  throw BadDocument{
      {ErrorCode::kUnreadable,
       "The document cannot be used: " + where_ + name + " " + why + "."}};
}

void JsonFields::RefuseValue(const char* name, const std::string& why) const {
  throw BadDocument{
      {ErrorCode::kInvalidArgument, where_ + name + " " + why + "."}};
}

bool JsonFields::Has(const char* name) const { return Find(name) != nullptr; }

bool JsonFields::IsObject(const char* name) const {
  const Json* field = Find(name);
  return field != nullptr && field->is_object();
}

std::optional<double> JsonFields::Number(const char* name) const {
  const Json* field = Find(name);
  if (field == nullptr) return std::nullopt;
  if (!field->is_number()) RefuseForm(name, "must be a number");
  return field->get<double>();
}

double JsonFields::Number(const char* name, double fallback) const {
  return Number(name).value_or(fallback);
}

double JsonFields::NeededNumber(const char* name) const {
  const std::optional<double> number = Number(name);
  if (!number) RefuseForm(name, "is missing");
  return *number;
}

std::optional<int> JsonFields::Whole(const char* name) const {
  const std::optional<double> number = Number(name);
  if (!number) return std::nullopt;
  if (!(std::fabs(*number) <= std::numeric_limits<int>::max()) ||
      *number != std::floor(*number)) {
    RefuseValue(name, "must be a whole number");
  }
  return static_cast<int>(*number);
}

std::optional<bool> JsonFields::Flag(const char* name) const {
  const Json* field = Find(name);
  if (field == nullptr) return std::nullopt;
  if (!field->is_boolean()) RefuseForm(name, "must be true or false");
  return field->get<bool>();
}

std::string JsonFields::Text(const char* name) const {
  const Json* field = Find(name);
  if (field == nullptr) return {};
  if (!field->is_string()) RefuseForm(name, "must be text");
  std::string text = field->get<std::string>();
  if (text.size() > kLongestText) RefuseValue(name, "is too long");
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if ((byte < 0x20 && c != '\n' && c != '\t') || byte == 0x7f) {
      RefuseValue(name, "must not hold control characters");
    }
  }
  return text;
}

std::string JsonFields::NeededText(const char* name) const {
  std::string text = Text(name);
  if (text.empty()) RefuseForm(name, "is missing");
  return text;
}

std::optional<JsonFields> JsonFields::Object(const char* name) const {
  const Json* field = Find(name);
  if (field == nullptr) return std::nullopt;
  return JsonFields(*field, where_ + name + ".");
}

std::vector<JsonFields> JsonFields::Objects(const char* name) const {
  const Json* field = Find(name);
  std::vector<JsonFields> objects;
  if (field == nullptr) return objects;
  if (!field->is_array()) RefuseForm(name, "must be a list");
  for (std::size_t i = 0; i < field->size(); ++i) {
    objects.emplace_back((*field)[i],
                         where_ + name + "[" + std::to_string(i) + "].");
  }
  return objects;
}

std::vector<std::string> JsonFields::Texts(const char* name) const {
  const Json* field = Find(name);
  std::vector<std::string> texts;
  if (field == nullptr) return texts;
  if (!field->is_array()) RefuseForm(name, "must be a list");
  for (const Json& text : *field) {
    if (!text.is_string()) RefuseForm(name, "must hold texts");
    texts.push_back(text.get<std::string>());
  }
  return texts;
}

Result<Json> ParseDocument(const std::string& path, std::istream& fallback) {
  try {
    if (path.empty()) return Json::parse(fallback);
    Result<std::ifstream> file = OpenToRead(path);
    if (!file) return file.error();
    return Json::parse(*file);
  } catch (const nlohmann::json::exception&) {
    return Error{
        ErrorCode::kUnreadable,
        (path.empty() ? std::string("Standard input") : "'" + path + "'") +
            " is no JSON document."};
  }
}

void CheckFormat(const JsonFields& fields, const char* format, int version) {
  const std::string found = fields.Text("format");
  if (!found.empty() && found != format) {
    throw BadDocument{{ErrorCode::kUnreadable,
                       "This is a '" + found + "' document, but '" + format +
                           "' is needed."}};
  }
  if (fields.Number("version", version) > version) {
    throw BadDocument{
        {ErrorCode::kUnreadable,
         "This document is of a newer version; bring flowkin up to date."}};
  }
}

}  // namespace flowkin
