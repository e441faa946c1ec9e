// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/ChangesSince.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Writes the one page that asks whether a signature still holds as PDF; see `printDocument`. What
/// does not fit on it is counted.
std::optional<Printed> printChanges(const packet::ChangesSince &changes, const Imprint &imprint,
                                    const Pictures &pictures, const Choices &choices,
                                    const std::filesystem::path &place,
                                    const OnPercent &onPercent = {});

} // namespace lastrivet::print
