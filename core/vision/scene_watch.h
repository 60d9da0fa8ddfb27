#pragma once

#include <deque>
#include <opencv2/core.hpp>
#include <optional>

#include "core/video/frame.h"

namespace flowkin {

/// What speaks against filming a test now, the gravest first.
enum class SceneFault {
  kNone,
  kFrozen,   ///< the same picture again and again
  kDark,     ///< hardly anything bright in it
  kGlare,    ///< much of it is plain white
  kSlow,     ///< fewer than 20 pictures a second
  kShaking,  ///< the whole picture moves
  kBlurred,  ///< no edge in it is sharp
  kNoStick,  ///< nothing upright with two straight edges
};

/// The scene as it stands with one frame.
struct SceneView {
  /// Something moves within the picture.
  bool moving = false;
  /// How long nothing has, s.
  double still_s = 0.0;
  SceneFault fault = SceneFault::kNone;
};

/// Looks at a running camera, to know when something happens in front of it
/// and what would spoil a test. Works on pictures of 160 px width; no memory
/// beyond the last tenths of a second. Frames in order of time, of one size;
/// a frame of another size begins anew.
class SceneWatch {
 public:
  /// `wants_stick`: say so when there is none in the picture.
  explicit SceneWatch(bool wants_stick) : wants_stick_(wants_stick) {}

  SceneView Add(const Frame& frame);

 private:
  struct Small {
    double t_s;
    cv::Mat luma;
  };
  void Judge(const Frame& frame, double t_s);
  SceneFault FaultOfPicture(const Frame& frame) const;

  bool wants_stick_;
  cv::Size size_;
  std::deque<Small> recent_;
  double last_motion_s_ = 0.0;
  double first_s_ = 0.0;
  int moved_in_a_row_ = 0;
  double changed_s_ = 0.0;  ///< the picture last differed from the one before
  double next_judge_s_ = 0.0;
  double shaken_s_ = -1.0;  ///< the camera last moved
  SceneFault picture_fault_ = SceneFault::kNone;
  std::optional<double> interval_s_;  ///< usual step between frames
};

}  // namespace flowkin
