// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursTableModel.h"
#include "tests/ui/support/ModelWatch.h"

#include <catch2/catch.hpp>

namespace lastrivet::test {

using Row = print::FigureTable::Row;

namespace {

print::FigureTable wing()
{
    const RecordRef rib{RecordType::Component, 3};
    return {{QStringLiteral("Part"), QStringLiteral("Own")},
            {Row{{QStringLiteral("Wing"), QStringLiteral("1")}, 0, false, {}},
             Row{{QStringLiteral("Bay"), QStringLiteral("2")}, 1, false, {}},
             Row{{QStringLiteral("Rib"), QStringLiteral("3")}, 2, false, rib},
             Row{{QStringLiteral("Tip"), QStringLiteral("4")}, 1, false, {}},
             Row{{QStringLiteral("In all"), QStringLiteral("10")}, 0, true, {}}},
            {}};
}

} // namespace

TEST_CASE("A table of figures is a tree by the depth of its rows")
{
    ui::HoursTableModel model;
    ModelWatch watch(model);
    model.show(wing());
    REQUIRE(model.rowCount() == 2);
    const QModelIndex top = model.index(0, 0);
    CHECK(model.rowCount(top) == 2);
    CHECK(model.index(1, 1, top).data().toString() == QStringLiteral("4"));
    const QModelIndex rib = model.indexOf({RecordType::Component, 3});
    REQUIRE(rib.isValid());
    CHECK(rib.data().toString() == QStringLiteral("Rib"));
    CHECK(rib.parent().data().toString() == QStringLiteral("Bay"));
    CHECK_FALSE(model.indexOf({RecordType::Component, 4}).isValid());
    watch.check();
    model.show({{QStringLiteral("Part")}, {}, {}});
    CHECK(model.rowCount() == 0);
    model.show(wing());
    watch.check();
}

TEST_CASE("A row whose depth jumps lies within the row above it")
{
    ui::HoursTableModel model;
    ModelWatch watch(model);
    model.show(
        {{QStringLiteral("Part")},
         {Row{{QStringLiteral("Wing")}, 0, false, {}}, Row{{QStringLiteral("Deep")}, 3, false, {}},
          Row{{QStringLiteral("Tail")}, 0, false, {}}},
         {}});
    CHECK(model.rowCount() == 2);
    CHECK(model.rowCount(model.index(0, 0)) == 1);
    watch.check();
}

} // namespace lastrivet::test
