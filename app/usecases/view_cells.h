#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <stop_token>
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

/// What cells are counted on.
struct CellPicture {
  cv::Mat bgr;
  std::optional<double> at_s;  ///< when in the clip; empty for a photo
};
/// A photo, or of a short clip the picture that SteadyPicture finds.
/// kUnreadable where the file is neither, and for a clip whose reading was
/// asked to stop.
Result<CellPicture> ReadCellPicture(const std::string& path,
                                    const std::stop_token& stop = {});

/// Writes the picture of a clip as a PNG file into `folder` (made where it is
/// not there) under a name that is free, after the clip's; the journal shows
/// pictures, not clips. Returns its path.
Result<std::string> KeepCellPicture(const CellPicture& picture,
                                    const std::string& clip,
                                    const std::string& folder);

/// Finds the cells on the picture of `photo`.
Result<CellView> ViewPicture(const CellPicture& picture,
                             const CellPhoto& photo);
/// Reads it first.
Result<CellView> ViewPhoto(const CellPhoto& photo);

/// What the journal keeps of a measured view.
CellsCounted CountedOf(const CellView& view);

/// The picture with every cell of `cells` outlined, as a PNG or JPEG file by
/// the name's ending.
Result<void> DrawCells(const CellPicture& picture,
                       double mm_per_px,
                       const std::vector<Cell>& cells,
                       const std::string& out);

}  // namespace flowkin
