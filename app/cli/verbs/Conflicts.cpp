// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/ConflictReport.h"
#include "app/cli/OpenProject.h"
#include "app/cli/VerbOptions.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::vector<std::int64_t> keep;
    std::vector<std::int64_t> take;
    bool all = false;
    std::string who;
    bool json = false;
};

/// Checked before anything is decided, so that a wrong number changes nothing.
void requireOpen(const Project &project, const Options &options)
{
    const auto conflicts = project.conflicts();
    std::set<std::int64_t> asked;
    for (const auto *ids : {&options.keep, &options.take}) {
        for (const auto id : *ids) {
            if (std::none_of(conflicts.begin(), conflicts.end(), [id](const MergeConflict &each) {
                    return each.id == id && !each.decision;
                }))
                throw WrongUsage(fmt::format("{} is nothing that is left to decide.", id));
            if (!asked.insert(id).second)
                throw WrongUsage(fmt::format("{} is named twice.", id));
        }
    }
}

void decide(Project &project, const std::vector<std::int64_t> &ids, ConflictDecision decision)
{
    for (const auto id : ids)
        requireDone(project.decide(id, decision));
}

void writeJson(const std::vector<MergeConflict> &conflicts, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginArray();
    for (const auto &conflict : conflicts)
        writeConflict(json, conflict);
    json.endArray();
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const bool isAsked = options.keep.empty() && options.take.empty();
    const auto project = isAsked ? openForReading(options.project, terminal)
                                 : openForWriting(options.project, options.who, terminal);
    requireOpen(*project, options);
    decide(*project, options.keep, ConflictDecision::Kept);
    decide(*project, options.take, ConflictDecision::Taken);
    auto conflicts = project->conflicts();
    const auto isOpen = [](const MergeConflict &conflict) { return !conflict.decision; };
    const bool isDecided = std::none_of(conflicts.begin(), conflicts.end(), isOpen);
    if (!options.all)
        std::erase_if(conflicts, [&](const MergeConflict &each) { return !isOpen(each); });
    if (options.json) {
        writeJson(conflicts, terminal.out());
        terminal.out() << '\n';
    } else {
        for (const auto &conflict : conflicts)
            printConflict(terminal.out(), *project->records(), conflict);
        if (conflicts.empty())
            terminal.out() << "Merges left nothing to decide.\n";
    }
    return isDecided ? Outcome::Done : Outcome::No;
}

} // namespace

void declareConflicts(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "conflicts", "Lists what merges left to decide, and decides it", *options);
    verb.add_option("--keep", options->keep, "What stands stays")->type_name("ID…");
    verb.add_option("--take", options->take, "What lost takes its place")->type_name("ID…");
    verb.add_flag("--all", options->all, "Lists what was decided as well");
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
