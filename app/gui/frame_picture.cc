#include "app/gui/frame_picture.h"

#include <QVideoFrame>
#include <algorithm>
#include <cstring>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "app/usecases/frame_to_bgr.h"

namespace flowkin {
namespace {

/// A view of a mapped plane. OpenCV has no read-only view; it is only read.
cv::Mat Plane(QVideoFrame& picture, int plane, int rows, int cols, int type) {
  return {rows,
          cols,
          type,
          picture.bits(plane),
          static_cast<std::size_t>(picture.bytesPerLine(plane))};
}

void SplitPacked(
    const cv::Mat& packed, bool luma_first, Frame* frame, int rows, int cols) {
  // Two bytes a pixel; chroma alternates. Rows of chroma are averaged in pairs.
  std::vector<cv::Mat> bytes;
  cv::split(packed, bytes);
  const int luma_at = luma_first ? 0 : 1;
  frame->luma = bytes[static_cast<std::size_t>(luma_at)];
  const cv::Mat both = bytes[static_cast<std::size_t>(1 - luma_at)];
  // The chroma bytes, seen as pairs.
  const cv::Mat pairs(rows, cols / 2, CV_8UC2, both.data, both.step);
  std::vector<cv::Mat> chroma;
  cv::split(pairs, chroma);
  const cv::Size half(cols / 2, (rows + 1) / 2);
  cv::resize(chroma[0], frame->cb, half, 0, 0, cv::INTER_AREA);
  cv::resize(chroma[1], frame->cr, half, 0, 0, cv::INTER_AREA);
}

void FromRgb(const QImage& image, Frame* frame) {
  const QImage rgb = image.convertToFormat(QImage::Format_RGB888);
  const cv::Mat view(rgb.height(),
                     rgb.width(),
                     CV_8UC3,
                     const_cast<uchar*>(rgb.constBits()),  // only read
                     static_cast<std::size_t>(rgb.bytesPerLine()));
  cv::Mat joined;
  cv::cvtColor(view, joined, cv::COLOR_RGB2YCrCb);
  std::vector<cv::Mat> planes;
  cv::split(joined, planes);
  const cv::Size half((rgb.width() + 1) / 2, (rgb.height() + 1) / 2);
  frame->luma = planes[0];
  cv::resize(planes[1], frame->cr, half, 0, 0, cv::INTER_AREA);
  cv::resize(planes[2], frame->cb, half, 0, 0, cv::INTER_AREA);
  frame->full_range = true;
}

/// A copy of an 8-bit picture of three channels.
QImage ToImage(const cv::Mat& pixels, QImage::Format format) {
  QImage image(pixels.cols, pixels.rows, format);
  for (int row = 0; row < pixels.rows; ++row) {
    std::memcpy(image.scanLine(row),
                pixels.ptr(row),
                static_cast<std::size_t>(pixels.cols) * 3);
  }
  return image;
}

}  // namespace

bool CopyPlanes(const QVideoFrame& picture, Frame* frame) {
  QVideoFrame mapped(picture);
  const int rows = mapped.height();
  const int cols = mapped.width();
  if (rows < 2 || cols < 2) return false;
  const auto format = mapped.pixelFormat();
  const bool planar = format == QVideoFrameFormat::Format_YUV420P ||
                      format == QVideoFrameFormat::Format_YV12;
  const bool paired = format == QVideoFrameFormat::Format_NV12 ||
                      format == QVideoFrameFormat::Format_NV21;
  const bool packed = (format == QVideoFrameFormat::Format_YUYV ||
                       format == QVideoFrameFormat::Format_UYVY) &&
                      cols % 2 == 0;
  if (!planar && !paired && !packed) {
    const QImage image = mapped.toImage();
    if (image.isNull()) return false;
    FromRgb(image, frame);
    return true;
  }
  if (!mapped.map(QVideoFrame::ReadOnly)) return false;
  const int half_rows = (rows + 1) / 2;
  const int half_cols = (cols + 1) / 2;
  frame->full_range =
      mapped.surfaceFormat().colorRange() == QVideoFrameFormat::ColorRange_Full;
  if (packed) {
    SplitPacked(Plane(mapped, 0, rows, cols, CV_8UC2),
                format == QVideoFrameFormat::Format_YUYV,
                frame,
                rows,
                cols);
  } else {
    frame->luma = Plane(mapped, 0, rows, cols, CV_8UC1).clone();
    if (planar) {
      const bool blue_first = format == QVideoFrameFormat::Format_YUV420P;
      const cv::Mat second = Plane(mapped, 1, half_rows, half_cols, CV_8UC1);
      const cv::Mat third = Plane(mapped, 2, half_rows, half_cols, CV_8UC1);
      frame->cb = (blue_first ? second : third).clone();
      frame->cr = (blue_first ? third : second).clone();
    } else {
      std::vector<cv::Mat> chroma;
      cv::split(Plane(mapped, 1, half_rows, half_cols, CV_8UC2), chroma);
      const bool blue_first = format == QVideoFrameFormat::Format_NV12;
      frame->cb = chroma[blue_first ? 0 : 1];
      frame->cr = chroma[blue_first ? 1 : 0];
    }
  }
  mapped.unmap();
  return true;
}

QImage ToPicture(const Frame& frame, int most_width) {
  if (frame.luma.empty()) return {};
  cv::Size size = frame.luma.size();
  if (size.width > most_width) {
    size = {most_width, std::max(1, size.height * most_width / size.width)};
  }
  return ToImage(FrameToBgr(frame, size), QImage::Format_BGR888);
}

QImage WithFound(const QImage& picture,
                 int width_px,
                 int height_px,
                 const ClipTest& test,
                 double t_s) {
  const QImage bgr = picture.convertToFormat(QImage::Format_BGR888);
  if (bgr.isNull() || width_px < 1 || height_px < 1) return picture;
  const cv::Mat small(bgr.height(),
                      bgr.width(),
                      CV_8UC3,
                      const_cast<uchar*>(bgr.constBits()),  // only read
                      static_cast<std::size_t>(bgr.bytesPerLine()));
  // A test draws at the clip's own size.
  cv::Mat full;
  cv::resize(small, full, cv::Size(width_px, height_px));
  test.DrawFound(full, t_s);
  cv::Mat shown;
  cv::resize(full, shown, small.size(), 0, 0, cv::INTER_AREA);
  return ToImage(shown, QImage::Format_BGR888);
}

}  // namespace flowkin
