#include "app/gui/curves.h"

#include <QList>
#include <QPointF>
#include <QXYSeries>
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/usecases/brand_book.h"

namespace flowkin {
namespace {

/// Standard deviations that hold 95 of 100 cases of a normal distribution.
constexpr double kSpread95 = 1.96;
/// Room around what is shown, as a share.
constexpr double kMargin = 0.06;

void Replace(QAbstractSeries* series, const QList<QPointF>& points) {
  if (auto* xy = qobject_cast<QXYSeries*>(series)) xy->replace(points);
}

Result<CalibrationStore> OpenBook(const BenchBoard& board) {
  if (board.bench() == nullptr) {
    return Error{ErrorCode::kInternal, "There is no bench."};
  }
  return CalibrationStore::Open(board.bench()->store_path(),
                                CalibrationStore::Access::kRead);
}

}  // namespace

struct Curves::Filling {
  QList<QPointF> points, line, low, high;
  QString across, up;
};

Curves::Curves(BenchBoard* board, QObject* parent)
    : QObject(parent), board_(board) {
  connect(board_, &BenchBoard::changed, this, &Curves::changed);
}

QStringList Curves::films() const {
  QStringList names;
  const Bench* bench = board_->bench();
  const std::optional<CupId> chosen = board_->ChosenCup();
  if (bench == nullptr || !bench->HasSession() || !chosen) return names;
  const BenchCup* cup = bench->session().FindCup(*chosen);
  if (cup == nullptr) return names;
  int number = 0;
  for (const BenchTest& test : cup->tests) {
    names << tr("film %1, %2")
                 .arg(++number)
                 .arg(Wording::Test(test.film.measurement.kind));
  }
  return names;
}

QStringList Curves::brands() const {
  QStringList names;
  const Result<CalibrationStore> book = OpenBook(*board_);
  if (!book) return names;
  const Result<std::vector<BrandEntry>> brands = book->Brands();
  if (!brands) return names;
  for (const BrandEntry& entry : *brands) {
    names << QString::fromStdString(entry.brand);
  }
  return names;
}

void Curves::Show(const Filling& filling,
                  QAbstractSeries* points,
                  QAbstractSeries* line,
                  QAbstractSeries* low,
                  QAbstractSeries* high) {
  Replace(points, filling.points);
  Replace(line, filling.line);
  Replace(low, filling.low);
  Replace(high, filling.high);
  constexpr double kFar = std::numeric_limits<double>::infinity();
  double left = kFar;
  double right = -kFar;
  double bottom = kFar;
  double top = -kFar;
  for (const auto* series :
       {&filling.points, &filling.line, &filling.low, &filling.high}) {
    for (const QPointF& at : *series) {
      left = std::min(left, at.x());
      right = std::max(right, at.x());
      bottom = std::min(bottom, at.y());
      top = std::max(top, at.y());
    }
  }
  across_ = filling.across;
  up_ = filling.up;
  if (left > right) {
    if (nothing_.isEmpty()) nothing_ = tr("Nothing to plot yet.");
  } else {
    nothing_.clear();
    const double wide = right > left ? right - left : 1.0;
    const double high_span = top > bottom ? top - bottom : 1.0;
    left_ = left - kMargin * wide;
    right_ = right + kMargin * wide;
    bottom_ = bottom - kMargin * high_span;
    top_ = top + kMargin * high_span;
  }
  emit filled();
}

void Curves::fillFilm(int row,
                      QAbstractSeries* points,
                      QAbstractSeries* line,
                      QAbstractSeries* low,
                      QAbstractSeries* high) {
  Filling filling;
  nothing_.clear();
  const Bench* bench = board_->bench();
  const std::optional<CupId> chosen = board_->ChosenCup();
  const BenchCup* cup = bench != nullptr && bench->HasSession() && chosen
                            ? bench->session().FindCup(*chosen)
                            : nullptr;
  if (cup != nullptr && row >= 0 && row < static_cast<int>(cup->tests.size())) {
    const FlowMeasurement& test =
        cup->tests[static_cast<std::size_t>(row)].film.measurement;
    if (test.curves.empty()) {
      nothing_ =
          tr("This test is told by its events, not by a curve; look at "
             "the film again to see them.");
    } else {
      const FlowCurve& curve = test.curves.front();
      for (std::size_t i = 0; i < curve.t_s.size(); ++i) {
        const double t_s = curve.t_s[i];
        const double value = curve.value[i];
        const double sd = i < curve.sd.size() ? curve.sd[i] : 0.0;
        filling.points << QPointF(t_s, value);
        filling.low << QPointF(t_s, value - kSpread95 * sd);
        filling.high << QPointF(t_s, value + kSpread95 * sd);
      }
      filling.across = tr("seconds since the start of the test");
      filling.up = test.kind == TestKind::kLevel
                       ? tr("relief that is left")
                       : tr("radius of the puddle, %1")
                             .arg(QString::fromStdString(curve.unit));
    }
  }
  Show(filling, points, line, low, high);
}

void Curves::fillPath(QAbstractSeries* points,
                      QAbstractSeries* line,
                      QAbstractSeries* low,
                      QAbstractSeries* high) {
  Filling filling;
  nothing_.clear();
  const std::optional<CupId> chosen = board_->ChosenCup();
  const BoardCup* cup = chosen ? board_->FindCup(*chosen) : nullptr;
  if (cup != nullptr && cup->request) {
    for (const CupTest& test : cup->request->cup.tests) {
      filling.points << QPointF(test.added_ml, test.ratio);
      const double factor = std::exp(kSpread95 * test.rel_sd);
      filling.low << QPointF(test.added_ml, test.ratio / factor);
      filling.high << QPointF(test.added_ml, test.ratio * factor);
    }
    filling.line = filling.points;
    if (cup->dose && cup->dose->add_ml && *cup->dose->add_ml > 0.0 &&
        !cup->request->cup.tests.empty()) {
      const Dose& dose = cup->dose->dose;
      const double at_ml =
          cup->request->cup.tests.back().added_ml + *cup->dose->add_ml;
      filling.line << QPointF(at_ml, dose.predicted_median);
      filling.low << QPointF(at_ml, dose.predicted.low);
      filling.high << QPointF(at_ml, dose.predicted.high);
    }
    filling.across = tr("added to the cup, mL");
    filling.up = tr("times as thick as the base coat");
  }
  Show(filling, points, line, low, high);
}

void Curves::fillBrand(int row,
                       QAbstractSeries* points,
                       QAbstractSeries* line,
                       QAbstractSeries* low,
                       QAbstractSeries* high) {
  Filling filling;
  nothing_.clear();
  const QStringList names = brands();
  if (row >= 0 && row < names.size()) {
    const Result<CalibrationStore> book = OpenBook(*board_);
    const Result<CurvePlot> plot =
        book ? PlotBrand(*book, names[row].toStdString())
             : Result<CurvePlot>(book.error());
    if (plot) {
      for (const CurvePlot::Point& at : plot->points) {
        filling.points << QPointF(at.water_percent, std::exp(at.ln_ratio));
      }
      for (const CurvePlot::Line& at : plot->line) {
        filling.line << QPointF(at.water_percent, std::exp(at.middle));
        filling.low << QPointF(at.water_percent, std::exp(at.low));
        filling.high << QPointF(at.water_percent, std::exp(at.high));
      }
      filling.across =
          tr("mL of water in 100 mL of paint, 0 = flows like the "
             "base coat");
      filling.up = tr("times as thick as the base coat");
    } else {
      nothing_ = Wording::Engine(plot.error().message);
    }
  } else {
    nothing_ =
        tr("No brand has been learned yet: remember a paint once its "
           "cup matches.");
  }
  Show(filling, points, line, low, high);
}

}  // namespace flowkin
