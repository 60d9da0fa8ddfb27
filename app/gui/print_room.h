#pragma once

#include <QObject>
#include <QUrl>
#include <QtQmlIntegration>
#include <string>

#include "app/gui/journal_reader.h"
#include "app/gui/planner.h"
#include "app/gui/preferences.h"

namespace flowkin {

/// Prints to files: what belongs to the day open in the journal, and to the
/// plan. The same pages as `flowkin print` and `flowkin journal export`.
class PrintRoom : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// Where files are written; kept in her settings.
  Q_PROPERTY(QString folder READ folder NOTIFY changed)
  /// The file written last, empty at first; and what to know about it.
  Q_PROPERTY(QString written READ written NOTIFY changed)
  Q_PROPERTY(QString remark READ remark NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

 public:
  PrintRoom(Preferences* preferences,
            JournalReader* journal,
            Planner* planner,
            QObject* parent = nullptr);

  QString folder() const;
  QString written() const { return written_; }
  QString remark() const { return remark_; }
  QString trouble() const { return trouble_; }

  Q_INVOKABLE void setFolder(const QUrl& folder);
  Q_INVOKABLE void labels();
  Q_INVOKABLE void report();
  Q_INVOKABLE void sheet();
  Q_INVOKABLE void handout(const QString& places, const QString& title);
  /// Every day, as a table or a document.
  Q_INVOKABLE void table();
  Q_INVOKABLE void document();
  /// Shows the file written last with the system's own program.
  Q_INVOKABLE void open();

 signals:
  void changed();

 private:
  void Write(const QString& name, const Result<std::string>& bytes);
  void Refuse(const Error& error);

  Preferences* preferences_;
  JournalReader* journal_;
  Planner* planner_;
  QString written_;
  QString remark_;
  QString trouble_;
};

}  // namespace flowkin
