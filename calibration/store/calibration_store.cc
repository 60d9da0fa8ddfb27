#include "calibration/store/calibration_store.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <system_error>
#include <utility>

namespace flowkin {
namespace {

constexpr int kFirstWithSummaries = 2;

// A cup counts unless a longer history of it came later or its brand or colour
// was forgotten after it.
constexpr const char* kCounts =
    " NOT EXISTS(SELECT 1 FROM cup AS later WHERE later.continues = cup.id)"
    " AND NOT EXISTS(SELECT 1 FROM forgetting AS f WHERE f.brand = cup.brand"
    " AND f.undone_utc IS NULL AND f.last_cup >= cup.id"
    " AND (f.colour IS NULL OR f.colour = cup.colour)) ";

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
  Database database;

  Error Fail(int code) const { return database.Fail(code); }
  Result<std::vector<StoredCup>> Read(Statement& statement) const;
};

CalibrationStore::CalibrationStore(std::unique_ptr<Impl> impl)
    : impl_(std::move(impl)) {}
CalibrationStore::CalibrationStore(CalibrationStore&&) noexcept = default;
CalibrationStore& CalibrationStore::operator=(CalibrationStore&&) noexcept =
    default;
CalibrationStore::~CalibrationStore() = default;

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
  auto impl = std::make_unique<Impl>();
  if (auto opened = impl->database.Open(path, access); !opened) {
    return opened.error();
  }
  return CalibrationStore(std::move(impl));
}

Result<void> CalibrationStore::Begin() { return impl_->database.Begin(); }
Result<void> CalibrationStore::Commit() { return impl_->database.Commit(); }
void CalibrationStore::Rollback() { impl_->database.Rollback(); }

Result<AppendOutcome> CalibrationStore::Append(const StoredCup& cup) {
  sqlite3* database = impl_->database.connection();
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
  if (auto done = impl_->database.Do(insert); !done) return done.error();
  const std::int64_t id = sqlite3_last_insert_rowid(database);
  Statement test(database, "INSERT INTO test VALUES(?,?,?,?,?)");
  for (std::size_t i = 0; i < count; ++i) {
    const CupTest& t = cup.history.tests[i];
    test.Bind(id)
        .Bind(static_cast<std::int64_t>(i))
        .Bind(t.added_ml)
        .Bind(t.ratio)
        .Bind(t.rel_sd);
    if (auto done = impl_->database.Do(test); !done) return done.error();
    test.Reset();
  }
  return continues ? AppendOutcome::kContinued : AppendOutcome::kAdded;
}

Result<std::vector<StoredCup>> CalibrationStore::Impl::Read(
    Statement& statement) const {
  std::vector<StoredCup> cups;
  Statement tests(database.connection(),
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
      impl_->database.connection(),
      kCupColumns + "brand = ? AND" + kCounts + "ORDER BY id DESC LIMIT ?");
  statement.Bind(brand).Bind(most);
  return impl_->Read(statement);
}

Result<std::vector<StoredCup>> CalibrationStore::CupsWith(
    ThinnerKind thinner, std::int64_t most) const {
  Statement statement(
      impl_->database.connection(),
      kCupColumns + "thinner = ? AND" + kCounts + "ORDER BY id DESC LIMIT ?");
  statement.Bind(std::string(ThinnerKindName(thinner))).Bind(most);
  return impl_->Read(statement);
}

Result<std::vector<StoredCup>> CalibrationStore::AllCups() const {
  Statement statement(impl_->database.connection(),
                      kCupColumns + kCounts + "ORDER BY id");
  return impl_->Read(statement);
}

Result<std::vector<BrandEntry>> CalibrationStore::Brands(
    const std::string& brand_only) const {
  Statement statement(
      impl_->database.connection(),
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
      impl_->database.connection(),
      std::string("SELECT count(*), max(id) FROM cup WHERE"
                  " brand = ? AND (?2 IS NULL OR colour = ?2) AND") +
          kCounts);
  count.Bind(brand).Bind(colour);
  if (!count.Step()) return impl_->Fail(count.code());
  const std::int64_t cups = count.Integer(0);
  if (cups == 0) return cups;
  Statement insert(impl_->database.connection(),
                   "INSERT INTO forgetting(brand, colour, last_cup, at_utc)"
                   " VALUES(?,?,?,?)");
  insert.Bind(brand).Bind(colour).Bind(count.Integer(1)).Bind(now_utc);
  if (auto done = impl_->database.Do(insert); !done) return done.error();
  return cups;
}

Result<std::int64_t> CalibrationStore::Restore(const std::string& brand,
                                               const std::string& now_utc) {
  const auto counting = [&]() -> Result<std::int64_t> {
    Statement count(
        impl_->database.connection(),
        std::string("SELECT count(*) FROM cup WHERE brand = ? AND") + kCounts);
    count.Bind(brand);
    if (!count.Step()) return impl_->Fail(count.code());
    return count.Integer(0);
  };
  Result<std::int64_t> before = counting();
  if (!before) return before;
  Statement undo(impl_->database.connection(),
                 "UPDATE forgetting SET undone_utc = ? WHERE brand = ?"
                 " AND undone_utc IS NULL");
  undo.Bind(now_utc).Bind(brand);
  if (auto done = impl_->database.Do(undo); !done) return done.error();
  Result<std::int64_t> after = counting();
  if (!after) return after;
  return *after - *before;
}

Result<void> CalibrationStore::SaveSummary(const BrandSummary& summary,
                                           int engine) {
  Statement save(impl_->database.connection(),
                 "INSERT OR REPLACE INTO summary VALUES(?,?,?,?)");
  save.Bind(summary.brand)
      .Bind(static_cast<std::int64_t>(engine))
      .Bind(summary.ln_slope.value)
      .Bind(summary.ln_slope.sd);
  return impl_->database.Do(save);
}

Result<void> CalibrationStore::DropSummary(const std::string& brand) {
  Statement drop(impl_->database.connection(),
                 "DELETE FROM summary WHERE brand = ?");
  drop.Bind(brand);
  return impl_->database.Do(drop);
}

Result<std::vector<BrandSummary>> CalibrationStore::Summaries(
    int engine) const {
  std::vector<BrandSummary> summaries;
  if (impl_->database.format_version() < kFirstWithSummaries) return summaries;
  Statement statement(
      impl_->database.connection(),
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
  Statement copy(impl_->database.connection(), "VACUUM INTO ?");
  copy.Bind(path);
  copy.Step();
  if (copy.code() != SQLITE_OK) {
    std::filesystem::remove(path, ignored);
    return StoreFailure(copy.code(), path);
  }
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  const bool safe = file >= 0 && ::fsync(file) == 0;
  if (file >= 0) ::close(file);
  if (!safe) return StoreFailure(SQLITE_IOERR, path);
  return {};
}

}  // namespace flowkin
