// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/backup/BackupForm.h"
#include "ui/backup/RestoreForm.h"
#include "ui/bench/BenchView.h"
#include "ui/closings/ClosingBoard.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/closings/PacketForm.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/LogbookForm.h"
#include "ui/prints/PrintForm.h"
#include "ui/shell/Finder.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/Rail.h"
#include "ui/shell/RailButton.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"

#include <QAction>
#include <QApplication>
#include <QKeySequence>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMenuBar>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

struct Opened : test::WholeWindow {
    Opened() { openAndShow(); }
    ProjectView &view() { return *window.view(); }
    ShortcutSheet &sheet() { return *window.findChild<ShortcutSheet *>(); }
    void openSheet() { sheet().open({}, &view().page(view().current())); }
};

} // namespace

TEST_CASE("Arrows go on along the rail, and Right goes into the page")
{
    Opened opened;
    opened.view().open(PageId::Today);
    auto *rail = opened.window.findChild<Rail *>();
    REQUIRE(rail);
    const auto buttons = rail->findChildren<RailButton *>();
    REQUIRE(buttons.size() == qsizetype(pageCount));
    buttons[0]->setFocus();
    for (int i = 1; i < 4; ++i) {
        QTest::keyClick(opened.window.focusWidget(), Qt::Key_Down);
        CHECK(opened.view().current() == PageId(i));
        CHECK(opened.window.focusWidget() == buttons[i]);
    }
    QTest::keyClick(opened.window.focusWidget(), Qt::Key_Up);
    CHECK(opened.view().current() == PageId::Log);
    CHECK(opened.window.focusWidget() == buttons[2]);
    QTest::keyClick(opened.window.focusWidget(), Qt::Key_Right);
    REQUIRE(opened.window.focusWidget());
    CHECK(opened.view().page(PageId::Log).isAncestorOf(opened.window.focusWidget()));
}

TEST_CASE("The Tab key comes to the page that is shown, in the rail")
{
    Opened opened;
    const auto buttons = opened.window.findChild<Rail *>()->findChildren<RailButton *>();
    REQUIRE(buttons.size() == qsizetype(pageCount));
    buttons[0]->setFocus();
    for (const PageId page : {PageId::Certificate, PageId::Log}) {
        opened.view().open(page);
        for (qsizetype i = 0; i < buttons.size(); ++i) {
            const bool isReached = buttons[i]->focusPolicy() & Qt::TabFocus;
            CHECK(isReached == (PageId(i) == page));
        }
    }
}

TEST_CASE("At the end of the rail an arrow leads nowhere, and Enter into the page")
{
    Opened opened;
    opened.view().open(PageId::Today);
    const auto buttons = opened.window.findChild<Rail *>()->findChildren<RailButton *>();
    buttons[0]->setFocus();
    QTest::keyClick(buttons[0], Qt::Key_Up);
    CHECK(opened.view().current() == PageId::Today);
    QTest::keyClick(buttons[0], Qt::Key_Return);
    REQUIRE(opened.window.focusWidget());
    CHECK(opened.view().page(PageId::Today).isAncestorOf(opened.window.focusWidget()));
}

TEST_CASE("A page's key leads back to where the keyboard was on it, as long as that is there")
{
    Opened opened;
    const auto press = [&](Qt::Key key) {
        QTest::keyClick(&opened.window, key, Qt::ControlModifier);
        QCoreApplication::processEvents();
    };
    press(Qt::Key_3);
    REQUIRE(opened.view().current() == PageId::Log);
    const QWidget *first = opened.window.focusWidget();
    QListView &entries = test::list(opened.view().page(PageId::Log), QStringLiteral("Log entries"));
    REQUIRE(first != &entries);
    entries.setFocus();
    press(Qt::Key_4);
    REQUIRE(opened.view().current() == PageId::Squawks);
    press(Qt::Key_3);
    CHECK(opened.window.focusWidget() == &entries);
    press(Qt::Key_3);
    CHECK(opened.window.focusWidget() == first);
    entries.setFocus();
    press(Qt::Key_4);
    entries.setEnabled(false);
    press(Qt::Key_3);
    CHECK(opened.window.focusWidget() == first);
}

TEST_CASE("The sheet of keys tells the page's own keys, too")
{
    Opened opened;
    opened.view().open(PageId::Log);
    QCoreApplication::processEvents();
    opened.openSheet();
    CHECK(test::says(opened.sheet(), QStringLiteral("Split the entry")));
    CHECK(test::says(opened.sheet(), QStringLiteral("Look for words in the list")));
    CHECK(test::says(opened.sheet(), QStringLiteral("Print the builder's log")));
    // The bench has no room for the sheet, and its keys are learnt before one stands there.
    for (const QString &told : BenchView::keys())
        CHECK(test::says(opened.sheet(), told));
    opened.sheet().hide();
    opened.view().open(PageId::Squawks);
    QCoreApplication::processEvents();
    opened.openSheet();
    CHECK(test::says(opened.sheet(), QStringLiteral("Mark as fixed and checked")));
    CHECK_FALSE(test::says(opened.sheet(), QStringLiteral("Split the entry")));
    test::picture(opened.window, 1280, 720, "keys");
}

TEST_CASE("The sheet of keys gives the keyboard back to where it was")
{
    Opened opened;
    opened.view().open(PageId::Log);
    QCoreApplication::processEvents();
    const QWidget *before = opened.window.focusWidget();
    REQUIRE(before);
    REQUIRE(opened.view().page(PageId::Log).isAncestorOf(before));
    for (const Qt::Key key : {Qt::Key_Escape, Qt::Key_F1}) {
        opened.openSheet();
        CHECK(opened.window.focusWidget() == &opened.sheet());
        QTest::keyClick(&opened.sheet(), key);
        CHECK_FALSE(opened.sheet().isVisible());
        CHECK(opened.window.focusWidget() == before);
    }
}

TEST_CASE("The sheet of keys tells what a list's letters do with what is chosen in it")
{
    Opened opened;
    Id<Fastener> fastener;
    opened.view().session().change(QStringLiteral("Fastener"), [&](Edit &edit) {
        Fastener bolt;
        bolt.component_id = opened.workshop.bay;
        bolt.place = "rib 3";
        fastener = edit.put(bolt);
    });
    REQUIRE(fastener);
    opened.view().goTo({RecordType::Fastener, fastener.value()});
    QCoreApplication::processEvents();
    opened.openSheet();
    CHECK(test::says(opened.sheet(), QStringLiteral("torqued")));
}

TEST_CASE("The sheet of keys stays inside the window, however small that is")
{
    Opened opened;
    opened.view().open(PageId::Parts);
    for (const QSize size : {QSize(1280, 720), QSize(640, 360)}) {
        opened.window.resize(size);
        QCoreApplication::processEvents();
        opened.openSheet();
        CHECK(opened.window.rect().contains(opened.sheet().geometry()));
        opened.sheet().hide();
    }
}

TEST_CASE("What lies over the window stays inside it when the window becomes narrower")
{
    Opened opened;
    MainWindow &window = opened.window;
    const auto narrowed = [&](const QWidget &over) {
        REQUIRE(over.isVisible());
        window.resize(640, 720);
        QCoreApplication::processEvents();
        CHECK(over.isVisible());
        CHECK(over.geometry().left() >= 0);
        CHECK(over.geometry().right() < window.width());
        window.resize(1280, 720);
        QCoreApplication::processEvents();
        CHECK(over.geometry().center().x() > 600);
    };
    window.openFinder();
    narrowed(window.finder());
    opened.openSheet();
    narrowed(opened.sheet());
    window.printForm().open(opened.view().session(), PrintKind::Tags);
    narrowed(window.printForm());
    window.backupForm().open(opened.view().backups());
    narrowed(window.backupForm());
    window.restoreForm().open();
    narrowed(window.restoreForm());
}

TEST_CASE("The line of the finder says which row Enter would choose, and the page keys leap")
{
    Opened opened;
    opened.window.openFinder();
    QLineEdit &line = opened.window.finder().line();
    RowListView &list = opened.window.finder().list();
    REQUIRE(list.rows().rowCount() > 4);
    QCoreApplication::processEvents();
    const auto told = [&] {
        return line.accessibleDescription() ==
               list.currentIndex().data(Qt::AccessibleTextRole).toString();
    };
    CHECK(list.currentIndex().row() == 0);
    CHECK(told());
    QTest::keyClick(&line, Qt::Key_Down);
    CHECK(list.currentIndex().row() == 1);
    CHECK(told());
    QTest::keyClick(&line, Qt::Key_PageDown);
    CHECK(list.currentIndex().row() > 2);
    CHECK(told());
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(&line, Qt::Key_PageUp);
    CHECK(list.currentIndex().row() == 0);
    CHECK_FALSE(line.accessibleDescription().isEmpty());
}

TEST_CASE(
    "The finder finds commands by their menu too, records by their kind, and keeps the Tab key")
{
    Opened opened;
    opened.window.openFinder();
    QLineEdit &line = opened.window.finder().line();
    RowListView &list = opened.window.finder().list();
    const auto rowWith = [&](const QString &typed, const auto &isWanted) {
        line.setText(typed);
        for (int i = 0; i < list.rows().rowCount(); ++i) {
            if (isWanted(list.rows().row(i)))
                return i;
        }
        return -1;
    };
    const auto isCalled = [](const QString &words) {
        return [words](const ListRow &row) { return row.title.contains(words); };
    };
    CHECK(rowWith(QStringLiteral("print"), isCalled(QStringLiteral("Inspection packet"))) >= 0);
    CHECK(rowWith(QStringLiteral("print log"), isCalled(QStringLiteral("Builder's log"))) >= 0);
    const RecordRef squawk{RecordType::Squawk, opened.workshop.squawk.value()};
    CHECK(rowWith(QStringLiteral("squawk"),
                  [&](const ListRow &row) { return row.record == squawk; }) >= 0);
    const int check = rowWith(QStringLiteral("drains"), isCalled(QStringLiteral("Drains")));
    REQUIRE(check >= 0);
    CHECK(list.rows().row(check).detail == QStringLiteral("Left wing, upper skin"));
    line.clear();
    REQUIRE(list.rows().rowCount() > 2);
    QTest::keyClick(&line, Qt::Key_Tab);
    CHECK(list.currentIndex().row() == 1);
    CHECK(opened.window.finder().isVisible());
    QTest::keyClick(&line, Qt::Key_Backtab);
    CHECK(list.currentIndex().row() == 0);
}

TEST_CASE("The finder says in which part each of two of one name lies")
{
    Opened opened;
    const auto records = opened.view().session().records();
    const auto nameOf = [&](Id<Component> part) { return partName(*records, part); };
    REQUIRE(opened.view().session().change(QStringLiteral("Ribs"), [&](Edit &edit) {
        edit.put(Component{.parent_id = opened.workshop.wing, .name = "Nose rib"});
        edit.put(Component{.parent_id = opened.workshop.rudder, .name = "Nose rib"});
    }));
    opened.window.openFinder();
    opened.window.finder().line().setText(QStringLiteral("nose rib"));
    const auto &found = opened.window.finder().list().rows();
    QStringList around;
    for (int i = 0; i < found.rowCount(); ++i) {
        if (found.row(i).title == QStringLiteral("Nose rib"))
            around.append(found.row(i).detail);
    }
    around.sort();
    QStringList wanted{nameOf(opened.workshop.wing), nameOf(opened.workshop.rudder)};
    wanted.sort();
    CHECK(around == wanted);
}

TEST_CASE("Each paper in the menu of papers has a letter of its own")
{
    Opened opened;
    const QMenu *papers = nullptr;
    for (const QAction *menu : opened.window.menuBar()->actions()) {
        if (menu->text() == QLatin1String("&Print"))
            papers = menu->menu();
    }
    REQUIRE(papers);
    QStringList letters;
    for (const QAction *paper : papers->actions()) {
        if (paper->isSeparator())
            continue;
        INFO(paper->text().toStdString());
        const QString letter = QKeySequence::mnemonic(paper->text()).toString();
        CHECK_FALSE(letter.isEmpty());
        CHECK_FALSE(letters.contains(letter));
        letters << letter;
    }
    CHECK(letters.size() > 10);
}

TEST_CASE("The menu of papers begins the builder's log on its page, and the packet of a closing")
{
    Opened opened;
    const auto choose = [&](const QString &words) {
        for (QAction *action : opened.window.findChildren<QAction *>()) {
            if (action->text().contains(words)) {
                action->trigger();
                return true;
            }
        }
        return false;
    };
    REQUIRE(choose(QStringLiteral("Builder's log")));
    CHECK(opened.view().current() == PageId::Log);
    CHECK(opened.view().page(PageId::Log).findChild<LogbookForm *>()->isVisible());
    opened.view().goTo({RecordType::Closing, opened.workshop.wingClosing.value()});
    REQUIRE(choose(QStringLiteral("Inspection packet")));
    CHECK(opened.view().current() == PageId::Closings);
    auto &closings = static_cast<ClosingsPage &>(opened.view().page(PageId::Closings));
    CHECK(closings.packet().isVisible());
    // On the board the closing that the keyboard is at is meant.
    closings.showRecord({RecordType::Closing, 999999});
    CHECK_FALSE(closings.packet().isVisible());
    closings.board().returnTo(opened.workshop.aileronClosing);
    CHECK(closings.chosenClosing() == opened.workshop.aileronClosing);
    REQUIRE(choose(QStringLiteral("Inspection packet")));
    CHECK(closings.packet().isVisible());
}

TEST_CASE("What has the typed code or number stands first among what is found")
{
    Opened opened;
    const auto first = [&](const char *words) {
        opened.window.openFinder();
        opened.window.finder().line().setText(QString::fromUtf8(words));
        return opened.window.finder().list().rows().row(0).record;
    };
    CHECK(first("lw") == RecordRef{RecordType::Component, opened.workshop.wing.value()});
    CHECK(first("part LW") == RecordRef{RecordType::Component, opened.workshop.wing.value()});
    CHECK(first("lw left") == RecordRef{RecordType::Component, opened.workshop.wing.value()});
    CHECK(first("squawk 1") == RecordRef{RecordType::Squawk, opened.workshop.squawk.value()});
    CHECK(first("squawk 9").id == 0);
}

TEST_CASE("A part whose name begins with what is typed stands before a command that has it, too")
{
    Opened opened;
    const auto first = [&](const char *words) {
        opened.window.openFinder();
        opened.window.finder().line().setText(QString::fromUtf8(words));
        return opened.window.finder().list().rows().row(0).record;
    };
    // A command of the menu, while nothing is called so.
    CHECK(first("prefer").id < 0);
    Id<Component> rib;
    opened.view().session().change(QStringLiteral("Part"), [&](Edit &edit) {
        rib = edit.put(Component{.name = "Upper preference rib"});
    });
    CHECK(first("prefer") == RecordRef{RecordType::Component, rib.value()});
}

} // namespace lastrivet::ui
