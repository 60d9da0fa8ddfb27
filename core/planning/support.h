#pragma once

namespace flowkin {

enum class SupportShape { kRectangle, kRound };

/// What is poured on: canvas, panel or tile, `count` of them alike.
struct Support {
  SupportShape shape = SupportShape::kRectangle;
  double length_mm = 0.0;  ///< the diameter of a round one; 10 to 10000
  double width_mm = 0.0;   ///< rectangle only; 10 to 10000
  double depth_mm = 0.0;   ///< height of the side faces; 0 to 500
  int count = 1;           ///< 1 to 1000
  bool edges = true;       ///< the side faces are painted too
};

/// Front face of one, square metres.
double FaceAreaM2(const Support& support);
/// Painted side faces of one; 0 without edges.
double EdgeAreaM2(const Support& support);

}  // namespace flowkin
