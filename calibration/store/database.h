#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/base/result.h"

struct sqlite3;
struct sqlite3_stmt;

namespace flowkin {

/// What a failed SQLite call means for the person at the bench.
Error StoreFailure(int code, const std::string& path);

/// A prepared statement; reset and finalised by scope.
class Statement {
 public:
  Statement(sqlite3* database, const std::string& sql);
  ~Statement();
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;

  // Binds the next parameter.
  Statement& Bind(const std::string& text);
  Statement& Bind(double number);
  Statement& Bind(std::int64_t number);
  template <typename T>
  Statement& Bind(const std::optional<T>& value) {
    return value ? Bind(*value) : BindNull();
  }

  /// True while there is a row; false at the end or after a failure (code()).
  bool Step();
  void Reset();
  int code() const { return code_; }

  std::string Text(int column) const;
  double Number(int column) const;
  std::int64_t Integer(int column) const;
  bool IsNull(int column) const;

 private:
  Statement& BindNull();
  void Check(int code);

  sqlite3_stmt* statement_ = nullptr;
  int code_;
  int next_ = 0;
};

/// One connection to the store's file: opening, bringing an older format up to
/// date, transactions. Not for several threads at once.
class Database {
 public:
  enum class Access { kRead, kWrite };

  /// Version of the file format written by this program.
  static constexpr int kFormatVersion = 5;

  Database() = default;
  ~Database();
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;

  /// As CalibrationStore::Open. Call once.
  Result<void> Open(const std::string& path, Access access);

  sqlite3* connection() const { return connection_; }
  /// Of the file as it was opened; older than ours only where it is read.
  int format_version() const { return format_version_; }
  const std::string& path() const { return path_; }

  Result<void> Begin();
  Result<void> Commit();
  /// Undoes everything since Begin(); nothing if there is none.
  void Rollback();

  /// The only number a pragma gives.
  Result<int> Pragma(const char* sql) const;
  Error Fail(int code) const { return StoreFailure(code, path_); }
  /// Runs a statement that gives no rows.
  Result<void> Do(Statement& statement) const;

 private:
  int Run(const char* sql) const;
  Result<int> CheckOurs(bool write) const;

  std::string path_;
  sqlite3* connection_ = nullptr;
  int format_version_ = 0;
  bool in_transaction_ = false;
};

}  // namespace flowkin
