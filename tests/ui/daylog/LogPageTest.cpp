// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogPage.h"

#include "core/project/acts/Withdrawal.h"
#include "tests/ui/daylog/LogWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ModelWatch.h"
#include "ui/daylog/LogDetail.h"
#include "ui/daylog/LogModel.h"
#include "ui/daylog/Understood.h"

#include <QApplication>
#include <QComboBox>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

namespace lastrivet::test {

TEST_CASE("A line becomes an entry with Enter, and the line is free for the next")
{
    LogWindow window;
    QTest::keyClicks(&window.line(), QStringLiteral("yesterday 2h15 la: dimpled both skins"));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    const WorkSession entry = window.latest();
    CHECK(entry.component_id == window.workshop.aileron);
    CHECK(entry.minutes == Minutes{135});
    CHECK(entry.began == Moment::parse("2026-03-13"));
    CHECK(entry.note == "dimpled both skins");
    REQUIRE(entry.workers.size() == 1);
    CHECK(entry.workers.front().person_id == window.workshop.builder);
    CHECK(window.line().text().isEmpty());
    window.session->undo();
    CHECK_FALSE(window.session->records()->findLive(entry.id));
}

TEST_CASE("Without an entry one sentence has the whole page, until the first is written")
{
    LogWindow window;
    const auto isDetailShown = [&] {
        QCoreApplication::processEvents();
        return window.page->findChild<ui::LogDetail *>()->isVisible();
    };
    CHECK(isDetailShown());
    window.session->change(QStringLiteral("Begun anew"), [](Edit &edit) {
        std::vector<RecordRef> entries;
        for (const WorkSession &known : edit.records().work_sessions)
            entries.push_back({RecordType::WorkSession, known.id.value()});
        auto all = acts::companions(edit.records(), entries);
        all.insert(all.end(), entries.begin(), entries.end());
        acts::withdraw(edit, all, "another aeroplane");
    });
    CHECK_FALSE(isDetailShown());
    QTest::keyClicks(&window.line(), QStringLiteral("1h la: drilled"));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(isDetailShown());
}

TEST_CASE("What is logged is not in the line again after a crash")
{
    LogWindow window;
    const auto kept = [&] { return window.session->localState("log_line").value; };
    QTest::keyClicks(&window.line(), QStringLiteral("yesterday 2h15 la: dimpled both skins"));
    // As when the hand rests.
    window.page->hide();
    window.page->show();
    REQUIRE(kept());
    SECTION("after Enter")
    {
        QTest::keyClick(&window.line(), Qt::Key_Return);
        REQUIRE(window.latest().component_id == window.workshop.aileron);
    }
    SECTION("nor when the clock took it")
    {
        window.press(QStringLiteral("Start work"));
        REQUIRE(window.session->timer());
    }
    CHECK(window.line().text().isEmpty());
    CHECK_FALSE(kept());
}

TEST_CASE("A part is completed from its first letters")
{
    LogWindow window;
    window.line().setFocus();
    QTest::keyClicks(&window.line(), QStringLiteral("1h rud"));
    QWidget *popup = QApplication::activePopupWidget();
    REQUIRE(popup);
    QTest::keyClick(popup, Qt::Key_Down);
    QTest::keyClick(popup, Qt::Key_Return);
    CHECK(window.line().text() == QStringLiteral("1h RU: "));
}

TEST_CASE("What a line says stands below it before Enter, and several parts share the time")
{
    LogWindow window;
    QTest::keyClicks(&window.line(), QStringLiteral("1h31 LA + RU with Sam 30m paid: primed"));
    const QStringList told = window.page->findChild<ui::Understood *>()->texts();
    INFO(told.join(QLatin1Char('|')).toStdString());
    CHECK(told.contains(QStringLiteral("today")));
    CHECK(told.contains(QStringLiteral("0 h 46 on LA Left aileron")));
    CHECK(told.contains(QStringLiteral("0 h 45 on RU Rudder")));
    const auto before = window.session->records()->work_sessions.size();
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(window.session->records()->work_sessions.size() == before + 2);
    std::int64_t paid = 0;
    for (const WorkSession &entry : window.session->records()->work_sessions) {
        for (const auto &worker : entry.workers)
            paid += worker.paid ? worker.minutes->count() : 0;
    }
    CHECK(paid == 30);
}

TEST_CASE("An unknown part is told, nothing typed is lost, and Enter once more logs it")
{
    LogWindow window;
    QStringList complaints;
    QObject::connect(window.session.get(), &ui::Session::complained, window.page.get(),
                     [&](const QString &sentence) { complaints.append(sentence); });
    const auto before = window.session->records()->work_sessions.size();
    const auto typed = QStringLiteral("1h propeller: cleaned");
    QTest::keyClicks(&window.line(), typed);
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(window.session->records()->work_sessions.size() == before);
    CHECK(window.line().text() == typed);
    REQUIRE(complaints.size() == 1);
    CHECK(complaints.front().contains(QStringLiteral("propeller")));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(window.latest().note == "propeller: cleaned");
    CHECK(window.line().text().isEmpty());
}

TEST_CASE("Negative time, more than a day and a day to come are never logged")
{
    LogWindow window;
    const auto before = window.session->records()->work_sessions.size();
    for (const char *typed : {"-2h la: drilled", "25h la: drilled", "tomorrow 1h la: drilled",
                              "2026-04-01 1h la: drilled", "0m la: drilled"}) {
        window.line().setText(QString::fromLatin1(typed));
        QTest::keyClick(&window.line(), Qt::Key_Return);
        QTest::keyClick(&window.line(), Qt::Key_Return);
        CHECK(window.line().text() == QString::fromLatin1(typed));
    }
    CHECK(window.session->records()->work_sessions.size() == before);
}

TEST_CASE("While a closing is signed and open, the line asks whether the work changed anything")
{
    LogWindow window;
    const auto sign = [&](HoldPointKind kind) {
        window.session->change(QStringLiteral("Signed"), [&](Edit &edit) {
            SignOff signOff;
            signOff.hold_point_id =
                Workshop::point(edit.records(), window.workshop.wingClosing, kind);
            signOff.person_id = window.workshop.inspector;
            signOff.signed_on = Moment::parse("2026-03-13");
            edit.put(signOff);
        });
    };
    sign(HoldPointKind::PreCover);
    QTest::keyClicks(&window.line(), QStringLiteral("1h LW-B3: clamped"));
    auto *answer = window.page->findChild<QComboBox *>();
    for (auto *box : window.page->findChildren<QComboBox *>()) {
        if (box->accessibleName().startsWith(QStringLiteral("Did this change")) && box->isVisible())
            answer = box;
    }
    REQUIRE(answer);
    REQUIRE(answer->isVisible());
    REQUIRE(answer->count() == 4);
    answer->setFocus();
    QTest::keyClicks(answer, QStringLiteral("yes"));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(window.latest().changed_inspected == true);
    QTest::keyClicks(&window.line(), QStringLiteral("1h LW-B3: riveted"));
    answer->setFocus();
    QTest::keyClick(answer, Qt::Key_End);
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(window.latest().step_id == window.workshop.skin);
    CHECK_FALSE(window.latest().changed_inspected.has_value());
}

TEST_CASE("Entries are edited in place and withdrawn with a reason")
{
    LogWindow window;
    const auto entry = window.latest();
    window.page->showRecord({RecordType::WorkSession, entry.id.value()});
    QLineEdit &duration = window.field(QStringLiteral("Duration"));
    duration.setFocus();
    duration.selectAll();
    QTest::keyClicks(&duration, QStringLiteral("45m"));
    QTest::keyClick(&duration, Qt::Key_Return);
    CHECK(window.session->records()->find(entry.id)->minutes == Minutes{45});
    window.press(QStringLiteral("Withdraw this entry"));
    QTest::keyClicks(&window.field(QStringLiteral("Why")), QStringLiteral("written twice"));
    QTest::keyClick(&window.field(QStringLiteral("Why")), Qt::Key_Return);
    CHECK(window.session->records()->find(entry.id)->withdrawn_why == "written twice");
}

TEST_CASE("The log follows changes day by day without breaking a rule of models")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::LogModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    CHECK(model.rowCount() == 4); // two days, an entry each
    Id<WorkSession> added;
    session->change(QStringLiteral("Logged"), [&](Edit &edit) {
        added = edit.put(WorkSession{.began = Moment::parse("2026-02-20T20:00"),
                                     .minutes = Minutes{30},
                                     .component_id = workshop.aileron});
    });
    CHECK(model.rowCount() == 5);
    CHECK(model.total() == Minutes{225});
    session->change(QStringLiteral("Another day"), [&](Edit &edit) {
        edit.update(added, [](WorkSession &entry) { entry.began = Moment::parse("2026-01-01"); });
    });
    CHECK(model.rowCount() == 6);
    session->undo();
    session->undo();
    CHECK(model.rowCount() == 4);
    watch.check();
}

TEST_CASE("An entry of long ago is marked as written down late")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::LogModel model(*session);
    QTest::qWait(20);
    const Snapshot before = session->records();
    Id<WorkSession> entry;
    session->change(QStringLiteral("Logged"), [&](Edit &edit) {
        entry = edit.put(WorkSession{.began = Moment::parse("2025-06-01"), .minutes = Minutes{30}});
    });
    model.apply({before, session->records(), {{RecordType::WorkSession, entry.value()}}, {}});
    const QString marks =
        model.index(model.rowCount() - 1, 0).data(ui::LogModel::MarksRole).toString();
    INFO(marks.toStdString());
    CHECK(marks.contains(QStringLiteral("late")));
}

TEST_CASE("The log is shown whole, in light and in dark")
{
    LogWindow window;
    window.session->change(QStringLiteral("More"), [&](Edit &edit) {
        for (int i = 0; i < 90; ++i)
            edit.put(
                WorkSession{.began = edit.today().plusDays(-i * 3),
                            .minutes = Minutes{40 + (i * 37) % 300},
                            .component_id = i % 2 ? window.workshop.bay : window.workshop.aileron,
                            .kind = WorkKind(i % 5),
                            .note = "Dimpled both skins and deburred every hole twice"});
    });
    QTest::keyClicks(&window.line(), QStringLiteral("2h15 left aileron: dimpled both skins"));
    lightAndDark(*window.page, 1120, 660, "log");
    // Ninety made here, which add up to 284 h 45, and the two of the workshop.
    CHECK(says(*window.page, QStringLiteral("92 entries, 288 h 00")));
}

} // namespace lastrivet::test
