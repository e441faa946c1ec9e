// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Spending.h"

#include "core/base/CaseFold.h"

#include <algorithm>
#include <map>

namespace lastrivet::stores {

namespace {

std::chrono::year_month monthOf(Moment moment)
{
    const std::chrono::year_month_day day{moment.day()};
    return day.year() / day.month();
}

std::vector<MonthSum> consecutive(const std::map<std::chrono::year_month, MoneySum> &found)
{
    std::vector<MonthSum> months;
    if (found.empty())
        return months;
    const auto last = found.rbegin()->first;
    for (auto month = found.begin()->first; month <= last; month += std::chrono::months{1}) {
        const auto known = found.find(month);
        months.push_back({month, known == found.end() ? MoneySum{} : known->second});
    }
    return months;
}

} // namespace

Spending spending(const Records &records, Moment asOf)
{
    Spending all;
    std::map<std::string, CategorySum> categories;
    std::map<std::chrono::year_month, MoneySum> months;
    for (const Expense &expense : records.expenses) {
        if (expense.withdrawn_on || !happened(expense.spent_on, asOf))
            continue;
        ++all.expenses;
        all.without_receipt += records.findLive(expense.media_id) ? 0 : 1;
        all.below_zero += expense.amount < 0 ? 1 : 0;
        all.total.add(expense.amount, expense.currency);
        months[monthOf(*expense.spent_on)].add(expense.amount, expense.currency);
        CategorySum &category = categories[folded(expense.category)];
        if (category.expenses++ == 0)
            category.category = expense.category;
        category.sum.add(expense.amount, expense.currency);
    }
    for (auto &[folded, category] : categories)
        all.categories.push_back(std::move(category));
    std::stable_partition(all.categories.begin(), all.categories.end(),
                          [](const CategorySum &sum) { return !sum.category.empty(); });
    all.months = consecutive(months);
    return all;
}

} // namespace lastrivet::stores
