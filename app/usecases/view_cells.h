#pragma once

#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/session/palette_session.h"
#include "core/vision/cell_view.h"

namespace flowkin {

/// Part of a picture, px from its upper left corner.
struct PicturePart {
  int x = 0;
  int y = 0;
  int width = 0;
  int height = 0;
};

struct CellPhoto {
  std::string path;
  double mm_per_px = 0.0;
  double rel_sd_scale = 0.02;
  std::optional<PicturePart> part;
};

/// Reads the photo and finds its cells. kUnreadable where it is no picture.
Result<CellView> ViewPhoto(const CellPhoto& photo);

/// What the journal keeps of a measured view.
CellsCounted CountedOf(const CellView& view);

/// The photo with every counted cell outlined, as a PNG or JPEG file by the
/// name's ending.
Result<void> DrawCells(const CellPhoto& photo,
                       const CellView& view,
                       const std::string& out);

}  // namespace flowkin
