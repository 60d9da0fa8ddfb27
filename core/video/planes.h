#pragma once

#include <array>
#include <cstdint>
#include <optional>

#include "core/video/frame.h"
#include "core/video/libav.h"

namespace flowkin {

/// How stored pictures are laid to be upright: first transposed, then flipped.
struct Orientation {
  bool transpose = false;
  bool flip_columns = false;  ///< left and right change places
  bool flip_rows = false;     ///< top and bottom change places

  bool IsIdentity() const { return !transpose && !flip_columns && !flip_rows; }
  /// True if text would read backwards in the stored picture.
  bool IsMirrored() const { return (transpose != flip_columns) != flip_rows; }
  /// Clockwise turn, 0, 90, 180 or 270; of a mirrored picture the turn after
  /// left and right were exchanged.
  int RotationDeg() const;

  /// Reads the first two columns of a display matrix (ISO/IEC 14496-12, track
  /// header: x' = a x + c y, y' = b x + d y, y down). Empty if it is not a
  /// quarter turn or a mirror image.
  static std::optional<Orientation> FromDisplayMatrix(
      const std::array<std::int32_t, 9>& matrix);
};

/// Turns decoded pictures into the planes of a Frame.
///
/// 8-bit 4:2:0 planes are not copied: they hold a reference to the decoder's
/// buffer, which lives as long as any cv::Mat that shares it.
class PlaneMaker {
 public:
  explicit PlaneMaker(Orientation orientation, double pixel_aspect = 1.0)
      : orientation_(orientation), pixel_aspect_(pixel_aspect) {}

  /// Sets luma, cb, cr and full_range. False if the layout cannot be converted.
  bool Fill(const AVFrame& picture, Frame* frame);

 private:
  bool Rescale(const AVFrame& picture, Frame* frame);

  Orientation orientation_;
  double pixel_aspect_;  ///< width / height of a pixel, as shown
  libav::ScalerPtr scaler_;
};

}  // namespace flowkin
