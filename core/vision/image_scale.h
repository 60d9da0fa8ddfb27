#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <string>

#include "core/track/front_track.h"

namespace flowkin {

/// A place in the picture, px.
struct PixelCircle {
  double x = 0.0, y = 0.0, r = 0.0;
};

struct ScaleSearch {
  std::optional<ImageScale> scale;
  /// For the person: why there is none, or what was assumed. May be empty.
  std::string note;
};

/// Reads the scale off the marks of a ruler lying in the picture, along rows or
/// columns within about 10 degrees.
///
/// The evenly spaced lines are found by autocorrelation of the rows; their
/// spacing is the slope of the phase of the comb (which also gives how the
/// spacing changes along the ruler when the camera is not square to it). That
/// the spacing is one millimetre is concluded only from longer marks at every
/// fifth and tenth line; halves of halves (an inch scale), or marks all of one
/// length, give no scale but a note with the spacing in px.
///
/// @param luma    8-bit plane, full resolution.
/// @param target  where the scale is wanted; its disc is not searched. The
///                spacing is carried there along the ruler; across the ruler a
///                camera that is not square makes an error that enters
///                `rel_sd`.
ScaleSearch FindRulerScale(const cv::Mat& luma, const PixelCircle& target);

}  // namespace flowkin
