// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/AwayTable.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/TablesWindow.h"

#include <QComboBox>
#include <QFont>
#include <QLineEdit>

#include <catch2/catch.hpp>

// Limits of the project's own in place of those of the tables.
namespace lastrivet::ui {

namespace {

using Shown = test::TablesWindow;

} // namespace

TEST_CASE("A limit of the project's own can be asked for while the sum has an answer")
{
    Shown shown;
    const QString words = QStringLiteral("The project's own limit…");
    CHECK(test::button(shown.page, words));
    test::type(shown.page, QStringLiteral("Torque of a bolt: Drag of the nut"),
               QStringLiteral("5 mm"));
    // Those of the tables wait for a row to be chosen.
    CHECK_FALSE(test::button(shown.page, words));
    test::type(shown.page, QStringLiteral("Torque of a bolt: Drag of the nut"),
               QStringLiteral("5"));
    CHECK(test::button(shown.page, words));
}

TEST_CASE("A limit of the project's own that cannot be kept is not shown, and stays typed")
{
    Shown shown;
    const SumPanel &torque = shown.sum(0, 0);
    test::choice(shown.page, QStringLiteral("Torque of a bolt: Thread"))
        .setCurrentText(QStringLiteral("10-32"));
    const QString before = Shown::cell(torque, 0, 1);
    test::press(shown.page, QStringLiteral("The project's own limit…"));
    test::type(shown.page, QStringLiteral("At least"), QStringLiteral("18"));
    test::type(shown.page, QStringLiteral("At most"), QStringLiteral("22"));
    test::type(shown.page, QStringLiteral("Source"), QStringLiteral("Drawing 31"));
    const test::AwayTable away(shown.workshop, "local_state");
    test::press(shown.page, QStringLiteral("Keep"));
    CHECK(test::says(shown.page, QStringLiteral("It could not be kept")));
    CHECK(test::field(shown.page, QStringLiteral("At most")).text() == QStringLiteral("22"));
    CHECK(Shown::cell(torque, 0, 1) == before);
    away.putBack();
    test::press(shown.page, QStringLiteral("Keep"));
    CHECK(Shown::cell(torque, 0, 1) == QStringLiteral("18 – 22 in-lb"));
}

TEST_CASE("A limit of the project's own that is begun holds one for another thread back once")
{
    Shown shown;
    QString complained;
    QObject::connect(shown.session.get(), &Session::complained, &shown.page,
                     [&](const QString &sentence) { complained = sentence; });
    const auto own = QStringLiteral("The project's own limit…");
    const auto most = QStringLiteral("At most");
    QComboBox &thread = test::choice(shown.page, QStringLiteral("Torque of a bolt: Thread"));
    thread.setCurrentText(QStringLiteral("10-32"));
    test::press(shown.page, own);
    CHECK(test::says(shown.page, QStringLiteral("in the place of: Torque of a bolt, 10-32 thick, "
                                                "loaded in tension.")));
    test::type(shown.page, most, QStringLiteral("22"));
    // For the same it goes on.
    test::press(shown.page, own);
    CHECK(test::field(shown.page, most).text() == QStringLiteral("22"));
    CHECK(complained.isEmpty());
    thread.setCurrentText(QStringLiteral("1/4-28"));
    test::press(shown.page, own);
    CHECK(test::field(shown.page, most).text() == QStringLiteral("22"));
    CHECK(complained.startsWith(QStringLiteral("What is begun here is not kept.")));
    test::press(shown.page, own);
    CHECK(test::field(shown.page, most).text().isEmpty());
}

TEST_CASE("The project's own limit stands in the table's place, with its source, and is kept")
{
    Shown shown;
    test::choice(shown.page, QStringLiteral("Torque of a bolt: Thread"))
        .setCurrentText(QStringLiteral("10-32"));
    test::press(shown.page, QStringLiteral("The project's own limit…"));
    CHECK(test::says(shown.page, QStringLiteral("a merge brings it to no other")));
    test::type(shown.page, QStringLiteral("At least"), QStringLiteral("18"));
    test::type(shown.page, QStringLiteral("At most"), QStringLiteral("22"));
    test::press(shown.page, QStringLiteral("Keep"));
    CHECK(test::says(shown.page, QStringLiteral("It needs its source")));
    test::type(shown.page, QStringLiteral("At least"), QStringLiteral("-18"));
    test::press(shown.page, QStringLiteral("Keep"));
    CHECK(test::says(shown.page, QStringLiteral("not below zero")));
    test::type(shown.page, QStringLiteral("At least"), QStringLiteral("18"));
    QLineEdit &unit = test::field(shown.page, QStringLiteral("Unit"));
    const QString usual = unit.text();
    unit.clear();
    test::press(shown.page, QStringLiteral("Keep"));
    CHECK(test::says(shown.page, QStringLiteral("It needs its unit")));
    unit.setText(QStringLiteral("mkg"));
    test::press(shown.page, QStringLiteral("Keep"));
    CHECK(test::says(shown.page, QStringLiteral("Write the unit of the torque")));
    unit.setText(usual);
    test::type(shown.page, QStringLiteral("Source"), QStringLiteral("Drawing 31"));
    test::press(shown.page, QStringLiteral("Keep"));
    const SumPanel &torque = shown.sum(0, 0);
    CHECK(Shown::cell(torque, 0, 1) == QStringLiteral("18 – 22 in-lb"));
    CHECK(Shown::cell(torque, 0, 3) == QStringLiteral("Drawing 31"));
    CHECK(torque.figures().table().rows[1].isAside);
    // Told by more than a paler colour.
    CHECK(Shown::cell(torque, 1, 4).startsWith(QStringLiteral("set aside")));
    const auto isStruck = [&](int row, int column) {
        const auto *model = torque.figures().model();
        return model->index(row, column).data(Qt::FontRole).value<QFont>().strikeOut();
    };
    CHECK(isStruck(1, 1));
    CHECK_FALSE(isStruck(1, 4));
    CHECK_FALSE(isStruck(0, 1));
    // What is shown of a limit can be kept again as it stands.
    test::press(shown.page, QStringLiteral("The project's own limit…"));
    test::type(shown.page, QStringLiteral("At most"), QStringLiteral("1200.5"));
    test::press(shown.page, QStringLiteral("Keep"));
    test::press(shown.page, QStringLiteral("The project's own limit…"));
    CHECK(test::field(shown.page, QStringLiteral("At most")).text() == QStringLiteral("1200.5"));
    test::type(shown.page, QStringLiteral("At most"), QStringLiteral("22"));
    test::press(shown.page, QStringLiteral("Keep"));
    WorkshopPage again(*shown.session);
    test::picture(again, 1120, 680, "workshop-own");
    test::choice(again, QStringLiteral("Torque of a bolt: Thread"))
        .setCurrentText(QStringLiteral("10-32"));
    CHECK(Shown::cell(*again.topic(0).sums()[0], 0, 1) == QStringLiteral("18 – 22 in-lb"));
}

} // namespace lastrivet::ui
