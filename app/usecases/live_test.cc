#include "app/usecases/live_test.h"

#include <optional>
#include <utility>

namespace flowkin {
namespace {

/// Room for frames that wait to be looked at: more than a second of 1920 x 1080
/// at 30 frames a second.
constexpr std::int64_t kMostWaitingBytes = 160LL << 20;

}  // namespace

LiveTest::LiveTest(FilmShelf shelf,
                   const std::string& stem,
                   const TestFilmerOptions& options,
                   Teller tell)
    : filmer_(std::move(shelf), stem, options),
      tell_(std::move(tell)),
      worker_([this](std::stop_token stop) { Work(std::move(stop)); }) {}

LiveTest::~LiveTest() {
  worker_.request_stop();
  wake_.notify_all();
}

bool LiveTest::Add(const Frame& frame) {
  {
    const std::lock_guard lock(mutex_);
    ++frames_;
    const std::int64_t bytes = frame.Bytes();
    if (waiting_bytes_ + bytes > kMostWaitingBytes) {
      ++dropped_;
      return false;
    }
    waiting_bytes_ += bytes;
    items_.push_back({frame, {}});
  }
  wake_.notify_one();
  return true;
}

void LiveTest::Put(Order order) {
  {
    const std::lock_guard lock(mutex_);
    items_.push_back({{}, std::move(order)});
  }
  wake_.notify_one();
}

void LiveTest::Use(const ClipTestOptions& test) {
  Put([test](TestFilmer& filmer) {
    filmer.Use(test);
    return FilmerView{};
  });
}

void LiveTest::Arm(bool armed) {
  Put([armed](TestFilmer& filmer) {
    filmer.Arm(armed);
    return FilmerView{};
  });
}

void LiveTest::BeginByHand() {
  Put([](TestFilmer& filmer) {
    filmer.BeginByHand();
    return FilmerView{};
  });
}

void LiveTest::EndByHand() {
  Put([](TestFilmer& filmer) { return filmer.EndByHand(); });
}

void LiveTest::ThrowAway() {
  Put([](TestFilmer& filmer) {
    filmer.ThrowAway();
    return FilmerView{};
  });
}

void LiveTest::CameraLost() {
  Put([](TestFilmer& filmer) { return filmer.CameraLost(); });
}

void LiveTest::Work(std::stop_token stop) {
  while (true) {
    Item item;
    {
      std::unique_lock lock(mutex_);
      if (!wake_.wait(lock, stop, [this] { return !items_.empty(); })) return;
      item = std::move(items_.front());
      items_.pop_front();
    }
    LiveStatus status;
    if (item.order) {
      status.view = item.order(filmer_);
    } else {
      status.view = filmer_.Take(item.frame);
    }
    status.armed = filmer_.armed();
    {
      const std::lock_guard lock(mutex_);
      if (!item.order) waiting_bytes_ -= item.frame.Bytes();
      status.frames = frames_;
      status.dropped = dropped_;
    }
    // An order without outcome says nothing that the next frame does not.
    const bool news = !item.order || status.view.taken || status.view.error;
    if (news && tell_) tell_(status);
  }
}

}  // namespace flowkin
