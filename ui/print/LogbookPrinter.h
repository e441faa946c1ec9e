// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Logbook.h"
#include "ui/print/Document.h"

#include <filesystem>
#include <optional>

namespace lastrivet::print {

/// Writes the builder's log as PDF; see `printDocument`.
std::optional<Printed> printLogbook(const packet::Logbook &log, const Imprint &imprint,
                                    const Pictures &pictures, const Choices &choices,
                                    const std::filesystem::path &place,
                                    const OnPercent &onPercent = {});

} // namespace lastrivet::print
