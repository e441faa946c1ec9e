// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Judgement.h"

namespace lastrivet::readiness {

/// True when fewer good parts than the line asks for have been received, as far as it counts.
inline bool isShort(const PartLine &line, bool isReceived)
{
    const std::int64_t good = isReceived ? line.received_quantity - line.damaged_quantity : 0;
    return line.quantity > good;
}

} // namespace lastrivet::readiness
