// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/stores/MoneySum.h"

#include <chrono>
#include <string>
#include <vector>

namespace lastrivet::stores {

/// What was spent on one kind of thing.
struct CategorySum {
    /// As it was written first; empty for expenses of no category.
    std::string category;
    MoneySum sum;
    std::int64_t expenses = 0;
};

/// What was spent in one month.
struct MonthSum {
    std::chrono::year_month month;
    MoneySum sum;
};

/// All expenses that were made by a day; currencies are never added to each other.
struct Spending {
    MoneySum total;
    /// By name; upper and lower case are one category. Without a category last.
    std::vector<CategorySum> categories;
    /// Every month from the first expense to the last, those without any among them.
    std::vector<MonthSum> months;
    std::int64_t expenses = 0;
    std::int64_t without_receipt = 0;
    /// Amounts that an import brought in below zero; they are in the sums as they stand.
    std::int64_t below_zero = 0;
};

Spending spending(const Records &records, Moment asOf);

} // namespace lastrivet::stores
