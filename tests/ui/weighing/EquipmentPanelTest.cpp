// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/weighing/WeighingShown.h"

#include <QComboBox>

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("When another unit is chosen for equipment, its numbers are converted on demand")
{
    test::WeighingShown shown;
    shown.session->change(QStringLiteral("Equipment"), [&](Edit &edit) {
        Equipment battery;
        battery.name = "Battery";
        battery.weight = 22;
        edit.put(battery);
    });
    const auto battery = [&] { return *shown.session->records()->equipment.begin(); };
    const auto choose = [&](const QString &unit) {
        QComboBox &units = test::choice(shown.view, QStringLiteral("Weight unit"));
        const int place = units.findData(unit);
        units.setCurrentIndex(place);
        Q_EMIT units.activated(place);
    };
    const auto isAsked = [&] {
        return test::button(shown.view, QStringLiteral("Convert the numbers")) != nullptr;
    };
    REQUIRE(shown.view.showRecord({RecordType::Equipment, battery().id.value()}));
    choose(QStringLiteral("lb"));
    REQUIRE(battery().weight_unit == WeightUnit::Pounds);
    CHECK_FALSE(isAsked());
    choose(QStringLiteral("kg"));
    REQUIRE(isAsked());
    test::press(shown.view, QStringLiteral("Convert the numbers"));
    CHECK(*battery().weight == Approx(22 * 0.45359237));
    CHECK_FALSE(isAsked());
}
