// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/journal/TwoCopies.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Looks.h"
#include "ui/convert/QtText.h"
#include "ui/journal/ConflictPanel.h"
#include "ui/journal/ConflictWords.h"
#include "ui/journal/ConflictsView.h"
#include "ui/journal/JournalPage.h"
#include "ui/journal/MergeTask.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/ProjectView.h"
#include "ui/widgets/MessageLine.h"

#include <QCheckBox>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QRegularExpression>
#include <QSettings>
#include <QTest>

namespace lastrivet::test {

namespace {

/// The whole window on one of two copies that disagree.
struct Window {
    Window()
    {
        window.resize(1280, 720);
        window.show();
        window.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&window));
        REQUIRE(window.openFolder(ui::pathText(copies.workshop.folder())));
        copies.disagree(session());
    }
    ui::Session &session() { return window.view()->session(); }
    ui::JournalPage &journal()
    {
        return static_cast<ui::JournalPage &>(window.view()->page(ui::PageId::Journal));
    }
    QListView &list() { return journal().conflicts().list(); }
    QString said() { return window.view()->findChild<ui::MessageLine *>()->text(); }
    void merge() { ui::mergeInto(session(), ui::pathText(copies.other()), window.view()); }
    std::string title() { return session().records()->find(copies.workshop.squawk)->title; }

    TwoCopies copies;
    TemporaryFolder folder;
    QSettings settings{ui::pathText(folder / "settings.ini"), QSettings::IniFormat};
    ui::MainWindow window{{settings, copies.workshop.executor, theme(), copies.workshop.clock}};
};

/// A part that both copies have.
Id<Component> shelfInBoth(const TwoCopies &copies)
{
    Id<Component> shelf;
    {
        const auto project =
            Project::open(copies.workshop.folder(), {&copies.workshop.clock, "Robin", false});
        REQUIRE(project->change("Part made", [&](Edit &edit) {
            Component made;
            made.code = "SH";
            made.name = "Shelf";
            shelf = edit.put(made);
        }));
    }
    std::filesystem::remove_all(copies.other());
    std::filesystem::copy(copies.workshop.folder(), copies.other(),
                          std::filesystem::copy_options::recursive);
    return shelf;
}

} // namespace

TEST_CASE("A merge says in one sentence what came, and shows both values of what is to decide")
{
    Window window;
    window.merge();
    // Plurals stand in the English translation, which the tests do without.
    CHECK(window.said() ==
          QStringLiteral("1 changes of another copy are brought in, 1 things to decide."));
    CHECK(window.window.view()->current() == ui::PageId::Journal);
    REQUIRE(window.list().isVisible());
    CHECK(window.list().hasFocus());
    CHECK(says(window.journal(), QStringLiteral("Rivet overdriven")));
    CHECK(says(window.journal(), QStringLiteral("Rivet set too deep")));
    CHECK(says(window.journal(), QStringLiteral("Kim")));
    picture(window.window, 1280, 720, "journal-to-decide");
    window.merge();
    CHECK(window.said().startsWith(QStringLiteral("Nothing new")));
}

TEST_CASE("What is to decide is named without the number that the program counts it by")
{
    constexpr std::int64_t id = 3'812'345'678'901;
    Records records;
    Component shelf;
    shelf.id = Id<Component>{id};
    shelf.name = "Shelf";
    records.put(RecordType::Component, &shelf);
    MergeConflict conflict;
    conflict.record = {RecordType::Component, id};
    CHECK(ui::recordIn(records, conflict) == QStringLiteral("Part “Shelf”"));
    conflict.record.id += 1;
    CHECK(ui::recordIn(records, conflict) == QStringLiteral("Part"));
}

TEST_CASE("Undo after a merge says that a merge is not taken back, and what can be done")
{
    Window window;
    window.merge();
    REQUIRE(window.window.focusWidget());
    QTest::keySequence(window.window.focusWidget(), QKeySequence::Undo);
    CHECK(window.said().startsWith(QStringLiteral("A merge is not taken back by undo")));
    CHECK(window.said().contains(QStringLiteral("restore a backup")));
    // What was decided afterwards is taken back as ever.
    QTest::keyClick(&window.list(), Qt::Key_T);
    CHECK(window.title() == "Rivet set too deep");
    REQUIRE(window.window.focusWidget());
    QTest::keySequence(window.window.focusWidget(), QKeySequence::Undo);
    CHECK(window.title() == "Rivet overdriven");
}

TEST_CASE("K keeps what stands, T takes the other, and undo brings the question back")
{
    Window window;
    window.merge();
    QTest::keyClick(&window.list(), Qt::Key_T);
    CHECK(window.title() == "Rivet set too deep");
    CHECK(window.journal().conflicts().undecided() == 0);
    window.session().undo();
    CHECK(window.title() == "Rivet overdriven");
    REQUIRE(window.journal().conflicts().undecided() == 1);
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_K);
    CHECK(window.title() == "Rivet overdriven");
    CHECK(window.session().project().conflicts().front().decision == ConflictDecision::Kept);
    CHECK(window.list().model()->rowCount() == 0);
    window.journal().conflicts().findChild<QCheckBox *>()->click();
    REQUIRE(window.list().model()->rowCount() == 1);
    CHECK(says(window.journal(), QStringLiteral("decided: what stood was kept")));
    CHECK_FALSE(button(window.journal(), QStringLiteral("Take the other (T)")));
}

TEST_CASE("Today says how much is to decide until it is decided, and leads there")
{
    Window window;
    window.merge();
    window.window.view()->open(ui::PageId::Today);
    auto &today = window.window.view()->page(ui::PageId::Today);
    press(today, QStringLiteral("After a merge, 1 things are to decide"));
    REQUIRE(window.window.view()->current() == ui::PageId::Journal);
    QTest::keyClick(&window.list(), Qt::Key_K);
    window.window.view()->open(ui::PageId::Today);
    CHECK_FALSE(button(today, QStringLiteral("After a merge, 1 things are to decide")));
}

TEST_CASE("What one copy took back and the other went on with can be kept or withdrawn")
{
    TwoCopies copies;
    Id<Squawk> found;
    {
        const auto project =
            Project::open(copies.workshop.folder(), {&copies.workshop.clock, "Robin", false});
        REQUIRE(project->change("Squawk found", [&](Edit &edit) {
            Squawk made;
            made.number = "77";
            made.title = "Loose nut";
            made.component_id = copies.workshop.wing;
            made.found_on = edit.today();
            found = edit.put(made);
        }));
    }
    std::filesystem::remove_all(copies.other());
    std::filesystem::copy(copies.workshop.folder(), copies.other(),
                          std::filesystem::copy_options::recursive);
    copies.elsewhere(10, "Squawk 77 described", [&](Edit &edit) {
        edit.update(found, [](Squawk &known) { known.note = "At the tank"; });
    });
    const auto session = copies.workshop.session();
    copies.workshop.clock.advance(std::chrono::minutes{20});
    session->undo();
    REQUIRE_FALSE(session->records()->find(found));
    ui::JournalPage page(*session);
    page.resize(1100, 680);
    page.show();
    ui::mergeInto(*session, ui::pathText(copies.other()), &page);
    REQUIRE(session->records()->findLive(found));
    page.showDecisions();
    REQUIRE(page.conflicts().undecided() == 1);
    press(page, QStringLiteral("Withdraw it (T)"));
    CHECK_FALSE(session->records()->findLive(found));
    CHECK(page.conflicts().undecided() == 0);
}

TEST_CASE("Why a change that was left out still does not fit is said in fields as people call them")
{
    TwoCopies copies;
    const auto shelf = shelfInBoth(copies);
    copies.elsewhere(20, "Squawk found", [&](Edit &edit) {
        Squawk made;
        made.number = "77";
        made.title = "Loose nut";
        made.component_id = shelf;
        made.found_on = edit.today();
        edit.put(made);
    });
    const auto session = copies.workshop.session();
    copies.here(*session, 10, QStringLiteral("Part withdrawn"), [&](Edit &edit) {
        edit.update(shelf, [&](Component &part) {
            part.withdrawn_on = edit.today();
            part.withdrawn_why = "Never built";
        });
    });
    copies.workshop.clock.advance(std::chrono::minutes{60});
    ui::JournalPage page(*session);
    page.resize(1100, 680);
    page.show();
    ui::mergeInto(*session, ui::pathText(copies.other()), &page);
    page.showDecisions();
    REQUIRE(page.conflicts().undecided() == 1);
    QString complaint;
    QObject::connect(session.get(), &ui::Session::complained, &page,
                     [&](const QString &sentence) { complaint = sentence; });
    press(page, QStringLiteral("Try it again (T)"));
    CHECK(complaint.contains(QStringLiteral("which is withdrawn")));
    CHECK_FALSE(complaint.contains(QStringLiteral("component_id")));
    CHECK(page.conflicts().undecided() == 1);
    CHECK(says(page, QStringLiteral("Or write it down anew")));
    static const QRegularExpression givenNumber(QStringLiteral("\\d{10}"));
    for (const auto *label : page.conflicts().findChildren<QLabel *>())
        CHECK_FALSE(label->text().contains(givenNumber));
    CHECK_FALSE(complaint.contains(givenNumber));
}

TEST_CASE("What is no copy of the project is refused in one sentence, and nothing is changed")
{
    Window window;
    const Workshop stranger;
    const auto before = window.session().project().journalHash();
    ui::mergeInto(window.session(), ui::pathText(stranger.folder()), window.window.view());
    CHECK(window.said().startsWith(QStringLiteral("Nothing was merged.")));
    ui::mergeInto(window.session(), QStringLiteral("/no/such/copy.db"), window.window.view());
    CHECK(window.said().startsWith(QStringLiteral("Nothing was merged.")));
    CHECK(window.session().project().journalHash() == before);
}

TEST_CASE("A record's page leads to its own history")
{
    Window window;
    window.window.view()->goTo({RecordType::Squawk, window.copies.workshop.squawk.value()});
    press(window.window.view()->page(ui::PageId::Squawks), QStringLiteral("History"));
    REQUIRE(window.window.view()->current() == ui::PageId::Journal);
    CHECK(window.journal().model().listedCount() >= 2);
    CHECK(says(window.journal(), QStringLiteral("Only what touched")));
}

TEST_CASE("Everything about what is to decide has a name, is reached by keyboard, and is not cut")
{
    Window window;
    window.merge();
    CHECK(nameless(window.journal()).join(u'\n').toStdString() == "");
    CHECK(cutTexts(window.journal()).join(u'\n').toStdString() == "");
    CHECK(beyondTheTabulator(window.journal()).join(u'\n').toStdString() == "");
}

} // namespace lastrivet::test
