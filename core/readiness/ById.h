// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/NearSearch.h"

#include <algorithm>
#include <span>
#include <utility>
#include <vector>

namespace lastrivet::readiness {

/// Records grouped by the id of another record; those of one id lie side by side in memory.
template <class Of, class Record> class ById {
public:
    void add(Id<Of> id, const Record *record) { m_unsorted.emplace_back(id.value(), record); }

    /// Sorts what was added, keeping its order under each id; to be called once, before the first
    /// question.
    void seal()
    {
        std::ranges::stable_sort(m_unsorted, {}, &std::pair<std::int64_t, const Record *>::first);
        m_ids.reserve(m_unsorted.size());
        m_records.reserve(m_unsorted.size());
        for (const auto &[id, record] : m_unsorted) {
            m_ids.push_back(id);
            m_records.push_back(record);
        }
        m_unsorted.clear();
    }

    std::span<const Record *const> of(Id<Of> id) const
    {
        const auto found =
            firstNotBelow(m_ids.size(), id.value(), [this](std::size_t i) { return m_ids[i]; });
        std::size_t end = found;
        while (end < m_ids.size() && m_ids[end] == id.value())
            ++end;
        return std::span(m_records).subspan(found, end - found);
    }

private:
    std::vector<std::pair<std::int64_t, const Record *>> m_unsorted;
    std::vector<std::int64_t> m_ids;
    std::vector<const Record *> m_records;
};

} // namespace lastrivet::readiness
