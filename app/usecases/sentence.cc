#include "app/usecases/sentence.h"

#include <cstddef>

namespace flowkin {
namespace {

bool Digit(char c) { return c >= '0' && c <= '9'; }

/// Of a word: a digit behind it belongs to the word.
bool Letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' ||
         (static_cast<unsigned char>(c) & 0x80) != 0;
}

std::size_t DigitsFrom(const std::string& text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && Digit(text[end])) ++end;
  return end;
}

/// Length of the day (ISO 8601) that begins at `at`, or 0.
std::size_t DayAt(const std::string& text, std::size_t at) {
  constexpr char kShape[] = "dddd-dd-dd";
  constexpr std::size_t kLength = sizeof(kShape) - 1;
  if (at + kLength > text.size()) return 0;
  for (std::size_t i = 0; i < kLength; ++i) {
    const char c = text[at + i];
    if (kShape[i] == 'd' ? !Digit(c) : c != '-') return 0;
  }
  return kLength;
}

/// Length of the number that begins at `at`, or 0.
std::size_t NumberAt(const std::string& text, std::size_t at) {
  if (!Digit(text[at])) return 0;
  if (at > 0 &&
      (Letter(text[at - 1]) || Digit(text[at - 1]) || text[at - 1] == '.')) {
    return 0;
  }
  std::size_t end = DigitsFrom(text, at);
  if (end + 1 < text.size() && text[end] == '.' && Digit(text[end + 1])) {
    end = DigitsFrom(text, end + 1);
  }
  return end - at;
}

}  // namespace

SentenceParts TakeApart(const std::string& sentence) {
  SentenceParts result;
  const auto put_place = [&] {
    result.pattern += '%';
    result.pattern += std::to_string(result.parts.size() + 1);
  };
  for (std::size_t at = 0; at < sentence.size();) {
    if (sentence[at] == '\'') {
      const std::size_t end = sentence.find('\'', at + 1);
      if (end != std::string::npos) {
        result.pattern += '\'';
        put_place();
        result.pattern += '\'';
        result.parts.push_back({sentence.substr(at + 1, end - at - 1), false});
        at = end + 1;
        continue;
      }
    }
    const std::size_t day = DayAt(sentence, at);
    const std::size_t length = day > 0 ? day : NumberAt(sentence, at);
    if (length > 0) {
      put_place();
      result.parts.push_back({sentence.substr(at, length), day == 0});
      at += length;
    } else {
      result.pattern += sentence[at++];
    }
  }
  return result;
}

std::string PutTogether(const std::string& pattern,
                        const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const bool placed = pattern[i] == '%' && i + 1 < pattern.size() &&
                        pattern[i + 1] >= '1' && pattern[i + 1] <= '9';
    const auto part =
        placed ? static_cast<std::size_t>(pattern[i + 1] - '1') : parts.size();
    if (part < parts.size()) {
      text += parts[part];
      ++i;
    } else {
      text += pattern[i];
    }
  }
  return text;
}

}  // namespace flowkin
