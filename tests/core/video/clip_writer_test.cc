#include "core/video/clip_writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>
#include <filesystem>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/video/file_frame_source.h"
#include "tests/support/test_clip.h"

namespace flowkin {
namespace {

using std::chrono::microseconds;
using std::chrono::milliseconds;
using testing::HasSubstr;
using testing_support::ReadPictureNumber;
using testing_support::ScratchPath;
using testing_support::TestPictureI420;

// Uneven to the microsecond.
microseconds TimeOf(int n) {
  return microseconds(n * 33333 + 1000 * (n % 3) + (n > 10 ? 250001 : 0));
}

cv::Mat Bgr(int n, int cols = 320, int rows = 240) {
  cv::Mat bgr;
  cv::cvtColor(TestPictureI420(n, cols, rows), bgr, cv::COLOR_YUV2BGR_I420);
  return bgr;
}

std::vector<std::string> FilesBeside(const std::string& path) {
  std::vector<std::string> names;
  const std::string stem = std::filesystem::path(path).filename().string();
  for (const auto& entry : std::filesystem::directory_iterator(
           std::filesystem::path(path).parent_path())) {
    const std::string name = entry.path().filename().string();
    if (name.rfind(stem, 0) == 0) names.push_back(name);
  }
  return names;
}

TEST(ClipWriter, KeepsPicturesAndTimes) {
  const ScratchPath out("out.mp4");
  auto writer = ClipWriter::Create(out.path());
  ASSERT_TRUE(writer);
  for (int n = 0; n < 30; ++n) {
    ASSERT_TRUE((*writer)->Add(Bgr(n), milliseconds(400) + TimeOf(n)));
  }
  EXPECT_FALSE(std::filesystem::exists(out.path()));
  ASSERT_TRUE((*writer)->Finish());

  auto source = OpenClip(out.path());
  ASSERT_TRUE(source) << source.error().message;
  for (int n = 0; n < 30; ++n) {
    const std::optional<Frame> frame = (*source)->Next().value();
    ASSERT_TRUE(frame);
    EXPECT_EQ(ReadPictureNumber(frame->luma), n);
    EXPECT_EQ(frame->timestamp, TimeOf(n));
  }
  EXPECT_FALSE((*source)->Next().value());
  EXPECT_THAT((*source)->Info().warnings, testing::IsEmpty());
  EXPECT_EQ(FilesBeside(out.path()).size(), 1U);
}

// Rec. ITU-R BT.601-7, 2.5: Y' = 16 + 65.481 R' + 128.553 G' + 24.966 B' and
// the two differences, for R', G', B' in 0 ... 1.
TEST(ClipWriter, ColoursFollowTheStandard) {
  const ScratchPath out("colour.mp4");
  auto writer = ClipWriter::Create(out.path());
  ASSERT_TRUE(writer);
  const double blue = 0.25;
  const double green = 0.5;
  const double red = 0.75;
  const cv::Mat flat(
      64, 64, CV_8UC3, cv::Scalar(255 * blue, 255 * green, 255 * red));
  for (int n = 0; n < 2; ++n) {
    ASSERT_TRUE((*writer)->Add(flat, milliseconds(40 * n)));
  }
  ASSERT_TRUE((*writer)->Finish());
  auto source = OpenClip(out.path());
  ASSERT_TRUE(source);
  const std::optional<Frame> frame = (*source)->Next().value();
  ASSERT_TRUE(frame);
  EXPECT_FALSE(frame->full_range);
  // One step of the picture's 8 bits, one of the conversion, one of the coder.
  constexpr double kSteps = 3.0;
  EXPECT_NEAR(frame->luma.at<std::uint8_t>(32, 32),
              16 + 65.481 * red + 128.553 * green + 24.966 * blue,
              kSteps);
  EXPECT_NEAR(frame->cb.at<std::uint8_t>(16, 16),
              128 - 37.797 * red - 74.203 * green + 112.0 * blue,
              kSteps);
  EXPECT_NEAR(frame->cr.at<std::uint8_t>(16, 16),
              128 + 112.0 * red - 93.786 * green - 18.214 * blue,
              kSteps);
}

TEST(ClipWriter, CopiesAFramesPlanes) {
  const ScratchPath out("out.mp4");
  auto writer = ClipWriter::Create(out.path());
  ASSERT_TRUE(writer);
  for (int n = 0; n < 5; ++n) {
    const cv::Mat picture = TestPictureI420(n, 320, 240);
    Frame frame;
    frame.luma = picture.rowRange(0, 240);
    frame.cb = cv::Mat(120, 160, CV_8UC1, picture.data + 320 * 240).clone();
    frame.cr = cv::Mat(120, 160, CV_8UC1, picture.data + 320 * 240 + 160 * 120)
                   .clone();
    frame.timestamp = TimeOf(n);
    ASSERT_TRUE((*writer)->Add(frame));
  }
  ASSERT_TRUE((*writer)->Finish());
  auto source = OpenClip(out.path());
  ASSERT_TRUE(source);
  for (int n = 0; n < 5; ++n) {
    const std::optional<Frame> frame = (*source)->Next().value();
    ASSERT_TRUE(frame);
    EXPECT_EQ(ReadPictureNumber(frame->luma), n);
    EXPECT_FALSE(frame->full_range);
  }
}

TEST(ClipWriter, OddSizesGainARowAndAColumn) {
  const ScratchPath out("odd.mp4");
  auto writer = ClipWriter::Create(out.path());
  ASSERT_TRUE(writer);
  const cv::Mat odd = Bgr(3)(cv::Rect(0, 0, 319, 239)).clone();
  for (int n = 0; n < 3; ++n) {
    ASSERT_TRUE((*writer)->Add(odd, milliseconds(40 * n)));
  }
  ASSERT_TRUE((*writer)->Finish());
  auto source = OpenClip(out.path());
  ASSERT_TRUE(source);
  EXPECT_EQ((*source)->Info().width_px, 320);
  EXPECT_EQ((*source)->Info().height_px, 240);
}

TEST(ClipWriter, FailedRunLeavesTheOlderFile) {
  const ScratchPath out("kept.mp4");
  testing_support::WriteBytes(out.path(), {1, 2, 3});
  {
    auto writer = ClipWriter::Create(out.path());
    ASSERT_TRUE(writer);
    ASSERT_TRUE((*writer)->Add(Bgr(0), milliseconds(0)));
    EXPECT_EQ(FilesBeside(out.path()).size(), 2U);
  }
  EXPECT_EQ(testing_support::ReadBytes(out.path()).size(), 3U);
  EXPECT_EQ(FilesBeside(out.path()).size(), 1U);
}

TEST(ClipWriter, RefusesTimesThatDoNotRiseAndOtherSizes) {
  const ScratchPath out("bad.mp4");
  auto writer = ClipWriter::Create(out.path());
  ASSERT_TRUE(writer);
  ASSERT_TRUE((*writer)->Add(Bgr(0), milliseconds(10)));
  const Result<void> again = (*writer)->Add(Bgr(1), milliseconds(10));
  ASSERT_FALSE(again);
  EXPECT_EQ(again.error().code, ErrorCode::kInvalidArgument);
  EXPECT_FALSE((*writer)->Finish());
  EXPECT_TRUE(FilesBeside(out.path()).empty());

  auto other = ClipWriter::Create(out.path());
  ASSERT_TRUE(other);
  ASSERT_TRUE((*other)->Add(Bgr(0), milliseconds(0)));
  EXPECT_FALSE((*other)->Add(Bgr(1, 160, 120), milliseconds(40)));
}

TEST(ClipWriter, RefusesBadNamesAndOptions) {
  const ScratchPath folder("folder.mp4");
  std::filesystem::create_directory(folder.path());
  for (const std::string& path :
       {folder.path(), std::string("clip.avi"), std::string("clip")}) {
    const auto writer = ClipWriter::Create(path);
    ASSERT_FALSE(writer);
    EXPECT_EQ(writer.error().code, ErrorCode::kInvalidArgument);
  }
  const auto nowhere = ClipWriter::Create(folder.path() + "/none/clip.mp4");
  ASSERT_FALSE(nowhere);
  EXPECT_THAT(nowhere.error().message, HasSubstr("folder exists"));
  ClipWriterOptions options;
  options.rate_factor = 52;
  EXPECT_FALSE(ClipWriter::Create(folder.path() + "/a.mp4", options));
}

TEST(ClipWriter, EmptyClipIsRefused) {
  const ScratchPath out("none.mp4");
  auto writer = ClipWriter::Create(out.path());
  ASSERT_TRUE(writer);
  EXPECT_FALSE((*writer)->Finish());
  EXPECT_TRUE(FilesBeside(out.path()).empty());
}

// A limit on file size stands in for a full disk.
TEST(ClipWriter, FullDiskIsAnErrorAndLeavesNothing) {
  const ScratchPath out("full.mp4");
  rlimit before{};
  ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
  std::signal(SIGXFSZ, SIG_IGN);
  rlimit small = before;
  small.rlim_cur = 20000;
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
  bool failed = false;
  {
    ClipWriterOptions options;
    options.rate_factor = 0;
    auto writer = ClipWriter::Create(out.path(), options);
    ASSERT_TRUE(writer);
    cv::Mat noise(240, 320, CV_8UC3);
    for (int n = 0; n < 100 && !failed; ++n) {
      cv::randu(noise, 0, 255);
      failed = !(*writer)->Add(noise, milliseconds(40 * n));
    }
    if (!failed) failed = !(*writer)->Finish();
  }
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
  EXPECT_TRUE(failed);
  EXPECT_TRUE(FilesBeside(out.path()).empty());
}

}  // namespace
}  // namespace flowkin
