#pragma once

#include <istream>
#include <string>
#include <vector>

#include "app/usecases/json_fields.h"
#include "calibration/store/workshop_store.h"

namespace flowkin {

/// {"format": "flowkin-shelf", "version": 1, "jars": [{"name", "role",
/// "volume_ml", "mixed_on", "watered"}]}.
Result<std::vector<ShelfJar>> ReadShelf(const std::string& path,
                                        std::istream& fallback);

/// The jars in the order in which to use them, with what is to be done.
Json ShelfDocument(const std::vector<ShelfJar>& shelf, Day today);

}  // namespace flowkin
