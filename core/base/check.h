#pragma once

#include <cstdio>
#include <cstdlib>

/// Ends the program when a condition that only a bug in flowkin can break does
/// not hold. Always armed. Not for bad input: that is an Error or a refusal.
#define FLOWKIN_CHECK(condition)                         \
  do {                                                   \
    if (!(condition)) {                                  \
      std::fprintf(stderr,                               \
                   "%s:%d: internal check failed: %s\n", \
                   __FILE__,                             \
                   __LINE__,                             \
                   #condition);                          \
      std::abort();                                      \
    }                                                    \
  } while (false)
