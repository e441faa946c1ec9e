// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PartActs.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace lastrivet::acts {

namespace {

/// Gives the parts positions 1, 2, 3 …; touches only those that stand elsewhere.
void number(Edit &edit, const std::vector<Id<Component>> &parts)
{
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto position = std::int64_t(i) + 1;
        if (edit.records().find(parts[i])->position != position)
            edit.update(parts[i], [&](Component &part) { part.position = position; });
    }
}

void insertAt(std::vector<Id<Component>> &parts, std::size_t row, Id<Component> part)
{
    parts.insert(parts.begin() + std::ptrdiff_t(std::min(row, parts.size())), part);
}

} // namespace

std::vector<Id<Component>> partsInside(const Records &records, Id<Component> parent)
{
    constexpr auto last = std::numeric_limits<std::int64_t>::max();
    std::vector<std::tuple<std::int64_t, Id<Component>>> found;
    for (const Component &part : records.components) {
        if (part.parent_id == parent && !part.withdrawn_on)
            found.emplace_back(part.position.value_or(last), part.id);
    }
    std::ranges::sort(found);
    std::vector<Id<Component>> ids;
    for (const auto &[position, id] : found)
        ids.push_back(id);
    return ids;
}

Id<Component> addPart(Edit &edit, Component draft, std::size_t row)
{
    auto parts = partsInside(edit.records(), draft.parent_id);
    const auto id = edit.put(std::move(draft));
    insertAt(parts, row, id);
    number(edit, parts);
    return id;
}

void movePart(Edit &edit, Id<Component> part, Id<Component> parent, std::size_t row)
{
    auto parts = partsInside(edit.records(), parent);
    std::erase(parts, part);
    insertAt(parts, row, part);
    edit.update(part, [&](Component &moved) { moved.parent_id = parent; });
    number(edit, parts);
}

} // namespace lastrivet::acts
