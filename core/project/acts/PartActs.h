// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <cstddef>
#include <vector>

namespace lastrivet::acts {

/// The live parts directly inside `parent` (at the top when none is given), in their order: by
/// position, those without one last, then by id.
std::vector<Id<Component>> partsInside(const Records &records, Id<Component> parent);

/// Adds a part at `row` among those inside its parent_id; as the last when `row` is beyond them.
Id<Component> addPart(Edit &edit, Component draft, std::size_t row);

/// Moves a part with everything below it to stand at `row` inside `parent`; counted without the
/// part itself. A part cannot go into itself: the invariants refuse that.
void movePart(Edit &edit, Id<Component> part, Id<Component> parent, std::size_t row);

/// Those of the parts that lie in no other of them, as the tree shows them from top to bottom.
std::vector<Id<Component>> outermost(const Records &records,
                                     const std::vector<Id<Component>> &parts);

/// Moves parts with everything below them to stand one behind the other, the first before `before`,
/// or as the last inside `parent` when that is none. Parts inside another of them stay there.
void moveParts(Edit &edit, const std::vector<Id<Component>> &parts, Id<Component> parent,
               Id<Component> before);

} // namespace lastrivet::acts
