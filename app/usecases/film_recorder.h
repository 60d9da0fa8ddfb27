#pragma once

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

#include "core/base/result.h"
#include "core/video/clip_writer.h"
#include "core/video/frame.h"

namespace flowkin {

/// Writes a film that is being shot in a thread of its own: whoever looks at
/// the frames does not wait for the encoder, nor for the pictures of before the
/// start that it gets all at once.
class FilmRecorder {
 public:
  /// Fails as ClipWriter::Create.
  static Result<std::unique_ptr<FilmRecorder>> Create(const std::string& path);
  /// Throws the film away unless Finish() succeeded.
  ~FilmRecorder();

  /// Waits only where the encoder is seconds behind. Fails with what went wrong
  /// on an earlier frame.
  Result<void> Add(const Frame& frame);
  /// Writes what still waits and closes the file. Call once, last.
  Result<void> Finish();

 private:
  explicit FilmRecorder(std::unique_ptr<ClipWriter> writer);
  void Work(const std::stop_token& stop);

  std::unique_ptr<ClipWriter> writer_;
  std::mutex mutex_;
  std::condition_variable_any changed_;
  std::deque<Frame> waiting_;
  std::int64_t waiting_bytes_ = 0;
  bool last_ = false;  ///< no frame follows
  std::optional<Error> error_;
  std::jthread worker_;  ///< last: ends first
};

}  // namespace flowkin
