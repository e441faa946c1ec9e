// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/DeliveryBoard.h"

#include "tests/ui/support/StoresWindow.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ListDialog.h"
#include "ui/stores/ClaimView.h"
#include "ui/widgets/UnkeptHold.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QItemSelectionModel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>

#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::test {

namespace {

enum LineColumn { Name, PartNumber, Listed, Came, Damaged, Stands };

} // namespace

TEST_CASE("Without a packing list nothing is said to be here")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::StoresPage page(*session);
    page.resize(1180, 680);
    page.show();
    CHECK(says(page, QStringLiteral("No packing list is on record yet.")));
    CHECK_FALSE(says(page, QStringLiteral("Everything on the lists is here.")));
    session->change(QStringLiteral("Listed"), [](Edit &edit) {
        PartLine listed;
        listed.shipment = "Crate 1";
        listed.name = "Fin";
        listed.quantity = listed.received_quantity = 1;
        listed.received_on = Moment::parse("2026-01-01");
        edit.put(listed);
    });
    CHECK(says(page, QStringLiteral("Everything on the lists is here.")));
}

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

TEST_CASE("A number of what came counts the line, in the fields below the list as in the list")
{
    StoresWindow window;
    window.page.showRecord({RecordType::PartLine, window.ribs.value()});
    const auto write = [&](const QString &name, const QString &text) {
        type(window.page, name, text);
        QTest::keyClick(&field(window.page, name), Qt::Key_Return);
    };
    write(QStringLiteral("Received quantity"), QStringLiteral("3"));
    const PartLine ribs = *window.records()->find(window.ribs);
    CHECK(ribs.received_quantity == 3);
    CHECK(ribs.received_on == window.session->today());
    window.page.showRecord({RecordType::PartLine, window.bolts.value()});
    write(QStringLiteral("Damaged quantity"), QStringLiteral("2"));
    const PartLine bolts = *window.records()->find(window.bolts);
    CHECK(bolts.received_quantity == 80);
    CHECK(bolts.damaged_quantity == 2);
    CHECK(bolts.received_on == window.session->today());
    write(QStringLiteral("Damaged quantity"), QStringLiteral("81"));
    CHECK(window.complaint == QStringLiteral("81 cannot be damaged when 80 came."));
    CHECK(window.records()->find(window.bolts)->damaged_quantity == 2);
}

TEST_CASE("A number that could not be saved is there for whoever edits its cell again")
{
    StoresWindow window;
    auto &board = window.page.deliveries();
    window.page.showRecord({RecordType::PartLine, window.ribs.value()});
    auto &model = *window.list(board).model();
    const QModelIndex came = model.index(0, Came);
    const auto place = window.workshop.folder();
    auto elsewhere = place;
    elsewhere += ".unplugged";
    std::filesystem::rename(place, elsewhere);
    CHECK_FALSE(model.setData(came, QStringLiteral("3")));
    CHECK(window.complaint.contains(QStringLiteral("no longer at")));
    CHECK(came.data(Qt::EditRole).toString() == QStringLiteral("3"));
    CHECK(window.cell(board, 0, Came).isEmpty());
    // The window does not close over it without a word.
    auto *hold = board.findChild<ui::UnkeptHold *>();
    REQUIRE(hold);
    CHECK(hold->isBegun());
    std::filesystem::rename(elsewhere, place);
    CHECK(model.setData(came, came.data(Qt::EditRole)));
    CHECK_FALSE(hold->isBegun());
    CHECK(window.cell(board, 0, Came) == QStringLiteral("3"));
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

TEST_CASE("A shipment that is opened stays so when its name goes and an undo brings it back")
{
    StoresWindow window;
    auto &board = window.page.deliveries();
    const auto rename = [&](const std::string &from, const std::string &to) {
        REQUIRE(window.session->change(QStringLiteral("Another name"), [&](Edit &edit) {
            std::vector<Id<PartLine>> lines;
            for (const PartLine &line : edit.records().part_lines) {
                if (line.shipment == from)
                    lines.push_back(line.id);
            }
            for (const Id<PartLine> id : lines)
                edit.update(id, [&](PartLine &line) { line.shipment = to; });
        }));
    };
    const auto rows = [&] { return window.list(board).model()->rowCount(); };
    SECTION("its list is shown again")
    {
        board.chooseShipment(QStringLiteral("Crate 1"));
        REQUIRE(rows() == 1);
        rename("Crate 1", "Crate 7");
        CHECK(rows() == 3);
        window.session->undo();
        CHECK(rows() == 1);
        CHECK(choice(board, QStringLiteral("Shipment")).currentData().toString() ==
              QStringLiteral("Crate 1"));
    }
    SECTION("the letter about it stays open")
    {
        board.chooseShipment(QStringLiteral("Crate 2"));
        press(window.page, QStringLiteral("Claim letter"));
        auto *text = board.claim().findChild<QPlainTextEdit *>();
        REQUIRE(text);
        QTest::keyClicks(text, QStringLiteral("Dear Kim, "));
        const QString written = board.claim().text();
        rename("Crate 2", "Crate 7");
        CHECK(board.claim().isVisible());
        window.session->undo();
        CHECK(board.claim().isVisible());
        CHECK(board.claim().text() == written);
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
    press(window.page, QStringLiteral("Shipment as an expense"));
    CHECK(window.complaint ==
          QStringLiteral("Crate 2 is among the expenses already, with the same amount."));
    CHECK(window.records()->expenses.size() == 1);
    window.session->change(QStringLiteral("Price"), [&](Edit &edit) {
        edit.update(window.bolts, [](PartLine &line) { line.unit_price.reset(); });
    });
    press(window.page, QStringLiteral("Shipment as an expense"));
    CHECK(window.complaint == QStringLiteral("Bolts has no price on record."));
    CHECK(window.records()->expenses.size() == 1);
}

TEST_CASE("A shipment with a long name widens no page")
{
    StoresWindow window;
    QComboBox &shipments = choice(window.page, QStringLiteral("Shipment"));
    const int width = shipments.sizeHint().width();
    REQUIRE(window.session->change(QStringLiteral("Crate"), [](Edit &edit) {
        PartLine line;
        line.shipment = std::string(200, 'W');
        line.name = "Tips";
        line.quantity = 2;
        edit.put(line);
    }));
    REQUIRE(shipments.findData(QString(200, QLatin1Char('W'))) > 0);
    CHECK(shipments.sizeHint().width() == width);
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

} // namespace lastrivet::test
