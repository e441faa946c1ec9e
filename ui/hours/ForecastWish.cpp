// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/ForecastWish.h"

#include "ui/shell/Session.h"

#include <algorithm>
#include <charconv>
#include <string>
#include <string_view>

namespace lastrivet::ui {

namespace {

constexpr std::string_view withoutKey = "forecast_without";
constexpr std::string_view paceKey = "forecast_hours_per_week";
constexpr int hoursOfAWeek = 168;

/// Whole numbers with spaces between them; what is none ends the list.
std::vector<std::int64_t> numbersIn(std::string_view text)
{
    std::vector<std::int64_t> numbers;
    const char *const end = text.data() + text.size();
    for (const char *at = text.data(); at < end;) {
        std::int64_t number = 0;
        const auto read = std::from_chars(at, end, number);
        if (read.ec != std::errc{})
            break;
        numbers.push_back(number);
        at = read.ptr + (read.ptr < end ? 1 : 0);
    }
    return numbers;
}

} // namespace

std::optional<ForecastWish> ForecastWish::kept(Session &session)
{
    const LocalState parts = session.localState(withoutKey);
    const LocalState pace = session.localState(paceKey);
    if (!parts.isRead || !pace.isRead)
        return std::nullopt;
    ForecastWish wish;
    for (const auto id : numbersIn(parts.value.value_or(""))) {
        if (session.records()->findLive(Id<Component>{id}))
            wish.without.push_back(Id<Component>{id});
    }
    std::ranges::sort(wish.without);
    const auto hours = numbersIn(pace.value.value_or(""));
    if (!hours.empty() && hours.front() > 0 && hours.front() <= hoursOfAWeek)
        wish.hours_per_week = int(hours.front());
    return wish;
}

void ForecastWish::keep(Session &session) const
{
    std::string ids;
    for (const auto id : without)
        ids += (ids.empty() ? "" : " ") + std::to_string(id.value());
    session.keepLocalState(withoutKey,
                           without.empty() ? std::nullopt : std::optional<std::string_view>(ids));
    const std::string hours = std::to_string(hours_per_week.value_or(0));
    session.keepLocalState(paceKey,
                           hours_per_week ? std::optional<std::string_view>(hours) : std::nullopt);
}

forecast::Options ForecastWish::options() const
{
    forecast::Options options;
    options.choice.without = without;
    if (hours_per_week)
        options.hours_per_week = *hours_per_week;
    return options;
}

} // namespace lastrivet::ui
