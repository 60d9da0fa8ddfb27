#include "app/gui/window.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQuickStyle>
#include <QQuickWindow>

namespace flowkin {

Window::Window(const DeskOptions& options, QObject* parent)
    : QObject(parent), desk_(std::make_unique<Desk>(options)) {
  QQuickStyle::setStyle("Basic");
  SetLanguage();
  connect(desk_->preferences(),
          &Preferences::languageWanted,
          this,
          &Window::SetLanguage);
}

Window::~Window() {
  // The engine goes first: its items read from the desk until the end.
  engine_.reset();
}

void Window::SetLanguage() {
  QCoreApplication::removeTranslator(&translator_);
  const QString language = desk_->preferences()->LanguageInUse();
  // Numbers follow the language of the words, the region that of the system
  // where it speaks the same language.
  const QLocale system = QLocale::system();
  QLocale::setDefault(system.name().left(2) == language ? system
                                                        : QLocale(language));
  // English has one too, for its plurals.
  if (translator_.load("flowkin_" + language, ":/i18n")) {
    QCoreApplication::installTranslator(&translator_);
  }
  if (engine_) engine_->retranslate();
}

bool Window::Open() {
  engine_ = std::make_unique<QQmlApplicationEngine>();
  engine_->addImportPath("qrc:/qt/qml");
  engine_->setInitialProperties({{"desk", QVariant::fromValue(desk_.get())}});
  engine_->load(QUrl("qrc:/qt/qml/Flowkin/Main.qml"));
  return !engine_->rootObjects().isEmpty();
}

QQuickWindow* Window::quickWindow() const {
  return engine_ && !engine_->rootObjects().isEmpty()
             ? qobject_cast<QQuickWindow*>(engine_->rootObjects().first())
             : nullptr;
}

}  // namespace flowkin
