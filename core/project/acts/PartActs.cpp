// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PartActs.h"

#include "core/records/PartPlace.h"

#include <algorithm>
#include <unordered_set>
#include <utility>

namespace lastrivet::acts {

namespace {

constexpr int deepest = 256;

/// Gives the parts positions 1, 2, 3 …; touches only those that stand elsewhere.
void number(Edit &edit, const std::vector<Id<Component>> &parts)
{
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto position = std::int64_t(i) + 1;
        if (edit.existing(parts[i]).position != position)
            edit.update(parts[i], [&](Component &part) { part.position = position; });
    }
}

void insertAt(std::vector<Id<Component>> &parts, std::size_t row, Id<Component> part)
{
    parts.insert(parts.begin() + std::ptrdiff_t(std::min(row, parts.size())), part);
}

using PartIds = std::unordered_set<Id<Component>>;

bool isInOneOf(const Records &records, Id<Component> part, const PartIds &others)
{
    const Component *found = records.find(part);
    for (int depth = 0; found && found->parent_id && depth < deepest; ++depth) {
        if (others.contains(found->parent_id))
            return true;
        found = records.find(found->parent_id);
    }
    return false;
}

/// Where a part stands in the tree: the positions from the top down.
std::vector<std::pair<std::int64_t, Id<Component>>> pathTo(const Records &records,
                                                           Id<Component> part)
{
    std::vector<std::pair<std::int64_t, Id<Component>>> path;
    const Component *found = records.find(part);
    for (int depth = 0; found && depth < deepest; ++depth) {
        path.push_back(partPlace(*found));
        found = records.find(found->parent_id);
    }
    std::ranges::reverse(path);
    return path;
}

} // namespace

std::vector<Id<Component>> partsInside(const Records &records, Id<Component> parent)
{
    std::vector<std::pair<std::int64_t, Id<Component>>> found;
    for (const Component &part : records.components) {
        if (part.parent_id == parent && !part.withdrawn_on)
            found.push_back(partPlace(part));
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

std::vector<Id<Component>> outermost(const Records &records,
                                     const std::vector<Id<Component>> &parts)
{
    const PartIds all(parts.begin(), parts.end());
    std::vector<Id<Component>> found;
    for (const Id<Component> part : parts) {
        if (!isInOneOf(records, part, all))
            found.push_back(part);
    }
    std::ranges::sort(found, {}, [&](Id<Component> part) { return pathTo(records, part); });
    return found;
}

void moveParts(Edit &edit, const std::vector<Id<Component>> &parts, Id<Component> parent,
               Id<Component> before)
{
    const auto moved = outermost(edit.records(), parts);
    auto neighbours = partsInside(edit.records(), parent);
    // The one to stand before may itself be moved: then the next that is not.
    auto place = std::ranges::find(neighbours, before);
    while (place != neighbours.end() && std::ranges::find(moved, *place) != moved.end())
        ++place;
    const Id<Component> anchor = place == neighbours.end() ? Id<Component>{} : *place;
    std::erase_if(neighbours, [&](Id<Component> part) {
        return std::ranges::find(moved, part) != moved.end();
    });
    neighbours.insert(std::ranges::find(neighbours, anchor), moved.begin(), moved.end());
    for (const Id<Component> part : moved) {
        if (edit.existing(part).parent_id != parent)
            edit.update(part, [&](Component &changed) { changed.parent_id = parent; });
    }
    number(edit, neighbours);
}

} // namespace lastrivet::acts
