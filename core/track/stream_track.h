#pragma once

#include <cstdint>
#include <vector>

namespace flowkin {

/// An upright edge of the raised stick or of the paint on it, or a line of what
/// stands behind.
struct CoatEdge {
  int band = 0;   ///< of the stick, 0 lowest
  int side = -1;  ///< -1 left of the stick's middle, 1 right of it
  /// Step over slope: as narrow as the picture is sharp if the paint ends here,
  /// wider where a round side falls into shade.
  double width_px = 0.0;
  /// Column, one per sample; NaN where it is not seen.
  std::vector<float> x_px;
};

/// One lift of the stick and what ran off it afterwards. Pixels are those of
/// the upright frame, rows count downwards, times are seconds of real time
/// since the clip's first frame.
struct StreamEpisode {
  double rest_s = 0.0;  ///< the raised stick was first seen at rest
  /// The stick's lower edge leaves the paint; meaningful if `lift_seen`.
  double lift_s = 0.0;
  double lift_sd_s = 0.0;
  bool lift_seen = false;

  double stick_center_x_px = 0.0;
  double stick_width_px = 0.0;
  double stick_bottom_y_px = 0.0;
  double pool_y_px = 0.0;
  /// How far the stick's edges are smeared.
  double edge_width_px = 0.0;
  /// Column of the stream at the stick's end when the stick came to rest.
  double stream_x_px = 0.0;
  /// Columns to the right per row down: not 0 if the camera is held askew.
  double stream_lean = 0.0;
  /// How far right of `stream_x_px` that puts the stream in row `y_px`, px.
  double AsidePx(double y_px) const {
    return stream_lean * (y_px - stick_bottom_y_px);
  }

  /// The fall from stick to paint is cut into this many equal pieces, piece 0
  /// uppermost.
  int num_pieces = 0;
  std::vector<double> t_s;
  /// How much of the stream of a moment ago is still there: about 1 while it
  /// runs, about 0 where it has gone. [sample * num_pieces + piece]
  std::vector<float> presence;
  std::vector<float> presence_sd;
  /// Contrast against what stands behind, in standard deviations of the
  /// picture's noise; about 1 where nothing is. Same layout.
  std::vector<float> strength;
  /// Where the moments begin at which the stream is taken to have gone: they
  /// show what stands behind it.
  double background_from_s = 0.0;
  /// Share of the contrast of the line that the stream drew a moment ago which
  /// still stands there at the end: about 0 if it broke, about 1 if it runs on.
  /// One per sample, median of the pieces and its standard error.
  std::vector<float> line_left;
  std::vector<float> line_left_sd;
  /// For how long its picture has not changed at all, s: a codec that spares
  /// bits shows what was there before. Same layout.
  std::vector<float> unchanged_s;
  /// Width of the stream at half its contrast, px; negative where the picture
  /// does not tell it. Same layout.
  std::vector<float> width_px;
  /// Sideways shift of the stream since `rest_s`, one per sample.
  std::vector<float> shift_px;
  /// Mean change of the whole picture since the picture before, grey levels,
  /// one per sample.
  std::vector<float> change;
  /// Edges of the stick while its coat drains, followed at `coat_t_s`.
  std::vector<double> coat_t_s;
  std::vector<CoatEdge> coat_edges;
  /// Strength of a second stream off the stick or beside it, as a share of the
  /// first.
  double second_stream = 0.0;
};

/// What StreamTracker saw of a whole clip.
struct StreamTrack {
  int width_px = 0;
  int height_px = 0;
  std::int64_t num_frames = 0;
  double duration_s = 0.0;
  /// Of the reduced picture, 0 to 255, mean over the clip.
  double mean_luma = 0.0;
  double luma_spread = 0.0;
  /// Mean strength of fine detail against `luma_spread`; near 0 in a blurred
  /// picture.
  double sharpness = 0.0;
  /// Largest share of the picture that changed within a tenth of a second.
  double most_motion = 0.0;
  /// Times something upright came to rest whose way up was not seen.
  int rests_without_lift = 0;
  std::vector<StreamEpisode> episodes;
};

}  // namespace flowkin
