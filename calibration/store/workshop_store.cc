#include "calibration/store/workshop_store.h"

#include <sqlite3.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace flowkin {
namespace {

constexpr int kFirstWithWorkshop = 5;
constexpr double kLeast_ml = 0.1;
constexpr double kMost_ml = 1e6;

constexpr const char* kLeftMl =
    "(volume_ml - coalesce((SELECT sum(taken_ml) FROM jar_use"
    " WHERE jar = jar.id), 0))";

Error Wrong(std::string message) {
  return {ErrorCode::kInvalidArgument, std::move(message)};
}

Error Damaged() {
  return {ErrorCode::kUnreadable,
          "A jar in the brand book is damaged; restore a backup of it."};
}

bool Within(double value, double low, double high) {
  return value >= low && value <= high;  // false for not-a-number
}

Result<void> CheckName(const std::string& name) {
  if (name.empty()) return Wrong("It needs a name.");
  if (name.size() > 200) return Wrong("A name holds at most 200 bytes.");
  return {};
}

}  // namespace

const char* ShelfJar::RoleName() const {
  return medium ? "medium" : PourRoleName(role);
}

bool ShelfJar::SetRole(const std::string& name) {
  medium = name == "medium";
  if (medium) return true;
  for (const PourRole each :
       {PourRole::kBaseCoat, PourRole::kColour, PourRole::kActivator}) {
    if (name == PourRoleName(each)) {
      role = each;
      return true;
    }
  }
  return false;
}

LeftOver ShelfJar::AsLeftOver(Day today) const {
  return {jar.name,
          role,
          medium,
          jar.volume_ml,
          static_cast<double>((today - jar.mixed).count())};
}

std::vector<LeftOver> UsableLeftOvers(const std::vector<ShelfJar>& shelf,
                                      Day today) {
  std::vector<LeftOver> usable;
  for (const ShelfJar& jar : shelf) {
    if (jar.jar.mixed > today ||
        StateOfJar(jar.jar, today) == JarState::kOverdue) {
      continue;
    }
    usable.push_back(jar.AsLeftOver(today));
  }
  return usable;
}

std::vector<ShelfJar> UseFirst(std::vector<ShelfJar> shelf) {
  std::stable_sort(
      shelf.begin(), shelf.end(), [](const ShelfJar& a, const ShelfJar& b) {
        return GoesBefore(a.jar, b.jar);
      });
  return shelf;
}

std::vector<Technique> WithOwn(const std::vector<Technique>& own) {
  std::vector<Technique> table = StartingTechniques();
  for (const Technique& technique : own) {
    const auto same =
        std::find_if(table.begin(), table.end(), [&](const Technique& each) {
          return each.name == technique.name;
        });
    if (same == table.end()) {
      table.push_back(technique);
    } else {
      *same = technique;
    }
  }
  return table;
}

struct WorkshopStore::Impl {
  Database database;

  bool HasWorkshop() const {
    return database.format_version() >= kFirstWithWorkshop;
  }
};

WorkshopStore::WorkshopStore(std::unique_ptr<Impl> impl)
    : impl_(std::move(impl)) {}
WorkshopStore::WorkshopStore(WorkshopStore&&) noexcept = default;
WorkshopStore& WorkshopStore::operator=(WorkshopStore&&) noexcept = default;
WorkshopStore::~WorkshopStore() = default;

Result<WorkshopStore> WorkshopStore::Open(const std::string& path,
                                          Access access) {
  auto impl = std::make_unique<Impl>();
  if (auto opened = impl->database.Open(path, access); !opened) {
    return opened.error();
  }
  return WorkshopStore(std::move(impl));
}

Result<JarId> WorkshopStore::PutOnShelf(const ShelfJar& jar, UtcTime now) {
  if (auto named = CheckName(jar.jar.name); !named) return named.error();
  if (!Within(jar.jar.volume_ml, kLeast_ml, kMost_ml)) {
    return Wrong("A jar must hold 0.1 mL to 1000 L.");
  }
  Statement insert(impl_->database.connection(),
                   "INSERT INTO jar(name, role, volume_ml, mixed_on, watered,"
                   " at_utc) VALUES(?,?,?,?,?,?)");
  insert.Bind(jar.jar.name)
      .Bind(std::string(jar.RoleName()))
      .Bind(jar.jar.volume_ml)
      .Bind(FormatDay(jar.jar.mixed))
      .Bind(std::int64_t{jar.jar.watered ? 1 : 0})
      .Bind(FormatUtc(now));
  if (auto done = impl_->database.Do(insert); !done) return done.error();
  return JarId{sqlite3_last_insert_rowid(impl_->database.connection())};
}

Result<void> WorkshopStore::TakeFromJar(JarId jar, double ml, UtcTime now) {
  Database& database = impl_->database;
  if (auto begun = database.Begin(); !begun) return begun.error();
  const auto give_up = [&](Error error) -> Result<void> {
    database.Rollback();
    return error;
  };
  Statement known(
      database.connection(),
      std::string("SELECT volume_ml, ") + kLeftMl + " FROM jar WHERE id = ?");
  known.Bind(jar);
  if (!known.Step()) {
    return give_up(known.code() == SQLITE_OK
                       ? Wrong("There is no such jar on the shelf.")
                       : database.Fail(known.code()));
  }
  const double left_ml = known.Number(1);
  // What is told with few digits must not leave a jar that holds nothing.
  const double slack_ml = 1e-6 * known.Number(0);
  if (!Within(ml, left_ml - known.Number(0) - slack_ml, left_ml + slack_ml) ||
      ml == 0.0) {
    return give_up(Wrong("There is not so much in this jar."));
  }
  Statement insert(database.connection(),
                   "INSERT INTO jar_use(jar, taken_ml, at_utc) VALUES(?,?,?)");
  insert.Bind(jar).Bind(std::min(ml, left_ml)).Bind(FormatUtc(now));
  if (auto done = impl_->database.Do(insert); !done)
    return give_up(done.error());
  return database.Commit();
}

Result<std::vector<ShelfJar>> WorkshopStore::Shelf() const {
  std::vector<ShelfJar> shelf;
  if (!impl_->HasWorkshop()) return shelf;
  Statement statement(
      impl_->database.connection(),
      std::string("SELECT id, name, role, mixed_on, watered, ") + kLeftMl +
          " AS left_ml FROM jar WHERE left_ml > 1e-6 * volume_ml ORDER BY id");
  while (statement.Step()) {
    ShelfJar jar;
    jar.id = statement.Integer(0);
    jar.jar.name = statement.Text(1);
    const std::optional<Day> mixed = ParseDay(statement.Text(3));
    if (!jar.SetRole(statement.Text(2)) || !mixed) return Damaged();
    jar.jar.mixed = *mixed;
    jar.jar.watered = statement.Integer(4) != 0;
    jar.jar.volume_ml = statement.Number(5);
    shelf.push_back(std::move(jar));
  }
  if (statement.code() != SQLITE_OK) {
    return impl_->database.Fail(statement.code());
  }
  return shelf;
}

Result<void> WorkshopStore::KeepTechnique(const Technique& technique,
                                          UtcTime now) {
  if (auto valid = Validate(technique); !valid) return valid;
  if (auto named = CheckName(technique.name); !named) return named;
  Statement insert(
      impl_->database.connection(),
      "INSERT INTO technique(name, what, base_low, base, base_high,"
      " colours_low, colours, colours_high, activator_low, activator,"
      " activator_high, dropped, at_utc) VALUES(?,?,?,?,?,?,?,?,?,?,?,0,?)");
  insert.Bind(technique.name).Bind(technique.what);
  for (const Span* span : {&technique.base_ml_per_m2,
                           &technique.colours_ml_per_m2,
                           &technique.activator_ml_per_m2}) {
    insert.Bind(span->low).Bind(span->start).Bind(span->high);
  }
  insert.Bind(FormatUtc(now));
  return impl_->database.Do(insert);
}

Result<void> WorkshopStore::DropTechnique(const std::string& name,
                                          UtcTime now) {
  const Result<std::vector<Technique>> own = Techniques();
  if (!own) return own.error();
  if (std::none_of(own->begin(), own->end(), [&](const Technique& technique) {
        return technique.name == name;
      })) {
    return Wrong("There are no amounts of your own for '" + name + "'.");
  }
  Statement insert(
      impl_->database.connection(),
      "INSERT INTO technique(name, what, base_low, base, base_high,"
      " colours_low, colours, colours_high, activator_low, activator,"
      " activator_high, dropped, at_utc)"
      " VALUES(?,'',0,0,0,0,0,0,0,0,0,1,?)");
  insert.Bind(name).Bind(FormatUtc(now));
  return impl_->database.Do(insert);
}

Result<std::vector<Technique>> WorkshopStore::Techniques() const {
  std::vector<Technique> own;
  if (!impl_->HasWorkshop()) return own;
  Statement statement(
      impl_->database.connection(),
      "SELECT name, what, base_low, base, base_high, colours_low, colours,"
      " colours_high, activator_low, activator, activator_high FROM technique"
      " WHERE id IN (SELECT max(id) FROM technique GROUP BY name)"
      " AND dropped = 0 ORDER BY name");
  while (statement.Step()) {
    Technique technique;
    technique.name = statement.Text(0);
    technique.what = statement.Text(1);
    int column = 2;
    for (Span* span : {&technique.base_ml_per_m2,
                       &technique.colours_ml_per_m2,
                       &technique.activator_ml_per_m2}) {
      span->low = statement.Number(column++);
      span->start = statement.Number(column++);
      span->high = statement.Number(column++);
    }
    technique.source = Source::kArtist;
    own.push_back(std::move(technique));
  }
  if (statement.code() != SQLITE_OK) {
    return impl_->database.Fail(statement.code());
  }
  return own;
}

}  // namespace flowkin
