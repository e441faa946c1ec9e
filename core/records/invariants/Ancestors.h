// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <algorithm>
#include <unordered_map>
#include <vector>

namespace lastrivet::invariants {

/// Calls `body` with a part and everything above it, until `body` answers true or the tree ends;
/// answers whether it did. A tree with a cycle ends after as many parts as there are.
template <class Body> bool anyUpwards(const Records &records, Id<Component> from, Body &&body)
{
    std::size_t left = records.components.size();
    for (const Component *part = records.find(from); part && left > 0; --left) {
        if (body(*part))
            return true;
        part = records.find(part->parent_id);
    }
    return false;
}

/// True when the part lies in what the closing encloses; everything does for the whole aircraft.
inline bool isInReach(const Records &records, Id<Component> part, const Closing &closing)
{
    if (closing.scope == ClosingScope::Aircraft)
        return true;
    return anyUpwards(records, part, [&](const Component &above) {
        return std::binary_search(closing.encloses.begin(), closing.encloses.end(), above.id);
    });
}

/// The same of many parts: each is looked at once, however deep they nest.
class Reach {
public:
    /// Both outlive it.
    Reach(const Records &records, const Closing &closing)
        : m_records(records)
        , m_closing(closing)
    {
    }

    bool holds(Id<Component> part)
    {
        if (m_closing.scope == ClosingScope::Aircraft)
            return true;
        bool isInside = false;
        std::vector<Id<Component>> path;
        for (const Component *at = m_records.find(part); at; at = m_records.find(at->parent_id)) {
            // Around a circle it comes back to what counts as outside until it is known.
            const auto [known, isNew] = m_known.try_emplace(at->id, false);
            if (!isNew) {
                isInside = known->second;
                break;
            }
            path.push_back(at->id);
            isInside =
                std::binary_search(m_closing.encloses.begin(), m_closing.encloses.end(), at->id);
            if (isInside)
                break;
        }
        for (const Id<Component> id : path)
            m_known[id] = isInside;
        return isInside;
    }

private:
    const Records &m_records;
    const Closing &m_closing;
    std::unordered_map<Id<Component>, bool> m_known;
};

} // namespace lastrivet::invariants
