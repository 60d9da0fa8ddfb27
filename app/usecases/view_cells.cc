#include "app/usecases/view_cells.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <system_error>
#include <utility>

#include "app/usecases/frame_to_bgr.h"
#include "app/usecases/read_picture.h"
#include "app/usecases/write_file.h"
#include "core/video/file_frame_source.h"
#include "core/vision/steady_picture.h"

namespace flowkin {

namespace {

/// Every frame of the clip until `take` has enough.
template <typename Take>
Result<void> ForFrames(const std::string& clip, const Take& take) {
  const auto source = OpenClip(clip);
  if (!source) return source.error();
  while (true) {
    const Result<std::optional<Frame>> frame = (*source)->Next();
    if (!frame) return frame.error();
    if (!frame->has_value() || take(**frame)) return {};
  }
}

Result<CellPicture> ReadClip(const std::string& clip,
                             const std::stop_token& stop) {
  SteadyPicture steady;
  // Twice, because only the end tells which one it was.
  Result<void> read = ForFrames(clip, [&](const Frame& frame) {
    steady.Add(frame);
    return stop.stop_requested();
  });
  if (!read) return read.error();
  const std::optional<std::int64_t> index = steady.Finish();
  CellPicture picture;
  read = ForFrames(clip, [&](const Frame& frame) {
    if (stop.stop_requested()) return true;
    if (frame.index != index) return false;
    picture = {FrameToBgr(frame), frame.TimeS()};
    return true;
  });
  if (!read) return read.error();
  if (picture.bgr.empty()) {
    return Error{
        ErrorCode::kUnreadable,
        "'" + clip + "' holds no whole picture; film again or take a photo."};
  }
  return picture;
}

}  // namespace

Result<CellPicture> ReadCellPicture(const std::string& path,
                                    const std::stop_token& stop) {
  try {
    // It prints a warning of its own where there is no file.
    if (std::ifstream(path) && !cv::haveImageReader(path)) {
      if (Result<CellPicture> picture = ReadClip(path, stop); picture)
        return picture;
    }
  } catch (const cv::Exception&) {
  }
  Result<cv::Mat> picture = ReadPicture(path);
  if (!picture) return picture.error();
  return CellPicture{*std::move(picture), std::nullopt};
}

Result<std::string> KeepCellPicture(const CellPicture& picture,
                                    const std::string& clip,
                                    const std::string& folder) {
  namespace fs = std::filesystem;
  std::error_code failed;
  fs::create_directories(folder, failed);
  const std::string stem = fs::path(clip).stem().string();
  fs::path path;
  for (int i = 1; path.empty() || fs::exists(path, failed); ++i) {
    path = fs::path(folder) / (stem + "-" + std::to_string(i) + ".png");
  }
  std::vector<unsigned char> bytes;
  bool encoded = false;
  try {
    encoded = cv::imencode(".png", picture.bgr, bytes);
  } catch (const cv::Exception&) {
  }
  if (!encoded) {
    return Error{ErrorCode::kInternal,
                 "The picture of '" + fs::path(clip).filename().string() +
                     "' that was counted cannot be kept; count on a photo "
                     "instead."};
  }
  const Result<void> written =
      WriteWhole(path.string(), std::string(bytes.begin(), bytes.end()));
  if (!written) return written.error();
  return path.string();
}

Result<CellView> ViewPhoto(const CellPhoto& photo) {
  const Result<CellPicture> picture = ReadCellPicture(photo.path);
  if (!picture) return picture.error();
  return ViewPicture(*picture, photo);
}

Result<CellView> ViewPicture(const CellPicture& picture,
                             const CellPhoto& photo) {
  CellViewOptions options;
  options.mm_per_px = photo.mm_per_px;
  options.rel_sd_scale = photo.rel_sd_scale;
  if (photo.part) {
    options.roi_px = {
        photo.part->x, photo.part->y, photo.part->width, photo.part->height};
  }
  return ViewCells(picture.bgr, options);
}

CellsCounted CountedOf(const CellView& view) {
  return {static_cast<int>(view.cells.size()),
          std::exp(view.ln_per_cm2.value),
          view.per_cm2,
          view.median_mm,
          view.median_mm_interval};
}

Result<void> DrawCells(const CellPicture& picture,
                       double mm_per_px,
                       const std::vector<Cell>& cells,
                       const std::string& out) {
  try {
    cv::Mat drawn = picture.bgr.clone();
    for (const Cell& cell : cells) {
      const cv::Point centre(static_cast<int>(cell.x_px),
                             static_cast<int>(cell.y_px));
      const int radius =
          static_cast<int>(0.5 * cell.diameter_mm / mm_per_px + 1.0);
      // White in black, to be seen on any paint.
      cv::circle(drawn, centre, radius + 1, cv::Scalar::all(0), 3, cv::LINE_AA);
      cv::circle(
          drawn, centre, radius + 1, cv::Scalar::all(255), 1, cv::LINE_AA);
    }
    const std::string ending = std::filesystem::path(out).extension().string();
    std::vector<unsigned char> bytes;
    if (cv::haveImageWriter(ending) && cv::imencode(ending, drawn, bytes)) {
      return WriteWhole(out, std::string(bytes.begin(), bytes.end()));
    }
  } catch (const cv::Exception&) {
  }
  return Error{
      ErrorCode::kInternal,
      "'" + out + "' cannot be written; its name must end in .png or .jpg."};
}

}  // namespace flowkin
