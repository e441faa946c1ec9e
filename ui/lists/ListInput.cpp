// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListInput.h"

#include "core/exchange/csv/CsvHours.h"
#include "core/exchange/csv/CsvPrices.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QStringConverter>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

namespace {

/// Code page 1252, in which spreadsheets of older systems write: Latin-1, with other signs from
/// 0x80 to 0x9F; 0 where it has none.
QString westernText(const QByteArray &bytes)
{
    constexpr std::array<char16_t, 32> signs{
        0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
        0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
        0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};
    QString text = QString::fromLatin1(bytes);
    for (QChar &letter : text) {
        const int place = int(letter.unicode()) - 0x80;
        if (place >= 0 && place < int(signs.size()) && signs[std::size_t(place)] != 0)
            letter = QChar(signs[std::size_t(place)]);
    }
    return text;
}

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

QString listText(const QByteArray &bytes)
{
    QStringDecoder unicode(
        QStringConverter::encodingForData(bytes).value_or(QStringConverter::Utf8));
    QString text = unicode(bytes);
    if (unicode.hasError())
        text = westernText(bytes);
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
    exchange::rewriteDays(table, input.type, columns, input.days);
    exchange::rewriteHours(table, columns);
    exchange::rewritePrices(table, columns, input.currency);
    if (input.within)
        fillIn(table, columns, partField(input.type), std::to_string(input.within.value()));
    if (input.type == RecordType::PartLine && !input.shipment.empty())
        fillIn(table, columns, "shipment", input.shipment);
    return {std::move(table), std::move(columns)};
}

} // namespace lastrivet::ui
