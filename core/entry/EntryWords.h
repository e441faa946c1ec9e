// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// The words of a log line with their places, so that what is taken out of it can be cut.
class EntryWords {
public:
    /// `line` outlives this.
    explicit EntryWords(std::string_view line);

    std::size_t count() const { return m_places.size(); }
    /// Small letters, without the comma, colon or bracket around the word.
    const std::string &folded(std::size_t i) const { return m_folded[i]; }
    const std::vector<std::string> &allFolded() const { return m_folded; }
    /// Where word `i` begins and ends in the line, in bytes.
    std::size_t beginOf(std::size_t i) const { return m_places[i].begin; }
    std::size_t endOf(std::size_t i) const { return m_places[i].end; }
    /// The words from `begin` up to, not including, `end` as they were typed; empty when there are
    /// none.
    std::string text(std::size_t begin, std::size_t end) const;
    /// Those words folded, with a blank between them.
    std::string joined(std::size_t begin, std::size_t end) const;
    /// The word behind which the note begins; none when there is no colon.
    std::optional<std::size_t> colon() const { return m_colon; }

    /// True for a dash that stands alone, which separates what is before it from what follows.
    bool isDash(std::size_t i) const;

private:
    struct Place {
        std::size_t begin;
        std::size_t end;
    };

    void add(std::size_t begin, std::size_t end);

    std::string_view m_line;
    std::vector<Place> m_places;
    std::vector<std::string> m_folded;
    std::optional<std::size_t> m_colon;
};

} // namespace lastrivet::entry
