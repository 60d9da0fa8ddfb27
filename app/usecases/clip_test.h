#pragma once

#include <iosfwd>
#include <memory>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "core/base/result.h"
#include "core/flow/measurement.h"
#include "core/video/frame.h"

namespace flowkin {

struct ClipTestOptions {
  TestKind kind = TestKind::kStream;
  /// Puddle test: volume that was laid down, mL, 0.1 to 100.
  std::optional<double> volume_ml;
  /// Image scale at the test, mm per px of the upright frame, above 0, at most
  /// 100.
  std::optional<double> mm_per_px;
  /// Events set by hand; those of another kind of test must be empty.
  EventsByHand by_hand;

  /// kInvalidArgument with a sentence when a value is out of range.
  Result<void> Validate() const;
};

/// A line round or along something that was found, px of the upright frame.
struct FoundLine {
  std::vector<cv::Point2d> points;
  bool closed = false;
};

/// One filmed test, from frames to numbers. Frames go in once, in time order;
/// memory stays constant in the length of the clip.
class ClipTest {
 public:
  virtual ~ClipTest() = default;
  virtual void Add(const Frame& frame) = 0;
  /// Where the test lies in the newest frame, as far as it is known. Cheap.
  /// Before Finish().
  virtual std::vector<FoundLine> LinesNow() const = 0;
  /// `seen` is a copy of this test, finished at the newest frame: what only a
  /// look back tells LinesNow() keeps at its place from here on.
  virtual void Follow(const ClipTest& seen) = 0;
  /// Ends the clip and measures. Call once, after the last frame.
  virtual FlowMeasurement Finish() = 0;
  /// A copy that can be finished to see how the test stands, while this one
  /// goes on; the two are not for two threads at once. Not after Finish().
  virtual std::unique_ptr<ClipTest> Copy() const = 0;

  // Only after Finish():

  /// What starts the test was seen (stick lifted, ribbon laid, paint put
  /// down), whatever became of the measurement.
  virtual bool Begun() const = 0;
  /// Where the test lies in the picture, as it was seen last.
  virtual std::vector<FoundLine> Lines() const = 0;

  /// Draws what was found, as it stood `t_s` seconds after the first frame,
  /// into an 8-bit BGR picture of the clip's upright size. Lettering apart.
  virtual void DrawFound(cv::Mat& bgr, double t_s) const = 0;
  /// Writes the measured time series as comma-separated values; the first line
  /// names the columns with their units.
  virtual void WriteTrace(std::ostream& out) const = 0;
};

/// `options` must be valid.
std::unique_ptr<ClipTest> MakeClipTest(const ClipTestOptions& options);

}  // namespace flowkin
