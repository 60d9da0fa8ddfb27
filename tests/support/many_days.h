#pragma once

#include <string>

namespace flowkin::testing {

/// Puts `days` sessions with 20 notes each into an empty book, numbered from 1;
/// every one holds "lagoon", "cells" and "swipe", day i also "xi". Fails the
/// process where that is not possible.
void FillWithDays(const std::string& store, int days);

}  // namespace flowkin::testing
