#pragma once

#include <string>

#include "core/base/result.h"

namespace flowkin {

/// Writes `bytes` to `path` so that it is there whole or not at all.
Result<void> WriteWhole(const std::string& path, const std::string& bytes);

}  // namespace flowkin
