// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// A day read from the front of some words, and how many of them it took.
struct DayRead {
    Moment day;
    std::size_t words = 0;
};

/// Reads `today`, `yesterday`, `tomorrow`, `2 days ago`, a weekday (the latest before today, as is
/// `last Friday`), `3 Mar`, `Mar 3 2026`, `3.3.`, ISO 8601, or `14/3/2026`, whose month is certain,
/// in folded words from `first` on; names of days and months may be English, German or French. A
/// day without a year is the latest that is not after today.
std::optional<DayRead> readDay(const std::vector<std::string> &words, std::size_t first,
                               Moment today);

/// A day and month, as `readDay` read them, with the year of two digits behind them: "3 Mar 25".
/// Only whoever knows what follows can tell that it is no count: "3 Mar 25 rivets". Empty when no
/// such number is there.
std::optional<DayRead> withShortYear(const DayRead &read, const std::vector<std::string> &words,
                                     std::size_t first, Moment today);

/// The same for a whole text; empty when anything is left over.
std::optional<Moment> parseDayText(std::string_view text, Moment today);

/// The last day of a month that is written with its year in four figures: "03/2027", "2027-03",
/// "MAR 2027", "März 2027". Empty for any other text.
std::optional<Moment> parseMonthEnd(std::string_view text);
/// True for a month and one number, which may be its day or its year, and for a day without any
/// year: "Mar 27", "27. März", "27.3.".
bool lacksYear(std::string_view text);

/// True for a month's name or enough of its beginning, folded.
bool isMonthName(std::string_view word);
/// True for what has the form of a date, whether that day exists or not: `31.4.`, `12/11/26`,
/// `2026-2-30`.
bool looksLikeDay(std::string_view word);

} // namespace lastrivet::entry
