#include "tests/app/gui/window_driver.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDropEvent>
#include <QElapsedTimer>
#include <QMimeData>
#include <QSettings>
#include <QTest>
#include <QUrl>

namespace flowkin::testing {
namespace {

constexpr double kPatience_s = 10.0;

QQuickItem* FindBelow(QQuickItem* item, const QString& name) {
  if (!item->isVisible()) return nullptr;
  if (item->objectName() == name && item->width() > 0.0) return item;
  for (QQuickItem* child : item->childItems()) {
    if (QQuickItem* found = FindBelow(child, name)) return found;
  }
  return nullptr;
}

}  // namespace

WindowDriver::WindowDriver() {
  options_.store_path = dir_.filePath("bench.db");
  options_.settings_path = dir_.filePath("settings.ini");
  {
    QSettings settings(options_.settings_path, QSettings::IniFormat);
    settings.setValue("language", "en");
    settings.setValue("speaks", false);
  }
  Open();
}

void WindowDriver::Reopen() {
  window_.reset();
  Open();
}

void WindowDriver::Open() {
  window_ = std::make_unique<Window>(options_);
  EXPECT_TRUE(window_->Open());
  // Whatever screen there is.
  quick()->resize(1280, 800);
  EXPECT_TRUE(QTest::qWaitForWindowExposed(quick()));
  quick()->requestActivate();
}

QQuickItem* WindowDriver::Find(const QString& name) {
  return FindBelow(quick()->contentItem(), name);
}

QString WindowDriver::TextOf(const QString& name) {
  QQuickItem* item = Find(name);
  return item != nullptr ? item->property("text").toString() : QString();
}

void WindowDriver::Click(const QString& name) {
  ASSERT_TRUE(WaitFor([&] { return Find(name) != nullptr; }, kPatience_s))
      << "'" << name.toStdString() << "' is not to be seen";
  // Layouts settle before anybody could hit anything.
  QTest::qWait(100);
  QQuickItem* item = Find(name);
  ASSERT_NE(item, nullptr);
  const QPoint at =
      item->mapToScene({item->width() / 2.0, item->height() / 2.0}).toPoint();
  ASSERT_TRUE(QRect({0, 0}, quick()->size()).contains(at))
      << name.toStdString();
  QTest::mouseClick(quick(), Qt::LeftButton, Qt::NoModifier, at);
  QTest::qWait(50);
}

void WindowDriver::Type(const QString& field, const QString& text) {
  Click(field);
  QTest::keyClick(quick(), Qt::Key_A, Qt::ControlModifier);
  for (const QChar c : text) QTest::keyClick(quick(), c.toLatin1());
}

void WindowDriver::AddCup(const QString& name) {
  Click("page0");
  Click("addCup");
  Type("cupName", name);
  Type("cupVolume", "120");
  Type("cupBrand", "Quillmere");
  Click("cupKeep");
  ASSERT_TRUE(WaitFor([this] { return Find("cupKeep") == nullptr; }, 5.0));
}

void WindowDriver::Key(Qt::Key key, Qt::KeyboardModifiers held) {
  QTest::keyClick(quick(), key, held);
}

void WindowDriver::DropFiles(const QStringList& paths) {
  QMimeData files;
  QList<QUrl> urls;
  for (const QString& path : paths) urls << QUrl::fromLocalFile(path);
  files.setUrls(urls);
  const QPoint at(quick()->width() / 2, quick()->height() / 2);
  QDragEnterEvent enter(
      at, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(quick(), &enter);
  QDropEvent drop(at, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(quick(), &drop);
  QTest::qWait(50);
}

bool WindowDriver::WaitFor(const std::function<bool()>& done, double seconds) {
  QElapsedTimer timer;
  timer.start();
  while (!done()) {
    if (static_cast<double>(timer.elapsed()) > seconds * 1000.0) return false;
    QTest::qWait(20);
  }
  return true;
}

}  // namespace flowkin::testing
