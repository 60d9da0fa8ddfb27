#pragma once

#include <istream>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "app/usecases/json_value.h"
#include "core/base/result.h"

namespace flowkin {

/// Thrown while a document is read; caught by ReadDocument.
struct BadDocument {
  Error error;
};

/// Fields of one JSON object, read with one clear sentence for everything that
/// is wrong: kUnreadable for a missing field or another type, kInvalidArgument
/// for a value out of range. Unknown fields are left alone; null counts as
/// missing. Every member throws BadDocument.
class JsonFields {
 public:
  /// @param where  path of the object for messages, as "colours[2]."
  JsonFields(const Json& object, std::string where);

  bool Has(const char* name) const;
  bool IsObject(const char* name) const;
  std::optional<double> Number(const char* name) const;
  double Number(const char* name, double fallback) const;
  double NeededNumber(const char* name) const;
  std::optional<int> Whole(const char* name) const;
  std::optional<bool> Flag(const char* name) const;
  /// Empty where it is missing. UTF-8 without control characters, at most 2000
  /// bytes.
  std::string Text(const char* name) const;
  std::string NeededText(const char* name) const;
  std::optional<JsonFields> Object(const char* name) const;
  std::vector<JsonFields> Objects(const char* name) const;
  std::vector<std::string> Texts(const char* name) const;

  [[noreturn]] void RefuseValue(const char* name, const std::string& why) const;

 private:
  const Json* Find(const char* name) const;
  [[noreturn]] void RefuseForm(const char* name, const std::string& why) const;

  const Json* object_;
  std::string where_;
};

/// Reads one whole document of `format` and `version` from `path`, or from
/// `fallback` where it is empty, and hands its fields to `read`. A document may
/// leave the two out; another format or a newer version is kUnreadable.
template <typename Read>
auto ReadDocument(const std::string& path,
                  std::istream& fallback,
                  const char* format,
                  int version,
                  const Read& read)
    -> Result<decltype(read(std::declval<const JsonFields&>()))>;

/// The document itself, parsed.
Result<Json> ParseDocument(const std::string& path, std::istream& fallback);
void CheckFormat(const JsonFields& fields, const char* format, int version);

template <typename Read>
auto ReadDocument(const std::string& path,
                  std::istream& fallback,
                  const char* format,
                  int version,
                  const Read& read)
    -> Result<decltype(read(std::declval<const JsonFields&>()))> {
  const Result<Json> document = ParseDocument(path, fallback);
  if (!document) return document.error();
  try {
    const JsonFields fields(*document, "");
    CheckFormat(fields, format, version);
    return read(fields);
  } catch (const BadDocument& bad) {
    return bad.error;
  }
}

}  // namespace flowkin
