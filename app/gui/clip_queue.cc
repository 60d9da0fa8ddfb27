#include "app/gui/clip_queue.h"

#include <QDir>
#include <QFileInfo>
#include <QMetaObject>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/usecases/filmed_test.h"

namespace flowkin {
namespace {

/// A file that is still being copied grows; it is taken once it has not for
/// this long.
constexpr int kSettle_ms = 1500;
/// Progress is told in steps of this share.
constexpr double kProgressStep = 0.01;

QStringList VideoPatterns() {
  return {"*.mp4", "*.mov", "*.m4v", "*.mkv", "*.avi", "*.webm", "*.3gp"};
}

}  // namespace

QString FilmNews::Sentence() const {
  if (!refused.empty()) return Wording::Engine(refused);
  return measured ? Wording::Summary(*measured) : QString();
}

ClipQueue::ClipQueue(BenchBoard* board,
                     Preferences* preferences,
                     QObject* parent)
    : QAbstractListModel(parent),
      board_(board),
      preferences_(preferences),
      worker_([this](std::stop_token stop) { Work(std::move(stop)); }) {
  const auto watch = [this] {
    if (!folder_.directories().isEmpty()) {
      folder_.removePaths(folder_.directories());
    }
    seen_.clear();
    arriving_.clear();
    const QString path = preferences_->watchedFolder();
    if (path.isEmpty() || !QFileInfo(path).isDir()) return;
    folder_.addPath(path);
    // What lay there before belongs to another day.
    seen_ = QDir(path).entryList(VideoPatterns(), QDir::Files);
  };
  watch();
  connect(preferences_,
          &Preferences::changed,
          this,
          [this, watch, path = preferences_->watchedFolder()]() mutable {
            if (path == preferences_->watchedFolder()) return;
            path = preferences_->watchedFolder();
            watch();
          });
  settle_.setInterval(kSettle_ms);
  connect(&settle_, &QTimer::timeout, this, &ClipQueue::LookIntoFolder);
  connect(&folder_, &QFileSystemWatcher::directoryChanged, this, [this] {
    LookIntoFolder();
    settle_.start();
  });
  connect(board_, &BenchBoard::changed, this, [this] {
    if (!clips_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
  });
}

ClipQueue::~ClipQueue() {
  for (std::stop_source& stop : stops_) stop.request_stop();
  worker_.request_stop();
  wake_.notify_all();
}

void ClipQueue::LookIntoFolder() {
  const QDir dir(preferences_->watchedFolder());
  for (const QFileInfo& file :
       dir.entryInfoList(VideoPatterns(), QDir::Files, QDir::Time)) {
    const QString name = file.fileName();
    if (seen_.contains(name)) continue;
    const auto known = arriving_.constFind(name);
    if (known != arriving_.constEnd() && *known == file.size() &&
        file.size() > 0) {
      seen_ << name;
      arriving_.remove(name);
      MeasureClipOptions options;
      options.test.kind = board_->State().settings.test;
      Add(file.absoluteFilePath(), std::nullopt, options);
    } else {
      arriving_[name] = file.size();
    }
  }
  if (arriving_.isEmpty()) settle_.stop();
}

int ClipQueue::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(clips_.size());
}

QHash<int, QByteArray> ClipQueue::roleNames() const {
  return {{kFile, "file"},
          {kCupRow, "cupRow"},
          {kState, "clipState"},
          {kStateWord, "stateWord"},
          {kProgress, "progress"},
          {kResult, "result"}};
}

QVariant ClipQueue::data(const QModelIndex& index, int role) const {
  if (index.row() < 0 || index.row() >= rowCount()) return {};
  const Clip& clip = clips_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case kFile:
      return QFileInfo(clip.path).fileName();
    case kCupRow: {
      if (!clip.cup) return -1;
      for (int row = 0; row < board_->rowCount(); ++row) {
        if (board_->CupAt(row) == clip.cup) return row;
      }
      return -1;
    }
    case kState:
      switch (clip.state) {
        case State::kWaiting:
          return "waiting";
        case State::kMeasuring:
          return "measuring";
        case State::kMeasured:
          return "measured";
        case State::kRefused:
          return "refused";
        case State::kFailed:
          return "failed";
        case State::kStopped:
          return "stopped";
      }
      return {};
    case kStateWord:
      switch (clip.state) {
        case State::kWaiting:
          return tr("waiting");
        case State::kMeasuring:
          return tr("measuring");
        case State::kMeasured:
          return clip.recorded ? tr("measured") : tr("measured – whose is it?");
        case State::kRefused:
          return tr("no answer");
        case State::kFailed:
          return tr("cannot be read");
        case State::kStopped:
          return tr("stopped");
      }
      return {};
    case kProgress:
      return clip.progress;
    case kResult:
      return clip.news.Sentence();
    default:
      return {};
  }
}

bool ClipQueue::busy() const {
  return std::any_of(clips_.begin(), clips_.end(), [](const Clip& clip) {
    return clip.state == State::kWaiting || clip.state == State::kMeasuring;
  });
}

QString ClipQueue::summary() const {
  const auto left =
      std::count_if(clips_.begin(), clips_.end(), [](const Clip& clip) {
        return clip.state == State::kWaiting || clip.state == State::kMeasuring;
      });
  return left == 0 ? QString()
                   : tr("measuring, %n clip(s) to go",
                        nullptr,
                        static_cast<int>(left));
}

void ClipQueue::add(const QList<QUrl>& files, int cup_row, int test) {
  MeasureClipOptions options;
  options.test.kind = static_cast<TestKind>(
      std::clamp(test, 0, static_cast<int>(TestKind::kPuddle)));
  for (const QUrl& url : files) {
    const QString path = url.isLocalFile() ? url.toLocalFile() : url.toString();
    if (QFileInfo(path).isDir()) {
      const QDir dir(path);
      for (const QString& name :
           dir.entryList(VideoPatterns(), QDir::Files, QDir::Name)) {
        Add(dir.filePath(name), board_->CupAt(cup_row), options);
      }
    } else {
      Add(path, board_->CupAt(cup_row), options);
    }
  }
}

void ClipQueue::Add(const QString& path,
                    std::optional<CupId> cup,
                    const MeasureClipOptions& options) {
  Clip clip;
  clip.id = next_id_++;
  clip.path = path;
  clip.cup = cup;
  clip.options = options;
  // One decoder thread leaves the other core to the camera and the window.
  clip.options.decoder_threads = 1;
  beginInsertRows({}, rowCount(), rowCount());
  clips_.push_back(clip);
  endInsertRows();
  std::stop_source stop;
  stops_[clip.id] = stop;
  {
    const std::lock_guard lock(mutex_);
    jobs_.push_back({clip.id, path.toStdString(), clip.options, stop});
  }
  wake_.notify_one();
  emit changed();
}

void ClipQueue::Work(std::stop_token stop) {
  while (true) {
    std::optional<Job> job;
    {
      std::unique_lock lock(mutex_);
      if (!wake_.wait(lock, stop, [this] { return !jobs_.empty(); })) return;
      job = std::move(jobs_.front());
      jobs_.pop_front();
    }
    const int id = job->id;
    if (job->stop.stop_requested()) continue;
    double told = -1.0;
    Result<MeasuredClip> measured =
        MeasureClip(job->options)
            .Run(
                job->path,
                [this, id, &told](double share) {
                  if (share - told < kProgressStep && share < 1.0) return;
                  told = share;
                  QMetaObject::invokeMethod(
                      this, [this, id, share] { Progress(id, share); });
                },
                job->stop.get_token());
    auto shared = std::make_shared<Result<MeasuredClip>>(std::move(measured));
    QMetaObject::invokeMethod(
        this, [this, id, shared] { Finished(id, std::move(*shared)); });
  }
}

ClipQueue::Clip* ClipQueue::Find(int id) {
  for (Clip& clip : clips_) {
    if (clip.id == id) return &clip;
  }
  return nullptr;
}

void ClipQueue::Announce(int id) {
  for (int row = 0; row < rowCount(); ++row) {
    if (clips_[static_cast<std::size_t>(row)].id == id) {
      emit dataChanged(index(row), index(row));
    }
  }
}

void ClipQueue::Progress(int id, double share) {
  Clip* clip = Find(id);
  if (clip == nullptr || clip->state == State::kStopped) return;
  const bool begins = clip->state == State::kWaiting;
  clip->state = State::kMeasuring;
  clip->progress = share;
  Announce(id);
  if (begins) emit changed();
}

void ClipQueue::Finished(int id, Result<MeasuredClip> measured) {
  stops_.remove(id);
  Clip* clip = Find(id);
  if (clip == nullptr || clip->state == State::kStopped) return;
  clip->progress = 1.0;
  if (!measured) {
    clip->state = State::kFailed;
    clip->news.refused = measured.error().message;
    emit recorded(clip->news, CupName(*clip));
  } else {
    const FlowMeasurement& test = measured->measurement;
    clip->test = ToFilmedTest(*measured, clip->options);
    if (test.outcome == Outcome::kRefused) {
      clip->state = State::kRefused;
      clip->news.refused = test.reason;
    } else {
      clip->state = State::kMeasured;
      clip->news.measured = test;
    }
    TryRecord(*clip);
  }
  Announce(id);
  emit changed();
}

void ClipQueue::TryRecord(Clip& clip) {
  if (clip.recorded || !clip.test || !clip.cup) return;
  clip.recorded = board_->Record(*clip.cup, *clip.test);
  clip.news.refused = clip.recorded ? clip.test->measurement.reason
                                    : board_->trouble().toStdString();
  emit recorded(clip.news, CupName(clip));
}

QString ClipQueue::CupName(const Clip& clip) const {
  const BoardCup* cup = clip.cup ? board_->FindCup(*clip.cup) : nullptr;
  return cup != nullptr ? QString::fromStdString(cup->details.label)
                        : QString();
}

int ClipQueue::Pending(CupId cup) const {
  return static_cast<int>(
      std::count_if(clips_.begin(), clips_.end(), [&](const Clip& clip) {
        return clip.cup == cup && (clip.state == State::kWaiting ||
                                   clip.state == State::kMeasuring);
      }));
}

void ClipQueue::assign(int row, int cup_row) {
  if (row < 0 || row >= rowCount()) return;
  Clip& clip = clips_[static_cast<std::size_t>(row)];
  if (clip.recorded) return;
  clip.cup = board_->CupAt(cup_row);
  TryRecord(clip);
  Announce(clip.id);
  emit changed();
}

void ClipQueue::cancel(int row) {
  if (row < 0 || row >= rowCount()) return;
  Clip& clip = clips_[static_cast<std::size_t>(row)];
  if (clip.state != State::kWaiting && clip.state != State::kMeasuring) return;
  clip.state = State::kStopped;
  if (stops_.contains(clip.id)) stops_[clip.id].request_stop();
  stops_.remove(clip.id);
  Announce(clip.id);
  emit changed();
}

void ClipQueue::cancelAll() {
  for (int row = 0; row < rowCount(); ++row) cancel(row);
}

void ClipQueue::tidy() {
  beginResetModel();
  std::erase_if(clips_, [](const Clip& clip) {
    const bool open = clip.state == State::kWaiting ||
                      clip.state == State::kMeasuring ||
                      (clip.state == State::kMeasured && !clip.recorded);
    return !open;
  });
  endResetModel();
  emit changed();
}

}  // namespace flowkin
