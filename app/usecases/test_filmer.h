#pragma once

#include <cstddef>
#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/usecases/clip_test.h"
#include "app/usecases/film_recorder.h"
#include "app/usecases/film_shelf.h"
#include "core/base/result.h"
#include "core/vision/scene_watch.h"

namespace flowkin {

struct TestFilmerOptions {
  ClipTestOptions test;
  /// A film begins this long before the first motion, s.
  double pre_roll_s = 2.0;
  /// Room for those pictures in memory, bytes; the pre-roll is shorter where
  /// they are large.
  std::int64_t pre_roll_bytes = 160LL << 20;
  /// Films begin by themselves. By hand they do in any case.
  bool armed = true;
};

/// One film that is done and lies on the shelf.
struct FilmTaken {
  std::string path;
  double duration_s = 0.0;
  bool begun = false;    ///< the test's first event was seen in it
  bool settled = false;  ///< it ended by itself, with its last event seen
};

/// How things stand with one frame.
struct FilmerView {
  bool filming = false;
  bool begun = false;  ///< the test's first event was seen in this film
  double filming_s = 0.0;
  SceneView scene;
  int width_px = 0;  ///< of the frame
  int height_px = 0;
  double t_s = 0.0;              ///< of the frame
  std::vector<FoundLine> lines;  ///< of the running test, px of the frame
  /// Puddle test without a scale: no ruler's marks were made out in the scene
  /// at rest, so films compare only while the camera stays where it is.
  bool no_ruler = false;
  std::optional<FilmTaken> taken;
  /// The film could not be written; filming goes on when armed again.
  std::optional<Error> error;
};

/// Cuts a running camera into one film for each test, written to the shelf
/// while it runs, with the camera's own times.
///
/// A film begins when something moves. It is thrown away when nothing comes of
/// it, and is done a while after what ends the test: the stream broke, the
/// ribbon faded, the puddle spread for ten seconds. Whether it has is asked of
/// the test itself, a few times a second, on what it saw so far. The numbers
/// that count come from the film, measured like any other clip.
///
/// Frames in order of time. A pause of more than a second or a change of size
/// ends the film. Not thread-safe.
class TestFilmer {
 public:
  /// `options.test` must be valid. Films are called `stem`-1.mp4 and so on.
  TestFilmer(FilmShelf shelf,
             std::string stem,
             const TestFilmerOptions& options);
  ~TestFilmer();

  FilmerView Take(const Frame& frame);

  /// A running film is thrown away.
  void Use(const ClipTestOptions& test);
  void Arm(bool armed);
  bool armed() const { return options_.armed; }
  /// Starts a film with the next frame; it does not end for want of an event.
  void BeginByHand() { begin_wanted_ = true; }
  /// Ends the film as it is; empty where none runs.
  FilmerView EndByHand();
  void ThrowAway();
  /// No frames come any more: the film ends, and is kept if the test had begun.
  FilmerView CameraLost();

 private:
  struct Film;

  void Remember(const Frame& frame);
  Result<void> Begin();
  Result<void> Write(const Frame& frame);
  void Look(double t_s);
  void LookForRuler(const Frame& frame, const SceneView& scene);
  FilmerView End(bool settled);
  FilmerView KeepOrDrop();
  FilmerView Stopped(const Error& error);
  bool Pointless(const SceneView& scene, double filming_s) const;

  FilmShelf shelf_;
  std::string stem_;
  TestFilmerOptions options_;
  SceneWatch scene_;
  std::deque<Frame> before_;
  std::int64_t before_bytes_ = 0;
  std::optional<double> last_s_;
  cv::Size size_;
  bool begin_wanted_ = false;
  bool no_ruler_ = false;
  double next_ruler_s_ = 0.0;
  std::string spare_path_;  ///< reserved for a film that was thrown away
  std::unique_ptr<Film> film_;
};

}  // namespace flowkin
