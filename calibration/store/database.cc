#include "calibration/store/database.h"

#include <sqlite3.h>

#include <array>
#include <filesystem>
#include <system_error>

#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr int kApplicationId = 0x666c776b;  // "flwk", marks the file as ours
constexpr int kBusyWait_ms = 10000;

// Format 1. Never changed again: tests/data/store holds a file of it.
constexpr const char* kFormat1 = R"sql(
CREATE TABLE cup(
  id INTEGER PRIMARY KEY,
  identity TEXT NOT NULL UNIQUE,
  brand TEXT NOT NULL,
  colour TEXT NOT NULL,
  batch TEXT NOT NULL,
  volume_ml REAL NOT NULL,
  thinner TEXT NOT NULL,
  thinner_ln_ratio REAL,
  thinner_ln_ratio_sd REAL,
  common_rel_sd REAL NOT NULL,
  learned_utc TEXT NOT NULL,
  continues INTEGER REFERENCES cup(id));
CREATE TABLE test(
  cup INTEGER NOT NULL REFERENCES cup(id),
  ordinal INTEGER NOT NULL,
  added_ml REAL NOT NULL,
  ratio REAL NOT NULL,
  rel_sd REAL NOT NULL,
  PRIMARY KEY(cup, ordinal)) WITHOUT ROWID;
CREATE TABLE forgetting(
  id INTEGER PRIMARY KEY,
  brand TEXT NOT NULL,
  colour TEXT,
  last_cup INTEGER NOT NULL,
  at_utc TEXT NOT NULL,
  undone_utc TEXT);
CREATE INDEX cup_by_brand ON cup(brand, id);
CREATE INDEX cup_by_continues ON cup(continues) WHERE continues IS NOT NULL;
CREATE INDEX forgetting_by_brand ON forgetting(brand);
)sql";

// Format 2 keeps what was worked out from the log.
constexpr const char* kFormat2 = R"sql(
CREATE TABLE summary(
  brand TEXT PRIMARY KEY,
  engine INTEGER NOT NULL,
  ln_slope REAL NOT NULL,
  ln_slope_sd REAL NOT NULL) WITHOUT ROWID;
)sql";

// Format 3 keeps days at the bench: every entry of every session, as text that
// entry_text.h reads. `closed` follows the entries, for the list of sessions.
constexpr const char* kFormat3 = R"sql(
CREATE TABLE session(
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  begun_utc TEXT NOT NULL,
  closed INTEGER NOT NULL DEFAULT 0);
CREATE TABLE session_entry(
  id INTEGER PRIMARY KEY,
  session INTEGER NOT NULL REFERENCES session(id),
  number INTEGER NOT NULL,
  at_utc TEXT NOT NULL,
  kind TEXT NOT NULL,
  body TEXT NOT NULL,
  UNIQUE(session, number));
)sql";

// Format 4 can search the journal: one row per session, its name and every
// word she wrote in it; session_store.cc adds to it with each entry.
constexpr const char* kFormat4 = R"sql(
CREATE VIRTUAL TABLE journal_text USING fts5(
  text, tokenize = "unicode61 remove_diacritics 2", prefix = '2 3');
INSERT INTO journal_text(rowid, text)
  SELECT id, name || ' ' || coalesce((
    SELECT group_concat(
      coalesce(json_extract(body, '$.cup.label'), '') || ' ' ||
      coalesce(json_extract(body, '$.cup.brand'), '') || ' ' ||
      coalesce(json_extract(body, '$.cup.colour'), '') || ' ' ||
      coalesce(json_extract(body, '$.text'), ''), ' ')
    FROM session_entry
    WHERE session = session.id AND kind IN ('cup_added', 'note_taken')
      AND json_valid(body)), '')
  FROM session;
CREATE INDEX session_entry_by_kind ON session_entry(kind, session);
)sql";

// Format 5 keeps jars that are left over and her own amounts by technique, both
// as logs, and searches no more for what was taken back.
constexpr const char* kFormat5 = R"sql(
CREATE TABLE jar(
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  role TEXT NOT NULL,
  volume_ml REAL NOT NULL,
  mixed_on TEXT NOT NULL,
  watered INTEGER NOT NULL,
  at_utc TEXT NOT NULL);
CREATE TABLE jar_use(
  id INTEGER PRIMARY KEY,
  jar INTEGER NOT NULL REFERENCES jar(id),
  taken_ml REAL NOT NULL,
  at_utc TEXT NOT NULL);
CREATE INDEX jar_use_by_jar ON jar_use(jar);
CREATE TABLE technique(
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  what TEXT NOT NULL,
  base_low REAL NOT NULL, base REAL NOT NULL, base_high REAL NOT NULL,
  colours_low REAL NOT NULL, colours REAL NOT NULL, colours_high REAL NOT NULL,
  activator_low REAL NOT NULL, activator REAL NOT NULL,
  activator_high REAL NOT NULL,
  dropped INTEGER NOT NULL,
  at_utc TEXT NOT NULL);
INSERT OR REPLACE INTO journal_text(rowid, text)
  SELECT id, name || ' ' || coalesce((
    SELECT group_concat(
      coalesce(json_extract(body, '$.cup.label'), '') || ' ' ||
      coalesce(json_extract(body, '$.cup.brand'), '') || ' ' ||
      coalesce(json_extract(body, '$.cup.colour'), '') || ' ' ||
      coalesce(json_extract(body, '$.details.label'), '') || ' ' ||
      coalesce(json_extract(body, '$.details.brand'), '') || ' ' ||
      coalesce(json_extract(body, '$.details.colour'), '') || ' ' ||
      coalesce(json_extract(body, '$.technique'), '') || ' ' ||
      coalesce(json_extract(body, '$.fault'), '') || ' ' ||
      coalesce(json_extract(body, '$.verdict'), '') || ' ' ||
      coalesce(json_extract(body, '$.text'), ''), ' ')
    FROM session_entry AS e
    WHERE session = day.id AND kind IN ('cup_added', 'cup_changed',
        'note_taken', 'pour_made', 'photo_taken', 'fault_seen', 'pour_judged')
      AND json_valid(body) AND 'undone' IS NOT (
        SELECT kind FROM session_entry AS turn
        WHERE turn.session = e.session AND turn.kind IN ('undone', 'redone')
          AND CASE WHEN json_valid(turn.body)
            THEN json_extract(turn.body, '$.entry') END = e.number
        ORDER BY turn.number DESC LIMIT 1)), '')
  FROM session AS day
  WHERE EXISTS(SELECT 1 FROM session_entry
    WHERE session = day.id AND kind = 'undone');
)sql";

constexpr std::array<const char*, Database::kFormatVersion> kMigrations = {
    kFormat1, kFormat2, kFormat3, kFormat4, kFormat5};

}  // namespace

Error StoreFailure(int code, const std::string& path) {
  const std::string book = "The brand book '" + path + "' ";
  switch (code & 0xff) {
    case SQLITE_NOTADB:
    case SQLITE_CORRUPT:
      return {ErrorCode::kUnreadable,
              book +
                  "is damaged or no brand book; restore a backup or choose "
                  "another file."};
    case SQLITE_CANTOPEN:
      return {ErrorCode::kUnreadable,
              book +
                  "cannot be opened; check its name and the rights of its "
                  "folder."};
    case SQLITE_PERM:
    case SQLITE_READONLY:
      return {ErrorCode::kInternal,
              book +
                  "cannot be written; check the rights of the file and its "
                  "folder."};
    case SQLITE_FULL:
      return {ErrorCode::kInternal,
              "The disk is full and nothing was changed in '" + path +
                  "'; make room and try again."};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return {ErrorCode::kInternal,
              book +
                  "is in use by another program; try again when that has "
                  "finished."};
    case SQLITE_IOERR:
      return {ErrorCode::kInternal,
              book +
                  "could not be read or written and nothing was changed; "
                  "check the disk and try again."};
    case SQLITE_NOMEM:
      return {ErrorCode::kInternal,
              "There is not enough memory; close other programs and try "
              "again."};
    default:
      return {ErrorCode::kInternal,
              book + "gave an unforeseen error (" + sqlite3_errstr(code) +
                  "); please report it."};
  }
}

Statement::Statement(sqlite3* database, const std::string& sql)
    : code_(sqlite3_prepare_v2(database,
                               sql.c_str(),
                               static_cast<int>(sql.size()),
                               &statement_,
                               nullptr)) {}

Statement::~Statement() { sqlite3_finalize(statement_); }

Statement& Statement::Bind(const std::string& text) {
  ++next_;
  Check(sqlite3_bind_text(statement_,
                          next_,
                          text.data(),
                          static_cast<int>(text.size()),
                          SQLITE_TRANSIENT));
  return *this;
}

Statement& Statement::Bind(double number) {
  ++next_;
  Check(sqlite3_bind_double(statement_, next_, number));
  return *this;
}

Statement& Statement::Bind(std::int64_t number) {
  ++next_;
  Check(sqlite3_bind_int64(statement_, next_, number));
  return *this;
}

Statement& Statement::BindNull() {
  ++next_;
  Check(sqlite3_bind_null(statement_, next_));
  return *this;
}

bool Statement::Step() {
  if (code_ != SQLITE_OK) return false;
  const int result = sqlite3_step(statement_);
  if (result == SQLITE_ROW) return true;
  if (result != SQLITE_DONE) code_ = result;
  return false;
}

void Statement::Reset() {
  sqlite3_reset(statement_);
  next_ = 0;
}

std::string Statement::Text(int column) const {
  const auto* text =
      reinterpret_cast<const char*>(sqlite3_column_text(statement_, column));
  const int size = sqlite3_column_bytes(statement_, column);
  return text == nullptr ? std::string()
                         : std::string(text, static_cast<std::size_t>(size));
}

double Statement::Number(int column) const {
  return sqlite3_column_double(statement_, column);
}

std::int64_t Statement::Integer(int column) const {
  return sqlite3_column_int64(statement_, column);
}

bool Statement::IsNull(int column) const {
  return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}

void Statement::Check(int code) {
  if (code_ == SQLITE_OK) code_ = code;
}

Database::~Database() {
  Rollback();
  sqlite3_close_v2(connection_);
}

int Database::Run(const char* sql) const {
  return sqlite3_exec(connection_, sql, nullptr, nullptr, nullptr);
}

Result<void> Database::Do(Statement& statement) const {
  statement.Step();
  if (statement.code() != SQLITE_OK) return Fail(statement.code());
  return {};
}

Result<int> Database::Pragma(const char* sql) const {
  Statement statement(connection_, sql);
  if (!statement.Step()) {
    return Fail(statement.code() == SQLITE_OK ? SQLITE_CORRUPT
                                              : statement.code());
  }
  return static_cast<int>(statement.Integer(0));
}

Result<int> Database::CheckOurs(bool write) const {
  const Result<int> id = Pragma("PRAGMA application_id");
  if (!id) return id.error();
  const Result<int> version = Pragma("PRAGMA user_version");
  if (!version) return version.error();
  if (*id != kApplicationId) {
    Statement any(connection_, "SELECT count(*) FROM sqlite_schema");
    if (!any.Step()) return Fail(any.code());
    if (any.Integer(0) != 0 || *version != 0 || !write) {
      return Error{
          ErrorCode::kUnreadable,
          "'" + path_ + "' is no brand book of flowkin; choose another file."};
    }
  }
  if (*version > kFormatVersion) {
    return Error{ErrorCode::kUnreadable,
                 "The brand book '" + path_ +
                     "' was written by a newer flowkin; update this one."};
  }
  return *version;
}

Result<void> Database::Open(const std::string& path, Access access) {
  FLOWKIN_CHECK(connection_ == nullptr);
  const bool write = access == Access::kWrite;
  path_ = path;
  if (path.empty()) {
    return Error{ErrorCode::kInvalidArgument,
                 "There is no place for the brand book; name one with "
                 "--store."};
  }
  std::error_code ignored;
  const std::filesystem::path folder =
      std::filesystem::path(path).parent_path();
  if (write && !folder.empty()) {
    std::filesystem::create_directories(folder, ignored);
  }
  if (std::filesystem::is_directory(path, ignored)) {
    return Error{ErrorCode::kUnreadable,
                 "'" + path + "' is a folder; name a file for the brand book."};
  }
  // A reader may have to undo what a power cut left half written, so it asks
  // for the right to write too; SQLite does without where there is none.
  const int flags = SQLITE_OPEN_READWRITE | (write ? SQLITE_OPEN_CREATE : 0);
  int code =
      sqlite3_open_v2(path.c_str(),
                      &connection_,
                      flags | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOMUTEX,
                      nullptr);
  if (code != SQLITE_OK) return Fail(code);
  sqlite3_busy_timeout(connection_, kBusyWait_ms);
  // EXTRA also syncs the folder when the journal goes, so that a confirmed
  // entry outlives a power cut.
  code =
      Run("PRAGMA synchronous=EXTRA; PRAGMA foreign_keys=ON;"
          "PRAGMA trusted_schema=OFF");
  if (code != SQLITE_OK) return Fail(code);

  // One look: another program may be setting the file up just now.
  code = Run("BEGIN");
  if (code != SQLITE_OK) return Fail(code);
  Result<int> version = CheckOurs(write);
  Run("ROLLBACK");
  if (!version) return version.error();
  format_version_ = *version;
  if (!write || *version == kFormatVersion) return {};
  code = Run("BEGIN IMMEDIATE");
  if (code != SQLITE_OK) return Fail(code);
  // Another program may have been faster.
  version = CheckOurs(write);
  if (!version) {
    Run("ROLLBACK");
    return version.error();
  }
  for (int v = *version; v < kFormatVersion; ++v) {
    code = Run(kMigrations[static_cast<std::size_t>(v)]);
    if (code != SQLITE_OK) break;
  }
  const std::string stamp =
      "PRAGMA application_id=" + std::to_string(kApplicationId) +
      "; PRAGMA user_version=" + std::to_string(kFormatVersion) + "; COMMIT";
  if (code == SQLITE_OK) code = Run(stamp.c_str());
  if (code != SQLITE_OK) {
    Run("ROLLBACK");
    return Fail(code);
  }
  format_version_ = kFormatVersion;
  return {};
}

Result<void> Database::Begin() {
  const int code = Run("BEGIN IMMEDIATE");
  if (code != SQLITE_OK) return Fail(code);
  in_transaction_ = true;
  return {};
}

Result<void> Database::Commit() {
  const int code = Run("COMMIT");
  if (code != SQLITE_OK) {
    Rollback();
    return Fail(code);
  }
  in_transaction_ = false;
  return {};
}

void Database::Rollback() {
  if (!in_transaction_) return;
  Run("ROLLBACK");
  in_transaction_ = false;
}

}  // namespace flowkin
