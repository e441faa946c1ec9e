// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/entry/PartFinder.h"
#include "core/records/Records.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace lastrivet::entry {

/// Reads a line of the log: "2h15 left aileron: dimpled both skins".
///
/// In front of the colon, in any order: a duration; a day (`yesterday`, `3 Mar`, ISO 8601); `at
/// 9:15` or `9:15-11:30`; a kind of work; parts by code or name, several joined by `+`; `with
/// NAME`; `squawk 12`. Behind it the note. Without a colon these words are taken while they last,
/// and the rest is the note. `done 12-3 LW-R1.2` ticks steps by plan reference or by part and
/// number, wherever it stands.
EntryReading readEntry(std::string_view line, const Records &records, const PartFinder &parts,
                       Moment now);

/// The words at the cursor that name a part, or may once they are whole.
struct PartWords {
    std::size_t begin = 0;
    std::size_t end = 0;
    std::string text;
};
/// Empty text when the cursor stands in the note or at something else than a part.
PartWords partWordsAt(std::string_view line, std::size_t cursor, const Records &records,
                      const PartFinder &parts, Moment now);

} // namespace lastrivet::entry
