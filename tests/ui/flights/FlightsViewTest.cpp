// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/flights/FlightsView.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/flights/FlightForm.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

struct Shown {
    Shown()
    {
        QObject::connect(session.get(), &Session::changed, &view,
                         [this](const ChangeNotice &notice) { view.apply(notice); });
        test::picture(view, 1120, 640, "flights");
    }
    void fly(const QString &time, const QString &faults = {})
    {
        test::type(view, QStringLiteral("Time in the air"), time);
        if (!faults.isEmpty())
            test::type(view, QStringLiteral("Faults"), faults);
        test::press(view, QStringLiteral("Write the flight down"));
        // Lines made after their place is shown appear with the next events.
        QApplication::processEvents();
    }

    test::Workshop workshop;
    std::unique_ptr<Session> session = workshop.session();
    FlightsView view{*session};
};

} // namespace

TEST_CASE("A number that cannot be is refused as it was typed, and another is not written for it")
{
    Shown shown;
    auto *landings = shown.view.findChild<QSpinBox *>();
    REQUIRE(landings);
    QApplication::setActiveWindow(&shown.view);
    landings->setFocus();
    landings->selectAll();
    QTest::keyClicks(landings, QStringLiteral("-7"));
    CHECK(landings->text() == QStringLiteral("-7"));
    shown.fly(QStringLiteral("1h20"));
    CHECK(shown.session->records()->flights.isEmpty());
    CHECK(test::says(shown.view, QStringLiteral("“-7” cannot stand there")));
    // The number from before stands there again; nothing else was changed.
    CHECK(landings->value() == 1);
    landings->selectAll();
    QTest::keyClicks(landings, QStringLiteral("3"));
    test::press(shown.view, QStringLiteral("Write the flight down"));
    REQUIRE(shown.session->records()->flights.size() == 1);
    CHECK(shown.session->records()->flights.begin()->landings == 3);
}

TEST_CASE("The first digits of a number that is refused do not stay in its place")
{
    Shown shown;
    auto *landings = shown.view.findChild<QSpinBox *>();
    REQUIRE(landings);
    QApplication::setActiveWindow(&shown.view);
    landings->setFocus();
    landings->selectAll();
    SECTION("of one with a point")
    {
        QTest::keyClicks(landings, QStringLiteral("7.5"));
        CHECK(landings->value() == 7);
        shown.fly(QStringLiteral("1h20"));
        CHECK(shown.session->records()->flights.isEmpty());
        CHECK(test::says(shown.view, QStringLiteral("“7.5” cannot stand there")));
    }
    SECTION("of one that was typed and taken out again")
    {
        QTest::keyClicks(landings, QStringLiteral("7"));
        QTest::keyClick(landings, Qt::Key_Backspace);
        landings->clearFocus();
    }
    CHECK(landings->value() == 1);
    CHECK(landings->text() == QStringLiteral("1"));
}

TEST_CASE("A number that was refused in a form that was left does not hold back the next one")
{
    Shown shown;
    auto *landings = shown.view.findChild<QSpinBox *>();
    auto *form = shown.view.findChild<FlightForm *>();
    REQUIRE(landings);
    REQUIRE(form);
    QApplication::setActiveWindow(&shown.view);
    landings->setFocus();
    landings->selectAll();
    QTest::keyClicks(landings, QStringLiteral("-7"));
    landings->clearFocus();
    CHECK(landings->text() == QStringLiteral("1"));
    QTest::keyClick(form, Qt::Key_Escape);
    shown.fly(QStringLiteral("1h20"));
    CHECK(shown.session->records()->flights.size() == 1);
    CHECK_FALSE(test::says(shown.view, QStringLiteral("cannot stand there")));
}

TEST_CASE("What is left of the test period is counted from the last fault")
{
    Shown shown;
    // Canada, powered fixed wing: 25 hours without a fault.
    CHECK(test::says(shown.view, QStringLiteral("25 h 00 left, counted from the last fault")));
    shown.fly(QStringLiteral("1h20"));
    CHECK(test::says(shown.view, QStringLiteral("23 h 40 left, counted from the last fault")));
    shown.fly(QStringLiteral("40m"), QStringLiteral("Oil pressure low"));
    CHECK(test::says(shown.view, QStringLiteral("25 h 00 left, counted from the last fault; "
                                                "23 h 00 left, counted over all flights")));
    shown.fly(QStringLiteral("2:05"));
    CHECK(test::says(shown.view, QStringLiteral("22 h 55 left, counted from the last fault; "
                                                "20 h 55 left, counted over all flights")));
    CHECK(shown.session->records()->flights.size() == 3);
    shown.session->undo();
    QApplication::processEvents();
    CHECK(test::says(shown.view, QStringLiteral("25 h 00 left, counted from the last fault")));
    test::picture(shown.view, 1120, 640, "flights-filled");
}

TEST_CASE("A flight without time in the air, or of tomorrow, is not written down")
{
    Shown shown;
    shown.fly(QStringLiteral("soon"));
    CHECK(test::says(shown.view, QStringLiteral("It needs the time in the air")));
    // A slip of the finger would have all hours of the test period flown.
    shown.fly(QStringLiteral("30h"));
    CHECK(test::says(shown.view, QStringLiteral("A day has 24 hours")));
    test::type(shown.view, QStringLiteral("Flown on"), QStringLiteral("2026-03-15"));
    shown.fly(QStringLiteral("1h"));
    CHECK(shown.session->records()->flights.isEmpty());
}

TEST_CASE("A form reads the days that the fields of records read, as yesterday and 13.3.")
{
    const auto words =
        GENERATE(as<const char *>{}, "yesterday", "13.3.", "13.3.2026", "13 Mar", "2026-03-13");
    Shown shown;
    test::type(shown.view, QStringLiteral("Flown on"), QString::fromLatin1(words));
    shown.fly(QStringLiteral("1h"));
    REQUIRE(shown.session->records()->flights.size() == 1);
    CHECK(shown.session->records()->flights.begin()->flown_on == Moment::parse("2026-03-13"));
}

TEST_CASE("A flight that is half typed is begun until it is written down, or dropped with Escape")
{
    Shown shown;
    auto *form = shown.view.findChild<FlightForm *>();
    REQUIRE(form);
    CHECK_FALSE(form->isBegun());
    test::type(shown.view, QStringLiteral("Time in the air"), QStringLiteral("1h20"));
    CHECK(form->isBegun());
    SECTION("written down")
    {
        test::press(shown.view, QStringLiteral("Write the flight down"));
        CHECK(shown.session->records()->flights.size() == 1);
    }
    SECTION("dropped")
    {
        QTest::keyClick(form, Qt::Key_Escape);
        CHECK(shown.session->records()->flights.isEmpty());
    }
    CHECK_FALSE(form->isBegun());
    CHECK(test::field(shown.view, QStringLiteral("Time in the air")).text().isEmpty());
    test::type(shown.view, QStringLiteral("Faults"), QStringLiteral("Oil leak"));
    CHECK(form->isBegun());
}

TEST_CASE("Somebody who came on record meanwhile can be the pilot, and what is typed stays")
{
    Shown shown;
    test::type(shown.view, QStringLiteral("Time in the air"), QStringLiteral("1h20"));
    Id<Person> pilot;
    REQUIRE(shown.session->change(QStringLiteral("Person"), [&](Edit &edit) {
        Person person;
        person.name = "Kim Adair";
        person.roles.insert(Role::Helper);
        pilot = edit.put(person);
    }));
    CHECK(test::field(shown.view, QStringLiteral("Time in the air")).text() ==
          QStringLiteral("1h20"));
    test::type(shown.view, QStringLiteral("Pilot"), QStringLiteral("Kim Adair"));
    const auto people = shown.session->records()->people.size();
    test::press(shown.view, QStringLiteral("Write the flight down"));
    REQUIRE(shown.session->records()->flights.size() == 1);
    CHECK(shown.session->records()->flights.begin()->pilot_id == pilot);
    CHECK(shown.session->records()->people.size() == people);
}

TEST_CASE("Other rules of the test period are shown as soon as the project goes by them")
{
    Shown shown;
    REQUIRE(test::says(shown.view, QStringLiteral("25 h 00 left")));
    shown.session->change(QStringLiteral("Rules"), [](Edit &edit) {
        Profile profile = edit.profile();
        profile.id = "no-test-period";
        profile.test_period.clear();
        edit.useProfile(profile);
    });
    QApplication::processEvents();
    CHECK_FALSE(test::says(shown.view, QStringLiteral("25 h 00 left")));
    CHECK(test::says(shown.view, QStringLiteral("The project's rules name no test period")));
}

TEST_CASE("A flight is not withdrawn from a project that somebody else has open")
{
    test::Workshop workshop;
    const auto holder = workshop.session();
    holder->change(QStringLiteral("Flown"), [](Edit &edit) {
        Flight flight;
        flight.flown_on = edit.today();
        flight.minutes = Minutes{60};
        edit.put(flight);
    });
    const auto reader = workshop.session();
    REQUIRE(reader->isReadOnly());
    REQUIRE(reader->records()->flights.size() == 1);
    FlightsView view(*reader);
    test::picture(view, 1120, 640, "flights-read-only");
    view.showRecord({RecordType::Flight, reader->records()->flights.begin()->id.value()});
    QApplication::processEvents();
    CHECK(test::says(view, QStringLiteral("The chosen flight")));
    CHECK_FALSE(test::button(view, QStringLiteral("Withdraw…")));
}

TEST_CASE("Enough hours without a fault are said to be flown")
{
    Shown shown;
    for (int i = 0; i < 5; ++i)
        shown.fly(QStringLiteral("5h"));
    CHECK(test::says(shown.view, QStringLiteral("25 h 00 without a fault are flown")));
}

TEST_CASE("Undo after a flight is written down is about the flight, not about its words")
{
    Shown shown;
    QLineEdit &time = test::field(shown.view, QStringLiteral("Time in the air"));
    QLineEdit &faults = test::field(shown.view, QStringLiteral("Faults"));
    QTest::keyClicks(&time, QStringLiteral("1h20"));
    QTest::keyClicks(&faults, QStringLiteral("Oil on the belly"));
    REQUIRE(time.isUndoAvailable());
    REQUIRE(faults.isUndoAvailable());
    test::press(shown.view, QStringLiteral("Write the flight down"));
    REQUIRE(shown.session->records()->flights.size() == 1);
    CHECK(time.text().isEmpty());
    CHECK_FALSE(time.isUndoAvailable());
    CHECK_FALSE(faults.isUndoAvailable());
}

TEST_CASE("A question about one flight is left when another is chosen")
{
    Shown shown;
    Id<Flight> first;
    Id<Flight> second;
    shown.session->change(QStringLiteral("Flown"), [&](Edit &edit) {
        Flight flight;
        flight.flown_on = edit.today();
        flight.minutes = Minutes{60};
        first = edit.put(flight);
        second = edit.put(flight);
    });
    shown.view.showRecord({RecordType::Flight, first.value()});
    test::press(shown.view, QStringLiteral("Withdraw…"));
    REQUIRE(test::says(shown.view, QStringLiteral("will count nowhere any more")));
    shown.view.showRecord({RecordType::Flight, second.value()});
    CHECK_FALSE(test::says(shown.view, QStringLiteral("will count nowhere any more")));
}

} // namespace lastrivet::ui
