// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PartTable.h"

#include <algorithm>

namespace lastrivet::print {

void drawSection(Pages &pages, const QString &title, const Table &table, const QString &ifEmpty)
{
    pages.heading(0, title, std::max(leastHeightOf(table, pages.body().width()), points(30)));
    if (table.rows.empty())
        pages.text(ifEmpty);
    drawTable(pages, table);
}

} // namespace lastrivet::print
