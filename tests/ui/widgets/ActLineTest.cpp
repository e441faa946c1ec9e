// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ActLine.h"

#include "core/project/acts/CreditActs.h"
#include "core/project/acts/PaperActs.h"
#include "core/project/acts/Withdrawal.h"
#include "tests/ui/daylog/LogWindow.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/daylog/LogDetail.h"
#include "ui/parts/PartDetail.h"
#include "ui/parts/SeveralParts.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <utility>
#include <vector>

// What is half answered waits with what it is about, on every page that asks.
namespace lastrivet::test {

namespace {

const auto why = QStringLiteral("Why");
const auto asked = QStringLiteral("will count nowhere any more");
const auto notKept = QStringLiteral("What is begun here is not kept.");

/// Two records of a type, and the button that asks whether to withdraw one.
struct TwoRecords : WholeWindow {
    TwoRecords() { openAndShow(); }
    void change(const Project::Body &body)
    {
        REQUIRE(view().session().change(QStringLiteral("Setting"), body));
    }
    template <class Record> void add(Record record)
    {
        change([&](Edit &edit) {
            first = {Record::type, edit.put(record).value()};
            second = {Record::type, edit.put(record).value()};
        });
    }
    ui::ProjectView &view() { return *window.view(); }
    QWidget &page() { return view().page(view().current()); }

    RecordRef first{};
    RecordRef second{};
    QString button = QStringLiteral("Withdraw");
};

/// A new part that is begun while the wing is shown.
struct BegunPart : PartsWindow {
    BegunPart()
    {
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complained = sentence; });
        showPart(workshop.wing);
        page.startNew();
        QTest::keyClicks(&name(), QStringLiteral("Wing tip"));
    }
    void showPart(Id<Component> part) { show({RecordType::Component, part.value()}); }
    ui::ActLine &ask() { return page.findChild<ui::PartDetail *>()->askLine(); }
    QLineEdit &name() { return field(QStringLiteral("Name")); }

    QString complained;
};

} // namespace

TEST_CASE("A question that is half answered waits with its record, and holds the window back")
{
    TwoRecords opened;
    SECTION("of a part")
    {
        opened.first = {RecordType::Component, opened.workshop.aileron.value()};
        opened.second = {RecordType::Component, opened.workshop.rudder.value()};
    }
    SECTION("of a piece of equipment")
    {
        opened.add(Equipment{.name = "Radio"});
        opened.button = QStringLiteral("Withdraw…");
    }
    SECTION("of a loading")
    {
        opened.add(LoadingCase{.name = "Solo"});
        opened.button = QStringLiteral("Withdraw…");
    }
    SECTION("of a flight")
    {
        opened.add(Flight{.flown_on = Moment::parse("2026-03-01"), .minutes = Minutes{60}});
        opened.button = QStringLiteral("Withdraw…");
    }
    SECTION("of a photo")
    {
        opened.change([&](Edit &edit) {
            Media photo{.file = "photos/rib.jpg", .taken_on = Moment::parse("2026-03-01")};
            opened.first = {RecordType::Media, edit.put(photo).value()};
            photo.file = "photos/spar.jpg";
            opened.second = {RecordType::Media, edit.put(photo).value()};
        });
    }
    SECTION("of a paper")
    {
        opened.change([&](Edit &edit) {
            opened.first = {RecordType::CertificateDocument,
                            acts::addPaper(edit, "Letter of the maker").value()};
            opened.second = {RecordType::CertificateDocument,
                             acts::addPaper(edit, "Letter of the club").value()};
        });
    }
    SECTION("of a task")
    {
        opened.change([&](Edit &edit) {
            opened.first = {RecordType::CreditTask, acts::addTask(edit, "Wings", "Ribs").value()};
            opened.second = {RecordType::CreditTask, acts::addTask(edit, "Wings", "Spar").value()};
        });
    }
    SECTION("of a log entry")
    {
        const auto records = opened.view().session().records();
        const auto &entries = records->work_sessions;
        opened.first = {RecordType::WorkSession, entries.begin()->id.value()};
        opened.second = {RecordType::WorkSession, entries.greatestId()};
        opened.button = QStringLiteral("Withdraw this entry");
    }
    ui::ProjectView &view = opened.view();
    view.goTo(opened.first);
    QWidget &page = opened.page();
    press(page, opened.button);
    type(page, why, QStringLiteral("sold"));
    view.goTo(opened.second);
    CHECK_FALSE(says(page, asked));
    view.open(ui::PageId::Today);
    REQUIRE_FALSE(opened.window.close());
    CHECK(&opened.page() == &page);
    CHECK(says(page, asked));
    CHECK(field(page, why).text() == QStringLiteral("sold"));
    QTest::keyClick(&field(page, why), Qt::Key_Escape);
    view.goTo(opened.second);
    view.goTo(opened.first);
    CHECK_FALSE(says(page, asked));
    CHECK(opened.window.close());
}

TEST_CASE("A withdrawal that is asked for once more goes on with the reason that is typed")
{
    TwoRecords opened;
    const auto records = opened.view().session().records();
    const Id<WorkSession> entry = records->work_sessions.begin()->id;
    const auto button = QStringLiteral("Withdraw this entry");
    opened.view().goTo({RecordType::WorkSession, entry.value()});
    QWidget &page = opened.page();
    press(page, button);
    type(page, why, QStringLiteral("written twice"));
    for (int i = 0; i < 2; ++i) {
        press(page, button);
        CHECK(field(page, why).text() == QStringLiteral("written twice"));
        CHECK_FALSE(says(opened.window, notKept));
    }
    QTest::keyClick(&field(page, why), Qt::Key_Return);
    CHECK_FALSE(opened.view().session().records()->findLive(entry));
}

TEST_CASE("A question on the page of parts waits with the part that was shown", "[parts]")
{
    BegunPart window;
    window.showPart(window.workshop.aileron);
    CHECK_FALSE(window.ask().isVisible());
    CHECK(window.ask().isBegun());
    SECTION("and is there with it again")
    {
        window.showPart(window.workshop.wing);
        CHECK(window.name().text() == QStringLiteral("Wing tip"));
        QTest::keyClick(&window.name(), Qt::Key_Return);
        CHECK_FALSE(window.ask().isVisible());
        CHECK_FALSE(window.ask().isBegun());
        CHECK(window.complained.isEmpty());
    }
    SECTION("and holds another question back once")
    {
        window.page.startNew();
        CHECK(window.page.shownPart() == window.workshop.wing);
        CHECK(window.name().text() == QStringLiteral("Wing tip"));
        CHECK(window.complained.startsWith(notKept));
        window.showPart(window.workshop.aileron);
        window.page.startNew();
        CHECK(window.page.shownPart() == window.workshop.aileron);
        CHECK(window.name().text().isEmpty());
    }
    SECTION("and goes with it")
    {
        const RecordRef wing{RecordType::Component, window.workshop.wing.value()};
        window.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
            auto all = acts::companions(edit.records(), std::vector{wing});
            all.push_back(wing);
            acts::withdraw(edit, all, "sold");
        });
        REQUIRE_FALSE(window.records()->findLive(window.workshop.wing));
        CHECK_FALSE(window.ask().isBegun());
        window.page.startNew();
        CHECK(window.name().text().isEmpty());
        CHECK(window.complained.isEmpty());
    }
}

TEST_CASE("A question whose record is taken back gives the keyboard back", "[parts]")
{
    PartsWindow window;
    Id<Component> tip;
    REQUIRE(window.session->change(QStringLiteral("Part"), [&](Edit &edit) {
        Component part;
        part.name = "Wing tip";
        tip = edit.put(std::move(part));
    }));
    window.show({RecordType::Component, tip.value()});
    press(window.page, QStringLiteral("Withdraw"));
    ui::ActLine &ask = window.page.findChild<ui::PartDetail *>()->askLine();
    REQUIRE(ask.isVisible());
    SECTION("as it was asked") {}
    SECTION("half answered")
    {
        type(window.page, why, QStringLiteral("sold"));
    }
    QSignalSpy ended(&ask, &ui::ActLine::ended);
    window.session->undo();
    CHECK_FALSE(ask.isVisible());
    CHECK_FALSE(ask.isBegun());
    CHECK(ended.count() == 1);
    CHECK(window.page.focusWidget() == &window.tree());
}

TEST_CASE("A question about the whole aircraft waits while a part is looked at", "[parts]")
{
    PartsWindow window;
    press(window.page, QStringLiteral("The whole aircraft"));
    REQUIRE_FALSE(window.page.shownPart());
    window.page.startNew();
    QTest::keyClicks(&window.field(QStringLiteral("Name")), QStringLiteral("Canopy"));
    window.show({RecordType::Component, window.workshop.wing.value()});
    ui::ActLine &ask = window.page.findChild<ui::PartDetail *>()->askLine();
    // A change of something else leaves it.
    window.session->change(QStringLiteral("Name"), [&](Edit &edit) {
        edit.update(window.workshop.rudder, [](Component &part) { part.name = "Rudder, new"; });
    });
    REQUIRE(ask.isBegun());
    ask.takeKeyboard();
    CHECK_FALSE(window.page.shownPart());
    CHECK(window.field(QStringLiteral("Name")).text() == QStringLiteral("Canopy"));
}

TEST_CASE("A question about several parts waits with them", "[parts]")
{
    PartsWindow window;
    window.tree().selectAll();
    press(window.page, QStringLiteral("Withdraw all…"));
    type(window.page, why, QStringLiteral("another kit"));
    auto *several = window.page.findChild<ui::SeveralParts *>();
    REQUIRE(several);
    auto *ask = several->findChild<ui::ActLine *>();
    REQUIRE(ask);
    const auto about = ask->about();
    CHECK(about.size() == 4);
    window.show({RecordType::Component, window.workshop.wing.value()});
    CHECK_FALSE(ask->isVisible());
    ask->takeKeyboard();
    CHECK(ask->isVisible());
    CHECK(ask->about() == about);
    CHECK(field(window.page, why).text() == QStringLiteral("another kit"));
}

TEST_CASE("A question about several log entries waits with them", "[daylog]")
{
    LogWindow window;
    QListView *list = nullptr;
    for (auto *view : window.page->findChildren<QListView *>())
        list = view->accessibleName() == QStringLiteral("Log entries") ? view : list;
    REQUIRE(list);
    list->selectAll();
    window.press(QStringLiteral("Move them…"));
    CHECK(says(*window.page, QStringLiteral("It is about: ")));
    const auto to = QStringLiteral("To");
    QTest::keyClicks(&window.field(to), QStringLiteral("yesterday"));
    list->setCurrentIndex(list->model()->index(1, 0));
    auto *ask = window.page->findChild<ui::LogDetail *>()->findChild<ui::ActLine *>();
    REQUIRE(ask);
    CHECK_FALSE(ask->isVisible());
    ask->takeKeyboard();
    CHECK(window.field(to).text() == QStringLiteral("yesterday"));
    QTest::keyClick(&window.field(to), Qt::Key_Return);
    const auto records = window.session->records();
    for (const WorkSession &entry : records->work_sessions)
        CHECK(entry.began->day() == Moment::parse("2026-03-13")->day());
}

} // namespace lastrivet::test
