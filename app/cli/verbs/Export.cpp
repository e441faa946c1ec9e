// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/Clock.h"
#include "core/calendar/CalendarFile.h"
#include "core/exchange/Archive.h"
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/csv/CsvExport.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <fmt/ostream.h>
#include <optional>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string to;
    bool asCsv = false;
    std::optional<std::string> alarmDays;
};

/// A no when a file that the records speak of is not in it as it was taken in, as for a backup.
Outcome writeZip(const Project &project, const std::string &to, Terminal &terminal)
{
    const auto report = *exchange::writeArchive(project.folder(), to, SystemClock{}.now());
    for (const std::string &name : report.missing)
        terminal.complain(fmt::format("{}: not in the project, so not in the archive.", name));
    for (const std::string &name : report.altered)
        terminal.complain(fmt::format("{}: no longer what was taken in; archived as it is.", name));
    return report.missing.empty() && report.altered.empty() ? Outcome::Done : Outcome::No;
}

std::optional<int> alarmDaysOf(const Options &options)
{
    constexpr int most = 365;
    if (!options.alarmDays)
        return std::nullopt;
    return int(wholeNumberOf(*options.alarmDays, "--alarm", 0, most));
}

Outcome write(const Options &options, const Project &project, Terminal &terminal)
{
    const std::optional<int> alarmDays = alarmDaysOf(options);
    const std::string suffix = std::filesystem::path(options.to).extension().string();
    if (alarmDays && (options.asCsv || suffix != ".ics"))
        throw WrongUsage("--alarm: only a calendar rings, a file that ends in .ics.");
    if (options.asCsv)
        exchange::writeCsvFolder(*project.records(), options.to);
    else if (suffix == ".zip")
        return writeZip(project, options.to, terminal);
    else if (suffix == ".json")
        exchange::writeDocumentFile(*project.records(), options.to);
    else if (suffix == ".ics")
        calendar::writeCalendar(
            calendar::entries(*project.records(), project.profile(), project.today()),
            calendar::fileFacts(project, alarmDays), options.to);
    else
        throw WrongUsage(
            "--to: name a file that ends in .json, .zip or .ics, or a folder with --csv.");
    return Outcome::Done;
}

Outcome exportProject(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project, terminal);
    const Outcome outcome = write(options, *project, terminal);
    fmt::print(terminal.out(), "Wrote {}.\n", onOneLine(options.to));
    return outcome;
}

} // namespace

void declareExport(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "export",
                "Writes all records to JSON, CSV or an archive, or dates to a calendar", *options);
    verb.add_option("--to", options->to, "FILE.json, FILE.zip, FILE.ics, or a folder with --csv")
        ->required()
        ->type_name("WHERE");
    verb.add_flag("--csv", options->asCsv, "One CSV file per kind of record, in a folder");
    verb.add_option("--alarm", options->alarmDays, "Ring so many days before; for FILE.ics")
        ->type_name("DAYS");
    whenNamed(verb, chosen,
              [options](Terminal &terminal) { return exportProject(*options, terminal); });
}

} // namespace lastrivet::cli
