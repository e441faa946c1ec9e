// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/ClockText.h"

#include "core/entry/LineWords.h"

#include <charconv>
#include <string>

namespace lastrivet::entry {

namespace {

std::optional<int> digits(std::string_view text, std::size_t least, std::size_t most)
{
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || number < 0 ||
        text.size() < least || text.size() > most)
        return std::nullopt;
    return number;
}

/// Hyphen, en dash or em dash: where it begins, and its bytes.
struct Dash {
    std::size_t begin = std::string_view::npos;
    std::size_t bytes = 0;
};

Dash dashIn(std::string_view word)
{
    for (const std::string_view dash : {"-", "–", "—"}) {
        const auto at = word.find(dash);
        if (at != std::string_view::npos)
            return {at, dash.size()};
    }
    return {};
}

Minutes between(int from, int to)
{
    constexpr int day = 24 * 60;
    return Minutes{(to - from + day) % day};
}

/// What says that an hour without minutes is one, and no length of time.
struct Hours {
    /// Behind "at", or between "from" and "to": `14h`.
    bool are_said = false;
    /// In front of `Uhr`: the bare `14`.
    bool are_of_clock = false;
};

std::optional<int> clockOrHour(std::string_view word, Hours hours)
{
    const auto clock = parseClock(word);
    const bool isMarked = word.ends_with('h');
    if (clock || !(hours.are_of_clock || (hours.are_said && isMarked)))
        return clock;
    const auto hour = digits(word.substr(0, word.size() - (isMarked ? 1 : 0)), 1, 2);
    return hour && *hour <= 23 ? std::optional(*hour * 60) : std::nullopt;
}

/// The `Uhr` of `14 Uhr`.
bool isUhr(const EntryWords &line, std::size_t i)
{
    return i < line.count() && line.folded(i) == "uhr";
}

std::optional<ClockRead> span(std::string_view from, std::string_view to, Hours hours,
                              std::size_t words)
{
    const auto began = clockOrHour(from, hours);
    const auto ended = clockOrHour(to, hours);
    if (!began || !ended || *began == *ended)
        return std::nullopt;
    return ClockRead{*began, between(*began, *ended), words + (hours.are_of_clock ? 1 : 0)};
}

/// `9:15-11:30`, `9:15 - 11:30` or `9:15 to 11:30`.
std::optional<ClockRead> readSpan(const EntryWords &line, std::size_t first, bool isNamed)
{
    const std::string_view word = line.folded(first);
    if (const Dash dash = dashIn(word); dash.bytes > 0)
        return span(word.substr(0, dash.begin), word.substr(dash.begin + dash.bytes),
                    {false, isUhr(line, first + 1)}, 1);
    if (first + 2 >= line.count())
        return std::nullopt;
    const std::string_view middle = line.folded(first + 1);
    const bool isDash = !middle.empty() && dashIn(middle).bytes == middle.size();
    if (!isDash && !words::isOneOf(middle, words::until))
        return std::nullopt;
    return span(word, line.folded(first + 2), {isNamed && !isDash, isUhr(line, first + 3)}, 3);
}

} // namespace

std::optional<int> parseClock(std::string_view word)
{
    const bool isAfternoon = word.ends_with("pm");
    const bool isHalfDay = isAfternoon || word.ends_with("am");
    if (isHalfDay)
        word.remove_suffix(2);
    const auto mark = word.find_first_of(":h");
    if (mark == std::string_view::npos && !isHalfDay)
        return std::nullopt;
    auto hour = digits(word.substr(0, mark), 1, 2);
    const auto minute = mark == std::string_view::npos ? std::optional<int>{0}
                                                       : digits(word.substr(mark + 1), 2, 2);
    if (!hour || !minute || *minute > 59 || *hour > 23 || (isHalfDay && (*hour < 1 || *hour > 12)))
        return std::nullopt;
    if (isHalfDay)
        hour = *hour % 12 + (isAfternoon ? 12 : 0);
    return *hour * 60 + *minute;
}

std::optional<ClockRead> readClock(const EntryWords &line, std::size_t first)
{
    const bool isNamed = words::isOneOf(line.folded(first), words::at);
    const std::size_t at = first + (isNamed ? 1 : 0);
    if (at >= line.count())
        return std::nullopt;
    auto read = readSpan(line, at, isNamed);
    if (!read && isNamed) {
        const Hours hours{words::isOneOf(line.folded(first), words::point), isUhr(line, at + 1)};
        if (const auto from = clockOrHour(line.folded(at), hours))
            read = ClockRead{*from, std::nullopt, std::size_t(hours.are_of_clock ? 2 : 1)};
    }
    if (read)
        read->words += isNamed ? 1 : 0;
    return read;
}

} // namespace lastrivet::entry
