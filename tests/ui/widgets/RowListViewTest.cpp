// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowListView.h"

#include "tests/ui/support/Workshop.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>
#include <QWidget>

#include <catch2/catch.hpp>

#include <cstdint>
#include <utility>
#include <vector>

namespace lastrivet::ui {

TEST_CASE("A row is opened by a click that began on it")
{
    RowListView list(test::theme(), QStringLiteral("Rows"));
    list.setRows({{{RecordType::Step, 1}, QStringLiteral("Drill")},
                  {{RecordType::Step, 2}, QStringLiteral("Rivet")}});
    test::picture(list, 300, 200, "row-list");
    std::vector<std::int64_t> opened;
    QObject::connect(&list, &RowListView::chosen, &list,
                     [&](RecordRef record) { opened.push_back(record.id); });
    const auto at = [&](int row) { return list.visualRect(list.model()->index(row, 0)).center(); };
    QTest::mousePress(list.viewport(), Qt::LeftButton, {}, at(0));
    QTest::mouseRelease(list.viewport(), Qt::LeftButton, {}, at(1));
    CHECK(opened.empty());
    QTest::mouseRelease(list.viewport(), Qt::LeftButton, {}, at(0));
    CHECK(opened.empty());
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, at(1));
    CHECK(opened == std::vector<std::int64_t>{2});
}

TEST_CASE("A list that the keyboard comes back to has the row chosen that it was left at")
{
    QWidget place;
    auto *list = new RowListView(test::theme(), QStringLiteral("Rows"), &place);
    auto *line = new QLineEdit(&place);
    const auto show = [&](const std::vector<std::int64_t> &ids) {
        std::vector<ListRow> rows;
        for (const auto id : ids)
            rows.push_back({{RecordType::Step, id}, QStringLiteral("Step %1").arg(id)});
        list->setRows(std::move(rows));
    };
    const auto backAt = [&] {
        line->setFocus();
        CHECK_FALSE(list->currentIndex().isValid());
        list->setFocus();
        return list->currentIndex().isValid()
                   ? list->rows().row(list->currentIndex().row()).record.id
                   : 0;
    };
    show({1, 2, 3});
    place.show();
    REQUIRE(QTest::qWaitForWindowExposed(&place));
    QApplication::setActiveWindow(&place);
    list->setFocus();
    CHECK(list->currentIndex().row() == 0);
    list->setCurrentIndex(list->rows().index(2));
    CHECK(backAt() == 3);
    line->setFocus();
    show({4, 1, 3});
    list->setFocus();
    CHECK(list->currentIndex().row() == 2);
    CHECK(backAt() == 3);
    line->setFocus();
    show({4, 1});
    list->setFocus();
    CHECK(backAt() == 4);
}

} // namespace lastrivet::ui
