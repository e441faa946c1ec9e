// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/HoursText.h"
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/VerbOptions.h"
#include "core/answers/HoursJson.h"
#include "core/exchange/csv/HoursCsv.h"

#include <CLI/CLI.hpp>

namespace lastrivet::cli {

namespace {

using hours::Grouping;

struct Options : VerbOptions {
    std::string by{word(Grouping::Component)};
    bool csv = false;
    bool json = false;
};

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto by = wordOf<Grouping>(options.by, "--by");
    const auto project = openForReading(options.project, terminal);
    const Records &records = *project->records();
    tellOfStrays(records, terminal);
    if (options.json)
        answers::writeJson(hours::totals(records), records, terminal.out());
    else if (options.csv)
        exchange::writeHours(records, project->today(), by, terminal.out());
    else if (by == Grouping::Step)
        printEstimates(hours::estimates(records, project->today()), records, terminal.out());
    else
        printHours(hours::totals(records), by, records, terminal.out());
    return Outcome::Done;
}

} // namespace

void declareHours(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "hours", "Adds up the log", *options);
    verb.add_option(
            "--by", options->by,
            fmt::format("One of {}; JSON has all but step", fmt::join(Words<Grouping>::list, ", ")))
        ->type_name("WHAT");
    CLI::Option *csv = verb.add_flag("--csv", options->csv, "The same as CSV, in whole minutes");
    addJsonFlag(verb, options->json);
    verb.get_option("--json")->excludes(csv);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
