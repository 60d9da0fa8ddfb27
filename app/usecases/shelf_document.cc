#include "app/usecases/shelf_document.h"

namespace flowkin {

Result<std::vector<ShelfJar>> ReadShelf(const std::string& path,
                                        std::istream& fallback) {
  return ReadDocument(
      path, fallback, "flowkin-shelf", 1, [](const JsonFields& fields) {
        std::vector<ShelfJar> shelf;
        for (const JsonFields& each : fields.Objects("jars")) {
          ShelfJar jar;
          jar.jar.name = each.NeededText("name");
          const std::string role = each.Text("role");
          if (!role.empty() && !jar.SetRole(role)) {
            each.RefuseValue("role",
                             "must be base coat, colour, activator or medium");
          }
          jar.jar.volume_ml = each.NeededNumber("volume_ml");
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

Json ShelfDocument(const std::vector<ShelfJar>& shelf, Day today) {
  Json document;
  document["jars"] = Json::array();
  for (const ShelfJar& jar : UseFirst(shelf)) {
    const KeepsUntil keeps = HowLongItKeeps(jar.jar.mixed, jar.jar.watered);
    Json each;
    if (jar.id != 0) each["jar"] = jar.id;
    each["name"] = jar.jar.name;
    each["role"] = jar.RoleName();
    each["volume_ml"] = JsonNumber(jar.jar.volume_ml);
    each["mixed_on"] = FormatDay(jar.jar.mixed);
    each["watered"] = jar.jar.watered;
    each["state"] = JarStateName(StateOfJar(jar.jar, today));
    each["use_first_from"] = FormatDay(keeps.use_first);
    each["keeps_until"] = FormatDay(keeps.discard);
    document["jars"].push_back(std::move(each));
  }
  return document;
}

}  // namespace flowkin
