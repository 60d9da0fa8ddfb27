#include "app/usecases/view_cells.h"

#include <cmath>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "app/usecases/read_picture.h"

namespace flowkin {

Result<CellView> ViewPhoto(const CellPhoto& photo) {
  const Result<cv::Mat> picture = ReadPicture(photo.path);
  if (!picture) return picture.error();
  CellViewOptions options;
  options.mm_per_px = photo.mm_per_px;
  options.rel_sd_scale = photo.rel_sd_scale;
  if (photo.part) {
    options.roi_px = {
        photo.part->x, photo.part->y, photo.part->width, photo.part->height};
  }
  return ViewCells(*picture, options);
}

CellsCounted CountedOf(const CellView& view) {
  return {static_cast<int>(view.cells.size()),
          std::exp(view.ln_per_cm2.value),
          view.per_cm2,
          view.median_mm,
          view.median_mm_interval};
}

Result<void> DrawCells(const CellPhoto& photo,
                       const CellView& view,
                       const std::string& out) {
  Result<cv::Mat> picture = ReadPicture(photo.path);
  if (!picture) return picture.error();
  try {
    for (const Cell& cell : view.cells) {
      const cv::Point centre(static_cast<int>(cell.x_px),
                             static_cast<int>(cell.y_px));
      const int radius =
          static_cast<int>(0.5 * cell.diameter_mm / photo.mm_per_px + 1.0);
      // White in black, to be seen on any paint.
      cv::circle(
          *picture, centre, radius + 1, cv::Scalar::all(0), 3, cv::LINE_AA);
      cv::circle(
          *picture, centre, radius + 1, cv::Scalar::all(255), 1, cv::LINE_AA);
    }
    if (cv::imwrite(out, *picture)) return {};
  } catch (const cv::Exception&) {
  }
  return Error{ErrorCode::kInternal,
               "'" + out +
                   "' cannot be written; the name must end in .png or .jpg and "
                   "its folder must be there."};
}

}  // namespace flowkin
