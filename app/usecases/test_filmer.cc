#include "app/usecases/test_filmer.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/base/check.h"
#include "core/vision/image_scale.h"

namespace flowkin {
namespace {

/// Frames that stay away so long end a film.
constexpr double kLongestPause_s = 1.0;
/// The test is asked how it stands this often, and not oftener than after a
/// thirtieth of the film more: what it costs grows with the film.
constexpr double kLookEvery_s = 0.4;
constexpr double kLookShare = 1.0 / 30.0;
/// Once it has an answer, more are asked for so soon, which must name the same
/// moment: a stream that has only grown faint looks broken for once, and a drop
/// that falls through the last pictures hides that it broke.
constexpr double kLookAgain_s = 0.2;
constexpr int kSameAnswers = 3;
constexpr double kSameMoment_s = 0.1;

/// What must follow the test's last event before the film is done: a thread
/// that parts may join again. Short, because hands do not keep still for long.
constexpr double kAfterBreak_s = 1.0;
/// In decay times: what the tracker takes for the flat surface.
constexpr double kAfterLaying = 6.5;
constexpr double kAfterPuddle_s = 10.0;

/// Nothing has begun and nothing moves any more.
constexpr double kGiveUp_s = 8.0;
/// A ribbon of thick paint is not seen to fade at once.
constexpr double kGiveUpLevel_s = 30.0;
/// New motion after a rest of this length begins the film anew.
constexpr double kRest_s = 2.5;
constexpr double kRestLevel_s = 6.0;
/// Nothing has begun in all that motion: the film is cut anew.
constexpr double kAimless_s = 20.0;
constexpr double kLongest_s = 180.0;

/// A look for the ruler costs as much as several frames: only between films,
/// in a scene at rest, now and then.
constexpr double kRulerEvery_s = 4.0;
constexpr double kRulerRest_s = 1.0;
/// Of the picture's height: where the puddle will be, which is not searched.
constexpr double kPuddleRadius = 0.2;

/// The event after which a test only needs to be watched for a while.
std::optional<double> LastEvent(const FlowMeasurement& m) {
  switch (m.kind) {
    case TestKind::kStream:
      return m.break_s;
    case TestKind::kLevel:
      return m.laid_s;
    case TestKind::kPuddle:
      return m.start_s;
  }
  FLOWKIN_CHECK(false);
}

double Afterwards_s(const FlowMeasurement& m) {
  switch (m.kind) {
    case TestKind::kStream:
      return kAfterBreak_s;
    case TestKind::kLevel:
      return kAfterLaying * m.proxies.front().value;
    case TestKind::kPuddle:
      return kAfterPuddle_s;
  }
  FLOWKIN_CHECK(false);
}

}  // namespace

struct TestFilmer::Film {
  std::string path;
  std::unique_ptr<FilmRecorder> recorder;
  std::unique_ptr<ClipTest> test;
  std::optional<std::chrono::nanoseconds> first;
  double last_s = 0.0;  ///< of the newest frame, since `first`
  std::int64_t frames = 0;
  double next_look_s = 0.0;
  bool by_hand = false;
  bool begun = false;
  std::optional<double> event_s;  ///< the test's last one, by the last look
  int same_answers = 0;           ///< looks in a row that named it
  bool settled = false;
  double still_before_s = 0.0;
};

TestFilmer::TestFilmer(FilmShelf shelf,
                       std::string stem,
                       const TestFilmerOptions& options)
    : shelf_(std::move(shelf)),
      stem_(std::move(stem)),
      options_(options),
      scene_(options.test.kind == TestKind::kStream) {
  FLOWKIN_CHECK(options_.test.Validate().has_value());
}

TestFilmer::~TestFilmer() = default;

void TestFilmer::Use(const ClipTestOptions& test) {
  FLOWKIN_CHECK(test.Validate().has_value());
  ThrowAway();
  options_.test = test;
  scene_ = SceneWatch(test.kind == TestKind::kStream);
}

void TestFilmer::Arm(bool armed) {
  options_.armed = armed;
  if (!armed) begin_wanted_ = false;
}

void TestFilmer::ThrowAway() {
  begin_wanted_ = false;
  if (!film_) return;
  // The name is used for the next film, or the shelf's list would only grow.
  spare_path_ = film_->path;
  film_.reset();
}

void TestFilmer::Remember(const Frame& frame) {
  before_.push_back(frame);
  before_bytes_ += frame.Bytes();
  while (before_.size() > 1 &&
         (frame.TimeS() - before_.front().TimeS() > options_.pre_roll_s ||
          before_bytes_ > options_.pre_roll_bytes)) {
    before_bytes_ -= before_.front().Bytes();
    before_.pop_front();
  }
}

Result<void> TestFilmer::Begin() {
  auto film = std::make_unique<Film>();
  if (!spare_path_.empty()) {
    film->path = std::exchange(spare_path_, {});
  } else {
    auto path = shelf_.Reserve(stem_, "mp4");
    if (!path) return path.error();
    film->path = *path;
  }
  auto recorder = FilmRecorder::Create(film->path);
  if (!recorder) {
    spare_path_ = film->path;
    return recorder.error();
  }
  film->recorder = std::move(*recorder);
  film->test = MakeClipTest(options_.test);
  film->by_hand = std::exchange(begin_wanted_, false);
  film_ = std::move(film);
  for (const Frame& frame : before_) {
    if (auto written = Write(frame); !written) return written;
  }
  return {};
}

Result<void> TestFilmer::Write(const Frame& frame) {
  Film& film = *film_;
  if (!film.first) film.first = frame.timestamp;
  Frame own = frame;
  own.timestamp -= *film.first;
  own.index = film.frames++;
  film.last_s = own.TimeS();
  if (auto written = film.recorder->Add(own); !written) return written;
  film.test->Add(own);
  return {};
}

void TestFilmer::Look(double t_s) {
  Film& film = *film_;
  film.next_look_s = t_s + std::max(kLookEvery_s, kLookShare * t_s);
  const std::unique_ptr<ClipTest> copy = film.test->Copy();
  const FlowMeasurement so_far = copy->Finish();
  film.begun = copy->Begun();
  film.test->Follow(*copy);
  const std::optional<double> before_s = std::exchange(
      film.event_s,
      so_far.outcome == Outcome::kMeasured ? LastEvent(so_far) : std::nullopt);
  if (!film.event_s) return;
  film.next_look_s = t_s + kLookAgain_s;
  const bool same =
      before_s && std::abs(*film.event_s - *before_s) < kSameMoment_s;
  film.same_answers = same ? film.same_answers + 1 : 1;
  film.settled = film.same_answers >= kSameAnswers &&
                 t_s - *film.event_s >= Afterwards_s(so_far);
}

void TestFilmer::LookForRuler(const Frame& frame, const SceneView& scene) {
  const double now_s = frame.TimeS();
  if (options_.test.kind != TestKind::kPuddle || options_.test.mm_per_px) {
    no_ruler_ = false;
    return;
  }
  if (film_ || scene.still_s < kRulerRest_s || now_s < next_ruler_s_) return;
  next_ruler_s_ = now_s + kRulerEvery_s;
  const PixelCircle puddle{0.5 * frame.luma.cols,
                           0.5 * frame.luma.rows,
                           kPuddleRadius * frame.luma.rows};
  no_ruler_ = !FindRulerScale(frame.luma, puddle).scale.has_value();
}

bool TestFilmer::Pointless(const SceneView& scene, double filming_s) const {
  if (film_->begun || film_->by_hand) return false;
  if (!options_.armed) return true;
  const bool level = options_.test.kind == TestKind::kLevel;
  if (scene.still_s > (level ? kGiveUpLevel_s : kGiveUp_s)) return true;
  if (scene.moving &&
      film_->still_before_s > (level ? kRestLevel_s : kRest_s)) {
    return true;
  }
  return filming_s > kAimless_s && scene.moving;
}

FilmerView TestFilmer::Take(const Frame& frame) {
  FilmerView view;
  const double now_s = frame.TimeS();
  const bool broken_off =
      last_s_ && (now_s - *last_s_ > kLongestPause_s || now_s <= *last_s_ ||
                  frame.luma.size() != size_);
  if (broken_off) {
    view = KeepOrDrop();
    before_.clear();
    before_bytes_ = 0;
    next_ruler_s_ = now_s;
  }
  last_s_ = now_s;
  size_ = frame.luma.size();
  view.scene = scene_.Add(frame);
  view.width_px = size_.width;
  view.height_px = size_.height;
  view.t_s = now_s;
  LookForRuler(frame, view.scene);
  view.no_ruler = no_ruler_;
  Remember(frame);

  if (film_) {
    if (auto written = Write(frame); !written) return Stopped(written.error());
    const double filming_s = film_->last_s;
    if (filming_s >= film_->next_look_s) Look(filming_s);
    if (Pointless(view.scene, filming_s)) {
      ThrowAway();
    } else if (film_->settled) {
      const FilmerView ended = End(true);
      view.taken = ended.taken;
      view.error = ended.error;
    } else if (filming_s > kLongest_s) {
      const FilmerView ended = KeepOrDrop();
      view.taken = ended.taken;
      view.error = ended.error;
    } else {
      film_->still_before_s = view.scene.still_s;
    }
  }
  // What was thrown away for new motion begins again with it.
  if (!film_ && !view.taken && !view.error &&
      (begin_wanted_ || (options_.armed && view.scene.moving))) {
    if (auto begun = Begin(); !begun) return Stopped(begun.error());
  }
  if (film_) {
    view.filming = true;
    view.begun = film_->begun;
    view.filming_s = film_->last_s;
    view.lines = film_->test->LinesNow();
  }
  return view;
}

FilmerView TestFilmer::End(bool settled) {
  FilmerView view;
  const std::unique_ptr<Film> film = std::move(film_);
  if (auto finished = film->recorder->Finish(); !finished) {
    spare_path_ = film->path;
    options_.armed = false;
    view.error = finished.error();
    return view;
  }
  view.taken = FilmTaken{film->path, film->last_s, film->begun, settled};
  // The next film does not begin with the end of this one.
  before_.clear();
  before_bytes_ = 0;
  return view;
}

FilmerView TestFilmer::KeepOrDrop() {
  if (!film_) return {};
  Look(film_->last_s);
  if (film_->begun || film_->by_hand) return End(false);
  ThrowAway();
  return {};
}

FilmerView TestFilmer::EndByHand() {
  if (!film_ || film_->frames < 2) {
    ThrowAway();
    return {};
  }
  Look(film_->last_s);
  return End(false);
}

FilmerView TestFilmer::CameraLost() {
  FilmerView view = KeepOrDrop();
  before_.clear();
  before_bytes_ = 0;
  last_s_.reset();
  return view;
}

FilmerView TestFilmer::Stopped(const Error& error) {
  ThrowAway();
  options_.armed = false;
  FilmerView view;
  view.error = error;
  return view;
}

}  // namespace flowkin
