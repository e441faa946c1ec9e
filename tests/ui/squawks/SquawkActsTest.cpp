// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/SquawksWindow.h"

#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("What comes next for a squawk is the button that stands out", "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    const auto standsOut = [&](const char *words) {
        const QPushButton *found = window.button(words);
        REQUIRE(found);
        return found->property("primary").toBool();
    };
    CHECK(standsOut("Mark as fixed and checked"));
    window.press("Mark as fixed");
    window.enter("Correction", "Drilled out");
    CHECK(standsOut("Verify"));
    CHECK_FALSE(standsOut("Accept as it is"));
}

TEST_CASE("A correction is dated between the day it was found and today", "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    window.press("Mark as fixed and checked");
    window.field("Correction").setText(QStringLiteral("Drilled out"));
    window.enter("On", "2026-03-15");
    CHECK(window.isHinted("has not come yet"));
    window.enter("On", "2026-03-10");
    CHECK(window.isHinted("was found on"));
    window.enter("On", "someday");
    CHECK(window.isHinted("is no day"));
    CHECK_FALSE(window.squawk("1").fixed_on);
    QTest::keyClick(&window.field("On"), Qt::Key_Escape);
    window.press("Mark as fixed and checked");
    CHECK(window.field("Correction").text() == QStringLiteral("Drilled out"));
    window.enter("On", "2026-03-12");
    CHECK(window.squawk("1").verified_on == Moment::parse("2026-03-12"));
}

TEST_CASE("A squawk cannot be found tomorrow, and its title cannot be emptied", "[squawks]")
{
    SquawksWindow window;
    const QStringList &said = window.complaints;
    window.show(window.workshop.squawk);
    window.enter("Found on", "2026-03-15");
    REQUIRE(said.size() == 1);
    CHECK(said.front().contains(QStringLiteral("has not come yet")));
    CHECK(window.squawk("1").found_on == Moment::parse("2026-03-11"));
    window.field("Title").clear();
    window.enter("Title", " ");
    CHECK(said.size() == 2);
    CHECK(window.squawk("1").title == "Overdriven rivet at rib 3");
}

TEST_CASE("An acceptance needs a basis, and for airworthiness somebody who may", "[squawks]")
{
    SquawksWindow window;
    window.change([&](Edit &edit) {
        edit.update(window.workshop.squawk,
                    [](Squawk &squawk) { squawk.severity = Severity::Airworthiness; });
    });
    window.show(window.workshop.squawk);
    window.press("Accept as it is");
    window.enter("Basis", "");
    CHECK(window.isHinted("needs its basis"));
    window.by().setEditText(QStringLiteral("Robin Vale"));
    window.enter("Basis", "letter of 3 March");
    CHECK(window.isHinted("only a designer, an adviser or an inspector"));
    window.by().setEditText(QStringLiteral("Nobody Known"));
    window.enter("Basis", "letter of 3 March");
    CHECK(window.isHinted("is not among the people on record"));
    CHECK_FALSE(window.squawk("1").accepted_on);
    window.by().setEditText(QStringLiteral("Sam Orrin"));
    window.enter("Basis", "letter of 3 March");
    CHECK(window.squawk("1").accepted_basis == "letter of 3 March");
    CHECK(window.squawk("1").accepted_by == window.workshop.inspector);
}

TEST_CASE("What was fixed too early is taken back with a reason, what comes back is a new squawk",
          "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    window.press("Mark as fixed");
    window.enter("Correction", "Drilled out");
    window.press("Take back…");
    window.enter("Why", "");
    CHECK(window.isHinted("Say why"));
    window.enter("Why", "still smoking");
    CHECK_FALSE(window.squawk("1").fixed_on);
    CHECK(window.squawk("1").note == "2026-03-14: not fixed after all: still smoking");

    window.press("Mark as fixed and checked");
    CHECK(window.field("Correction").text() == QStringLiteral("Drilled out"));
    window.enter("Correction", "Next size");
    window.show(window.workshop.squawk);
    window.press("It came back…");
    // Undo is not about the words of the act before.
    CHECK_FALSE(window.field("Why").isUndoAvailable());
    window.enter("Why", "loose at the same place");
    CHECK(window.squawk("2").title == window.squawk("1").title);
    CHECK(window.squawk("2").note.find("loose at the same place") != std::string::npos);
    CHECK(window.squawk("1").verified_on);
    CHECK(window.wanted == RecordRef{RecordType::Squawk, window.squawk("2").id.value()});
}

} // namespace lastrivet::test
