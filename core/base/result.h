#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "core/base/check.h"

namespace flowkin {

/// What went wrong; the command line turns it into an exit status
/// (app/cli). Weak evidence is not an Error but a refusal inside a result.
enum class ErrorCode {
  kInvalidArgument,  ///< an option or value is out of range (exit 2)
  kUnreadable,       ///< input missing, damaged or of a foreign kind (exit 4)
  kRefused,          ///< read, but not enough for an honest answer (exit 3)
  kInternal,         ///< anything else (exit 1)
};

/// `message` is one sentence for the person at the bench: what is wrong and
/// what to do about it.
struct Error {
  ErrorCode code = ErrorCode::kInternal;
  std::string message;
};

/// A value or an Error, with the names of std::expected (C++23).
template <typename T>
class [[nodiscard]] Result {
 public:
  Result(T value) : state_(std::move(value)) {}      // NOLINT
  Result(Error error) : state_(std::move(error)) {}  // NOLINT

  bool has_value() const { return std::holds_alternative<T>(state_); }
  explicit operator bool() const { return has_value(); }

  T& value() & {
    FLOWKIN_CHECK(has_value());
    return std::get<T>(state_);
  }
  const T& value() const& {
    FLOWKIN_CHECK(has_value());
    return std::get<T>(state_);
  }
  T&& value() && {
    FLOWKIN_CHECK(has_value());
    return std::get<T>(std::move(state_));
  }
  T& operator*() & { return value(); }
  const T& operator*() const& { return value(); }
  T&& operator*() && { return std::move(*this).value(); }
  T* operator->() { return &value(); }
  const T* operator->() const { return &value(); }

  const Error& error() const {
    FLOWKIN_CHECK(!has_value());
    return std::get<Error>(state_);
  }

 private:
  std::variant<T, Error> state_;
};

/// Success or an Error.
template <>
class [[nodiscard]] Result<void> {
 public:
  Result() = default;
  Result(Error error) : error_(std::move(error)) {}  // NOLINT

  bool has_value() const { return !error_.has_value(); }
  explicit operator bool() const { return has_value(); }
  const Error& error() const {
    FLOWKIN_CHECK(error_.has_value());
    return *error_;
  }

 private:
  std::optional<Error> error_;
};

}  // namespace flowkin
