// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SquawkLine.h"

#include "core/base/CaseFold.h"
#include "core/base/Trimmed.h"
#include "core/entry/DayText.h"

#include <algorithm>
#include <vector>

namespace lastrivet::entry {

namespace {

/// A word of the line and where it stands.
struct Piece {
    std::size_t begin = 0;
    std::size_t end = 0;
    std::string folded;
};

std::vector<Piece> piecesOf(std::string_view text)
{
    std::vector<Piece> pieces;
    std::size_t begin = text.find_first_not_of(' ');
    while (begin != std::string_view::npos) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const auto words = foldedWords(text.substr(begin, end - begin));
        pieces.push_back({begin, end, words.empty() ? std::string() : words.front()});
        begin = text.find_first_not_of(' ', end);
    }
    return pieces;
}

std::optional<Severity> severityIn(const std::string &word, const SquawkSurroundings &around)
{
    if (const auto severity = parseWord<Severity>(word))
        return severity;
    for (std::size_t i = 0; i < around.severity_words.size(); ++i) {
        if (!word.empty() && folded(around.severity_words[i]) == word)
            return Severity(i);
    }
    return std::nullopt;
}

/// What stands in front of the colon.
struct Head {
    std::optional<Severity> severity;
    std::optional<Moment> day;
    /// The pieces that are neither: a part's name.
    std::vector<Piece> part;

    std::string partText() const
    {
        std::string text;
        for (const Piece &piece : part)
            text += (text.empty() ? "" : " ") + piece.folded;
        return text;
    }
    /// The same as it stands in `line`, with its capitals.
    std::string partTyped(std::string_view line) const
    {
        std::string text;
        for (const Piece &piece : part)
            text += (text.empty() ? "" : " ") +
                    std::string(line.substr(piece.begin, piece.end - piece.begin));
        text.resize(text.find_last_not_of(",;") + 1);
        return text;
    }
};

Head readHead(std::string_view text, const PartFinder &parts, const SquawkSurroundings &around)
{
    const auto pieces = piecesOf(text);
    std::vector<std::string> words;
    for (const Piece &piece : pieces)
        words.push_back(piece.folded);
    Head head;
    for (std::size_t i = 0; i < pieces.size();) {
        // A sun visor is no Sunday.
        const std::size_t named = parts.longestExact(words, i).words;
        if (const auto severity = severityIn(words[i], around)) {
            head.severity = severity;
            ++i;
        } else if (named > 0) {
            for (const std::size_t end = i + named; i < end; ++i)
                head.part.push_back(pieces[i]);
        } else if (const auto day = readDay(words, i, around.today)) {
            head.day = day->day;
            i += day->words;
        } else {
            head.part.push_back(pieces[i++]);
        }
    }
    return head;
}

/// "not found", "several fit": what to say about words that name no one part.
Message unknownPart(const std::string &words, const std::string &typed, const PartFinder &parts)
{
    if (parts.matches(words, 2).size() > 1)
        return {"Several parts fit “{0}”: the whole line became the title.", {typed}};
    return {"No part is called “{0}”: the whole line became the title.", {typed}};
}

void takeHead(SquawkReading &reading, const Head &head, std::string_view title)
{
    reading.squawk.title = trimmed(title);
    reading.squawk.found_on = head.day;
    if (head.severity)
        reading.squawk.severity = *head.severity;
}

std::optional<Message> problemOf(const Squawk &squawk, const SquawkSurroundings &around)
{
    if (squawk.title.empty())
        return Message{"Say in a few words what is wrong.", {}};
    if (squawk.found_on && after(*squawk.found_on, around.today))
        return Message{"{0} has not come yet; a squawk is found today or before.",
                       {squawk.found_on->text()}};
    return std::nullopt;
}

} // namespace

SquawkReading readSquawk(std::string_view line, const PartFinder &parts,
                         const SquawkSurroundings &surroundings)
{
    SquawkReading reading;
    reading.squawk.title = trimmed(line);
    // A colon at the end has its title still to come.
    const auto colon = std::min(line.find(": "), line.ends_with(':') ? line.size() - 1 : line.npos);
    if (colon != std::string_view::npos) {
        const Head head = readHead(line.substr(0, colon), parts, surroundings);
        const std::string part = head.partText();
        reading.squawk.component_id = parts.best(part);
        if (reading.squawk.component_id || part.empty())
            takeHead(reading, head, line.substr(colon + 1));
        else
            reading.remark = unknownPart(part, head.partTyped(line), parts);
    }
    if (!reading.squawk.component_id && surroundings.part_shown) {
        reading.squawk.component_id = surroundings.part_shown;
        reading.isPartTheShownOne = true;
    }
    reading.problem = problemOf(reading.squawk, surroundings);
    return reading;
}

PartWords squawkPartWordsAt(std::string_view line, std::size_t cursor, const PartFinder &parts,
                            const SquawkSurroundings &surroundings)
{
    const auto colon = std::min(line.find(':'), line.size());
    if (cursor > colon)
        return {};
    const auto part = readHead(line.substr(0, colon), parts, surroundings).part;
    PartWords words;
    if (part.empty() || cursor < part.front().begin || cursor > part.back().end)
        return words;
    words.begin = part.front().begin;
    words.end = part.back().end;
    for (const Piece &piece : part)
        words.text += (words.text.empty() ? "" : " ") + piece.folded;
    return words;
}

} // namespace lastrivet::entry
