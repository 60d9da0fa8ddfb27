#include "app/gui/film_stand.h"

#include <QDateTime>
#include <QMetaObject>
#include <algorithm>
#include <utility>

#include "app/usecases/film_shelf.h"

namespace flowkin {
namespace {

/// A fault of the scene is told once it has lasted.
constexpr int kFaultLasts_ms = 700;
/// A foot that is still on the pedal does not do the next thing as well.
constexpr int kPressRests_ms = 700;

}  // namespace

std::vector<PictureMark> MarksOf(const FilmerView& view) {
  std::vector<PictureMark> marks;
  if (!view.filming || view.width_px <= 0) return marks;
  for (const FoundLine& line : view.lines) {
    PictureMark mark;
    mark.closed = line.closed;
    mark.strong = true;
    for (const cv::Point2d& point : line.points) {
      mark.points.emplace_back(point.x / view.width_px,
                               point.y / view.height_px);
    }
    marks.push_back(std::move(mark));
  }
  return marks;
}

FilmStand::FilmStand(const QString& films,
                     BenchBoard* board,
                     ClipQueue* clips,
                     Camera* camera,
                     QObject* parent)
    : QObject(parent),
      films_(films),
      board_(board),
      clips_(clips),
      camera_(camera) {
  press_since_.start();
  fault_since_.start();
  connect(board_, &BenchBoard::changed, this, &FilmStand::FollowBoard);
  connect(clips_, &ClipQueue::changed, this, &FilmStand::FollowBoard);
  connect(clips_,
          &ClipQueue::recorded,
          this,
          [this](const FilmNews& news, std::optional<CupId> cup) {
            heard_ = news;
            heard_of_ = cup;
            shelf_full_ = false;
            FollowBoard();
            const QString more = count();
            if (entered_) {
              emit told(more.isEmpty() ? result() : result() + ". " + more);
            }
            if (!clips_->busy()) Tidy();
          });
  connect(camera_, &Camera::stateChanged, this, [this] {
    if (was_live_ && !camera_->live() && live_) live_->CameraLost();
    was_live_ = camera_->live();
    if (!was_live_) status_.view.filming = false;
    Tell();
  });
}

FilmStand::~FilmStand() = default;

const BoardCup* FilmStand::Cup() const {
  const std::optional<CupId> cup = board_->ChosenCup();
  return cup ? board_->FindCup(*cup) : nullptr;
}

TestKind FilmStand::Kind() const {
  const BoardCup* cup = Cup();
  const bool said =
      cup != nullptr && (cup->step.kind == StepKind::kFilm ||
                         cup->step.kind == StepKind::kStirAndFilm);
  return said ? cup->step.test : board_->State().settings.test;
}

int FilmStand::More() const {
  const BoardCup* cup = Cup();
  if (cup == nullptr || (cup->step.kind != StepKind::kFilm &&
                         cup->step.kind != StepKind::kStirAndFilm)) {
    return 0;
  }
  return std::max(0, cup->step.films - clips_->Pending(cup->id));
}

void FilmStand::enter() {
  entered_ = true;
  trouble_.clear();
  if (!live_) {
    FilmShelfOptions options;
    options.folder = films_.toStdString();
    auto shelf = FilmShelf::Open(options);
    if (!shelf) {
      trouble_ = Wording::Engine(shelf.error().message);
    } else {
      TestFilmerOptions filming;
      used_.kind = Kind();
      filming.test = used_;
      filming.armed = false;
      // Films lie in one folder for years.
      const QString stem =
          QDateTime::currentDateTime().toString("yyyy-MM-dd-HHmm");
      live_ = std::make_unique<LiveTest>(
          *std::move(shelf),
          stem.toStdString(),
          filming,
          [this](const LiveStatus& status) {
            bool announce = false;
            {
              const std::lock_guard lock(mutex_);
              const bool kept = !news_.empty() && (news_.back().view.taken ||
                                                   news_.back().view.error);
              if (news_.empty() || kept) {
                news_.push_back(status);
              } else {
                news_.back() = status;
              }
              announce = !std::exchange(announced_, true);
            }
            if (!announce) return;
            QMetaObject::invokeMethod(
                this,
                [this] {
                  std::vector<LiveStatus> news;
                  {
                    const std::lock_guard lock(mutex_);
                    news.swap(news_);
                    announced_ = false;
                  }
                  for (const LiveStatus& each : news) Heed(each);
                },
                Qt::QueuedConnection);
          });
    }
  }
  camera_->start();
  FollowBoard();
}

void FilmStand::leave() {
  entered_ = false;
  camera_->stop();
  if (live_) {
    live_->Arm(false);
    live_->CameraLost();
  }
  status_ = {};
  emit changed();
}

void FilmStand::Take(const Frame& frame) {
  if (live_) live_->Add(frame);
}

void FilmStand::Heed(const LiveStatus& status) {
  const bool began = status.view.filming && !status_.view.filming;
  if (began) filmed_cup_ = board_->ChosenCup();
  status_ = entered_ ? status : LiveStatus{};
  const SceneFault fault = status.view.scene.fault;
  if (fault != fault_seen_) {
    fault_seen_ = fault;
    fault_since_.restart();
  } else if (fault_since_.elapsed() > kFaultLasts_ms) {
    fault_ = fault;
  }
  if (status.view.error) {
    trouble_ = Wording::Engine(status.view.error->message);
    emit told(trouble_);
  }
  if (status.view.taken) {
    MeasureClipOptions options;
    options.test = used_;
    clips_->Add(
        QString::fromStdString(status.view.taken->path), filmed_cup_, options);
  }
  camera_->feed()->ShowMarks(MarksOf(status.view));
  Tell();
}

void FilmStand::FollowBoard() {
  if (live_ && entered_) {
    if (used_.kind != Kind() && !status_.view.begun) {
      used_ = {};
      used_.kind = Kind();
      live_->Use(used_);
    }
    live_->Arm(trouble_.isEmpty() && More() > 0);
  }
  Tell();
}

void FilmStand::Tell() {
  const Press press = Next();
  if (press != press_) {
    press_ = press;
    press_since_.restart();
  }
  emit changed();
}

void FilmStand::Tidy() {
  const Bench* bench = board_->bench();
  if (!live_ || bench == nullptr) return;
  const auto needed = bench->NeededFilms();
  FilmShelfOptions options;
  options.folder = films_.toStdString();
  auto shelf = FilmShelf::Open(options);
  if (!needed || !shelf) return;
  const auto report = shelf->Tidy(*needed);
  if (report && report->over_full) shelf_full_ = true;
}

FilmStand::Press FilmStand::Next() const {
  if (!trouble_.isEmpty()) return Press::kGoOn;
  if (status_.view.filming) return Press::kEnd;
  const BoardCup* cup = Cup();
  if (cup == nullptr) return Press::kBench;
  if (More() > 0) return camera_->live() ? Press::kBegin : Press::kNone;
  if (clips_->Pending(cup->id) > 0) return Press::kNone;
  const QString action = board_->action();
  if (action == "add" || action == "putBack") return Press::kAct;
  const int next = board_->next();
  if (next >= 0 && next != board_->chosen()) return Press::kNextCup;
  return Press::kBench;
}

void FilmStand::press() {
  const Press press = Next();
  if (press == press_ && press_since_.elapsed() < kPressRests_ms) return;
  switch (press) {
    case Press::kNone:
      break;
    case Press::kGoOn:
      trouble_.clear();
      FollowBoard();
      break;
    case Press::kEnd:
      live_->EndByHand();
      break;
    case Press::kBegin:
      live_->BeginByHand();
      break;
    case Press::kAct:
      if (board_->action() == "add") {
        board_->addedAsSaid();
      } else {
        board_->putBackAsSaid();
      }
      break;
    case Press::kNextCup:
      board_->chooseNext();
      break;
    case Press::kBench:
      emit benchAsked();
      break;
  }
}

void FilmStand::throwAway() {
  if (live_) live_->ThrowAway();
}

QString FilmStand::word() const {
  if (!trouble_.isEmpty()) return tr("Stopped");
  if (!camera_->live()) return tr("No picture");
  if (status_.view.filming) {
    return status_.view.begun ? tr("Test runs") : tr("Filming");
  }
  const BoardCup* cup = Cup();
  if (cup == nullptr) return tr("No cup yet");
  if (More() > 0) return tr("Ready");
  if (clips_->Pending(cup->id) > 0) return tr("Measuring");
  return tr("Enough films");
}

bool FilmStand::warns() const {
  return !trouble_.isEmpty() || (camera_->live() && !status_.view.begun &&
                                 fault_ != SceneFault::kNone);
}

QString FilmStand::advice() const {
  if (!trouble_.isEmpty()) return trouble_;
  if (!camera_->live()) return {};
  const BoardCup* cup = Cup();
  if (cup == nullptr) return tr("Name the base coat on the bench first.");
  const TestKind kind = Kind();
  if (status_.view.filming && status_.view.begun) {
    switch (kind) {
      case TestKind::kStream:
        return tr("Hold the stick still until it only drips.");
      case TestKind::kLevel:
        return tr("Leave it alone until the paint is smooth.");
      case TestKind::kPuddle:
        return tr("Leave it alone for ten seconds.");
    }
  }
  if (warns()) return FaultText(fault_);
  if (More() == 0 && !status_.view.filming) {
    return clips_->Pending(cup->id) > 0 ? QString() : board_->step();
  }
  switch (kind) {
    case TestKind::kStream:
      return tr("Stand the stick in the paint, lift it straight up, hold it.");
    case TestKind::kLevel:
      // Without a highlight the relief hardly shows; whether there is one can
      // be told only once the ribbon lies.
      return tr(
          "See that a lamp is mirrored in the paint. Lay one ribbon on it "
          "and take the stick away.");
    case TestKind::kPuddle: {
      const QString how =
          tr("Put the paint down in one go, as much every time, and take the "
             "hand away.");
      return status_.view.no_ruler
                 ? how + " " +
                       tr("No ruler is made out: lay one with millimetres "
                          "beside it, or leave the camera where it is for "
                          "every cup.")
                 : how;
    }
  }
  return {};
}

QString FilmStand::result() const {
  if (shelf_full_) {
    return tr("The folder of films is full; close old sessions.");
  }
  const BoardCup* cup = heard_of_ ? board_->FindCup(*heard_of_) : nullptr;
  QString sentence = heard_.Sentence();
  if (sentence.isEmpty() || cup == nullptr) return sentence;
  const QString name = QString::fromStdString(cup->details.label);
  const QString ratio = heard_.measured && !cup->before_addition
                            ? Wording::Ratio(*cup)
                            : QString();
  return ratio.isEmpty()
             ? tr("%1: %2").arg(name, sentence)
             : tr("%1: %2, %3").arg(name, Wording::Verdict(*cup), ratio);
}

QString FilmStand::FaultText(SceneFault fault) {
  switch (fault) {
    case SceneFault::kNone:
      return {};
    case SceneFault::kFrozen:
      return tr("The picture stands still; look after the camera.");
    case SceneFault::kDark:
      return tr("More light.");
    case SceneFault::kGlare:
      return tr("Too bright: turn the lamp away.");
    case SceneFault::kSlow:
      return tr("The camera is slow; more light makes it faster.");
    case SceneFault::kShaking:
      return tr("Hold still: the whole picture moves.");
    case SceneFault::kBlurred:
      return tr("Not sharp: focus on the test.");
    case SceneFault::kNoStick:
      return tr("The stick is not in view.");
  }
  return {};
}

QString FilmStand::count() const {
  const BoardCup* cup = Cup();
  if (cup == nullptr) return {};
  const QString name = QString::fromStdString(cup->details.label);
  const int more = More();
  if (more > 0) return tr("%1: %n more", nullptr, more).arg(name);
  return tr("%1: no more").arg(name);
}

QString FilmStand::buttonText() const {
  switch (Next()) {
    case Press::kNone:
      return tr("Wait");
    case Press::kGoOn:
      return tr("Go on");
    case Press::kEnd:
      return tr("End this film");
    case Press::kBegin:
      return tr("Film now");
    case Press::kAct:
      return board_->actionText();
    case Press::kNextCup:
      return tr("Next cup");
    case Press::kBench:
      return tr("To the bench");
  }
  return {};
}

}  // namespace flowkin
