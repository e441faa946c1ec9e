// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CloseForm.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"

#include <QLabel>
#include <QLineEdit>
#include <QString>
#include <QTest>

#include <catch2/catch.hpp>

#include <string>

namespace lastrivet::ui {

TEST_CASE("Of what an opening does to many records the form names the first few")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        acts::close(edit, workshop.wingClosing, {edit.today(), workshop.builder, "in haste"});
        for (int i = 0; i < 12; ++i) {
            Squawk squawk;
            squawk.number = std::to_string(20 + i);
            squawk.component_id = workshop.bay;
            squawk.title = "Scratch";
            squawk.found_on = edit.today();
            edit.put(squawk);
        }
    }));
    CloseForm form(*session);
    form.startReopening(*session->records()->find(workshop.wingClosing));
    test::picture(form, 700, 500, "opened-again");
    CHECK(test::says(form, QStringLiteral("Can be reached again")));
    CHECK(test::says(form, QStringLiteral("more.")));
    for (const QLabel *label : form.findChildren<QLabel *>())
        CHECK(label->text().count(QStringLiteral("Can be reached again")) <= 5);
}

TEST_CASE("What an opening does is told for the day that is typed")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const auto closing = workshop.aileronClosing;
    const auto before = session->records();
    REQUIRE(session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        for (const HoldPoint &point : before->hold_points) {
            if (point.closing_id != closing)
                continue;
            SignOff signature;
            signature.hold_point_id = point.id;
            signature.person_id = workshop.inspector;
            signature.signed_on = edit.today().plusDays(-2);
            edit.put(signature);
        }
        acts::close(edit, closing, {*edit.today().plusDays(-2), workshop.builder, ""});
    }));
    CloseForm form(*session);
    form.startReopening(*session->records()->find(closing));
    test::picture(form, 700, 500, "opened-on");
    CHECK(test::says(form, QStringLiteral("No longer holds")));
    test::type(form, QStringLiteral("On"), QStringLiteral("2026-03-12"));
    QTest::keyClick(&test::field(form, QStringLiteral("On")), Qt::Key_Return);
    // Of one day without times none is after the other.
    CHECK_FALSE(test::says(form, QStringLiteral("No longer holds")));
}

} // namespace lastrivet::ui
