#include "calibration/store/session_store.h"

#include <sqlite3.h>

#include <utility>

#include "calibration/store/entry_text.h"

namespace flowkin {
namespace {

constexpr int kFirstWithSessions = 3;

Error DamagedTime() {
  return {ErrorCode::kUnreadable,
          "A time in the brand book is damaged; restore a backup of it."};
}

Error NoSession() {
  return {ErrorCode::kInvalidArgument,
          "There is no such session; look at the list of sessions."};
}

}  // namespace

struct SessionStore::Impl {
  Database database;
  bool has_sessions = true;
};

SessionStore::SessionStore(std::unique_ptr<Impl> impl)
    : impl_(std::move(impl)) {}
SessionStore::SessionStore(SessionStore&&) noexcept = default;
SessionStore& SessionStore::operator=(SessionStore&&) noexcept = default;
SessionStore::~SessionStore() = default;

Result<SessionStore> SessionStore::Open(const std::string& path,
                                        Access access) {
  auto impl = std::make_unique<Impl>();
  if (auto opened = impl->database.Open(path, access); !opened) {
    return opened.error();
  }
  const Result<int> version = impl->database.Pragma("PRAGMA user_version");
  if (!version) return version.error();
  impl->has_sessions = *version >= kFirstWithSessions;
  return SessionStore(std::move(impl));
}

Result<std::vector<SessionLine>> SessionStore::Sessions() const {
  std::vector<SessionLine> lines;
  if (!impl_->has_sessions) return lines;
  Statement statement(
      impl_->database.connection(),
      "SELECT s.id, s.name, s.begun_utc, s.closed, coalesce(e.number, 0),"
      " coalesce(e.at_utc, s.begun_utc)"
      " FROM session AS s LEFT JOIN session_entry AS e ON e.session = s.id"
      " AND e.number = (SELECT max(number) FROM session_entry"
      " WHERE session = s.id) ORDER BY 6 DESC, s.id DESC");
  while (statement.Step()) {
    const auto begun = ParseUtc(statement.Text(2));
    const auto last = ParseUtc(statement.Text(5));
    if (!begun || !last) return DamagedTime();
    lines.push_back({statement.Integer(0),
                     statement.Text(1),
                     *begun,
                     *last,
                     statement.Integer(4),
                     statement.Integer(3) != 0});
  }
  if (statement.code() != SQLITE_OK) {
    return impl_->database.Fail(statement.code());
  }
  return lines;
}

Result<SessionId> SessionStore::Begin(const std::string& name, UtcTime now) {
  sqlite3* connection = impl_->database.connection();
  Statement insert(connection,
                   "INSERT INTO session(name, begun_utc) VALUES(?,?)");
  insert.Bind(name).Bind(FormatUtc(now));
  insert.Step();
  if (insert.code() != SQLITE_OK) return impl_->database.Fail(insert.code());
  return SessionId{sqlite3_last_insert_rowid(connection)};
}

Result<EntryNumber> SessionStore::Append(SessionId session,
                                         EntryNumber after,
                                         UtcTime at,
                                         const EntryWhat& what) {
  Database& database = impl_->database;
  sqlite3* connection = database.connection();
  const EntryText text = ToText(what);
  if (auto begun = database.Begin(); !begun) return begun.error();
  const auto give_up = [&](Error error) -> Result<EntryNumber> {
    database.Rollback();
    return error;
  };
  Statement newest(connection,
                   "SELECT (SELECT max(number) FROM session_entry"
                   " WHERE session = ?1) FROM session WHERE id = ?1");
  newest.Bind(session);
  if (!newest.Step()) {
    return give_up(newest.code() == SQLITE_OK ? NoSession()
                                              : database.Fail(newest.code()));
  }
  if (newest.Integer(0) != after) {
    return give_up({ErrorCode::kRefused,
                    "Another program has changed this bench meanwhile; look "
                    "at it and try again."});
  }
  newest.Reset();
  const EntryNumber number = after + 1;
  Statement insert(connection,
                   "INSERT INTO session_entry(session, number, at_utc, kind,"
                   " body) VALUES(?,?,?,?,?)");
  insert.Bind(session)
      .Bind(number)
      .Bind(FormatUtc(at))
      .Bind(text.kind)
      .Bind(text.body);
  insert.Step();
  if (insert.code() != SQLITE_OK) return give_up(database.Fail(insert.code()));
  const bool closes = std::holds_alternative<SessionClosed>(what);
  if (closes || std::holds_alternative<SessionReopened>(what)) {
    Statement mark(connection, "UPDATE session SET closed = ? WHERE id = ?");
    mark.Bind(std::int64_t{closes ? 1 : 0}).Bind(session);
    mark.Step();
    if (mark.code() != SQLITE_OK) return give_up(database.Fail(mark.code()));
  }
  if (auto done = database.Commit(); !done) return done.error();
  return number;
}

Result<std::vector<LogEntry>> SessionStore::Since(SessionId session,
                                                  EntryNumber after) const {
  std::vector<LogEntry> entries;
  if (!impl_->has_sessions) return NoSession();
  sqlite3* connection = impl_->database.connection();
  Statement known(connection, "SELECT 1 FROM session WHERE id = ?");
  known.Bind(session);
  if (!known.Step()) {
    return known.code() == SQLITE_OK ? NoSession()
                                     : impl_->database.Fail(known.code());
  }
  Statement statement(connection,
                      "SELECT number, at_utc, kind, body FROM session_entry"
                      " WHERE session = ? AND number > ? ORDER BY number");
  statement.Bind(session).Bind(after);
  while (statement.Step()) {
    const auto at = ParseUtc(statement.Text(1));
    if (!at) return DamagedTime();
    auto what = FromText({statement.Text(2), statement.Text(3)});
    if (!what) return what.error();
    entries.push_back({statement.Integer(0), *at, std::move(*what)});
  }
  if (statement.code() != SQLITE_OK) {
    return impl_->database.Fail(statement.code());
  }
  return entries;
}

Result<int> SessionStore::ChangeMark() const {
  return impl_->database.Pragma("PRAGMA data_version");
}

}  // namespace flowkin
