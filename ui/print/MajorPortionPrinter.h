// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/MajorPortion.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Writes the major-portion form with its evidence as PDF; see `printDocument`.
std::optional<Printed> printMajorPortion(const packet::MajorPortion &form, const Imprint &imprint,
                                         const Pictures &pictures, const Choices &choices,
                                         const std::filesystem::path &place,
                                         const OnPercent &onPercent = {});

} // namespace lastrivet::print
