// Everything can be reached by the keyboard alone, comes into view with type
// twice its size on a small laptop's screen, and says what it is.

#include <gtest/gtest.h>

#include <QAccessible>
#include <QQuickItem>
#include <QSet>
#include <QTest>

#include "tests/app/gui/window_driver.h"

namespace flowkin::testing {
namespace {

constexpr int kPages = 10;
/// More than any page has controls.
constexpr int kMostTabs = 120;

void CollectStops(QQuickItem* item, QSet<QQuickItem*>* stops) {
  if (!item->isVisible() || !item->isEnabled()) return;
  if (item->activeFocusOnTab() && item->width() > 0.0) stops->insert(item);
  for (QQuickItem* child : item->childItems()) CollectStops(child, stops);
}

/// The item's middle lies in the window and in everything that cuts it off.
bool InView(QQuickItem* item) {
  const QPointF middle(item->width() / 2.0, item->height() / 2.0);
  for (QQuickItem* above = item->parentItem(); above != nullptr;
       above = above->parentItem()) {
    const bool cuts = above->clip() || above->parentItem() == nullptr;
    if (cuts && !above->contains(item->mapToItem(above, middle))) return false;
  }
  return true;
}

QString NameOf(QQuickItem* item) {
  return QString("%1 '%2' \"%3\"")
      .arg(item->metaObject()->className(),
           item->objectName(),
           item->property("text").toString());
}

class Reach : public ::testing::TestWithParam<const char*> {};

TEST_P(Reach, EveryControlComesIntoView) {
  WindowDriver driver;
  Preferences& preferences = *driver.desk().preferences();
  preferences.setLanguage(GetParam());
  preferences.setSize(2.0);
  driver.quick()->resize(1280, 720);
  for (int cup = 0; cup < 7; ++cup) {
    QVariantMap form = driver.desk().board()->form(-1);
    form["name"] = QString("Cup %1").arg(cup + 1);
    form["role"] = cup == 0 ? 0 : 1;
    form["volume"] = "120";
    ASSERT_EQ(driver.desk().board()->keep(-1, form), QString());
  }
  for (int page = 0; page < kPages; ++page) {
    const auto digit = static_cast<Qt::Key>(Qt::Key_0 + (page + 1) % 10);
    QTest::keyClick(driver.quick(), digit, Qt::ControlModifier);
    QTest::qWait(300);
    QSet<QQuickItem*> stops;
    CollectStops(driver.quick()->contentItem(), &stops);
    ASSERT_GT(stops.size(), kPages) << "page " << page;
    QSet<QQuickItem*> met;
    for (int tab = 0; tab < kMostTabs; ++tab) {
      driver.Key(Qt::Key_Tab);
      QTest::qWait(5);
      QQuickItem* item = driver.quick()->activeFocusItem();
      ASSERT_NE(item, nullptr);
      if (met.contains(item)) continue;
      met.insert(item);
      if (!stops.contains(item)) continue;
      EXPECT_TRUE(InView(item))
          << "page " << page << ": " << NameOf(item).toStdString();
      QAccessibleInterface* told = QAccessible::queryAccessibleInterface(item);
      ASSERT_NE(told, nullptr) << NameOf(item).toStdString();
      EXPECT_FALSE(told->text(QAccessible::Name).isEmpty())
          << "page " << page << ": " << NameOf(item).toStdString();
      EXPECT_NE(told->role(), QAccessible::NoRole);
      EXPECT_NE(told->role(), QAccessible::Client)
          << "page " << page << ": " << NameOf(item).toStdString();
    }
    for (QQuickItem* stop : stops - met) {
      ADD_FAILURE() << "page " << page << " never stops at "
                    << NameOf(stop).toStdString();
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Languages, Reach, ::testing::Values("en", "de", "fr"));

}  // namespace
}  // namespace flowkin::testing
