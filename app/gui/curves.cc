#include "app/gui/curves.h"

#include <QVariantMap>
#include <QXYSeries>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "app/usecases/brand_book.h"
#include "app/usecases/filmed_test.h"

namespace flowkin {
namespace {

/// Standard deviations that hold 95 of 100 cases of a normal distribution.
constexpr double kSpread95 = 1.96;
/// How far a cup's path is drawn beyond its last test: in doses, but at least
/// this share of the cup.
constexpr double kAhead = 1.6;
constexpr double kLeastAhead = 0.03;
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

double Curves::step(double from, double to) {
  constexpr double kTicks = 7.0;
  const double least = (to - from) / kTicks;
  if (!(least > 0.0)) return 1.0;
  const double ten = std::pow(10.0, std::floor(std::log10(least)));
  for (const double round : {1.0, 2.0, 5.0}) {
    if (round * ten >= least) return round * ten;
  }
  return 10.0 * ten;
}

void Curves::Show(Filling filling,
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
  for (const QVariant& each : filling.intervals) {
    const QVariantMap interval = each.toMap();
    bottom = std::min(bottom, interval["low"].toDouble());
    top = std::max(top, interval["high"].toDouble());
  }
  if (filling.match_low < filling.match_high) {
    bottom = std::min(bottom, filling.match_low);
    top = std::max(top, filling.match_high);
  }
  shown_ = std::move(filling);
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
    const FilmedTest& film = cup->tests[static_cast<std::size_t>(row)].film;
    const FlowMeasurement& test = film.measurement;
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
      const FlowCurve fit = LawOf(film);
      for (std::size_t i = 0; i < fit.t_s.size(); ++i) {
        filling.line << QPointF(fit.t_s[i], fit.value[i]);
      }
      filling.title = tr("%1, film %2").arg(board_->chosenName()).arg(row + 1);
      filling.points_word = tr("seen");
      filling.shade_word = tr("95 of 100 lie here");
      filling.across = tr("seconds since the start of the test");
      switch (test.kind) {
        case TestKind::kStream:
          filling.up = tr("share of the stream that is left");
          filling.line_word = tr("it broke here");
          break;
        case TestKind::kLevel:
          filling.up = tr("relief that is left");
          filling.line_word = tr("its fading, as measured");
          break;
        case TestKind::kPuddle:
          filling.up = tr("radius of the puddle, %1")
                           .arg(QString::fromStdString(curve.unit));
          filling.line_word = tr("its spreading, as measured");
          break;
      }
      if (fit.t_s.empty()) filling.line_word.clear();
    }
  }
  Show(std::move(filling), points, line, low, high);
}

void Curves::fillPath(QAbstractSeries* points,
                      QAbstractSeries* line,
                      QAbstractSeries* low,
                      QAbstractSeries* high) {
  Filling filling;
  nothing_.clear();
  const std::optional<CupId> chosen = board_->ChosenCup();
  const BoardCup* cup = chosen ? board_->FindCup(*chosen) : nullptr;
  if (cup == nullptr) {
    nothing_ = tr("There is no cup on the bench yet.");
  } else if (cup->base_coat) {
    nothing_ =
        tr("The base coat is what others are compared with; choose "
           "another cup.");
  } else if (!cup->request) {
    nothing_ = cup->volume_now_ml
                   ? tr("Film this cup and the base coat first.")
                   : tr("Say how much is in the cup; its path counts from "
                        "there.");
  } else {
    double last_ml = 0.0;
    for (const CupTest& test : cup->request->cup.tests) {
      filling.points << QPointF(test.added_ml, test.ratio);
      const double factor = std::exp(kSpread95 * test.rel_sd);
      filling.intervals << QVariantMap{{"x", test.added_ml},
                                       {"low", test.ratio / factor},
                                       {"high", test.ratio * factor}};
      last_ml = test.added_ml;
    }
    double ahead_ml = kLeastAhead * cup->request->cup.volume_ml;
    if (cup->dose && cup->dose->dose.advice == DoseAdvice::kAdd) {
      ahead_ml = std::max(ahead_ml, kAhead * cup->dose->dose.add_ml);
    }
    const auto path = board_->bench()->Path(*cup, last_ml + ahead_ml);
    if (path) {
      for (const CupPathPoint& at : *path) {
        filling.line << QPointF(at.added_ml, at.ratio);
        filling.low << QPointF(at.added_ml, at.interval.low);
        filling.high << QPointF(at.added_ml, at.interval.high);
      }
    } else {
      nothing_ = Wording::Engine(path.error().message);
    }
    const double target = cup->details.target_ratio;
    const double band = board_->State().settings.band;
    filling.match_low = target / (1.0 + band);
    filling.match_high = target * (1.0 + band);
    filling.title = board_->chosenName();
    filling.points_word = tr("measured, with 95 % interval");
    filling.line_word = tr("likeliest path");
    filling.shade_word = tr("95 of 100 paths lie here");
    filling.across = tr("added to the cup, mL");
    filling.up = tr("times as thick as the base coat");
  }
  Show(std::move(filling), points, line, low, high);
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
      filling.title = names[row];
      filling.points_word = tr("measured");
      filling.line_word = tr("likeliest path");
      filling.shade_word = tr("95 of 100 paths lie here");
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
  Show(std::move(filling), points, line, low, high);
}

}  // namespace flowkin
