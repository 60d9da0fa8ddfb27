#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

#include "core/flow/measurement.h"

namespace flowkin::testing_support {

/// Measures a clip from memory and checks what every result promises: finite
/// numbers, no negative uncertainty, events inside the clip, a reason with a
/// refusal. Returns "measured", "refused", or what was broken.
std::string MeasureAll(const std::uint8_t* data,
                       std::size_t size,
                       TestKind kind,
                       int threads);

}  // namespace flowkin::testing_support
