#include "core/video/planes.h"

#include <gtest/gtest.h>

#include <opencv2/core.hpp>

namespace flowkin {
namespace {

constexpr std::int32_t kOne = 1 << 16;

// A decoded picture whose luma is 16 y + x.
libav::FramePtr Picture(AVPixelFormat format, int cols, int rows) {
  libav::FramePtr picture(av_frame_alloc());
  picture->format = format;
  picture->width = cols;
  picture->height = rows;
  EXPECT_EQ(av_frame_get_buffer(picture.get(), 0), 0);
  for (int plane = 0; plane < 3; ++plane) {
    const int bytes =
        picture->linesize[plane] * (plane == 0 ? rows : (rows + 1) / 2);
    std::fill_n(picture->data[plane], bytes, std::uint8_t{128});
  }
  for (int y = 0; y < rows; ++y) {
    for (int x = 0; x < cols; ++x) {
      picture->data[0][y * picture->linesize[0] + x] =
          static_cast<std::uint8_t>(16 * y + x);
    }
  }
  return picture;
}

struct MatrixCase {
  int a, b, c, d;
  int rotation_deg;
  bool mirrored;
};

class DisplayMatrix : public testing::TestWithParam<MatrixCase> {};

// ISO/IEC 14496-12 gives x' = a x + c y, y' = b x + d y with y down; every
// pixel is followed through that formula.
TEST_P(DisplayMatrix, PutsEveryPixelWhereTheStandardSays) {
  const MatrixCase& p = GetParam();
  const auto orientation = Orientation::FromDisplayMatrix(
      {p.a * kOne, p.b * kOne, 0, p.c * kOne, p.d * kOne, 0, 0, 0, 1 << 30});
  ASSERT_TRUE(orientation);
  EXPECT_EQ(orientation->RotationDeg(), p.rotation_deg);
  EXPECT_EQ(orientation->IsMirrored(), p.mirrored);

  const int cols = 10;
  const int rows = 6;
  const libav::FramePtr picture = Picture(AV_PIX_FMT_YUV420P, cols, rows);
  Frame frame;
  ASSERT_TRUE(PlaneMaker(*orientation).Fill(*picture, &frame));
  ASSERT_EQ(frame.luma.cols, p.a != 0 ? cols : rows);
  ASSERT_EQ(frame.luma.rows, p.a != 0 ? rows : cols);
  EXPECT_EQ(frame.cb.cols, frame.luma.cols / 2);
  EXPECT_EQ(frame.cr.rows, frame.luma.rows / 2);
  const int left = std::min({0, p.a * (cols - 1), p.c * (rows - 1)});
  const int top = std::min({0, p.b * (cols - 1), p.d * (rows - 1)});
  for (int y = 0; y < rows; ++y) {
    for (int x = 0; x < cols; ++x) {
      const int shown_x = p.a * x + p.c * y - left;
      const int shown_y = p.b * x + p.d * y - top;
      ASSERT_EQ(frame.luma.at<std::uint8_t>(shown_y, shown_x), 16 * y + x);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(QuarterTurnsAndMirrors,
                         DisplayMatrix,
                         testing::Values(MatrixCase{1, 0, 0, 1, 0, false},
                                         MatrixCase{0, 1, -1, 0, 90, false},
                                         MatrixCase{-1, 0, 0, -1, 180, false},
                                         MatrixCase{0, -1, 1, 0, 270, false},
                                         MatrixCase{-1, 0, 0, 1, 0, true},
                                         MatrixCase{1, 0, 0, -1, 180, true},
                                         MatrixCase{0, 1, 1, 0, 270, true},
                                         MatrixCase{0, -1, -1, 0, 90, true}));

TEST(DisplayMatrixOther, SlantedOrEmptyIsNotTaken) {
  EXPECT_FALSE(Orientation::FromDisplayMatrix(
      {46341, 46341, 0, -46341, 46341, 0, 0, 0, 1 << 30}));
  EXPECT_FALSE(Orientation::FromDisplayMatrix({}));
  EXPECT_FALSE(Orientation::FromDisplayMatrix({kOne, 0, 0, 0, 0, 0, 0, 0, 0}));
}

TEST(PlaneMaker, Shares8BitPlanesAndOutlivesThePicture) {
  libav::FramePtr picture = Picture(AV_PIX_FMT_YUV420P, 32, 16);
  const std::uint8_t* decoded = picture->data[0];
  cv::Mat kept;
  {
    Frame frame;
    ASSERT_TRUE(PlaneMaker({}).Fill(*picture, &frame));
    EXPECT_EQ(frame.luma.data, decoded);
    kept = frame.luma;
  }
  picture.reset();
  EXPECT_EQ(kept.at<std::uint8_t>(3, 5), 16 * 3 + 5);
  const cv::Mat again = kept;
  kept.release();
  EXPECT_EQ(again.at<std::uint8_t>(3, 5), 16 * 3 + 5);
}

TEST(PlaneMaker, OddSizesRoundChromaUp) {
  const libav::FramePtr picture = Picture(AV_PIX_FMT_YUV420P, 15, 7);
  Frame frame;
  ASSERT_TRUE(PlaneMaker({}).Fill(*picture, &frame));
  EXPECT_EQ(frame.luma.size(), cv::Size(15, 7));
  EXPECT_EQ(frame.cb.size(), cv::Size(8, 4));
}

TEST(PlaneMaker, TenBitKeepsTheUpperEight) {
  libav::FramePtr picture = Picture(AV_PIX_FMT_YUV420P10LE, 16, 16);
  for (int x = 0; x < 16; ++x) {
    auto* row = reinterpret_cast<std::uint16_t*>(picture->data[0]);
    row[x] = static_cast<std::uint16_t>(x == 15 ? 1023 : 64 + 4 * x);
  }
  Frame frame;
  ASSERT_TRUE(PlaneMaker({}).Fill(*picture, &frame));
  ASSERT_EQ(frame.luma.type(), CV_8UC1);
  for (int x = 0; x < 15; ++x) {
    EXPECT_EQ(frame.luma.at<std::uint8_t>(0, x), 16 + x);
  }
  EXPECT_EQ(frame.luma.at<std::uint8_t>(0, 15), 255);
}

TEST(PlaneMaker, WideChromaIsAveraged) {
  for (AVPixelFormat format : {AV_PIX_FMT_YUV422P, AV_PIX_FMT_YUV444P}) {
    libav::FramePtr picture(av_frame_alloc());
    picture->format = format;
    picture->width = 16;
    picture->height = 16;
    ASSERT_EQ(av_frame_get_buffer(picture.get(), 0), 0);
    const int chroma_cols = format == AV_PIX_FMT_YUV444P ? 16 : 8;
    for (int plane = 0; plane < 3; ++plane) {
      for (int y = 0; y < 16; ++y) {
        for (int x = 0; x < (plane == 0 ? 16 : chroma_cols); ++x) {
          picture->data[plane][y * picture->linesize[plane] + x] =
              static_cast<std::uint8_t>(y % 2 == 0 ? 100 : 110);
        }
      }
    }
    Frame frame;
    ASSERT_TRUE(PlaneMaker({}).Fill(*picture, &frame));
    ASSERT_EQ(frame.cb.size(), cv::Size(8, 8));
    EXPECT_EQ(frame.cb.at<std::uint8_t>(4, 4), 105);
    EXPECT_EQ(frame.cr.at<std::uint8_t>(7, 7), 105);
  }
}

TEST(PlaneMaker, GreyHasNoColour) {
  libav::FramePtr picture(av_frame_alloc());
  picture->format = AV_PIX_FMT_GRAY8;
  picture->width = 16;
  picture->height = 16;
  ASSERT_EQ(av_frame_get_buffer(picture.get(), 0), 0);
  Frame frame;
  ASSERT_TRUE(PlaneMaker({}).Fill(*picture, &frame));
  EXPECT_EQ(
      cv::norm(frame.cb, cv::Mat(8, 8, CV_8UC1, cv::Scalar(128)), cv::NORM_INF),
      0.0);
}

TEST(PlaneMaker, OblongPixelsAreMadeSquare) {
  const libav::FramePtr picture = Picture(AV_PIX_FMT_YUV420P, 72, 48);
  Frame frame;
  ASSERT_TRUE(PlaneMaker({}, 4.0 / 3.0).Fill(*picture, &frame));
  EXPECT_EQ(frame.luma.size(), cv::Size(96, 48));
  EXPECT_EQ(frame.cb.size(), cv::Size(48, 24));
}

}  // namespace
}  // namespace flowkin
