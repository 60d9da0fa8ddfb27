#include "tests/support/cell_tile.h"

#include <chrono>
#include <opencv2/imgcodecs.hpp>

#include "core/base/check.h"
#include "core/video/clip_writer.h"

namespace flowkin::testing_support {

std::string WriteCellTile(const std::string& path, int across, int down) {
  cv::Mat tile(40 * down + 20,
               40 * across + 20,
               CV_8UC3,
               cv::Scalar(220.0, 224.0, 230.0));
  for (int row = 0; row < down; ++row) {
    for (int column = 0; column < across; ++column) {
      tile(cv::Rect(40 * column + 20, 40 * row + 20, 20, 20))
          .setTo(cv::Scalar(32.0, 48.0, 200.0));
    }
  }
  FLOWKIN_CHECK(cv::imwrite(path, tile));
  return path;
}

void WriteRunDown(const std::string& photo, const std::string& path) {
  const cv::Mat tile = cv::imread(photo);
  const cv::Mat dark(tile.size(), CV_8UC3, cv::Scalar::all(10.0));
  const auto writer = ClipWriter::Create(path);
  FLOWKIN_CHECK(writer.has_value());
  for (int i = 0; i < 60; ++i) {
    FLOWKIN_CHECK(
        (*writer)
            ->Add(i < 40 ? tile : dark, std::chrono::milliseconds(50 * i))
            .has_value());
  }
  FLOWKIN_CHECK((*writer)->Finish().has_value());
}

}  // namespace flowkin::testing_support
