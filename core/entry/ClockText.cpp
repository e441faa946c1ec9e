// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/ClockText.h"

#include "core/base/ParseNumber.h"
#include "core/entry/DayText.h"
#include "core/entry/DurationText.h"
#include "core/entry/LineWords.h"

#include <string>

namespace lastrivet::entry {

namespace {

std::optional<int> digits(std::string_view text, std::size_t least, std::size_t most)
{
    const auto number = parseNumber<int>(text);
    const bool isOfLength = text.size() >= least && text.size() <= most;
    return number && *number >= 0 && isOfLength ? number : std::nullopt;
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

/// `8.30`, which is a time of day in front of `Uhr` alone.
std::optional<int> dottedClock(std::string_view word)
{
    const auto dot = word.find('.');
    if (dot == std::string_view::npos)
        return std::nullopt;
    const auto hour = digits(word.substr(0, dot), 1, 2);
    const auto minute = digits(word.substr(dot + 1), 2, 2);
    return hour && minute && *hour <= 23 && *minute <= 59 ? std::optional(*hour * 60 + *minute)
                                                          : std::nullopt;
}

std::optional<int> wholeHour(std::string_view word)
{
    const auto hour = digits(word, 1, 2);
    return hour && *hour <= 23 ? std::optional(*hour * 60) : std::nullopt;
}

/// In front of `Uhr`: `14:30`, `14.30` or the bare `14`.
std::optional<int> beforeUhr(std::string_view word)
{
    const auto clock = parseClock(word);
    const auto dotted = clock ? clock : dottedClock(word);
    return dotted ? dotted : wholeHour(word);
}

bool isWord(const EntryWords &line, std::size_t i, std::string_view word)
{
    return i < line.count() && line.folded(i) == word;
}

/// The `Uhr` of `14 Uhr`.
bool isUhr(const EntryWords &line, std::size_t i)
{
    return isWord(line, i, "uhr");
}

/// The `30` of `14 Uhr 30`; none in `14 Uhr: 30 rivets`, `14 Uhr 30 min` and `14 h 12 mars`.
std::optional<int> minutesAt(const EntryWords &line, std::size_t i)
{
    if (i >= line.count() || line.colon() == std::optional(i - 1))
        return std::nullopt;
    const std::string &word = line.folded(i);
    const auto minutes = digits(word, 2, 2);
    if (!minutes || *minutes > 59)
        return std::nullopt;
    if (i + 1 >= line.count())
        return minutes;
    const std::string &next = line.folded(i + 1);
    return parseDuration(word + " " + next) || isMonthName(next) ? std::nullopt : minutes;
}

bool isHalfDayWord(std::string_view word)
{
    return word.ends_with("am") || word.ends_with("pm");
}

/// "11:30pm", "11:30 pm"; the "am" behind a time may be that of "am Freitag".
bool saysHalfDay(const EntryWords &line, std::size_t i)
{
    return isHalfDayWord(line.folded(i)) || isWord(line, i + 1, "pm");
}

/// The first time of "9:00-11:30pm" and "11:00-1:30pm": of the same half of the day where that is
/// the earlier, else of the other.
int besideHalfDay(int began, int ended)
{
    constexpr int half = 12 * 60;
    const bool isOfTwelveHours = began >= 60 && began < half + 60;
    const int same = began % half + (ended >= half ? half : 0);
    if (!isOfTwelveHours)
        return began;
    return same < ended ? same : (same + half) % (2 * half);
}

/// A time of day, and how many words it took.
struct Clocked {
    int minute = 0;
    std::size_t words = 0;
};

/// `14:30`, `14 Uhr`, `14 Uhr 30`, `14.30 Uhr`; where it is said to be a point in time also `14h`,
/// `14 h` and `14 h 30`, which otherwise are lengths of it.
std::optional<Clocked> clockAt(const EntryWords &line, std::size_t i, bool isSaid)
{
    if (i >= line.count())
        return std::nullopt;
    const std::string_view word = line.folded(i);
    const bool isBeforeUhr = isUhr(line, i + 1);
    if (isWord(line, i + 1, "pm") && !isHalfDayWord(word)) {
        if (const auto afternoon = parseClock(std::string(word) + "pm"))
            return Clocked{*afternoon, 2};
    }
    const auto exact = isBeforeUhr && !wholeHour(word) ? beforeUhr(word) : parseClock(word);
    if (exact)
        return Clocked{*exact, std::size_t(isBeforeUhr ? 2 : 1)};
    if (isBeforeUhr || (isSaid && isWord(line, i + 1, "h"))) {
        const auto hour = wholeHour(word);
        const auto minutes = hour ? minutesAt(line, i + 2) : std::nullopt;
        return hour ? std::optional(
                          Clocked{*hour + minutes.value_or(0), std::size_t(minutes ? 3 : 2)})
                    : std::nullopt;
    }
    const auto marked =
        isSaid && word.ends_with('h') ? wholeHour(word.substr(0, word.size() - 1)) : std::nullopt;
    return marked ? std::optional(Clocked{*marked, 1}) : std::nullopt;
}

std::optional<ClockRead> span(std::optional<int> began, std::optional<int> ended, std::size_t words)
{
    if (!began || !ended || *began == *ended)
        return std::nullopt;
    return ClockRead{*began, between(*began, *ended), words};
}

/// `9:15-11:30`, `9-11 Uhr` or `9-11 Uhr 45`: both times in one word but for what is behind it.
std::optional<ClockRead> readTightSpan(const EntryWords &line, std::size_t first, Dash dash)
{
    const std::string_view word = line.folded(first);
    const auto from = word.substr(0, dash.begin);
    const auto to = word.substr(dash.begin + dash.bytes);
    if (!isUhr(line, first + 1)) {
        const auto afternoon = isWord(line, first + 1, "pm") && !isHalfDayWord(to)
                                   ? parseClock(std::string(to) + "pm")
                                   : std::nullopt;
        const bool isApart = afternoon.has_value();
        const auto ended = isApart ? afternoon : parseClock(to);
        auto began = parseClock(from);
        if (began && ended && !isHalfDayWord(from) && (isApart || isHalfDayWord(to)))
            began = besideHalfDay(*began, *ended);
        return span(began, ended, std::size_t(isApart ? 2 : 1));
    }
    // Of "8 Uhr 15-11 Uhr 45" it would be the minutes of the one and the hour of the other.
    if (first > 0 && isUhr(line, first - 1))
        return std::nullopt;
    const auto minutes = wholeHour(to) ? minutesAt(line, first + 2) : std::nullopt;
    const auto ended = minutes ? std::optional(*wholeHour(to) + *minutes) : beforeUhr(to);
    return span(beforeUhr(from), ended, std::size_t(minutes ? 3 : 2));
}

/// The hour of "from 9 to 11:30", which is one because of what it is named with.
std::optional<int> hourBefore(std::string_view word, int end)
{
    const auto hour = wholeHour(word);
    return hour && *hour < end ? hour : std::nullopt;
}

/// How the words in front of a time name it.
struct Named {
    /// "at 14 h", "from 14 h": a time of day.
    bool isClock = false;
    /// "at 14 h", which "from 14 h" need not be: a point in time and no length.
    bool isPoint = false;
};

/// `14h`, `14 h 30`: an hour as French writes it.
bool isFrenchHour(const EntryWords &line, std::size_t i)
{
    return isWord(line, i + 1, "h") || line.folded(i).find('h') != std::string::npos;
}

/// `9:15 - 11:30`; behind "at" also `14 h - 16 h`, but `14 h - 2 h` is a time of day and a length.
std::optional<ClockRead> readDashed(const EntryWords &line, std::size_t first, std::size_t dash,
                                    bool isPoint)
{
    const auto plain = clockAt(line, first, false);
    const auto ended = clockAt(line, dash + 1, false);
    const auto words = [&](const Clocked &end) { return dash + 1 + end.words - first; };
    if (ended && plain && saysHalfDay(line, dash + 1) && !saysHalfDay(line, first))
        return span(besideHalfDay(plain->minute, ended->minute), ended->minute, words(*ended));
    if (ended && (plain || isUhr(line, dash + 2)))
        return span(plain ? std::optional(plain->minute) : beforeUhr(line.folded(first)),
                    ended->minute, words(*ended));
    if (!isPoint || !isFrenchHour(line, first))
        return std::nullopt;
    const auto from = clockAt(line, first, true);
    const auto until = clockAt(line, dash + 1, true);
    return from && until && from->minute < until->minute
               ? span(from->minute, until->minute, words(*until))
               : std::nullopt;
}

/// `9:15-11:30`, `9:15 - 11:30` or `9:15 to 11:30`.
std::optional<ClockRead> readSpan(const EntryWords &line, std::size_t first, Named named)
{
    if (const Dash dash = dashIn(line.folded(first)); dash.bytes > 0)
        return readTightSpan(line, first, dash);
    auto began = clockAt(line, first, named.isClock);
    const std::size_t middle = first + (began ? began->words : 1);
    if (middle + 1 >= line.count())
        return std::nullopt;
    if (line.isDash(middle))
        return readDashed(line, first, middle, named.isPoint);
    const auto ended = words::isOneOf(line.folded(middle), words::until)
                           ? clockAt(line, middle + 1, named.isClock)
                           : std::nullopt;
    if (!ended)
        return std::nullopt;
    // The hour of "9 to 11 Uhr" is one because of what stands behind the second.
    const bool isEndOfClock = isUhr(line, middle + 2);
    const bool isHalfDay = saysHalfDay(line, middle + 1);
    if (began && isHalfDay && !saysHalfDay(line, first))
        began->minute = besideHalfDay(began->minute, ended->minute);
    const auto from = began                         ? std::optional(began->minute)
                      : isEndOfClock                ? beforeUhr(line.folded(first))
                      : named.isClock && !isHalfDay ? hourBefore(line.folded(first), ended->minute)
                                                    : std::nullopt;
    return span(from, ended->minute, middle + 1 + ended->words - first);
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
    const bool isPoint = words::isOneOf(line.folded(first), words::point);
    auto read = readSpan(line, at, {isNamed, isPoint});
    if (!read && (isNamed || isUhr(line, at + 1))) {
        if (const auto from = clockAt(line, at, isPoint))
            read = ClockRead{from->minute, std::nullopt, from->words};
    }
    if (read)
        read->words += isNamed ? 1 : 0;
    return read;
}

} // namespace lastrivet::entry
