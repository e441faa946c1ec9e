// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PacketForm.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

namespace lastrivet::ui {

TEST_CASE("The form for a packet of many closings names the first and counts the others")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    IdSet<Closing> closings;
    REQUIRE(session->change(QStringLiteral("Closings"), [&](Edit &edit) {
        for (int i = 10; i < 40; ++i) {
            Closing closing;
            closing.component_id = workshop.rudder;
            closing.title = "Rudder, rib bay " + std::to_string(i);
            closings.push_back(acts::addClosing(edit, closing, {}));
        }
    }));
    std::ranges::sort(closings);
    PacketForm form(*session);
    test::picture(form, 800, 600, "packet-form-many");
    form.start(closings);
    CHECK(test::says(form, QStringLiteral("and 18 more")));
    form.start({closings.front()});
    CHECK(test::says(form, QStringLiteral("Rudder, rib bay")));
    CHECK_FALSE(test::says(form, QStringLiteral("more")));
}

} // namespace lastrivet::ui
