#include "app/gui/last_check.h"

#include <QVariantMap>

#include "app/usecases/journal.h"

namespace flowkin {

LastCheck::LastCheck(BenchBoard* board, QObject* parent)
    : QObject(parent), board_(board) {}

void LastCheck::look() {
  risks_.clear();
  cautions_.clear();
  not_known_.clear();
  const Result<ReadyReport> report = CheckTable(FactsOfBoard(board_->State()));
  ready_ = report && report->readiness.ready;
  if (!report) {
    headline_ = Wording::Engine(report.error().message);
    emit changed();
    return;
  }
  headline_ = ready_ ? tr("Nothing measured holds the pour back.")
                     : tr("Do not pour yet.");
  for (const Risk& risk : report->readiness.risks) {
    QString basis;
    switch (risk.basis) {
      case Basis::kMeasured:
        basis = tr("measured");
        break;
      case Basis::kDerived:
        basis = tr("follows from what was measured");
        break;
      case Basis::kCommonPractice:
        basis = tr("told by many, published by none");
        break;
    }
    const QString says = Wording::Engine(risk.says);
    risks_ << QVariantMap{
        {"stops", risk.holds_back},
        {"line",
         risk.cup.empty()
             ? says
             : tr("%1: %2").arg(QString::fromStdString(risk.cup), says)},
        {"says", says},
        {"evidence", tr("%1: %2").arg(basis, Wording::Engine(risk.evidence))}};
  }
  QStringList missing;
  for (const std::string& fact : report->readiness.not_known) {
    missing << Wording::Engine(fact);
  }
  if (!missing.isEmpty()) {
    not_known_ = tr("Not known: %1.").arg(missing.join(QStringLiteral(", ")));
  }
  for (const std::string& caution : report->cautions) {
    cautions_ << Wording::Engine(caution);
  }
  emit changed();
}

}  // namespace flowkin
