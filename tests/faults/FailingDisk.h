// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/Acts.h"

namespace lastrivet::faults {

/// Does an act over and over, and each time lets another operation of the disk fail: once, or from
/// then on; with an input/output error, or because the disk is full. Fails the test unless the act
/// is refused in a sentence with everything as it was, or done, and work goes on.
void failEachOperation(const Act &act);

} // namespace lastrivet::faults
