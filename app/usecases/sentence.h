#pragma once

#include <string>
#include <vector>

namespace flowkin {

/// A sentence of the engine without what changes in it: "'Lagoon' flows 1.4
/// times" is "'%1' flows %2 times" with "Lagoon" and "1.4". Days stay whole.
struct SentenceParts {
  struct Part {
    std::string text;
    bool number = false;
  };
  std::string pattern;
  std::vector<Part> parts;
};
SentenceParts TakeApart(const std::string& sentence);

/// `pattern` with %1 to %9 replaced.
std::string PutTogether(const std::string& pattern,
                        const std::vector<std::string>& parts);

}  // namespace flowkin
