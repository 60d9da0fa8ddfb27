#pragma once

#include <string>
#include <vector>

#include "app/usecases/judge_palette.h"
#include "core/base/result.h"

namespace flowkin {

/// Reads a palette file (its form stands in README.md). Clip names are taken
/// from the file's own folder. kUnreadable where it is no palette file of this
/// version; kInvalidArgument where a value is out of range.
Result<std::vector<PaletteSet>> ReadPalette(const std::string& path);

}  // namespace flowkin
