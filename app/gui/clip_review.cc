#include "app/gui/clip_review.h"

#include <QBuffer>
#include <QDateTime>
#include <QFileInfo>
#include <QLocale>
#include <QMetaObject>
#include <algorithm>
#include <iterator>
#include <utility>

#include "app/gui/frame_picture.h"
#include "app/usecases/filmed_test.h"
#include "app/usecases/measure_clip.h"
#include "app/usecases/watch_clip.h"

namespace flowkin {
namespace {

constexpr int kShownWidth_px = 960;
/// JPEG quality; keeps ten seconds at 60 frames a second in about 40 MB.
constexpr int kPictureQuality = 80;
/// Reading is told in steps of this share.
constexpr double kReviewStep = 0.01;

}  // namespace

ClipReview::ClipReview(BenchBoard* board, QObject* parent)
    : QObject(parent), board_(board) {
  connect(board_, &BenchBoard::changed, this, [this] {
    if (test_ && Test() == nullptr) Forget();
    emit filmsChanged();
  });
}

ClipReview::~ClipReview() {
  worker_.request_stop();
  if (worker_.joinable()) worker_.join();
}

void ClipReview::Forget() {
  worker_.request_stop();
  ++run_;
  test_.reset();
  strip_.reset();
  frame_ = 0;
  loading_ = false;
  trouble_.clear();
  feed_.Show({});
  emit loadingChanged();
  emit frameChanged();
}

const BenchCup* ClipReview::Cup() const {
  const Bench* bench = board_->bench();
  const std::optional<CupId> chosen = board_->ChosenCup();
  if (bench == nullptr || !bench->HasSession() || !chosen) return nullptr;
  return bench->session().FindCup(*chosen);
}

const BenchTest* ClipReview::Test() const {
  const BenchCup* cup = Cup();
  if (cup == nullptr || !test_) return nullptr;
  for (const BenchTest& test : cup->tests) {
    if (test.id == *test_) return &test;
  }
  return nullptr;
}

QStringList ClipReview::films() const {
  QStringList names;
  const BenchCup* cup = Cup();
  if (cup == nullptr) return names;
  for (const BenchTest& test : cup->tests) {
    const QString when =
        QLocale().toString(QDateTime::fromMSecsSinceEpoch(test.at.ms).time(),
                           QLocale::ShortFormat);
    QString name =
        tr("%1, %2").arg(Wording::Test(test.film.measurement.kind), when);
    if (test.set_aside) {
      name = tr("%1 (set aside)").arg(name);
    } else if (test.film.measurement.outcome == Outcome::kRefused) {
      name = tr("%1 (no answer)").arg(name);
    } else if (!test.corrections.empty()) {
      name = tr("%1 (by hand)").arg(name);
    }
    names << name;
  }
  return names;
}

int ClipReview::film() const {
  const BenchCup* cup = Cup();
  if (cup == nullptr || !test_) return -1;
  for (std::size_t row = 0; row < cup->tests.size(); ++row) {
    if (cup->tests[row].id == *test_) return static_cast<int>(row);
  }
  return -1;
}

bool ClipReview::setAside() const {
  const BenchTest* test = Test();
  return test != nullptr && test->set_aside;
}

QString ClipReview::result() const {
  const BenchTest* test = Test();
  return test != nullptr ? Wording::Summary(test->film.measurement) : QString();
}

int ClipReview::frames() const {
  return strip_ ? static_cast<int>(strip_->pictures.size()) : 0;
}

QString ClipReview::time() const {
  if (!strip_ || strip_->times_s.empty()) return {};
  return Formats::Seconds(strip_->times_s[static_cast<std::size_t>(frame_)]);
}

int ClipReview::FrameAt(double t_s) const {
  const std::vector<double>& times = strip_->times_s;
  const auto after = std::lower_bound(times.begin(), times.end(), t_s);
  if (after == times.begin()) return 0;
  if (after == times.end()) return static_cast<int>(times.size()) - 1;
  const auto before = std::prev(after);
  return static_cast<int>((t_s - *before < *after - t_s ? before : after) -
                          times.begin());
}

QVariantList ClipReview::events() const {
  QVariantList list;
  const BenchTest* test = Test();
  if (test == nullptr || !strip_ || strip_->times_s.size() < 2) return list;
  const FlowMeasurement& measured = test->film.measurement;
  const double last_s = strip_->times_s.back();
  const auto add = [&](TestEvent event, const std::optional<double>& at_s) {
    if (!HasEvent(measured.kind, event)) return;
    const bool by_hand = std::any_of(
        test->corrections.begin(),
        test->corrections.end(),
        [&](const EventCorrected& done) { return done.event == event; });
    list << QVariantMap{
        {"key", static_cast<int>(event)},
        {"word", Wording::Event(event)},
        {"found", at_s.has_value()},
        {"frame", at_s ? FrameAt(*at_s) : -1},
        {"at", at_s ? std::clamp(*at_s / last_s, 0.0, 1.0) : 0.0},
        {"time", at_s ? Formats::Seconds(*at_s) : tr("not found")},
        {"byHand", by_hand}};
  };
  add(TestEvent::kLift, measured.lift_s);
  add(TestEvent::kBreak, measured.break_s);
  add(TestEvent::kLaid, measured.laid_s);
  add(TestEvent::kStart, measured.start_s);
  return list;
}

void ClipReview::setFrame(int frame) {
  const int last = frames() - 1;
  const int wanted = std::clamp(frame, 0, std::max(0, last));
  if (wanted == frame_) return;
  frame_ = wanted;
  ShowFrame();
  emit frameChanged();
}

void ClipReview::ShowFrame() {
  if (!strip_ || strip_->pictures.empty()) {
    feed_.Show({});
    return;
  }
  const auto at = static_cast<std::size_t>(frame_);
  const QImage picture = QImage::fromData(strip_->pictures[at], "JPEG");
  feed_.Show(WithFound(picture,
                       strip_->width_px,
                       strip_->height_px,
                       *strip_->test,
                       strip_->times_s[at]));
}

void ClipReview::open(int row) {
  const BenchCup* cup = Cup();
  if (cup == nullptr || row < 0 || row >= static_cast<int>(cup->tests.size())) {
    Forget();
    emit filmsChanged();
    return;
  }
  const TestId id = cup->tests[static_cast<std::size_t>(row)].id;
  if (test_ != id) frame_ = 0;
  test_ = id;
  Load();
}

void ClipReview::Load() {
  const BenchTest* test = Test();
  if (test == nullptr) return;
  worker_.request_stop();
  ++run_;
  loading_ = true;
  progress_ = 0.0;
  trouble_.clear();
  emit loadingChanged();
  emit filmsChanged();
  const MeasureClipOptions options = OptionsOf(*test);
  const std::string path = test->film.film;
  worker_ = std::jthread(
      [this, options, path, run = run_](const std::stop_token& stop) {
        const auto strip = std::make_shared<Strip>();
        QString trouble;
        MeasureClipOptions watched = options;
        watched.decoder_threads = 1;
        strip->test = MakeClipTest(options.test);
        const auto see = [&](const Frame& frame) {
          strip->width_px = frame.luma.cols;
          strip->height_px = frame.luma.rows;
          QByteArray bytes;
          QBuffer buffer(&bytes);
          buffer.open(QIODevice::WriteOnly);
          ToPicture(frame, kShownWidth_px)
              .convertToFormat(QImage::Format_RGB32)
              .save(&buffer, "JPEG", kPictureQuality);
          strip->pictures.push_back(bytes);
          strip->times_s.push_back(frame.TimeS());
        };
        double told = 0.0;
        const auto tell = [&](double share) {
          if (share - told < kReviewStep) return;
          told = share;
          QMetaObject::invokeMethod(this, [this, run, share] {
            if (run != run_) return;
            progress_ = share;
            emit loadingChanged();
          });
        };
        const auto measured =
            WatchClip(path, watched, *strip->test, see, tell, stop);
        if (!measured) trouble = Wording::Engine(measured.error().message);
        QMetaObject::invokeMethod(
            this, [this, run, strip, trouble] { Loaded(run, strip, trouble); });
      });
}

void ClipReview::Loaded(int run,
                        std::shared_ptr<Strip> strip,
                        const QString& trouble) {
  if (run != run_) return;
  loading_ = false;
  trouble_ = trouble;
  strip_ = trouble.isEmpty() ? std::move(strip) : nullptr;
  frame_ = std::clamp(frame_, 0, std::max(0, frames() - 1));
  if (keep_frame_) {
    frame_ = std::clamp(*keep_frame_, 0, std::max(0, frames() - 1));
  }
  keep_frame_.reset();
  ShowFrame();
  emit loadingChanged();
  emit frameChanged();
  emit filmsChanged();
}

void ClipReview::correct(int key, int frame) {
  const BenchTest* test = Test();
  if (test == nullptr || !strip_ || loading_ || frame < 0 ||
      frame >= frames()) {
    return;
  }
  const auto event = static_cast<TestEvent>(key);
  const double at_s = strip_->times_s[static_cast<std::size_t>(frame)];
  const MeasureClipOptions options = CorrectionOptions(*test, event, at_s);
  const TestId id = test->id;
  const std::string path = test->film.film;
  worker_.request_stop();
  ++run_;
  loading_ = true;
  progress_ = 0.0;
  keep_frame_ = frame;
  emit loadingChanged();
  worker_ = std::jthread([this, options, path, id, event, at_s, run = run_](
                             const std::stop_token& stop) {
    auto measured = std::make_shared<Result<MeasuredClip>>(
        MeasureClip(options).Run(path, {}, stop));
    QMetaObject::invokeMethod(this, [this, measured, id, event, at_s, run] {
      if (run != run_) return;
      loading_ = false;
      if (!*measured) {
        trouble_ = Wording::Engine(measured->error().message);
      } else if (!board_->Correct(id, event, at_s, (*measured)->measurement)) {
        trouble_ = board_->trouble();
      } else {
        Load();
        return;
      }
      emit loadingChanged();
    });
  });
}

void ClipReview::toggleAside() {
  const BenchTest* test = Test();
  if (test == nullptr) return;
  board_->SetAside(test->id, !test->set_aside);
}

}  // namespace flowkin
