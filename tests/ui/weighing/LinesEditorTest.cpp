// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LinesEditor.h"

#include "tests/ui/support/WholeWindow.h"
#include "tests/ui/weighing/WeighingShown.h"
#include "ui/shell/ProjectView.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

using test::scales;
using test::weighLikeTheHandbook;
using Shown = test::WeighingShown;

namespace {

/// A new weighing in a whole window, with "nose" typed into its first cell and not handed in.
struct BegunCell {
    BegunCell()
    {
        opened.openAndShow();
        ProjectView &view = *opened.window.view();
        view.session().change(QStringLiteral("Weighed"), [this](Edit &edit) {
            Weighing weighing;
            weighing.weighed_on = edit.today();
            weighed = edit.put(weighing);
        });
        view.goTo({RecordType::Weighing, weighed.value()});
        QApplication::processEvents();
        for (LinesEditor *each : view.findChildren<LinesEditor *>()) {
            if (each->view().accessibleName() == scales)
                editor = each;
        }
        REQUIRE(editor);
        editor->view().setCurrentIndex(editor->model().index(0, 0));
        editor->view().edit(editor->model().index(0, 0));
        cell = qobject_cast<QLineEdit *>(QApplication::focusWidget());
        REQUIRE(cell);
        QTest::keyClicks(cell, QStringLiteral("nose"));
    }

    test::WholeWindow opened;
    Id<Weighing> weighed;
    LinesEditor *editor = nullptr;
    QLineEdit *cell = nullptr;
};

} // namespace

TEST_CASE("A line whose arm was not typed counts nowhere, and what is missing is said")
{
    Shown shown;
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    LinesEditor &editor = shown.lines(scales);
    const QAbstractItemModelTester tester(&editor.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    shown.type(scales, 0, 0, "left main");
    shown.type(scales, 0, 1, "300");
    shown.type(scales, 1, 0, "nose");
    shown.type(scales, 1, 1, "100");
    CHECK(shown.weighing().scale_readings.empty());
    CHECK(test::says(shown.view, QStringLiteral("left main (missing: Arm")));
    CHECK(test::says(shown.view, QStringLiteral("nose (missing: Arm")));
    CHECK(test::says(shown.view, QStringLiteral("The weighing has no scale readings.")));
    CHECK(editor.isBegun());
    // The one that is whole goes on record, and the cursor with it.
    editor.view().setCurrentIndex(editor.model().index(1, 4));
    shown.type(scales, 1, 4, "-700");
    REQUIRE(shown.weighing().scale_readings.size() == 1);
    CHECK(shown.weighing().scale_readings.front().point == "nose");
    CHECK(shown.weighing().scale_readings.front().arm == Approx(-700));
    CHECK(editor.view().currentIndex().row() == 0);
    CHECK(test::says(shown.view, QStringLiteral("Not all lines are in this sum")));
    // An arm of nothing is one that was typed.
    shown.type(scales, 1, 4, "0");
    REQUIRE(shown.weighing().scale_readings.size() == 2);
    CHECK(shown.weighing().scale_readings.back().point == "left main");
    CHECK(shown.weighing().scale_readings.back().arm == 0);
    CHECK_FALSE(editor.isBegun());
    CHECK_FALSE(test::says(shown.view, QStringLiteral("Not all lines are in this sum")));
}

TEST_CASE("What a loading or the limits lack is said where their sums stand")
{
    Shown shown;
    test::press(shown.view, QStringLiteral("Loading and limits"));
    test::press(shown.view, QStringLiteral("New loading"));
    const QString aboard = QStringLiteral("On board, besides the empty aeroplane");
    const QString loading = QStringLiteral("Not all that is on board is in these sums");
    shown.type(aboard, 0, 0, "pilot");
    shown.type(aboard, 0, 1, "170");
    CHECK(test::says(shown.view, loading));
    shown.type(aboard, 0, 2, "80");
    CHECK_FALSE(test::says(shown.view, loading));
    test::press(shown.view, QStringLiteral("Write the limits down"));
    const QString corners = QStringLiteral("Corners of the limits, in their order");
    const QString limits = QStringLiteral("Not all corners are in the limits");
    shown.type(corners, 0, 0, "1500");
    CHECK(test::says(shown.view, limits));
    shown.type(corners, 0, 1, "80");
    CHECK_FALSE(test::says(shown.view, limits));
}

TEST_CASE("A line that lacks something waits with its weighing, and can be taken out")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    const auto first = shown.weighing().id;
    LinesEditor &editor = shown.lines(scales);
    shown.type(scales, 3, 0, "tail");
    test::press(shown.view, QStringLiteral("New weighing"));
    CHECK(editor.model().lines().empty());
    CHECK(editor.model().rowCount() == 1);
    CHECK(editor.isBegun());
    editor.takeKeyboard();
    CHECK(editor.model().lines().size() == 3);
    CHECK(editor.view().currentIndex() == editor.model().index(3, 1));
    CHECK(test::says(shown.view, QStringLiteral("tail (missing: Reading")));
    CHECK(test::says(shown.view, QStringLiteral("Not all lines are in this sum")));
    test::press(editor, QStringLiteral("Take the line out"));
    CHECK_FALSE(editor.isBegun());
    CHECK_FALSE(test::says(shown.view, QStringLiteral("Not all lines are in this sum")));
    CHECK_FALSE(test::says(shown.view, QStringLiteral("counted nowhere")));
    CHECK(shown.session->records()->find(first)->scale_readings.size() == 3);
}

TEST_CASE("What is still being typed into a line holds the window back like a line that is begun")
{
    BegunCell typing;
    CHECK_FALSE(typing.editor->isBegun());
    REQUIRE_FALSE(typing.opened.window.close());
    CHECK(test::says(typing.opened.window, QStringLiteral("nose (missing: Reading")));
    CHECK(typing.opened.window.close());
}

TEST_CASE("What is typed right after a click on the chosen cell is all there")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    shown.view.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&shown.view));
    QTableView &table = shown.lines(scales).view();
    const QModelIndex reading = shown.lines(scales).model().index(0, 1);
    table.setFocus();
    table.setCurrentIndex(reading);
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, table.visualRect(reading).center());
    QTest::keyClick(&table, Qt::Key_7);
    auto *cell = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(cell);
    QTest::keyClicks(cell, QStringLiteral("01"));
    QTest::keyClick(cell, Qt::Key_Return);
    QApplication::processEvents();
    CHECK(shown.weighing().scale_readings.front().reading == 701);
}

TEST_CASE("What is being typed into a line stays while something else of its record changes")
{
    BegunCell typing;
    typing.opened.window.view()->session().change(
        QStringLiteral("Weighed by two"), [&](Edit &edit) {
            edit.update(typing.weighed, [](Weighing &weighing) { weighing.note = "by two"; });
        });
    CHECK(QApplication::focusWidget() == typing.cell);
    CHECK(typing.cell->text() == QStringLiteral("nose"));
}

TEST_CASE("The Tab key does not lead from a line to the button that takes it out")
{
    Shown shown;
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    LinesEditor &editor = shown.lines(scales);
    shown.view.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&shown.view));
    shown.type(scales, 0, 0, "left main");
    shown.type(scales, 0, 1, "300");
    editor.view().setFocus();
    QTest::keyClick(&editor.view(), Qt::Key_Tab);
    REQUIRE(QApplication::focusWidget());
    CHECK(qobject_cast<QPushButton *>(QApplication::focusWidget()) == nullptr);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab);
    CHECK(QApplication::focusWidget() == &editor.view());
    CHECK(editor.model().begunLines().size() == 1);
}

} // namespace lastrivet::ui
