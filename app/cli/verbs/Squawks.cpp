// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Names.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/TextTable.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/exchange/csv/SquawkListCsv.h"
#include "core/project/acts/SquawkActs.h"
#include "core/readiness/Readiness.h"
#include "core/readiness/SquawkFilter.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <fmt/ostream.h>
#include <optional>

namespace lastrivet::cli {

namespace {

using readiness::ListedSquawk;
using readiness::Reachable;
using readiness::SquawkFilter;

struct Options : VerbOptions {
    bool isOpenOnly = false;
    std::string standing;
    std::string severity;
    std::string part;
    std::string verifier;
    std::optional<std::int64_t> inspection;
    std::string reachable;
    std::string text;
    bool json = false;
    bool csv = false;
};

std::string placeOf(const Squawk &squawk, const Records &records)
{
    const Component *part = records.find(squawk.component_id);
    return !part ? "papers" : part->code.empty() ? part->name : part->code;
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
                   std::string(acts::progressWord(squawk, asOf)),
                   std::string(reachText(listed.reachable)),
                   titleOfFirst(listed.closings, records)});
    }
    table.print(out);
    const auto outstanding = std::count_if(list.begin(), list.end(), [](const auto &listed) {
        return listed.reachable != Reachable::Done;
    });
    fmt::print(out, "{}, {} of them outstanding, as of {}.\n",
               counted(std::int64_t(list.size()), "squawk"), outstanding, asOf.text());
}

void writeSquawk(JsonWriter &json, const ListedSquawk &listed, const Records &records, Moment asOf)
{
    const Squawk &squawk = *records.find(listed.id);
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
    json.member("state", acts::progressWord(squawk, asOf));
    json.member("found_on", text(squawk.found_on));
    json.member("fixed_on", text(squawk.fixed_on));
    json.member("verified_on", text(squawk.verified_on));
    json.member("accepted_on", text(squawk.accepted_on));
    json.member("reachable", word(listed.reachable));
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
        writeSquawk(json, listed, records, asOf);
    json.endArray();
    json.endObject();
}

template <class Word> std::optional<Word> given(const std::string &text, std::string_view option)
{
    return text.empty() ? std::nullopt : std::optional(wordOf<Word>(text, option));
}

SquawkFilter filterOf(const Options &options, const Records &records)
{
    SquawkFilter filter;
    using enum SquawkFilter::Standing;
    filter.standing = given<SquawkFilter::Standing>(options.standing, "--standing")
                          .value_or(options.isOpenOnly ? Outstanding : All);
    filter.severity = given<Severity>(options.severity, "--severity");
    filter.verifier = given<SignerRole>(options.verifier, "--verifier");
    filter.reachable = given<Reachable>(options.reachable, "--reachable");
    filter.text = options.text;
    if (!options.part.empty())
        filter.part = partOf(records, options.part, "--part").id;
    if (options.inspection) {
        filter.inspection = Id<Inspection>{*options.inspection};
        if (!records.findLive(filter.inspection))
            throw WrongUsage(
                fmt::format("--inspection: there is no inspection {}.", *options.inspection));
    }
    return filter;
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project, terminal);
    const Records &records = *project->records();
    tellOfStrays(records, terminal);
    const Moment asOf = project->today();
    const auto answer = readiness::readiness(records, project->profile(), asOf);
    const auto list = readiness::filtered(readiness::squawkOrder(records, answer, asOf),
                                          filterOf(options, records), records, asOf);
    if (options.csv) {
        exchange::writeSquawkList(records, list, asOf, terminal.out());
    } else if (options.json) {
        writeJson(list, records, asOf, terminal.out());
        terminal.out() << '\n';
    } else {
        printText(list, records, asOf, terminal.out());
    }
    return Outcome::Done;
}

void addFilter(CLI::App &verb, Options &options)
{
    verb.add_option("--standing", options.standing, "Only those dealt with as far as this")
        ->excludes(verb.get_option("--open"))
        ->type_name("WORD");
    verb.add_option("--severity", options.severity, "Only those of this severity")
        ->type_name("WORD");
    verb.add_option("--verifier", options.verifier, "Only those that this role has to verify")
        ->type_name("ROLE");
    verb.add_option("--reachable", options.reachable, "Only those as far in reach as this")
        ->type_name("WORD");
    verb.add_option("--part", options.part, "Only on this part and below")->type_name("CODE");
    verb.add_option("--inspection", options.inspection, "Only findings of this inspection")
        ->type_name("ID");
    verb.add_option("--text", options.text, "Only those in which all these words occur")
        ->type_name("WORDS");
}

} // namespace

void declareSquawks(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "squawks", "Lists defects, what is out of reach next first", *options);
    verb.add_flag("--open", options->isOpenOnly, "Only those not verified and not accepted");
    addFilter(verb, *options);
    CLI::Option *csv = verb.add_flag("--csv", options->csv, "Answer as CSV");
    addJsonFlag(verb, options->json);
    verb.get_option("--json")->excludes(csv);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
