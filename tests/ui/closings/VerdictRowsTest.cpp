// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VerdictRows.h"
#include "core/project/acts/Inspecting.h"
#include "tests/ui/support/Workshop.h"

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("A visit for a closing ticks what is not signed yet, and nothing that is")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const auto closing = workshop.aileronClosing;
    const auto point =
        test::Workshop::point(*session->records(), closing, HoldPointKind::PreCover);
    VerdictRows rows(*session);
    rows.start({closing}, {});
    CHECK(rows.chosen() == IdSet<HoldPoint>{point});
    session->change(QStringLiteral("Held"), [&](Edit &edit) {
        acts::HeldInspection held{
            {}, InspectionKind::PreCover, *Moment::parse("2026-03-12"), {}, {}};
        held.inspector_id = workshop.inspector;
        held.verdicts = {{point, SignOffResult::Accepted, {}}};
        acts::holdInspection(edit, held);
    });
    rows.start({closing}, {});
    CHECK(rows.chosen().empty());
    CHECK(rows.verdicts().empty());
    rows.start({}, {point});
    CHECK(rows.chosen() == IdSet<HoldPoint>{point});
}

} // namespace lastrivet::ui
