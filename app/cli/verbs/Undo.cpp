// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string who;
    std::optional<std::int64_t> row;
};

Outcome takeBack(Project &project, std::int64_t row, Terminal &terminal)
{
    const auto lines = project.journalLines();
    const auto found = std::ranges::find(lines, row, &JournalLine::seq);
    if (found == lines.end())
        throw WrongUsage(
            fmt::format("The journal has no row {}; lastrivet-cli journal lists them.", row));
    const std::string taken = "Taken back: " + found->label;
    const auto result = project.reverse(row, taken);
    if (!result && result.reason().has_nothing) {
        terminal.complain(english(result.reason().message));
        return Outcome::No;
    }
    requireDone(result);
    fmt::print(terminal.out(), "{}\n", onOneLine(taken));
    return Outcome::Done;
}

Outcome undo(const Options &options, Terminal &terminal)
{
    const auto project = openForWriting(options.project, options.who, terminal);
    if (options.row)
        return takeBack(*project, *options.row, terminal);
    const auto label = project->undoLabel();
    if (!label) {
        terminal.complain("There is nothing to undo: nothing was changed since the project began, "
                          "or since the last merge or print, which stay.");
        return Outcome::No;
    }
    requireDone(project->undo());
    fmt::print(terminal.out(), "Undone: {}\n", onOneLine(*label));
    return Outcome::Done;
}

} // namespace

void declareUndo(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "undo", "Takes the last change back", *options);
    verb.add_option(
            "--row", options->row,
            "Takes back what this older row of the journal changed instead, by a new change")
        ->type_name("NUMBER");
    addWho(verb, options->who);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return undo(*options, terminal); });
}

} // namespace lastrivet::cli
