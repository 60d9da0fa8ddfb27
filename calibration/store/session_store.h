#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "calibration/store/database.h"
#include "core/base/result.h"
#include "core/base/utc_time.h"
#include "core/session/palette_session.h"

namespace flowkin {

using SessionId = std::int64_t;

/// One line of the list of sessions.
struct SessionLine {
  SessionId id = 0;
  std::string name;
  UtcTime begun;
  UtcTime last;  ///< newest entry
  std::int64_t entries = 0;
  bool closed = false;
};

/// The days at the bench, in the same file as the brand book: one append-only
/// log per session. What Append has confirmed outlives a crash and a power
/// cut, and other programs see it at once.
class SessionStore {
 public:
  using Access = Database::Access;

  /// As CalibrationStore::Open. A book of an older format, opened for reading,
  /// holds no sessions.
  static Result<SessionStore> Open(const std::string& path, Access access);

  SessionStore(SessionStore&&) noexcept;
  SessionStore& operator=(SessionStore&&) noexcept;
  ~SessionStore();

  /// Newest entry first.
  Result<std::vector<SessionLine>> Sessions() const;
  /// kInvalidArgument where there is no such session.
  Result<SessionLine> Line(SessionId session) const;
  Result<SessionId> Begin(const std::string& name, UtcTime now);

  /// Writes an entry and gives it the next number of its session. `after`: the
  /// newest entry the caller knows; fails with kRefused, nothing written,
  /// where another program has added one meanwhile, so that nobody acts on a
  /// bench that has changed.
  Result<EntryNumber> Append(SessionId session,
                             EntryNumber after,
                             UtcTime at,
                             const EntryWhat& what);

  /// Entries of a session with numbers above `after`, in order.
  /// kInvalidArgument where there is no such session.
  Result<std::vector<LogEntry>> Since(SessionId session,
                                      EntryNumber after) const;

  /// Sessions that hold every one of `words`, each as the beginning of a word,
  /// in their name or in anything written down in them (cups, notes, faults,
  /// photos) and not taken back; newest first, at most `most`. No words: the
  /// newest sessions.
  Result<std::vector<SessionLine>> Search(const std::string& words,
                                          int most = 100) const;

  struct SessionEntries {
    SessionId session = 0;
    std::vector<LogEntry> entries;  ///< in order, with gaps
  };
  /// What the journal learns from: entries about the pour and what was taken
  /// back, of every session with a pour.
  Result<std::vector<SessionEntries>> Pours() const;

  /// Films of every test of the sessions that are not closed.
  Result<std::vector<std::string>> FilmsOfOpenSessions() const;

  /// Changes whenever another connection changed the file; says nothing of
  /// this one's own changes.
  Result<int> ChangeMark() const;

 private:
  struct Impl;
  explicit SessionStore(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace flowkin
