// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogPage.h"

#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/daylog/LogModel.h"

#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

struct Window {
    Window() { open(); }
    void open()
    {
        page.reset();
        session = workshop.session();
        page = std::make_unique<ui::LogPage>(*session);
        page->resize(1100, 680);
        page->show();
        REQUIRE(QTest::qWaitForWindowExposed(page.get()));
    }
    ui::EntryEdit &line() { return *page->findChild<ui::EntryEdit *>(); }
    QLineEdit &field(const QString &name)
    {
        for (auto *known : page->findChildren<QLineEdit *>()) {
            if (known->accessibleName() == name && known->isVisible())
                return *known;
        }
        FAIL("no field " << name.toStdString());
        return line();
    }
    void press(const QString &words)
    {
        for (auto *button : page->findChildren<QPushButton *>()) {
            if (button->text() == words && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        }
        FAIL("no button " << words.toStdString());
    }
    /// The session with the greatest id.
    WorkSession latest()
    {
        const auto &sessions = session->records()->work_sessions;
        return *sessions.find(Id<WorkSession>{sessions.greatestId()});
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session;
    std::unique_ptr<ui::LogPage> page;
};

} // namespace

TEST_CASE("A line becomes an entry with Enter, and the line is free for the next")
{
    Window window;
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

TEST_CASE("A part is completed from its first letters")
{
    Window window;
    window.line().setFocus();
    QTest::keyClicks(&window.line(), QStringLiteral("1h rud"));
    QWidget *popup = QApplication::activePopupWidget();
    REQUIRE(popup);
    QTest::keyClick(popup, Qt::Key_Down);
    QTest::keyClick(popup, Qt::Key_Return);
    CHECK(window.line().text() == QStringLiteral("1h RU: "));
}

TEST_CASE("The clock runs on through a restart and then becomes an entry")
{
    Window window;
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
    Window window;
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

TEST_CASE("Entries are edited in place and withdrawn with a reason")
{
    Window window;
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

TEST_CASE("The log as it looks")
{
    Window window;
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
    picture(*window.page, 1120, 660, "log-light");
    theme().choose(ui::Theme::Choice::Dark);
    picture(*window.page, 1120, 660, "log-dark");
    theme().choose(ui::Theme::Choice::Light);
}

} // namespace lastrivet::test
