// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <optional>

namespace lastrivet {

namespace {

// A nested message is a mark that no text of a record holds, then its pattern and its arguments,
// each behind its length.
constexpr char insideMark = '\x01';
constexpr char firstMark = '\x02';
/// Ours nest three deep; a stranger's text shall not make us recurse without end.
constexpr int deepest = 8;
/// Nor shall it grow: a nested message says little more than it holds, in any language.
constexpr std::size_t mostGrowth = 4;
constexpr std::size_t longestShort = 1024;

std::string withLength(std::string_view text)
{
    return std::to_string(text.size()) + ':' + std::string(text);
}

std::string packed(char mark, const Message &message)
{
    std::string text = mark + withLength(message.pattern);
    for (const std::string &argument : message.arguments)
        text += withLength(argument);
    return text;
}

/// Takes the next text behind its length from the front; empty when there is none.
std::optional<std::string_view> takeText(std::string_view &rest)
{
    std::size_t size = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), size);
    const auto head = std::size_t(end - rest.data());
    if (error != std::errc{} || head >= rest.size() || rest[head] != ':' ||
        rest.size() - head - 1 < size)
        return std::nullopt;
    const auto text = rest.substr(head + 1, size);
    rest.remove_prefix(head + 1 + size);
    return text;
}

std::optional<Message> unpacked(std::string_view argument)
{
    if (argument.empty() || (argument[0] != insideMark && argument[0] != firstMark))
        return std::nullopt;
    argument.remove_prefix(1);
    const auto pattern = takeText(argument);
    if (!pattern)
        return std::nullopt;
    Message message{*pattern, {}};
    while (const auto text = takeText(argument))
        message.arguments.emplace_back(*text);
    return message;
}

/// The first letter in upper case, of ASCII and of the western European letters behind it.
std::string capitalised(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = char(text[0] - 'a' + 'A');
    const bool isTwoBytes = text.size() > 1 && text[0] == '\xC3';
    if (isTwoBytes && text[1] >= '\xA0' && text[1] <= '\xBE' && text[1] != '\xB7')
        text[1] = char(text[1] - 0x20);
    return text;
}

/// At least as much as `filled` comes to.
std::size_t filledSize(std::string_view pattern, const std::vector<std::string> &arguments)
{
    std::size_t size = pattern.size();
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string place = '{' + std::to_string(i) + '}';
        for (auto at = pattern.find(place); at != std::string_view::npos;
             at = pattern.find(place, at + 1))
            size += arguments[i].size();
    }
    return size;
}

/// The words of a message; empty where they would come to more than `most` bytes.
std::optional<std::string> saidWithin(std::size_t most, int depth, const Message &message,
                                      const Tongue &tongue);

std::string saidArgument(int depth, const std::string &argument, const Tongue &tongue)
{
    const auto message = depth < deepest ? unpacked(argument) : std::nullopt;
    const auto most = std::max(argument.size() * mostGrowth, longestShort);
    auto words = message ? saidWithin(most, depth + 1, *message, tongue) : std::nullopt;
    if (!words)
        return tongue.argument ? tongue.argument(argument) : argument;
    return argument[0] == firstMark ? capitalised(*std::move(words)) : *std::move(words);
}

std::optional<std::string> saidWithin(std::size_t most, int depth, const Message &message,
                                      const Tongue &tongue)
{
    std::vector<std::string> arguments;
    arguments.reserve(message.arguments.size());
    for (const std::string &argument : message.arguments)
        arguments.push_back(saidArgument(depth, argument, tongue));
    const std::string pattern =
        tongue.pattern ? tongue.pattern(message.pattern) : std::string(message.pattern);
    if (filledSize(pattern, arguments) > most)
        return std::nullopt;
    return filled(pattern, arguments);
}

} // namespace

std::string said(const Message &message, const Tongue &tongue)
{
    constexpr std::size_t anyLength = std::numeric_limits<std::size_t>::max();
    return saidWithin(anyLength, 0, message, tongue).value();
}

std::string english(const Message &message)
{
    return said(message, {});
}

std::string nested(const Message &message)
{
    return packed(insideMark, message);
}

std::string nestedFirst(const Message &message)
{
    return packed(firstMark, message);
}

Message verbatim(std::string text)
{
    return {"{0}", {std::move(text)}};
}

} // namespace lastrivet
