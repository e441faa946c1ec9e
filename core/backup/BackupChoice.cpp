// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/BackupChoice.h"

#include "core/base/Clock.h"
#include "core/project/Project.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace lastrivet::backup {

namespace {

constexpr std::string_view key = "backup_choice";
constexpr std::string_view byItself = " auto ";
constexpr std::string_view whenAsked = " asked ";

} // namespace

void choose(Project &project, const BackupChoice &choice)
{
    project.setLocalState(key, fmt::format("{}{}{}", choice.reminder_days,
                                           choice.is_automatic ? byItself : whenAsked,
                                           choice.shelf.string()));
}

BackupChoice choiceOf(const Project &project)
{
    BackupChoice choice;
    const std::string kept = project.localState(key).value_or("");
    const auto [end, error] =
        std::from_chars(kept.data(), kept.data() + kept.size(), choice.reminder_days);
    const auto rest = std::string_view(kept).substr(std::size_t(end - kept.data()));
    choice.is_automatic = rest.starts_with(byItself);
    if (error != std::errc{} || !(choice.is_automatic || rest.starts_with(whenAsked)))
        return {};
    choice.reminder_days = std::max(1, choice.reminder_days);
    choice.shelf = rest.substr((choice.is_automatic ? byItself : whenAsked).size());
    return choice;
}

std::int64_t daysSince(const LastBackup &last, const Project &project)
{
    const Moment made = localMoment(last.at, project.records()->project.time_zone);
    return std::max<std::int64_t>(0, (project.today().day() - made.day()).count());
}

Standing standing(const Project &project)
{
    const auto last = lastBackup(project);
    if (!last)
        return Standing::Never;
    const bool isOld = daysSince(*last, project) > choiceOf(project).reminder_days;
    return isOld && last->journal_hash != project.journalHash() ? Standing::Old : Standing::Fresh;
}

} // namespace lastrivet::backup
