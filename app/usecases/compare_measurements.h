#pragma once

#include <span>

#include "core/flow/compare.h"

namespace flowkin {

/// CompareToBaseCoat on measurements that all have the outcome kMeasured, with
/// the level tests among them laid over one common decay. Options must be
/// valid. Pure.
Comparison CompareMeasurements(std::span<const FlowMeasurement> reference,
                               std::span<const FlowMeasurement> cup,
                               const CompareOptions& options);

}  // namespace flowkin
