// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/ShiftText.h"

#include "core/base/CaseFold.h"
#include "core/base/Trimmed.h"
#include "core/entry/DurationText.h"
#include "core/entry/LineWords.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <string>
#include <system_error>

namespace lastrivet::entry {

namespace {

constexpr std::array<std::string_view, 9> dayWords{"d",    "day", "days", "t",    "tag",
                                                   "tage", "j",   "jour", "jours"};
/// More days than the years that records know.
constexpr std::int64_t mostDays = 400 * 366;
constexpr std::int64_t minutesPerDay = 24 * 60;

/// "2 days", "366d", "1d 2h30".
std::optional<std::int64_t> readDays(std::string_view text)
{
    std::int64_t days = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), days);
    if (error != std::errc{} || days < 0 || days > mostDays)
        return std::nullopt;
    text.remove_prefix(std::size_t(end - text.data()));
    text = trimmed(text);
    const auto letters =
        std::find_if(text.begin(), text.end(), [](char c) { return c < 'a' || c > 'z'; }) -
        text.begin();
    if (!words::isOneOf(text.substr(0, std::size_t(letters)), dayWords))
        return std::nullopt;
    text.remove_prefix(std::size_t(letters));
    text = trimmed(text);
    const auto rest = text.empty() ? std::optional<std::int64_t>(0) : readMinutes(text);
    if (!rest || *rest < 0 || *rest >= minutesPerDay)
        return std::nullopt;
    return days * minutesPerDay + *rest;
}

} // namespace

std::optional<std::int64_t> readShift(std::string_view text)
{
    const std::string small = folded(text);
    std::string_view rest = trimmed(small);
    bool isBack = false;
    for (const std::string_view sign : {"+", "-", "−"}) {
        if (!rest.starts_with(sign))
            continue;
        rest.remove_prefix(sign.size());
        isBack = sign != "+";
        break;
    }
    rest = trimmed(rest);
    // One sign is enough.
    if (rest.starts_with('-') || rest.starts_with("−"))
        return std::nullopt;
    const auto days = readDays(rest);
    const auto minutes = days ? days : readMinutes(rest);
    return minutes && isBack ? std::optional(-*minutes) : minutes;
}

} // namespace lastrivet::entry
