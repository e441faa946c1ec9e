// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawksPage.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/squawks/SquawkActForm.h"
#include "ui/squawks/SquawkModel.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

namespace lastrivet::test {

namespace {

/// The page in a window of its own, with what the tests press and read.
struct Window {
    Window()
    {
        page.resize(1100, 680);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
    }
    QLineEdit &field(const QString &name)
    {
        for (auto *line : page.findChildren<QLineEdit *>()) {
            if (line->accessibleName() == name && line->isVisible())
                return *line;
        }
        FAIL("no field " << name.toStdString());
        return *page.findChild<QLineEdit *>();
    }
    QListView &list() { return test::list(page, QStringLiteral("Squawks")); }
    const Squawk &squawk(std::string_view number)
    {
        for (const Squawk &known : session->records()->squawks) {
            if (known.number == number)
                return known;
        }
        FAIL("no squawk " << number);
        return *session->records()->squawks.begin();
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::SquawksPage page{*session};
};

} // namespace

TEST_CASE("A squawk is written down, fixed and checked by keyboard alone")
{
    Window window;
    window.page.startNew();
    QTest::keyClicks(&window.field(QStringLiteral("New squawk")),
                     QStringLiteral("bay 3: nut without split pin"));
    QTest::keyClick(&window.field(QStringLiteral("New squawk")), Qt::Key_Return);
    CHECK(window.squawk("2").title == "nut without split pin");
    CHECK(window.squawk("2").component_id == window.workshop.bay);

    // The names of parts that were offered took the window's place.
    window.page.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window.page));
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_F);
    QLineEdit &correction = window.field(QStringLiteral("Correction"));
    CHECK(correction.hasFocus());
    QTest::keyClicks(&correction, QStringLiteral("Pin fitted and bent"));
    QTest::keyClick(&correction, Qt::Key_Return);
    CHECK(window.squawk("2").correction == "Pin fitted and bent");
    CHECK(window.squawk("2").verified_by == window.workshop.builder);
    CHECK(window.squawk("2").verified_on == window.session->today());

    window.session->undo();
    CHECK_FALSE(window.squawk("2").fixed_on.has_value());
}

TEST_CASE("Words that are typed when the page is opened are a squawk, and no keys")
{
    Window window;
    QApplication::setActiveWindow(&window.page);
    window.page.firstFocus()->setFocus();
    QLineEdit &line = window.field(QStringLiteral("New squawk"));
    CHECK(QApplication::focusWidget() == &line);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("fuse missing"));
    CHECK(line.text() == QStringLiteral("fuse missing"));
    CHECK_FALSE(window.page.findChild<ui::SquawkActForm *>()->isVisible());
    // Who goes to a squawk works on it, and finds the words later.
    window.page.showRecord({RecordType::Squawk, window.workshop.squawk.value()});
    CHECK(QApplication::focusWidget() == &window.list());
    CHECK(line.text() == QStringLiteral("fuse missing"));
}

TEST_CASE("A correction that is not written down is asked for, and nothing changes")
{
    Window window;
    window.page.showRecord({RecordType::Squawk, window.workshop.squawk.value()});
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_F);
    QTest::keyClick(&window.field(QStringLiteral("Correction")), Qt::Key_Return);
    CHECK(window.page.findChild<ui::SquawkActForm *>()->isVisible());
    CHECK_FALSE(window.squawk("1").fixed_on.has_value());
}

TEST_CASE("A title is edited in place and undone by name")
{
    Window window;
    window.page.showRecord({RecordType::Squawk, window.workshop.squawk.value()});
    QLineEdit &title = window.field(QStringLiteral("Title"));
    title.setFocus();
    title.selectAll();
    QTest::keyClicks(&title, QStringLiteral("Two overdriven rivets"));
    QTest::keyClick(&title, Qt::Key_Return);
    CHECK(window.squawk("1").title == "Two overdriven rivets");
    CHECK(window.session->project().undoLabel().value_or("").find("itle") != std::string::npos);
}

TEST_CASE("The list of squawks follows changes, answers and its filter without breaking a rule")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::SquawkModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    QObject::connect(session.get(), &ui::Session::answerChanged, &model,
                     [&] { model.applyAnswer(); });
    for (int i = 0; i < 5; ++i) {
        session->change(QStringLiteral("Found"), [&](Edit &edit) {
            edit.put(Squawk{.number = std::to_string(10 + i),
                            .component_id = workshop.aileron,
                            .title = "Scratch",
                            .severity = Severity(i % 3),
                            .found_on = edit.today()});
        });
    }
    CHECK(model.rowCount() == 6);
    model.setFilter({.severity = Severity::Cosmetic, .text = "scratch"});
    CHECK(model.rowCount() == 1);
    model.setFilter({});
    session->undo();
    CHECK(model.rowCount() == 5);
    watch.check();
}

TEST_CASE("The squawks page is shown whole, in light and in dark")
{
    Window window;
    window.session->change(QStringLiteral("More"), [&](Edit &edit) {
        for (int i = 0; i < 14; ++i)
            edit.put(Squawk{.number = std::to_string(10 + i),
                            .component_id = i % 2 ? window.workshop.bay : window.workshop.aileron,
                            .title = "Rivet head lifted by a hair at the third bay",
                            .severity = Severity(i % 3),
                            .found_on = edit.today().plusDays(-i)});
    });
    lightAndDark(window.page, 1120, 660, "squawks");
    CHECK(says(window.page, QStringLiteral("15 squawks")));
    CHECK(says(window.page, QStringLiteral("Squawk 1: Overdriven rivet at rib 3")));
}

TEST_CASE("The chosen squawk stays in view where another order takes it to another row",
          "[squawks]")
{
    Window window;
    Id<Squawk> last;
    REQUIRE(window.session->change(QStringLiteral("Many"), [&](Edit &edit) {
        for (int i = 0; i < 40; ++i) {
            Squawk squawk;
            squawk.number = std::to_string(100 + i);
            squawk.component_id = window.workshop.rudder;
            squawk.title = "Scratch";
            squawk.severity = Severity::Cosmetic;
            squawk.found_on = edit.today();
            last = edit.put(squawk);
        }
    }));
    window.page.showRecord({RecordType::Squawk, last.value()});
    const auto lists = window.page.findChildren<QListView *>();
    const auto found =
        std::ranges::find(lists, QStringLiteral("Squawks"), &QWidget::accessibleName);
    REQUIRE(found != lists.end());
    const QListView &list = **found;
    const auto &model = *window.page.findChild<ui::SquawkModel *>();
    const int before = list.currentIndex().row();
    REQUIRE(window.session->change(QStringLiteral("Worse"), [&](Edit &edit) {
        edit.update(last, [](Squawk &squawk) { squawk.severity = Severity::Airworthiness; });
    }));
    QCoreApplication::processEvents();
    const QModelIndex current = list.currentIndex();
    REQUIRE(model.recordAt(current.row()).id == last.value());
    CHECK(current.row() < before - 20);
    CHECK(list.viewport()->rect().contains(list.visualRect(current)));
}

} // namespace lastrivet::test
