// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvDays.h"
#include "core/exchange/csv/CsvImport.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/WingProject.h"

namespace lastrivet::fuzz {

/// The first two bytes choose what the rows are and how they write their days.
void csv(Input input)
{
    static const test::WingProject wing;
    if (input.size() < 2)
        return;
    const auto types = exchange::csvRecordTypes();
    const auto type = types[input[0] % types.size()];
    auto table = exchange::readCsv(textOf(input.subspan(2)));
    if (!table) {
        promised(!table.reason().empty());
        return;
    }
    const auto columns = exchange::columnsByHeader(*table, type);
    static_cast<void>(exchange::orderShown(*table, type, columns));
    exchange::rewriteDays(*table, type, columns, exchange::DayOrder(input[1] % 3),
                          *Moment::parse("2026-03-14"));
    std::int64_t newest = 1'000'000;
    const auto plan = exchange::planCsv(*table, type, columns, wing.records, wing.profile,
                                        [&newest] { return ++newest; });
    promised(plan.rows.size() == table->rows.size());
}

} // namespace lastrivet::fuzz
