// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/OpenProject.h"

#include "app/cli/Complaint.h"
#include "core/base/Error.h"

#include <fmt/format.h>

namespace lastrivet::cli {

std::unique_ptr<Project> openForReading(const std::string &folder)
{
    return Project::open(folder, {nullptr, {}, true});
}

std::unique_ptr<Project> openForWriting(const std::string &folder, const std::string &who)
{
    auto project = Project::open(folder, {nullptr, who, false});
    if (project->isReadOnly())
        throw NotWritable(fmt::format("{}: {}", folder, project->readOnlyReason()));
    return project;
}

void requireDone(const Result<ChangeNotice, Refusal> &result)
{
    if (result)
        return;
    std::vector<std::string> lines;
    for (const Violation &violation : result.reason().violations)
        lines.push_back(english(violation.message));
    if (lines.empty())
        lines.push_back(english(result.reason().message));
    throw Invalid(std::move(lines));
}

} // namespace lastrivet::cli
