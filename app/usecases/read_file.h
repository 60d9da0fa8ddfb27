#pragma once

#include <fstream>
#include <string>

#include "core/base/result.h"

namespace flowkin {

/// The file, open for reading byte by byte. kUnreadable where there is none and
/// where it is a folder, which a stream opens and fails on only later.
Result<std::ifstream> OpenToRead(const std::string& path);

}  // namespace flowkin
