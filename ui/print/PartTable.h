// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Pages.h"
#include "ui/print/Table.h"

#include <string>
#include <vector>

namespace lastrivet::print {

/// Rows of one part below a row that names it.
template <class Entry, class RowOf>
void addByPart(Table &table, const std::vector<Entry> &entries, RowOf rowOf)
{
    const std::string *part = nullptr;
    for (const Entry &entry : entries) {
        if (!part || *part != entry.part)
            table.rows.push_back({{{asIs(entry.part)}}, Table::Bar::None, true});
        part = &entry.part;
        table.rows.push_back(rowOf(entry));
    }
}

/// A section of one table, or the sentence that says it has no rows.
void drawSection(Pages &pages, const QString &title, const Table &table, const QString &ifEmpty);

} // namespace lastrivet::print
