#pragma once

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QVariantList>
#include <QVariantMap>
#include <QtQmlIntegration>
#include <functional>
#include <optional>

#include "app/gui/bench_board.h"
#include "app/gui/planner.h"
#include "app/gui/preferences.h"
#include "app/usecases/journal.h"

namespace flowkin {

/// The days at the bench: found, read, compared, and written to, by the same
/// use-cases as `flowkin journal`.
class JournalReader : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed)
  /// Each with "name" and "day", newest first.
  Q_PROPERTY(QVariantList days READ days NOTIFY changed)
  /// Row of the day that is open, -1 for none; of the one beside it.
  Q_PROPERTY(int chosen READ chosen NOTIFY changed)
  Q_PROPERTY(int beside READ beside NOTIFY changed)
  /// "name", "facts" (lines), "cups", "photos" ("found", "url", "text"),
  /// "faults"
  /// ("name", "causes" of "mark", "says", "evidence"), "notes", "poured".
  Q_PROPERTY(QVariantMap page READ page NOTIFY changed)
  Q_PROPERTY(QVariantMap other READ other NOTIFY changed)
  Q_PROPERTY(QStringList faults READ faults NOTIFY changed)
  Q_PROPERTY(QStringList learned READ learned NOTIFY changed)
  /// Each with "day" and "says".
  Q_PROPERTY(QVariantList reminders READ reminders NOTIFY changed)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  /// For the form of a pour: what the plan says, in her units.
  Q_PROPERTY(QString plannedText READ plannedText NOTIFY changed)
  Q_PROPERTY(QStringList cupNames READ cupNames NOTIFY changed)

 public:
  JournalReader(const QString& store_path,
                Preferences* preferences,
                BenchBoard* board,
                Planner* planner,
                QObject* parent = nullptr);

  QString words() const { return words_; }
  void setWords(const QString& words);
  QVariantList days() const;
  int chosen() const { return RowOf(chosen_); }
  int beside() const { return RowOf(beside_); }
  QVariantMap page() const { return page_; }
  QVariantMap other() const { return other_; }
  QStringList faults() const;
  QStringList learned() const { return learned_; }
  QVariantList reminders() const { return reminders_; }
  QStringList cautions() const { return cautions_; }
  QString trouble() const { return trouble_; }
  QString plannedText() const;
  QStringList cupNames() const;

  std::optional<SessionId> Chosen() const { return chosen_; }
  QString StorePath() const;
  Q_INVOKABLE void visit();
  Q_INVOKABLE void choose(int row);
  /// The day that is on the bench.
  Q_INVOKABLE void openToday();
  /// Lays another day beside the open one; the same row again takes it away.
  Q_INVOKABLE void compare(int row);
  /// 0 wet, 1 dry, 2 later.
  Q_INVOKABLE void addPhoto(const QUrl& file, int kind);
  Q_INVOKABLE void addFault(int fault, const QString& text);
  /// 0 good, 1 fair, 2 poor.
  Q_INVOKABLE void judge(int verdict, const QString& text);
  Q_INVOKABLE void note(const QString& text);
  /// "used", "humidity", "rested", "strained", "text" as written; the plan
  /// brings technique and amounts where `by_plan`.
  Q_INVOKABLE void pour(const QVariantMap& form, bool by_plan);
  /// 0 lacing, 1 none, 2 blob, 3 drowned; `cup` is a row of cupNames.
  Q_INVOKABLE void cells(int seen,
                         const QString& after_s,
                         const QString& parts,
                         int cup,
                         const QString& text);
  /// The same with the photo that it was counted on, if it was.
  void KeepCells(CellsTested test,
                 int seen,
                 const QString& after_s,
                 const QString& parts,
                 int cup,
                 const QString& text);
  Q_INVOKABLE void takeBack();

 signals:
  void changed();

 private:
  Formats Units() const { return Formats(preferences_->usUnits()); }
  int RowOf(std::optional<SessionId> id) const;
  void Read();
  /// "what: more", or `what` alone.
  static QString Line(const QString& what, const QString& more);
  QVariantMap PageOf(const JournalPage& page) const;
  void Write(const std::function<Result<void>(Bench& bench)>& verb);

  QString store_path_;
  Preferences* preferences_;
  BenchBoard* board_;
  Planner* planner_;
  QString words_;
  std::vector<SessionLine> lines_;
  std::optional<SessionId> chosen_;
  std::optional<SessionId> beside_;
  std::vector<std::pair<CupId, std::string>> cups_;  ///< of the open day
  QVariantMap page_;
  QVariantMap other_;
  QStringList learned_;
  QVariantList reminders_;
  QStringList cautions_;
  QString trouble_;
};

}  // namespace flowkin
