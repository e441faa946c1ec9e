// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/ReadinessText.h"
#include "app/cli/VerbOptions.h"
#include "core/answers/ReadinessJson.h"
#include "core/readiness/Readiness.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <optional>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::optional<std::string> asOf;
    std::vector<std::string> closings;
    bool json = false;
    bool isStrict = false;
};

/// True when a closing that was asked for is on hold.
bool holdsSomething(const readiness::Answer &answer)
{
    return std::any_of(answer.closings.begin(), answer.closings.end(),
                       [](const auto &closing) { return closing.state == readiness::State::Hold; });
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project, terminal);
    const Records &records = *project->records();
    tellOfStrays(records, terminal);
    const Moment asOf = options.asOf ? momentOf(*options.asOf, "--as-of") : project->today();
    const ReadinessScope scope{closingsOf(records, options.closings)};
    auto answer = readiness::readiness(records, project->profile(), asOf);
    std::erase_if(answer.closings, [&](const auto &closing) { return !scope.holds(closing.id); });
    if (options.json)
        answers::writeJson(answer, records, project->profile(), terminal.out());
    else
        printReadiness(answer, records, project->profile(), scope, terminal.out());
    return options.isStrict && holdsSomething(answer) ? Outcome::No : Outcome::Done;
}

} // namespace

void declareReady(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "ready", "Says what may be closed, and what must stay open", *options);
    verb.add_option("--as-of", options->asOf, "A day or a moment; today when not said")
        ->type_name("MOMENT");
    verb.add_option("--closing", options->closings, "Only these closings")->type_name("ID");
    verb.add_flag("--strict", options->isStrict, "Exit 1 when one of them is on hold");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
