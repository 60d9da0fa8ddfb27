#include "app/cli/terminal.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ostream>
#include <utility>

namespace flowkin {
namespace {

/// A message as one line that reads as a sentence, whatever a file name holds.
std::string Sentence(std::string text) {
  for (char& c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x20 || byte == 0x7f) c = ' ';
  }
  while (!text.empty() && text.back() == ' ') text.pop_back();
  if (text.empty()) return text;
  if (text.back() != '.' && text.back() != '!' && text.back() != '?') {
    text += '.';
  }
  return text;
}

}  // namespace

ExitStatus ExitStatusOf(ErrorCode code) {
  switch (code) {
    case ErrorCode::kInvalidArgument:
      return ExitStatus::kWrongUse;
    case ErrorCode::kUnreadable:
      return ExitStatus::kUnreadable;
    case ErrorCode::kRefused:
      return ExitStatus::kRefused;
    case ErrorCode::kInternal:
      break;
  }
  return ExitStatus::kFailed;
}

Json JsonNumber(double value, int digits) {
  if (!std::isfinite(value)) return nullptr;
  char text[64];
  std::snprintf(text, sizeof(text), "%.*g", digits, value);
  return std::strtod(text, nullptr);
}

Json JsonNumber(const std::optional<double>& value, int digits) {
  return value ? JsonNumber(*value, digits) : Json(nullptr);
}

Json IntervalDocument(double value, const Interval& interval) {
  Json document;
  document["value"] = JsonNumber(value, 4);
  document["low"] = JsonNumber(interval.low, 4);
  document["high"] = JsonNumber(interval.high, 4);
  document["level"] = interval.level;
  return document;
}

std::string Digits(double value, int digits) {
  char text[64];
  std::snprintf(text, sizeof(text), "%.*g", digits, value);
  return text;
}

std::string Fixed(double value, int decimals) {
  char text[400];
  std::snprintf(text, sizeof(text), "%.*f", decimals, value);
  return text;
}

void PrintDocument(Terminal& terminal, const Json& document) {
  terminal.out << document.dump(2, ' ', false, Json::error_handler_t::replace)
               << '\n';
}

ExitStatus Fail(Terminal& terminal, ExitStatus status, std::string message) {
  terminal.err << "flowkin: " << Sentence(std::move(message)) << '\n';
  return status;
}

ExitStatus Fail(Terminal& terminal, const Error& error) {
  return Fail(terminal, ExitStatusOf(error.code), error.message);
}

void Warn(Terminal& terminal, const std::string& message) {
  terminal.err << "flowkin: warning: " << Sentence(message) << '\n';
}

}  // namespace flowkin
