// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryWords.h"

#include "core/base/CaseFold.h"

#include <algorithm>
#include <array>

namespace lastrivet::entry {

namespace {

constexpr std::string_view blanks = " \t\n";

std::string bare(std::string_view word)
{
    const auto first = word.find_first_not_of("(");
    if (first == std::string_view::npos)
        return {};
    const auto last = word.find_last_not_of(",;:)");
    return last == std::string_view::npos || last < first
               ? std::string()
               : folded(word.substr(first, last + 1 - first));
}

} // namespace

EntryWords::EntryWords(std::string_view line)
    : m_line(line)
{
    for (std::size_t begin = line.find_first_not_of(blanks); begin != std::string_view::npos;) {
        const auto end = std::min(line.find_first_of(blanks, begin), line.size());
        // In front of the colon a plus sign parts two names, with or without blanks around it.
        const auto plus = m_colon ? std::string_view::npos : line.find('+', begin);
        if (plus > begin && plus < end) {
            add(begin, plus);
            begin = plus;
        } else if (plus == begin && plus + 1 < end) {
            add(plus, plus + 1);
            begin = plus + 1;
        } else {
            add(begin, end);
            begin = line.find_first_not_of(blanks, end);
        }
    }
}

void EntryWords::add(std::size_t begin, std::size_t end)
{
    const auto word = m_line.substr(begin, end - begin);
    // A name that is taken from the list brings its colon; the typed one behind it is the same.
    if (m_colon && *m_colon + 1 == m_places.size() && word == ":")
        return;
    if (word.ends_with(':') && !m_colon)
        m_colon = m_places.size();
    m_places.push_back({begin, end});
    m_folded.push_back(bare(word));
}

bool EntryWords::isDash(std::size_t i) const
{
    static constexpr std::array<std::string_view, 4> dashes{"-", "–", "—", "−"};
    return std::ranges::find(dashes, m_folded[i]) != dashes.end();
}

std::string EntryWords::text(std::size_t begin, std::size_t end) const
{
    if (begin >= end)
        return {};
    const auto first = m_places[begin].begin;
    return std::string(m_line.substr(first, m_places[end - 1].end - first));
}

std::string EntryWords::joined(std::size_t begin, std::size_t end) const
{
    std::string text;
    for (std::size_t i = begin; i < end; ++i)
        text += (i == begin ? "" : " ") + m_folded[i];
    return text;
}

} // namespace lastrivet::entry
