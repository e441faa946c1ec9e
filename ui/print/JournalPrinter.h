// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/JournalReport.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Prints the journal; see `printDocument`.
std::optional<Printed> printJournal(const packet::JournalReport &report, const Imprint &imprint,
                                    const Choices &choices, const std::filesystem::path &place,
                                    const OnPercent &onPercent = {});

} // namespace lastrivet::print
