#pragma once

#include <memory>
#include <optional>

#include "core/base/result.h"
#include "core/track/front_track.h"
#include "core/video/frame.h"

namespace flowkin {

struct PuddleTrackerOptions {
  /// Scale on the tile, mm per full-resolution px, > 0. Without it the marks
  /// of a ruler in the picture are looked for.
  std::optional<double> mm_per_px;
  /// Relative standard uncertainty of a scale that is given, 0..0.2.
  double mm_per_px_rel_sd = 0.003;

  Result<void> Validate() const;
};

/// Follows the outline of a puddle seen from above.
///
/// Searches small pictures for a round outline that the first picture did not
/// have; follows each one found (a syringe's barrel is round as well) to a
/// fraction of a pixel at full resolution, ever more seldom as it slows down;
/// and keeps the one that grows. The start is read off the small pictures of
/// the last seconds, kept in a ring. Memory does not depend on the length of
/// the clip. Frames must come in order of time; planes as in Frame.
class PuddleTracker {
 public:
  explicit PuddleTracker(const PuddleTrackerOptions& options = {});
  ~PuddleTracker();
  /// A copy sees what comes later on its own; while one of the two is in use
  /// the other must rest.
  PuddleTracker(const PuddleTracker& other);
  PuddleTracker(PuddleTracker&&) noexcept;
  PuddleTracker& operator=(PuddleTracker&&) noexcept;

  void Add(const Frame& frame);
  /// The growing outline as it was followed last; empty while none is. Before
  /// Finish().
  std::optional<FrontSample> Newest() const;
  /// What was seen; call once, after the last frame.
  FrontTrack Finish();

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace flowkin
