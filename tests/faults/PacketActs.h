// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/Acts.h"

namespace lastrivet::faults {

/// Makes an inspection packet in each of its forms. They need a QGuiApplication.
std::span<const Act> packetActs();
/// The same with the row in the journal whose hash stands on the paper.
const Act &printedPacket();

} // namespace lastrivet::faults
