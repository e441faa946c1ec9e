// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/FindingLines.h"

#include "core/base/Trimmed.h"
#include "core/entry/SquawkLine.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

constexpr std::string_view blanks = " \t\r\v\f";

bool takeOneOf(std::string_view &rest, std::string_view characters)
{
    const bool isThere = !rest.empty() && characters.find(rest.front()) != rest.npos;
    rest.remove_prefix(isThere ? 1 : 0);
    return isThere;
}

bool takeBlanks(std::string_view &rest)
{
    const std::size_t count = std::min(rest.find_first_not_of(blanks), rest.size());
    rest.remove_prefix(count);
    return count > 0;
}

/// Up to three digits, perhaps with a letter ("12b"); empty when there are none or more.
std::string takeNumber(std::string_view &rest)
{
    constexpr std::size_t mostDigits = 3;
    std::size_t size = std::min(rest.find_first_not_of("0123456789"), rest.size());
    if (size == 0 || size > mostDigits)
        return {};
    if (size < rest.size() && rest[size] >= 'a' && rest[size] <= 'z')
        ++size;
    std::string number(rest.substr(0, size));
    rest.remove_prefix(size);
    return number;
}

/// "No. 3", "#3:": what stands in front says that it is a number.
std::string takeAnnounced(std::string_view &rest)
{
    const bool isSign = takeOneOf(rest, "#");
    if (!isSign && !takeOneOf(rest, "Nn"))
        return {};
    if (!isSign) {
        takeOneOf(rest, "Oo");
        takeOneOf(rest, ".");
    }
    takeBlanks(rest);
    std::string number = takeNumber(rest);
    std::string_view behind = rest;
    takeBlanks(behind);
    const bool isMarked = takeOneOf(behind, ".):-");
    if (isMarked && behind.find_first_of(blanks) == 0)
        rest = behind;
    return number;
}

/// "3.", "3)", "(3)", "3 -", "3 :": what stands behind it says so. A bare number is part of the
/// sentence: "2 rivets are missing".
std::string takeMarked(std::string_view &rest)
{
    const bool isBracketed = takeOneOf(rest, "(");
    std::string number = takeNumber(rest);
    if (isBracketed)
        return takeOneOf(rest, ")") ? number : std::string();
    const bool isApart = takeBlanks(rest);
    if (takeOneOf(rest, ".)") || (isApart && takeOneOf(rest, "-:")))
        return number;
    constexpr std::string_view dash = "–";
    if (!isApart || !rest.starts_with(dash))
        return {};
    rest.remove_prefix(dash.size());
    return number;
}

/// A line as it stands: its number where it has one, and its words.
struct RawLine {
    std::string number;
    std::string words;
};

RawLine split(std::string_view line)
{
    for (const auto take : {&takeAnnounced, &takeMarked}) {
        std::string_view rest = line;
        const std::string number = take(rest);
        if (!number.empty() && takeBlanks(rest) && !rest.empty())
            return {number, std::string(rest)};
    }
    return {{}, std::string(line)};
}

std::vector<RawLine> rawLines(std::string_view text)
{
    std::vector<RawLine> lines;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view line = trimmed(text.substr(0, end));
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

std::vector<FindingLine> readFindings(std::string_view text, const PartFinder &parts, Moment today)
{
    std::vector<FindingLine> findings;
    for (const RawLine &line : rawLines(text)) {
        Squawk read = readSquawk(line.words, parts, {today, {}}).squawk;
        if (read.found_on && after(*read.found_on, today))
            read.found_on.reset();
        findings.push_back(
            {line.number, read.title, read.component_id, read.severity, read.found_on});
    }
    return findings;
}

} // namespace lastrivet::entry
