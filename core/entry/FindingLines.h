// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/entry/PartFinder.h"
#include "core/records/Component.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// One line of an inspector's sheet, read.
struct FindingLine {
    /// As written on the sheet; empty where none is.
    std::string number;
    std::string title;
    /// The part that stands before a colon; none when the line names none.
    Id<Component> part;
    Severity severity = Severity::Workmanship;
    /// The day that stands before the colon; none when the line names none.
    std::optional<Moment> found_on{};
};

/// Reads several lines of an inspector's sheet: a finding per line, with or without its number
/// ("3.", "3)", "(3)", "No. 3", "#3"), a part, a severity and a day in front of a colon. Where the
/// first line has a number, a line without one goes on with the finding above it.
std::vector<FindingLine> readFindings(std::string_view text, const PartFinder &parts, Moment today);

} // namespace lastrivet::entry
