// libFuzzer target: any bytes as a cup and as an exported brand book, which is
// imported twice.

#include <cstddef>
#include <cstdint>
#include <sstream>
#include <string>
#include <vector>

#include "app/cli/cup_document.h"
#include "app/usecases/brand_book.h"
#include "calibration/store/calibration_store.h"
#include "core/base/check.h"

namespace {

/// What was imported is known the second time; what is refused leaves nothing.
void ImportTwice(const std::vector<flowkin::StoredCup>& cups) {
  using flowkin::CalibrationStore;
  auto store =
      CalibrationStore::Open(":memory:", CalibrationStore::Access::kWrite);
  FLOWKIN_CHECK(store.has_value());
  const auto first = flowkin::ImportCups(*store, cups);
  if (!first) {
    FLOWKIN_CHECK(!first.error().message.empty());
    FLOWKIN_CHECK(store->AllCups()->empty());
    return;
  }
  const auto second = flowkin::ImportCups(*store, cups);
  FLOWKIN_CHECK(second.has_value() && second->added == 0 &&
                second->continued == 0);
  FLOWKIN_CHECK(flowkin::ListBrands(*store, {}).has_value());
}

}  // namespace

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
    ImportTwice(*book);
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
