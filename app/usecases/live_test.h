#pragma once

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

#include "app/usecases/film_shelf.h"
#include "app/usecases/test_filmer.h"
#include "core/video/frame.h"

namespace flowkin {

/// What a front end shows of live filming.
struct LiveStatus {
  FilmerView view;
  bool armed = false;
  std::int64_t frames = 0;   ///< handed in
  std::int64_t dropped = 0;  ///< found no room, because looking was too slow
};

/// Films tests from a live camera in a thread of its own: frames are handed in
/// from the camera's thread and never make it wait. See TestFilmer for when a
/// film begins and ends.
class LiveTest {
 public:
  /// Called in the own thread with every frame that was looked at, and when a
  /// film ends. Must be quick.
  using Teller = std::function<void(const LiveStatus&)>;

  LiveTest(FilmShelf shelf,
           const std::string& stem,
           const TestFilmerOptions& options,
           Teller tell);
  ~LiveTest();

  /// Any thread. False where there was no room: the frame is left out, the
  /// times of the others stay true.
  bool Add(const Frame& frame);

  // Any thread; each takes effect with the frames that follow.
  void Use(const ClipTestOptions& test);
  void Arm(bool armed);
  void BeginByHand();
  void EndByHand();
  void ThrowAway();
  void CameraLost();

 private:
  using Order = std::function<FilmerView(TestFilmer&)>;
  struct Item {
    Frame frame;
    Order order;  ///< instead of a frame
  };

  void Put(Order order);
  void Work(std::stop_token stop);

  TestFilmer filmer_;
  Teller tell_;
  mutable std::mutex mutex_;
  std::condition_variable_any wake_;
  std::deque<Item> items_;
  std::int64_t waiting_bytes_ = 0;
  std::int64_t frames_ = 0;
  std::int64_t dropped_ = 0;
  std::jthread worker_;  ///< last: ends first
};

}  // namespace flowkin
