// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/RunningTimer.h"

#include <charconv>

#include <fmt/format.h>

namespace lastrivet {

namespace {

constexpr std::string_view key = "running_timer";

/// The next number of a text of numbers between spaces; 0 when there is none.
std::int64_t takeNumber(std::string_view &text)
{
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    text.remove_prefix(std::size_t(end - text.data()));
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(' ')));
    return error == std::errc{} ? number : 0;
}

} // namespace

std::optional<RunningTimer> runningTimer(const Project &project)
{
    const auto stored = project.localState(key);
    if (!stored)
        return std::nullopt;
    std::string_view text = *stored;
    const auto began = Moment::parse(text.substr(0, text.find(' ')));
    if (!began)
        return std::nullopt;
    text.remove_prefix(std::min(text.size(), text.find(' ')));
    text.remove_prefix(std::min(text.size(), text.find_first_not_of(' ')));
    RunningTimer timer{*began, {}, {}, {}};
    timer.component_id = Id<Component>{takeNumber(text)};
    timer.step_id = Id<Step>{takeNumber(text)};
    timer.squawk_id = Id<Squawk>{takeNumber(text)};
    return timer;
}

void setRunningTimer(Project &project, const std::optional<RunningTimer> &timer)
{
    if (!timer) {
        project.setLocalState(key, std::nullopt);
        return;
    }
    project.setLocalState(key, fmt::format("{} {} {} {}", timer->began.text(),
                                           timer->component_id.value(), timer->step_id.value(),
                                           timer->squawk_id.value()));
}

} // namespace lastrivet
