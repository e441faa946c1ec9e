// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/widgets/MessageLine.h"

#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QSettings>
#include <QTest>

#include <catch2/catch.hpp>

#include <string>

namespace lastrivet::ui {

namespace {

using Opened = test::WholeWindow;

} // namespace

TEST_CASE("The window is not larger than its screen, also where it was when it was closed")
{
    Opened opened;
    const QSize room = opened.window.screen()->availableGeometry().size();
    CHECK(opened.window.width() <= room.width());
    CHECK(opened.window.height() < room.height());
    opened.window.resize(room + QSize(300, 200));
    opened.settings.setValue(QStringLiteral("window"), opened.window.saveGeometry());
    const MainWindow again{
        {opened.settings, opened.workshop.executor, test::theme(), opened.workshop.clock}};
    CHECK(again.width() <= room.width());
    CHECK(again.height() < room.height());
}

TEST_CASE("A window that was closed farther off than this screen reaches is moved onto it")
{
    Opened opened;
    const QRect room = opened.window.screen()->availableGeometry();
    opened.window.setGeometry(room.right() - 300, room.bottom() - 250, 600, 500);
    opened.settings.setValue(QStringLiteral("window"), opened.window.saveGeometry());
    const MainWindow again{
        {opened.settings, opened.workshop.executor, test::theme(), opened.workshop.clock}};
    CHECK(room.contains(again.geometry()));
}

TEST_CASE("Undo takes back what was changed last, also while the keyboard is in an empty line")
{
    Opened opened;
    opened.openAndShow();
    ProjectView &view = *opened.window.view();
    view.open(PageId::Squawks);
    view.session().change(QStringLiteral("Squawk renamed"), [&](Edit &edit) {
        edit.update(opened.workshop.squawk, [](Squawk &squawk) { squawk.title = "Dent"; });
    });
    const auto title = [&] {
        return view.session().records()->find(opened.workshop.squawk)->title;
    };
    REQUIRE(title() == "Dent");
    QLineEdit *line = nullptr;
    for (QLineEdit *each : view.page(PageId::Squawks).findChildren<QLineEdit *>()) {
        const bool isEmpty = each->isVisible() && each->isEnabled() && each->text().isEmpty();
        if (!line && isEmpty && !each->focusProxy() && !qobject_cast<EntryEdit *>(each))
            line = each;
    }
    REQUIRE(line);
    line->setFocus();
    QTest::keySequence(line, QKeySequence::Undo);
    CHECK(title() == "Overdriven rivet at rib 3");
    QTest::keySequence(line, QKeySequence::Redo);
    CHECK(title() == "Dent");
}

TEST_CASE("A key for undo takes a change of very many records back when it is pressed twice")
{
    Opened opened;
    opened.openAndShow();
    ProjectView &view = *opened.window.view();
    const auto before = view.session().records();
    view.session().change(QStringLiteral("Imported list"), [](Edit &edit) {
        for (int i = 0; i < 51; ++i) {
            Component part;
            part.name = "Rib " + std::to_string(i);
            edit.put(part);
        }
    });
    const auto parts = [&] { return view.session().records()->components.size(); };
    const auto all = parts();
    const auto press = [&](QKeySequence::StandardKey key) {
        REQUIRE(opened.window.focusWidget());
        QTest::keySequence(opened.window.focusWidget(), key);
        return view.findChild<MessageLine *>()->text();
    };
    CHECK(
        press(QKeySequence::Undo).startsWith(QStringLiteral("“Imported list” changed 51 records")));
    CHECK(parts() == all);
    press(QKeySequence::Undo);
    CHECK(*view.session().records() == *before);
    press(QKeySequence::Redo);
    CHECK(parts() == all);
    // It was told of another state of the records.
    press(QKeySequence::Undo);
    CHECK(parts() == all);
}

TEST_CASE("A project that is closed leaves the keyboard on the button that opens it again")
{
    Opened opened;
    opened.openAndShow();
    const QString folder = opened.window.openedFolder();
    QTest::keySequence(opened.window.focusWidget(), QKeySequence::Close);
    REQUIRE_FALSE(opened.window.view());
    auto *again = qobject_cast<QPushButton *>(opened.window.focusWidget());
    REQUIRE(again);
    CHECK(again->hasFocus());
    CHECK(again->toolTip() == folder);
    QTest::keyClick(again, Qt::Key_Return);
    REQUIRE(opened.window.view());
    CHECK(opened.window.openedFolder() == folder);
}

} // namespace lastrivet::ui
