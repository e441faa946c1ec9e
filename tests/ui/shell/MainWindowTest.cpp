// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "core/project/acts/SquawkActs.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/backup/BackupForm.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/LogbookForm.h"
#include "ui/prints/PrintForm.h"
#include "ui/shell/Finder.h"
#include "ui/shell/NewProjectForm.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/RecentProjects.h"
#include "ui/shell/StartPage.h"
#include "ui/shell/StarterTree.h"
#include "ui/squawks/SquawkCapture.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/RowListView.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QSettings>
#include <QTest>

#include <set>
#include <string>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

using Opened = test::WholeWindow;

} // namespace

TEST_CASE("Every page stands at its place, with a name, a picture and a key of its own")
{
    REQUIRE(pageList().size() == pageCount);
    std::set<QChar> keys;
    for (std::size_t i = 0; i < pageCount; ++i) {
        const PageDescription &page = pageList()[i];
        INFO(i);
        CHECK(page.id == PageId(i));
        CHECK_FALSE(page.name().isEmpty());
        CHECK(QFile::exists(QStringLiteral(":/icons/%1.svg").arg(page.icon)));
        CHECK(keys.insert(page.key()).second);
    }
}

TEST_CASE("Ctrl+P prints the log on its page, and asks for a paper on the others")
{
    Opened opened;
    opened.open();
    opened.window.resize(1280, 720);
    opened.window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&opened.window));
    QApplication::setActiveWindow(&opened.window);
    opened.window.view()->open(PageId::Log);
    Page &log = opened.window.view()->page(PageId::Log);
    auto *form = log.findChild<LogbookForm *>();
    REQUIRE(form);
    // A key that two have is nobody's: it has to work each time.
    for (int i = 0; i < 2; ++i) {
        form->hide();
        REQUIRE(opened.window.focusWidget());
        QTest::keyClick(opened.window.focusWidget(), Qt::Key_P, Qt::ControlModifier);
        CHECK(form->isVisible());
        CHECK_FALSE(opened.window.printForm().isVisible());
    }
    opened.window.view()->open(PageId::Parts);
    REQUIRE(opened.window.focusWidget());
    QTest::keyClick(opened.window.focusWidget(), Qt::Key_P, Qt::ControlModifier);
    CHECK(opened.window.printForm().isVisible());
}

TEST_CASE("One form at a time lies over the page; what is typed in the line for a squawk waits")
{
    Opened opened;
    opened.openAndShow();
    opened.window.view()->open(PageId::Parts);
    const auto press = [&](Qt::Key key) {
        REQUIRE(opened.window.focusWidget());
        QTest::keyClick(opened.window.focusWidget(), key, Qt::ControlModifier);
    };
    press(Qt::Key_N);
    auto *capture =
        opened.window.view()->findChild<SquawkCapture *>(QString(), Qt::FindDirectChildrenOnly);
    REQUIRE(capture);
    CHECK(capture->isVisible());
    auto *line = capture->findChild<QLineEdit *>();
    REQUIRE(line);
    line->setFocus();
    line->setText(QStringLiteral("Crack at rib"));
    press(Qt::Key_P);
    CHECK(opened.window.printForm().isVisible());
    CHECK_FALSE(capture->isVisible());
    Q_EMIT opened.window.view()->backupWanted();
    CHECK(opened.window.backupForm().isVisible());
    CHECK_FALSE(opened.window.printForm().isVisible());
    press(Qt::Key_N);
    CHECK(capture->isVisible());
    CHECK_FALSE(opened.window.backupForm().isVisible());
    CHECK(line->text() == QStringLiteral("Crack at rib"));
}

TEST_CASE("A line for a squawk that is asked for twice gives the keyboard back to where it was")
{
    Opened opened;
    opened.openAndShow();
    opened.window.view()->open(PageId::Log);
    QWidget *before = opened.window.focusWidget();
    REQUIRE(before);
    QTest::keyClick(before, Qt::Key_N, Qt::ControlModifier);
    auto *capture =
        opened.window.view()->findChild<SquawkCapture *>(QString(), Qt::FindDirectChildrenOnly);
    REQUIRE(capture);
    auto *line = capture->findChild<QLineEdit *>();
    REQUIRE(line);
    line->setFocus();
    QTest::keyClick(line, Qt::Key_N, Qt::ControlModifier);
    CHECK(capture->isVisible());
    QTest::keyClick(line, Qt::Key_Escape);
    CHECK_FALSE(capture->isVisible());
    CHECK(opened.window.focusWidget() == before);
}

TEST_CASE("What is typed into the log's line is there again after the window was closed")
{
    Opened opened;
    const QString folder = pathText(opened.workshop.folder());
    REQUIRE(opened.window.openFolder(folder));
    opened.window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&opened.window));
    opened.window.view()->open(PageId::Log);
    const auto line = [&]() -> QLineEdit & {
        return test::field(opened.window.view()->page(PageId::Log),
                           QStringLiteral("New log entry"));
    };
    QTest::keyClicks(&line(), QStringLiteral("2h15 rudder: dri"));
    opened.window.closeProject();
    REQUIRE(opened.window.openFolder(folder));
    opened.window.view()->open(PageId::Log);
    CHECK(line().text() == QStringLiteral("2h15 rudder: dri"));
    QTest::keyClick(&line(), Qt::Key_Return);
    CHECK(line().text().isEmpty());
    opened.window.closeProject();
    REQUIRE(opened.window.openFolder(folder));
    opened.window.view()->open(PageId::Log);
    CHECK(line().text().isEmpty());
}

TEST_CASE("Every kind of record has a page that shows it")
{
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        INFO(word(RecordType(i)));
        CHECK(pageFor(RecordType(i)) != PageId::Today);
    }
}

TEST_CASE("Each page opens by its key")
{
    Opened opened;
    opened.open();
    test::picture(opened.window, 1280, 720, "window-today");
    for (const PageDescription &page : pageList()) {
        // A key that the window or a menu has as well opens nothing.
        INFO(page.title << ", Ctrl+" << char(page.key().unicode()));
        QTest::keyClick(&opened.window, Qt::Key(page.key().unicode()), Qt::ControlModifier);
        CHECK(opened.window.view()->current() == page.id);
    }
}

TEST_CASE("A page that is not shown is told of all that happened when it is back")
{
    Opened opened;
    opened.open();
    ProjectView &view = *opened.window.view();
    view.open(PageId::Squawks);
    const auto &list = *view.page(PageId::Squawks).findChild<SquawkModel *>();
    const int before = list.rowCount();
    view.open(PageId::Log);
    const auto write = [&](const char *title) {
        view.session().change(QStringLiteral("Squawk"), [&](Edit &edit) {
            Squawk squawk;
            squawk.title = title;
            squawk.found_on = view.session().today();
            acts::addSquawk(edit, squawk);
        });
    };
    write("Chafed wire");
    write("Loose jam nut");
    CHECK(list.rowCount() == before);
    view.session().undo();
    write("Drain hole blocked");
    view.open(PageId::Squawks);
    REQUIRE(list.rowCount() == before + 2);
    write("Bent hinge");
    CHECK(list.rowCount() == before + 3);
}

TEST_CASE("Records are found by their words, from anywhere")
{
    Opened opened;
    opened.open();
    test::picture(opened.window, 1280, 720, "window-today");
    opened.window.openFinder();
    QTest::keyClicks(&opened.window.finder().line(), QStringLiteral("overdriven"));
    const auto &found = opened.window.finder().list().rows();
    REQUIRE(found.rowCount() == 1);
    CHECK(found.row(0).record == RecordRef{RecordType::Squawk, opened.workshop.squawk.value()});
    test::picture(opened.window, 1280, 720, "finder");
    QTest::keyClick(&opened.window.finder().line(), Qt::Key_Return);
    CHECK(opened.window.view()->current() == PageId::Squawks);
}

TEST_CASE("The menu names what undo takes back")
{
    Opened opened;
    opened.open();
    opened.window.view()->session().change(QStringLiteral("Nuts & bolts renamed"), [&](Edit &edit) {
        edit.update(opened.workshop.squawk, [](Squawk &squawk) { squawk.title = "Dent"; });
    });
    QStringList words;
    for (const QAction *action : opened.window.findChildren<QAction *>())
        words << action->text();
    CHECK(words.contains(QStringLiteral("&Undo: Nuts && bolts renamed")));
}

TEST_CASE("What is being typed is kept when the window is closed")
{
    test::Workshop workshop;
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    {
        MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
        REQUIRE(window.openFolder(pathText(workshop.folder())));
        window.show();
        window.view()->goTo({RecordType::Squawk, workshop.squawk.value()});
        QLineEdit &title = test::field(window, QStringLiteral("Title"));
        title.setFocus();
        title.selectAll();
        QTest::keyClicks(&title, QStringLiteral("Dented flange"));
        window.close();
    }
    CHECK(workshop.session()->records()->find(workshop.squawk)->title == "Dented flange");
}

TEST_CASE("A project is one, by whatever way it is opened, and is listed by its own name")
{
    Opened opened;
    const QString folder = pathText(opened.workshop.folder());
    const QString other = pathText(opened.folder / "way");
    REQUIRE(QFile::link(folder, other));
    REQUIRE(opened.window.openFolder(folder));
    const ProjectView *view = opened.window.view();
    REQUIRE(opened.window.openFolder(other));
    CHECK(opened.window.view() == view);
    const RecentProjects recent(opened.settings);
    REQUIRE(recent.folders().size() == 1);
    const QString listed = recent.folders().front();
    CHECK(recent.name(listed) == toQt(opened.window.view()->session().records()->project.name));
    RecentProjects(opened.settings).add(other, QStringLiteral("Wing & tail"));
    CHECK(recent.folders().size() == 1);
    CHECK(recent.label(other) == QStringLiteral("Wing && tail"));
}

TEST_CASE("The finder says when more records have the words than it lists")
{
    Opened opened;
    opened.open();
    opened.window.view()->session().change(QStringLiteral("Ribs"), [](Edit &edit) {
        for (int i = 0; i < 20; ++i)
            edit.put(Component{.name = "Zwiebel " + std::to_string(i)});
    });
    opened.window.show();
    opened.window.openFinder();
    QTest::keyClicks(&opened.window.finder().line(), QStringLiteral("zwiebel"));
    const auto &found = opened.window.finder().list().rows();
    REQUIRE(found.rowCount() == 13);
    CHECK(found.row(12).title.startsWith(QStringLiteral("More records have these words")));
}

TEST_CASE("The keyboard goes back from the finder to where it was")
{
    Opened opened;
    opened.open();
    opened.window.show();
    opened.window.view()->goTo({RecordType::Squawk, opened.workshop.squawk.value()});
    QLineEdit &title = test::field(opened.window, QStringLiteral("Title"));
    title.setFocus();
    opened.window.openFinder();
    QTest::keyClick(&opened.window.finder().line(), Qt::Key_Escape);
    CHECK(title.hasFocus());
}

TEST_CASE("What is no project is refused with one sentence, and the start page stays")
{
    Opened opened;
    CHECK_FALSE(opened.window.openFolder(pathText(opened.folder.path())));
    CHECK_FALSE(opened.window.view());
    test::picture(opened.window, 1280, 720, "start-refused");
}

TEST_CASE("A new project is made on one page and opens")
{
    Opened opened;
    test::picture(opened.window, 1280, 720, "start");
    NewProjectForm &form = opened.window.startPage().form();
    form.setPlace(pathText(opened.folder.path()));
    for (QLineEdit *line : form.findChildren<QLineEdit *>()) {
        if (line->accessibleName() == QStringLiteral("Name of the project"))
            line->setText(QStringLiteral("My wing & tail"));
        if (line->accessibleName() == QStringLiteral("Builder"))
            line->setText(QStringLiteral("Robin Vale"));
    }
    QTest::keyClick(&form, Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(opened.window.view());
    const auto records = opened.window.view()->session().records();
    CHECK(records->project.name == "My wing & tail");
    REQUIRE(records->people.size() == 1);
    CHECK(records->project.builder_id == records->people.begin()->id);
    CHECK(records->components.isEmpty());
}

TEST_CASE("A new project begins with the parts that were left ticked, and their closings")
{
    Opened opened;
    test::picture(opened.window, 1280, 720, "start");
    NewProjectForm &form = opened.window.startPage().form();
    form.setPlace(pathText(opened.folder.path()));
    for (QLineEdit *line : form.findChildren<QLineEdit *>()) {
        if (line->accessibleName() == QStringLiteral("Name of the project") ||
            line->accessibleName() == QStringLiteral("Builder"))
            line->setText(QStringLiteral("Robin Vale"));
    }
    for (QComboBox *box : form.findChildren<QComboBox *>()) {
        if (box->accessibleName() == QStringLiteral("Begin with"))
            box->setCurrentText(QStringLiteral("Wood"));
    }
    auto *tree = form.findChild<StarterTree *>();
    REQUIRE(tree);
    REQUIRE(tree->topLevelItemCount() > 5);
    // The left wing, by the keyboard.
    tree->setFocus();
    QTest::keyClick(tree, Qt::Key_Space);
    CHECK(tree->leftOut().contains("LW"));
    CHECK(tree->leftOut().contains("LW-SP"));
    test::picture(opened.window, 1280, 720, "start-wood");
    QTest::keyClick(&form, Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(opened.window.view());
    const auto records = opened.window.view()->session().records();
    CHECK(records->components.size() > 25);
    CHECK(records->closings.size() > 10);
    for (const Component &part : records->components)
        CHECK_FALSE(part.code.starts_with("LW"));
}

TEST_CASE("The window can turn dark, and is light again afterwards")
{
    Opened opened;
    opened.open();
    test::theme().choose(Theme::Choice::Dark);
    test::picture(opened.window, 1280, 720, "window-dark");
    test::theme().choose(Theme::Choice::Light);
    const QImage light = opened.window.grab().toImage();
    CHECK(light.pixelColor(600, 500).lightnessF() > 0.8);
}

TEST_CASE("A project is offered to be opened again, also where there was none to offer before")
{
    Opened opened;
    QMenu *file = opened.window.menuBar()->actions().front()->menu();
    REQUIRE(file);
    const auto *again = file->findChild<QMenu *>();
    REQUIRE(again);
    Q_EMIT file->aboutToShow();
    CHECK_FALSE(again->isEnabled());
    opened.open();
    Q_EMIT file->aboutToShow();
    CHECK(again->isEnabled());
    REQUIRE(again->actions().size() == 1);
    CHECK(again->actions().front()->toolTip() == opened.window.openedFolder());
}

} // namespace lastrivet::ui
