#include "calibration/store/session_store.h"

#include <sqlite3.h>

#include <algorithm>
#include <cctype>
#include <map>
#include <set>
#include <sstream>
#include <utility>

#include "calibration/store/entry_text.h"

namespace flowkin {
namespace {

constexpr int kFirstWithSessions = 3;
constexpr int kFirstWithSearch = 4;

/// What a search finds an entry by; empty for most.
std::string SearchText(const EntryWhat& what) {
  const auto of_cup = [](const CupDetails& cup) {
    return cup.label + " " + cup.paint.brand + " " + cup.paint.colour;
  };
  if (const auto* added = std::get_if<CupAdded>(&what)) {
    return of_cup(added->cup);
  }
  if (const auto* changed = std::get_if<CupChanged>(&what)) {
    return of_cup(changed->details);
  }
  if (const auto* note = std::get_if<NoteTaken>(&what)) return note->text;
  if (const auto* pour = std::get_if<PourMade>(&what)) {
    return pour->technique + " " + pour->text;
  }
  if (const auto* photo = std::get_if<PhotoTaken>(&what)) return photo->text;
  if (const auto* seen = std::get_if<FaultSeen>(&what)) {
    return seen->fault + " " + seen->text;
  }
  if (const auto* judged = std::get_if<PourJudged>(&what)) {
    return std::string(PourVerdictName(judged->verdict)) + " " + judged->text;
  }
  if (const auto* cells = std::get_if<CellsTested>(&what)) {
    return std::string("cells ") + CellsSeenName(cells->seen) + " " +
           cells->text;
  }
  return {};
}

/// Every word as the beginning of one, all of them wanted.
std::string MatchExpression(const std::string& words) {
  std::string expression;
  std::istringstream stream(words);
  for (std::string word; stream >> word;) {
    const bool counts = std::any_of(word.begin(), word.end(), [](char c) {
      const auto byte = static_cast<unsigned char>(c);
      return byte >= 0x80 || std::isalnum(byte) != 0;
    });
    if (!counts) continue;
    std::string quoted;
    for (const char c : word)
      quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    expression += (expression.empty() ? "\"" : " \"") + quoted + "\"*";
  }
  return expression;
}

constexpr const char* kLines =
    "SELECT s.id, s.name, s.begun_utc, s.closed, coalesce(e.number, 0),"
    " coalesce(e.at_utc, s.begun_utc)"
    " FROM session AS s LEFT JOIN session_entry AS e ON e.session = s.id"
    " AND e.number = (SELECT max(number) FROM session_entry"
    " WHERE session = s.id) ";

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

  bool HasSessions() const {
    return database.format_version() >= kFirstWithSessions;
  }
  Result<std::vector<SessionLine>> Lines(Statement& statement) const;
  int AddText(SessionId session, const std::string& text) const;
  /// Puts the text of a session together anew, without what was taken back.
  Result<void> RenewText(SessionId session) const;
};

Result<std::vector<SessionLine>> SessionStore::Impl::Lines(
    Statement& statement) const {
  std::vector<SessionLine> lines;
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
  if (statement.code() != SQLITE_OK) return database.Fail(statement.code());
  return lines;
}

int SessionStore::Impl::AddText(SessionId session,
                                const std::string& text) const {
  if (text.empty()) return SQLITE_OK;
  Statement known(database.connection(),
                  "SELECT text FROM journal_text WHERE rowid = ?");
  known.Bind(session);
  const std::string before = known.Step() ? known.Text(0) + " " : "";
  if (known.code() != SQLITE_OK) return known.code();
  known.Reset();
  Statement put(database.connection(),
                "INSERT OR REPLACE INTO journal_text(rowid, text) VALUES(?,?)");
  put.Bind(session).Bind(before + text);
  put.Step();
  return put.code();
}

Result<void> SessionStore::Impl::RenewText(SessionId session) const {
  sqlite3* connection = database.connection();
  Statement name(connection, "SELECT name FROM session WHERE id = ?");
  name.Bind(session);
  if (!name.Step()) return database.Fail(name.code());
  std::string text = name.Text(0);
  // Films say nothing that is searched for and are long.
  Statement entries(connection,
                    "SELECT number, kind, body FROM session_entry"
                    " WHERE session = ? AND kind NOT IN ('test_taken',"
                    " 'event_corrected') ORDER BY number");
  entries.Bind(session);
  std::map<EntryNumber, std::string> said;
  std::set<EntryNumber> taken_back;
  while (entries.Step()) {
    const auto what = FromText({entries.Text(1), entries.Text(2)});
    if (!what) return what.error();
    if (const auto* undone = std::get_if<Undone>(&*what)) {
      taken_back.insert(undone->entry);
    } else if (const auto* redone = std::get_if<Redone>(&*what)) {
      taken_back.erase(redone->entry);
    } else {
      said[entries.Integer(0)] = SearchText(*what);
    }
  }
  if (entries.code() != SQLITE_OK) return database.Fail(entries.code());
  for (const auto& [number, words] : said) {
    if (!words.empty() && taken_back.count(number) == 0) text += " " + words;
  }
  Statement put(connection,
                "INSERT OR REPLACE INTO journal_text(rowid, text) VALUES(?,?)");
  put.Bind(session).Bind(text);
  return database.Do(put);
}

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
  return SessionStore(std::move(impl));
}

Result<std::vector<SessionLine>> SessionStore::Sessions() const {
  if (!impl_->HasSessions()) return std::vector<SessionLine>();
  Statement statement(impl_->database.connection(),
                      std::string(kLines) + "ORDER BY 6 DESC, s.id DESC");
  return impl_->Lines(statement);
}

Result<std::vector<SessionLine>> SessionStore::Search(const std::string& words,
                                                      int most) const {
  if (!impl_->HasSessions()) return std::vector<SessionLine>();
  const std::string expression = MatchExpression(words);
  if (expression.empty()) {
    Statement statement(impl_->database.connection(),
                        std::string(kLines) + "ORDER BY s.id DESC LIMIT ?");
    statement.Bind(std::int64_t{most});
    return impl_->Lines(statement);
  }
  if (impl_->database.format_version() < kFirstWithSearch) {
    return Error{ErrorCode::kRefused,
                 "This brand book is of an older form that cannot be searched; "
                 "open it once for writing."};
  }
  // The newest hits are picked before their lines are put together.
  Statement statement(impl_->database.connection(),
                      std::string(kLines) +
                          "WHERE s.id IN (SELECT rowid FROM journal_text WHERE"
                          " journal_text MATCH ? ORDER BY rowid DESC LIMIT ?)"
                          " ORDER BY s.id DESC");
  statement.Bind(expression).Bind(std::int64_t{most});
  return impl_->Lines(statement);
}

Result<std::vector<SessionStore::SessionEntries>> SessionStore::Pours() const {
  std::vector<SessionEntries> sessions;
  if (!impl_->HasSessions()) return sessions;
  Statement statement(
      impl_->database.connection(),
      "SELECT session, number, at_utc, kind, body FROM session_entry"
      " WHERE session IN (SELECT session FROM session_entry"
      " WHERE kind = 'pour_made') AND kind IN ('pour_made', 'pour_judged',"
      " 'fault_seen', 'room_measured', 'undone', 'redone')"
      " ORDER BY session, number");
  while (statement.Step()) {
    const SessionId id = statement.Integer(0);
    const auto at = ParseUtc(statement.Text(2));
    if (!at) return DamagedTime();
    auto what = FromText({statement.Text(3), statement.Text(4)});
    if (!what) return what.error();
    if (sessions.empty() || sessions.back().session != id) {
      sessions.push_back({id, {}});
    }
    sessions.back().entries.push_back(
        {statement.Integer(1), *at, std::move(*what)});
  }
  if (statement.code() != SQLITE_OK) {
    return impl_->database.Fail(statement.code());
  }
  return sessions;
}

Result<SessionLine> SessionStore::Line(SessionId session) const {
  if (!impl_->HasSessions()) return NoSession();
  Statement statement(impl_->database.connection(),
                      std::string(kLines) + "WHERE s.id = ?");
  statement.Bind(session);
  Result<std::vector<SessionLine>> lines = impl_->Lines(statement);
  if (!lines) return lines.error();
  if (lines->empty()) return NoSession();
  return std::move(lines->front());
}

Result<SessionId> SessionStore::Begin(const std::string& name, UtcTime now) {
  Database& database = impl_->database;
  sqlite3* connection = database.connection();
  if (auto begun = database.Begin(); !begun) return begun.error();
  Statement insert(connection,
                   "INSERT INTO session(name, begun_utc) VALUES(?,?)");
  insert.Bind(name).Bind(FormatUtc(now));
  insert.Step();
  int code = insert.code();
  const SessionId id{sqlite3_last_insert_rowid(connection)};
  if (code == SQLITE_OK) code = impl_->AddText(id, name);
  if (code != SQLITE_OK) {
    database.Rollback();
    return database.Fail(code);
  }
  if (auto done = database.Commit(); !done) return done.error();
  return id;
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
  if (auto done = database.Do(insert); !done) return give_up(done.error());
  if (const int code = impl_->AddText(session, SearchText(what));
      code != SQLITE_OK) {
    return give_up(database.Fail(code));
  }
  if (std::holds_alternative<Undone>(what) ||
      std::holds_alternative<Redone>(what)) {
    if (auto renewed = impl_->RenewText(session); !renewed) {
      return give_up(renewed.error());
    }
  }
  const bool closes = std::holds_alternative<SessionClosed>(what);
  if (closes || std::holds_alternative<SessionReopened>(what)) {
    Statement mark(connection, "UPDATE session SET closed = ? WHERE id = ?");
    mark.Bind(std::int64_t{closes ? 1 : 0}).Bind(session);
    if (auto done = database.Do(mark); !done) return give_up(done.error());
  }
  if (auto done = database.Commit(); !done) return done.error();
  return number;
}

Result<std::vector<LogEntry>> SessionStore::Since(SessionId session,
                                                  EntryNumber after) const {
  std::vector<LogEntry> entries;
  if (!impl_->HasSessions()) return NoSession();
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

Result<std::vector<std::string>> SessionStore::FilmsOfOpenSessions() const {
  std::vector<std::string> films;
  if (!impl_->HasSessions()) return films;
  // Without reading the curves that lie beside the name.
  Statement statement(
      impl_->database.connection(),
      "SELECT json_extract(e.body, '$.test.film') FROM session AS s"
      " JOIN session_entry AS e ON e.session = s.id WHERE s.closed = 0 AND"
      " e.kind = 'test_taken' AND json_valid(e.body) ORDER BY e.id");
  while (statement.Step()) films.push_back(statement.Text(0));
  if (statement.code() != SQLITE_OK) {
    return impl_->database.Fail(statement.code());
  }
  return films;
}

Result<int> SessionStore::ChangeMark() const {
  return impl_->database.Pragma("PRAGMA data_version");
}

}  // namespace flowkin
