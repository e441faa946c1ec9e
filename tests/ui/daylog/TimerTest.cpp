// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/TimerBar.h"

#include "tests/ui/daylog/LogWindow.h"

namespace lastrivet::test {

TEST_CASE("The clock runs on through a restart and then becomes an entry")
{
    LogWindow window;
    QTest::keyClicks(&window.line(), QStringLiteral("rudder"));
    window.press(QStringLiteral("Start work"));
    window.page.reset();
    window.session.reset();
    window.workshop.clock.advance(std::chrono::minutes{65});
    window.open();
    REQUIRE(window.session->timer());
    window.press(QStringLiteral("Stop work"));
    QTest::keyClicks(&window.field(QStringLiteral("Done")), QStringLiteral("skin drilled"));
    QTest::keyClick(&window.field(QStringLiteral("Done")), Qt::Key_Return);
    const WorkSession entry = window.latest();
    CHECK(entry.minutes == Minutes{65});
    CHECK(entry.component_id == window.workshop.rudder);
    CHECK(entry.began == Moment::parse("2026-03-14T18:00"));
    CHECK(entry.note == "skin drilled");
    CHECK_FALSE(window.session->timer());
}

TEST_CASE("A clock that was forgotten does not decide how long work took")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::hours{9});
    const auto before = window.session->records()->work_sessions.size();
    window.press(QStringLiteral("Stop work"));
    CHECK(window.field(QStringLiteral("Worked for")).text().isEmpty());
    QTest::keyClick(&window.field(QStringLiteral("Worked for")), Qt::Key_Return);
    CHECK(window.session->records()->work_sessions.size() == before);
    QTest::keyClicks(&window.field(QStringLiteral("Worked for")), QStringLiteral("3h"));
    QTest::keyClick(&window.field(QStringLiteral("Worked for")), Qt::Key_Return);
    CHECK(window.latest().minutes == Minutes{180});
}

TEST_CASE("Pauses are no work, and what is noted meanwhile is not typed again")
{
    LogWindow window;
    QTest::keyClicks(&window.line(), QStringLiteral("rudder"));
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{4});
    QLineEdit &note = window.field(QStringLiteral("Note while at work"));
    note.setFocus();
    QTest::keyClicks(&note, QStringLiteral("skin drilled"));
    window.press(QStringLiteral("Pause"));
    window.workshop.clock.advance(std::chrono::hours{2});
    window.press(QStringLiteral("Go on"));
    window.workshop.clock.advance(std::chrono::minutes{3});
    window.press(QStringLiteral("Stop work"));
    CHECK(window.field(QStringLiteral("Done")).text() == QStringLiteral("skin drilled"));
    QTest::keyClick(&window.field(QStringLiteral("Done")), Qt::Key_Return);
    CHECK(window.latest().minutes == Minutes{7});
    CHECK(window.latest().note == "skin drilled");
    CHECK(window.latest().component_id == window.workshop.rudder);
}

TEST_CASE("A night with the lid closed is noticed, and saying when work stopped gives its time")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{4});
    window.workshop.clock.advance(std::chrono::hours{11});
    window.press(QStringLiteral("Stop work"));
    QLineEdit &stopped = window.field(QStringLiteral("Stopped at"));
    CHECK(stopped.text().isEmpty());
    stopped.setFocus();
    QTest::keyClicks(&stopped, QStringLiteral("19:20"));
    CHECK(window.field(QStringLiteral("Worked for")).text() == QStringLiteral("1 h 20"));
    QTest::keyClick(&stopped, Qt::Key_Return);
    CHECK(window.latest().minutes == Minutes{80});
    CHECK(window.latest().began == Moment::parse("2026-03-14T18:00"));
}

TEST_CASE("The time that the computer slept can be left out while the clock goes on")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{90});
    window.page.reset();
    window.session.reset();
    window.open(); // as after a crash: the clock is looked at again
    window.press(QStringLiteral("Leave that time out"));
    window.workshop.clock.advance(std::chrono::minutes{5});
    REQUIRE(window.session->timer());
    const auto progress = timerProgress(window.session->project(), *window.session->timer());
    CHECK(workedBy(progress, window.session->now()) == Minutes{5});
}

TEST_CASE("A line with an impossible time stays in the form when work stops")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{3});
    window.press(QStringLiteral("Stop work"));
    QLineEdit &worked = window.field(QStringLiteral("Worked for"));
    worked.setText(QStringLiteral("30h"));
    const auto before = window.session->records()->work_sessions.size();
    QTest::keyClick(&worked, Qt::Key_Return);
    CHECK(window.session->records()->work_sessions.size() == before);
    CHECK(worked.text() == QStringLiteral("30h"));
    CHECK(window.session->timer());
}

} // namespace lastrivet::test
