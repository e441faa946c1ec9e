// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/TimerBar.h"

#include "tests/ui/daylog/LogWindow.h"
#include "tests/ui/support/AwayTable.h"
#include "ui/daylog/StopForm.h"
#include "ui/widgets/RecordLine.h"

#include <QComboBox>

#include <algorithm>
#include <cstdlib>

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

TEST_CASE("A clock that was started without a part is given one when it is stopped")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{20});
    window.press(QStringLiteral("Stop work"));
    ui::RecordLine *part = nullptr;
    for (ui::StopForm *form : window.page->findChildren<ui::StopForm *>()) {
        if (form->isVisible())
            part = form->findChild<ui::RecordLine *>();
    }
    REQUIRE(part);
    REQUIRE(part->isVisible());
    part->setFocus();
    QTest::keyClicks(part, QStringLiteral("rudder"));
    QTest::keyClick(part, Qt::Key_Return);
    CHECK(window.session->timer()->component_id == window.workshop.rudder);
    QTest::keyClicks(&window.field(QStringLiteral("Done")), QStringLiteral("skin drilled"));
    QTest::keyClick(&window.field(QStringLiteral("Done")), Qt::Key_Return);
    const WorkSession entry = window.latest();
    CHECK(entry.component_id == window.workshop.rudder);
    CHECK(entry.minutes == Minutes{20});
}

TEST_CASE("What was typed stays with the clock when it is kept running after all")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{4});
    window.press(QStringLiteral("Stop work"));
    QTest::keyClicks(&window.field(QStringLiteral("Done")), QStringLiteral("skin drilled"));
    window.press(QStringLiteral("Keep it running"));
    REQUIRE(window.session->timer());
    CHECK(window.session->timerProgress().note == "skin drilled");
    CHECK(window.field(QStringLiteral("Note while at work")).text() ==
          QStringLiteral("skin drilled"));
    window.press(QStringLiteral("Stop work"));
    QLineEdit &done = window.field(QStringLiteral("Done"));
    CHECK(done.text() == QStringLiteral("skin drilled"));
    QTest::keyClick(&done, Qt::Key_Return);
    CHECK(window.latest().note == "skin drilled");
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

TEST_CASE("The clock goes for all the parts that the line named as it was started")
{
    LogWindow window;
    const auto before = window.session->records()->work_sessions.size();
    window.line().setText(QStringLiteral("RU + LA: hinges drilled"));
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{60});
    window.press(QStringLiteral("Stop work"));
    QTest::keyClick(&window.field(QStringLiteral("Done")), Qt::Key_Return);
    const Snapshot records = window.session->records();
    REQUIRE(records->work_sessions.size() == before + 2);
    IdSet<Component> parts;
    for (const WorkSession &entry : records->work_sessions) {
        if (entry.note != "hinges drilled")
            continue;
        CHECK(entry.minutes == Minutes{30});
        parts.push_back(entry.component_id);
    }
    std::ranges::sort(parts);
    CHECK(parts == IdSet<Component>{window.workshop.aileron, window.workshop.rudder});
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

TEST_CASE("Stop pressed twice leaves what is typed as it is")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{3});
    window.press(QStringLiteral("Stop work"));
    QLineEdit &done = window.field(QStringLiteral("Done"));
    QTest::keyClicks(&done, QStringLiteral("ribs clecoed"));
    window.field(QStringLiteral("Worked for")).setText(QStringLiteral("2h"));
    window.press(QStringLiteral("Stop work"));
    CHECK(done.text() == QStringLiteral("ribs clecoed"));
    CHECK(done.hasFocus());
    CHECK(window.field(QStringLiteral("Worked for")).text() == QStringLiteral("2h"));
}

TEST_CASE("Times that were typed are there again when the window was closed over them")
{
    LogWindow window;
    const auto stoppedAt = QStringLiteral("Stopped at");
    const auto workedFor = QStringLiteral("Worked for");
    const auto openAgain = [&window] {
        window.page->hide();
        window.page.reset();
        window.session.reset();
        window.workshop.clock.advance(std::chrono::hours{1});
        window.open();
        window.press(QStringLiteral("Stop work"));
    };
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::hours{5});
    window.press(QStringLiteral("Stop work"));
    window.field(stoppedAt).setFocus();
    QTest::keyClicks(&window.field(stoppedAt), QStringLiteral("19:20"));
    openAgain();
    CHECK(window.field(stoppedAt).text() == QStringLiteral("19:20"));
    CHECK(window.field(workedFor).text() == QStringLiteral("1 h 20"));
    SECTION("until they are logged")
    {
        window.field(workedFor).selectAll();
        QTest::keyClicks(&window.field(workedFor), QStringLiteral("50m"));
        openAgain();
        CHECK(window.field(workedFor).text() == QStringLiteral("50m"));
        QTest::keyClick(&window.field(workedFor), Qt::Key_Return);
        CHECK(window.latest().minutes == Minutes{50});
        CHECK_FALSE(window.session->localState("clock_stop").value);
    }
    SECTION("until the clock is kept running after all")
    {
        window.press(QStringLiteral("Keep it running"));
        CHECK_FALSE(window.session->localState("clock_stop").value);
        window.press(QStringLiteral("Stop work"));
        CHECK(window.field(stoppedAt).text().isEmpty());
    }
}

TEST_CASE("What is typed as work stops is kept when the hand rests, before the form goes")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::hours{5});
    window.press(QStringLiteral("Stop work"));
    QTest::keyClicks(&window.field(QStringLiteral("Done")), QStringLiteral("ribs clecoed"));
    QTest::keyClicks(&window.field(QStringLiteral("Stopped at")), QStringLiteral("19:20"));
    CHECK(QTest::qWaitFor(
        [&] { return window.session->localState("clock_stop").value.has_value(); }, 5000));
    CHECK(window.session->timerProgress().note == "ribs clecoed");
    CHECK(window.field(QStringLiteral("Done")).text() == QStringLiteral("ribs clecoed"));
}

TEST_CASE("What was typed as work stops, and could not be kept, is there when it stops again")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::hours{5});
    window.press(QStringLiteral("Stop work"));
    QTest::keyClicks(&window.field(QStringLiteral("Done")), QStringLiteral("ribs clecoed"));
    const AwayTable away(window.workshop, "local_state");
    window.press(QStringLiteral("Keep it running"));
    away.putBack();
    window.press(QStringLiteral("Stop work"));
    CHECK(window.field(QStringLiteral("Done")).text() == QStringLiteral("ribs clecoed"));
}

TEST_CASE("A note of the clock that could not be kept stays in its line until it can be")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    QLineEdit &note = window.field(QStringLiteral("Note while at work"));
    QTest::keyClicks(&note, QStringLiteral("drill 40"));
    const AwayTable away(window.workshop, "local_state");
    Q_EMIT note.editingFinished();
    away.putBack();
    // The clock is told to the line.
    window.press(QStringLiteral("Pause"));
    CHECK(note.text() == QStringLiteral("drill 40"));
    Q_EMIT note.editingFinished();
    CHECK(window.session->timerProgress().note == "drill 40");
}

TEST_CASE("A time of stopping that is none, or lies ahead, is asked for again")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{3});
    window.press(QStringLiteral("Stop work"));
    const auto before = window.session->records()->work_sessions.size();
    const QString text = GENERATE(QStringLiteral("soon"), QStringLiteral("23:50"));
    QLineEdit &stopped = window.field(QStringLiteral("Stopped at"));
    stopped.clear();
    QTest::keyClicks(&stopped, text);
    QTest::keyClick(&stopped, Qt::Key_Return);
    CHECK(window.session->records()->work_sessions.size() == before);
    CHECK(stopped.text() == text);
    CHECK(stopped.hasFocus());
    stopped.clear();
    QTest::keyClicks(&stopped, QStringLiteral("18:02"));
    QTest::keyClick(&stopped, Qt::Key_Return);
    CHECK(window.latest().minutes == Minutes{2});
}

TEST_CASE("A name that nobody has is asked about before the work is logged when the clock stops")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{30});
    window.press(QStringLiteral("Stop work"));
    const auto before = window.session->records()->work_sessions.size();
    QLineEdit &done = window.field(QStringLiteral("Done"));
    QTest::keyClicks(&done, QStringLiteral("flaperon: drilled"));
    QTest::keyClick(&done, Qt::Key_Return);
    CHECK(window.session->records()->work_sessions.size() == before);
    QTest::keyClick(&done, Qt::Key_Return);
    REQUIRE(window.session->records()->work_sessions.size() == before + 1);
    CHECK(window.latest().minutes == Minutes{30});
}

TEST_CASE("A time that is typed among the words is how long it took, and is seen to be")
{
    LogWindow window;
    window.press(QStringLiteral("Start work"));
    window.workshop.clock.advance(std::chrono::minutes{30});
    window.press(QStringLiteral("Stop work"));
    QLineEdit &done = window.field(QStringLiteral("Done"));
    QLineEdit &worked = window.field(QStringLiteral("Worked for"));
    QTest::keyClicks(&done, QStringLiteral("1h15 rudder: drilled"));
    CHECK(worked.text() == QStringLiteral("1 h 15"));
    SECTION("it is logged")
    {
        QTest::keyClick(&done, Qt::Key_Return);
        CHECK(window.latest().minutes == Minutes{75});
    }
    SECTION("it leaves with its words")
    {
        done.setSelection(0, 5);
        QTest::keyClick(&done, Qt::Key_Delete);
        CHECK(worked.text() == QStringLiteral("0 h 30"));
    }
    SECTION("also when the clock was kept running in between")
    {
        window.press(QStringLiteral("Keep it running"));
        window.workshop.clock.advance(std::chrono::minutes{10});
        window.press(QStringLiteral("Stop work"));
        CHECK(done.text() == QStringLiteral("1h15 rudder: drilled"));
        CHECK(worked.text() == QStringLiteral("1 h 15"));
        QTest::keyClick(&done, Qt::Key_Return);
        CHECK(window.latest().minutes == Minutes{75});
        CHECK(window.latest().note == "drilled");
    }
}

TEST_CASE("What was answered about inspected work is asked anew for the next work there")
{
    LogWindow window;
    auto &workshop = window.workshop;
    window.session->change(QStringLiteral("Signed"), [&](Edit &edit) {
        SignOff signOff;
        signOff.hold_point_id =
            Workshop::point(edit.records(), workshop.wingClosing, HoldPointKind::PreCover);
        signOff.person_id = workshop.inspector;
        signOff.signed_on = Moment::parse("2026-03-13");
        edit.put(signOff);
    });
    const auto stop = [&] {
        window.session->setTimer(RunningTimer{window.session->now(), workshop.bay, {}, {}});
        window.workshop.clock.advance(std::chrono::minutes{4});
        window.press(QStringLiteral("Stop work"));
    };
    const auto answer = [&]() -> QComboBox & {
        for (auto *box : window.page->findChildren<QComboBox *>()) {
            if (box->accessibleName() == QStringLiteral("Did this change what was inspected?") &&
                box->isVisible())
                return *box;
        }
        FAIL("nothing is asked");
        std::abort();
    };
    stop();
    answer().setCurrentIndex(2);
    window.press(QStringLiteral("Log it"));
    CHECK(window.latest().changed_inspected == true);
    stop();
    CHECK(answer().currentIndex() == 0);
}

} // namespace lastrivet::test
