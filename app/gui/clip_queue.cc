#include "app/gui/clip_queue.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMetaObject>
#include <QSaveFile>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/gui/convert.h"
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

/// 0 stream, 1 level, 2 puddle.
TestKind KindAt(int place) {
  return static_cast<TestKind>(
      std::clamp(place, 0, static_cast<int>(TestKind::kPuddle)));
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
    RecordOpen();
    if (!clips_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
  });
  opened_ = board_->State().session;
  TakeUpOpen();
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
          {kResult, "result"},
          {kOpen, "open"}};
}

QVariant ClipQueue::data(const QModelIndex& index, int role) const {
  if (index.row() < 0 || index.row() >= rowCount()) return {};
  const Clip& clip = clips_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case kFile:
      return QFileInfo(clip.path).fileName();
    case kCupRow: {
      const std::optional<CupId> cup = CupOf(clip);
      if (!cup) return -1;
      for (int row = 0; row < board_->rowCount(); ++row) {
        if (board_->CupAt(row) == cup) return row;
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
          if (clip.recorded) return tr("measured");
          return clip.cup && !CupOf(clip)
                     ? tr("measured – its session is not open")
                     : tr("measured – whose is it?");
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
    case kOpen:
      return Open(clip);
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
  options.test.kind = KindAt(test);
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
  clip.path = path;
  clip.cup = cup;
  clip.session = board_->State().session;
  clip.options = options;
  Enqueue(std::move(clip));
  KeepOpen();
  emit changed();
}

void ClipQueue::Enqueue(Clip clip) {
  clip.id = next_id_++;
  // One decoder thread leaves the other core to the camera and the window.
  clip.options.decoder_threads = 1;
  beginInsertRows({}, rowCount(), rowCount());
  clips_.push_back(clip);
  endInsertRows();
  std::stop_source stop;
  stops_[clip.id] = stop;
  {
    const std::lock_guard lock(mutex_);
    jobs_.push_back({clip.id, clip.path.toStdString(), clip.options, stop});
  }
  wake_.notify_one();
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
    emit recorded(clip->news, CupOf(*clip));
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
  KeepOpen();
  emit changed();
}

void ClipQueue::TryRecord(Clip& clip) {
  const std::optional<CupId> cup = CupOf(clip);
  if (recording_ || clip.recorded || !clip.test || !cup) return;
  recording_ = true;
  clip.recorded = board_->Record(*cup, *clip.test);
  recording_ = false;
  clip.news.refused = clip.recorded ? clip.test->measurement.reason
                                    : board_->trouble().toStdString();
  emit recorded(clip.news, cup);
}

/// Another session may be open now, the one that some clips waited for.
void ClipQueue::RecordOpen() {
  const SessionId session = board_->State().session;
  if (session == opened_) return;
  opened_ = session;
  for (Clip& clip : clips_) TryRecord(clip);
  KeepOpen();
}

std::optional<CupId> ClipQueue::CupOf(const Clip& clip) const {
  const bool here = clip.session == board_->State().session;
  return here ? clip.cup : std::nullopt;
}

bool ClipQueue::Open(const Clip& clip) {
  return !clip.recorded && clip.state != State::kFailed &&
         clip.state != State::kStopped;
}

QString ClipQueue::OpenFile() const {
  const Bench* bench = board_->bench();
  return bench != nullptr ? Text(bench->store_path()) + ".clips" : QString();
}

/// Written at once, or a power cut would lose it.
void ClipQueue::KeepOpen() const {
  const QString path = OpenFile();
  if (path.isEmpty()) return;
  QJsonArray open;
  for (const Clip& clip : clips_) {
    if (!Open(clip)) continue;
    QJsonObject each{{"path", clip.path},
                     {"test", static_cast<int>(clip.options.test.kind)}};
    if (clip.cup) {
      each["session"] = static_cast<qint64>(clip.session);
      each["cup"] = static_cast<qint64>(*clip.cup);
    }
    open << each;
  }
  if (open.isEmpty()) {
    QFile::remove(path);
    return;
  }
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return;
  file.write(QJsonDocument(open).toJson());
  file.commit();
}

void ClipQueue::TakeUpOpen() {
  QFile file(OpenFile());
  if (!file.open(QIODevice::ReadOnly)) return;
  const QJsonArray open = QJsonDocument::fromJson(file.readAll()).array();
  file.close();
  for (const QJsonValue each : open) {
    const QString path = each["path"].toString();
    if (!QFileInfo::exists(path)) continue;
    Clip clip;
    clip.path = path;
    clip.options.test.kind = KindAt(each["test"].toInt());
    if (each["cup"].isDouble()) {
      clip.cup = each["cup"].toInteger();
      clip.session = each["session"].toInteger();
    }
    Enqueue(std::move(clip));
  }
}

int ClipQueue::Pending(CupId cup) const {
  return static_cast<int>(
      std::count_if(clips_.begin(), clips_.end(), [&](const Clip& clip) {
        return CupOf(clip) == cup && (clip.state == State::kWaiting ||
                                      clip.state == State::kMeasuring);
      }));
}

void ClipQueue::assign(int row, int cup_row) {
  if (row < 0 || row >= rowCount()) return;
  Clip& clip = clips_[static_cast<std::size_t>(row)];
  if (clip.recorded) return;
  clip.cup = board_->CupAt(cup_row);
  clip.session = board_->State().session;
  TryRecord(clip);
  Announce(clip.id);
  KeepOpen();
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
  KeepOpen();
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
