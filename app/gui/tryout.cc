#include "app/gui/tryout.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

namespace flowkin {
namespace {

QString FindSamples(const QString& given) {
  const QString beside = QCoreApplication::applicationDirPath();
  const QStringList places =
      given.isEmpty() ? QStringList{beside + "/../share/flowkin/sample-clips",
                                    beside + "/../../sample-clips",
                                    beside + "/sample-clips"}
                      : QStringList{given};
  for (const QString& place : places) {
    if (QFileInfo::exists(place + "/manifest.json")) {
      return QDir(place).absolutePath();
    }
  }
  return {};
}

}  // namespace

Tryout::Tryout(const QString& folder,
               BenchBoard* board,
               ClipQueue* clips,
               QObject* parent)
    : QObject(parent),
      folder_(FindSamples(folder)),
      board_(board),
      clips_(clips) {
  connect(clips_, &ClipQueue::changed, this, &Tryout::changed);
  connect(board_, &BenchBoard::changed, this, &Tryout::changed);
}

bool Tryout::busy() const { return step_ > 0 && clips_->busy(); }

bool Tryout::AddCup(const QString& name,
                    const QString& brand,
                    int role,
                    const QString& swatch) {
  QVariantMap form = board_->form(-1);
  form["name"] = name;
  form["brand"] = brand;
  form["role"] = role;
  form["swatch"] = swatch;
  form["volume"] = board_->Units().VolumeInput(120.0);
  return board_->keep(-1, form).isEmpty();
}

void Tryout::Film(const QStringList& files) {
  const std::optional<CupId> cup = board_->ChosenCup();
  for (const QString& file : files) {
    clips_->Add(folder_ + "/stream/" + file, cup, {});
  }
}

void Tryout::goOn() {
  if (!possible() || busy()) return;
  ++step_;
  switch (step_) {
    case 1:
      board_->newSession(tr("First try with sample clips"));
      if (AddCup("Dune", "Quillmere", 0, "#cdb58f")) {
        Film({"base-a.mp4", "base-b.mp4", "base-c.mp4"});
      }
      break;
    case 2:
      if (AddCup("Basalt", "Ostrelle", 1, "#7d8083")) Film({"basalt.mp4"});
      break;
    case 3:
      board_->addedAsSaid();
      break;
    case 4:
      if (AddCup("Lagoon", "Quillmere", 1, "#1f7a7a")) Film({"lagoon.mp4"});
      break;
    case 5:
      if (AddCup("Gullfeather", "Ostrelle", 1, "#f4f2ea")) {
        Film({"gullfeather.mp4"});
      }
      break;
    default:
      step_ = 0;
      break;
  }
  emit changed();
}

void Tryout::leave() {
  step_ = 0;
  emit changed();
}

QString Tryout::headline() const {
  if (!possible()) return tr("The sample clips are not installed.");
  switch (step_) {
    case 0:
      return tr("One round without paint, two minutes");
    case 1:
      return busy() ? tr("Three films of the base coat are measured …")
                    : tr("The base coat is known.");
    case 2:
      return busy() ? tr("A film of the cup Basalt is measured …")
                    : board_->chosenName() + ": " + board_->step();
    case 3:
      return tr("The water is written down.");
    case 4:
      return busy() ? tr("A film of the cup Lagoon is measured …")
                    : board_->chosenName() + ": " + board_->step();
    default:
      return busy() ? tr("A film of the cup Gullfeather is measured …")
                    : board_->glance();
  }
}

QString Tryout::text() const {
  switch (step_) {
    case 0:
      return tr(
          "The sample clips show a stick lifted out of paint, the "
          "stream running off it and breaking. You will see how a cup "
          "is compared with the base coat and what is said about it. "
          "Nothing is asked of you but one button.");
    case 1:
      return tr(
          "Every cup is compared with the base coat. Three films tell "
          "how evenly the hand repeats.");
    case 2:
      return tr(
          "On the bench, the bar between two ends shows what the film "
          "allows, the bead above it the best guess, the gate in the "
          "middle a match. "
          "This cup lies on the thick side. The first addition is small "
          "on purpose: water cannot be taken out again.");
    case 3:
      return tr(
          "Stirred one minute, the cup would now be filmed again, and "
          "so on until it matches. The next cup shows what that looks "
          "like near the end.");
    case 4:
      return tr(
          "This cup is close. One film leaves open which side it is on, "
          "so no water is added on it; a second or third film decides.");
    default:
      return tr(
          "All cups stand on the bench now. The line at the top says "
          "whether everything may be poured, and if not, which cup "
          "holds it back. Your own bench is untouched; this round keeps "
          "to a session of its own.");
  }
}

QString Tryout::buttonText() const {
  switch (step_) {
    case 0:
      return tr("Film the base coat");
    case 1:
      return tr("Film a cup");
    case 2:
      return tr("Added");
    case 3:
      return tr("Film the next cup");
    case 4:
      return tr("One more cup");
    default:
      return tr("To the bench");
  }
}

}  // namespace flowkin
