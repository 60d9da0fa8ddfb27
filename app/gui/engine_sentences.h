#pragma once

#include <vector>

namespace flowkin {

/// Sentences of the engine with %1, %2, ... in place of numbers and names, in
/// English; translated in the context "engine".
const std::vector<const char*>& EngineSentencesWithValues();

}  // namespace flowkin
