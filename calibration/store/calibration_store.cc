#include "calibration/store/calibration_store.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <utility>

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

constexpr std::array<const char*, CalibrationStore::kFormatVersion>
    kMigrations = {kFormat1, kFormat2};

// A cup counts unless a longer history of it came later or its brand or colour
// was forgotten after it.
constexpr const char* kCounts =
    " NOT EXISTS(SELECT 1 FROM cup AS later WHERE later.continues = cup.id)"
    " AND NOT EXISTS(SELECT 1 FROM forgetting AS f WHERE f.brand = cup.brand"
    " AND f.undone_utc IS NULL AND f.last_cup >= cup.id"
    " AND (f.colour IS NULL OR f.colour = cup.colour)) ";

Error Failure(int code, const std::string& path) {
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

/// A prepared statement; reset and finalised by scope.
class Statement {
 public:
  Statement(sqlite3* database, const std::string& sql)
      : code_(sqlite3_prepare_v2(database,
                                 sql.c_str(),
                                 static_cast<int>(sql.size()),
                                 &statement_,
                                 nullptr)) {}
  ~Statement() { sqlite3_finalize(statement_); }
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;

  Statement& Bind(const std::string& text) {
    ++next_;
    Check(sqlite3_bind_text(statement_,
                            next_,
                            text.data(),
                            static_cast<int>(text.size()),
                            SQLITE_TRANSIENT));
    return *this;
  }
  Statement& Bind(double number) {
    ++next_;
    Check(sqlite3_bind_double(statement_, next_, number));
    return *this;
  }
  Statement& Bind(std::int64_t number) {
    ++next_;
    Check(sqlite3_bind_int64(statement_, next_, number));
    return *this;
  }
  template <typename T>
  Statement& Bind(const std::optional<T>& value) {
    if (value) return Bind(*value);
    ++next_;
    Check(sqlite3_bind_null(statement_, next_));
    return *this;
  }

  /// True while there is a row; false at the end or after a failure (code()).
  bool Step() {
    if (code_ != SQLITE_OK) return false;
    const int result = sqlite3_step(statement_);
    if (result == SQLITE_ROW) return true;
    if (result != SQLITE_DONE) code_ = result;
    return false;
  }
  void Reset() {
    sqlite3_reset(statement_);
    next_ = 0;
  }
  int code() const { return code_; }

  std::string Text(int column) const {
    const auto* text =
        reinterpret_cast<const char*>(sqlite3_column_text(statement_, column));
    const int size = sqlite3_column_bytes(statement_, column);
    return text == nullptr ? std::string()
                           : std::string(text, static_cast<std::size_t>(size));
  }
  double Number(int column) const {
    return sqlite3_column_double(statement_, column);
  }
  std::int64_t Integer(int column) const {
    return sqlite3_column_int64(statement_, column);
  }
  bool IsNull(int column) const {
    return sqlite3_column_type(statement_, column) == SQLITE_NULL;
  }

 private:
  void Check(int code) {
    if (code_ == SQLITE_OK) code_ = code;
  }
  sqlite3_stmt* statement_ = nullptr;
  int code_;
  int next_ = 0;
};

/// Exact text of a cup, the same for the same cup wherever it was learned.
/// Long, but it needs no hash and cannot collide.
std::string Identity(const StoredCup& cup, std::size_t tests) {
  std::string text;
  const auto part = [&](const std::string& value) {
    text += std::to_string(value.size()) + ':' + value + '|';
  };
  const auto number = [&](double value) {
    char digits[40];
    std::snprintf(digits, sizeof(digits), "%.17g|", value);
    text += digits;
  };
  part(cup.paint.brand);
  part(cup.paint.colour);
  part(cup.batch);
  part(ThinnerKindName(cup.history.thinner));
  number(cup.history.volume_ml);
  for (std::size_t i = 0; i < tests; ++i) {
    number(cup.history.tests[i].added_ml);
    number(cup.history.tests[i].ratio);
    number(cup.history.tests[i].rel_sd);
  }
  return text;
}

ThinnerKind ThinnerFromName(const std::string& name) {
  for (const ThinnerKind kind :
       {ThinnerKind::kAdditive, ThinnerKind::kMedium}) {
    if (name == ThinnerKindName(kind)) return kind;
  }
  return ThinnerKind::kWater;
}

}  // namespace

struct CalibrationStore::Impl {
  std::string path;
  sqlite3* database = nullptr;
  bool in_transaction = false;

  ~Impl() { sqlite3_close_v2(database); }

  int Run(const char* sql) const {
    return sqlite3_exec(database, sql, nullptr, nullptr, nullptr);
  }
  Error Fail(int code) const { return Failure(code, path); }

  Result<int> Pragma(const char* sql) const {
    Statement statement(database, sql);
    if (!statement.Step()) {
      return Fail(statement.code() == SQLITE_OK ? SQLITE_CORRUPT
                                                : statement.code());
    }
    return static_cast<int>(statement.Integer(0));
  }

  Result<std::vector<StoredCup>> Read(Statement& statement) const;
};

CalibrationStore::CalibrationStore(std::unique_ptr<Impl> impl)
    : impl_(std::move(impl)) {}
CalibrationStore::CalibrationStore(CalibrationStore&&) noexcept = default;
CalibrationStore& CalibrationStore::operator=(CalibrationStore&&) noexcept =
    default;
CalibrationStore::~CalibrationStore() {
  if (impl_) Rollback();
}

std::string CalibrationStore::DefaultPath() {
  const char* data = std::getenv("XDG_DATA_HOME");
  // The specification has relative paths ignored.
  if (data != nullptr && data[0] == '/') {
    return std::string(data) + "/flowkin/brands.db";
  }
  const char* home = std::getenv("HOME");
  if (home == nullptr || home[0] == '\0') return {};
  return std::string(home) + "/.local/share/flowkin/brands.db";
}

Result<CalibrationStore> CalibrationStore::Open(const std::string& path,
                                                Access access) {
  const bool write = access == Access::kWrite;
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
  auto impl = std::make_unique<Impl>();
  impl->path = path;
  const int flags =
      write ? SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE : SQLITE_OPEN_READONLY;
  int code =
      sqlite3_open_v2(path.c_str(),
                      &impl->database,
                      flags | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOMUTEX,
                      nullptr);
  if (code != SQLITE_OK) return Failure(code, path);
  sqlite3_busy_timeout(impl->database, kBusyWait_ms);
  // EXTRA also syncs the folder when the journal goes, so that a confirmed
  // entry outlives a power cut.
  code = impl->Run(
      "PRAGMA synchronous=EXTRA; PRAGMA foreign_keys=ON;"
      "PRAGMA trusted_schema=OFF");
  if (code != SQLITE_OK) return impl->Fail(code);

  const auto check = [&]() -> Result<int> {
    const Result<int> id = impl->Pragma("PRAGMA application_id");
    if (!id) return id.error();
    const Result<int> version = impl->Pragma("PRAGMA user_version");
    if (!version) return version.error();
    if (*id != kApplicationId) {
      Statement any(impl->database, "SELECT count(*) FROM sqlite_schema");
      if (!any.Step()) return impl->Fail(any.code());
      if (any.Integer(0) != 0 || *version != 0 || !write) {
        return Error{
            ErrorCode::kUnreadable,
            "'" + path + "' is no brand book of flowkin; choose another file."};
      }
    }
    if (*version > kFormatVersion) {
      return Error{ErrorCode::kUnreadable,
                   "The brand book '" + path +
                       "' was written by a newer flowkin; update this one."};
    }
    return *version;
  };
  Result<int> version = check();
  if (!version) return version.error();
  if (write && *version < kFormatVersion) {
    code = impl->Run("BEGIN IMMEDIATE");
    if (code != SQLITE_OK) return impl->Fail(code);
    // Another program may have been faster.
    version = check();
    if (!version) {
      impl->Run("ROLLBACK");
      return version.error();
    }
    for (int v = *version; v < kFormatVersion; ++v) {
      code = impl->Run(kMigrations[static_cast<std::size_t>(v)]);
      if (code != SQLITE_OK) break;
    }
    const std::string stamp =
        "PRAGMA application_id=" + std::to_string(kApplicationId) +
        "; PRAGMA user_version=" + std::to_string(kFormatVersion) + "; COMMIT";
    if (code == SQLITE_OK) code = impl->Run(stamp.c_str());
    if (code != SQLITE_OK) {
      impl->Run("ROLLBACK");
      return impl->Fail(code);
    }
  }
  return CalibrationStore(std::move(impl));
}

Result<void> CalibrationStore::Begin() {
  const int code = impl_->Run("BEGIN IMMEDIATE");
  if (code != SQLITE_OK) return impl_->Fail(code);
  impl_->in_transaction = true;
  return {};
}

Result<void> CalibrationStore::Commit() {
  const int code = impl_->Run("COMMIT");
  if (code != SQLITE_OK) {
    Rollback();
    return impl_->Fail(code);
  }
  impl_->in_transaction = false;
  return {};
}

void CalibrationStore::Rollback() {
  if (!impl_->in_transaction) return;
  impl_->Run("ROLLBACK");
  impl_->in_transaction = false;
}

Result<AppendOutcome> CalibrationStore::Append(const StoredCup& cup) {
  sqlite3* database = impl_->database;
  const std::size_t count = cup.history.tests.size();
  const std::string identity = Identity(cup, count);
  // '~' comes after every character of an identity, so this range holds the
  // cup itself and all longer histories of it.
  Statement find(database,
                 "SELECT id FROM cup WHERE identity >= ?1 AND"
                 " identity < ?1 || '~' LIMIT 1");
  find.Bind(identity);
  if (find.Step()) return AppendOutcome::kKnown;
  if (find.code() != SQLITE_OK) return impl_->Fail(find.code());

  std::optional<std::int64_t> continues;
  Statement shorter(database,
                    "SELECT id FROM cup WHERE identity = ? AND NOT EXISTS("
                    "SELECT 1 FROM cup AS later WHERE later.continues = "
                    "cup.id)");
  for (std::size_t tests = count; tests-- > 1 && !continues;) {
    shorter.Bind(Identity(cup, tests));
    if (shorter.Step()) continues = shorter.Integer(0);
    if (shorter.code() != SQLITE_OK) return impl_->Fail(shorter.code());
    shorter.Reset();
  }

  const std::optional<Estimate>& thinner = cup.history.thinner_ln_ratio;
  Statement insert(
      database,
      "INSERT INTO cup(identity, brand, colour, batch, volume_ml, thinner,"
      " thinner_ln_ratio, thinner_ln_ratio_sd, common_rel_sd, learned_utc,"
      " continues) VALUES(?,?,?,?,?,?,?,?,?,?,?)");
  insert.Bind(identity)
      .Bind(cup.paint.brand)
      .Bind(cup.paint.colour)
      .Bind(cup.batch)
      .Bind(cup.history.volume_ml)
      .Bind(std::string(ThinnerKindName(cup.history.thinner)))
      .Bind(thinner ? std::optional<double>(thinner->value) : std::nullopt)
      .Bind(thinner ? std::optional<double>(thinner->sd) : std::nullopt)
      .Bind(cup.common_rel_sd)
      .Bind(cup.learned_utc)
      .Bind(continues);
  insert.Step();
  if (insert.code() != SQLITE_OK) return impl_->Fail(insert.code());
  const std::int64_t id = sqlite3_last_insert_rowid(database);
  Statement test(database, "INSERT INTO test VALUES(?,?,?,?,?)");
  for (std::size_t i = 0; i < count; ++i) {
    const CupTest& t = cup.history.tests[i];
    test.Bind(id)
        .Bind(static_cast<std::int64_t>(i))
        .Bind(t.added_ml)
        .Bind(t.ratio)
        .Bind(t.rel_sd);
    test.Step();
    if (test.code() != SQLITE_OK) return impl_->Fail(test.code());
    test.Reset();
  }
  return continues ? AppendOutcome::kContinued : AppendOutcome::kAdded;
}

Result<std::vector<StoredCup>> CalibrationStore::Impl::Read(
    Statement& statement) const {
  std::vector<StoredCup> cups;
  Statement tests(database,
                  "SELECT added_ml, ratio, rel_sd FROM test WHERE cup = ?"
                  " ORDER BY ordinal");
  while (statement.Step()) {
    StoredCup cup;
    cup.paint = {statement.Text(1), statement.Text(2)};
    cup.batch = statement.Text(3);
    cup.history.volume_ml = statement.Number(4);
    cup.history.thinner = ThinnerFromName(statement.Text(5));
    if (!statement.IsNull(6)) {
      cup.history.thinner_ln_ratio =
          Estimate{statement.Number(6), statement.Number(7)};
    }
    cup.common_rel_sd = statement.Number(8);
    cup.learned_utc = statement.Text(9);
    tests.Bind(statement.Integer(0));
    while (tests.Step()) {
      cup.history.tests.push_back(
          {tests.Number(0), tests.Number(1), tests.Number(2)});
    }
    if (tests.code() != SQLITE_OK) return Fail(tests.code());
    tests.Reset();
    cups.push_back(std::move(cup));
  }
  if (statement.code() != SQLITE_OK) return Fail(statement.code());
  return cups;
}

namespace {
const std::string kCupColumns =
    "SELECT id, brand, colour, batch, volume_ml, thinner, thinner_ln_ratio,"
    " thinner_ln_ratio_sd, common_rel_sd, learned_utc FROM cup WHERE ";
}  // namespace

Result<std::vector<StoredCup>> CalibrationStore::Cups(const std::string& brand,
                                                      std::int64_t most) const {
  Statement statement(
      impl_->database,
      kCupColumns + "brand = ? AND" + kCounts + "ORDER BY id DESC LIMIT ?");
  statement.Bind(brand).Bind(most);
  return impl_->Read(statement);
}

Result<std::vector<StoredCup>> CalibrationStore::AllCups() const {
  Statement statement(impl_->database, kCupColumns + kCounts + "ORDER BY id");
  return impl_->Read(statement);
}

Result<std::vector<BrandEntry>> CalibrationStore::Brands(
    const std::string& brand_only) const {
  Statement statement(
      impl_->database,
      std::string("SELECT brand, colour, count(*),"
                  " sum((SELECT count(*) FROM test WHERE test.cup = cup.id))"
                  " FROM cup WHERE ") +
          (brand_only.empty() ? "?1 = '' AND" : "brand = ?1 AND") + kCounts +
          "GROUP BY brand, colour ORDER BY brand, colour");
  statement.Bind(brand_only);
  std::vector<BrandEntry> brands;
  while (statement.Step()) {
    const std::string brand = statement.Text(0);
    if (brands.empty() || brands.back().brand != brand) {
      brands.push_back({brand, {}, 0, 0});
    }
    BrandEntry& entry = brands.back();
    if (const std::string colour = statement.Text(1); !colour.empty()) {
      entry.colours.push_back(colour);
    }
    entry.cups += statement.Integer(2);
    entry.tests += statement.Integer(3);
  }
  if (statement.code() != SQLITE_OK) return impl_->Fail(statement.code());
  return brands;
}

Result<std::int64_t> CalibrationStore::Forget(
    const std::string& brand,
    const std::optional<std::string>& colour,
    const std::string& now_utc) {
  Statement count(
      impl_->database,
      std::string("SELECT count(*), max(id) FROM cup WHERE"
                  " brand = ? AND (?2 IS NULL OR colour = ?2) AND") +
          kCounts);
  count.Bind(brand).Bind(colour);
  if (!count.Step()) return impl_->Fail(count.code());
  const std::int64_t cups = count.Integer(0);
  if (cups == 0) return cups;
  Statement insert(impl_->database,
                   "INSERT INTO forgetting(brand, colour, last_cup, at_utc)"
                   " VALUES(?,?,?,?)");
  insert.Bind(brand).Bind(colour).Bind(count.Integer(1)).Bind(now_utc);
  insert.Step();
  if (insert.code() != SQLITE_OK) return impl_->Fail(insert.code());
  return cups;
}

Result<std::int64_t> CalibrationStore::Restore(const std::string& brand,
                                               const std::string& now_utc) {
  const auto counting = [&]() -> Result<std::int64_t> {
    Statement count(
        impl_->database,
        std::string("SELECT count(*) FROM cup WHERE brand = ? AND") + kCounts);
    count.Bind(brand);
    if (!count.Step()) return impl_->Fail(count.code());
    return count.Integer(0);
  };
  Result<std::int64_t> before = counting();
  if (!before) return before;
  Statement undo(impl_->database,
                 "UPDATE forgetting SET undone_utc = ? WHERE brand = ?"
                 " AND undone_utc IS NULL");
  undo.Bind(now_utc).Bind(brand);
  undo.Step();
  if (undo.code() != SQLITE_OK) return impl_->Fail(undo.code());
  Result<std::int64_t> after = counting();
  if (!after) return after;
  return *after - *before;
}

Result<void> CalibrationStore::SaveSummary(const BrandSummary& summary,
                                           int engine) {
  Statement save(impl_->database,
                 "INSERT OR REPLACE INTO summary VALUES(?,?,?,?)");
  save.Bind(summary.brand)
      .Bind(static_cast<std::int64_t>(engine))
      .Bind(summary.ln_slope.value)
      .Bind(summary.ln_slope.sd);
  save.Step();
  if (save.code() != SQLITE_OK) return impl_->Fail(save.code());
  return {};
}

Result<void> CalibrationStore::DropSummary(const std::string& brand) {
  Statement drop(impl_->database, "DELETE FROM summary WHERE brand = ?");
  drop.Bind(brand);
  drop.Step();
  if (drop.code() != SQLITE_OK) return impl_->Fail(drop.code());
  return {};
}

Result<std::vector<BrandSummary>> CalibrationStore::Summaries(
    int engine) const {
  std::vector<BrandSummary> summaries;
  const Result<int> version = impl_->Pragma("PRAGMA user_version");
  if (!version) return version.error();
  if (*version < 2) return summaries;  // an old book, opened for reading
  Statement statement(
      impl_->database,
      "SELECT brand, ln_slope, ln_slope_sd FROM summary WHERE engine = ?");
  statement.Bind(static_cast<std::int64_t>(engine));
  while (statement.Step()) {
    BrandSummary summary;
    summary.brand = statement.Text(0);
    summary.ln_slope = {statement.Number(1), statement.Number(2)};
    summaries.push_back(std::move(summary));
  }
  if (statement.code() != SQLITE_OK) return impl_->Fail(statement.code());
  return summaries;
}

Result<void> CalibrationStore::BackUp(const std::string& path) const {
  std::error_code ignored;
  if (std::filesystem::exists(path, ignored)) {
    return Error{ErrorCode::kInvalidArgument,
                 "'" + path +
                     "' is there already; name a new file for the "
                     "backup."};
  }
  Statement copy(impl_->database, "VACUUM INTO ?");
  copy.Bind(path);
  copy.Step();
  if (copy.code() != SQLITE_OK) {
    std::filesystem::remove(path, ignored);
    return Failure(copy.code(), path);
  }
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  const bool safe = file >= 0 && ::fsync(file) == 0;
  if (file >= 0) ::close(file);
  if (!safe) return Failure(SQLITE_IOERR, path);
  return {};
}

}  // namespace flowkin
