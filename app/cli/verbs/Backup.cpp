// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/CopyReport.h"
#include "app/cli/OpenProject.h"
#include "app/cli/VerbOptions.h"
#include "core/backup/LastBackup.h"
#include "core/base/Clock.h"
#include "core/base/Error.h"

#include <CLI/CLI.hpp>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string to;
    bool everyFile = false;
    bool json = false;
};

/// False when nothing can be written to the project's folder.
bool leaveNote(const Options &options, const backup::LastBackup &last)
{
    try {
        backup::leaveNote(options.project, last);
        return true;
    } catch (const Fault &) {
        return false;
    }
}

/// Notes the backup in the project; where another program has that, the note is left for it. When
/// its disk is full, the backup counts all the same, and only its date is not noted.
void note(const Options &options, const backup::LastBackup &last, Terminal &terminal)
{
    try {
        backup::noteBackup(*openForWriting(options.project, {}, terminal), last);
    } catch (const Fault &fault) {
        if (leaveNote(options, last))
            return;
        terminal.complain(std::string("The backup is made, but the project could not note its "
                                      "date. ") +
                          fault.what());
    }
}

Outcome backUp(const Options &options, Terminal &terminal)
{
    const auto now = SystemClock{}.now();
    const auto reading =
        options.everyFile ? backup::Reading::EveryFile : backup::Reading::Originals;
    const auto report = tellingWhere(options.project, [&] {
        return *backup::backUp(options.project, options.to, now, reading);
    });
    tell(report, options.json, terminal);
    if (report.is_same_disk && !options.json)
        terminal.out() << "It lies on the disk of the project, and would be lost with it.\n";
    note(options, {now, report.place.string(), report.journal_hash}, terminal);
    return report.isWhole() ? Outcome::Done : Outcome::No;
}

} // namespace

void declareBackup(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "backup", "Copies the project with all its files, and reads the copy back",
                *options);
    verb.add_option("--to", options->to, "A folder on another disk that keeps the backups")
        ->required()
        ->type_name("DIR");
    verb.add_flag("--every-file", options->everyFile,
                  "Reads back also what earlier backups copied");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return backUp(*options, terminal); });
}

} // namespace lastrivet::cli
