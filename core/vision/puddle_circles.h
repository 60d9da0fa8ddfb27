#pragma once

#include <vector>

#include "core/vision/puddle_picture.h"

namespace flowkin {

/// A round outline in a work picture.
struct Circle {
  double x = 0.0, y = 0.0, r = 0.0;  ///< work px
  double coverage = 0.0;             ///< share of directions with an edge
};

/// Strength of the strongest edge of the three planes at every pixel.
struct EdgeMap {
  cv::Mat gx, gy;     ///< CV_16SC1, of the plane with the strongest edge
  cv::Mat magnitude;  ///< CV_16UC1
  int threshold = 0;  ///< magnitude above noise
};

EdgeMap FindEdges(const WorkPicture& picture);

/// Finds round outlines among the edges that the reference does not have, by
/// voting for centres along the gradients (after D. H. Ballard 1981,
/// Generalizing the Hough transform to detect arbitrary shapes, Pattern
/// Recognition 13; from memory, not checked). Works from the rim alone, so the
/// paint may have the tile's own colour.
std::vector<Circle> FindCircles(const EdgeMap& edges,
                                const EdgeMap& reference,
                                cv::Point2f shift);

}  // namespace flowkin
