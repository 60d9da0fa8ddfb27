#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QtQmlIntegration>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

#include "app/gui/bench_board.h"
#include "app/gui/camera.h"
#include "app/gui/clip_queue.h"
#include "app/usecases/live_test.h"

namespace flowkin {

/// The running test's lines for the picture; none while no film runs.
std::vector<PictureMark> MarksOf(const FilmerView& view);

/// Filming at the bench: tests begin and end by themselves, each becomes a film
/// on the shelf and is measured like a clip that was dropped in, while the next
/// one may already run. One button, or any key, does whatever is next.
class FilmStand : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// The state in one word or two, for reading from two metres.
  Q_PROPERTY(QString word READ word NOTIFY changed)
  /// One short sentence: what is wrong with the scene, or what to do.
  Q_PROPERTY(QString advice READ advice NOTIFY changed)
  /// The advice is about something that spoils the test.
  Q_PROPERTY(bool warns READ warns NOTIFY changed)
  /// "Basalt: 2 more".
  Q_PROPERTY(QString count READ count NOTIFY changed)
  /// How its cup stands by the last film, or what that showed.
  Q_PROPERTY(QString result READ result NOTIFY changed)
  Q_PROPERTY(QString buttonText READ buttonText NOTIFY changed)
  Q_PROPERTY(bool filming READ filming NOTIFY changed)
  /// 0 stream, 1 level, 2 puddle: what is filmed now.
  Q_PROPERTY(int test READ test NOTIFY changed)

 public:
  /// `films`: folder of the films.
  FilmStand(const QString& films,
            BenchBoard* board,
            ClipQueue* clips,
            Camera* camera,
            QObject* parent = nullptr);
  ~FilmStand() override;

  QString word() const;
  QString advice() const;
  bool warns() const;
  QString count() const;
  QString result() const;
  QString buttonText() const;
  bool filming() const { return status_.view.filming; }
  int test() const { return static_cast<int>(Kind()); }

  /// The screen is shown: the camera runs and films begin by themselves.
  Q_INVOKABLE void enter();
  Q_INVOKABLE void leave();
  /// The button, the pedal, any key.
  Q_INVOKABLE void press();
  /// The film that runs is not kept.
  Q_INVOKABLE void throwAway();

  /// The camera's thread.
  void Take(const Frame& frame);

 signals:
  void changed();
  /// One sentence worth saying aloud.
  void told(const QString& sentence);
  /// What is next is done on the bench.
  void benchAsked();

 private:
  /// What a press does.
  enum class Press {
    kNone,
    kGoOn,   ///< after a trouble
    kEnd,    ///< the film that runs
    kBegin,  ///< a film by hand
    kAct,    ///< what the bench says: added, put back
    kNextCup,
    kBench,
  };

  const BoardCup* Cup() const;
  TestKind Kind() const;
  /// Films the chosen cup still needs, without those on their way.
  int More() const;
  Press Next() const;
  void Heed(const LiveStatus& status);
  void FollowBoard();
  void Tell();
  void Tidy();
  static QString FaultText(SceneFault fault);

  QString films_;
  BenchBoard* board_;
  ClipQueue* clips_;
  Camera* camera_;

  LiveStatus status_;
  SceneFault fault_ = SceneFault::kNone;  ///< shown, once it has lasted
  SceneFault fault_seen_ = SceneFault::kNone;
  QElapsedTimer fault_since_;
  std::optional<CupId> filmed_cup_;  ///< chosen when the film began
  ClipTestOptions used_;
  bool entered_ = false;
  bool was_live_ = false;
  QString trouble_;
  FilmNews heard_;                 ///< of the last film
  std::optional<CupId> heard_of_;  ///< its cup
  bool shelf_full_ = false;
  Press press_ = Press::kNone;
  QElapsedTimer press_since_;

  std::mutex mutex_;
  std::vector<LiveStatus> news_;  ///< newest last; at most one without a film
  bool announced_ = false;
  std::unique_ptr<LiveTest> live_;  ///< last: its thread tells this object
};

}  // namespace flowkin
