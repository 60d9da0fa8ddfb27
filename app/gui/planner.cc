#include "app/gui/planner.h"

#include <QDate>
#include <QLocale>
#include <QSettings>
#include <algorithm>
#include <array>
#include <sstream>
#include <utility>

#include "app/gui/convert.h"
#include "app/usecases/plan_document.h"
#include "app/usecases/write_file.h"

namespace flowkin {
namespace {

constexpr std::array kBodies = {PaintBody::kHeavy,
                                PaintBody::kSoft,
                                PaintBody::kFluid,
                                PaintBody::kInk,
                                PaintBody::kPowder};

Day Today() {
  const QByteArray day = QDate::currentDate().toString(Qt::ISODate).toUtf8();
  return *ParseDay(day.toStdString());
}

/// A plan to begin with.
PlanRequest Beginning(bool us_units) {
  PlanRequest request;
  request.technique = StartingTechniques()[2];
  request.base_coat.name = "base coat";
  request.base_coat.material = kWallPaint;
  Support support;
  support.length_mm = us_units ? 20.0 * 25.4 : 500.0;
  support.width_mm = us_units ? 16.0 * 25.4 : 400.0;
  support.depth_mm = us_units ? 0.75 * 25.4 : 18.0;
  request.supports = {support};
  return request;
}

Span Spread(const Span& usual, double value) {
  // Her number is sure; the usual span stays only around the usual number.
  return value == usual.start ? usual : Span{value, value, value};
}

}  // namespace

Planner::Planner(const QString& store_path,
                 Preferences* preferences,
                 BenchBoard* board,
                 QObject* parent)
    : QObject(parent),
      store_path_(store_path),
      preferences_(preferences),
      board_(board),
      request_(Beginning(preferences->usUnits())) {
  ReadBook();
  follow_ = preferences_->Store().value("plan-follows-book", true).toBool();
  const auto kept_mm = [&](const char* key) {
    return preferences_->Store().value(key, 0.0).toDouble();
  };
  cup_ = {kept_mm("medium-cup-bottom-mm"),
          kept_mm("medium-cup-top-mm"),
          kept_mm("medium-cup-height-mm")};
  for (const auto& [key, flow] : {std::pair("medium-flow", &medium_flow_),
                                  std::pair("last-medium-flow", &last_flow_)}) {
    if (const QVariant kept = preferences_->Store().value(key);
        kept.toDouble() > 0.0) {
      *flow = kept.toDouble();
    }
  }
  const QString kept = preferences_->Store().value("plan").toString();
  if (!kept.isEmpty()) {
    std::istringstream text(kept.toStdString());
    Result<PlanRequest> read = ReadPlanRequest("", text, practice_.techniques);
    if (read && read->supports.size() == 1) request_ = *std::move(read);
  }
  Work();
  connect(preferences_, &Preferences::changed, this, &Planner::changed);
  connect(preferences_, &Preferences::languageChanged, this, &Planner::Work);
}

QString Planner::StorePath() const {
  if (!store_path_.isEmpty()) return store_path_;
  return Text(CalibrationStore::DefaultPath());
}

void Planner::ReadBook() {
  Result<BookPractice> practice = ReadPractice(StorePath().toStdString());
  if (!practice) {
    trouble_ = Wording::Engine(practice.error().message);
    return;
  }
  practice_ = *std::move(practice);
  const Result<Technique> same =
      FindTechnique(practice_.techniques, request_.technique.name);
  if (same) request_.technique = *same;
}

void Planner::Work() {
  planned_ = request_;
  if (follow_) UsePractice(practice_, Today(), planned_);
  report_.reset();
  trouble_.clear();
  if (request_.colours.empty()) {
    trouble_ = tr("Add a colour first, or take those of the bench.");
  } else {
    Result<PlanReport> report = PlanPour(planned_);
    if (report) {
      report_ = *std::move(report);
    } else {
      trouble_ = Wording::Engine(report.error().message);
    }
  }
  preferences_->Store().setValue("plan",
                                 Text(PlanRequestDocument(request_).dump()));
  preferences_->Store().setValue("plan-follows-book", follow_);
  preferences_->Store().setValue("medium-cup-bottom-mm",
                                 cup_.bottom_diameter_mm);
  preferences_->Store().setValue("medium-cup-top-mm", cup_.top_diameter_mm);
  preferences_->Store().setValue("medium-cup-height-mm", cup_.height_mm);
  preferences_->Store().setValue("medium-flow", medium_flow_.value_or(0.0));
  preferences_->Store().setValue("last-medium-flow", last_flow_.value_or(0.0));
  emit changed();
}

QString Planner::trouble() const {
  return input_trouble_.isEmpty() ? trouble_ : input_trouble_;
}

void Planner::visit() {
  ReadBook();
  if (request_.colours.empty()) {
    takeFromBench();
  } else {
    Work();
  }
}

int Planner::TechniqueRow() const {
  for (std::size_t row = 0; row < practice_.techniques.size(); ++row) {
    if (practice_.techniques[row].name == request_.technique.name) {
      return static_cast<int>(row);
    }
  }
  return -1;
}

QStringList Planner::techniques() const {
  QStringList names;
  for (const Technique& technique : practice_.techniques) {
    names << Wording::Engine(technique.name);
  }
  return names;
}

QString Planner::what() const {
  return Wording::Engine(request_.technique.what);
}

QVariantMap Planner::form() const {
  const Support& support = request_.supports.front();
  const Formats units = Units();
  return {
      {"technique", TechniqueRow()},
      {"shape", support.shape == SupportShape::kRound ? 1 : 0},
      {"length", units.LengthInput(support.length_mm)},
      {"width", units.LengthInput(support.width_mm)},
      {"depth", units.LengthInput(support.depth_mm)},
      {"count", QString::number(support.count)},
      {"edges", support.edges},
      {"baseParts", Formats::Number(request_.medium.base_parts, 2)},
      {"varnishParts", Formats::Number(request_.medium.varnish_parts, 2)},
      {"byWeight", request_.medium.by == PartsBy::kWeight},
      {"cupBottom",
       cup_.bottom_diameter_mm > 0.0
           ? units.LengthInput(cup_.bottom_diameter_mm)
           : QString()},
      {"cupTop",
       cup_.top_diameter_mm > 0.0 ? units.LengthInput(cup_.top_diameter_mm)
                                  : QString()},
      {"cupHeight",
       cup_.height_mm > 0.0 ? units.LengthInput(cup_.height_mm) : QString()},
      {"mediumFlow", medium_flow_ ? Formats::Ratio(*medium_flow_) : QString()},
      {"lastFlow", last_flow_ ? Formats::Ratio(*last_flow_) : QString()},
      {"reserve", Formats::Number(100.0 * request_.reserve_share, 0)},
      {"waste", Formats::Number(100.0 * request_.waste_share, 0)},
      {"water", Formats::Number(100.0 * request_.water_share, 0)},
      {"tests", QString::number(request_.tests_per_cup)},
      {"follow", follow_}};
}

void Planner::set(const QString& field, const QVariant& value) {
  input_trouble_.clear();
  const QString text = value.toString();
  const auto number = [&](double scale, double* to) {
    const std::optional<double> given = Formats::NumberFromInput(text);
    if (given) {
      *to = *given * scale;
    } else {
      input_trouble_ = tr("'%1' is no number.").arg(text);
    }
  };
  const auto length = [&](double* to) {
    const std::optional<double> given = Units().LengthFromInput(text);
    // What is shown rounded must not change what was meant.
    if (given && text != Units().LengthInput(*to)) *to = *given;
    if (!given) input_trouble_ = tr("'%1' is no number.").arg(text);
  };
  const auto cup_length = [&](double* to) {
    if (text.trimmed().isEmpty()) {
      *to = 0.0;
    } else {
      length(to);
    }
  };
  const auto flow = [&](std::optional<double>* to) {
    const std::optional<double> given = Formats::NumberFromInput(text);
    if (text.trimmed().isEmpty()) {
      to->reset();
    } else if (!given) {
      input_trouble_ = tr("'%1' is no number.").arg(text);
    } else if (const auto valid = TestedLnRatio(*given); !valid) {
      input_trouble_ = Wording::Engine(valid.error().message);
    } else if (!*to || text != Formats::Ratio(**to)) {
      *to = *given;
    }
  };
  Support& support = request_.supports.front();
  if (field == "cupBottom") {
    cup_length(&cup_.bottom_diameter_mm);
  } else if (field == "cupTop") {
    cup_length(&cup_.top_diameter_mm);
  } else if (field == "cupHeight") {
    cup_length(&cup_.height_mm);
  } else if (field == "mediumFlow") {
    flow(&medium_flow_);
  } else if (field == "lastFlow") {
    flow(&last_flow_);
  } else if (field == "technique") {
    const int row = value.toInt();
    if (row >= 0 && row < static_cast<int>(practice_.techniques.size())) {
      request_.technique = practice_.techniques[static_cast<std::size_t>(row)];
    }
  } else if (field == "shape") {
    support.shape =
        value.toInt() == 1 ? SupportShape::kRound : SupportShape::kRectangle;
    if (support.width_mm <= 0.0) support.width_mm = support.length_mm;
  } else if (field == "length") {
    length(&support.length_mm);
  } else if (field == "width") {
    length(&support.width_mm);
  } else if (field == "depth") {
    length(&support.depth_mm);
  } else if (field == "edges") {
    support.edges = value.toBool();
  } else if (field == "follow") {
    follow_ = value.toBool();
  } else if (field == "byWeight") {
    request_.medium.by = value.toBool() ? PartsBy::kWeight : PartsBy::kVolume;
  } else if (field == "baseParts") {
    number(1.0, &request_.medium.base_parts);
  } else if (field == "varnishParts") {
    number(1.0, &request_.medium.varnish_parts);
  } else if (field == "reserve") {
    number(0.01, &request_.reserve_share);
  } else if (field == "waste") {
    number(0.01, &request_.waste_share);
  } else if (field == "water") {
    number(0.01, &request_.water_share);
  } else if (field == "count" || field == "tests") {
    bool whole = false;
    const int given = QLocale().toInt(text, &whole);
    if (!whole) {
      input_trouble_ = tr("'%1' is no whole number.").arg(text);
    } else {
      (field == "count" ? support.count : request_.tests_per_cup) = given;
    }
  }
  Work();
}

QVariantMap Planner::amounts() const {
  const Technique& technique = request_.technique;
  const Formats units = Units();
  return {{"base", units.CoverInput(technique.base_ml_per_m2.start)},
          {"colours", units.CoverInput(technique.colours_ml_per_m2.start)},
          {"activator", units.CoverInput(technique.activator_ml_per_m2.start)},
          {"own", technique.source == Source::kArtist}};
}

void Planner::keepAmounts(const QString& base,
                          const QString& colours,
                          const QString& activator) {
  input_trouble_.clear();
  Technique technique = request_.technique;
  const auto take = [&](const QString& text, Span* span) {
    if (text == Units().CoverInput(span->start)) return;
    const std::optional<double> given = Units().CoverFromInput(text);
    if (given) {
      *span = Spread(*span, *given);
    } else {
      input_trouble_ = tr("'%1' is no number.").arg(text);
    }
  };
  take(base, &technique.base_ml_per_m2);
  take(colours, &technique.colours_ml_per_m2);
  take(activator, &technique.activator_ml_per_m2);
  if (input_trouble_.isEmpty()) {
    Result<WorkshopStore> store = WorkshopStore::Open(
        StorePath().toStdString(), WorkshopStore::Access::kWrite);
    const Result<void> kept =
        store ? store->KeepTechnique(technique, Now()) : store.error();
    if (!kept) input_trouble_ = Wording::Engine(kept.error().message);
  }
  ReadBook();
  Work();
}

void Planner::dropAmounts() {
  input_trouble_.clear();
  Result<WorkshopStore> store = WorkshopStore::Open(
      StorePath().toStdString(), WorkshopStore::Access::kWrite);
  const Result<void> dropped =
      store ? store->DropTechnique(request_.technique.name, Now())
            : store.error();
  if (!dropped) input_trouble_ = Wording::Engine(dropped.error().message);
  ReadBook();
  Work();
}

QVariantList Planner::colours() const {
  QVariantList list;
  for (const PlannedPaint& paint : request_.colours) {
    const auto body = std::find(kBodies.begin(), kBodies.end(), paint.body);
    list << QVariantMap{{"name", Text(paint.name)},
                        {"share", Formats::Number(paint.share, 2)},
                        {"body", static_cast<int>(body - kBodies.begin())}};
  }
  return list;
}

QStringList Planner::bodies() const {
  return {
      tr("heavy body"), tr("soft body"), tr("fluid"), tr("ink"), tr("powder")};
}

void Planner::addColour(const QString& name) {
  input_trouble_.clear();
  PlannedPaint paint;
  paint.name = name.trimmed().toStdString();
  if (paint.name.empty()) return;
  request_.colours.push_back(std::move(paint));
  Work();
}

void Planner::setColour(int row, const QString& field, const QVariant& value) {
  if (row < 0 || row >= static_cast<int>(request_.colours.size())) return;
  input_trouble_.clear();
  PlannedPaint& paint = request_.colours[static_cast<std::size_t>(row)];
  if (field == "share") {
    const std::optional<double> share =
        Formats::NumberFromInput(value.toString());
    if (share) {
      paint.share = *share;
    } else {
      input_trouble_ = tr("'%1' is no number.").arg(value.toString());
    }
  } else if (field == "body") {
    const int body = value.toInt();
    if (body >= 0 && body < static_cast<int>(kBodies.size())) {
      paint.body = kBodies[static_cast<std::size_t>(body)];
      paint.material =
          paint.body == PaintBody::kPowder ? kPowderPigment : kArtistPaint;
    }
  }
  Work();
}

void Planner::removeColour(int row) {
  if (row < 0 || row >= static_cast<int>(request_.colours.size())) return;
  request_.colours.erase(request_.colours.begin() + row);
  Work();
}

void Planner::putOnBench() {
  if (!report_) return;
  PourPlan plan = report_->plan;
  for (PlannedCup& cup : plan.cups) {
    // One that she has not named is called so in her language.
    cup.name = Wording::Engine(cup.name).toStdString();
  }
  board_->PutPlanned(plan);
}

void Planner::takeFromBench() {
  for (const BoardCup& cup : board_->State().cups) {
    PlannedPaint paint;
    paint.name = cup.details.label;
    paint.brand = cup.details.paint.brand;
    if (cup.base_coat) {
      request_.base_coat.name = paint.name;
      request_.base_coat.brand = paint.brand;
    } else if (cup.details.role == CupRole::kColour &&
               std::none_of(request_.colours.begin(),
                            request_.colours.end(),
                            [&](const PlannedPaint& known) {
                              return known.name == paint.name;
                            })) {
      request_.colours.push_back(std::move(paint));
    }
  }
  Work();
}

QString Planner::summary() const {
  if (!report_) return {};
  const PourPlan& plan = report_->plan;
  return tr("%1 of paint on %2: %3 wet, %4 dry.")
      .arg(Units().Volume(plan.on_support_ml),
           Units().Area(plan.face_m2 + plan.edge_m2),
           Units().Thickness(plan.wet_mm.start),
           Units().Thickness(plan.dry_mm.start));
}

QString Planner::source() const {
  if (!report_) return {};
  const PourPlan& plan = report_->plan;
  if (plan.learned.told) {
    return tr("From your own pours: %n so far, which took %1 times what was "
              "planned (%2 to %3).",
              nullptr,
              plan.learned.pours)
        .arg(Formats::Ratio(plan.learned.factor),
             Formats::Ratio(plan.learned.interval.low),
             Formats::Ratio(plan.learned.interval.high));
  }
  QString from = planned_.technique.source == Source::kArtist
                     ? tr("Your own amounts for this technique.")
                     : tr("Our guess to begin with; change it as you "
                          "know better.");
  if (plan.learned.pours == 0) return from;
  return from + " " +
         tr("Too few pours to tell how much yours take: %n of three.",
            nullptr,
            plan.learned.pours);
}

bool Planner::filmHolds() const {
  return report_ && report_->plan.film.verdict != FilmVerdict::kNotCredible;
}

QString Planner::film() const {
  if (!report_) return {};
  const PourPlan& plan = report_->plan;
  switch (plan.film.verdict) {
    case FilmVerdict::kStays:
      return tr("The film stays while you tilt.");
    case FilmVerdict::kRunsOff:
      return tr("While you tilt, %1 to %2 of it run off: the more, the thinner "
                "the paint.")
          .arg(Formats::Percent(plan.film.runs_off.low),
               Formats::Percent(plan.film.runs_off.high));
    case FilmVerdict::kNotCredible:
      return tr("Too much: more than half of it runs off a tilted canvas.");
  }
  return {};
}

QVariantList Planner::cups() const {
  QVariantList list;
  if (!report_) return list;
  const Formats units = Units();
  for (const PlannedCup& cup : report_->plan.cups) {
    QStringList parts;
    const auto part = [&](const QString& what, const Portion& portion) {
      if (portion.volume_ml > 0.0) {
        parts << tr("%1 of %2 (%3)")
                     .arg(units.Volume(portion.volume_ml),
                          what,
                          units.Weight(portion.mass_g()));
      }
    };
    part(tr("paint"), cup.paint);
    part(tr("medium"), cup.medium);
    part(tr("flow additive"), cup.additive);
    QStringList how{parts.join(QStringLiteral(", "))};
    if (cup.left_over_ml > 0.0) {
      how << tr("%1 from the shelf").arg(units.Volume(cup.left_over_ml));
    }
    if (cup.reserve_ml > 0.0) {
      how << tr("keep %1 back unthinned").arg(units.Volume(cup.reserve_ml));
    }
    const QString role =
        Wording::Role(cup.role == PourRole::kBaseCoat ? CupRole::kBaseCoat
                      : cup.role == PourRole::kColour ? CupRole::kColour
                                                      : CupRole::kActivator);
    list << QVariantMap{
        {"title",
         tr("%1 (%2): %3, %4")
             .arg(Text(cup.name),
                  role,
                  units.Volume(cup.mix_ml),
                  units.Weight(cup.mix_ml * cup.blend.density_g_per_ml))},
        {"how", how.join(QStringLiteral(" · "))},
        {"remark", Wording::Engine(cup.remark)}};
  }
  return list;
}

QStringList Planner::medium() const {
  QStringList lines;
  if (!report_ || !(report_->plan.medium.volume_ml > 0.0)) return lines;
  const PourPlan& plan = report_->plan;
  const Formats units = Units();
  lines << tr("Make %1: %2 of base (%3) and %4 of varnish (%5).")
               .arg(units.Volume(plan.medium.volume_ml),
                    units.Volume(plan.medium.base.volume_ml),
                    units.Weight(plan.medium.base.mass_g()),
                    units.Volume(plan.medium.varnish.volume_ml),
                    units.Weight(plan.medium.varnish.mass_g()));
  if (plan.medium_left_over_ml > 0.0) {
    lines << tr("%1 more come from the shelf.")
                 .arg(units.Volume(plan.medium_left_over_ml));
  }
  MediumRequest request;
  request.recipe = planned_.medium;
  request.volume_ml = plan.medium.volume_ml;
  if (cup_.height_mm > 0.0) {
    Container cup = cup_;
    // One diameter alone is a cup with straight walls.
    if (cup.bottom_diameter_mm <= 0.0) {
      cup.bottom_diameter_mm = cup.top_diameter_mm;
    }
    if (cup.top_diameter_mm <= 0.0) {
      cup.top_diameter_mm = cup.bottom_diameter_mm;
    }
    if (const Result<void> fits = Validate(cup); !fits) {
      lines << Wording::Engine(fits.error().message);
    } else if (const double full_ml = ContainerVolumeMl(cup, cup.height_mm);
               full_ml < plan.medium.volume_ml) {
      lines << tr("This cup holds only %1: take a larger one, or make it in "
                  "turns.")
                   .arg(units.Volume(full_ml));
    } else {
      request.container = cup;
      request.fill_mm = FillHeightMm(cup, plan.medium.volume_ml);
      request.volume_ml.reset();
    }
  }
  double with_medium_ml = 0.0;
  double medium_in_cups_ml = 0.0;
  for (const PlannedCup& cup : plan.cups) {
    if (!(cup.medium.volume_ml > 0.0)) continue;
    with_medium_ml += cup.mix_ml;
    medium_in_cups_ml += cup.medium.volume_ml;
  }
  request.medium_share = medium_in_cups_ml / with_medium_ml;
  if (medium_flow_) request.ln_ratio = *TestedLnRatio(*medium_flow_);
  if (last_flow_) request.last_ln_ratio = *TestedLnRatio(*last_flow_);
  const Result<MediumReport> medium = PlanMedium(request);
  if (medium && medium->base_mark_mm && medium->full_mark_mm) {
    lines << tr("In this cup: base up to %1 %3, then varnish up to %2 %3, "
                "measured inside from the bottom.")
                 .arg(units.LengthInput(*medium->base_mark_mm),
                      units.LengthInput(*medium->full_mark_mm),
                      units.LengthUnit());
  }
  lines << tr("Fold it, strain it, let it rest, and test it once like a cup.");
  if (medium && !medium->rest.empty()) {
    const RestTime& rest = medium->rest.front();
    lines << tr("Bubbles of %1 need at least %2 to %3 minutes to rise, the "
                "thicker the longer; small ones hours.")
                 .arg(units.Thickness(rest.bubble_mm),
                      Formats::Number(rest.minutes.low, 0),
                      Formats::Number(rest.minutes.high, 0));
  }
  if (medium && medium->cup_factor) {
    lines << tr("By its own flow a usual cup, %1 of it medium, starts %2 times "
                "as thick as with the last batch (%3 to %4).")
                 .arg(Formats::Percent(request.medium_share),
                      Formats::Ratio(*medium->cup_factor),
                      Formats::Ratio(medium->cup_factor_interval.low),
                      Formats::Ratio(medium->cup_factor_interval.high));
  }
  if (medium) {
    for (const std::string& note : medium->notes) {
      lines << Wording::Engine(note);
    }
  }
  return lines;
}

Planner::SupplySlot Planner::SlotOf(const Supply& supply) {
  if (supply.name == "base of the medium") {
    return {&request_.medium_base_at_hand_ml, &request_.medium_base_price};
  }
  if (supply.name == "varnish of the medium") {
    return {&request_.medium_varnish_at_hand_ml,
            &request_.medium_varnish_price};
  }
  if (supply.name == "flow additive") {
    return {&request_.additive_at_hand_ml, &request_.additive_price};
  }
  const auto is = [&](const PlannedPaint& paint) {
    return supply.name ==
           (paint.brand.empty() ? paint.name : paint.brand + " " + paint.name);
  };
  if (is(request_.base_coat)) {
    return {&request_.base_coat.at_hand_ml, &request_.base_coat.price};
  }
  for (PlannedPaint& colour : request_.colours) {
    if (is(colour)) return {&colour.at_hand_ml, &colour.price};
  }
  return {};
}

QVariantList Planner::supplies() const {
  QVariantList list;
  if (!report_) return list;
  const Formats units = Units();
  auto* self = const_cast<Planner*>(this);  // the slots are only read here
  for (const Supply& supply : report_->plan.supplies) {
    const SupplySlot slot = self->SlotOf(supply);
    const Price* price =
        slot.price != nullptr && *slot.price ? &**slot.price : nullptr;
    QString buy = supply.buy_ml > 0.0
                      ? tr("buy %1").arg(units.Volume(supply.buy_ml))
                      : tr("enough");
    if (supply.containers && supply.buy_cost && *supply.containers > 0) {
      buy = tr("buy %n container(s) for %1", nullptr, *supply.containers)
                .arg(Formats::Number(*supply.buy_cost, 2));
    }
    list << QVariantMap{
        {"name", Wording::Engine(supply.name)},
        {"needed",
         tr("%1 (%2)").arg(units.Volume(supply.needed_ml),
                           units.Weight(supply.needed_g))},
        {"atHand",
         supply.at_hand_ml > 0.0 ? units.VolumeInput(supply.at_hand_ml)
                                 : QString()},
        {"container",
         price != nullptr ? units.VolumeInput(price->container_ml) : QString()},
        {"price",
         price != nullptr ? Formats::Number(price->price, 2) : QString()},
        {"buy", buy}};
  }
  return list;
}

void Planner::setSupply(int row, const QString& field, const QString& text) {
  if (!report_ || row < 0 ||
      row >= static_cast<int>(report_->plan.supplies.size())) {
    return;
  }
  input_trouble_.clear();
  const SupplySlot slot =
      SlotOf(report_->plan.supplies[static_cast<std::size_t>(row)]);
  if (slot.at_hand_ml == nullptr) return;
  const bool empty = text.trimmed().isEmpty();
  const std::optional<double> given = field == "price"
                                          ? Formats::NumberFromInput(text)
                                          : Units().VolumeFromInput(text);
  if (!given && !empty) {
    input_trouble_ = tr("'%1' is no number.").arg(text);
  } else if (field == "atHand") {
    *slot.at_hand_ml = given.value_or(0.0);
  } else if (empty) {
    slot.price->reset();
  } else {
    Price price = slot.price->value_or(Price{1000.0, 0.0});
    (field == "price" ? price.price : price.container_ml) = *given;
    *slot.price = price;
  }
  Work();
}

QString Planner::cost() const {
  if (!report_) return {};
  if (report_->plan.cost_per_picture) {
    return tr("A picture costs %1 in paint.")
        .arg(Formats::Number(*report_->plan.cost_per_picture, 2));
  }
  return tr(
      "What a picture costs is known once every supply has a container "
      "and a price.");
}

QStringList Planner::notes() const {
  QStringList list;
  if (!report_) return list;
  for (const std::string& note : report_->plan.notes) {
    list << Wording::Engine(note);
  }
  return list;
}

QStringList Planner::cautions() const {
  QStringList list;
  if (!report_) return list;
  for (const std::string& caution : report_->cautions) {
    list << Wording::Engine(caution);
  }
  return list;
}

QVariantList Planner::shelf() const {
  QVariantList list;
  for (const ShelfJar& jar : UseFirst(practice_.shelf)) {
    const JarState state = StateOfJar(jar.jar, Today());
    const Day until = HowLongItKeeps(jar.jar.mixed, jar.jar.watered).discard;
    const QDate day = QDate::fromString(Text(FormatDay(until)), Qt::ISODate);
    list << QVariantMap{
        {"jar", static_cast<qint64>(jar.id)},
        {"name", Text(jar.jar.name)},
        {"volume", Units().Volume(jar.jar.volume_ml)},
        {"due", state != JarState::kGood},
        {"state",
         state == JarState::kGood
             ? tr("keeps until %1")
                   .arg(QLocale().toString(day, QLocale::ShortFormat))
         : state == JarState::kUseFirst
             ? tr("use it first, by %1")
                   .arg(QLocale().toString(day, QLocale::ShortFormat))
             : tr("overdue: smell, strain and test it, or throw it away")}};
  }
  return list;
}

QString Planner::putOnShelf(const QString& name,
                            int role,
                            const QString& volume,
                            bool watered) {
  const std::optional<double> ml = Units().VolumeFromInput(volume);
  if (!ml) return tr("'%1' is no number.").arg(volume);
  ShelfJar jar;
  jar.jar = {name.trimmed().toStdString(), *ml, Today(), watered};
  jar.medium = role == 3;
  jar.role = role == 1   ? PourRole::kBaseCoat
             : role == 2 ? PourRole::kActivator
                         : PourRole::kColour;
  Result<WorkshopStore> store = WorkshopStore::Open(
      StorePath().toStdString(), WorkshopStore::Access::kWrite);
  if (!store) return Wording::Engine(store.error().message);
  const Result<JarId> put = store->PutOnShelf(jar, Now());
  if (!put) return Wording::Engine(put.error().message);
  ReadBook();
  Work();
  return {};
}

void Planner::takeJar(qint64 jar) {
  for (const ShelfJar& each : practice_.shelf) {
    if (each.id != jar) continue;
    Result<WorkshopStore> store = WorkshopStore::Open(
        StorePath().toStdString(), WorkshopStore::Access::kWrite);
    const double ml = each.jar.volume_ml;
    if (store && store->TakeFromJar(jar, ml, Now())) taken_ = {jar, ml};
    break;
  }
  ReadBook();
  Work();
}

void Planner::putBack() {
  if (!taken_) return;
  Result<WorkshopStore> store = WorkshopStore::Open(
      StorePath().toStdString(), WorkshopStore::Access::kWrite);
  if (store && store->TakeFromJar(taken_->first, -taken_->second, Now())) {
    taken_.reset();
  }
  ReadBook();
  Work();
}

bool Planner::keepPlan(const QUrl& file) {
  const Result<void> written =
      WriteWhole(file.toLocalFile().toStdString(),
                 PlanRequestDocument(request_).dump(2) + '\n');
  input_trouble_ =
      written ? QString() : Wording::Engine(written.error().message);
  emit changed();
  return written.has_value();
}

}  // namespace flowkin
