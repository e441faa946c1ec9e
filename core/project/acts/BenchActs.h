// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <optional>
#include <string_view>

namespace lastrivet::acts {

/// What is done to fasteners one after the other.
enum class FastenerAct { Fit, Torque, Lock, Mark };

/// What has to be done next; empty when nothing is left, or the fasteners were removed. Torque only
/// where a limit is set, locking only where somebody has to do it by hand.
std::optional<FastenerAct> nextAct(const Fastener &fastener);

void fitFastener(Edit &edit, Id<Fastener> fastener, Moment on);
/// `value` is in the fastener's own unit. A torque seal, a split pin or wire, and an acceptance
/// from before go: they have to be put on and given anew.
void torqueFastener(Edit &edit, Id<Fastener> fastener, Moment on, double value);
void lockFastener(Edit &edit, Id<Fastener> fastener, Moment on);
/// The torque seal was put on.
void markFastener(Edit &edit, Id<Fastener> fastener, Moment on);

/// Writes a line with its day below the part's note.
void addNote(Edit &edit, Id<Component> part, std::string_view line);

} // namespace lastrivet::acts
