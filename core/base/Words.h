// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace lastrivet {

/// The words of a vocabulary in its order, one per enumerator; specialised beside each enumeration.
template <class Word> struct Words;

template <class Word> constexpr std::string_view word(Word value)
{
    return Words<Word>::list[std::size_t(value)];
}

template <class Word> constexpr std::optional<Word> parseWord(std::string_view text)
{
    for (std::size_t i = 0; i < Words<Word>::list.size(); ++i) {
        if (Words<Word>::list[i] == text)
            return Word(i);
    }
    return std::nullopt;
}

} // namespace lastrivet
