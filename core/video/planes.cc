#include "core/video/planes.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace flowkin {
namespace {

// Lets a cv::Mat own a reference to a libav buffer: the same means by which
// OpenCV's own Python module shares arrays.
class BufferAllocator final : public cv::MatAllocator {
 public:
  cv::UMatData* allocate(int dims,
                         const int* sizes,
                         int type,
                         void* data,
                         size_t* step,
                         cv::AccessFlag flags,
                         cv::UMatUsageFlags usage) const override {
    return cv::Mat::getStdAllocator()->allocate(
        dims, sizes, type, data, step, flags, usage);
  }
  bool allocate(cv::UMatData* data,
                cv::AccessFlag flags,
                cv::UMatUsageFlags usage) const override {
    return cv::Mat::getStdAllocator()->allocate(data, flags, usage);
  }
  void deallocate(cv::UMatData* data) const override {
    if (data == nullptr) return;
    auto* buffer = static_cast<AVBufferRef*>(data->userdata);
    av_buffer_unref(&buffer);
    delete data;
  }
};

const BufferAllocator& Allocator() {
  static const BufferAllocator kAllocator;
  return kAllocator;
}

// One plane as a matrix without copying, or a copy where the rows run upwards.
cv::Mat WrapPlane(
    const AVFrame& picture, int plane, int rows, int cols, int type) {
  auto* data = picture.data[plane];
  const int linesize = picture.linesize[plane];
  AVBufferRef* owner =
      av_frame_get_plane_buffer(const_cast<AVFrame*>(&picture), plane);
  if (linesize < 0 || owner == nullptr) {
    cv::Mat copy(rows, cols, type);
    const std::size_t bytes = copy.elemSize() * static_cast<std::size_t>(cols);
    for (int y = 0; y < rows; ++y) {
      const auto* from = data + static_cast<std::ptrdiff_t>(y) * linesize;
      std::copy_n(from, bytes, copy.ptr<std::uint8_t>(y));
    }
    return copy;
  }
  cv::Mat mat(rows, cols, type, data, static_cast<std::size_t>(linesize));
  AVBufferRef* reference = av_buffer_ref(owner);
  if (reference == nullptr) return mat.clone();
  auto* shared = new cv::UMatData(&Allocator());
  shared->data = shared->origdata = data;
  shared->size =
      static_cast<std::size_t>(linesize) * static_cast<std::size_t>(rows);
  shared->userdata = reference;
  shared->refcount = 1;
  mat.u = shared;
  return mat;
}

// True if the layout is one plane per component, 8 to 16 bits in native order,
// chroma at full or half size.
bool IsPlainPlanar(const AVPixFmtDescriptor& layout) {
  constexpr std::uint64_t kForeign =
      AV_PIX_FMT_FLAG_BE | AV_PIX_FMT_FLAG_PAL | AV_PIX_FMT_FLAG_BITSTREAM |
      AV_PIX_FMT_FLAG_HWACCEL | AV_PIX_FMT_FLAG_RGB | AV_PIX_FMT_FLAG_FLOAT |
      AV_PIX_FMT_FLAG_BAYER;
  if ((layout.flags & kForeign) != 0) return false;
  if (layout.nb_components == 2) return false;
  if (layout.log2_chroma_w > 1 || layout.log2_chroma_h > 1) return false;
  for (int i = 0; i < std::min<int>(layout.nb_components, 3); ++i) {
    const AVComponentDescriptor& c = layout.comp[i];
    if (c.plane != i || c.offset != 0 || c.shift != 0) return false;
    if (c.depth < 8 || c.step != (c.depth > 8 ? 2 : 1)) return false;
  }
  return true;
}

cv::Mat To8Bit(const cv::Mat& plane, int depth) {
  if (depth == 8) return plane;
  cv::Mat out;
  plane.convertTo(out, CV_8U, std::ldexp(1.0, 8 - depth));
  return out;
}

cv::Mat Oriented(const cv::Mat& plane, const Orientation& orientation) {
  if (orientation.IsIdentity()) return plane;
  cv::Mat out;
  if (orientation.transpose) {
    cv::transpose(plane, out);
  } else {
    out = plane;
  }
  if (orientation.flip_columns || orientation.flip_rows) {
    const int code = !orientation.flip_columns ? 0
                     : orientation.flip_rows   ? -1
                                               : 1;
    cv::Mat flipped;
    cv::flip(out, flipped, code);
    out = flipped;
  }
  return out;
}

}  // namespace

int Orientation::RotationDeg() const {
  // Exchanging left and right first leaves a pure turn behind: x' = c y and
  // y' = b x for a quarter, x' = a x and y' = d y for a half.
  if (!transpose) return flip_rows ? 180 : 0;
  return flip_rows == IsMirrored() ? 90 : 270;
}

std::optional<Orientation> Orientation::FromDisplayMatrix(
    const std::array<std::int32_t, 9>& matrix) {
  const double a = matrix[0];
  const double b = matrix[1];
  const double c = matrix[3];
  const double d = matrix[4];
  const double size = std::max(std::hypot(a, b), std::hypot(c, d));
  // Half a degree: encoders round the matrix to 1/65536.
  const double small = 0.009 * size;
  Orientation out;
  if (size <= 0.0) return std::nullopt;
  if (std::abs(b) <= small && std::abs(c) <= small && std::abs(a) > small &&
      std::abs(d) > small) {
    out.flip_columns = a < 0.0;
    out.flip_rows = d < 0.0;
    return out;
  }
  if (std::abs(a) <= small && std::abs(d) <= small && std::abs(b) > small &&
      std::abs(c) > small) {
    out.transpose = true;
    out.flip_columns = c < 0.0;
    out.flip_rows = b < 0.0;
    return out;
  }
  return std::nullopt;
}

bool PlaneMaker::Fill(const AVFrame& picture, Frame* frame) {
  const auto format = static_cast<AVPixelFormat>(picture.format);
  const AVPixFmtDescriptor* layout = av_pix_fmt_desc_get(format);
  if (layout == nullptr || picture.width <= 0 || picture.height <= 0) {
    return false;
  }
  if (!IsPlainPlanar(*layout)) {
    if (!Rescale(picture, frame)) return false;
  } else {
    const int rows = picture.height;
    const int cols = picture.width;
    const cv::Size half((cols + 1) / 2, (rows + 1) / 2);
    const int depth = layout->comp[0].depth;
    const int type = depth > 8 ? CV_16UC1 : CV_8UC1;
    frame->luma = To8Bit(WrapPlane(picture, 0, rows, cols, type), depth);
    cv::Mat* const chroma[] = {&frame->cb, &frame->cr};
    for (int i = 0; i < 2; ++i) {
      if (layout->nb_components == 1) {
        *chroma[i] = cv::Mat(half, CV_8UC1, cv::Scalar(128));
        continue;
      }
      const int chroma_rows = AV_CEIL_RSHIFT(rows, layout->log2_chroma_h);
      const int chroma_cols = AV_CEIL_RSHIFT(cols, layout->log2_chroma_w);
      cv::Mat plane = To8Bit(
          WrapPlane(picture, i + 1, chroma_rows, chroma_cols, type), depth);
      if (plane.size() == half) {
        *chroma[i] = plane;
      } else {
        cv::resize(plane, *chroma[i], half, 0, 0, cv::INTER_AREA);
      }
    }
    frame->full_range =
        picture.color_range == AVCOL_RANGE_JPEG ||
        format == AV_PIX_FMT_YUVJ420P || format == AV_PIX_FMT_YUVJ422P ||
        format == AV_PIX_FMT_YUVJ444P || format == AV_PIX_FMT_YUVJ440P;
  }
  if (pixel_aspect_ != 1.0) {
    const int cols =
        std::max(2, cvRound(frame->luma.cols * pixel_aspect_ / 2.0) * 2);
    for (cv::Mat* plane : {&frame->luma, &frame->cb, &frame->cr}) {
      const cv::Size size(plane == &frame->luma ? cols : cols / 2, plane->rows);
      cv::Mat square;
      cv::resize(*plane,
                 square,
                 size,
                 0,
                 0,
                 pixel_aspect_ < 1.0 ? cv::INTER_AREA : cv::INTER_LINEAR);
      *plane = square;
    }
  }
  frame->luma = Oriented(frame->luma, orientation_);
  frame->cb = Oriented(frame->cb, orientation_);
  frame->cr = Oriented(frame->cr, orientation_);
  return true;
}

bool PlaneMaker::Rescale(const AVFrame& picture, Frame* frame) {
  const auto format = static_cast<AVPixelFormat>(picture.format);
  const AVPixFmtDescriptor* layout = av_pix_fmt_desc_get(format);
  if ((layout->flags & AV_PIX_FMT_FLAG_HWACCEL) != 0) return false;
  scaler_.reset(
      sws_getCachedContext(scaler_.release(),
                           picture.width,
                           picture.height,
                           format,
                           picture.width,
                           picture.height,
                           AV_PIX_FMT_YUV420P,
                           SWS_BILINEAR | SWS_ACCURATE_RND | SWS_FULL_CHR_H_INP,
                           nullptr,
                           nullptr,
                           nullptr));
  if (!scaler_) return false;
  const bool is_rgb = (layout->flags & AV_PIX_FMT_FLAG_RGB) != 0;
  const bool full = !is_rgb && (picture.color_range == AVCOL_RANGE_JPEG ||
                                format == AV_PIX_FMT_YUVJ411P);
  const int* matrix = sws_getCoefficients(
      picture.colorspace == AVCOL_SPC_BT709 ? SWS_CS_ITU709 : SWS_CS_ITU601);
  sws_setColorspaceDetails(scaler_.get(),
                           matrix,
                           full || is_rgb ? 1 : 0,
                           matrix,
                           full ? 1 : 0,
                           0,
                           1 << 16,
                           1 << 16);
  libav::FramePtr out(av_frame_alloc());
  if (!out) return false;
  out->format = AV_PIX_FMT_YUV420P;
  out->width = picture.width;
  out->height = picture.height;
  if (av_frame_get_buffer(out.get(), 0) < 0) return false;
  if (sws_scale(scaler_.get(),
                picture.data,
                picture.linesize,
                0,
                picture.height,
                out->data,
                out->linesize) != picture.height) {
    return false;
  }
  const int half_rows = (picture.height + 1) / 2;
  const int half_cols = (picture.width + 1) / 2;
  frame->luma = WrapPlane(*out, 0, picture.height, picture.width, CV_8UC1);
  frame->cb = WrapPlane(*out, 1, half_rows, half_cols, CV_8UC1);
  frame->cr = WrapPlane(*out, 2, half_rows, half_cols, CV_8UC1);
  frame->full_range = full;
  return true;
}

}  // namespace flowkin
