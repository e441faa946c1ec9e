// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowMenu.h"

#include "core/steps/StepOrder.h"
#include "tests/ui/daylog/LogWindow.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/ClosingsWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/PhotosWindow.h"
#include "tests/ui/support/ReadOnlyPage.h"
#include "tests/ui/support/SquawksWindow.h"
#include "tests/ui/support/StoresWindow.h"
#include "ui/closings/ClosingBoard.h"
#include "ui/closings/PacketForm.h"
#include "ui/squawks/SquawkActForm.h"
#include "ui/stores/DeliveryBoard.h"
#include "ui/widgets/RowListView.h"

#include <QAction>
#include <QApplication>
#include <QContextMenuEvent>
#include <QListView>
#include <QMenu>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

QMenu *shownMenu()
{
    return qobject_cast<QMenu *>(QApplication::activePopupWidget());
}

/// As the right mouse button on the row asks.
QMenu *askAt(QAbstractItemView &list, int row)
{
    const QPoint place = list.visualRect(list.model()->index(row, 0)).center();
    QContextMenuEvent asked(QContextMenuEvent::Mouse, place, list.viewport()->mapToGlobal(place));
    QApplication::sendEvent(list.viewport(), &asked);
    return shownMenu();
}

QAction *line(const QMenu &menu, const QString &words)
{
    for (QAction *line : menu.actions()) {
        if (line->text() == words)
            return line;
    }
    return nullptr;
}

bool isOffered(const QMenu &menu, const QString &words)
{
    const QAction *found = line(menu, words);
    return found && found->isEnabled();
}

void choose(QMenu &menu, const QString &words)
{
    QAction *found = line(menu, words);
    INFO(words.toStdString());
    REQUIRE(found);
    menu.setActiveAction(found);
    QTest::keyClick(&menu, Qt::Key_Return);
    CHECK_FALSE(shownMenu());
}

} // namespace

TEST_CASE("The menu of a squawk has what its buttons do, with the keys, and does it")
{
    SquawksWindow window;
    auto &squawks = list(window.page, QStringLiteral("Squawks"));
    QMenu *menu = askAt(squawks, 0);
    REQUIRE(menu);
    const QAction *fixed = line(*menu, QStringLiteral("Mark as fixed and checked"));
    REQUIRE(fixed);
    CHECK(fixed->shortcut() == QKeySequence(Qt::Key_F));
    CHECK(isOffered(*menu, QStringLiteral("History")));
    // It was not corrected yet, and has no button for that either.
    CHECK_FALSE(line(*menu, QStringLiteral("Verify")));
    choose(*menu, QStringLiteral("Mark as fixed"));
    window.enter("Correction", "Drilled out");
    CHECK(window.squawk("1").fixed_on);
}

TEST_CASE("What is typed while a menu is open does not reach the list behind it")
{
    SquawksWindow window;
    auto &squawks = list(window.page, QStringLiteral("Squawks"));
    squawks.setFocus();
    QMenu *menu = askAt(squawks, 0);
    REQUIRE(menu);
    QTest::keyClick(menu, Qt::Key_F);
    QTest::keyClick(menu, Qt::Key_Delete);
    const auto *form = window.page.findChild<ui::SquawkActForm *>();
    CHECK_FALSE((form && form->isVisible()));
    CHECK_FALSE(says(window.page, QStringLiteral("will count nowhere any more")));
    CHECK(shownMenu() == menu);
    menu->close();
    window.page.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window.page));
    squawks.setFocus();
    QTest::keyClick(&squawks, Qt::Key_F);
    form = window.page.findChild<ui::SquawkActForm *>();
    REQUIRE(form);
    CHECK(form->isVisible());
}

TEST_CASE("The steps of a part are put in another order from their menu, too")
{
    PartsWindow window;
    const auto order = [&] { return steps::stepsOf(*window.records(), window.workshop.bay); };
    REQUIRE(order().size() == 2);
    const Id<Step> first = order().front();
    window.show({RecordType::Step, first.value()});
    QMenu *menu = askAt(window.list(), window.list().currentIndex().row());
    REQUIRE(menu);
    CHECK_FALSE(isOffered(*menu, QStringLiteral("Move up")));
    choose(*menu, QStringLiteral("Move down"));
    CHECK(order().back() == first);
}

TEST_CASE("Shift+F10 and the Menu key ask about the row that the keyboard is at")
{
    SquawksWindow window;
    const Id<Squawk> second = window.addSquawk();
    window.show(second);
    auto &squawks = list(window.page, QStringLiteral("Squawks"));
    squawks.setFocus();
    QTest::keyClick(&squawks, Qt::Key_F10, Qt::ShiftModifier);
    REQUIRE(shownMenu());
    choose(*shownMenu(), QStringLiteral("Withdraw"));
    CHECK(says(window.page, QStringLiteral("will count nowhere any more")));
    CHECK(window.editor().shown() == second);
    QTest::keyClick(&squawks, Qt::Key_Menu);
    REQUIRE(shownMenu());
    QTest::keyClick(shownMenu(), Qt::Key_Escape);
    CHECK_FALSE(shownMenu());
}

TEST_CASE("A closing on the board has its packet made without being opened first")
{
    ClosingsWindow opened;
    picture(opened.page, 1110, 640, "closings-menu");
    for (ui::RowListView *column : opened.page.board().lists()) {
        if (column->rows().rowCount() == 0)
            continue;
        QMenu *menu = askAt(*column, 0);
        REQUIRE(menu);
        CHECK(isOffered(*menu, QStringLiteral("Inspection visit")));
        CHECK(isOffered(*menu, QStringLiteral("Record the closing")));
        choose(*menu, QStringLiteral("Make packet"));
        CHECK(opened.page.packet().isVisible());
        return;
    }
    FAIL("no closing on the board");
}

TEST_CASE("The first part of the tree is not offered to be moved up")
{
    PartsWindow window;
    QMenu *menu = askAt(window.tree(), 0);
    REQUIRE(menu);
    CHECK_FALSE(isOffered(*menu, QStringLiteral("Move up")));
    CHECK_FALSE(isOffered(*menu, QStringLiteral("Move out of its part")));
    CHECK(line(*menu, QStringLiteral("Add beside"))->shortcut() == QKeySequence(Qt::Key_Insert));
    const QString first = window.tree().model()->index(0, 0).data().toString();
    choose(*menu, QStringLiteral("Move down"));
    CHECK(window.tree().model()->index(1, 0).data().toString() == first);
}

TEST_CASE("An entry of the log has a menu, and the heading of its day has none")
{
    LogWindow window;
    auto &entries = list(*window.page, QStringLiteral("Log entries"));
    REQUIRE_FALSE(askAt(entries, 0));
    QMenu *menu = askAt(entries, 1);
    REQUIRE(menu);
    CHECK(isOffered(*menu, QStringLiteral("Split this entry…")));
    CHECK(line(*menu, QStringLiteral("Move this entry…"))->shortcut() == QKeySequence(Qt::Key_M));
    menu->close();
}

TEST_CASE("The menu of a photo says what it shows, and that it can be looked at")
{
    PhotosWindow window;
    window.page.takeIn({window.file(1)});
    REQUIRE(QTest::qWaitFor([&] { return window.media().size() == 1; }, 5000));
    QCoreApplication::processEvents();
    QMenu *menu = askAt(window.grid(), 0);
    REQUIRE(menu);
    CHECK(isOffered(*menu, QStringLiteral("Look at the photo")));
    const QAction *shows = nullptr;
    for (const QAction *each : menu->actions())
        shows = !shows && each->isCheckable() ? each : shows;
    REQUIRE(shows);
    CHECK_FALSE(shows->isChecked());
    choose(*menu, shows->text());
    CHECK(window.lastMedia().shows.contains(Shows(0)));
}

TEST_CASE("A line of the stores has a menu")
{
    StoresWindow window;
    auto *board = window.page.findChild<ui::DeliveryBoard *>();
    REQUIRE(board);
    QMenu *menu = askAt(window.list(*board), 0);
    REQUIRE(menu);
    CHECK(isOffered(*menu, QStringLiteral("Withdraw what is chosen")));
    menu->close();
}

TEST_CASE("Nothing that changes records is offered where they are only read")
{
    ReadOnlyPage<ui::PartsPage> reader;
    for (auto *tree : reader.page.findChildren<QTreeView *>()) {
        if (tree->accessibleName() != QStringLiteral("Parts"))
            continue;
        QMenu *menu = askAt(*tree, 0);
        REQUIRE(menu);
        for (const QAction *each : menu->actions()) {
            INFO(each->text().toStdString());
            CHECK_FALSE(each->isEnabled());
        }
        menu->close();
        return;
    }
    FAIL("no tree");
}

TEST_CASE("The menu of a squawk's picture opens it, or says that it shows the repair")
{
    SquawksWindow window;
    Id<Media> photo;
    window.change([&](Edit &edit) {
        Media media;
        media.file = "photos/a.jpg";
        media.caption = "Dent";
        media.links.push_back({RecordType::Squawk, window.workshop.squawk.value()});
        photo = edit.put(media);
    });
    window.show(window.workshop.squawk);
    QMenu *menu = askAt(list(window.page, QStringLiteral("Photos before the repair")), 0);
    REQUIRE(menu);
    CHECK(isOffered(*menu, QStringLiteral("Look at the photo")));
    choose(*menu, QStringLiteral("It shows the repair"));
    CHECK(window.session->records()->find(photo)->shows.contains(Shows::Repair));
}

} // namespace lastrivet::test
