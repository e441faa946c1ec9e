// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LaidRow.h"

#include <catch2/catch.hpp>

using namespace lastrivet::print;

namespace {

constexpr double width = points(270);

Table tableWith(const QString &kind, const QString &text, const QString &locking)
{
    Table table;
    table.columns = {{QStringLiteral("Art"), 1},
                     {QStringLiteral("Arbeit"), 4},
                     {QStringLiteral("Sicherung"), 1}};
    table.rows.push_back({{{kind}, {text}, {locking}}});
    return table;
}

int linesIn(const Table &table, std::size_t column)
{
    const auto columns = shownColumns(table, 0, width);
    return TextBlock(table.rows[0].cells[column].text, table.size, columns[column].width)
        .lineCount();
}

} // namespace

TEST_CASE("A narrow column is as wide as the longest word in it")
{
    const Table table =
        tableWith(QStringLiteral("Zusammenbau"), QStringLiteral("am Holm und an den Rippen"),
                  QStringLiteral("selbstsichernde Mutter"));
    CHECK(linesIn(table, 0) == 1);
    CHECK(linesIn(table, 2) == 2);
    const auto columns = shownColumns(table, 0, width);
    CHECK(columns.back().left + columns.back().width == Approx(width));
}

TEST_CASE("A name in a tree is indented in all of its lines")
{
    Table table;
    table.columns = {{QStringLiteral("Part"), 1}};
    const QString deep = inTree(QStringLiteral("Rib ").repeated(60), 12);
    table.rows.push_back({{{deep}}});
    const auto columns = shownColumns(table, 0, width);
    const LaidRow row(table, table.rows[0], columns, QRectF(0, 0, width, points(500)));
    CHECK(row.lineCount() > TextBlock(deep, table.size, columns[0].width).lineCount());
}

TEST_CASE("No column is made wide for a name of a file")
{
    const auto wide = shownColumns(tableWith(QStringLiteral("Bau"), QStringLiteral("am Holm"),
                                             QStringLiteral("IMG_20260314_152000_0001.jpeg")),
                                   0, width);
    const auto plain = shownColumns(
        tableWith(QStringLiteral("Bau"), QStringLiteral("am Holm"), QStringLiteral("keine")), 0,
        width);
    CHECK(wide.back().width == Approx(plain.back().width));
}

TEST_CASE("Two narrow columns beside a wide one both get room for their longest words")
{
    Table table;
    table.columns = {{QStringLiteral("Stelle"), 2},
                     {QStringLiteral("Moment"), 1},
                     {QStringLiteral("Sicherung"), 1}};
    table.rows.push_back({{{QStringLiteral("am Holm und an den Rippen")},
                           {QStringLiteral("Zeigerschlüssel")},
                           {QStringLiteral("Sicherungsblech")}}});
    constexpr double narrow = points(190);
    const auto columns = shownColumns(table, 0, narrow);
    for (const std::size_t column : {std::size_t{1}, std::size_t{2}}) {
        INFO(column);
        CHECK(TextBlock(table.rows[0].cells[column].text, table.size, columns[column].width)
                  .lineCount() == 1);
    }
}
