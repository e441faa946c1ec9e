// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/History.h"

#include "core/base/Words.h"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>
#include <unordered_set>

namespace lastrivet::merge {

namespace {

using storage::JournalRow;

std::int64_t oldestStamp(std::span<const JournalRow> rows)
{
    auto oldest = std::numeric_limits<std::int64_t>::max();
    for (const auto &row : rows) {
        if (isPrimary(row))
            oldest = std::min(oldest, row.stamp);
    }
    return oldest;
}

bool isCarried(const JournalRow &row)
{
    return row.kind == word(ChangeKind::Carried);
}

void sortByTime(std::vector<const JournalRow *> &rows)
{
    std::sort(rows.begin(), rows.end(), [](const JournalRow *a, const JournalRow *b) {
        return std::tie(a->stamp, a->change_id) < std::tie(b->stamp, b->change_id);
    });
}

} // namespace

bool isPrimary(const JournalRow &row)
{
    return row.kind != word(ChangeKind::Merge);
}

std::size_t commonRows(const History &mine, const History &other)
{
    const auto differ =
        std::mismatch(mine.begin(), mine.end(), other.begin(), other.end(),
                      [](const auto &a, const auto &b) { return a.hash == b.hash; });
    auto common = std::size_t(differ.first - mine.begin());
    auto oldest = std::min(oldestStamp(std::span(mine).subspan(common)),
                           oldestStamp(std::span(other).subspan(common)));
    // Carried rows have no effect before the merge that they belong to.
    while (common > 0 && (isCarried(mine[common - 1]) || mine[common - 1].stamp >= oldest)) {
        --common;
        if (isPrimary(mine[common]))
            oldest = std::min(oldest, mine[common].stamp);
    }
    return common;
}

std::size_t rowsToKeep(std::size_t common, const History &mine, const History &other)
{
    for (const auto *history : {&mine, &other}) {
        const auto beyond = std::span(*history).subspan(common);
        if (std::any_of(beyond.begin(), beyond.end(), isCarried))
            return std::min<std::size_t>(common, 1);
    }
    return common;
}

std::vector<const JournalRow *> unionBeyond(std::size_t common, const History &mine,
                                            const History &other)
{
    std::map<std::string_view, const JournalRow *> byId;
    for (const auto *history : {&mine, &other}) {
        for (const auto &row : std::span(*history).subspan(common)) {
            if (!isPrimary(row))
                continue;
            const auto [known, isNew] = byId.try_emplace(row.change_id, &row);
            // The same step of the schema, taken in both copies at different times.
            if (!isNew && row.stamp < known->second->stamp)
                known->second = &row;
        }
    }
    std::vector<const JournalRow *> rows;
    for (const auto &[id, row] : byId)
        rows.push_back(row);
    sortByTime(rows);
    return rows;
}

std::vector<const JournalRow *> newTo(const History &mine, const History &other)
{
    std::unordered_set<std::string_view> known;
    for (const auto &row : mine)
        known.insert(row.change_id);
    std::vector<const JournalRow *> rows;
    for (const auto &row : other) {
        if (isPrimary(row) && !known.contains(row.change_id))
            rows.push_back(&row);
    }
    sortByTime(rows);
    return rows;
}

} // namespace lastrivet::merge
