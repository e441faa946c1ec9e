// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryLine.h"

#include "core/entry/EntryParser.h"

namespace lastrivet::entry {

EntryReading readEntry(std::string_view line, const Records &records, const PartFinder &parts,
                       Moment now)
{
    return EntryParser(line, records, parts, now).read();
}

PartWords partWordsAt(std::string_view line, std::size_t cursor, const Records &records,
                      const PartFinder &parts, Moment now)
{
    const auto colon = line.find(": ");
    if (colon < cursor)
        return {};
    // Only what stands before the cursor is being typed.
    const std::string_view typed = line.substr(0, cursor);
    EntryParser parser(typed, records, parts, now);
    parser.read();
    for (const auto &span : parser.partSpans()) {
        if (span.begin < cursor && cursor <= span.end)
            return {span.begin, span.end,
                    std::string(typed.substr(span.begin, span.end - span.begin))};
    }
    return {};
}

} // namespace lastrivet::entry
