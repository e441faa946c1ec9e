// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CloseForm.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"

#include <QLabel>
#include <QString>

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

} // namespace lastrivet::ui
