// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/records/Component.h"

#include <cstddef>
#include <vector>

namespace lastrivet::ui {

class Session;

/// Moves a part and says so by name.
void moveByPerson(Session &session, Id<Component> part, Id<Component> parent, std::size_t row);

/// Moves parts to stand before another inside `parent`, or last in it; one change.
bool moveSeveral(Session &session, const std::vector<Id<Component>> &parts, Id<Component> parent,
                 Id<Component> before);

/// Whether a move, as below, leads anywhere.
bool canMoveAmong(const Session &session, Id<Component> part, int by);
bool canMoveInto(const Session &session, Id<Component> part);
bool canMoveOut(const Session &session, Id<Component> part);

/// One place up or down among its neighbours.
void moveAmong(Session &session, Id<Component> part, int by);
/// Into the neighbour above it, behind what is there.
void moveInto(Session &session, Id<Component> part);
/// Out of the part that holds it, to stand behind that.
void moveOut(Session &session, Id<Component> part);

} // namespace lastrivet::ui
