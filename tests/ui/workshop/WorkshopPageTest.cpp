// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/WorkshopPage.h"

#include "core/workshop/WorkshopTable.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/TablesWindow.h"
#include "ui/convert/QtText.h"
#include "ui/workshop/TableShapes.h"
#include "ui/workshop/Tables.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QCoreApplication>
#include <QFontMetrics>
#include <QHeaderView>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

namespace lastrivet::ui {

namespace {

using Shown = test::TablesWindow;

struct German {
    German() { QLocale::setDefault(QLocale(QStringLiteral("de_DE"))); }
    ~German() { QLocale::setDefault(before); }
    QLocale before;
};

} // namespace

TEST_CASE("Every workshop table stands on the page, each with its shape")
{
    std::set<std::string> shown;
    for (const Topic &topic : topics()) {
        for (const auto name : topic.tables) {
            CAPTURE(std::string(name));
            CHECK(tableShape(name));
            CHECK(shown.insert(std::string(name)).second);
        }
    }
    const auto names = workshop::WorkshopTable::names();
    CHECK(shown == std::set<std::string>(names.begin(), names.end()));
}

TEST_CASE("Each row that may be set aside by a limit of the project's own has a name of its own")
{
    for (const auto &name : workshop::WorkshopTable::names()) {
        // Worked examples and remarks on storage are no limits.
        if (name.find("examples") != std::string::npos || name == "sealant")
            continue;
        std::set<QString> subjects;
        for (const FigureRow &row : shownTable(name, UnitSystem::Imperial, {}).rows) {
            CAPTURE(row.subject.toStdString());
            CHECK(subjects.insert(row.subject).second);
        }
    }
}

TEST_CASE("Each column that the page shows is a column of its table")
{
    for (const auto &name : workshop::WorkshopTable::names()) {
        const auto *shape = tableShape(name);
        REQUIRE(shape);
        const auto &columns = workshop::WorkshopTable::named(name).columns();
        for (const auto &column : shape->columns) {
            CAPTURE(name, std::string(column.column));
            CHECK(std::ranges::find(columns, column.column) != columns.end());
            CHECK((column.upto.empty() || std::ranges::count(columns, column.upto) == 1));
            CHECK((column.unit.empty() || std::ranges::count(columns, column.unit) == 1));
        }
    }
}

TEST_CASE("A torque is worked out while its drag is typed, in the units that are chosen")
{
    Shown shown;
    SumPanel &torque = shown.sum(0, 0);
    auto &thread = test::choice(shown.page, QStringLiteral("Torque of a bolt: Thread"));
    thread.setCurrentText(QStringLiteral("1/4-28"));
    test::type(shown.page, QStringLiteral("Torque of a bolt: Drag of the nut"),
               QStringLiteral("5"));
    // AC 43.13-1B table 7-1: 50 to 70, never more than 100; 5 of drag in all three.
    CHECK(Shown::cell(torque, 0, 1) == QStringLiteral("55 – 75 in-lb"));
    CHECK(Shown::cell(torque, 1, 1) == QStringLiteral("105 in-lb"));
    CHECK(Shown::cell(torque, 0, 3).startsWith(QStringLiteral("AC 43.13-1B")));
    test::choice(shown.page, QStringLiteral("Units")).setCurrentIndex(1);
    CHECK(Shown::cell(torque, 0, 1) == QStringLiteral("6.21 – 8.47 N·m"));
    test::type(shown.page, QStringLiteral("Torque of a bolt: Drag of the nut"),
               QStringLiteral("90 in-lb"));
    CHECK(test::says(shown.page, QStringLiteral("something is wrong with nut, bolt or reading")));
    test::type(shown.page, QStringLiteral("Torque of a bolt: Drag of the nut"),
               QStringLiteral("5 mm"));
    CHECK(test::says(shown.page, QStringLiteral("“5 mm” is no torque")));
}

TEST_CASE("A plain number may be typed with the unit of its label")
{
    Shown shown;
    shown.page.findChild<QListWidget *>()->setCurrentRow(5);
    const SumPanel &drop = shown.sum(5, 0);
    const QString current = QStringLiteral("Voltage drop of a wire: Current, A");
    test::type(shown.page, current, QStringLiteral("7"));
    const QString volts = Shown::cell(drop, 0, 1);
    test::type(shown.page, current, QStringLiteral("5"));
    CHECK(Shown::cell(drop, 0, 1) != volts);
    test::type(shown.page, current, QStringLiteral("7 A"));
    CHECK(drop.figures().isVisible());
    CHECK(Shown::cell(drop, 0, 1) == volts);
    test::type(shown.page, current, QStringLiteral("7 V"));
    CHECK(test::says(shown.page, QStringLiteral("“7 V” is no number.")));
}

TEST_CASE("Where decimals have a comma, a comma before three of them parts no thousands")
{
    const German german;
    Shown shown;
    shown.page.findChild<QListWidget *>()->setCurrentRow(2);
    const SumPanel &room = shown.sum(2, 2);
    const QString width = QStringLiteral("Rivets that there is room for: Width");
    test::type(shown.page, width, QStringLiteral("1.125 in"));
    const QString count = Shown::cell(room, 0, 1);
    test::type(shown.page, width, QStringLiteral("9,5 in"));
    CHECK(Shown::cell(room, 0, 1) != count);
    test::type(shown.page, width, QStringLiteral("1,125 in"));
    CHECK(room.figures().isVisible());
    CHECK(Shown::cell(room, 0, 1) == count);
}

TEST_CASE("Numbers of tables have the comma of the language in whatever unit they are")
{
    const German german;
    const auto weights = shownTable("wb_standard_weights", UnitSystem::Imperial, {});
    CHECK(weights.rows.at(1).cells.value(1) ==
          QStringLiteral("6,7%1lb/US gal").arg(QChar(QChar::Nbsp)));
    const auto wires = shownTable("safety_wire", UnitSystem::Imperial, {});
    // Within English words they stay as they are printed.
    CHECK(wires.rows.at(0).cells.value(1).contains(QStringLiteral("0.045")));
}

TEST_CASE("A wire that is too thin says what is exceeded by what, and its rows are marked")
{
    Shown shown;
    shown.page.findChild<QListWidget *>()->setCurrentRow(5);
    const SumPanel &wire = shown.sum(5, 0);
    const auto isMarked = [&](int row) {
        return wire.figures().model()->index(row, 1).data(Qt::DecorationRole).isValid();
    };
    // 20 ft of AWG 24 with 5 A on it, of 14 V.
    CHECK(Shown::cell(wire, 1, 2) == QStringLiteral("exceeded: 2.840 V is above 0.500 V"));
    CHECK(Shown::cell(wire, 3, 2) == QStringLiteral("exceeded: 5 A is above 2.5 A"));
    CHECK_FALSE(isMarked(0));
    CHECK(isMarked(1));
    CHECK(isMarked(3));
    test::choice(shown.page, QStringLiteral("Voltage drop of a wire: Wire size, AWG"))
        .setCurrentText(QStringLiteral("8"));
    CHECK(Shown::cell(wire, 1, 2) == QStringLiteral("within"));
    CHECK(Shown::cell(wire, 3, 2) == QStringLiteral("within"));
    CHECK_FALSE(isMarked(1));
    CHECK_FALSE(isMarked(3));
}

TEST_CASE("Large and small numbers of tables are shown in the units that are chosen")
{
    // AC 43.13-1B table 7-3: 1/8 7x19 breaks at 2,000 lb; table 7-8: .040 wire.
    const auto cell = [](std::string_view table, UnitSystem units, std::size_t row, int column) {
        return shownTable(table, units, {})
            .rows.at(row)
            .cells.value(column)
            .replace(QChar(QChar::Nbsp), QLatin1Char(' '));
    };
    CHECK(cell("cable_strength", UnitSystem::Imperial, 6, 2) == QStringLiteral("2000 lb"));
    CHECK(cell("cable_strength", UnitSystem::Metric, 6, 2) == QStringLiteral("8896 N"));
    CHECK(cell("turnbuckle_safety_wire", UnitSystem::Metric, 0, 2) == QStringLiteral("1.02 mm"));
    CHECK(cell("turnbuckle_safety_wire", UnitSystem::Imperial, 4, 2) ==
          QStringLiteral("0.057 in min"));
}

TEST_CASE("Figures within the words of a table have their zero and keep to their unit")
{
    const FigureTable table = shownTable("safety_wire", UnitSystem::Imperial, {});
    const FigureRow &least = table.rows.at(0);
    CHECK(least.cells.value(1) == QStringLiteral("hole over 0.045%1in").arg(QChar(QChar::Nbsp)));
    // What a limit of the project's own was kept under stays as it was.
    CHECK(least.subject.contains(QStringLiteral("hole over .045 in")));
    CHECK(table.rows.at(3).cells.value(1).contains(QStringLiteral("0.020-0.025")));
    for (const auto &name : workshop::WorkshopTable::names()) {
        for (const FigureRow &row : shownTable(name, UnitSystem::Imperial, {}).rows) {
            // Titles of sources stay as they are printed.
            for (const QString &cell : row.cells.mid(0, row.cells.size() - 2))
                CHECK_FALSE(cell.contains(QStringLiteral(" .0")));
        }
    }
}

TEST_CASE("A search finds rows in all tables, and a remembered number says that it is one")
{
    Shown shown;
    test::type(shown.page, QStringLiteral("Search all tables"), QStringLiteral("5/32 military"));
    QTest::keyClick(&test::field(shown.page, QStringLiteral("Search all tables")), Qt::Key_Return);
    // Tables made after their page is shown appear with the next events.
    QCoreApplication::processEvents();
    const auto views = shown.page.findChildren<FigureView *>();
    const auto heads = std::ranges::find_if(views, [](const FigureView *view) {
        return view->isVisible() && view->table().title == QStringLiteral("Shop heads");
    });
    REQUIRE(heads != views.end());
    REQUIRE((*heads)->table().rows.size() == 1);
    CHECK((*heads)->table().rows[0].isFromMemory);
    CHECK((*heads)
              ->table()
              .rows[0]
              .cells.join(QLatin1Char(' '))
              .contains(QStringLiteral("from memory")));
    // Without Return it is looked for as soon as the typing rests.
    test::type(shown.page, QStringLiteral("Search all tables"), QStringLiteral("zeppelin"));
    CHECK(QTest::qWaitFor([&] {
        return test::says(shown.page, QStringLiteral("No table has all of these words."));
    }));
}

TEST_CASE("After a search a click on the topic that was there before shows it again")
{
    Shown shown;
    auto *list = shown.page.findChild<QListWidget *>();
    REQUIRE(list);
    QLineEdit &search = test::field(shown.page, QStringLiteral("Search all tables"));
    test::type(shown.page, QStringLiteral("Search all tables"), QStringLiteral("zeppelin"));
    QTest::keyClick(&search, Qt::Key_Return);
    CHECK_FALSE(shown.page.topic(0).isVisible());
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                      list->visualItemRect(list->item(0)).center());
    CHECK(shown.page.topic(0).isVisible());
    CHECK(search.text().isEmpty());
}

TEST_CASE("A narrow table cuts no head, and each row is as high as its texts")
{
    FigureView view;
    FigureTable table;
    table.title = QStringLiteral("Torque");
    table.heads = {QStringLiteral("What"), QStringLiteral("Value"),
                   QStringLiteral("How well it is known")};
    table.rows = {{{QStringLiteral("A long text that needs several lines in a narrow window, and "
                                   "says what the number is good for and where it ends"),
                    QStringLiteral("55 – 75"), QStringLiteral("from memory: look it up")}},
                  {{QStringLiteral("Short"), QStringLiteral("105"), QStringLiteral("computed")}}};
    view.setTable(table);
    test::picture(view, 420, 200, "workshop-narrow");
    const QFontMetrics metrics(view.horizontalHeader()->font());
    for (int column = 0; column < 3; ++column)
        CHECK(view.columnWidth(column) >= metrics.horizontalAdvance(table.heads[column]));
    // The value keeps to one line; the long text takes what is left, and the row grows with it.
    const QFontMetrics texts(view.font());
    CHECK(view.columnWidth(1) >= texts.horizontalAdvance(table.rows[0].cells[1]));
    const int lines = texts.horizontalAdvance(table.rows[0].cells[0]) / view.columnWidth(0);
    CHECK(lines >= 1);
    CHECK(view.rowHeight(0) > lines * texts.height());
    CHECK(view.rowHeight(0) > view.rowHeight(1));
}

TEST_CASE("Where no column has all it needs, those with the longest words give way, and no head")
{
    FigureView view;
    FigureTable table;
    table.title = QStringLiteral("Examples");
    const QString longest(60, QLatin1Char('m'));
    table.heads = {QStringLiteral("Arm"), QStringLiteral("Moment"), QStringLiteral("Source"),
                   QStringLiteral("Result")};
    table.rows = {{{QStringLiteral("70"), QStringLiteral("45150"), longest, longest}}};
    view.setTable(table);
    test::picture(view, 420, 200, "workshop-squeezed");
    const QFontMetrics metrics(view.horizontalHeader()->font());
    for (int column = 0; column < 4; ++column) {
        CHECK(view.columnWidth(column) > metrics.horizontalAdvance(table.heads[column]));
        CHECK(view.model()->headerData(column, Qt::Horizontal).toString() == table.heads[column]);
    }
    CHECK(view.horizontalHeader()->length() <= view.viewport()->width());
}

TEST_CASE("The Tab key comes to what is typed for a sum before it comes to the answer")
{
    Shown shown;
    const SumPanel &torque = shown.sum(0, 0);
    int inputs = 0;
    const QWidget *next = torque.nextInFocusChain();
    for (; torque.isAncestorOf(next) && next != &torque.figures(); next = next->nextInFocusChain())
        inputs += next->accessibleName().startsWith(QStringLiteral("Torque of a bolt: "));
    CHECK(next == &torque.figures());
    CHECK(inputs == 3);
}

TEST_CASE("Every sum of every topic answers what stands in its fields at first")
{
    Shown shown;
    const QAbstractItemModelTester tester(shown.sum(0, 0).figures().model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    for (std::size_t i = 0; i < topics().size(); ++i) {
        for (const SumPanel *panel : shown.page.topic(int(i)).sums()) {
            CAPTURE(panel->sum().title.toStdString());
            CHECK_FALSE(panel->figures().table().rows.empty());
            for (const auto &row : panel->figures().table().rows) {
                CHECK_FALSE(row.cells.value(1).isEmpty());
                CHECK_FALSE(row.cells.value(3).isEmpty());
                CHECK_FALSE(row.cells.value(4).isEmpty());
            }
        }
    }
}

} // namespace lastrivet::ui
