// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/OtherSide.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"

#include <algorithm>
#include <array>

namespace lastrivet::acts {

namespace {

struct SideWords {
    std::string_view left;
    std::string_view right;
};

/// What is not in both columns of a line goes one way: "droit" has no partner of its own.
constexpr std::array sideWords{
    SideWords{"left", "right"},     SideWords{"lh", "rh"},
    SideWords{"lhs", "rhs"},        SideWords{"l", "r"},
    SideWords{"linke", "rechte"},   SideWords{"linker", "rechter"},
    SideWords{"linkes", "rechtes"}, SideWords{"linken", "rechten"},
    SideWords{"links", "rechts"},   SideWords{"gauche", "droite"},
    SideWords{"gauche", "droit"},
};

bool isLetter(char c)
{
    return isAsciiLetter(c) || static_cast<unsigned char>(c) >= 128;
}

bool isCapital(char c)
{
    return c >= 'A' && c <= 'Z';
}

/// A word for a side and its partner; a single letter is one only as a capital.
struct Found {
    Side side;
    std::string_view partner;
};

std::optional<Found> sideWord(std::string_view word)
{
    const std::string small = folded(word);
    if (word.size() == 1 && !isCapital(word.front()))
        return std::nullopt;
    for (const SideWords &words : sideWords) {
        if (small == words.left)
            return Found{Side::Left, words.right};
        if (small == words.right)
            return Found{Side::Right, words.left};
    }
    return std::nullopt;
}

std::string written(std::string_view word, std::string_view like)
{
    std::string text(word);
    const bool isAllCapital = std::ranges::all_of(like, isCapital) && like.size() > 1;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (isAllCapital || (i == 0 && isCapital(like.front())))
            text[i] = char(text[i] - 'a' + 'A');
    }
    return text;
}

/// Calls `body` with each run of letters and each text between them.
template <class Body> void eachRun(std::string_view text, Body &&body)
{
    while (!text.empty()) {
        const bool isWord = isLetter(text.front());
        const auto end = std::ranges::find_if(text, [&](char c) { return isLetter(c) != isWord; });
        const auto length = std::size_t(end - text.begin());
        body(text.substr(0, length), isWord);
        text.remove_prefix(length);
    }
}

} // namespace

std::optional<Side> sideNamed(std::string_view name)
{
    std::optional<Side> side;
    eachRun(name, [&](std::string_view run, bool isWord) {
        const auto found = isWord && !side ? sideWord(run) : std::nullopt;
        if (found)
            side = found->side;
    });
    return side;
}

std::string nameOnOtherSide(std::string_view name)
{
    std::string other;
    eachRun(name, [&](std::string_view run, bool isWord) {
        const auto found = isWord ? sideWord(run) : std::nullopt;
        other += found ? written(found->partner, run) : std::string(run);
    });
    return other;
}

std::string codeOnOtherSide(std::string_view code, Side from)
{
    constexpr std::size_t longestPart = 3;
    const char letter = from == Side::Left ? 'L' : 'R';
    const char otherLetter = from == Side::Left ? 'R' : 'L';
    std::string other;
    bool isFirst = true;
    for (std::size_t begin = 0; begin < code.size();) {
        const auto end = std::size_t(
            std::find_if_not(code.begin() + std::ptrdiff_t(begin), code.end(), isLetter) -
            code.begin());
        const std::string_view run = code.substr(begin, end - begin);
        const bool isAlone = end == code.size() || !isDigit(code[end]);
        const bool followsDigit = begin > 0 && isDigit(code[begin - 1]);
        const auto found = sideWord(run);
        if (found && found->side == from && !followsDigit && (isFirst || isAlone))
            other += written(found->partner, run);
        else if (isFirst && run.size() > 1 && run.size() <= longestPart && run.front() == letter)
            other.append(1, otherLetter).append(run.substr(1));
        else
            other += run;
        isFirst = isFirst && run.empty();
        begin = end;
        for (; begin < code.size() && !isLetter(code[begin]); ++begin)
            other += code[begin];
    }
    return other;
}

} // namespace lastrivet::acts
