// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListInput.h"

#include "ui/convert/QtText.h"

#include <QCoreApplication>

#include <algorithm>

namespace lastrivet::ui {

namespace {

std::string_view partField(RecordType type)
{
    return type == RecordType::Component ? "parent_id" : "component_id";
}

} // namespace

Result<exchange::CsvTable, exchange::InputErrors> readList(const QString &text,
                                                           const ListInput &input)
{
    auto table = exchange::readCsv(text.toStdString());
    if (!table || input.hasHeadings)
        return table;
    exchange::CsvTable whole = *table;
    whole.rows.insert(whole.rows.begin(), whole.header);
    for (std::size_t i = 0; i < whole.header.size(); ++i)
        whole.header[i] =
            toStd(QCoreApplication::translate("ListInput", "Column %1").arg(i + 1));
    return whole;
}

bool looksLikeHeadings(const QString &text, RecordType type)
{
    const auto table = exchange::readCsv(text.toStdString());
    if (!table)
        return true;
    const auto columns = exchange::columnsByHeader(*table, type);
    return std::ranges::any_of(columns,
                               [](const std::string &field) { return !field.empty(); });
}

ReadyList readyList(exchange::CsvTable table, exchange::CsvColumns columns, const ListInput &input)
{
    exchange::rewriteDays(table, input.type, columns, input.days);
    const std::string field(partField(input.type));
    if (!input.within)
        return {std::move(table), std::move(columns)};
    auto place = std::size_t(std::ranges::find(columns, field) - columns.begin());
    if (place == columns.size()) {
        columns.push_back(field);
        table.header.push_back(field);
        for (auto &row : table.rows)
            row.emplace_back();
    }
    for (auto &row : table.rows) {
        const bool isBlank =
            std::ranges::all_of(row, [](const std::string &cell) { return cell.empty(); });
        if (row[place].empty() && !isBlank)
            row[place] = std::to_string(input.within.value());
    }
    return {std::move(table), std::move(columns)};
}

} // namespace lastrivet::ui
