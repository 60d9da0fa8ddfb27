// libFuzzer target: any bytes as a cup and as an exported brand book.

#include <cstddef>
#include <cstdint>
#include <sstream>
#include <string>

#include "app/cli/cup_document.h"
#include "core/base/check.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data,
                                      std::size_t size) {
  const std::string bytes(reinterpret_cast<const char*>(data), size);
  std::istringstream as_book(bytes);
  const auto book = flowkin::ReadBookDocument(as_book);
  if (book) {
    // What was read can be written, and reads the same.
    std::istringstream again(flowkin::BookDocument(*book).dump());
    const auto copy = flowkin::ReadBookDocument(again);
    FLOWKIN_CHECK(copy.has_value() && copy->size() == book->size());
  } else {
    FLOWKIN_CHECK(!book.error().message.empty());
  }
  std::istringstream as_cup(bytes);
  const auto cup = flowkin::ReadCupDocument(as_cup);
  if (cup) {
    const auto report = flowkin::AdviseDose(cup->request, nullptr);
    FLOWKIN_CHECK(report.has_value());
  } else {
    FLOWKIN_CHECK(!cup.error().message.empty());
  }
  return 0;
}
