#include "core/video/clip_writer.h"

#include <algorithm>
#include <cctype>
#include <cstdint>
#include <filesystem>
#include <new>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <random>
#include <system_error>
#include <utility>

#include "core/video/libav.h"

namespace flowkin {
namespace {

constexpr int kMinSidePx = 16;
constexpr int kMaxColsPx = 8192;
constexpr int kMaxRowsPx = 8192;
constexpr std::int64_t kMaxPixels = 8192LL * 4608LL;
constexpr AVRational kMicroseconds{1, 1000000};
// Shown length of a clip of one picture.
constexpr std::int64_t kLoneFrameUs = 40000;

class Mp4Writer final : public ClipWriter {
 public:
  Mp4Writer(std::string path, std::string part, ClipWriterOptions options)
      : path_(std::move(path)), part_(std::move(part)), options_(options) {}
  Mp4Writer(const Mp4Writer&) = delete;
  Mp4Writer& operator=(const Mp4Writer&) = delete;
  ~Mp4Writer() override { Discard(); }

  Result<void> OpenFile();

  Result<void> Add(const cv::Mat& bgr,
                   std::chrono::nanoseconds timestamp) override;
  Result<void> Add(const Frame& frame) override;
  Result<void> Finish() override;

 private:
  Result<void> Prepare(int cols,
                       int rows,
                       bool full_range,
                       std::chrono::nanoseconds timestamp);
  Result<void> OpenEncoder(bool full_range);
  Result<void> Encode(const AVFrame* picture);
  void FillPlane(int plane, const cv::Mat& from);
  Result<void> Fail(ErrorCode code, std::string message);
  Result<void> FailWriting(int error);
  void Discard();

  std::string path_;
  std::string part_;
  ClipWriterOptions options_;

  AVFormatContext* format_ = nullptr;
  AVStream* stream_ = nullptr;
  libav::CodecPtr encoder_;
  libav::FramePtr picture_;
  libav::PacketPtr packet_;
  libav::ScalerPtr scaler_;
  cv::Mat even_;

  int cols_ = 0;
  int rows_ = 0;
  bool has_header_ = false;
  bool finished_ = false;
  std::optional<std::chrono::nanoseconds> first_;
  std::int64_t last_us_ = -1;
  std::int64_t interval_us_ = kLoneFrameUs;
  std::optional<Error> failure_;
};

Result<void> Mp4Writer::Fail(ErrorCode code, std::string message) {
  failure_ = Error{code, std::move(message)};
  Discard();
  return *failure_;
}

Result<void> Mp4Writer::FailWriting(int error) {
  return Fail(ErrorCode::kInternal,
              "'" + path_ + "' cannot be written (" + libav::ErrorText(error) +
                  "). Check that the folder exists, that you may write there "
                  "and that the disk is not full.");
}

void Mp4Writer::Discard() {
  encoder_.reset();
  if (format_ != nullptr) {
    avio_closep(&format_->pb);
    avformat_free_context(format_);
    format_ = nullptr;
    stream_ = nullptr;
  }
  if (!finished_) {
    std::error_code ignored;
    std::filesystem::remove(part_, ignored);
  }
}

Result<void> Mp4Writer::OpenFile() {
  const std::string url = "file:" + part_;
  int result =
      avformat_alloc_output_context2(&format_, nullptr, "mp4", url.c_str());
  if (result < 0) return FailWriting(result);
  result = avio_open(&format_->pb, url.c_str(), AVIO_FLAG_WRITE);
  if (result < 0) return FailWriting(result);
  return {};
}

Result<void> Mp4Writer::OpenEncoder(bool full_range) {
  const AVCodec* codec = avcodec_find_encoder_by_name("libx264");
  if (codec == nullptr) codec = avcodec_find_encoder(AV_CODEC_ID_MPEG4);
  if (codec == nullptr) {
    return Fail(ErrorCode::kInternal,
                "This computer has no encoder for H.264 or MPEG-4 video; the "
                "clip cannot be written.");
  }
  const bool is_h264 = codec->id == AV_CODEC_ID_H264;
  encoder_.reset(avcodec_alloc_context3(codec));
  packet_.reset(av_packet_alloc());
  picture_.reset(av_frame_alloc());
  stream_ = avformat_new_stream(format_, nullptr);
  if (!encoder_ || !packet_ || !picture_ || stream_ == nullptr) {
    return FailWriting(AVERROR(ENOMEM));
  }
  encoder_->width = (cols_ + 1) / 2 * 2;
  encoder_->height = (rows_ + 1) / 2 * 2;
  encoder_->pix_fmt = AV_PIX_FMT_YUV420P;
  // MPEG-4 part 2 has 16 bits for the ticks of a second.
  encoder_->time_base = is_h264 ? kMicroseconds : AVRational{1, 60000};
  // Only for the encoder's choice of level; times are the pictures' own.
  encoder_->framerate = AVRational{60, 1};
  encoder_->color_range = full_range ? AVCOL_RANGE_JPEG : AVCOL_RANGE_MPEG;
  encoder_->colorspace = AVCOL_SPC_SMPTE170M;
  encoder_->color_primaries = AVCOL_PRI_SMPTE170M;
  encoder_->color_trc = AVCOL_TRC_SMPTE170M;
  encoder_->thread_count = options_.threads;
  if ((format_->oformat->flags & AVFMT_GLOBALHEADER) != 0) {
    encoder_->flags |= AV_CODEC_FLAG_GLOBAL_HEADER;
  }
  if (is_h264) {
    av_opt_set(encoder_->priv_data,
               "preset",
               options_.in_a_hurry ? "superfast" : "veryfast",
               0);
    av_opt_set_double(encoder_->priv_data, "crf", options_.rate_factor, 0);
  } else {
    encoder_->flags |= AV_CODEC_FLAG_QSCALE;
    encoder_->global_quality =
        std::clamp(options_.rate_factor / 5, 1, 31) * FF_QP2LAMBDA;
  }
  int result = avcodec_open2(encoder_.get(), codec, nullptr);
  if (result < 0) return FailWriting(result);
  result = avcodec_parameters_from_context(stream_->codecpar, encoder_.get());
  if (result < 0) return FailWriting(result);
  stream_->time_base = encoder_->time_base;

  picture_->format = AV_PIX_FMT_YUV420P;
  picture_->width = encoder_->width;
  picture_->height = encoder_->height;
  result = av_frame_get_buffer(picture_.get(), 0);
  if (result < 0) return FailWriting(result);

  AVDictionary* muxer = nullptr;
  av_dict_set(&muxer, "movflags", "+faststart", 0);
  result = avformat_write_header(format_, &muxer);
  av_dict_free(&muxer);
  if (result < 0) return FailWriting(result);
  has_header_ = true;
  return {};
}

Result<void> Mp4Writer::Prepare(int cols,
                                int rows,
                                bool full_range,
                                std::chrono::nanoseconds timestamp) {
  if (failure_) return *failure_;
  FLOWKIN_CHECK(!finished_);
  if (!has_header_) {
    if (std::min(cols, rows) < kMinSidePx || cols > kMaxColsPx ||
        rows > kMaxRowsPx ||
        static_cast<std::int64_t>(cols) * rows > kMaxPixels) {
      return Fail(ErrorCode::kInvalidArgument,
                  "Pictures of " + std::to_string(cols) + " x " +
                      std::to_string(rows) +
                      " px cannot be written; use 16 x 16 to 8192 x 4608.");
    }
    cols_ = cols;
    rows_ = rows;
    if (Result<void> opened = OpenEncoder(full_range); !opened) return opened;
    first_ = timestamp;
  } else if (cols != cols_ || rows != rows_) {
    return Fail(ErrorCode::kInvalidArgument,
                "All pictures of a clip must have the same size.");
  }
  const std::int64_t us =
      std::chrono::round<std::chrono::microseconds>(timestamp - *first_)
          .count();
  if (us <= last_us_) {
    return Fail(ErrorCode::kInvalidArgument,
                "The times of a clip's pictures must rise by at least a "
                "microsecond.");
  }
  if (last_us_ >= 0) interval_us_ = us - last_us_;
  last_us_ = us;
  const int result = av_frame_make_writable(picture_.get());
  if (result < 0) return FailWriting(result);
  picture_->pts = av_rescale_q(us, kMicroseconds, encoder_->time_base);
  return {};
}

void Mp4Writer::FillPlane(int plane, const cv::Mat& from) {
  const int cols = plane == 0 ? picture_->width : picture_->width / 2;
  const int rows = plane == 0 ? picture_->height : picture_->height / 2;
  cv::Mat to(rows,
             cols,
             CV_8UC1,
             picture_->data[plane],
             static_cast<std::size_t>(picture_->linesize[plane]));
  if (from.size() == to.size()) {
    from.copyTo(to);
  } else {
    cv::copyMakeBorder(from,
                       to,
                       0,
                       rows - from.rows,
                       0,
                       cols - from.cols,
                       cv::BORDER_REPLICATE);
  }
}

Result<void> Mp4Writer::Add(const Frame& frame) {
  const cv::Size half((frame.luma.cols + 1) / 2, (frame.luma.rows + 1) / 2);
  FLOWKIN_CHECK(frame.luma.type() == CV_8UC1 && frame.cb.type() == CV_8UC1 &&
                frame.cr.type() == CV_8UC1 && frame.cb.size() == half &&
                frame.cr.size() == half);
  Result<void> ready = Prepare(
      frame.luma.cols, frame.luma.rows, frame.full_range, frame.timestamp);
  if (!ready) return ready;
  FillPlane(0, frame.luma);
  FillPlane(1, frame.cb);
  FillPlane(2, frame.cr);
  return Encode(picture_.get());
}

Result<void> Mp4Writer::Add(const cv::Mat& bgr,
                            std::chrono::nanoseconds timestamp) {
  FLOWKIN_CHECK(bgr.type() == CV_8UC3);
  Result<void> ready = Prepare(bgr.cols, bgr.rows, false, timestamp);
  if (!ready) return ready;
  const cv::Mat* from = &bgr;
  if (bgr.cols != picture_->width || bgr.rows != picture_->height) {
    cv::copyMakeBorder(bgr,
                       even_,
                       0,
                       picture_->height - bgr.rows,
                       0,
                       picture_->width - bgr.cols,
                       cv::BORDER_REPLICATE);
    from = &even_;
  }
  if (!scaler_) {
    scaler_.reset(
        sws_getContext(picture_->width,
                       picture_->height,
                       AV_PIX_FMT_BGR24,
                       picture_->width,
                       picture_->height,
                       AV_PIX_FMT_YUV420P,
                       SWS_AREA | SWS_ACCURATE_RND | SWS_FULL_CHR_H_INP,
                       nullptr,
                       nullptr,
                       nullptr));
    if (!scaler_) return FailWriting(AVERROR(ENOMEM));
    const bool full = encoder_->color_range == AVCOL_RANGE_JPEG;
    const int* matrix = sws_getCoefficients(SWS_CS_ITU601);
    sws_setColorspaceDetails(
        scaler_.get(), matrix, 1, matrix, full ? 1 : 0, 0, 1 << 16, 1 << 16);
  }
  const std::uint8_t* data[] = {from->data, nullptr, nullptr, nullptr};
  const int steps[] = {static_cast<int>(from->step), 0, 0, 0};
  sws_scale(scaler_.get(),
            data,
            steps,
            0,
            picture_->height,
            picture_->data,
            picture_->linesize);
  return Encode(picture_.get());
}

Result<void> Mp4Writer::Encode(const AVFrame* picture) {
  int result = avcodec_send_frame(encoder_.get(), picture);
  while (result >= 0) {
    result = avcodec_receive_packet(encoder_.get(), packet_.get());
    if (result == AVERROR(EAGAIN) || result == AVERROR_EOF) return {};
    if (result < 0) break;
    // The muxer needs a length for the last picture only; it takes the others
    // from the times.
    packet_->duration =
        av_rescale_q(interval_us_, kMicroseconds, encoder_->time_base);
    packet_->stream_index = stream_->index;
    av_packet_rescale_ts(
        packet_.get(), encoder_->time_base, stream_->time_base);
    result = av_interleaved_write_frame(format_, packet_.get());
    if (result >= 0 && format_->pb->error < 0) result = format_->pb->error;
  }
  return FailWriting(result);
}

Result<void> Mp4Writer::Finish() {
  if (failure_) return *failure_;
  if (finished_) return {};
  if (!has_header_) {
    return Fail(ErrorCode::kInvalidArgument,
                "There was no picture to write to '" + path_ + "'.");
  }
  if (Result<void> flushed = Encode(nullptr); !flushed) return flushed;
  int result = av_write_trailer(format_);
  const int closed = avio_closep(&format_->pb);
  if (result >= 0) result = closed;
  if (result < 0) return FailWriting(result);
  std::error_code code;
  std::filesystem::rename(part_, path_, code);
  if (code) {
    return Fail(ErrorCode::kInternal,
                "'" + path_ + "' cannot be replaced (" + code.message() +
                    "). Give another name.");
  }
  finished_ = true;
  Discard();
  return {};
}

bool EndsInMp4(const std::string& path) {
  std::string ending = std::filesystem::path(path).extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(), [](char c) {
    return static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  });
  return ending == ".mp4";
}

}  // namespace

Result<std::unique_ptr<ClipWriter>> ClipWriter::Create(
    const std::string& path, const ClipWriterOptions& options) {
  if (options.rate_factor < 0 || options.rate_factor > 51) {
    return Error{ErrorCode::kInvalidArgument,
                 "The rate factor must be 0 to 51."};
  }
  if (options.threads < 1 || options.threads > 64) {
    return Error{ErrorCode::kInvalidArgument,
                 "Encoder threads must be 1 to 64."};
  }
  if (!EndsInMp4(path)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The clip is written as MP4: give '" + path +
                     "' a name that ends in .mp4."};
  }
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored)) {
    return Error{ErrorCode::kInvalidArgument,
                 "'" + path + "' is a folder. Give a file name."};
  }
  libav::Silence();
  const std::string part =
      path + ".part-" + std::to_string(std::random_device{}());
  auto writer = std::make_unique<Mp4Writer>(path, part, options);
  if (Result<void> opened = writer->OpenFile(); !opened) {
    return opened.error();
  }
  return std::unique_ptr<ClipWriter>(std::move(writer));
}

}  // namespace flowkin
