#include "app/gui/wording.h"

#include <QLocale>
#include <QStringList>
#include <cmath>
#include <string>
#include <vector>

#include "app/usecases/sentence.h"

namespace flowkin {
namespace {

QString Label(const BoardCup& cup) {
  return QString::fromStdString(cup.details.label);
}

}  // namespace

QString Wording::Test(TestKind kind) {
  switch (kind) {
    case TestKind::kStream:
      return tr("stream");
    case TestKind::kLevel:
      return tr("ribbon");
    case TestKind::kPuddle:
      return tr("puddle");
  }
  return {};
}

QString Wording::Event(TestEvent event) {
  switch (event) {
    case TestEvent::kLift:
      return tr("stick lifts");
    case TestEvent::kBreak:
      return tr("stream breaks");
    case TestEvent::kLaid:
      return tr("ribbon is laid");
    case TestEvent::kStart:
      return tr("puddle is poured");
  }
  return {};
}

QString Wording::Role(CupRole role) {
  switch (role) {
    case CupRole::kBaseCoat:
      return tr("base coat");
    case CupRole::kColour:
      return tr("colour");
    case CupRole::kActivator:
      return tr("activator");
  }
  return {};
}

QString Wording::FilmedTest(TestKind kind) {
  switch (kind) {
    case TestKind::kStream:
      return tr("the stream");
    case TestKind::kLevel:
      return tr("the ribbon");
    case TestKind::kPuddle:
      return tr("the puddle");
  }
  return {};
}

QString Wording::OfThinner(ThinnerKind kind) {
  switch (kind) {
    case ThinnerKind::kWater:
      return tr("of water");
    case ThinnerKind::kAdditive:
      return tr("of flow additive");
    case ThinnerKind::kMedium:
      return tr("of pouring medium");
  }
  return {};
}

QString Wording::Amount(const NextStep& step) const {
  const QString thinner = OfThinner(step.thinner);
  if (step.amount_units && step.unit) {
    const double units = *step.amount_units;
    const QString number = Formats::Number(units, 2);
    const QString name = QString::fromStdString(step.unit->name);
    if (name == "drop" && std::abs(units - std::round(units)) < 1e-6) {
      return tr("%n drop(s) %1", nullptr, static_cast<int>(std::lround(units)))
          .arg(thinner);
    }
    if (name == "pump stroke" && std::abs(units - std::round(units)) < 1e-6) {
      return tr("%n pump stroke(s) %1",
                nullptr,
                static_cast<int>(std::lround(units)))
          .arg(thinner);
    }
    return tr("%1 × %2 %3").arg(number, name, thinner);
  }
  return tr("%1 %2").arg(formats_.Volume(step.amount_ml.value_or(0.0)),
                         thinner);
}

QString Wording::Step(const BoardCup& cup) const {
  const NextStep& step = cup.step;
  const QString test = FilmedTest(step.test);
  const QString amount =
      step.amount_ml ? formats_.Volume(*step.amount_ml) : QString();
  switch (step.kind) {
    case StepKind::kNothing:
      return cup.base_coat ? tr("The base coat is ready.")
                           : tr("It matches. Leave it as it is.");
    case StepKind::kFilm:
      return step.films > 1
                 ? tr("Film %1 %n time(s).", nullptr, step.films).arg(test)
                 : tr("Film %1 once more.").arg(test);
    case StepKind::kStirAndFilm:
      return tr("Stir one minute, wait 15 seconds, film %1.").arg(test);
    case StepKind::kAdd:
      return tr("Add %1, stir one minute, film again.").arg(Amount(step));
    case StepKind::kPutReserveBack:
      return tr("Put %1 of the unthinned mix back, stir one minute, film "
                "again.")
          .arg(amount);
    case StepKind::kThicken:
      return tr(
          "Too thin: stir in thicker paint of this colour, a little at "
          "a time, film again.");
    case StepKind::kUseMedium:
      return tr("No more water: thin it further with pouring medium.");
    case StepKind::kUseFinerUnit:
      return step.amount_ml
                 ? tr("Measure finer: at most %1 at once.").arg(amount)
                 : tr("Stop here, or film it again to know it better.");
    case StepKind::kOtherThinner:
      return tr(
          "This liquid is hardly thinner than the base coat; use another.");
    case StepKind::kSayVolume:
      return tr("Say how much is in this cup.");
    case StepKind::kFilmBaseCoat:
      return tr("Film the base coat first.");
  }
  return {};
}

QString Wording::Reason(const BoardCup& cup) const {
  switch (cup.step.reason) {
    case StepReason::kNone:
      return {};
    case StepReason::kNoFilm:
      return tr("It has not been filmed yet.");
    case StepReason::kNewAddition:
      return tr("Something was added since the last film.");
    case StepReason::kTooFewFilms:
      return tr("A few films together tell more than one.");
    case StepReason::kUndecided:
      return tr("The films leave open which side it is on.");
    case StepReason::kDoubtful:
      return tr("The last film does not fit the others.");
    case StepReason::kNotComparable:
      return tr("Its films and those of the base coat do not compare.");
    case StepReason::kStood:
      return tr("Its last film is old; paint thickens as it stands.");
    case StepReason::kBaseCoatAged:
      return tr("The base coat was filmed more than two hours ago.");
    case StepReason::kRoomMoved:
      return tr("The room has become warmer or colder since the last film.");
    case StepReason::kThicker:
      return tr("It is thicker than it should be.");
    case StepReason::kThinner:
      return tr("It is thinner than it should be.");
  }
  return {};
}

QString Wording::Verdict(const BoardCup& cup) {
  if (cup.base_coat) return tr("base coat");
  if (cup.before_addition) return tr("film again");
  if (!cup.verdict) return tr("not compared yet");
  switch (*cup.verdict) {
    case MatchVerdict::kMatch:
      return tr("match");
    case MatchVerdict::kThicker:
      return tr("thicker");
    case MatchVerdict::kThinner:
      return tr("thinner");
    case MatchVerdict::kUndecided:
      return tr("not sure yet");
  }
  return {};
}

QString Wording::Ratio(const BoardCup& cup) {
  if (!cup.comparison || cup.comparison->outcome != Outcome::kMeasured) {
    return {};
  }
  const QString ratio = tr("%1 (%2 to %3)")
                            .arg(Formats::Ratio(cup.comparison->ratio.Ratio()),
                                 Formats::Ratio(cup.comparison->interval.low),
                                 Formats::Ratio(cup.comparison->interval.high));
  return cup.before_addition
             ? tr("was %1", "its ratio before the last addition").arg(ratio)
             : ratio;
}

QString Wording::Films(const BoardCup& cup) {
  QStringList parts;
  for (const FilmTally& tally : cup.films) {
    QString part =
        tr("%1: %n film(s)", nullptr, tally.counted).arg(Test(tally.test));
    if (tally.wanted_more > 0) {
      part += tr(", %n more", nullptr, tally.wanted_more);
    }
    parts << part;
  }
  return parts.join(" · ");
}

QString Wording::Summary(const FlowMeasurement& test) {
  if (test.outcome == Outcome::kRefused) return Engine(test.reason);
  switch (test.kind) {
    case TestKind::kStream:
      if (test.lift_s && test.break_s) {
        return tr("stream broke after %1")
            .arg(Formats::Seconds(*test.break_s - *test.lift_s));
      }
      return tr("stream measured");
    case TestKind::kLevel:
      return tr("ribbon levelled, measured");
    case TestKind::kPuddle:
      return tr("puddle spread, measured");
  }
  return {};
}

QString Wording::Counted(const CellsCounted& cells) {
  return tr("%1 cells on a cm² (%2 to %3), half larger than %4 mm "
            "(%5 to %6)")
      .arg(Formats::Ratio(cells.per_cm2),
           Formats::Ratio(cells.per_cm2_interval.low),
           Formats::Ratio(cells.per_cm2_interval.high),
           Formats::Ratio(cells.median_mm),
           Formats::Ratio(cells.median_mm_interval.low),
           Formats::Ratio(cells.median_mm_interval.high));
}

QString Wording::Glance(const Board& board) const {
  if (board.cups.empty()) return tr("Put the base coat on the bench.");
  if (!board.has_base_coat) return tr("The base coat is missing.");
  if (board.may_pour) return tr("All match: pour.");
  for (const BoardCup& cup : board.cups) {
    if (board.next_cup && cup.id == *board.next_cup) {
      return cup.base_coat ? tr("Base coat first: %1").arg(Label(cup))
                           : tr("%1 holds it back.").arg(Label(cup));
    }
  }
  return tr("Add the first colour.");
}

QString Wording::GlanceDetail(const Board& board) const {
  int matched = 0;
  int colours = 0;
  for (const BoardCup& cup : board.cups) {
    if (cup.base_coat) continue;
    ++colours;
    if (cup.matched) ++matched;
  }
  if (colours == 0) return {};
  return tr("%1 of %n cup(s) match", nullptr, colours).arg(matched);
}

QString Wording::Engine(const std::string& sentence) {
  QString whole = QCoreApplication::translate("engine", sentence.c_str());
  if (whole != QString::fromStdString(sentence)) return whole;
  const SentenceParts apart = TakeApart(sentence);
  if (apart.parts.empty() || apart.parts.size() > 9) return whole;
  QLocale locale;
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  std::vector<std::string> parts;
  for (const auto& [text, number] : apart.parts) {
    const std::size_t point = text.find('.');
    const std::size_t decimals =
        point == std::string::npos ? 0 : text.size() - point - 1;
    const QString hers =
        locale.toString(QString::fromStdString(text).toDouble(),
                        'f',
                        static_cast<int>(decimals));
    parts.push_back(number ? hers.toStdString() : text);
  }
  // English too is told with her numbers, unless it is not listed at all.
  return QString::fromStdString(
      PutTogether(QCoreApplication::translate("engine", apart.pattern.c_str())
                      .toStdString(),
                  parts));
}

}  // namespace flowkin
