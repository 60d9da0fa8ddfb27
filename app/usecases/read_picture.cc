#include "app/usecases/read_picture.h"

#include <iterator>
#include <opencv2/imgcodecs.hpp>
#include <vector>

#include "app/usecases/read_file.h"

namespace flowkin {

Result<cv::Mat> ReadPicture(const std::string& path) {
  // The library's own reading of files prints warnings of its own.
  Result<std::ifstream> file = OpenToRead(path);
  if (!file) return file.error();
  const std::vector<char> bytes{std::istreambuf_iterator<char>(*file),
                                std::istreambuf_iterator<char>()};
  cv::Mat picture;
  try {
    if (!bytes.empty()) {
      picture = cv::imdecode(bytes, cv::IMREAD_COLOR);  // follows the EXIF turn
    }
  } catch (const cv::Exception&) {
    picture.release();
  }
  if (picture.empty()) {
    return Error{ErrorCode::kUnreadable,
                 "'" + path +
                     "' is no picture that can be read; save it as JPEG or "
                     "PNG."};
  }
  return picture;
}

}  // namespace flowkin
