#pragma once

#include <QObject>
#include <QQmlApplicationEngine>
#include <QTranslator>
#include <memory>

#include "app/gui/desk.h"

class QQuickWindow;

namespace flowkin {

/// The window with its engine and language.
class Window : public QObject {
  Q_OBJECT

 public:
  explicit Window(const DeskOptions& options, QObject* parent = nullptr);
  ~Window() override;

  /// False where the screens could not be made; what was wrong is on standard
  /// error.
  bool Open();
  Desk& desk() { return *desk_; }
  QQuickWindow* quickWindow() const;

 private:
  void SetLanguage();

  std::unique_ptr<Desk> desk_;
  QTranslator translator_;
  std::unique_ptr<QQmlApplicationEngine> engine_;
};

}  // namespace flowkin
