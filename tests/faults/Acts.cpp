// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Acts.h"

#include "core/backup/Backup.h"
#include "core/backup/OwnCopies.h"
#include "core/base/Clock.h"
#include "core/evidence/IntakeStore.h"
#include "core/exchange/Archive.h"
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/Import.h"
#include "core/exchange/csv/CsvExport.h"
#include "tests/faults/Copies.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace lastrivet::faults {

namespace fs = std::filesystem;

namespace {

using Reasons = std::vector<std::string>;

Reasons reasons(const Result<ChangeNotice, Refusal> &result)
{
    return result ? Reasons{} : Reasons{english(result.reason())};
}

fs::path beside(const Project &project, std::string_view name)
{
    return project.folder().parent_path() / name;
}

Reasons log(Project &project, Supplies &supplies)
{
    return reasons(project.change("Work logged", [&](Edit &edit) {
        WorkSession session;
        session.began = edit.now();
        session.minutes = Minutes{15 + supplies.next() % 200};
        session.component_id = edit.records().components.begin()->id;
        session.workers = {{edit.records().people.begin()->id, {}, false}};
        session.note = "Skins fitted, holes deburred";
        edit.put(session);
    }));
}

Reasons noteSquawk(Project &project, Supplies &)
{
    return reasons(project.change("Squawk noted", [&](Edit &edit) {
        Squawk squawk;
        squawk.number = nextNumber<Squawk>(edit.records());
        squawk.title = "Rivet head stands proud";
        squawk.component_id = edit.records().components.begin()->id;
        squawk.found_on = edit.now();
        edit.put(squawk);
    }));
}

Reasons takeIn(Project &project, const std::vector<evidence::IncomingFile> &files)
{
    Reasons why;
    for (const auto &failure : evidence::takeIn(project, files, 0).failures)
        why.push_back(english(failure.why));
    return why;
}

Reasons takePhotoIn(Project &project, Supplies &supplies)
{
    return takeIn(project, {supplies.photo()});
}

Reasons takeSheetIn(Project &project, Supplies &supplies)
{
    return takeIn(project, {supplies.sheet()});
}

void logFirst(Project &project, Supplies &supplies)
{
    log(project, supplies);
}

Reasons undo(Project &project, Supplies &)
{
    return reasons(project.undo());
}

void undoFirst(Project &project, Supplies &)
{
    // It may stand undone already, where a redo was broken off. A refusal shows in the redo, which
    // then has nothing to do and says so.
    if (!project.redoLabel())
        (void)project.undo();
}

Reasons redo(Project &project, Supplies &)
{
    return reasons(project.redo());
}

Reasons import(Project &project, const fs::path &document)
{
    const auto report = exchange::importDocument(project, document);
    Reasons why;
    if (!report) {
        for (const auto &error : report.reason())
            why.push_back(english(error, document.filename().string()));
    }
    return why;
}

Reasons importFew(Project &project, Supplies &supplies)
{
    return import(project, supplies.document(5));
}

/// So many that the references are checked once, at the end.
Reasons importMany(Project &project, Supplies &supplies)
{
    return import(project, supplies.document(600));
}

Reasons exportDocument(Project &project, Supplies &)
{
    exchange::writeDocumentFile(*project.records(), beside(project, "export.json"));
    return {};
}

Reasons exportTables(Project &project, Supplies &)
{
    exchange::writeCsvFolder(*project.records(), beside(project, "tables"));
    return {};
}

Reasons exportArchive(Project &project, Supplies &)
{
    exchange::writeArchive(project.folder(), beside(project, "whole.zip"), {});
    return {};
}

auto now()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

Reasons backUp(Project &project, Supplies &supplies)
{
    if (auto why = supplies.next() % 3 ? log(project, supplies) : takePhotoIn(project, supplies);
        !why.empty())
        return why;
    fs::create_directories(beside(project, shelf));
    const auto report = backup::backUp(project.folder(), beside(project, shelf), now());
    return report && report->isWhole() ? Reasons{} : Reasons{"The backup is not whole."};
}

Reasons keepCopy(Project &project, Supplies &supplies)
{
    if (auto why = log(project, supplies); !why.empty())
        return why;
    backup::keepCopy(project.folder(), now());
    return {};
}

/// Another copy of the project with a change and a photo of its own; then this one goes on, too.
void part(Project &project, Supplies &supplies)
{
    const auto elsewhere = supplies.folder() / "elsewhere";
    fs::remove_all(elsewhere);
    fs::create_directories(elsewhere);
    backup::backUp(project.folder(), elsewhere, now());
    const auto other = Project::open(elsewhere / project.folder().filename(), {nullptr, "Kim"});
    log(*other, supplies);
    takePhotoIn(*other, supplies);
    log(project, supplies);
}

Reasons merge(Project &project, Supplies &supplies)
{
    const auto report =
        project.merge(supplies.folder() / "elsewhere" / project.folder().filename());
    return report ? Reasons{} : Reasons{english(report.reason())};
}

constexpr std::array all{
    Act{"logging", Effect::OnRecords, log},
    Act{"squawk", Effect::OnRecords, noteSquawk},
    Act{"photo intake", Effect::OnRecords, takePhotoIn},
    Act{"sheet intake", Effect::OnRecords, takeSheetIn},
    Act{"undo", Effect::OnRecords, undo, logFirst},
    Act{"redo", Effect::OnRecords, redo, undoFirst},
    Act{"import", Effect::OnRecords, importFew},
    Act{"large import", Effect::OnRecords, importMany},
    Act{"merge", Effect::OnRecords, merge, part},
    Act{"export as JSON", Effect::OnFiles, exportDocument},
    Act{"export as CSV", Effect::OnFiles, exportTables},
    Act{"export as archive", Effect::OnFiles, exportArchive},
    Act{"backup", Effect::OnCopies, backUp},
    Act{"own copy", Effect::OnCopies, keepCopy},
};

} // namespace

void keepDoing(const Act &act, Project &project, Supplies &supplies, const Worker::Say &say,
               const Worker::IsToEnd &isToEnd)
{
    say("ready");
    while (!isToEnd()) {
        act.prepare(project, supplies);
        const auto why = act.perform(project, supplies);
        say(why.empty() ? project.journalHash() : why.front());
    }
}

std::span<const Act> acts()
{
    return all;
}

const Act &act(std::string_view name)
{
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const Act &each) { return each.name == name; });
    if (at == all.end())
        throw std::logic_error("no act is named " + std::string(name));
    return *at;
}

} // namespace lastrivet::faults
