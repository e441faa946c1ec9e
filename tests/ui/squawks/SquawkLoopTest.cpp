// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/SquawksWindow.h"
#include "ui/squawks/SquawkPictures.h"

#include <QImage>
#include <QListView>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

QString savedPicture(const TemporaryFolder &folder, const char *name, Qt::GlobalColor colour)
{
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(colour);
    const QString file = QString::fromStdString((folder / name).string());
    REQUIRE(picture.save(file));
    return file;
}

} // namespace

TEST_CASE("A squawk goes from the line to the inspector's word without leaving the page",
          "[squawks]")
{
    SquawksWindow window;
    window.page.startNew();
    window.enter("New squawk", "bay 3 airworthiness: cracked clip");
    const auto id = window.squawk("2").id;
    CHECK(window.squawk("2").severity == Severity::Airworthiness);

    window.field("What is for it").setText(QStringLiteral("quick"));
    window.field("What is against it").setText(QStringLiteral("heavier"));
    window.enter("A way to repair it", "Stop-drill and doubler");
    window.enter("A way to repair it", "New clip");
    REQUIRE(window.squawk("2").repair_options.size() == 2);
    CHECK(window.squawk("2").repair_options.front().cons == "heavier");
    QRadioButton *second = window.page.findChildren<QRadioButton *>().back();
    QTest::mouseClick(second, Qt::LeftButton, {}, QPoint(10, second->height() / 2));
    CHECK(window.squawk("2").repair_options.back().chosen);
    CHECK(window.squawk("2").repair_plan == "New clip");

    window.change([&](Edit &edit) {
        edit.update(id, [](Squawk &squawk) { squawk.verify_by = SignerRole::Inspector; });
    });
    window.enter("Log work on this squawk", "45m: drilled it out");
    REQUIRE(window.sessionsOn(id).size() == 1);
    CHECK(window.sessionsOn(id).front().minutes == Minutes{45});
    CHECK(window.sessionsOn(id).front().component_id == window.workshop.bay);
    CHECK(window.sessionsOn(id).front().kind == WorkKind::Rework);

    CHECK_FALSE(window.button("Mark as fixed and checked"));
    // The names of parts that were offered took the window's place.
    window.page.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window.page));
    QListView &squawks = list(window.page, QStringLiteral("Squawks"));
    squawks.setFocus();
    QTest::keyClick(&squawks, Qt::Key_F);
    window.field("Worked for").setText(QStringLiteral("1h10"));
    window.enter("Correction", "New clip fitted");
    CHECK(window.squawk("2").fixed_by == window.workshop.builder);
    CHECK_FALSE(window.squawk("2").verified_on);
    CHECK(window.sessionsOn(id).size() == 2);

    window.press("Verify");
    window.by().setEditText(QStringLiteral("robin vale"));
    QTest::keyClick(&window.field("On"), Qt::Key_Return);
    CHECK(window.isHinted("for an inspector to verify; Robin Vale is none"));
    CHECK_FALSE(window.squawk("2").verified_on);
    window.by().setEditText(QStringLiteral("Sam Orrin"));
    QTest::keyClick(&window.field("On"), Qt::Key_Return);
    CHECK(window.squawk("2").verified_by == window.workshop.inspector);
    CHECK(std::ranges::distance(window.session->records()->people) == 2);
    window.session->undo();
    CHECK_FALSE(window.squawk("2").verified_on);
    CHECK(window.squawk("2").fixed_on);
}

TEST_CASE("The long title of a way to repair it goes on in the next line", "[squawks]")
{
    SquawksWindow window;
    window.page.startNew();
    window.enter("New squawk", "bay 3: cracked clip");
    window.enter("A way to repair it",
                 "Ask for a drawing of the doubler & fit it with larger rivets");
    const QRadioButton *choice = window.page.findChildren<QRadioButton *>().back();
    CHECK(choice->text().count(QLatin1Char('\n')) >= 1);
    CHECK(choice->text().contains(QStringLiteral("&&")));
    CHECK(choice->accessibleName() ==
          QStringLiteral("Ask for a drawing of the doubler & fit it with larger rivets"));
}

TEST_CASE("What is typed about one squawk waits while another is looked at", "[squawks]")
{
    SquawksWindow window;
    const auto other = window.addSquawk();
    window.show(window.workshop.squawk);
    window.field("Log work on this squawk").setText(QStringLiteral("1h: drilled"));
    window.field("A way to repair it").setText(QStringLiteral("Next size"));
    window.field("What is for it").setText(QStringLiteral("quick"));
    window.show(other);
    CHECK(window.field("Log work on this squawk").text().isEmpty());
    CHECK(window.field("A way to repair it").text().isEmpty());
    window.show(window.workshop.squawk);
    CHECK(window.field("Log work on this squawk").text() == QStringLiteral("1h: drilled"));
    CHECK(window.field("A way to repair it").text() == QStringLiteral("Next size"));
    CHECK(window.field("What is for it").text() == QStringLiteral("quick"));
}

TEST_CASE("A way to repair it that is typed is kept when the hand rests", "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    const std::string key = "squawk_repair:" + std::to_string(window.workshop.squawk.value());
    const auto kept = [&] {
        return window.session->localState(key).value.value_or("").find("Doubler") !=
               std::string::npos;
    };
    QTest::keyClicks(&window.field("A way to repair it"), QStringLiteral("Doubler"));
    CHECK_FALSE(kept());
    CHECK(QTest::qWaitFor(kept, 5000));
}

TEST_CASE("A way to repair it that goes while its words are edited is added anew", "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    window.enter("A way to repair it", "Next size");
    window.enter("A way to repair it", "Doubler");
    QTest::mouseClick(
        [&] {
            for (auto *button : window.page.findChildren<QPushButton *>()) {
                if (button->accessibleName() == QStringLiteral("Edit Doubler"))
                    return button;
            }
            FAIL("no way to edit it");
            throw 0;
        }(),
        Qt::LeftButton);
    window.session->undo();
    REQUIRE(window.squawk("1").repair_options.size() == 1);
    window.enter("A way to repair it", "Large doubler");
    REQUIRE(window.squawk("1").repair_options.size() == 2);
    CHECK(window.squawk("1").repair_options.front().title == "Next size");
    CHECK(window.squawk("1").repair_options.back().title == "Large doubler");
}

TEST_CASE("A way to repair it that is typed holds the words of another back once", "[squawks]")
{
    SquawksWindow window;
    const char *way = "A way to repair it";
    window.show(window.workshop.squawk);
    window.enter(way, "Next size");
    const auto edit = [&] {
        for (auto *button : window.page.findChildren<QPushButton *>()) {
            if (button->accessibleName() == QStringLiteral("Edit Next size"))
                return QTest::mouseClick(button, Qt::LeftButton);
        }
        FAIL("no way to edit it");
    };
    window.field(way).setText(QStringLiteral("Doubler"));
    edit();
    CHECK(window.field(way).text() == QStringLiteral("Doubler"));
    REQUIRE(window.complaints.size() == 1);
    SECTION("and is kept by Enter")
    {
        QTest::keyClick(&window.field(way), Qt::Key_Return);
        CHECK(window.squawk("1").repair_options.size() == 2);
    }
    SECTION("and goes when they are wanted once more")
    {
        edit();
        CHECK(window.field(way).text() == QStringLiteral("Next size"));
        window.field(way).setText(QStringLiteral("Next size, reamed"));
        // Its own words are in the line already, and go on.
        edit();
        CHECK(window.field(way).text() == QStringLiteral("Next size, reamed"));
        CHECK(window.complaints.size() == 1);
        QTest::keyClick(&window.field(way), Qt::Key_Return);
        REQUIRE(window.squawk("1").repair_options.size() == 1);
        CHECK(window.squawk("1").repair_options.front().title == "Next size, reamed");
    }
}

TEST_CASE("A name that is typed for an act is still there after a look elsewhere", "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    window.press("Mark as fixed");
    window.by().setEditText(QStringLiteral("Kim Lind"));
    QTest::keyClick(&window.field("On"), Qt::Key_Escape);
    window.press("Mark as fixed");
    CHECK(window.by().currentText() == QStringLiteral("Kim Lind"));
}

TEST_CASE("A squawk out of reach names the closing to open, and goes there", "[squawks]")
{
    SquawksWindow window;
    window.change([&](Edit &edit) {
        edit.update(window.workshop.wingClosing, [&](Closing &closing) {
            Closing::Event closed;
            closed.closed_on = Moment::parse("2026-03-12");
            closed.by = window.workshop.builder;
            closing.events.push_back(closed);
        });
    });
    window.show(window.workshop.squawk);
    window.press("Left wing, upper skin");
    CHECK(window.wanted == RecordRef{RecordType::Closing, window.workshop.wingClosing.value()});
}

TEST_CASE("Photos of the defect and of the repair stand side by side", "[squawks]")
{
    const TemporaryFolder folder;
    SquawksWindow window;
    window.show(window.workshop.squawk);
    ui::SquawkEditor &editor = window.editor();
    editor.before().addFiles({savedPicture(folder, "before.png", Qt::darkRed),
                              savedPicture(folder, "after.png", Qt::darkGreen)});
    editor.after().addFiles({savedPicture(folder, "more.png", Qt::blue)});
    CHECK(editor.before().count() == 2);
    CHECK(editor.after().count() == 1);
    window.press("It shows the repair");
    CHECK(editor.before().count() == 1);
    CHECK(editor.after().count() == 2);
    window.session->undo();
    CHECK(editor.before().count() == 2);
    int repairs = 0;
    for (const Media &media : window.session->records()->media)
        repairs += media.shows.contains(Shows::Repair);
    CHECK(repairs == 1);
}

TEST_CASE("A squawk that is being marked as fixed is shown whole", "[squawks]")
{
    const TemporaryFolder folder;
    SquawksWindow window;
    window.show(window.workshop.squawk);
    window.editor().before().addFiles({savedPicture(folder, "before.png", Qt::darkRed)});
    window.press("Mark as fixed and checked");
    wholePicture(window.page, 1120, 1300, "squawk-loop-light");
    CHECK(says(window.page, QStringLiteral("Squawk 1: what was done about it?")));
    CHECK_FALSE(says(window.page, QStringLiteral("No photo of the defect yet")));
    CHECK(says(window.page, QStringLiteral("No photo of the repair yet")));
}

} // namespace lastrivet::test
