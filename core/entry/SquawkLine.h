// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/entry/EntryLine.h"
#include "core/entry/PartFinder.h"
#include "core/records/Squawk.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::entry {

/// What is known when a squawk is told in one line.
struct SquawkSurroundings {
    Moment today;
    /// The part that the person is looking at: taken when the line names none.
    Id<Component> part_shown;
    /// Further words for the severities, in their order; the records' own words always count.
    std::array<std::string, 3> severity_words{};
};

/// A squawk as it was understood, and what the person should hear before it is kept.
struct SquawkReading {
    Squawk squawk;
    bool isPartTheShownOne = false;
    /// Something in front of the colon was not understood and went into the title.
    std::optional<Message> remark;
    /// Why it cannot be kept.
    std::optional<Message> problem;
};

/// Reads a squawk told in one line: "left aileron: overdriven rivet at the third hinge".
///
/// In front of the colon, in any order, a part by code or name, a severity and the day on which it
/// was found; behind it the title. A line without a colon, or with something else in front of it,
/// is all title.
SquawkReading readSquawk(std::string_view line, const PartFinder &parts,
                         const SquawkSurroundings &surroundings);

/// The words in front of the colon that name a part, or may once they are whole; empty text when
/// the cursor stands in the title.
PartWords squawkPartWordsAt(std::string_view line, std::size_t cursor, const PartFinder &parts,
                            const SquawkSurroundings &surroundings);

} // namespace lastrivet::entry
