#include "app/cli/measurement_text.h"

namespace flowkin {

Json EventsDocument(const FlowMeasurement& measurement) {
  Json events = Json::object();
  switch (measurement.kind) {
    case TestKind::kStream:
      events["lift_s"] = JsonNumber(measurement.lift_s);
      events["break_s"] = JsonNumber(measurement.break_s);
      events["drips_s"] = Json::array();
      for (const double drip_s : measurement.drips_s) {
        events["drips_s"].push_back(JsonNumber(drip_s));
      }
      break;
    case TestKind::kLevel:
      events["laid_s"] = JsonNumber(measurement.laid_s);
      break;
    case TestKind::kPuddle:
      events["start_s"] = JsonNumber(measurement.start_s);
      break;
  }
  return events;
}

}  // namespace flowkin
