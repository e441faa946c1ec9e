// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/PartFinder.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Hyphens.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

constexpr int none = -1;
constexpr int deepest = 64;

/// A beginning of the word, but a number only as a whole: 3 is not the beginning of 30.
bool fits(const std::string &typed, const std::string &word)
{
    return std::ranges::all_of(typed, isDigit) ? typed == word : word.starts_with(typed);
}

bool fitsAny(const std::string &typed, const std::vector<std::string> &words)
{
    return std::ranges::any_of(words, [&](const std::string &word) { return fits(typed, word); });
}

} // namespace

std::string spokenName(const Component &part)
{
    return part.code.empty() ? part.name : part.code + " " + part.name;
}

PartFinder::PartFinder(const Records &records)
{
    for (const Component &part : records.components) {
        if (part.withdrawn_on)
            continue;
        m_rows.emplace(part.id.value(), m_parts.size());
        m_parts.push_back({part.id, part.parent_id, folded(withPlainHyphens(part.code)),
                           foldedWords(withPlainHyphens(part.name))});
    }
}

bool PartFinder::isWordAbove(const Part &part, const std::string &word) const
{
    auto row = m_rows.find(part.parent.value());
    for (int depth = 0; row != m_rows.end() && depth < deepest; ++depth) {
        const Part &above = m_parts[row->second];
        if (fitsAny(word, above.name) || above.code == word)
            return true;
        row = m_rows.find(above.parent.value());
    }
    return false;
}

int PartFinder::score(const Part &part, const std::vector<std::string> &words) const
{
    int own = 0;
    for (const std::string &word : words) {
        if (part.code == word)
            own += 8;
        else if (fitsAny(word, part.name) || (!part.code.empty() && part.code.starts_with(word)))
            own += 4;
        else if (!isWordAbove(part, word))
            return none;
    }
    if (own == 0)
        return none;
    // Of parts that fit, the one whose name holds least besides what was typed.
    const int unsaid = int(part.name.size()) - int(words.size());
    return own * 16 - std::clamp(unsaid, 0, 15);
}

std::vector<PartFinder::Scored> PartFinder::scored(std::string_view text) const
{
    const auto words = foldedWords(withPlainHyphens(text));
    std::vector<Scored> found;
    if (words.empty())
        return found;
    for (const Part &part : m_parts) {
        if (const int value = score(part, words); value != none)
            found.push_back({value, part.id});
    }
    std::ranges::stable_sort(found, std::ranges::greater{}, &Scored::score);
    return found;
}

std::vector<Id<Component>> PartFinder::matches(std::string_view text, std::size_t limit) const
{
    std::vector<Id<Component>> ids;
    for (const Scored &part : scored(text)) {
        if (ids.size() == limit)
            break;
        ids.push_back(part.id);
    }
    return ids;
}

Id<Component> PartFinder::best(std::string_view text) const
{
    const auto found = scored(text);
    if (found.empty() || (found.size() > 1 && found[0].score == found[1].score))
        return {};
    return found.front().id;
}

PartFinder::Exact PartFinder::longestExact(const std::vector<std::string> &typed,
                                           std::size_t first) const
{
    std::vector<std::string> words;
    for (const std::string &word : typed)
        words.push_back(withPlainHyphens(word));
    Exact longest;
    bool isByCode = false;
    for (const Part &part : m_parts) {
        const std::size_t left = words.size() - first;
        const bool isNamed =
            !part.name.empty() && part.name.size() <= left &&
            std::equal(part.name.begin(), part.name.end(), words.begin() + std::ptrdiff_t(first));
        const bool isCoded = !part.code.empty() && part.code == words[first];
        const std::size_t count = isNamed ? part.name.size() : isCoded ? 1 : 0;
        const bool isEqual = count > 0 && count == longest.words;
        if (count > longest.words || (isEqual && isCoded && !isByCode)) {
            longest = {count, part.id};
            isByCode = isCoded;
        } else if (isEqual && !isByCode) {
            longest.part = {}; // two parts of one name: the words alone do not tell which
        }
    }
    return longest;
}

} // namespace lastrivet::entry
