#include "core/video/prefetch.h"

#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>
#include <utility>

#include "core/base/check.h"

namespace flowkin {
namespace {

class PrefetchSource : public FrameSource {
 public:
  PrefetchSource(std::unique_ptr<FrameSource> source, int depth)
      : source_(std::move(source)),
        depth_(static_cast<std::size_t>(depth)),
        info_(source_->Info()),
        reader_([this] { Read(); }) {}

  ~PrefetchSource() override {
    {
      const std::lock_guard<std::mutex> lock(mutex_);
      stopped_ = true;
    }
    changed_.notify_all();
    reader_.join();
  }

  PrefetchSource(const PrefetchSource&) = delete;
  PrefetchSource& operator=(const PrefetchSource&) = delete;

  const ClipInfo& Info() const override { return info_; }

  Result<std::optional<Frame>> Next() override {
    std::unique_lock<std::mutex> lock(mutex_);
    changed_.wait(lock, [this] { return !queue_.empty() || ended_; });
    if (queue_.empty()) return std::optional<Frame>();
    Result<std::optional<Frame>> next = std::move(queue_.front());
    queue_.pop_front();
    const bool last = !next || !next->has_value();
    lock.unlock();
    changed_.notify_all();
    // The reader has finished with its source before it hands out the last.
    if (last) info_ = source_->Info();
    return next;
  }

 private:
  void Read() {
    while (true) {
      Result<std::optional<Frame>> next = source_->Next();
      const bool last = !next || !next->has_value();
      std::unique_lock<std::mutex> lock(mutex_);
      changed_.wait(lock,
                    [this] { return queue_.size() < depth_ || stopped_; });
      if (stopped_) return;
      queue_.push_back(std::move(next));
      ended_ = last;
      lock.unlock();
      changed_.notify_all();
      if (last) return;
    }
  }

  std::unique_ptr<FrameSource> source_;
  const std::size_t depth_;
  ClipInfo info_;
  std::mutex mutex_;
  std::condition_variable changed_;
  std::deque<Result<std::optional<Frame>>> queue_;
  bool ended_ = false;
  bool stopped_ = false;
  std::thread reader_;  // last: starts when all else is there
};

}  // namespace

std::unique_ptr<FrameSource> Prefetch(std::unique_ptr<FrameSource> source,
                                      int depth) {
  FLOWKIN_CHECK(source != nullptr && depth >= 1);
  return std::make_unique<PrefetchSource>(std::move(source), depth);
}

}  // namespace flowkin
