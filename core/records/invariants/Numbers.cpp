// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace lastrivet::invariants {

namespace {

template <class Record>
void checkUnique(Review &review, const std::string Record::*number, bool withdrawnCount,
                 std::string_view pattern)
{
    if (!review.touches(Record::type))
        return;
    const auto counts = [=](const Record &record) {
        return !(record.*number).empty() && (withdrawnCount || !record.withdrawn_on);
    };
    // A number that no touched record has is nobody's trouble.
    const bool isWhole = review.ids(Record::type).empty();
    std::unordered_set<std::string_view> asked;
    if (!isWhole) {
        review.eachAny(Record::type, [&](const void *row) {
            const auto &record = *static_cast<const Record *>(row);
            if (counts(record))
                asked.insert(record.*number);
        });
    }
    if (!isWhole && asked.empty())
        return;
    std::unordered_map<std::string_view, const Record *> firsts;
    for (const Record &record : review.records().template of<Record>()) {
        if (!counts(record) || (!isWhole && !asked.contains(record.*number)))
            continue;
        const auto [first, isNew] = firsts.try_emplace(record.*number, &record);
        if (isNew)
            continue;
        const RecordRef later{Record::type, record.id.value()};
        const RecordRef earlier{Record::type, first->second->id.value()};
        if (review.covers(later) || review.covers(earlier))
            review.report(record, pattern, {record.*number, std::to_string(earlier.id)});
    }
}

} // namespace

void checkNumbers(Review &review)
{
    checkUnique(review, &Component::code, false,
                "{0} has the code {1}, which the part with id {2} already has.");
    constexpr std::string_view pattern =
        "{0} has the number {1}, which the one with id {2} already has.";
    checkUnique(review, &Squawk::number, true, pattern);
    checkUnique(review, &Deviation::number, true, pattern);
    checkUnique(review, &Bulletin::number, true, pattern);
}

} // namespace lastrivet::invariants
