// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/YearStrip.h"

#include "tests/ui/daylog/LogWindow.h"
#include "ui/daylog/LogModel.h"

namespace lastrivet::test {

namespace {

ui::YearStrip &strip(LogWindow &window)
{
    return *window.page->findChild<ui::YearStrip *>();
}

} // namespace

TEST_CASE("Arrow keys walk through the days of the year and tell their hours")
{
    LogWindow window;
    ui::YearStrip &year = strip(window);
    year.setFocus();
    CHECK(year.cursorDay() == QDate(2026, 3, 14));
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(&year, Qt::Key_Left);
    CHECK(year.cursorDay() == QDate(2026, 3, 10));
    CHECK(year.accessibleDescription().contains(QStringLiteral("2 h 15")));
    QTest::keyClick(&year, Qt::Key_Right);
    CHECK(year.accessibleDescription().contains(QStringLiteral("nothing logged")));
    QTest::keyClick(&year, Qt::Key_End);
    QTest::keyClick(&year, Qt::Key_Right);
    CHECK(year.cursorDay() == QDate(2026, 3, 14));
}

TEST_CASE("Enter or a click on a day goes to its entries")
{
    LogWindow window;
    ui::YearStrip &year = strip(window);
    QListView *found = nullptr;
    for (auto *view : window.page->findChildren<QListView *>()) {
        if (view->accessibleName() == QStringLiteral("Log entries"))
            found = view;
    }
    REQUIRE(found);
    const QListView &list = *found;
    REQUIRE(list.model()->rowCount() == 4);
    year.setFocus();
    for (int i = 0; i < 22; ++i)
        QTest::keyClick(&year, Qt::Key_Left);
    CHECK(year.cursorDay() == QDate(2026, 2, 20));
    QTest::keyClick(&year, Qt::Key_Return);
    CHECK(list.currentIndex().row() == list.model()->rowCount() - 1);
    QTest::mouseClick(&year, Qt::LeftButton, {}, QPoint(year.width() - 1, 5));
    CHECK(list.currentIndex().row() == 1);
}

TEST_CASE("Page up and page down go from year to year in the strip of days")
{
    LogWindow window;
    ui::YearStrip &year = strip(window);
    year.setFocus();
    QTest::keyClick(&year, Qt::Key_PageUp);
    CHECK(year.cursorDay() == QDate(2025, 3, 14));
    QTest::keyClick(&year, Qt::Key_PageDown);
    QTest::keyClick(&year, Qt::Key_PageDown);
    CHECK(year.cursorDay() == QDate(2026, 3, 14));
}

TEST_CASE("A day before the first entry leads to the first entry")
{
    LogWindow window;
    ui::YearStrip &year = strip(window);
    const QListView *list = nullptr;
    for (const auto *view : window.page->findChildren<QListView *>()) {
        if (view->accessibleName() == QStringLiteral("Log entries"))
            list = view;
    }
    REQUIRE(list);
    year.setFocus();
    QTest::keyClick(&year, Qt::Key_Home);
    REQUIRE(year.cursorDay() < QDate(2026, 2, 20));
    QTest::keyClick(&year, Qt::Key_Return);
    CHECK(list->currentIndex().row() == list->model()->rowCount() - 1);
}

TEST_CASE("After the year that ends today there is none, which the button says")
{
    LogWindow window;
    ui::YearStrip &year = strip(window);
    const QPushButton *after = nullptr;
    for (const auto *button : window.page->findChildren<QPushButton *>()) {
        if (button->accessibleName() == QStringLiteral("The year after"))
            after = button;
    }
    REQUIRE(after);
    CHECK_FALSE(after->isEnabled());
    CHECK(after->toolTip().contains(QStringLiteral("ends today")));
    year.setFocus();
    QTest::keyClick(&year, Qt::Key_PageUp);
    CHECK(after->isEnabled());
    QTest::keyClick(&year, Qt::Key_PageDown);
    CHECK_FALSE(after->isEnabled());
}

} // namespace lastrivet::test
