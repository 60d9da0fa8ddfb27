#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>

#include "app/gui/formats.h"
#include "app/usecases/bench.h"

namespace flowkin {

/// Sentences of the bench in the artist's language, from the data of the
/// use-cases. Words of the trade only; units through Formats.
class Wording {
  Q_DECLARE_TR_FUNCTIONS(Wording)

 public:
  explicit Wording(const Formats& formats) : formats_(formats) {}

  /// "Add 12 drops of water, stir one minute, film again."
  QString Step(const BoardCup& cup) const;
  /// Why, one short sentence; empty where the step speaks for itself.
  QString Reason(const BoardCup& cup) const;
  /// "12 drops of water" or "2.25 mL of water".
  QString Amount(const NextStep& step) const;
  /// One word or two: "match", "thicker", "not filmed yet", "base coat".
  static QString Verdict(const BoardCup& cup);
  /// "1.81 (1.49 to 2.30)"; "was …" once something was added; empty without
  /// one.
  static QString Ratio(const BoardCup& cup);
  static QString Role(CupRole role);
  static QString Test(TestKind kind);
  /// With its article, as what is filmed: "the stream".
  static QString FilmedTest(TestKind kind);
  static QString Event(TestEvent event);
  /// After an amount: "of water".
  static QString OfThinner(ThinnerKind kind);
  /// "2 films, one more wanted".
  static QString Films(const BoardCup& cup);
  /// What a film showed, one line: "lift to break 3.45 s".
  static QString Summary(const FlowMeasurement& test);
  /// "12.3 cells on a cm² (10.1 to 14.9), half larger than 2.25 mm (2 to 2.5)".
  static QString Counted(const CellsCounted& cells);
  /// The line over all cups.
  QString Glance(const Board& board) const;
  QString GlanceDetail(const Board& board) const;
  /// What the engine says, a whole English sentence, in her language where it
  /// is known; numbers and names in it are taken over into the translation.
  static QString Engine(const std::string& sentence);

 private:
  Formats formats_;
};

}  // namespace flowkin
