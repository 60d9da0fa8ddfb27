#pragma once

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QVariantList>
#include <QVariantMap>
#include <QtQmlIntegration>
#include <optional>

#include "app/gui/bench_board.h"
#include "app/gui/preferences.h"
#include "app/usecases/book_practice.h"
#include "app/usecases/make_medium.h"
#include "app/usecases/plan_pour.h"

namespace flowkin {

/// The plan of a pour: what goes in, as she writes it, and what it takes, by
/// the same use-case as `flowkin plan`. What goes in is kept in her settings.
class Planner : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  // What goes in, as numbers and texts for fields: "technique", "shape" (0
  // rectangle, 1 round), "length", "width", "depth", "count", "edges",
  // "baseParts", "varnishParts", "byWeight", "cupBottom", "cupTop", "cupHeight"
  // (of a cup to make medium in; empty for none), "mediumFlow", "lastFlow" (of
  // this and the last batch against the base coat; empty for none), "reserve",
  // "waste", "water", "tests", "follow" (take what the book knows).
  Q_PROPERTY(QVariantMap form READ form NOTIFY changed)
  Q_PROPERTY(QStringList techniques READ techniques NOTIFY changed)
  Q_PROPERTY(QString what READ what NOTIFY changed)
  /// "base", "colours", "activator" for fields; "own": hers, not the start.
  Q_PROPERTY(QVariantMap amounts READ amounts NOTIFY changed)
  /// Each with "name", "share", "body".
  Q_PROPERTY(QVariantList colours READ colours NOTIFY changed)
  Q_PROPERTY(QStringList bodies READ bodies NOTIFY changed)
  Q_PROPERTY(QString lengthUnit READ lengthUnit NOTIFY changed)
  Q_PROPERTY(QString coverUnit READ coverUnit NOTIFY changed)
  // What it takes.
  /// What is missing or wrong; empty where there is a plan.
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(bool planned READ planned NOTIFY changed)
  Q_PROPERTY(QString summary READ summary NOTIFY changed)
  Q_PROPERTY(QString source READ source NOTIFY changed)
  Q_PROPERTY(QString film READ film NOTIFY changed)
  Q_PROPERTY(bool filmHolds READ filmHolds NOTIFY changed)
  /// "title" (which cup, how much), "how", "remark".
  Q_PROPERTY(QVariantList cups READ cups NOTIFY changed)
  Q_PROPERTY(QStringList medium READ medium NOTIFY changed)
  /// "name", "needed", "atHand", "container", "price", "buy".
  Q_PROPERTY(QVariantList supplies READ supplies NOTIFY changed)
  Q_PROPERTY(QString cost READ cost NOTIFY changed)
  Q_PROPERTY(QStringList notes READ notes NOTIFY changed)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  // The shelf of left-overs: "jar", "name", "role", "volume", "state", "keeps".
  Q_PROPERTY(QVariantList shelf READ shelf NOTIFY changed)
  Q_PROPERTY(bool canPutBack READ canPutBack NOTIFY changed)

 public:
  Planner(const QString& store_path,
          Preferences* preferences,
          BenchBoard* board,
          QObject* parent = nullptr);

  QVariantMap form() const;
  QStringList techniques() const;
  QString what() const;
  QVariantMap amounts() const;
  QVariantList colours() const;
  QStringList bodies() const;
  QString lengthUnit() const { return Units().LengthUnit(); }
  QString coverUnit() const { return Units().CoverUnit(); }
  QString trouble() const;
  bool planned() const { return report_.has_value(); }
  QString summary() const;
  QString source() const;
  QString film() const;
  bool filmHolds() const;
  QVariantList cups() const;
  QStringList medium() const;
  QVariantList supplies() const;
  QString cost() const;
  QStringList notes() const;
  QStringList cautions() const;
  QVariantList shelf() const;
  bool canPutBack() const { return taken_.has_value(); }

  /// Reads the book anew; a plan without colours takes those of the bench.
  Q_INVOKABLE void visit();
  /// Sets one of the form's fields.
  Q_INVOKABLE void set(const QString& field, const QVariant& value);
  /// Amounts of her own for this technique; kept in the book.
  Q_INVOKABLE void keepAmounts(const QString& base,
                               const QString& colours,
                               const QString& activator);
  Q_INVOKABLE void dropAmounts();
  Q_INVOKABLE void addColour(const QString& name);
  Q_INVOKABLE void setColour(int row,
                             const QString& field,
                             const QVariant& value);
  Q_INVOKABLE void removeColour(int row);
  Q_INVOKABLE void takeFromBench();
  /// Puts the plan's cups on the bench.
  Q_INVOKABLE void putOnBench();
  /// Of a supply: "atHand", "container" or "price".
  Q_INVOKABLE void setSupply(int row,
                             const QString& field,
                             const QString& text);
  /// What is wrong, empty where the jar is on the shelf.
  Q_INVOKABLE QString putOnShelf(const QString& name,
                                 int role,
                                 const QString& volume,
                                 bool watered);
  Q_INVOKABLE void takeJar(qint64 jar);
  Q_INVOKABLE void putBack();
  /// The plan as a document that `flowkin plan --file` reads.
  Q_INVOKABLE bool keepPlan(const QUrl& file);

  /// Null without a plan.
  const PlanReport* Report() const { return report_ ? &*report_ : nullptr; }
  /// The request as it was planned, with what the book knew.
  const PlanRequest& Planned() const { return planned_; }

 signals:
  void changed();

 private:
  Formats Units() const { return Formats(preferences_->usUnits()); }
  QString StorePath() const;
  void ReadBook();
  void Work();
  /// Where a supply's numbers are kept in the request.
  struct SupplySlot {
    double* at_hand_ml = nullptr;
    std::optional<Price>* price = nullptr;
  };
  SupplySlot SlotOf(const Supply& supply);
  int TechniqueRow() const;

  QString store_path_;
  Preferences* preferences_;
  BenchBoard* board_;
  BookPractice practice_;
  PlanRequest request_;  ///< what she wrote
  bool follow_ = true;
  Container cup_;  ///< the medium is made in it; height 0: in any jug
  /// Ratios of this and the last batch of medium to the base coat, as tested.
  std::optional<double> medium_flow_, last_flow_;
  PlanRequest planned_;
  std::optional<PlanReport> report_;
  QString trouble_;
  QString input_trouble_;
  std::optional<std::pair<JarId, double>> taken_;
};

}  // namespace flowkin
