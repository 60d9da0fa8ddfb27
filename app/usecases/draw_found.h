#pragma once

#include <opencv2/core.hpp>

#include "core/flow/measurement.h"
#include "core/track/front_track.h"
#include "core/track/relief_track.h"
#include "core/track/stream_track.h"

namespace flowkin {

// What a test found, drawn into an 8-bit BGR picture of the clip's upright
// size, as it stood `t_s` seconds after the first frame. Lines only; lettering
// is the overlay's.

/// Stick edge, paint surface and both sides of the stream, in another colour
/// once it has broken.
void DrawStream(cv::Mat& bgr,
                double t_s,
                const StreamTrack& track,
                const FlowMeasurement& measurement);

/// Outline of the paint that levels and, along the lower edge, the relief left
/// against time.
void DrawRelief(cv::Mat& bgr,
                double t_s,
                const ReliefTrack& track,
                const FlowMeasurement& measurement);

/// Outline of the puddle, its centre, the ruler found, and its radius against
/// time along the lower edge.
void DrawFront(cv::Mat& bgr, double t_s, const FrontTrack& track);

}  // namespace flowkin
