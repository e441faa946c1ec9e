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

Outcome redo(const Options &options, Terminal &terminal)
{
    const auto project = openForWriting(options.project, options.who, terminal);
    const auto label = project->redoLabel();
    if (!label) {
        terminal.complain("There is nothing to redo.");
        return Outcome::No;
    }
    requireDone(project->redo());
    fmt::print(terminal.out(), "Redone: {}\n", onOneLine(*label));
    return Outcome::Done;
}

} // namespace

void declareRedo(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "redo", "Makes the last undone change again", *options);
    addWho(verb, options->who);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return redo(*options, terminal); });
}

} // namespace lastrivet::cli
