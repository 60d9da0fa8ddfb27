#pragma once

#include <cstdint>
#include <opencv2/core.hpp>
#include <string>
#include <vector>

namespace flowkin::testing_support {

/// A clip made with the ffmpeg command for one test, removed when this goes.
/// Every picture carries its number, so a test can tell which one it was given.
struct TestClipSpec {
  std::string name = "clip.mp4";  ///< the ending picks the container
  std::string encoder = "-c:v libx264 -preset ultrafast -bf 2";
  int width_px = 320;   ///< even
  int height_px = 240;  ///< even
  int pictures = 45;    ///< at most 255
  /// Presentation time of picture N in ticks, in ffmpeg's expression language.
  std::string ticks_expression = "N*3000";
  int ticks_per_second = 90000;
};

class TestClip {
 public:
  /// Ends the test run with a message if ffmpeg fails.
  explicit TestClip(const TestClipSpec& spec);
  TestClip(const TestClip&) = delete;
  TestClip& operator=(const TestClip&) = delete;
  ~TestClip();

  const std::string& path() const { return path_; }

 private:
  std::string path_;
};

/// A name in the build folder that no other test uses, removed with its file.
class ScratchPath {
 public:
  explicit ScratchPath(const std::string& ending);
  ScratchPath(const ScratchPath&) = delete;
  ScratchPath& operator=(const ScratchPath&) = delete;
  ~ScratchPath();

  const std::string& path() const { return path_; }

 private:
  std::string path_;
};

/// Runs `ffmpeg -y <arguments>` quietly; ends the test run if it fails.
void RunFfmpeg(const std::string& arguments);

/// The planes of test picture `number`, as one I420 matrix of height * 3 / 2
/// rows.
cv::Mat TestPictureI420(int number, int width_px, int height_px);

/// The number in an upright test picture, -1 if it cannot be read.
int ReadPictureNumber(const cv::Mat& luma);

std::vector<std::uint8_t> ReadBytes(const std::string& path);
void WriteBytes(const std::string& path,
                const std::vector<std::uint8_t>& bytes);

}  // namespace flowkin::testing_support
