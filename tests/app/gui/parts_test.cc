#include <QQmlEngine>
#include <QtQuickTest>

// The parts of the screens, in tst_*.qml beside this file.
class Setup : public QObject {
  Q_OBJECT

 public slots:
  void qmlEngineAvailable(QQmlEngine* engine) {
    engine->addImportPath("qrc:/qt/qml");
  }
};

QUICK_TEST_MAIN_WITH_SETUP(parts, Setup)

#include "parts_test.moc"
