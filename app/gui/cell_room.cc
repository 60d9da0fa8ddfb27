#include "app/gui/cell_room.h"

#include <QDir>
#include <QFileInfo>
#include <QMetaObject>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>
#include <utility>

#include "app/gui/formats.h"
#include "app/gui/wording.h"

namespace flowkin {
namespace {

constexpr int kMostShown_px = 1600;
/// How exactly an end is pointed at on the screen; our guess.
constexpr double kPointing_sd_px = 2.0;

QImage Shown(const cv::Mat& bgr) {
  cv::Mat small = bgr;
  const int longest = std::max(bgr.cols, bgr.rows);
  if (longest > kMostShown_px) {
    const double scale = 1.0 * kMostShown_px / longest;
    cv::resize(bgr, small, cv::Size(), scale, scale, cv::INTER_AREA);
  }
  const QImage image(small.data,
                     small.cols,
                     small.rows,
                     static_cast<qsizetype>(small.step),
                     QImage::Format_BGR888);
  return image.copy();
}

/// Bars of the diameters of `view`, equally wide up to `most_mm`.
QVariantList Bars(const CellView& view, double most_mm) {
  constexpr int kBars = 10;
  std::array<int, kBars> counts{};
  for (const Cell& cell : view.cells) {
    const int bar = static_cast<int>(kBars * cell.diameter_mm / most_mm);
    ++counts[static_cast<std::size_t>(std::clamp(bar, 0, kBars - 1))];
  }
  const int highest =
      std::max(1, *std::max_element(counts.begin(), counts.end()));
  QVariantList bars;
  for (int i = 0; i < kBars; ++i) {
    bars << QVariantMap{
        {"share", 1.0 * counts[static_cast<std::size_t>(i)] / highest},
        {"count", counts[static_cast<std::size_t>(i)]},
        {"size", Formats::Number((i + 1) * most_mm / kBars, 1)}};
  }
  return bars;
}

double LargestMm(const CellView& view) {
  double most = 0.0;
  for (const Cell& cell : view.cells) most = std::max(most, cell.diameter_mm);
  return most;
}

}  // namespace

CellRoom::CellRoom(JournalReader* journal, QObject* parent)
    : QObject(parent), journal_(journal) {
  for (Side& side : sides_) side.feed = new PictureFeed(this);
}

CellRoom::~CellRoom() = default;

void CellRoom::Clear(int side) {
  Side& to = At(side);
  // A long clip is not read to its end for nothing.
  if (working_on_ && &sides_[*working_on_] == &to) worker_.request_stop();
  PictureFeed* feed = to.feed;
  const int opened = to.opened + 1;
  to = Side{};
  to.feed = feed;
  to.opened = opened;
}

void CellRoom::open(int side, const QUrl& photo) {
  Clear(side);
  Side& to = At(side);
  to.photo.path = photo.toLocalFile().toStdString();
  to.unread = true;
  WorkOn();
  ShowMarks(to);
  emit changed();
}

void CellRoom::putAway(int side) {
  Clear(side);
  ShowMarks(At(side));
  emit changed();
}

void CellRoom::point(int side, QPointF at, QRectF area) {
  Side& to = At(side);
  if (to.picture.isNull() || !area.contains(at)) return;
  const QPointF share((at.x() - area.x()) / area.width(),
                      (at.y() - area.y()) / area.height());
  if (to.marking) {
    to.corners.push_back(share);
    if (to.corners.size() == 2) {
      const QRectF part = QRectF(to.corners[0], to.corners[1]).normalized();
      to.corners.clear();
      to.marking = false;
      const auto px = [](double at_share, int size_px) {
        return static_cast<int>(std::lround(at_share * size_px));
      };
      const int left_px = px(part.left(), to.WidthPx());
      const int top_px = px(part.top(), to.HeightPx());
      UsePart(to,
              PicturePart{left_px,
                          top_px,
                          px(part.right(), to.WidthPx()) - left_px,
                          px(part.bottom(), to.HeightPx()) - top_px});
    }
    ShowMarks(to);
    emit changed();
    return;
  }
  if (to.ends.size() >= 2) to.ends.clear();
  to.ends.push_back(share);
  to.pointed_sd_px = kPointing_sd_px * to.WidthPx() / area.width();
  ScaleFromEnds(to);
  ShowMarks(to);
  emit changed();
}

void CellRoom::setLength(int side, const QString& mm) {
  Side& to = At(side);
  to.length_mm = Formats::NumberFromInput(mm);
  to.trouble.clear();
  if (!mm.trimmed().isEmpty() && !(to.length_mm && *to.length_mm > 0.0)) {
    to.length_mm.reset();
    to.trouble = tr("'%1' is no length above 0.").arg(mm);
  }
  ScaleFromEnds(to);
  emit changed();
}

void CellRoom::setPixel(int side, const QString& mm) {
  Side& to = At(side);
  const std::optional<double> given = Formats::NumberFromInput(mm);
  to.trouble.clear();
  if (given && *given > 0.0) {
    to.ends.clear();
    to.photo.mm_per_px = *given;
    to.photo.rel_sd_scale = CellPhoto().rel_sd_scale;
    Count(to);
    ShowMarks(to);
  } else {
    to.trouble = tr("'%1' is no length above 0.").arg(mm);
  }
  emit changed();
}

void CellRoom::markPart(int side) {
  Side& to = At(side);
  if (!to.read) return;
  to.corners.clear();
  to.marking = !to.marking;
  ShowMarks(to);
  emit changed();
}

void CellRoom::setPart(int side, const QString& part) {
  Side& to = At(side);
  if (!to.read) return;
  to.marking = false;
  to.corners.clear();
  const QStringList numbers =
      part.split(QRegularExpression("[,;\\s]+"), Qt::SkipEmptyParts);
  std::array<int, 4> given{};
  bool whole = numbers.size() == 4;
  for (qsizetype i = 0; whole && i < 4; ++i) {
    given[static_cast<std::size_t>(i)] = numbers[i].toInt(&whole);
  }
  if (whole) {
    UsePart(to, PicturePart{given[0], given[1], given[2], given[3]});
  } else if (numbers.isEmpty()) {
    UsePart(to, std::nullopt);
  } else {
    to.trouble = tr("A part is four whole numbers: x, y, width, height.");
  }
  ShowMarks(to);
  emit changed();
}

void CellRoom::UsePart(Side& side, std::optional<PicturePart> part) {
  side.trouble.clear();
  if (part && (part->x < 0 || part->y < 0 || part->width < 1 ||
               part->height < 1 || part->width > side.WidthPx() - part->x ||
               part->height > side.HeightPx() - part->y)) {
    side.trouble = tr("This part does not lie on the photo.");
    return;
  }
  side.photo.part = part;
  if (side.photo.mm_per_px > 0.0) Count(side);
}

void CellRoom::ScaleFromEnds(Side& side) {
  if (side.ends.size() != 2 || !side.length_mm) return;
  const double distance_px =
      std::hypot((side.ends[1].x() - side.ends[0].x()) * side.WidthPx(),
                 (side.ends[1].y() - side.ends[0].y()) * side.HeightPx());
  if (!(distance_px > 10.0 * side.pointed_sd_px)) {
    side.trouble = tr("The two ends lie too close together for a scale.");
    return;
  }
  side.trouble.clear();
  side.photo.mm_per_px = *side.length_mm / distance_px;
  side.photo.rel_sd_scale =
      std::numbers::sqrt2 * side.pointed_sd_px / distance_px;
  Count(side);
}

void CellRoom::Count(Side& side) {
  side.view.reset();
  side.stale = !side.photo.path.empty();
  WorkOn();
}

void CellRoom::WorkOn() {
  for (std::size_t i = 0; i < sides_.size() && !working_on_; ++i) {
    if (sides_[i].unread) {
      Read(i);
    } else if (sides_[i].stale && sides_[i].read) {
      CountCells(i);
    }
  }
}

void CellRoom::Read(std::size_t index) {
  Side& side = sides_[index];
  side.unread = false;
  working_on_ = index;
  worker_ = std::jthread([this, path = side.photo.path, opened = side.opened](
                             const std::stop_token& stop) {
    Result<CellPicture> picture = ReadCellPicture(path, stop);
    QImage shown;
    if (picture) shown = Shown(picture->bgr);
    QMetaObject::invokeMethod(
        this,
        [this, opened, picture = std::move(picture), shown]() mutable {
          Side& to = sides_[*std::exchange(working_on_, std::nullopt)];
          if (to.opened == opened) {
            if (picture) {
              to.read = *std::move(picture);
              to.picture = shown;
            } else {
              to.photo.path.clear();
              to.trouble = Wording::Engine(picture.error().message);
            }
            ShowMarks(to);
          }
          WorkOn();
          emit changed();
        },
        Qt::QueuedConnection);
  });
}

void CellRoom::CountCells(std::size_t index) {
  Side& side = sides_[index];
  side.stale = false;
  working_on_ = index;
  // A photo of a phone takes a second.
  worker_ = std::jthread(
      [this, photo = side.photo, picture = *side.read, opened = side.opened] {
        Result<CellView> view = ViewPicture(picture, photo);
        QMetaObject::invokeMethod(
            this,
            [this, opened, view = std::move(view)]() mutable {
              Side& counted = sides_[*std::exchange(working_on_, std::nullopt)];
              // Meanwhile another photo, scale or part may have been chosen.
              if (!counted.stale && counted.opened == opened) {
                if (view) {
                  counted.view = *std::move(view);
                  if (!counted.view->measured) {
                    counted.trouble = Wording::Engine(counted.view->reason);
                  }
                } else {
                  counted.trouble = Wording::Engine(view.error().message);
                }
                ShowMarks(counted);
              }
              WorkOn();
              emit changed();
            },
            Qt::QueuedConnection);
      });
}

void CellRoom::ShowMarks(const Side& side) {
  std::vector<PictureMark> marks;
  if (side.view) {
    for (const Cell& cell : side.view->cells) {
      constexpr int kCorners = 24;
      const double radius_px =
          0.5 * cell.diameter_mm / side.photo.mm_per_px + 1.0;
      PictureMark mark;
      mark.closed = true;
      for (int i = 0; i < kCorners; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / kCorners;
        mark.points.emplace_back(
            (cell.x_px + radius_px * std::cos(angle)) / side.WidthPx(),
            (cell.y_px + radius_px * std::sin(angle)) / side.HeightPx());
      }
      marks.push_back(std::move(mark));
    }
  }
  if (const auto& part = side.photo.part) {
    const double left = 1.0 * part->x / side.WidthPx();
    const double top = 1.0 * part->y / side.HeightPx();
    const double right = 1.0 * (part->x + part->width) / side.WidthPx();
    const double bottom = 1.0 * (part->y + part->height) / side.HeightPx();
    marks.push_back(
        {{{left, top}, {right, top}, {right, bottom}, {left, bottom}},
         true,
         true});
  }
  // A single point is a cross, so that it is seen.
  const auto cross = [&](const QPointF& at) {
    marks.push_back(
        {{at - QPointF(0.01, 0), at + QPointF(0.01, 0)}, false, true});
    marks.push_back(
        {{at - QPointF(0, 0.01), at + QPointF(0, 0.01)}, false, true});
  };
  if (!side.corners.empty()) cross(side.corners.front());
  if (side.ends.size() == 1) cross(side.ends.front());
  if (side.ends.size() == 2) marks.push_back({side.ends, false, true});
  side.feed->Show(side.picture, std::move(marks));
}

QVariantList CellRoom::sides() const {
  double most_mm = 0.0;
  for (const Side& side : sides_) {
    if (side.view) most_mm = std::max(most_mm, LargestMm(*side.view));
  }
  QVariantList list;
  for (std::size_t i = 0; i < sides_.size(); ++i) {
    const Side& side = sides_[i];
    const bool scaled = side.photo.mm_per_px > 0.0;
    QStringList says;
    if (!side.photo.path.empty() && !side.read) {
      says << tr("Reading …");
    } else if (working_on_ == i || side.stale) {
      says << tr("Counting …");
    }
    if (side.read && side.read->at_s) {
      says << tr("The picture at %1 s of the clip.")
                  .arg(Formats::Number(*side.read->at_s, 1));
    }
    const bool measured = side.view && side.view->measured;
    if (measured) {
      says << tr("%n whole cell(s) on %1 cm²",
                 nullptr,
                 static_cast<int>(side.view->cells.size()))
                  .arg(Formats::Ratio(side.view->area_cm2))
           << Wording::Counted(CountedOf(*side.view))
           << tr("Eight of ten lie between %1 and %2 mm.")
                  .arg(Formats::Ratio(side.view->lower_mm),
                       Formats::Ratio(side.view->upper_mm));
    }
    list << QVariantMap{
        {"name", QFileInfo(QString::fromStdString(side.photo.path)).fileName()},
        {"pixel",
         scaled ? Formats::Number(side.photo.mm_per_px, 4) : QString()},
        {"part",
         side.photo.part ? QString("%1, %2, %3, %4")
                               .arg(side.photo.part->x)
                               .arg(side.photo.part->y)
                               .arg(side.photo.part->width)
                               .arg(side.photo.part->height)
                         : QString()},
        {"marking", side.marking},
        {"scale",
         side.marking ? tr("Point at two opposite corners of the part.")
         : scaled     ? tr("Scale: %1 mm to a pixel, good to %2.")
                        .arg(Formats::Number(side.photo.mm_per_px, 4),
                             Formats::Percent(side.photo.rel_sd_scale))
                  : tr("Point at both ends of something of known length, or "
                       "write the size of a pixel.")},
        {"says", says},
        {"trouble", side.trouble},
        {"measured", measured},
        {"bars",
         measured && most_mm > 0.0 ? Bars(*side.view, most_mm)
                                   : QVariantList()}};
  }
  return list;
}

QString CellRoom::comparison() const {
  const auto& [first, second] = sides_;
  if (!first.view || !second.view || !first.view->measured ||
      !second.view->measured) {
    return {};
  }
  const CellComparison found = CompareCells(*first.view, *second.view);
  QString says;
  switch (found.verdict) {
    case CellVerdict::kMore:
      says = tr("The second has more cells:");
      break;
    case CellVerdict::kFewer:
      says = tr("The second has fewer cells:");
      break;
    case CellVerdict::kAlike:
      says = tr("They are alike:");
      break;
    case CellVerdict::kUndecided:
      says = tr("These photos cannot tell which has more:");
      break;
  }
  return says + " " +
         tr("%1 times as many (%2 to %3), %4 times as large (%5 to %6).")
             .arg(Formats::Ratio(found.density_ratio),
                  Formats::Ratio(found.density_interval.low),
                  Formats::Ratio(found.density_interval.high),
                  Formats::Ratio(found.size_ratio),
                  Formats::Ratio(found.size_interval.low),
                  Formats::Ratio(found.size_interval.high));
}

void CellRoom::keep(int side,
                    int seen,
                    const QString& after_s,
                    const QString& parts,
                    int cup,
                    const QString& text) {
  Side& from = At(side);
  if (!from.read) return;
  CellsTested test;
  test.photo = from.photo.path;
  if (from.read->at_s) {
    const QDir book = QFileInfo(journal_->StorePath()).absoluteDir();
    const Result<std::string> kept = KeepCellPicture(
        *from.read, from.photo.path, book.filePath("pictures").toStdString());
    if (!kept) {
      from.trouble = Wording::Engine(kept.error().message);
      emit changed();
      return;
    }
    test.photo = *kept;
  }
  if (from.view && from.view->measured) test.counted = CountedOf(*from.view);
  journal_->KeepCells(std::move(test), seen, after_s, parts, cup, text);
}

}  // namespace flowkin
