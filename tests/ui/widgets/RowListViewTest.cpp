// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowListView.h"

#include "tests/ui/support/Workshop.h"

#include <QTest>

#include <catch2/catch.hpp>

#include <cstdint>
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

} // namespace lastrivet::ui
