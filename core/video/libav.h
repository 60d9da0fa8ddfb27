#pragma once

// The C libraries behind the clip reader and writer, with owners for their
// objects. Only core/video/*.cc includes this.

extern "C" {
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libavutil/avutil.h>
#include <libavutil/display.h>
#include <libavutil/imgutils.h>
#include <libavutil/mathematics.h>
#include <libavutil/opt.h>
#include <libavutil/pixdesc.h>
#include <libswscale/swscale.h>
}

#include <memory>
#include <string>

namespace flowkin::libav {

struct FrameDeleter {
  void operator()(AVFrame* frame) const { av_frame_free(&frame); }
};
struct PacketDeleter {
  void operator()(AVPacket* packet) const { av_packet_free(&packet); }
};
struct CodecDeleter {
  void operator()(AVCodecContext* codec) const { avcodec_free_context(&codec); }
};
struct ScalerDeleter {
  void operator()(SwsContext* scaler) const { sws_freeContext(scaler); }
};

using FramePtr = std::unique_ptr<AVFrame, FrameDeleter>;
using PacketPtr = std::unique_ptr<AVPacket, PacketDeleter>;
using CodecPtr = std::unique_ptr<AVCodecContext, CodecDeleter>;
using ScalerPtr = std::unique_ptr<SwsContext, ScalerDeleter>;

/// Keeps the libraries from printing. Safe to call from any thread, any number
/// of times.
void Silence();

/// The library's own words for an error number.
std::string ErrorText(int error);

/// The last part of a path, for sentences meant for a person.
std::string FileName(const std::string& path);

}  // namespace flowkin::libav
