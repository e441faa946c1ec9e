// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/parts/SectionList.h"
#include "ui/stores/StoreBoard.h"
#include "ui/stores/StoresPage.h"

#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <memory>

namespace lastrivet::test {

/// The page in a window of its own, with what was complained of last.
struct StoresWindow {
    StoresWindow()
    {
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complaint = sentence; });
        session->change(QStringLiteral("Stores"), [this](Edit &edit) { fill(edit); });
        page.resize(1180, 680);
        page.show();
        page.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&page));
    }

    void fill(Edit &edit)
    {
        ProjectFacts facts = edit.records().project;
        facts.currency = "CAD";
        edit.put(facts);
        PartLine line;
        line.shipment = "Crate 2";
        line.name = "Ribs";
        line.quantity = 4;
        line.component_id = workshop.bay;
        line.expected_on = Moment::parse("2026-03-04");
        line.unit_price = 2100;
        line.currency = "CAD";
        ribs = edit.put(line);
        line.name = "Bolts";
        line.quantity = 80;
        line.component_id = {};
        line.expected_on.reset();
        bolts = edit.put(line);
        line.shipment = "Crate 1";
        line.name = "Fin";
        line.quantity = line.received_quantity = 1;
        line.received_on = Moment::parse("2026-01-01");
        edit.put(line);
    }

    QTreeView &list(ui::StoreBoard &board) { return board.list().view(); }
    QString cell(ui::StoreBoard &board, int row, int column)
    {
        return list(board).model()->index(row, column).data().toString();
    }
    Snapshot records() const { return session->records(); }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::StoresPage page{*session};
    QString complaint;
    Id<PartLine> ribs;
    Id<PartLine> bolts;
};

/// What is said where a begun form holds another back.
inline const auto notKept = QStringLiteral("What is begun here is not kept.");

} // namespace lastrivet::test
