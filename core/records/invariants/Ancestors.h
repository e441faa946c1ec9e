// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

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

} // namespace lastrivet::invariants
