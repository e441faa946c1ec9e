// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/HandOver.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Prints the hand-over book; see `printDocument`.
std::optional<Printed> printHandOver(const packet::HandOver &book, const Imprint &imprint,
                                     const Pictures &pictures, const Choices &choices,
                                     const std::filesystem::path &place,
                                     const OnPercent &onPercent = {});

} // namespace lastrivet::print
