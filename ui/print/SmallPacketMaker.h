// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/PacketMaker.h"

namespace lastrivet::print {

/// Makes the form to send; see `makePacket`. Pictures become smaller until all of them fit, and
/// only where the smallest do not fit either are some left out, which the packet says.
std::optional<PacketMade> makeSmallPacket(const PacketOrder &order, const Pictures &pictures,
                                          const OnPercent &onPercent);

} // namespace lastrivet::print
