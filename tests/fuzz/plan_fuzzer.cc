// libFuzzer target: any bytes as a plan, a table of cups, a shelf and labels,
// worked out as the commands do.

#include <cstddef>
#include <cstdint>
#include <sstream>
#include <string>

#include "app/usecases/journal_document.h"
#include "app/usecases/plan_document.h"
#include "app/usecases/shelf_document.h"
#include "core/base/check.h"
#include "core/planning/readiness.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data,
                                      std::size_t size) {
  using namespace flowkin;
  const std::string bytes(reinterpret_cast<const char*>(data), size);
  std::istringstream as_plan(bytes);
  const auto plan = ReadPlanRequest("", as_plan, StartingTechniques());
  if (plan) {
    const auto report = PlanPour(*plan);
    FLOWKIN_CHECK(report.has_value() || !report.error().message.empty());
    if (report) PlanDocument(*report, *plan).dump();
  }
  std::istringstream as_table(bytes);
  const auto table = ReadDayFacts("", as_table);
  if (table) {
    const auto readiness = CheckReadiness(*table);
    FLOWKIN_CHECK(readiness.has_value() || !readiness.error().message.empty());
  }
  std::istringstream as_shelf(bytes);
  const auto shelf = ReadShelf("", as_shelf);
  if (shelf) UsableLeftOvers(*shelf, *ParseDay("2026-03-01"));
  return 0;
}
