// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CheckListModel.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"

#include <QSignalSpy>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("Ticking a line asks for it, and the list shows it once it is on record")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    CheckListModel model;
    test::ModelWatch watch(model);
    model.show(session->records(), workshop.wingClosing);
    REQUIRE(model.rowCount() == 3);
    Id<Check> asked;
    QObject::connect(&model, &CheckListModel::tickWanted, &model,
                     [&](Id<Check> check, bool) { asked = check; });
    model.setData(model.index(1), Qt::Checked, Qt::CheckStateRole);
    CHECK(asked == model.check(1).id);
    CHECK(model.tickedCount() == 0);

    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    session->change(QStringLiteral("Ticked"),
                    [&](Edit &edit) { acts::tick(edit, {asked}, workshop.builder, edit.today()); });
    model.show(session->records(), workshop.wingClosing);
    CHECK(changed.count() == 1);
    CHECK(model.tickedCount() == 1);
    CHECK(model.unticked({0}).size() == 1);
    watch.check();
}

} // namespace lastrivet::ui
