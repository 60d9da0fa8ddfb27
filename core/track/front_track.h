#pragma once

#include <array>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace flowkin {

/// How long a pixel is on the surface that is filmed.
struct ImageScale {
  double mm_per_px = 0.0;  ///< > 0, at the centre of what is measured
  double rel_sd = 0.0;     ///< relative standard uncertainty, >= 0
  std::string method;      ///< "given" or "ruler"
  /// Direction along which the scale holds, radians from +x towards +y; empty
  /// if it was given and so holds for every direction.
  std::optional<double> direction_rad;
  /// Ends of the row of marks in the picture, px; only for "ruler".
  std::array<double, 4> line_px{};  ///< x0, y0, x1, y1
};

/// Number of equal slices of the outline that are followed on their own.
inline constexpr int kFrontSectors = 8;

/// The outline of a puddle in one frame. Lengths are full-resolution pixels;
/// the outline is r(a) = radius + c2 cos 2a + s2 sin 2a + c3 cos 3a + s3 sin 3a
/// about the centre, a from +x towards +y.
struct FrontSample {
  double t_s = 0.0;
  double radius_px = 0.0;
  double radius_sd_px = 0.0;  ///< random part only
  double x_px = 0.0;          ///< centre in the frame
  double y_px = 0.0;
  double shift_x_px = 0.0;  ///< how far the background moved since the start
  double shift_y_px = 0.0;
  /// How many times as large the background is as at the start, about the
  /// picture's middle.
  double zoom = 1.0;
  /// That zoom explains the picture clearly better than none does.
  bool zoom_holds = false;
  double c2_px = 0.0, s2_px = 0.0;
  double c3_px = 0.0, s3_px = 0.0;
  double visible = 0.0;       ///< share of the outline that was seen, 0..1
  double in_picture = 1.0;    ///< share of it that lies in the picture, 0..1
  double roughness_px = 0.0;  ///< rms of the seen outline about the curve above
  /// Median distance of the slices from the curve, px; NaN where hidden.
  std::array<float, kFrontSectors> sector_px{};
};

/// What the pictures as such were like, so that a refusal can say why.
struct PictureFacts {
  int frames = 0;
  double first_t_s = 0.0;
  double last_t_s = 0.0;
  double brightness = 0.0;     ///< brightest percent of luma, 0..1, median
  double detail = 0.0;         ///< strongest edges, grey levels per px
  double frozen_s = 0.0;       ///< longest run of equal frames, s
  double changed_share = 0.0;  ///< most of the picture that differed from the
                               ///< first frame, 0..1
  bool size_changed = false;
};

/// Radius of a spreading puddle against time, as seen.
struct FrontTrack {
  int width_px = 0;
  int height_px = 0;
  PictureFacts picture;
  /// Empty when no round outline was followed.
  std::vector<FrontSample> samples;
  /// First paint on the tile, extrapolated from the first growth seen; empty
  /// when the clip does not show it.
  std::optional<double> start_s;
  double start_sd_s = 0.0;
  /// The outline was already there when the clip began.
  bool there_from_start = false;
  /// The outline met the border of the picture.
  bool left_picture = false;
  /// Time the outline was last seen, s.
  double last_seen_s = 0.0;
  /// How many other round outlines grew in another place.
  int other_puddles = 0;
  /// How often a new one began in the same place after this one was gone.
  int later_puddles = 0;
  /// Width of the edge from 20 to 80 % of its step, px.
  double edge_width_px = 0.0;
  /// Contrast of paint and tile over the noise of a pixel.
  double contrast_to_noise = 0.0;
  /// The paint has the tile's own colour; its rim alone was followed.
  bool rim_only = false;
  /// The puddle was lost and found elsewhere: camera or tile was moved.
  bool moved = false;
  std::optional<ImageScale> scale;
  double scale_zoom = 1.0;  ///< FrontSample::zoom where the scale was read
  /// Why there is no scale, or what to know about it; may be empty.
  std::string scale_note;
};

/// Writes the samples as CSV with a header line; units are in the names.
void WriteFrontTrace(std::ostream& out, const FrontTrack& track);

}  // namespace flowkin
