// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/PlainText.h"

#include "core/base/Utf8.h"
#include "core/base/VisibleText.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet::cli {

namespace {

/// Joins at U+2028 and U+2029, too, by which Unicode separates lines and paragraphs.
void joinAtSeparators(std::string &text)
{
    for (const std::string_view mark : {"\u2028", "\u2029"}) {
        for (auto at = text.find(mark); at != std::string::npos; at = text.find(mark, at))
            text.replace(at, mark.size(), " ");
    }
}

} // namespace

std::string onOneLine(std::string_view text)
{
    std::string line = visibleText(text);
    if (firstNotUtf8(line))
        line = wellFormed(line);
    for (char &c : line)
        c = c == '\n' || c == '\r' || c == '\t' ? ' ' : c;
    joinAtSeparators(line);
    return line;
}

std::size_t widthOf(std::string_view text)
{
    return std::size_t(
        std::count_if(text.begin(), text.end(), [](char c) { return !continuesCharacter(c); }));
}

std::string shortened(std::string_view text, std::size_t width)
{
    if (widthOf(text) <= width)
        return std::string(text);
    std::size_t end = 0;
    for (std::size_t count = 0; end < text.size(); ++end) {
        if (!continuesCharacter(text[end]) && ++count == width)
            break;
    }
    return std::string(text.substr(0, end)) + "…";
}

std::string hoursText(Minutes minutes)
{
    const auto count = minutes.count();
    return count < 60 ? fmt::format("{} min", count)
                      : fmt::format("{} h {:02}", count / 60, count % 60);
}

std::string counted(std::int64_t count, std::string_view noun, std::string_view plural)
{
    if (count == 1)
        return fmt::format("1 {}", noun);
    return plural.empty() ? fmt::format("{} {}s", count, noun)
                          : fmt::format("{} {}", count, plural);
}

std::string spaced(std::string_view word)
{
    std::string words(word);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

std::string capitalised(std::string text)
{
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = char(text.front() - 'a' + 'A');
    return text;
}

} // namespace lastrivet::cli
