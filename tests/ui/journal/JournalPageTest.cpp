// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalPage.h"

#include "tests/ui/print/PrintedFolder.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Looks.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/WaitingExecutor.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/journal/AccountModel.h"
#include "ui/journal/JournalDetail.h"
#include "ui/journal/JournalModel.h"
#include "ui/journal/ScreenWording.h"
#include "ui/print/JournalWords.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

const QString filterName = QStringLiteral("Filter by words or by a hash");

/// The page in a window of its own, over a project in which some things happened.
struct Window {
    Window()
    {
        workshop.clock.advance(std::chrono::minutes{1});
        rename("Wing bay three");
        workshop.clock.advance(std::chrono::hours{24});
        rename("Bay 3");
        page = std::make_unique<ui::JournalPage>(*session);
        page->resize(1100, 680);
        page->show();
        REQUIRE(QTest::qWaitForWindowExposed(page.get()));
    }
    void rename(std::string_view name)
    {
        REQUIRE(session->change(QStringLiteral("Bay renamed"), [&](Edit &edit) {
            edit.update(workshop.bay, [&](Component &part) { part.name = name; });
        }));
    }
    ui::JournalModel &model() { return page->model(); }
    QString label(int row) { return model().index(row, 0).data().toString(); }
    /// What the detail says, a line for each record and field.
    QStringList account()
    {
        QStringList lines;
        const auto &account = page->detail().account();
        for (int row = 0; row < account.rowCount(); ++row)
            lines << account.index(row, 0).data(Qt::AccessibleTextRole).toString();
        return lines;
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    std::unique_ptr<ui::JournalPage> page;
};

} // namespace

TEST_CASE("Of a change that touches many records the first are named and the others counted")
{
    Window window;
    REQUIRE(window.session->change(QStringLiteral("Parts brought in"), [&](Edit &edit) {
        for (int i = 0; i < 230; ++i)
            edit.put(Component{.parent_id = window.workshop.bay, .name = "Bracket"});
    }));
    window.page->list().setCurrentIndex(window.model().index(1, 0));
    const auto lines = window.account();
    CHECK(window.page->detail().account().recordCount() == 230);
    CHECK(lines.filter(QStringLiteral("Bracket")).size() >= 200);
    CHECK(lines.last() == QStringLiteral("and 30 records more; a printed journal names them"));
}

TEST_CASE("The journal is listed by day, the latest change first and its fields beside it")
{
    Window window;
    const ModelWatch watch(window.model());
    CHECK(window.model().index(0, 0).data(ui::JournalModel::IsDayRole).toBool());
    CHECK(window.label(1) == QStringLiteral("Bay renamed"));
    // Another day, then the change of the day before.
    CHECK(window.model().index(2, 0).data(ui::JournalModel::IsDayRole).toBool());
    CHECK(window.label(3) == QStringLiteral("Bay renamed"));
    const QStringList account = window.account();
    REQUIRE(account.size() == 2);
    CHECK(account[0].contains(QStringLiteral("Bay 3")));
    CHECK(account[1] == QStringLiteral("Name: Wing bay three → Bay 3"));
    picture(*window.page, 1110, 680, "journal");
}

TEST_CASE("The row that begins a project names who began it, and no newer program")
{
    Window window;
    const auto first = window.model().index(window.model().rowCount() - 1, 0);
    CHECK(first.data().toString() == QStringLiteral("Project begun"));
    CHECK(first.data(ui::JournalModel::WhoRole).toString() == QStringLiteral("Robin"));
    CHECK(first.data(ui::JournalModel::MarksRole).toString().isEmpty());
    const print::Wording words = ui::screenWording();
    JournalEntry byTheProgram;
    byTheProgram.kind = ChangeKind::Migration;
    JournalEntry byRobin = byTheProgram;
    byRobin.who = "Robin";
    CHECK(print::kindIn(words, byRobin).isEmpty());
    CHECK(print::kindIn(words, byTheProgram) == QStringLiteral("by the program"));
}

TEST_CASE("Enter goes from a row to what it changed, and from there to the record")
{
    Window window;
    std::vector<RecordRef> wanted;
    QObject::connect(window.session.get(), &ui::Session::recordWanted, window.page.get(),
                     [&](RecordRef record) { wanted.push_back(record); });
    window.page->firstFocus()->setFocus();
    QTest::keyClick(&window.page->list(), Qt::Key_Down);
    QTest::keyClick(&window.page->list(), Qt::Key_Return);
    REQUIRE(window.page->detail().records().hasFocus());
    QTest::keyClick(&window.page->detail().records(), Qt::Key_Return);
    CHECK(wanted == std::vector<RecordRef>{{RecordType::Component, window.workshop.bay.value()}});
    QTest::keyClick(&window.page->detail().records(), Qt::Key_Escape);
    CHECK(window.page->list().hasFocus());
}

TEST_CASE("A hash, or its beginning as it stands on a paper, finds its row")
{
    Window window;
    const std::string hash = window.session->project().notePrinted("Packet for the wing");
    window.page->hide();
    window.page->show();
    CHECK(window.label(1) == QStringLiteral("Packet for the wing"));
    CHECK(window.page->detail().facts().contains(QStringLiteral("printed")));
    type(*window.page, filterName, ui::toQt(hash.substr(0, 16)));
    CHECK(window.model().listedCount() == 1);
    CHECK(window.label(1) == QStringLiteral("Packet for the wing"));
    press(*window.page, QStringLiteral("Copy the hash"));
    CHECK(QGuiApplication::clipboard()->text() == ui::toQt(hash));
    type(*window.page, filterName, QStringLiteral("0123456789abcdef"));
    CHECK(window.model().listedCount() == 0);
    press(*window.page, QStringLiteral("Show everything"));
    CHECK(window.model().listedCount() == int(window.session->project().journal().size()));
}

TEST_CASE("Person, kind, words and period each leave out what does not match")
{
    Window window;
    const int all = window.model().listedCount();
    type(*window.page, filterName, QStringLiteral("renamed BAY"));
    CHECK(window.model().listedCount() == 2);
    type(*window.page, QStringLiteral("From"), QStringLiteral("2026-03-15"));
    CHECK(window.model().listedCount() == 1);
    press(*window.page, QStringLiteral("Clear"));
    CHECK(window.model().listedCount() == all);
    type(*window.page, QStringLiteral("Until"), QStringLiteral("2026-03-14"));
    CHECK(window.model().listedCount() == all - 1);
    press(*window.page, QStringLiteral("Clear"));
    REQUIRE_NOTHROW(window.session->undo());
    choice(*window.page, QStringLiteral("Filter by kind")).setCurrentText(QStringLiteral("undone"));
    REQUIRE(window.model().listedCount() == 1);
    CHECK(window.page->detail().facts().contains(QStringLiteral("It takes back: Bay renamed")));
}

TEST_CASE("Rows that are listed already follow the project to another time zone, and new ones come")
{
    Window window;
    const int rows = window.model().listedCount();
    const Moment before = window.model().timeOf(window.model().entries().front());
    REQUIRE(window.session->change(QStringLiteral("Moved"), [](Edit &edit) {
        ProjectFacts facts = edit.records().project;
        facts.time_zone = "Pacific/Auckland";
        edit.put(facts);
    }));
    CHECK(window.model().listedCount() == rows + 1);
    CHECK(window.model().entries().back().label == "Moved");
    CHECK(window.model().timeOf(window.model().entries().front()) != before);
}

TEST_CASE("The history of a record is what touched it, and of a part also what is inside it")
{
    Window window;
    window.page->showRecord({RecordType::Component, window.workshop.bay.value()});
    const int own = window.model().listedCount();
    CHECK(own >= 2);
    CHECK(own < int(window.session->project().journal().size()));
    CHECK(says(*window.page, QStringLiteral("Only what touched")));
    window.page->showRecord({RecordType::Component, window.workshop.rudder.value()});
    const int rudder = window.model().listedCount();
    CHECK(rudder < own);
    window.page->showRecord({RecordType::Squawk, window.workshop.squawk.value()});
    CHECK(window.model().listedCount() >= 1);
    press(*window.page, QStringLiteral("Show everything"));
    CHECK(window.model().listedCount() == int(window.session->project().journal().size()));
}

TEST_CASE("Of two histories that are looked up at once the one that was asked for last is listed")
{
    Workshop workshop;
    {
        const auto before = workshop.session();
        REQUIRE(before->change(QStringLiteral("Bay renamed"), [&](Edit &edit) {
            edit.update(workshop.bay, [](Component &part) { part.name = "Bay III"; });
        }));
    }
    WaitingExecutor executor;
    ui::Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                        theme());
    ui::JournalPage page(session);
    page.showRecord({RecordType::Component, workshop.wing.value()});
    const auto boxes = page.findChildren<QCheckBox *>();
    const auto isOfBranch = [](const QCheckBox *box) {
        return box->text().startsWith(QLatin1String("with all"));
    };
    const auto found = std::find_if(boxes.begin(), boxes.end(), isOfBranch);
    REQUIRE(found != boxes.end());
    QCheckBox *withBranch = *found;
    withBranch->setChecked(true);
    executor.overtake();
    const int listed = page.model().listedCount();
    executor.work();
    executor.finish();
    CHECK(page.model().listedCount() == listed);
    withBranch->setChecked(false);
    executor.work();
    executor.finish();
    CHECK(page.model().listedCount() < listed);
}

TEST_CASE("A row of a record's history stays chosen when another change is written down")
{
    Window window;
    window.page->showRecord({RecordType::Component, window.workshop.bay.value()});
    REQUIRE(window.model().entryAt(3));
    const auto seq = window.model().entryAt(3)->seq;
    window.page->list().setCurrentIndex(window.model().index(3, 0));
    window.rename("Bay III");
    const auto *chosen = window.model().entryAt(window.page->list().currentIndex().row());
    REQUIRE(chosen);
    CHECK(chosen->seq == seq);
}

TEST_CASE("What is written late, and while the clock was set back, is marked in the list")
{
    Window window;
    REQUIRE(window.session->change(QStringLiteral("Found in January"), [&](Edit &edit) {
        edit.update(window.workshop.squawk,
                    [](Squawk &known) { known.found_on = Moment::parse("2026-01-02"); });
    }));
    CHECK(window.model()
              .index(1, 0)
              .data(ui::JournalModel::MarksRole)
              .toString()
              .contains(QStringLiteral("late: found")));
    window.workshop.clock.advance(-std::chrono::hours{48});
    window.rename("Bay III");
    CHECK(window.model()
              .index(1, 0)
              .data(ui::JournalModel::MarksRole)
              .toString()
              .contains(QStringLiteral("clock had been set back")));
}

TEST_CASE("What is listed is printed, with the hash of its own row at the foot")
{
    Window window;
    const test::PrintedFolder folder;
    const auto pdf = folder.path("journal.pdf");
    window.page->setChooseFile([&](const QString &) { return ui::pathText(pdf); });
    const auto rows = window.model().entries().size();
    type(*window.page, filterName, QStringLiteral("renamed"));
    press(*window.page, QStringLiteral("Print…"));
    REQUIRE(test::PrintedFolder::isSound(pdf));
    const QString text = test::PrintedFolder::text(pdf);
    CHECK(text.contains(QStringLiteral("Wing bay three → Bay 3")));
    CHECK(text.contains(QStringLiteral("of %1 rows; left out is what does not match").arg(rows)));
    const auto newest = window.session->project().journal().back();
    CHECK(newest.kind == ChangeKind::Printed);
    CHECK(text.contains(ui::toQt(newest.hash.substr(0, 16))));
    type(*window.page, filterName, ui::toQt(newest.hash.substr(0, 16)));
    CHECK(window.model().listedCount() == 1);
}

TEST_CASE("A whole journal is printed with as many rows as it says")
{
    Window window;
    const test::PrintedFolder folder;
    const auto pdf = folder.path("journal.pdf");
    window.page->setChooseFile([&](const QString &) { return ui::pathText(pdf); });
    const auto rows = window.model().listedCount();
    press(*window.page, QStringLiteral("Print…"));
    CHECK(test::PrintedFolder::text(pdf).contains(
        QStringLiteral("Nothing is left out: %1 rows.").arg(rows)));
}

TEST_CASE("Everything on the journal page has a name, is reached by keyboard, and is not cut")
{
    Window window;
    CHECK(nameless(*window.page).join(u'\n').toStdString() == "");
    CHECK(cutTexts(*window.page).join(u'\n').toStdString() == "");
    CHECK(beyondTheTabulator(*window.page).join(u'\n').toStdString() == "");
}

TEST_CASE("A day that is none is said, and nothing is printed as if it had narrowed the list")
{
    Window window;
    int asked = 0;
    window.page->setChooseFile([&](const QString &) {
        ++asked;
        return QString();
    });
    QString complaint;
    QObject::connect(window.session.get(), &ui::Session::complained, window.page.get(),
                     [&](const QString &sentence) { complaint = sentence; });
    type(*window.page, QStringLiteral("From"), QStringLiteral("never"));
    CHECK(says(*window.page, QStringLiteral("“never” is no day.")));
    press(*window.page, QStringLiteral("Print…"));
    CHECK(complaint == QStringLiteral("“never” is no day."));
    CHECK(asked == 0);
    type(*window.page, QStringLiteral("From"), QStringLiteral("2026-03-14"));
    CHECK_FALSE(says(*window.page, QStringLiteral("is no day")));
    press(*window.page, QStringLiteral("Print…"));
    CHECK(asked == 1);
}

TEST_CASE("Where no row matches, the keyboard goes to the button that shows everything")
{
    Window window;
    CHECK(window.page->firstFocus() == &window.page->list());
    type(*window.page, filterName, QStringLiteral("zeppelin"));
    REQUIRE(window.model().rowCount() == 0);
    const auto *first = qobject_cast<QPushButton *>(window.page->firstFocus()->focusProxy());
    REQUIRE(first);
    CHECK(first->text() == QStringLiteral("Show everything"));
}

TEST_CASE("An older row is taken back from the journal's page, and undo takes that back")
{
    Window window;
    window.workshop.clock.advance(std::chrono::minutes{1});
    REQUIRE(window.session->change(QStringLiteral("Bay's zone"), [&](Edit &edit) {
        edit.update(window.workshop.bay, [](Component &part) { part.zone = "left-wing"; });
    }));
    window.page->list().setCurrentIndex(window.model().index(2, 0));
    REQUIRE(window.label(2) == QStringLiteral("Bay renamed"));
    press(*window.page, QStringLiteral("Take this back"));
    const auto bay = [&] {
        return *window.session->records()->components.find(window.workshop.bay);
    };
    CHECK(bay().name == "Wing bay three");
    CHECK(bay().zone == "left-wing");
    CHECK(window.label(1) == QStringLiteral("Taken back: Bay renamed"));
    window.session->undo();
    CHECK(bay().name == "Bay 3");
}

TEST_CASE("What cannot be taken back says so, and rows that hold no change offer nothing")
{
    Window window;
    QString complaint;
    QObject::connect(window.session.get(), &ui::Session::complained,
                     [&](const QString &sentence) { complaint = sentence; });
    // The first naming of the bay, which the second wrote over.
    int first = window.model().rowCount() - 1;
    while (window.label(first) != QStringLiteral("Bay renamed"))
        --first;
    window.page->list().setCurrentIndex(window.model().index(first, 0));
    press(*window.page, QStringLiteral("Take this back"));
    CHECK(complaint ==
          QStringLiteral("Nothing was changed: “Bay renamed” cannot be taken back: "
                         "“Bay renamed” (row 4 of the journal) changed the same record later."));
    const int begun = window.model().rowCount() - 1;
    window.page->list().setCurrentIndex(window.model().index(begun, 0));
    CHECK_FALSE(button(*window.page, QStringLiteral("Take this back")));
}

} // namespace lastrivet::test
