#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QString>
#include <QTemporaryDir>
#include <functional>
#include <memory>

#include "app/gui/window.h"

namespace flowkin::testing {

/// A window with a store and settings of its own, worked as a person does: by
/// mouse and keys on what is to be seen.
class WindowDriver {
 public:
  WindowDriver();

  QQuickWindow* quick() { return window_->quickWindow(); }
  Desk& desk() { return window_->desk(); }
  QString folder() const { return dir_.path(); }

  /// The first thing of that name that is to be seen; null where there is none.
  QQuickItem* Find(const QString& name);
  QString TextOf(const QString& name);
  /// Each fails the test where the thing is not to be seen.
  void Click(const QString& name);
  void Type(const QString& field, const QString& text);
  /// Goes to the bench and puts a cup of 120 mL of Quillmere on it.
  void AddCup(const QString& name);
  void Key(Qt::Key key, Qt::KeyboardModifiers held = Qt::NoModifier);
  void DropFile(const QString& path) { DropFiles({path}); }
  void DropFiles(const QStringList& paths);
  /// Closes the window, whatever it is at, and opens it again.
  void Reopen();
  /// Lets the window live until `done` or the time is up; false then.
  static bool WaitFor(const std::function<bool()>& done, double seconds);

 private:
  void Open();

  QTemporaryDir dir_;
  DeskOptions options_;
  std::unique_ptr<Window> window_;
};

}  // namespace flowkin::testing
