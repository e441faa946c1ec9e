// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Table.h"

#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Pages.h"

#include <catch2/catch.hpp>

#include <QFile>

using namespace lastrivet;
using namespace lastrivet::tests;

namespace {

print::Table tableOf(int rows)
{
    print::Table table;
    table.columns = {{QStringLiteral("Part"), 3}, {QStringLiteral("Time"), 1, true}};
    for (int row = 1; row <= rows; ++row)
        table.rows.push_back({{{QStringLiteral("row %1.").arg(row)}, {QStringLiteral("1 h 00")}}});
    table.rows.push_back({{{QStringLiteral("Sum")}, {QStringLiteral("%1 h 00").arg(rows)}}});
    return table;
}

QStringList printed(const std::filesystem::path &place, const print::Table &table)
{
    QFile file(QString::fromStdString(place.string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    const print::Wording words;
    {
        print::Pages pages(file, print::Paper::A4, {}, words, {}, {});
        print::drawTable(pages, table);
    }
    file.close();
    return PrintedFolder::pageTexts(place);
}

} // namespace

TEST_CASE("A sum never stands alone on the last page of its table")
{
    const PrintedFolder folder;
    int overTwoPages = 0;
    for (int rows = 36; rows < 48; ++rows) {
        INFO(rows);
        const QStringList pages = printed(folder.path("table.pdf"), tableOf(rows));
        CHECK(pages.last().contains(QStringLiteral("Sum")));
        CHECK(pages.last().contains(QStringLiteral("row %1.").arg(rows)));
        overTwoPages += pages.size() == 2 ? 1 : 0;
    }
    CHECK(overTwoPages > 0);
    CHECK(overTwoPages < 12);
}
