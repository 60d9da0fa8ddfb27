#include "app/usecases/load_photo.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>
#include <utility>

#include "app/usecases/read_picture.h"

namespace flowkin {

Result<Photo> LoadPhoto(const std::string& path, int most_px) {
  Result<cv::Mat> read = ReadPicture(path);
  if (!read) return read.error();
  cv::Mat picture = *std::move(read);
  try {
    const double scale =
        static_cast<double>(most_px) / std::max(picture.cols, picture.rows);
    if (scale < 1.0) {
      cv::resize(picture, picture, {}, scale, scale, cv::INTER_AREA);
    }
    cv::cvtColor(picture, picture, cv::COLOR_BGR2RGB);
  } catch (const cv::Exception&) {
    return Error{ErrorCode::kInternal,
                 "'" + path +
                     "' could not be worked on; there may not be enough "
                     "memory."};
  }
  Photo photo;
  photo.width = picture.cols;
  photo.height = picture.rows;
  for (int row = 0; row < picture.rows; ++row) {
    const std::uint8_t* line = picture.ptr<std::uint8_t>(row);
    photo.rgb.insert(photo.rgb.end(), line, line + 3 * picture.cols);
  }
  return photo;
}

}  // namespace flowkin
