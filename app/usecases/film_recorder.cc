#include "app/usecases/film_recorder.h"

#include <utility>

namespace flowkin {
namespace {

/// Visibly free of loss: the stream's last thread is a pixel wide.
constexpr int kRateFactor = 10;
/// Room for waiting frames: the pictures of before the start, which are kept
/// anyhow, and a second of 1920 x 1080 at 30 frames a second.
constexpr std::int64_t kMostUnwrittenBytes = 260LL << 20;

}  // namespace

Result<std::unique_ptr<FilmRecorder>> FilmRecorder::Create(
    const std::string& path) {
  ClipWriterOptions options;
  options.rate_factor = kRateFactor;
  options.in_a_hurry = true;
  auto writer = ClipWriter::Create(path, options);
  if (!writer) return writer.error();
  return std::unique_ptr<FilmRecorder>(new FilmRecorder(*std::move(writer)));
}

FilmRecorder::FilmRecorder(std::unique_ptr<ClipWriter> writer)
    : writer_(std::move(writer)),
      worker_([this](const std::stop_token& stop) { Work(stop); }) {}

FilmRecorder::~FilmRecorder() = default;

Result<void> FilmRecorder::Add(const Frame& frame) {
  std::unique_lock lock(mutex_);
  changed_.wait(
      lock, [this] { return error_ || waiting_bytes_ < kMostUnwrittenBytes; });
  if (error_) return *error_;
  waiting_.push_back(frame);
  waiting_bytes_ += frame.Bytes();
  changed_.notify_all();
  return {};
}

Result<void> FilmRecorder::Finish() {
  {
    const std::lock_guard lock(mutex_);
    last_ = true;
  }
  changed_.notify_all();
  worker_.join();
  if (error_) return *error_;
  return writer_->Finish();
}

void FilmRecorder::Work(const std::stop_token& stop) {
  while (true) {
    Frame frame;
    {
      std::unique_lock lock(mutex_);
      changed_.wait(lock, stop, [this] { return last_ || !waiting_.empty(); });
      if (stop.stop_requested() || waiting_.empty()) return;
      frame = std::move(waiting_.front());
      waiting_.pop_front();
    }
    const Result<void> written = writer_->Add(frame);
    {
      const std::lock_guard lock(mutex_);
      waiting_bytes_ -= frame.Bytes();
      if (!written) error_ = written.error();
    }
    changed_.notify_all();
    if (!written) return;
  }
}

}  // namespace flowkin
