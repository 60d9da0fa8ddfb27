#pragma once

#include "core/flow/measurement.h"
#include "core/track/stream_track.h"

namespace flowkin {

struct StreamTestOptions {
  /// How the break time grows with the kinematic viscosity, from the user's
  /// own dilution data: d ln(break time) / d ln(nu), within 0.2 .. 2. Without
  /// it, a value from solving the slender-thread equations over the bench's
  /// range stands in, see stream_test.cc.
  std::optional<Estimate> break_time_exponent;
  /// Set by hand, seconds since the clip's first frame. Each stands in for what
  /// the track shows; doubts about the picture that only concern that event no
  /// longer refuse the clip.
  std::optional<double> lift_s;
  std::optional<double> break_s;
};

/// Reads lift, break and drips off a track and gives the stream test's
/// proxies:
///  - break_time [s]: from the lift to the first gap in the stream;
///  - drip_interval [s]: time between drips after the break, brought to one
///    second after the lift; at equal drop size it goes with nu^(-1/2)
///    [Jeffreys1930]: more paint is left on the stick the thicker it is. Needs
///    three drips.
///  - thinning_rate [px/s]: speed at which the neck's width shrinks just
///    before it pinches, ~ surface tension / viscosity [Papageorgiou1995];
///    only where the picture resolves it.
///
/// Refuses, with the reason: no lift in the clip, no break, two lifts, two
/// streams, a picture too dark or blurred to tell; events set by hand that do
/// not lie in order within the clip.
FlowMeasurement MeasureStream(const StreamTrack& track,
                              const StreamTestOptions& options = {});

}  // namespace flowkin
