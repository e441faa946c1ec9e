// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/SquawksWindow.h"
#include "ui/squawks/SquawkPictures.h"
#include "ui/widgets/PictureLoader.h"

#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <string>

namespace lastrivet::test {

TEST_CASE("The clock measures work on a squawk, and runs on until its time is logged", "[squawks]")
{
    SquawksWindow window;
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
    // With where it is from, in case that nothing more can be kept.
    const std::string id = std::to_string(window.workshop.squawk.value());
    CHECK(window.session->localState("squawk_work:" + id).value == "25m: ");
    CHECK(window.session->localState("squawk_clock:" + id).value == began.text());
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
    SquawksWindow window;
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
    SquawksWindow window;
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
    SquawksWindow window;
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
    SquawksWindow window;
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
    SquawksWindow window;
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
    SquawksWindow window;
    window.show(window.workshop.squawk);
    window.change([&](Edit &edit) {
        edit.update(window.workshop.wires, [](Step &step) { step.plan_ref = "12-3"; });
    });
    window.enter("Log work on this squawk", "1h: refitted done 12-3");
    CHECK(window.session->records()->find(window.workshop.wires)->done_on);
}

TEST_CASE("The picture that is sent over next is in sight", "[squawks]")
{
    SquawksWindow window;
    window.change([&](Edit &edit) {
        for (int day = 1; day <= 4; ++day) {
            Media media;
            media.file = "photos/" + std::to_string(day) + ".jpg";
            media.taken_on = Moment::parse("2026-03-0" + std::to_string(day));
            media.links.push_back({RecordType::Squawk, window.workshop.squawk.value()});
            edit.put(media);
        }
    });
    window.show(window.workshop.squawk);
    QListView &before = list(window.page, QStringLiteral("Photos before the repair"));
    for (int sent = 1; sent <= 3; ++sent) {
        window.press("It shows the repair");
        QCoreApplication::processEvents();
        CHECK(before.model()->rowCount() == 4 - sent);
        const QRect chosen = before.visualRect(before.currentIndex());
        CHECK(before.viewport()->rect().contains(chosen.center()));
    }
}

TEST_CASE("The pictures of a squawk can be narrower than both of their buttons side by side",
          "[squawks]")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::PictureLoader loader(*session);
    ui::SquawkPictures pictures(*session, loader, ui::SquawkPictures::Side::Before);
    pictures.QWidget::show();
    REQUIRE(QTest::qWaitForWindowExposed(&pictures));
    int together = 0;
    for (QPushButton *button : pictures.findChildren<QPushButton *>()) {
        button->show();
        together += button->sizeHint().width();
    }
    QCoreApplication::processEvents();
    CHECK(pictures.minimumSizeHint().width() < together);
}

} // namespace lastrivet::test
