// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/CorrectionsReport.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Writes what became of an inspection's findings as PDF; see `printDocument`.
std::optional<Printed> printCorrections(const packet::CorrectionsReport &report,
                                        const Imprint &imprint, const Pictures &pictures,
                                        const Choices &choices, const std::filesystem::path &place,
                                        const OnPercent &onPercent = {});

} // namespace lastrivet::print
