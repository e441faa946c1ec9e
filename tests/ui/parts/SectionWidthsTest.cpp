// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/PartsWindow.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QTreeView>

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("Short names leave the words beside them the room that these need")
{
    PartsWindow window;
    Id<Measurement> sender;
    window.session->change(QStringLiteral("Sender"), [&](Edit &edit) {
        Measurement measurement;
        measurement.component_id = window.workshop.bay;
        measurement.what = "Sender";
        measurement.unit = "ohm";
        measurement.minimum = 28;
        measurement.maximum = 36;
        measurement.value = 88;
        measurement.measured_on = edit.today();
        measurement.accepted_on = edit.today();
        measurement.accepted_by = window.workshop.builder;
        measurement.accepted_basis = "the gauge is set to it";
        sender = edit.put(measurement);
    });
    window.page.resize(1160, 680);
    window.show({RecordType::Measurement, sender.value()});
    QCoreApplication::processEvents();
    const QTreeView &list = window.list();
    enum Column { What, Limits, Value, Stands, On };
    const QModelIndex stands = list.model()->index(0, Stands);
    REQUIRE(stands.data().toString() == QStringLiteral("outside, accepted"));
    CHECK(list.header()->length() <= list.viewport()->width());
    CHECK(list.columnWidth(Stands) >= list.sizeHintForIndex(stands).width());
    CHECK(list.columnWidth(What) >= list.sizeHintForIndex(list.model()->index(0, What)).width());
}

} // namespace lastrivet::test
