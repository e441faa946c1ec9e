// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace lastrivet {

/// The words by which files and tables write an enumeration, one per enumerator and in its order;
/// specialised beside each enumeration as `static constexpr std::array<std::string_view, N> list`.
template <class Word> struct Words;

template <class Word> constexpr std::string_view word(Word value)
{
    return Words<Word>::list[std::size_t(value)];
}

/// Empty when the text is none of the words, to the letter.
template <class Word> constexpr std::optional<Word> parseWord(std::string_view text)
{
    for (std::size_t i = 0; i < Words<Word>::list.size(); ++i) {
        if (Words<Word>::list[i] == text)
            return Word(i);
    }
    return std::nullopt;
}

} // namespace lastrivet
