// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoresPage.h"

#include "tests/ui/support/Looks.h"
#include "tests/ui/support/StoresWindow.h"
#include "ui/convert/QtText.h"
#include "ui/stores/CalibrationForm.h"
#include "ui/stores/DeliveryBoard.h"
#include "ui/stores/ExpenseBoard.h"
#include "ui/stores/ToolBoard.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>

#include <vector>

namespace lastrivet::test {

TEST_CASE("A calibration that is begun waits with its tool")
{
    StoresWindow window;
    Id<Tool> wrench;
    Id<Tool> scale;
    window.session->change(QStringLiteral("Tools"), [&](Edit &edit) {
        Tool tool;
        tool.name = "Torque wrench";
        wrench = edit.put(tool);
        tool.name = "Scale";
        scale = edit.put(tool);
    });
    const auto done = QStringLiteral("Calibrated on");
    const auto show = [&](Id<Tool> tool) {
        window.page.showRecord({RecordType::Tool, tool.value()});
    };
    const ui::CalibrationForm &form = window.page.tools().calibration();
    show(wrench);
    press(window.page, QStringLiteral("Calibrated…"));
    type(window.page, done, QStringLiteral("2026-03-10"));
    show(scale);
    CHECK_FALSE(form.isVisible());
    press(window.page, QStringLiteral("Calibrated…"));
    CHECK(window.complaint.startsWith(notKept));
    CHECK(window.page.tools().list().current().id == wrench.value());
    CHECK(field(window.page, done).text() == QStringLiteral("2026-03-10"));
    QTest::keyClick(&field(window.page, done), Qt::Key_Escape);
    CHECK_FALSE(form.isBegun());
    show(scale);
    show(wrench);
    CHECK_FALSE(form.isVisible());
}

TEST_CASE("A calibration is kept with its day and the next, and not one before the other")
{
    StoresWindow window;
    Id<Tool> wrench;
    window.session->change(QStringLiteral("Tool"), [&](Edit &edit) {
        Tool tool;
        tool.name = "Torque wrench";
        tool.needs_calibration = true;
        wrench = edit.put(tool);
    });
    window.page.showRecord({RecordType::Tool, wrench.value()});
    auto &board = window.page.tools();
    CHECK(window.cell(board, 0, 3) == QStringLiteral("no calibration on record"));
    press(window.page, QStringLiteral("Calibrated…"));
    const auto &due = field(window.page, QStringLiteral("Due again on"));
    type(window.page, QStringLiteral("Calibrated on"), QStringLiteral("2025-10-03"));
    CHECK(ui::parseDay(due.text()) == Moment::parse("2026-10-03"));
    type(window.page, QStringLiteral("Due again on"), QStringLiteral("2026-03-01"));
    type(window.page, QStringLiteral("Calibrated on"), QStringLiteral("2026-03-10"));
    CHECK(due.text() == QStringLiteral("2026-03-01"));
    press(window.page, QStringLiteral("Keep the calibration"));
    CHECK(says(window.page, QStringLiteral("It cannot be due before it was calibrated.")));
    type(window.page, QStringLiteral("Due again on"), QStringLiteral("2027-03-10"));
    press(window.page, QStringLiteral("Keep the calibration"));
    const Tool &tool = *window.records()->find(wrench);
    REQUIRE(tool.calibrations.size() == 1);
    CHECK(tool.calibrations.front().due_on == Moment::parse("2027-03-10"));
    CHECK(window.cell(board, 0, 3) == QStringLiteral("361 days left"));
}

TEST_CASE("Lines of a packing list are typed one after the other, and none is counted by that")
{
    StoresWindow window;
    window.page.showBoard(RecordType::PartLine);
    const auto before = window.records()->part_lines.size();
    field(window.page.deliveries(), QStringLiteral("New packing line")).setFocus();
    for (const char *words : {"wing rib 11", "wing rib 12"}) {
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(words));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    const auto &lines = window.records()->part_lines;
    REQUIRE(lines.size() == before + 2);
    for (const PartLine &line : lines)
        CHECK((line.received_quantity == 0 || line.name == "Fin"));
}

TEST_CASE("Expenses are written in a line; amounts stay exact and currencies apart")
{
    StoresWindow window;
    window.page.showBoard(RecordType::Expense);
    auto &board = window.page.expenses();
    const QString prompt = QStringLiteral("New expense: 34.90 hardware: bolts and nuts");
    const auto enter = [&](const QString &words) {
        type(board, prompt, words);
        QTest::keyClick(&field(board, prompt), Qt::Key_Return);
    };
    enter(QStringLiteral("0.10 hardware: washers"));
    enter(QStringLiteral("0.20 hardware: pins"));
    enter(QStringLiteral("1200 JPY tools: reamer"));
    CHECK(says(board, QStringLiteral("In all: 0.30 CAD + 1,200 JPY")));
    enter(QStringLiteral("-5 hardware: back"));
    CHECK(window.complaint == QStringLiteral("“-5” is below zero: amounts are of what was paid."));
    CHECK(window.records()->expenses.size() == 3);

    // In the form of the last one, which is chosen.
    type(board, QStringLiteral("Amount"), QStringLiteral("7 EUR"));
    QTest::keyClick(&field(board, QStringLiteral("Amount")), Qt::Key_Return);
    CHECK(window.complaint == QStringLiteral("This is kept in JPY; change its currency first."));
    type(board, QStringLiteral("Amount"), QStringLiteral("1300"));
    QTest::keyClick(&field(board, QStringLiteral("Amount")), Qt::Key_Return);
    CHECK(says(board, QStringLiteral("In all: 0.30 CAD + 1,300 JPY")));
    choice(board, QStringLiteral("Category")).setCurrentIndex(1);
    Q_EMIT choice(board, QStringLiteral("Category")).activated(1);
    CHECK(window.list(board).model()->rowCount() == 2);
    // A category that is gone for a while is chosen again when it is back.
    REQUIRE(window.session->change(QStringLiteral("Other category"), [](Edit &edit) {
        std::vector<Id<Expense>> all;
        for (const Expense &known : edit.records().expenses)
            all.push_back(known.id);
        for (const auto id : all)
            edit.update(id, [](Expense &expense) { expense.category = "shop"; });
    }));
    CHECK(window.list(board).model()->rowCount() == 3);
    window.session->undo();
    CHECK(choice(board, QStringLiteral("Category")).currentIndex() == 1);
    CHECK(window.list(board).model()->rowCount() == 2);
}

TEST_CASE("Every board of the stores has names for screen readers and is reached by the tabulator")
{
    StoresWindow window;
    for (const auto type :
         {RecordType::PartLine, RecordType::MaterialLot, RecordType::Tool, RecordType::Expense}) {
        window.page.showBoard(type);
        QCoreApplication::processEvents();
        CHECK(nameless(window.page).join(QLatin1Char('\n')).toStdString() == "");
        CHECK(beyondTheTabulator(window.page).join(QLatin1Char('\n')).toStdString() == "");
        CHECK(cutTexts(window.page).join(QLatin1Char('\n')).toStdString() == "");
    }
}

} // namespace lastrivet::test
