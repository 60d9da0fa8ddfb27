#pragma once

#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "core/base/estimate.h"
#include "core/base/result.h"

namespace flowkin {

/// How a photo of cells or lacing is read.
struct CellViewOptions {
  double mm_per_px = 0.0;      ///< > 0
  double rel_sd_scale = 0.02;  ///< relative standard uncertainty of it, >= 0
  /// Part of the picture to read; empty for all of it.
  cv::Rect roi_px;
};

/// One closed cell.
struct Cell {
  double x_px = 0.0;  ///< centre, in the whole picture
  double y_px = 0.0;
  double diameter_mm = 0.0;  ///< of a disc of the same area
  cv::Rect box_px;
};

struct CellView {
  bool measured = false;
  std::string reason;       ///< of a refusal: what to do about it
  std::vector<Cell> cells;  ///< those not cut by the edge of what was read
  double area_cm2 = 0.0;    ///< of what was read
  /// ln of the cells per square centimetre; sd from how tiles of the picture
  /// differ, never less than chance alone (Poisson), and from the scale.
  Estimate ln_per_cm2;
  Interval per_cm2;             ///< level 0.95
  double median_mm = 0.0;       ///< diameter
  Interval median_mm_interval;  ///< level 0.95, from order statistics
  Estimate ln_median_mm;
  double lower_mm = 0.0;       ///< a tenth of the cells are smaller
  double upper_mm = 0.0;       ///< a tenth are larger
  double share_covered = 0.0;  ///< area of closed cells over what was read
};

/// Finds closed cells in an 8-bit colour photo (BGR): patches parted from what
/// surrounds them by a closed seam of another colour, whichever of the two is
/// the lighter. Uneven light is taken out first.
///
/// Cells cut by the edge are left out, which favours small ones; each cell
/// counts with the inverse of its chance to lie inside whole (Lantuejoul's
/// correction, told by Serra, Image Analysis and Mathematical Morphology, 1982,
/// ch. VIII; from memory).
///
/// Too few cells, too little contrast or too small cells are a refusal, not an
/// error. kInvalidArgument where options or picture are out of range.
Result<CellView> ViewCells(const cv::Mat& bgr, const CellViewOptions& options);

/// Two activators side by side.
enum class CellVerdict { kMore, kFewer, kAlike, kUndecided };
struct CellComparison {
  double density_ratio = 1.0;  ///< second over first
  Interval density_interval;   ///< level 0.95
  double size_ratio = 1.0;
  Interval size_interval;
  /// More or fewer where the interval says so; alike where it lies within a
  /// factor of 1.25; else undecided.
  CellVerdict verdict = CellVerdict::kUndecided;
};
/// Both must be measured. The scales' errors count as independent.
CellComparison CompareCells(const CellView& first, const CellView& second);

}  // namespace flowkin
