#include "app/usecases/watch_clip.h"

#include <optional>
#include <utility>

#include "core/video/file_frame_source.h"

namespace flowkin {
namespace {

class SeenSource : public FrameSource {
 public:
  SeenSource(FrameSource& source, const std::function<void(const Frame&)>& see)
      : source_(source), see_(see) {}

  const ClipInfo& Info() const override { return source_.Info(); }
  Result<std::optional<Frame>> Next() override {
    Result<std::optional<Frame>> next = source_.Next();
    if (next && next->has_value()) see_(**next);
    return next;
  }

 private:
  FrameSource& source_;
  const std::function<void(const Frame&)>& see_;
};

}  // namespace

Result<MeasuredClip> WatchClip(const std::string& clip,
                               const MeasureClipOptions& options,
                               ClipTest& test,
                               const std::function<void(const Frame&)>& see,
                               const ProgressCallback& progress,
                               std::stop_token stop) {
  if (auto valid = options.Validate(clip); !valid) return valid.error();
  FileFrameSourceOptions source_options;
  source_options.shot_fps = options.shot_fps;
  source_options.threads = options.decoder_threads;
  auto source = OpenClip(clip, source_options);
  if (!source) return source.error();
  SeenSource seen(**source, see);
  auto measured = MeasureFrames(seen, test, progress, std::move(stop));
  if (measured) measured->clip = clip;
  return measured;
}

}  // namespace flowkin
