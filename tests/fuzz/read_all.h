#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

namespace flowkin::testing_support {

/// Reads a clip from memory to its end, or to `max_frames`, and checks what
/// the reader promises of any input: steady picture size, rising times, one
/// message on failure. Returns "read", "refused", or what was broken.
std::string ReadAll(const std::uint8_t* data,
                    std::size_t size,
                    int threads,
                    std::int64_t max_frames);

}  // namespace flowkin::testing_support
