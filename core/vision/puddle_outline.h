#pragma once

#include <array>
#include <optional>

#include "core/track/front_track.h"
#include "core/video/frame.h"

namespace flowkin {

/// r(a) = r + c2 cos 2a + s2 sin 2a + c3 cos 3a + s3 sin 3a about (x, y);
/// luma px, a from +x towards +y.
struct OutlineShape {
  double x = 0.0, y = 0.0, r = 0.0;
  double c2 = 0.0, s2 = 0.0, c3 = 0.0, s3 = 0.0;

  double RadiusAt(double angle_rad) const;
};

/// One outline followed to a fraction of a pixel.
struct OutlineTrace {
  OutlineShape shape;
  double radius_sd_px = 0.0;  ///< random part
  double visible = 0.0;       ///< share of the rays that lie on the shape
  double off_picture = 0.0;   ///< share of the rays that leave the picture
  double roughness_px = 0.0;
  double edge_width_px = 0.0;  ///< 20 to 80 % of the step
  double contrast_to_noise = 0.0;
  /// The paint differs from the tile by its rim only.
  bool rim_only = false;
  float rim_weight = 0.0F;  ///< 1 over the rim's height in luma, if rim_only
  /// The tile is of more than one colour: what lay there before was used.
  bool patterned = false;
  std::array<float, 3> tile{};   ///< Y, Cb, Cr just outside
  std::array<float, 3> paint{};  ///< Y, Cb, Cr just inside
  std::array<float, kFrontSectors> sector_px{};
};

/// What lay there before the paint, and where it lies now: a point p of `frame`
/// is seen at middle + zoom (p - middle) + (dx, dy), px.
struct BareGround {
  const Frame* frame = nullptr;
  double dx_px = 0.0, dy_px = 0.0;
  double zoom = 1.0;
};

/// Follows the outline near `guess` along 128 rays. The edge is where the
/// signal, coming from the tile, has risen half way to the paint: for a blurred
/// step this is the step itself. The tile is what the ray crosses further out
/// or, where that is no one colour, what lay there before. For paint of the
/// tile's own colour it is the steepest place of the rim. Rays that are hidden
/// or disturbed are left out by a robust fit of the shape.
///
/// @param window_px  how far from the guess to look, px.
/// @param bare       of the frame's size; optional.
/// @return empty when fewer than a third of the rays agree on a shape.
std::optional<OutlineTrace> TraceOutline(const Frame& frame,
                                         const OutlineShape& guess,
                                         double window_px,
                                         const BareGround* bare = nullptr);

}  // namespace flowkin
