#include "app/cli/terminal.h"

#include <cstdio>
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

ExitStatus Fail(Terminal& terminal, bool json, const Error& error) {
  if (json && error.code == ErrorCode::kRefused) {
    Json document;
    document["outcome"] = "refused";
    document["reason"] = error.message;
    PrintDocument(terminal, document);
  }
  return Fail(terminal, error);
}

void Warn(Terminal& terminal, const std::string& message) {
  terminal.err << "flowkin: warning: " << Sentence(message) << '\n';
}

}  // namespace flowkin
