// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/TextTable.h"
#include "app/cli/VerbOptions.h"
#include "core/answers/ForecastJson.h"
#include "core/base/Id.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    std::string seed = "1";
    std::optional<std::string> asOf;
    std::optional<double> hoursPerWeek;
    std::vector<std::string> without;
    bool lookBack = false;
    bool json = false;
};

using forecast::Range;

std::string hoursRange(const Range<std::int64_t> &minutes)
{
    const auto hours = [](std::int64_t given) { return (given + 30) / 60; };
    return fmt::format("{} to {} h, as likely above as below {} h", hours(minutes.p10),
                       hours(minutes.p90), hours(minutes.p50));
}

std::string nameOf(Id<Component> id, const Records &records)
{
    const auto *part = records.find(id);
    return part ? onOneLine(part->name) : std::string("Work on no part");
}

void printLeftOut(const forecast::Forecast &told, const Records &records, std::ostream &out)
{
    if (told.without.empty())
        return;
    std::vector<std::string> names;
    for (const auto id : told.without)
        names.push_back(nameOf(id, records));
    fmt::print(out, "Left out by choice: {} ({}, {}).\n", fmt::join(names, ", "),
               counted(told.work_left.excluded_steps, "step"),
               counted(told.work_left.excluded_squawks, "squawk"));
}

void printWhen(const forecast::Forecast &told, std::ostream &out)
{
    if (told.finish)
        fmt::print(out, "Done between {} and {}; four times out of five by {}.\n",
                   told.finish->p10.text(), told.finish->p90.text(), told.finish->p80.text());
    else if (told.needs_hours_per_week && told.idle_weeks > 0)
        fmt::print(out, "When: nothing was logged in the last {} weeks; say --hours-per-week.\n",
                   told.idle_weeks);
    else if (told.needs_hours_per_week)
        fmt::print(out, "When: the log is too short to tell; say --hours-per-week.\n");
    else
        fmt::print(out, "When: not within a hundred years at this pace.\n");
}

std::string_view standInText(forecast::StandIn standIn)
{
    switch (standIn) {
    case forecast::StandIn::FinishedSteps:
        return "what finished steps took stands in";
    case forecast::StandIn::Estimates:
        return "no finished step tells what they take, the median of all estimates stands in";
    case forecast::StandIn::TwoHours:
        return "no finished step and no estimate tells what they take, two hours stand in for each";
    }
    return {};
}

void print(const forecast::Forecast &told, const Records &records, std::ostream &out)
{
    const auto &left = told.work_left;
    if (left.isNothing()) {
        fmt::print(out, "Nothing on record is left to do.\n");
        printLeftOut(told, records, out);
        return;
    }
    fmt::print(out, "To do: {}, {}.\n", counted(left.steps, "step"),
               counted(left.squawks, "squawk"));
    if (told.assemblies.empty()) {
        fmt::print(out, "Hours to go: nothing that is left has an estimate.\n");
    } else {
        fmt::print(out, "Hours to go: {}.\n", hoursRange(told.minutes_to_go));
        printWhen(told, out);
    }
    if (left.guessed_estimates > 0)
        fmt::print(out, "{} had no estimate; {}.\n", counted(left.guessed_estimates, "step"),
                   standInText(left.stand_in));
    if (left.squawks_without_estimate > 0)
        fmt::print(out, "{} nobody estimated: not in the sum.\n",
                   counted(left.squawks_without_estimate, "squawk"));
    printLeftOut(told, records, out);
    auto assemblies = told.assemblies;
    std::sort(assemblies.begin(), assemblies.end(),
              [](const auto &a, const auto &b) { return a.share_of_spread > b.share_of_spread; });
    for (const auto &assembly : assemblies)
        fmt::print(out, "  {}: {}; {:.0f} % of the spread\n", nameOf(assembly.assembly, records),
                   hoursRange(assembly.minutes_to_go), 100 * assembly.share_of_spread);
}

/// What was forecast each month for the work that is done by now, and what it took.
void print(const forecast::LookBack &told, std::ostream &out)
{
    constexpr auto right = TextTable::Align::Right;
    TextTable table({{"on"},
                     {"steps to do"},
                     {"hours to go", right},
                     {"done by (P50)"},
                     {"of these done now", right},
                     {"said (P10 to P90)", right},
                     {"came", right}});
    const auto hours = [](std::int64_t minutes) { return fmt::to_string((minutes + 30) / 60); };
    for (const auto &look : told.looks)
        table.add({look.day.text(), fmt::to_string(look.steps_left),
                   hours(look.minutes_to_go.p10) + " to " + hours(look.minutes_to_go.p90),
                   look.finish ? look.finish->p50.text() : "-", fmt::to_string(look.steps_since),
                   hours(look.said.p10) + " to " + hours(look.said.p90), hours(look.came)});
    fmt::print(out, "\nLooking back, month by month, in hours:\n");
    table.print(out);
    fmt::print(out, "Of {} months, what came was within P50 in {}, and within P80 in {}.\n",
               told.with_outcome, told.within_p50, told.within_p80);
    if (told.finished_on)
        fmt::print(out, "The last step was done on {}.\n", told.finished_on->text());
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project, terminal);
    const Records &records = *project->records();
    tellOfStrays(records, terminal);
    const Moment asOf = options.asOf ? momentOf(*options.asOf, "--as-of") : project->today();
    if (options.hoursPerWeek && !(*options.hoursPerWeek > 0 && *options.hoursPerWeek <= 168))
        throw WrongUsage("--hours-per-week: a week has 168 hours, and some of them.");
    forecast::Options wish;
    wish.seed = std::uint64_t(wholeNumberOf(options.seed, "--seed", 0, largestId));
    wish.hours_per_week = options.hoursPerWeek;
    for (const auto &code : options.without)
        wish.choice.without.push_back(partOf(records, code, "--without").id);
    std::sort(wish.choice.without.begin(), wish.choice.without.end());
    const auto told = forecast::forecast(records, asOf, wish);
    std::optional<forecast::LookBack> lookBack;
    if (options.lookBack) {
        wish.draws = forecast::drawsLookingBack;
        lookBack = forecast::lookBack(records, asOf, wish);
    }
    if (options.json) {
        answers::writeJson(told, lookBack ? &*lookBack : nullptr, records, terminal.out());
    } else {
        print(told, records, terminal.out());
        if (lookBack)
            print(*lookBack, terminal.out());
    }
    return Outcome::Done;
}

} // namespace

void declareForecast(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "forecast", "Hours and dates to go, as ranges", *options);
    verb.add_option("--seed", options->seed, "The same seed gives the same answer")->type_name("N");
    verb.add_option("--as-of", options->asOf, "A day or a moment; today when not said")
        ->type_name("MOMENT");
    verb.add_option("--hours-per-week", options->hoursPerWeek, "In place of the log's own pace");
    verb.add_option("--without", options->without, "Parts left out by choice")->type_name("CODE…");
    verb.add_flag("--look-back", options->lookBack,
                  "What the forecast said each month, and what came");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
