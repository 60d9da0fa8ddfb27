#pragma once

#include <QObject>
#include <QUrl>
#include <QtQmlIntegration>
#include <string>

#include "app/gui/journal_reader.h"
#include "app/gui/picture_feed.h"
#include "app/gui/planner.h"
#include "app/gui/preferences.h"
#include "app/usecases/paper.h"

class QPrinter;

namespace flowkin {

/// Prints to files and on paper: what belongs to the day open in the journal,
/// and to the plan, looked at before that. The same pages as `flowkin print`
/// and `flowkin journal export`.
class PrintRoom : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  /// Where files are written; kept in her settings.
  Q_PROPERTY(QString folder READ folder NOTIFY changed)
  /// The file written last, empty at first; and what to know about it.
  Q_PROPERTY(QString written READ written NOTIFY changed)
  /// Where the pages on paper went; empty where none did.
  Q_PROPERTY(QString sent READ sent NOTIFY changed)
  Q_PROPERTY(QString remark READ remark NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  /// What lies ready to be written: how many pages, 0 for nothing, which of
  /// them is seen (from 0), the file's name, the page as a picture.
  Q_PROPERTY(int pages READ pages NOTIFY changed)
  Q_PROPERTY(int page READ page WRITE setPage NOTIFY changed)
  Q_PROPERTY(QString paperName READ paperName NOTIFY changed)
  Q_PROPERTY(flowkin::PictureFeed* sight READ sight CONSTANT)

 public:
  PrintRoom(Preferences* preferences,
            JournalReader* journal,
            Planner* planner,
            QObject* parent = nullptr);

  QString folder() const;
  QString written() const { return written_; }
  QString sent() const { return sent_; }
  QString remark() const { return remark_; }
  QString trouble() const { return trouble_; }
  int pages() const { return paper_ ? paper_->pages() : 0; }
  int page() const { return page_; }
  void setPage(int page);
  QString paperName() const { return name_; }
  PictureFeed* sight() const { return sight_; }

  Q_INVOKABLE void setFolder(const QUrl& folder);
  // Each of these draws its pages and shows the first.
  Q_INVOKABLE void labels();
  Q_INVOKABLE void report();
  Q_INVOKABLE void sheet();
  Q_INVOKABLE void handout(const QString& places, const QString& title);
  /// Writes what is seen, or puts it away.
  Q_INVOKABLE void save();
  /// Asks, by the system's own dialog, for a printer and puts it on paper.
  Q_INVOKABLE void print();
  /// Draws what is seen on `printer`, in its true size where the paper chosen
  /// there has room for it.
  void PrintOn(QPrinter& printer);
  Q_INVOKABLE void drop();
  /// Every day, as a table or a document; written at once.
  Q_INVOKABLE void table();
  Q_INVOKABLE void document();
  /// Shows the file written last with the system's own program.
  Q_INVOKABLE void open();

 signals:
  void changed();

 private:
  void Look(const QString& name, Result<Paper> paper);
  void ShowPage();
  void Write(const QString& name, const Result<std::string>& bytes);
  void Refuse(const Error& error);
  Words HerWords() const;

  Preferences* preferences_;
  JournalReader* journal_;
  Planner* planner_;
  QString written_;
  QString sent_;
  QString remark_;
  QString trouble_;
  std::optional<Paper> paper_;
  QString name_;
  int page_ = 0;
  PictureFeed* sight_;
};

}  // namespace flowkin
