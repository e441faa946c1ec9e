// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/exchange/csv/CsvDays.h"
#include "core/records/Component.h"

#include <QString>

#include <optional>

namespace lastrivet::ui {

/// How a pasted list is read before anything becomes of it.
struct ListInput {
    RecordType type = RecordType::Component;
    bool hasHeadings = true;
    exchange::DayOrder days = exchange::DayOrder::YearMonthDay;
    /// The part of rows that name none; none leaves them without.
    Id<Component> within;
    /// The shipment of packing lines that name none.
    std::string shipment{};
    /// The currency of prices that name none.
    std::string currency{};
    Moment today;
};

/// The text of a file: UTF-8, UTF-16 with its mark, or else the code page of western Europe; or
/// where it is no text in any of them.
Result<QString, exchange::InputErrors> listText(const QByteArray &bytes);
/// The table of the text; a list without headings gets "Column 1", "Column 2" …
Result<exchange::CsvTable, exchange::InputErrors> readList(const QString &text,
                                                           const ListInput &input);
/// True when the first row names at least one field.
bool looksLikeHeadings(const QString &text, RecordType type);

/// A table that can be taken in, with the columns of it.
struct ReadyList {
    exchange::CsvTable table;
    exchange::CsvColumns columns;
    /// In which currency prices without one are taken, where others have another.
    std::optional<Message> told;
};
/// Days in ISO, prices in minor units, and columns for the part and the shipment of rows that name
/// none.
ReadyList readyList(exchange::CsvTable table, exchange::CsvColumns columns, const ListInput &input);

} // namespace lastrivet::ui
