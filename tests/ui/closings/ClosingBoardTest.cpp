// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingBoard.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/Workshop.h"
#include "ui/widgets/RowListView.h"

#include <QApplication>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include <catch2/catch.hpp>

#include <cstddef>
#include <string>
#include <vector>

namespace lastrivet::ui {

TEST_CASE("On a low board the whole of the closing that the keyboard comes to is seen")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Closings"), [&](Edit &edit) {
        for (int i = 0; i < 8; ++i) {
            Closing closing;
            closing.component_id = workshop.rudder;
            closing.title = "Rudder, rib bay " + std::to_string(i);
            acts::addClosing(edit, closing, {});
        }
    }));
    ClosingBoard board(*session);
    board.resize(1024, 180);
    board.show();
    REQUIRE(QTest::qWaitForWindowExposed(&board));
    QApplication::setActiveWindow(&board);
    const auto *area = board.findChild<QScrollArea *>();
    REQUIRE(area);
    board.firstList()->setFocus();
    int looked = 0;
    for (int i = 0; i < 10; ++i) {
        QCoreApplication::processEvents();
        bool isLast = true;
        const auto *list = qobject_cast<RowListView *>(QApplication::focusWidget());
        if (list && list->currentIndex().isValid()) {
            const QRect row = list->visualRect(list->currentIndex());
            const int top = list->viewport()->mapTo(area->viewport(), row.topLeft()).y();
            INFO(list->currentIndex().data().toString().toStdString());
            CHECK(top >= 0);
            CHECK(top + row.height() <= area->viewport()->height());
            isLast = list->currentIndex().row() + 1 == list->model()->rowCount();
            ++looked;
        }
        // Behind the last row the key scrolls the board.
        QTest::keyClick(QApplication::focusWidget(),
                        i % 2 == 0 && !isLast ? Qt::Key_Down : Qt::Key_Tab);
    }
    CHECK(looked > 3);
}

TEST_CASE("The first closing of a column is seen with the head of the column")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Closings"), [&](Edit &edit) {
        for (int i = 0; i < 12; ++i) {
            Closing closing;
            closing.component_id = workshop.rudder;
            closing.title = "Rudder, rib bay " + std::to_string(i);
            acts::addClosing(edit, closing, {});
        }
    }));
    ClosingBoard board(*session);
    board.resize(1024, 300);
    board.show();
    REQUIRE(QTest::qWaitForWindowExposed(&board));
    QApplication::setActiveWindow(&board);
    auto *area = board.findChild<QScrollArea *>();
    REQUIRE(area);
    auto *list = qobject_cast<RowListView *>(board.firstList());
    REQUIRE(list);
    area->verticalScrollBar()->setValue(60);
    board.returnTo(Id<Closing>{list->rows().row(0).record.id});
    QCoreApplication::processEvents();
    CHECK(list->parentWidget()->mapTo(area->viewport(), QPoint()).y() >= 0);
}

TEST_CASE("Left and Right go from a column of the board to the one beside it, and not beyond")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    ClosingBoard board(*session);
    board.resize(1024, 600);
    board.show();
    REQUIRE(QTest::qWaitForWindowExposed(&board));
    QApplication::setActiveWindow(&board);
    std::vector<RowListView *> columns;
    for (RowListView *list : board.lists()) {
        if (list->isVisible() && list->rows().rowCount() > 0)
            columns.push_back(list);
    }
    // The wing, the aileron and the rudder stand differently.
    REQUIRE(columns.size() == 3);
    REQUIRE(columns.front() == board.firstList());
    columns.front()->setFocus();
    QTest::keyClick(columns.front(), Qt::Key_Left);
    CHECK(columns.front()->hasFocus());
    for (const auto next : {std::size_t{1}, std::size_t{2}}) {
        QTest::keyClick(columns[next - 1], Qt::Key_Right);
        CHECK(columns[next]->hasFocus());
        CHECK(columns[next]->currentIndex().row() == 0);
        CHECK_FALSE(columns[next - 1]->currentIndex().isValid());
    }
    QTest::keyClick(columns.back(), Qt::Key_Right);
    CHECK(columns.back()->hasFocus());
    QTest::keyClick(columns.back(), Qt::Key_Left);
    CHECK(columns[1]->hasFocus());
    CHECK(bool(board.chosenClosing()));
}

} // namespace lastrivet::ui
