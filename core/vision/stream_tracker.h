#pragma once

#include <memory>
#include <optional>

#include "core/track/stream_track.h"
#include "core/video/frame.h"

namespace flowkin {

/// Where a stream test lies in a picture, px of the upright frame.
struct StreamPlace {
  double stick_center_x_px = 0.0;
  double stick_width_px = 0.0;
  double stick_bottom_y_px = 0.0;
  double stream_x_px = 0.0;  ///< at the stick's end
  double stream_lean = 0.0;  ///< columns to the right per row down
  double pool_y_px = 0.0;
};

/// Lengths as shares of the picture, times in seconds.
struct StreamTrackerOptions {
  /// How far back the tracker can see when a raised stick is noticed: must
  /// cover the lift. > 0.
  double look_back_s = 3.0;
};

/// Watches a stream test: a stick stands dipped in the paint, is lifted and
/// held, paint runs off its lower edge as a stream that thins, breaks, drips.
///
/// One pass, in time order. Keeps a short ring of reduced pictures until a
/// stick at rest with something below it is seen that was not there before,
/// then a narrow strip around the stream of every frame, thinned so that its
/// spacing stays a fixed small share of the time since the lift (memory grows
/// with the logarithm of the test's length, not with the clip's).
class StreamTracker {
 public:
  explicit StreamTracker(const StreamTrackerOptions& options = {});
  ~StreamTracker();
  /// A copy sees what comes later on its own; while one of the two is in use
  /// the other must rest.
  StreamTracker(const StreamTracker& other);
  StreamTracker(StreamTracker&&) noexcept;
  StreamTracker& operator=(StreamTracker&&) noexcept;

  void Add(const Frame& frame);
  /// The running test in the newest frame; empty while none is seen. Before
  /// Finish().
  std::optional<StreamPlace> Place() const;
  /// Ends the clip. Call once.
  StreamTrack Finish();

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace flowkin
