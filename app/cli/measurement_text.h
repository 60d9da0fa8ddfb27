#pragma once

#include "app/cli/terminal.h"
#include "core/flow/measurement.h"

namespace flowkin {

/// The moments a test found, null where it did not: "lift_s", "break_s" and
/// "drips_s", or "laid_s", or "start_s".
Json EventsDocument(const FlowMeasurement& measurement);

}  // namespace flowkin
