#include <QApplication>
#include <QCommandLineParser>
#include <QTextStream>
#include <clocale>

#include "app/gui/self_test.h"
#include "app/gui/window.h"

namespace {

void Say(const QString& text) { QTextStream(stderr) << text << '\n'; }

}  // namespace

int main(int argc, char** argv) {
  // The only backend that knows every camera; set before anything multimedia.
  if (!qEnvironmentVariableIsSet("QT_MEDIA_BACKEND")) {
    qputenv("QT_MEDIA_BACKEND", "gstreamer");
  }
  // Charts need a QApplication.
  const QApplication app(argc, argv);
  // It has taken on the system's decimal sign; what the engine writes and reads
  // has a point everywhere. Hers comes from QLocale.
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setApplicationName("flowkin-bench");
  QApplication::setOrganizationName("flowkin");
  QApplication::setApplicationVersion(FLOWKIN_VERSION);
  QApplication::setDesktopFileName("org.flowkin.Bench");

  QCommandLineParser parser;
  parser.setApplicationDescription(
      "The bench window: film, compare, add, match.");
  parser.addHelpOption();
  parser.addVersionOption();
  const QCommandLineOption store(
      "store", "Keep the bench in FILE instead of your data folder.", "FILE");
  const QCommandLineOption settings(
      "settings", "Keep the window's settings in FILE.", "FILE");
  const QCommandLineOption samples(
      "sample-clips", "Folder of the sample clips.", "DIR");
  const QCommandLineOption self_test(
      "self-test", "Open every screen, close again; fails on any warning.");
  const QCommandLineOption screenshots(
      "screenshots", "Write pictures of every screen into DIR.", "DIR");
  parser.addOptions({store, settings, samples, self_test, screenshots});
  parser.process(app);
  if (!parser.positionalArguments().isEmpty()) {
    Say("flowkin-bench takes no file names; drop clips onto the window.");
    return 2;
  }

  flowkin::DeskOptions options;
  options.store_path = parser.value(store);
  options.settings_path = parser.value(settings);
  options.sample_clips = parser.value(samples);

  if (parser.isSet(self_test)) return flowkin::RunSelfTest(options);
  if (parser.isSet(screenshots)) {
    return flowkin::TakeScreenshots(options, parser.value(screenshots));
  }
  flowkin::Window window(options);
  if (!window.Open()) return 1;
  return QApplication::exec();
}
