// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <optional>
#include <vector>

namespace lastrivet::acts {

/// Adds a log entry. A missing part becomes that of its step, else of its squawk, and may stay
/// missing; without workers it was the project's builder, when one is known.
Id<WorkSession> enterSession(Edit &edit, WorkSession session);

/// Puts an entry on another day, another part, or both; the time of day stays. A step or squawk of
/// another part than the new one is no longer named.
void moveSession(Edit &edit, Id<WorkSession> session, std::optional<Moment> day,
                 Id<Component> part);

/// Makes several entries of one: the first of `pieces` takes its place, the others are new and have
/// the links of its photographs too.
void splitSession(Edit &edit, Id<WorkSession> session, const std::vector<WorkSession> &pieces);

} // namespace lastrivet::acts
