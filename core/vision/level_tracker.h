#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/base/result.h"
#include "core/track/relief_track.h"
#include "core/video/frame.h"

namespace flowkin {

struct LevelTrackerOptions {
  /// Pixels of the reduced pictures the tracker keeps, 4000 to 100000.
  int reduced_pixels = 24000;
  /// Reduced pictures kept, 100 to 4000. When a clip has more, those between
  /// which least happens are dropped, so memory does not grow with length.
  int max_pictures = 640;
  /// The flat surface is taken this many decay times after the laying, 2.5 to
  /// 8. It scales with the decay so that thick and thin paint are treated
  /// alike, whatever relief is still left by then.
  double flat_after = 6.0;
  /// The last bit of the ribbon is down: set by hand, s since the clip's first
  /// frame. Motion before it then counts as laying, motion after it as nothing.
  std::optional<double> laid_s;

  Result<void> Validate() const;
};

/// Watches a ribbon of paint fade on its own surface (level test).
///
/// Only shading and highlights tell, so the observable is how much the paint's
/// picture differs from that of its flat surface. The flat surface is known
/// only at the end; therefore reduced pictures are kept (two bytes per pixel,
/// bounded in number) and everything is worked out in Finish().
///
/// Camera shake, the light's gain and offset (lamp, exposure) and a lamp's
/// stripes under a rolling shutter are taken out on the surroundings of the
/// paint. The relief is the product of neighbouring pictures' differences from
/// the flat one, whose noise is independent, so noise does not read as relief.
///
/// Not thread-safe; one object per clip.
class LevelTracker {
 public:
  /// Options must be valid.
  explicit LevelTracker(const LevelTrackerOptions& options = {});
  ~LevelTracker();
  /// A copy sees what comes later on its own; while one of the two is in use
  /// the other must rest.
  LevelTracker(const LevelTracker& other);
  LevelTracker(LevelTracker&&) noexcept;
  LevelTracker& operator=(LevelTracker&&) noexcept;

  /// Frames in display order, all of one size (others are left out). Times
  /// must rise. At most 2 ms for 1920 x 1080.
  void Add(const Frame& frame);

  /// What was seen; the tracker is spent afterwards.
  ReliefTrack Finish();

  /// `outline_px` is what a copy of this tracker, finished at the newest frame,
  /// found; it is kept at its place in the frames that follow, at most 0.5 ms
  /// for each. Empty: nothing is.
  void Follow(const std::vector<ReliefPoint>& outline_px);
  /// Where that outline lies in the newest frame.
  std::vector<ReliefPoint> OutlineNow() const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace flowkin
