// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListInput.h"

#include "core/base/Utf8.h"
#include "core/exchange/csv/CsvHours.h"
#include "core/exchange/csv/CsvPrices.h"
#include "core/exchange/csv/ListText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>

#include <algorithm>
#include <string>

namespace lastrivet::ui {

namespace {

std::string_view partField(RecordType type)
{
    return type == RecordType::Component ? "parent_id" : "component_id";
}

/// Writes a value into a field's column where rows leave it empty; adds the column when it is
/// missing.
void fillIn(exchange::CsvTable &table, exchange::CsvColumns &columns, std::string_view field,
            const std::string &value)
{
    const auto place = std::size_t(std::ranges::find(columns, field) - columns.begin());
    if (place == columns.size()) {
        columns.emplace_back(field);
        table.header.emplace_back(field);
        for (auto &row : table.rows)
            row.emplace_back();
    }
    for (auto &row : table.rows) {
        const bool isBlank =
            std::ranges::all_of(row, [](const std::string &cell) { return cell.empty(); });
        if (row[place].empty() && !isBlank)
            row[place] = value;
    }
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
        whole.header[i] = toStd(QCoreApplication::translate("ListInput", "Column %1").arg(i + 1));
    return whole;
}

Result<QString, exchange::InputErrors> listText(const QByteArray &bytes)
{
    const std::string read = exchange::listText(bytes.toStdString());
    if (firstNotUtf8(read))
        return exchange::readCsv(read).reason();
    QString text = QString::fromStdString(read);
    if (text.startsWith(QChar(QChar::ByteOrderMark)))
        text.remove(0, 1);
    return text;
}

bool looksLikeHeadings(const QString &text, RecordType type)
{
    const auto table = exchange::readCsv(text.toStdString());
    if (!table)
        return true;
    const auto columns = exchange::columnsByHeader(*table, type);
    return std::ranges::any_of(columns, [](const std::string &field) { return !field.empty(); });
}

ReadyList readyList(exchange::CsvTable table, exchange::CsvColumns columns, const ListInput &input)
{
    exchange::rewriteDays(table, input.type, columns, input.days, input.today);
    exchange::rewriteHours(table, columns);
    auto told = exchange::rewritePrices(table, columns, input.currency, decimalSign());
    if (input.within)
        fillIn(table, columns, partField(input.type), std::to_string(input.within.value()));
    if (input.type == RecordType::PartLine && !input.shipment.empty())
        fillIn(table, columns, "shipment", input.shipment);
    return {std::move(table), std::move(columns), std::move(told)};
}

} // namespace lastrivet::ui
