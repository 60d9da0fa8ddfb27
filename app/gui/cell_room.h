#pragma once

#include <QImage>
#include <QObject>
#include <QPointF>
#include <QRectF>
#include <QUrl>
#include <QVariantList>
#include <QtQmlIntegration>
#include <array>
#include <optional>
#include <thread>
#include <vector>

#include "app/gui/journal_reader.h"
#include "app/gui/picture_feed.h"
#include "app/usecases/view_cells.h"

namespace flowkin {

/// Two photos or short clips of cells, each counted by the use-case of `flowkin
/// cells` as soon as its scale is known, side by side, to be written into the
/// journal's open day.
class CellRoom : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// Two, each with "name" (empty for no photo), "scale", "pixel" and "part"
  /// (as she would type them), "marking" (the next two points are the corners
  /// of the part), "says" (lines), "trouble", "measured", "bars" (each "share"
  /// of the highest, "size").
  Q_PROPERTY(QVariantList sides READ sides NOTIFY changed)
  Q_PROPERTY(flowkin::PictureFeed* first READ first CONSTANT)
  Q_PROPERTY(flowkin::PictureFeed* second READ second CONSTANT)
  /// What the second is against the first; empty until both are measured.
  Q_PROPERTY(QString comparison READ comparison NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)

 public:
  explicit CellRoom(JournalReader* journal, QObject* parent = nullptr);
  ~CellRoom() override;

  QVariantList sides() const;
  PictureFeed* first() const { return sides_[0].feed; }
  PictureFeed* second() const { return sides_[1].feed; }
  QString comparison() const;
  bool busy() const { return working_on_.has_value(); }

  /// `side` is 0 or 1 throughout.
  Q_INVOKABLE void open(int side, const QUrl& photo);
  Q_INVOKABLE void putAway(int side);
  /// An end of something of known length, or a corner of the part that counts,
  /// was pointed at; `area` is where the
  /// whole picture lies, in the same coordinates.
  Q_INVOKABLE void point(int side, QPointF at, QRectF area);
  /// Its length, mm.
  Q_INVOKABLE void setLength(int side, const QString& mm);
  /// Or the size of a pixel, mm.
  Q_INVOKABLE void setPixel(int side, const QString& mm);
  /// The next two points are opposite corners of the part that counts.
  Q_INVOKABLE void markPart(int side);
  /// Or "x, y, width, height", px; empty for all of the photo.
  Q_INVOKABLE void setPart(int side, const QString& part);
  /// Writes a cell test with this photo, or the picture of this clip, and what
  /// was counted on it; the rest as JournalReader::cells.
  Q_INVOKABLE void keep(int side,
                        int seen,
                        const QString& after_s,
                        const QString& parts,
                        int cup,
                        const QString& text);

 signals:
  void changed();

 private:
  struct Side {
    PictureFeed* feed = nullptr;
    CellPhoto photo;
    std::optional<CellPicture> read;  ///< of `photo`, once it is
    QImage picture;                   ///< small enough to be shown
    std::vector<QPointF> ends;        ///< shares of the picture
    std::vector<QPointF> corners;     ///< likewise, while the part is marked
    bool marking = false;
    double pointed_sd_px = 0.0;
    std::optional<double> length_mm;
    std::optional<CellView> view;
    QString trouble;
    bool unread = false;  ///< to be read
    bool stale = false;   ///< to be counted (again)
    int opened = 0;       ///< what was begun for another file is dropped

    int WidthPx() const { return read ? read->bgr.cols : 0; }
    int HeightPx() const { return read ? read->bgr.rows : 0; }
  };

  Side& At(int side) { return sides_[side == 1 ? 1 : 0]; }
  /// Takes the scale from what was pointed at, once that is complete.
  void ScaleFromEnds(Side& side);
  void UsePart(Side& side, std::optional<PicturePart> part);
  /// Empties the place for another file, or none.
  void Clear(int side);
  void Count(Side& side);
  /// Goes on with what is to be read or counted, one thing at a time.
  void WorkOn();
  void Read(std::size_t index);
  void CountCells(std::size_t index);
  void ShowMarks(const Side& side);

  JournalReader* journal_;
  std::array<Side, 2> sides_;
  std::optional<std::size_t> working_on_;
  std::jthread worker_;
};

}  // namespace flowkin
