#include "tests/support/many_days.h"

#include <sqlite3.h>

#include <cstdio>

#include "core/base/check.h"

namespace flowkin::testing {
namespace {

constexpr const char* kFill = R"sql(
    BEGIN;
    CREATE TEMP TABLE n AS WITH RECURSIVE c(i) AS
      (SELECT 1 UNION ALL SELECT i + 1 FROM c WHERE i < %d) SELECT i FROM c;
    INSERT INTO session(id, name, begun_utc)
      SELECT i, 'Day ' || i, '2026-03-01T12:00:00.000Z' FROM n;
    INSERT INTO session_entry(session, number, at_utc, kind, body)
      SELECT n.i, k.i, '2026-03-01T12:00:00.000Z', 'note_taken',
        json_object('text', 'Lagoon cells word' || (n.i %% 97) || ' x' || n.i)
      FROM n JOIN n AS k ON k.i <= 20;
    INSERT INTO journal_text(rowid, text)
      SELECT i, 'Day ' || i || ' Lagoon cells swipe dune word' || (i %% 97) ||
        ' x' || i || ' good some more words that are the same on every day'
      FROM n;
    COMMIT;)sql";

}  // namespace

void FillWithDays(const std::string& store, int days) {
  char sql[2000];
  std::snprintf(sql, sizeof(sql), kFill, days);
  sqlite3* connection = nullptr;
  FLOWKIN_CHECK(sqlite3_open(store.c_str(), &connection) == SQLITE_OK);
  FLOWKIN_CHECK(sqlite3_exec(connection, sql, nullptr, nullptr, nullptr) ==
                SQLITE_OK);
  sqlite3_close(connection);
}

}  // namespace flowkin::testing
