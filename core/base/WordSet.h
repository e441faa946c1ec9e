// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"

#include <cstdint>
#include <initializer_list>

namespace lastrivet {

/// A set of words of one vocabulary, which has at most 32.
template <class Word> class WordSet {
public:
    constexpr WordSet() = default;
    constexpr WordSet(std::initializer_list<Word> words)
    {
        for (Word word : words)
            insert(word);
    }

    constexpr bool contains(Word word) const { return (m_bits & bit(word)) != 0; }
    constexpr bool isEmpty() const { return m_bits == 0; }
    constexpr void insert(Word word) { m_bits |= bit(word); }
    constexpr void remove(Word word) { m_bits &= ~bit(word); }
    constexpr void clear() { m_bits = 0; }
    /// True when it contains a word that is not in `words`.
    constexpr bool hasOthersThan(WordSet words) const { return (m_bits & ~words.m_bits) != 0; }

    /// True when both have a word in common.
    constexpr bool meets(WordSet words) const { return (m_bits & words.m_bits) != 0; }

    friend constexpr bool operator==(WordSet, WordSet) = default;

private:
    static constexpr std::uint32_t bit(Word word) { return 1u << unsigned(word); }

    std::uint32_t m_bits = 0;
};

} // namespace lastrivet
