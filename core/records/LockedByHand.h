// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"

namespace lastrivet {

/// Locking that somebody has to put on after the torque; other kinds hold by themselves.
constexpr bool isLockedByHand(Locking locking)
{
    return locking == Locking::SplitPin || locking == Locking::SafetyWire ||
           locking == Locking::JamNut || locking == Locking::LockTab;
}

} // namespace lastrivet
