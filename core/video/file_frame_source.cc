#include "core/video/file_frame_source.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <deque>
#include <filesystem>
#include <limits>
#include <new>
#include <opencv2/core.hpp>
#include <set>
#include <string_view>
#include <utility>
#include <vector>

#include "core/video/clip_timing.h"
#include "core/video/libav.h"
#include "core/video/planes.h"

namespace flowkin {
namespace {

// Largest picture taken: 8192 x 4608. Anything above is damage or would not
// fit the memory of a small machine.
constexpr std::int64_t kMaxPixels = 8192LL * 4608LL;
constexpr int kMinSidePx = 16;
constexpr int kMaxThreads = 64;
// A longer wait between two frames of a test is a damaged time stamp.
constexpr double kMaxGapS = 600.0;
// Packets read ahead to learn the rate of a clip in slow motion.
constexpr std::size_t kLookaheadPackets = 600;
constexpr std::int64_t kLookaheadBytes = 32 << 20;
// Errors in a row after which reading is given up.
constexpr int kMaxErrorsInARow = 100;
constexpr int kMemoryBlock = 1 << 16;

// Containers a camera, phone or editor writes. The list keeps play lists,
// pictures and exotic readers out.
constexpr std::array<std::string_view, 8> kContainers = {
    "mov,mp4,m4a,3gp,3g2,mj2",
    "matroska,webm",
    "avi",
    "mpegts",
    "mpeg",
    "flv",
    "asf",
    "ogg"};

std::string Seconds(double value) {
  char text[32];
  std::snprintf(text, sizeof(text), "%.1f", value);
  return text;
}

// "1 picture was", "3 pictures were".
std::string Pictures(std::int64_t count) {
  return std::to_string(count) +
         (count == 1 ? " picture was" : " pictures were");
}

Error Unreadable(std::string message) {
  return Error{ErrorCode::kUnreadable, std::move(message)};
}

struct MemoryReader {
  const std::uint8_t* data = nullptr;
  std::int64_t size = 0;
  std::int64_t position = 0;

  static int Read(void* opaque, std::uint8_t* buffer, int count) {
    auto* self = static_cast<MemoryReader*>(opaque);
    const std::int64_t left = self->size - self->position;
    if (left <= 0) return AVERROR_EOF;
    const auto taken = static_cast<int>(std::min<std::int64_t>(left, count));
    std::memcpy(
        buffer, self->data + self->position, static_cast<std::size_t>(taken));
    self->position += taken;
    return taken;
  }

  static std::int64_t Seek(void* opaque, std::int64_t offset, int whence) {
    auto* self = static_cast<MemoryReader*>(opaque);
    if ((whence & AVSEEK_SIZE) != 0) return self->size;
    std::int64_t base = 0;
    if ((whence & 3) == SEEK_CUR) base = self->position;
    if ((whence & 3) == SEEK_END) base = self->size;
    if (offset < -base || offset > self->size - base) return AVERROR(EINVAL);
    self->position = base + offset;
    return self->position;
  }
};

// The file or memory under the container reader, and the container reader.
class Container {
 public:
  Container() = default;
  Container(const Container&) = delete;
  Container& operator=(const Container&) = delete;
  ~Container() {
    avformat_close_input(&format_);
    if (io_ == nullptr) return;
    if (memory_) {
      av_freep(&io_->buffer);
      avio_context_free(&io_);
    } else {
      avio_closep(&io_);
    }
  }

  int OpenFile(const std::string& path) {
    // The prefix keeps a colon in the name from being read as a protocol.
    const std::string url = "file:" + path;
    return avio_open2(&io_, url.c_str(), AVIO_FLAG_READ, nullptr, nullptr);
  }

  int OpenMemory(const std::uint8_t* data, std::size_t size) {
    memory_ = std::make_unique<MemoryReader>();
    memory_->data = data;
    memory_->size = static_cast<std::int64_t>(size);
    auto* buffer = static_cast<std::uint8_t*>(av_malloc(kMemoryBlock));
    if (buffer == nullptr) return AVERROR(ENOMEM);
    io_ = avio_alloc_context(buffer,
                             kMemoryBlock,
                             0,
                             memory_.get(),
                             &MemoryReader::Read,
                             nullptr,
                             &MemoryReader::Seek);
    if (io_ != nullptr) return 0;
    av_free(buffer);
    return AVERROR(ENOMEM);
  }

  // Which container it is, by content; null if none is recognised.
  const AVInputFormat* Probe() {
    const AVInputFormat* kind = nullptr;
    if (av_probe_input_buffer2(io_, &kind, "", nullptr, 0, 0) < 0) {
      return nullptr;
    }
    return kind;
  }

  int OpenContainer(const AVInputFormat* kind) {
    format_ = avformat_alloc_context();
    if (format_ == nullptr) return AVERROR(ENOMEM);
    format_->pb = io_;
    format_->flags |= AVFMT_FLAG_CUSTOM_IO;
    AVDictionary* options = nullptr;
    // A movie may name other files; none is opened.
    av_dict_set(&options, "protocol_whitelist", "", 0);
    const int result = avformat_open_input(&format_, "", kind, &options);
    av_dict_free(&options);
    return result;
  }

  AVIOContext* io() { return io_; }
  AVFormatContext* format() { return format_; }

 private:
  std::unique_ptr<MemoryReader> memory_;
  AVIOContext* io_ = nullptr;
  AVFormatContext* format_ = nullptr;
};

class FileFrameSource final : public FrameSource {
 public:
  FileFrameSource(std::string name, const FileFrameSourceOptions& options)
      : name_(std::move(name)), options_(options) {}

  Container& container() { return container_; }

  // Call after the container's file or memory is open.
  Result<void> Start();

  const ClipInfo& Info() const override { return info_; }
  Result<std::optional<Frame>> Next() override;

 private:
  struct Picture {
    libav::FramePtr frame;
    double time_s = 0.0;  // playing time, container's zero
    std::int64_t pts = 0;
  };

  Result<void> OpenStream();
  Result<void> OpenDecoder();
  Result<void> SetTimeScale();
  Result<void> SetPictureShape(const AVFrame& first);
  void SetPromises();

  libav::PacketPtr ReadPacket();
  libav::PacketPtr NextPacket();
  std::optional<Picture> Decode();
  // Next picture whose time is sound, in display order.
  std::optional<Picture> NextSound();
  void Finish();
  void SetWarnings();
  std::chrono::nanoseconds RealTime(std::int64_t pts) const;

  std::string name_;
  FileFrameSourceOptions options_;
  Container container_;
  AVStream* stream_ = nullptr;
  libav::CodecPtr decoder_;
  libav::FramePtr scratch_;
  std::optional<PlaneMaker> planes_;
  int coded_width_ = 0;
  int coded_height_ = 0;

  std::deque<libav::PacketPtr> queue_;
  bool container_ended_ = false;
  bool draining_ = false;
  int errors_in_a_row_ = 0;

  std::optional<Picture> candidate_;  // waits for the one after it
  std::optional<Picture> ready_;      // read by Start()
  bool ended_ = false;
  bool finished_ = false;

  std::int64_t first_pts_ = 0;
  std::int64_t last_pts_ = std::numeric_limits<std::int64_t>::min();
  std::chrono::nanoseconds last_time_{-1};
  std::int64_t next_index_ = 0;

  std::int64_t packets_read_ = 0;
  std::int64_t packets_promised_ = 0;
  bool last_is_torn_ = false;
  std::set<std::int64_t> torn_;     // times of packets read only in part
  double promised_s_ = 0.0;         // playing time; 0 = not known
  double last_packet_end_s_ = 0.0;  // of any stream, from the stream's start

  ClipInfo info_;
  std::vector<std::string> opening_warnings_;
  std::string ending_warning_;
  std::int64_t damaged_ = 0;
  std::int64_t lost_ = 0;
  std::int64_t bad_times_ = 0;
  std::int64_t unconvertible_ = 0;
};

Result<void> FileFrameSource::Start() {
  Result<void> step = OpenStream();
  if (step) step = OpenDecoder();
  if (step) step = SetTimeScale();
  if (!step) return step;

  ready_ = NextSound();
  if (!ready_) {
    return Unreadable(
        "No picture of '" + name_ +
        "' can be decoded: the file is damaged. Copy it from the camera again "
        "or film again.");
  }
  if (!candidate_) {
    return Unreadable("'" + name_ +
                      "' holds a single picture, not a film. Give a clip of "
                      "the whole test.");
  }
  first_pts_ = ready_->pts;
  if (Result<void> shape = SetPictureShape(*ready_->frame); !shape) {
    return shape;
  }
  SetPromises();
  SetWarnings();
  return {};
}

Result<void> FileFrameSource::OpenStream() {
  const AVInputFormat* kind = container_.Probe();
  if (kind == nullptr) {
    return Unreadable("'" + name_ +
                      "' is not a video. Give a clip as the camera wrote it, "
                      "for example .mp4 or .mov.");
  }
  const std::string_view kind_name = kind->name;
  if (std::find(kContainers.begin(), kContainers.end(), kind_name) ==
      kContainers.end()) {
    const bool is_picture = kind_name.find("pipe") != std::string_view::npos ||
                            kind_name.find("image") != std::string_view::npos ||
                            kind_name == "gif" || kind_name == "apng" ||
                            kind_name == "ico";
    if (is_picture) {
      return Unreadable("'" + name_ +
                        "' is a picture, not a film. Give a clip of the whole "
                        "test.");
    }
    if ((kind->flags & AVFMT_NOTIMESTAMPS) != 0 ||
        (kind->flags & AVFMT_GENERIC_INDEX) != 0) {
      return Unreadable("'" + name_ +
                        "' holds no times for its pictures, or no pictures. "
                        "Give the clip as the camera wrote it, for example "
                        ".mp4 or .mov.");
    }
    return Unreadable("'" + name_ +
                      "' is not a video that can be measured. Give a clip as "
                      "the camera wrote it, for example .mp4 or .mov.");
  }

  int result = container_.OpenContainer(kind);
  AVFormatContext* format = container_.format();
  if (result < 0 || format == nullptr) {
    return Unreadable("'" + name_ +
                      "' is damaged or cut off before its index, and nothing "
                      "can be read from it. Copy it from the camera again.");
  }
  for (unsigned i = 0; i < format->nb_streams; ++i) {
    const AVCodecParameters* coded = format->streams[i]->codecpar;
    if (static_cast<std::int64_t>(coded->width) * coded->height > kMaxPixels) {
      return Unreadable("The pictures of '" + name_ + "' are " +
                        std::to_string(coded->width) + " x " +
                        std::to_string(coded->height) +
                        " px, more than can be read. Film at 1920 x 1080.");
    }
  }
  format->max_analyze_duration = 2 * AV_TIME_BASE;
  std::vector<AVDictionary*> per_stream(format->nb_streams, nullptr);
  for (AVDictionary*& entry : per_stream) {
    av_dict_set(&entry, "threads", "1", 0);
    av_dict_set_int(&entry, "max_pixels", kMaxPixels, 0);
  }
  const std::size_t streams_before = per_stream.size();
  result = avformat_find_stream_info(
      format, per_stream.empty() ? nullptr : per_stream.data());
  for (std::size_t i = 0; i < streams_before; ++i) {
    av_dict_free(&per_stream[i]);
  }
  if (result < 0) {
    return Unreadable("'" + name_ +
                      "' is damaged and cannot be read. Copy it from the "
                      "camera again.");
  }

  // A cover picture in a sound file is not a film.
  bool has_sound = false;
  int best = -1;
  std::int64_t best_pixels = -1;
  for (unsigned i = 0; i < format->nb_streams; ++i) {
    const AVStream* stream = format->streams[i];
    const AVCodecParameters* coded = stream->codecpar;
    has_sound |= coded->codec_type == AVMEDIA_TYPE_AUDIO;
    if (coded->codec_type != AVMEDIA_TYPE_VIDEO ||
        (stream->disposition & AV_DISPOSITION_ATTACHED_PIC) != 0) {
      continue;
    }
    // The stream marked as default wins, then the largest picture.
    std::int64_t pixels =
        static_cast<std::int64_t>(coded->width) * coded->height;
    if ((stream->disposition & AV_DISPOSITION_DEFAULT) != 0) {
      pixels += std::int64_t{1} << 62;
    }
    if (pixels > best_pixels) {
      best_pixels = pixels;
      best = static_cast<int>(i);
    }
  }
  if (best < 0) {
    return Unreadable("'" + name_ + "' holds " +
                      (has_sound ? "sound but no pictures" : "no pictures") +
                      ". Give a clip of the test.");
  }
  stream_ = format->streams[best];
  if (stream_->time_base.num <= 0 || stream_->time_base.den <= 0) {
    return Unreadable(
        "'" + name_ +
        "' holds no usable times. Copy it from the camera again.");
  }
  // Matroska tells only the length of the whole file, so the other streams are
  // needed to see whether it ends early.
  if (kind_name != "matroska,webm") {
    for (unsigned i = 0; i < format->nb_streams; ++i) {
      if (static_cast<int>(i) != best) {
        format->streams[i]->discard = AVDISCARD_ALL;
      }
    }
  }
  if (kind_name == "avi") {
    info_.timestamps = TimestampOrigin::kNominalRate;
    opening_warnings_.emplace_back(
        "This kind of file (AVI) keeps one frame rate, not a time for each "
        "picture: if the camera skipped pictures, times are wrong.");
  }
  return {};
}

Result<void> FileFrameSource::OpenDecoder() {
  const AVCodecParameters* coded = stream_->codecpar;
  const AVCodec* codec = avcodec_find_decoder(coded->codec_id);
  if (codec == nullptr) {
    return Unreadable("'" + name_ + "' is coded as " +
                      avcodec_get_name(coded->codec_id) +
                      ", which cannot be decoded here. Set the camera to "
                      "H.264 or HEVC.");
  }
  decoder_.reset(avcodec_alloc_context3(codec));
  scratch_.reset(av_frame_alloc());
  if (!decoder_ || !scratch_) {
    return Error{ErrorCode::kInternal, "Out of memory."};
  }
  int result = avcodec_parameters_to_context(decoder_.get(), coded);
  decoder_->pkt_timebase = stream_->time_base;
  decoder_->thread_count = options_.threads;
  decoder_->thread_type = FF_THREAD_FRAME | FF_THREAD_SLICE;
  decoder_->max_pixels = kMaxPixels;
  if (result >= 0) result = avcodec_open2(decoder_.get(), codec, nullptr);
  if (result < 0) {
    return Unreadable("'" + name_ + "' cannot be decoded (" +
                      libav::ErrorText(result) +
                      "). Copy it from the camera again.");
  }
  return {};
}

Result<void> FileFrameSource::SetTimeScale() {
  std::optional<double> tagged_hz;
  const AVDictionary* const places[] = {container_.format()->metadata,
                                        stream_->metadata};
  for (const AVDictionary* tags : places) {
    const AVDictionaryEntry* entry = nullptr;
    while ((entry = av_dict_get(tags, "", entry, AV_DICT_IGNORE_SUFFIX)) !=
           nullptr) {
      if (!tagged_hz) tagged_hz = CaptureRateFromTag(entry->key, entry->value);
    }
  }
  const AVRational mean = stream_->avg_frame_rate;
  double playing_hz = mean.num > 0 && mean.den > 0 ? av_q2d(mean) : 30.0;
  if (tagged_hz || options_.shot_fps) {
    std::vector<std::int64_t> ticks;
    std::int64_t bytes = 0;
    while (queue_.size() < kLookaheadPackets && bytes < kLookaheadBytes) {
      libav::PacketPtr packet = ReadPacket();
      if (!packet) break;
      bytes += packet->size;
      const std::int64_t pts =
          packet->pts != AV_NOPTS_VALUE ? packet->pts : packet->dts;
      if (pts != AV_NOPTS_VALUE && (packet->flags & AV_PKT_FLAG_DISCARD) == 0) {
        ticks.push_back(pts);
      }
      queue_.push_back(std::move(packet));
    }
    const AVRational base = stream_->time_base;
    playing_hz = PlayingRateHz(std::move(ticks),
                               static_cast<double>(base.den) / base.num)
                     .value_or(playing_hz);
  }
  Result<TimeScale> scale =
      FindTimeScale(playing_hz, options_.shot_fps, tagged_hz);
  if (!scale) return scale.error();
  info_.time_scale = scale->value;
  info_.frame_rate_hz = playing_hz / scale->value;
  if (!scale->warning.empty()) opening_warnings_.push_back(scale->warning);
  return {};
}

Result<void> FileFrameSource::SetPictureShape(const AVFrame& first) {
  coded_width_ = first.width;
  coded_height_ = first.height;
  if (coded_width_ < kMinSidePx || coded_height_ < kMinSidePx) {
    return Unreadable("The pictures of '" + name_ + "' are only " +
                      std::to_string(coded_width_) + " x " +
                      std::to_string(coded_height_) +
                      " px. Film at 640 x 360 or more.");
  }

  Orientation orientation;
  const std::uint8_t* matrix_bytes = nullptr;
  std::size_t matrix_size = 0;
  matrix_bytes =
      av_stream_get_side_data(stream_, AV_PKT_DATA_DISPLAYMATRIX, &matrix_size);
  if (matrix_bytes == nullptr) {
    const AVFrameSideData* side =
        av_frame_get_side_data(&first, AV_FRAME_DATA_DISPLAYMATRIX);
    if (side != nullptr) {
      matrix_bytes = side->data;
      matrix_size = side->size;
    }
  }
  std::array<std::int32_t, 9> matrix{};
  if (matrix_bytes != nullptr && matrix_size >= sizeof(matrix)) {
    std::memcpy(matrix.data(), matrix_bytes, sizeof(matrix));
    if (std::optional<Orientation> read =
            Orientation::FromDisplayMatrix(matrix)) {
      orientation = *read;
    } else {
      opening_warnings_.emplace_back(
          "The file asks to be shown at a slant; the picture was taken as "
          "stored.");
    }
  }
  info_.rotation_deg = orientation.RotationDeg();

  double aspect = 1.0;
  const AVRational sample =
      av_guess_sample_aspect_ratio(container_.format(), stream_, nullptr);
  if (sample.num > 0 && sample.den > 0) aspect = av_q2d(sample);
  if (aspect < 0.25 || aspect > 4.0 || std::abs(aspect - 1.0) < 0.005) {
    aspect = 1.0;
  }
  planes_.emplace(orientation, aspect);

  Frame shaped;
  if (!planes_->Fill(first, &shaped)) {
    return Unreadable("The pictures of '" + name_ +
                      "' are in a layout that cannot be converted. Set the "
                      "camera to H.264 or HEVC.");
  }
  info_.width_px = shaped.luma.cols;
  info_.height_px = shaped.luma.rows;
  if (first.interlaced_frame != 0) {
    opening_warnings_.emplace_back(
        "The clip is interlaced: every second line is from another moment. "
        "Film in a progressive mode.");
  }
  return {};
}

void FileFrameSource::SetPromises() {
  const AVFormatContext* format = container_.format();
  const std::string_view kind = format->iformat->name;
  // A length worked out from the bit rate is only a guess.
  const bool known =
      format->duration_estimation_method == AVFMT_DURATION_FROM_STREAM ||
      kind == "matroska,webm";
  if (stream_->duration > 0) {
    promised_s_ =
        static_cast<double>(stream_->duration) * av_q2d(stream_->time_base);
  } else if (format->duration > 0 && known) {
    promised_s_ = static_cast<double>(format->duration) / AV_TIME_BASE;
  }
  if (kind == kContainers[0]) {
    // Less what an edit list cuts away.
    const int entries = avformat_index_get_entries_count(stream_);
    for (int i = 0; i < entries; ++i) {
      const AVIndexEntry* entry = avformat_index_get_entry(stream_, i);
      packets_promised_ += (entry->flags & AVINDEX_DISCARD_FRAME) == 0 ? 1 : 0;
    }
  }
  info_.duration_s = promised_s_ * info_.time_scale;
  info_.frame_count =
      packets_promised_ > 0 ? packets_promised_
      : stream_->nb_frames > 0
          ? stream_->nb_frames
          : std::llround(info_.duration_s * info_.frame_rate_hz);
}

libav::PacketPtr FileFrameSource::ReadPacket() {
  while (!container_ended_) {
    libav::PacketPtr packet(av_packet_alloc());
    if (!packet) break;
    const int result = av_read_frame(container_.format(), packet.get());
    if (result < 0) {
      const bool may_go_on =
          result == AVERROR(EAGAIN) || result == AVERROR_INVALIDDATA;
      if (!may_go_on || ++errors_in_a_row_ > kMaxErrorsInARow) break;
      continue;
    }
    errors_in_a_row_ = 0;
    const AVStream* stream = container_.format()->streams[packet->stream_index];
    if (packet->pts != AV_NOPTS_VALUE) {
      const std::int64_t start =
          stream_->start_time != AV_NOPTS_VALUE ? stream_->start_time : 0;
      const double end_s =
          static_cast<double>(packet->pts) * av_q2d(stream->time_base) +
          static_cast<double>(packet->duration) * av_q2d(stream->time_base) -
          static_cast<double>(start) * av_q2d(stream_->time_base);
      last_packet_end_s_ = std::max(last_packet_end_s_, end_s);
    }
    if (stream != stream_) continue;
    packets_read_ += (packet->flags & AV_PKT_FLAG_DISCARD) == 0 ? 1 : 0;
    last_is_torn_ = (packet->flags & AV_PKT_FLAG_CORRUPT) != 0;
    if (last_is_torn_) torn_.insert(packet->pts);
    return packet;
  }
  container_ended_ = true;
  return nullptr;
}

libav::PacketPtr FileFrameSource::NextPacket() {
  if (queue_.empty()) return ReadPacket();
  libav::PacketPtr packet = std::move(queue_.front());
  queue_.pop_front();
  return packet;
}

std::optional<FileFrameSource::Picture> FileFrameSource::Decode() {
  int failures = 0;
  while (true) {
    const int received = avcodec_receive_frame(decoder_.get(), scratch_.get());
    if (received == 0) {
      if (scratch_->best_effort_timestamp == AV_NOPTS_VALUE) {
        ++bad_times_;
        av_frame_unref(scratch_.get());
        continue;
      }
      Picture picture;
      picture.frame.reset(av_frame_alloc());
      if (!picture.frame) return std::nullopt;
      av_frame_move_ref(picture.frame.get(), scratch_.get());
      picture.pts = picture.frame->best_effort_timestamp;
      picture.time_s =
          static_cast<double>(picture.pts) * av_q2d(stream_->time_base);
      return picture;
    }
    if (received == AVERROR_EOF) return std::nullopt;
    if (received != AVERROR(EAGAIN)) {
      ++lost_;
      if (draining_ && ++failures > kMaxErrorsInARow) return std::nullopt;
    }
    if (draining_) {
      if (received == AVERROR(EAGAIN)) return std::nullopt;
      continue;
    }
    libav::PacketPtr packet = NextPacket();
    if (!packet) {
      draining_ = true;
      avcodec_send_packet(decoder_.get(), nullptr);
      continue;
    }
    const int sent = avcodec_send_packet(decoder_.get(), packet.get());
    if (sent == AVERROR(EAGAIN)) {
      queue_.push_front(std::move(packet));
      if (++failures > kMaxErrorsInARow) return std::nullopt;
    } else if (sent < 0) {
      ++lost_;
    }
  }
}

std::optional<FileFrameSource::Picture> FileFrameSource::NextSound() {
  while (!ended_) {
    std::optional<Picture> next = Decode();
    if (!next) {
      ended_ = true;
      break;
    }
    if (!candidate_) {
      candidate_ = std::move(next);
      continue;
    }
    if (next->frame->width != candidate_->frame->width ||
        next->frame->height != candidate_->frame->height) {
      ending_warning_ =
          "The picture changes its size in the middle of the clip; only the "
          "part before that was read.";
      ended_ = true;
      break;
    }
    const bool is_first = last_pts_ == std::numeric_limits<std::int64_t>::min();
    const double gap_s = next->time_s - candidate_->time_s;
    if (gap_s > kMaxGapS) {
      ++bad_times_;
      if (is_first) candidate_ = std::move(next);
      continue;
    }
    if (next->pts > candidate_->pts) {
      std::optional<Picture> out = std::move(candidate_);
      candidate_ = std::move(next);
      last_pts_ = out->pts;
      return out;
    }
    // One of the two is wrong: the earlier one, if the later fits what was
    // delivered before.
    ++bad_times_;
    if (next->pts > last_pts_) candidate_ = std::move(next);
  }
  std::optional<Picture> out = std::move(candidate_);
  candidate_.reset();
  if (out) last_pts_ = out->pts;
  return out;
}

std::chrono::nanoseconds FileFrameSource::RealTime(std::int64_t pts) const {
  const std::int64_t ticks = pts - first_pts_;
  if (info_.time_scale == 1.0) {
    return std::chrono::nanoseconds(
        av_rescale_q(ticks, stream_->time_base, AVRational{1, 1000000000}));
  }
  const double ns = static_cast<double>(ticks) * 1e9 * stream_->time_base.num /
                    stream_->time_base.den * info_.time_scale;
  return std::chrono::nanoseconds(std::llround(ns));
}

Result<std::optional<Frame>> FileFrameSource::Next() {
  try {
    while (true) {
      std::optional<Picture> picture = std::move(ready_);
      ready_.reset();
      if (!picture) picture = NextSound();
      if (!picture) {
        Finish();
        return std::optional<Frame>();
      }
      Frame frame;
      frame.timestamp = RealTime(picture->pts);
      if (frame.timestamp <= last_time_) {
        ++bad_times_;
        continue;
      }
      if (!planes_->Fill(*picture->frame, &frame)) {
        ++unconvertible_;
        continue;
      }
      frame.damaged = (picture->frame->flags & AV_FRAME_FLAG_CORRUPT) != 0 ||
                      picture->frame->decode_error_flags != 0 ||
                      torn_.erase(picture->pts) > 0;
      damaged_ += frame.damaged ? 1 : 0;
      frame.index = next_index_++;
      last_time_ = frame.timestamp;
      return std::optional<Frame>(std::move(frame));
    }
  } catch (const cv::Exception&) {
    return Error{ErrorCode::kInternal,
                 "A picture of '" + name_ + "' could not be converted."};
  } catch (const std::bad_alloc&) {
    return Error{ErrorCode::kInternal,
                 "There is not enough memory to read '" + name_ + "'."};
  }
}

void FileFrameSource::Finish() {
  if (finished_) return;
  finished_ = true;
  // Playing time from the stream's start to the end of the last picture.
  const double frame_s = 1.0 / (info_.frame_rate_hz * info_.time_scale);
  info_.duration_s =
      std::max(0.0, std::chrono::duration<double>(last_time_).count());
  info_.frame_count = next_index_;
  const double read_s = info_.duration_s / info_.time_scale + frame_s;
  const bool packets_missing =
      packets_promised_ > 0 && packets_read_ < packets_promised_;
  const bool time_missing = packets_promised_ == 0 && promised_s_ > 0.0 &&
                            promised_s_ - std::max(read_s, last_packet_end_s_) >
                                std::max(0.3, 3.0 * frame_s);
  if (ending_warning_.empty() && (packets_missing || time_missing)) {
    ending_warning_ =
        "The clip ends early: " + Seconds(read_s * info_.time_scale) + " of " +
        Seconds(std::max(promised_s_, read_s) * info_.time_scale) +
        " s could be read.";
  } else if (ending_warning_.empty() && last_is_torn_) {
    ending_warning_ = "The clip is cut off after " +
                      Seconds(read_s * info_.time_scale) + " s.";
  }
  SetWarnings();
}

void FileFrameSource::SetWarnings() {
  info_.warnings = opening_warnings_;
  if (!ending_warning_.empty()) info_.warnings.push_back(ending_warning_);
  if (damaged_ > 0) {
    info_.warnings.push_back(Pictures(damaged_) +
                             " damaged and partly filled in by the decoder.");
  }
  if (lost_ + unconvertible_ > 0) {
    info_.warnings.push_back(Pictures(lost_ + unconvertible_) +
                             " lost: the file is damaged.");
  }
  if (bad_times_ > 0) {
    info_.warnings.push_back(Pictures(bad_times_) +
                             " left out: their times do not rise or jump by "
                             "minutes.");
  }
}

Result<std::unique_ptr<FrameSource>> Started(
    std::unique_ptr<FileFrameSource> source) {
  try {
    if (Result<void> started = source->Start(); !started) {
      return started.error();
    }
  } catch (const cv::Exception&) {
    return Error{ErrorCode::kInternal, "A picture could not be converted."};
  } catch (const std::bad_alloc&) {
    return Error{ErrorCode::kInternal,
                 "There is not enough memory to read the clip."};
  }
  return std::unique_ptr<FrameSource>(std::move(source));
}

std::optional<Error> Check(const FileFrameSourceOptions& options) {
  if (options.threads < 1 || options.threads > kMaxThreads) {
    return Error{ErrorCode::kInvalidArgument,
                 "Decoder threads must be 1 to 64."};
  }
  if (options.shot_fps &&
      (!std::isfinite(*options.shot_fps) || *options.shot_fps <= 0.0)) {
    return Error{ErrorCode::kInvalidArgument,
                 "The rate the clip was shot at must be a number above 0 "
                 "frames per second."};
  }
  return std::nullopt;
}

}  // namespace

Result<std::unique_ptr<FrameSource>> OpenClip(
    const std::string& path, const FileFrameSourceOptions& options) {
  if (std::optional<Error> bad = Check(options)) return *bad;
  libav::Silence();
  std::error_code code;
  const auto status = std::filesystem::status(path, code);
  const std::string name = libav::FileName(path);
  if (!std::filesystem::exists(status)) {
    return Unreadable("There is no file '" + path +
                      "'. Check the name and the folder.");
  }
  if (std::filesystem::is_directory(status)) {
    return Unreadable("'" + path + "' is a folder. Name one clip in it.");
  }
  // A pipe could keep us waiting for ever.
  if (!std::filesystem::is_regular_file(status)) {
    return Unreadable("'" + path +
                      "' is not a plain file. Save the clip and give that.");
  }
  if (std::filesystem::file_size(path, code) == 0 && !code) {
    return Unreadable("'" + name +
                      "' is empty. Copy it from the camera again.");
  }
  auto source = std::make_unique<FileFrameSource>(name, options);
  const int opened = source->container().OpenFile(path);
  if (opened < 0) {
    return Unreadable("'" + path + "' cannot be opened (" +
                      libav::ErrorText(opened) +
                      "). Check that you may read it.");
  }
  return Started(std::move(source));
}

Result<std::unique_ptr<FrameSource>> OpenClipFromMemory(
    const std::uint8_t* data,
    std::size_t size,
    const std::string& name,
    const FileFrameSourceOptions& options) {
  if (std::optional<Error> bad = Check(options)) return *bad;
  libav::Silence();
  if (size == 0) {
    return Unreadable("'" + name +
                      "' is empty. Copy it from the camera again.");
  }
  auto source = std::make_unique<FileFrameSource>(name, options);
  if (source->container().OpenMemory(data, size) < 0) {
    return Error{ErrorCode::kInternal, "Out of memory."};
  }
  return Started(std::move(source));
}

}  // namespace flowkin
