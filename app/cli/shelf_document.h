#pragma once

#include <istream>
#include <string>
#include <vector>

#include "app/cli/json_fields.h"
#include "app/usecases/make_medium.h"
#include "app/usecases/plan_pour.h"

namespace flowkin {

/// A jar as the shelf document holds it.
struct ShelfJar {
  Jar jar;
  LeftOver left_over;  ///< without its age
};

/// {"format": "flowkin-shelf", "version": 1, "jars": [{"name", "role",
/// "volume_ml", "mixed_on", "watered"}]}.
Result<std::vector<ShelfJar>> ReadShelf(const std::string& path,
                                        std::istream& fallback);

/// Today, or the day that is given; kInvalidArgument where it is none.
Result<Day> ReadToday(const std::string& given);

/// What of the shelf may go into a pour today, with its age; overdue jars are
/// left where they are.
std::vector<LeftOver> UsableLeftOvers(const std::vector<ShelfJar>& shelf,
                                      Day today);

}  // namespace flowkin
