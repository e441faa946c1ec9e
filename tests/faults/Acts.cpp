// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Acts.h"

#include "core/backup/Backup.h"
#include "core/backup/OwnCopies.h"
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

Reasons undo(Project &project, Supplies &supplies)
{
    return project.undoLabel() ? reasons(project.undo()) : log(project, supplies);
}

Reasons redo(Project &project, Supplies &supplies)
{
    return project.redoLabel() ? reasons(project.redo()) : log(project, supplies);
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
    exchange::writeArchive(*project.records(), project.folder(), beside(project, "whole.zip"));
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

constexpr std::array changing{
    Act{"logging", log},         Act{"squawk", noteSquawk},     Act{"photo intake", takePhotoIn},
    Act{"sheet intake", takeSheetIn}, Act{"undo", undo},        Act{"redo", redo},
    Act{"import", importFew},    Act{"large import", importMany},
};
constexpr std::array writing{
    Act{"export as JSON", exportDocument},
    Act{"export as CSV", exportTables},
    Act{"export as archive", exportArchive},
};
constexpr std::array copying{Act{"backup", backUp}, Act{"own copy", keepCopy}};

} // namespace

std::span<const Act> changingActs()
{
    return changing;
}

std::span<const Act> writingActs()
{
    return writing;
}

std::span<const Act> copyingActs()
{
    return copying;
}

const Act &act(std::string_view name)
{
    for (const auto acts : {changingActs(), writingActs(), copyingActs()}) {
        for (const auto &each : acts) {
            if (each.name == name)
                return each;
        }
    }
    throw std::logic_error("no act is named " + std::string(name));
}

} // namespace lastrivet::faults
