// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SplitText.h"

#include "core/base/CaseFold.h"
#include "core/entry/DurationText.h"
#include "core/entry/SharedTime.h"

#include <algorithm>
#include <optional>
#include <string>

namespace lastrivet::entry {

namespace {

/// The most words of a piece that are tried: "2 h 15 min" has four, a pasted page has thousands.
constexpr std::size_t mostWordsOfTime = 6;

struct Piece {
    Id<Component> part;
    std::optional<Minutes> minutes;
};

std::string joined(const std::vector<std::string> &words, std::size_t begin, std::size_t end)
{
    std::string text;
    for (std::size_t i = begin; i < end; ++i)
        text += (i == begin ? "" : " ") + words[i];
    return text;
}

/// A part, a time, or both in any order.
Result<Piece, Message> readPiece(const std::string &text, Id<Component> partBefore,
                                 const PartFinder &parts)
{
    auto words = foldedWords(text);
    Piece piece{partBefore, std::nullopt};
    for (std::size_t begin = 0; begin < words.size() && !piece.minutes; ++begin) {
        const std::size_t last = std::min(words.size(), begin + mostWordsOfTime);
        for (std::size_t end = last; end > begin && !piece.minutes; --end) {
            piece.minutes = parseDuration(joined(words, begin, end));
            if (piece.minutes)
                words.erase(words.begin() + std::ptrdiff_t(begin),
                            words.begin() + std::ptrdiff_t(end));
        }
    }
    if (words.empty())
        return piece;
    const std::string name = joined(words, 0, words.size());
    const auto exact = parts.longestExact(words, 0);
    piece.part = exact.words == words.size() ? exact.part : parts.best(name);
    if (!piece.part)
        return Message{"“{0}” is no part, or may be several.", {name}};
    return piece;
}

/// The time of each piece; those that say none share what the others leave.
Result<std::vector<Minutes>, Message> timesOf(const std::vector<Piece> &pieces,
                                              const WorkSession &session)
{
    std::int64_t left = session.minutes->count();
    std::size_t open = 0;
    for (const Piece &piece : pieces) {
        left -= piece.minutes ? piece.minutes->count() : 0;
        open += piece.minutes ? 0 : 1;
    }
    const bool isFitting = open > 0 ? left >= std::int64_t(open) : left == 0;
    if (!isFitting)
        return Message{"The pieces do not add up to the {0} minutes of the entry.",
                       {std::to_string(session.minutes->count())}};
    const auto shares = open > 0 ? sharesOf(Minutes{left}, open) : std::vector<Minutes>{};
    std::vector<Minutes> times;
    std::size_t next = 0;
    for (const Piece &piece : pieces)
        times.push_back(piece.minutes ? *piece.minutes : shares[next++]);
    return times;
}

std::vector<std::string> piecesOf(std::string_view text)
{
    std::vector<std::string> pieces;
    for (std::size_t begin = 0; begin <= text.size();) {
        const auto end = std::min(text.find_first_of("+;", begin), text.size());
        const auto piece = text.substr(begin, end - begin);
        if (piece.find_first_not_of(' ') != std::string_view::npos)
            pieces.emplace_back(piece);
        begin = end + 1;
    }
    return pieces;
}

} // namespace

Result<std::vector<WorkSession>, Message>
readSplit(std::string_view text, const WorkSession &session, const PartFinder &parts)
{
    std::vector<Piece> pieces;
    bool isTimed = false;
    for (const std::string &typed : piecesOf(text)) {
        const auto piece = readPiece(typed, session.component_id, parts);
        if (!piece)
            return piece.reason();
        isTimed |= piece->minutes.has_value();
        pieces.push_back(*piece);
    }
    if (pieces.size() < 2)
        return Message{"Say at least two parts or times, with a plus sign between them.", {}};
    if (isTimed && !session.minutes)
        return Message{"The entry has no time that could be split; give parts alone.", {}};
    std::vector<Minutes> stretches(pieces.size(), Minutes{0});
    if (session.minutes) {
        auto times = timesOf(pieces, session);
        if (!times)
            return times.reason();
        stretches = std::move(*times);
    }
    auto sessions = sharedInto(session, stretches);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        sessions[i].component_id = pieces[i].part;
    return sessions;
}

} // namespace lastrivet::entry
