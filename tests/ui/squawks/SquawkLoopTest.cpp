// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/squawks/SquawkActForm.h"
#include "ui/squawks/SquawkEditor.h"
#include "ui/squawks/SquawkPictures.h"
#include "ui/squawks/SquawksPage.h"

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

/// The page of squawks in a window of its own, with what the tests press and read.
struct Window {
    Window()
    {
        page.resize(1200, 1400);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        QObject::connect(session.get(), &ui::Session::recordWanted, &page,
                         [this](RecordRef record) { wanted = record; });
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complaints.append(sentence); });
    }
    QLineEdit &field(const char *name) { return test::field(page, QString::fromUtf8(name)); }
    QComboBox &by() { return choice(page, QStringLiteral("By")); }
    void enter(const char *name, const char *text)
    {
        QLineEdit &line = field(name);
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, QString::fromUtf8(text));
        QTest::keyClick(&line, Qt::Key_Return);
    }
    QPushButton *button(const char *text) { return test::button(page, QString::fromUtf8(text)); }
    void press(const char *text) { test::press(page, QString::fromUtf8(text)); }
    ui::SquawkEditor &editor() { return *page.findChild<ui::SquawkEditor *>(); }
    /// What the form of the act says below its fields.
    bool isHinted(const char *words)
    {
        const auto labels = page.findChild<ui::SquawkActForm *>()->findChildren<QLabel *>();
        return std::ranges::any_of(labels, [&](const QLabel *label) {
            return label->isVisible() && label->text().contains(QString::fromUtf8(words));
        });
    }
    void show(Id<Squawk> id) { page.showRecord({RecordType::Squawk, id.value()}); }
    void change(const std::function<void(Edit &)> &body)
    {
        REQUIRE(session->change(QStringLiteral("Setting"), body));
    }
    const Squawk &squawk(std::string_view number)
    {
        const auto records = session->records();
        for (const Squawk &known : records->squawks) {
            if (known.number == number)
                return known;
        }
        FAIL("no squawk " << number);
        return *records->squawks.begin();
    }
    /// One more squawk on the bay.
    Id<Squawk> addSquawk()
    {
        Id<Squawk> added;
        change([&](Edit &edit) {
            added = edit.put(Squawk{.number = "2",
                                    .component_id = workshop.bay,
                                    .title = "Scratch",
                                    .found_on = edit.today()});
        });
        return added;
    }
    std::vector<WorkSession> sessionsOn(Id<Squawk> id)
    {
        std::vector<WorkSession> found;
        for (const WorkSession &work : session->records()->work_sessions) {
            if (work.squawk_id == id)
                found.push_back(work);
        }
        return found;
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::SquawksPage page{*session};
    RecordRef wanted{};
    QStringList complaints;
};

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
    Window window;
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

    CHECK_FALSE(window.button("Fixed and checked"));
    // The names of parts that were offered took the window's place.
    window.page.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window.page));
    window.page.firstFocus()->setFocus();
    QTest::keyClick(window.page.firstFocus(), Qt::Key_F);
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

TEST_CASE("The clock measures work on a squawk, and runs on until its time is logged", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Start work");
    REQUIRE(window.session->timer());
    CHECK(window.session->timer()->squawk_id == window.workshop.squawk);
    const Moment began = window.session->timer()->began;
    window.workshop.clock.set(window.workshop.clock.now() + std::chrono::minutes{25});
    window.press("Stop work");
    CHECK(window.session->timer());
    QLineEdit &line = window.field("Log work on this squawk");
    CHECK(line.text() == QStringLiteral("25m: "));
    QTest::keyClicks(&line, QStringLiteral("drilled out"));
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK_FALSE(window.session->timer());
    const auto work = window.sessionsOn(window.workshop.squawk);
    REQUIRE(work.size() == 1);
    CHECK(work.front().began == began);
    CHECK(work.front().minutes == Minutes{25});
    CHECK(work.front().note == "drilled out");
}

TEST_CASE("Pauses of the clock are no work on a squawk", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Start work");
    auto progress = window.session->timerProgress();
    window.workshop.clock.advance(std::chrono::minutes{10});
    pause(progress, window.session->now());
    window.workshop.clock.advance(std::chrono::minutes{40});
    resume(progress, window.session->now());
    REQUIRE(window.session->setTimerProgress(progress));
    window.workshop.clock.advance(std::chrono::minutes{5});
    window.press("Stop work");
    CHECK(window.field("Log work on this squawk").text() == QStringLiteral("15m: "));
}

TEST_CASE("Stopping the clock keeps what is typed, also when it is pressed twice", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Start work");
    window.workshop.clock.advance(std::chrono::minutes{25});
    QLineEdit &line = window.field("Log work on this squawk");
    QTest::keyClicks(&line, QStringLiteral("drilled out"));
    window.press("Stop work");
    CHECK(line.text() == QStringLiteral("25m: drilled out"));
    QTest::keyClicks(&line, QStringLiteral(", deburred"));
    window.press("Stop work");
    CHECK(line.text() == QStringLiteral("25m: drilled out, deburred"));
}

TEST_CASE("A clock that ran for too long asks for the time and keeps the words", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Start work");
    window.workshop.clock.advance(std::chrono::minutes{5 * 60});
    QLineEdit &line = window.field("Log work on this squawk");
    QTest::keyClicks(&line, QStringLiteral("drilled out"));
    window.press("Stop work");
    REQUIRE(window.complaints.size() == 1);
    CHECK(window.complaints.front().contains(QStringLiteral("How long was really worked")));
    QTest::keyClicks(&line, QStringLiteral("2h: "));
    QTest::keyClick(&line, Qt::Key_Return);
    const auto work = window.sessionsOn(window.workshop.squawk);
    REQUIRE(work.size() == 1);
    CHECK(work.front().minutes == Minutes{120});
    CHECK(work.front().note == "drilled out");
    CHECK_FALSE(window.session->timer());
}

TEST_CASE("A day that is typed counts more than the clock's, and an emptied line lets it run on",
          "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Start work");
    window.workshop.clock.advance(std::chrono::minutes{25});
    window.press("Stop work");
    SECTION("typed day")
    {
        window.enter("Log work on this squawk", "45m 2026-03-12: drilled out");
        const auto work = window.sessionsOn(window.workshop.squawk);
        REQUIRE(work.size() == 1);
        CHECK(work.front().began == Moment::parse("2026-03-12"));
    }
    SECTION("emptied line")
    {
        QLineEdit &line = window.field("Log work on this squawk");
        line.selectAll();
        QTest::keyClick(&line, Qt::Key_Backspace);
        window.enter("Log work on this squawk", "1h: looked for more");
        CHECK(window.session->timer());
        const auto work = window.sessionsOn(window.workshop.squawk);
        REQUIRE(work.size() == 1);
        CHECK(work.front().began == window.session->today());
    }
}

TEST_CASE("Work that cannot be is not logged, what is unclear only when said twice", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    const auto count = [&] { return window.sessionsOn(window.workshop.squawk).size(); };
    window.enter("Log work on this squawk", "25h: drilled");
    CHECK(count() == 0);
    REQUIRE(window.complaints.size() == 1);
    window.enter("Log work on this squawk", "1h no such part: drilled");
    CHECK(count() == 0);
    CHECK(window.complaints.size() == 2);
    QTest::keyClick(&window.field("Log work on this squawk"), Qt::Key_Return);
    CHECK(count() == 1);
    CHECK(window.complaints.size() == 2);
}

TEST_CASE("Steps that the line calls done are ticked", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.change([&](Edit &edit) {
        edit.update(window.workshop.wires, [](Step &step) { step.plan_ref = "12-3"; });
    });
    window.enter("Log work on this squawk", "1h: refitted done 12-3");
    CHECK(window.session->records()->find(window.workshop.wires)->done_on);
}

TEST_CASE("What is typed about one squawk waits while another is looked at", "[squawks]")
{
    Window window;
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

TEST_CASE("A way to repair it that goes while its words are edited is added anew", "[squawks]")
{
    Window window;
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

TEST_CASE("A name that is typed for an act is still there after a look elsewhere", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Fixed");
    window.by().setEditText(QStringLiteral("Kim Lind"));
    QTest::keyClick(&window.field("On"), Qt::Key_Escape);
    window.press("Fixed");
    CHECK(window.by().currentText() == QStringLiteral("Kim Lind"));
}

TEST_CASE("What comes next for a squawk is the button that stands out", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    const auto standsOut = [&](const char *words) {
        const QPushButton *found = window.button(words);
        REQUIRE(found);
        return found->property("primary").toBool();
    };
    CHECK(standsOut("Fixed and checked"));
    window.press("Fixed");
    window.enter("Correction", "Drilled out");
    CHECK(standsOut("Verify"));
    CHECK_FALSE(standsOut("Accept as it is"));
}

TEST_CASE("A correction is dated between the day it was found and today", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Fixed and checked");
    window.field("Correction").setText(QStringLiteral("Drilled out"));
    window.enter("On", "2026-03-15");
    CHECK(window.isHinted("has not come yet"));
    window.enter("On", "2026-03-10");
    CHECK(window.isHinted("was found on"));
    window.enter("On", "someday");
    CHECK(window.isHinted("is no day"));
    CHECK_FALSE(window.squawk("1").fixed_on);
    QTest::keyClick(&window.field("On"), Qt::Key_Escape);
    window.press("Fixed and checked");
    CHECK(window.field("Correction").text() == QStringLiteral("Drilled out"));
    window.enter("On", "2026-03-12");
    CHECK(window.squawk("1").verified_on == Moment::parse("2026-03-12"));
}

TEST_CASE("A squawk cannot be found tomorrow, and its title cannot be emptied", "[squawks]")
{
    Window window;
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
    Window window;
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
    Window window;
    window.show(window.workshop.squawk);
    window.press("Fixed");
    window.enter("Correction", "Drilled out");
    window.press("Take back…");
    window.enter("Why", "");
    CHECK(window.isHinted("Say why"));
    window.enter("Why", "still smoking");
    CHECK_FALSE(window.squawk("1").fixed_on);
    CHECK(window.squawk("1").note == "2026-03-14: not fixed after all: still smoking");

    window.press("Fixed and checked");
    CHECK(window.field("Correction").text() == QStringLiteral("Drilled out"));
    window.enter("Correction", "Next size");
    window.show(window.workshop.squawk);
    window.press("It came back…");
    window.enter("Why", "loose at the same place");
    CHECK(window.squawk("2").title == window.squawk("1").title);
    CHECK(window.squawk("2").note.find("loose at the same place") != std::string::npos);
    CHECK(window.squawk("1").verified_on);
    CHECK(window.wanted == RecordRef{RecordType::Squawk, window.squawk("2").id.value()});
}

TEST_CASE("A squawk out of reach names the closing to open, and goes there", "[squawks]")
{
    Window window;
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
    Window window;
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

TEST_CASE("The loop as it looks", "[squawks]")
{
    const TemporaryFolder folder;
    Window window;
    window.show(window.workshop.squawk);
    window.editor().before().addFiles({savedPicture(folder, "before.png", Qt::darkRed)});
    window.press("Fixed and checked");
    picture(window.page, 1120, 1300, "squawk-loop-light");
}

} // namespace lastrivet::test
