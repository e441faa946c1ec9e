// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/MoveText.h"

#include "core/base/CaseFold.h"
#include "core/entry/DayText.h"

#include <string>
#include <vector>

namespace lastrivet::entry {

Result<Move, Message> readMove(std::string_view text, const PartFinder &parts, Moment today)
{
    const auto words = foldedWords(text);
    Move move;
    std::vector<std::string> rest;
    for (std::size_t i = 0; i < words.size();) {
        const auto exact = parts.longestExact(words, i);
        const auto day = exact.part || move.day ? std::nullopt : readDay(words, i, today);
        if (!day) {
            rest.push_back(words[i++]);
            continue;
        }
        move.day = day->day;
        i += day->words;
    }
    if (words.empty())
        return Message{"Say the day, the part, or both.", {}};
    if (move.day && after(move.day->dayOnly(), today.dayOnly()))
        return Message{"{0} lies ahead; the log tells what was done.", {move.day->text()}};
    if (rest.empty())
        return move;
    std::string name;
    for (const std::string &word : rest)
        name += (name.empty() ? "" : " ") + word;
    const auto exact = parts.longestExact(rest, 0);
    move.part = exact.words == rest.size() ? exact.part : parts.best(name);
    if (!move.part)
        return Message{"“{0}” is no part, or may be several.", {name}};
    return move;
}

} // namespace lastrivet::entry
