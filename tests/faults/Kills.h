// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/Acts.h"

namespace lastrivet::faults {

/// Kills one process after another at random moments while it does an act over and over. Fails the
/// test unless everything is there that it said was saved, nothing is half, and the next program
/// can go on at once.
void killOften(const Act &act, unsigned seed);

} // namespace lastrivet::faults
