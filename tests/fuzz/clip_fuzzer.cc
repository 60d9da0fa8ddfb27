// Entry point for libFuzzer (FLOWKIN_FUZZ=ON) and for the plain replay of its
// corpus (replay_main.cc).

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "tests/fuzz/read_all.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data,
                                      std::size_t size) {
  const std::string outcome =
      flowkin::testing_support::ReadAll(data, size, 1, 60);
  if (outcome != "read" && outcome != "refused") {
    std::fprintf(stderr, "%s\n", outcome.c_str());
    std::abort();
  }
  return 0;
}
