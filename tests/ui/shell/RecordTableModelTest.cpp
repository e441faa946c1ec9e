// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/RecordTableModel.h"

#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"

#include <QSignalSpy>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("A table of records follows additions, changes, withdrawals and undo row by row")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    RecordTableModel model(session->records(), RecordType::Squawk);
    test::ModelWatch watch(model);
    QObject::connect(session.get(), &Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    QSignalSpy resets(&model, &QAbstractItemModel::modelReset);
    REQUIRE(model.rowCount() == 1);

    Id<Squawk> added;
    session->change(QStringLiteral("Squawk 2"), [&](Edit &edit) {
        Squawk squawk = *edit.records().find(workshop.squawk);
        squawk.id = {};
        squawk.number = "2";
        added = edit.put(squawk);
    });
    CHECK(model.rowCount() == 2);
    CHECK(model.rowOf(added.value()) == 1);

    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    session->change(QStringLiteral("Title"), [&](Edit &edit) {
        edit.update(added, [](Squawk &squawk) { squawk.title = "Loose clamp"; });
    });
    CHECK(changed.count() == 1);
    session->change(QStringLiteral("Withdrawn"),
                    [&](Edit &edit) { edit.withdraw(workshop.squawk, "a mistake"); });
    CHECK(model.rowCount() == 1);
    session->undo();
    CHECK(model.rowCount() == 2);
    CHECK(resets.count() == 0);
    watch.check();
}

} // namespace lastrivet::ui
