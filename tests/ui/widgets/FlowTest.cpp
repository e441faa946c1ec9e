// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Flow.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::ui {

namespace {

/// Buttons of one width in a place of its own.
struct Row {
    explicit Row(int count)
    {
        for (int i = 0; i < count; ++i) {
            auto *button = new QPushButton(QStringLiteral("Button"), &place);
            button->setFixedSize(100, 30);
            flow->addWidget(button);
            buttons.push_back(button);
        }
    }
    void show(int width)
    {
        place.resize(width, 300);
        place.show();
        REQUIRE(QTest::qWaitForWindowExposed(&place));
        QCoreApplication::processEvents();
    }

    QWidget place;
    Flow *flow = new Flow(&place);
    std::vector<QPushButton *> buttons;
};

} // namespace

TEST_CASE("What finds no room in a row stands in the next one")
{
    Row row(3);
    row.show(250);
    CHECK(row.buttons[0]->y() == row.buttons[1]->y());
    CHECK(row.buttons[2]->y() > row.buttons[0]->geometry().bottom());
    for (const QPushButton *button : row.buttons)
        CHECK(row.place.rect().contains(button->geometry()));
}

TEST_CASE("What is wider than the row is made as narrow as it can be, and no narrower")
{
    Row row(1);
    auto *label = new QLabel(QString(400, QLatin1Char('m')), &row.place);
    label->setMinimumWidth(40);
    row.flow->addWidget(label);
    row.show(250);
    CHECK(label->width() == 250);
    CHECK(row.buttons[0]->width() == 100);
}

TEST_CASE("A widget is put between others, and low ones stand in the middle of their row")
{
    Row row(2);
    auto *low = new QPushButton(QStringLiteral("Low"), &row.place);
    low->setFixedSize(40, 10);
    row.flow->insertWidget(1, low);
    row.show(400);
    CHECK(row.flow->count() == 3);
    CHECK(low->x() > row.buttons[0]->geometry().right());
    CHECK(low->x() < row.buttons[1]->x());
    CHECK(low->y() == row.buttons[0]->y() + 10);
}

} // namespace lastrivet::ui
