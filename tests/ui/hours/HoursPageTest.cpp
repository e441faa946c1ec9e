// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursPage.h"
#include "tests/ui/print/PrintedFolder.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Looks.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/hours/ChartPane.h"
#include "ui/hours/HoursPaper.h"
#include "ui/hours/HoursTableModel.h"
#include "ui/print/HoursSentences.h"
#include "ui/today/TodayPage.h"

#include <QCheckBox>
#include <QFile>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>
#include <utility>
#include <vector>

namespace lastrivet::test {

using ui::HoursView;

namespace {

/// Does nothing until it is told to, a piece at a time.
class SlowExecutor final : public ui::Executor {
public:
    void run(QObject *, std::function<void()> work, std::function<void()> done) override
    {
        m_pieces.emplace_back(std::move(work), std::move(done));
    }
    bool doOne()
    {
        if (m_pieces.empty())
            return false;
        const auto [work, done] = std::move(m_pieces.front());
        m_pieces.erase(m_pieces.begin());
        work();
        done();
        return true;
    }
    int doAll()
    {
        int count = 0;
        while (doOne())
            ++count;
        return count;
    }

private:
    std::vector<std::pair<std::function<void()>, std::function<void()>>> m_pieces;
};

/// The page on the workshop's project, with a year of weekly work on its wing if wanted.
struct Window {
    explicit Window(int weeks = 0)
    {
        if (weeks > 0)
            REQUIRE(session->change(QStringLiteral("Worked"), [&](Edit &edit) {
                auto day = *Moment::parse("2025-02-03");
                for (int week = 0; week < weeks; ++week, day = *day.plusDays(7))
                    workOnce(edit, day);
            }));
        page = std::make_unique<ui::HoursPage>(*session);
        page->resize(1110, 640);
        page->show();
        REQUIRE(QTest::qWaitForWindowExposed(page.get()));
    }
    void workOnce(Edit &edit, Moment day)
    {
        Step step;
        step.component_id = workshop.wing;
        step.title = "Rivet a bay";
        step.estimate_minutes = Minutes{120};
        step.done_on = day;
        WorkSession work;
        work.step_id = edit.put(step);
        work.component_id = workshop.wing;
        work.began = day;
        work.minutes = Minutes{150};
        work.kind = WorkKind::Fabrication;
        work.workers = {{workshop.builder}};
        edit.put(work);
    }
    /// A cell of the first row that begins with a name.
    QString cell(const QString &name, int column)
    {
        for (const auto &row : page->model().table().rows) {
            if (row.cells.value(0) == name)
                return row.cells.value(column);
        }
        return {};
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    std::unique_ptr<ui::HoursPage> page;
};

} // namespace

TEST_CASE("Each way of grouping is a button, a chart and a table with every figure")
{
    Window window(40);
    press(*window.page, QStringLiteral("By part"));
    // 40 times 2 h 30 on the wing, 2 h 15 on its bay, 1 h on the aileron.
    CHECK(window.cell(QStringLiteral("LW Left wing"), 1) == QStringLiteral("100 h 00"));
    CHECK(window.cell(QStringLiteral("LW Left wing"), 2) == QStringLiteral("102 h 15"));
    CHECK(window.cell(QStringLiteral("In all"), 2) == QStringLiteral("103 h 15"));
    CHECK(window.page->chart().plan().names.first() == QStringLiteral("Left wing"));
    CHECK(says(*window.page, QStringLiteral("103 h 15 by the clock")));
    press(*window.page, QStringLiteral("By kind"));
    CHECK(window.cell(QStringLiteral("fabrication"), 1) == QStringLiteral("100 h 00"));
    press(*window.page, QStringLiteral("By person"));
    CHECK(window.cell(QStringLiteral("Robin Vale"), 2) == QStringLiteral("42"));
    CHECK(window.cell(QStringLiteral("Sam Orrin"), 2) == QStringLiteral("0"));
    press(*window.page, QStringLiteral("By week"));
    CHECK(window.cell(QStringLiteral("2025-W06"), 1) == QStringLiteral("2 h 30"));
    press(*window.page, QStringLiteral("By month"));
    CHECK(window.cell(QStringLiteral("2026-03"), 1) == QStringLiteral("2 h 15"));
    CHECK_FALSE(window.page->chart().plan().isEmpty());
    press(*window.page, QStringLiteral("Estimates"));
    CHECK(window.cell(QStringLiteral("In all"), 3) == QStringLiteral("125 %"));
    picture(*window.page, 1110, 640, "hours-estimates");
}

TEST_CASE("A short log asks for hours a week, and the answer is kept for this project")
{
    Window window;
    CHECK(says(*window.page, QStringLiteral("too short to tell when")));
    CHECK(window.page->chart().plan().bands.empty());
    auto *hours = window.page->findChild<QSpinBox *>();
    hours->setFocus();
    hours->selectAll();
    QTest::keyClicks(hours, QStringLiteral("6"));
    QTest::keyClick(hours, Qt::Key_Return);
    CHECK(says(*window.page, QStringLiteral("Done between")));
    CHECK(window.page->chart().plan().bands.size() == 1);
    const ui::HoursPage again(*window.session);
    CHECK(again.findChild<QSpinBox *>()->value() == 6);
    CHECK(window.session->project().undoLabel() == "Everything");
}

TEST_CASE("A part is named as it is in a sentence, whatever signs are in its name")
{
    Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Bay renamed"), [&](Edit &edit) {
        edit.update(workshop.bay, [](Component &part) { part.name = "Bay, ribs at 50 %2"; });
    }));
    forecast::Forecast told{.as_of = session->today()};
    told.assemblies = {{workshop.bay, {}, 0.8}};
    const QStringList said = print::forecastSentences(print::Wording(), *session->records(), told);
    CHECK(said.join(QLatin1Char(' ')).contains(QStringLiteral("Bay, ribs at 50 %2 (80 %)")));
}

TEST_CASE("A part is left out of the forecast by its name, is named, and is taken back")
{
    Window window(60);
    CHECK(window.cell(QStringLiteral("Left wing"), 0) == QStringLiteral("Left wing"));
    type(*window.page, QStringLiteral("Leave a part out of the forecast"),
         QStringLiteral("Left wing"));
    QTest::keyClick(&field(*window.page, QStringLiteral("Leave a part out of the forecast")),
                    Qt::Key_Return);
    CHECK(says(*window.page, QStringLiteral("Left out by choice: Left wing")));
    CHECK(window.cell(QStringLiteral("Left wing"), 0).isEmpty());
    CHECK(ui::ForecastWish::kept(*window.session).value().without ==
          IdSet<Component>{window.workshop.wing});
    for (auto *chip : window.page->findChildren<QPushButton *>()) {
        if (chip->isVisible() && chip->accessibleName().startsWith(QStringLiteral("Take")))
            chip->click();
    }
    CHECK(window.cell(QStringLiteral("Left wing"), 0) == QStringLiteral("Left wing"));
}

TEST_CASE("The look back stands month by month, the latest first")
{
    Window window(52);
    press(*window.page, QStringLiteral("Look back"));
    REQUIRE(window.page->model().rowCount() > 8);
    CHECK(window.page->model().index(0, 0).data().toString() ==
          ui::dayText(*Moment::parse("2026-01-01")));
    CHECK(window.page->chart().plan().curves.size() == 2);
    CHECK(says(*window.page, QStringLiteral("no more came than P50 had said")));
    picture(*window.page, 1110, 640, "hours-look-back");
}

TEST_CASE("New work changes what is shown, and a row leads to its part")
{
    Window window(10);
    window.page->choose(HoursView::Parts);
    REQUIRE(window.session->change(QStringLiteral("More"), [&](Edit &edit) {
        window.workOnce(edit, *Moment::parse("2026-03-12"));
    }));
    CHECK(window.cell(QStringLiteral("In all"), 2) == QStringLiteral("30 h 45"));
    RecordRef wanted{};
    QObject::connect(window.session.get(), &ui::Session::recordWanted, window.page.get(),
                     [&](RecordRef record) { wanted = record; });
    window.page->table().setFocus();
    QTest::keyClick(&window.page->table(), Qt::Key_Return);
    CHECK(wanted == RecordRef{RecordType::Component, window.workshop.wing.value()});
}

TEST_CASE("What is shown stays until all of it is worked out again")
{
    Window window(52);
    // A project belongs to one who writes.
    window.page.reset();
    window.session.reset();
    SlowExecutor slow;
    ui::Session session(Project::open(window.workshop.folder(), {&window.workshop.clock, "Robin"}),
                        slow, theme());
    ui::HoursCalculation calculation(session, ui::HoursCalculation::Extent::Everything);
    calculation.refresh();
    calculation.wantLookBack(true);
    slow.doAll();
    const auto shown = calculation.answer();
    REQUIRE(shown.look_back);
    ui::ForecastWish{{}, 6}.keep(session);
    calculation.refresh();
    // A wish changes nothing of the hours worked: only the outlook and the look back are missing.
    REQUIRE(slow.doOne());
    CHECK(calculation.answer().look_back == shown.look_back);
    CHECK(calculation.answer().outlook == shown.outlook);
    CHECK(slow.doAll() == 1);
    CHECK(calculation.answer().account == shown.account);
    CHECK(calculation.answer().outlook != shown.outlook);
    CHECK(calculation.answer().look_back != shown.look_back);
    // Nobody waits for a look back that is looked at no more.
    calculation.wantLookBack(false);
    ui::ForecastWish{{}, 7}.keep(session);
    calculation.refresh();
    CHECK(slow.doAll() == 1);
    CHECK(calculation.answer().wish.hours_per_week == 7);
    CHECK_FALSE(calculation.answer().look_back);
}

TEST_CASE("A person is shown where people's hours are")
{
    Window window;
    window.page->showRecord({RecordType::Person, window.workshop.inspector.value()});
    CHECK(window.page->view() == HoursView::People);
    CHECK(window.page->table().currentIndex().data().toString() == QStringLiteral("Sam Orrin"));
}

TEST_CASE("A person is added and changed in place, roles by a box each")
{
    Window window;
    window.page->startNew();
    type(*window.page, QStringLiteral("Name"), QStringLiteral("Kim Teal"));
    QTest::keyClick(&field(*window.page, QStringLiteral("Name")), Qt::Key_Return);
    for (auto *box : window.page->findChildren<QCheckBox *>()) {
        if (box->isVisible() && box->text() == QStringLiteral("Adviser"))
            QTest::keyClick(box, Qt::Key_Space);
    }
    const auto records = window.session->records();
    const auto kim = std::find_if(records->people.begin(), records->people.end(),
                                  [](const Person &one) { return one.name == "Kim Teal"; });
    REQUIRE(kim != records->people.end());
    CHECK(kim->roles.contains(Role::Adviser));
    CHECK(kim->roles.contains(Role::Helper));
    CHECK(window.cell(QStringLiteral("Kim Teal"), 2) == QStringLiteral("0"));
    CHECK(window.page->table().currentIndex().data().toString() == QStringLiteral("Kim Teal"));
}

TEST_CASE("The first page tells the hours to go as a range, and leads to all of them")
{
    Window window(60);
    ui::TodayPage today(*window.session);
    today.resize(1110, 640);
    today.show();
    CHECK(says(today, QStringLiteral("h to go, done between")));
    RecordRef wanted{};
    QObject::connect(window.session.get(), &ui::Session::recordWanted, &today,
                     [&](RecordRef record) { wanted = record; });
    press(today, QStringLiteral("All hours"));
    CHECK(wanted == RecordRef{RecordType::Person, 0});
}

TEST_CASE("What is shown can be printed with its chart, and written as CSV")
{
    Window window(60);
    const test::PrintedFolder folder;
    const auto pdf = folder.path("hours.pdf");
    window.page->setChooseFile([&](const QString &, const QString &) { return ui::pathText(pdf); });
    press(*window.page, QStringLiteral("Print…"));
    REQUIRE(test::PrintedFolder::isSound(pdf));
    const QString text = test::PrintedFolder::text(pdf);
    CHECK(text.contains(QStringLiteral("Hours to go")));
    CHECK(text.contains(QStringLiteral("All work left")));
    // From the chart: its legend.
    CHECK(text.contains(QStringLiteral("P10 to P90")));
    const auto csv = folder.path("hours.csv");
    window.page->setChooseFile([&](const QString &, const QString &) { return ui::pathText(csv); });
    window.page->choose(HoursView::Weeks);
    press(*window.page, QStringLiteral("CSV…"));
    QFile file(ui::pathText(csv));
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(file.readAll().contains("2025-W06,0,150,150,1\r\n"));
}

TEST_CASE("Everything on the page of hours has a name, is reached by keyboard, and is not cut")
{
    Window window(60);
    for (int view = 0; view < ui::hoursViewCount; ++view) {
        window.page->choose(HoursView(view));
        QCoreApplication::processEvents();
        CAPTURE(view);
        CHECK(nameless(*window.page).join(u'\n').toStdString() == "");
        CHECK(cutTexts(*window.page).join(u'\n').toStdString() == "");
        CHECK(beyondTheTabulator(*window.page).join(u'\n').toStdString() == "");
    }
}

TEST_CASE(
    "The table of hours cuts no column when the page is first shown, in longer languages either")
{
    LongWords longWords;
    QCoreApplication::installTranslator(&longWords);
    {
        Window window(60);
        QCoreApplication::processEvents();
        auto &table = *window.page->findChild<QTreeView *>();
        REQUIRE(table.isVisible());
        CHECK(table.header()->length() <= table.viewport()->width());
        // Nor in a window of another width.
        window.page->resize(1200, 640);
        QCoreApplication::processEvents();
        CHECK(table.header()->length() <= table.viewport()->width());
    }
    QCoreApplication::removeTranslator(&longWords);
}

TEST_CASE("What was folded in a table of hours stays so when work is logged")
{
    Window window(3);
    press(*window.page, QStringLiteral("By part"));
    QTreeView &table = window.page->table();
    const auto wing = [&] {
        const RecordRef record{RecordType::Component, window.workshop.wing.value()};
        return window.page->model().indexOf(record);
    };
    REQUIRE(wing().isValid());
    REQUIRE(window.page->model().rowCount(wing()) > 0);
    CHECK(table.isExpanded(wing()));
    table.collapse(wing());
    window.session->change(QStringLiteral("Worked"), [&](Edit &edit) {
        window.workOnce(edit, *Moment::parse("2026-03-01"));
    });
    REQUIRE(window.cell(QStringLiteral("LW Left wing"), 1) == QStringLiteral("10 h 00"));
    CHECK_FALSE(table.isExpanded(wing()));
    // Another table, and back again: each begins as it always does.
    press(*window.page, QStringLiteral("By week"));
    press(*window.page, QStringLiteral("By part"));
    CHECK(table.isExpanded(wing()));
}

} // namespace lastrivet::test
