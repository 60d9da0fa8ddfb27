#pragma once

#include <deque>
#include <optional>

#include "core/vision/puddle_outline.h"
#include "core/vision/puddle_picture.h"

namespace flowkin {

/// When a puddle that is now known began.
struct PuddleStart {
  std::optional<double> start_s;
  double sd_s = 0.0;
  bool there_from_start = false;
  /// Radius against time while it was poured, work px.
  std::vector<std::pair<double, double>> early_radius;
};

/// Looks back through the kept small pictures for the growth of the outline
/// `trace` (full resolution, seen at the newest picture).
///
/// Stacks, per picture, how many rays fall from paint to tile at each radius,
/// and finds the path through time that never shrinks and collects most of
/// them. While paint is poured at a steady flow Q the viscous-gravity current
/// grows as R = 0.715 (g Q^3 / 3 nu)^(1/8) (t - t0)^(1/2) (Huppert 1982, for a
/// volume growing in proportion to time; the constant from memory, it is not
/// used), so the first part of R^2 is drawn back to zero. The nozzle hides the
/// very first paint; a straight line in R^2 does not need it.
///
/// @param ring         pictures in order of time, shifts filled in.
/// @param bare         the first picture; counts where the tile is patterned.
/// @param factor       full-resolution px per work px.
/// @param covers_clip  the oldest picture of the ring is the clip's first.
PuddleStart FindPuddleStart(const std::deque<WorkPicture>& ring,
                            const WorkPicture& bare,
                            const OutlineTrace& trace,
                            int factor,
                            bool covers_clip);

}  // namespace flowkin
