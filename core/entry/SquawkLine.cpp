// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SquawkLine.h"

#include "core/entry/Fold.h"

namespace lastrivet::entry {

namespace {

std::string trimmed(std::string_view text)
{
    const auto begin = text.find_first_not_of(' ');
    if (begin == std::string_view::npos)
        return {};
    return std::string(text.substr(begin, text.find_last_not_of(' ') - begin + 1));
}

} // namespace

Squawk readSquawk(std::string_view line, const PartFinder &parts)
{
    Squawk squawk;
    squawk.title = trimmed(line);
    const auto colon = line.find(": ");
    if (colon == std::string_view::npos)
        return squawk;
    std::string part;
    for (const std::string &word : foldedWords(line.substr(0, colon))) {
        if (const auto severity = parseWord<Severity>(word))
            squawk.severity = *severity;
        else
            part += (part.empty() ? "" : " ") + word;
    }
    squawk.component_id = parts.best(part);
    if (squawk.component_id || part.empty())
        squawk.title = trimmed(line.substr(colon + 2));
    return squawk;
}

} // namespace lastrivet::entry
