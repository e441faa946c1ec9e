// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <optional>
#include <string_view>

namespace lastrivet::acts {

/// What is done to a fastener, in this order.
enum class FastenerAct { Fit, Torque, Lock, Mark };

/// What has to be done next; empty when nothing is left, or the fasteners were removed. Torquing is
/// asked for only where a limit is set, locking only where it is done by hand.
std::optional<FastenerAct> nextAct(const Fastener &fastener);

void fitFastener(Edit &edit, Id<Fastener> fastener, Moment on);
/// `value` is in the fastener's own unit. Removes what is on record of an earlier torque seal, of
/// locking and of an acceptance: they have to be done anew.
void torqueFastener(Edit &edit, Id<Fastener> fastener, Moment on, double value);
void lockFastener(Edit &edit, Id<Fastener> fastener, Moment on);
/// Records that the torque seal was put on.
void markFastener(Edit &edit, Id<Fastener> fastener, Moment on);

/// Appends a line with today's date to the part's note.
void addNote(Edit &edit, Id<Component> part, std::string_view line);

} // namespace lastrivet::acts
