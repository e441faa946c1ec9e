// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/TextTable.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/exchange/csv/CsvExport.h"
#include "core/readiness/Readiness.h"
#include "core/readiness/SquawkOrder.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

using readiness::ListedSquawk;
using readiness::Reachable;

struct Options : VerbOptions {
    bool isOpenOnly = false;
    bool json = false;
    bool csv = false;
};

std::string placeOf(const Squawk &squawk, const Records &records)
{
    const Component *part = records.find(squawk.component_id);
    return !part ? "papers" : part->code.empty() ? part->name : part->code;
}

std::string_view progressOf(const Squawk &squawk)
{
    return squawk.accepted_on   ? "accepted"
           : squawk.verified_on ? "verified"
           : squawk.fixed_on    ? "fixed"
                                : "open";
}

std::string_view reachText(Reachable reachable)
{
    constexpr std::string_view texts[] = {"not for long", "no longer", "", ""};
    return texts[std::size_t(reachable)];
}

std::string titleOfFirst(const IdSet<Closing> &closings, const Records &records)
{
    return closings.empty() ? "" : records.find(closings.front())->title;
}

void printText(const std::vector<ListedSquawk> &list, const Records &records, Moment asOf,
               std::ostream &out)
{
    TextTable table({{"no."},
                     {"part", {}, 16},
                     {"squawk", {}, 48},
                     {"severity"},
                     {"found"},
                     {"state"},
                     {"in reach"},
                     {"closing", {}, 40}});
    for (const ListedSquawk &listed : list) {
        const Squawk &squawk = *records.find(listed.id);
        table.add({squawk.number, placeOf(squawk, records), squawk.title,
                   std::string(word(squawk.severity)), squawk.found_on->dayOnly().text(),
                   std::string(progressOf(squawk)), std::string(reachText(listed.reachable)),
                   titleOfFirst(listed.closings, records)});
    }
    table.print(out);
    const auto outstanding = std::count_if(list.begin(), list.end(), [](const auto &listed) {
        return listed.reachable != Reachable::Done;
    });
    fmt::print(out, "{}, {} of them outstanding, as of {}.\n",
               counted(std::int64_t(list.size()), "squawk"), outstanding, asOf.text());
}

void writeSquawk(JsonWriter &json, const ListedSquawk &listed, const Records &records)
{
    const Squawk &squawk = *records.find(listed.id);
    constexpr std::string_view reachable[] = {"not_for_long", "no_longer", "yes", "done"};
    const auto text = [](const std::optional<Moment> &moment) {
        return moment ? std::optional(moment->text()) : std::nullopt;
    };
    json.beginObject();
    json.member("id", listed.id.value());
    json.member("number", squawk.number);
    json.member("title", squawk.title);
    json.key("component_id");
    squawk.component_id ? json.value(squawk.component_id.value()) : json.null();
    json.member("severity", word(squawk.severity));
    json.member("state", progressOf(squawk));
    json.member("found_on", text(squawk.found_on));
    json.member("fixed_on", text(squawk.fixed_on));
    json.member("verified_on", text(squawk.verified_on));
    json.member("accepted_on", text(squawk.accepted_on));
    json.member("reachable", reachable[std::size_t(listed.reachable)]);
    json.key("closings");
    json.beginArray();
    for (const Id<Closing> id : listed.closings)
        json.value(id.value());
    json.endArray();
    json.endObject();
}

void writeJson(const std::vector<ListedSquawk> &list, const Records &records, Moment asOf,
               std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("as_of", asOf.text());
    json.member("count", list.size());
    json.key("squawks");
    json.beginArray();
    for (const ListedSquawk &listed : list)
        writeSquawk(json, listed, records);
    json.endArray();
    json.endObject();
}

/// All fields of those in the list, by id.
void printCsv(const std::vector<ListedSquawk> &list, const Records &records, std::ostream &out)
{
    Records chosen;
    for (const ListedSquawk &listed : list)
        chosen.squawks.put(*records.find(listed.id));
    exchange::writeCsv(chosen, RecordType::Squawk, out);
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project);
    const Records &records = *project->records();
    const Moment asOf = project->today();
    auto list =
        readiness::squawkOrder(records, readiness::readiness(records, project->profile(), asOf));
    if (options.isOpenOnly)
        std::erase_if(list, [](const auto &one) { return one.reachable == Reachable::Done; });
    if (options.csv) {
        printCsv(list, records, terminal.out());
    } else if (options.json) {
        writeJson(list, records, asOf, terminal.out());
        terminal.out() << '\n';
    } else {
        printText(list, records, asOf, terminal.out());
    }
    return Outcome::Done;
}

} // namespace

void declareSquawks(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "squawks", "Lists defects, what is out of reach next first", *options);
    verb.add_flag("--open", options->isOpenOnly, "Only those not verified and not accepted");
    CLI::Option *csv = verb.add_flag("--csv", options->csv, "Answer as CSV");
    addJsonFlag(verb, options->json);
    verb.get_option("--json")->excludes(csv);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
