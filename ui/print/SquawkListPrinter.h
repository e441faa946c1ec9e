// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/SquawkList.h"
#include "ui/print/Document.h"

#include <filesystem>
#include <optional>

namespace lastrivet::print {

/// Writes a list of squawks as PDF; see `printDocument`.
std::optional<Printed> printSquawkList(const packet::SquawkList &list, const Imprint &imprint,
                                       const Choices &choices, const std::filesystem::path &place,
                                       const OnPercent &onPercent = {});

} // namespace lastrivet::print
