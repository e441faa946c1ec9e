// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/FinalFile.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Writes the file for the final inspection as PDF; see `printDocument`.
std::optional<Printed> printFinalFile(const packet::FinalFile &file, const Imprint &imprint,
                                      const Pictures &pictures, const Choices &choices,
                                      const std::filesystem::path &place,
                                      const OnPercent &onPercent = {});

} // namespace lastrivet::print
