// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeighingView.h"

#include "core/balance/EmptyWeight.h"
#include "tests/ui/weighing/WeighingShown.h"
#include "ui/widgets/RowListView.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::ui {

using test::corrections;
using test::scales;
using test::weighLikeTheHandbook;
using Shown = test::WeighingShown;

TEST_CASE("A weighing typed in place comes to the handbook's sum, whatever unit is written")
{
    Shown shown;
    const QAbstractItemModelTester tester(&shown.lines(scales).model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    weighLikeTheHandbook(shown);
    // The project is metric: pounds and inches were converted when they were typed.
    CHECK(shown.weighing().weight_unit == WeightUnit::Kilograms);
    const auto empty = balance::weighed(shown.weighing());
    REQUIRE(empty);
    CHECK(empty->sum.weight == Approx(1325.5 * 0.45359237));
    CHECK(empty->sum.cg / 25.4 == Approx((66698.0 - 588) / 1325.5));
    CHECK(test::says(shown.view, QStringLiteral("Empty weight as weighed: 601.2")));
    test::picture(shown.view, 1120, 640, "weighing-filled");
}

TEST_CASE("The cursor stays in the line that is typed when it was the empty one at the end")
{
    Shown shown;
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    LinesEditor &editor = shown.lines(scales);
    const QAbstractItemModelTester tester(&editor.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    for (int row = 0; row < 2; ++row) {
        editor.view().setCurrentIndex(editor.model().index(row, 0));
        shown.type(scales, row, 0, "main wheel");
        CHECK(editor.view().currentIndex().row() == row);
        CHECK(editor.model().rowCount() == row + 2);
    }
}

TEST_CASE("The Tab key leads from the tare that is typed to the arm, past the net weight")
{
    Shown shown;
    test::press(shown.view, QStringLiteral("Write the first weighing down"));
    shown.type(scales, 0, 0, "left main");
    shown.type(scales, 0, 1, "300");
    shown.type(scales, 0, 4, "1750");
    QTableView &view = shown.lines(scales).view();
    view.setFocus();
    view.setCurrentIndex(view.model()->index(0, 2));
    view.edit(view.currentIndex());
    auto *line = view.findChild<QLineEdit *>();
    REQUIRE(line);
    line->selectAll();
    QTest::keyClicks(line, QStringLiteral("2"));
    QTest::keyClick(line, Qt::Key_Tab);
    CHECK(shown.weighing().scale_readings.front().tare == Approx(2));
    CHECK(view.currentIndex().row() == 0);
    CHECK(view.currentIndex().column() == 4);
}

TEST_CASE("A scale out of calibration is said beside the weight that came of it")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    const QString said = QStringLiteral("Not in calibration when it was weighed: Floor scale.");
    shown.session->change(QStringLiteral("Scale"), [](Edit &edit) {
        Tool scale;
        scale.name = "Floor scale";
        scale.needs_calibration = true;
        edit.put(scale);
    });
    CHECK_FALSE(test::says(shown.view, said));
    shown.type(scales, 0, 5, "Floor scale");
    CHECK(test::says(shown.view, said));
}

TEST_CASE("A negative tare, a strange unit and a tool that is not there get one sentence")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    const auto before = shown.weighing();
    shown.type(scales, 0, 2, "-5");
    CHECK(shown.complaint.contains(QStringLiteral("A tare is not below zero")));
    shown.type(scales, 0, 1, "40 stone");
    CHECK(shown.complaint.contains(QStringLiteral("“40 stone” is no weight")));
    shown.type(scales, 0, 4, "70 kg");
    CHECK(shown.complaint.contains(QStringLiteral("“70 kg” is no arm")));
    shown.type(scales, 0, 5, "Bathroom scale");
    CHECK(shown.complaint.contains(QStringLiteral("No tool is called")));
    CHECK(shown.weighing() == before);
    CHECK(test::says(shown.view, QStringLiteral("Nothing on record has changed the weight")));
    shown.type(scales, 2, 2, "300");
    CHECK(test::says(shown.view, QStringLiteral("The reading of nose is below its tare.")));
    // What was said of the sum before says nothing of this one.
    CHECK_FALSE(test::says(shown.view, QStringLiteral("Nothing on record has changed")));
    CHECK(test::says(shown.view, QStringLiteral("as soon as the weighing comes to a sum")));
}

TEST_CASE("Equipment fitted since without an arm is shown, and said not to be in the sum")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    shown.weighEarlier();
    shown.session->change(QStringLiteral("Radio"), [&](Edit &edit) {
        Equipment radio;
        radio.name = "Radio";
        radio.weight = 0.04;
        radio.weight_unit = WeightUnit::Kilograms;
        radio.fitted_on = edit.today();
        edit.put(radio);
    });
    const FigureTable &changes = shown.table(QStringLiteral("What has changed the weight"));
    REQUIRE(changes.rows.size() == 1);
    CHECK(changes.rows[0].cells.value(0) == QStringLiteral("Radio"));
    // A small weight is not none.
    CHECK(changes.rows[0].cells.value(2).startsWith(QStringLiteral("0.04")));
    CHECK(changes.rows[0].cells.value(3) == QStringLiteral("not said"));
    CHECK(changes.rows[0].cells.value(4) == QStringLiteral("not in the sum: enter weight and arm"));
    CHECK_FALSE(test::says(shown.view, QStringLiteral("Nothing on record has changed")));
    test::press(shown.view, QStringLiteral("Equipment"));
    CHECK(test::says(shown.view, QStringLiteral("no weight or no arm on record")));
}

TEST_CASE("What is being typed into one weighing is kept when another is shown")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    const auto first = shown.weighing().id;
    test::press(shown.view, QStringLiteral("New weighing"));
    REQUIRE(shown.session->records()->weighings.size() == 2);
    test::type(shown.view, QStringLiteral("Place"), QStringLiteral("Hangar 2"));
    CHECK(shown.view.showRecord({RecordType::Weighing, first.value()}));
    for (const Weighing &weighing : shown.session->records()->weighings)
        CHECK(weighing.place == (weighing.id == first ? "" : "Hangar 2"));
    CHECK(test::says(shown.view, QStringLiteral("Empty weight as weighed: 601.2")));
}

TEST_CASE("Nothing is written down in a project that somebody else has open")
{
    test::Workshop workshop;
    const auto holder = workshop.session();
    const auto reader = workshop.session();
    REQUIRE(reader->isReadOnly());
    WeighingView view(*reader);
    test::picture(view, 1120, 640, "weighing-read-only");
    CHECK_FALSE(test::button(view, QStringLiteral("Write the first weighing down")));
    CHECK(test::button(view, QStringLiteral("Print the report…")));
}

TEST_CASE("Lines are taken out with the keyboard, and that can be undone")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    QApplication::setActiveWindow(&shown.view);
    QTableView &table = shown.lines(scales).view();
    table.setCurrentIndex(table.model()->index(1, 0));
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_Delete);
    CHECK(shown.weighing().scale_readings.size() == 2);
    CHECK(shown.weighing().scale_readings[1].point == "nose");
    shown.session->undo();
    CHECK(shown.weighing().scale_readings.size() == 3);
    CHECK(shown.lines(scales).model().lines().size() == 3);
}

TEST_CASE("Loadings and limits are typed in place, and the extremes stand beside them")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    test::press(shown.view, QStringLiteral("Loading and limits"));
    test::press(shown.view, QStringLiteral("New loading"));
    const QString aboard = QStringLiteral("On board, besides the empty aeroplane");
    shown.type(aboard, 0, 0, "Pilot");
    shown.type(aboard, 0, 1, "80");
    shown.type(aboard, 0, 2, "1500");
    shown.type(aboard, 1, 1, "-3");
    CHECK(shown.complaint.contains(QStringLiteral("nothing or more")));
    test::press(shown.view, QStringLiteral("Write the limits down"));
    const QString limits = QStringLiteral("Corners of the limits, in their order");
    const char *const corners[][2] = {
        {"600", "1200"}, {"800", "1200"}, {"800", "1400"}, {"600", "1400"}};
    for (int row = 0; row < 4; ++row) {
        shown.type(limits, row, 0, corners[row][0]);
        shown.type(limits, row, 1, corners[row][1]);
    }
    const auto views = shown.view.findChildren<FigureView *>();
    const auto sums = std::ranges::find_if(views, [](const FigureView *view) {
        return view->table().title == QStringLiteral("Loading and limits");
    });
    REQUIRE(sums != views.end());
    // Empty, the loading, farthest forward, farthest aft.
    REQUIRE((*sums)->table().rows.size() == 4);
    CHECK((*sums)->table().rows[1].cells.value(5) == QStringLiteral("within the limits"));
    CHECK((*sums)->table().rows[3].cells.value(0) == QStringLiteral("A"));
    CHECK_FALSE((*sums)->table().rows[3].isMain);
    CHECK(test::says(shown.view, QStringLiteral("The limits name no source.")));
    CHECK(test::says(shown.view, QStringLiteral("Triangles: the extremes.")));
    // Farther back than the limits go.
    shown.type(aboard, 0, 2, "4000");
    CHECK((*sums)->table().rows[1].cells.value(5) == QStringLiteral("OUTSIDE the limits"));
    CHECK((*sums)->table().rows[1].isMain);
    CHECK((*sums)->table().rows[3].isMain);
    test::picture(shown.view, 1120, 640, "weighing-loading");
}

TEST_CASE("New equipment has the units of the weighing, and a record is shown where it belongs")
{
    Shown shown;
    weighLikeTheHandbook(shown);
    test::press(shown.view, QStringLiteral("Equipment"));
    test::press(shown.view, QStringLiteral("New equipment"));
    const auto equipment = shown.session->records()->equipment.begin();
    CHECK(equipment->weight_unit == WeightUnit::Kilograms);
    CHECK(equipment->fitted_on == shown.session->today());
    test::type(shown.view, QStringLiteral("Weight"), QStringLiteral("-5"));
    QTest::keyClick(&test::field(shown.view, QStringLiteral("Weight")), Qt::Key_Return);
    CHECK(shown.complaint.contains(QStringLiteral("below zero")));
    CHECK_FALSE(shown.session->records()->equipment.begin()->weight);
    CHECK(shown.view.showRecord({RecordType::Equipment, equipment->id.value()}));
    CHECK_FALSE(shown.view.showRecord({RecordType::Squawk, 1}));
    test::picture(shown.view, 1120, 640, "weighing-equipment");
}

TEST_CASE("The list of equipment marks the piece whose fields stand beside it")
{
    Shown shown;
    Id<Equipment> battery;
    shown.session->change(QStringLiteral("Equipment"), [&](Edit &edit) {
        Equipment item;
        item.name = "Radio";
        edit.put(item);
        item.name = "Battery";
        battery = edit.put(item);
    });
    const auto marked = [&shown] {
        QStringList names;
        for (const RowListView *list : shown.view.findChildren<RowListView *>()) {
            for (int i = 0; i < list->rows().rowCount(); ++i) {
                if (list->rows().row(i).is_shown)
                    names.append(list->rows().row(i).title);
            }
        }
        return names;
    };
    CHECK(marked() == QStringList{QStringLiteral("Radio")});
    REQUIRE(shown.view.showRecord({RecordType::Equipment, battery.value()}));
    CHECK(marked() == QStringList{QStringLiteral("Battery")});
}

TEST_CASE("A question about one piece of equipment is left when another is chosen")
{
    Shown shown;
    Id<Equipment> radio;
    Id<Equipment> battery;
    shown.session->change(QStringLiteral("Equipment"), [&](Edit &edit) {
        Equipment item;
        item.name = "Radio";
        radio = edit.put(item);
        item.name = "Battery";
        battery = edit.put(item);
    });
    REQUIRE(shown.view.showRecord({RecordType::Equipment, radio.value()}));
    test::press(shown.view, QStringLiteral("Withdraw…"));
    REQUIRE(test::says(shown.view, QStringLiteral("will count nowhere any more")));
    shown.view.showRecord({RecordType::Equipment, battery.value()});
    CHECK_FALSE(test::says(shown.view, QStringLiteral("will count nowhere any more")));
    test::press(shown.view, QStringLiteral("Withdraw…"));
    test::type(shown.view, QStringLiteral("Why"), QStringLiteral("sold"));
    test::press(shown.view, QStringLiteral("Withdraw"));
    CHECK_FALSE(shown.session->records()->findLive(battery));
    REQUIRE(shown.session->records()->findLive(radio));
    // What is left on the list can still be written about.
    CHECK(test::field(shown.view, QStringLiteral("Name")).text() == QStringLiteral("Radio"));
}

TEST_CASE("A question about one loading is left when another is chosen")
{
    Shown shown;
    Id<LoadingCase> solo;
    Id<LoadingCase> both;
    shown.session->change(QStringLiteral("Loadings"), [&](Edit &edit) {
        LoadingCase loading;
        loading.name = "Solo";
        solo = edit.put(loading);
        loading.name = "Two aboard";
        both = edit.put(loading);
    });
    REQUIRE(shown.view.showRecord({RecordType::LoadingCase, solo.value()}));
    test::press(shown.view, QStringLiteral("Withdraw…"));
    REQUIRE(test::says(shown.view, QStringLiteral("will count nowhere any more")));
    shown.view.showRecord({RecordType::LoadingCase, both.value()});
    CHECK_FALSE(test::says(shown.view, QStringLiteral("will count nowhere any more")));
}

TEST_CASE("What cannot be used in a project that is to read only says why")
{
    test::Workshop workshop;
    const auto holder = workshop.session();
    const auto reader = workshop.session();
    REQUIRE(reader->isReadOnly());
    WeighingView view(*reader);
    int count = 0;
    for (const QPushButton *button : view.findChildren<QPushButton *>()) {
        const bool isMaking = button->text() == QStringLiteral("New equipment") ||
                              button->text() == QStringLiteral("New loading") ||
                              button->text() == QStringLiteral("Write the limits down");
        if (!isMaking)
            continue;
        ++count;
        CHECK_FALSE(button->isEnabled());
        CHECK(button->toolTip().contains(QStringLiteral("to read only")));
    }
    CHECK(count == 3);
}

} // namespace lastrivet::ui
