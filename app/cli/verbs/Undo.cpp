// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string who;
};

Outcome undo(const Options &options, Terminal &terminal)
{
    const auto project = openForWriting(options.project, options.who, terminal);
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
    addWho(verb, options->who);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return undo(*options, terminal); });
}

} // namespace lastrivet::cli
