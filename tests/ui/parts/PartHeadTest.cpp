// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartHead.h"
#include "tests/ui/support/Looks.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/parts/PartFigures.h"

#include <QCheckBox>
#include <QCoreApplication>
#include <QLabel>

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("What a part is has the whole width where it does not fit beside the box")
{
    Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Placed"), [&](Edit &edit) {
        edit.update(workshop.bay, [](Component &bay) {
            bay.place = "On the long trestles by the door";
            bay.plan_ref = "Sheet 14, detail C";
        });
    }));
    ui::PartHead head(*session);
    ui::PartFigures figures;
    figures.minutes = Minutes{135};
    head.show(workshop.bay, figures);
    head.setVisible(true);
    const auto *box = head.findChild<QCheckBox *>();
    const QLabel *facts = nullptr;
    for (const QLabel *label : head.findChildren<QLabel *>()) {
        if (label->text().contains(QStringLiteral("Sheet 14")))
            facts = label;
    }
    REQUIRE(box);
    REQUIRE(facts);
    const auto settle = [&](int width) {
        head.resize(width, 160);
        // The layout turns first, then it places what lies in it.
        for (int round = 0; round < 3; ++round)
            QCoreApplication::processEvents();
    };
    settle(1200);
    CHECK(box->x() >= facts->geometry().right());
    settle(480);
    CHECK(box->y() >= facts->geometry().bottom());
    CHECK(facts->width() >= 440);
    CHECK(cutTexts(head).isEmpty());
}

} // namespace lastrivet::test
