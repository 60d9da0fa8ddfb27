#pragma once

#include <QAbstractListModel>
#include <QFileSystemWatcher>
#include <QList>
#include <QMap>
#include <QTimer>
#include <QUrl>
#include <QtQmlIntegration>
#include <condition_variable>
#include <deque>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "app/gui/bench_board.h"
#include "app/usecases/measure_clip.h"

namespace flowkin {

/// What became of a film. Kept as data: the window may change its language.
struct FilmNews {
  std::string refused;  ///< as the engine says it; empty where it was measured
  std::optional<FlowMeasurement> measured;

  QString Sentence() const;
};

/// Clips on their way onto the bench: dropped, chosen or come in from a watched
/// folder, measured one after the other in a thread of its own, and recorded
/// with the cup they belong to. What is not on the bench yet is kept in a file
/// beside the store and taken up again when the window is opened again.
class ClipQueue : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(int count READ count NOTIFY changed)
  Q_PROPERTY(QString summary READ summary NOTIFY changed)

 public:
  enum Role {
    kFile = Qt::UserRole + 1,
    kCupRow,  ///< of the board, -1 for none yet
    kState,   ///< waiting, measuring, measured, refused, failed, stopped
    kStateWord,
    kProgress,  ///< 0 to 1
    kResult,
    kOpen,  ///< it can still be given to a cup
  };

  explicit ClipQueue(BenchBoard* board,
                     Preferences* preferences,
                     QObject* parent = nullptr);
  ~ClipQueue() override;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  bool busy() const;
  int count() const { return rowCount(); }
  QString summary() const;

  /// Clips for the cup in `cup_row` of the board (-1: to be said later), filmed
  /// as `test` (0 stream, 1 level, 2 puddle).
  Q_INVOKABLE void add(const QList<QUrl>& files, int cup_row, int test);
  /// The same with what is known of a puddle: volume in mL.
  void Add(const QString& path,
           std::optional<CupId> cup,
           const MeasureClipOptions& options);
  /// Films of a cup that wait to be measured or are.
  int Pending(CupId cup) const;
  Q_INVOKABLE void assign(int row, int cup_row);
  Q_INVOKABLE void cancel(int row);
  Q_INVOKABLE void cancelAll();
  /// Takes out what is done.
  Q_INVOKABLE void tidy();

 signals:
  void changed();
  /// A film was recorded, or could not be.
  void recorded(const flowkin::FilmNews& news, std::optional<CupId> cup);

 private:
  enum class State {
    kWaiting,
    kMeasuring,
    kMeasured,
    kRefused,
    kFailed,
    kStopped,
  };
  struct Clip {
    int id = 0;
    QString path;
    std::optional<CupId> cup;
    SessionId session = 0;  ///< that of `cup`
    MeasureClipOptions options;
    State state = State::kWaiting;
    double progress = 0.0;
    FilmNews news;
    std::optional<FilmedTest> test;
    bool recorded = false;
  };
  struct Job {
    int id;
    std::string path;
    MeasureClipOptions options;
    std::stop_source stop;
  };

  void Work(std::stop_token stop);
  void Progress(int id, double share);
  void Finished(int id, Result<MeasuredClip> measured);
  void TryRecord(Clip& clip);
  void RecordOpen();
  /// Its cup, where it stands on the open bench.
  std::optional<CupId> CupOf(const Clip& clip) const;
  Clip* Find(int id);
  void Enqueue(Clip clip);
  static bool Open(const Clip& clip);
  QString OpenFile() const;
  void KeepOpen() const;
  void TakeUpOpen();
  void Announce(int id);
  void LookIntoFolder();

  BenchBoard* board_;
  Preferences* preferences_;
  std::vector<Clip> clips_;
  int next_id_ = 1;
  bool recording_ = false;
  SessionId opened_ = 0;
  QMap<int, std::stop_source> stops_;

  QFileSystemWatcher folder_;
  QTimer settle_;
  QMap<QString, qint64> arriving_;  ///< size when last seen
  QStringList seen_;

  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::deque<Job> jobs_;
  std::jthread worker_;
};

}  // namespace flowkin
