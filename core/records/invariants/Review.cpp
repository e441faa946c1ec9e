// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Review.h"

#include "core/base/Tongue.h"

#include <algorithm>
#include <tuple>

namespace lastrivet::invariants {

Review::Review(const Records &records, const Profile &profile)
    : m_records(records)
    , m_profile(profile)
    , m_isWhole(true)
{
}

Review::Review(const Records &records, const Profile &profile, std::span<const RecordRef> touched)
    : m_records(records)
    , m_profile(profile)
    , m_isWhole(false)
{
    for (const RecordRef &record : touched)
        m_ids[std::size_t(record.type)].push_back(record.id);
    for (auto &ids : m_ids) {
        std::sort(ids.begin(), ids.end());
        ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    }
}

Review::Review(const Records &records, const Profile &profile, std::span<const RecordRef> touched,
               const Records &before)
    : Review(records, profile, touched)
{
    m_before = &before;
}

bool Review::covers(RecordRef record) const
{
    return m_isWhole ||
           std::binary_search(ids(record.type).begin(), ids(record.type).end(), record.id);
}

std::vector<RecordRef> Review::gone() const
{
    std::vector<RecordRef> all;
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto type = RecordType(i);
        for (const std::int64_t id : m_ids[i]) {
            const void *record = m_records.find(type, id);
            if (!record || isWithdrawn(describe(type), record))
                all.push_back({type, id});
        }
    }
    return all;
}

void Review::report(RecordRef record, std::string_view pattern, std::vector<std::string> arguments)
{
    arguments.insert(arguments.begin(), nestedFirst(designated(m_records, record)));
    m_violations.push_back({record, Message{pattern, std::move(arguments)}});
}

std::string Review::nameOf(RecordRef record) const
{
    return nested(designated(m_records, record));
}

std::vector<Violation> Review::take()
{
    const auto key = [](const Violation &v) {
        return std::tie(v.record, v.message.pattern, v.message.arguments);
    };
    std::stable_sort(m_violations.begin(), m_violations.end(),
                     [&](const Violation &a, const Violation &b) { return key(a) < key(b); });
    m_violations.erase(std::unique(m_violations.begin(), m_violations.end()), m_violations.end());
    return std::move(m_violations);
}

} // namespace lastrivet::invariants
