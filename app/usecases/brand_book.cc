#include "app/usecases/brand_book.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "calibration/defaults/default_prior.h"

namespace flowkin {
namespace {

/// Raised whenever the same log would give another curve.
constexpr int kEngine = 2;
/// A brand's newest cups; older ones say little more and cost time.
constexpr std::int64_t kMostCups = 200;
constexpr std::int64_t kMostLiquidCups = 60;

std::vector<DilutionTest> Tests(const CupHistory& history) {
  std::vector<DilutionTest> tests;
  for (const CupTest& test : history.tests) {
    tests.push_back(
        {history.Growth(test.added_ml), std::log(test.ratio), test.rel_sd});
  }
  return tests;
}

/// Cups of one liquid each, those without an addition left out.
std::vector<StoredCup> ByThinner(const StoredCup& cup) {
  std::vector<StoredCup> cups;
  for (const CupHistory& part : cup.history.Parts()) {
    if (part.Additions() == 0) continue;
    cups.push_back(cup);
    cups.back().history = part;
  }
  return cups;
}

/// Evidence on a liquid other than water; its paints' brands stand where
/// colours do for a brand.
std::vector<CupEvidence> LiquidEvidence(const std::vector<StoredCup>& cups,
                                        const CurvePrior& grid) {
  std::vector<CupEvidence> evidence;
  for (const StoredCup& cup : cups) {
    if (cup.history.Additions() == 0) continue;
    CurveOptions options;
    options.common_rel_sd = cup.common_rel_sd;
    CupEvidence told{cup.paint.brand,
                     LogLikelihood(Tests(cup.history), grid, options)};
    if (const auto& measured = cup.history.thinner_ln_ratio) {
      for (std::size_t k = 0; k < told.log_likelihood.size(); ++k) {
        const std::size_t row = k / grid.second.size();
        const double level =
            grid.first_low + grid.first_step * static_cast<double>(row);
        // No finer than the grid.
        const double z = (level - measured->value) /
                         std::max(measured->sd, 0.5 * grid.first_step);
        told.log_likelihood[k] -= 0.5 * z * z;
      }
    }
    evidence.push_back(std::move(told));
  }
  return evidence;
}

Result<BookPrior> LiquidPrior(const CalibrationStore& book,
                              const std::string& brand,
                              ThinnerKind thinner) {
  const Result<std::vector<StoredCup>> cups =
      book.CupsWith(thinner, kMostLiquidCups);
  if (!cups) return cups.error();
  BookPrior prior;
  prior.prior = BlendGrid();
  const std::vector<CupEvidence> evidence = LiquidEvidence(*cups, prior.prior);
  if (evidence.empty()) return prior;
  prior.prior =
      FitBrandCurve(evidence, brand, prior.prior, BlendSpread()).next_cup;
  prior.known = true;
  return prior;
}

bool TellsOfWater(const StoredCup& cup) {
  return cup.history.thinner == ThinnerKind::kWater &&
         cup.history.Additions() > 0;
}

std::vector<CupEvidence> Evidence(const std::vector<StoredCup>& cups,
                                  const CurvePrior& grid) {
  std::vector<CupEvidence> evidence;
  for (const StoredCup& cup : cups) {
    if (!TellsOfWater(cup)) continue;
    CurveOptions options;
    options.common_rel_sd = cup.common_rel_sd;
    evidence.push_back(
        {cup.paint.colour, LogLikelihood(Tests(cup.history), grid, options)});
  }
  return evidence;
}

Result<CurvePrior> Population(const CalibrationStore& book,
                              const std::string& brand) {
  const Result<std::vector<BrandSummary>> summaries = book.Summaries(kEngine);
  if (!summaries) return summaries.error();
  std::vector<Estimate> slopes;
  for (const BrandSummary& summary : *summaries) {
    if (summary.brand != brand) slopes.push_back(summary.ln_slope);
  }
  return PopulationPrior(slopes, WaterPrior());
}

CurveSummary Summarise(const CurveMoments& m) {
  CurveSummary summary;
  const double sd = std::sqrt(m.variance_first);
  summary.slope = std::exp(m.first);
  summary.slope_interval = {
      std::exp(m.first - 1.96 * sd), std::exp(m.first + 1.96 * sd), 0.95};
  summary.steepening = m.second;
  summary.steepening_sd = std::sqrt(m.variance_second);
  summary.fall_per_percent = -std::expm1(
      LevelAfter({DilutionLaw::Kind::kWater, summary.slope, summary.steepening},
                 0.0,
                 std::log1p(0.01)));
  return summary;
}

/// What is known of a brand as such: the curve of a colour not seen yet. The
/// name below cannot be a colour's (it holds a control character).
constexpr const char* kNoColour = "\x01";

/// Works the brand out anew and keeps what the other brands need of it.
Result<void> Refresh(CalibrationStore& book, const std::string& brand) {
  const Result<std::vector<StoredCup>> cups = book.Cups(brand, kMostCups);
  if (!cups) return cups.error();
  // Worked out apart from the other brands, because it is they who will be
  // told of it.
  const CurvePrior grid = BrandGrid(WaterPrior());
  const std::vector<CupEvidence> evidence = Evidence(*cups, grid);
  if (evidence.empty()) return book.DropSummary(brand);
  const CurveMoments m =
      FitBrandCurve(evidence, kNoColour, grid).next_cup_moments;
  return book.SaveSummary({brand, {m.first, std::sqrt(m.variance_first)}},
                          kEngine);
}

/// Runs `action` between Begin and Commit.
template <typename T, typename Action>
Result<T> InOne(CalibrationStore& book, const Action& action) {
  if (const Result<void> begun = book.Begin(); !begun) return begun.error();
  Result<T> result = action();
  if (!result) {
    book.Rollback();
    return result;
  }
  if (const Result<void> done = book.Commit(); !done) return done.error();
  return result;
}

Error NoSuchBrand(const std::string& brand) {
  return {ErrorCode::kInvalidArgument,
          "The book has no brand '" + brand +
              "'; 'flowkin brands' lists what it holds."};
}

}  // namespace

Result<BookPrior> PriorFromBook(const CalibrationStore& book,
                                const PaintKey& paint,
                                ThinnerKind thinner) {
  if (thinner != ThinnerKind::kWater) {
    return LiquidPrior(book, paint.brand, thinner);
  }
  const Result<CurvePrior> population = Population(book, paint.brand);
  if (!population) return population.error();
  BookPrior prior;
  prior.prior = *population;
  if (paint.brand.empty()) return prior;
  const Result<std::vector<StoredCup>> cups = book.Cups(paint.brand, kMostCups);
  if (!cups) return cups.error();
  const CurvePrior grid = BrandGrid(*population);
  const std::vector<CupEvidence> evidence = Evidence(*cups, grid);
  if (evidence.empty()) return prior;
  prior.prior = FitBrandCurve(evidence, paint.colour, grid).next_cup;
  prior.known = true;
  return prior;
}

Result<LearnReport> LearnCup(CalibrationStore& book, const StoredCup& cup) {
  if (cup.history.Additions() == 0) {
    return Error{ErrorCode::kRefused,
                 "This cup has no test after an addition, so there is nothing "
                 "to learn yet; add, stir and test it first."};
  }
  return InOne<LearnReport>(book, [&]() -> Result<LearnReport> {
    LearnReport report;
    report.outcome = AppendOutcome::kKnown;
    bool first = true;
    for (const StoredCup& part : ByThinner(cup)) {
      const Result<AppendOutcome> outcome = book.Append(part);
      if (!outcome) return outcome.error();
      if (first) {
        report.outcome = *outcome;
      } else if (*outcome != AppendOutcome::kKnown &&
                 report.outcome == AppendOutcome::kKnown) {
        report.outcome = AppendOutcome::kContinued;
      }
      first = false;
    }
    if (const auto done = Refresh(book, cup.paint.brand); !done) {
      return done.error();
    }
    const auto brands = ListBrands(book, cup.paint.brand);
    if (!brands) {
      // Known, but forgotten.
      if (brands.error().code != ErrorCode::kInvalidArgument) {
        return brands.error();
      }
      return report;
    }
    report.cups = brands->front().entry.cups;
    report.tests = brands->front().entry.tests;
    if (brands->front().curve) report.curve = *brands->front().curve;
    return report;
  });
}

Result<std::vector<BrandReport>> ListBrands(const CalibrationStore& book,
                                            const std::string& brand) {
  const Result<std::vector<BrandEntry>> entries = book.Brands(brand);
  if (!entries) return entries.error();
  const Result<std::vector<BrandSummary>> summaries = book.Summaries(kEngine);
  if (!summaries) return summaries.error();
  std::vector<Estimate> slopes;
  for (const BrandSummary& s : *summaries) slopes.push_back(s.ln_slope);
  const CurvePrior grid = BrandGrid(PopulationPrior(slopes, WaterPrior()));
  std::vector<BrandReport> reports;
  for (const BrandEntry& entry : *entries) {
    BrandReport report{entry, std::nullopt};
    const Result<std::vector<StoredCup>> cups =
        book.Cups(entry.brand, kMostCups);
    if (!cups) return cups.error();
    const std::vector<CupEvidence> evidence = Evidence(*cups, grid);
    if (!evidence.empty()) {
      report.curve =
          Summarise(FitBrandCurve(evidence, kNoColour, grid).next_cup_moments);
    }
    reports.push_back(std::move(report));
  }
  if (!brand.empty() && reports.empty()) return NoSuchBrand(brand);
  return reports;
}

Result<std::vector<LiquidReport>> ListLiquids(const CalibrationStore& book) {
  std::vector<LiquidReport> reports;
  for (const ThinnerKind thinner :
       {ThinnerKind::kAdditive, ThinnerKind::kMedium}) {
    const Result<std::vector<StoredCup>> cups =
        book.CupsWith(thinner, kMostLiquidCups);
    if (!cups) return cups.error();
    const CurvePrior grid = BlendGrid();
    const std::vector<CupEvidence> evidence = LiquidEvidence(*cups, grid);
    if (evidence.empty()) continue;
    const CurveMoments m =
        FitBrandCurve(evidence, kNoColour, grid, BlendSpread())
            .next_cup_moments;
    const double sd = std::sqrt(m.variance_first);
    LiquidReport report;
    report.thinner = thinner;
    report.cups = static_cast<std::int64_t>(evidence.size());
    report.ratio = std::exp(m.first);
    report.ratio_interval = {
        std::exp(m.first - 1.96 * sd), std::exp(m.first + 1.96 * sd), 0.95};
    report.interaction = {m.second, std::sqrt(m.variance_second)};
    reports.push_back(report);
  }
  return reports;
}

Result<ForgetReport> ForgetBrand(CalibrationStore& book,
                                 const std::string& brand,
                                 const std::optional<std::string>& colour,
                                 const std::string& now_utc) {
  return InOne<ForgetReport>(book, [&]() -> Result<ForgetReport> {
    const Result<std::int64_t> cups = book.Forget(brand, colour, now_utc);
    if (!cups) return cups.error();
    if (*cups == 0) return NoSuchBrand(brand);
    if (const auto done = Refresh(book, brand); !done) return done.error();
    return ForgetReport{*cups};
  });
}

Result<ForgetReport> RestoreBrand(CalibrationStore& book,
                                  const std::string& brand,
                                  const std::string& now_utc) {
  return InOne<ForgetReport>(book, [&]() -> Result<ForgetReport> {
    const Result<std::int64_t> cups = book.Restore(brand, now_utc);
    if (!cups) return cups.error();
    if (const auto done = Refresh(book, brand); !done) return done.error();
    return ForgetReport{*cups};
  });
}

Result<ImportReport> ImportCups(CalibrationStore& book,
                                const std::vector<StoredCup>& cups) {
  return InOne<ImportReport>(book, [&]() -> Result<ImportReport> {
    ImportReport report;
    std::set<std::string> brands;
    const auto put = [&](const StoredCup& cup) -> Result<void> {
      const Result<AppendOutcome> outcome = book.Append(cup);
      if (!outcome) return outcome.error();
      switch (*outcome) {
        case AppendOutcome::kAdded:
          ++report.added;
          break;
        case AppendOutcome::kKnown:
          ++report.known;
          return {};
        case AppendOutcome::kContinued:
          ++report.continued;
          break;
      }
      brands.insert(cup.paint.brand);
      return {};
    };
    for (const StoredCup& cup : cups) {
      std::vector<StoredCup> parts = ByThinner(cup);
      if (parts.empty()) parts = {cup};
      for (const StoredCup& part : parts) {
        if (const Result<void> done = put(part); !done) return done.error();
      }
    }
    for (const std::string& brand : brands) {
      if (const auto done = Refresh(book, brand); !done) return done.error();
    }
    return report;
  });
}

Result<CurvePlot> PlotBrand(const CalibrationStore& book,
                            const std::string& brand) {
  const Result<CurvePrior> population = Population(book, brand);
  if (!population) return population.error();
  const Result<std::vector<StoredCup>> cups = book.Cups(brand, kMostCups);
  if (!cups) return cups.error();
  const CurvePrior grid = BrandGrid(*population);
  const std::vector<CupEvidence> evidence = Evidence(*cups, grid);
  if (evidence.empty()) return NoSuchBrand(brand);
  const CurvePrior curve = FitBrandCurve(evidence, kNoColour, grid).next_cup;

  CurvePlot plot;
  double least = -0.05;
  double most = 0.05;
  const CurveMoments m = MomentsOf(curve);
  const DilutionLaw mean{
      DilutionLaw::Kind::kWater, std::exp(m.first), m.second};
  // Growth from the base coat's flow to `level`, below zero where thicker.
  const auto growth = [&](double level) {
    if (mean.second < 1e-6) return -level / mean.first;
    return std::expm1(-mean.second * level) / (mean.second * mean.first);
  };
  for (const StoredCup& cup : *cups) {
    if (!TellsOfWater(cup)) continue;
    CurveOptions options;
    options.common_rel_sd = cup.common_rel_sd;
    const std::vector<DilutionTest> tests = Tests(cup.history);
    const DilutionCurve fit = FitDilutionCurve(tests, curve, options);
    // Each cup is laid on the common axis by where its own fit puts its start.
    const double offset = growth(LevelMoments(fit.belief, 0.0).value);
    for (const DilutionTest& test : tests) {
      const double u = offset + test.u;
      plot.points.push_back(
          {100.0 * std::expm1(u), test.ln_ratio, test.rel_sd});
      least = std::min(least, u);
      most = std::max(most, u);
    }
  }
  // Quantiles over the prior's cells.
  struct Weighted {
    double level, weight;
  };
  constexpr int kSteps = 60;
  const double start_level = 0.0;
  for (int k = 0; k <= kSteps; ++k) {
    const double u = least + (most - least) * k / kSteps;
    std::vector<Weighted> levels;
    double total = 0.0;
    for (std::size_t i = 0; i < curve.first_count; ++i) {
      for (std::size_t j = 0; j < curve.second.size(); ++j) {
        const double weight =
            std::exp(curve.log_weight[i * curve.second.size() + j]);
        if (weight < 1e-9) continue;
        const DilutionLaw law = curve.Law(
            curve.first_low + curve.first_step * static_cast<double>(i),
            curve.second[j]);
        const double level = u >= 0.0 ? LevelAfter(law, start_level, u)
                                      : StartLevelFor(law, start_level, -u);
        levels.push_back({std::min(level, 5.0), weight});
        total += weight;
      }
    }
    std::sort(
        levels.begin(), levels.end(), [](const Weighted& a, const Weighted& b) {
          return a.level < b.level;
        });
    const auto quantile = [&](double chance) {
      double sum = 0.0;
      for (const Weighted& w : levels) {
        sum += w.weight;
        if (sum >= chance * total) return w.level;
      }
      return levels.back().level;
    };
    plot.line.push_back({100.0 * std::expm1(u),
                         quantile(0.025),
                         quantile(0.5),
                         quantile(0.975)});
  }
  return plot;
}

}  // namespace flowkin
