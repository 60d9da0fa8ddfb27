#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "calibration/store/database.h"
#include "core/base/result.h"
#include "core/base/utc_time.h"
#include "core/planning/keeping.h"
#include "core/planning/pour_plan.h"

namespace flowkin {

using JarId = std::int64_t;

/// A jar on her shelf.
struct ShelfJar {
  JarId id = 0;  ///< in the book; 0: not in one
  Jar jar;       ///< with the volume that is left
  PourRole role = PourRole::kColour;
  bool medium = false;  ///< pouring medium; the role does not matter then

  /// "base coat", "colour", "activator" or "medium".
  const char* RoleName() const;
  bool SetRole(const std::string& name);  ///< false where there is no such role
  /// As a plan takes it.
  LeftOver AsLeftOver(Day today) const;
};

/// What of the shelf may go into a pour today, with its age; overdue jars are
/// left where they are.
std::vector<LeftOver> UsableLeftOvers(const std::vector<ShelfJar>& shelf,
                                      Day today);

/// The jars in the order in which to use them, as UseFirst.
std::vector<ShelfJar> UseFirst(std::vector<ShelfJar> shelf);

/// What is kept beside paints and days: jars that are left over and amounts by
/// technique that are hers, in the same file as the brand book. Both are logs:
/// nothing is overwritten.
class WorkshopStore {
 public:
  using Access = Database::Access;

  /// As CalibrationStore::Open. A book of an older format, opened for reading,
  /// holds neither.
  static Result<WorkshopStore> Open(const std::string& path, Access access);

  WorkshopStore(WorkshopStore&&) noexcept;
  WorkshopStore& operator=(WorkshopStore&&) noexcept;
  ~WorkshopStore();

  /// kInvalidArgument where the name is empty or the volume is not 0.1 mL to
  /// 1000 L.
  Result<JarId> PutOnShelf(const ShelfJar& jar, UtcTime now);
  /// Takes `ml` out of a jar, or all of it; negative puts back what was taken
  /// by mistake. kInvalidArgument where there is no such jar or not so much.
  Result<void> TakeFromJar(JarId jar, double ml, UtcTime now);
  /// Jars with something left, oldest entry first.
  Result<std::vector<ShelfJar>> Shelf() const;

  /// Her amounts for a way of pouring, in place of the starting ones or of her
  /// own of the same name.
  Result<void> KeepTechnique(const Technique& technique, UtcTime now);
  /// Her amounts of that name count no more. kInvalidArgument where she has
  /// none.
  Result<void> DropTechnique(const std::string& name, UtcTime now);
  /// Hers, by name.
  Result<std::vector<Technique>> Techniques() const;

 private:
  struct Impl;
  explicit WorkshopStore(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

/// The starting table with `own` in place of entries of the same name, and
/// after it.
std::vector<Technique> WithOwn(const std::vector<Technique>& own);

}  // namespace flowkin
