#pragma once

#include <QByteArray>
#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQmlIntegration>
#include <memory>
#include <optional>
#include <thread>
#include <vector>

#include "app/gui/bench_board.h"
#include "app/gui/picture_feed.h"
#include "app/usecases/clip_test.h"

namespace flowkin {

/// A film that was measured, looked at again: frame by frame with what was
/// found, its events moved by hand, the film set aside or taken back. Every
/// correction is an entry of the bench.
class ClipReview : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// The chosen cup's films, oldest first.
  Q_PROPERTY(QStringList films READ films NOTIFY filmsChanged)
  Q_PROPERTY(int film READ film NOTIFY filmsChanged)
  Q_PROPERTY(bool setAside READ setAside NOTIFY filmsChanged)
  Q_PROPERTY(QString result READ result NOTIFY filmsChanged)
  Q_PROPERTY(bool loading READ loading NOTIFY loadingChanged)
  Q_PROPERTY(double progress READ progress NOTIFY loadingChanged)
  Q_PROPERTY(QString trouble READ trouble NOTIFY loadingChanged)
  Q_PROPERTY(int frames READ frames NOTIFY loadingChanged)
  Q_PROPERTY(int frame READ frame WRITE setFrame NOTIFY frameChanged)
  Q_PROPERTY(QString time READ time NOTIFY frameChanged)
  /// Each a map: key, word, frame, at (share of the film), time, byHand.
  Q_PROPERTY(QVariantList events READ events NOTIFY filmsChanged)
  Q_PROPERTY(flowkin::PictureFeed* feed READ feed CONSTANT)

 public:
  explicit ClipReview(BenchBoard* board, QObject* parent = nullptr);
  ~ClipReview() override;

  QStringList films() const;
  int film() const;
  bool setAside() const;
  QString result() const;
  bool loading() const { return loading_; }
  double progress() const { return progress_; }
  QString trouble() const { return trouble_; }
  int frames() const;
  int frame() const { return frame_; }
  void setFrame(int frame);
  QString time() const;
  QVariantList events() const;
  PictureFeed* feed() { return &feed_; }

  Q_INVOKABLE void open(int row);
  /// Sets event `key` to the frame that is shown and measures anew.
  Q_INVOKABLE void correct(int key, int frame);
  Q_INVOKABLE void toggleAside();

 signals:
  void filmsChanged();
  void loadingChanged();
  void frameChanged();

 private:
  /// Every frame as a small picture; marks are drawn when it is shown.
  struct Strip {
    std::vector<QByteArray> pictures;
    std::vector<double> times_s;
    int width_px = 0;
    int height_px = 0;
    std::unique_ptr<ClipTest> test;
  };

  const BenchCup* Cup() const;
  const BenchTest* Test() const;
  void Load();
  void Loaded(int run, std::shared_ptr<Strip> strip, const QString& trouble);
  int FrameAt(double t_s) const;
  void ShowFrame();
  void Forget();

  BenchBoard* board_;
  PictureFeed feed_;
  std::optional<TestId> test_;
  std::shared_ptr<Strip> strip_;
  std::optional<int> keep_frame_;
  bool loading_ = false;
  double progress_ = 0.0;
  QString trouble_;
  int frame_ = 0;
  int run_ = 0;
  std::jthread worker_;
};

}  // namespace flowkin
