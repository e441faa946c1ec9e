// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace lastrivet::entry {

/// A part as the program shows it: code and name, "LW-R3 Rib 3".
std::string spokenName(const Component &part);

/// Finds parts by what a person types: the code, the name, or beginnings of their words, with words
/// of the parts they belong to ("left rib 3").
class PartFinder {
public:
    explicit PartFinder(const Records &records);

    /// The live parts that fit all words, best first; those equally good share the front.
    std::vector<Id<Component>> matches(std::string_view text, std::size_t limit) const;

    /// The one part that fits best; empty when none fits or several are equally good.
    Id<Component> best(std::string_view text) const;

    /// How many of the words from a place on are exactly the code or the name of a part; 0 when
    /// none. A code goes before a name; without a part when two have that name.
    struct Exact {
        std::size_t words = 0;
        Id<Component> part;
    };
    /// `first` is the place of one of `words`.
    Exact longestExact(const std::vector<std::string> &words, std::size_t first) const;

private:
    struct Part {
        Id<Component> id;
        Id<Component> parent;
        std::string code;
        std::vector<std::string> name;
    };
    struct Scored {
        int score;
        Id<Component> id;
    };

    int score(const Part &part, const std::vector<std::string> &words) const;
    bool isWordAbove(const Part &part, const std::string &word) const;
    std::vector<Scored> scored(std::string_view text) const;

    std::vector<Part> m_parts;
    std::unordered_map<std::int64_t, std::size_t> m_rows;
};

} // namespace lastrivet::entry
