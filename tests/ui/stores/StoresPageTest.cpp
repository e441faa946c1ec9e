// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoresPage.h"

#include "core/project/acts/Withdrawal.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Looks.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ListDialog.h"
#include "ui/parts/SectionList.h"
#include "ui/stores/CalibrationForm.h"
#include "ui/stores/ClaimView.h"
#include "ui/stores/DeliveryBoard.h"
#include "ui/stores/ExpenseBoard.h"
#include "ui/stores/MaterialBoard.h"
#include "ui/stores/ToolBoard.h"
#include "ui/stores/UseForm.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::test {

namespace {

/// The page in a window of its own, with what was complained of last.
struct StoresWindow {
    StoresWindow()
    {
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complaint = sentence; });
        session->change(QStringLiteral("Stores"), [this](Edit &edit) { fill(edit); });
        page.resize(1180, 680);
        page.show();
        page.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&page));
    }

    void fill(Edit &edit)
    {
        ProjectFacts facts = edit.records().project;
        facts.currency = "CAD";
        edit.put(facts);
        PartLine line;
        line.shipment = "Crate 2";
        line.name = "Ribs";
        line.quantity = 4;
        line.component_id = workshop.bay;
        line.expected_on = Moment::parse("2026-03-04");
        line.unit_price = 2100;
        line.currency = "CAD";
        ribs = edit.put(line);
        line.name = "Bolts";
        line.quantity = 80;
        line.component_id = {};
        line.expected_on.reset();
        bolts = edit.put(line);
        line.shipment = "Crate 1";
        line.name = "Fin";
        line.quantity = line.received_quantity = 1;
        line.received_on = Moment::parse("2026-01-01");
        edit.put(line);
    }

    QTreeView &list(ui::StoreBoard &board) { return board.list().view(); }
    QString cell(ui::StoreBoard &board, int row, int column)
    {
        return list(board).model()->index(row, column).data().toString();
    }
    Snapshot records() const { return session->records(); }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::StoresPage page{*session};
    QString complaint;
    Id<PartLine> ribs;
    Id<PartLine> bolts;
};

const auto notKept = QStringLiteral("What is begun here is not kept.");

/// Two lots, and a use of the first that is begun while the second is shown.
struct BegunUse : StoresWindow {
    BegunUse()
    {
        session->change(QStringLiteral("Lots"), [this](Edit &edit) {
            MaterialLot lot;
            lot.name = "Sealant";
            first = edit.put(lot);
            lot.name = "Primer";
            second = edit.put(lot);
        });
        show(first);
        press(page, QStringLiteral("Used on…"));
        type(use(), QStringLiteral("Mix"), QStringLiteral("100:12"));
        show(second);
    }
    void show(Id<MaterialLot> lot) { page.showRecord({RecordType::MaterialLot, lot.value()}); }
    ui::UseForm &use() { return page.materials().use(); }
    QString mix() { return field(use(), QStringLiteral("Mix")).text(); }
    std::int64_t shown() { return page.materials().list().current().id; }

    Id<MaterialLot> first;
    Id<MaterialLot> second;
};

enum LineColumn { Name, PartNumber, Listed, Came, Damaged, Stands };

} // namespace

TEST_CASE("A delivery is counted by keyboard: as listed with one key, otherwise by its number")
{
    StoresWindow window;
    auto &board = window.page.deliveries();
    window.page.showRecord({RecordType::PartLine, window.ribs.value()});
    auto &list = window.list(board);
    CHECK(window.cell(board, 0, Stands) == QStringLiteral("late by 10 days"));
    REQUIRE(list.hasFocus());
    QTest::keyClick(&list, Qt::Key_Space);
    CHECK(window.records()->find(window.ribs)->received_quantity == 4);
    CHECK(window.records()->find(window.ribs)->received_on == window.session->today());
    CHECK(window.cell(board, 0, Stands) == QStringLiteral("complete"));

    const auto write = [&](int column, const QString &text) {
        return list.model()->setData(list.model()->index(1, column), text);
    };
    CHECK(write(Came, QStringLiteral("60")));
    CHECK(window.cell(board, 1, Stands) == QStringLiteral("missing 20"));
    CHECK(write(Damaged, QStringLiteral("2")));
    CHECK(window.cell(board, 1, Stands) == QStringLiteral("missing 20, damaged 2"));
    CHECK_FALSE(write(Damaged, QStringLiteral("61")));
    CHECK(window.complaint == QStringLiteral("61 cannot be damaged when 60 came."));
    CHECK_FALSE(write(Came, QStringLiteral("-5")));
    CHECK(window.complaint == QStringLiteral("A count is 0 or more."));
    CHECK_FALSE(write(Came, QStringLiteral("many")));
    CHECK(window.records()->find(window.bolts)->received_quantity == 60);
    CHECK(write(Came, {}));
    CHECK_FALSE(window.records()->find(window.bolts)->received_on.has_value());
}

TEST_CASE("A list that gets the keyboard has the row chosen whose fields are shown")
{
    StoresWindow window;
    auto &list = window.list(window.page.deliveries());
    list.setFocus();
    REQUIRE(list.hasFocus());
    const auto rows = list.selectionModel()->selectedRows();
    REQUIRE(rows.size() == 1);
    CHECK(rows.front().row() == list.currentIndex().row());
    CHECK(window.page.deliveries().list().chosen().size() == 1);
}

TEST_CASE("A missing part keeps its closing open, which stands beside its line")
{
    StoresWindow window;
    window.page.showRecord({RecordType::PartLine, window.ribs.value()});
    CHECK(says(window.page, QStringLiteral("Waits for this line")));
    bool isNamed = false;
    for (auto *view : window.page.deliveries().findChildren<QListView *>()) {
        for (int row = 0; row < view->model()->rowCount(); ++row)
            isNamed = isNamed || view->model()->index(row, 0).data().toString().contains(
                                     QStringLiteral("Left wing, upper skin"));
    }
    CHECK(isNamed);
}

TEST_CASE("The claim letter says what is missing, in the words of its language, to copy or to save")
{
    StoresWindow window;
    auto &board = window.page.deliveries();
    board.chooseShipment(QStringLiteral("Crate 2"));
    CHECK(window.list(board).model()->rowCount() == 2);
    window.list(board).model()->setData(window.list(board).model()->index(1, Came),
                                        QStringLiteral("60"));
    press(window.page, QStringLiteral("Claim letter"));
    const QString letter = board.claim().text();
    CHECK(letter.contains(QStringLiteral("20 × Bolts: listed 80, received 60")));
    CHECK(letter.contains(QStringLiteral("4 × Ribs: expected on")));
    CHECK(letter.contains(QStringLiteral("420.00 CAD")));
    press(window.page, QStringLiteral("Copy"));
    CHECK(QApplication::clipboard()->text() == letter);
    const QString file = ui::pathText(window.workshop.folder().parent_path() / "claim.txt");
    board.claim().setChooseFile([&](const QString &) { return file; });
    press(window.page, QStringLiteral("Save as…"));
    QFile saved(file);
    REQUIRE(saved.open(QIODevice::ReadOnly));
    CHECK(QString::fromUtf8(saved.readAll()) == letter);
    press(window.page, QStringLiteral("Back to the list"));
    CHECK(window.list(board).isVisible());
}

TEST_CASE("What is written into a claim letter is not lost for another letter or language")
{
    StoresWindow window;
    window.session->change(QStringLiteral("Late, too"), [](Edit &edit) {
        PartLine line;
        line.shipment = "Crate 3";
        line.name = "Spar caps";
        line.quantity = 2;
        line.expected_on = Moment::parse("2026-03-01");
        edit.put(line);
    });
    auto &board = window.page.deliveries();
    const auto ask = [&](const QString &crate) {
        board.chooseShipment(crate);
        press(window.page, QStringLiteral("Claim letter"));
    };
    ask(QStringLiteral("Crate 2"));
    auto *text = board.claim().findChild<QPlainTextEdit *>();
    REQUIRE(text);
    CHECK_FALSE(board.claim().isBegun());
    QTest::keyClicks(text, QStringLiteral("Dear Kim, "));
    CHECK(board.claim().isBegun());
    const QString written = board.claim().text();
    SECTION("another letter is held back once")
    {
        ask(QStringLiteral("Crate 3"));
        CHECK(board.claim().text() == written);
        CHECK(window.complaint.startsWith(QStringLiteral("What was written into the letter")));
        ask(QStringLiteral("Crate 3"));
        CHECK(board.claim().text().contains(QStringLiteral("Spar caps")));
    }
    SECTION("the letter in another language can be taken back")
    {
        QComboBox &language = choice(board, QStringLiteral("Language of the letter"));
        language.setCurrentIndex(language.currentIndex() == 0 ? 1 : 0);
        Q_EMIT language.activated(language.currentIndex());
        CHECK(board.claim().text() != written);
        CHECK_FALSE(board.claim().isBegun());
        text->undo();
        CHECK(board.claim().text() == written);
        CHECK(board.claim().isBegun());
    }
    SECTION("what was copied holds nothing back")
    {
        press(window.page, QStringLiteral("Copy"));
        CHECK_FALSE(board.claim().isBegun());
        ask(QStringLiteral("Crate 3"));
        CHECK(board.claim().text().contains(QStringLiteral("Spar caps")));
        CHECK(window.complaint.isEmpty());
    }
}

TEST_CASE("A shipment becomes an expense in one action, and says which line has no price")
{
    StoresWindow window;
    auto &board = window.page.deliveries();
    board.chooseShipment(QStringLiteral("Crate 2"));
    press(window.page, QStringLiteral("Shipment as an expense"));
    REQUIRE(window.records()->expenses.size() == 1);
    CHECK(window.records()->expenses.begin()->amount == 84 * 2100);
    window.session->change(QStringLiteral("Price"), [&](Edit &edit) {
        edit.update(window.bolts, [](PartLine &line) { line.unit_price.reset(); });
    });
    press(window.page, QStringLiteral("Shipment as an expense"));
    CHECK(window.complaint == QStringLiteral("Bolts has no price on record."));
    CHECK(window.records()->expenses.size() == 1);
}

TEST_CASE("A packing list with prices comes in under its crate; one with other columns says so")
{
    StoresWindow window;
    ui::ListDialog dialog(*window.session);
    dialog.setType(RecordType::PartLine);
    dialog.setShipment(QStringLiteral("Crate 3"));
    dialog.setText(QStringLiteral("Lat,Lon\n47,11\n"));
    CHECK(dialog.summary() == QStringLiteral("No column fills “Name”, “Quantity”: choose on the "
                                             "left which one does."));
    dialog.setText(QStringLiteral("Item;Qty;Price\nSpar;-1;\"1.250,50\"\n"));
    CHECK(dialog.summary().contains(QStringLiteral("1 wrong")));
    dialog.setText(QStringLiteral("Item;Qty;Price\nSpar;1;\"1.250,50\"\nPin;3;0,95 USD\n"));
    dialog.take();
    const PartLine *spar = nullptr;
    const PartLine *pin = nullptr;
    const auto records = window.records();
    for (const PartLine &line : records->part_lines) {
        spar = line.name == "Spar" ? &line : spar;
        pin = line.name == "Pin" ? &line : pin;
    }
    REQUIRE(spar);
    REQUIRE(pin);
    CHECK(spar->unit_price == 125050);
    CHECK(spar->currency == "CAD");
    CHECK(spar->shipment == "Crate 3");
    CHECK(pin->unit_price == 95);
    CHECK(pin->currency == "USD");
}

TEST_CASE("Sealant that cures keeps its closing open, which stands beside the lots")
{
    StoresWindow window;
    Id<MaterialLot> lot;
    window.session->change(QStringLiteral("Lot"), [&](Edit &edit) {
        MaterialLot made;
        made.name = "Sealant";
        made.cures = true;
        made.expires_on = Moment::parse("2026-04-01");
        lot = edit.put(made);
    });
    window.page.showRecord({RecordType::MaterialLot, lot.value()});
    auto &board = window.page.materials();
    press(window.page, QStringLiteral("Used on…"));
    press(board.use(), QStringLiteral("Keep the use"));
    CHECK(says(board.use(), QStringLiteral("Say which part it was used on.")));
    type(board.use(), QStringLiteral("On part"), QStringLiteral("LW-B3"));
    QTest::keyClick(&field(board.use(), QStringLiteral("On part")), Qt::Key_Return);
    type(board.use(), QStringLiteral("Cures for"), QStringLiteral("soon"));
    press(board.use(), QStringLiteral("Keep the use"));
    CHECK(says(board.use(), QStringLiteral("“soon” is no time to cure; write 14 d or 24 h.")));
    type(board.use(), QStringLiteral("Cures for"), QStringLiteral("14 d"));
    type(board.use(), QStringLiteral("Temperature, °C"), QStringLiteral("18-21"));
    press(board.use(), QStringLiteral("Keep the use"));
    REQUIRE(window.records()->material_uses.size() == 1);
    const MaterialUse &use = *window.records()->material_uses.begin();
    CHECK(use.component_id == window.workshop.bay);
    CHECK(use.cure_minutes == Minutes{14 * 24 * 60});
    CHECK(use.temperature_max == 21.0);
    CHECK_FALSE(board.use().isVisible());
    bool isHeld = false;
    for (auto *view : board.findChildren<QListView *>()) {
        for (int row = 0; row < view->model()->rowCount(); ++row)
            isHeld = isHeld || view->model()
                                   ->index(row, 0)
                                   .data(Qt::AccessibleTextRole)
                                   .toString()
                                   .contains(QStringLiteral("Left wing, upper skin"));
    }
    CHECK(isHeld);
}

TEST_CASE("Whether a lot had expired is said for the moment in the form, not for today")
{
    StoresWindow window;
    Id<MaterialLot> lot;
    window.session->change(QStringLiteral("Lot"), [&](Edit &edit) {
        MaterialLot made;
        made.name = "Sealant";
        made.expires_on = Moment::parse("2026-01-31");
        lot = edit.put(made);
    });
    window.page.showRecord({RecordType::MaterialLot, lot.value()});
    press(window.page, QStringLiteral("Used on…"));
    const QString warning =
        QStringLiteral("This lot has expired: what is made with it needs somebody's acceptance.");
    auto &use = window.page.materials().use();
    CHECK(says(use, warning));
    type(use, QStringLiteral("When"), QStringLiteral("2026-01-30 10:00"));
    CHECK_FALSE(says(use, warning));
}

TEST_CASE("A use begins without the part of the use before")
{
    StoresWindow window;
    Id<MaterialLot> lot;
    window.session->change(QStringLiteral("Lot"), [&](Edit &edit) {
        MaterialLot made;
        made.name = "Primer";
        lot = edit.put(made);
    });
    window.page.showRecord({RecordType::MaterialLot, lot.value()});
    auto &use = window.page.materials().use();
    press(window.page, QStringLiteral("Used on…"));
    type(use, QStringLiteral("On part"), QStringLiteral("LW-B3"));
    QTest::keyClick(&field(use, QStringLiteral("On part")), Qt::Key_Return);
    press(use, QStringLiteral("Keep the use"));
    REQUIRE(window.records()->material_uses.size() == 1);
    press(window.page, QStringLiteral("Used on…"));
    CHECK(field(use, QStringLiteral("On part")).text().isEmpty());
    CHECK_FALSE(use.isBegun());
    press(use, QStringLiteral("Keep the use"));
    CHECK(says(use, QStringLiteral("Say which part it was used on.")));
    CHECK(window.records()->material_uses.size() == 1);
}

TEST_CASE("A use that is begun waits with its lot")
{
    BegunUse window;
    CHECK_FALSE(window.use().isVisible());
    CHECK(window.use().isBegun());
    SECTION("and is there with it again")
    {
        window.show(window.first);
        CHECK(window.mix() == QStringLiteral("100:12"));
        CHECK(window.complaint.isEmpty());
    }
    SECTION("and holds one of another lot back once")
    {
        press(window.page, QStringLiteral("Used on…"));
        CHECK(window.shown() == window.first.value());
        CHECK(window.mix() == QStringLiteral("100:12"));
        CHECK(window.complaint.startsWith(notKept));
        window.show(window.second);
        press(window.page, QStringLiteral("Used on…"));
        CHECK(window.shown() == window.second.value());
        CHECK(window.mix().isEmpty());
    }
    SECTION("and goes on when it is wanted once more")
    {
        window.show(window.first);
        press(window.page, QStringLiteral("Used on…"));
        CHECK(window.mix() == QStringLiteral("100:12"));
        CHECK(window.complaint.isEmpty());
    }
    SECTION("and goes with it")
    {
        window.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
            const RecordRef lot{RecordType::MaterialLot, window.first.value()};
            acts::withdraw(edit, std::vector{lot}, "spilt");
        });
        CHECK_FALSE(window.use().isBegun());
    }
}

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

TEST_CASE("Times to cure are read as data sheets write them")
{
    CHECK(ui::cureTime(QStringLiteral("14 d")) == Minutes{14 * 24 * 60});
    CHECK(ui::cureTime(QStringLiteral("3 Tage")) == Minutes{3 * 24 * 60});
    CHECK(ui::cureTime(QStringLiteral("24 h")) == Minutes{24 * 60});
    CHECK(ui::cureTime(QStringLiteral("336")) == Minutes{336 * 60});
    CHECK(ui::cureTime(QStringLiteral("90 min")) == Minutes{90});
    CHECK_FALSE(ui::cureTime(QStringLiteral("9999 d")).has_value());
    CHECK_FALSE(ui::cureTime(QStringLiteral("-3 d")).has_value());
    CHECK_FALSE(ui::cureTime(QStringLiteral("later")).has_value());
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
    type(window.page, QStringLiteral("Calibrated on"), QStringLiteral("2026-03-10"));
    type(window.page, QStringLiteral("Due again on"), QStringLiteral("2026-03-01"));
    press(window.page, QStringLiteral("Keep the calibration"));
    CHECK(says(window.page, QStringLiteral("It cannot be due before it was calibrated.")));
    type(window.page, QStringLiteral("Due again on"), QStringLiteral("2027-03-10"));
    press(window.page, QStringLiteral("Keep the calibration"));
    const Tool &tool = *window.records()->find(wrench);
    REQUIRE(tool.calibrations.size() == 1);
    CHECK(tool.calibrations.front().due_on == Moment::parse("2027-03-10"));
    CHECK(window.cell(board, 0, 3) == QStringLiteral("361 days left"));
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
