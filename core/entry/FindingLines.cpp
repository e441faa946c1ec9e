// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/FindingLines.h"

#include "core/entry/SquawkLine.h"

#include <algorithm>
#include <regex>

namespace lastrivet::entry {

namespace {

/// A number of up to three digits, perhaps with a letter ("12b"), and what marks it as one. A bare number
/// is part of the sentence: "2 rivets are missing".
const std::regex &numbered()
{
    static const std::regex pattern(
        R"(^\s*(?:(?:[Nn][Oo]?\.?|#)\s*(\d{1,3}[a-z]?)\s*[.):\-]?|\((\d{1,3}[a-z]?)\)|(\d{1,3}[a-z]?)\s*[.)]|(\d{1,3}[a-z]?)\s+(?:-|–|:))\s+(.*\S)\s*$)");
    return pattern;
}

std::string trimmed(std::string_view text)
{
    constexpr std::string_view space = " \t\r";
    const auto begin = text.find_first_not_of(space);
    if (begin == std::string_view::npos)
        return {};
    return std::string(text.substr(begin, text.find_last_not_of(space) - begin + 1));
}

/// A line as it stands: its number where it has one, and its words.
struct RawLine {
    std::string number;
    std::string words;
};

RawLine split(const std::string &line)
{
    std::smatch found;
    if (!std::regex_match(line, found, numbered()))
        return {{}, line};
    std::string number;
    for (std::size_t group = 1; group <= 4; ++group)
        number += found[group].str();
    return {number, found[5].str()};
}

std::vector<RawLine> rawLines(std::string_view text)
{
    std::vector<RawLine> lines;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string line = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.empty())
            continue;
        RawLine raw = split(line);
        const bool goesOn = raw.number.empty() && !lines.empty() && !lines.front().number.empty();
        if (goesOn)
            lines.back().words += " " + raw.words;
        else
            lines.push_back(std::move(raw));
    }
    return lines;
}

} // namespace

std::vector<FindingLine> readFindings(std::string_view text, const PartFinder &parts,
                                      Moment today)
{
    std::vector<FindingLine> findings;
    for (const RawLine &line : rawLines(text)) {
        const Squawk read = readSquawk(line.words, parts, {today, {}}).squawk;
        findings.push_back({line.number, read.title, read.component_id, read.severity});
    }
    return findings;
}

} // namespace lastrivet::entry
