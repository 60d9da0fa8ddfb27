#include "app/cli/shelf_document.h"

#include "app/cli/cup_document.h"
#include "app/cli/plan_document.h"

namespace flowkin {

Result<std::vector<ShelfJar>> ReadShelf(const std::string& path,
                                        std::istream& fallback) {
  return ReadDocument(
      path, fallback, "flowkin-shelf", 1, [](const JsonFields& fields) {
        std::vector<ShelfJar> shelf;
        for (const JsonFields& each : fields.Objects("jars")) {
          ShelfJar jar;
          jar.left_over = ReadLeftOver(each);
          jar.jar.name = jar.left_over.name;
          jar.jar.volume_ml = jar.left_over.volume_ml;
          if (!(jar.jar.volume_ml >= 0.0 && jar.jar.volume_ml <= 1e6)) {
            each.RefuseValue("volume_ml", "must be 0 to 1000000");
          }
          const std::optional<Day> mixed =
              ParseDay(each.NeededText("mixed_on"));
          if (!mixed) {
            each.RefuseValue("mixed_on", "is no day; write it like 2026-03-01");
          }
          jar.jar.mixed = *mixed;
          jar.jar.watered = each.Flag("watered").value_or(false);
          shelf.push_back(std::move(jar));
        }
        return shelf;
      });
}

Result<Day> ReadToday(const std::string& given) {
  const std::string text = given.empty() ? NowUtc().substr(0, 10) : given;
  const std::optional<Day> today = ParseDay(text);
  if (!today) {
    return Error{ErrorCode::kInvalidArgument,
                 "'" + text + "' is no day; write it like 2026-03-01."};
  }
  return *today;
}

std::vector<LeftOver> UsableLeftOvers(const std::vector<ShelfJar>& shelf,
                                      Day today) {
  std::vector<LeftOver> usable;
  for (const ShelfJar& jar : shelf) {
    if (jar.jar.mixed > today ||
        StateOfJar(jar.jar, today) == JarState::kOverdue) {
      continue;
    }
    LeftOver left_over = jar.left_over;
    left_over.age_days = static_cast<double>((today - jar.jar.mixed).count());
    usable.push_back(std::move(left_over));
  }
  return usable;
}

}  // namespace flowkin
