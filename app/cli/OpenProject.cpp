// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/OpenProject.h"

#include "app/cli/Complaint.h"
#include "core/backup/OwnCopies.h"
#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/readiness/Strays.h"

#include <fmt/format.h>
#include <spdlog/spdlog.h>

#include <utility>

namespace lastrivet::cli {

namespace {

OpenedProject openAt(const std::string &folder, Project::Options options)
{
    return tellingWhere(
        folder, [&] { return OpenedProject(Project::open(folder, std::move(options)).release()); });
}

void tellOfClock(const Project &project, Terminal &terminal)
{
    if (const auto notice = project.clockNotice())
        terminal.complain(english(*notice));
}

OpenedProject openAndTell(const std::string &folder, const std::string &who, Terminal &terminal)
{
    auto project = openAt(folder, {nullptr, who, false});
    for (const Message &notice : project->notices())
        terminal.complain(english(notice));
    tellOfClock(*project, terminal);
    return project;
}

} // namespace

OpenedProject openForReading(const std::string &folder, Terminal &terminal)
{
    auto project = openAt(folder, {nullptr, {}, true});
    tellOfClock(*project, terminal);
    return project;
}

void CloseWithCopy::operator()(Project *project) const
{
    const std::unique_ptr<Project> closing(project);
    try {
        // `keepCopy` makes none when the newest copy has the same state.
        const auto now = SystemClock{}.now();
        if (!closing->isReadOnly() && backup::isCopyDueAtEnd(closing->folder(), now))
            backup::keepCopy(closing->folder(), now);
    } catch (const std::exception &fault) {
        // No failure of the verb: what was asked for is saved. The next one that writes tries
        // again.
        spdlog::warn("no copy of the database: {}", fault.what());
    }
}

OpenedProject openForWriting(const std::string &folder, const std::string &who, Terminal &terminal)
{
    auto project = openAndTell(folder, who, terminal);
    if (project->isReadOnly())
        throw NotWritable(fmt::format("{}: {}", folder, project->readOnlyReason()));
    return project;
}

OpenedProject openToPrint(const std::string &folder, const std::string &who, Terminal &terminal)
{
    auto project = openAndTell(folder, who, terminal);
    if (project->isReadOnly())
        terminal.complain(project->readOnlyReason() +
                          " It is printed, but the journal does not say so.");
    return project;
}

void tellOfStrays(const Records &records, Terminal &terminal)
{
    if (const auto stray = readiness::firstStray(records))
        terminal.complain(fmt::format(
            "{} {} names {} {}, which is not on record, and counts nowhere: another program wrote "
            "into the database, or it is damaged. “verify” says what else is wrong.",
            word(stray->record.type), stray->record.id, word(stray->named.type), stray->named.id));
    if (const auto ring = readiness::firstRing(records))
        terminal.complain(fmt::format(
            "component {} lies inside itself, and what is in it may count nowhere: another program "
            "wrote into the database, or it is damaged. “verify” says what else is wrong.",
            ring->value()));
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
