#pragma once

#include <QAbstractListModel>
#include <QColor>
#include <QStringList>
#include <QTimer>
#include <QUrl>
#include <QVariantMap>
#include <QtQmlIntegration>
#include <memory>
#include <optional>

#include "app/gui/preferences.h"
#include "app/gui/wording.h"
#include "app/usecases/batch_label.h"
#include "app/usecases/bench.h"
#include "core/planning/pour_plan.h"

namespace flowkin {

/// The cups on the bench as a list model, what is to be done next, and the
/// artist's actions. Everything is in the store when an action returns.
class BenchBoard : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString glance READ glance NOTIFY changed)
  Q_PROPERTY(QString glanceDetail READ glanceDetail NOTIFY changed)
  Q_PROPERTY(bool mayPour READ mayPour NOTIFY changed)
  Q_PROPERTY(bool empty READ empty NOTIFY changed)
  Q_PROPERTY(bool hasBaseCoat READ hasBaseCoat NOTIFY changed)
  /// Row of the chosen cup, -1 for none.
  Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY changed)
  /// Row of the cup to treat next, -1 for none.
  Q_PROPERTY(int next READ next NOTIFY changed)
  Q_PROPERTY(QString chosenName READ chosenName NOTIFY changed)
  Q_PROPERTY(QString step READ step NOTIFY changed)
  Q_PROPERTY(QString why READ why NOTIFY changed)
  /// "film", "add", "putBack", "volume", "learn" or empty: what the large
  /// button does.
  Q_PROPERTY(QString action READ action NOTIFY changed)
  Q_PROPERTY(QString actionText READ actionText NOTIFY changed)
  /// Name and value alternate: what lies behind the chosen cup's card.
  Q_PROPERTY(QStringList details READ details NOTIFY changed)
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
  Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed)
  Q_PROPERTY(QString sessionName READ sessionName NOTIFY changed)
  Q_PROPERTY(QStringList sessions READ sessions NOTIFY changed)
  Q_PROPERTY(int sessionRow READ sessionRow NOTIFY changed)
  Q_PROPERTY(QString room READ room NOTIFY changed)
  Q_PROPERTY(QString roomUnit READ roomUnit NOTIFY changed)
  Q_PROPERTY(QString volumeUnit READ volumeUnit NOTIFY changed)
  Q_PROPERTY(QStringList cupNames READ cupNames NOTIFY changed)
  /// The same after a first line that leaves it open.
  Q_PROPERTY(QStringList cupChoices READ cupChoices NOTIFY changed)
  /// "stream", "level", "puddle": the test of this bench, by number.
  Q_PROPERTY(int test READ test WRITE setTest NOTIFY changed)
  /// 0 mL, 1 drops, 2 pump strokes.
  Q_PROPERTY(int doseUnit READ doseUnit WRITE setDoseUnit NOTIFY changed)
  /// The last thing that went wrong, one sentence; empty if nothing did.
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

 public:
  enum Role {
    kName = Qt::UserRole + 1,
    kCupRole,
    kPaint,
    kSwatch,
    kHasSwatch,
    kVerdict,      ///< "match", "thicker", ..., "none", "base"
    kVerdictWord,  ///< for the eye
    kRatio,
    kAt,  ///< places on the bar, 0 thin end to 1 thick end
    kLow,
    kHigh,
    kBandLow,
    kBandHigh,
    kFacts,  ///< films, water share, minutes since stirred
    kRecheck,
    kStep,
    kIsNext,
    kSpoken,
  };

  BenchBoard(const QString& store_path,
             Preferences* preferences,
             QObject* parent = nullptr);
  ~BenchBoard() override;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  QString glance() const;
  QString glanceDetail() const;
  bool mayPour() const { return board_.may_pour; }
  bool empty() const { return board_.cups.empty(); }
  bool hasBaseCoat() const { return board_.has_base_coat; }
  int chosen() const;
  void setChosen(int row);
  int next() const;
  QString chosenName() const;
  QString step() const;
  QString why() const;
  QString action() const;
  QString actionText() const;
  QStringList details() const;
  bool canUndo() const { return board_.can_undo; }
  bool canRedo() const { return board_.can_redo; }
  QString sessionName() const;
  QStringList sessions() const;
  int sessionRow() const;
  QString room() const;
  QString roomUnit() const;
  QString volumeUnit() const;
  QStringList cupNames() const;
  QStringList cupChoices() const;
  int test() const { return static_cast<int>(board_.settings.test); }
  void setTest(int kind);
  int doseUnit() const;
  void setDoseUnit(int unit);
  QString trouble() const { return trouble_; }

  /// What a form shows of the cup in `row`, or of a new one for -1: name,
  /// role (0 base coat, 1 colour, 2 activator), brand, colour, swatch, volume,
  /// target, reserve, thinner (0 water, 1 additive, 2 medium).
  Q_INVOKABLE QVariantMap form(int row) const;
  /// A new cup's form from what the code of a label gave, with "water" (mL that
  /// is in it besides) and "told" (what else the label says); or "trouble"
  /// alone.
  Q_INVOKABLE QVariantMap formOfLabel(const QString& code) const;
  /// The same from a photo of the label; of several labels their cups' names
  /// alone, as "several".
  Q_INVOKABLE QVariantMap formOfLabelPhoto(const QUrl& photo) const;
  /// Puts a cup on the bench for every label on the photo. Returns what is
  /// wrong, empty where it is done.
  Q_INVOKABLE QString keepLabels(const QUrl& photo);
  /// Puts a form's values on the bench; -1 adds a cup. Returns what is wrong
  /// with them, empty where it is done.
  Q_INVOKABLE QString keep(int row, const QVariantMap& form);
  Q_INVOKABLE void remove(int row);
  Q_INVOKABLE void chooseNext();
  /// The chosen cup's addition was made as advised.
  Q_INVOKABLE void addedAsSaid();
  /// `amount` of water, in her input units; false where it is no amount.
  Q_INVOKABLE bool addedOther(const QString& amount);
  Q_INVOKABLE void putBackAsSaid();
  Q_INVOKABLE void stirred();
  Q_INVOKABLE void learn();
  Q_INVOKABLE void undo();
  Q_INVOKABLE void redo();
  /// How many cups of the plan were put on the bench; those that are there
  /// already stay as they are.
  int PutPlanned(const PourPlan& plan);
  Q_INVOKABLE void newSession(const QString& name);
  Q_INVOKABLE void openSession(int row);
  Q_INVOKABLE bool setRoom(const QString& text);
  Q_INVOKABLE void forgetTrouble();

  const Board& State() const { return board_; }
  const Bench* bench() const { return bench_ ? &*bench_ : nullptr; }
  std::optional<CupId> ChosenCup() const;
  std::optional<CupId> CupAt(int row) const;
  const BoardCup* FindCup(CupId id) const;
  Wording Words() const;
  Formats Units() const { return Formats(preferences_->usUnits()); }
  /// True where it was recorded; else trouble() says why not.
  bool Record(CupId cup, const FilmedTest& test);
  bool SetAside(TestId test, bool aside);
  bool Correct(TestId test,
               TestEvent event,
               double at_s,
               const FlowMeasurement& remeasured);

 signals:
  void changed();
  /// One sentence worth saying aloud.
  void told(const QString& sentence);

 private:
  bool Done(const Result<void>& result);
  bool NeedSession();
  void Reload();
  QVariantMap FormOf(const CupDetails& details) const;
  QVariantMap FormOf(const BatchLabel& label) const;
  const BoardCup* Chosen() const;
  int RowOf(std::optional<CupId> id) const;

  Preferences* preferences_;
  std::optional<Bench> bench_;
  Board board_;
  std::vector<SessionLine> sessions_;
  std::optional<CupId> chosen_;
  QString trouble_;
  QTimer refresh_;
  int ticks_ = 0;
};

}  // namespace flowkin
