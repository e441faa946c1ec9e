// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/KnownRows.h"

#include "core/exchange/ImportPlan.h"
#include "core/records/Description.h"

#include <algorithm>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <variant>

namespace lastrivet::exchange {

namespace {

/// What equal records have in common and others seldom: their texts and moments.
std::string keyOf(const RecordDescription &description, const void *record)
{
    std::string key;
    for (const Field &field : description.fields) {
        if (!field.value)
            continue;
        const Scalar value = field.value(record);
        if (field.type == FieldType::Text && std::holds_alternative<std::string_view>(value))
            key += std::get<std::string_view>(value);
        else if (field.type == FieldType::Moment && std::holds_alternative<Moment>(value))
            key += std::get<Moment>(value).text();
        key += '\n';
    }
    return key;
}

/// The record as it would be under another id.
std::shared_ptr<void> under(const RecordDescription &description, const void *record,
                            std::int64_t id, const Records &existing)
{
    auto copy = description.copy(record);
    if (description.type == RecordType::WorkSession)
        settle(*static_cast<WorkSession *>(copy.get()), existing);
    description.find("id")->assign(copy.get(), Scalar{id});
    return copy;
}

class OnRecord {
public:
    OnRecord(const Records &existing, const RecordDescription &description,
             const std::set<std::int64_t> &named)
        : m_existing(existing)
        , m_description(description)
    {
        const AnyTable &table = existing.table(description.type);
        for (const void *row = table.nextAny(0); row; row = table.nextAny(idOf(description, row))) {
            const std::int64_t id = idOf(description, row);
            if (!isWithdrawn(description, row) && !named.contains(id))
                m_ids[keyOf(description, row)].push_back(id);
        }
    }

    /// The id of an equal record that no row found before; 0 when there is none.
    std::int64_t take(const void *row)
    {
        const auto found = m_ids.find(keyOf(m_description, row));
        if (found == m_ids.end())
            return 0;
        auto &ids = found->second;
        const auto equal = std::find_if(ids.begin(), ids.end(), [&](std::int64_t id) {
            return m_description.equal(under(m_description, row, id, m_existing).get(),
                                       m_existing.find(m_description.type, id));
        });
        if (equal == ids.end())
            return 0;
        const std::int64_t id = *equal;
        ids.erase(equal);
        return id;
    }

private:
    const Records &m_existing;
    const RecordDescription &m_description;
    std::unordered_map<std::string, std::vector<std::int64_t>> m_ids;
};

} // namespace

std::map<std::int64_t, std::int64_t> knownRows(const Records &list, RecordType type,
                                               const std::vector<std::int64_t> &unnamed,
                                               const std::set<std::int64_t> &named,
                                               const Records &existing)
{
    std::map<std::int64_t, std::int64_t> known;
    if (unnamed.empty())
        return known;
    OnRecord onRecord(existing, describe(type), named);
    for (const std::int64_t id : unnamed) {
        const void *row = list.find(type, id);
        const std::int64_t there = row ? onRecord.take(row) : 0;
        if (there != 0)
            known.emplace(id, there);
    }
    return known;
}

} // namespace lastrivet::exchange
