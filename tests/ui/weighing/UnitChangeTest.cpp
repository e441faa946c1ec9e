// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/UnitChange.h"

#include "tests/ui/weighing/WeighingShown.h"

#include <QComboBox>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

using test::scales;
using Shown = test::WeighingShown;

namespace {

void chooseUnit(Shown &shown, const QString &field, const QString &unit)
{
    QComboBox &units = test::choice(shown.view, field);
    units.setFocus();
    const int place = units.findData(unit);
    units.setCurrentIndex(place);
    Q_EMIT units.activated(place);
}

bool isAskedToConvert(Shown &shown)
{
    return test::button(shown.view, QStringLiteral("Convert the numbers")) != nullptr;
}

} // namespace

TEST_CASE(
    "When another unit is chosen it is said what became of the numbers, and they are converted")
{
    Shown shown;
    const auto choose = [&](const QString &field, const QString &unit) {
        chooseUnit(shown, field, unit);
    };
    const auto isAsked = [&] { return isAskedToConvert(shown); };
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    choose(QStringLiteral("Arm unit"), QStringLiteral("in"));
    CHECK_FALSE(isAsked());
    choose(QStringLiteral("Arm unit"), QStringLiteral("mm"));
    shown.type(scales, 0, 0, "left main");
    shown.type(scales, 0, 1, "650 lb");
    shown.type(scales, 0, 2, "5 lb");
    shown.type(scales, 0, 4, "70 in");
    choose(QStringLiteral("Weight unit"), QStringLiteral("lb"));
    CHECK(shown.weighing().scale_readings[0].reading == Approx(650 * 0.45359237));
    CHECK(test::says(shown.view, QStringLiteral("294.84\u00a0kg has become 294.84\u00a0lb")));
    test::press(shown.view, QStringLiteral("Convert the numbers"));
    CHECK(shown.weighing().weight_unit == WeightUnit::Pounds);
    CHECK(shown.weighing().scale_readings[0].reading == Approx(650));
    CHECK(shown.weighing().scale_readings[0].tare == Approx(5));
    CHECK(shown.weighing().scale_readings[0].arm == Approx(70 * 25.4));
    CHECK_FALSE(isAsked());
    // What is typed after the question is not converted with it.
    choose(QStringLiteral("Weight unit"), QStringLiteral("kg"));
    shown.type(scales, 0, 1, "295");
    test::press(shown.view, QStringLiteral("Convert the numbers"));
    CHECK(shown.complaint == QStringLiteral("The numbers have changed since that was asked."));
    CHECK(shown.weighing().scale_readings[0].reading == 295);
}

TEST_CASE("Who chooses both units one after the other has the numbers of both converted at once")
{
    Shown shown;
    const QString weightUnit = QStringLiteral("Weight unit");
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    shown.type(scales, 0, 0, "left main");
    shown.type(scales, 0, 1, "650 lb");
    shown.type(scales, 0, 4, "70 in");
    chooseUnit(shown, weightUnit, QStringLiteral("lb"));
    chooseUnit(shown, QStringLiteral("Arm unit"), QStringLiteral("in"));
    CHECK(test::says(shown.view, QStringLiteral("294.84\u00a0kg has become 294.84\u00a0lb")));
    CHECK(test::says(shown.view, QStringLiteral("1778\u00a0mm has become 1778\u00a0in")));
    test::press(shown.view, QStringLiteral("Convert the numbers"));
    CHECK(shown.weighing().scale_readings[0].reading == Approx(650));
    CHECK(shown.weighing().scale_readings[0].arm == Approx(70));
    CHECK(shown.view.focusWidget() == &test::choice(shown.view, QStringLiteral("Arm unit")));
    // Who goes back to the unit that was right has nothing to convert.
    chooseUnit(shown, weightUnit, QStringLiteral("kg"));
    CHECK(isAskedToConvert(shown));
    chooseUnit(shown, weightUnit, QStringLiteral("lb"));
    CHECK_FALSE(isAskedToConvert(shown));
    CHECK(shown.weighing().scale_readings[0].reading == Approx(650));
}

TEST_CASE("Numbers that are left as typed are not asked about again with the other unit")
{
    Shown shown;
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    shown.type(scales, 0, 0, "left main");
    shown.type(scales, 0, 1, "300");
    shown.type(scales, 0, 4, "50");
    chooseUnit(shown, QStringLiteral("Arm unit"), QStringLiteral("in"));
    test::press(shown.view, QStringLiteral("Leave them as typed"));
    chooseUnit(shown, QStringLiteral("Weight unit"), QStringLiteral("lb"));
    CHECK_FALSE(test::says(shown.view, QStringLiteral("mm has become")));
    test::press(shown.view, QStringLiteral("Convert the numbers"));
    CHECK(shown.weighing().scale_readings[0].reading == Approx(300 / 0.45359237));
    CHECK(shown.weighing().scale_readings[0].arm == Approx(50));
}

} // namespace lastrivet::ui
