// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileJson.h"
#include "tests/ui/support/AwayTable.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/daylog/LogModel.h"
#include "ui/hours/ForecastWish.h"
#include "ui/hours/WishBar.h"
#include "ui/journal/JournalModel.h"
#include "ui/journal/JournalPage.h"
#include "ui/rules/RulesDraft.h"
#include "ui/shell/Drafts.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SavedFilters.h"
#include "ui/today/TodayPage.h"
#include "ui/widgets/LineDraft.h"
#include "ui/workshop/WorkshopPage.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>

#include <catch2/catch.hpp>

// What the window does while the project cannot be read: its disk is gone, or a read fails. What
// could not be read is never taken for nothing, and nothing is written over it.
namespace lastrivet::ui {

TEST_CASE("That the project cannot be read is said once, until it can be read again", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->keepLocalState("kept", "here"));
    QSignalSpy complaints(session.get(), &Session::complained);
    const test::AwayTable away(workshop, "local_state");
    CHECK_FALSE(session->localState("kept").isRead);
    CHECK_FALSE(session->localState("other").isRead);
    CHECK(complaints.count() == 1);
    away.putBack();
    CHECK(session->localState("kept").value == "here");
    CHECK(session->localState("other").isRead);
    CHECK_FALSE(session->localState("other").value);
    const test::AwayTable again(workshop, "local_state");
    CHECK_FALSE(session->localState("kept").isRead);
    CHECK(complaints.count() == 2);
    const auto asked = session->read([&] { return session->project().localState("kept"); },
                                     Session::Telling::EachTime);
    CHECK_FALSE(asked);
    CHECK(complaints.count() == 3);
}

TEST_CASE("The pauses and the note of the clock stay while they cannot be read", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TimerProgress progress = freshProgress(session->now());
    progress.note = "Deburred";
    progress.worked = Minutes{25};
    REQUIRE(session->setTimer(RunningTimer{session->now(), workshop.rudder, {}, {}}, progress));
    const test::AwayTable away(workshop, "local_state");
    CHECK(session->timerProgress() == progress);
    away.putBack();
    CHECK(session->timerProgress() == progress);
}

TEST_CASE("A draft that could not be read stays in front of what is typed meanwhile", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Drafts(*session, "work").keep("7", QStringLiteral("45m:"));
    const test::AwayTable away(workshop, "local_state");
    Drafts drafts(*session, "work");
    CHECK(drafts.of("7").isEmpty());
    drafts.keep("7", QStringLiteral("drilled"));
    CHECK(drafts.of("7") == QStringLiteral("drilled"));
    away.putBack();
    drafts.keep("7", QStringLiteral("drilled out"));
    CHECK(drafts.of("7") == QStringLiteral("45m: drilled out"));
    CHECK(Drafts(*session, "work").of("7") == QStringLiteral("45m: drilled out"));
    drafts.keep("7", {});
    CHECK(Drafts(*session, "work").of("7").isEmpty());
}

TEST_CASE("The first page is shown, and what happens there ends nothing", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QSignalSpy complaints(session.get(), &Session::complained);
    const test::AwayTable values(workshop, "local_state");
    const test::AwayTable conflicts(workshop, "merge_conflict");
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today-unread");
    CHECK(complaints.count() == 1);
    // The clock is told to the page.
    Q_EMIT session->timerChanged();
    CHECK(complaints.count() == 1);
}

TEST_CASE("What was chosen for the forecast is not written over", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    ForecastWish{{workshop.wing}, 6}.keep(*session);
    const test::AwayTable away(workshop, "local_state");
    CHECK_FALSE(ForecastWish::kept(*session));
    WishBar bar(*session);
    away.putBack();
    auto &hours = *bar.findChild<QSpinBox *>();
    hours.setValue(3);
    const auto kept = ForecastWish::kept(*session);
    REQUIRE(kept);
    CHECK(kept->hours_per_week == 6);
    CHECK(kept->without == IdSet<Component>{workshop.wing});
    CHECK(hours.value() == 6);
    hours.setValue(4);
    CHECK(ForecastWish::kept(*session)->hours_per_week == 4);
}

TEST_CASE("The project's own limits are not written over, and their absence is told", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const QString own = QStringLiteral("The project's own limit…");
    const QString unread = QStringLiteral("own limits could not be read");
    const auto chooseThread = [](WorkshopPage &page) {
        test::choice(page, QStringLiteral("Torque of a bolt: Thread"))
            .setCurrentText(QStringLiteral("10-32"));
    };
    {
        WorkshopPage page(*session);
        test::picture(page, 1120, 680, "workshop-limit");
        CHECK_FALSE(test::says(page, unread));
        chooseThread(page);
        test::press(page, own);
        test::type(page, QStringLiteral("At most"), QStringLiteral("22"));
        test::type(page, QStringLiteral("Source"), QStringLiteral("Drawing 31"));
        test::press(page, QStringLiteral("Keep"));
    }
    const test::AwayTable away(workshop, "local_state");
    QSignalSpy complaints(session.get(), &Session::complained);
    WorkshopPage page(*session);
    test::picture(page, 1120, 680, "workshop-unread");
    CHECK(test::says(page, unread));
    chooseThread(page);
    test::press(page, own);
    CHECK_FALSE(test::button(page, QStringLiteral("Keep")));
    CHECK(complaints.count() == 2);
    away.putBack();
    test::press(page, own);
    CHECK_FALSE(test::says(page, unread));
    CHECK(test::field(page, QStringLiteral("At most")).text() == QStringLiteral("22"));
}

TEST_CASE("A draft of rules that could not be read is not written over", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Profile written = session->project().profile();
    written.name = "Club rules";
    written.json.clear();
    REQUIRE(session->keepLocalState("rules_draft", profileJson(written)));
    const test::AwayTable away(workshop, "local_state");
    RulesDraft draft(*session);
    REQUIRE_FALSE(draft.isRead());
    CHECK_FALSE(draft.hasEarlier());
    SECTION("it is taken up when it can be read")
    {
        away.putBack();
        draft.lookAgain();
        CHECK(draft.isRead());
        CHECK(draft.profile().name == "Club rules");
    }
    SECTION("it comes before the one that was typed meanwhile")
    {
        draft.profile().name = "Typed meanwhile";
        draft.noteEdit();
        draft.keep();
        away.putBack();
        CHECK(readDraft(session->localState("rules_draft").value.value_or("")).name ==
              "Club rules");
        draft.keep();
        CHECK(readDraft(session->localState("rules_draft").value.value_or("")).name ==
              "Typed meanwhile");
        REQUIRE(draft.hasEarlier());
        draft.takeUpEarlier();
        CHECK(draft.profile().name == "Club rules");
    }
}

TEST_CASE("An unfinished line that could not be read comes before what was typed", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->keepLocalState("line", "Crack at the"));
    const test::AwayTable away(workshop, "local_state");
    QLineEdit line;
    LineDraft draft(*session, "line", line);
    draft.takeUp();
    CHECK(line.text().isEmpty());
    // Left without a word typed.
    draft.keep();
    line.setText(QStringLiteral("rib 4"));
    draft.keep();
    away.putBack();
    CHECK(session->localState("line").value == "Crack at the");
    draft.keep();
    CHECK(line.text() == QStringLiteral("Crack at the rib 4"));
    CHECK(session->localState("line").value == "Crack at the rib 4");
    line.clear();
    draft.keep();
    CHECK_FALSE(session->localState("line").value);
}

TEST_CASE("A line that is about one thing after the other has a draft of each")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->keepLocalState("line:a", "Crack at the"));
    QLineEdit line;
    LineDraft draft(*session, "line", line);
    draft.turnTo("a");
    CHECK(line.text() == QStringLiteral("Crack at the"));
    line.insert(QStringLiteral(" rib"));
    draft.turnTo("b");
    CHECK(line.text().isEmpty());
    // What the line's own undo would bring back belongs to something else.
    CHECK_FALSE(line.isUndoAvailable());
    line.setText(QStringLiteral("Dent"));
    draft.turnTo("a");
    CHECK(line.text() == QStringLiteral("Crack at the rib"));
    CHECK(session->localState("line:b").value == "Dent");
    line.clear();
    draft.keep();
    CHECK_FALSE(session->localState("line:a").value);
}

TEST_CASE("What is typed into a line is kept when the hand rests, before the line is left")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QLineEdit line;
    line.show();
    LineDraft draft(*session, "line", line);
    draft.takeUp();
    QTest::keyClicks(&line, QStringLiteral("Crack"));
    CHECK_FALSE(session->localState("line").value);
    CHECK(QTest::qWaitFor([&] { return session->localState("line").value == "Crack"; }, 5000));
}

TEST_CASE("What could not be read comes into the line, and stays there when it is kept again",
          "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->keepLocalState("line:a", "Crack at the"));
    const test::AwayTable away(workshop, "local_state");
    QLineEdit line;
    LineDraft draft(*session, "line", line);
    draft.turnTo("a");
    CHECK(line.text().isEmpty());
    line.setText(QStringLiteral("rib 4"));
    draft.keep();
    away.putBack();
    for (int i = 0; i < 2; ++i) {
        draft.keep();
        CHECK(line.text() == QStringLiteral("Crack at the rib 4"));
        CHECK(session->localState("line:a").value == "Crack at the rib 4");
    }
}

TEST_CASE("Saved filters that could not be read stay beside those saved meanwhile", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    SavedFilters(*session).save(QStringLiteral("Open ones"), {});
    const test::AwayTable away(workshop, "local_state");
    SavedFilters filters(*session);
    CHECK(filters.all().empty());
    SavedFilters::Filter cracks;
    cracks.text = "crack";
    filters.save(QStringLiteral("Cracks"), cracks);
    away.putBack();
    filters.keepLast(cracks);
    const SavedFilters again(*session);
    CHECK(again.find(QStringLiteral("Open ones")));
    CHECK(again.find(QStringLiteral("Cracks")));
    CHECK(again.last() == cracks);
}

TEST_CASE("A journal that cannot be read is no empty one, and is read when it can be", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const QString unread = QStringLiteral("The journal could not be read.");
    const test::AwayTable away(workshop, "journal");
    JournalPage page(*session);
    const test::ModelWatch watch(page.model());
    test::picture(page, 1100, 680, "journal-unread");
    CHECK(page.model().rowCount() == 0);
    CHECK(test::says(page, unread));
    away.putBack();
    page.hide();
    page.show();
    const int rows = page.model().rowCount();
    CHECK(rows > 0);
    CHECK_FALSE(test::says(page, unread));
    // What was read stays.
    const test::AwayTable again(workshop, "journal");
    page.hide();
    page.show();
    CHECK(page.model().rowCount() == rows);
    CHECK_FALSE(page.model().reload());
    CHECK(page.model().rowCount() == rows);
}

TEST_CASE("The log goes on when the journal cannot be read, and reads it later", "[unread]")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QSignalSpy complaints(session.get(), &Session::complained);
    const test::AwayTable away(workshop, "journal");
    LogModel model(*session);
    CHECK(QTest::qWaitFor([&] { return complaints.count() == 1; }));
    CHECK_THROWS_AS(model.writtenOn(Id<WorkSession>{1}), Fault);
    away.putBack();
    CHECK_NOTHROW(model.writtenOn(Id<WorkSession>{1}));
}

} // namespace lastrivet::ui
