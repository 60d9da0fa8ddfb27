#include "app/gui/self_test.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QImage>
#include <QMetaObject>
#include <QQuickWindow>
#include <QTextStream>
#include <atomic>
#include <functional>

#include "app/gui/window.h"

namespace flowkin {
namespace {

const char* const kScreens[] = {"bench",
                                "film",
                                "clips",
                                "review",
                                "curves",
                                "plan",
                                "journal",
                                "print",
                                "tryout",
                                "settings"};
constexpr int kSettle_ms = 200;
constexpr int kLongest_ms = 30000;

std::atomic<int> complaints{0};
QtMessageHandler usual_handler = nullptr;

void Count(QtMsgType type,
           const QMessageLogContext& context,
           const QString& text) {
  // What the sound server or graphics driver of the machine says is not ours.
  const QString category = context.category;
  const bool ours = category == "qml" || category == "default" ||
                    category == "js" || category.startsWith("qt.qml") ||
                    category.startsWith("qt.quick");
  if (type != QtDebugMsg && type != QtInfoMsg && ours &&
      !text.startsWith("PulseAudioService")) {
    ++complaints;
  }
  if (usual_handler != nullptr) usual_handler(type, context, text);
}

void Wait(int ms) {
  QElapsedTimer timer;
  timer.start();
  while (timer.elapsed() < ms) {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  }
}

/// Waits until nothing is measured or loaded, at most kLongest_ms.
void WaitIdle(Desk& desk) {
  QElapsedTimer timer;
  timer.start();
  do {
    Wait(kSettle_ms);
  } while ((desk.clips()->busy() || desk.review()->loading()) &&
           timer.elapsed() < kLongest_ms);
}

/// An empty bench gets the cups of the sample clips, so that there is something
/// to see.
void FillBench(Desk& desk) {
  if (!desk.board()->empty() || !desk.tryout()->possible()) return;
  do {
    desk.tryout()->goOn();
    WaitIdle(desk);
  } while (desk.tryout()->step() < desk.tryout()->steps());
  desk.planner()->visit();
  desk.planner()->putOnShelf(
      "Lagoon", 0, desk.preferences()->usUnits() ? "1" : "40", true);
  JournalReader& journal = *desk.journal();
  journal.visit();
  journal.pour({{"humidity", "48"}, {"rested", "25"}, {"strained", 1}}, true);
  journal.addFault(0, {});
  journal.judge(1, {});
  journal.cells(0, "30", "1", 2, {});
}

struct Look {
  QString language;
  QString shade;
  double size;
};

/// Large type is looked at on the smallest of screens.
constexpr struct {
  double size;
  int width_px;
  int height_px;
} kSizes[] = {{1.0, 1366, 768}, {2.0, 1280, 720}};

/// Calls `visit(screen name, look)` with every screen in every look.
bool VisitAll(
    const DeskOptions& options,
    const std::function<bool(QQuickWindow*, const QString&, const Look&)>&
        visit) {
  Window window(options);
  if (!window.Open()) return false;
  QQuickWindow* quick = window.quickWindow();
  FillBench(window.desk());
  Preferences& preferences = *window.desk().preferences();
  for (const char* language : {"en", "de", "fr"}) {
    for (const char* shade : {"light", "dark"}) {
      for (const auto& [size, width_px, height_px] : kSizes) {
        const Look look{language, shade, size};
        preferences.setLanguage(language);
        preferences.setShade(shade);
        preferences.setSize(size);
        quick->resize(width_px, height_px);
        for (int screen = 0; screen < static_cast<int>(std::size(kScreens));
             ++screen) {
          QMetaObject::invokeMethod(quick, "show", Q_ARG(int, screen));
          WaitIdle(window.desk());
          if (!visit(quick, kScreens[screen], look)) {
            return false;
          }
        }
        QMetaObject::invokeMethod(quick, "show", Q_ARG(int, 0));
        QMetaObject::invokeMethod(quick, "showLastCheck", Q_ARG(bool, true));
        Wait(kSettle_ms);
        if (!visit(quick, "check", look)) return false;
        QMetaObject::invokeMethod(quick, "showLastCheck", Q_ARG(bool, false));
      }
    }
  }
  return true;
}

}  // namespace

int RunSelfTest(const DeskOptions& options) {
  usual_handler = qInstallMessageHandler(Count);
  const bool opened = VisitAll(
      options, [](QQuickWindow*, const QString&, const Look&) { return true; });
  qInstallMessageHandler(nullptr);
  QTextStream(stderr) << "self-test: " << complaints.load() << " warnings\n";
  return opened && complaints == 0 ? 0 : 1;
}

int TakeScreenshots(const DeskOptions& options, const QString& folder) {
  const QDir dir(folder);
  if (!dir.mkpath(".")) {
    QTextStream(stderr) << "The folder '" << folder
                        << "' cannot be made; choose another.\n";
    return 1;
  }
  const bool done = VisitAll(
      options,
      [&](QQuickWindow* window, const QString& screen, const Look& look) {
        const QString file =
            dir.filePath(QString("%1-%2-%3-%4.png")
                             .arg(screen, look.language, look.shade)
                             .arg(qRound(look.size * 100.0)));
        if (window->grabWindow().save(file)) return true;
        QTextStream(stderr) << "The picture '" << file
                            << "' cannot be written; is there room?\n";
        return false;
      });
  return done ? 0 : 1;
}

}  // namespace flowkin
