// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PacketForm.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/Inspecting.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/closings/PacketTask.h"

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

TEST_CASE("The papers of a visit and of a signature are named after the closing, as packets are")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const auto pointOf = [&](Id<Closing> closing) {
        return test::Workshop::point(*session->records(), closing, HoldPointKind::PreCover);
    };
    const auto visitTo = [&](IdSet<HoldPoint> points) {
        std::ranges::sort(points);
        Id<Inspection> id;
        REQUIRE(session->change(QStringLiteral("Asked"), [&](Edit &edit) {
            Inspection visit;
            visit.inspector_id = workshop.inspector;
            visit.hold_point_ids = points;
            id = acts::askForInspection(edit, visit);
        }));
        return id;
    };
    const auto wing = pointOf(workshop.wingClosing);
    const auto aileron = pointOf(workshop.aileronClosing);
    CHECK(changesName(*session, wing) ==
          QStringLiteral("What changed since the signature, Left wing, upper skin"));
    CHECK(correctionsName(*session, visitTo({wing})) ==
          QStringLiteral("Corrections report Left wing, upper skin"));
    CHECK(correctionsName(*session, visitTo({wing, aileron})) ==
          QStringLiteral("Corrections report 2 closings"));
    CHECK(correctionsName(*session, {}) == QStringLiteral("Corrections report"));
}

} // namespace lastrivet::ui
