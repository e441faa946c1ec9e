// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/MaterialBoard.h"

#include "core/project/acts/Withdrawal.h"
#include "tests/ui/support/StoresWindow.h"
#include "ui/stores/UseForm.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTest>
#include <QTreeView>

#include <string>
#include <vector>

namespace lastrivet::test {

namespace {

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

} // namespace

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
    type(board.use(), QStringLiteral("Temperature, °C"), QStringLiteral("18-21 °C"));
    type(board.use(), QStringLiteral("Humidity, %"), QStringLiteral("55 %"));
    press(board.use(), QStringLiteral("Keep the use"));
    REQUIRE(window.records()->material_uses.size() == 1);
    const MaterialUse &use = *window.records()->material_uses.begin();
    CHECK(use.component_id == window.workshop.bay);
    CHECK(use.cure_minutes == Minutes{14 * 24 * 60});
    CHECK(use.temperature_max == 21.0);
    CHECK(use.humidity == 55.0);
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

TEST_CASE("Times to cure are read as data sheets write them")
{
    CHECK(ui::cureTime(QStringLiteral("14 d")) == Minutes{14 * 24 * 60});
    CHECK(ui::cureTime(QStringLiteral("3 Tage")) == Minutes{3 * 24 * 60});
    CHECK(ui::cureTime(QStringLiteral("1 j 12 h")) == Minutes{36 * 60});
    CHECK(ui::cureTime(QStringLiteral("1 d 6 h")) == Minutes{30 * 60});
    CHECK(ui::cureTime(QStringLiteral("2 Tage 8 Stunden")) == Minutes{56 * 60});
    CHECK_FALSE(ui::cureTime(QStringLiteral("1 j 12")));
    CHECK(ui::cureTime(QStringLiteral("24 h")) == Minutes{24 * 60});
    CHECK(ui::cureTime(QStringLiteral("336")) == Minutes{336 * 60});
    CHECK(ui::cureTime(QStringLiteral("90 min")) == Minutes{90});
    CHECK_FALSE(ui::cureTime(QStringLiteral("9999 d")).has_value());
    CHECK_FALSE(ui::cureTime(QStringLiteral("-3 d")).has_value());
    CHECK_FALSE(ui::cureTime(QStringLiteral("later")).has_value());
}

TEST_CASE("A new lot is in sight in its list, which makes room for its fields")
{
    StoresWindow window;
    window.session->change(QStringLiteral("Lots"), [](Edit &edit) {
        for (int i = 0; i < 40; ++i) {
            MaterialLot lot;
            lot.name = "Lot " + std::to_string(100 + i);
            edit.put(lot);
        }
    });
    window.page.showBoard(RecordType::MaterialLot);
    auto &board = window.page.materials();
    const QString prompt = QStringLiteral("New lot: the material");
    type(board, prompt, QStringLiteral("Zinc primer"));
    QTest::keyClick(&field(board, prompt), Qt::Key_Return);
    const QTreeView &list = window.list(board);
    CHECK(QTest::qWaitFor([&] {
        const QRect row = list.visualRect(list.currentIndex());
        return !row.isEmpty() && list.viewport()->rect().contains(row.center());
    }));
    CHECK(list.currentIndex().siblingAtColumn(0).data().toString() ==
          QStringLiteral("Zinc primer"));
}

} // namespace lastrivet::test
