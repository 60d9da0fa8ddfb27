#pragma once

#include <iosfwd>
#include <string>

#include "app/usecases/json_value.h"
#include "core/base/result.h"

namespace flowkin {

/// What the program says when it ends. The numbers are part of the contract
/// with other programs and never change.
enum class ExitStatus {
  kDone = 0,
  kFailed = 1,      ///< anything else
  kWrongUse = 2,    ///< unknown option, value out of range
  kRefused = 3,     ///< read, but not enough for an honest answer
  kUnreadable = 4,  ///< missing, damaged, or of a foreign kind
};

ExitStatus ExitStatusOf(ErrorCode code);

/// Where a command reads and writes. `out` carries the answer only: with
/// --json exactly one document. Progress, hints and warnings go to `err`.
struct Terminal {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
  bool err_is_terminal = false;
};

/// `value` with `digits` significant digits, without an exponent where the
/// number is of everyday size.
std::string Digits(double value, int digits);
/// `value` with `decimals` places.
std::string Fixed(double value, int decimals);

/// Writes one document and a line end. Bytes that are no UTF-8 (a file name
/// can hold any) are replaced, never dropped silently.
void PrintDocument(Terminal& terminal, const Json& document);

/// Writes "flowkin: MESSAGE" as one line on `err` and returns `status`.
ExitStatus Fail(Terminal& terminal, ExitStatus status, std::string message);
ExitStatus Fail(Terminal& terminal, const Error& error);
/// The same for a command that may have been asked for a document: a refusal
/// then prints one with its reason.
ExitStatus Fail(Terminal& terminal, bool json, const Error& error);

/// Writes "flowkin: warning: MESSAGE" as one line on `err`.
void Warn(Terminal& terminal, const std::string& message);

}  // namespace flowkin
