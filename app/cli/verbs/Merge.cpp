// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/ConflictReport.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string other;
    std::string who;
    bool json = false;
};

void writeJson(const MergeReport &report, const Project &project, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("changes", std::int64_t(report.changes));
    json.member("records", std::int64_t(report.records));
    json.member("files", std::int64_t(report.files));
    json.key("missing_files");
    json.beginArray();
    for (const auto &file : report.missing_files)
        json.value(file);
    json.endArray();
    json.key("conflicts");
    json.beginArray();
    for (const auto &conflict : project.conflicts()) {
        if (!conflict.decision)
            writeConflict(json, conflict);
    }
    json.endArray();
    json.endObject();
}

void print(const MergeReport &report, const Project &project, std::ostream &out)
{
    if (report.changes == 0)
        fmt::print(out, "Nothing new: this project has all changes of the other copy.\n");
    else
        fmt::print(out, "{} brought in; {} changed by it; {} copied.\n",
                   counted(std::int64_t(report.changes), "change"),
                   counted(std::int64_t(report.records), "record"),
                   counted(std::int64_t(report.files), "file"));
    if (report.conflicts.empty())
        return;
    fmt::print(out, "To decide, with the verb conflicts:\n");
    for (const auto &conflict : project.conflicts()) {
        if (!conflict.decision)
            printConflict(out, *project.records(), conflict);
    }
}

Outcome merge(const Options &options, Terminal &terminal)
{
    const auto project = openForWriting(options.project, options.who, terminal);
    const auto report = project->merge(options.other);
    if (!report)
        requireDone(report.reason());
    for (const auto &file : report->missing_files)
        terminal.complain(onOneLine(file) + ": neither copy has it, so it was not copied.");
    if (options.json) {
        writeJson(*report, *project, terminal.out());
        terminal.out() << '\n';
    } else {
        print(*report, *project, terminal.out());
    }
    return report->conflicts.empty() ? Outcome::Done : Outcome::No;
}

} // namespace

void declareMerge(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "merge", "Brings another copy's changes in", *options);
    verb.add_option("OTHER", options->other, "The other copy's folder or its database file")
        ->required();
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return merge(*options, terminal); });
}

} // namespace lastrivet::cli
