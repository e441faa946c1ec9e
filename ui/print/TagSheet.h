// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"
#include "core/packet/Tag.h"
#include "ui/print/Document.h"

#include <vector>

namespace lastrivet::print {

/// What tie-on tags are printed from.
struct TagSheet {
    packet::Aircraft aircraft;
    std::vector<packet::Tag> tags;
    /// A code that the search of the program finds.
    bool has_codes = true;
};

/// Sheets of tags to cut out and tie on: "DO NOT CLOSE", what it waits for, and the day on which
/// the records said so. Throws a `Fault` when there is no tag; else see `printDocument`.
std::optional<Printed> printTags(const TagSheet &sheet, const Imprint &imprint,
                                 const Choices &choices, const std::filesystem::path &place,
                                 const OnPercent &onPercent = {});

} // namespace lastrivet::print
